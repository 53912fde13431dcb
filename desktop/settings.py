"""This computer's settings: what is about the desk, not about the training.

Kept in one ini file in the configuration folder, so that a coach can read it and delete it. What
influences training or must travel with the data stands in the data file instead. A value that
somebody broke by hand counts as not set.
"""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path

from PySide6.QtCore import QByteArray, QSettings

SMALLEST_TEXT = 80
LARGEST_TEXT = 200


class Theme(StrEnum):
    """Which palette is used."""

    SYSTEM = "system"
    LIGHT = "light"
    DARK = "dark"


class Paper(StrEnum):
    """What sheets are printed on."""

    USUAL = ""
    A4 = "a4"
    LETTER = "letter"


class Settings:
    """Typed access to the ini file; every property reads and writes one entry at once."""

    def __init__(self, file: Path) -> None:
        self._store = QSettings(str(file), QSettings.Format.IniFormat)

    @property
    def theme(self) -> Theme:
        """The palette chosen; the system's unless the coach said otherwise."""
        text = self._text("look/theme")
        return Theme(text) if text in set(Theme) else Theme.SYSTEM

    @theme.setter
    def theme(self, theme: Theme) -> None:
        self._store.setValue("look/theme", theme.value)

    @property
    def text_percent(self) -> int:
        """Size of text in percent of the system's; 80 to 200."""
        text = self._text("look/text_percent")
        percent = int(text) if text.isascii() and text.isdigit() else 100
        return max(SMALLEST_TEXT, min(LARGEST_TEXT, percent))

    @text_percent.setter
    def text_percent(self, percent: int) -> None:
        if not SMALLEST_TEXT <= percent <= LARGEST_TEXT:
            raise ValueError(
                f"text size must be {SMALLEST_TEXT} to {LARGEST_TEXT} percent, not {percent}"
            )
        self._store.setValue("look/text_percent", percent)

    @property
    def paper(self) -> Paper:
        """The paper chosen; the country's usual one unless the coach said otherwise."""
        text = self._text("print/paper")
        return Paper(text) if text in set(Paper) else Paper.USUAL

    @paper.setter
    def paper(self, paper: Paper) -> None:
        self._store.setValue("print/paper", paper.value)

    @property
    def lock_minutes(self) -> int:
        """After how many idle minutes the window is locked; 0 for never."""
        text = self._text("lock/minutes")
        return int(text) if text.isascii() and text.isdigit() and len(text) < 5 else 0

    @lock_minutes.setter
    def lock_minutes(self, minutes: int) -> None:
        self._store.setValue("lock/minutes", minutes)

    @property
    def language(self) -> str:
        """Code of the language chosen, such as "de"; empty for the system's."""
        return self._text("look/language")

    @language.setter
    def language(self, code: str) -> None:
        self._store.setValue("look/language", code)

    @property
    def geometry(self) -> bytes:
        """What QWidget.saveGeometry gave on closing; empty at the first start."""
        return self._bytes("window/geometry")

    @geometry.setter
    def geometry(self, saved: bytes) -> None:
        self._store.setValue("window/geometry", QByteArray(saved))

    @property
    def window_state(self) -> bytes:
        """What QMainWindow.saveState gave on closing; empty at the first start."""
        return self._bytes("window/state")

    @window_state.setter
    def window_state(self, saved: bytes) -> None:
        self._store.setValue("window/state", QByteArray(saved))

    @property
    def last_file(self) -> Path | None:
        """The data file that was open last; None for the default one."""
        text = self._text("last/file")
        return Path(text) if text else None

    @last_file.setter
    def last_file(self, file: Path | None) -> None:
        self._store.setValue("last/file", "" if file is None else str(file))

    @property
    def last_trainee(self) -> int | None:
        """Identity of the trainee shown last; None where there was none."""
        text = self._text("last/trainee")
        return int(text) if text.isascii() and text.isdigit() else None

    @last_trainee.setter
    def last_trainee(self, identity: int | None) -> None:
        self._store.setValue("last/trainee", "" if identity is None else identity)

    @property
    def last_screen(self) -> str:
        """Name of the screen shown last; empty where there was none."""
        return self._text("last/screen")

    @last_screen.setter
    def last_screen(self, name: str) -> None:
        self._store.setValue("last/screen", name)

    def recalled(self, screen: str) -> str:
        """What was kept of how a screen was left; empty for nothing."""
        return self._text(f"screens/{screen}")

    def keep(self, screen: str, left: str) -> None:
        """Keep how a screen was left."""
        self._store.setValue(f"screens/{screen}", left)

    def sync(self) -> bool:
        """Write to the disk now; whether the file could be written."""
        self._store.sync()
        return self._store.status() == QSettings.Status.NoError

    def _text(self, key: str) -> str:
        value = self._store.value(key, "")
        return str(value) if isinstance(value, (str, int)) else ""

    def _bytes(self, key: str) -> bytes:
        value = self._store.value(key)
        return bytes(value.data()) if isinstance(value, QByteArray) else b""
