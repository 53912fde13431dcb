"""Where a caution's proposal is carried out: the work area that takes it up."""

from __future__ import annotations

from typing import Final

from views.work_areas import LOAD, PROGRAM, SESSION, TRAINEE

_SCREENS: Final = {
    "choose for pain": LOAD,
    "ease back in": SESSION,
    "extend the rule": LOAD,
    "follow guidance": TRAINEE,
    "move a day": LOAD,
    "one variable": LOAD,
    "other variable": LOAD,
    "plan a deload": LOAD,
    "record activities": LOAD,
    "record clearance": LOAD,
    "screen": TRAINEE,
    "smaller step": LOAD,
    "vary the days": LOAD,
}


def screen_for(proposal: str) -> str:
    """The work area in which a proposal is carried out."""
    return _SCREENS.get(proposal, PROGRAM)
