"""The same use cases without a window: `python -m desktop VERB`.

Imports neither screens nor Qt; words, sheets and pictures are handed in. Results go to standard
output, what is wrong in one line to standard error. Exit status: 0; 1 when something is wrong;
2 for wrong usage. What a verb needs is imported when it is called for.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Sequence
from contextlib import suppress
from types import ModuleType

from desktop.arguments import parser
from desktop.verbs.terminal import Fetch, Options, Painter, Terminal, Words, Wrong


def main(
    arguments: Sequence[str], words: Words, sheets: Fetch, pictures: Painter | None = None
) -> int:
    """Do what the arguments ask for; the exit status.

    ``sheets`` is called only when a sheet is wanted; ``pictures`` draws the screens of a data
    file into a folder.
    """
    try:
        options = parser().parse_args(arguments)
    except SystemExit as stop:
        return int(stop.code or 0)
    try:
        _verb(options.verb)(Terminal(words, sheets, pictures), options)
    except Wrong as error:
        return _complain(str(error))
    except BrokenPipeError:
        with suppress(OSError):
            sys.stdout.close()
    except OSError as error:
        return _complain(f"{error.filename or 'file'}: {error.strerror or error}")
    except Exception as error:
        said = _said(error)
        if said is None:
            raise
        return _complain(said)
    return 0


def _verb(name: str) -> Callable[[Terminal, Options], None]:
    done: Callable[[Terminal, Options], None] = getattr(_noun(name), name.replace("-", "_"))
    return done


def _noun(verb: str) -> ModuleType:
    """The module of a verb; written out, so that who packs the program sees what it imports."""
    match verb:
        case "import-log" | "export-log":
            from desktop.verbs import logs

            return logs
        case "import-program" | "export-program" | "print-program" | "assign" | "draft":
            from desktop.verbs import programs

            return programs
        case "import-trainees" | "export-trainee" | "roster" | "report" | "erase":
            from desktop.verbs import trainees

            return trainees
        case "targets" | "sheet" | "read-notes":
            from desktop.verbs import days

            return days
        case "replay":
            from desktop.verbs import lines

            return lines
        case "backup" | "check" | "passphrase" | "export-all" | "import-all":
            from desktop.verbs import safe_keeping

            return safe_keeping
        case "install-menu":
            from desktop.verbs import menu

            return menu
        case _:
            from desktop.verbs import demo

            return demo


def _said(error: Exception) -> str | None:
    """What is wrong, in words; None where it is a fault of ours."""
    from db.errors import StoreError
    from db.json_files import InvalidFile
    from db.log_files import UnreadableLog
    from desktop.entries import EntryError
    from desktop.planning.arrivals import CannotTake
    from desktop.planning.assignments import CannotAssign
    from desktop.planning.report import ReportError

    if isinstance(error, StoreError):
        return f"{error} {error.remedy}"
    told = (UnreadableLog, InvalidFile, CannotTake, CannotAssign, EntryError, ReportError)
    return str(error) if isinstance(error, told) else None


def _complain(text: str) -> int:
    print(f"rungwise: {' '.join(text.split())}", file=sys.stderr)
    return 1
