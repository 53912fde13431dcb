"""Kept drafts: sessions as far as they were typed, in the data file until they are saved."""

from __future__ import annotations

from typing import TYPE_CHECKING

from db.codec import from_text, to_text
from db.errors import DamagedFile
from db.repository import Repository
from db.session_drafts import (
    DraftKey,
    StoredDraft,
    draft_of,
    drafts,
    drop_draft,
    keep_draft,
)

if TYPE_CHECKING:
    from desktop.planning.session_draft import SessionDraft


def key_of(draft: SessionDraft) -> DraftKey:
    """Under which key a draft is kept."""
    return DraftKey(draft.trainee_id, draft.day, draft.session_id)


def keep(repository: Repository, draft: SessionDraft, *, at_work: bool = False) -> None:
    """Keep a draft over the one before; ``at_work``: it stands in the form.

    Raises StoreError where it cannot be written now: FileBusy at once while another process does.
    """
    keep_draft(repository.database, StoredDraft(key_of(draft), to_text(draft), at_work))


def drop(repository: Repository, draft: SessionDraft) -> None:
    """Take the kept draft away: it was saved, or nothing is typed any more."""
    drop_draft(repository.database, key_of(draft))


def kept(repository: Repository, draft: SessionDraft) -> SessionDraft | None:
    """What is kept in place of a fresh ``draft`` of the same session; None where nothing is."""
    found = draft_of(repository.database, key_of(draft))
    return _read(found) if found is not None else None


def all_kept(repository: Repository, trainee_id: int | None = None) -> tuple[SessionDraft, ...]:
    """The drafts of a trainee (None: of everybody), by trainee and day."""
    found = (_read(each) for each in drafts(repository.database))
    return tuple(
        each for each in found if each is not None and trainee_id in (None, each.trainee_id)
    )


def at_work(repository: Repository) -> SessionDraft | None:
    """The draft that stood in the form when the program ended without closing; None after a
    proper end.
    """
    left = [each for each in drafts(repository.database) if each.at_work]
    return _read(left[-1]) if left else None


def _read(stored: StoredDraft) -> SessionDraft | None:
    """The draft; None where another version wrote what this one cannot read. It is left alone."""
    from desktop.planning.session_draft import SessionDraft  # there is seldom one

    try:
        draft: SessionDraft = from_text(stored.text, SessionDraft)
    except DamagedFile:
        return None
    return draft if key_of(draft) == stored.key else None
