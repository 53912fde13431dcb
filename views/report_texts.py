"""The words of a progress report: for the trainee, in plain sentences and short facts.

Nothing is measured here: what is said can be tested without paper.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QCoreApplication

from desktop.planning.report import LineReport, TraineeReport, weekly_sets
from desktop.training.exercises import LoadingKind, Measure
from desktop.training.quantities import Unit
from desktop.training.recovery import Caution
from desktop.training.volume import MARKS
from views import words
from views.caution_texts import severity_word
from views.exercise_words import muscle_word
from views.general_caution import general_caution, red_flags
from views.language import mark_said, source_said
from views.plain_cautions import plain_caution
from views.progress_texts import asked_words, done_words, tenths
from views.sheet_texts import long_date
from views.slot_texts import plain
from views.statement_texts import statement_text

translate = QCoreApplication.translate


@dataclass(frozen=True, slots=True)
class Fact:
    """A short caption and what it tells."""

    caption: str
    value: str


@dataclass(frozen=True, slots=True)
class LineText:
    """One line: its name, what it changed by ("" where there is no trend), the answer in words,
    the facts beside its chart.
    """

    name: str
    change: str
    sentence: str
    facts: tuple[Fact, ...]


@dataclass(frozen=True, slots=True)
class CautionText:
    """A caution in plain words, with how serious it is and where that comes from."""

    severity: str
    sentence: str
    source: str


@dataclass(frozen=True, slots=True)
class ReportText:
    """All words of a report. ``bests``: the sets that were more than ever before; ``muscles``: hard
    sets a week by muscle, most first; ``marks``: the published numbers that these are held against.
    """

    trainee: str
    span: str
    title: str
    facts: tuple[Fact, ...]
    bests: tuple[str, ...]
    lines: tuple[LineText, ...]
    muscles: tuple[tuple[str, float], ...]
    marks: str
    ahead: tuple[str, ...]
    cautions: tuple[CautionText, ...]
    legend: str
    foot: str


def report_text(report: TraineeReport) -> ReportText:
    """The words of ``report``."""
    unit = report.trainee.unit
    return ReportText(
        trainee=plain(report.trainee.name),
        span=_span(report.first, report.last),
        title=translate("Report", "Progress report"),
        facts=tuple(_facts(report)),
        bests=tuple(_bests(report)),
        lines=tuple(_line(line, unit) for line in report.lines),
        muscles=tuple((muscle_word(one), sets) for one, sets in weekly_sets(report)),
        marks=_marks(),
        ahead=tuple(_ahead(report)),
        cautions=tuple(_caution(one, report) for one in report.cautions),
        legend=_legend(),
        foot=f"{general_caution()} {red_flags()}",
    )


def report_aloud(text: ReportText) -> str:
    """The report as plain text, for those who do not see it."""
    lines = [f"{text.title}. {text.trainee}, {text.span}."]
    lines += [f"{fact.caption}: {fact.value}." for fact in text.facts]
    lines += text.bests
    for line in text.lines:
        lines.append(". ".join(part for part in (line.name, line.change, line.sentence) if part))
    lines += text.ahead
    lines += [f"{one.severity}: {one.sentence}" for one in text.cautions]
    return "\n".join(lines)


def _span(first: date, last: date) -> str:
    text = translate("Report", "{first} to {last}")
    return text.format(first=long_date(first), last=long_date(last))


def _facts(report: TraineeReport) -> Iterator[Fact]:
    yield Fact(translate("Report", "Sessions"), words.number(report.sessions))
    if report.planned:
        text = translate("Report", "{done} of {planned} planned ({share})")
        if report.days > report.planned:
            text = translate("Report", "{done}, {planned} planned")
        said = text.format(
            done=words.number(report.days),
            planned=words.number(report.planned),
            share=words.percent(report.days / report.planned),
        )
        yield Fact(translate("Report", "Days trained"), said)
    sets = sum(line.hard_sets for line in report.lines)
    yield Fact(translate("Report", "Hard sets"), words.number(sets))
    if report.minutes:
        hours, minutes = divmod(report.minutes, 60)
        text = translate("Report", "{hours} h {minutes} min")
        yield Fact(
            translate("Report", "Time noted"),
            text.format(hours=words.number(hours), minutes=minutes),
        )
    mass = _mass(report)
    if mass:
        yield Fact(translate("Report", "Body mass"), mass)
    if report.pains:
        yield Fact(translate("Report", "Sessions with pain"), words.number(report.pains))


def _bests(report: TraineeReport) -> Iterator[str]:
    """What was more than ever before, the latest first."""
    records = [line for line in report.lines if line.is_record]
    for line in sorted(records, key=lambda one: one.best.day, reverse=True):
        text = translate("Report", "{line}: {set} on {day}")
        yield text.format(
            line=plain(line.name),
            set=_best_set(line, report.trainee.unit),
            day=words.short_date(line.best.day),
        )


def _best_set(line: LineReport, unit: Unit) -> str:
    progress = line.progress
    names = {step.key: step.name for step in progress.scale}
    bodyweight = progress.exercise.loading is LoadingKind.BODYWEIGHT
    return done_words(line.best.done, unit, names, bodyweight=bodyweight)


def _mass(report: TraineeReport) -> str:
    if report.first_mass_g is None or report.last_mass_g is None:
        return ""
    unit = report.trainee.unit
    first, last = (
        words.number(grams / float(unit.grams_each), 1)
        for grams in (report.first_mass_g, report.last_mass_g)
    )
    shown = first if first == last else f"{first} {words.ARROW} {last}"
    return f"{shown} {unit.value}"


def _line(line: LineReport, unit: Unit) -> LineText:
    return LineText(
        name=plain(line.name),
        change=_change(line, unit),
        sentence=statement_text(line.progress, unit),
        facts=tuple(_line_facts(line, unit)),
    )


def _change(line: LineReport, unit: Unit) -> str:
    gain = line.gain
    if gain is None or line.first_g is None or line.last_g is None:
        return ""
    first, last = (
        words.number(round(grams / float(unit.grams_each), 6), 1)
        for grams in (line.first_g, line.last_g)
    )
    sign = "+" if gain >= 0 else words.MINUS
    course = f"{first} {words.ARROW} {last} {unit.value}"
    return f"{course}, {sign}{tenths(abs(gain) * 100)} %"


def _line_facts(line: LineReport, unit: Unit) -> Iterator[Fact]:
    progress = line.progress
    bodyweight = progress.exercise.loading is LoadingKind.BODYWEIGHT
    yield Fact(translate("Report", "Done"), _done(line))
    best = line.best
    done = _best_set(line, unit)
    day = words.short_date(best.day)
    caption = translate("Report", "Best set, better than ever") if line.is_record else ""
    yield Fact(caption or translate("Report", "Best set"), f"{done} ({day})")
    tops = [b.done.load_g for b in progress.best_sets if b.day >= line_first(line)]
    if not bodyweight and progress.exercise.measure is not Measure.HOLD and tops:
        yield Fact(translate("Report", "Highest load of a best set"), words.load(max(tops), unit))


def _done(line: LineReport) -> str:
    """How much was done: "16 sessions, 46 hard sets\"."""
    sessions = (
        translate("Report", "1 session")
        if line.sessions == 1
        else translate("Report", "{count} sessions").format(count=words.number(line.sessions))
    )
    sets = (
        translate("Report", "1 hard set")
        if line.hard_sets == 1
        else translate("Report", "{count} hard sets").format(count=words.number(line.hard_sets))
    )
    return f"{sessions}, {sets}"


def line_first(line: LineReport) -> date:
    """The first day of the line's sessions that the report is about."""
    return line.progress.best_sets[-line.sessions].day


def _ahead(report: TraineeReport) -> Iterator[str]:
    if report.next_day is not None:
        text = translate("Report", "Next session: {day}.")
        yield text.format(day=long_date(report.next_day))
    for one in report.goals:
        text = translate("Report", "Goal: {line}, {goal}.")
        what = asked_words(one.goal, report.trainee.unit, dict(one.variations))
        if one.goal.by is not None:
            by = translate("Report", "{goal} by {day}")
            what = by.format(goal=what, day=long_date(one.goal.by))
        yield text.format(line=plain(one.line), goal=what)


def _caution(caution: Caution, report: TraineeReport) -> CautionText:
    name = dict(report.line_names).get(caution.line_id or 0, "")
    sentence = plain_caution(caution, report.trainee.unit, report.last, plain(name))
    return CautionText(severity_word(caution.severity.value), sentence, source_said(caution.source))


def _marks() -> str:
    """The published numbers with their sources, as one line."""
    parts = [
        translate("Report", "{sets} a week: {what} ({source})").format(
            sets=mark.sets, what=mark_said(mark), source=source_said(mark.source)
        )
        for mark in MARKS
    ]
    return "; ".join(parts)


def _legend() -> str:
    return translate(
        "Report",
        "Estimates from load and repetitions: square up to 5 reps, disc 6 to 10, ring 11 and more "
        "or uncertain; grey not counted; star best so far. Line and band: trend with 80 % band, "
        "dashed where it is only foreseen. Bars: hard sets a week, outlined as planned.",
    )
