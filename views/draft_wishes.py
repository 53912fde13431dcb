"""The wishes that a program is drafted from, and what to avoid, as fields."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, Signal
from PySide6.QtWidgets import QWidget

from desktop.planning.drafts import (
    LEAST_MINUTES,
    MOST_DAYS,
    MOST_MINUTES,
    Aim,
    EquipmentClass,
    WishesSaid,
)
from desktop.training.trainee import Experience
from views.blocks import Block, Label
from views.captioned import Captioned, ChoiceBox
from views.draft_texts import equipment_word
from views.exercise_words import avoided_value, avoided_word
from views.flow_layout import FieldFlow
from views.number_fields import FieldError, WholeField
from views.rows_editor import TextField
from views.theme import Theme

translate = QCoreApplication.translate


class DraftWishesBlock(Block):
    """Fields for every wish; ``edited`` when one of them says something else."""

    edited = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, parent=parent)
        self.days = WholeField(self.tr("Days a week"), 1, MOST_DAYS, optional=False)
        self.minutes = WholeField(
            self.tr("Minutes a session"), LEAST_MINUTES, MOST_MINUTES, optional=False
        )
        self.equipment = ChoiceBox(self.tr("Equipment"))
        self.level = ChoiceBox(self.tr("Level"))
        self.aim = ChoiceBox(self.tr("Goal"))
        self.avoid = TextField(self.tr("Avoid"))
        self.avoid.setPlaceholderText(self.tr("lunge, deadlift, chest"))
        self.avoid.setToolTip(
            self.tr("Patterns, exercises, muscles, or words in their names, with commas between")
        )
        self.error = FieldError()
        self.about = Label(tone="muted", wrap=True)
        line = QWidget()
        flow = FieldFlow(theme.px(14), theme.px(8), line)
        for caption, field, width in (
            (self.tr("Days a week"), self.days, 80),
            (self.tr("Minutes"), self.minutes, 80),
            (self.tr("Level"), self.level, 130),
            (self.tr("Goal"), self.aim, 110),
            (self.tr("Equipment"), self.equipment, 330),
        ):
            flow.addWidget(Captioned(theme, caption, field, width))
        flow.addWidget(Captioned(theme, self.tr("Avoid"), self.avoid, 230, grow=True))
        for part in (line, self.error, self.about):
            self.body.addWidget(part)
        for number in (self.days, self.minutes):
            number.error_changed.connect(self.error.setText)
            number.textEdited.connect(self.edited)
        for box in (self.equipment, self.level, self.aim):
            box.picked.connect(self.edited)
        self.avoid.textEdited.connect(self._avoid_edited)

    @property
    def avoided(self) -> tuple[str, ...]:
        """What is to be avoided: as typed, or a pattern or muscle as the model names it."""
        parts = (part.strip() for part in self.avoid.text().split(","))
        return tuple(avoided_value(part) for part in parts if part)

    @property
    def said(self) -> WishesSaid | None:
        """The wishes; None where a number is not allowed (the coach is told beside it)."""
        fields = (self.days, self.minutes)
        wrong = next((field for field in fields if not field.check()), None)
        days, minutes = self.days.whole, self.minutes.whole
        if wrong is not None or days is None or minutes is None:
            if wrong is not None:
                wrong.setFocus()
            return None
        return WishesSaid(
            days, minutes, self.equipment.choice, self.level.choice, self.aim.choice, self.avoided
        )

    def offer(self, owner: str, about: str) -> None:
        """Offer equipment, also what ``owner`` has ("": it is not known); ``about``: what else
        to keep in mind.
        """
        kinds: list[tuple[EquipmentClass | None, str]] = [
            (each, _capital(equipment_word(each))) for each in EquipmentClass
        ]
        if owner:
            kinds.insert(0, (None, self.tr("what {name} owns").format(name=owner)))
        self.equipment.offer(kinds, self.equipment.choice)
        self.level.offer([(each, level_word(each)) for each in Experience], self.level.choice)
        self.aim.offer([(each, aim_word(each)) for each in Aim], self.aim.choice)
        self.about.setText(about)
        self.about.setVisible(bool(about))

    def show_wishes(self, said: WishesSaid) -> None:
        """Show wishes; emits nothing."""
        self.days.set_value(said.days)
        self.minutes.set_value(said.minutes)
        self.equipment.choose(said.kind)
        self.level.choose(said.level)
        self.aim.choose(said.aim)
        self.avoid.set_value(", ".join(avoided_word(each, {}) for each in said.avoid))
        self.error.setText("")

    def refuse(self, text: str) -> None:
        """Say which wish nobody could meet; the cursor goes to where it is typed."""
        self.error.setText(text)
        self.avoid.setFocus()

    def take_focus(self) -> None:
        """Put the cursor into the first field."""
        self.days.setFocus()
        self.days.selectAll()

    def _avoid_edited(self) -> None:
        self.error.setText("")
        self.edited.emit()


def level_word(level: Experience) -> str:
    """How long somebody has trained, in a word."""
    return {
        Experience.NOVICE: translate("Drafts", "novice"),
        Experience.INTERMEDIATE: translate("Drafts", "intermediate"),
        Experience.ADVANCED: translate("Drafts", "advanced"),
    }[level]


def aim_word(aim: Aim) -> str:
    """What the training is for, in a word."""
    return {
        Aim.STRENGTH: translate("Drafts", "strength"),
        Aim.SIZE: translate("Drafts", "size"),
        Aim.SKILL: translate("Drafts", "skill"),
    }[aim]


def _capital(text: str) -> str:
    return f"{text[:1].upper()}{text[1:]}"
