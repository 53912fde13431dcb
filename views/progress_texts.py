"""What the progress screen says of one session, one week and the measures."""

from __future__ import annotations

import math
from collections.abc import Mapping
from datetime import date, timedelta
from statistics import NormalDist
from typing import Final

from PySide6.QtCore import QCoreApplication, QDate, QLocale

from desktop.planning.marks import Mark, MarkKind
from desktop.planning.progress import (
    BAND,
    GoalLine,
    Point,
    Week,
)
from desktop.training.quantities import Unit
from desktop.training.session import SetDone
from desktop.training.trainee import AbsenceKind, Goal, GoalKind
from views import words
from views.calendar_words import day_and_month
from views.measures import Shown
from views.progress_series import MANY_REPS, Series, Shape, Spot

translate = QCoreApplication.translate

_FAR_AWAY: Final = timedelta(days=300)


def measure_word(shown: Shown, *, bodyweight: bool) -> str:
    """The measure in the words of a button."""
    return _measure_words(shown, bodyweight)[0]


def measure_detail(shown: Shown, *, bodyweight: bool) -> str:
    """The measure in full, for a heading."""
    return _measure_words(shown, bodyweight)[1]


def _measure_words(shown: Shown, bodyweight: bool) -> tuple[str, str]:
    match shown:
        case Shown.ESTIMATE:
            return (
                translate("Progress", "Estimated maximum"),
                translate("Progress", "estimated one-repetition maximum"),
            )
        case Shown.LOAD if bodyweight:
            return (
                translate("Progress", "Effective load"),
                translate("Progress", "highest effective load of a session"),
            )
        case Shown.LOAD:
            return (
                translate("Progress", "Top load"),
                translate("Progress", "highest load of a session"),
            )
        case Shown.SET if bodyweight:
            return (
                translate("Progress", "Reps"),
                translate("Progress", "reps of the best set"),
            )
        case Shown.SET:
            return (
                translate("Progress", "Best set"),
                translate("Progress", "best set, load × reps"),
            )
        case Shown.AT_LOAD:
            return (
                translate("Progress", "Reps at a load"),
                translate("Progress", "most reps of a set at one load"),
            )
        case Shown.HOLD:
            return (
                translate("Progress", "Hold"),
                translate("Progress", "hold of the best set"),
            )
        case Shown.MOMENT:
            return (
                translate("Progress", "Moment"),
                translate("Progress", "moment of the best set, as a share of the full position"),
            )
        case _:
            return (
                translate("Progress", "Variation"),
                translate("Progress", "variation of the best set"),
            )


def axis_unit(series: Series) -> str:
    """What the numbers of the value axis are."""
    if series.relative:
        return translate("Progress", "% of body mass")
    match series.shown:
        case Shown.HOLD:
            return "s"
        case Shown.MOMENT:
            return translate("Progress", "% of the full position")
        case Shown.AT_LOAD:
            text = translate("Progress", "reps at {load}")
            return text.format(load=words.load(series.load_g or 0, series.unit))
        case Shown.VARIATION:
            return ""
        case Shown.SET if series.bodyweight:
            return translate("Progress", "reps")
        case Shown.SET:
            return f"{series.unit.value} {words.TIMES} " + translate("Progress", "reps")
    return series.unit.value


def legend_text(series: Series) -> str:
    """The shapes that are to be seen, each with its meaning."""
    meanings = {
        Shape.SQUARE: translate("Progress", "■ up to 5 reps"),
        Shape.DISC: translate("Progress", "● 6 to 10 reps"),
    }
    seen = {spot.shape for spot in series.spots}
    parts: list[str] = []
    if series.shown not in (Shown.HOLD, Shown.MOMENT, Shown.VARIATION):
        parts += [text for shape, text in meanings.items() if shape in seen]
        if Shape.RING in seen or Shape.HOLLOW_SQUARE in seen:
            parts.append(_hollow(series))
    if not all(spot.counted for spot in series.spots):
        parts.append(translate("Progress", "paler: deload or pain, not counted"))
    if any(series.records):
        parts.append(translate("Progress", "★ best so far"))
    if series.pains:
        parts.append(translate("Progress", "▲ pain"))
    if series.second is not None:
        parts.append(translate("Progress", "◇ – – {name}").format(name=series.second.name))
    return "   ".join(parts)


def _hollow(series: Series) -> str:
    """Why spots are hollow, by what is to be seen."""
    hollow = {Shape.RING: "○", Shape.HOLLOW_SQUARE: "□"}
    seen = {spot.shape for spot in series.spots}
    signs = " ".join(sign for shape, sign in hollow.items() if shape in seen)
    spots = [spot for spot in series.spots if spot.shape in hollow]
    if series.shown is not Shown.ESTIMATE:
        text = translate("Progress", "{signs} 11 reps and more")
    elif all(spot.best.amount >= MANY_REPS for spot in spots):
        text = translate("Progress", "{signs} 11 reps and more, uncertain")
    elif all(spot.point is not None and spot.point.rir is None for spot in spots):
        text = translate("Progress", "{signs} uncertain, reserve not told")
    else:
        text = translate("Progress", "{signs} uncertain")
    return text.format(signs=signs)


def spot_text(spot: Spot, series: Series, today: date, names: dict[str, str]) -> str:
    """One session read out: "Mon 23 Nov: 5 × 70 kg, 2 in reserve. Estimated 82 kg (78 to 86)."

    ``names``: the variations by key.
    """
    day = words.short_day(spot.best.day, today)
    done = set_words(spot, series, names)
    notes = [translate("Progress", "{day}: {done}").format(day=day, done=done)]
    if spot.point is not None and series.shown is Shown.ESTIMATE:
        notes.append(_estimate_words(spot.point, series.unit))
    elif spot.best.top_g is not None and series.bodyweight and series.shown is not Shown.HOLD:
        text = translate("Progress", "effective load {load}")
        notes.append(text.format(load=_mass(spot.best.top_g, series.unit)))
    elif series.shown is Shown.SET and spot.best.work_g is not None:
        text = translate("Progress", "load × reps {work}")
        notes.append(text.format(work=words.number(spot.value, 0)))
    notes += asides(spot, series, record=is_record(spot, series))
    return "; ".join(notes)


def week_text(week: Week, today: date, unit: Unit) -> str:
    """One week read out: "Week of Mon 9 Nov: 9 of 12 hard sets planned; load × reps 4,320 kg"."""
    day = words.short_day(week.first, today)
    if week.planned_sets:
        text = translate("Progress", "Week of {day}: {done} of {planned} hard sets planned")
    else:
        text = translate("Progress", "Week of {day}: {done} hard sets, none planned")
    said = [text.format(day=day, done=week.hard_sets, planned=week.planned_sets)]
    if week.volume_g:
        volume = words.number(week.volume_g / float(unit.grams_each), 0)
        work = f"{volume} {unit.value}"
        said.append(translate("Progress", "load × reps {work}").format(work=work))
    return "; ".join(said)


def mark_word(mark: Mark) -> str:
    """What stands in a strip."""
    if mark.kind is MarkKind.DELOAD:
        return translate("Progress", "deload")
    return {
        AbsenceKind.AWAY.value: translate("Progress", "away"),
        AbsenceKind.ILLNESS.value: translate("Progress", "ill"),
        AbsenceKind.INJURY.value: translate("Progress", "injured"),
    }.get(mark.label, mark.label)


def goal_words(line: GoalLine, unit: Unit, names: dict[str, str]) -> str:
    """What a goal asks: "82 kg", "5 × 82 kg", "20 reps", "30 s", the name of a variation."""
    return asked_words(line.goal, unit, names)


def asked_words(goal: Goal, unit: Unit, names: Mapping[str, str]) -> str:
    """What a goal asks, as `goal_words`."""
    match goal.kind:
        case GoalKind.ONE_REP_MAX:
            load = words.load(goal.value, unit)
            return load if goal.reps is None else f"{goal.reps} {words.TIMES} {load}"
        case GoalKind.REPS:
            return words.reps(goal.value)
        case GoalKind.HOLD:
            return words.hold(goal.value)
    return names.get(goal.variation or "", goal.variation or "")


def month_day(day: date, today: date, locale: QLocale | None = None) -> str:
    """A day in a sentence: "7 December"; with its year where that could be mistaken."""
    chosen = locale or QLocale()
    pattern = day_and_month(chosen, year=abs(day - today) > _FAR_AWAY)
    return chosen.toString(QDate(day.year, day.month, day.day), pattern)


def tenths(value: float) -> str:
    """A number with one decimal, also where that is 0."""
    text = words.number(round(value, 6), 1)
    mark = QLocale().decimalPoint()
    return text if mark in text else f"{text}{mark}0"


def set_words(spot: Spot, series: Series, names: dict[str, str], *, reserve: bool = True) -> str:
    """The set that a spot stands for; ``reserve``: with its repetitions in reserve."""
    if series.shown is Shown.ESTIMATE and spot.point is not None:
        point = spot.point
        done = SetDone(point.added_g, point.reps, variation=point.variation, rir=point.rir)
    else:
        done = spot.best.done
    said = done_words(done, series.unit, names, bodyweight=series.bodyweight)
    return f"{said}, {_reserve(done.rir)}" if reserve and done.rir is not None else said


def done_words(done: SetDone, unit: Unit, names: dict[str, str], *, bodyweight: bool) -> str:
    """A set in short: "5 × 70 kg"; with body mass "8 reps with 5 kg, hands on the floor"."""
    if not bodyweight:
        return words.set_words(done, unit)
    amount = words.hold(done.seconds) if done.seconds is not None else words.reps(done.reps or 0)
    loaded = " ".join(part for part in (amount, words.added_load(done.load_g, unit)) if part)
    variation = names.get(done.variation or "", done.variation or "")
    return ", ".join(part for part in (loaded, variation) if part)


def _reserve(rir: float) -> str:
    return translate("Progress", "{count} in reserve").format(count=words.number(rir, 1))


def _estimate_words(point: Point, unit: Unit) -> str:
    reach = NormalDist().inv_cdf((1 + BAND) / 2) * point.log_sd
    text = translate("Progress", "estimated {load} (80 %: {low} to {high})")
    if not point.certain:
        text = translate("Progress", "estimated {load}, uncertain (80 %: {low} to {high})")
    low, high = (point.one_rep_max_g * math.exp(way * reach) for way in (-1, 1))
    return text.format(
        load=_mass(point.one_rep_max_g, unit),
        low=_number(low, unit),
        high=_number(high, unit),
    )


def asides(spot: Spot, series: Series, *, record: bool) -> list[str]:
    """What else is to be said of a session: pain, a test, a best, left out of the trend."""
    said: list[str] = []
    pain = next((mark.value for mark in series.pains if mark.first == spot.best.day), 0)
    if pain:
        said.append(translate("Progress", "pain {pain} of 10").format(pain=pain))
    if spot.point is not None and spot.point.test:
        said.append(translate("Progress", "a test"))
    if record:
        said.append(translate("Progress", "best so far"))
    if not spot.counted:
        said.append(translate("Progress", "not counted"))
    return said


def is_record(spot: Spot, series: Series) -> bool:
    """Whether nothing before this session was as much."""
    pairs = zip(series.spots, series.records, strict=False)
    return any(record and each is spot for each, record in pairs)


def _mass(mass_g: float, unit: Unit) -> str:
    return f"{_number(mass_g, unit)} {unit.value}"


def _number(mass_g: float, unit: Unit) -> str:
    return words.number(round(mass_g / float(unit.grams_each), 6), 1)
