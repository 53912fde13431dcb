"""The record: the repository as screens see it, with one signal for all that changes.

Data flows one way: a screen calls `save` or `remove`, a command writes, ``changed`` tells every
screen. Each edit can be undone, across screens, by one stack.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from datetime import date
from enum import StrEnum
from functools import cached_property
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QUndoStack

from db.changes import Changes, Kind
from db.errors import Conflict, StoreError
from views.lineage import Lineage
from views.roster_source import RosterSource
from views.take_command import Place, TakeCommand
from views.undo_commands import Desk, RemoveCommand, ReplaceCommand, SaveCommand, StoreCommand

if TYPE_CHECKING:
    from db.first_look import Glimpse
    from db.repository import Repository
    from desktop.planning.desk import DeskRow
    from desktop.planning.roster import RosterEntry
    from desktop.training.limits import Limit, LimitId

_EVERYTHING = Changes(kinds=frozenset(Kind))


class MessageKind(StrEnum):
    """How a message is meant; the status line shows each with its own word and colour."""

    DONE = "done"
    NOTE = "note"
    ERROR = "error"


class Record(QObject):
    """The repository with undo.

    ``changed(Changes)`` follows every write, undone and redone ones too. ``message(text, kind)``
    is the one path for words to the coach; text is plain, never markup.

    A record may stand before its file is open: it then knows the ``glimpses`` of a first look,
    until `attach` brings the repository and ``opened`` follows. They stand in for the roster until
    that is read.
    """

    opened = Signal()
    changed = Signal(object)
    message = Signal(str, str)

    def __init__(
        self,
        repository: Repository | None = None,
        parent: QObject | None = None,
        *,
        glimpses: Sequence[Glimpse] = (),
    ) -> None:
        super().__init__(parent)
        self._repository: Repository | None = None
        self._glimpses = tuple(glimpses)
        self.undo_stack = QUndoStack(self)
        self._roster = RosterSource(self)
        self._roster.went_on.connect(lambda: self.changed.emit(Changes()))
        self._began: date | None = None
        self._reads_roster = repository is not None
        if repository is not None:
            self._take(repository)

    @property
    def attached(self) -> bool:
        """Whether the file is open."""
        return self._repository is not None

    @property
    def repository(self) -> Repository:
        """The repository, for reading. The file must be open."""
        assert self._repository is not None
        return self._repository

    def attach(self, repository: Repository, *, roster: bool = True) -> None:
        """The file is open now. ``roster`` False: `read_roster` follows, when there is time."""
        self._take(repository)
        if roster:
            self.read_roster()
        self.opened.emit()

    def read_roster(self) -> None:
        """Read the roster in place of what the first look gave."""
        if self._began is not None:
            self.begin_roster(self._began)
        self.changed.emit(Changes())

    def _take(self, repository: Repository) -> None:
        self._repository = repository
        self._desk = Desk(repository, Lineage(), self._wrote, self._failed)
        self._token = repository.changes_token()

    @cached_property
    def limits(self) -> Mapping[LimitId, Limit]:
        """The limits of recovery, which hold the sentences of cautions."""
        from desktop.planning.history import shipped_limits

        return shipped_limits()

    def roster(self, today: date) -> tuple[RosterEntry, ...]:
        """Everybody by need, as far as known; after an edit only those it touched are looked at
        again.
        """
        if self._began != today:
            self.begin_roster(today)
        return tuple(row.entry for row in self._roster.rows())

    @property
    def glimpses(self) -> tuple[Glimpse, ...]:
        """Everybody at first sight, for while the file is not open yet."""
        return self._glimpses

    def desk_rows(self, today: date) -> tuple[DeskRow, ...]:
        """The desk's rows by need, as far as known."""
        self.roster(today)
        return self._roster.rows()

    def entry(self, trainee_id: int | None) -> RosterEntry | None:
        """One trainee's entry with all cautions; None where nobody is named or the file is not
        open yet.
        """
        row = self._roster.row(trainee_id) if self._reads_roster else None
        return row.entry if row is not None else None

    @property
    def roster_complete(self) -> bool:
        """Whether the roster knows everybody's cautions."""
        return self._reads_roster and self._roster.complete

    @property
    def reads_roster(self) -> bool:
        """Whether there is more of the roster than glimpses."""
        return self._reads_roster

    @property
    def roster_progress(self) -> tuple[int, int]:
        """How many of how many trainees are known with their cautions."""
        return self._roster.progress if self._reads_roster else (0, len(self._glimpses))

    def begin_roster(self, today: date) -> None:
        """Read the roster quickly; what takes longer follows with a ``changed`` of no kind."""
        self._began = today
        if self._repository is not None:
            self._reads_roster = True
            self._roster.begin(self._repository, today)

    def line_names(self, trainee_id: int | None) -> Callable[[int | None], str]:
        """Words for a trainee's lines by id: "Back squat", "Back squat, heavy"; read when asked."""
        names: dict[int | None, str] = {}

        def name(line_id: int | None) -> str:
            if line_id is not None and not names and trainee_id is not None:
                names.update(self._names_of_lines(trainee_id))
            return names.get(line_id, "")

        return name

    def save(
        self,
        text: str,
        *aggregates: Any,
        before: Sequence[Any | None] | None = None,
        also: Callable[[], None] = lambda: None,
    ) -> tuple[Any, ...] | None:
        """Save aggregates as one act called ``text`` ("Rename Bow"); it can be undone.

        New ones have ``id`` None. ``before`` is looked up unless given. ``also`` is done in the
        same transaction. Returns them as saved, with identities and revisions, or None where it
        failed (the coach has been told why).
        """
        found = self._found(aggregates) if before is None else tuple(before)
        if found is None:
            return None
        command = SaveCommand(text, self._desk, aggregates, found, also)
        return command.saved if self._push(command) else None

    def remove(self, text: str, *aggregates: Any) -> bool:
        """Remove aggregates, and what hangs on them, as one act that can be undone."""
        return self._push(RemoveCommand(text, self._desk, aggregates))

    def replace(
        self, text: str, removed: Sequence[Any], saved: Sequence[Any]
    ) -> tuple[Any, ...] | None:
        """Remove some and save others as one act, all or none; returns those saved, as `save`."""
        found = self._found(saved)
        if found is None:
            return None
        command = ReplaceCommand(text, self._desk, removed, saved, found)
        return command.saved if self._push(command) else None

    @contextmanager
    def together(self, text: str) -> Iterator[None]:
        """Several saves and removals inside are one act for undo, called ``text``."""
        self.undo_stack.beginMacro(text)
        try:
            yield
        finally:
            self.undo_stack.endMacro()

    def say(self, text: str, kind: str = MessageKind.NOTE) -> None:
        """Tell the coach something in the quiet line at the foot of the window."""
        self.message.emit(text, MessageKind(kind).value)

    def reported(self, error: StoreError) -> None:
        """Tell the coach about an error met while reading."""
        self._failed(error)

    def took(self, text: str, changes: Changes, before: Mapping[Place, Any]) -> None:
        """Something was written in slices, as one act called ``text``; it can be undone.
        ``before``: what stood there, by type and id.
        """
        self.undo_stack.push(TakeCommand(text, self._desk, changes, before))

    def took_in(self, changes: Changes) -> None:
        """Something was written beside the record, such as newer shipped exercises."""
        self._wrote(changes)

    def look_for_changes_elsewhere(self) -> bool:
        """Whether another process wrote since the last look; then everything is read again."""
        token = self.repository.changes_token()
        if token == self._token:
            return False
        self._token = token
        self._wrote(_EVERYTHING)
        return True

    def _names_of_lines(self, trainee_id: int) -> dict[int | None, str]:
        from desktop.planning.history import read_library

        exercises = read_library(self.repository).exercises
        return {
            line.id: ", ".join(part for part in (exercises[line.exercise].name, line.name) if part)
            for line in self.repository.lines(trainee_id)
        }

    def _push(self, command: StoreCommand) -> bool:
        self.undo_stack.push(command)
        return command.done

    def _wrote(self, changes: Changes) -> None:
        self._roster.forget(changes)
        self.changed.emit(changes)

    def _failed(self, error: StoreError) -> None:
        from views.sentences import worded  # only where something went wrong

        remedy = worded(error.remedy) or (
            self.tr("Look at it again, then repeat the change.")
            if isinstance(error, Conflict)
            else ""
        )
        self.say(" ".join(part for part in (worded(error), remedy) if part), MessageKind.ERROR)
        if isinstance(error, Conflict):
            self._wrote(_EVERYTHING)

    def _found(self, aggregates: Sequence[Any]) -> tuple[Any | None, ...] | None:
        """What the store holds of each; None where it cannot be read (the coach is told)."""
        try:
            return tuple(map(self._stored, aggregates))
        except StoreError as error:
            self._failed(error)
            return None

    def _stored(self, aggregate: Any) -> Any | None:
        """What the store holds of an aggregate now; None where it is new."""
        if not hasattr(aggregate, "id"):
            return self.repository.coach_settings()
        if aggregate.id is None:
            return None
        return _reader(self.repository, aggregate)()


def _reader(store: Repository, aggregate: Any) -> Callable[[], Any]:
    from desktop.training.exercises import Exercise
    from desktop.training.program import Assignment, Line, Program
    from desktop.training.session import Activity, Session
    from desktop.training.trainee import (
        Absence,
        BodyMass,
        DeloadWindow,
        DismissedCaution,
        EquipmentFrom,
        Goal,
        RememberedName,
        Trainee,
    )

    singles: dict[type, Callable[[int], Any]] = {
        Trainee: store.trainee,
        Session: store.session,
        Line: store.line,
        Program: store.program,
    }
    if isinstance(aggregate, Exercise):
        return lambda: store.exercise(aggregate.key)
    if single := singles.get(type(aggregate)):
        return lambda: single(aggregate.id)
    lists: dict[type, Callable[[int], Iterable[Any]]] = {
        BodyMass: store.body_masses,
        EquipmentFrom: store.equipment,
        Assignment: store.assignments,
        Activity: store.activities,
        DeloadWindow: store.deloads,
        Absence: store.absences,
        Goal: store.goals,
        DismissedCaution: store.dismissed,
        RememberedName: store.remembered_names,
    }
    read = lists[type(aggregate)]
    return lambda: next(
        (each for each in read(aggregate.trainee_id) if each.id == aggregate.id), None
    )
