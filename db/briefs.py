"""Kept briefs: dated facts of each trainee, which any write that concerns them takes away."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from db.codec import from_text, to_text
from db.database import Database
from desktop.training.brief import Brief


@dataclass(frozen=True, slots=True)
class KeptBrief:
    """A brief with the training days that come while it holds; ``next_days`` None where they are
    not known, because they depend on the day of the session before.
    """

    brief: Brief
    next_days: tuple[date, ...] | None = None


def briefs_on(database: Database, made_by: str, day: date) -> dict[int, Brief]:
    """By trainee, the briefs of this build that hold on ``day``; others are left out."""
    rows = database.execute(
        "SELECT trainee_id, value FROM brief WHERE made_by = ? AND first <= ? AND until > ?",
        (made_by, day.toordinal(), day.toordinal()),
    )
    return {trainee_id: from_text(text, Brief) for trainee_id, text in rows}


def keep_briefs(database: Database, made_by: str, kept: Iterable[KeptBrief]) -> None:
    """Keep briefs in place of older ones. They were drawn up in the transaction that this belongs
    to; otherwise another process might have written in between.
    """
    database.execute_many(
        "INSERT INTO brief (trainee_id, made_by, first, until, next_days, value)"
        " VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT (trainee_id) DO UPDATE SET"
        " made_by = excluded.made_by, first = excluded.first, until = excluded.until,"
        " next_days = excluded.next_days, value = excluded.value",
        [
            (
                one.brief.trainee.id,
                made_by,
                one.brief.first.toordinal(),
                one.brief.until.toordinal(),
                _days(one.next_days),
                to_text(one.brief),
            )
            for one in kept
        ],
    )


def _days(days: tuple[date, ...] | None) -> str:
    """Ordinals with commas between; a question mark where they are not known."""
    return "?" if days is None else ",".join(str(day.toordinal()) for day in days)
