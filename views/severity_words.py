"""How wide the words of severity are; apart from their marks, which the first window shows."""

from __future__ import annotations

from PySide6.QtGui import QFontMetrics

from desktop.training.limits import Severity
from views.caution_texts import severity_word
from views.theme import Theme


def word_width(theme: Theme) -> int:
    """Room for the word of any severity, so that what follows in rows of them stands in line."""
    metrics = QFontMetrics(theme.font())
    return max(metrics.horizontalAdvance(severity_word(each.value)) for each in Severity) + 1
