"""Data files as files: private to their owner, and put in place whole or not at all."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from db.refusals import cannot_write

UNFINISHED = ".unfinished"


@contextmanager
def replacing(target: Path) -> Iterator[Path]:
    """An empty private file beside ``target``, which takes its place at the end of the block.

    It is written through to the disk first, so that ``target`` is at any time the old file or the
    whole new one. Where the block raises, ``target`` stays as it is and nothing is left. Raises
    CannotWrite.
    """
    unfinished = target.with_name(f"{target.name}.{os.getpid()}{UNFINISHED}")
    try:
        clear_unfinished(target.parent, f"{target.name}.")
        unfinished.unlink(missing_ok=True)
        make_private(unfinished)
        yield unfinished
        write_through(unfinished)
        os.replace(unfinished, target)
        write_through(target.parent)
    except OSError as error:
        raise cannot_write(target, error) from error
    finally:
        for name in (unfinished, *beside(unfinished)):
            with suppress(OSError):
                name.unlink(missing_ok=True)


def clear_unfinished(folder: Path, start: str) -> None:
    """Remove what killed processes had not finished of files whose name begins so."""
    for path in folder.iterdir():
        if path.name.startswith(start) and UNFINISHED in path.name:
            head, _, _ = path.name.rpartition(UNFINISHED)
            process = head.rpartition(".")[2]
            if process.isascii() and process.isdigit() and not _runs(int(process)):
                with suppress(OSError):
                    path.unlink()


def beside(path: Path) -> tuple[Path, ...]:
    """The files that SQLite may keep beside a data file: its log first, then what helps it."""
    return tuple(path.with_name(path.name + end) for end in ("-wal", "-shm", "-journal"))


def free_name(path: Path, word: str) -> Path:
    """A name beside ``path`` that says ``word`` and is not taken: "club.word.db"."""
    target = path.with_name(f"{path.stem}.{word}{path.suffix}")
    number = 2
    while target.exists():
        target = path.with_name(f"{path.stem}.{word}-{number}{path.suffix}")
        number += 1
    return target


def make_private(path: Path) -> None:
    """Make an empty file that only its owner may read. Raises FileExistsError."""
    os.close(os.open(path, os.O_CREAT | os.O_EXCL | os.O_RDWR, 0o600))


def keep_private(path: Path) -> None:
    """Let only the owner read a file that was copied here by other means."""
    if os.name == "posix" and path.stat().st_mode & 0o077:
        with suppress(OSError):
            path.chmod(path.stat().st_mode & 0o700)


def write_through(path: Path) -> None:
    """Wait until a file, or the names in a folder, stand on the disk."""
    if path.is_dir() and os.name == "nt":  # folders cannot be opened there
        return
    handle = os.open(path, os.O_RDONLY if path.is_dir() else os.O_RDWR)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def _runs(process: int) -> bool:
    if os.name == "nt":  # an open file cannot be removed there anyway
        return False
    try:
        os.kill(process, 0)
    except ProcessLookupError:
        return False
    except (PermissionError, OverflowError):
        return True
    return True
