"""Pairs of Python and PySide6 that abort are refused in words; the pair in use does not abort."""

from __future__ import annotations

import subprocess
import sys
from importlib.metadata import version
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication, QLabel

from desktop import startup_guard


@pytest.mark.parametrize(
    ("python", "pyside", "works"),
    [
        ((3, 11), "6.11.3", True),
        ((3, 11), "6.12.0", False),
        ((3, 11), "6.12.1", False),
        ((3, 11), "7.0.0", False),
        ((3, 12), "6.12.0", True),
        ((3, 13), "6.12.0", True),
        ((3, 13), "6.11.3", True),
    ],
)
def test_only_pairs_that_crash_are_refused(
    python: tuple[int, int], pyside: str, works: bool
) -> None:
    assert (startup_guard.complaint_about(python, pyside) is None) == works


def test_the_refusal_says_what_to_install() -> None:
    complaint = startup_guard.complaint_about((3, 11), "6.12.0")
    assert complaint is not None
    assert "6.12.0 crashes on Python 3.11" in complaint
    assert "pip install 'PySide6-Essentials>=6.11.3,<6.12'" in complaint


def test_the_version_is_read_off_the_name_of_the_metadata(tmp_path: Path) -> None:
    (tmp_path / "first").mkdir()
    folders = [str(tmp_path / "not there"), str(tmp_path / "first"), str(tmp_path)]
    assert startup_guard.installed_version(folders) is None
    (tmp_path / "PySide6_Essentials-6.12.0.dist-info").mkdir()
    assert startup_guard.installed_version(folders) == "6.12.0"


def test_the_version_in_use_is_found() -> None:
    assert startup_guard.installed_version(sys.path) == version("PySide6-Essentials")


def test_the_pair_in_use_is_not_refused(capsys: pytest.CaptureFixture[str]) -> None:
    startup_guard.refuse_crashing_pair()
    assert capsys.readouterr() == ("", "")


def test_void_calls_leave_none_alone(qapp: QApplication) -> None:
    label = QLabel()
    before = sys.getrefcount(None)
    for _ in range(1000):
        label.setText("60 kg")
    assert sys.getrefcount(None) > before - 100


@pytest.mark.parametrize(
    ("environ", "platform", "there"),
    [
        ({}, "linux", False),
        ({"DISPLAY": ""}, "linux", False),
        ({"DISPLAY": ":0"}, "linux", True),
        ({"WAYLAND_DISPLAY": "wayland-0"}, "linux", True),
        ({"QT_QPA_PLATFORM": "offscreen"}, "linux", True),
        ({}, "win32", True),
        ({}, "darwin", True),
    ],
)
def test_a_window_needs_a_display(environ: dict[str, str], platform: str, there: bool) -> None:
    assert startup_guard.has_display(environ, platform) is there


def test_a_window_without_a_display_is_refused_in_words(monkeypatch: pytest.MonkeyPatch) -> None:
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setattr(sys, "platform", "linux")
    with pytest.raises(SystemExit, match="no display here"):
        startup_guard.refuse_without_display()


def test_a_missing_system_library_is_named_with_its_package() -> None:
    said = "libGL.so.1: cannot open shared object file: No such file or directory"
    with pytest.raises(SystemExit, match=r"without .* libGL\.so\.1\. .* apt-get install libgl1"):
        startup_guard.refuse_without_library(ImportError(said))
    unknown = startup_guard.complaint_about_import(said.replace("libGL.so.1", "libzzz.so.9"))
    assert unknown is not None
    assert "libzzz.so.9" in unknown
    startup_guard.refuse_without_library(ImportError("No module named 'numpy'"))


def test_imports_go_straight_and_qt_works_all_the_same() -> None:
    code = """
import inspect
from desktop.straight_imports import import_straight
import_straight()
def read(module):
    raise AssertionError(f"{module} was read")
inspect.getsource = read
from PySide6.QtCore import QObject, Signal
from views.theme import Theme
class Bell(QObject):
    rung = Signal(int)
bell, heard = Bell(), []
bell.rung.connect(heard.append)
bell.rung.emit(3)
assert heard == [3] and bell.objectName() == ""
print("straight")
"""
    done = subprocess.run(
        [sys.executable, "-W", "error", "-c", code],
        capture_output=True,
        text=True,
        cwd=Path(__file__).parent.parent,
        check=False,
    )
    assert done.stdout == "straight\n", done.stderr
