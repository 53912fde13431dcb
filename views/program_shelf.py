"""All programs: open one, start a new one, or take one of those that ship."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Final

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtGui import QKeySequence, QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from db.repository import Repository
from desktop.training.program import Program
from views import words
from views.acting_row import ActingRow, RowAct
from views.blocks import Block, Heading, Label, MainButton, Page, WordButton
from views.captioned import keyed_word
from views.theme import Theme

translate = QCoreApplication.translate

NEW_KEY: Final = "Ctrl+Shift+N"
DRAFT_KEY: Final = "F7"


@dataclass(frozen=True, slots=True)
class ShelfEntry:
    """A program and who trains by it now."""

    program: Program
    trainees: tuple[str, ...] = ()


class ShelfRow(ActingRow):
    """One program; Return opens it, Ctrl+D duplicates, Delete removes. ``acted(RowAct)``."""

    def __init__(self, theme: Theme, entry: ShelfEntry, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.program = entry.program
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        detail = _length(entry)
        column = QVBoxLayout()
        column.setSpacing(theme.px(2))
        column.addWidget(Label(entry.program.name, "heading"))
        column.addWidget(Label(detail, "small", "muted"))
        row = QHBoxLayout(self)
        inside = theme.grid(2)
        row.setContentsMargins(inside, theme.px(7), inside, theme.px(7))
        row.setSpacing(theme.px(4))
        row.addLayout(column, 1)
        for text, key, act in (
            (self.tr("Open"), self.tr("Return"), RowAct.EDIT),
            (self.tr("Duplicate"), self.tr("Ctrl+D"), RowAct.DUPLICATE),
            (self.tr("Remove"), self.tr("Delete"), RowAct.REMOVE),
        ):
            button = WordButton(text, tone="" if act is RowAct.EDIT else "muted")
            button.setToolTip(key)
            spoken = self.tr("{action}: {name}").format(action=text, name=entry.program.name)
            button.setAccessibleName(spoken)
            button.setFocusPolicy(Qt.FocusPolicy.NoFocus)
            button.clicked.connect(lambda _on=False, act=act: self.acted.emit(act))
            row.addWidget(button)
        self.setAccessibleName(f"{entry.program.name}, {detail}")

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        if self.hasFocus():
            painter.fillRect(self.rect(), self._theme.colour("background"))
            bar = self.rect()
            bar.setWidth(self._theme.px(3))
            painter.fillRect(bar, self._theme.colour("accent"))
        inside = self._theme.grid(2)
        painter.setPen(self._theme.colour("line"))
        bottom = self.height() - 1
        painter.drawLine(inside, bottom, self.width() - inside, bottom)
        painter.end()


class ProgramShelf(Page):
    """The list of programs and the ways to another one.

    ``opened(id)``, ``duplicated(Program)``, ``removed(Program)``, ``new_wanted``,
    ``draft_wanted``, ``starter_taken(Program)``.
    """

    opened = Signal(int)
    duplicated = Signal(object)
    removed = Signal(object)
    new_wanted = Signal()
    draft_wanted = Signal()
    starter_taken = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, parent)
        self._theme = theme
        self.rows: list[ShelfRow] = []
        native = QKeySequence.SequenceFormat.NativeText
        self.new = MainButton(self.tr("New program"))
        self.new.setToolTip(QKeySequence(NEW_KEY).toString(native))
        self.new.clicked.connect(self.new_wanted)
        self.draft = keyed_word(self.tr("Draft a program"), DRAFT_KEY, tone="")
        self.draft.clicked.connect(self.draft_wanted)
        self._heading = Heading(theme, self.draft, self.new)
        self.body.addWidget(self._heading)
        self._teach = Label(
            self.tr(
                "A program holds phases of some weeks, a phase its training days, a day its "
                "exercises. Each exercise gets a rule that says what grows next. Begin with a "
                "blank one, have one drafted from days, minutes and equipment, or load one that "
                "ships; each becomes yours to edit."
            ),
            wrap=True,
        )
        self.body.addWidget(self._teach)
        self._programs = Block(theme)
        self._programs.body.setContentsMargins(1, theme.px(4), 1, theme.px(4))
        self._programs.body.setSpacing(0)
        self.body.addWidget(self._programs)
        self._starters = Block(theme)
        self.body.addWidget(self._starters)
        self.body.addStretch(1)
        self._shown_starters: tuple[Program, ...] = ()

    def show_programs(self, entries: Sequence[ShelfEntry], starters: Sequence[Program]) -> None:
        """Show programs, and those that ship."""
        count = len(entries)
        self._heading.say(
            self.tr("Programs") if count else self.tr("No program yet"),
            words.number(count) if count else "",
        )
        self._teach.setVisible(not count)
        self._programs.setVisible(bool(count))
        focused = next((row.program.id for row in self.rows if row.hasFocus()), None)
        for row in self.rows:
            self._programs.body.removeWidget(row)
            row.hide()
            row.deleteLater()
        self.rows = []
        for entry in entries:
            row = ShelfRow(self._theme, entry)
            row.acted.connect(lambda act, row=row: self._act(row, act))
            self._programs.body.addWidget(row)
            row.show()
            self.rows.append(row)
        if focused is not None:
            self.take_focus(focused)
        if tuple(starters) != self._shown_starters:
            self._shown_starters = tuple(starters)
            self._fill_starters()
        before: QWidget = self.new
        for row in self.rows:  # they were made after what stands below them
            QWidget.setTabOrder(before, row)
            before = row

    def take_focus(self, program_id: int | None = None) -> None:
        """Put the focus on a program's row, else on the first one, else on a new program."""
        row = next((each for each in self.rows if each.program.id == program_id), None)
        first: QWidget = row or (self.rows[0] if self.rows else self.new)
        first.setFocus(Qt.FocusReason.OtherFocusReason)

    def _act(self, row: ShelfRow, act: RowAct) -> None:
        place = self.rows.index(row)
        match act:
            case RowAct.BEFORE | RowAct.AFTER | RowAct.FIRST | RowAct.LAST:
                to = {
                    RowAct.BEFORE: place - 1,
                    RowAct.AFTER: place + 1,
                    RowAct.FIRST: 0,
                    RowAct.LAST: len(self.rows) - 1,
                }[act]
                if 0 <= to < len(self.rows):
                    self.rows[to].setFocus(Qt.FocusReason.OtherFocusReason)
                    self.ensureWidgetVisible(self.rows[to])
            case RowAct.EDIT:
                if row.program.id is not None:
                    self.opened.emit(row.program.id)
            case RowAct.DUPLICATE:
                self.duplicated.emit(row.program)
            case RowAct.REMOVE:
                self.removed.emit(row.program)
            case _:
                self.new.setFocus(Qt.FocusReason.OtherFocusReason)

    def _fill_starters(self) -> None:
        body = self._starters.body
        while (item := body.takeAt(0)) is not None:
            if (widget := item.widget()) is not None:
                widget.hide()
                widget.deleteLater()
        self._starters.setVisible(bool(self._shown_starters))
        top = QWidget()
        line = QHBoxLayout(top)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(self._theme.px(10))
        line.addWidget(Label(self.tr("Load a starter program"), "heading"))
        line.addWidget(Label(self.tr("it becomes an ordinary program to edit"), tone="muted"), 1)
        body.addWidget(top)
        for program in self._shown_starters:
            body.addWidget(self._starter(program))

    def _starter(self, program: Program) -> QWidget:
        part = QWidget()
        row = QHBoxLayout(part)
        row.setContentsMargins(0, self._theme.px(4), 0, self._theme.px(4))
        row.setSpacing(self._theme.grid(2))
        button = WordButton(program.name, strong=True, flush=True)
        spoken = self.tr("Load the starter program {name}").format(name=program.name)
        button.setAccessibleName(spoken)
        button.clicked.connect(lambda: self.starter_taken.emit(program))
        top = Qt.AlignmentFlag.AlignTop
        left = QWidget()
        left.setFixedWidth(self._theme.px(290))
        named = QVBoxLayout(left)
        named.setContentsMargins(0, 0, 0, 0)
        named.setSpacing(0)
        named.addWidget(button)
        named.addWidget(Label(_length(ShelfEntry(program)), "small", "muted"))
        row.addWidget(left, 0, top)
        about = Label(program.about, wrap=True)
        about.setContentsMargins(0, self._theme.px(4), 0, 0)
        row.addWidget(about, 1, top)
        return part


def shelf_entries(
    repository: Repository, programs: Mapping[int, Program], today: date
) -> list[ShelfEntry]:
    """The programs with those who train by them on ``today``, or will."""
    names: dict[int, list[str]] = {}
    trainees = {one.id: one.name for one in repository.trainees()}
    for each in repository.all_assignments():
        ended = each.ended is not None and each.ended < today
        if each.trainee_id in trainees and not ended:
            names.setdefault(each.program_id, []).append(trainees[each.trainee_id])
    return [
        ShelfEntry(program, tuple(names.get(identity, ())))
        for identity, program in programs.items()
    ]


def days_words(count: int) -> str:
    """How often a week: "1 day a week", "3 days a week"."""
    if count == 1:
        return translate("Programs", "1 day a week")
    return translate("Programs", "{count} days a week").format(count=words.number(count))


def _length(entry: ShelfEntry) -> str:
    program = entry.program
    days = max((len(phase.days) for phase in program.phases), default=0)
    return words.DOT.join((words.weeks(program.weeks), days_words(days), *entry.trainees))
