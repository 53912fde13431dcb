"""What is said of one cell of the weeks ahead, in one line."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from PySide6.QtCore import QCoreApplication

from desktop.planning.program_weeks import (
    DaySession,
    ProgramWeeks,
    SlotSession,
    SlotWeeks,
    WeekColumn,
)
from desktop.training.quantities import Unit
from desktop.training.recovery import Caution
from desktop.training.session import LineDone
from desktop.training.volume import MARKS
from desktop.training.weeks import Expected
from views import words
from views.caution_texts import caution_text
from views.language import mark_said, source_said
from views.phase_line import phase_name
from views.reason_texts import reason_text
from views.sentences import begun_small
from views.slot_face import work_words
from views.weeks_rows import BarRow, DayRow, RatioRow, Row, SlotRow, TitleRow

translate = QCoreApplication.translate


def cell_sentence(weeks: ProgramWeeks, row: Row, column: int, today: date) -> str:
    """All that the cell of a row and a week (from 0) stands for."""
    week = weeks.columns[column]
    match row:
        case SlotRow(name, found):
            told = [_session_text(weeks, found, each, today) for each in found.cells[column]]
            said = " ".join(told) or translate("Weeks", "Not trained.")
            return f"{_when(weeks, week)}: {name}. {said}"
        case DayRow(name, found_day):
            parts = [_day_text(weeks, each, today) for each in found_day.cells[column]]
            parts += [_caution(weeks, each, today) for each in week.cautions]
            said = " ".join(parts) or translate("Weeks", "Nothing is planned.")
            if not found_day.rows:
                said = translate("Weeks", "Nothing is planned yet: Return leads to the day.")
            return f"{_when(weeks, week)}: {name}. {said}"
        case BarRow(name, values, _, marked):
            return f"{_when(weeks, week, today)}: {_bar_text(name, values[column], marked)}"
        case RatioRow(name, values):
            value = values[column]
            said = translate("Weeks", "none") if value is None else words.number(value, 1)
            return f"{_when(weeks, week, today)}: {name} {said}."
        case TitleRow(name, detail):
            return ". ".join(part for part in (name, detail) if part)


def expected_text(expected: Expected | None, unit: Unit) -> str:
    """What the trend expects: maximum with its band, and the chance to do what is asked."""
    if expected is None:
        return translate("Weeks", "No trend yet says how likely it is.")
    text = translate("Weeks", "The trend expects a maximum of {low} to {high} then (80 % band)")
    said = text.format(
        low=words.load_number(_half_kilogram(expected.low_g), unit),
        high=words.load(_half_kilogram(expected.high_g), unit),
    )
    if expected.chance is None:
        return f"{said}."
    text = translate("Weeks", "{said}; chance to do this: {chance}.")
    return text.format(said=said, chance=_chance(expected.chance))


def _chance(chance: float) -> str:
    """Never quite none and never quite sure."""
    if chance < 0.01:
        return translate("Weeks", "under {share}").format(share=words.percent(0.01))
    if chance > 0.99:
        return translate("Weeks", "over {share}").format(share=words.percent(0.99))
    return words.percent(chance)


def _half_kilogram(grams: float) -> int:
    return round(grams / 500) * 500


def _when(weeks: ProgramWeeks, week: WeekColumn, today: date | None = None) -> str:
    """The week and its phase; with ``today`` its first day."""
    phase = phase_name(weeks.program.phases[week.phase])
    parts = [translate("Weeks", "Week {number}").format(number=words.number(week.number)), phase]
    if week.easier:
        parts.append(translate("Slots", "deload"))  # the heading of the week is shorter
    elif week.proposed:
        parts.append(translate("Weeks", "a deload is proposed"))
    if weeks.dated and today is not None:
        text = translate("Weeks", "from {day}")
        parts.append(text.format(day=words.short_day(week.first, today)))
    return ", ".join(part for part in parts if part)


def _session_text(weeks: ProgramWeeks, row: SlotWeeks, session: SlotSession, today: date) -> str:
    unit = weeks.trainee.unit
    parts: list[str] = []
    if session.position is not None:
        work = work_words(session.slot, session.position, row.exercise, row.around, unit)
        day = words.short_day(session.day, today) if weeks.dated else ""
        if session.done is not None:
            text = translate("Weeks", "{day}: {work} was asked; {done}.")
            return text.format(day=day, work=work, done=_done_text(session.done, unit))
        parts.append(f"{day}: {work}." if day else f"{work}.")
    if session.target is not None:
        why = session.target.reason
        if not weeks.dated:  # days that are only imagined are not named
            why = replace(why, values=tuple(each for each in why.values if each[0] != "day"))
        parts.append(_sentence(reason_text(why, unit, today)))
    if weeks.dated and session.position is not None:
        parts.append(expected_text(weeks.expected(session), unit))
    parts += [_caution(weeks, each, today) for each in session.cautions]
    return " ".join(parts)


def _sentence(text: str) -> str:
    return text if text.endswith((".", "!", "?")) else f"{text}."


def _done_text(done: LineDone, unit: Unit) -> str:
    sets = ", ".join(words.set_words(each, unit) for each in done.working_sets)
    if not sets:
        return translate("Weeks", "nothing was done")
    return translate("Weeks", "done: {sets}").format(sets=sets)


def _day_text(weeks: ProgramWeeks, session: DaySession, today: date) -> str:
    minutes = round(session.minutes(weeks.history.library.exercises))
    said = translate("Weeks", "About {time}.").format(time=words.minutes(minutes))
    if weeks.dated:
        said = f"{words.short_day(session.day, today)}: {begun_small(said)}"
    room = weeks.trainee.minutes_per_session
    if room is not None and minutes > room:
        text = translate("Weeks", "The trainee has {time}.")
        said = f"{said} {text.format(time=words.minutes(room))}"
    return said


def _bar_text(name: str, value: float, marked: bool) -> str:
    text = translate("Weeks", "{name}, {count} hard sets.")
    if not marked:
        text = translate("Weeks", "{name}, {count} sets.")
    said = text.format(name=name, count=words.number(value, 1))
    if not marked:
        return said
    reached = [mark for mark in MARKS if value >= mark.sets]
    if not reached:
        text = translate("Weeks", "Under the first published mark of {count}.")
        return f"{said} {text.format(count=MARKS[0].sets)}"
    mark = reached[-1]
    text = translate("Weeks", "At or above {count} ({of}; {source}).")
    text = text.format(count=mark.sets, of=mark_said(mark), source=source_said(mark.source))
    return f"{said} {text}"


def _caution(weeks: ProgramWeeks, caution: Caution, today: date) -> str:
    return caution_text(caution, weeks.history.library.limits, weeks.trainee.unit, today)
