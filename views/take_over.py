"""Before everything of another computer is taken over: what would come, go and change."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QVBoxLayout, QWidget

from desktop.planning.everything_files import Held, Person
from views import words
from views.blocks import Label, MainButton, Page, WordButton
from views.safe_keeping import sessions_text
from views.theme import Theme

translate = QCoreApplication.translate


class TakeOverPanel(QDialog):
    """``confirmed`` when the coach takes it over, ``left`` when not; the panel closes itself."""

    confirmed = Signal()
    left = Signal()

    def __init__(
        self,
        theme: Theme,
        name: str,
        people: Sequence[Person],
        today: date,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Take over everything"))
        self.setModal(False)
        self.change = Label(taking_over_text(people, today), wrap=True)
        self.take = MainButton(self.tr("Take it over"))
        self.take.clicked.connect(self.accept)
        leave = WordButton(self.tr("Leave it"))
        leave.clicked.connect(self.reject)
        self.accepted.connect(self.confirmed)
        self.rejected.connect(self.left)
        column = QVBoxLayout(self)
        edge = theme.grid(3)
        column.setContentsMargins(edge, edge, edge, edge)
        column.setSpacing(theme.px(12))
        column.addWidget(Label(self.tr("Everything in {name}").format(name=name), "heading"))
        explained = self.tr(
            "It takes the place of all that is in the data file now. What is there now is kept "
            "first, as a copy beside the data file that can be opened again."
        )
        column.addWidget(Label(explained, wrap=True))
        page = Page(theme)
        page.body.setContentsMargins(0, 0, 0, 0)
        page.body.addWidget(self.change, 0, Qt.AlignmentFlag.AlignTop)
        page.body.addStretch(1)
        column.addWidget(page, 1)
        row = QHBoxLayout()
        row.addStretch(1)
        row.addWidget(leave)
        row.addWidget(self.take)
        column.addLayout(row)
        self.resize(theme.grid(76), theme.grid(50))
        self.take.setFocus()


def taking_over_text(people: Sequence[Person], today: date) -> str:
    """What taking everything over would change, a line for each trainee."""
    otherwise = [one for one in people if one.now != one.then]
    lines = [_person_text(one, today) for one in otherwise]
    alike = len(people) - len(otherwise)
    if alike == 1:
        lines.append(
            translate("TakeOver", "1 trainee has as many sessions there, up to the same day.")
        )
    elif alike:
        text = translate(
            "TakeOver", "{count} trainees have as many sessions there, up to the same day."
        )
        lines.append(text.format(count=words.number(alike)))
    return "\n".join(lines) or translate("TakeOver", "There is no trainee in it.")


def _person_text(person: Person, today: date) -> str:
    if person.now is None:
        text = translate("TakeOver", "{name} comes in: {then}")
    elif person.then is None:
        text = translate("TakeOver", "{name} goes: {now}")
    else:
        text = translate("TakeOver", "{name}: {then}, in place of {now}")
    return text.format(
        name=person.name,
        now=_held_text(person.now, today),
        then=_held_text(person.then, today),
    )


def _held_text(held: Held | None, today: date) -> str:
    if held is None or held.last is None:
        return translate("TakeOver", "no session")
    text = translate("TakeOver", "{sessions}, the last of {day}")
    return text.format(sessions=sessions_text(held.sessions), day=words.short_day(held.last, today))
