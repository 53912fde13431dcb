"""The session desk: opens drafts from the record, keeps them, and writes sessions back.

It holds no widget. What is typed is kept in the data file at every field, by trainee, day and
session, and comes back when that day is opened again, in this run of the program or the next.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date

from PySide6.QtCore import QCoreApplication, QLocale

from db.errors import NotFound, StoreError
from desktop.planning import kept_drafts
from desktop.planning.assessment_starts import StartRead, lines_to_save, starts_read
from desktop.planning.cautions import cautions_in
from desktop.planning.clearance import clearance_needed
from desktop.planning.days import DayPlan, SlotPlan, day_plan_of
from desktop.planning.history import History, read_history
from desktop.planning.opened_draft import (
    draft_of_plan,
    draft_of_session,
    line_of_slot,
    slot_of_line,
    unplanned_draft,
)
from desktop.planning.outcomes import LineOutcome, outcomes_of
from desktop.planning.past_effects import PastEffect, past_effect
from desktop.planning.schedule import DAY
from desktop.planning.session_days import latest_day
from desktop.planning.session_draft import LineDraft, SessionDraft
from desktop.planning.typed_cells import CellKind, load_text
from desktop.planning.typed_session import (
    LineKey,
    body_mass_g,
    lines_missing,
    session_of,
    typed_activity,
)
from desktop.training.exercises import Exercise
from desktop.training.position import Position
from desktop.training.program import Line, Override
from desktop.training.quantities import same_load
from desktop.training.recovery import Caution
from desktop.training.session import Session
from desktop.training.trainee import BodyMass
from views import words
from views.caution_texts import caution_text
from views.record import Record
from views.session_texts import activities_text, plan_text, why_text

translate = QCoreApplication.translate


@dataclass(frozen=True, slots=True)
class Opened:
    """A draft with what surrounds it: the trainee's record, the day's plan, a plan for each line
    of the draft, and the session as stored (None: it is new).
    """

    history: History
    plan: DayPlan
    draft: SessionDraft
    slots: tuple[SlotPlan, ...]
    stored: Session | None = None
    untouched: SessionDraft | None = None

    @property
    def changed(self) -> bool:
        """Whether something was typed since it was opened."""
        return self.draft != self.untouched


class SessionDesk:
    """Reads and writes sessions for the form."""

    def __init__(self, record: Record, today: date) -> None:
        self._record, self._today = record, today
        self._not_written = False
        self._typed: dict[int, SessionDraft] = {}
        self._undone: set[int] = set()

    def open(self, trainee_id: int, day: date, session_id: int | None = None) -> Opened:
        """The session of a day: the one named, else the first on record, else the plan."""
        history = read_history(self._record.repository, trainee_id)
        plan = day_plan_of(history, day)
        of_day = [each for each in history.sessions if each.day == day]
        stored = next((each for each in of_day if each.id == session_id), None)
        return self._opened(history, plan, stored or next(iter(of_day), None))

    def open_another(self, trainee_id: int, day: date) -> Opened:
        """One more session of a day that has one already; nothing is planned for it."""
        history = read_history(self._record.repository, trainee_id)
        plan = day_plan_of(history, day)
        return self._with_kept(history, plan, unplanned_draft(history.trainee, day, _mark()), None)

    def resume(self, draft: SessionDraft) -> Opened:
        """A draft that was left, as it was."""
        day, session_id = draft.day, draft.session_id
        of_day = self._record.repository.session_on(draft.trainee_id, day)
        if session_id is None and of_day:
            return self.open_another(draft.trainee_id, day)
        return self.open(draft.trainee_id, day, session_id)

    def keep(self, opened: Opened, *, at_work: bool = False) -> bool:
        """Keep what was typed, until it is saved; ``at_work``: it stands in the form.

        False where it cannot be written now: it should be tried again. The coach is told once.
        """
        repository = self._record.repository
        try:
            if opened.changed and not self._is_saved(opened.draft):
                kept_drafts.keep(repository, opened.draft, at_work=at_work)
            else:
                kept_drafts.drop(repository, opened.draft)
        except StoreError as error:
            if self._gone(opened.draft.trainee_id):
                return True
            if not self._not_written:
                self._record.reported(error)
            self._not_written = True
        else:
            self._not_written = False
        return not self._not_written

    def added(
        self, opened: Opened, exercise: Exercise, after: int | None = None
    ) -> tuple[Opened, int]:
        """The draft with one more exercise, and that line's number."""
        slot = slot_of_line(opened.history, exercise, "", opened.draft.day)
        line = line_of_slot(slot, opened.draft.unit, "", planned=False)
        place = len(opened.slots) if after is None else after + 1
        slots = (*opened.slots[:place], slot, *opened.slots[place:])
        return replace(opened, draft=opened.draft.with_line(line, after), slots=slots), place

    def effects(self, opened: Opened) -> PastEffect | None:
        """What saving would change of today's targets, bests and cautions, where it touches the
        past; None: it does not, since nothing later is on record.
        """
        draft = opened.draft
        last = latest_day(opened.history)
        if opened.stored is None and (last is None or draft.day >= last):
            return None
        after = session_of(draft, dict.fromkeys(lines_missing(draft), -1))
        known = tuple(part for part in after.lines if part.line_id > 0)
        before = () if opened.stored is None else (opened.stored,)
        change = (replace(after, lines=known),)
        return past_effect(self._record.repository, before, change, self._today)

    def save(self, opened: Opened) -> Session | None:
        """Write the session, with lines and body mass that it needs, as one act; None where it
        failed (the coach has been told).
        """
        draft = opened.draft
        saved: Session | None = None
        with self._record.together(self._act(opened)):
            line_ids = self._make_lines(draft)
            if line_ids is not None and self._save_mass(opened):
                self.add_activity(opened)
                session = session_of(draft, line_ids)
                found = self._record.save(
                    self._act(opened),
                    session,
                    *self._lines_after(opened.stored, session),
                    also=lambda: kept_drafts.drop(self._record.repository, draft),
                )
                saved = found[0] if found else None
        if saved is not None and saved.id is not None and opened.stored is None:
            self._typed[saved.id] = draft
        return saved

    def add_activity(self, opened: Opened) -> bool:
        """Put the other activity typed on record, where one is."""
        activity = typed_activity(opened.draft)
        if activity is None:
            return True
        text = translate("Session", "Add an activity")
        return self._record.save(text, activity) is not None

    def activities_of_week(self, opened: Opened) -> str:
        """The other activities on record in the week of the draft's day, in words."""
        monday = opened.draft.day - opened.draft.day.weekday() * DAY
        activities = self._record.repository.activities(opened.draft.trainee_id)
        of_week = [each for each in activities if monday <= each.day < monday + 7 * DAY]
        return activities_text(of_week, self._today)

    def remove(self, opened: Opened) -> bool:
        """Remove a stored session; it can be undone."""
        if opened.stored is None:
            return False
        day = words.short_day(opened.draft.day, self._today)
        text = translate("Session", "Remove session of {name}, {day}")
        text = text.format(name=opened.history.trainee.name, day=day)
        lines = lines_to_save(self._record.repository, (opened.stored,), ())
        if not lines:
            return self._record.remove(text, opened.stored)
        return self._record.replace(text, [opened.stored], lines) is not None

    def reopened(self, opened: Opened, stored: Session) -> Opened:
        """The session just saved, over the record as it is now; the plan of its day stands."""
        history = read_history(self._record.repository, stored.trainee_id)
        return self._opened(history, opened.plan, stored)

    def outcomes_after(self, opened: Opened) -> tuple[LineOutcome, ...]:
        """What the stored session meant for each of its lines."""
        return () if opened.stored is None else outcomes_of(opened.history, opened.stored)

    def starts_after(self, opened: Opened) -> dict[int, StartRead]:
        """What the tests of the stored session changed, by line."""
        return {} if opened.stored is None else starts_read(opened.history, opened.stored)

    def cautions_after(self, opened: Opened) -> list[tuple[Caution, str]]:
        """The cautions on what was just recorded, each with its sentence."""
        stored, history, limits = opened.stored, opened.history, self._record.limits
        if stored is None:
            return []
        names = self._record.line_names(stored.trainee_id)
        lines = {part.line_id for part in stored.lines}
        # What is asked of a day rests on the days before it, so that today counts tomorrow.
        the_day_after = max(stored.day, self._today) + DAY
        unit = history.trainee.unit
        return [
            (each, caution_text(each, limits, unit, self._today, names(each.line_id)))
            for each in cautions_in(history, the_day_after)
            if stored.id in each.sessions or each.line_id in lines
        ]

    def stopped(self, opened: Opened) -> bool:
        """Whether nothing may be asked of the trainee until a clearance is recorded."""
        return clearance_needed(opened.history, max(opened.draft.day, self._today)) is not None

    def override(self, opened: Opened, outcome: LineOutcome, position: Position, note: str) -> None:
        """The coach's word on a line: it holds from the line's last session on."""
        if outcome.line.id is None:
            return
        done = [(one.day, one.entry) for one, _ in opened.history.done(outcome.line.id)]
        day, entry = max(done, default=(opened.draft.day, opened.draft.entry))
        line = self._record.repository.line(outcome.line.id)
        word = Override(day, position, note, entry + 1)
        text = translate("Session", "Set {exercise} otherwise")
        self._record.save(
            text.format(exercise=outcome.exercise.name),
            replace(line, overrides=(*line.overrides, word)),
        )

    def forget_undone(self, trainee_id: int) -> None:
        """A session that is no longer on record, since its saving was undone, is a draft again."""
        repository = self._record.repository
        standing = {each.id or 0 for each in repository.sessions(trainee_id)}
        self._undone -= standing
        for session_id, draft in self._typed.items():
            gone = session_id not in standing and session_id not in self._undone
            if draft.trainee_id == trainee_id and gone:
                self._undone.add(session_id)
                kept_drafts.keep(repository, draft)

    def _gone(self, trainee_id: int) -> bool:
        """Whether the trainee was removed meanwhile: then nothing is to be kept."""
        try:
            self._record.repository.trainee(trainee_id)
        except NotFound:
            return True
        except StoreError:
            return False
        return False

    def _is_saved(self, draft: SessionDraft) -> bool:
        """Whether exactly this was saved and stands, as after undoing and doing again."""
        ids = {session_id for session_id, typed in self._typed.items() if typed == draft}
        of_day = self._record.repository.session_on(draft.trainee_id, draft.day) if ids else ()
        return any(each.id in ids for each in of_day)

    def _opened(self, history: History, plan: DayPlan, stored: Session | None) -> Opened:
        return self._with_kept(history, plan, self._fresh(history, plan, stored), stored)

    def _with_kept(
        self, history: History, plan: DayPlan, untouched: SessionDraft, stored: Session | None
    ) -> Opened:
        kept = kept_drafts.kept(self._record.repository, untouched)
        draft = untouched
        if kept is not None and kept.revision == untouched.revision and _is_known(kept, history):
            draft = replace(kept, mark=untouched.mark)
        slots = tuple(self._slot_of(history, plan, line) for line in draft.lines)
        return Opened(history, plan, draft, slots, stored, untouched)

    def _fresh(self, history: History, plan: DayPlan, stored: Session | None) -> SessionDraft:
        if stored is None:
            unit, today = history.trainee.unit, self._today
            return draft_of_plan(plan, lambda slot: why_text(slot, unit, today), _mark())
        names = {line.id: line.name for line in history.lines if line.id is not None}
        exercises = history.library.exercises
        weighed = _weighed(history, stored.day)
        kind = CellKind(history.trainee.unit)
        mass = "" if weighed is None else load_text(weighed.mass_g, kind, _mark())
        return draft_of_session(stored, history.trainee, exercises, names, mass, _mark())

    def _slot_of(self, history: History, plan: DayPlan, line: LineDraft) -> SlotPlan:
        for slot in plan.slots:
            if (slot.exercise.key, slot.line.name) == (line.exercise, line.line_name):
                return slot
        exercise = history.library.exercises[line.exercise]
        return slot_of_line(history, exercise, line.line_name, plan.day)

    def _make_lines(self, draft: SessionDraft) -> dict[LineKey, int] | None:
        made: dict[LineKey, int] = {}
        for exercise, name in lines_missing(draft):
            known = self._record.repository.line_of(draft.trainee_id, exercise, name)
            saved = (known,)
            if known is None:
                text = translate("Session", "Add an exercise")
                fresh = self._record.save(text, Line(draft.trainee_id, exercise, name))
                if fresh is None:
                    return None
                saved = fresh
            line = saved[0]
            if line is not None and line.id is not None:
                made[exercise, name] = line.id
        return made

    def _lines_after(self, stored: Session | None, session: Session) -> tuple[Line, ...]:
        """The lines that start otherwise by the tests of a session that is to be saved."""
        before = () if stored is None else (stored,)
        return lines_to_save(self._record.repository, before, (session,))

    def _save_mass(self, opened: Opened) -> bool:
        mass_g = body_mass_g(opened.draft)
        if mass_g is None:
            return True
        known = _weighed(opened.history, opened.draft.day)
        if known is not None and same_load(known.mass_g, mass_g):
            return True
        weighed = known or BodyMass(opened.draft.trainee_id, opened.draft.day, mass_g)
        text = translate("Session", "Body mass")
        return self._record.save(text, replace(weighed, mass_g=mass_g)) is not None

    def _act(self, opened: Opened) -> str:
        day = words.short_day(opened.draft.day, self._today)
        text = (
            translate("Session", "Session of {name}, {day}")
            if opened.stored is None
            else translate("Session", "Correct session of {name}, {day}")
        )
        return text.format(name=opened.history.trainee.name, day=day)


def detail_text(opened: Opened) -> str:
    """Whose session of which plan, and how it stands."""
    parts = [opened.history.trainee.name, plan_text(opened.plan)]
    if opened.stored is not None:
        recorded, changed = (
            translate("Session", "recorded"),
            translate("Session", "recorded, changed"),
        )
        parts.append(changed if opened.changed else recorded)
    elif opened.draft.lines and not opened.plan.slots:
        parts.append(translate("Session", "not planned"))
    return words.DOT.join(part for part in parts if part)


def _is_known(draft: SessionDraft, history: History) -> bool:
    """Whether every exercise of a draft is still there."""
    return all(line.exercise in history.library.exercises for line in draft.lines)


def _weighed(history: History, day: date) -> BodyMass | None:
    return next((each for each in history.body_masses if each.day == day), None)


def _mark() -> str:
    return QLocale().decimalPoint()
