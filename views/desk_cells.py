"""What stands in a row of the desk: words by column, from what is known of a trainee."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QCoreApplication

from desktop.planning.desk import DeloadDue, DeloadWhen, DeskRow
from desktop.planning.roster import HeadlineCode
from desktop.training.brief import GoalBrief, Spark, SparkKind
from desktop.training.name_order import name_key
from desktop.training.trainee import GoalKind
from views import words
from views.caution_texts import (
    Limits,
    caution_text,
    headline_text,
    proposal_text,
    severity_word,
    short_caution,
)
from views.desk_columns import NOTHING, Cells, Column, since_words, when_words
from views.work_areas import CAUTION, DELOAD, PROGRAM, PROGRESS, SESSION, WEEK

if TYPE_CHECKING:
    from desktop.training.quantities import Unit

translate = QCoreApplication.translate

_NEAR_DAYS = 300  # days ahead that are told without their year
_TOLD_ELSEWHERE = (HeadlineCode.DUE_TODAY, HeadlineCode.NEXT, HeadlineCode.LAST_SEEN)


def cells_of(row: DeskRow, today: date, limits: Limits) -> Cells:
    """The cells of one trainee."""
    entry = row.entry
    caution = entry.cautions[0] if entry.cautions else None
    texts = {
        Column.NAME: entry.trainee.name,
        Column.NEED: _need(row),
        Column.LAST: since_words(entry.last, today),
        Column.NEXT: when_words(entry.next, today),
        Column.DONE: _done(row),
        Column.STILL: _still(row),
        Column.DELOAD: _deload(row.deload, today),
        Column.GOAL: _goal(row.goal, today),
        Column.COURSE: _course(row.spark, row, entry.trainee.unit),
    }
    areas = dict.fromkeys(Column, SESSION) | {
        Column.NEED: CAUTION if caution else _usual_screen(row),
        Column.DONE: WEEK,
        Column.STILL: PROGRESS,
        Column.DELOAD: DELOAD,
        Column.GOAL: PROGRESS,
        Column.COURSE: PROGRESS,
    }
    return Cells(
        trainee_id=entry.trainee.id or 0,
        texts=tuple(texts[column] for column in Column),
        areas=tuple(areas[column] for column in Column),
        why=_why(row, today, limits),
        severity=caution.severity.value if caution else "",
        due=entry.due_today,
        marked=_marked(row, today),
        course=row.spark.points,
        known=row.known,
        proposal=proposal_text(caution.proposal) if caution else "",
    )


def rank_of(row: DeskRow, column: Column) -> Any:
    """What a row is sorted by in a column, the least first; None where there is nothing."""
    match column:
        case Column.NAME:
            return name_key(row.entry.trainee.name)
        case Column.LAST:
            return row.entry.last
        case Column.NEXT:
            return row.entry.next
        case Column.DONE:
            return row.done / row.planned if row.planned else None
        case Column.STILL:
            surest = max((one.probability for one in row.still), default=0.0)
            return (-len(row.still), -surest) if row.still else None
        case Column.DELOAD if row.deload is not None:
            return (row.deload.when is not DeloadWhen.RUNS, row.deload.day)
        case Column.GOAL if row.goal is not None:
            return _goal_rank(row.goal)
        case Column.COURSE if len(row.spark.points) > 1 and row.spark.points[0][1] > 0:
            return row.spark.points[-1][1] / row.spark.points[0][1]
    return None


def line_words(row: DeskRow, line_id: int | None) -> str:
    """A line as "Back squat" or "Back squat, heavy"; "" where the row does not speak of it."""
    return ", ".join(part for part in row.line_name(line_id) if part)


def _why(row: DeskRow, today: date, limits: Limits) -> str:
    """The most serious caution in full, and how many more there are."""
    if not row.entry.cautions:
        return ""
    first, *others = row.entry.cautions
    unit, line = row.entry.trainee.unit, line_words(row, first.line_id)
    text = caution_text(first, limits, unit, today, line)
    return f"{text.rstrip('.')}{_more(len(others))}"


def _marked(row: DeskRow, today: date) -> frozenset[Column]:
    """What is due, and what stands still."""
    found = {Column.NEXT} if row.entry.due_today else set()
    found |= {Column.STILL} if row.still else set()
    deload = row.deload
    if deload is not None and (
        deload.when is DeloadWhen.ADVISED or (deload.when is DeloadWhen.DUE and deload.day <= today)
    ):
        found.add(Column.DELOAD)
    return frozenset(found)


def _more(count: int) -> str:
    if not count:
        return ""
    more = translate("Desk", "and {count} more").format(count=words.number(count))
    return f"{words.DOT}{more}"


def _usual_screen(row: DeskRow) -> str:
    return PROGRAM if row.entry.headline.code is HeadlineCode.NO_PROGRAM else SESSION


def _need(row: DeskRow) -> str:
    """The most serious caution and how many more there are; else what goes on."""
    cautions = row.entry.cautions
    if not cautions:
        quiet = row.entry.headline.code in _TOLD_ELSEWHERE
        return "" if quiet or not row.known else headline_text(row.entry)
    first = cautions[0]
    said = short_caution(first, line_words(row, first.line_id))
    word = severity_word(first.severity.value)
    return f"{word}{words.DOT}{said}{_more(len(cautions) - 1)}"


def _done(row: DeskRow) -> str:
    if not row.known:
        return ""
    if not row.planned:
        return words.number(row.done) if row.done else NOTHING
    return translate("Desk", "{done} of {planned}").format(
        done=words.number(row.done), planned=words.number(row.planned)
    )


def _still(row: DeskRow) -> str:
    if not row.still:
        return NOTHING if row.known else ""
    first = row.still[0]
    named = line_words(row, first.line_id)
    if len(row.still) > 1:
        return translate("Desk", "{line} +{count}").format(
            line=named, count=words.number(len(row.still) - 1)
        )
    return named


def _deload(deload: DeloadDue | None, today: date) -> str:
    if deload is None:
        return ""
    match deload.when:
        case DeloadWhen.RUNS:
            return translate("Desk", "to {day}").format(day=_date(deload.day, today))
        case DeloadWhen.ADVISED:
            return translate("Desk", "advised")
        case DeloadWhen.DUE if deload.day <= today:
            return translate("Desk", "due")
    return _date(deload.day, today)


def _goal(goal: GoalBrief | None, today: date) -> str:
    if goal is None:
        return ""
    if goal.earliest is not None:
        return _interval(goal, goal.earliest, today)
    if goal.kind is GoalKind.ONE_REP_MAX:
        return translate("Desk", "not in a year")
    if goal.by is not None:
        return translate("Desk", "by {day}").format(day=_date(goal.by, today))
    return NOTHING


def _interval(goal: GoalBrief, earliest: date, today: date) -> str:
    if goal.latest is not None:
        if goal.latest <= today:
            return translate("Desk", "reached")
        first = _date(max(earliest, today), today)
        return f"{first} {NOTHING} {_date(goal.latest, today)}"
    if goal.likely is None:
        text = translate("Desk", "from {day}")
        return text.format(day=_date(max(earliest, today), today))
    if goal.likely <= today:
        return translate("Desk", "about now")
    return translate("Desk", "about {day}").format(day=_date(goal.likely, today))


def _goal_rank(goal: GoalBrief) -> date | None:
    """When a goal is likely to be reached, that of the maximum which is not in a year after all
    others; None for a goal without a day.
    """
    never = date.max if goal.kind is GoalKind.ONE_REP_MAX else None
    return goal.likely or goal.latest or goal.earliest or goal.by or never


def _course(spark: Spark, row: DeskRow, unit: Unit) -> str:
    """The spark line in words."""
    if len(spark.points) < 2:
        return ""
    first, last = spark.points[0][1], spark.points[-1][1]
    if spark.kind is SparkKind.SETS:
        return translate("Desk", "{first} to {last} sets a week").format(
            first=words.number(first), last=words.number(last)
        )
    return translate("Desk", "{line} {first} to {last}").format(
        line=line_words(row, spark.line_id),
        first=words.number(_halves(first, unit), 1),
        last=f"{words.number(_halves(last, unit), 1)} {unit.value}",
    )


def _halves(grams: float, unit: Unit) -> float:
    """An estimate in the trainee's unit, to the half."""
    return round(grams / float(unit.grams_each) * 2) / 2


def _date(day: date, today: date) -> str:
    """A day in a narrow cell: without its year where the next months leave no doubt."""
    near = 0 <= (day - today).days < _NEAR_DAYS
    return words.short_date(day) if near else words.short_date(day, today)
