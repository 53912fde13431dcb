"""What keys do on the progress screen."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QKeySequence

from views.measures import Shown

translate = QCoreApplication.translate

_NATIVE: Final = QKeySequence.SequenceFormat.NativeText
MEASURE_KEYS: Final = {
    Shown.ESTIMATE: "E",
    Shown.LOAD: "L",
    Shown.SET: "S",
    Shown.AT_LOAD: "R",
    Shown.HOLD: "H",
    Shown.MOMENT: "M",
    Shown.VARIATION: "V",
}


def progress_keys() -> Sequence[tuple[str, str]]:
    """For the keyboard map: (what it does, the key)."""
    pages = [QKeySequence(key).toString(_NATIVE) for key in ("Ctrl+PgUp", "Ctrl+PgDown")]
    return (
        (translate("ProgressArea", "Previous and next line"), ", ".join(pages)),
        (translate("ProgressArea", "What is shown"), ", ".join(MEASURE_KEYS.values())),
        (translate("ProgressArea", "Span"), "1, 2, 3, 4"),
        (
            translate("ProgressArea", "From session to session"),
            translate("ProgressArea", "Left, Right"),
        ),
        (
            translate("ProgressArea", "First and last session"),
            translate("ProgressArea", "Home, End"),
        ),
        (translate("ProgressArea", "Less and more of the time"), "+, −"),
        (translate("ProgressArea", "Open the session"), QKeySequence("Return").toString(_NATIVE)),
        (translate("ProgressArea", "Table, body mass"), "T, B"),
        (translate("ProgressArea", "Compare with something"), "C"),
        (translate("ProgressArea", "Set a goal"), "G"),
        (
            translate("ProgressArea", "A lighter or heavier load"),
            translate("ProgressArea", "Alt+Down, Alt+Up"),
        ),
        (translate("ProgressArea", "Save as…"), QKeySequence("Ctrl+S").toString(_NATIVE)),
        (translate("ProgressArea", "Report"), QKeySequence("Ctrl+R").toString(_NATIVE)),
    )
