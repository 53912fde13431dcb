"""Words for load: the week in a sentence, its figures with what they mean, and the sources."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QCoreApplication, QLocale

from desktop.planning.load import DayLoad, LoadHistory, TrainedWeek, WellnessMeans
from desktop.training.session import Activity
from desktop.training.volume import MARKS
from views import words
from views.language import marks_said

translate = QCoreApplication.translate


@dataclass(frozen=True, slots=True)
class Figure:
    """One figure of a week: its name, its value, what it is in short, and in one sentence."""

    name: str
    value: str
    short: str
    meaning: str


def week_title(week: TrainedWeek, today: date) -> str:
    """ "This week", or the week by its first day."""
    if week.first <= today <= week.last:
        return translate("Load", "This week")
    text = translate("Load", "Week from {day}")
    return text.format(day=words.short_day(week.first, today))


def week_span(week: TrainedWeek, today: date) -> str:
    """The first and last day of a week."""
    first, last = words.short_day(week.first, today), words.short_day(week.last, today)
    return f"{first} \N{EN DASH} {last}"


def week_sentence(told: LoadHistory, index: int) -> str:
    """How much the week was, against the weeks before it, and what is missing."""
    week = told.weeks[index]
    if not week.done and not week.activities and not week.load.unrated:
        return _nothing(told, week)
    usual = told.usual_load(index)
    running = week.first <= told.today <= week.last
    said = [_amount(week, usual, running=running), *_missing(told, week)]
    return " ".join(said)


def _nothing(told: LoadHistory, week: TrainedWeek) -> str:
    if all(day.away for day in week.days):
        return translate("Load", "Away the whole week.")
    if week.first <= told.today <= week.last:
        return translate("Load", "Nothing is recorded this week yet.")
    return translate("Load", "Nothing was recorded in this week.")


def _amount(week: TrainedWeek, usual: float | None, *, running: bool) -> str:
    load = load_text(week.load.load)
    least = translate("Load", "at least {load}").format(load=load)
    shown = least if week.load.incomplete else load
    if running:
        if not usual:
            return translate("Load", "The load so far is {load}.").format(load=shown)
        text = translate(
            "Load", "The load so far is {load}; the weeks before had {usual} on average."
        )
        return text.format(load=shown, usual=load_text(usual))
    if not usual:
        return translate("Load", "The week's load was {load}.").format(load=shown)
    over = week.load.load / usual - 1
    if abs(over) < 0.05:
        text = translate("Load", "The week's load was {load}, as in the weeks before.")
        return text.format(load=shown)
    text = (
        translate("Load", "The week's load was {load}, {by} more than the weeks before ({usual}).")
        if over > 0
        else translate(
            "Load", "The week's load was {load}, {by} less than the weeks before ({usual})."
        )
    )
    return text.format(load=shown, by=words.percent(abs(over)), usual=load_text(usual))


def _missing(told: LoadHistory, week: TrainedWeek) -> list[str]:
    said = []
    if week.load.unrated:
        text = (
            translate("Load", "Incomplete: one session has no effort or no minutes.")
            if week.load.unrated == 1
            else translate("Load", "Incomplete: {count} sessions have no effort or no minutes.")
        )
        said.append(text.format(count=week.load.unrated))
    if not told.recorded:
        text = translate("Load", "Incomplete: not every activity of {name} is recorded.")
        said.append(text.format(name=told.trainee.name))
    return said


def load_text(load: float) -> str:
    """A load in arbitrary units."""
    return words.number(round(load), 0)


def figures_of(
    week: TrainedWeek, *, sample: bool = False, averages: tuple[float, float] | None = None
) -> tuple[Figure, ...]:
    """The figures of a week, each with its meaning; ``averages`` over 7 and 28 days at its end."""
    deviation = (
        translate("Load", "the sample's standard deviation")
        if sample
        else translate("Load", "the population's standard deviation")
    )
    monotony = translate(
        "Load",
        "The mean of the seven daily loads over {deviation}: the more alike the days, the higher.",
    )
    return (
        Figure(
            translate("Load", "Load"),
            ("\N{GREATER-THAN OR EQUAL TO} " if week.load.incomplete else "")
            + load_text(week.load.load),
            translate("Load", "effort × minutes, added up"),
            translate(
                "Load", "Effort of each session or activity (0-10) times its minutes, summed."
            ),
        ),
        Figure(
            translate("Load", "Monotony"),
            monotony_text(week.load.monotony) or "\N{EN DASH}",
            translate("Load", "mean of the days over their deviation"),
            monotony.format(deviation=deviation),
        ),
        Figure(
            translate("Load", "Strain"),
            "\N{EN DASH}" if week.load.strain is None else load_text(week.load.strain),
            translate("Load", "load × monotony"),
            translate("Load", "The week's load times its monotony."),
        ),
        Figure(
            translate("Load", "Trend"),
            "\N{EN DASH}" if averages is None else " / ".join(map(load_text, averages)),
            translate("Load", "a day, over 7 / over 28 days"),
            translate(
                "Load",
                "Exponentially weighted averages of the daily load: the short one above the long "
                "one says that the load rises.",
            ),
        ),
        Figure(
            translate("Load", "Sessions"),
            _of(week.done, week.planned),
            translate("Load", "done of planned"),
            translate("Load", "Sessions done, of the training days that the program names."),
        ),
        Figure(
            translate("Load", "Hard sets"),
            _of(_sets(week, done=True), _sets(week, done=False)),
            translate("Load", "done of planned"),
            translate("Load", "Working sets done, of those asked or planned."),
        ),
    )


def _sets(week: TrainedWeek, *, done: bool) -> int:
    volume = week.sets_done if done else week.sets_planned
    return round(sum(volume.by_pattern.values()))


def _of(done: int, planned: int | None) -> str:
    if not planned:
        return words.number(done)
    text = translate("Load", "{done} of {planned}")
    return text.format(done=words.number(done), planned=words.number(planned))


def monotony_text(value: float | None) -> str:
    """Monotony with two places, so that a row of them lines up; "" where it is not defined."""
    return "" if value is None else QLocale().toString(value, "f", 2)


def wellness_text(means: WellnessMeans) -> str:
    """The week's wellness in a quiet line; "" where nobody answered."""
    if not means.answers:
        return ""
    named = (
        (translate("Load", "sleep"), means.sleep),
        (translate("Load", "soreness"), means.soreness),
        (translate("Load", "stress"), means.stress),
        (translate("Load", "motivation"), means.motivation),
    )
    told = [f"{name} {words.number(round(value, 1), 1)}" for name, value in named if value]
    text = translate("Load", "Wellness, 1 bad to 5 good: {told}")
    return text.format(told=words.DOT.join(told))


def sources_text() -> str:
    """Where the figures and marks come from."""
    marks = marks_said(MARKS)
    load = translate(
        "Load",
        "Load, monotony and strain: Foster 1998, Med Sci Sports Exerc 30(7):1164-1168; days "
        "without an entry count 0; which standard deviation is meant is not said there. Averages "
        "over 7 and 28 days, exponentially weighted: Williams 2017, Br J Sports Med 51(3):209-210, "
        "DOI 10.1136/bjsports-2016-096589. No ratio of the two is shown: as a sign of injury risk "
        "it is criticised (Impellizzeri 2021, Sports Med, DOI 10.1007/s40279-020-01378-6).",
    )
    sets = translate("Load", "Marks of hard sets a week by muscle, as information, not an order:")
    return f"{load}\n{sets}\n{marks}"


def day_text(day: DayLoad, today: date) -> str:
    """One day read aloud: "Mon 23 Nov: 330 in sessions and 240 in other activities"."""
    said = []
    if day.sessions:
        said.append(translate("Load", "{load} in sessions").format(load=load_text(day.sessions)))
    if day.activities:
        text = translate("Load", "{load} in other activities")
        said.append(text.format(load=load_text(day.activities)))
    if day.unrated:
        said.append(translate("Load", "a session without effort or minutes"))
    if not said:
        said.append(translate("Load", "away") if day.away else translate("Load", "nothing"))
    return f"{words.short_day(day.day, today)}: {words.listed(said)}"


def activity_act(activity: Activity) -> str:
    """What an edit of an activity is called for undo."""
    text = translate("Load", "{name} on {day}")
    return text.format(name=activity.name, day=words.short_day(activity.day))
