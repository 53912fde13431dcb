"""This computer's settings and where they lie."""

from __future__ import annotations

import stat
import sys
from pathlib import Path

import pytest

from desktop import paths
from desktop.settings import Paper, Settings, Theme


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return tmp_path / "settings.ini"


def test_a_first_start_has_an_answer_for_everything(file: Path) -> None:
    fresh = Settings(file)
    assert fresh.theme is Theme.SYSTEM
    assert fresh.text_percent == 100
    assert fresh.paper is Paper.USUAL
    assert (fresh.language, fresh.last_screen) == ("", "")
    assert (fresh.geometry, fresh.window_state) == (b"", b"")
    assert fresh.last_file is None
    assert fresh.last_trainee is None


def test_what_was_set_is_there_at_the_next_start(file: Path, tmp_path: Path) -> None:
    before = Settings(file)
    before.theme = Theme.DARK
    before.text_percent = 150
    before.paper = Paper.LETTER
    before.language = "de"
    before.geometry = b"\x01\x00\xff"
    before.window_state = b"\x00\x02"
    before.last_file = tmp_path / "Übung, Winter.db"
    before.last_trainee = 7
    before.last_screen = "session"
    assert before.sync()

    after = Settings(file)
    assert after.theme is Theme.DARK
    assert after.text_percent == 150
    assert after.paper is Paper.LETTER
    assert after.language == "de"
    assert after.geometry == b"\x01\x00\xff"
    assert after.window_state == b"\x00\x02"
    assert after.last_file == tmp_path / "Übung, Winter.db"
    assert after.last_trainee == 7
    assert after.last_screen == "session"


def test_nothing_last_can_be_said_again(file: Path) -> None:
    settings = Settings(file)
    settings.last_trainee = 7
    settings.last_trainee = None
    settings.last_file = file
    settings.last_file = None
    assert settings.last_trainee is None
    assert settings.last_file is None


def test_values_broken_by_hand_count_as_not_set(file: Path) -> None:
    file.write_text(
        "[look]\ntheme=purple\ntext_percent=big\n[print]\npaper=napkin\n"
        "[last]\ntrainee=a, b\n[window]\ngeometry=7\n"
    )
    settings = Settings(file)
    assert settings.theme is Theme.SYSTEM
    assert settings.text_percent == 100
    assert settings.paper is Paper.USUAL
    assert settings.last_trainee is None
    assert settings.geometry == b""


@pytest.mark.parametrize(("written", "used"), [("10", 80), ("125", 125), ("900", 200)])
def test_a_text_size_out_of_range_is_brought_back(file: Path, written: str, used: int) -> None:
    file.write_text(f"[look]\ntext_percent={written}\n")
    assert Settings(file).text_percent == used


def test_a_text_size_out_of_range_is_refused_with_what_is_allowed(file: Path) -> None:
    with pytest.raises(ValueError, match="80 to 200 percent, not 300"):
        Settings(file).text_percent = 300


@pytest.mark.skipif(sys.platform == "win32", reason="folders have no such modes there")
def test_an_unwritable_file_is_reported(tmp_path: Path) -> None:
    blocked = tmp_path / "file, not folder"
    blocked.write_text("")
    settings = Settings(blocked / "settings.ini")
    settings.language = "de"
    assert not settings.sync()


def test_one_variable_moves_everything(home: Path) -> None:
    places = [
        paths.data_folder(),
        paths.config_folder(),
        paths.log_folder(),
        paths.backup_folder(),
        paths.default_data_file(),
    ]
    assert all(home in place.parents for place in places)
    assert len(set(places)) == len(places)


@pytest.mark.skipif(sys.platform == "win32", reason="folders have no such modes there")
def test_folders_are_their_owners_alone(home: Path) -> None:
    assert stat.S_IMODE(paths.data_folder().stat().st_mode) == 0o700


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="the names differ elsewhere")
def test_without_the_variable_the_system_names_the_folders(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    monkeypatch.setenv("XDG_CONFIG_HOME", str(tmp_path / "config"))
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "cache"))
    assert paths.data_folder({}) == tmp_path / "data" / "Rungwise"
    assert paths.config_folder({}) == tmp_path / "config" / "Rungwise"
    assert paths.log_folder({}) == tmp_path / "cache" / "Rungwise" / "log"
    assert paths.backup_folder({}) == tmp_path / "data" / "Rungwise" / "backups"
