"""What a comparison says: who or what gains faster, how sure that is, and where both stand."""

from __future__ import annotations

import math
from statistics import NormalDist
from typing import Final

from PySide6.QtCore import QCoreApplication

from desktop.planning.progress import BAND, LineProgress, Statement
from desktop.planning.rivals import Rival, RivalKind
from views import words
from views.measures import Shown
from views.progress_series import Band, Second, Series, Spot
from views.progress_texts import tenths
from views.statement_texts import LEVEL

translate = QCoreApplication.translate

_TOLD, _CLEAR = 0.6, 0.9
_YEAR: Final = 364


def rival_word(rival: Rival) -> str:
    """A rival as it stands in the list."""
    match rival.kind:
        case RivalKind.EARLIER if rival.days >= _YEAR:
            return translate("Progress", "A year earlier")
        case RivalKind.EARLIER:
            text = translate("Progress", "The {weeks} before")
            return text.format(weeks=words.weeks(rival.days // 7))
        case RivalKind.VARIATION:
            return translate("Progress", "Variation: {name}").format(name=rival.name)
        case RivalKind.TRAINEE:
            return translate("Progress", "Trainee: {name}").format(name=rival.name)
    return rival.name


def rival_name(rival: Rival) -> str:
    """A rival as it is called in the legend and in sentences."""
    if rival.kind is RivalKind.EARLIER:
        return rival_word(rival)
    return rival.name


def comparison_text(
    own_name: str,
    series: Series,
    progress: LineProgress,
    rival: Rival,
    other: LineProgress | None,
) -> str:
    """The comparison in words. ``own_name``: of the line or trainee; ``other``: the progress of a
    rival of another line.
    """
    second = series.second
    if second is None:
        return ""
    if not second.spots:
        text = translate("Progress", "{name} has nothing of this to show.")
        return text.format(name=second.name)
    if rival.kind is RivalKind.EARLIER:
        return _spans(series, second)
    statements = (progress.statement, other.statement if other is not None else None)
    if series.shown is Shown.ESTIMATE and rival.kind is not RivalKind.VARIATION:
        return _lines(own_name, series, second, statements)
    return " ".join(
        _course(name, spots, series)
        for name, spots in ((_own(own_name, rival), series.spots), (second.name, second.spots))
        if spots
    )


def _own(name: str, rival: Rival) -> str:
    if rival.kind is RivalKind.VARIATION:
        return translate("Progress", "All other variations")
    return name


def _lines(
    own: str, series: Series, second: Second, statements: tuple[Statement | None, Statement | None]
) -> str:
    first_told, second_told = statements
    said: list[str] = []
    if first_told is not None and second_told is not None:
        text = translate("Progress", "{first}, {second} a week.")
        said.append(
            text.format(first=_gain(own, first_told), second=_gain(second.name, second_told))
        )
        said.append(_faster(own, second.name, first_told, second_told))
    else:
        missing = own if first_told is None else second.name
        text = translate("Progress", "{name} has too few sessions for a trend.")
        said.append(text.format(name=missing))
    said.append(_standing(own, series, second))
    return " ".join(part for part in said if part)


def _gain(name: str, statement: Statement) -> str:
    gain = statement.gain_per_week
    if abs(gain) < LEVEL:
        text = translate("Progress", "{name} level")
    elif gain > 0:
        text = translate("Progress", "{name} up {gain}")
    else:
        text = translate("Progress", "{name} down {gain}")
    return text.format(name=name, gain=f"{tenths(abs(gain) * 100)} %")


def _faster(own: str, other: str, first: Statement, second: Statement) -> str:
    """Which of two gains faster, by the probability that the difference is above zero."""
    apart = first.gain_per_week - second.gain_per_week
    spread = math.hypot(_sd(first), _sd(second))
    sure = NormalDist().cdf(apart / spread) if spread > 0 else float(apart > 0)
    name, share = (own, sure) if sure >= 0.5 else (other, 1 - sure)
    if share < _TOLD:
        return translate("Progress", "Which of the two gains faster is open.")
    if share < _CLEAR:
        text = translate("Progress", "{name} perhaps gains faster ({share}).")
    else:
        text = translate("Progress", "{name} gains faster ({share}).")
    return text.format(name=name, share=words.percent(min(share, 0.99)))


def _sd(statement: Statement) -> float:
    reach = NormalDist().inv_cdf((1 + BAND) / 2)
    return (statement.gain_high - statement.gain_low) / 2 / reach


def _standing(own: str, series: Series, second: Second) -> str:
    here, there = _latest(series.trend, series.spots), _latest(second.trend, second.spots)
    if here is None or there is None:
        return ""
    if series.relative:
        text = translate("Progress", "Of body mass: {own} {here} %, {other} {there} %.")
    else:
        text = translate("Progress", "Now: {own} {here} {unit}, {other} {there} {unit}.")
    return text.format(
        own=own, other=second.name, here=words.number(here, 0), there=words.number(there, 0),
        unit=series.unit.value,
    )  # fmt: skip


def _latest(trend: Band | None, spots: tuple[Spot, ...]) -> float | None:
    if trend is not None:
        return float(trend.middle[-1])
    return spots[-1].value if spots else None


def _spans(series: Series, second: Second) -> str:
    """This span beside the one before: its course by the trend, else from best to best."""
    first = series.today - second.moved
    now = [spot for spot in series.spots if spot.day > first]
    then = [spot for spot in second.spots if spot.day > first]
    this = translate("Progress", "These {weeks}").format(weeks=words.weeks(second.moved // 7))
    said = []
    for name, spots, trend in ((this, now, series.trend), (second.name, then, second.trend)):
        ends = _ends(trend, first, series.today)
        if ends is not None and spots:
            text = translate("Progress", "{name}: {first} {arrow} {last} {unit} ({change}).")
            low, high = tenths(ends[0]), tenths(ends[1])
            change = _signed(ends[1] / ends[0] - 1)
            course = {"first": low, "last": high, "arrow": words.ARROW, "change": change}
            said.append(text.format(name=name, unit=series.unit.value, **course))
        elif spots:
            said.append(_course(name, tuple(spots), series))
        else:
            said.append(translate("Progress", "{name}: no session.").format(name=name))
    return " ".join(said)


def _ends(trend: Band | None, first: float, last: float) -> tuple[float, float] | None:
    if trend is None:
        return None
    inside = (trend.days >= first) & (trend.days <= last)
    if inside.sum() < 2:
        return None
    return float(trend.middle[inside][0]), float(trend.middle[inside][-1])


def _signed(change: float) -> str:
    sign = "+" if change >= 0 else words.MINUS
    return f"{sign}{tenths(abs(change) * 100)} %"


def _course(name: str, spots: tuple[Spot, ...], series: Series) -> str:
    """How often, and from the first to the best: "Floor: 4 sessions, 6 to 12 reps"."""
    count = len(spots)
    sessions = (
        translate("Progress", "1 session")
        if count == 1
        else translate("Progress", "{count} sessions").format(count=words.number(count))
    )
    text = translate("Progress", "{name}: {sessions}, first {first}, best {best}.")
    return text.format(
        name=f"{name[:1].upper()}{name[1:]}",
        sessions=sessions,
        first=_value(spots[0].value, series),
        best=_value(max(spot.value for spot in spots), series),
    )


def _value(value: float, series: Series) -> str:
    match series.shown:
        case Shown.VARIATION:
            return series.values[int(value)]
        case Shown.HOLD:
            return words.hold(round(value))
        case Shown.MOMENT:
            return f"{words.number(value, 0)} %"
        case Shown.AT_LOAD:
            return words.reps(round(value))
        case Shown.SET if series.bodyweight:
            return words.reps(round(value))
        case Shown.SET:
            return words.number(value, 0)
    if series.relative:
        return f"{words.number(value, 0)} %"
    return f"{words.number(round(value, 6), 1)} {series.unit.value}"
