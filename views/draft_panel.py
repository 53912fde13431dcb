"""Drafting a program: wishes above, what comes of them below; saved only when it is taken."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import Final

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QProgressBar, QVBoxLayout, QWidget

from db.errors import StoreError
from desktop.planning.drafts import (
    Draft,
    InvalidWish,
    Relaxation,
    Wish,
    draft_work,
    relaxed,
    wishes_first,
    wishes_of,
)
from desktop.planning.surroundings import equipment_on
from desktop.training.program import Program
from desktop.training.trainee import Trainee
from views.blocks import Heading, Label, MainButton, Page
from views.captioned import keyed_word
from views.draft_result import DraftResult
from views.draft_source import DraftSource
from views.draft_wishes import DraftWishesBlock
from views.language import program_said
from views.record import Record
from views.sentences import worded
from views.theme import Theme

ACT_KEY: Final = "Ctrl+Return"


class DraftPanel(QWidget):
    """``taken(Program)`` when the draft is taken; ``left`` on the way back."""

    taken = Signal(object)
    left = Signal()

    def __init__(
        self, record: Record, today: date, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._record, self._today, self._theme = record, today, theme
        self._trainee: Trainee | None = None
        self._begun_for: int | None = -1
        self.draft: Draft | None = None
        self.source = DraftSource(self)
        self.wishes = DraftWishesBlock(theme)
        self.result = DraftResult(theme)
        self.state = Label(tone="muted", wrap=True)
        self._bar = QProgressBar()
        self._bar.setRange(0, 0)
        self._bar.setTextVisible(False)
        self._bar.setAccessibleName(self.tr("Drafting"))
        self.act = MainButton("")
        self.cancel = keyed_word(self.tr("Cancel"), "Esc", tone="")
        self.back = keyed_word(self.tr("Back"), "Esc", tone="")
        kept = self.back.sizePolicy()
        kept.setRetainSizeWhenHidden(True)
        self.back.setSizePolicy(kept)
        self._assemble()
        self._connect()
        self._settle()

    @property
    def working(self) -> bool:
        """Whether a draft is on its way."""
        return self.source.working

    def begin(self, trainee_id: int | None) -> None:
        """Ask for wishes; those of the same trainee still stand, with what came of them."""
        self._offer(trainee_id)
        if self._begun_for != trainee_id:
            self._begun_for = trainee_id
            self.wishes.show_wishes(wishes_first(self._record.repository, trainee_id, self._today))
            self._edited()

    def take_focus(self) -> None:
        """Put the cursor where the most likely next thing is done."""
        if self.draft is not None and self.draft.program is not None:
            self.act.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            self.wishes.take_focus()

    def make(self) -> None:
        """Draft a program from the wishes."""
        said = self.wishes.said
        if said is None:
            return
        try:
            wishes = wishes_of(self._record.repository, said, self._trainee_id, self._today)
            work = draft_work(self._record.repository, wishes)
        except InvalidWish as wrong:
            text = worded(wrong)
            self.wishes.refuse(f"{text[:1].upper()}{text[1:]}.")
            return
        except StoreError as error:
            self._record.reported(error)
            return
        self._forget()
        self.source.want(work)
        self._say_going_on(None)
        self._settle()

    def relax(self, way: Relaxation) -> None:
        """Relax one wish and draft again."""
        said = self.wishes.said
        if said is not None:
            self.wishes.show_wishes(relaxed(self._record.repository, said, way))
            self.make()

    def take(self) -> None:
        """Let the draft become a program."""
        if self.draft is not None and self.draft.program is not None:
            program: Program = self.draft.program
            self._forget()
            self.taken.emit(program)

    @property
    def _trainee_id(self) -> int | None:
        return self._trainee.id if self._trainee is not None else None

    def _offer(self, trainee_id: int | None) -> None:
        store = self._record.repository
        self._trainee = None if trainee_id is None else store.trainee(trainee_id)
        owner, about = "", ""
        if self._trainee is not None and trainee_id is not None:
            name, avoid = self._trainee.name, self._trainee.avoid.strip()
            owned = equipment_on(store.equipment(trainee_id), self._today)
            owner = name if owned is not None else ""
            if avoid:
                about = self.tr("On record for {name}, to avoid: {avoid}. Say it above too.")
                about = about.format(name=name, avoid=avoid.rstrip("."))
        self.wishes.offer(owner, about)
        self._heading.say(
            self.tr("Draft a program"),
            self.tr("for {name}").format(name=self._trainee.name) if self._trainee else "",
        )

    # What comes of it

    def _made(self, draft: Draft) -> None:
        made = draft.program
        self.draft = draft if made is None else replace(draft, program=program_said(made))
        exercises = {each.key: each for each in self._record.repository.exercises(retired=True)}
        self.result.show_draft(self.draft, exercises)
        self._settle()
        first = self.act if draft.program is not None else next(iter(self.result.ways), None)
        (first or self.wishes.days).setFocus(Qt.FocusReason.OtherFocusReason)
        self._page.verticalScrollBar().setValue(0)

    def _failed(self, error: Exception) -> None:
        self._settle()
        raise error

    def _edited(self) -> None:
        """Other wishes: what came of those before no longer answers them."""
        self._give_up()
        self._forget()

    def _forget(self) -> None:
        self.draft = None
        self.result.clear()
        self._settle()

    def _give_up(self) -> None:
        if self.working:
            self.source.give_up()
            self._settle()

    def _say_going_on(self, wish: Wish | None) -> None:
        self.state.setText(
            {
                None: self.tr("Looking for the week that balances best…"),
                Wish.MINUTES: self.tr("It does not fit. Trying more minutes…"),
                Wish.DAYS: self.tr("It does not fit. Trying more days…"),
                Wish.AVOID: self.tr("It does not fit. Trying to avoid less…"),
                Wish.EQUIPMENT: self.tr("It does not fit. Trying more equipment…"),
            }[wish]
        )

    def _settle(self) -> None:
        """Say how it stands, and what the main key does now."""
        made = self.draft is not None and self.draft.program is not None
        self._bar.setVisible(self.working)
        self.cancel.setVisible(self.working)
        self.back.setVisible(not self.working)
        native = QKeySequence(ACT_KEY).toString(QKeySequence.SequenceFormat.NativeText)
        does = self.tr("Take it") if made else self.tr("Draft it")
        self.act.setText(f"{does}  {native}")
        self.act.setAccessibleName(does)
        self.act.setEnabled(not self.working)
        if self.working:
            return
        if made:
            self.state.setText(
                self.tr("An ordinary program to edit; nothing is saved until you take it.")
            )
        elif self.draft is None:
            self.state.setText(self.tr("A balanced week from these wishes, each choice explained."))
        else:
            self.state.setText("")

    def _go_on(self) -> None:
        """The main key: take what came out, else draft."""
        if self.working:
            return
        if self.draft is not None and self.draft.program is not None:
            self.take()
        else:
            self.make()

    def _escape(self) -> None:
        if self.working:
            self._give_up()
            self.wishes.take_focus()
        else:
            self.left.emit()

    # Parts

    def _assemble(self) -> None:
        theme = self._theme
        self._page = Page(theme)
        self._heading = Heading(theme, self.back)
        for part in (self._heading, self.wishes, self.result):
            self._page.body.addWidget(part)
        self._page.body.addStretch(1)
        foot = QWidget()
        foot.setProperty("kind", "page")
        self._foot = QHBoxLayout(foot)
        self._foot.addWidget(self.state, 3)
        self._foot.addWidget(self._bar, 1)
        self._foot.addWidget(self.cancel)
        self._foot.addWidget(self.act)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self._page, 1)
        column.addWidget(foot)
        theme.changed.connect(self._space)
        self._space()

    def _space(self) -> None:
        edge = self._theme.grid(3)
        self._foot.setContentsMargins(edge, self._theme.px(8), edge, self._theme.px(12))
        self._foot.setSpacing(self._theme.grid(2))

    def _connect(self) -> None:
        self.wishes.edited.connect(self._edited)
        self.result.relaxed.connect(self.relax)
        self.source.going_on.connect(self._say_going_on)
        self.source.made.connect(self._made)
        self.source.failed.connect(self._failed)
        self.act.clicked.connect(self._go_on)
        self.cancel.clicked.connect(self._escape)
        self.back.clicked.connect(self.left)
        for key in (ACT_KEY, "Ctrl+Enter"):
            shortcut = QShortcut(QKeySequence(key), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(self._go_on)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self._escape()
        else:
            super().keyPressEvent(event)
