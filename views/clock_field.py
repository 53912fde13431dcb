"""A field for a short span: minutes and seconds, or seconds alone."""

from __future__ import annotations

import re
from decimal import Decimal
from typing import Final

from PySide6.QtCore import Qt

from desktop.training.quantities import InvalidQuantity
from views import words
from views.number_fields import WholeField

_CLOCK: Final = re.compile(r"([0-9]{1,2}):([0-5][0-9])")


class ClockField(WholeField):
    """Seconds, shown as "2:30" and typed so, or as the plain number of seconds."""

    def __init__(self, name: str, most: int = 3600) -> None:
        super().__init__(name, 0, most, optional=False)
        self.setInputMethodHints(Qt.InputMethodHint.ImhPreferNumbers)

    def _read(self, text: str) -> Decimal | None:
        found = _CLOCK.fullmatch(text.strip())
        if found is None:
            return super()._read(text)
        seconds = int(found[1]) * 60 + int(found[2])
        if seconds > self._most:
            raise InvalidQuantity("too long", "out_of_range", self._limits())
        return Decimal(seconds)

    def _limits(self) -> dict[str, object]:
        return {"least": words.clock(int(self._least)), "most": words.clock(int(self._most))}

    def _shown(self, number: Decimal | None) -> str:
        return "" if number is None else words.clock(int(number))
