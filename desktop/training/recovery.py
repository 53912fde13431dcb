"""Recovery: what speaks against asking for more, as cautions with their evidence and source.

Every check is a pure function of plain values and one `Limit` (its threshold, severity and source
are data); it returns a `Caution` or None. Nothing here changes what is asked: pain, gaps and red
flags are also obeyed by the model itself, and the caution says why. What points to a deload, and
what a deload asks, is in `desktop.training.deload`.

Dates that only mark the passing of time are not evidence: see `evidence_key`.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import pairwise
from typing import Final

from desktop.training.exercises import Muscle, Pattern
from desktop.training.limits import Limit, LimitId, Proposal, Severity
from desktop.training.position import Position, Variable
from desktop.training.quantities import SAME_LOAD_G, same_load
from desktop.training.reasons import Reason, ReasonValue
from desktop.training.trainee import Clearance, DismissedCaution, Experience

Evidence = tuple[tuple[str, ReasonValue], ...]

PASSING: Final = frozenset(
    {
        "days",
        "weeks",
        "probability",
        "wellness_before",
        "wellness_now",
        "rir_before",
        "rir_now",
        "effort_before",
        "effort_now",
    }
)
"""Names of evidence that is another from day to day, though nothing has happened."""

MEASURED_ANEW: Final = frozenset(
    {LimitId.GAP, LimitId.NO_DELOAD, LimitId.PLATEAU, LimitId.REACTIVE_DELOAD}
)
SET_ASIDE_FOR: Final = timedelta(days=28)
"""These limits rest on such evidence, so that setting them aside holds so long (common practice)
instead of until the evidence is another."""


@dataclass(frozen=True, slots=True)
class Caution:
    """Something to look at: which limit, how serious, on what evidence, from which source.

    ``evidence`` is (name, value) pairs: masses in grams, shares as fractions, spans in days or
    weeks. ``proposal`` is the limit's code of what to do. ``line_id`` None: it concerns the
    trainee. ``sessions`` are the ids it rests on.
    """

    limit: LimitId
    severity: Severity
    evidence: Evidence
    source: str
    proposal: Proposal
    line_id: int | None = None
    sessions: tuple[int, ...] = ()

    def __getitem__(self, name: str) -> ReasonValue:
        for key, value in self.evidence:
            if key == name:
                return value
        raise KeyError(name)


def evidence_key(caution: Caution) -> str:
    """What a dismissal of ``caution`` holds for: the same evidence gives the same text.

    Spans that merely pass and means that are measured anew each day are left out, what is planned
    counts by weekday rather than by date, and fractions count to one decimal, so that a caution
    set aside stays aside until something has really changed.
    """
    planned = ("planned", True) in caution.evidence
    parts = [f"line {caution.line_id}"] if caution.line_id is not None else []
    parts += [
        f"{name} {_plain(value, planned)}"
        for name, value in caution.evidence
        if name not in PASSING
    ]
    return "; ".join(parts)


def is_dismissed(caution: Caution, dismissed: Iterable[DismissedCaution], today: date) -> bool:
    """Whether the coach set ``caution`` aside on this very evidence. A stop cannot be set aside,
    and what is measured anew each day comes back after `SET_ASIDE_FOR`.
    """
    if caution.severity is Severity.STOP:
        return False
    key = evidence_key(caution)
    days = [one.day for one in dismissed if (one.limit, one.evidence) == (caution.limit, key)]
    if caution.limit in MEASURED_ANEW:
        return any(today - day < SET_ASIDE_FOR for day in days)
    return bool(days)


def load_step(
    limit: Limit,
    before_g: float,
    after_g: float,
    day: date,
    *,
    line_id: int | None = None,
    sessions: tuple[int, ...] = (),
) -> Caution | None:
    """A step on ``day`` that raises the effective load (grams) by more than the limit's share."""
    if before_g <= 0 or after_g <= before_g * (1 + limit.threshold):
        return None
    evidence: Evidence = (
        ("before_g", round(before_g)),
        ("after_g", round(after_g)),
        ("over", after_g / before_g - 1),
        ("day", day),
    )
    return _caution(limit, evidence, line_id, sessions)


def grown(before: Position, after: Position, scale: Sequence[str] = ()) -> tuple[Variable, ...]:
    """The variables that ask more at ``after``; ``scale`` lists variation keys, easiest first.

    More repetitions or sets at a lower load or an easier variation are a trade, not growth: none.
    """
    place = {key: index for index, key in enumerate(scale)}
    harder = place.get(after.variation or "", 0) - place.get(before.variation or "", 0)
    if after.load_g < before.load_g - SAME_LOAD_G or harder < 0:
        return ()
    numbers: list[Variable] = [Variable.REPS, Variable.SETS, Variable.HOLD, Variable.TEMPO]
    more = [v for v in numbers if (after.value(v) or 0) > (before.value(v) or 0)]
    if not same_load(before.load_g, after.load_g):
        more.append(Variable.LOAD)
    return (*more, Variable.VARIATION) if harder else tuple(more)


def several_at_once(
    limit: Limit,
    before: Position,
    after: Position,
    day: date,
    *,
    scale: Sequence[str] = (),
    line_id: int | None = None,
    sessions: tuple[int, ...] = (),
) -> Caution | None:
    """A step on ``day`` in which more variables grow than the limit allows."""
    more = grown(before, after, scale)
    if len(more) <= limit.threshold:
        return None
    evidence: Evidence = (("variables", ", ".join(more)), ("day", day))
    return _caution(limit, evidence, line_id, sessions)


@dataclass(frozen=True, slots=True)
class HardDay:
    """A day with hard sets of one pattern: done (with its session) or planned (None)."""

    day: date
    session_id: int | None = None


def too_close(limit: Limit, days: Mapping[Pattern, Iterable[HardDay]]) -> tuple[Caution, ...]:
    """One caution for each pattern with hard sessions less than the limit's days apart.

    The limit's threshold is the smallest distance in days (2: one full day between). The latest
    such pair of each pattern is the evidence; two sessions of one day count as one.
    """
    found: list[Caution] = []
    for pattern, given in days.items():
        by_day = {each.day: each for each in given}
        ordered = [by_day[day] for day in sorted(by_day)]
        close = [
            (first, second)
            for first, second in pairwise(ordered)
            if (second.day - first.day).days < limit.threshold
        ]
        if not close:
            continue
        first, second = close[-1]
        evidence: Evidence = (
            ("pattern", pattern.value),
            ("first", first.day),
            ("second", second.day),
            ("planned", second.session_id is None),
        )
        ids = tuple(each.session_id for each in close[-1] if each.session_id is not None)
        found.append(_caution(limit, evidence, None, ids))
    return tuple(found)


def too_seldom(
    limit: Limit, sessions_a_week: Mapping[Muscle, float], *, planned: bool
) -> Caution | None:
    """Muscle groups with fewer sessions a week than the limit, ``planned`` or done."""
    seldom = [muscle for muscle, times in sessions_a_week.items() if times < limit.threshold]
    if not seldom:
        return None
    evidence: Evidence = (("muscles", ", ".join(sorted(seldom))), ("planned", planned))
    return _caution(limit, evidence)


def no_deload(
    limit: Limit, since: date | None, today: date, experience: Experience
) -> Caution | None:
    """No easier week since ``since`` (the last one's end, or the first session) for the limit's
    weeks. Novices are left out: the survey behind the limit asked competitive athletes.
    """
    if since is None or experience is Experience.NOVICE:
        return None
    weeks = (today - since).days // 7
    if weeks < limit.threshold:
        return None
    return _caution(limit, (("weeks", weeks), ("since", since)))


def monotonous(limit: Limit, monotony: float | None, week_ends: date) -> Caution | None:
    """A week whose daily loads differ too little; ``monotony`` None (undefined) is no evidence."""
    if monotony is None or monotony <= limit.threshold:
        return None
    evidence: Evidence = (("monotony", monotony), ("week_ends", week_ends))
    return _caution(limit, evidence)


def pain(
    limit: Limit,
    worst: int,
    day: date,
    in_a_row: int,
    *,
    line_id: int | None = None,
    sessions: tuple[int, ...] = (),
) -> Caution | None:
    """Pain (0-10) of at least the limit at the last session of a line, ``in_a_row`` times."""
    if worst < limit.threshold:
        return None
    evidence: Evidence = (("pain", worst), ("day", day), ("times", in_a_row))
    return _caution(limit, evidence, line_id, sessions)


def pain_hold(
    limit: Limit, why: Reason, *, line_id: int | None = None, sessions: tuple[int, ...] = ()
) -> Caution:
    """Nothing is asked of a line because of pain; ``why`` is the reason PAIN_HOLD."""
    evidence = tuple((name, why.get(name)) for name in ("pain", "day", "times"))
    return _caution(limit, evidence, line_id, sessions)


def gap(
    limit: Limit, last: date | None, today: date, *, line_id: int | None = None
) -> Caution | None:
    """No session since ``last`` for the limit's days; never trained is no gap."""
    if last is None or (days := (today - last).days) < limit.threshold:
        return None
    return _caution(limit, (("days", days), ("last", last)), line_id)


def minor(limit: Limit, birth_year: int | None, today: date) -> Caution | None:
    """Guidance for somebody who may be under the limit's age: only the year of birth is known."""
    if birth_year is None or today.year - birth_year - 1 >= limit.threshold:
        return None
    return _caution(limit, (("birth_year", birth_year),))


def older(limit: Limit, birth_year: int | None, today: date) -> Caution | None:
    """Guidance for somebody who is of the limit's age or becomes so this year."""
    if birth_year is None or today.year - birth_year < limit.threshold:
        return None
    return _caution(limit, (("birth_year", birth_year),))


def plateau(limit: Limit, probability: float, *, line_id: int | None = None) -> Caution | None:
    """A line that has stopped gaining with a ``probability`` of at least the limit."""
    if probability < limit.threshold:
        return None
    return _caution(limit, (("probability", probability),), line_id)


def equipment_jump(limit: Limit, why: Reason, *, line_id: int | None = None) -> Caution:
    """The next step that can be made is too large; ``why`` is the reason IN_BETWEEN."""
    name = "next_load_g" if why.get("variable") == Variable.LOAD else "next_variation"
    evidence: Evidence = (
        (name, why.get("after")),
        ("reps_needed", why.get("reps_needed")),
        ("over", why.get("over")),
    )
    return _caution(limit, evidence, line_id)


def rule_complete(limit: Limit, at: Position, *, line_id: int | None = None) -> Caution:
    """Every variable of the line's rule stands at its ceiling ``at``."""
    names = [*(v for v in Variable if at.value(v) is not None), Variable.VARIATION]
    values = (at.variation if v is Variable.VARIATION else at.value(v) for v in names)
    evidence = tuple(zip((name.value for name in names), values, strict=True))
    return _caution(limit, evidence, line_id)


def uncleared(asking: Iterable[date], clearances: Iterable[Clearance]) -> date | None:
    """The latest of the days ``asking`` for a licensed professional's clearance, if none has been
    given since. One of the same day counts. None: nothing stands in the way.
    """
    latest = max(asking, default=None)
    cleared = max((each.day for each in clearances), default=None)
    if latest is None or (cleared is not None and cleared >= latest):
        return None
    return latest


def red_flag(limit: Limit, day: date, sessions: tuple[int, ...] = ()) -> Caution:
    """A red flag was noted on ``day``, and no clearance since."""
    return _caution(limit, (("day", day),), None, sessions)


def clearance(limit: Limit, day: date) -> Caution:
    """The screening of ``day`` was not clear, and no clearance since."""
    return _caution(limit, (("day", day),))


def screening(limit: Limit, screened: date | None) -> Caution | None:
    """Nobody has asked the health questions yet."""
    return None if screened is not None else _caution(limit, ())


def load_incomplete(limit: Limit, activities_recorded: bool) -> Caution | None:
    """Other activities are not recorded, so that the training load is only a part."""
    return None if activities_recorded else _caution(limit, ())


def _caution(
    limit: Limit,
    evidence: Evidence,
    line_id: int | None = None,
    sessions: tuple[int, ...] = (),
) -> Caution:
    return Caution(
        limit.id, limit.severity, evidence, limit.source, limit.proposal, line_id, sessions
    )


def _plain(value: ReasonValue, planned: bool) -> str:
    if isinstance(value, date) and planned:
        return f"weekday {value.weekday()}"
    return f"{value:.1f}" if isinstance(value, float) else str(value)
