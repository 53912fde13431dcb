"""The fault tests: ``python -m tests.faults [--share] [--seed N] [PART ...]``.

Real processes and real files come to harm many times; what was saved has to stand afterwards.
``--share`` does a small part of it, as every test run does. The seed is printed, so that a failure
can be repeated (as far as moments of time can be).
"""

from __future__ import annotations

import argparse
import tempfile
import time
from importlib import import_module
from pathlib import Path
from random import Random

PARTS = ("kill", "full", "read_only", "damage", "opening", "fuzz", "session")
"""Modules of tests.fault_parts. Each has FULL and SHARE (how many times), and ``run``."""


def main() -> int:
    """Run the parts asked for (all by default) and print their figures; 1 where one failed."""
    parser = argparse.ArgumentParser(prog="python -m tests.faults", description=__doc__)
    parser.add_argument("part", nargs="*", help=f"of {', '.join(PARTS)}; all by default")
    parser.add_argument("--share", action="store_true", help="a small part of each")
    parser.add_argument("--seed", type=int, default=1)
    given = parser.parse_args()
    failed = False
    for name in given.part or PARTS:
        failed |= not _run(name, given.share, given.seed)
    return int(failed)


def _run(name: str, share: bool, seed: int) -> bool:
    part = import_module(f"tests.fault_parts.{name}")
    count = part.SHARE if share else part.FULL
    began = time.perf_counter()
    with tempfile.TemporaryDirectory(prefix="rungwise-faults-") as folder:
        try:
            for line in part.run(count, Random(seed), Path(folder)):
                print(f"{name}: {line}", flush=True)
        except AssertionError as error:
            print(f"{name}: FAILED (seed {seed}): {error}", flush=True)
            return False
    print(f"{name}: {time.perf_counter() - began:.1f} s", flush=True)
    return True


if __name__ == "__main__":
    raise SystemExit(main())
