"""One line's part of every session is what the whole sessions say of it."""

from __future__ import annotations

from contextlib import closing
from dataclasses import replace
from datetime import date

from db.database import MEMORY, Database
from db.line_parts import last_trained, line_parts
from tests.chart_scenes import FIRST, KEYS, TODAY, WEEK, open_scene


def test_a_lines_parts_are_those_of_the_whole_sessions() -> None:
    with closing(Database.open(MEMORY)) as database:
        scene = open_scene(database)
        for key in KEYS:
            line_id = scene.line_id(key)
            whole = [
                (session.id, session.day, session.entry, replace(part, reason="", note=""))
                for session in scene.repository.sessions_with_line(line_id)
                for part in session.lines
                if part.line_id == line_id
            ]
            alone = [
                (session.id, session.day, session.entry, part)
                for session in line_parts(database, line_id, date.max, asked=True)
                for part in session.lines
            ]
            assert alone == whole
            few = line_parts(database, line_id, FIRST + 2 * WEEK)
            assert all(session.day <= FIRST + 2 * WEEK for session in few)


def test_the_last_day_trained_is_looked_up_up_to_a_day() -> None:
    with closing(Database.open(MEMORY)) as database:
        scene = open_scene(database)
        lines = {scene.line_id(key): key for key in KEYS}
        days = last_trained(database, lines, TODAY)
        assert days[scene.line_id("back-squat")] == date(2026, 11, 23)
        early = last_trained(database, lines, FIRST)
        assert early == {scene.line_id("back-squat"): FIRST}
