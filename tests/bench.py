"""The benchmark: ``python -m tests.bench [--json] [PART ...]``.

Every figure stands beside a floor or a peer measured in the same run, because machines differ and
are noisy; the ratio is what counts.
"""

from __future__ import annotations

import argparse
import json
import os
from importlib import import_module

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

PARTS = ("arriving", "charts", "editing", "editor", "model", "start", "store", "typing", "notes")


def main() -> int:
    """Print the lines of the parts asked for (all by default); 0 whatever they say."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench", description=__doc__)
    parser.add_argument("part", nargs="*", help=f"one of {', '.join(PARTS)}; all by default")
    parser.add_argument("--json", action="store_true", help="print a list of objects")
    given = parser.parse_args()
    found = []
    for name in given.part or PARTS:
        part = import_module(f"tests.benches.{name}")
        for line in part.lines():
            found.append(line.as_data())
            if not given.json:
                print(line.as_text(), flush=True)
        if not given.json:
            for text in getattr(part, "tables", tuple)():
                print(text, flush=True)
    if given.json:
        print(json.dumps(found, indent=1))
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
