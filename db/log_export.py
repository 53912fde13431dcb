"""Records to a training log that reads back as the same records, whatever the locale."""

from __future__ import annotations

import csv
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from itertools import zip_longest
from pathlib import Path
from typing import Any, Final, Literal

from db.log_files import neutral
from db.log_names import folded
from db.log_rows import COLUMNS
from db.repository import Repository
from desktop.training.exercises import Exercise
from desktop.training.quantities import InvalidQuantity, Unit, grams, in_unit
from desktop.training.session import AskedSet, LineDone, Session, SetDone
from desktop.training.trainee import Trainee

Cells = dict[str, str]

_NUMERIC: Final = frozenset(
    name
    for name in COLUMNS
    if name.startswith(("asked_", "load", "rep", "sec", "rir", "tempo", "pain", "set", "session"))
    or name in ("effort", "minutes", "sleep", "soreness", "stress", "motivation", "body_mass")
    or name in ("week", "date")
) - {"asked_variation", "session_note"}


@dataclass(frozen=True, slots=True)
class LogStyle:
    """How numbers and columns are told apart. Dates are ISO, whatever the style."""

    separator: Literal[",", ";", "\t"] = ","
    decimal_mark: Literal[".", ","] = "."


COMMA_STYLE: Final = LogStyle(";", ",")


def write_log(
    repository: Repository,
    target: Path,
    trainees: Sequence[Trainee],
    style: LogStyle = LogStyle(),
    first: date | None = None,
    last: date | None = None,
) -> int:
    """Write what these trainees have done (first and last day included); returns the lines.

    UTF-8 with a mark at the beginning, for spreadsheets; columns that stay empty are left out.
    Raises StoreError and OSError.
    """
    writer = _Writer(repository, style)
    lines = [cells for one in trainees for cells in writer.lines(one, first, last)]
    used = {name for cells in lines for name, text in cells.items() if text}
    columns = [name for name in COLUMNS if name in used or name in ("trainee", "date", "exercise")]
    with target.open("w", encoding="utf-8-sig", newline="") as stream:
        table = csv.writer(stream, delimiter=style.separator, lineterminator="\n")
        table.writerow(columns)
        for cells in lines:
            table.writerow([_safe(name, cells.get(name, "")) for name in columns])
    return len(lines)


def _safe(name: str, text: str) -> str:
    return text if name in _NUMERIC else neutral(text)


class _Writer:
    """Turns records into cells; holds the names that they refer to."""

    def __init__(self, repository: Repository, style: LogStyle) -> None:
        self._repository = repository
        self._style = style
        self._names = exercise_names(repository.stored_exercises(retired=True))
        self._programs = {one.id: one.name for one in repository.programs()}

    def lines(self, trainee: Trainee, first: date | None, last: date | None) -> list[Cells]:
        """Everything of one trainee, by day."""
        assert trainee.id is not None, "only what is saved can be exported"
        lines = {one.id: one.name for one in self._repository.lines(trainee.id)}
        dated: list[tuple[date, Cells]] = []
        for mass in self._repository.body_masses(trainee.id):
            value, unit = self._mass(mass.mass_g, trainee.unit)
            dated.append((mass.day, {"body_mass": value, "unit": unit}))
        for activity in self._repository.activities(trainee.id):
            cells = {"activity": activity.name, "minutes": str(activity.minutes)}
            dated.append((activity.day, cells | {"effort": self._number(activity.effort)}))
        for session in self._repository.sessions(trainee.id):
            dated += [(session.day, cells) for cells in self._session(session, lines, trainee.unit)]
        dated.sort(key=lambda pair: pair[0])
        return [
            {"trainee": trainee.name, "date": day.isoformat(), **cells}
            for day, cells in dated
            if (first is None or day >= first) and (last is None or day <= last)
        ]

    def _session(self, session: Session, names: dict[Any, str], unit: Unit) -> Iterator[Cells]:
        whole = {
            "session": str(session.entry + 1),
            "program": self._programs.get(session.program_id, ""),
            "week": _plain(session.week),
            "day": session.day_name,
            "effort": self._number(session.effort),
            "minutes": _plain(session.minutes),
            "sleep": _plain(session.wellness.sleep),
            "soreness": _plain(session.wellness.soreness),
            "stress": _plain(session.wellness.stress),
            "motivation": _plain(session.wellness.motivation),
            "red_flag": "yes" if session.red_flag else "",
            "session_note": session.note,
        }
        parts = [cells for part in session.lines for cells in self._part(part, names, unit)]
        for number, cells in enumerate(parts or [{}]):
            # What is true of the whole session stands once; its number on every line.
            yield {**(whole if number == 0 else {"session": whole["session"]}), **cells}

    def _part(self, part: LineDone, names: dict[Any, str], unit: Unit) -> Iterator[Cells]:
        states = [name for name in ("deload", "test", "skipped") if getattr(part, name)]
        head = {"exercise": self._names[part.exercise], "line": names.get(part.line_id, "")}
        once = {"state": " ".join(states), "reason": part.reason, "exercise_note": part.note}
        pairs = _paired(part.sets, part.asked) or [(None, None)]
        for number, (done, asked) in enumerate(pairs, 1):
            cells = {**head, "set": str(number), **(once if number == 1 else {})}
            if done is not None:
                cells |= self._done(done, unit)
            if asked is not None:
                cells |= self._asked(asked, unit, done)
            yield cells

    def _done(self, done: SetDone, unit: Unit) -> Cells:
        load, unit_text = self._mass(done.load_g, unit)
        return {
            "variation": done.variation or "",
            "side": done.side,
            "load": load,
            "unit": unit_text,
            "reps": _plain(done.reps),
            "seconds": _plain(done.seconds),
            "rir": self._number(done.rir),
            "tempo": _plain(done.tempo_s),
            "warm_up": "yes" if done.warm_up else "",
            "pain": str(done.pain) if done.pain else "",
            "note": done.note,
        }

    def _asked(self, asked: AskedSet, unit: Unit, done: SetDone | None) -> Cells:
        load, unit_text = self._mass(asked.load_g, unit)
        stop_at = _plain(asked.stop_at) or ("open" if asked.open_ended else "")
        if done is not None:
            # One unit a line; a load that the line's unit cannot show exactly names its own.
            _, unit_of_line = self._mass(done.load_g, unit)
            if unit_text != unit_of_line:
                load, unit_text = f"{load} {unit_text}", unit_of_line
        return {
            "asked_variation": asked.variation or "",
            "asked_load": load,
            "unit": unit_text,
            "asked_reps": _plain(asked.reps),
            "asked_seconds": _plain(asked.seconds),
            "asked_tempo": _plain(asked.tempo_s),
            "asked_rir": self._number(asked.rir),
            "asked_stop_at": stop_at,
        }

    def _mass(self, mass_g: int, unit: Unit) -> tuple[str, str]:
        """A mass that reads back as the same grams: in the trainee's unit where that can be."""
        for one in (unit, Unit.KG, Unit.LB):
            try:
                shown = in_unit(mass_g, one)
                if grams(shown, one) == mass_g:
                    return self._decimal(shown), one.value
            except InvalidQuantity:
                continue
        return self._decimal(Decimal(mass_g) / 1000), Unit.KG.value

    def _number(self, value: float | None) -> str:
        return "" if value is None else self._decimal(round(Decimal(repr(value)), 6))

    def _decimal(self, value: Decimal) -> str:
        text = f"{value.normalize():f}"
        whole, mark, fraction = text.partition(".")
        if len(fraction) == 3:
            fraction += "0"  # three places could be read as thousands
        return f"{whole}{self._style.decimal_mark}{fraction}" if mark else whole


def exercise_names(exercises: Iterable[Exercise]) -> dict[str, str]:
    """For each key the name to write: the exercise's own, or the key where two share a name."""
    known = tuple(exercises)
    named = Counter(folded(name) for one in known for name in {one.name, *one.other_names})
    keys = {folded(one.key): one for one in known}
    return {
        one.key: one.name
        if named[folded(one.name)] == 1 and keys.get(folded(one.name), one) is one
        else one.key
        for one in known
    }


def _paired(
    sets: Sequence[SetDone], asked: Sequence[AskedSet]
) -> list[tuple[SetDone | None, AskedSet | None]]:
    """Each working set beside what was asked of it; warm-ups have nothing beside them."""
    wanted = iter(asked)
    pairs: list[tuple[SetDone | None, AskedSet | None]] = [
        (done, None if done.warm_up else next(wanted, None)) for done in sets
    ]
    return pairs + [(None, one) for _, one in zip_longest((), wanted)]


def _plain(value: int | None) -> str:
    return "" if value is None else str(value)
