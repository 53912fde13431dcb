"""Child processes that do a piece of work until they end or are ended."""

from __future__ import annotations

import os
import signal
import sys
import time
import traceback
from collections.abc import Callable
from dataclasses import dataclass
from functools import partial

Tell = Callable[[str], None]
Work = Callable[[Tell], None]

CAN_FORK = hasattr(os, "fork")


@dataclass(frozen=True, slots=True)
class Ended:
    """What became of a child: what it told, line by line; how it ended; how long it took (s)."""

    told: tuple[str, ...]
    killed: bool
    status: int
    seconds: float


def run(work: Work, kill_after: float | None = None) -> Ended:
    """Do ``work`` in a child; kill it (as ``kill -9`` does) after so many seconds.

    The child begins as a copy of this process, so that no time goes into starting. What it tells
    is kept even if it is killed the moment after. A child that fails by itself prints why.
    """
    reading, writing = os.pipe()
    began = time.perf_counter()
    child = os.fork()
    if child == 0:
        os.close(reading)
        _do(work, writing)
    os.close(writing)
    if kill_after is not None:
        time.sleep(kill_after)
        os.kill(child, signal.SIGKILL)
    with os.fdopen(reading, encoding="utf-8") as pipe:
        told = tuple(pipe.read().splitlines())
    _, status = os.waitpid(child, 0)
    killed = os.WIFSIGNALED(status) and os.WTERMSIG(status) == signal.SIGKILL
    return Ended(told, killed, os.waitstatus_to_exitcode(status), time.perf_counter() - began)


def _tell(writing: int, text: str) -> None:
    os.write(writing, f"{text}\n".encode())


def _do(work: Work, writing: int) -> None:
    """Never returns: a copy of the parent must not go on as if it were the parent."""
    status = 1
    try:
        work(partial(_tell, writing))
        status = 0
    except BaseException:
        traceback.print_exc(file=sys.stderr)
    finally:
        os._exit(status)
