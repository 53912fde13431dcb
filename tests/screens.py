"""python -m tests.screens OUT [--dark] [--text 150] [--size 1920x1080]: every screen as PNG."""

from __future__ import annotations

import argparse
import os
import tempfile
from pathlib import Path


def main() -> int:
    """Draw the screens on the scenario and print the paths of the pictures."""
    parser = argparse.ArgumentParser(prog="python -m tests.screens", description=__doc__)
    parser.add_argument("out", type=Path)
    parser.add_argument("--dark", action="store_true")
    parser.add_argument("--text", type=int, default=100, metavar="PERCENT")
    parser.add_argument("--size", default="1280x800", metavar="WIDTHxHEIGHT")
    parser.add_argument("--trainee", default="")
    parser.add_argument("--screens", nargs="*", default=())
    chosen = parser.parse_args()
    width, height = (int(part) for part in chosen.size.split("x"))
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

    from PySide6.QtCore import QLocale
    from PySide6.QtWidgets import QApplication

    from db.database import Database
    from db.repository import Repository
    from desktop.catalogue import load_catalogue
    from desktop.demo import MONDAY_AFTER, fill
    from views.gallery import draw_all
    from views.record import Record

    QLocale.setDefault(QLocale("en_GB"))
    application = QApplication([])
    with tempfile.TemporaryDirectory() as folder:
        repository = Repository(Database.open(Path(folder) / "demo.db"))
        repository.sync_catalogue(load_catalogue())
        fill(repository, MONDAY_AFTER)
        record = Record(repository)
        for path in draw_all(
            record,
            MONDAY_AFTER,
            chosen.out,
            dark=chosen.dark,
            text_percent=chosen.text,
            size=(width, height),
            trainee=chosen.trainee,
            screens=chosen.screens,
        ):
            print(path)
        record.repository.database.close()
    application.quit()
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
