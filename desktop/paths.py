"""Where things lie on this computer; the only place that knows how a system names its folders.

``RUNGWISE_HOME`` puts everything under one folder instead: for a stick, and for tests. Folders are
made when asked for, readable by their owner only, since the data is about people's health.
"""

from __future__ import annotations

import os
from collections.abc import Mapping
from pathlib import Path

import appdirs

NAME = "Rungwise"
HOME_VARIABLE = "RUNGWISE_HOME"


def data_folder(environ: Mapping[str, str] = os.environ) -> Path:
    """The folder of the data file."""
    return _made(_under_home(environ, "data") or Path(appdirs.user_data_dir(NAME, appauthor=False)))


def config_folder(environ: Mapping[str, str] = os.environ) -> Path:
    """The folder of this computer's settings."""
    return _made(
        _under_home(environ, "config") or Path(appdirs.user_config_dir(NAME, appauthor=False))
    )


def log_folder(environ: Mapping[str, str] = os.environ) -> Path:
    """The folder of the log."""
    return _made(_under_home(environ, "log") or Path(appdirs.user_log_dir(NAME, appauthor=False)))


def backup_folder(environ: Mapping[str, str] = os.environ) -> Path:
    """The folder of the rotated backups, beside the data file."""
    return _made(data_folder(environ) / "backups")


def backups_of(path: Path, environ: Mapping[str, str] = os.environ) -> Path:
    """The folder of a data file's backups: the default one's, and in it one for each other."""
    folder = backup_folder(environ)
    return folder if path == default_data_file(environ) else folder / path.stem


def default_data_file(environ: Mapping[str, str] = os.environ) -> Path:
    """The data file that is opened when no other was named."""
    return data_folder(environ) / "rungwise.db"


def shared_folder() -> Path:
    """Where programs of this user put what the desktop reads: menu entries, icons, kinds of file.
    It is the desktop's, so that ``RUNGWISE_HOME`` does not move it.
    """
    return Path(appdirs.user_data_dir())


def _under_home(environ: Mapping[str, str], part: str) -> Path | None:
    home = environ.get(HOME_VARIABLE)
    return Path(home).expanduser().resolve() / part if home else None


def _made(folder: Path) -> Path:
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    return folder
