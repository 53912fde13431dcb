"""Imports of files that were changed at random: logs, programs, trainees, everything.

Each is either taken whole, with the data sound, or refused in words with the data as they were.
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Callable, Iterator
from contextlib import closing
from copy import deepcopy
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from random import Random
from tempfile import gettempdir
from typing import Any

from db.database import MEMORY, Database
from db.errors import StoreError
from db.everything import SCHEMA as EVERYTHING
from db.everything import Everything, fill, of_trainee, read_everything, write_file
from db.everything import read_file as read_everything_file
from db.json_files import InvalidFile
from db.log_files import UnreadableLog, read_log
from db.log_import import plan_import
from db.log_saving import carry_out
from db.program_files import read_program
from db.repository import Repository
from db.trainee_files import read_trainees
from desktop import demo
from desktop.catalogue import load_catalogue
from desktop.planning.arrivals import CannotTake, take_program, take_trainees
from desktop.planning.assignments import CannotAssign

FULL = 10_000
SHARE = 100

_REFUSED = (StoreError, InvalidFile, UnreadableLog, CannotTake, CannotAssign, OSError)
_DEMO = Path(__file__).parent.parent.parent / "resources" / "demo"
_NASTY = (
    "",
    "-1",
    "1e309",
    "NaN",
    "9" * 400,
    "0x10",
    "=1+1",
    "\0",
    "\u202e",
    "\ud7ff",
    "<b>x</b>",
    "' OR 1=1 --",
    "2026-02-30",
    "0000-00-00",
    "99999-01-01",
    "null",
    "true",
    '"',
    ";",
    "\t",
    "\n",
    "é" * 2_000,
)
_VALUES: tuple[Any, ...] = (
    None,
    True,
    False,
    -1,
    0,
    2**63,
    2**70,
    1e308,
    "",
    "x" * 5_000,
    [],
    {},
    [[]],
    {"a": 1},
    *_NASTY,
)


@dataclass(frozen=True, slots=True)
class Kind:
    """A kind of file: its name, a good file's bytes, and how it is taken in."""

    name: str
    good: bytes
    take: Callable[[Repository, Path], object]


def run(count: int, chance: Random, folder: Path) -> Iterator[str]:
    """Import ``count`` changed files of each of the four kinds in turn into a filled data file."""
    with closing(Database.open(MEMORY)) as database:
        repository = Repository(database)
        repository.sync_catalogue(load_catalogue())
        kinds = _kinds(folder)
        found: Counter[str] = Counter()
        for number in range(count):
            kind = kinds[number % len(kinds)]
            path = folder / f"{kind.name}.file"
            path.write_bytes(_changed(kind.good, chance, json_too=kind.name != "log"))
            found[f"{kind.name} {_outcome(database, repository, kind, path)}"] += 1
    told = ", ".join(f"{count} {what}" for what, count in sorted(found.items()))
    yield f"{count} files: {told}; no crash, nothing half taken"


def _outcome(database: Database, repository: Repository, kind: Kind, path: Path) -> str:
    before = _fingerprint(database)
    outcome, refusal = "taken", ""
    try:
        with database.transaction():
            try:
                kind.take(repository, path)
            except _REFUSED as error:
                refusal = str(error)
                outcome = "refused"
            if outcome == "refused":
                assert refusal, "refused without a word"
                assert _fingerprint(database) == before, f"half taken: {refusal}"
            else:
                assert database.quick_check() == []
            raise _Undone
    except _Undone:
        pass
    except AssertionError:
        raise
    except Exception as error:
        kept = path.rename(Path(gettempdir()) / f"rungwise-fuzz-{path.name}")
        raise AssertionError(f"{kind.name} fell over with {error!r}; see {kept}") from error
    return outcome


class _Undone(Exception):
    """What was taken is undone, so that every file meets the same data."""


def _fingerprint(database: Database) -> tuple[object, ...]:
    tables = ("trainee", "program", "session", "set_done", "exercise", "line", "body_mass")
    counts = ", ".join(f"(SELECT count(*) FROM {table})" for table in tables)
    return database.execute(f"SELECT {counts}")[0]


def _kinds(folder: Path) -> tuple[Kind, ...]:
    log = (_DEMO / "training-log.csv").read_bytes().splitlines(keepends=True)
    program = next(iter(sorted(_DEMO.glob("program-*.json"))))
    return (
        Kind("log", b"".join(log[:25]), _take_log),
        Kind(
            "program",
            program.read_bytes(),
            lambda into, path: take_program(into, read_program(path)),
        ),
        Kind(
            "trainees", _few_trainees(), lambda into, path: take_trainees(into, read_trainees(path))
        ),
        Kind("everything", _everything(folder), _take_everything),
    )


def _take_log(repository: Repository, path: Path) -> None:
    plan = plan_import(repository, read_log(path, latest=date(2027, 1, 1)), new_trainees="always")
    carry_out(repository, plan)


def _take_everything(_repository: Repository, path: Path) -> None:
    content = read_everything_file(path)
    with closing(Database.open(MEMORY)) as fresh:
        fill(fresh, content)
        assert fresh.quick_check() == []
        assert read_everything(fresh).trainees == content.trainees


def _few_trainees() -> bytes:
    whole = json.loads((_DEMO / "trainees.json").read_text(encoding="utf-8"))
    for one in whole["trainees"]:
        one.pop("programs", None)
    return json.dumps({**whole, "trainees": whole["trainees"][:2]}, indent=1).encode()


def _everything(folder: Path) -> bytes:
    with closing(Database.open(MEMORY)) as database:
        repository = Repository(database)
        repository.sync_catalogue(load_catalogue())
        demo.fill(repository, date(2026, 11, 30))
        one = of_trainee(read_everything(database), 1)
    few: dict[str, Any] = {"sessions": one.sessions[:3], "session_changes": one.session_changes[:3]}
    kept = Everything(
        **{name: few.get(name, getattr(one, name)) for name in Everything.__dataclass_fields__}
    )
    path = folder / "good.json"
    write_file(kept, path)
    assert json.loads(path.read_text(encoding="utf-8"))["schema"] == EVERYTHING
    return path.read_bytes()


# Changing a file


def _changed(good: bytes, chance: Random, json_too: bool) -> bytes:
    data = good
    if json_too and chance.random() < 0.9:
        raw = json.loads(good)
        for _ in range(chance.randint(1, 3)):
            _change_value(raw, chance)
        data = json.dumps(raw, ensure_ascii=False).encode("utf-8", "surrogatepass")
    elif chance.random() < 0.7:
        data = _change_cells(good, chance)
    if chance.random() < 0.1 or data == good:
        data = _change_bytes(data, chance)
    return data


def _change_value(raw: Any, chance: Random) -> None:
    """Go down at random and change, drop or add something there."""
    place: Any = raw
    while True:
        keys: list[Any] = list(place) if isinstance(place, dict) else list(range(len(place)))
        if not keys:
            return
        key = chance.choice(keys)
        if isinstance(place[key], (dict, list)) and chance.random() < 0.9:
            place = place[key]
            continue
        match chance.randrange(9):
            case 0:
                place[key] = deepcopy(chance.choice(_VALUES))
            case 1 if isinstance(place, dict):
                del place[key]
            case 2 if isinstance(place, list):
                place.append(deepcopy(place[key]))
            case 3 if isinstance(place, dict):
                place[chance.choice(_NASTY)[:40]] = deepcopy(chance.choice(_VALUES))
            case _:
                place[key] = _other(place[key], chance)
        return


def _other(value: Any, chance: Random) -> Any:
    """Another value of the same type, so that it comes past the first checks."""
    if isinstance(value, bool) or value is None:
        return not value
    if isinstance(value, int | float):
        return chance.choice(
            (0, -value, value + 1, value * 1_000, value / 7, chance.getrandbits(40))
        )
    if isinstance(value, str):
        day = date.fromordinal(chance.randint(1, date.max.toordinal())).isoformat()
        return chance.choice((*_NASTY, day, value[1:], value + value))
    return deepcopy(
        chance.choice((value, value * 2, value[:1]) if isinstance(value, list) else (value,))
    )


def _change_cells(good: bytes, chance: Random) -> bytes:
    text = good.decode("utf-8", "replace")
    separator = chance.choice((",", "\n", '"'))
    cells = text.split(separator)
    for _ in range(chance.randint(1, 6)):
        cells[chance.randrange(len(cells))] = chance.choice(_NASTY)
    return separator.join(cells).encode("utf-8", "surrogatepass")


def _change_bytes(data: bytes, chance: Random) -> bytes:
    changed = bytearray(data or b"x")
    for _ in range(chance.randint(1, 8)):
        at = chance.randrange(len(changed))
        match chance.randrange(4):
            case 0:
                changed[at] = chance.randrange(256)
            case 1:
                del changed[at : at + chance.randint(1, 200)]
            case 2:
                changed[at:at] = chance.randbytes(chance.randint(1, 20))
            case _:
                changed[at:at] = changed[at : at + 60] * chance.randint(1, 40)
        changed = changed or bytearray(b"x")
    return bytes(changed)
