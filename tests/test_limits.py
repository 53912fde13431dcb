"""The limits of recovery: what ships, and that every slip is told with its line."""

from __future__ import annotations

import re
from importlib.resources import files
from pathlib import Path

import pytest

from desktop.limits import LimitsError, load_limits, read_limits
from desktop.training.limits import LimitId, Severity

LIMITS = load_limits()
SHIPPED = (files("resources") / "limits.toml").read_text(encoding="utf-8")

GAP = """\
[[limit]]
id = "gap"
watches = "days"
threshold = 15
unit = "days"
severity = "note"
values = ["days"]
text = "Not for {days} days."
proposal = "ease back in"
source = "common practice"
"""


def test_every_limit_that_the_model_watches_ships() -> None:
    assert set(LIMITS) == set(LimitId)
    assert all(limit.id is key for key, limit in LIMITS.items())


def test_limits_have_the_published_thresholds() -> None:
    # ACSM 2009, Med Sci Sports Exerc 41(3):687-708: raise the load by 2-10 %.
    assert LIMITS[LimitId.LOAD_STEP].threshold == 0.10
    # WHO 2020 (second-hand): all major muscle groups on 2 or more days a week.
    assert LIMITS[LimitId.TOO_SELDOM].threshold == 2
    # Bell 2025, Strength Cond J: a deload every 4-8 weeks.
    assert LIMITS[LimitId.NO_DELOAD].threshold == 8


def test_what_can_hurt_stops() -> None:
    stops = {key for key, limit in LIMITS.items() if limit.severity is Severity.STOP}
    assert stops == {LimitId.PAIN_HOLD, LimitId.RED_FLAG, LimitId.CLEARANCE}


def test_each_text_is_one_sentence_whose_placeholders_are_values() -> None:
    for limit in LIMITS.values():
        assert limit.text.endswith(".")
        assert set(limit.placeholders) <= set(limit.values)
        assert limit.source


def test_limits_are_read_from_any_path(tmp_path: Path) -> None:
    file = tmp_path / "own.toml"
    file.write_text(SHIPPED, encoding="utf-8")
    assert load_limits(file) == LIMITS


BROKEN = [
    ('id = "gap"', 'id = "gaps"', 2, "allowed are load-step"),
    ('"days"\nthreshold', '""\nthreshold', 3, "watches must not be empty"),
    ("threshold = 15", "threshold = -1", 4, "at least 0, not -1"),
    ("threshold = 15", 'threshold = "15"', 4, "threshold: Expected `float`"),
    ('unit = "days"\n', "", 4, "a threshold has a unit"),
    ('"note"', '"hint"', 6, "allowed are note, caution, stop"),
    ("{days}", "{weeks}", 8, "{weeks} is not a value; allowed are days"),
    ('values = ["days"]\n', "", 7, "allowed are none"),
    ("{days}", "{days", 8, "unpaired braces"),
    ("{days}", "{}", 8, "{} is not a value"),
    ('"Not for {days} days."', '" "', 8, "text must not be empty"),
    (
        '"ease back in"',
        '"rest"',
        9,
        "proposal: Invalid enum value 'rest'; allowed are smaller step",
    ),
    ('"common practice"', '""', 10, "source must not be empty"),
    ("source", "sources", 1, "missing required field `source`"),
    ("[[limit]]", "[[limits]]", 1, "under a line [[limit]]"),
]


@pytest.mark.parametrize(("old", "new", "line", "says"), BROKEN)
def test_every_slip_is_told_with_its_line(old: str, new: str, line: int, says: str) -> None:
    assert old in GAP
    with pytest.raises(LimitsError, match=re.escape(says)) as caught:
        read_limits(GAP.replace(old, new, 1), "mine.toml")
    assert caught.value.line == line


def test_a_limit_stands_once() -> None:
    with pytest.raises(LimitsError, match="gap: this id stands twice") as caught:
        read_limits(GAP + GAP)
    assert caught.value.line == 12


def test_a_missing_limit_is_told_at_the_end() -> None:
    with pytest.raises(LimitsError, match="no entry for load-step, several-at-once") as caught:
        read_limits(GAP)
    assert caught.value.line == 11
