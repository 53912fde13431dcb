"""The demo: an invented scenario in a new data file, and the whole round on it."""

from __future__ import annotations

from datetime import date
from pathlib import Path

from db.seals import remove_file
from desktop import demo as scenario
from desktop import paths, tour
from desktop.verbs.data_files import opened
from desktop.verbs.terminal import Options, Terminal, Wrong, print_lines


def demo(terminal: Terminal, options: Options) -> None:
    """A new data file with the demo."""
    path: Path = options.database or paths.data_folder() / "demo.db"
    _fill_demo(path, options.date or date.today())
    print(f"the demo, an invented scenario, is in {path}")


def walk(terminal: Terminal, options: Options) -> None:
    """The whole loop on the demo, with its results in a folder."""
    out: Path = options.out
    today = options.date or date.today()
    out.mkdir(parents=True, exist_ok=True)
    path = options.database or out / "demo.db"
    _fill_demo(path, today)
    with opened(path, create=False) as repository:
        print_lines(
            tour.walk(
                repository,
                today,
                out,
                terminal.sentence,
                terminal.write_sheet,
                terminal.pictures,
            )
        )
    print(out)


def _fill_demo(path: Path, today: date) -> None:
    if path.exists() and path.stat().st_size:
        raise Wrong(f"{path} is there already; the demo goes into a new file")
    try:
        with opened(path, create=True) as repository:
            scenario.fill(repository, today)
    except BaseException:
        remove_file(path)
        raise
