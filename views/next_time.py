"""Next time: what a saved session meant, and what the next one asks, exercise by exercise."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date
from typing import Final

from PySide6.QtCore import QCoreApplication, Qt, QTimer, Signal
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QVBoxLayout, QWidget

from desktop.planning.assessment_starts import StartRead
from desktop.planning.outcomes import Effect, LineOutcome
from desktop.training.exercises import LoadingKind
from desktop.training.limits import Severity
from desktop.training.position import Position
from desktop.training.quantities import Unit
from desktop.training.reasons import Reason, ReasonCode
from desktop.training.recovery import Caution
from desktop.training.session import AskedSet, Outcome
from desktop.training.target import Target
from views import words
from views.assessment_words import start_text, start_why_text
from views.blocks import Block, Label, Page, Tone, WordButton
from views.exercise_words import short_strip, variation_name
from views.position_editor import PositionEditor
from views.reason_texts import outcome_text, reason_text, reasons_text
from views.session_texts import asked_text
from views.severity_mark import SeverityMark
from views.step_strip import StepStrip
from views.theme import Theme

translate = QCoreApplication.translate

_WIDE: Final = 840
OUTCOME_MARKS: Final[dict[Outcome, tuple[str, Tone]]] = {
    Outcome.EXCEEDED: ("▲", "good"),
    Outcome.MET: ("●", "good"),
    Outcome.IMPROVED: ("▲", "accent"),
    Outcome.PARTIAL: ("◖", "muted"),
    Outcome.MISSED: ("▼", "caution"),
    Outcome.SKIPPED: ("○", "muted"),
    Outcome.EXCLUDED: ("□", "muted"),
}


class NextTime(QWidget):
    """Shows the outcomes of one session. ``override_wanted(LineOutcome, Position, note)``."""

    override_wanted = Signal(object, object, str)

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme, self._today = theme, today
        self._page = Page(theme)
        self.rows: list[OutcomeBlock] = []
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self._page)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(self.tr("Next time"))

    def begin(self) -> None:
        """Take the cursor, so that keys act here; Tab goes to the words of each exercise."""
        self.setFocus(Qt.FocusReason.OtherFocusReason)

    def show_outcomes(
        self,
        outcomes: Sequence[LineOutcome],
        cautions: Sequence[tuple[Caution, str]],
        unit: Unit,
        effects: Sequence[Effect] | None,
        starts: Mapping[int, StartRead] | None = None,
    ) -> None:
        """Show what became of each line, cautions with their sentences, and for a session of
        the past what it changed (None: it was not of the past). ``starts``: what its tests
        changed, by line.
        """
        body = self._page.body
        self._clear()
        for caution, sentence in cautions:
            body.addWidget(_caution_row(self._theme, caution, sentence))
        if effects is not None and not effects:
            body.addWidget(Label(unchanged_text(), tone="muted", wrap=True))
        for outcome in outcomes:
            read = (starts or {}).get(outcome.line.id or 0)
            block = OutcomeBlock(self._theme, outcome, unit, self._today, read)
            block.override_wanted.connect(self.override_wanted)
            self.rows.append(block)
            body.addWidget(block)
        if not outcomes:
            body.addWidget(Label(self.tr("No exercise was recorded."), tone="muted"))
        body.addStretch(1)

    def show_stopped(
        self,
        outcomes: Sequence[LineOutcome],
        cautions: Sequence[tuple[Caution, str]],
        unit: Unit,
    ) -> None:
        """Show what became of each line, and ask for nothing: a licensed professional's clearance
        comes first.
        """
        body = self._page.body
        self._clear()
        for caution, sentence in cautions:
            body.addWidget(_caution_row(self._theme, caution, sentence))
        for outcome in outcomes:
            body.addWidget(_StoppedBlock(self._theme, outcome, unit))
        body.addStretch(1)

    def _clear(self) -> None:
        self.rows = []
        while (item := self._page.body.takeAt(0)) is not None:
            if (widget := item.widget()) is not None:
                widget.hide()
                widget.deleteLater()


class _StoppedBlock(Block):
    """One line of somebody of whom nothing may be asked: how it went, and no more."""

    def __init__(self, theme: Theme, outcome: LineOutcome, unit: Unit) -> None:
        super().__init__(theme)
        name = Label(line_name(outcome.exercise.name, outcome.line.name), "heading", wrap=True)
        why = reason_text(Reason(ReasonCode.CLEARANCE_NEEDED), unit)
        grid = QGridLayout()
        grid.setHorizontalSpacing(theme.px(16))
        grid.setColumnMinimumWidth(0, theme.px(220))
        grid.setColumnStretch(1, 1)
        top = Qt.AlignmentFlag.AlignTop
        grid.addWidget(_stacked(theme, name, _outcome_words(theme, outcome.outcome)), 0, 0, top)
        asked = Label(translate("Session", "nothing is asked"), "asked", "muted", wrap=True)
        grid.addWidget(_stacked(theme, asked, Label(why, "small", "muted", wrap=True)), 0, 1, top)
        self.body.addLayout(grid)


class OutcomeBlock(Block):
    """One line: how it went, what comes next and why, the strip, and the coach's own word."""

    override_wanted = Signal(object, object, str)

    def __init__(
        self,
        theme: Theme,
        outcome: LineOutcome,
        unit: Unit,
        today: date,
        read: StartRead | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(theme, parent=parent)
        self._outcome, self._unit = outcome, unit
        self.editor: PositionEditor | None = None
        name = Label(line_name(outcome.exercise.name, outcome.line.name), "heading", wrap=True)
        shown, said = change_text(outcome, unit), why_next(outcome.target, unit, today)
        if read is not None:
            shown = start_text(read, unit, outcome.state.surroundings)
            said = start_why_text(read, outcome.state.correctable)
        change = Label(shown, "asked", wrap=True)
        why = Label(said, "small", "caution" if read and read.why else "muted", wrap=True)
        self.change, self.why = change, why
        stood = outcome.strip_before if theme.slide_ms else ()
        self.strip = StepStrip(theme, short_strip(stood or outcome.strip), unit)
        self.override = WordButton(self.tr("Set otherwise"))
        self.override.setAccessibleName(
            self.tr("{exercise}: set the next target otherwise").format(exercise=name.text())
        )
        grid = self._grid = QGridLayout()
        grid.setColumnStretch(1, 3)
        top = Qt.AlignmentFlag.AlignTop
        day = Label(_day_text(outcome, today), "small", "muted")
        day.setContentsMargins(0, 0, theme.px(7), 0)
        went = Label(self.tr("a test"), "small") if read else _outcome_words(theme, outcome.outcome)
        grid.addWidget(_stacked(theme, name, went), 0, 0, top)
        grid.addWidget(_stacked(theme, change, why), 0, 1, top)
        grid.addWidget(_stacked(theme, self.override, day, right=True), 0, 3, top)
        self.body.addLayout(grid)
        self._narrow: bool | None = None
        self._fit()
        theme.changed.connect(self._fit)
        self.override.clicked.connect(self._edit)

    def _fit(self) -> None:
        """The strip stands beside the words where there is room, else under them."""
        px = self._theme.px
        narrow = self.width() < px(_WIDE)
        self._grid.setHorizontalSpacing(px(16))
        self._grid.setVerticalSpacing(px(6))
        self._grid.setColumnMinimumWidth(0, px(150 if narrow else 220))
        if narrow is self._narrow:
            return
        self._narrow = narrow
        self._grid.removeWidget(self.strip)
        self._grid.setColumnStretch(2, 0 if narrow else 2)
        if narrow:
            self._grid.addWidget(self.strip, 1, 1, 1, 3)
        else:
            self._grid.addWidget(self.strip, 0, 2, Qt.AlignmentFlag.AlignTop)

    def _roll(self) -> None:
        self.strip.set_strip(short_strip(self._outcome.strip))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def showEvent(self, event: QShowEvent) -> None:
        """The strip moves once it is seen and has its width."""
        super().showEvent(event)
        QTimer.singleShot(0, self, self._roll)

    def _edit(self) -> None:
        if self.editor is not None:
            self._close()
            return
        outcome = self._outcome
        around = outcome.state.surroundings
        position = outcome.target.position or outcome.state.position
        self.editor = PositionEditor(self._theme, outcome.exercise, around, position, self._unit)
        self.editor.position_set.connect(self._set)
        self.editor.given_up.connect(self._close)
        self.body.addWidget(self.editor)
        self.editor.show()
        self.editor.begin()

    def _set(self, position: Position, note: str) -> None:
        self._close()
        self.override_wanted.emit(self._outcome, position, note)

    def _close(self) -> None:
        if self.editor is not None:
            self.editor.hide()
            self.editor.deleteLater()
            self.editor = None
            self.override.setFocus(Qt.FocusReason.OtherFocusReason)


def change_text(outcome: LineOutcome, unit: Unit) -> str:
    """From what was asked to what comes: "3 × 9 at 60 kg → 3 × 10 at 60 kg"."""
    bodyweight = outcome.exercise.loading is LoadingKind.BODYWEIGHT
    before = _sets_text(outcome.asked, unit, outcome, bodyweight=bodyweight)
    after = _sets_text(outcome.target.sets, unit, outcome, bodyweight=bodyweight)
    if not after:
        after = translate("Session", "nothing is asked")
    if not before:
        return after
    if before == after:
        return translate("Session", "{work} again").format(work=after)
    return f"{before} {words.ARROW} {after}"


def effect_text(effect: Effect, unit: Unit) -> str:
    """What a change of the past does to one line's next target."""
    bodyweight = effect.exercise.loading is LoadingKind.BODYWEIGHT
    parts = [
        asked_text(target.sets, unit, bodyweight=bodyweight)
        or translate("Session", "nothing is asked")
        for target in (effect.before, effect.after)
    ]
    return f" {words.ARROW} ".join(parts)


def unchanged_text() -> str:
    """Why a corrected session of the past changes nothing."""
    return translate(
        "Session", "No target changes: training went on as asked, and that still stands."
    )


def why_next(target: Target, unit: Unit, today: date) -> str:
    """Why the next session asks this."""
    return reasons_text((*target.notes, target.reason), unit, today)


def line_name(exercise: str, name: str) -> str:
    """An exercise with its line's name."""
    return f"{exercise}, {name}" if name else exercise


def _sets_text(
    asked: Sequence[AskedSet], unit: Unit, outcome: LineOutcome, *, bodyweight: bool
) -> str:
    text = asked_text(asked, unit, bodyweight=bodyweight)
    keys = {each.variation for each in (*outcome.asked, *outcome.target.sets)}
    if not asked or len(keys) < 2:
        return text
    name = variation_name(asked[0].variation, outcome.state.surroundings, outcome.exercise)
    return f"{text}, {name}" if name else text


def _day_text(outcome: LineOutcome, today: date) -> str:
    day = words.short_day(outcome.next_day, today)
    if outcome.planned:
        return translate("Session", "on {day}").format(day=day)
    return translate("Session", "not planned yet")


def _outcome_words(theme: Theme, outcome: Outcome | None) -> QWidget:
    mark, tone = OUTCOME_MARKS.get(outcome, ("", "muted")) if outcome else ("", "muted")
    words_of = outcome_text(outcome) if outcome else translate("Session", "not judged")
    holder = QWidget()
    row = QHBoxLayout(holder)
    row.setContentsMargins(0, 0, 0, 0)
    row.setSpacing(theme.px(6))
    row.addWidget(Label(mark, "small", tone))
    row.addWidget(Label(words_of, "small", "text", wrap=True), 1)
    return holder


def _stacked(theme: Theme, *widgets: QWidget, right: bool = False) -> QWidget:
    holder = QWidget()
    column = QVBoxLayout(holder)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(theme.px(2))
    side = Qt.AlignmentFlag.AlignRight if right else Qt.AlignmentFlag(0)
    for widget in widgets:
        column.addWidget(widget, 0, side)
    return holder


def _caution_row(theme: Theme, caution: Caution, sentence: str) -> QWidget:
    row = QWidget()
    across = QHBoxLayout(row)
    across.setContentsMargins(theme.px(4), 0, 0, 0)
    across.setSpacing(theme.px(8))
    mark = SeverityMark(theme)
    mark.set_severity(caution.severity.value)
    tones: dict[Severity, Tone] = {Severity.STOP: "stop", Severity.CAUTION: "caution"}
    across.addWidget(mark)
    across.addWidget(Label(sentence, "body", tones.get(caution.severity, "text"), wrap=True), 1)
    return row
