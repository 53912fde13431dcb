"""The words of one slot on the printed sheet, in the trainee's language and unit.

QtCore only, and nothing measured: what is said here can be tested without paper.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date

from PySide6.QtCore import QCoreApplication

from desktop.planning.days import SlotPlan
from desktop.training.exercises import Exercise, Measure
from desktop.training.position import Position, Variable
from desktop.training.quantities import Unit
from desktop.training.reasons import Reason, ReasonCode
from desktop.training.session import AskedSet
from desktop.training.target import InBetween, StripVariable
from views import words
from views.assessment_words import tested_how_text
from views.exercise_words import short_strip
from views.loading_texts import DiscText, disc_texts, loading_text
from views.reason_texts import reason_text
from views.slot_work import (
    asked_texts,
    done_text,
    run_text,
    set_text,
    set_texts,
    variation_text,
    work_text,
)

translate = QCoreApplication.translate


@dataclass(frozen=True, slots=True)
class SlotText:
    """All that the sheet says of one slot; "" and () where there is nothing to say.

    ``asked``: what is asked, one part for each run of equal sets. ``sets``: what each set asks,
    shortly, above its boxes. ``boxes``: captions of the boxes to write in, row by row, the same
    for every set. Without ``sets`` nothing is asked, and ``held`` says why.
    """

    number: str
    name: str
    asked: tuple[str, ...] = ()
    held: str = ""
    how: str = ""
    set_up: str = ""
    discs: tuple[DiscText, ...] = ()
    warm_up: str = ""
    notes: tuple[str, ...] = ()
    between: str = ""
    cue: str = ""
    why: str = ""
    before: tuple[str, ...] = ()
    strip: tuple[StripVariable, ...] = ()
    sets: tuple[str, ...] = ()
    boxes: tuple[tuple[str, ...], ...] = ()
    pair: str = ""


def slot_text(
    slot: SlotPlan, number: str, partners: Sequence[str], unit: Unit, day: date
) -> SlotText:
    """What the sheet says of ``slot``; ``partners``: numbers of those it is done in turn with."""
    name = plain(slot_name(slot))
    if not slot.target.sets:
        return SlotText(number, name, held=held_text(slot, unit, day), pair=slot.slot.pair.strip())
    bar = plain(_loading(slot, unit))
    return SlotText(
        number,
        name,
        asked=asked_texts(slot, unit),
        how=how_text(slot, partners),
        set_up=words.DOT.join(part for part in (_height_text(slot, name), bar) if part),
        discs=disc_texts(slot.discs or (), unit),
        warm_up=warm_up_text(slot, unit),
        notes=tuple(filter(None, (plain(slot.slot.note), open_end_text(slot)))),
        between=plain(between_text(slot, unit)),
        cue=plain(slot.exercise.cue),
        why="" if slot.test else plain(why_text(slot, unit, day)),
        before=tuple(map(plain, before_texts(slot, unit, day))),
        strip=() if slot.test else short_strip(slot.strip),
        sets=set_texts(slot.target.sets, unit),
        boxes=box_captions(slot.exercise, unit),
        pair=slot.slot.pair.strip(),
    )  # fmt: skip


def plain(text: str) -> str:
    """Text on one line: line breaks and other control characters are spaces, markup stays."""
    return " ".join("".join(c if c.isprintable() else " " for c in text).split())


def slot_name(slot: SlotPlan) -> str:
    """The exercise with its line's name and the variation as this trainee sets it up."""
    position = slot.target.position
    variation = variation_text(slot, position.variation if position else None)
    name = slot.exercise.name
    if variation.casefold().startswith(name.casefold()):  # "pull-up from long arms"
        name, variation = f"{variation[:1].upper()}{variation[1:]}", ""
    return ", ".join(part for part in (name, slot.line.name, variation) if part)


def how_text(slot: SlotPlan, partners: Sequence[str]) -> str:
    """Reserve, tempo, rest, and what it is done in turn with."""
    lead = slot.target.sets[-1]
    said = []
    if lead.rir is not None:
        text = translate("Sheet", "{count} in reserve")
        said.append(text.format(count=words.number(lead.rir, 1)))
    if lead.tempo_s is not None:
        text = translate("Sheet", "{seconds} a repetition")
        said.append(text.format(seconds=words.hold(lead.tempo_s)))
    if slot.slot.tempo.strip():
        said.append(translate("Sheet", "tempo {tempo}").format(tempo=plain(slot.slot.tempo)))
    if slot.slot.rest_s:
        text = translate("Sheet", "rest {clock}")
        said.append(text.format(clock=words.clock(slot.slot.rest_s)))
    if partners:
        text = translate("Sheet", "in turn with {others}")
        said.append(text.format(others=words.listed(list(partners))))
    return words.DOT.join(said)


def warm_up_text(slot: SlotPlan, unit: Unit) -> str:
    """The ramp: "warm-up 5 × 25 · 3 × 37.5 · 2 × 50 kg"."""
    if not slot.warm_up:
        return ""
    said = [
        set_text(each, unit)
        if each.load_g
        else translate("Sheet", "{reps} without load").format(reps=each.reps or 0)
        for each in slot.warm_up
    ]
    ramp = words.DOT.join(said)
    if any(each.load_g for each in slot.warm_up):
        ramp = f"{ramp} {unit.value}"
        if slot.exercise.implements > 1:
            ramp = translate("Sheet", "{ramp} each").format(ramp=ramp)
    return translate("Sheet", "Warm-up {ramp}").format(ramp=ramp)


def open_end_text(slot: SlotPlan) -> str:
    """What the last set (or the top set, done first) asks where it is open-ended, and where to
    stop; how hard a test may be.
    """
    if slot.test:
        return tested_how_text(slot.target.sets)
    top = slot.target.sets[0]
    if len(slot.target.sets) > 1 and top.open_ended and top.stop_at is not None:
        text = translate("Sheet", "First set: as many clean reps as you can, stop at\u00a0{stop}")
        return text.format(stop=words.number(top.stop_at))
    last = slot.target.sets[-1]
    if not last.open_ended or last.stop_at is None:
        return ""
    if last.reps is None:
        text = translate("Sheet", "Last set: hold as long as it is clean, stop at\u00a0{stop}")
        return text.format(stop=words.hold(last.stop_at))
    text = translate("Sheet", "Last set: as many clean reps as you can, stop at\u00a0{stop}")
    return text.format(stop=words.number(last.stop_at))


def between_text(slot: SlotPlan, unit: Unit) -> str:
    """What the equipment allows while the next step is too large."""
    if not slot.target.in_betweens:
        return ""
    ways = "; ".join(_in_between(slot, each, unit) for each in slot.target.in_betweens)
    return translate("Sheet", "In between, if your coach agrees: {ways}").format(ways=ways)


def why_text(slot: SlotPlan, unit: Unit, day: date) -> str:
    """Why this is asked: what changed it on the day first."""
    reasons = (slot.target.reason, *slot.target.notes)
    said = [_reason(slot, each, unit, day) for each in reasons]
    return ". ".join(dict.fromkeys(said))


def before_texts(slot: SlotPlan, unit: Unit, day: date) -> list[str]:
    """Last time and the best set: "Last time, Mon 16 Nov: 9 · 9 · 8 at 60 kg", "Best: 10 at …"."""
    said = []
    if slot.last_time is not None and slot.last_day is not None:
        text = translate("Sheet", "Last time, {day}: {work}")
        when = words.short_day(slot.last_day, day)
        said.append(text.format(day=when, work=done_text(slot, slot.last_time, unit)))
    if slot.best is not None:
        text = translate("Sheet", "Best: {work}")
        said.append(text.format(work=run_text(slot, [slot.best], unit)))
    return said


def held_text(slot: SlotPlan, unit: Unit, day: date) -> str:
    """Why nothing is asked of this line, told to the trainee."""
    why = slot.target.reason
    match why.code:
        case ReasonCode.PAIN_HOLD:
            on_day = ""
            if slot.last_day is not None:
                text = translate("Sheet", " on {day}")
                on_day = text.format(day=words.short_day(slot.last_day, day))
            text = translate("Sheet", "Not asked: pain {pain} of 10{on_day}; ask your coach")
            return text.format(pain=why.get("pain", ""), on_day=on_day)
        case ReasonCode.START_NEEDED:
            return translate("Sheet", "Not set yet: ask your coach where to start")
        case ReasonCode.GAP_RESTART:
            text = translate(
                "Sheet", "Not asked: {days} since the last time; ask your coach where to start"
            )
            days = why.get("days", 0)
            return text.format(days=words.days(int(days) if isinstance(days, int) else 0))
    text = translate("Sheet", "Not asked: {why}; ask your coach")
    return plain(text.format(why=_reason(slot, why, unit, day)))


def box_captions(exercise: Exercise, unit: Unit) -> tuple[tuple[str, ...], ...]:
    """Captions of the boxes of one set, in the order in which they are typed later."""
    held = exercise.measure is Measure.HOLD
    count = translate("Sheet", "seconds") if held else translate("Sheet", "reps")
    clean, reserve = translate("Sheet", "clean"), translate("Sheet", "reserve")
    load = translate("Sheet", "load {unit}").format(unit=unit.value)
    last = (reserve, translate("Sheet", "pain"))
    if not exercise.unilateral:
        return ((count, clean), (load,), last)
    left = translate("Sheet", "left s") if held else translate("Sheet", "left")
    right = translate("Sheet", "right s") if held else translate("Sheet", "right")
    return ((left, right), (load, clean), last)


def _loading(slot: SlotPlan, unit: Unit) -> str:
    """How the heaviest set is loaded; which one that is where not all are alike."""
    said = loading_text(slot.loading, unit)
    alike = len({each.load_g for each in slot.target.sets}) == 1
    if alike or not said or slot.loading is None:
        return said
    text = translate("Sheet", "{load}, {loading}")
    return text.format(load=words.load(slot.loading.load_g, unit), loading=said)


def _height_text(slot: SlotPlan, name: str) -> str:
    """The height to set up, where the variation's name does not hold it already."""
    set_up = plain(slot.set_up)
    return "" if set_up in name else set_up


def _reason(slot: SlotPlan, why: Reason, unit: Unit, day: date) -> str:
    """The sentence of a reason, with variations by name."""
    by_name = why.get("variable") == Variable.VARIATION.value
    named = tuple(
        (key, variation_text(slot, value))
        if by_name and key in ("before", "after") and isinstance(value, str)
        else (key, value)
        for key, value in why.values
    )
    return reason_text(replace(why, values=named), unit, day)


def _in_between(slot: SlotPlan, way: InBetween, unit: Unit) -> str:
    asked = work_text(way.position.sets, _one_set(way.position), slot.exercise, unit)
    kinds = {
        "one more rep": translate("Sheet", "one more rep"),
        "one more set": translate("Sheet", "one more set"),
        "slower tempo": translate("Sheet", "slower"),
        "smaller discs": translate("Sheet", "smaller discs"),
        "variation": variation_text(slot, way.position.variation),
    }
    kind = kinds.get(way.kind, way.kind)
    if not way.demand_change:  # unknown, or another set or a slower one, which it does not weigh
        return f"{kind} ({asked})"
    text = translate("Sheet", "{kind} ({asked}, {share} harder)")
    return text.format(kind=kind, asked=asked, share=words.percent(way.demand_change))


def _one_set(position: Position) -> AskedSet:
    return AskedSet(position.load_g, position.reps, position.hold_s)
