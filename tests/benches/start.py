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
from tests.benches.people import draw_up_all, many_trainees, one_for_years

ROUNDS = 7
GOAL_WINDOW, GOAL_WINDOW_MEMORY = 1.8, 1.8
GOAL_CHART, GOAL_CHART_MEMORY = 1.3, 1.4

_TELL = """
import resource, sys, time
def tell():
    used = resource.getrusage(resource.RUSAGE_SELF)
    most = used.ru_maxrss  # which on Linux begins with what the parent had
    try:
        told = open("/proc/self/status").read()
        most = int(told.split("VmHWM:")[1].split()[0])
    except OSError:
        pass
    print(time.time(), used.ru_utime + used.ru_stime, most, flush=True)
    import os; os._exit(0)
from PySide6.QtCore import QCoreApplication, QEvent, QObject, QTimer
class Watch(QObject):
    def eventFilter(self, watched, event):
        if event.type() == QEvent.Type.Paint:  # told once it is painted, before any timer
            QCoreApplication.postEvent(self, QEvent(QEvent.Type.User))
        return False
    def customEvent(self, event):
        tell()
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
# The program as it starts, with a watch on its window. A started desk is left alone until it is
# painted; "known" waits until everybody's cautions are there, "chart" until a chart is drawn.
_OURS = (
    """
import gc, sys
gc.disable()  # as the program does before it imports anything
from desktop.straight_imports import import_straight
import_straight()
from desktop import __main__, application
"""
    + _TELL
    + """
def watched(desk, path):
    done = start(desk, path)
    desk.window.resize(1280, 800)
    desk.watch, desk.poll = Watch(), QTimer()
    if sys.argv[2] == "window":
        desk.window.centralWidget().installEventFilter(desk.watch)
    elif sys.argv[2] == "known":
        desk.poll.timeout.connect(lambda: tell() if desk.record.roster_complete else None)
        desk.poll.start(1)
    else:
        watch_charts(desk)
    return done
def watch_charts(desk):
    from views import work_areas
    make = work_areas.WorkAreaEntry.make
    def watching(area):
        build = area._build_block
        def built():
            block = build()
            block.chart.plot._widget.viewport().installEventFilter(desk.watch)
            return block
        area._build_block = built
        return area
    work_areas.WorkAreaEntry.make = lambda *around: watching(make(*around))
    if desk.window.areas.area is not None:
        watching(desk.window.areas.area)
start = application.Desk.start
application.Desk.start = watched
__main__.main(["--database", sys.argv[1]])
"""
)
_ON_THE_CHART = """
import sys
from PySide6.QtCore import QCoreApplication
from desktop import paths
from desktop.settings import Settings
application = QCoreApplication([])
settings = Settings(paths.config_folder() / "settings.ini")
settings.last_screen, settings.last_trainee = "progress", 1
settings.sync()
"""


def lines() -> Iterator[Line]:
    """Start and memory: the desk with 300 trainees, and the chart of three years."""
    with tempfile.TemporaryDirectory() as folder:
        many = many_trainees(Path(folder) / "many.db")
        draw_up_all(many)
        home = Path(folder) / "desk"
        yield from _against(
            "start to first window, 300 trainees x 1 year",
            (_OURS, str(many), "window"),
            (_EMPTY,),
            "empty window",
            GOAL_WINDOW,
            GOAL_WINDOW_MEMORY,
            home,
        )
        yield from _against(
            "start until all cautions of 300 are known",
            (_OURS, str(many), "known"),
            (_EMPTY,),
            "empty window",
            None,
            None,
            home,
        )
        years = one_for_years(Path(folder) / "years.db", 3)
        draw_up_all(years)
        home = Path(folder) / "chart"
        _run((_ON_THE_CHART,), home)
        yield from _against(
            "start with the chart as first screen, drawn",
            (_OURS, str(years), "chart"),
            (_EMPTY_PLOT,),
            "empty plot window",
            GOAL_CHART,
            GOAL_CHART_MEMORY,
            home,
        )


def _against(
    name: str,
    ours: tuple[str, ...],
    floor: tuple[str, ...],
    floor_name: str,
    goal: float | None,
    memory_goal: float | None,
    home: Path,
) -> Iterator[Line]:
    measured: dict[tuple[str, ...], list[tuple[float, float, float]]] = {ours: [], floor: []}
    for number in range(ROUNDS + 1):
        for script in (ours, floor):
            result = _started(script, home)
            if number:
                measured[script].append(result)
    time_ms, worked, memory = (
        {script: taken(r[at] for r in results) for script, results in measured.items()}
        for at, taken in ((0, statistics.median), (1, min), (2, statistics.median))
    )
    yield Line(name, time_ms[ours], time_ms[floor], floor_name, "ms", goal)
    # Others on the machine disturb this less.
    yield Line(f"{name}: processor", worked[ours], worked[floor], floor_name, "ms", goal)
    yield Line(f"{name}: memory", memory[ours], memory[floor], floor_name, "MiB", memory_goal)


def _started(script: tuple[str, ...], home: Path) -> tuple[float, float, float]:
    """Milliseconds from the start of a process to its first paint, by the clock and by the
    processor, and its memory in MiB.
    """
    began = time.time()
    painted, worked, kilobytes = _run(script, home).split()[-3:]
    return (float(painted) - began) * 1000, float(worked) * 1000, float(kilobytes) / 1024


def _run(script: tuple[str, ...], home: Path) -> str:
    environment = os.environ | {
        "QT_QPA_PLATFORM": "offscreen",
        "RUNGWISE_HOME": str(home),
        "PYTHONDONTWRITEBYTECODE": "",
    }
    return subprocess.run(
        [sys.executable, "-c", script[0], *script[1:]],
        capture_output=True,
        text=True,
        env=environment,
        timeout=120,
        check=True,
    ).stdout
