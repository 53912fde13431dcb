"""The tour: the coach's whole loop without a window, on the demo, with its results in a folder.

Roster, program, sheet, a session as it may have gone, what comes next and why, pictures of every
screen. For a computer without a display, and to see that everything works.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator, Sequence
from datetime import date, timedelta
from pathlib import Path
from typing import Final

from db.repository import Repository
from desktop import answers
from desktop.answers import Sentence
from desktop.planning.days import DayPlan, day_plan
from desktop.planning.roster import RosterEntry, roster
from desktop.training.session import AskedSet, LineDone, Session, SetDone

SheetWriter = Callable[[DayPlan, Path], None]
Painter = Callable[[Repository, date, Path], Sequence[Path]]

TARGETS_TEXT: Final = "targets.txt"
TARGETS_JSON: Final = "targets.json"


def walk(
    repository: Repository,
    today: date,
    out: Path,
    sentence: Sentence,
    write_sheet: SheetWriter,
    draw: Painter | None,
) -> Iterator[str]:
    """Do the round; yields what to tell, line by line. Everything lands in ``out``."""
    entries = roster(repository, today)
    yield "Roster"
    yield from (f"  {line}" for line in answers.roster_text(entries))
    plans = _next_days(repository, entries)
    _write_targets(plans, out, sentence)
    yield f"What everybody does next: {out / TARGETS_TEXT}"
    for plan in plans:
        target = out / f"sheet-{plan.trainee.name.casefold().replace(' ', '-')}.pdf"
        write_sheet(plan, target)
    yield f"Sheets to print: {out}/sheet-*.pdf"
    if draw is not None:
        drawn = draw(repository, today, out / "screens")
        yield f"Pictures of the screens: {len(drawn)} in {out / 'screens'}"
    if plans:
        yield from _type_a_session(repository, plans[0], sentence)


def _next_days(repository: Repository, entries: Sequence[RosterEntry]) -> list[DayPlan]:
    """The next training day of everybody who has one that asks something."""
    plans = [
        day_plan(repository, entry.trainee.id, entry.next)
        for entry in entries
        if entry.trainee.id is not None and entry.next is not None
    ]
    return [plan for plan in plans if plan.slots]


def _write_targets(plans: Sequence[DayPlan], out: Path, sentence: Sentence) -> None:
    text = "\n".join(line for plan in plans for line in answers.targets_text(plan, sentence))
    (out / TARGETS_TEXT).write_text(text + "\n", encoding="utf-8")
    values = {
        plan.trainee.name: {
            "day": plan.day.isoformat(),
            "targets": answers.targets(plan, sentence),
        }
        for plan in plans
    }
    whole = json.dumps(values, ensure_ascii=False, indent=2)
    (out / TARGETS_JSON).write_text(whole + "\n", encoding="utf-8")


def _type_a_session(repository: Repository, plan: DayPlan, sentence: Sentence) -> Iterator[str]:
    """The planned session done as asked, saved, and what the week after asks then."""
    saved = repository.save(_as_asked(plan)).saved[0]
    yield f"{plan.trainee.name} trains on {plan.day} as asked; saved as session {saved.id}"
    assert plan.trainee.id is not None
    again = day_plan(repository, plan.trainee.id, plan.day + timedelta(days=7))
    yield from answers.targets_text(again, sentence)


def _as_asked(plan: DayPlan) -> Session:
    assert plan.trainee.id is not None
    parts = tuple(
        LineDone(
            slot.line.id,
            slot.exercise.key,
            asked=slot.target.sets,
            sets=tuple(_done(asked) for asked in slot.target.sets),
            deload=slot.target.deload,
        )
        for slot in plan.slots
        if slot.line.id is not None and slot.target.sets
    )
    return Session(
        plan.trainee.id,
        plan.day,
        parts,
        effort=7,
        minutes=plan.minutes,
        program_id=plan.program.id if plan.program else None,
        week=plan.week,
        day_name=plan.training_day.name if plan.training_day else "",
    )


def _done(asked: AskedSet) -> SetDone:
    return SetDone(
        asked.load_g,
        reps=asked.reps,
        seconds=asked.seconds,
        variation=asked.variation,
        rir=asked.rir,
        tempo_s=asked.tempo_s,
    )
