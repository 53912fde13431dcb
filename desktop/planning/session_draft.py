"""A session while it is typed: an immutable value that holds every text as it was typed.

Each edit gives a new draft, so that a screen can step back through them, a draft can be written
down at every field, and all of it can be tried without a screen. Nothing here refuses a text:
what is wrong with it is found by `desktop.planning.typed_session`.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum
from typing import Final

from desktop.planning.typed_cells import CellKind, Row, number_text
from desktop.training.quantities import Unit
from desktop.training.session import AskedSet, SetDone

MOST_SETS: Final = 30


class Field(StrEnum):
    """What is typed once for a session."""

    EFFORT = "effort"
    MINUTES = "minutes"
    MASS = "mass"
    SLEEP = "sleep"
    SORENESS = "soreness"
    STRESS = "stress"
    MOTIVATION = "motivation"
    ACTIVITY = "activity"
    ACTIVITY_MINUTES = "activity_minutes"
    ACTIVITY_EFFORT = "activity_effort"
    NOTE = "note"


WELLNESS: Final = (Field.SLEEP, Field.SORENESS, Field.STRESS, Field.MOTIVATION)
ACTIVITY: Final = (Field.ACTIVITY, Field.ACTIVITY_MINUTES, Field.ACTIVITY_EFFORT)


@dataclass(frozen=True, slots=True)
class SetDraft:
    """One set's texts. A blank ``done`` is a set not done; a blank ``load`` the one asked.

    ``asked``: what stands above the cells. ``was``: the stored set (two: left and right) that the
    texts were made from, and ``was_texts`` those texts by row: what they do not change is kept as
    it was. ``sure``: the coach said that a doubtful value is meant.
    """

    done: str = ""
    load: str = ""
    reserve: str = ""
    pain: str = ""
    asked: AskedSet | None = None
    was: tuple[SetDone, ...] = ()
    was_texts: tuple[str, ...] = ()
    variation: str | None = None
    tempo_s: int | None = None
    warm_up: bool = False
    sure: bool = False

    def text(self, row: Row) -> str:
        """The text of one cell."""
        return str(getattr(self, row.value))

    @property
    def blank(self) -> bool:
        """Whether no cell holds anything."""
        return not any(self.text(row).strip() for row in Row)

    @property
    def texts(self) -> tuple[str, ...]:
        """The texts of all cells, by row."""
        return tuple(self.text(row) for row in Row)

    @property
    def as_stored(self) -> bool:
        """Whether every text still says what is stored."""
        return bool(self.was) and self.texts == self.was_texts


@dataclass(frozen=True, slots=True)
class LineDraft:
    """One exercise's part of the session.

    ``line_id`` None: the line does not exist yet. ``asked`` is what is stored with the session
    (empty where nothing was). ``usual_g``: the load of a set that nothing was asked of, in grams;
    None: it must be typed. ``planned`` False: added by the coach. ``test``, ``deload`` as stored.
    ``replaced``: another exercise was done instead.
    """

    exercise: str
    line_id: int | None = None
    line_name: str = ""
    kind: CellKind = CellKind()
    asked: tuple[AskedSet, ...] = ()
    sets: tuple[SetDraft, ...] = ()
    usual_g: int | None = None
    planned: bool = True
    deload: bool = False
    test: bool = False
    reason: str = ""
    note: str = ""
    replaced: bool = False

    @property
    def blank(self) -> bool:
        """Whether nothing is typed for it."""
        return all(each.blank for each in self.sets) and not self.note.strip()


@dataclass(frozen=True, slots=True)
class SessionDraft:
    """A session as typed so far, planned or not, new or opened again (``session_id``).

    ``mark`` is the decimal mark that texts are made with; both are read. The activity is another
    one of the day, such as cycling to work.
    """

    trainee_id: int
    day: date
    unit: Unit = Unit.KG
    mark: str = "."
    lines: tuple[LineDraft, ...] = ()
    effort: str = ""
    minutes: str = ""
    mass: str = ""
    sleep: str = ""
    soreness: str = ""
    stress: str = ""
    motivation: str = ""
    activity: str = ""
    activity_minutes: str = ""
    activity_effort: str = ""
    note: str = ""
    red_flag: bool = False
    program_id: int | None = None
    week: int | None = None
    day_name: str = ""
    session_id: int | None = None
    revision: int = 0
    entry: int = 0

    @property
    def blank(self) -> bool:
        """Whether nothing is typed at all."""
        return self.untrained and not self.has_activity

    @property
    def untrained(self) -> bool:
        """Whether nothing is typed but another activity."""
        texts = any(self.text(field).strip() for field in Field if field not in ACTIVITY)
        return not (texts or self.red_flag) and all(line.blank for line in self.lines)

    @property
    def has_activity(self) -> bool:
        """Whether anything of another activity is typed."""
        return any(self.text(field).strip() for field in ACTIVITY)

    def text(self, field: Field) -> str:
        """The text of one of the session's own fields."""
        return str(getattr(self, field.value))

    # Cells

    def with_cell(self, line: int, index: int, row: Row, text: str) -> SessionDraft:
        """Another text in one cell; a value held to be meant is asked about again."""
        before = self.lines[line].sets[index]
        if before.text(row) == text:
            return self
        sure = before.sure and row not in (Row.DONE, Row.LOAD)
        return self._with_set(line, index, _with_text(before, row, text, sure=sure))

    def with_sure(self, line: int, index: int) -> SessionDraft:
        """The coach says that a doubtful value of this set is meant."""
        return self._with_set(line, index, replace(self.lines[line].sets[index], sure=True))

    def with_warm_up(self, line: int, index: int) -> SessionDraft:
        """The set becomes a warm-up set, or a working set again."""
        before = self.lines[line].sets[index]
        return self._with_set(line, index, replace(before, warm_up=not before.warm_up))

    def with_variation(self, line: int, index: int, variation: str | None) -> SessionDraft:
        """From this set on the sets were done in another variation."""
        return self._with_sets(
            line,
            *(
                replace(each, variation=variation) if at >= index else each
                for at, each in enumerate(self.lines[line].sets)
            ),
        )

    # As asked

    def as_asked(self, line: int, index: int) -> SessionDraft:
        """One set was done as asked; where nothing is asked, nothing changes."""
        each = self.lines[line].sets[index]
        amount = asked_amount(each.asked)
        if each.asked is None or amount is None:
            return self
        done = replace(
            each,
            done=number_text(amount),
            load="",
            variation=each.asked.variation,
            tempo_s=each.asked.tempo_s,
            sure=False,
        )
        return self._with_set(line, index, done)

    def line_as_asked(self, line: int) -> SessionDraft:
        """Every set of a line that is still blank was done as asked; the others stay."""
        draft = self
        for index, each in enumerate(self.lines[line].sets):
            if not each.done.strip():
                draft = draft.as_asked(line, index)
        return draft

    def all_as_asked(self) -> SessionDraft:
        """Every set of the session that is still blank was done as asked; the others stay, and so
        do exercises in whose place another one was done.
        """
        draft = self
        for number, line in enumerate(self.lines):
            if not line.replaced:
                draft = draft.line_as_asked(number)
        return draft

    # Sets and lines

    def with_extra_set(self, line: int) -> SessionDraft:
        """One more set at the end, of which nothing was asked. At most 30."""
        sets = self.lines[line].sets
        if len(sets) >= MOST_SETS:
            return self
        last = sets[-1] if sets else SetDraft()
        extra = SetDraft(variation=last.variation, tempo_s=last.tempo_s)
        return self._with_sets(line, *sets, extra)

    def without_set(self, line: int, index: int) -> SessionDraft:
        """A set that was not asked goes; one that was is cleared, since it was asked all the
        same.
        """
        sets = self.lines[line].sets
        if sets[index].asked is not None:
            kept = replace(sets[index], done="", load="", reserve="", pain="", sure=False)
            return self._with_set(line, index, kept)
        if len(sets) == 1:
            return self._with_set(line, index, SetDraft(variation=sets[0].variation))
        return self._with_sets(line, *(s for at, s in enumerate(sets) if at != index))

    def with_line(self, added: LineDraft, after: int | None = None) -> SessionDraft:
        """One more exercise, behind the one at ``after`` (None: at the end)."""
        place = len(self.lines) if after is None else after + 1
        return replace(self, lines=(*self.lines[:place], added, *self.lines[place:]))

    def without_line(self, line: int) -> SessionDraft:
        """An exercise that was not planned goes; what was planned stays, and was not done. The one
        in whose place it stood is replaced no more.
        """
        if self.lines[line].planned:
            return self
        before = tuple(
            replace(each, replaced=each.replaced and at != line - 1)
            for at, each in enumerate(self.lines[:line])
        )
        return replace(self, lines=(*before, *self.lines[line + 1 :]))

    def with_replaced(self, line: int) -> SessionDraft:
        """Another exercise was done instead of this one."""
        return self._with_line(line, replace(self.lines[line], replaced=True))

    def with_line_note(self, line: int, note: str) -> SessionDraft:
        """Another note on one exercise."""
        return self._with_line(line, replace(self.lines[line], note=note))

    # The session's own fields

    def with_field(self, field: Field, text: str) -> SessionDraft:
        """Another text in one of the session's own fields."""
        match field:
            case Field.EFFORT:
                return replace(self, effort=text)
            case Field.MINUTES:
                return replace(self, minutes=text)
            case Field.MASS:
                return replace(self, mass=text)
            case Field.SLEEP:
                return replace(self, sleep=text)
            case Field.SORENESS:
                return replace(self, soreness=text)
            case Field.STRESS:
                return replace(self, stress=text)
            case Field.MOTIVATION:
                return replace(self, motivation=text)
            case Field.ACTIVITY:
                return replace(self, activity=text)
            case Field.ACTIVITY_MINUTES:
                return replace(self, activity_minutes=text)
            case Field.ACTIVITY_EFFORT:
                return replace(self, activity_effort=text)
            case Field.NOTE:
                return replace(self, note=text)

    def without_activity(self) -> SessionDraft:
        """Nothing of another activity is typed any more."""
        return replace(self, activity="", activity_minutes="", activity_effort="")

    def with_red_flag(self, raised: bool) -> SessionDraft:
        """Chest pain, fainting, sudden severe pain or numbness: yes or no."""
        return replace(self, red_flag=raised)

    def _with_set(self, line: int, index: int, changed: SetDraft) -> SessionDraft:
        sets = self.lines[line].sets
        return self._with_sets(line, *sets[:index], changed, *sets[index + 1 :])

    def _with_sets(self, line: int, *sets: SetDraft) -> SessionDraft:
        return self._with_line(line, replace(self.lines[line], sets=sets))

    def _with_line(self, line: int, changed: LineDraft) -> SessionDraft:
        return replace(self, lines=(*self.lines[:line], changed, *self.lines[line + 1 :]))


def asked_amount(asked: AskedSet | None) -> int | None:
    """Repetitions or seconds that a set asks; None where nothing is asked."""
    if asked is None:
        return None
    return asked.reps if asked.reps is not None else asked.seconds


def _with_text(each: SetDraft, row: Row, text: str, *, sure: bool) -> SetDraft:
    match row:
        case Row.DONE:
            return replace(each, done=text, sure=sure)
        case Row.LOAD:
            return replace(each, load=text, sure=sure)
        case Row.RESERVE:
            return replace(each, reserve=text, sure=sure)
        case Row.PAIN:
            return replace(each, pain=text, sure=sure)
