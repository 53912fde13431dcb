"""python -m tests.chart_pictures OUT [--dark] [--text 150] [--size 1920x1080]: the progress screen
in every state, as PNG.
"""

from __future__ import annotations

import argparse
import math
import os
import tempfile
from collections.abc import Callable, Iterator
from datetime import timedelta
from pathlib import Path
from typing import TYPE_CHECKING

from db.database import Database
from desktop.training.position import Position
from desktop.training.program import Line, LineStart
from desktop.training.session import LineDone, Session, SetDone
from desktop.training.trainee import BodyMass, Goal, GoalKind, Trainee
from tests.chart_scenes import TODAY, WEEK, Scene, open_scene

if TYPE_CHECKING:
    from views.main_window import MainWindow
    from views.progress_area import ProgressArea

DAY = timedelta(days=1)


def add_plateau(scene: Scene) -> int:
    """Somebody whose squat rose for eight weeks and has stood for twenty; the trainee's id."""

    def load(week: int) -> tuple[int, int]:
        return 90_000 + 2_500 * min(week // 2, 4), 5 - (week > 10 and week % 3 == 0)

    return _added(scene, "Seat 4", 28, load, goal_g=130_000)


def add_ten_years(scene: Scene) -> int:
    """Somebody who squatted three times a week for ten years; the trainee's id."""

    def load(week: int) -> tuple[int, int]:
        able = 60_000 + 70_000 * (1 - math.exp(-week / 200)) + 3_000 * math.sin(week / 9)
        reps = (5, 8, 12)[week // 4 % 3]
        return round(able / (1 + (reps + 2) / 30) / 2_500) * 2_500, reps

    return _added(scene, "Seat 7", 520, load, per_week=3, goal_g=140_000)


def add_red_flag(scene: Scene) -> int:
    """Somebody who trained for ten weeks and whose last session was flagged; the trainee's id."""
    return _added(scene, "Seat 2", 10, lambda week: (60_000 + 1_250 * week, 6), flagged=True)


def _added(
    scene: Scene, name: str, weeks: int, load: Callable[[int], tuple[int, int]], *,
    per_week: int = 2, goal_g: int = 0, flagged: bool = False,
) -> int:  # fmt: skip
    repository = scene.repository
    first = TODAY - weeks * WEEK
    who = repository.save(
        Trainee(name, birth_year=1991, stature_mm=1800, weekdays=(0, 2, 4), screened=first)
    ).saved[0]
    start = LineStart(first, Position(60_000, reps=5, sets=3))
    line = repository.save(Line(who.id, "back-squat", starts=(start,))).saved[0]
    repository.save(BodyMass(who.id, first, 78_000))
    if goal_g:
        repository.save(Goal(who.id, line.id, GoalKind.ONE_REP_MAX, goal_g))
    made = []
    for week in range(weeks):
        load_g, reps = load(week)
        for day in (0, 2, 4)[:per_week]:
            sets = [SetDone(load_g, max(reps - (at == 2 and week % 4 == 1), 1), rir=1.0 + week % 2)
                    for at in range(3)]  # fmt: skip
            done = LineDone(line.id, "back-squat", sets=tuple(sets))
            last = week == weeks - 1 and day == (0, 2, 4)[per_week - 1]
            made.append(
                Session(who.id, first + week * WEEK + day * DAY, (done,), red_flag=flagged and last)
            )
    repository.save(*made)
    return int(who.id)


def states(scene: Scene, window: MainWindow) -> Iterator[str]:
    """Brings the window into one state after the other; the name of each."""
    from views.gallery import settle

    window.show_area("progress")
    area: ProgressArea = window.areas.area  # type: ignore[assignment]

    def show(trainee_id: int, exercise: str = "", measure: str = "", span: str = "16") -> None:
        window.roster.choose(trainee_id)
        settle()
        shown: ProgressArea = window.areas.area  # type: ignore[assignment]
        if exercise:
            line = scene.repository.line_of(trainee_id, exercise)
            assert line is not None
            assert line.id is not None
            shown._wanted[trainee_id] = line.id
            shown.refresh()
        if measure:
            shown.measures._take(measure)
        shown.spans._take(span)
        for _ in range(4):
            settle()

    who = scene.trainee_id
    window.roster.choose(scene.newcomer_id)
    settle()
    yield "no data"
    show(who, "deadlift")
    yield "few sessions"
    area = window.areas.area  # type: ignore[assignment]
    for exercise, measures in {
        "back-squat": ("estimate", "load", "set", "at load"),
        "push-up": ("estimate", "load", "set", "variation"),
        "l-sit": ("hold", "moment", "variation"),
        "bench-press": ("estimate",),
    }.items():
        for measure in measures:
            show(who, exercise, measure)
            yield f"{exercise} {measure}"
    show(who, "back-squat", "estimate")
    area.body_mass.button.click()
    area.table.button.click()
    settle()
    yield "table and body mass"
    area.body_mass.button.click()
    area.table.button.click()
    area.comparing.button.click()
    settle()
    yield "comparing"
    area.comparing.chooser.given_up.emit()
    area.comparing.chooser.hide()
    plateau, years = add_plateau(scene), add_ten_years(scene)
    flagged = add_red_flag(scene)
    window._record.look_for_changes_elsewhere()
    window._record.begin_roster(TODAY)
    window._read_roster()
    settle()
    while not window._record.roster_complete:
        settle()
    show(plateau, span="52")
    yield "plateau"
    show(years, span="all")
    yield "ten years"
    show(years, span="16")
    yield "ten years, 16 weeks"
    show(flagged)
    yield "stop"


def main() -> int:
    """Draw the states, each into a file of its name."""
    parser = argparse.ArgumentParser(prog="python -m tests.chart_pictures", description=__doc__)
    parser.add_argument("out", type=Path)
    parser.add_argument("--dark", action="store_true")
    parser.add_argument("--text", type=int, default=100, metavar="PERCENT")
    parser.add_argument("--size", default="1280x800", metavar="WIDTHxHEIGHT")
    parser.add_argument("--only", nargs="*", default=())
    chosen = parser.parse_args()
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from PySide6.QtCore import QLocale
    from PySide6.QtWidgets import QApplication

    from views.gallery import ForgottenSettings, save, settle
    from views.main_window import MainWindow
    from views.record import Record
    from views.theme import Scheme, Theme

    QLocale.setDefault(QLocale("en_GB"))
    application = QApplication([])
    chosen.out.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory() as folder:
        scene = open_scene(Database.open(Path(folder) / "scene.db"))
        theme = Theme(Scheme.DARK if chosen.dark else Scheme.LIGHT, chosen.text, calm=True)
        theme.apply(application)
        window = MainWindow(Record(scene.repository), TODAY, theme, ForgottenSettings())
        window.resize(*(int(part) for part in chosen.size.split("x")))
        window.show()
        settle()
        for name in states(scene, window):
            if not chosen.only or name in chosen.only:
                save(window, chosen.out / f"{name}.png")
        window.close()
        scene.repository.database.close()
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
