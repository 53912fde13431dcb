"""Reading notes: `read_notes` proposes sets beside a text; nothing is saved.

What is certain is taken, what is doubtful carries its question, and words that nothing came of
stay visible in their places. No number is proposed that the text does not hold, but for units
converted, minutes as seconds, and ratings of effort as repetitions in reserve.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import Final

from desktop.notes.building import Building
from desktop.notes.dates import Heading, heading_at
from desktop.notes.groups import Answers, by_place
from desktop.notes.items import Item, Kind, items_of, lowered
from desktop.notes.known import Known, KnownExercise
from desktop.notes.names import Named, Names, plain_words
from desktop.notes.parts import parts_of
from desktop.notes.reading import (
    Alternative,
    Answer,
    Doubt,
    NotedDay,
    PartKind,
    Question,
    Reading,
    Span,
)
from desktop.notes.segments import Segment, is_strong, segments_of
from desktop.notes.variations import set_up_of

_BULLET: Final = re.compile(
    r"[ \t]*(?:\[[ x✓]?\][ \t]*|[-*•·–—>#]+[ \t]+|#+|[0-9]{1,2}[.)][ \t]+(?=[^\W\d_])"
    r"|[a-h][0-9]?[.):][ \t]+|[a-h][0-9][ \t]+(?=[^\W\d_])|[^\w\s+@\-−/(.\"'×]+[ \t]*)"
)


def read_notes(text: str, known: Known, answers: Sequence[Answer] = ()) -> Reading:
    """Read ``text``; the same text, ``known`` and ``answers`` always give the same reading.

    Any text gives a reading. An answer settles the question of its place (see
    `Question.answered`), or says which exercise a name means even where nothing was asked.
    """
    reading = _Notes(text, known, by_place(answers))
    reading.read()
    return Reading(text, known.unit, reading.days(), parts_of(text, reading.marks))


@dataclass(slots=True)
class _Open:
    """An entry that may go on in the next line, and what its name asks."""

    building: Building
    line: str = ""
    asked: list[Question] = field(default_factory=list)


@dataclass(slots=True)
class _Day:
    day: date
    heading: Span | None = None
    entries: list[_Open] = field(default_factory=list)
    questions: list[Question] = field(default_factory=list)


class _Notes:
    """The text while it is read, line by line."""

    def __init__(self, text: str, known: Known, answers: Answers) -> None:
        self._text = text
        self._low = lowered(text)
        self._known = known
        self._answers = answers
        self._names = Names(known)
        self._days = [_Day(known.day)]
        self._open: _Open | None = None
        self._title: Item | None = None
        self._after_gap = False
        self.marks: dict[Span, PartKind] = {}

    def read(self) -> None:
        """Read every line."""
        at = 0
        for line in self._low.splitlines(keepends=True):
            self._line(at, at + len(line.rstrip()))
            at += len(line)

    def days(self) -> tuple[NotedDay, ...]:
        """What was noted, by day as it stands in the text; days without anything left out."""
        return tuple(
            NotedDay(
                one.day,
                one.heading,
                tuple(
                    each.building.entry(self._answers, each.line, each.asked)
                    for each in one.entries
                ),
                tuple(one.questions),
            )
            for one in self._days
            if one.entries or one.heading is not None
        )

    # --- lines --------------------------------------------------------------------------------

    def _line(self, start: int, end: int) -> None:
        at = self._date(start, end)
        if at == start:
            at = self._date(self._bullets(start, end), end)
        at = self._bullets(at, end)
        items = items_of(self._low, at, end, self._names)
        if not items:
            self._after_gap = not self._low[start:end].strip()
            self._title = None if self._after_gap else self._title
            return
        self._after_gap = False
        segments = segments_of(self._low, items)
        for number, segment in enumerate(segments):
            self._segment(segment, first=number == 0)

    def _bullets(self, at: int, end: int) -> int:
        while (found := _BULLET.match(self._low, at, end)) and found.end() > at:
            self.marks[Span(at, found.end())] = PartKind.MARK
            at = found.end()
        return at

    def _date(self, at: int, end: int) -> int:
        opened = self._open is not None and self._open.building.wants_numbers
        known = self._known
        found = heading_at(
            self._low,
            at,
            end,
            known.day,
            known.day_first,
            numbers_open=opened and not self._after_gap,
        )
        if found is None:
            return at
        span = Span(at, found.text_end)
        self.marks[span] = PartKind.DATE
        self._begin_day(span, found)
        return found.end

    def _begin_day(self, span: Span, found: Heading) -> None:
        meant = self._answers.get((Doubt.DATE, span))
        day = _Day(found.day if meant is None or meant.day is None else meant.day, span)
        if found.others and meant is None:
            days = (found.day, *found.others)
            alternatives = tuple(Alternative(day=each) for each in days)
            day.questions.append(Question(Doubt.DATE, span, alternatives))
        self._days.append(day)
        self._open = self._title = None

    # --- segments -----------------------------------------------------------------------------

    def _segment(self, segment: Segment, *, first: bool) -> None:
        name = segment.name
        if name is None:
            self._unnamed(segment, first=first)
            return
        named = self._named(name)
        works = any(is_strong(item, weak=True) for item in segment.items)
        alone = not segment.items
        if named.rest and not works and not (alone and not named.rest):
            self._into_open(segment.items)
            return
        self._begin(named, name, segment.items)

    def _named(self, item: Item) -> Named:
        """What a run names, with the rest that set-up and line names explain taken out."""
        named = self._names.named(item.run)
        meant = self._answers.get((Doubt.EXERCISE, named.span))
        if meant is not None and meant.exercise is not None:
            return Named(meant.exercise, True, named.span, helped=named.helped)
        return named

    def _unnamed(self, segment: Segment, *, first: bool) -> None:
        items = segment.items
        head = items[0]
        if head.kind is Kind.RUN and first:
            strong = [is_strong(item) for item in items[1:3]]
            named = self._named(head)
            if len(items) == 1:
                self._alone(head, named)
                return
            weak = any(is_strong(item, weak=True) for item in items[1:3])
            if (named.sure and weak) or any(strong):
                self._begin(named, head, items[1:])
                return
            self._tell(items)
            return
        if head.kind is Kind.RUN or not first:
            self._into_open(items)
            return
        if self._title is not None and any(map(is_strong, items)):
            title, self._title = self._title, None
            self._begin(self._named(title), title, items)
            return
        if self._open is None and any(map(is_strong, items)):
            self._begin(None, None, items)
            return
        self._into_open(items)

    def _alone(self, head: Item, named: Named) -> None:
        """A line of words alone: a name that what follows belongs to, or just words."""
        if named.sure and named.exercise is not None:
            self._begin(named, head, ())
        else:
            self._title = head

    def _tell(self, items: Sequence[Item]) -> None:
        """A line of words: of what it tells only pain and notes go to the open entry."""
        told = [item for item in items if item.kind in (Kind.PAIN, Kind.NOTE)]
        if told:
            self._into_open(told)

    def _into_open(self, items: Sequence[Item]) -> None:
        if self._open is not None and items:
            if all(item.kind in (Kind.PAIN, Kind.NOTE, Kind.RUN, Kind.STOP) for item in items):
                self._pain_alone(items)
            self._open.building.take(items)

    def _pain_alone(self, items: Sequence[Item]) -> None:
        """Pain told in a line of its own: whose it is, is asked."""
        pain = next((item for item in items if item.kind is Kind.PAIN and item.numbers), None)
        assert self._open is not None, "there is an entry to ask about"
        if pain is None or (Doubt.PAIN, pain.span) in self._answers:
            return
        line_start = self._low.rfind("\n", 0, pain.span.start) + 1
        if self._open.building.name is None or self._open.building.name.start < line_start:
            key = self._open.building.exercise
            alternatives = (Alternative(exercise=key.key),) if key else ()
            self._open.asked.append(Question(Doubt.PAIN, pain.span, alternatives))

    def _begin(self, named: Named | None, name: Item | None, items: Sequence[Item]) -> None:
        """Begin an entry with what belongs to it."""
        nameless = (Doubt.EXERCISE, items[0].span.to(items[-1].span) if items else Span(0, 0))
        key = named.exercise if named else None
        if named is None and nameless in self._answers:
            key = self._answers[nameless].exercise
        exercise = self._names.get(key)
        span = named.span if named else None
        building = Building(
            exercise,
            span,
            self._known,
            self._low,
            self.marks,
            helped=named is not None and named.helped,
            earlier=self._earlier(exercise),
        )
        opened = _Open(building)
        if named is not None and name is not None:
            self._explain(opened, named, exercise)
        elif nameless not in self._answers:
            opened.asked.append(Question(*nameless))
        self._days[-1].entries.append(opened)
        self._open = opened
        self._title = None
        building.take(items)

    def _earlier(self, exercise: KnownExercise | None) -> Building | None:
        """The last entry of the same exercise."""
        built = [one.building for day in self._days for one in day.entries]
        return next((one for one in reversed(built) if one.exercise is exercise), None)

    def _explain(self, opened: _Open, named: Named, exercise: KnownExercise | None) -> None:
        """The name: what its other words say, and what is doubtful about it."""
        if exercise is not None:
            self.marks[named.span] = PartKind.NAME
        rest = list(named.rest)
        line_asked: list[Question] = []
        if exercise is not None:
            opened.line, rest, line_asked = self._line_name(exercise, named, rest)
            rest = self._set_up(opened.building, exercise, rest)
        unsure = bool(rest) if named.rest else not named.sure
        if unsure:
            candidates = dict.fromkeys(
                (*((named.exercise,) if named.exercise else ()), *named.candidates)
            )
            before = self._open.building.exercise if self._open else None
            if before is not None:
                candidates.setdefault(before.key)
            alternatives = tuple(Alternative(exercise=key) for key in candidates)
            opened.asked.append(Question(Doubt.EXERCISE, named.span, alternatives))
        opened.asked += line_asked

    def _line_name(
        self, exercise: KnownExercise, named: Named, rest: list[tuple[str, Span]]
    ) -> tuple[str, list[tuple[str, Span]], list[Question]]:
        """Which of the exercise's lines is meant: one that is named, or the only one."""
        for line in sorted(exercise.lines, key=len, reverse=True):
            told = plain_words(line)
            for at in range(len(rest) - len(told) + 1):
                part = rest[at : at + len(told)]
                if told and tuple(word for one, _ in part for word in plain_words(one)) == told:
                    for _, span in part:
                        self.marks[span] = PartKind.NAME
                    return line, [*rest[:at], *rest[at + len(told) :]], []
        if len(exercise.lines) < 2:
            return next(iter(exercise.lines), ""), rest, []
        meant = self._answers.get((Doubt.LINE, named.span))
        if meant is not None and meant.line in exercise.lines:
            return meant.line or "", rest, []
        alternatives = tuple(Alternative(line=each) for each in exercise.lines)
        return exercise.lines[0], rest, [Question(Doubt.LINE, named.span, alternatives)]

    def _set_up(
        self, building: Building, exercise: KnownExercise, rest: list[tuple[str, Span]]
    ) -> list[tuple[str, Span]]:
        told = set_up_of(exercise, [word for word, _ in rest], self._known, beside_name=True)
        if told.key is None:
            return rest
        building.written.set_up(told.key)
        for at in told.used:
            self.marks[rest[at][1]] = PartKind.WORK
        return [one for at, one in enumerate(rest) if at not in told.used]
