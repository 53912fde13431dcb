"""What a saved session meant: the strip moves to where the line stands now."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop.planning.history import read_history
from desktop.planning.outcomes import LineOutcome, outcomes_of
from desktop.training.position import Position
from desktop.training.program import LineStart
from desktop.training.quantities import Unit
from desktop.training.target import StripVariable
from tests.strength_room import MONDAY, open_room
from views.exercise_words import short_strip
from views.next_time import OutcomeBlock
from views.theme import Scheme, Theme

pytestmark = pytest.mark.usefixtures("english")


@pytest.fixture
def rolled(tmp_path: Path) -> LineOutcome:
    """The squat after its last repetition: the load grew, and repetitions start anew."""
    room = open_room(tmp_path)
    room.save(
        replace(room.line("back-squat"), starts=(LineStart(MONDAY, Position(60_000, 12, 3)),))
    )
    session = room.train(MONDAY)
    outcome = outcomes_of(read_history(room.repository, room.trainee_id), session)[0]
    room.repository.database.close()
    return outcome


def here(strip: tuple[StripVariable, ...]) -> list[int | str]:
    return [cell.value for part in strip for cell in part.cells if cell.here]


def test_an_outcome_knows_where_the_line_stood_and_stands(rolled: LineOutcome) -> None:
    assert here(rolled.strip_before) == [12, 60_000]
    assert here(rolled.strip) == [8, 62_500]


@pytest.mark.parametrize("calm", [False, True])
def test_the_strip_ends_where_the_line_stands(
    rolled: LineOutcome, qtbot: QtBot, qapp: QApplication, calm: bool
) -> None:
    theme = Theme(Scheme.LIGHT, calm=calm)
    theme.apply(qapp)
    block = OutcomeBlock(theme, rolled, Unit.KG, MONDAY)
    qtbot.addWidget(block)
    block.resize(1000, 200)
    assert here(block.strip.strip) == here(rolled.strip if calm else rolled.strip_before)
    with qtbot.waitExposed(block):
        block.show()
    if not calm:
        qtbot.waitUntil(lambda: block.strip.sliding, timeout=2000)
    qtbot.waitUntil(lambda: not block.strip.sliding, timeout=2000)
    assert block.strip.strip == short_strip(rolled.strip)
