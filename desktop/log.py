"""The log: rotating files that hold no names and no health data.

Messages of exceptions may quote what somebody typed, so only their type and the places in the
code are written.
"""

from __future__ import annotations

import logging
import traceback
from copy import copy
from logging.handlers import RotatingFileHandler
from pathlib import Path
from types import TracebackType

_MOST_BYTES = 500_000
_KEPT = 3

ExceptionInfo = (
    tuple[type[BaseException], BaseException, TracebackType | None] | tuple[None, None, None]
)


class QuietFormatter(logging.Formatter):
    """Formats a record without the message of its exception.

    Another handler may have left its own text of the exception in the record; it is not used.
    """

    def format(self, record: logging.LogRecord) -> str:
        own = copy(record)
        own.exc_text = None
        return super().format(own)

    def formatException(self, ei: ExceptionInfo) -> str:
        return "" if ei[0] is None else described(ei[0], ei[2])


def described(kind: type[BaseException], trace: TracebackType | None) -> str:
    """An exception as its type and the places in the code it came through, newest last."""
    frames = traceback.extract_tb(trace)
    places = [f"  {Path(f.filename).name}:{f.lineno} in {f.name}" for f in frames]
    return "\n".join([*places, kind.__qualname__])


def start_log(folder: Path) -> Path:
    """Write warnings and worse, and our own notes, to ``folder``; the path of the file."""
    path = folder / "rungwise.log"
    handler = RotatingFileHandler(
        path, maxBytes=_MOST_BYTES, backupCount=_KEPT, encoding="utf-8", delay=True
    )
    handler.setFormatter(QuietFormatter("%(asctime)s %(levelname)s %(name)s: %(message)s"))
    handler.setLevel(logging.INFO)
    root = logging.getLogger()
    root.addHandler(handler)
    root.setLevel(logging.INFO)
    return path
