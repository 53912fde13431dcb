"""The work of one slot in the words of the printed sheet: what is asked, and what was done.

QtCore only, and nothing measured.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from PySide6.QtCore import QCoreApplication

from desktop.planning.days import SlotPlan
from desktop.training.exercises import Exercise, LoadingKind
from desktop.training.position import SchemeKind
from desktop.training.quantities import Unit
from desktop.training.session import AskedSet, LineDone, SetDone
from views import words
from views.assessment_words import tested_asked_text
from views.exercise_words import variation_name

translate = QCoreApplication.translate

_MOST_RUNS = 2
_SIDES = ("left", "right")
_TIMES = f"\N{NO-BREAK SPACE}{words.TIMES}\N{NO-BREAK SPACE}"


def asked_texts(slot: SlotPlan, unit: Unit) -> tuple[str, ...]:
    """What is asked: "3 × 10 at 62.5 kg", "3 × 8 each side"; in parts where sets differ: "1 × 5
    at 100 kg,", "then 2 × 5 at 90 kg". Of many parts the first and the last are told: what each
    set asks stands above its boxes.
    """
    sets = slot.target.sets
    if slot.test:
        return (tested_asked_text(sets, unit, slot.exercise),)
    if slot.state.rule.scheme.kind is SchemeKind.TOTAL:
        return (_total_text(slot, unit),)
    runs = [list(same) for _, same in groupby(sets, key=_work)]
    if len(runs) > _MOST_RUNS:
        return _span_texts(slot, unit)
    first, *others = (work_text(len(run), run[0], slot.exercise, unit) for run in runs)
    if not others:
        return (first,)
    return (f"{first},", translate("Sheet", "then {work}").format(work=others[0]))


def set_texts(sets: Sequence[AskedSet], unit: Unit) -> tuple[str, ...]:
    """What each set asks, above its boxes: "10", "10+" where it is open-ended, "20 s"; with the
    load where not all sets have the same: "5 × 100".
    """
    alike = len({each.load_g for each in sets}) == 1
    return tuple(_amount(each) if alike else set_text(each, unit) for each in sets)


def set_text(asked: AskedSet, unit: Unit) -> str:
    """One set with its load: "5 × 62.5"."""
    if asked.load_g == 0:
        return _amount(asked)
    return f"{_amount(asked)} {words.TIMES} {words.load_number(asked.load_g, unit)}"


def work_text(count: int, asked: AskedSet, exercise: Exercise, unit: Unit) -> str:
    """``count`` equal sets: "3 × 8 each side at 20 kg"."""
    amount = words.hold(asked.seconds) if asked.seconds is not None else f"{asked.reps or 0}"
    text = f"{count}{_TIMES}{amount}"
    if exercise.unilateral:
        text = translate("Sheet", "{work} each side").format(work=text)
    return _at(text, asked.load_g, exercise, unit)


def done_text(slot: SlotPlan, done: LineDone, unit: Unit) -> str:
    """What was done of a line: "9 · 9 · 8 at 60 kg, 8 at 57.5 kg"."""
    sets = done.working_sets
    if not sets:
        return translate("Sheet", "not done")
    runs = [list(same) for _, same in groupby(sets, key=lambda one: (one.load_g, one.variation))]
    return ", ".join(run_text(slot, run, unit) for run in runs)


def run_text(slot: SlotPlan, sets: Sequence[SetDone], unit: Unit) -> str:
    """Sets of one load and variation; the variation is named where another one is asked now."""
    amounts = words.DOT.join(_amounts(sets))
    if any(each.seconds is not None for each in sets):
        amounts = f"{amounts} s"
    text = _at(amounts, sets[0].load_g, slot.exercise, unit)
    position = slot.target.position
    if sets[0].variation is None or (position and position.variation == sets[0].variation):
        return text
    return f"{text} ({variation_text(slot, sets[0].variation)})"


def variation_text(slot: SlotPlan, key: str | None) -> str:
    """A variation as this trainee sets it up."""
    return variation_name(key, slot.state.surroundings, slot.exercise)


def _span_texts(slot: SlotPlan, unit: Unit) -> tuple[str, ...]:
    sets = slot.target.sets
    first, last = (
        _at(_amount(each), each.load_g, slot.exercise, unit) for each in (sets[0], sets[-1])
    )
    text = translate("Sheet", "{sets}, each side,") if slot.exercise.unilateral else "{sets},"
    return (
        text.format(sets=words.sets(len(sets))),
        translate("Sheet", "from {first}").format(first=first),
        translate("Sheet", "to {last}").format(last=last),
    )


def _total_text(slot: SlotPlan, unit: Unit) -> str:
    sets = slot.target.sets
    total = sum(each.reps if each.reps is not None else each.seconds or 0 for each in sets)
    amount = words.hold(total) if sets[0].reps is None else words.reps(total)
    text = translate("Sheet", "{amount} in {sets}")
    said = text.format(amount=amount, sets=words.sets(len(sets)))
    return _at(said, sets[0].load_g, slot.exercise, unit)


def _at(work: str, load_g: int, exercise: Exercise, unit: Unit) -> str:
    """``work`` with its load: "… at 62.5 kg", "… at 2 × 16 kg", "… with 5 kg"."""
    if exercise.loading is LoadingKind.BODYWEIGHT:
        return " ".join(part for part in (work, words.added_load(load_g, unit)) if part)
    if load_g == 0 or exercise.loading is LoadingKind.BAND:
        return work
    load = words.load(load_g, unit).replace(" ", "\N{NO-BREAK SPACE}")
    if exercise.implements > 1:
        load = f"{exercise.implements}{_TIMES}{load}"
    return translate("Words", "{work} at {load}").format(work=work, load=load)


def _amount(asked: AskedSet) -> str:
    amount = words.hold(asked.seconds) if asked.seconds is not None else f"{asked.reps or 0}"
    return f"{amount}+" if asked.open_ended else amount


def _work(asked: AskedSet) -> tuple[int, int | None, int | None]:
    return asked.load_g, asked.reps, asked.seconds


def _amounts(sets: Sequence[SetDone]) -> list[str]:
    """Each set's amount; left and right of one set as "8/7"."""
    said: list[str] = []
    before = ""
    for each in sets:
        amount = f"{each.amount}"
        if (before, each.side) == _SIDES:
            said[-1] = f"{said[-1]}/{amount}"
            before = ""
        else:
            said.append(amount)
            before = each.side
    return said
