"""The blocks of a session, one under the other, and the way of the cursor through their cells."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QPoint, QRect, Qt, QTimer, Signal
from PySide6.QtWidgets import QApplication, QHBoxLayout, QWidget

from desktop.planning.days import WhyEmpty
from desktop.planning.session_draft import SessionDraft
from desktop.planning.typed_cells import Row
from desktop.planning.typed_session import CellPlace
from views.blocks import Block, Label, Page
from views.callout import Callout
from views.general_caution import general_caution
from views.key_word import KeyWord
from views.session_desk import Opened
from views.session_texts import empty_text
from views.set_cell import Command, MayStep, SetCell
from views.slot_block import SlotBlock
from views.theme import Theme


class EmptyDay(Block):
    """Why nothing stands on a day, and what can be done: ``add_wanted``, ``next_wanted``, and
    ``away_wanted`` where the trainee is away.
    """

    add_wanted = Signal()
    next_wanted = Signal()
    away_wanted = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__(theme)
        self.text = Label("", "heading", wrap=True)
        more = Label(
            self.tr("What was trained without a plan can be typed all the same."), tone="muted"
        )
        add = KeyWord(self.tr("Add an exercise"), "F3")
        following = KeyWord(self.tr("Next training day"), "Ctrl+PgDown")
        self.away = KeyWord(self.tr("Days away"), "Ctrl+Shift+A")
        row = QHBoxLayout()
        row.addWidget(add)
        row.addWidget(following)
        row.addWidget(self.away)
        row.addStretch(1)
        for label in (self.text, more):
            self.body.addWidget(label)
        self.body.addLayout(row)
        add.clicked.connect(self.add_wanted)
        following.clicked.connect(self.next_wanted)
        self.away.clicked.connect(self.away_wanted)
        self.hide()

    def say(self, text: str, *, away: bool = False) -> None:
        """Why nothing stands here; "" hides the block."""
        self.text.setText(text)
        self.away.setVisible(away)
        self.setVisible(bool(text))


class SessionPage(Page):
    """Shows a draft and says what is typed; never changes it.

    ``typed(CellPlace, text)``, ``commanded(CellPlace, Command)``, ``noted(line, text)``,
    ``note_done(line)``, ``remove_wanted(line)``.
    """

    typed = Signal(object, str)
    commanded = Signal(object, object)
    noted = Signal(int, str)
    note_done = Signal(int)
    note_left = Signal(int)
    remove_wanted = Signal(int)

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(theme, parent)
        self._today = today
        self.may_step: MayStep = lambda _command: False
        self.blocks: list[SlotBlock] = []
        self.place: CellPlace | None = None
        self._draft: SessionDraft | None = None
        self.empty = EmptyDay(theme)
        self._caution = Label(general_caution(), "small", "muted", wrap=True)
        ground = self.body.parentWidget()
        assert ground is not None
        self._ground = ground
        self.callout = Callout(theme, ground)
        # Where the parts move under the cursor, what is said of it moves with them.
        self.verticalScrollBar().rangeChanged.connect(lambda _least, _most: self._say())

    def show_opened(self, opened: Opened) -> None:
        """Show another draft from its beginning."""
        self.callout.hide()
        self.place = None
        self._clear()
        draft = opened.draft
        self._draft = draft
        self.body.addWidget(self.empty)
        away = opened.plan.why_empty is WhyEmpty.AWAY
        self.empty.say("" if draft.lines else empty_text(opened.plan), away=away)
        for number, (slot, line) in enumerate(zip(opened.slots, draft.lines, strict=True)):
            block = SlotBlock(self._theme, slot, line, draft.unit, self._today, self.may_step)
            self._connect_block(block, number)
            self.blocks.append(block)
            self.body.addWidget(block)
            block.show_line(draft, number)
        self._line_up()
        self.body.addStretch(1)
        self.body.addWidget(self._caution)

    def show_draft(self, draft: SessionDraft, lines: tuple[int, ...] | None = None) -> None:
        """Show another text of the same lines (None: of all)."""
        self._draft = draft
        place = self.place if self._cell_with_focus() is not None else None
        for number in range(len(self.blocks)) if lines is None else lines:
            self.blocks[number].show_line(draft, number)
        self._line_up()
        if place is not None and place != self._place_with_focus():
            self.go_to(place)
        self._say()

    def go_to(self, place: CellPlace) -> bool:
        """Put the cursor into a cell, or the nearest one there is; False where there is none."""
        cell = self._cell(place)
        if cell is None:
            return False
        cell.setFocus(Qt.FocusReason.OtherFocusReason)
        cell.selectAll()
        return True

    def message(self, draft: SessionDraft, place: CellPlace) -> tuple[str, bool]:
        """What is to be said of a cell, and whether it is only a doubt."""
        return self.blocks[place.line].sheet.message(draft, place)

    def show_load_row(self, line: int, draft: SessionDraft) -> None:
        """Let loads be typed in a line that has no row for them yet."""
        self.blocks[line].show_load_row()
        self.show_draft(draft, (line,))

    def go_to_note(self, line: int) -> None:
        """Put the cursor into a line's note."""
        if line < len(self.blocks):
            self.blocks[line].note.setFocus(Qt.FocusReason.ShortcutFocusReason)
            self._follow(self.blocks[line])

    def first_blank(self, after: int = 0) -> CellPlace | None:
        """The first cell from line ``after`` on whose set is not done yet."""
        if self._draft is None:
            return None
        for number, line in enumerate(self._draft.lines):
            for index, each in enumerate(line.sets):
                if number >= after and not each.done.strip() and not line.replaced:
                    return CellPlace(number, index, Row.DONE)
        return None

    def beside(self, place: CellPlace, command: Command) -> CellPlace | None:
        """Where a command leads from a cell; None: past the last one."""
        rows = self.blocks[place.line].sheet.rows
        count = self.blocks[place.line].sheet.count
        row = rows.index(place.row) if place.row in rows else 0
        match command:
            case Command.NEXT if place.index + 1 < count:
                return CellPlace(place.line, place.index + 1, place.row)
            case Command.BACK if place.index:
                return CellPlace(place.line, place.index - 1, place.row)
            case Command.DOWN if row + 1 < len(rows):
                return CellPlace(place.line, place.index, rows[row + 1])
            case Command.UP if row:
                return CellPlace(place.line, place.index, rows[row - 1])
            case Command.DOWN:
                return self._in_line(place.line + 1, place.index, last_row=False)
            case Command.UP:
                return self._in_line(place.line - 1, place.index, last_row=True)
            case Command.BACK | Command.SLOT_UP:
                index = 0 if command is Command.SLOT_UP else 1_000
                return self._in_line(place.line - 1, index, last_row=False)
        return self._in_line(place.line + 1, 0, last_row=False)

    def _line_up(self) -> None:
        """All blocks leave room for as many sets as the longest has, from three to six."""
        longest = max((block.sheet.count for block in self.blocks), default=0)
        for block in self.blocks:
            block.set_columns(max(3, min(6, longest)))

    def _in_line(self, line: int, index: int, *, last_row: bool) -> CellPlace | None:
        """A cell of another line; lines without sets are passed over."""
        step = -1 if last_row else 1
        while 0 <= line < len(self.blocks) and not self.blocks[line].sheet.count:
            line += step
        if not 0 <= line < len(self.blocks):
            return None
        sheet = self.blocks[line].sheet
        row = sheet.rows[-1] if last_row else Row.DONE
        return CellPlace(line, min(index, sheet.count - 1), row)

    def _cell(self, place: CellPlace) -> SetCell | None:
        if not 0 <= place.line < len(self.blocks):
            return None
        sheet = self.blocks[place.line].sheet
        index = max(0, min(place.index, sheet.count - 1))
        return sheet.cell(index, place.row) or sheet.cell(index, Row.DONE)

    def _place_with_focus(self) -> CellPlace | None:
        return self.place if self._cell_with_focus() is not None else None

    def _cell_with_focus(self) -> SetCell | None:
        focus = QApplication.focusWidget()
        return focus if isinstance(focus, SetCell) and self.isAncestorOf(focus) else None

    def _connect_block(self, block: SlotBlock, line: int) -> None:
        sheet = block.sheet
        sheet.typed.connect(lambda i, row, text: self.typed.emit(CellPlace(line, i, row), text))
        sheet.commanded.connect(
            lambda i, row, what: self.commanded.emit(CellPlace(line, i, row), what)
        )
        sheet.entered.connect(lambda i, row: self._entered(CellPlace(line, i, row)))
        sheet.left.connect(lambda _i, _row: self.callout.hide())
        block.noted.connect(lambda text: self.noted.emit(line, text))
        block.note_done.connect(lambda: self.note_done.emit(line))
        block.note.left_up.connect(lambda: self.note_left.emit(line))
        block.remove_wanted.connect(lambda: self.remove_wanted.emit(line))

    def _entered(self, place: CellPlace) -> None:
        self.place = place
        self._follow(self.blocks[place.line])
        self._say()

    def _say(self) -> None:
        """Say what is wrong with the cell that has the cursor."""
        cell = self._cell_with_focus()
        if cell is None or self.place is None or self._draft is None:
            self.callout.hide()
            return
        text, doubt = self.blocks[self.place.line].sheet.message(self._draft, self.place)
        self.callout.say(cell, text, doubt=doubt)

    def _follow(self, block: SlotBlock) -> None:
        """Scroll so that all of a block is seen, where it fits; now, and once it is laid out."""
        self._scroll_to(block)
        QTimer.singleShot(0, block, lambda: self._scroll_to(block))

    def _scroll_to(self, block: SlotBlock) -> None:
        top = block.mapTo(self._ground, QPoint(0, 0)).y()
        spare = self._theme.px(12)
        seen = QRect(0, self.verticalScrollBar().value(), 1, self.viewport().height())
        bottom = top + block.height() + spare
        if bottom > seen.bottom():
            top_at = min(top - spare, bottom - seen.height())
            self.verticalScrollBar().setValue(top_at)
        elif top - spare < seen.top():
            self.verticalScrollBar().setValue(top - spare)
        cell = self._cell_with_focus()
        if cell is not None and block.height() > seen.height():
            self.ensureWidgetVisible(cell, 0, 3 * cell.height())

    def _clear(self) -> None:
        for block in self.blocks:
            block.sheet.blockSignals(True)  # the cursor may still pass through what goes
        self.blocks = []
        kept = (self.empty, self._caution)
        while (item := self.body.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None and widget not in kept:
                widget.hide()
                widget.deleteLater()
