"""The questions where to save a file and which one to open; what they are for goes on meanwhile."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Final

from PySide6.QtCore import QStandardPaths
from PySide6.QtWidgets import QFileDialog, QWidget

Then = Callable[[Path], object]

_LONGEST: Final = 80


def ask_target(
    owner: QWidget | None,
    title: str,
    name: str,
    suffix: str,
    then: Then,
    folder: Path | None = None,
) -> None:
    """Ask where to save a file, called ``name`` at first; ``suffix`` without its leading dot.

    ``folder``: where the question begins, None for the user's documents.
    """
    dialog = QFileDialog(owner, title, _documents() if folder is None else str(folder))
    dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
    dialog.setDefaultSuffix(suffix)
    kind = suffix.rpartition(".")[2]
    dialog.setNameFilter(f"{kind.upper()} (*.{kind})")
    dialog.selectFile(f"{name}.{suffix}")
    _ask(dialog, then)


def ask_source(
    owner: QWidget | None, title: str, kinds: Sequence[str], then: Then, folder: Path | None = None
) -> None:
    """Ask for a file to open; ``kinds`` name what may be shown, as "Text (*.txt)"."""
    dialog = QFileDialog(owner, title, _documents() if folder is None else str(folder))
    dialog.setFileMode(QFileDialog.FileMode.ExistingFile)
    dialog.setNameFilters(kinds)
    _ask(dialog, then)


def ask_folder(owner: QWidget | None, title: str, then: Then) -> None:
    """Ask for a folder."""
    dialog = QFileDialog(owner, title, _documents())
    dialog.setFileMode(QFileDialog.FileMode.Directory)
    dialog.setOption(QFileDialog.Option.ShowDirsOnly)
    _ask(dialog, then)


def file_name(text: str, otherwise: str = "") -> str:
    """``text`` with nothing in it that a file system might refuse; ``otherwise`` if that is all."""
    kept = "".join(sign if sign.isalnum() or sign in " -,_" else " " for sign in text)
    return " ".join(kept.split())[:_LONGEST] or otherwise


def _ask(dialog: QFileDialog, then: Then) -> None:
    dialog.fileSelected.connect(lambda path: then(Path(path)))
    dialog.finished.connect(dialog.deleteLater)
    dialog.open()


def _documents() -> str:
    return QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
