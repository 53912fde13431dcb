"""Imports that go straight, without the detour that PySide makes of every one."""

from __future__ import annotations

import builtins


def import_straight() -> None:
    """Import PySide6 and take the outermost of its functions around `import` away.

    That one reads and tokenises the source of each module imported from then on, to know whether
    it may ask for other names by ``__feature__``. This program never does, and the detour takes a
    tenth of its start.
    """
    import PySide6.QtCore  # noqa: F401, makes the detour

    builtins.__import__ = getattr(builtins, "__orig_import__", builtins.__import__)
