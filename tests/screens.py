"""python -m tests.screens OUT [--dark] [--text 150] [--size 1920x1080] [--language de]: every
screen as PNG.

python -m tests.screens --guide: the pictures of guide and README, small, in resources/pictures.
"""

from __future__ import annotations

import argparse
import os
import tempfile
from pathlib import Path

PICTURES = Path(__file__).resolve().parent.parent / "resources" / "pictures"
MOST_BYTES = 150_000


def as_picture(path: Path) -> Path:
    """A screen's PNG as a picture of the guide: named for the screen, in its 256 most frequent
    colours, with fewer pixels where that is needed to be small.
    """
    import numpy as np
    from PySide6.QtCore import Qt
    from PySide6.QtGui import QImage

    drawn, smooth = QImage(str(path)), Qt.TransformationMode.SmoothTransformation
    path.unlink()
    target = path.with_name(path.name.split("-")[0] + ".png")
    for width in (drawn.width(), *range(1200, 600, -100)):
        scaled = drawn if width >= drawn.width() else drawn.scaledToWidth(width, smooth)
        plain = scaled.convertToFormat(QImage.Format.Format_RGB32)
        colours, counts = np.unique(
            np.asarray(plain.constBits()).view(np.uint32), return_counts=True
        )
        table = [int(each) for each in colours[np.argsort(-counts)[:256]]]
        flags = Qt.ImageConversionFlag.ThresholdDither
        few = plain.convertToFormat(QImage.Format.Format_Indexed8, table, flags)
        few.save(str(target), quality=0)
        if target.stat().st_size <= MOST_BYTES:
            break
    return target


def main() -> int:
    """Draw the screens on the scenario and print the paths of the pictures."""
    parser = argparse.ArgumentParser(prog="python -m tests.screens", description=__doc__)
    parser.add_argument("out", type=Path, nargs="?", default=PICTURES)
    parser.add_argument("--guide", action="store_true", help="those that guide and README show")
    parser.add_argument("--dark", action="store_true")
    parser.add_argument("--text", type=int, default=100, metavar="PERCENT")
    parser.add_argument("--size", default="1280x800", metavar="WIDTHxHEIGHT")
    parser.add_argument("--language", default="en", metavar="CODE")
    parser.add_argument("--trainee", default="")
    parser.add_argument("--screens", nargs="*", default=())
    chosen = parser.parse_args()
    if chosen.guide == (chosen.out != PICTURES):
        parser.error("name a folder, or say --guide")
    width, height = (int(part) for part in chosen.size.split("x"))
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

    from PySide6.QtCore import QLocale
    from PySide6.QtWidgets import QApplication

    from db.database import Database
    from db.repository import Repository
    from desktop.catalogue import load_catalogue
    from desktop.demo import MONDAY_AFTER, fill
    from desktop.translators import Translators
    from views.gallery import draw_all
    from views.language import ExerciseNames
    from views.record import Record

    application = QApplication([])
    english = chosen.language == "en"
    translated = Translators(application).use(QLocale("en_GB" if english else chosen.language))
    if not english and not translated:
        parser.error(f"there is no translation for {chosen.language!r}")
    with tempfile.TemporaryDirectory() as folder:
        repository = Repository(Database.open(Path(folder) / "demo.db"))
        repository.sync_catalogue(load_catalogue())
        fill(repository, MONDAY_AFTER)
        repository.said = ExerciseNames() if translated else None
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
            print(as_picture(path) if chosen.guide else path)
        record.repository.database.close()
    application.quit()
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
