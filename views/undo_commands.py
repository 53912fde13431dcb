"""Edits as commands that can be undone: whole aggregates before and after.

A parent that is put back does not bring its children by itself, so a command keeps all that the
store says it touched and restores the same identities. The stack keeps a command whose ``redo``
raises; therefore failures are caught here, the command is made obsolete, and the reason goes to
``Desk.failed``.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from contextlib import AbstractContextManager
from itertools import chain
from typing import Any, NamedTuple, Protocol

from PySide6.QtGui import QUndoCommand

from db.changes import Changes, joined
from db.errors import StoreError
from views.lineage import Lineage


class Store(Protocol):
    """The part of the repository that commands need."""

    def save(self, *aggregates: Any) -> Changes: ...
    def remove(self, *aggregates: Any) -> Changes: ...
    def restore(self, *aggregates: Any) -> Changes: ...
    def transaction(self) -> AbstractContextManager[None]: ...


class Desk(NamedTuple):
    """What commands share: the store, what this window wrote, and where they say what happened."""

    store: Store
    lineage: Lineage
    changed: Callable[[Changes], None]
    failed: Callable[[StoreError], None]


class StoreCommand(QUndoCommand):
    """A command that writes to the store; ``done`` tells whether the last run succeeded."""

    def __init__(self, text: str, desk: Desk) -> None:
        super().__init__(text)
        self._desk = desk
        self.done = False

    def _run(self, work: Callable[[], Iterable[Changes]]) -> None:
        try:
            with self._desk.store.transaction():
                changes = joined(work())
        except StoreError as error:
            self.done = False
            self.setObsolete(True)
            self._desk.failed(error)
            return
        self.done = True
        self._desk.changed(changes)


class SaveCommand(StoreCommand):
    """Saves aggregates. ``before`` holds for each what the store held, None where it is new.

    ``also`` is done in the same transaction, whenever they are saved.
    """

    def __init__(
        self,
        text: str,
        desk: Desk,
        after: Sequence[Any],
        before: Sequence[Any | None],
        also: Callable[[], None] = lambda: None,
    ) -> None:
        super().__init__(text, desk)
        self._also = also
        self._after = tuple(after)
        self._before = tuple(before)
        self._removed: tuple[Any, ...] | None = None
        self.saved: tuple[Any, ...] = ()

    def saving(self) -> Iterable[Changes]:
        """Save, for the first time or again; within a transaction."""
        return self._save() if self._removed is None else self._save_again()

    def taking_back(self) -> Iterable[Changes]:
        """Bring back what stood before; within a transaction."""
        return self._take_back()

    def redo(self) -> None:
        self._run(self.saving)

    def undo(self) -> None:
        self._run(self.taking_back)

    @property
    def _old(self) -> tuple[tuple[Any, Any], ...]:
        """What stood before, each with what this command made of it."""
        pairs = zip(self._before, self.saved, strict=True)
        return tuple((was, now) for was, now in pairs if was is not None)

    def _save(self) -> Iterable[Changes]:
        changes = self._desk.store.save(*self._after)
        self._also()
        self.saved = tuple(changes.saved)
        self._desk.lineage.wrote(self.saved)
        yield changes

    def _take_back(self) -> Iterable[Changes]:
        """What was there first stands again before what was new goes, so that nothing refers to
        it any more.
        """
        yield from self._write(tuple((was, now) for was, now in self._old))
        at = self._desk.lineage.at
        new = tuple(
            at(now, now) for was, now in zip(self._before, self.saved, strict=True) if was is None
        )
        removed: tuple[Any, ...] = ()
        if new:
            changes = self._desk.store.remove(*new)
            removed = tuple(changes.saved)
            yield changes
        self._removed = removed

    def _save_again(self) -> Iterable[Changes]:
        if self._removed:
            changes = self._desk.store.restore(*self._removed)
            self._desk.lineage.wrote(changes.saved)
            yield changes
        yield from self._write(tuple((now, was) for was, now in self._old))
        self._also()

    def _write(self, states: tuple[tuple[Any, Any], ...]) -> Iterable[Changes]:
        """Write each first state over the second one."""
        if not states:
            return
        lineage = self._desk.lineage
        changes = self._desk.store.save(*(lineage.at(wanted, over) for wanted, over in states))
        for written, (wanted, _) in zip(changes.saved, states, strict=True):
            lineage.wrote_again(written, wanted)
        yield changes


class RemoveCommand(StoreCommand):
    """Removes aggregates with all that goes with them, and brings all of it back."""

    def __init__(self, text: str, desk: Desk, aggregates: Sequence[Any]) -> None:
        super().__init__(text, desk)
        self._aggregates = tuple(aggregates)
        self._removed: tuple[Any, ...] = ()

    def redo(self) -> None:
        self._run(self.removing)

    def undo(self) -> None:
        self._run(self.bringing_back)

    def removing(self) -> Iterable[Changes]:
        """Remove; within a transaction."""
        at = self._desk.lineage.at
        changes = self._desk.store.remove(*(at(each, each) for each in self._aggregates))
        self._removed = tuple(changes.saved)
        yield changes

    def bringing_back(self) -> Iterable[Changes]:
        """Restore what was removed; within a transaction."""
        changes = self._desk.store.restore(*self._removed)
        self._desk.lineage.wrote(changes.saved)
        yield changes


class ReplaceCommand(StoreCommand):
    """Removes some aggregates and saves others, all or none, as one step."""

    def __init__(
        self,
        text: str,
        desk: Desk,
        removed: Sequence[Any],
        after: Sequence[Any],
        before: Sequence[Any | None],
    ) -> None:
        super().__init__(text, desk)
        self._gone = RemoveCommand(text, desk, removed)
        self._new = SaveCommand(text, desk, after, before)

    @property
    def saved(self) -> tuple[Any, ...]:
        """What was saved, with identities and revisions."""
        return self._new.saved

    def redo(self) -> None:
        self._run(lambda: chain(self._gone.removing(), self._new.saving()))

    def undo(self) -> None:
        self._run(lambda: chain(self._new.taking_back(), self._gone.bringing_back()))
