"""The desktop's menu: one user's files, found again, taken away again."""

from __future__ import annotations

import shutil
import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

import pytest

from db.json_files import read_json
from db.program_files import ProgramFile, write_program
from desktop import menu_entry
from desktop.__main__ import main
from desktop.planning.starters import starters

if not sys.platform.startswith("linux"):
    pytest.skip("menu entries of Linux desktops", allow_module_level=True)

PLACES = (
    "applications/rungwise.desktop",
    "icons/hicolor/scalable/apps/rungwise.svg",
    "mime/packages/rungwise.xml",
)


@pytest.fixture
def shared(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The data folder of a user of this test's own."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "share"))
    return tmp_path / "share"


def test_one_command_puts_all_into_the_users_folders_and_another_takes_it_out(
    shared: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["install-menu"]) == 0
    assert all((shared / place).is_file() for place in PLACES)
    assert "Rungwise is in the menu" in capsys.readouterr().out
    assert main(["install-menu", "--remove"]) == 0
    assert not any((shared / place).exists() for place in PLACES)
    assert main(["install-menu", "--remove"]) == 0


def test_the_entry_starts_this_very_program_with_the_file(shared: Path) -> None:
    menu_entry.install(shared, ("/opt/my tools/rungwise",))
    lines = (shared / PLACES[0]).read_text(encoding="utf-8").splitlines()
    assert 'Exec="/opt/my tools/rungwise" %f' in lines
    assert Path(menu_entry.starting_command()[0]).is_absolute()


@pytest.mark.parametrize(
    ("argument", "written"),
    [
        ("/usr/bin/rungwise", "/usr/bin/rungwise"),
        ("/home/cox/my tools/rungwise", '"/home/cox/my tools/rungwise"'),
        ("/a/100%/rungwise", "/a/100%%/rungwise"),
        ("/a/$b/rungwise", '"/a/\\\\$b/rungwise"'),
    ],
)
def test_paths_are_quoted_as_desktop_entries_want_it(argument: str, written: str) -> None:
    """Desktop Entry Specification 1.5, "The Exec key"."""
    assert menu_entry.quoted(argument) == written


def test_the_icon_and_the_kind_of_file_are_sound_and_agree(shared: Path, tmp_path: Path) -> None:
    menu_entry.install(shared, ("rungwise",))
    assert ElementTree.parse(shared / PLACES[1]).getroot().tag.endswith("svg")
    spaces = {"m": "http://www.freedesktop.org/standards/shared-mime-info"}
    kind = ElementTree.parse(shared / PLACES[2]).getroot().find("m:mime-type", spaces)
    assert kind is not None
    entry = (shared / PLACES[0]).read_text(encoding="utf-8")
    assert f"MimeType={kind.attrib['type']};" in entry
    match = kind.find("m:magic/m:match", spaces)
    assert match is not None
    first, last = (int(part) for part in match.attrib["offset"].split(":"))
    path = tmp_path / "p.rungwise.json"
    write_program(starters()[0].program, path)
    found = path.read_text(encoding="utf-8").find(match.attrib["value"])
    assert first <= found <= last
    assert read_json(path, "rungwise program", 1, ProgramFile).program.name


@pytest.mark.slow
def test_the_desktop_knows_a_program_file_by_its_name(shared: Path) -> None:
    if subprocess.run(["which", "update-mime-database"], capture_output=True).returncode:
        pytest.skip("no shared MIME database here")
    menu_entry.install(shared, ("rungwise",))
    globs = (shared / "mime" / "globs2").read_text(encoding="utf-8")
    assert "application/x-rungwise-program+json:*.rungwise.json" in globs


@pytest.mark.slow
def test_the_entry_is_what_the_specification_allows(shared: Path) -> None:
    if not shutil.which("desktop-file-validate"):
        pytest.skip("no validator of desktop entries here")
    menu_entry.install(shared, ("/opt/my tools/$rungwise",))
    checked = subprocess.run(
        ["desktop-file-validate", shared / PLACES[0]], capture_output=True, text=True, check=False
    )
    assert (checked.returncode, checked.stdout) == (0, "")
