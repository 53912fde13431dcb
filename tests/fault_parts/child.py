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

from db.errors import StoreError

Tell = Callable[[str], None]
Work = Callable[[Tell], None]

_REFUSED = "refused: "
CAN_FORK = hasattr(os, "fork")


@dataclass(frozen=True, slots=True)
class Ended:
    """What became of a child: what it told, line by line; how it ended; how long it took (s).

    ``refused`` names the error of the store that it gave up with.
    """

    told: tuple[str, ...]
    killed: bool
    refused: str
    status: int
    seconds: float

    @property
    def whole(self) -> bool:
        """Whether the work was done to its end."""
        return not self.killed and not self.refused


def run(work: Work, kill_after: float | None = None) -> Ended:
    """Do ``work`` in a child; kill it (as ``kill -9`` does) after so many seconds.

    It may give up with a StoreError. The child begins as a copy of this process, so that no time
    goes into starting. What it tells is kept even if it is killed the moment after. A child that
    falls over prints why.
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
        said = pipe.read().splitlines()
    _, status = os.waitpid(child, 0)
    killed = os.WIFSIGNALED(status) and os.WTERMSIG(status) == signal.SIGKILL
    told = tuple(line for line in said if not line.startswith(_REFUSED))
    refused = "".join(line.removeprefix(_REFUSED) for line in said if line.startswith(_REFUSED))
    code = os.waitstatus_to_exitcode(status)
    return Ended(told, killed, refused, code, time.perf_counter() - began)


def tried(work: Callable[[], object]) -> str:
    """ "yes", or the error of the store that ``work`` raised."""
    try:
        work()
    except StoreError as error:
        return f"{type(error).__name__}: {error}"
    return "yes"


def _tell(writing: int, text: str) -> None:
    os.write(writing, f"{text}\n".encode())


def _do(work: Work, writing: int) -> None:
    """Never returns: a copy of the parent must not go on as if it were the parent."""
    status = 1
    try:
        work(partial(_tell, writing))
        status = 0
    except StoreError as error:
        _tell(writing, f"{_REFUSED}{type(error).__name__}: {error}")
        status = 0
    except BaseException:
        traceback.print_exc(file=sys.stderr)
    finally:
        os._exit(status)
