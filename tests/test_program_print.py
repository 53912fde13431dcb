"""A whole program on paper: its words, its pages, and the verb that prints it."""

from __future__ import annotations

from importlib import import_module
from pathlib import Path

import pytest

from db.database import Database
from db.repository import Repository
from desktop import command_line
from desktop.catalogue import load_catalogue
from desktop.demo import MONDAY_AFTER, fill
from desktop.planning.history import read_history, read_library
from desktop.planning.outlook import Onlooker
from desktop.planning.program_weeks import ProgramWeeks
from desktop.planning.weeks_table import program_weeks
from desktop.verbs.terminal import Sheets
from views import reason_texts
from views.paper import Paper
from views.program_print import make_program_sheet
from views.program_text import program_text

NAME = "Winter room, barbell"

pytestmark = pytest.mark.usefixtures("english")


@pytest.fixture(scope="module")
def path(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("print") / "demo.db"
    repository = Repository(Database.open(path))
    repository.sync_catalogue(load_catalogue())
    fill(repository, MONDAY_AFTER)
    repository.database.close()
    return path


def fetched() -> Sheets:
    sheets: Sheets = import_module("views.sheets")
    return sheets


def weeks_of(path: Path, trainee: str = "") -> ProgramWeeks:
    repository = Repository(Database.open(path))
    library = read_library(repository)
    history = None
    if trainee:
        found = repository.trainee_named(trainee)
        assert found is not None
        assert found.id is not None
        history = read_history(repository, found.id, library)
    program = next(each for each in library.programs.values() if each.name == NAME)
    weeks = program_weeks(program, Onlooker(library, MONDAY_AFTER, history))
    repository.database.close()
    return weeks


def test_every_phase_day_and_week_is_told(path: Path) -> None:
    text = program_text(weeks_of(path, "Bow"), most_weeks=8)
    assert (text.name, text.whose) == (NAME, "Bow")
    assert [phase.detail for phase in text.phases] == [
        "weeks 1 to 6", "week 7", "weeks 8 to 14", "week 15", "weeks 16 to 24",
    ]  # fmt: skip
    last = text.phases[-1]
    # nine weeks are two tables, each with all three days
    assert [len(day.weeks) for day in last.days] == [5, 5, 5, 4, 4, 4]
    squat = last.days[0].slots[0]
    assert squat.name == "Back squat, heavy"
    assert (squat.cells[1].above, squat.cells[1].below) == ("3×7", "60")
    assert "2 in reserve" in squat.how
    assert text.phases[1].days[0].weeks[0].below == "deload"
    assert last.volume.startswith("Hard sets in week 16: ")


def test_a_program_for_nobody_tells_no_days(path: Path) -> None:
    text = program_text(weeks_of(path))
    assert text.whose == ""
    assert "from the starts of its slots" in text.detail
    assert text.phases[0].days[0].weeks[0].below == ""


@pytest.mark.parametrize("paper", Paper)
def test_no_table_is_broken_and_nothing_leaves_the_page(
    path: Path, paper: Paper, qapp: object
) -> None:
    sheet = make_program_sheet(weeks_of(path, "Bow"), paper)
    assert 3 <= len(sheet.pages) <= 6
    foot = paper.height_mm * 20
    for page in sheet.pages:
        for placed in page.blocks:
            assert placed.at.y() + placed.block.height <= foot
    assert "Back squat, heavy" in sheet.spoken


def test_the_verb_writes_a_pdf(
    path: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str], qapp: object
) -> None:
    target = tmp_path / "program.pdf"
    words = ["print-program", "--database", str(path), "--program", NAME, "--pdf", str(target)]
    day = ["--date", MONDAY_AFTER.isoformat()]
    for extra in ([], ["--trainee", "Bow"]):
        status = command_line.main([*words, *day, *extra], reason_texts, fetched)
        assert status == 0
        assert target.read_bytes().startswith(b"%PDF")
        assert f"{NAME}, " in capsys.readouterr().out


def test_an_unknown_program_or_place_is_said_in_one_line(
    path: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str], qapp: object
) -> None:
    words = ["print-program", "--database", str(path), "--pdf", str(tmp_path / "no" / "p.pdf")]
    assert command_line.main([*words, "--program", "None"], reason_texts, fetched) == 1
    assert "there is no program called 'None'" in capsys.readouterr().err
    assert command_line.main([*words, "--program", NAME], reason_texts, fetched) == 1
    assert "cannot be written" in capsys.readouterr().err
