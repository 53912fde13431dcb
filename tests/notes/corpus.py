"""The corpus, read and compared with what a careful coach reads in it."""

from __future__ import annotations

import re
import tomllib
from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal
from pathlib import Path

from desktop.catalogue import load_catalogue
from desktop.notes.known import Known, KnownHeight, known_exercise
from desktop.notes.reader import read_notes
from desktop.notes.reading import ReadSet
from desktop.training.quantities import Unit, grams

DAY = date(2026, 11, 30)
LINES = {"deadlift": ("heavy", "light"), "back-squat": ("",)}
KNOWN = Known(
    exercises=tuple(known_exercise(one, LINES.get(one.key, ())) for one in load_catalogue()),
    unit=Unit.KG,
    day=DAY,
    heights=(KnownHeight("chair", 450), KnownHeight("stair", 180)),
)

Row = tuple[str | None, int | None, int | None, int | None, str | None, float | None, bool, str]
"""Exercise, grams, repetitions, seconds, variation, reserve, warm-up, side."""

_SET = re.compile(
    r"(?:(?P<count>[0-9]+)\*)?(?P<amount>[0-9]+)(?P<hold>s)?"
    r"(?:@(?:(?P<unknown>\?)|(?P<load>-?[0-9.]+)(?P<lb>lb)?))?"
    r"(?:~(?P<rir>[0-9.]+))?(?P<warm>!w)?(?:/(?P<side>[lr]))?(?:#(?P<variation>[\w-]+))?"
)


@dataclass(frozen=True)
class Noted:
    """One line of the corpus: its text and unit, what is sure, what is doubtful ("*" any)."""

    text: str
    unit: Unit
    sure: Counter[Row]
    doubt: Counter[Row]
    anything: bool = False


@dataclass(frozen=True)
class Score:
    """Counts over lines. ``taken``: sets read as certain, ``right`` of them; ``wanted``: sets that
    must be certain; ``proposed`` of all ``expected`` sets, certain or not.
    """

    lines: int = 0
    taken: int = 0
    right: int = 0
    wanted: int = 0
    proposed: int = 0
    expected: int = 0

    @property
    def precision(self) -> float:
        """Of the sets read as certain, the share that is right."""
        return self.right / self.taken if self.taken else 1.0

    @property
    def recall(self) -> float:
        """Of the sets that a coach is certain of, the share read as certain."""
        return self.right / self.wanted if self.wanted else 1.0

    @property
    def proposals(self) -> float:
        """Of all sets with an expected reading, the share proposed so, certain or not."""
        return self.proposed / self.expected if self.expected else 1.0


def corpus() -> tuple[Noted, ...]:
    """All lines."""
    with (Path(__file__).parent / "corpus.toml").open("rb") as file:
        notes = tomllib.load(file)["notes"]
    return tuple(
        Noted(
            each["text"],
            Unit(each.get("unit", "kg")),
            Counter(_rows(each.get("sure", ""))),
            Counter(() if each.get("doubt") == "*" else _rows(each.get("doubt", ""))),
            each.get("doubt") == "*",
        )
        for each in notes
    )


def tuned() -> tuple[Noted, ...]:
    """The half that the reader was tuned on."""
    return corpus()[::2]


def held_out() -> tuple[Noted, ...]:
    """The other half."""
    return corpus()[1::2]


def score(lines: Iterable[Noted]) -> Score:
    """Read the lines and count."""
    total = Score()
    for line in lines:
        certain, doubtful = read_rows(line)
        both = certain + doubtful
        wanted = line.sure + line.doubt
        total = Score(
            total.lines + 1,
            total.taken + certain.total(),
            total.right + (certain & line.sure).total(),
            total.wanted + line.sure.total(),
            total.proposed + (both & wanted).total(),
            total.expected + wanted.total(),
        )
    return total


def read_rows(line: Noted) -> tuple[Counter[Row], Counter[Row]]:
    """The sets read as certain, and those that are asked about."""
    reading = read_notes(line.text, replace(KNOWN, unit=line.unit))
    rows = [
        (_row(entry.exercise, one), one.certain) for entry in reading.entries for one in entry.sets
    ]
    certain = Counter(row for row, sure in rows if sure)
    return certain, Counter(row for row, sure in rows if not sure)


def misread(line: Noted) -> bool:
    """Whether a line is not read as it should be."""
    certain, doubtful = read_rows(line)
    return certain != line.sure or (not line.anything and doubtful != line.doubt)


def _row(exercise: str | None, one: ReadSet) -> Row:
    return (
        exercise, one.load_g, one.reps, one.seconds, one.variation, one.rir, one.warm_up, one.side,
    )  # fmt: skip


def _rows(text: str) -> Iterator[Row]:
    for part in filter(None, text.split("; ")):
        exercise, *sets = part.split()
        for each in sets:
            found = _SET.fullmatch(each)
            assert found is not None, f"no set of the corpus: {each!r}"
            unit = Unit.LB if found["lb"] else Unit.KG
            load_g = None if found["unknown"] else grams(Decimal(found["load"] or 0), unit)
            amount = int(found["amount"])
            row: Row = (
                exercise,
                load_g,
                None if found["hold"] else amount,
                amount if found["hold"] else None,
                found["variation"],
                None if found["rir"] is None else float(found["rir"]),
                found["warm"] is not None,
                {"l": "left", "r": "right", None: ""}[found["side"]],
            )
            yield from [row] * int(found["count"] or 1)
