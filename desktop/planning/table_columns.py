"""What the columns of a table most likely hold: guessed from headings and from what stands there.

A guess is a proposal: the coach sees it above each column and changes it.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Final

from db.log_names import folded
from db.tables import Figure, Table, TableLine
from desktop.planning.table_cells import (
    CellProblem,
    date_order_shown,
    looks_like_day,
    looks_like_serial,
    read_counts,
    unit_of,
)
from desktop.training.quantities import Unit
from desktop.training.table_mapping import SEVERAL, DecimalMark, Role, TableMapping

_MOST_LOOKED_AT: Final = 400
_HEADING_WITHIN: Final = 12
_FEW: Final = 0.15

# Words of the trade in English, German and Spanish (common usage), the telling ones first.
_WORDS: Final[tuple[tuple[Role, tuple[str, ...]], ...]] = (
    (Role.DATE, ("date", "day", "datum", "tag", "fecha", "dia", "día")),
    (Role.EXERCISE, ("exercise", "movement", "lift", "übung", "uebung", "ejercicio", "movimiento")),
    (Role.TRAINEE, ("trainee", "athlete", "client", "person", "who", "sportler", "sportlerin",
                    "kunde", "atleta", "cliente", "wer", "quien")),
    (Role.BODY_MASS, ("body mass", "bodyweight", "body weight", "bodymass", "körpergewicht",
                      "peso corporal")),
    (Role.SESSION_NOTE, ("session note", "session notes", "session comment")),
    (Role.EFFORT, ("session rpe", "session effort", "srpe", "effort", "anstrengung", "esfuerzo")),
    (Role.WARM_UP, ("warm up", "warmup", "aufwärmen", "calentamiento")),
    (Role.RIR, ("rir", "reserve", "in reserve", "reps in reserve", "left in tank")),
    (Role.RPE, ("rpe",)),
    (Role.SECONDS, ("seconds", "secs", "sec", "hold", "sekunden", "haltezeit", "segundos")),
    (Role.MINUTES, ("minutes", "min", "mins", "minuten", "minutos", "session length")),
    (Role.SETS, ("sets", "sätze", "saetze", "series", "no of sets", "number of sets")),
    (Role.SET, ("set", "satz", "serie", "set no", "set number", "set nr", "set #")),
    (Role.UNIT, ("unit", "units", "einheit", "unidad")),
    (Role.LOAD, ("load", "weight", "kg", "kgs", "kilo", "kilos", "lb", "lbs", "pound", "pounds",
                 "gewicht", "last", "peso", "carga", "resistance")),
    (Role.REPS, ("reps", "rep", "repetitions", "wdh", "wiederholungen", "repeticiones", "count")),
    (Role.TEMPO, ("tempo",)),
    (Role.SIDE, ("side", "seite", "lado")),
    (Role.PAIN, ("pain", "ache", "schmerz", "dolor")),
    (Role.VARIATION, ("variation", "variant", "variante")),
    (Role.NOTE, ("note", "notes", "comment", "comments", "remark", "remarks", "notiz", "notizen",
                 "bemerkung", "kommentar", "nota", "notas", "comentario")),
    (Role.EXERCISE, ("name",)),
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Known:
    """The names already in the data, folded, by which columns of names are told apart."""

    exercises: frozenset[str] = frozenset()
    trainees: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class Columns:
    """A table under its heading: names of the columns, and the lines below."""

    headers: tuple[str, ...]
    lines: tuple[TableLine, ...]
    first: int

    def cells(self, place: int) -> list[str]:
        """What stands in a column, blanks left out, as far as guessing looks."""
        found = (line.cells[place] for line in self.lines if place < len(line.cells))
        return [cell for cell, _ in zip(filter(None, found), range(_MOST_LOOKED_AT), strict=False)]


def columns_of(table: Table) -> Columns:
    """The table under its heading: the first line that names several columns in words; titles
    above it are passed over, a second line of headings is joined to the first.
    """
    lines = table.lines
    place = next((n for n, line in enumerate(lines[:_HEADING_WITHIN]) if _is_heading(line)), None)
    width = table.width
    if place is None:
        return Columns(tuple(f"column {n + 1}" for n in range(width)), lines, 0)
    top = [*lines[place].cells, *[""] * (width - len(lines[place].cells))]
    below = lines[place + 1] if place + 1 < len(lines) else None
    begins = place + 1
    if below is not None and _is_second_heading(top, below):
        top = _joined(top, below.cells)
        begins += 1
    return Columns(tuple(_unlike(top)), lines[begins:], lines[place].number)


def _is_heading(line: TableLine) -> bool:
    filled = [cell for cell in line.cells if cell]
    words = [cell for cell in filled if _is_word(cell)]
    named = sum(1 for cell in filled if role_of_heading(cell) is not Role.NOTHING)
    return len(filled) >= 2 and (named >= 2 or (len(words) == len(filled) and named >= 1))


def _is_word(cell: str) -> bool:
    return not isinstance(cell, Figure) and not cell[0].isdigit() and not looks_like_day(cell)


def _is_second_heading(top: Sequence[str], below: TableLine) -> bool:
    filled = [cell for cell in below.cells if cell]
    gaps = any(not cell for cell in top[: len(below.cells)])
    named = sum(1 for cell in filled if role_of_heading(cell) is not Role.NOTHING)
    return gaps and len(filled) >= 2 and all(map(_is_word, filled)) and named * 2 >= len(filled)


def _joined(top: Sequence[str], below: Sequence[str]) -> list[str]:
    """Both lines as one; a merged cell above reaches over the blanks at its right."""
    names: list[str] = []
    over = ""
    for place, name in enumerate(top):
        under = below[place] if place < len(below) else ""
        over = name or (over if under else "")
        names.append(f"{over} {under}".strip())
    return names


def _unlike(names: Iterable[str]) -> list[str]:
    return [name or f"column {place + 1}" for place, name in enumerate(names)]


def role_of_heading(text: str) -> Role:
    """What a heading names; NOTHING where it says nothing that is known."""
    plain = re.sub(r"[^\w#%]+", " ", text.casefold().replace("_", " ")).strip()
    plain = re.sub(r"(?<=[a-zäöü])[0-9]+$|\s[0-9]+$", "", plain).strip()
    for role, words in _WORDS:
        if plain in words:
            return role
    parts = plain.split()
    for role, words in _WORDS:
        # "Set 1 reps", "load in kg": the words for a set's number are weaker than what is counted
        if role not in (Role.SET, Role.SETS) and any(f" {w} " in f" {plain} " for w in words):
            return role
    if parts and parts[0] in ("set", "satz", "serie"):
        return Role.SETS if plain in ("sets",) else Role.SET
    return Role.NOTHING


def guessed(table: Table, known: Known, unit: Unit | None = None) -> tuple[Columns, TableMapping]:
    """The table under its heading, and what its columns most likely hold. ``unit``: of loads
    where neither heading nor cells name one.
    """
    columns = columns_of(table)
    roles = [_role(columns, place, known) for place in range(len(columns.headers))]
    roles = _side_by_side(roles)
    roles = _each_once(columns, _with_missing(columns, roles, known))
    named = _unit_named(columns, roles)
    return columns, TableMapping(
        headers=columns.headers,
        roles=tuple(roles),
        unit=named or unit,
        decimal_mark=_decimal_mark(columns, roles),
        date_order=_date_order(columns, roles),  # type: ignore[arg-type]
        fill_down=_has_gaps(columns, roles),
    )


def _role(columns: Columns, place: int, known: Known) -> Role:
    """By the heading, unless what stands there cannot be it."""
    role = role_of_heading(columns.headers[place])
    cells = columns.cells(place)
    if not cells:
        return role
    if role in (Role.EXERCISE, Role.TRAINEE) and columns.headers[place].casefold() == "name":
        return _names_what(cells, known)
    if role is Role.DATE and _share(cells, _is_day) < 0.5:
        return Role.NOTHING
    if role is Role.SET and _share(cells, _is_set_work) > 0.5:
        return Role.REPS
    if role in (Role.SET, Role.SETS) and _share(cells, str.isdigit) < 0.5:
        return Role.REPS if _share(cells, _is_counts) > 0.8 else Role.NOTHING
    if role is Role.BODY_MASS and not any(any(map(str.isdigit, cell)) for cell in cells):
        return Role.NOTHING
    return role


def _side_by_side(roles: list[Role]) -> list[Role]:
    """Columns headed "set 1", "set 2" and nothing that is counted: each holds a set."""
    numbered = roles.count(Role.SET) > 1 and not {Role.REPS, Role.SECONDS} & set(roles)
    return [Role.REPS if numbered and role is Role.SET else role for role in roles]


def _with_missing(columns: Columns, roles: list[Role], known: Known) -> list[Role]:
    """What no heading names but must be there: the day, the exercise, what was counted."""
    tests: tuple[tuple[Role, Callable[[str], bool]], ...] = (
        (Role.DATE, _is_day),
        (Role.EXERCISE, lambda cell: folded(cell) in known.exercises),
        (Role.TRAINEE, lambda cell: folded(cell) in known.trainees),
        (Role.REPS, _is_set_work),
    )
    for role, test in tests:
        counted = role is Role.REPS and Role.SECONDS in roles
        if role in roles or counted:
            continue
        shares = [
            (_share(columns.cells(place), test), place)
            for place, each in enumerate(roles)
            if each is Role.NOTHING
        ]
        best = max(shares, default=(0.0, 0))
        if best[0] >= (0.3 if role in (Role.EXERCISE, Role.TRAINEE) else 0.6):
            roles[best[1]] = role
    return roles


def _each_once(columns: Columns, roles: Sequence[Role]) -> list[Role]:
    """A role that may stand once goes to the fullest column that claims it."""
    kept = list(roles)
    for role in set(roles) - SEVERAL:
        places = [place for place, each in enumerate(roles) if each is role]
        best = max(places, key=lambda place: (len(columns.cells(place)), -place))
        for place in places:
            if place != best:
                kept[place] = Role.NOTHING
    return kept


def _names_what(cells: Sequence[str], known: Known) -> Role:
    people = _share(cells, lambda cell: folded(cell) in known.trainees)
    exercises = _share(cells, lambda cell: folded(cell) in known.exercises)
    return Role.TRAINEE if people > exercises else Role.EXERCISE


def _share(cells: Sequence[str], test: Callable[[str], bool]) -> float:
    return sum(map(test, cells)) / len(cells) if cells else 0.0


def _is_day(cell: str) -> bool:
    return looks_like_day(cell) or looks_like_serial(cell)


def _is_set_work(cell: str) -> bool:
    return not cell.isdigit() and _is_counts(cell)


def _is_counts(cell: str) -> bool:
    try:
        return bool(read_counts(cell).amounts)
    except CellProblem:
        return False


def _unit_named(columns: Columns, roles: Sequence[Role]) -> Unit | None:
    """The unit of loads: by the heading of their columns, else by the cells that name one."""
    for place, role in enumerate(roles):
        if role is Role.LOAD and (found := unit_of(columns.headers[place])):
            return found
    named = Counter(
        unit_of(cell)
        for place, role in enumerate(roles)
        if role is Role.LOAD
        for cell in columns.cells(place)
    )
    del named[None]
    return named.most_common(1)[0][0] if len(named) == 1 else None


_COMMA: Final = re.compile(r"[+\-−]?[0-9]+,[0-9]{1,2}(?:\s?[a-z#]+)?", re.IGNORECASE)
_POINT: Final = re.compile(r"[+\-−]?[0-9]+\.[0-9]+(?:\s?[a-z#]+)?", re.IGNORECASE)
_NUMBERS: Final = (Role.LOAD, Role.RIR, Role.RPE, Role.BODY_MASS, Role.EFFORT)


def _decimal_mark(columns: Columns, roles: Sequence[Role]) -> DecimalMark:
    """The mark that the numbers as text show; "" where they show none, or both."""
    cells = [
        cell
        for place, role in enumerate(roles)
        if role in _NUMBERS
        for cell in columns.cells(place)
        if not isinstance(cell, Figure)
    ]
    comma, point = any(map(_COMMA.fullmatch, cells)), any(map(_POINT.fullmatch, cells))
    if comma == point:
        return ""
    return "," if comma else "."


def _date_order(columns: Columns, roles: Sequence[Role]) -> str:
    shown = {
        date_order_shown(cell)
        for place, role in enumerate(roles)
        if role is Role.DATE
        for line in columns.lines
        if place < len(line.cells) and (cell := line.cells[place])
    } - {""}
    return shown.pop() if len(shown) == 1 else ""


def _has_gaps(columns: Columns, roles: Sequence[Role]) -> bool:
    """Whether days or exercises are written once for several lines, as under merged cells."""
    counted = [p for p, role in enumerate(roles) if role in (Role.REPS, Role.SECONDS)]
    lines = [
        line
        for line in columns.lines[:_MOST_LOOKED_AT]
        if any(p < len(line.cells) and line.cells[p] for p in counted)
    ]
    for place, role in enumerate(roles):
        if role in (Role.DATE, Role.EXERCISE) and lines:
            blank = sum(1 for line in lines if place >= len(line.cells) or not line.cells[place])
            if blank / len(lines) > _FEW:
                return True
    return False


def fitting(mappings: Sequence[TableMapping], headers: Sequence[str]) -> tuple[TableMapping, ...]:
    """The kept mappings for files with the same heading, the newest first."""
    wanted = [folded(name) for name in headers]
    return tuple(
        each for each in reversed(mappings) if [folded(name) for name in each.headers] == wanted
    )


def with_role(mapping: TableMapping, place: int, role: Role) -> TableMapping:
    """The mapping with another role for a column; one that may stand once leaves its old column."""
    roles = [
        Role.NOTHING if each is role and role not in SEVERAL else each for each in mapping.roles
    ]
    roles[place] = role
    return replace(mapping, roles=tuple(roles))
