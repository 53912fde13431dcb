"""What would end in a crash is refused in words first; standard library only, no Qt import.

``desktop.__main__`` asks here before anything imports PySide6.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Mapping, Sequence

IMMORTAL_NONE = (3, 12)
_METADATA = "pyside6_essentials-"


def refuse_crashing_pair() -> None:
    """Exit with a readable message where this Python and this PySide6 would abort together.

    The 6.12 binding drops one reference of None at every call that returns nothing. From
    Python 3.12 on None cannot be freed; before, the process aborts after some thousand calls.
    """
    if sys.version_info >= IMMORTAL_NONE:
        return
    installed = installed_version(sys.path)
    complaint = complaint_about(sys.version_info[:2], installed) if installed else None
    if complaint:
        raise SystemExit(complaint)


def installed_version(folders: Sequence[str]) -> str | None:
    """The version of PySide6 that the first of ``folders`` to hold one says it has, by the name of
    its metadata; None where there is none (the import itself will say that it is missing).

    ``importlib.metadata`` would tell as well, in a fifth of an empty window's start.
    """
    for folder in folders:
        try:
            names = os.listdir(folder or ".")
        except OSError:
            continue
        for name in names:
            if name.lower().startswith(_METADATA) and name.endswith(".dist-info"):
                return name[len(_METADATA) : -len(".dist-info")]
    return None


def complaint_about(python: tuple[int, int], pyside: str) -> str | None:
    """The sentence for a pair of versions that crashes; None for a pair that works."""
    major, minor = (int(part) for part in pyside.split(".")[:2])
    if python >= IMMORTAL_NONE or (major, minor) < (6, 12):
        return None
    return (
        f"PySide6 {pyside} crashes on Python {python[0]}.{python[1]}. "
        "Install one that works: pip install 'PySide6-Essentials>=6.11.3,<6.12', "
        "or use Python 3.12 or newer."
    )


def refuse_without_display() -> None:
    """Exit with a readable message where a window is asked for and nobody could see it."""
    if not has_display(os.environ, sys.platform):
        raise SystemExit(
            "There is no display here, so no window can open. The same work is done without one: "
            "rungwise-cli --help lists the commands."
        )


def refuse_without_library(error: ImportError) -> None:
    """Exit with a readable message where an import failed for a library of the system; other
    errors are left to the caller.
    """
    complaint = complaint_about_import(str(error))
    if complaint:
        raise SystemExit(complaint) from error


def complaint_about_import(said: str) -> str | None:
    """The sentence for what the dynamic loader ``said``; None where no library is missing."""
    name, found, _ = said.partition(": cannot open shared object file")
    if not found:
        return None
    from desktop.bootstrap import QT_LIBRARIES

    package = QT_LIBRARIES.get(name)
    install = f"sudo apt-get install {package}" if package else "install the package that holds it"
    where = "On Debian and its relatives: " if package else "With this system's package manager: "
    return f"Qt cannot start without the system library {name}. {where}{install}"


def has_display(environ: Mapping[str, str], platform: str) -> bool:
    """Whether Qt has a platform to open a window on; one named by QT_QPA_PLATFORM counts."""
    if platform in ("win32", "darwin") or environ.get("QT_QPA_PLATFORM"):
        return True
    return bool(environ.get("DISPLAY") or environ.get("WAYLAND_DISPLAY"))
