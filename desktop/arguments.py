"""The arguments of the command line: verbs, options, and what may stand behind them."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import Final

from desktop.training.quantities import Unit
from desktop.training.trainee import Experience

WEEKDAYS: Final = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")

AddVerb = Callable[[str, str], argparse.ArgumentParser]


def parser() -> argparse.ArgumentParser:
    """The parser of all verbs; wrong usage ends it with status 2."""
    top = argparse.ArgumentParser(
        prog="rungwise",
        description="Without a verb the window opens. With one, the same work without a window.",
    )
    top.add_argument("--database", type=Path, metavar="FILE", help="the data file")
    shared = argparse.ArgumentParser(add_help=False)
    shared.add_argument("--database", type=Path, metavar="FILE", default=argparse.SUPPRESS)
    verbs = top.add_subparsers(dest="verb", required=True, metavar="VERB")

    def verb(name: str, text: str) -> argparse.ArgumentParser:
        return verbs.add_parser(name, help=text, description=text, parents=[shared])

    _import_arguments(verb)
    _work_arguments(verb)
    _file_arguments(verb)
    return top


def _import_arguments(verb: AddVerb) -> None:
    log = verb("import-log", "take a training log (CSV); bad lines are handed back as a file")
    log.add_argument("file", type=Path)
    log.add_argument("--trainee", metavar="NAME", help="who trained, where the lines do not say")
    log.add_argument("--unit", choices=[unit.value for unit in Unit], help="where lines name none")
    log.add_argument("--dates", choices=["day-first", "month-first"], help="where nothing tells")
    log.add_argument(
        "--name",
        type=_name_pair,
        action="append",
        metavar="WRITTEN=KNOWN",
        help="what a name in the log stands for; may be given again",
    )
    log.add_argument(
        "--new-trainees",
        choices=["never", "unlike", "always"],
        default="unlike",
        help="add trainees who are not there: those unlike every known name (default), or all",
    )
    log.add_argument("--preview", action="store_true", help="say what would be done, do nothing")
    log.add_argument("--rejects", type=Path, metavar="FILE", help="where bad lines are written")
    for name in ("program", "trainees"):
        verb(f"import-{name}", f"take a {name} file (JSON)").add_argument("file", type=Path)
    export = verb("export-log", "write what was done as a training log (CSV)")
    export.add_argument("file", type=Path)
    export.add_argument("--trainee", metavar="NAME", help="of one trainee only")
    export.add_argument(
        "--decimal-comma", action="store_true", help="semicolons and decimal commas"
    )
    printed = verb("print-program", "print a whole program: phases, days, what each week asks")
    printed.add_argument("--program", required=True, metavar="NAME")
    printed.add_argument("--pdf", required=True, type=Path, metavar="FILE")
    printed.add_argument("--trainee", metavar="NAME", help="from where they stand, with their days")
    printed.add_argument("--date", type=_day, metavar="DAY", help="today, where none is given")
    program = verb("export-program", "write a program as a file (JSON)")
    program.add_argument("file", type=Path)
    program.add_argument("--program", required=True, metavar="NAME")


def _work_arguments(verb: AddVerb) -> None:
    assigned = verb("assign", "give a program to a trainee")
    assigned.add_argument("--trainee", required=True, metavar="NAME")
    assigned.add_argument("--program", required=True, metavar="NAME")
    assigned.add_argument("--start", required=True, type=_day, metavar="DAY")
    assigned.add_argument("--weekdays", type=_weekdays, metavar="mon,wed,sat")
    for name, text in (
        ("targets", "what a trainee is asked on a day, and why"),
        ("sheet", "the printed sheet of a day"),
    ):
        asked = verb(name, text)
        whose = asked.add_mutually_exclusive_group(required=True)
        whose.add_argument("--trainee", metavar="NAME")
        if name == "sheet":
            whose.add_argument("--group", action="store_true", help="all who train on the day")
        asked.add_argument("--date", type=_day, metavar="DAY", help="today, where none is given")
        if name == "targets":
            asked.add_argument("--json", action="store_true")
        else:
            asked.add_argument("--pdf", required=True, type=Path, metavar="FILE")
    report = verb("report", "a trainee's progress over a span, with charts")
    report.add_argument("--trainee", required=True, metavar="NAME")
    report.add_argument("--from", required=True, type=_day, metavar="DAY", dest="first")
    report.add_argument("--to", type=_day, metavar="DAY", help="today, where none is given")
    report.add_argument("--pdf", required=True, type=Path, metavar="FILE")
    _draft_arguments(verb)
    notes = verb("read-notes", "what free-text notes say was done; saves nothing")
    notes.add_argument("file", type=Path)
    notes.add_argument("--trainee", required=True, metavar="NAME")
    notes.add_argument("--date", type=_day, metavar="DAY", help="of what stands under no date")
    notes.add_argument("--dates", choices=["day-first", "month-first"], default="day-first")
    notes.add_argument("--json", action="store_true")
    listed = verb("roster", "who trained last when, and trains next when")
    listed.add_argument("--date", type=_day, metavar="DAY", help="seen from this day")
    listed.add_argument("--json", action="store_true")
    case = verb("replay", "the model on one line: a case (JSON) in, position and steps out")
    case.add_argument("file", type=Path)
    case.add_argument("--json", action="store_true")
    case.add_argument("--unit", choices=[unit.value for unit in Unit], help="of the text")


def _draft_arguments(verb: AddVerb) -> None:
    drafted = verb("draft", "draft a balanced program from wishes, as a program file")
    drafted.add_argument("--days", required=True, type=int, metavar="N", help="a week, 1 to 6")
    drafted.add_argument("--minutes", required=True, type=int, metavar="M", help="a session")
    drafted.add_argument(
        "--equipment", required=True, choices=["none", "dumbbell", "barbell", "mixed"]
    )
    drafted.add_argument("--level", required=True, choices=[level.value for level in Experience])
    drafted.add_argument("--goal", required=True, choices=["strength", "size", "skill"])
    drafted.add_argument(
        "--avoid",
        action="append",
        metavar="WHAT",
        help="a pattern, an exercise, a muscle or a word in names; may be given again",
    )
    drafted.add_argument("--out", required=True, type=Path, metavar="FILE")


def _file_arguments(verb: AddVerb) -> None:
    copy = verb("backup", "copy the data file, also while it is in use")
    copy.add_argument("file", type=Path)
    copy.add_argument("--replace", action="store_true", help="write over an older copy")
    verb("export-all", "write everything as one file (JSON)").add_argument("file", type=Path)
    whole = verb("import-all", "fill a new data file with everything from a file (JSON)")
    whole.add_argument("file", type=Path)
    person = verb("export-trainee", "write all about one trainee, for that person, into a folder")
    person.add_argument("--trainee", required=True, metavar="NAME")
    person.add_argument("--out", required=True, type=Path, metavar="FOLDER")
    locked = verb("passphrase", "set or change the passphrase of the data file and its copies")
    locked.add_argument("--remove", action="store_true", help="let it be without one")
    erased = verb("erase", "erase a trainee from the data file and every copy of it, for good")
    erased.add_argument("--trainee", required=True, metavar="NAME")
    erased.add_argument("--yes", action="store_true", help="do it; it cannot be undone")
    verb("check", "say whether the data file is sound")
    entry = verb("install-menu", "put Rungwise into this user's menu (Linux desktops)")
    entry.add_argument("--remove", action="store_true", help="take it out again")
    filled = verb("demo", "fill a new data file with the demo, an invented scenario")
    filled.add_argument("--date", type=_day, metavar="DAY", help="as if this were today")
    walked = verb("walk", "do the whole round on the demo; results in a folder")
    walked.add_argument("--out", required=True, type=Path, metavar="FOLDER")
    walked.add_argument("--date", type=_day, metavar="DAY", help="as if this were today")


def _day(text: str) -> date:
    try:
        return date.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(f"{text!r} is no date: write it as 2026-11-30") from None


def _weekdays(text: str) -> tuple[int, ...]:
    names = [part.strip().casefold()[:3] for part in text.split(",")]
    if any(name not in WEEKDAYS for name in names):
        raise argparse.ArgumentTypeError(f"{text!r}: write weekdays as mon,wed,sat")
    return tuple(WEEKDAYS.index(name) for name in names)


def _name_pair(text: str) -> tuple[str, str]:
    written, mark, known = text.partition("=")
    if not (written.strip() and mark and known.strip()):
        raise argparse.ArgumentTypeError(f"{text!r}: write it as 'AS WRITTEN=NAME HERE'")
    return written.strip(), known.strip()
