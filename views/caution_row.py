"""One open caution: what is seen, where it comes from, what can be done, and setting it aside."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QWidget

from desktop.planning.caution_ways import Way, WayKind
from desktop.training.limits import Severity
from views.blocks import Block, Label, Tone, WordButton
from views.caution_acts import CautionWords
from views.caution_texts import severity_word
from views.caution_ways_row import CautionWaysRow
from views.clearance_form import ClearanceForm
from views.language import source_said
from views.reason_field import ReasonField
from views.severity_mark import SeverityMark
from views.severity_words import word_width
from views.theme import Theme


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
        self.aside = WordButton(self.tr("Not now"), flush=True, tone="muted")
        self.reason = ReasonField()
        self._row = CautionWaysRow(theme, today, shown.ways, shown.sessions)
        self._say(shown)
        self._offer(shown)
        self.body.addWidget(self.reason)
        self.aside.clicked.connect(self.reason.ask)
        self.reason.given.connect(lambda why: self.dismissed.emit(self.caution, why))
        self.reason.left.connect(lambda: self.aside.setFocus(Qt.FocusReason.OtherFocusReason))

    @property
    def ways(self) -> list[WordButton]:
        """What can be done, as buttons."""
        return self._row.ways

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
        word = Label(severity_word(severity.value), tone=tones.get(severity, "text"))
        word.setMinimumWidth(word_width(self._look))
        line.addWidget(word, 0, top)
        sentence = Label(shown.sentence, wrap=True)
        sentence.setAlignment(top)
        line.addWidget(sentence, 1)
        self.body.addLayout(line)
        self.setAccessibleName(f"{severity_word(severity.value)}: {shown.sentence}")
        source = self.tr("Source: {source}").format(source=source_said(shown.caution.source))
        self.body.addWidget(Label(source, "small", "muted", wrap=True))

    def _offer(self, shown: CautionWords) -> None:
        self._row.taken.connect(self._take)
        self._row.session_wanted.connect(self.session_wanted)
        if shown.caution.severity is not Severity.STOP:
            self._row.add(self.aside)
        else:
            self.aside.hide()
        self.body.addWidget(self._row)

    def _take(self, way: Way) -> None:
        if way.kind is WayKind.CLEARANCE:
            self.ask_clearance()
        else:
            self.taken.emit(self.caution, way)

    def _close_form(self) -> None:
        if self.form is not None:
            self.form.hide()
        if self.ways:
            self.ways[0].setFocus(Qt.FocusReason.OtherFocusReason)
