"""A chart as a part of a printed page; how it is drawn is fetched when it is painted."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF

if TYPE_CHECKING:
    from views.progress_series import Series


@dataclass(frozen=True, slots=True)
class PaperChart:
    """A series over the days from ``first`` to ``last`` (ordinals) in a place on the page, the
    weeks' hard sets along its foot. ``names``: the variations by key.
    """

    rect: QRectF
    series: Series
    names: dict[str, str]
    first: float
    last: float
    week_starts: int = 0
