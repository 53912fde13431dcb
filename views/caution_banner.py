"""The caution banner: what speaks against asking for more, why, and what can be done."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import (
    QApplication,
    QBoxLayout,
    QFrame,
    QHBoxLayout,
    QVBoxLayout,
    QWidget,
)

from desktop.training.quantities import Unit
from desktop.training.recovery import Caution
from views import words
from views.blocks import Label, WordButton, restyle
from views.caution_texts import Limits, caution_text, proposal_text, severity_word
from views.language import source_said
from views.reason_field import ReasonField
from views.severity_mark import SeverityMark
from views.theme import Theme

if TYPE_CHECKING:
    from views.caution_acts import CautionWords
    from views.caution_ways_row import CautionWaysRow

_BESIDE = 800

LineNames = Callable[[int | None], str]
Details = Callable[[Caution], "CautionWords | None"]


class CautionBanner(QFrame):
    """One caution at a time, the most serious first; hidden where there is none.

    What can be done about it and the sessions it rests on are asked of ``details`` when the coach
    wants to see them; None where they cannot be read. ``taken(Caution, Way)``: one of the ways.
    ``proposed(Caution)``: go where it can be dealt with. ``dismissed(Caution, str)``: set it aside,
    and why. ``session_wanted(id)``: look at a session.
    """

    taken = Signal(object, object)
    proposed = Signal(object)
    dismissed = Signal(object, str)
    session_wanted = Signal(int)

    def __init__(
        self,
        theme: Theme,
        today: date,
        limits: Callable[[], Limits],
        details: Details,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._today = today
        self._limits, self._details = limits, details
        self.ways: CautionWaysRow | None = None
        self._cautions: tuple[Caution, ...] = ()
        self._unit = Unit.KG
        self._names: LineNames = lambda _line_id: ""
        self._at = 0
        self.setProperty("kind", "banner")
        self._mark = SeverityMark(theme)
        self._word = Label()
        self._text = Label(wrap=True)
        self._source = Label(size="small", tone="muted", wrap=True)
        self._reason = ReasonField()
        self._do = WordButton("", strong=True)
        self._why = WordButton(self.tr("Why"))
        self._aside = WordButton(self.tr("Not now"), tone="muted")
        self._more = WordButton("", tone="muted")
        self._place()
        self._connect()
        self.hide()

    @property
    def current(self) -> Caution | None:
        """The caution shown."""
        return self._cautions[self._at] if self._cautions else None

    def show_cautions(self, cautions: Sequence[Caution], unit: Unit, names: LineNames) -> None:
        """Show the first of ``cautions``; ``names`` gives the words for a line's id."""
        same = self.current
        self._cautions = tuple(cautions)
        self._unit, self._names = unit, names
        self._at = self._cautions.index(same) if same in self._cautions else 0
        self._show()

    def hide_all(self) -> None:
        """Nobody is chosen."""
        self._cautions = ()
        self._show()

    def _place(self) -> None:
        said = QHBoxLayout()
        said.setSpacing(self._theme.px(10))
        top = Qt.AlignmentFlag.AlignTop
        said.addWidget(self._mark, 0, top)
        said.addWidget(self._word, 0, top)
        said.addWidget(self._text, 1)
        self._text.setAlignment(top)
        # The first line stands as high as the words beside it.
        above = (self._do.sizeHint().height() - self._text.fontMetrics().height()) // 2
        said.setContentsMargins(0, max(above, 0), 0, max(above, 0))
        actions = QHBoxLayout()
        actions.setSpacing(self._theme.px(4))
        actions.addStretch(1)
        for button in (self._do, self._why, self._aside, self._more):
            actions.addWidget(button)
        self._line = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._line.setSpacing(self._theme.grid())
        self._line.addLayout(said, 1)
        self._line.addLayout(actions)
        column = QVBoxLayout(self)
        column.setContentsMargins(
            self._theme.px(12), self._theme.px(6), self._theme.px(6), self._theme.px(6)
        )
        column.setSpacing(self._theme.px(4))
        column.addLayout(self._line)
        column.addWidget(self._source)
        column.addWidget(self._reason)
        self._column = column

    def _connect(self) -> None:
        self._do.clicked.connect(self._choose)
        self._why.clicked.connect(self._tell_why)
        self._aside.clicked.connect(self._reason.ask)
        self._reason.given.connect(lambda why: self.dismissed.emit(self.current, why))
        self._reason.left.connect(lambda: self._aside.setFocus(Qt.FocusReason.OtherFocusReason))
        self._more.clicked.connect(self._next)

    def _show(self) -> None:
        caution = self.current
        self.setVisible(caution is not None)
        self._fold()
        self._reason.hide()
        if caution is None:
            return
        severity = caution.severity.value
        self.setProperty("tone", severity)
        restyle(self)
        self._mark.set_severity(severity)
        self._word.setText(severity_word(severity))
        self._word.set_tone({"caution": "caution", "stop": "stop"}.get(severity, "text"))  # type: ignore[arg-type]
        line = self._names(caution.line_id)
        text = caution_text(caution, self._limits(), self._unit, self._today, line)
        self._text.setText(text)
        self.setAccessibleName(f"{severity_word(severity)}: {text}")
        self._source.setText(self.tr("Source: {source}").format(source=source_said(caution.source)))
        self._do.set_words(proposal_text(caution.proposal))
        self._aside.setVisible(severity != "stop")
        others = len(self._cautions) - 1
        self._more.setVisible(others > 0)
        self._more.set_words(
            self.tr("Next ({place} of {count})").format(
                place=words.number(self._at + 1), count=words.number(others + 1)
            )
        )
        self._more.setToolTip(self.tr("Show the next caution"))

    def _next(self) -> None:
        self._at = (self._at + 1) % max(1, len(self._cautions))
        self._show()

    def _choose(self) -> None:
        """What can be done in one step is offered here; for anything else there is a screen."""
        caution = self.current
        if caution is None:
            return
        shown = self._details(caution)
        if shown is None or not shown.in_one_step:
            self.proposed.emit(caution)
            return
        self._unfold(shown).ways[0].setFocus(Qt.FocusReason.OtherFocusReason)

    def _tell_why(self) -> None:
        """The source and the sessions, or no longer."""
        if not self._source.isHidden():
            self._fold()
            return
        caution = self.current
        shown = None if caution is None else self._details(caution)
        if shown is not None:
            self._unfold(shown)

    def _unfold(self, shown: CautionWords) -> CautionWaysRow:
        from views.caution_ways_row import CautionWaysRow

        self._fold()
        self.ways = CautionWaysRow(self._theme, self._today, shown.ways, shown.sessions)
        self.ways.taken.connect(lambda way: self.taken.emit(shown.caution, way))
        self.ways.session_wanted.connect(self.session_wanted)
        self._column.insertWidget(self._column.indexOf(self._reason), self.ways)
        self._source.show()
        QWidget.setTabOrder(self._more, self.ways.buttons[0])
        return self.ways

    def _fold(self) -> None:
        self._source.hide()
        if self.ways is not None:
            focus = QApplication.focusWidget()
            if focus is not None and self.ways.isAncestorOf(focus):
                self._do.setFocus(Qt.FocusReason.OtherFocusReason)
            self._column.removeWidget(self.ways)
            self.ways.hide()
            self.ways.deleteLater()
            self.ways = None

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Escape folds away what was unfolded."""
        if event.key() == Qt.Key.Key_Escape and not self._source.isHidden():
            self._fold()
            self._do.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Where there is little room, the actions stand under the sentence."""
        narrow = event.size().width() < self._theme.px(_BESIDE)
        ways = QBoxLayout.Direction
        self._line.setDirection(ways.TopToBottom if narrow else ways.LeftToRight)
        self._line.setSpacing(0 if narrow else self._theme.grid())  # words bring room of their own
        super().resizeEvent(event)
