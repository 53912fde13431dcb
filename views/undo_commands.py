"""Edits as commands that can be undone: whole aggregates before and after.

A parent that is put back does not bring its children by itself, so a command keeps all that the
store says it touched and restores the same identities. The stack keeps a command whose ``redo``
raises; therefore failures are caught here, the command is made obsolete, and the reason goes to
``Report.failed``.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from contextlib import AbstractContextManager
from dataclasses import dataclass, replace
from typing import Any, Protocol

from PySide6.QtGui import QUndoCommand

from db.changes import Changes
from db.errors import StoreError


class Store(Protocol):
    """The part of the repository that commands need."""

    def save(self, *aggregates: Any) -> Changes: ...
    def remove(self, *aggregates: Any) -> Changes: ...
    def restore(self, *aggregates: Any) -> Changes: ...
    def transaction(self) -> AbstractContextManager[None]: ...


@dataclass(frozen=True, slots=True)
class Report:
    """Where a command says what it changed and what failed."""

    changed: Callable[[Changes], None]
    failed: Callable[[StoreError], None]


class StoreCommand(QUndoCommand):
    """A command that writes to the store; ``done`` tells whether the last run succeeded."""

    def __init__(self, text: str, store: Store, report: Report) -> None:
        super().__init__(text)
        self._store = store
        self._report = report
        self.done = False

    def _run(self, work: Callable[[], Iterable[Changes]]) -> None:
        try:
            with self._store.transaction():
                changes = merged(work())
        except StoreError as error:
            self.done = False
            self.setObsolete(True)
            self._report.failed(error)
            return
        self.done = True
        self._report.changed(changes)


class SaveCommand(StoreCommand):
    """Saves aggregates. ``before`` holds for each what the store held, None where it is new."""

    def __init__(
        self,
        text: str,
        store: Store,
        report: Report,
        after: Sequence[Any],
        before: Sequence[Any | None],
    ) -> None:
        super().__init__(text, store, report)
        self._after = tuple(after)
        self._before = tuple(before)
        self._removed: tuple[Any, ...] | None = None
        self.saved: tuple[Any, ...] = ()

    def redo(self) -> None:
        self._run(self._save if self._removed is None else self._save_again)

    def undo(self) -> None:
        self._run(self._take_back)

    def _save(self) -> Iterable[Changes]:
        changes = self._store.save(*self._after)
        self.saved = tuple(changes.saved)
        yield changes

    def _take_back(self) -> Iterable[Changes]:
        """What was there first stands again before what was new goes, so that nothing refers to
        it any more.
        """
        pairs = tuple(zip(self._before, self.saved, strict=True))
        old = tuple(_at_revision(was, now) for was, now in pairs if was is not None)
        new = tuple(now for was, now in pairs if was is None)
        removed: tuple[Any, ...] = ()
        standing: Iterable[Any] = ()
        if old:
            changes = self._store.save(*old)
            standing = changes.saved
            yield changes
        if new:
            changes = self._store.remove(*new)
            removed = tuple(changes.saved)
            yield changes
        self._removed = removed
        self.saved = _in_order(self._before, standing, self.saved)

    def _save_again(self) -> Iterable[Changes]:
        restored: tuple[Any, ...] = ()
        if self._removed:
            changes = self._store.restore(*self._removed)
            restored = tuple(changes.saved)
            yield changes
        old = tuple(
            _at_revision(after, now)
            for was, after, now in zip(self._before, self._after, self.saved, strict=True)
            if was is not None
        )
        standing: Iterable[Any] = ()
        if old:
            changes = self._store.save(*old)
            standing = changes.saved
            yield changes
        back = tuple(_same_in(restored, now) for now in self.saved)
        self.saved = _in_order(self._before, standing, back)


class RemoveCommand(StoreCommand):
    """Removes aggregates with all that goes with them, and brings all of it back."""

    def __init__(self, text: str, store: Store, report: Report, aggregates: Sequence[Any]) -> None:
        super().__init__(text, store, report)
        self._aggregates = tuple(aggregates)
        self._removed: tuple[Any, ...] = ()

    def redo(self) -> None:
        self._run(self._remove)

    def undo(self) -> None:
        self._run(self._bring_back)

    def _remove(self) -> Iterable[Changes]:
        changes = self._store.remove(*self._aggregates)
        self._removed = tuple(changes.saved)
        yield changes

    def _bring_back(self) -> Iterable[Changes]:
        changes = self._store.restore(*self._removed)
        self._aggregates = tuple(_same_in(changes.saved, each) for each in self._aggregates)
        yield changes


def merged(parts: Iterable[Changes]) -> Changes:
    """Several writes as one: all kinds and all trainees (none named: all of them)."""
    seen = tuple(parts)
    everybody = any(not part.trainees for part in seen)
    trainees: frozenset[int] = frozenset().union(*(part.trainees for part in seen))
    return Changes(
        kinds=frozenset().union(*(part.kinds for part in seen)),
        trainees=frozenset() if everybody else trainees,
        saved=tuple(each for part in seen for each in part.saved),
    )


def _at_revision(aggregate: Any, now: Any) -> Any:
    if not hasattr(aggregate, "revision"):
        return aggregate
    return replace(aggregate, revision=now.revision)


def _same_in(found: Iterable[Any], wanted: Any) -> Any:
    """The aggregate of the same type and identity in ``found``, else ``wanted`` itself."""
    for each in found:
        if type(each) is type(wanted) and getattr(each, "id", None) == getattr(wanted, "id", None):
            return each
    return wanted


def _in_order(
    before: Sequence[Any | None], standing: Iterable[Any], new: Sequence[Any]
) -> tuple[Any, ...]:
    """Current aggregates in the command's order: those that stood before, else the new ones."""
    old = iter(standing)
    return tuple(
        fresh if was is None else next(old, fresh) for was, fresh in zip(before, new, strict=True)
    )
