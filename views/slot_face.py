"""What stands in a slot's row: its name, what it asks, and the sessions to come in small cells."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QCoreApplication

from desktop.planning.outlook import NextSession, SlotOutlook
from desktop.training.exercises import Exercise, LoadingKind
from desktop.training.position import Position, SchemeKind, Surroundings, Variable
from desktop.training.program import Slot
from desktop.training.quantities import Unit
from desktop.training.target import StripVariable
from views import words
from views.exercise_words import short_strip, short_variation, variation_name
from views.rule_words import scheme_word

translate = QCoreApplication.translate


@dataclass(frozen=True, slots=True)
class NextCell:
    """One session to come: what is asked above, load or variation below, and all of it in words."""

    above: str
    below: str
    words: str
    rolls_over: bool = False
    deload: bool = False


@dataclass(frozen=True, slots=True)
class SlotFace:
    """All that a row shows of its slot; ``sentence`` reads it aloud."""

    name: str
    asks: str
    strip: tuple[StripVariable, ...]
    cells: tuple[NextCell, ...]
    unit: Unit
    sentence: str


def slot_face(
    slot: Slot, seen: SlotOutlook, unit: Unit, today: date, changed_for: str = ""
) -> SlotFace:
    """The face of a slot by its outlook; ``changed_for``: the trainee for whom it was changed."""
    position = seen.position or slot.start
    name, asks = slot_name(slot, seen), asks_text(slot, position)
    if changed_for:
        text = translate("Slots", "changed for {name}")
        asks = words.DOT.join((text.format(name=changed_for), asks))
    spoken = words.strip_sentence(seen.strip, unit).rstrip(".")
    return SlotFace(
        name=name,
        asks=asks,
        strip=short_strip(seen.strip),
        cells=tuple(next_cell(slot, each, seen, unit, today) for each in seen.sessions),
        unit=unit,
        sentence=". ".join(part for part in (name, asks, spoken) if part),
    )


def slot_name(slot: Slot, seen: SlotOutlook) -> str:
    """The exercise with its line's name and the variation."""
    key = (seen.position or slot.start).variation
    name, shown = seen.exercise.name, variation_name(key, seen.around, seen.exercise)
    if shown.casefold().startswith(name.casefold()):
        name, shown = shown[:1].upper() + shown[1:], ""
    return ", ".join(part for part in (name, slot.line_name, shown) if part)


def asks_text(slot: Slot, position: Position) -> str:
    """Sets, reserve, rest and what else is asked: "3 sets · 2 in reserve · rest 2:30"."""
    rule = slot.rule
    parts = [words.sets(position.sets)]
    if rule.follow is not None:
        text = translate("Slots", "{percent} % of {line}")
        line = rule.follow.line_name or translate("Slots", "the main line")
        parts.append(text.format(percent=words.number(rule.follow.percent), line=line))
    if rule.scheme.kind is not SchemeKind.STRAIGHT:
        parts.append(scheme_word(rule.scheme.kind))
    if rule.target_rir is not None:
        text = translate("Slots", "{count} in reserve")
        parts.append(text.format(count=words.number(rule.target_rir, 1)))
    if slot.rest_s:
        parts.append(translate("Slots", "rest {time}").format(time=words.clock(slot.rest_s)))
    if slot.tempo:
        parts.append(translate("Slots", "tempo {tempo}").format(tempo=slot.tempo))
    if slot.pair:
        parts.append(translate("Slots", "in turn {letter}").format(letter=slot.pair))
    if slot.note:
        parts.append(slot.note)
    return words.DOT.join(parts)


def work_text(slot: Slot, position: Position) -> str:
    """Sets and repetitions or seconds in a small cell: "3×8", "Σ30" for a total."""
    if slot.rule.scheme.kind is SchemeKind.TOTAL:
        return f"Σ{words.number(position.amount)}"
    return f"{position.sets}{words.TIMES}{words.number(position.amount)}"


def difficulty_text(
    slot: Slot, position: Position, exercise: Exercise, around: Surroundings, unit: Unit
) -> str:
    """Load or variation, and a tempo that grows, in a small cell: "62.5", "one leg", "+5 4 s"."""
    bodyweight = exercise.loading is LoadingKind.BODYWEIGHT
    shown = ""
    if position.load_g or not bodyweight:
        shown = words.load_number(position.load_g, unit)
        if bodyweight and position.load_g > 0:
            shown = f"+{shown}"
    elif position.variation is not None:
        name = variation_name(position.variation, around, exercise)
        shown = short_variation(position.variation, name)
    if position.tempo_s is not None and slot.rule.range_of(Variable.TEMPO) is not None:
        return f"{shown} {words.hold(position.tempo_s)}".strip()
    return shown


def work_words(
    slot: Slot, position: Position, exercise: Exercise, around: Surroundings, unit: Unit
) -> str:
    """All that is asked, in words: "3 × 8 at 62.5 kg", "4 × 20 s, one leg"."""
    bodyweight = exercise.loading is LoadingKind.BODYWEIGHT
    work = words.prescription(position, unit, bodyweight=bodyweight)
    if slot.rule.scheme.kind is SchemeKind.TOTAL:
        text = translate("Slots", "{count} in all over {sets}")
        work = text.format(count=words.number(position.amount), sets=words.sets(position.sets))
    parts = [work, variation_name(position.variation, around, exercise)]
    if position.tempo_s is not None:
        text = translate("Slots", "{time} a repetition")
        parts.append(text.format(time=words.hold(position.tempo_s)))
    return ", ".join(part for part in parts if part)


def next_cell(
    slot: Slot, session: NextSession, seen: SlotOutlook, unit: Unit, today: date
) -> NextCell:
    """A session to come as a small cell."""
    here = (session.position, seen.exercise, seen.around, unit)
    return NextCell(
        above=work_text(slot, session.position),
        below=difficulty_text(slot, *here),
        words=_in_words(slot, session, seen, unit, today),
        rolls_over=session.rolls_over,
        deload=session.deload,
    )


def _in_words(slot: Slot, session: NextSession, seen: SlotOutlook, unit: Unit, today: date) -> str:
    parts = [work_words(slot, session.position, seen.exercise, seen.around, unit)]
    if session.rolls_over:
        parts.append(translate("Slots", "rolls over"))
    if session.deload:
        parts.append(translate("Slots", "deload"))
    if session.missed:
        parts.append(translate("Slots", "missed"))
    shown = ", ".join(part for part in parts if part)
    if not seen.real:
        return shown
    return f"{words.short_day(session.day, today)}: {shown}"
