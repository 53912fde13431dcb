"""A table before anything is taken: how it is read, what becomes of each line, what is asked."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from desktop.planning.arriving_files import ArrivingTable, folded
from desktop.planning.log_prospect import NOT_TAKEN, Fate, Prospect
from desktop.training.quantities import Unit
from desktop.training.table_mapping import TableMapping
from views import words
from views.blocks import Block, Label, MainButton, WordButton
from views.choice_row import Choice, ChoiceRow, ToggleWord
from views.chooser import Chooser, Find
from views.file_heading import FileHeading
from views.flow_layout import FlowLayout
from views.import_options import ImportOptions
from views.import_table import ImportTable
from views.import_texts import fate_word, prospect_text, table_text, take_word
from views.name_questions import NameQuestions
from views.sentences import worded
from views.theme import Theme
from views.work_panel import progress_bar


class ImportPage(QWidget):
    """``mapping_changed(TableMapping)``, ``role_chosen(place, Role)``, ``doubtful_agreed(bool)``,
    ``take_wanted``, ``hand_back_wanted``, ``other_wanted`` (another file), ``stopped`` reading.
    """

    mapping_changed = Signal(object)
    role_chosen = Signal(int, object)
    doubtful_agreed = Signal(bool)
    take_wanted = Signal()
    hand_back_wanted = Signal()
    other_wanted = Signal()
    stopped = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.other = WordButton(self.tr("Another file…"), "Ctrl+Shift+I")
        self.heading = FileHeading(theme, self.other)
        self.options = ImportOptions(theme)
        self.table = ImportTable(theme)
        self.names = NameQuestions(theme)
        self.chooser = Chooser(theme)
        self.filters = ChoiceRow(theme, self.tr("Lines shown"), self.table)
        self.doubtful = ToggleWord(self.tr("Take doubtful lines too"), "T", self.table)
        self.detail = Label("", wrap=True)
        self.detail.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.detail.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.bar = progress_bar(self.tr("How far the reading is"))
        self.stop = WordButton(self.tr("Stop reading"))
        self.said = Label("", tone="muted", wrap=True)
        self.hand_back = WordButton("", "Ctrl+Shift+B")
        self.take = MainButton("")
        self._lay_out()
        self._connect()
        self.reading(None)
        self._space()

    # What is shown

    def show_options(
        self, arriving: ArrivingTable, guess: TableMapping, people: Sequence[str]
    ) -> None:
        """Show a table and how it is read."""
        self.heading.say(arriving.path.name, table_text(arriving))
        self.options.show_options(arriving, guess, people)

    def show_prospect(self, arriving: ArrivingTable, prospect: Prospect, unit: Unit) -> None:
        """Show what becomes of its lines; loads in ``unit``."""
        self.table.show_lines(arriving, prospect, unit)
        self.names.setVisible(bool(prospect.names))
        known = prospect.exercises
        self.names.ask(prospect.names, lambda key: known.get(folded(key), key))
        counts = {
            "all": len(prospect.lines),
            "doubtful": prospect.count(Fate.DOUBTFUL),
            "refused": prospect.count(Fate.REFUSED, Fate.HELD),
        }
        texts = {
            "all": (self.tr("All {count}"), "A"),
            "doubtful": (self.tr("? Doubtful {count}"), "D"),
            "refused": (self.tr("× Refused {count}"), "R"),
        }
        self.filters.offer(
            [
                Choice(code, text.format(count=words.number(counts[code])), key)
                for code, (text, key) in texts.items()
            ],
            self.filters.code or "all",
        )
        self.doubtful.setVisible(counts["doubtful"] > 0)
        self._say(arriving, prospect)

    def _say(self, arriving: ArrivingTable, prospect: Prospect) -> None:
        self.said.setText(" ".join((prospect_text(prospect), *map(worded, arriving.table.remarks))))
        agreed = self.doubtful.on
        left = sum(
            1 for line in prospect.lines
            if line.fate in NOT_TAKEN and not (agreed and line.fate is Fate.DOUBTFUL)
        )  # fmt: skip
        text = self.tr("Hand back {count}…")
        self.hand_back.set_words(text.format(count=words.number(left)))
        self.hand_back.setAccessibleName(self.tr("Save the lines that are not taken as a file"))
        self.hand_back.setVisible(left > 0)
        word = take_word(prospect)
        self.take.setText(word.replace("&", "&&"))
        self.take.setAccessibleName(word)
        self.take.setEnabled(not prospect.empty)

    def reading(self, share: float | None) -> None:
        """How far the reading is, None where nothing is being read."""
        busy = share is not None
        self.bar.setVisible(busy)
        self.stop.setVisible(busy)
        self.bar.setValue(round(1000 * (share or 0)))
        self.take.setEnabled(self.take.isEnabled() and not busy)

    def ask(self, title: str, find: Find) -> None:
        """Ask for one of many, in the place of the options."""
        self._show_tools(False)
        self.chooser.ask(title, self.tr("A few letters of its name"), find)

    def ask_nothing(self) -> None:
        """Leave what is asked."""
        self.chooser.hide()
        self._show_tools(True)

    def _show_tools(self, shown: bool) -> None:
        self.options.setVisible(shown)
        self.detail.setVisible(shown)

    # How it is built

    def _lay_out(self) -> None:
        block = Block(self._theme)
        tools = self._tools = FlowLayout()
        tools.setContentsMargins(0, 0, 0, 0)
        tools.addWidget(self.filters)
        tools.addWidget(self.doubtful)
        block.body.addLayout(tools)
        block.body.addWidget(self.table, 1)
        block.body.addWidget(self.detail)
        middle = self._middle = QHBoxLayout()
        middle.addWidget(block, 5)
        middle.addWidget(self.names, 2)
        foot = self._foot = QHBoxLayout()
        foot.addWidget(self.bar, 1)
        foot.addWidget(self.stop)
        foot.addWidget(self.said, 3)
        foot.addWidget(self.hand_back)
        foot.addWidget(self.take)
        column = self._column = QVBoxLayout(self)
        column.addWidget(self.heading)
        column.addWidget(self.options)
        column.addWidget(self.chooser)
        column.addLayout(middle, 1)
        column.addLayout(foot)
        self.table.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.table.setMinimumHeight(self._theme.grid(5))

    def _connect(self) -> None:
        self.other.clicked.connect(self.other_wanted)
        self.stop.clicked.connect(self.stopped)
        self.hand_back.clicked.connect(self.hand_back_wanted)
        self.take.clicked.connect(self.take_wanted)
        self.options.changed.connect(self.mapping_changed)
        self.table.header.role_chosen.connect(self.role_chosen)
        self.filters.chosen.connect(self.table.show_only)
        self.doubtful.toggled.connect(self.doubtful_agreed)
        self.table.moved.connect(self._show_detail)
        self.chooser.chosen.connect(lambda _value: self._show_tools(True))
        self.chooser.given_up.connect(lambda: self._show_tools(True))
        self.table.installEventFilter(self)
        self._theme.changed.connect(self._space)

    def _show_detail(self) -> None:
        line = self.table.line
        if line is None:
            self.detail.setText(self.tr("No line is like that."))
            return
        text = self.tr("Line {number}, {fate}: {text}").format(
            number=words.number(line.number),
            fate=fate_word(line.fate),
            text=self.table.lines.text(line),
        )
        self.detail.setText(text)

    def _space(self) -> None:
        edge, grid = self._theme.grid(3), self._theme.grid()
        self._column.setContentsMargins(edge, 2 * grid, edge, grid)
        self._column.setSpacing(self._theme.px(12))
        for row in (self._tools, self._middle, self._foot):
            row.setSpacing(self._theme.px(12))
        self.detail.setFixedHeight(2 * self.detail.fontMetrics().lineSpacing())
        self.detail.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.said.setMinimumHeight(2 * self.said.fontMetrics().lineSpacing())

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            control = event.modifiers() & Qt.KeyboardModifier.ControlModifier
            enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
            if watched is self.table and enter and control and self.take.isEnabled():
                self.take.click()
                return True
        return super().eventFilter(watched, event)
