"""The caution banner: what speaks against asking for more, why, and what can be done."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QFrame, QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from desktop.training.quantities import Unit
from desktop.training.recovery import Caution
from views import words
from views.blocks import Label, WordButton, restyle
from views.caution_texts import Limits, caution_text, proposal_text, severity_word
from views.language import source_said
from views.severity_mark import SeverityMark
from views.theme import Theme

_BESIDE = 800

LineNames = Callable[[int | None], str]


class CautionBanner(QFrame):
    """One caution at a time, the most serious first; hidden where there is none.

    ``proposed(Caution)``: do what it proposes. ``dismissed(Caution, str)``: set it aside, and why.
    """

    proposed = Signal(object)
    dismissed = Signal(object, str)

    def __init__(
        self, theme: Theme, today: date, limits: Callable[[], Limits], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._today = today
        self._limits = limits
        self._cautions: tuple[Caution, ...] = ()
        self._unit = Unit.KG
        self._names: LineNames = lambda _line_id: ""
        self._at = 0
        self.setProperty("kind", "banner")
        self._mark = SeverityMark(theme)
        self._word = Label()
        self._text = Label(wrap=True)
        self._source = Label(size="small", tone="muted", wrap=True)
        self._reason = QLineEdit()
        self._reason.setPlaceholderText(self.tr("Why not now? Return keeps it with the record"))
        self._reason.setAccessibleName(self.tr("Why this caution is set aside"))
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

    def _connect(self) -> None:
        self._do.clicked.connect(lambda: self.proposed.emit(self.current))
        self._why.clicked.connect(lambda: self._source.setVisible(self._source.isHidden()))
        self._aside.clicked.connect(self._ask_reason)
        self._reason.returnPressed.connect(self._set_aside)
        self._more.clicked.connect(self._next)

    def _show(self) -> None:
        caution = self.current
        self.setVisible(caution is not None)
        self._source.hide()
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

    def _ask_reason(self) -> None:
        self._reason.clear()
        self._reason.show()
        self._reason.setFocus(Qt.FocusReason.OtherFocusReason)

    def _set_aside(self) -> None:
        caution = self.current
        if caution is not None:
            self.dismissed.emit(caution, self._reason.text().strip())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Where there is little room, the actions stand under the sentence."""
        narrow = event.size().width() < self._theme.px(_BESIDE)
        ways = QBoxLayout.Direction
        self._line.setDirection(ways.TopToBottom if narrow else ways.LeftToRight)
        super().resizeEvent(event)
