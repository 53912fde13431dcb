"""The place in a Linux desktop's menu: entry, icon and the kind of our program files, for one user.

Files go where the freedesktop.org specifications say (Desktop Entry, Icon Theme, Shared MIME-info,
Base Directory), below the user's own data folder, so nobody needs to be root.
"""

from __future__ import annotations

import shutil
import subprocess
import sys
from collections.abc import Sequence
from importlib.resources import files
from pathlib import Path
from typing import Final

ENTRY: Final = "rungwise.desktop"
PLACES: Final = {
    ENTRY: "applications",
    "rungwise.svg": "icons/hicolor/scalable/apps",
    "rungwise.xml": "mime/packages",
}
_REFRESHERS: Final = (
    ("update-mime-database", "mime"),
    ("update-desktop-database", "applications"),
)
_START: Final = "Exec=rungwise "
_RESERVED: Final = frozenset(" \t\n\"'\\><~|&;$*?#()`")


def install(folder: Path, command: Sequence[str]) -> tuple[Path, ...]:
    """Put entry, icon and kind of file below ``folder``; the files written.

    ``command`` starts the program; the file that is opened follows it. Raises OSError.
    """
    written = []
    for name, place in PLACES.items():
        text = (files("resources") / "desktop" / name).read_text(encoding="utf-8")
        if name == ENTRY:
            text = text.replace(_START, f"Exec={' '.join(quoted(each) for each in command)} ")
        target = folder / place / name
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_text(text, encoding="utf-8")
        written.append(target)
    _refresh(folder)
    return tuple(written)


def remove(folder: Path) -> tuple[Path, ...]:
    """Take away what `install` put below ``folder``; the files that were there. Raises OSError."""
    there = [folder / place / name for name, place in PLACES.items()]
    removed = tuple(path for path in there if path.exists())
    for path in removed:
        path.unlink()
    if removed:
        _refresh(folder)
    return removed


def starting_command() -> tuple[str, ...]:
    """What starts this very program: the built folder's, the environment's, or the checkout's."""
    here = Path(sys.executable)
    if getattr(sys, "frozen", False):
        return (str(here.with_name("rungwise")),)
    script = here.with_name("rungwise")
    if script.exists():
        return (str(script),)
    return (str(here), str(Path(__file__).with_name("bootstrap.py")), "run")


def quoted(argument: str) -> str:
    """An argument as the Exec key of a desktop entry wants it."""
    escaped = argument.replace("%", "%%")
    if not _RESERVED.intersection(argument):
        return escaped
    for each in ("\\", '"', "`", "$"):
        escaped = escaped.replace(each, f"\\{each}")
    return '"' + escaped.replace("\\", "\\\\") + '"'


def _refresh(folder: Path) -> None:
    """Let the desktop read again what changed, where it has programs for that; others look
    themselves.
    """
    for program, below in _REFRESHERS:
        found = shutil.which(program)
        if found is not None and (folder / below).is_dir():
            subprocess.run(
                [found, str(folder / below)],
                stdout=subprocess.DEVNULL,
                stderr=subprocess.DEVNULL,
                check=False,
            )
