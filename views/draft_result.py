"""A draft as it came out: its days with a reason for every exercise, and why the week is so."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import QGridLayout, QVBoxLayout, QWidget

from desktop.planning.drafts import Draft, Explanation, Relaxation, Why
from desktop.training.exercises import Exercise
from desktop.training.program import Program, TrainingDay
from views import words
from views.blocks import Block, Label, WordButton
from views.day_words import day_name
from views.draft_texts import explanation_text, relaxation_text
from views.phase_line import phase_name
from views.program_shelf import days_words
from views.theme import Theme

translate = QCoreApplication.translate

_OF_EXERCISES = (Why.CHOSEN, Why.RULE)
_OF_DAYS = (Why.MINUTES, Why.PAIRED)
_OF_MUSCLES = (Why.MUSCLE, Why.MUSCLE_SHORT)


class DraftResult(QWidget):
    """Shows a drafted program, or which wish to relax: ``relaxed(Relaxation)``."""

    relaxed = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.ways: list[WordButton] = []
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(theme.px(12))

    @property
    def texts(self) -> tuple[str, ...]:
        """Everything that is said, from the top."""
        return tuple(label.text() for label in self.findChildren(Label) if not label.isHidden())

    def clear(self) -> None:
        """Show nothing."""
        self.ways = []
        while (item := self._column.takeAt(0)) is not None:
            if (widget := item.widget()) is not None:
                widget.setParent(None)
                widget.deleteLater()

    def show_draft(self, draft: Draft, exercises: Mapping[str, Exercise]) -> None:
        """Show what came out."""
        self.clear()
        if draft.program is None:
            self._column.addWidget(self._impossible(draft.relaxations, exercises))
            return
        told = _Told(draft.explanations, exercises)
        program = draft.program
        self._column.addWidget(self._head(program))
        shown: set[str] = set()
        for day in program.phases[0].days:
            self._column.addWidget(self._day(day, told, shown))
        muscles = [told.text(one) for one in told.of(*_OF_MUSCLES)]
        for heading, texts in (
            (self.tr("Why this week"), told.of_week),
            (self.tr("Sets a week"), muscles),
        ):
            if texts:
                self._column.addWidget(self._reasons(heading, texts))

    def _head(self, program: Program) -> Block:
        block = Block(self._theme)
        block.body.setSpacing(self._theme.px(4))
        block.body.addWidget(Label(program.name, "title", wrap=True))
        days = max(len(phase.days) for phase in program.phases)
        phases = [
            f"{phase_name(phase)} {words.weeks(phase.weeks)}"
            for phase in program.phases
            if len(program.phases) > 1
        ]
        parts = (words.weeks(program.weeks), days_words(days), *phases)
        block.body.addWidget(Label(words.DOT.join(parts), tone="muted", wrap=True))
        block.body.addWidget(Label(program.about, wrap=True))
        return block

    def _day(self, day: TrainingDay, told: _Told, shown: set[str]) -> Block:
        """One day: each exercise with why and how; on a later day only its name again."""
        block = Block(self._theme)
        block.body.addWidget(Label(day_name(day), "heading", wrap=True))
        grid = QGridLayout()
        grid.setHorizontalSpacing(self._theme.grid(2))
        grid.setVerticalSpacing(self._theme.px(5))
        grid.setColumnMinimumWidth(0, self._theme.px(210))
        grid.setColumnStretch(0, 2)
        grid.setColumnStretch(1, 5)
        top = Qt.AlignmentFlag.AlignTop
        for row, slot in enumerate(day.slots):
            name = told.name(slot.exercise)
            pair = f"  {slot.pair}" if slot.pair else ""
            grid.addWidget(Label(f"{name}{pair}", wrap=True), row, 0, top)
            again = slot.exercise in shown
            shown.add(slot.exercise)
            text = translate("Drafts", "as above") if again else told.why(slot.exercise)
            grid.addWidget(Label(text, tone="muted", wrap=True), row, 1, top)
        block.body.addLayout(grid)
        for text in told.of_day(day):
            block.body.addWidget(Label(text, "small", "muted", wrap=True))
        return block

    def _reasons(self, heading: str, texts: Sequence[str]) -> Block:
        block = Block(self._theme)
        block.body.setSpacing(self._theme.px(4))
        block.body.addWidget(Label(heading, "heading"))
        for text in texts:
            block.body.addWidget(Label(text, wrap=True))
        return block

    def _impossible(self, ways: Sequence[Relaxation], exercises: Mapping[str, Exercise]) -> Block:
        block = Block(self._theme)
        said = self.tr("These wishes cannot be met together")
        block.body.addWidget(Label(said, "heading", wrap=True))
        more = (
            self.tr("Relax one of them; each of these was tried, and leads to a program.")
            if ways
            else self.tr(
                "No single wish helps if it alone is relaxed: change two of them, such as more "
                "minutes and less to avoid."
            )
        )
        block.body.addWidget(Label(more, tone="muted", wrap=True))
        for way in ways:
            button = WordButton(relaxation_text(way, exercises), strong=True)
            button.setToolTip(self.tr("Relax this wish and draft again"))
            button.clicked.connect(lambda _on=False, way=way: self.relaxed.emit(way))
            self.ways.append(button)
            block.body.addWidget(button)
        return block


class _Told:
    """The explanations of one draft, by what they explain."""

    def __init__(self, said: Sequence[Explanation], exercises: Mapping[str, Exercise]) -> None:
        self._said, self._exercises = said, exercises

    @property
    def of_week(self) -> list[str]:
        """What is said of the week as a whole."""
        elsewhere = (*_OF_EXERCISES, *_OF_DAYS, *_OF_MUSCLES)
        return [self.text(one) for one in self._said if one.code not in elsewhere]

    def of(self, *codes: Why) -> Iterator[Explanation]:
        """The explanations with these codes."""
        return (one for one in self._said if one.code in codes)

    def text(self, said: Explanation) -> str:
        """An explanation in words."""
        return explanation_text(said, self._exercises)

    def name(self, key: str) -> str:
        """An exercise's name."""
        exercise = self._exercises.get(key)
        return exercise.name if exercise else key

    def why(self, key: str) -> str:
        """Why an exercise was chosen, and its rule; without its name, which stands beside it."""
        said = [self.text(one) for one in self.of(*_OF_EXERCISES) if one["exercise"] == key]
        return ". ".join(self._without_name(text, key) for text in said)

    def of_day(self, day: TrainingDay) -> Iterator[str]:
        """What is said of a day, without its name, which stands above it."""
        for one in self.of(*_OF_DAYS):
            if one["day"] in (day.name, day.weekday):
                name = day.name if one.code is Why.MINUTES else words.weekday(day.weekday or 0)
                yield _capital(self.text(one).removeprefix(f"{_capital(name)}: "))

    def _without_name(self, text: str, key: str) -> str:
        return _capital(text.removeprefix(f"{self.name(key)}: "))


def _capital(text: str) -> str:
    return f"{text[:1].upper()}{text[1:]}"
