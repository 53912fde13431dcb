"""Reading notes: how well, on a corpus half of which was held out, and how fast."""

from __future__ import annotations

import re
from collections.abc import Iterator

from desktop.notes.reader import read_notes
from tests.benches.measure import Line, medians
from tests.notes.corpus import KNOWN, Score, corpus, held_out, score, tuned

LEAST_PRECISION = 0.99
LEAST_RECALL = 0.9


def lines() -> Iterator[Line]:
    """Time for a page of notes, against finding its numbers alone; misread shares as figures."""
    text = "\n".join(noted.text for noted in corpus())
    number = re.compile(r"[0-9]+(?:[.,][0-9]+)?")
    ours, floor = medians(3, lambda: read_notes(text, KNOWN), lambda: number.findall(text))
    yield Line(f"notes, {text.count(chr(10)) + 1} lines read", ours, floor, "numbers found")
    once, _ = medians(5, lambda: read_notes("squat 3x5 100kg", KNOWN), int)
    yield Line("notes, one line read", once)
    for name, half in (("tuned on", tuned()), ("held out", held_out())):
        found = score(half)
        wrong, missed = 100 * (1 - found.precision), 100 * (1 - found.recall)
        yield Line(f"notes {name}: taken as certain, but wrong", wrong, unit="%", goal=1)
        yield Line(f"notes {name}: certain to a coach, but not taken", missed, unit="%", goal=10)


def tables() -> Iterator[str]:
    """Precision and recall of what is taken as certain, of either half."""
    for name, half in (("tuned on", tuned()), ("held out", held_out())):
        yield f"notes {name:<9} {told(score(half))}"


def told(found: Score) -> str:
    """A score in words."""
    return (
        f"{found.lines} lines: certain {found.right} right of {found.taken} taken "
        f"(precision {found.precision:.3f}), of {found.wanted} to take "
        f"(recall {found.recall:.3f}); proposed as expected {found.proposed} of "
        f"{found.expected} sets"
    )
