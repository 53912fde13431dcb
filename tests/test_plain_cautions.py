"""Cautions in the trainee's words, on the page that is handed over."""

from __future__ import annotations

from datetime import date

import pytest

from desktop.planning.history import shipped_limits
from desktop.training.limits import LimitId
from desktop.training.quantities import Unit
from desktop.training.recovery import Caution, Evidence
from views.plain_cautions import plain_caution

pytestmark = pytest.mark.usefixtures("english")

TODAY = date(2026, 11, 30)
VALUES: Evidence = (
    ("over", 0.17),
    ("variables", "load, sets"),
    ("pattern", "squat"),
    ("first", date(2026, 11, 23)),
    ("second", date(2026, 11, 24)),
    ("muscles", "calves, lats"),
    ("since", date(2026, 9, 7)),
    ("signals", "aches"),
    ("week_ends", date(2026, 11, 29)),
    ("pain", 3),
    ("day", date(2026, 11, 25)),
    ("last", date(2026, 11, 2)),
)


def plain(limit_id: LimitId, line: str = "") -> str:
    limit = shipped_limits()[limit_id]
    caution = Caution(limit.id, limit.severity, VALUES, limit.source, limit.proposal)
    return plain_caution(caution, Unit.KG, TODAY, line)


@pytest.mark.parametrize("limit_id", list(LimitId))
def test_every_limit_has_plain_words_without_terms_of_the_trade(limit_id: LimitId) -> None:
    said = plain(limit_id)
    assert said.endswith(".")
    assert "{" not in said
    for term in ("deload", "rule", "ceiling", "variable", "monotony", "plateau", "hold", "RIR"):
        assert term not in said.casefold()


def test_what_it_rests_on_is_told(english: None) -> None:
    assert plain(LimitId.PAIN, "Overhead press") == (
        "Overhead press: Pain of 3 out of 10 was noted on Wed 25 Nov: nothing gets harder until a "
        "session without it."
    )
    assert plain(LimitId.LOAD_STEP) == "The load went up by 17 % at once."
    assert "licensed professional" in plain(LimitId.RED_FLAG)
