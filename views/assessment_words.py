"""Words for tests: what they ask, how hard they may be, and the starts that they give.

QtCore only. A test is never a maximum, and everything said here keeps to that.
"""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication

from desktop.planning.assessment_starts import StartRead
from desktop.training.exercises import Exercise, LoadingKind, Measure
from desktop.training.position import Position, Surroundings
from desktop.training.quantities import Unit
from desktop.training.session import AskedSet
from views import words
from views.exercise_words import variation_name
from views.reason_sentences import correctable_text
from views.sentences import worded

translate = QCoreApplication.translate


def tested_row_text(measure: Measure, rest_s: int | None) -> str:
    """What a slot of a test week asks, in its row: "test with reps in reserve · rest 3:00"."""
    if measure is Measure.HOLD:
        said = [translate("Tests", "test: held while it is clean")]
    else:
        said = [translate("Tests", "test with reps in reserve")]
    if rest_s:
        said.append(translate("Tests", "rest {time}").format(time=words.clock(rest_s)))
    return words.DOT.join(said)


def tested_asked_text(asked: Sequence[AskedSet], unit: Unit, exercise: Exercise) -> str:
    """What a test asks: "Test: 8 or more at 60 kg", "Test: sets of 8, from 20 kg up to 30 kg"."""
    if not asked:
        return ""
    first, last = asked[0], asked[-1]
    amount = _amount(first)
    if len(asked) > 1:
        text = translate("Tests", "Test: sets of {amount}, from {first} up to {last}")
        said = text.format(
            amount=amount, first=_load(first, unit, exercise), last=_load(last, unit, exercise)
        )
    elif first.open_ended:
        said = translate("Tests", "Test: {amount} or more").format(amount=amount)
    else:
        text = translate("Tests", "Test: {amount}")
        said = text.format(amount=amount if first.seconds else words.reps(first.reps or 0))
    if exercise.unilateral:
        said = translate("Tests", "{test} each side").format(test=said)
    if len(asked) > 1:
        return said
    if exercise.loading is LoadingKind.BODYWEIGHT:
        return " ".join(part for part in (said, words.added_load(first.load_g, unit)) if part)
    if not first.load_g or exercise.loading is LoadingKind.BAND:
        return said
    text = translate("Tests", "{test} at {load}")
    return text.format(test=said, load=_load(first, unit, exercise))


def tested_how_text(asked: Sequence[AskedSet]) -> str:
    """How hard a test may be: clean work only, and where to stop; "" where nothing is asked."""
    if not asked:
        return ""
    last = asked[-1]
    if last.seconds is not None:
        text = translate("Tests", "No maximum: hold while it is clean")
    elif len(asked) > 1:
        text = translate(
            "Tests", "No maximum: end after the first set with {reserve} or fewer clean reps left"
        )
    else:
        text = translate("Tests", "No maximum: clean reps until {reserve} are left")
    said = [text.format(reserve=words.number(last.rir or 0, 1))]
    if last.open_ended and last.stop_at is not None:
        stop = words.number(last.stop_at) if last.seconds is None else words.hold(last.stop_at)
        said.append(translate("Tests", "stop at\u00a0{stop}").format(stop=stop))
    return ", ".join(said)


def start_text(read: StartRead, unit: Unit, around: Surroundings) -> str:
    """What a test changed, from → to: "3 × 8 at 20 kg → 3 × 8 at 60 kg"."""
    alike = (
        read.before is None or read.after is None or (read.before.variation == read.after.variation)
    )
    before, after = (
        "" if each is None else _position(each, read.exercise, unit, around, named=not alike)
        for each in (read.before, read.after)
    )
    if not after:
        return (
            translate("Tests", "{work}, as before").format(work=before)
            if before
            else (translate("Tests", "no start yet"))
        )
    if not before:
        return translate("Tests", "Starts at {work}").format(work=after)
    if before == after:
        return translate("Tests", "{work}, as before").format(work=after)
    return f"{before} {words.ARROW} {after}"


def start_why_text(read: StartRead, correctable: int) -> str:
    """How sure a start is: "Read from this test, ± 7 %; the first 2 sessions may correct it"; or
    why none could be read.
    """
    if read.why:
        return translate("Tests", "No start could be read: {why}").format(why=worded(read.why))
    if read.plus_minus is None:
        said = [translate("Tests", "Read from this test; how far off is not known")]
    else:
        text = translate("Tests", "Read from this test, ± {percent}")
        said = [text.format(percent=words.percent(read.plus_minus))]
    if correctable:
        said.append(correctable_text(correctable))
    return "; ".join(said)


def _amount(asked: AskedSet) -> str:
    if asked.seconds is not None:
        return words.hold(asked.seconds)
    return words.number(asked.reps or 0)


def _load(asked: AskedSet, unit: Unit, exercise: Exercise) -> str:
    load = words.load(asked.load_g, unit).replace(" ", "\N{NO-BREAK SPACE}")
    if exercise.implements > 1:
        return f"{exercise.implements}\N{NO-BREAK SPACE}{words.TIMES}\N{NO-BREAK SPACE}{load}"
    return load


def _position(
    position: Position, exercise: Exercise, unit: Unit, around: Surroundings, *, named: bool
) -> str:
    bodyweight = exercise.loading is LoadingKind.BODYWEIGHT
    text = words.prescription(position, unit, bodyweight=bodyweight)
    name = variation_name(position.variation, around, exercise) if named else ""
    return f"{text}, {name}" if name else text
