"""One open caution: what is seen, where it comes from, what can be done, and setting it aside."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QWidget

from desktop.planning.caution_ways import Way, WayKind
from desktop.training.limits import Severity
from desktop.training.recovery import Caution
from desktop.training.session import Session
from views import words
from views.blocks import Block, Label, Tone, WordButton
from views.caution_texts import severity_word
from views.clearance_form import ClearanceForm
from views.flow_layout import FieldFlow
from views.language import source_said
from views.severity_mark import SeverityMark
from views.theme import Theme


@dataclass(frozen=True, slots=True)
class CautionWords:
    """A caution as it is shown: its sentence, its ways with their words, its sessions."""

    caution: Caution
    sentence: str
    ways: Sequence[tuple[Way, str]]
    sessions: Sequence[Session]


class CautionRow(Block):
    """``taken(Caution, Way)``, ``dismissed(Caution, why)``, ``session_wanted(id)``,
    ``cleared(Clearance)``. A stop can only be cleared, never set aside.
    """

    taken = Signal(object, object)
    dismissed = Signal(object, str)
    session_wanted = Signal(int)
    cleared = Signal(object)

    def __init__(
        self, theme: Theme, today: date, shown: CautionWords, parent: QWidget | None = None
    ) -> None:
        super().__init__(theme, parent=parent)
        self.caution = shown.caution
        self._look, self._today = theme, today
        self.form: ClearanceForm | None = None
        self.ways: list[WordButton] = []
        self.aside = WordButton(self.tr("Not now"), flush=True, tone="muted")
        self.reason = QLineEdit()
        self.reason.setPlaceholderText(self.tr("Why not now? Return keeps it with the record"))
        self.reason.setAccessibleName(self.tr("Why this caution is set aside"))
        self.reason.hide()
        self._say(shown)
        self._offer(shown)
        self.body.addWidget(self.reason)
        self.aside.clicked.connect(self._ask_reason)
        self.reason.returnPressed.connect(
            lambda: self.dismissed.emit(self.caution, self.reason.text().strip())
        )

    def ask_clearance(self) -> None:
        """Open the form for a clearance, with the cursor in it."""
        if self.form is None:
            self.form = ClearanceForm(self._look, self._today)
            self.form.recorded.connect(self.cleared)
            self.form.given_up.connect(self._close_form)
            self.body.addWidget(self.form)
        self.form.show()
        self.form.begin()

    def _say(self, shown: CautionWords) -> None:
        severity = shown.caution.severity
        tones: dict[Severity, Tone] = {Severity.STOP: "stop", Severity.CAUTION: "caution"}
        top = Qt.AlignmentFlag.AlignTop
        line = QHBoxLayout()
        line.setSpacing(self._look.px(10))
        line.addWidget(SeverityMark(self._look, severity.value), 0, top)
        line.addWidget(
            Label(severity_word(severity.value), tone=tones.get(severity, "text")), 0, top
        )
        sentence = Label(shown.sentence, wrap=True)
        sentence.setAlignment(top)
        line.addWidget(sentence, 1)
        self.body.addLayout(line)
        self.setAccessibleName(f"{severity_word(severity.value)}: {shown.sentence}")
        source = self.tr("Source: {source}").format(source=source_said(shown.caution.source))
        self.body.addWidget(Label(source, "small", "muted", wrap=True))

    def _offer(self, shown: CautionWords) -> None:
        made = QWidget()
        flow = FieldFlow(self._look.px(16), self._look.px(2), made, centred=True)
        for place, (way, text) in enumerate(shown.ways):
            button = WordButton(text, strong=not place, flush=True)
            button.clicked.connect(lambda _on=False, way=way: self._take(way))
            self.ways.append(button)
            flow.addWidget(button)
        for session in shown.sessions:
            text = self.tr("Session of {day}")
            link = WordButton(
                text.format(day=words.short_day(session.day, self._today)), tone="muted"
            )
            link.clicked.connect(lambda _on=False, session=session: self._open(session))
            flow.addWidget(link)
        if shown.caution.severity is not Severity.STOP:
            flow.addWidget(self.aside)
        else:
            self.aside.hide()
        self.body.addWidget(made)

    def _take(self, way: Way) -> None:
        if way.kind is WayKind.CLEARANCE:
            self.ask_clearance()
        else:
            self.taken.emit(self.caution, way)

    def _open(self, session: Session) -> None:
        if session.id is not None:
            self.session_wanted.emit(session.id)

    def _ask_reason(self) -> None:
        self.reason.clear()
        self.reason.show()
        self.reason.setFocus(Qt.FocusReason.OtherFocusReason)

    def _close_form(self) -> None:
        if self.form is not None:
            self.form.hide()
        if self.ways:
            self.ways[0].setFocus(Qt.FocusReason.OtherFocusReason)
