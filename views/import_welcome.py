"""What stands in the import before a file is chosen, and after one was taken in."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from views.blocks import Block, Heading, Label, MainButton, Page, WordButton
from views.file_heading import FileHeading
from views.theme import Theme


class ImportWelcome(QWidget):
    """Says what can be brought in and how. ``file_wanted`` when one is to be chosen."""

    file_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        page = Page(theme)
        self.heading = Heading(theme)
        self.heading.say(self.tr("Bring in what was written elsewhere"))
        block = Block(theme)
        for title, text in self._kinds():
            block.body.addWidget(Label(title, "heading"))
            block.body.addWidget(Label(text, wrap=True))
            block.body.addSpacing(theme.grid())
        self.kept = Label("", tone="muted", wrap=True)
        block.body.addWidget(self.kept)
        self.wrong = Label("", tone="stop", wrap=True)
        self.choose = MainButton(self.tr("Choose a file…"))
        self.choose.clicked.connect(self.file_wanted)
        foot = QHBoxLayout()
        foot.addWidget(self.wrong, 1)
        foot.addWidget(self.choose, 0, Qt.AlignmentFlag.AlignBottom)
        page.body.addWidget(self.heading)
        page.body.addWidget(block)
        page.body.addLayout(foot)
        page.body.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(page)

    def say(self, kept: Sequence[str], wrong: str = "") -> None:
        """Name the mappings kept, and why the last file could not be read."""
        text = self.tr("Mappings kept: {names}. They are offered for files with the same heading.")
        self.kept.setText(text.format(names=", ".join(kept)) if kept else "")
        self.kept.setVisible(bool(kept))
        self.wrong.setText(wrong)

    def _kinds(self) -> tuple[tuple[str, str], ...]:
        return (
            (
                self.tr("Any table of training"),
                self.tr(
                    "CSV, or a workbook (.xlsx). You see what each column was taken for, change "
                    "it, and read every line before anything is taken in. Sets may stand one in a "
                    "line, side by side, or together in a cell: 3x5, 5/5/4, BW+10."
                ),
            ),
            (
                self.tr("A training log, a program, trainees"),
                self.tr(
                    "Files that this program wrote are known at once. A log brings nothing twice, "
                    "so a longer one can follow."
                ),
            ),
            (
                self.tr("Drop it anywhere"),
                self.tr(
                    "A file dropped on the window opens here too. Nothing is saved until you say "
                    "so, and one step of Undo takes all of it out again."
                ),
            ),
        )


class ImportDone(QWidget):
    """What was taken in, and what can follow. ``hand_back_wanted``, ``other_wanted``,
    ``desk_wanted``.
    """

    hand_back_wanted = Signal()
    other_wanted = Signal()
    desk_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        page = Page(theme)
        self.heading = FileHeading(theme)
        block = Block(theme)
        self.said = Label("", "answer", wrap=True)
        self.more = Label("", tone="muted", wrap=True)
        block.body.addWidget(self.said)
        block.body.addWidget(self.more)
        self.hand_back = WordButton(self.tr("Save the lines that were not taken…"), "Ctrl+Shift+B")
        self.other = WordButton(self.tr("Another file…"), "Ctrl+Shift+I")
        self.desk = MainButton(self.tr("To the desk"))
        self.hand_back.clicked.connect(self.hand_back_wanted)
        self.other.clicked.connect(self.other_wanted)
        self.desk.clicked.connect(self.desk_wanted)
        foot = QHBoxLayout()
        foot.addStretch(1)
        foot.setSpacing(theme.px(12))
        for button in (self.hand_back, self.other, self.desk):
            foot.addWidget(button)
        page.body.addWidget(self.heading)
        page.body.addWidget(block)
        page.body.addLayout(foot)
        page.body.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(page)

    def say(self, title: str, said: str, more: str, *, left: bool) -> None:
        """Show what was taken in; ``left``: whether lines were not."""
        self.heading.say(title)
        self.said.setText(said)
        self.more.setText(more)
        self.hand_back.setVisible(left)


class ParcelPage(QWidget):
    """A program or trainees that came in, before they are taken. ``take_wanted``,
    ``other_wanted``.
    """

    take_wanted = Signal()
    other_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        page = Page(theme)
        self.other = WordButton(self.tr("Another file…"), "Ctrl+Shift+I")
        self.heading = FileHeading(theme, self.other)
        self._block = Block(theme)
        self.wrong = Label("", tone="stop", wrap=True)
        self.take = MainButton(self.tr("Take it in"))
        self.other.clicked.connect(self.other_wanted)
        self.take.clicked.connect(self.take_wanted)
        foot = QHBoxLayout()
        foot.addWidget(self.wrong, 1)
        foot.addWidget(self.take, 0, Qt.AlignmentFlag.AlignBottom)
        page.body.addWidget(self.heading)
        page.body.addWidget(self._block)
        page.body.addLayout(foot)
        page.body.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(page)

    def say(self, title: str, detail: str, things: Sequence[tuple[str, str]], wrong: str) -> None:
        """Show what is in the file, each with what belongs to it, and why it cannot be taken."""
        self.heading.say(title, detail)
        while (item := self._block.body.takeAt(0)) is not None:
            if (widget := item.widget()) is not None:
                widget.hide()
                widget.deleteLater()
        for name, text in things:
            self._block.body.addWidget(Label(name, "heading", wrap=True))
            if text:
                self._block.body.addWidget(Label(text, tone="muted", wrap=True))
        self.wrong.setText(wrong)
        self.take.setEnabled(not wrong)
