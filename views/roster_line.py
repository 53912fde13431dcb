"""What the roster shows of a trainee: the name, one more line, and how urgent that is."""

from __future__ import annotations

from typing import NamedTuple


class RosterLine(NamedTuple):
    """``text`` is the line under the name, in the colour of the role ``tone``; ``severity`` is the
    mark beside the name ("" for none).
    """

    trainee_id: int
    name: str
    text: str = ""
    tone: str = "muted"
    severity: str = ""
