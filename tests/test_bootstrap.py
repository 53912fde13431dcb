"""The two commands: what they decide and say, tried without network and without apt."""

from __future__ import annotations

import ast
import os
import stat
import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path

import pytest

from desktop import bootstrap

SCRIPT = Path(bootstrap.__file__)


def script(path: Path, text: str) -> Path:
    """An executable made of shell lines, in the place of an interpreter or of apt."""
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text("#!/bin/sh\n" + text)
    path.chmod(path.stat().st_mode | stat.S_IXUSR)
    return path


@pytest.fixture
def checkout(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A checkout with locks and an environment that looks whole."""
    monkeypatch.setattr(bootstrap, "ROOT", str(tmp_path))
    (tmp_path / ".ci").mkdir()
    (tmp_path / ".ci/run.lock").write_text("numpy==1\n")
    (tmp_path / ".ci/test.lock").write_text("pytest==1\n")
    script(Path(bootstrap.interpreter_in(str(tmp_path / ".venv"))), "echo 3 11\n")
    return tmp_path


def test_a_python_that_is_too_old_can_still_read_the_file() -> None:
    assert ast.parse(SCRIPT.read_text(encoding="utf-8"), feature_version=(3, 6)).body


def test_only_the_standard_library_is_imported() -> None:
    for node in ast.walk(ast.parse(SCRIPT.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            assert {alias.name.split(".")[0] for alias in node.names} <= sys.stdlib_module_names
        elif isinstance(node, ast.ImportFrom):
            assert node.module in sys.stdlib_module_names


@pytest.mark.parametrize(
    ("arguments", "status"), [([], 2), (["fly"], 2), (["--help"], 0), (["-h"], 0)]
)
def test_wrong_usage_is_answered_with_the_usage(
    arguments: list[str], status: int, capsys: pytest.CaptureFixture[str]
) -> None:
    assert bootstrap.main(arguments) == status
    assert capsys.readouterr().out.startswith("usage: python3 desktop/bootstrap.py run")


def test_an_old_python_is_told_what_is_needed_and_where_to_get_it(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(sys, "version_info", (3, 9, 2, "final", 0))
    monkeypatch.setenv("PATH", str(tmp_path))
    assert bootstrap.main(["run"]) == 1
    said = capsys.readouterr().err
    assert "needs Python 3.11 or newer; this is Python 3.9" in said
    assert "https://www.python.org/downloads/" in said


def test_an_old_python_goes_on_with_a_newer_one_from_the_path(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    newer = script(tmp_path / "python3.12", "echo 3 12\n")
    started: list[Sequence[str]] = []

    def become(command: list[str], environment: dict[str, str]) -> int:
        started.append(command)
        return 7

    monkeypatch.setattr(bootstrap, "become", become)
    monkeypatch.setattr(sys, "version_info", (3, 9, 2, "final", 0))
    monkeypatch.setenv("PATH", str(tmp_path))
    assert bootstrap.main(["run", "roster"]) == 7
    assert started == [[str(newer), str(SCRIPT), "run", "roster"]]
    assert f"too old for Rungwise; going on with {newer}" in capsys.readouterr().out


@pytest.mark.parametrize(
    "answer", ["exit 127", "echo 3 10", "echo python"], ids=["broken", "too old", "talks nonsense"]
)
def test_an_interpreter_that_does_not_serve_is_passed_over(tmp_path: Path, answer: str) -> None:
    script(tmp_path / "python3.13", answer + "\n")
    good = script(tmp_path / "python3.11", "echo 3 11\n")
    assert bootstrap.newer_python(str(tmp_path)) == str(good)


@pytest.mark.parametrize(
    ("environ", "platform", "there"),
    [
        ({}, "linux", False),
        ({"DISPLAY": ""}, "linux", False),
        ({"DISPLAY": ":0"}, "linux", True),
        ({"WAYLAND_DISPLAY": "wayland-0"}, "linux", True),
        ({"DISPLAY": ":0", "QT_QPA_PLATFORM": "offscreen"}, "linux", False),
        ({"QT_QPA_PLATFORM": "vnc:size=800x600"}, "linux", True),
        ({}, "win32", True),
        ({}, "darwin", True),
        ({"QT_QPA_PLATFORM": "minimal"}, "darwin", False),
    ],
)
def test_a_display_is_one_that_somebody_can_see(
    environ: dict[str, str], platform: str, there: bool
) -> None:
    assert bootstrap.has_display(environ, platform) is there


def test_a_stamp_tells_that_nothing_is_to_be_done(
    checkout: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    venv = str(checkout / ".venv")
    bootstrap.write_stamp(venv, "run")
    monkeypatch.setattr(bootstrap, "outcome_of", pytest.fail)
    monkeypatch.setattr(bootstrap, "version_of", pytest.fail)
    assert bootstrap.bring_environment(["run"]) == bootstrap.interpreter_in(venv)


def test_a_stamp_does_not_hold_for_another_lock(checkout: Path) -> None:
    venv = str(checkout / ".venv")
    bootstrap.write_stamp(venv, "run")
    assert bootstrap.stamp_holds(venv, "run")
    assert not bootstrap.stamp_holds(venv, "test")
    (checkout / ".ci/run.lock").write_text("numpy==2\n")
    assert not bootstrap.stamp_holds(venv, "run")


def test_a_stamp_does_not_hold_when_the_interpreter_behind_it_changed(checkout: Path) -> None:
    venv = str(checkout / ".venv")
    python = Path(bootstrap.interpreter_in(venv))
    older, newer = (script(checkout / name, "") for name in ("python3.11", "python3.13"))
    python.unlink()
    python.symlink_to(older)
    bootstrap.write_stamp(venv, "run")
    python.unlink()
    python.symlink_to(newer)
    assert not bootstrap.stamp_holds(venv, "run")
    newer.unlink()
    assert not bootstrap.stamp_holds(venv, "run")


class Installer:
    """Stands for pip and venv: notes what it was asked for and answers as told."""

    def __init__(self, *answers: tuple[int, str]) -> None:
        self.asked: list[Sequence[str]] = []
        self.answers = list(answers)

    def __call__(
        self, command: Sequence[str], env: dict[str, str] | None = None
    ) -> tuple[int, str]:
        self.asked.append(command)
        return self.answers.pop(0) if self.answers else (0, "")


def test_only_the_locks_that_changed_are_installed(
    checkout: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    installer = Installer()
    monkeypatch.setattr(bootstrap, "outcome_of", installer)
    bootstrap.write_stamp(str(checkout / ".venv"), "run")
    bootstrap.bring_environment(["run", "test"])
    (command,) = installer.asked
    assert command[-2:] == ["--requirement", str(checkout / ".ci/test.lock")]
    assert str(checkout / ".ci/run.lock") not in command
    assert bootstrap.stamp_holds(str(checkout / ".venv"), "test")


def test_an_installation_that_was_killed_starts_from_nothing(
    checkout: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    mark = checkout / ".venv/rungwise-unfinished"
    mark.write_text("")
    installer = Installer()
    monkeypatch.setattr(bootstrap, "outcome_of", installer)
    bootstrap.bring_environment(["run"])
    making, installing = installer.asked
    assert list(making[1:]) == ["-m", "venv", "--clear", str(checkout / ".venv")]
    assert "install" in installing
    assert not mark.exists()


def test_a_refused_installation_leaves_the_environment_as_it_was(
    checkout: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(bootstrap, "outcome_of", Installer((1, "NewConnectionError: ...")))
    with pytest.raises(bootstrap.Trouble, match="network or the package index is out of reach"):
        bootstrap.bring_environment(["run"])
    assert not (checkout / ".venv/rungwise-unfinished").exists()
    assert not bootstrap.stamp_holds(str(checkout / ".venv"), "run")


@pytest.mark.parametrize(
    ("printed", "said"),
    [
        ("Retrying: Failed to establish a new connection: [Errno -3]", "network"),
        ("ProxyError('Cannot connect to proxy.')", "HTTPS_PROXY"),
        ("OSError: [Errno 28] No space left on device", "disk is full"),
        ("ERROR: No matching distribution found for numpy==9", "pip's last words"),
    ],
)
def test_a_failed_installation_says_why(printed: str, said: str) -> None:
    assert said in bootstrap.install_failure_text(printed)


def test_what_pip_said_is_shown_where_its_reason_is_not_known() -> None:
    text = bootstrap.install_failure_text("many lines\n" * 50 + "ERROR: something new\n")
    assert "ERROR: something new" in text
    assert text.count("many lines") < 20


def test_a_missing_venv_names_the_package(checkout: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("importlib.util.find_spec", lambda name: None)
    monkeypatch.setattr(os, "geteuid", lambda: 1000)
    (checkout / ".venv/rungwise-unfinished").write_text("")
    with pytest.raises(bootstrap.Trouble, match=r"sudo apt-get install .*python3(\.\d+)?-venv"):
        bootstrap.bring_environment(["run"])


def test_apt_is_asked_for_exactly_what_is_missing() -> None:
    update, install = bootstrap.apt_commands(["libegl1", "libgl1"])
    assert update == ["apt-get", "update"]
    assert " ".join(install) == "apt-get install --yes --no-install-recommends libegl1 libgl1"


def test_the_loader_knows_what_is_missing() -> None:
    needed = {"libc.so.6": "libc6", "libsurely-not-there.so.9": "surely-not-there"}
    if sys.platform.startswith("linux"):
        assert bootstrap.missing_libraries(needed) == {
            "libsurely-not-there.so.9": "surely-not-there"
        }


@pytest.mark.parametrize(
    ("display", "environ", "there", "absent"),
    [
        (False, {"DISPLAY": ":0"}, "libegl1", "libxcb-cursor0"),
        (True, {"DISPLAY": ":0"}, "libxcb-cursor0", "libwayland-cursor0"),
        (True, {"WAYLAND_DISPLAY": "wayland-0"}, "libwayland-cursor0", "libxcb-cursor0"),
    ],
)
def test_a_display_needs_the_libraries_of_its_kind(
    display: bool, environ: dict[str, str], there: str, absent: str
) -> None:
    packages = bootstrap.needed_libraries(display, environ).values()
    assert there in packages
    assert absent not in packages


def test_apt_is_left_alone_when_nothing_is_missing(monkeypatch: pytest.MonkeyPatch) -> None:
    called: list[object] = []
    monkeypatch.setattr(bootstrap, "missing_libraries", lambda needed: {})
    monkeypatch.setattr(bootstrap, "outcome_of", called.append)
    bootstrap.bring_system_libraries(display=True)
    assert called == []


def test_who_may_not_install_is_told_the_exact_command(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "platform", "linux")
    monkeypatch.setattr(bootstrap, "missing_libraries", lambda needed: {"libGL.so.1": "libgl1"})
    monkeypatch.setattr("shutil.which", lambda name: "/usr/bin/" + name)
    monkeypatch.setattr(os, "geteuid", lambda: 1000)
    with pytest.raises(bootstrap.Trouble) as trouble:
        bootstrap.bring_system_libraries(display=False)
    assert (
        "sudo apt-get update && sudo apt-get install --yes --no-install-recommends libgl1"
        in str(trouble.value)
    )


def test_a_system_without_apt_is_told_the_libraries(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "platform", "linux")
    monkeypatch.setattr(bootstrap, "missing_libraries", lambda needed: {"libGL.so.1": "libgl1"})
    monkeypatch.setattr("shutil.which", lambda name: None)
    with pytest.raises(bootstrap.Trouble, match=r"libGL\.so\.1"):
        bootstrap.bring_system_libraries(display=False)


def test_a_mirror_out_of_reach_is_not_called_a_broken_system() -> None:
    text = bootstrap.apt_failure_text("Err:1 Temporary failure resolving 'deb.debian.org'", "sudo")
    assert "mirror is out of reach" in text
    assert "By hand" in bootstrap.apt_failure_text("E: broken", "sudo apt-get install x")


def test_without_a_display_the_folder_of_the_results_is_the_last_line(checkout: Path) -> None:
    python = script(
        checkout / "python", 'mkdir -p "$6"; echo "made in $QT_QPA_PLATFORM"; echo "$6"\n'
    )
    walked = subprocess.run(
        [
            sys.executable,
            "-c",
            "import sys; from desktop import bootstrap; sys.exit(bootstrap.walk(sys.argv[1]))",
            str(python),
        ],
        cwd=SCRIPT.parent.parent,
        env={**os.environ, "TMPDIR": str(checkout)},
        capture_output=True,
        text=True,
        check=True,
    )
    *_, made, folder = walked.stdout.splitlines()
    assert made == "made in offscreen"
    assert Path(folder).is_dir()
    assert Path(folder).is_relative_to(checkout)


def test_what_is_started_knows_our_packages_and_no_stray_paths(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setenv("PYTHONPATH", "/somewhere")
    monkeypatch.setenv("PYTHONHOME", "/elsewhere")
    environment = bootstrap.child_environment()
    assert environment["PYTHONPATH"] == str(SCRIPT.parent.parent)
    assert "PYTHONHOME" not in environment
    assert environment["PYTHONFAULTHANDLER"] == "1"
