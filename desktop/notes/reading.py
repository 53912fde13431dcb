"""What was read: days, entries and sets beside the text, with every question that is open.

A reading never changes: to settle a question, read the same text again with the answer added.
All positions are character offsets in the text that was read.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from desktop.training.quantities import Unit


@dataclass(frozen=True, slots=True, order=True)
class Span:
    """A stretch of the text: from ``start`` up to, not including, ``end``."""

    start: int
    end: int

    def of(self, text: str) -> str:
        """What stands there."""
        return text[self.start : self.end]

    def to(self, other: Span) -> Span:
        """The stretch from the first of both to the last."""
        return Span(min(self.start, other.start), max(self.end, other.end))


class PartKind(StrEnum):
    """What a stretch of the text was taken for. ``UNREAD`` holds words that nothing came of,
    ``PLAIN`` only gaps and punctuation.
    """

    DATE = "date"
    NAME = "name"
    WORK = "work"
    NOTE = "note"
    MARK = "mark"
    UNREAD = "unread"
    PLAIN = "plain"


@dataclass(frozen=True, slots=True)
class Part:
    """One stretch and what it was taken for; all parts together are the whole text, in order."""

    kind: PartKind
    span: Span


class Doubt(StrEnum):
    """What is doubtful."""

    EXERCISE = "exercise"
    """Which exercise a name means."""
    LINE = "line"
    """Which of several lines of the exercise."""
    VARIATION = "variation"
    """Words that say how it was set up, but not clearly."""
    ORDER = "order"
    """Which number is load, repetitions or sets."""
    AT = "at"
    """Whether what stands behind @ is a load or an effort."""
    LOAD = "load"
    """No load is given, or it is not clear that one given elsewhere holds."""
    UNIT = "unit"
    """A number without unit behind one in the other unit."""
    DECIMAL = "decimal"
    """Whether a comma is a decimal mark or stands between two numbers."""
    RANGE = "range"
    """A range instead of a number."""
    SIDES = "sides"
    """Whether two numbers are two sets or two sides."""
    EFFORT = "effort"
    """A rating that stands for several numbers in reserve, or for none."""
    REPEAT = "repeat"
    """Words such as "same": what is meant again."""
    AMOUNT = "amount"
    """Repetitions or seconds are missing, or of the other kind."""
    SCHEME = "scheme"
    """Words that change what numbers mean, such as "total"."""
    LEFT_OVER = "left over"
    """A number that belongs to nothing."""
    PAIN = "pain"
    """Whose pain a line of its own tells."""
    DATE = "date"
    """Which day is meant."""


@dataclass(frozen=True, slots=True)
class ReadSet:
    """One set as read. Load in grams per implement, signed for bodyweight; None: not known.

    ``rir`` None is unknown. ``variation`` None: not said. ``span`` is the stretch it was read
    from, which sets written together share. Not ``certain``: a question hangs on it.
    """

    load_g: int | None = None
    reps: int | None = None
    seconds: int | None = None
    variation: str | None = None
    rir: float | None = None
    warm_up: bool = False
    side: str = ""
    certain: bool = True
    span: Span = Span(0, 0)


@dataclass(frozen=True, slots=True)
class Alternative:
    """One answer to a question: whatever it gives holds instead of what was read.

    ``sets`` stand for the sets of the stretch (an empty tuple: they are left out); ``load_g`` and
    ``rir`` go to all of them.
    """

    sets: tuple[ReadSet, ...] | None = None
    exercise: str | None = None
    line: str | None = None
    day: date | None = None
    load_g: int | None = None
    rir: float | None = None


@dataclass(frozen=True, slots=True)
class Answer:
    """A question that was settled: what was doubtful, where, and what is meant."""

    doubt: Doubt
    span: Span
    meant: Alternative


@dataclass(frozen=True, slots=True)
class Question:
    """What is doubtful and where; ``alternatives`` the likeliest first, which is what is proposed.

    There may be none: then only a value of the coach's own settles it.
    """

    doubt: Doubt
    span: Span
    alternatives: tuple[Alternative, ...] = ()

    def answered(self, meant: Alternative) -> Answer:
        """The answer to read again with."""
        return Answer(self.doubt, self.span, meant)


@dataclass(frozen=True, slots=True)
class Entry:
    """One exercise as noted: ``exercise`` is its key, None where it is not known.

    ``name`` is the stretch that names it (None: it goes on from an entry before), ``line`` the
    line's name. ``pain`` 0-10 was told with it. ``notes``: rest, tempo, pain as written.
    """

    exercise: str | None
    name: Span | None
    line: str = ""
    sets: tuple[ReadSet, ...] = ()
    questions: tuple[Question, ...] = ()
    pain: int = 0
    notes: tuple[Span, ...] = ()


@dataclass(frozen=True, slots=True)
class NotedDay:
    """What was noted for one day; ``heading`` is where the date stands, None where none does."""

    day: date
    heading: Span | None = None
    entries: tuple[Entry, ...] = ()
    questions: tuple[Question, ...] = ()


@dataclass(frozen=True, slots=True)
class Reading:
    """A whole text as read, in ``unit``."""

    text: str
    unit: Unit
    days: tuple[NotedDay, ...] = ()
    parts: tuple[Part, ...] = ()

    @property
    def entries(self) -> tuple[Entry, ...]:
        """The entries of all days."""
        return tuple(entry for day in self.days for entry in day.entries)

    @property
    def questions(self) -> tuple[Question, ...]:
        """Every open question, in the order of the text."""
        asked = [question for day in self.days for question in day.questions]
        asked += [question for entry in self.entries for question in entry.questions]
        return tuple(sorted(asked, key=lambda question: question.span))

    @property
    def unread(self) -> tuple[Span, ...]:
        """The words that nothing came of."""
        return tuple(part.span for part in self.parts if part.kind is PartKind.UNREAD)

    def line_number(self, span: Span) -> int:
        """The line of the text, from 1, in which a stretch begins."""
        return self.text.count("\n", 0, span.start) + 1
