"""Whole-aggregate writes over all shelves: saved, removed with what depends on them, restored."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace
from datetime import datetime
from typing import Any, TypeVar

from db.changes import Changes, Kind
from db.codec import from_text, to_text
from db.database import Database
from db.errors import Conflict, InvalidRecord
from db.exercises import ExerciseShelf
from db.lines import LineShelf
from db.programs import ProgramShelf
from db.session_drafts import StoredDraft, drafts_of, put_draft
from db.sessions import SessionChangeShelf, SessionShelf
from db.shelf import Shelf
from db.trainees import shelves_of_trainees
from db.validity import check_settings
from desktop.training.coach import CoachSettings
from desktop.training.sentence import sentence
from desktop.training.trainee import Trainee

A = TypeVar("A")

# What another kind refers to comes back before it.
_ORDER = (
    Kind.EXERCISE,
    Kind.TRAINEE,
    Kind.PROGRAM,
    Kind.BODY_MASS,
    Kind.EQUIPMENT,
    Kind.LINE,
    Kind.ASSIGNMENT,
    Kind.SESSION,
    Kind.SESSION_CHANGE,
    Kind.ACTIVITY,
    Kind.DELOAD,
    Kind.ABSENCE,
    Kind.GOAL,
    Kind.DISMISSED,
    Kind.REMEMBERED_NAME,
)


class Aggregates:
    """All kinds of aggregates of one data file. Each method is one transaction."""

    def __init__(self, database: Database, now: Callable[[], datetime]) -> None:
        self._database = database
        self.exercises = ExerciseShelf()
        shelves: tuple[Shelf[Any], ...] = (
            *shelves_of_trainees(),
            self.exercises,
            LineShelf(),
            ProgramShelf(),
            SessionShelf(now),
            SessionChangeShelf(),
        )
        self._by_record: dict[type, Shelf[Any]] = {shelf.record: shelf for shelf in shelves}
        self._by_kind = {shelf.kind: shelf for shelf in shelves}

    def shelf(self, record: type[A]) -> Shelf[A]:
        """The shelf of this kind of dataclass; InvalidRecord where there is none."""
        shelf = self._by_record.get(record)
        if shelf is None:
            raise InvalidRecord(
                sentence("A {name} cannot be kept or removed by itself.", name=record.__name__)
            )
        return shelf

    def settings(self) -> CoachSettings:
        """The coach's settings; the defaults where none were saved."""
        rows = self._database.execute("SELECT value, revision FROM coach_settings")
        if not rows:
            return CoachSettings()
        settings: CoachSettings = from_text(rows[0][0], CoachSettings)
        return replace(settings, revision=rows[0][1])

    def save(self, aggregates: Iterable[Any]) -> Changes:
        """Write aggregates in order; new ones where ``id`` is None."""
        with self._database.transaction():
            saved: list[Any] = []
            for alike in _in_runs(aggregates):
                saved += self._save(alike)
            return self.changes(saved)

    def remove(self, aggregates: Iterable[Any]) -> Changes:
        """Remove aggregates and their dependants; ``saved`` is all of it, as it was. The drafts of
        a removed trainee's sessions go too: they stand behind the rest of ``saved``.
        """
        with self._database.transaction():
            doomed: dict[tuple[Kind, int], Any] = {}
            for shelf, alike in self._by_shelf(aggregates):
                self._gather(shelf, shelf.current(self._database, alike), doomed)
            removed = sorted(doomed.values(), key=self._rank)
            drafts = self._drafts_of(removed)
            for shelf, alike in reversed(self._by_shelf(removed)):
                shelf.remove(self._database, alike)
        changes = self.changes(removed)
        return changes._replace(saved=(*changes.saved, *drafts))

    def restore(self, aggregates: Iterable[Any]) -> Changes:
        """Write removed aggregates back as themselves, in whichever order they come, and drafts
        among them after their trainees. ``saved`` holds the aggregates.
        """
        given = tuple(aggregates)
        records = tuple(each for each in given if not isinstance(each, StoredDraft))
        with self._database.transaction():
            for shelf, alike in self._by_shelf(sorted(records, key=self._rank)):
                shelf.restore(self._database, alike)
            for each in given:
                if isinstance(each, StoredDraft):
                    put_draft(self._database, each)
        return self.changes(records)

    def changes(self, aggregates: Iterable[Any]) -> Changes:
        """What was touched by a write of these aggregates."""
        saved = tuple(aggregates)
        kinds = frozenset(self._kind(aggregate) for aggregate in saved)
        trainees = {_trainee_of(aggregate) for aggregate in saved}
        touched = frozenset(trainee for trainee in trainees if trainee is not None)
        return Changes(kinds, frozenset() if None in trainees else touched, saved)

    def _save(self, alike: list[Any]) -> list[Any]:
        """Write a run of aggregates of one kind, all of them new or all there already."""
        first = alike[0]
        if isinstance(first, CoachSettings):
            return [self._save_settings(settings) for settings in alike]
        shelf = self.shelf(type(first))
        if first.id is None:
            return shelf.insert(self._database, alike)
        if shelf.unique:  # one may take the name that another has just given up
            return [saved for each in alike for saved in shelf.update(self._database, [each])]
        return shelf.update(self._database, alike)

    def _by_shelf(self, aggregates: Iterable[Any]) -> list[tuple[Shelf[Any], list[Any]]]:
        """Aggregates by shelf, in the order of the first of each."""
        found: dict[type, list[Any]] = {}
        for aggregate in aggregates:
            found.setdefault(type(aggregate), []).append(aggregate)
        return [(self.shelf(record), alike) for record, alike in found.items()]

    def _save_settings(self, settings: CoachSettings) -> CoachSettings:
        check_settings(settings)
        if self.settings().revision != settings.revision:
            raise Conflict(
                sentence("The coach's settings were changed elsewhere since they were read."),
                sentence("Read them again and repeat the change. Nothing was overwritten."),
            )
        saved = replace(settings, revision=settings.revision + 1)
        self._database.execute(
            "INSERT INTO coach_settings (id, revision, value) VALUES (1, ?, ?) ON CONFLICT (id)"
            " DO UPDATE SET revision = excluded.revision, value = excluded.value",
            (saved.revision, to_text(saved)),
        )
        return saved

    def _gather(
        self, shelf: Shelf[Any], aggregates: Iterable[Any], doomed: dict[tuple[Kind, int], Any]
    ) -> None:
        """Note these among the ``doomed``, with all that depends on them."""
        new = {each.id: each for each in aggregates if (shelf.kind, each.id) not in doomed}
        doomed.update(((shelf.kind, identity), each) for identity, each in new.items())
        for dependants in shelf.dependants if new else ():
            other = self._by_kind[dependants.kind]
            self._gather(other, other.owned(self._database, dependants.column, new), doomed)

    def _drafts_of(self, removed: Iterable[Any]) -> tuple[StoredDraft, ...]:
        """What was being typed for the trainees among those removed; at rest, since nothing of it
        stands in a form any more.
        """
        return tuple(
            replace(draft, at_work=False)
            for each in removed
            if isinstance(each, Trainee) and each.id is not None
            for draft in drafts_of(self._database, each.id)
        )

    def _rank(self, aggregate: Any) -> tuple[int, int]:
        return _ORDER.index(self.shelf(type(aggregate)).kind), aggregate.id

    def _kind(self, aggregate: Any) -> Kind:
        if isinstance(aggregate, CoachSettings):
            return Kind.SETTINGS
        return self.shelf(type(aggregate)).kind


def _in_runs(aggregates: Iterable[Any]) -> Iterator[list[Any]]:
    """Aggregates in order, cut where the kind changes, or whether they are new; and before one
    comes a second time.
    """
    run: list[Any] = []
    before: object = None
    seen: set[int] = set()
    for each in aggregates:
        identity = getattr(each, "id", None)
        sort = type(each), identity is None
        if run and (sort != before or identity in seen):
            yield run
            run, seen = [], set()
        run.append(each)
        before = sort
        if identity is not None:
            seen.add(identity)
    if run:
        yield run


def _trainee_of(aggregate: Any) -> int | None:
    if isinstance(aggregate, Trainee):
        return aggregate.id
    trainee_id: int | None = getattr(aggregate, "trainee_id", None)
    return trainee_id
