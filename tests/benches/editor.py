"""The program editor with a program of 52 weeks, 4 days, 6 slots a day: opening it, one edit until
its cell is repainted, and the weeks ahead after an edit.
"""

from __future__ import annotations

import tempfile
import time
from collections.abc import Callable, Iterator
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QEvent, QEventLoop, QObject
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from db.repository import Repository
from desktop.planning.assignments import assign
from desktop.training.program import Phase, PhasePurpose, Program, TrainingDay
from desktop.training.program_edits import SlotPlace, slot_at, with_slot
from desktop.training.rules import new_slot
from desktop.training.trainee import BodyMass, EquipmentFrom, Trainee
from tests.benches.measure import Line
from tests.benches.people import GYM, TODAY, opened
from views.program_editor import ProgramEditor
from views.program_page import ProgramPage
from views.record import Record
from views.theme import Theme
from views.weeks_page import WeeksPage

FRAME_MS, WEEKS_MS, OPEN_MS = 16.7, 100.0, 150.0
ROUNDS = 15
EXERCISES = (
    "back-squat", "bench-press", "bent-over-row", "deadlift", "overhead-press", "plank",
    "front-squat", "push-up", "pull-up", "l-sit", "romanian-deadlift", "hip-thrust",
)  # fmt: skip


def lines() -> Iterator[Line]:
    """The editor, for nobody and for a trainee whom the program runs for."""
    application = QApplication.instance() or QApplication([])
    assert isinstance(application, QApplication)
    with tempfile.TemporaryDirectory() as folder:
        repository = opened(Path(folder) / "editor.db")
        program = repository.save(_program(repository)).saved[0]
        yield from _edits(application, repository, program, None, "52 weeks, for nobody")
        trainee = repository.save(Trainee("Seat 1", weekdays=(0, 1, 3, 4))).saved[0]
        repository.save(BodyMass(trainee.id, TODAY, 75_000), EquipmentFrom(trainee.id, TODAY, GYM))
        repository.save(*assign(repository, trainee.id, program.id, TODAY).aggregates)
        yield from _edits(application, repository, program, trainee.id, "52 weeks, running")
        repository.database.close()


def _program(repository: Repository) -> Program:
    """Build phases of 12 weeks with an easier week behind each, 52 weeks in all."""
    known = {each.key: each for each in repository.exercises()}
    keys = [key for key in EXERCISES if key in known]
    days = tuple(
        TrainingDay(
            f"Day {weekday}",
            tuple(new_slot(known[keys[(number * 6 + at) % len(keys)]]) for at in range(6)),
            weekday,
        )
        for number, weekday in enumerate((0, 1, 3, 4))
    )
    days = tuple(
        replace(day, slots=tuple(replace(s, line_name=day.name) for s in day.slots)) for day in days
    )
    phases = tuple(
        Phase(f"Part {number}", weeks, days, purpose)
        for number in range(4)
        for weeks, purpose in ((12, PhasePurpose.BUILD), (1, PhasePurpose.DELOAD))
    )
    return Program("All year", phases)


def _edits(
    application: QApplication,
    repository: Repository,
    program: Program,
    trainee_id: int | None,
    name: str,
) -> Iterator[Line]:
    editor = ProgramEditor(Record(repository), TODAY, Theme(calm=True))
    editor.resize(1064, 760)
    editor.show()
    editor.show_trainee(trainee_id)
    assert program.id is not None
    identity = program.id

    def open_it() -> None:
        editor.open_program(identity)
        _painted(application)

    editor.show_shelf()
    yield Line(f"{name}: open", _median(open_it, before=editor.show_shelf), goal=OPEN_MS)
    page, place = editor.page, SlotPlace(0, 0, 0)
    assert page is not None
    page.open(place)
    _painted(application)
    yield Line(f"{name}: a digit typed shows in its row", _typed(page), goal=FRAME_MS)
    shown, whole = _edited(editor, page)
    yield Line(f"{name}: an edit repaints its row", shown, goal=FRAME_MS)
    yield Line(f"{name}: an edit is saved and all of the page is new", whole, goal=WEEKS_MS)
    editor.show_weeks()
    while editor.weeks.working:
        application.processEvents()
    weeks = editor.weeks.page
    assert weeks is not None
    yield Line(f"{name}: weeks ahead after an edit", _weeks(editor, weeks), goal=WEEKS_MS)
    editor.close()
    editor.deleteLater()


def _typed(page: ProgramPage) -> float:
    field, row = page.slot_panel.fields.load, page.days[0].rows[0]
    field.setFocus()
    field.selectAll()
    digits = iter("62" * ROUNDS)

    def type_one() -> None:
        QTest.keyClicks(field, next(digits))
        row.repaint()

    return _median(type_one, before=field.selectAll)


def _edited(editor: ProgramEditor, page: ProgramPage) -> tuple[float, float]:
    """Until the row of the slot is painted anew, and until all is saved and shown."""
    row, loads = page.days[0].rows[0], iter(range(40_000, 100_000, 2_500))
    began = 0.0
    painted: list[float] = []

    class Watch(QObject):
        def eventFilter(self, watched: QObject, event: QEvent) -> bool:
            if event.type() is QEvent.Type.Paint:
                painted.append((time.perf_counter() - began) * 1000)
            return False

    watch = Watch()
    times: list[float] = []
    row.installEventFilter(watch)

    def edit() -> None:
        nonlocal began
        assert editor.program is not None
        slot = slot_at(editor.program, SlotPlace(0, 0, 0))
        start = replace(slot.start, load_g=next(loads))
        painted.clear()
        began = time.perf_counter()
        page.slot_panel.edited.emit(replace(slot, start=start), "start")
        times.append(painted[0])

    whole = _median(edit)
    row.removeEventFilter(watch)
    return sorted(times)[len(times) // 2], whole


def _weeks(editor: ProgramEditor, page: WeeksPage) -> float:
    loads = iter(range(41_000, 120_000, 2_500))

    def edit() -> None:
        assert editor.program is not None
        place = SlotPlace(0, 0, 0)
        slot = slot_at(editor.program, place)
        start = replace(slot.start, load_g=next(loads))
        editor.record.save("start", with_slot(editor.program, place, replace(slot, start=start)))
        while editor.weeks.working:
            QApplication.processEvents()
        QApplication.sendPostedEvents()
        QApplication.processEvents()

    return _median(edit)


def _painted(application: QApplication) -> None:
    application.processEvents(QEventLoop.ProcessEventsFlag.ExcludeUserInputEvents)


def _median(task: Callable[[], object], before: Callable[[], object] | None = None) -> float:
    times: list[float] = []
    for number in range(ROUNDS + 1):
        if before is not None:
            before()
        began = time.perf_counter()
        task()
        if number:
            times.append((time.perf_counter() - began) * 1000)
    return sorted(times)[len(times) // 2]
