"""One line of somebody else's table, by the roles of its columns: the sets that it stands for.

A line becomes one set, or several where its cells hold several ("3x5", "5/5/4", one pair of columns
for each set).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import Final

from db.log_lines import LineReader
from db.log_rows import LogRow, Problem, RowFormat
from db.tables import Table, TableLine
from desktop.planning.table_cells import (
    CellProblem,
    Counts,
    Loads,
    counts_before_sets,
    looks_like_serial,
    read_counts,
    read_day,
    read_loads,
    read_number,
    sets_first,
    unit_of,
)
from desktop.training.quantities import Unit
from desktop.training.sentence import sentence, sentence_of
from desktop.training.strength import StrengthError, rir_from_rpe
from desktop.training.table_mapping import Role, TableMapping

NO_LOAD: Final = sentence("no load: read as none")
BODY: Final = sentence("bodyweight, but the exercise is loaded by weights")
_EARLIEST: Final = date(1900, 1, 1)
_FORMAT: Final = RowFormat(".")
_DOWN: Final = (Role.TRAINEE, Role.DATE, Role.EXERCISE)
_AS_WRITTEN: Final = (
    (Role.VARIATION, "variation"),
    (Role.LINE, "line"),
    (Role.TEMPO, "tempo"),
    (Role.SIDE, "side"),
    (Role.WARM_UP, "warm_up"),
    (Role.PAIN, "pain"),
)
_FILLED: Final = (
    "exercise", "variation", "line", "set", "side", "load", "unit", "reps", "seconds", "rir",
    "tempo", "warm_up", "pain", "note", "effort", "minutes", "session_note", "body_mass",
)  # fmt: skip
_ONCE: Final = (
    (Role.EFFORT, "effort"),
    (Role.MINUTES, "minutes"),
    (Role.SESSION_NOTE, "session_note"),
)
_SIDES: Final = {"l": "left", "r": "right", "links": "left", "rechts": "right",
                 "izquierda": "left", "derecha": "right"}  # fmt: skip
_YES: Final = {"ja": "yes", "sí": "yes", "si": "yes", "wu": "yes", "w": "yes", "nein": "no"}


@dataclass(slots=True)
class MappedLine:
    """A line of the table while it is read: what is wrong with it, and what was assumed."""

    line: TableLine
    cells: tuple[str, ...]
    problems: list[Problem] = field(default_factory=list)
    doubts: list[Problem] = field(default_factory=list)

    def wrong(self, role: Role, text: str) -> None:
        """Its column of ``role`` cannot be read."""
        self.problems.append(Problem(self.line.number, role.value, text))

    def doubtful(self, role: Role, text: str) -> None:
        """Its column of ``role`` was read by an assumption."""
        self.doubts.append(Problem(self.line.number, role.value, text))


class LineMapper:
    """Reads lines by a mapping, one after the other."""

    def __init__(self, table: Table, mapping: TableMapping, latest: date) -> None:
        self._zero = table.day_zero
        self._mapping = mapping
        self._latest = latest
        self._above: dict[Role, str] = {}
        self._at = {role: mapping.columns(role) for role in Role}
        self._counts_first = {
            place for place, text in enumerate(mapping.headers) if counts_before_sets(text)
        }
        self._lines = LineReader(_FILLED, _FORMAT)

    def rows(self, line: TableLine) -> tuple[list[LogRow], MappedLine]:
        """The sets of one line; its problems and doubts."""
        said = MappedLine(line, line.cells)
        head = self._head(said)
        sets = self._sets(said)
        day = self._day(said, head.get(Role.DATE, ""))
        whole = self._whole(said)
        made: list[LogRow] = []
        for number, cells in enumerate(sets or [{}]):
            filled = {**cells, **(whole if number == 0 else {})}
            if head.get(Role.EXERCISE) and (cells or not whole):
                filled["exercise"] = head[Role.EXERCISE]
            texts = [filled.get(name, "") for name in _FILLED]
            who = head.get(Role.TRAINEE, "")
            row, wrong = self._lines.read(line.number, who, day or _EARLIEST, texts)
            made.append(row.but(unit=self._mapping.unit))
            if not said.problems:  # what could not be read would only be missed again
                said.problems += wrong
        return made, said

    # --- cells ------------------------------------------------------------------------------

    def _text(self, said: MappedLine, role: Role) -> str:
        """What stands in the column of a role, "" where there is none."""
        return next((t for place in self._at[role] if (t := self._cell(said, place))), "")

    @staticmethod
    def _cell(said: MappedLine, place: int) -> str:
        return said.cells[place] if place < len(said.cells) else ""

    def _head(self, said: MappedLine) -> dict[Role, str]:
        """Who, when and what; blanks from the line above where the mapping says so."""
        found: dict[Role, str] = {}
        for role in _DOWN:
            text = self._text(said, role)
            if not text and self._mapping.fill_down:
                text = self._above.get(role, "")
            if text:
                found[role] = self._above[role] = text
        if not found.get(Role.TRAINEE):
            if self._mapping.trainee:
                found[Role.TRAINEE] = self._mapping.trainee
            else:
                said.wrong(Role.TRAINEE, sentence("who? choose a column, or whose all lines are"))
        return found

    def _day(self, said: MappedLine, text: str) -> date | None:
        if not text:
            said.wrong(Role.DATE, sentence("no date"))
            return None
        try:
            day = read_day(text, self._mapping.date_order, self._zero)
        except CellProblem as error:
            said.wrong(Role.DATE, sentence_of(error))
            return None
        if day > self._latest:
            said.wrong(Role.DATE, sentence("{text} lies in the future", text=text))
        elif looks_like_serial(text):
            text = sentence(
                "{text} was read as a spreadsheet's number of {day}", text=text, day=day
            )
            said.doubtful(Role.DATE, text)
        return day

    def _whole(self, said: MappedLine) -> dict[str, str]:
        """What the line says of the whole session or day."""
        cells = {name: self._number_text(said, role) for role, name in _ONCE}
        cells[_ONCE[2][1]] = self._text(said, Role.SESSION_NOTE)
        mass = self._text(said, Role.BODY_MASS)
        if mass:
            unit = unit_of(mass) or self._unit_said(said) or self._mapping.unit
            try:
                loads = read_loads(mass, unit, self._mapping.decimal_mark)
                cells["body_mass"], cells["unit"] = _kilograms(loads.grams[0]), "kg"
            except (CellProblem, IndexError) as error:
                said.wrong(Role.BODY_MASS, sentence_of(error))
        return {name: text for name, text in cells.items() if text}

    def _number_text(self, said: MappedLine, role: Role, place: int | None = None) -> str:
        """A number as our own log writes it."""
        text = self._text(said, role) if place is None else self._cell(said, place)
        if not text:
            return ""
        try:
            return f"{read_number(text, self._mapping.decimal_mark):f}"
        except CellProblem as error:
            said.wrong(role, sentence_of(error))
            return ""

    # --- sets -------------------------------------------------------------------------------

    def _sets(self, said: MappedLine) -> list[dict[str, str]]:
        counted = sorted(
            [(place, False) for place in self._at[Role.REPS]]
            + [(place, True) for place in self._at[Role.SECONDS]]
        )
        groups = [
            (place, counts)
            for place, held in counted
            if (counts := self._counts(said, place, held)) and counts.amounts
        ]
        several = self._several(said, groups)
        common = self._as_written(said)
        made: list[dict[str, str]] = []
        for place, counts in groups:
            before = max((at for at, _ in counted if at < place), default=-1)
            loads = self._loads(said, before, place, several * len(counts.amounts))
            extra = self._reserve(said, place, [at for at, _ in counted])
            amounts = counts.amounts * several
            for number, amount in enumerate(amounts):
                made.append(
                    {
                        **common,
                        **extra,
                        "seconds" if counts.held else "reps": str(amount),
                        "load": _kilograms(loads[number]) if loads else "",
                        "unit": "kg",
                    }
                )
        if len(made) > 1:  # the number of one set cannot be that of several
            for cells in made:
                cells.pop("set", None)
        for cells in made[1:]:
            cells.pop("note", None)
        return made

    def _counts(self, said: MappedLine, place: int, held: bool) -> Counts | None:
        text = self._cell(said, place)
        role = Role.SECONDS if held else Role.REPS
        if not text:
            return None
        if place in self._counts_first:
            text = sets_first(text)
        try:
            counts = read_counts(text, held)
        except CellProblem as error:
            said.wrong(role, sentence_of(error))
            return None
        if counts.doubt:
            said.doubtful(role, counts.doubt)
        return counts

    def _several(self, said: MappedLine, groups: Sequence[tuple[int, Counts]]) -> int:
        """How many sets alike the line stands for, by its column of sets."""
        text = self._text(said, Role.SETS)
        if not text or not groups:
            return 1
        try:
            number = int(read_number(text, ""))
        except CellProblem:
            said.wrong(Role.SETS, sentence("{text!r} is no number of sets", text=text))
            return 1
        if not 1 <= number <= 20:
            said.wrong(Role.SETS, sentence("{text} sets: allowed are 1 to 20", text=text))
            return 1
        written = sum(len(counts.amounts) for _, counts in groups)
        if written == 1:
            return number
        if written != number:
            doubt = sentence(
                "{text} sets, but {written} are written; {written} are read",
                text=text,
                written=written,
            )
            said.doubtful(Role.SETS, doubt)
        return 1

    def _loads(self, said: MappedLine, before: int, place: int, count: int) -> list[int]:
        """The loads of ``count`` sets: of the nearest column of loads at the left, else of the
        only one.
        """
        columns = self._at[Role.LOAD]
        own = [at for at in columns if before < at < place]
        at = own[-1] if own else (columns[0] if len(columns) == 1 else None)
        if at is None and columns and before < 0:
            at = columns[0]
        if at is None:
            return []
        text = self._cell(said, at)
        unit = self._unit_said(said) or unit_of(self._mapping.headers[at]) or self._mapping.unit
        try:
            loads = read_loads(text, unit, self._mapping.decimal_mark)
        except CellProblem as error:
            said.wrong(Role.LOAD, sentence_of(error))
            return []
        return self._for_each(said, loads, count)

    def _for_each(self, said: MappedLine, loads: Loads, count: int) -> list[int]:
        if loads.doubt:
            said.doubtful(Role.LOAD, loads.doubt)
        if not loads.grams:
            said.doubtful(Role.LOAD, NO_LOAD)
            return []
        if loads.body:
            said.doubtful(Role.LOAD, BODY)
        if len(loads.grams) == 1:
            return list(loads.grams) * count
        if len(loads.grams) != count:
            said.wrong(
                Role.LOAD,
                sentence("{grams} loads for {count} sets", grams=len(loads.grams), count=count),
            )
            return []
        return list(loads.grams)

    def _unit_said(self, said: MappedLine) -> Unit | None:
        text = self._text(said, Role.UNIT)
        found = unit_of(text)
        if text and found is None:
            said.wrong(Role.UNIT, sentence("{text!r} is no unit: allowed are kg and lb", text=text))
        return found

    def _as_written(self, said: MappedLine) -> dict[str, str]:
        cells = {name: self._text(said, role) for role, name in _AS_WRITTEN}
        cells["side"] = _SIDES.get(cells["side"].casefold(), cells["side"])
        cells["warm_up"] = _YES.get(cells["warm_up"].casefold(), cells["warm_up"])
        number = self._text(said, Role.SET)
        cells["set"] = number if number.isdigit() else ""
        notes = [text for at in self._at[Role.NOTE] if (text := self._cell(said, at))]
        cells["note"] = "; ".join(notes)
        return cells

    def _reserve(self, said: MappedLine, place: int, counted: Sequence[int]) -> dict[str, str]:
        """Repetitions in reserve of the sets counted at ``place``; a rating stands for them where
        it means one number, else it is kept as a note.
        """
        after = min((at for at in counted if at > place), default=len(said.cells))
        rir = self._near(Role.RIR, place, after)
        if rir is not None and (text := self._number_text(said, Role.RIR, rir)):
            return {"rir": text}
        rated = self._near(Role.RPE, place, after)
        rating = self._number_text(said, Role.RPE, rated) if rated is not None else ""
        if not rating:
            return {}
        try:
            meant = rir_from_rpe(float(rating))
        except StrengthError as error:
            said.wrong(Role.RPE, sentence_of(error))
            return {}
        if meant is not None and meant[0] == meant[1]:
            return {"rir": f"{meant[0]:g}"}
        notes = [text for at in self._at[Role.NOTE] if (text := self._cell(said, at))]
        return {"note": "; ".join([*notes, f"RPE {float(rating):g}"])}

    def _near(self, role: Role, place: int, after: int) -> int | None:
        """The column of a role that belongs to the count at ``place``: behind it, before the next
        one; or the only one.
        """
        columns = self._at[role]
        own = [at for at in columns if place < at < after]
        return own[0] if own else (columns[0] if len(columns) == 1 else None)


def _kilograms(mass_g: int) -> str:
    """Whole grams as kilograms, exactly; never three places, which could be thousands."""
    return f"{mass_g // 1000}" if mass_g % 1000 == 0 else f"{mass_g / 1000:.4f}"
