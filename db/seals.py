"""Seals: a digest beside a data file, by which damage is found that its structure does not show.

A page that a failing disk returns wrong may still be a page. So a closed file gets a seal, in the
format of sha256sum ("club.db.sha256"), with the time of its last change: as long as the file has
that time, nobody has written to it, and it must have that digest. Opening takes the seal away,
closing puts one back; after a crash there is none, and only the structure can be checked.
"""

from __future__ import annotations

import hashlib
import os
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from db.files import UNFINISHED, beside, clear_unfinished

_DIGITS = 64


@dataclass(frozen=True, slots=True)
class Seal:
    """The SHA-256 of a file (hexadecimal) and the time of its last change (ns)."""

    digest: str
    changed_ns: int


def seal_path(path: Path) -> Path:
    """Where the seal of a data file is kept."""
    return path.with_name(f"{path.name}.sha256")


def read_seal(path: Path) -> Seal | None:
    """The seal of ``path``, if there is one that tells anything about the file as it is now."""
    place = seal_path(path)
    try:
        digest = place.read_text(encoding="utf-8", errors="replace")[:_DIGITS]
        seal = Seal(digest, place.stat().st_mtime_ns)
        return seal if path.stat().st_mtime_ns == seal.changed_ns else None
    except OSError:
        return None


def take_seal(path: Path) -> Seal | None:
    """The seal, which is taken away: the file may be written from now on."""
    seal = read_seal(path)
    with suppress(OSError):
        seal_path(path).unlink(missing_ok=True)
    return seal


def is_broken(path: Path, seal: Seal | None) -> bool:
    """Whether the file has other content than when it was sealed, though nobody wrote to it."""
    try:
        if seal is None or path.stat().st_mtime_ns != seal.changed_ns:
            return False
        return _digest(path) != seal.digest
    except OSError:
        return False


def put_seal(path: Path, before: Seal | None = None) -> None:
    """Seal a file that is closed; one that is still open elsewhere, or vanishes, gets none.

    ``before``: the seal that opening took away, which stands as long as nobody wrote.
    """
    unfinished = seal_path(path).with_name(f"{path.name}.sha256.{os.getpid()}{UNFINISHED}")
    try:
        if any(other.exists() for other in beside(path)):
            return
        clear_unfinished(path.parent, f"{seal_path(path).name}.")
        changed_ns = path.stat().st_mtime_ns
        seal = before if before and before.changed_ns == changed_ns else None
        seal = seal or Seal(_digest(path), changed_ns)
        unfinished.touch(mode=0o600)
        unfinished.write_text(f"{seal.digest}  {path.name}\n", encoding="utf-8")
        os.utime(unfinished, ns=(changed_ns, changed_ns))
        if path.stat().st_mtime_ns == changed_ns and not any(o.exists() for o in beside(path)):
            os.replace(unfinished, seal_path(path))
    except OSError:  # a seal is one thing more; the data are safe without it
        pass
    finally:
        with suppress(OSError):
            unfinished.unlink(missing_ok=True)


def remove_file(path: Path) -> None:
    """Remove a closed data file with all that lies beside it, as far as it is there."""
    for each in (path, *beside(path), seal_path(path)):
        each.unlink(missing_ok=True)


def _digest(path: Path) -> str:
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()
