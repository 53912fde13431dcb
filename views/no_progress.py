"""What to do first, where there is no progress to draw yet."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from views.blocks import Block, Label, MainButton
from views.theme import Theme
from views.work_areas import PROGRAM, SESSION


class NoProgress(QWidget):
    """What to do first, where there is nothing to draw."""

    area_wanted = Signal(str)

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._title = Label(size="title")
        self._text = Label(wrap=True)
        self.action = MainButton(self.tr("Type the first session"))
        self._area = SESSION
        self.action.clicked.connect(lambda: self.area_wanted.emit(self._area))
        block = Block(theme)
        block.body.addWidget(self._text)
        block.body.addWidget(self.action)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(theme.px(12))
        column.addWidget(self._title)
        column.addWidget(block)
        column.addStretch(1)

    def say(self, name: str, *, planned: bool) -> None:
        """Say it for the trainee of this name, who has a program or not."""
        self._title.setText(self.tr("Nothing to show of {name} yet").format(name=name))
        first = self.tr(
            "Every session typed becomes a point. Four of them, two weeks apart or more, make a "
            "trend: how much a week, how sure that is, and when a goal comes."
        )
        if planned:
            self._text.setText(first)
            self.action.setText(self.tr("Type the first session"))
            self._area = SESSION
        else:
            before = self.tr("{name} needs a program first.").format(name=name)
            self._text.setText(f"{before} {first}")
            self.action.setText(self.tr("Choose a program"))
            self._area = PROGRAM
        self.action.setAccessibleName(self.action.text())
