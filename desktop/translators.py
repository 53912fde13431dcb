"""Translators: in which language the screens speak, and how numbers and days are written.

The coach's choice counts, else the system's language where there is a translation. Texts that were
made before stay as they are: whoever chooses another language makes the window anew.
"""

from __future__ import annotations

from pathlib import Path
from typing import Final

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

FOLDER: Final = Path(__file__).parent.parent / "resources" / "translations"
ENGLISH: Final = "en"


def languages(folder: Path = FOLDER) -> tuple[str, ...]:
    """The codes of the languages there are: English, then the translations."""
    found = (path.stem.removeprefix("rungwise_") for path in folder.glob("rungwise_*.qm"))
    return (ENGLISH, *sorted(found))


def locale_for(choice: str, system: QLocale) -> QLocale:
    """How numbers and days are written: as the system does, in the language chosen ("" for the
    system's), as it is usual in the system's country.
    """
    if not choice or choice == QLocale.languageToCode(system.language()):
        return system
    return QLocale(QLocale.codeToLanguage(choice), system.territory())


def english_for(system: QLocale) -> QLocale:
    """How numbers and days are written where English is spoken whatever the system speaks: as in
    the system's country, if there is one and English has a decimal point there.
    """
    there = locale_for(ENGLISH, system)
    if system.territory() != QLocale.Country.AnyTerritory and there.decimalPoint() == ".":
        return there
    return QLocale(QLocale.Language.English, QLocale.Country.World)


class Translators:
    """The translations that are loaded now: ours, and Qt's own texts in the same language."""

    def __init__(self, application: QCoreApplication, folder: Path = FOLDER) -> None:
        self._application, self._folder = application, folder
        self._loaded: list[QTranslator] = []

    def use(self, locale: QLocale) -> bool:
        """Speak the language of ``locale`` from now on; False where that is English, as it is for
        a language without a translation. Nothing is read for English.
        """
        for translator in self._loaded:
            self._application.removeTranslator(translator)
        self._loaded = []
        QLocale.setDefault(locale)
        code = QLocale.languageToCode(locale.language())
        if code == ENGLISH:
            return False
        qt = Path(QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath))
        for path in (self._folder / f"rungwise_{code}.qm", qt / f"qtbase_{code}.qm"):
            translator = QTranslator(self._application)
            if not translator.load(str(path)):
                break  # Qt's own texts alone would make two languages of one window
            self._loaded.append(translator)
        for translator in reversed(self._loaded):  # what is installed last is asked first
            self._application.installTranslator(translator)
        return bool(self._loaded)
