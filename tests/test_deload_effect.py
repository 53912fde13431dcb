"""Whether an easier week helped: performance before and after, and how sure that is."""

from __future__ import annotations

import math
import random
from datetime import date
from pathlib import Path

import pytest

from desktop.planning.deload_effect import change_of, effect_of, level_change
from desktop.planning.history import read_history
from desktop.planning.progress import Point
from desktop.training.coach import CoachSettings
from desktop.training.trainee import DeloadWindow
from tests.strength_room import DAY, MONDAY, WEEK, Room, open_room


@pytest.fixture
def room(tmp_path: Path) -> Room:
    return open_room(tmp_path)


def points(first: date, values: list[float], log_sd: float, every: int = 4) -> list[Point]:
    """Estimates whose logarithms are ``values``, so many days apart."""
    return [
        Point(first + index * every * DAY, None, math.exp(value), log_sd, True, 0, 0, 5, 2, None)
        for index, value in enumerate(values)
    ]


def noisy(chance: random.Random, level: float, count: int, sd: float) -> list[float]:
    return [level + chance.gauss(0, sd) for _ in range(count)]


def test_a_known_rise_is_found() -> None:
    before = points(MONDAY, [11.0] * 10, 0.01)
    after = points(MONDAY + 50 * DAY, [11.03] * 5, 0.01)
    level, variance, promised = level_change(before, after, CoachSettings())
    assert level == pytest.approx(0.03, abs=0.002)
    assert 0 < math.sqrt(variance) < 0.012
    assert promised == pytest.approx(0.0, abs=0.003)


def test_the_band_holds_the_truth_about_as_often_as_it_says() -> None:
    chance = random.Random(20261)
    truth, held = 0.02, 0
    for _ in range(60):
        before = points(MONDAY, noisy(chance, 11.0, 10, 0.02), 0.02)
        after = points(MONDAY + 50 * DAY, noisy(chance, 11.0 + truth, 5, 0.02), 0.02)
        level, variance, _ = level_change(before, after, CoachSettings())
        change = change_of(level, math.sqrt(variance))
        held += change.low <= math.expm1(truth) <= change.high
    assert 0.7 <= held / 60 <= 0.98


def test_the_earlier_trend_says_what_it_promised() -> None:
    rising = points(MONDAY, [11.0 + 0.002 * step for step in range(14)], 0.004)
    after = points(MONDAY + 60 * DAY, [11.0 + 0.002 * 15] * 4, 0.004)
    level, _, promised = level_change(rising, after, CoachSettings())
    assert promised > 0.003
    assert level == pytest.approx(0.004, abs=0.004)


@pytest.mark.parametrize(
    ("mean", "sd", "clear"), [(0.03, 0.01, True), (0.03, 0.05, False), (-0.03, 0.01, True)]
)
def test_a_change_is_clear_where_its_band_lies_on_one_side(
    mean: float, sd: float, clear: bool
) -> None:
    assert change_of(mean, sd).clear is clear


def test_too_few_sessions_say_nothing(room: Room) -> None:
    room.train_weeks(2)
    history = read_history(room.repository, room.trainee_id)
    window = DeloadWindow(room.trainee_id, MONDAY + WEEK, MONDAY + WEEK + 6 * DAY)
    effect = effect_of(history, window, MONDAY + 2 * WEEK)
    assert effect.change is None
    assert effect.lines == ()
    assert effect.waiting == MONDAY + WEEK + 6 * DAY + 4 * WEEK


def test_the_programs_own_easier_week_is_judged(room: Room) -> None:
    room.train_weeks(8)
    history = read_history(room.repository, room.trainee_id)
    window = DeloadWindow(room.trainee_id, MONDAY + 4 * WEEK, MONDAY + 4 * WEEK + 6 * DAY)
    effect = effect_of(history, window, MONDAY + 9 * WEEK)
    assert effect.change is not None
    assert effect.waiting is None
    (squat,) = [each for each in effect.lines if each.exercise.key == "back-squat"]
    assert (squat.before, squat.after) == (4, 3)  # the easier week itself counts on neither side
    assert squat.change.low < squat.change.likely < squat.change.high


def test_sessions_after_today_do_not_count(room: Room) -> None:
    room.train_weeks(8)
    history = read_history(room.repository, room.trainee_id)
    window = DeloadWindow(room.trainee_id, MONDAY + 4 * WEEK, MONDAY + 4 * WEEK + 6 * DAY)
    assert effect_of(history, window, MONDAY + 5 * WEEK + DAY).change is None
