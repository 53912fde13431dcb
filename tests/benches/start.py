"""From process start to the first painted window, against an empty Qt window. Memory likewise."""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from pathlib import Path

from tests.benches.measure import Line
from tests.benches.people import many_trainees, one_for_years

ROUNDS = 7
GOAL_WINDOW, GOAL_WINDOW_MEMORY = 1.8, 1.8
GOAL_CHART, GOAL_CHART_MEMORY = 1.3, 1.4

_TELL = """
import resource, sys, time
def tell():
    print(time.time(), resource.getrusage(resource.RUSAGE_SELF).ru_maxrss, flush=True)
    import os; os._exit(0)
from PySide6.QtCore import QEvent, QObject, QTimer
class Watch(QObject):
    def eventFilter(self, watched, event):
        if event.type() == QEvent.Type.Paint:
            QTimer.singleShot(0, tell)
        return False
"""
_EMPTY = (
    """
import sys
from PySide6.QtWidgets import QApplication, QMainWindow, QWidget
"""
    + _TELL
    + """
application = QApplication(sys.argv[:1])
window = QMainWindow()
middle = QWidget()
window.setCentralWidget(middle)
watch = Watch()
middle.installEventFilter(watch)
window.resize(1280, 800)
window.show()
application.exec()
"""
)
_EMPTY_PLOT = (
    """
import sys
from PySide6.QtWidgets import QApplication, QMainWindow
import pyqtgraph
"""
    + _TELL
    + """
application = QApplication(sys.argv[:1])
window = QMainWindow()
plot = pyqtgraph.PlotWidget()
window.setCentralWidget(plot)
watch = Watch()
plot.viewport().installEventFilter(watch)
window.resize(1280, 800)
window.show()
application.exec()
"""
)
_OURS = (
    """
import sys
from pathlib import Path
from PySide6.QtWidgets import QApplication
from desktop import paths
from desktop.application import Desk
from desktop.settings import Settings
from views.theme import Theme
"""
    + _TELL
    + """
application = QApplication(sys.argv[:1])
settings = Settings(paths.config_folder() / "settings.ini")
if sys.argv[2]:
    settings.last_screen = sys.argv[2]
    settings.last_trainee = 1
theme = Theme(settings.theme.value, settings.text_percent)
theme.apply(application)
desk = Desk(settings, theme)
desk.open(Path(sys.argv[1]))
desk.window.resize(1280, 800)
watch = Watch()
desk.window.centralWidget().installEventFilter(watch)
application.exec()
"""
)


def lines() -> Iterator[Line]:
    """Start and memory: the desk with 300 trainees, and the chart of three years."""
    with tempfile.TemporaryDirectory() as folder:
        many = many_trainees(Path(folder) / "many.db")
        years = one_for_years(Path(folder) / "years.db", 3)
        yield from _against(
            "start to first window, 300 trainees x 1 year",
            (_OURS, str(many), ""),
            (_EMPTY,),
            "empty window",
            GOAL_WINDOW,
            GOAL_WINDOW_MEMORY,
            Path(folder),
        )
        yield from _against(
            "start with the chart as first screen",
            (_OURS, str(years), "progress"),
            (_EMPTY_PLOT,),
            "empty plot window",
            GOAL_CHART,
            GOAL_CHART_MEMORY,
            Path(folder),
        )


def _against(
    name: str,
    ours: tuple[str, ...],
    floor: tuple[str, ...],
    floor_name: str,
    goal: float,
    memory_goal: float,
    home: Path,
) -> Iterator[Line]:
    measured: dict[tuple[str, ...], list[tuple[float, float]]] = {ours: [], floor: []}
    for number in range(ROUNDS + 1):
        for script in (ours, floor):
            result = _started(script, home)
            if number:
                measured[script].append(result)
    time_ms, memory = (
        {script: statistics.median(r[at] for r in results) for script, results in measured.items()}
        for at in (0, 1)
    )
    yield Line(name, time_ms[ours], time_ms[floor], floor_name, "ms", goal)
    yield Line(f"{name}: memory", memory[ours], memory[floor], floor_name, "MiB", memory_goal)


def _started(script: tuple[str, ...], home: Path) -> tuple[float, float]:
    """Milliseconds from the start of a process to its first paint, and its memory in MiB."""
    environment = os.environ | {
        "QT_QPA_PLATFORM": "offscreen",
        "RUNGWISE_HOME": str(home / "home"),
        "PYTHONDONTWRITEBYTECODE": "",
    }
    began = time.time()
    done = subprocess.run(
        [sys.executable, "-c", script[0], *script[1:]],
        capture_output=True,
        text=True,
        env=environment,
        timeout=120,
        check=True,
    )
    painted, kilobytes = done.stdout.split()[-2:]
    return (float(painted) - began) * 1000, float(kilobytes) / 1024
