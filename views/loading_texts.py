"""How a load is made, in words and as discs to draw: which bar, which discs on each side.

QtCore only.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from desktop.training.loading import Loading, MadeWith
from desktop.training.quantities import Unit
from views import words

translate = QCoreApplication.translate


@dataclass(frozen=True, slots=True)
class DiscText:
    """One disc as it is drawn: its number, and its mass as a share of the heaviest one on."""

    label: str
    share: float


def loading_text(made: Loading | None, unit: Unit) -> str:
    """What to load: "club bar: 20 + 1.25 a side", "pin at 45 kg"; "" where the load says it."""
    if made is None:
        return ""
    discs = " + ".join(words.load_number(each, unit) for each in made.discs_per_side)
    if made.bar is not None:
        collars = translate("Sheet", ", with collars") if made.collars_g and discs else ""
        text = (
            translate("Sheet", "{bar}: {discs} a side")
            if discs
            else translate("Sheet", "{bar} alone")
        )
        return text.format(bar=made.bar.name, discs=discs) + collars
    if made.handle_g is not None:
        text = (
            translate("Sheet", "dumbbell handle: {discs} at each end")
            if discs
            else translate("Sheet", "dumbbell handle alone")
        )
        return text.format(discs=discs)
    if made.stack is not None:
        return _stack_text(made, unit)
    if made.band is not None:
        helping = made.made_with is MadeWith.ASSISTANCE
        text = (
            translate("Sheet", "help of {band}") if helping else translate("Sheet", "band: {band}")
        )
        return text.format(band=made.band.name)
    return ""


def disc_texts(discs_g: Sequence[int], unit: Unit) -> tuple[DiscText, ...]:
    """The discs of one side as they are drawn, from the inside out."""
    heaviest = max(discs_g, default=1)
    return tuple(DiscText(words.load_number(each, unit), each / heaviest) for each in discs_g)


def _stack_text(made: Loading, unit: Unit) -> str:
    assert made.stack is not None
    pin_g = made.load_g - (made.stack.half_step_g if made.half_step else 0)
    text = (
        translate("Sheet", "{stack}: pin at {load}, with the small plate")
        if made.half_step
        else translate("Sheet", "{stack}: pin at {load}")
    )
    return text.format(stack=made.stack.name, load=words.load(pin_g, unit))
