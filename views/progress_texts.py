"""What the progress screen says: the answer in a sentence, one session, one week, the measures."""

from __future__ import annotations

import math
from datetime import date, timedelta
from statistics import NormalDist
from typing import Final

from PySide6.QtCore import QCoreApplication, QDate, QLocale

from desktop.planning.marks import Mark, MarkKind
from desktop.planning.progress import (
    BAND,
    LEAST_POINTS,
    LEAST_SPAN,
    BestSet,
    GoalLine,
    LineProgress,
    Point,
    Statement,
    Week,
)
from desktop.training.exercises import LoadingKind, Measure
from desktop.training.quantities import Unit
from desktop.training.session import SetDone
from desktop.training.trainee import AbsenceKind, GoalKind
from views import words
from views.progress_series import MANY_REPS, Series, Shape, Shown, Spot

translate = QCoreApplication.translate

LEVEL: Final = 0.0005
"""A gain a week that rounds to nothing."""

_UNLIKELY, _LIKELY, _VERY_LIKELY = 0.2, 0.55, 0.85
_LONG_AGO: Final = timedelta(days=14)
_FAR_AWAY: Final = timedelta(days=300)


def statement_text(progress: LineProgress, unit: Unit) -> str:
    """The answer in words: gain a week, plateau or not, when the goal comes; or what is missing."""
    if not progress.best_sets:
        return ""
    sentences: list[str] = []
    if progress.statement is not None:
        sentences += [_gain(progress.statement), _plateau(progress.statement)]
    else:
        sentences += [_best(progress, unit), _missing(progress)]
    sentences += [_goal(line, progress, unit) for line in progress.goals]
    sentences.append(_pause(progress))
    return " ".join(sentence for sentence in sentences if sentence)


def measure_word(shown: Shown, *, bodyweight: bool) -> str:
    """The measure in the words of a button."""
    match shown:
        case Shown.ESTIMATE:
            return translate("Progress", "Estimated maximum")
        case Shown.LOAD if bodyweight:
            return translate("Progress", "Effective load")
        case Shown.LOAD:
            return translate("Progress", "Top load")
        case Shown.SET if bodyweight:
            return translate("Progress", "Reps")
        case Shown.SET:
            return translate("Progress", "Best set")
        case Shown.HOLD:
            return translate("Progress", "Hold")
        case _:
            return translate("Progress", "Variation")


def measure_detail(shown: Shown, *, bodyweight: bool) -> str:
    """The measure in full, for a heading."""
    match shown:
        case Shown.ESTIMATE:
            return translate("Progress", "estimated one-repetition maximum")
        case Shown.LOAD if bodyweight:
            return translate("Progress", "highest effective load of a session")
        case Shown.LOAD:
            return translate("Progress", "highest load of a session")
        case Shown.SET if bodyweight:
            return translate("Progress", "reps of the best set")
        case Shown.SET:
            return translate("Progress", "best set, load × reps")
        case Shown.HOLD:
            return translate("Progress", "hold of the best set")
        case _:
            return translate("Progress", "variation of the best set")


def axis_unit(series: Series) -> str:
    """What the numbers of the value axis are."""
    match series.shown:
        case Shown.HOLD:
            return "s"
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
    if series.shown not in (Shown.HOLD, Shown.VARIATION):
        parts += [text for shape, text in meanings.items() if shape in seen]
        if Shape.RING in seen or Shape.HOLLOW_SQUARE in seen:
            parts.append(_hollow(series))
    if not all(spot.counted for spot in series.spots):
        parts.append(translate("Progress", "paler: deload or pain, not counted"))
    if series.pains:
        parts.append(translate("Progress", "▲ pain"))
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
    notes += asides(spot, series)
    return "; ".join(notes)


def week_text(week: Week, today: date) -> str:
    """One week read out: "Week of Mon 9 Nov: 9 hard sets of 12 planned"."""
    day = words.short_day(week.first, today)
    if week.planned_sets:
        text = translate("Progress", "Week of {day}: {done} of {planned} hard sets planned")
    else:
        text = translate("Progress", "Week of {day}: {done} hard sets, none planned")
    return text.format(day=day, done=week.hard_sets, planned=week.planned_sets)


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
    """What a goal asks: "82 kg", "20 reps", "30 s", the name of a variation."""
    goal = line.goal
    match goal.kind:
        case GoalKind.ONE_REP_MAX:
            return words.load(goal.value, unit)
        case GoalKind.REPS:
            return words.reps(goal.value)
        case GoalKind.HOLD:
            return words.hold(goal.value)
    return names.get(goal.variation or "", goal.variation or "")


def month_day(day: date, today: date, locale: QLocale | None = None) -> str:
    """A day in a sentence: "7 December"; with its year where that could be mistaken."""
    chosen = locale or QLocale()
    order = chosen.dateFormat(QLocale.FormatType.ShortFormat).upper()
    month_first = order.find("M") < order.find("D")
    pattern = "MMMM d" if month_first else f"d{'.' if '.' in order else ''} MMMM"
    if abs(day - today) > _FAR_AWAY:
        pattern += ", yyyy" if month_first else " yyyy"
    return chosen.toString(QDate(day.year, day.month, day.day), pattern)


def _gain(statement: Statement) -> str:
    gain = statement.gain_per_week
    if abs(gain) < LEVEL:
        text = translate("Progress", "Level: {gain} a week (80 %: {low} to {high}).")
    elif gain > 0:
        text = translate("Progress", "Up {gain} a week (80 %: {low} to {high}).")
    else:
        text = translate("Progress", "Down {gain} a week (80 %: {low} to {high}).")
    return text.format(
        gain=f"{tenths(abs(gain) * 100)} %",
        low=tenths(statement.gain_low * 100),
        high=tenths(statement.gain_high * 100),
    )


def tenths(value: float) -> str:
    """A number with one decimal, also where that is 0."""
    text = words.number(round(value, 6), 1)
    mark = QLocale().decimalPoint()
    return text if mark in text else f"{text}{mark}0"


def _plateau(statement: Statement) -> str:
    p = statement.plateau
    if statement.gain_per_week <= -LEVEL and p >= _LIKELY:
        text = translate("Progress", "No gain is to be seen ({share}).")
    elif p < _UNLIKELY:
        text = translate("Progress", "A plateau is unlikely ({share}).")
    elif p < _LIKELY:
        text = translate("Progress", "A plateau is possible ({share}).")
    elif p < _VERY_LIKELY:
        text = translate("Progress", "A plateau is likely ({share}).")
    else:
        text = translate("Progress", "A plateau is very likely ({share}).")
    return text.format(share=words.percent(min(max(p, 0.01), 0.99)))


def _best(progress: LineProgress, unit: Unit) -> str:
    """The best of what little there is."""
    names = {step.key: step.name for step in progress.scale}
    bodyweight = progress.exercise.loading is LoadingKind.BODYWEIGHT
    best = _hardest(progress)
    text = translate("Progress", "Best so far ({day}): {done}.")
    return text.format(
        done=_done_words(best.done, unit, names, bodyweight=bodyweight),
        day=words.short_day(best.day, progress.today),
    )


def _hardest(progress: LineProgress) -> BestSet:
    places = {step.key: place for place, step in enumerate(progress.scale)}

    def worth(best: BestSet) -> tuple[float, int, int, int]:
        done = best.done
        demand = (best.top_g or 0.0) * (1 + (done.reps or 0) / 30)
        return (demand, places.get(done.variation or "", -1), done.load_g, best.amount)

    if progress.exercise.measure is Measure.HOLD:
        return max(progress.best_sets, key=lambda best: worth(best)[1:])
    return max(progress.best_sets, key=worth)


def _missing(progress: LineProgress) -> str:
    """What a trend still needs."""
    if progress.exercise.measure is Measure.HOLD:
        return ""
    counted = [point for point in progress.points if point.counted]
    if not counted:
        if progress.points:
            return translate("Progress", "Sessions of deload or pain make no trend.")
        if all(best.top_g is None for best in progress.best_sets):
            return translate("Progress", "Variations known by their order alone make no trend.")
        return translate("Progress", "Such sets give no estimate of the maximum, so no trend.")
    short = LEAST_POINTS - len(counted)
    if short == 1:
        return translate("Progress", "One more session makes a trend.")
    if short > 1:
        text = translate("Progress", "{count} more sessions make a trend.")
        return text.format(count=_spelled(short))
    ready = counted[0].day + LEAST_SPAN
    text = translate("Progress", "A trend needs two weeks: from {day} on.")
    return text.format(day=month_day(ready, progress.today))


def _spelled(count: int) -> str:
    return {
        2: translate("Progress", "Two"),
        3: translate("Progress", "Three"),
        4: translate("Progress", "Four"),
    }.get(count, words.number(count))


def _goal(line: GoalLine, progress: LineProgress, unit: Unit) -> str:
    names = {step.key: step.name for step in progress.scale}
    what = goal_words(line, unit, names)
    today = progress.today
    if line.goal.by is not None:
        wanted = translate("Progress", "{goal} (wanted by {day})")
        what = wanted.format(goal=what, day=month_day(line.goal.by, today))
    if line.goal.kind is not GoalKind.ONE_REP_MAX or progress.statement is None:
        return translate("Progress", "Goal: {goal}.").format(goal=what)
    if line.latest is not None and line.latest <= today:
        text = translate("Progress", "{goal} is reached.")
    elif line.earliest is None:
        text = translate("Progress", "{goal}: not within a year at this rate.")
    elif line.latest is None:
        text = translate("Progress", "{goal}: {first} at the earliest, perhaps not within a year.")
        if line.earliest <= today:
            text = translate("Progress", "{goal} may be reached, or not within a year.")
    elif line.earliest <= today:
        text = translate("Progress", "{goal} by {last}, perhaps already.")
    else:
        text = translate("Progress", "{goal} between {first} and {last}.")
    return text.format(
        goal=what,
        first=month_day(line.earliest, today) if line.earliest else "",
        last=month_day(line.latest, today) if line.latest else "",
    )


def _pause(progress: LineProgress) -> str:
    """That nothing was done lately, which the trend cannot know."""
    last = progress.best_sets[-1].day
    if progress.today - last <= _LONG_AGO:
        return ""
    text = translate("Progress", "Last done {days} ago.")
    return text.format(days=words.days((progress.today - last).days))


def set_words(spot: Spot, series: Series, names: dict[str, str], *, reserve: bool = True) -> str:
    """The set that a spot stands for; ``reserve``: with its repetitions in reserve."""
    if series.shown is Shown.ESTIMATE and spot.point is not None:
        point = spot.point
        done = SetDone(point.added_g, point.reps, variation=point.variation, rir=point.rir)
    else:
        done = spot.best.done
    said = _done_words(done, series.unit, names, bodyweight=series.bodyweight)
    return f"{said}, {_reserve(done.rir)}" if reserve and done.rir is not None else said


def _done_words(done: SetDone, unit: Unit, names: dict[str, str], *, bodyweight: bool) -> str:
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


def asides(spot: Spot, series: Series) -> list[str]:
    """What else is to be said of a session: pain, a test, left out of the trend."""
    said: list[str] = []
    pain = next((mark.value for mark in series.pains if mark.first == spot.best.day), 0)
    if pain:
        said.append(translate("Progress", "pain {pain} of 10").format(pain=pain))
    if spot.point is not None and spot.point.test:
        said.append(translate("Progress", "a test"))
    if not spot.counted:
        said.append(translate("Progress", "not counted"))
    return said


def _mass(mass_g: float, unit: Unit) -> str:
    return f"{_number(mass_g, unit)} {unit.value}"


def _number(mass_g: float, unit: Unit) -> str:
    return words.number(round(mass_g / float(unit.grams_each), 6), 1)
