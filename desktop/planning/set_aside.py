"""Cautions that were set aside: what each rested on, and whether it still holds."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum

from desktop.planning.briefs import standings_in_use
from desktop.planning.cautions import cautions_of
from desktop.planning.history import History
from desktop.training.limits import Limit, LimitId
from desktop.training.reasons import ReasonValue
from desktop.training.recovery import Caution, evidence_key, is_dismissed
from desktop.training.trainee import DismissedCaution


class Standing(StrEnum):
    """What became of a caution since it was set aside."""

    HOLDS = "holds"  # its evidence is the same: it stays aside
    BACK = "back"  # its evidence is the same, but too long ago: it is open again
    GONE = "gone"  # its evidence is another one now, or there is none


@dataclass(frozen=True, slots=True)
class SetAside:
    """One dismissal with the caution as far as it can be told from what was kept of it."""

    dismissed: DismissedCaution
    caution: Caution
    standing: Standing


def set_aside(history: History, today: date) -> tuple[SetAside, ...]:
    """Everything set aside, the last one first. Limits that no longer ship are left out."""
    bare = replace(history, dismissed=())
    found = cautions_of(bare, today, standings_in_use(bare, today, evening=True))
    by_key = {(caution.limit.value, evidence_key(caution)): caution for caution in found}
    limits = history.library.limits
    ordered = sorted(history.dismissed, key=lambda one: (one.day, one.id or 0), reverse=True)
    return tuple(
        SetAside(
            one,
            by_key.get((one.limit, one.evidence)) or remembered(one, limits),
            _standing(one, by_key.get((one.limit, one.evidence)), today),
        )
        for one in ordered
        if one.limit in {limit.value for limit in limits}
    )


def remembered(dismissed: DismissedCaution, limits: Mapping[LimitId, Limit]) -> Caution:
    """The caution as its evidence was kept; spans that merely pass are not part of that.

    Raises ValueError for a limit that does not exist.
    """
    limit = limits[LimitId(dismissed.limit)]
    line_id: int | None = None
    evidence: list[tuple[str, ReasonValue]] = []
    for part in filter(None, dismissed.evidence.split("; ")):
        name, _, value = part.partition(" ")
        if name == "line" and value.isdigit() and line_id is None:
            line_id = int(value)
        else:
            evidence.append((name, _value(value)))
    return Caution(limit.id, limit.severity, tuple(evidence), limit.source, limit.proposal, line_id)


def _value(text: str) -> ReasonValue:
    """A value of evidence from how it was written down."""
    if text in ("True", "False"):
        return text == "True"
    for read in (int, float, date.fromisoformat):
        try:
            return read(text)
        except ValueError:
            continue
    return None if text == "None" else text


def _standing(dismissed: DismissedCaution, now: Caution | None, today: date) -> Standing:
    if now is None:
        return Standing.GONE
    return Standing.HOLDS if is_dismissed(now, (dismissed,), today) else Standing.BACK
