"""The words of a printed sheet: head, slots, foot; or why there is nothing to print.

QtCore only, and nothing measured: what is said here can be tested without paper.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from itertools import count

from PySide6.QtCore import QCoreApplication, QDate, QLocale

from desktop.planning.days import DayPlan, SlotPlan, WhyEmpty
from desktop.training.quantities import Unit
from views import words
from views.general_caution import general_caution, red_flags
from views.slot_texts import SlotText, plain, slot_text

translate = QCoreApplication.translate


class SheetError(Exception):
    """A sheet that cannot be made; the text is a sentence for the coach."""


@dataclass(frozen=True, slots=True)
class SheetText:
    """All words of one day's sheet. ``afterwards``: captions of the boxes of the whole session."""

    trainee: str
    day: str
    belongs_to: str
    minutes: str
    slots: tuple[SlotText, ...]
    afterwards: tuple[str, ...]
    legend: str
    caution: str
    unit: Unit


def sheet_text(plan: DayPlan) -> SheetText:
    """The words of the sheet of ``plan``. Raises SheetError where nothing is asked on the day."""
    unit, slots = plan.trainee.unit, slots_of(plan)
    if not any(slot.sets for slot in slots):
        raise SheetError(nothing_asked(plan, slots))
    return SheetText(
        trainee=plain(plan.trainee.name),
        day=long_date(plan.day),
        belongs_to=plain(belongs_to(plan)),
        minutes=_minutes(plan),
        slots=slots,
        afterwards=_afterwards(unit),
        legend=_legend(),
        caution=f"{general_caution()} {red_flags()}",
        unit=unit,
    )


def slots_of(plan: DayPlan) -> tuple[SlotText, ...]:
    """The words of each slot of ``plan``."""
    unit = plan.trainee.unit
    numbers = slot_numbers([slot.slot.pair for slot in plan.slots])
    return tuple(
        slot_text(slot, number, _partners(place, numbers, plan.slots), unit, plan.day)
        for place, (slot, number) in enumerate(zip(plan.slots, numbers, strict=True))
    )


def slot_numbers(pairs: Sequence[str]) -> tuple[str, ...]:
    """A number for each slot by its place; slots done in turn have their letter: "A1", "A2"."""
    within: dict[str, count[int]] = {}
    said = []
    for place, letter in enumerate(map(str.strip, pairs), start=1):
        if letter and sum(other.strip() == letter for other in pairs) > 1:
            said.append(f"{letter.upper()}{next(within.setdefault(letter, count(1)))}")
        else:
            said.append(f"{place}")
    return tuple(said)


def belongs_to(plan: DayPlan) -> str:
    """Program, phase, week and day: "Winter strength · Base · week 3 of 12 · Squat and push"."""
    said = []
    if plan.program is not None:
        said.append(plan.program.name)
        if plan.phase is not None and plan.phase.name != plan.program.name:
            said.append(plan.phase.name)
        if plan.week is not None:
            text = translate("Sheet", "week {week} of {weeks}")
            said.append(text.format(week=plan.week, weeks=plan.program.weeks))
    if plan.training_day is not None:
        said.append(plan.training_day.name)
    if plan.deload:
        said.append(translate("Sheet", "deload"))
    return words.DOT.join(part for part in said if part.strip())


def nothing_asked(plan: DayPlan, slots: Sequence[SlotText] = ()) -> str:
    """Why there is no sheet for the day, in one sentence."""
    text = {
        WhyEmpty.NO_PROGRAM: translate(
            "Sheet", "{name} has no program: assign one, and its days can be printed."
        ),
        WhyEmpty.NOT_STARTED: translate("Sheet", "The program of {name} has not begun on {day}."),
        WhyEmpty.ENDED: translate("Sheet", "The program of {name} has ended before {day}."),
        WhyEmpty.REST_DAY: translate("Sheet", "{day} is a rest day of {name}: nothing is asked."),
        WhyEmpty.AWAY: translate("Sheet", "{name} is away on {day}: nothing is asked."),
        WhyEmpty.CLEARANCE_NEEDED: translate(
            "Sheet",
            "Nothing is asked of {name} until a licensed professional's clearance is recorded.",
        ),
    }.get(plan.why_empty, translate("Sheet", "Nothing is asked of {name} on {day}."))
    said = text.format(name=plain(plan.trainee.name), day=words.short_day(plan.day))
    held = [f"{slot.name}: {slot.held}." for slot in slots if slot.held]
    return " ".join((said, *held))


def sheet_aloud(sheet: SheetText) -> str:
    """The sheet as text, for whoever hears it rather than sees it."""
    lines = [f"{sheet.trainee}, {sheet.day}. {sheet.belongs_to}."]
    for slot in sheet.slots:
        parts = (" ".join(slot.asked) or slot.held, slot.how, slot.set_up, *slot.notes)
        lines.append(f"{slot.number} {slot.name}: {', '.join(part for part in parts if part)}.")
    return "\n".join(lines)


def _partners(place: int, numbers: Sequence[str], slots: Sequence[SlotPlan]) -> tuple[str, ...]:
    letter = slots[place].slot.pair.strip()
    return tuple(
        number
        for other, number in enumerate(numbers)
        if letter and other != place and slots[other].slot.pair.strip() == letter
    )


def long_date(day: date) -> str:
    """A day with its year, as it is written out."""
    return QLocale().toString(QDate(day.year, day.month, day.day), QLocale.FormatType.LongFormat)


def _minutes(plan: DayPlan) -> str:
    if not plan.minutes:
        return ""
    return translate("Sheet", "about {minutes}").format(minutes=words.minutes(plan.minutes))


def _afterwards(unit: Unit) -> tuple[str, ...]:
    mass = translate("Sheet", "body mass {unit}").format(unit=unit.value)
    return (
        translate("Sheet", "effort 0-10"),
        translate("Sheet", "minutes"),
        mass,
        translate("Sheet", "sleep 1-5"),
        translate("Sheet", "soreness 1-5"),
        translate("Sheet", "stress 1-5"),
        translate("Sheet", "motivation 1-5"),
        translate("Sheet", "note"),
    )


def _legend() -> str:
    return translate(
        "Sheet",
        "Clean: in the form agreed; only these count. Reserve: how many more would have been "
        "clean. Pain: 0 to 10; where it grows, stop that exercise and tell your coach. Effort of "
        "the whole session: 0 rest, 10 the hardest ever. 1-5: 1 bad, 5 good.",
    )
