"""The import: a file is chosen or dropped, read, looked at, and taken in as one step."""

from __future__ import annotations

from collections.abc import Callable, Generator
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QStackedWidget, QWidget

from db.errors import StoreError
from desktop.planning.arriving_files import (
    Arriving,
    ArrivingTable,
    CannotRead,
    opening,
    reading,
    with_kept,
)
from desktop.planning.everything_files import holds_everything
from desktop.planning.exercise_search import find_exercises
from desktop.planning.log_prospect import (
    Decisions,
    Fate,
    NameQuestion,
    Prospect,
    foreseeing,
    hand_back_lines,
    like,
)
from desktop.planning.table_columns import with_role
from desktop.planning.table_import import MappedTable
from desktop.planning.taking_in import Parcel, parcel_of, take_parcel, taking_in
from desktop.training.exercises import Exercise
from desktop.training.quantities import Unit
from desktop.training.table_mapping import Role, TableMapping
from views import words
from views.exercise_words import exercise_kind
from views.file_dialogs import ask_source, ask_target
from views.import_page import ImportPage
from views.import_texts import brought, prospect_text, thing_text
from views.import_welcome import ImportDone, ImportWelcome, ParcelPage
from views.record import MessageKind, Record
from views.sentences import worded
from views.steps_runner import StepsRunner
from views.theme import Theme
from views.work_area import WorkArea
from views.work_areas import DESK
from views.work_panel import WorkPanel


class ImportArea(WorkArea):
    """Shows one file at a time. Nothing is written before `take_in`."""

    def __init__(
        self, record: Record, today: date, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(record, today, theme, parent)
        self.arriving: ArrivingTable | None = None
        self.prospect: Prospect | None = None
        self.parcel: Parcel | None = None
        self._path: Path | None = None
        self._guess = TableMapping()
        self._mapped: MappedTable | None = None
        self._decisions = Decisions()
        self._asked: Callable[[object], None] = lambda _value: None
        self.runner = StepsRunner(self)
        self.writer = StepsRunner(self)
        self.welcome, self.page = ImportWelcome(theme), ImportPage(theme)
        self.parcel_page, self.done = ParcelPage(theme), ImportDone(theme)
        self.panel = WorkPanel(theme, self)
        self._stack = QStackedWidget()
        for page in (self.welcome, self.page, self.parcel_page, self.done):
            self._stack.addWidget(page)
        self.outer.addWidget(self._stack)
        self._connect()

    def _connect(self) -> None:
        for page in (self.page, self.parcel_page, self.done):
            page.other_wanted.connect(self.ask_file)
        self.welcome.file_wanted.connect(self.ask_file)
        page = self.page
        page.mapping_changed.connect(self.use_mapping)
        page.role_chosen.connect(self._role_chosen)
        page.doubtful_agreed.connect(self._agree)
        page.take_wanted.connect(self.take_in)
        page.hand_back_wanted.connect(self.ask_where)
        page.stopped.connect(self.runner.give_up)
        page.options.sheet_wanted.connect(self._open_sheet)
        page.names.answered.connect(self.answer)
        page.names.find_wanted.connect(self._ask_other)
        page.names.like_wanted.connect(self._ask_like)
        page.names.nearest_taken.connect(self._take_nearest)
        page.chooser.chosen.connect(lambda value: self._asked(value))
        self.parcel_page.take_wanted.connect(self._take_parcel)
        self.done.hand_back_wanted.connect(self.ask_where)
        self.done.desk_wanted.connect(lambda: self.area_wanted.emit(DESK))
        self.runner.progressed.connect(page.reading)
        self.runner.ended.connect(lambda: page.reading(None))
        self.writer.went_on.connect(self._write_long)
        self.writer.progressed.connect(lambda share: self.panel.bar.setValue(round(1000 * share)))
        self.writer.ended.connect(self.panel.end)
        self.panel.given_up.connect(self._cancel)

    def keys(self) -> tuple[tuple[str, str], ...]:
        """What keys do here."""
        return (
            (self.tr("Another file"), "Ctrl+Shift+I"),
            (self.tr("All lines, doubtful ones, refused ones"), "A, D, R"),
            (self.tr("Take doubtful lines too"), "T"),
            (self.tr("Take the nearest name for all"), "F6"),
            (self.tr("Save the lines that are not taken"), "Ctrl+Shift+B"),
            (self.tr("Take it in"), "Ctrl+Return"),
        )

    def refresh(self) -> None:
        """Something was saved: what would become of the lines may be otherwise now."""
        if self._stack.currentWidget() is self.page and self._mapped is not None:
            self._foresee()
        elif self._stack.currentWidget() is self.welcome:
            self._welcome()

    # Choosing and reading

    def ask_file(self) -> None:
        """Ask for a file, and read it."""
        tables = self.tr("Tables, programs, trainees (*.csv *.tsv *.txt *.xlsx *.xlsm *.json)")
        kinds = (tables, self.tr("All files (*)"))
        ask_source(self, self.tr("Choose a file to bring in"), kinds, self.open_file)

    def open_file(self, path: Path, sheet: str = "") -> None:
        """Read a file and show what is in it; one that holds everything goes elsewhere."""
        if _holds_everything(path):
            self.everything_brought.emit(path)
            return
        self._path = path
        unit = Unit.KG
        people = self.record.repository.trainees()
        if people and all(each.unit is Unit.LB for each in people):
            unit = Unit.LB
        self._work(opening(path, self.record.repository, unit, sheet), self._opened, self._welcome)

    def _open_sheet(self, sheet: str) -> None:
        if self._path is not None:
            self.open_file(self._path, sheet)

    def _opened(self, found: Arriving) -> None:
        self.prospect, self._mapped = None, None
        self.page.ask_nothing()
        if not isinstance(found, ArrivingTable):
            self.arriving = None
            self._show_parcel(parcel_of(self.record.repository, found))
            return
        self.arriving = found
        self._guess = found.guess
        mapping = found.mapping
        if not mapping.trainee and not found.own and Role.TRAINEE not in mapping.roles:
            mapping = replace(mapping, trainee=self._chosen_name())
        self._decisions = Decisions(mapping.names)
        self.page.options.name.setText(mapping.name)
        self._stack.setCurrentWidget(self.page)
        self.use_mapping(mapping)
        self.page.table.setFocus(Qt.FocusReason.OtherFocusReason)

    def use_mapping(self, mapping: TableMapping) -> None:
        """Read the table by another mapping."""
        if self.arriving is None:
            return
        if mapping.name != self.arriving.mapping.name:
            self._decisions = replace(self._decisions, names=mapping.names)
        self.arriving = replace(self.arriving, mapping=mapping)
        people = [each.name for each in self.record.repository.trainees()]
        self.page.show_options(self.arriving, self._guess, people)
        self._work(reading(self.arriving, self.today), self._mapped_now)

    def _role_chosen(self, place: int, role: Role) -> None:
        if self.arriving is not None:
            self.use_mapping(with_role(self.arriving.mapping, place, role))

    def _mapped_now(self, mapped: MappedTable) -> None:
        self._mapped = mapped
        self._foresee()

    def _foresee(self) -> None:
        if self._mapped is not None:
            work = foreseeing(self.record.repository, self._mapped, self._decisions)
            self._work(work, self._foreseen)

    def _foreseen(self, prospect: Prospect) -> None:
        self.prospect = prospect
        if self.arriving is not None:
            self.page.show_prospect(self.arriving, prospect, self._unit())

    def _work(
        self,
        work: Generator[float, None, Any],
        then: Callable[[Any], None],
        wrong: Callable[[str], None] | None = None,
    ) -> None:
        def failed(error: Exception) -> None:
            if isinstance(error, StoreError):
                self.record.reported(error)
            elif isinstance(error, CannotRead | OSError):
                (wrong or self._say_wrong)(_sentence(error))
            else:
                raise error

        self.runner.start(work, then, failed)

    def _welcome(self, wrong: str = "") -> None:
        kept = [each.name for each in self.record.repository.coach_settings().tables]
        self.welcome.say(kept, wrong)
        self._stack.setCurrentWidget(self.welcome)
        self.welcome.choose.setFocus(Qt.FocusReason.OtherFocusReason)

    def _say_wrong(self, text: str) -> None:
        self.record.say(text, MessageKind.ERROR)

    # What names stand for

    def answer(self, name: str, meaning: str, exercise: Exercise | None = None) -> None:
        """A name of the file stands for this trainee or exercise key, or is left out ("": asked
        again); ``exercise``: the new one that it is.
        """
        names = tuple(each for each in self._decisions.names if each[0] != name)
        new = self._decisions.new_exercises
        self._decisions = replace(
            self._decisions,
            names=(*names, (name, meaning)) if meaning else names,
            new_exercises=(*new, exercise) if exercise is not None else new,
        )
        self._foresee()

    def _take_nearest(self) -> None:
        open_ones = self.prospect.names if self.prospect is not None else ()
        said = tuple(
            (each.name, each.nearest[0][0])
            for each in open_ones
            if not each.answer and each.nearest
        )
        self._decisions = replace(self._decisions, names=(*self._decisions.names, *said))
        self._foresee()

    def _agree(self, on: bool) -> None:
        self._decisions = replace(self._decisions, take_doubtful=on)
        self._foresee()

    def _ask_other(self, question: NameQuestion) -> None:
        self._asked = lambda value: self.answer(question.name, str(value))
        title = self.tr("What is {name}?").format(name=question.name)
        find = self._people if question.kind == "trainee" else self._exercises_for(question)
        self.page.ask(title, find)

    def _ask_like(self, question: NameQuestion) -> None:
        def made(value: object) -> None:
            keys = [each.key for each in self.record.repository.exercises(retired=True)]
            keys += [each.key for each in self._decisions.new_exercises]
            model = self.record.repository.exercise(str(value))
            exercise = like(model, question.name, keys)
            self.answer(question.name, exercise.key, exercise)

        self._asked = made
        title = self.tr("{name} is loaded like").format(name=question.name)
        find = self._exercises_for(question)
        self.page.ask(title, find)

    def _exercises_for(self, question: NameQuestion) -> Callable[[str], list[tuple[str, Any]]]:
        """Finds exercises by what is typed; by the name asked about while nothing is."""
        known = self.record.repository.exercises()

        def find(text: str) -> list[tuple[str, Any]]:
            found = find_exercises(text.strip() or question.name, known)
            return [(f"{each.name}{words.DOT}{exercise_kind(each)}", each.key) for each in found]

        return find

    def _people(self, text: str) -> list[tuple[str, Any]]:
        wanted = text.casefold()
        names = [each.name for each in self.record.repository.trainees()]
        return [(name, name) for name in names if wanted in name.casefold()]

    # Taking in

    def take_in(self) -> None:
        """Take in what can be, as one step that can be undone."""
        if self.prospect is None or self.prospect.empty or self.writer.busy:
            return
        work = taking_in(self.record.repository, self.prospect.plan, self._kept_tables())
        self.writer.start(work, self._taken, self._not_taken)

    def _kept_tables(self) -> tuple[TableMapping, ...] | None:
        """The coach's mappings with this one, None where it is not to be kept."""
        name = self.page.options.name.text().strip()
        if self.arriving is None or self.arriving.own or not name:
            return None
        known = self.record.repository.coach_settings().tables
        mapping = replace(self.arriving.mapping, name=name, names=self._decisions.names)
        return with_kept(known, mapping)

    def _write_long(self) -> None:
        self.panel.begin(self.tr("Taking it in…"))

    def _cancel(self) -> None:
        self.writer.give_up()
        self.record.say(self.tr("Cancelled: nothing was taken in."))

    def _not_taken(self, error: Exception) -> None:
        if not isinstance(error, StoreError):
            raise error
        self.record.reported(error)
        self._foresee()

    def _taken(self, result: Any) -> None:
        changes, before = result
        prospect, name = self.prospect, self._path.name if self._path is not None else ""
        self._mapped = None
        self.record.took(self.tr("Take in {file}").format(file=name), changes, before)
        said = brought(changes) if prospect is None else prospect_text(prospect, taken=True)
        text = self.tr("{file} is taken in. Undo takes all of it out again.")
        self.record.say(text.format(file=name), MessageKind.DONE)
        left = prospect.count(Fate.REFUSED, Fate.HELD) if prospect is not None else 0
        more = self.tr("All of it is in.")
        if left:
            more = self.tr("{count} lines were not taken. Save them as a file, mend them there, "
                           "and bring that file in.").format(count=words.number(left))  # fmt: skip
        self.done.say(self.tr("{file} is taken in").format(file=name), said, more, left=left > 0)
        self._stack.setCurrentWidget(self.done)
        self.done.desk.setFocus(Qt.FocusReason.OtherFocusReason)

    def _show_parcel(self, parcel: Parcel) -> None:
        self.parcel = parcel
        name = self._path.name if self._path is not None else ""
        things = [thing_text(each) for each in parcel.things]
        self.parcel_page.say(name, self.tr("before it is taken in"), things, worded(parcel.wrong))
        self._stack.setCurrentWidget(self.parcel_page)
        self.parcel_page.take.setFocus(Qt.FocusReason.OtherFocusReason)

    def _take_parcel(self) -> None:
        if self.parcel is not None:
            work = take_parcel(self.record.repository, self.parcel)
            self.writer.start(work, self._taken, self._not_taken)

    # Lines handed back

    def ask_where(self) -> None:
        """Ask for a file, and write the lines there that are not taken."""
        if self._path is None:
            return
        title = self.tr("Save the lines that are not taken")
        name = self.tr("{name} not taken.csv").format(name=self._path.stem).removesuffix(".csv")
        ask_target(self, title, name, "csv", self.hand_back, self._path.parent)

    def hand_back(self, path: Path) -> None:
        """Write the lines that are not taken, each with the reason."""
        if self.prospect is None:
            return
        try:
            count = hand_back_lines(self.prospect, path)
        except OSError as error:
            self._say_wrong(_sentence(error))
            return
        text = self.tr("{count} lines saved to {path}, each with the reason.")
        self.record.say(text.format(count=words.number(count), path=path))

    # Who and in which unit

    def _chosen_name(self) -> str:
        people = self.record.repository.trainees()
        return next((each.name for each in people if each.id == self.trainee_id), "")

    def _unit(self) -> Unit:
        mapping = self.arriving.mapping if self.arriving is not None else None
        return (mapping.unit if mapping is not None else None) or Unit.KG


def _holds_everything(path: Path) -> bool:
    try:
        return holds_everything(path)
    except OSError:  # whoever reads it next says so
        return False


def _sentence(error: Exception) -> str:
    return worded(error.strerror or error) if isinstance(error, OSError) else worded(error)
