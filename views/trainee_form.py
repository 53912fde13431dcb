"""The trainee: who, how, when, with what; screening, consent and clearance. Saved as typed."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date

from PySide6.QtCore import QCoreApplication, QTimer

from db.changes import Changes
from desktop.training.equipment import Equipment
from desktop.training.trainee import BodyMass, EquipmentFrom, Trainee
from views import words
from views.absence_block import AbsenceBlock
from views.blocks import Block, Heading, Label, Page, WordButton
from views.equipment_editor import EquipmentEditor
from views.general_caution import general_caution, red_flags
from views.goal_block import GoalBlock
from views.record import MessageKind, Record
from views.theme import Theme
from views.trainee_fields import HealthFields, MassFields, PersonFields
from views.work_area import WorkArea

translate = QCoreApplication.translate


class TraineeForm(WorkArea):
    """Creates a trainee once a name stands, and saves every change as one act of undo."""

    def __init__(self, record: Record, today: date, theme: Theme) -> None:
        super().__init__(record, today, theme)
        self._trainee: Trainee | None = None
        self._page = Page(theme)
        self._remove = WordButton(self.tr("Remove"), tone="stop")
        self._archive = WordButton("")
        self._heading = Heading(theme, self._archive, self._remove)
        self._page.body.addWidget(self._heading)
        self.person = PersonFields(theme)
        self.health = HealthFields(theme, today)
        self.mass = MassFields(theme, today)
        self._page.body.addWidget(self._block(self.tr("Person"), self.person))
        self._page.body.addWidget(self._block(self.tr("Body mass"), self.mass))
        self.goals = GoalBlock(record, today, theme)
        self.absences = AbsenceBlock(record, today, theme)
        self._page.body.addWidget(self.goals)
        self._page.body.addWidget(self.absences)
        self._page.body.addWidget(self._health_block())
        self._equipment_block = Block(theme)
        self._page.body.addWidget(self._equipment_block)
        self._page.body.addStretch(1)
        self.equipment = self._new_equipment_editor()
        self.outer.addWidget(self._page)
        self.person.edited.connect(self._save)
        self.health.edited.connect(self._save)
        self.mass.edited.connect(self._save_mass)
        self._remove.clicked.connect(self._remove_trainee)
        self._archive.clicked.connect(self._toggle_archived)

    def concerns(self, changes: Changes) -> bool:
        return self.trainee_id is not None and super().concerns(changes)

    def refresh(self) -> None:
        """Show the trainee chosen, or empty fields for somebody new."""
        store = self.record.repository
        before = self._trainee
        self._trainee = store.trainee(self.trainee_id) if self.trainee_id is not None else None
        shown = self._trainee or Trainee("", unit=store.coach_settings().unit)
        if before is None or before.unit is not shown.unit:
            self.equipment = self._new_equipment_editor()
            self.mass.set_unit(shown.unit)
        self.person.show_trainee(shown)
        self.health.show_trainee(shown)
        masses = store.body_masses(self.trainee_id) if self.trainee_id is not None else ()
        self.mass.show_masses(masses, shown.unit)
        self.goals.show_trainee(self.trainee_id)
        self.absences.show_trainee(self._trainee)
        self.equipment.set_equipment(self._latest_equipment())
        self._say_heading()
        if self._trainee is None:
            self.person.name.setFocus()

    def begin_absence(self) -> None:
        """Put the cursor on days away, where they are typed."""
        self._begin_in(self.absences, self.absences.form.begin)

    def begin_goal(self) -> None:
        """Put the cursor on a new goal."""
        self._begin_in(self.goals, self.goals.form.begin)

    def _begin_in(self, block: Block, begin: Callable[[], None]) -> None:
        begin()
        # Once the page is laid out, all of the block is brought into view, its foot last.
        QTimer.singleShot(0, block, lambda: self._page.ensureWidgetVisible(block))

    def _say_heading(self) -> None:
        saved = self._trainee is not None
        if self._trainee is None:
            self._heading.say(self.tr("Somebody new"), self.tr("kept as soon as a name stands"))
        else:
            self._heading.say(
                self._trainee.name, self.tr("every change is kept, and can be undone")
            )
            self._archive.set_words(
                self.tr("Bring back") if self._trainee.archived else self.tr("Archive")
            )
        for below in (
            self.mass,
            self.goals,
            self.absences,
            self._equipment_block,
            self._archive,
            self._remove,
        ):
            below.setEnabled(saved)
        self._archive.setVisible(saved)
        self._remove.setVisible(saved)

    def _block(self, title: str, *widgets: PersonFields | HealthFields | MassFields) -> Block:
        block = Block(self.theme)
        block.body.addWidget(Label(title, "heading"))
        for widget in widgets:
            block.body.addWidget(widget)
        return block

    def _health_block(self) -> Block:
        block = self._block(self.tr("Health and consent"), self.health)
        block.body.insertWidget(
            1, Label(f"{general_caution()} {red_flags()}", tone="muted", wrap=True)
        )
        return block

    def _new_equipment_editor(self) -> EquipmentEditor:
        body = self._equipment_block.body
        while (item := body.takeAt(0)) is not None:
            if (widget := item.widget()) is not None:
                widget.hide()
                widget.deleteLater()
        body.addWidget(Label(self.tr("Equipment"), "heading"))
        body.addWidget(
            Label(
                self.tr(
                    "A change counts from today on; earlier sessions keep what was there then."
                ),
                tone="muted",
                wrap=True,
            )
        )
        shown = self._trainee or Trainee("")
        editor = EquipmentEditor(self.theme, shown.unit, self.today)
        editor.edited.connect(self._save_equipment)
        body.addWidget(editor)
        return editor

    def _latest_equipment(self) -> Equipment:
        if self.trainee_id is None:
            return Equipment()
        entries = self.record.repository.equipment(self.trainee_id)
        return entries[-1].equipment if entries else Equipment()

    def _save(self) -> None:
        known = self._trainee
        wanted = self.health.read_into(self.person.read_into(known or Trainee("")))
        if not wanted.name:
            self.record.say(self.tr("A trainee needs a name."), MessageKind.NOTE)
            return
        if wanted == known or not self._name_is_free(wanted):
            return
        act = self.tr("Add {name}") if known is None else self.tr("Change {name}")
        saved = self.record.save(act.format(name=wanted.name), wanted)
        if saved and known is None:
            self._trainee = saved[0]
            self.trainee_wanted.emit(saved[0].id)

    def _name_is_free(self, wanted: Trainee) -> bool:
        other = self.record.repository.trainee_named(wanted.name)
        free = other is None or other.id == wanted.id
        self.person.name_error.setText("" if free else self.tr("Somebody has this name already."))
        return free

    def _save_mass(self) -> None:
        day, mass_g = self.mass.day.day, self.mass.mass.grams
        if self.trainee_id is None or day is None or mass_g is None:
            return
        known = self.record.repository.body_masses(self.trainee_id)
        same_day = next((entry for entry in known if entry.day == day), None)
        entry = BodyMass(self.trainee_id, day, mass_g)
        wanted = replace(same_day, mass_g=mass_g) if same_day else entry
        if wanted != same_day:
            self.record.save(self.tr("Body mass on {day}").format(day=words.short_day(day)), wanted)

    def _save_equipment(self) -> None:
        if self.trainee_id is None:
            return
        equipment = self.equipment.equipment()
        entries = self.record.repository.equipment(self.trainee_id)
        if entries and entries[-1].equipment == equipment:
            return
        if entries and entries[-1].day == self.today:
            wanted = replace(entries[-1], equipment=equipment)
        else:
            wanted = EquipmentFrom(self.trainee_id, self.today, equipment)
        self.record.save(self.tr("Change the equipment"), wanted)

    def _toggle_archived(self) -> None:
        if self._trainee is not None:
            back = self._trainee.archived
            act = self.tr("Bring {name} back") if back else self.tr("Archive {name}")
            text = act.format(name=self._trainee.name)
            if self.record.save(text, replace(self._trainee, archived=not back)):
                self.record.say(text, MessageKind.DONE)

    def _remove_trainee(self) -> None:
        if self._trainee is not None:
            text = self.tr("Remove {name} and all sessions").format(name=self._trainee.name)
            gone = self._trainee
            self._trainee = None
            if self.record.remove(text, gone):
                self.record.say(text, MessageKind.DONE)
                self.area_wanted.emit("desk")
