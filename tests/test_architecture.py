"""The house keeps its shape: who may import whom, what each start costs, what the wheel holds."""

from __future__ import annotations

import ast
import os
import re
import shutil
import subprocess
import sys
import tomllib
from collections.abc import Iterator
from fnmatch import fnmatch
from functools import cache
from pathlib import Path

import pytest

from desktop import menu_entry

ROOT = Path(__file__).resolve().parent.parent
PACKAGES = ("desktop", "views", "db", "resources")
TOP_LEVEL = {
    "README.md",
    "DEVELOPERS.md",
    "LICENSE",
    "pyproject.toml",
    ".ci",
    ".gitignore",
    "tests",
    *PACKAGES,
}

# What each part may import beside the standard library; the longest name that fits counts.
# "a.b" allows a.b and what lies under it. None allows everything.
MAY_IMPORT: dict[str, tuple[str, ...] | None] = {
    "desktop.training": ("numpy", "desktop.training"),
    "db": (
        "numpy",
        "peewee",
        "playhouse",
        "sqlcipher3",
        "msgspec",
        "rapidfuzz",
        "openpyxl",
        "xlsxwriter",
        "desktop.training",
        "db",
    ),
    "desktop.entries": ("msgspec",),
    "desktop.catalogue": ("desktop.entries", "desktop.training"),
    "desktop.limits": ("desktop.entries", "desktop.training"),
    "desktop.notes": ("numpy", "rapidfuzz", "desktop.training", "desktop.notes"),
    "desktop.drafting": ("numpy", "scipy", "desktop.training", "desktop.drafting"),
    "desktop.planning": (
        "numpy",
        "rapidfuzz",
        "desktop.training",
        "desktop.notes",
        "desktop.drafting",
        "desktop.entries",
        "desktop.catalogue",
        "desktop.limits",
        "desktop.planning",
        "db",
    ),
    "desktop.command_line": (
        "desktop.arguments",
        "desktop.entries",
        "desktop.planning",
        "desktop.verbs",
        "db",
    ),
    "desktop.verbs": (
        "desktop.training",
        "desktop.planning",
        "desktop.entries",
        "desktop.catalogue",
        "desktop.limits",
        "desktop.paths",
        "desktop.passphrase_prompt",
        "desktop.demo",
        "desktop.answers",
        "desktop.note_answers",
        "desktop.menu_entry",
        "desktop.tour",
        "desktop.verbs",
        "db",
    ),
    "desktop.demo": ("desktop.planning", "db"),
    "desktop.data_file": ("desktop.planning", "desktop.catalogue", "desktop.demo", "db"),
    "desktop.note_answers": ("desktop.training", "desktop.notes", "desktop.planning"),
    "desktop.answers": ("desktop.training", "desktop.planning", "db"),
    "desktop.arguments": ("desktop.training",),
    "desktop.tour": ("desktop.training", "desktop.planning", "desktop.answers", "db"),
    "desktop.menu_entry": (),
    "desktop.paths": ("appdirs",),
    "desktop.passphrase_prompt": (),
    "desktop.keeper": (
        "PySide6",
        "desktop.moving",
        "desktop.paths",
        "desktop.settings",
        "desktop.planning",
        "db.errors",
        "views",
    ),
    "desktop.moving": ("PySide6", "desktop.planning", "db.errors", "views"),
    "desktop.settings": ("PySide6.QtCore",),
    "desktop.translators": ("PySide6.QtCore",),
    "desktop.bootstrap": (),
    "desktop.startup_guard": ("desktop.bootstrap",),
    "desktop.straight_imports": ("PySide6.QtCore",),
    "views": (
        "numpy",
        "PySide6",
        "pyqtgraph",
        "desktop.training",
        "desktop.planning",
        "desktop.settings",
        "db.repository",
        "db.first_look",
        "db.series",
        "db.steps",
        "db.changes",
        "db.errors",
        "views",
    ),
    "desktop.application": None,
    "desktop.__main__": None,
    "desktop": (),
    "resources": (),
}

# The decisions are made in every process, so they do not wait for numpy.
WITHOUT_NUMPY = ("progression", "replay", "strength", "equipment", "leverage")
LATE = ("pyqtgraph", "scipy", "openpyxl", "xlsxwriter", "pandas", "statsmodels")
NAMELESS = {"utils", "util", "helpers", "helper", "common", "misc", "manager", "managers", "tools"}


def sources(*packages: str) -> Iterator[Path]:
    for package in packages or (*PACKAGES, "tests"):
        yield from sorted((ROOT / package).rglob("*.py"))


def module_name(path: Path) -> str:
    parts = path.relative_to(ROOT).with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


@cache
def nodes_of(path: Path) -> tuple[ast.Import | ast.ImportFrom | ast.Call, ...]:
    """What a file imports and calls, read once for all the tests that ask."""
    tree = ast.parse(path.read_text(encoding="utf-8"), str(path))
    kinds = (ast.Import, ast.ImportFrom, ast.Call)
    return tuple(node for node in ast.walk(tree) if isinstance(node, kinds))


def imports_of(path: Path) -> Iterator[tuple[int, str]]:
    """Line and full name of everything a file imports, wherever in the file that stands."""
    for node in nodes_of(path):
        if isinstance(node, ast.Import):
            for alias in node.names:
                yield node.lineno, alias.name
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path}:{node.lineno}: imports are absolute here"
            for alias in node.names:
                yield node.lineno, f"{node.module}.{alias.name}"


def lies_in(name: str, package: str) -> bool:
    return name == package or name.startswith(package + ".")


def allowance(module: str) -> tuple[str, ...] | None:
    return MAY_IMPORT[max((key for key in MAY_IMPORT if lies_in(module, key)), key=len)]


def is_there(module: str) -> bool:
    path = ROOT / module.replace(".", "/")
    return path.is_dir() or path.with_suffix(".py").is_file()


def calls(path: Path) -> Iterator[ast.Call]:
    return (node for node in nodes_of(path) if isinstance(node, ast.Call))


def in_fresh_interpreter(code: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-W", "error", "-c", code],
        cwd=ROOT,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )


def test_every_part_imports_only_what_it_may() -> None:
    wrong = []
    for path in sources(*PACKAGES):
        allowed = allowance(module_name(path))
        if allowed is None:
            continue
        for line, name in imports_of(path):
            if name.split(".")[0] in sys.stdlib_module_names:
                continue
            if not any(lies_in(name, package) for package in allowed):
                wrong.append(f"{path.relative_to(ROOT)}:{line} imports {name}")
    assert not wrong, "\n".join(wrong)


def test_import_contracts_are_kept() -> None:
    checked = in_fresh_interpreter(
        "import sys; from importlinter.cli import lint_imports;"
        "sys.exit(lint_imports(no_cache=True, no_logo=True))"
    )
    assert checked.returncode == 0, checked.stdout + checked.stderr


def test_the_model_stands_without_qt_and_store() -> None:
    started = in_fresh_interpreter(
        "import sys, pkgutil, importlib\n"
        "for name in ('PySide6', 'shiboken6', 'peewee', 'playhouse', 'pyqtgraph', 'sqlite3'):\n"
        "    sys.modules[name] = None\n"
        "import desktop.training as package\n"
        "for found in pkgutil.walk_packages(package.__path__, package.__name__ + '.'):\n"
        "    importlib.import_module(found.name)\n"
    )
    assert started.returncode == 0, started.stderr


def test_decisions_do_not_wait_for_numpy() -> None:
    there = [name for name in WITHOUT_NUMPY if is_there(f"desktop.training.{name}")]
    started = in_fresh_interpreter(
        f"import sys, importlib\nsys.modules['numpy'] = None\nfor name in {there!r}:\n"
        "    importlib.import_module('desktop.training.' + name)\n"
    )
    assert started.returncode == 0, started.stderr


def test_the_store_and_the_command_line_stand_without_qt() -> None:
    parts = [
        "db",
        "desktop.planning",
        "desktop.command_line",
        "desktop.verbs",
        "desktop.notes",
        "desktop.drafting",
    ]
    started = in_fresh_interpreter(
        "import sys, pkgutil, importlib\n"
        "for name in ('PySide6', 'shiboken6', 'pyqtgraph'):\n"
        "    sys.modules[name] = None\n"
        f"for name in {[part for part in parts if is_there(part)]!r}:\n"
        "    part = importlib.import_module(name)\n"
        "    for found in pkgutil.walk_packages(getattr(part, '__path__', ()), name + '.'):\n"
        "        importlib.import_module(found.name)\n"
    )
    assert started.returncode == 0, started.stderr


@pytest.mark.parametrize("module", ["views.main_window", "desktop.planning", "desktop.__main__"])
def test_starting_does_not_import_what_is_needed_late(module: str) -> None:
    if not is_there(module):
        pytest.skip(f"{module} is not there yet")
    started = in_fresh_interpreter(
        f"import sys, {module}\nprint(*[name for name in {LATE!r} if name in sys.modules])"
    )
    assert started.returncode == 0, started.stderr
    assert started.stdout.split() == []


def test_one_file_knows_the_chart_library() -> None:
    knowing = {
        module_name(path)
        for path in sources(*PACKAGES)
        for _, name in imports_of(path)
        if lies_in(name, "pyqtgraph")
    }
    assert len(knowing) <= 1, knowing
    assert all(lies_in(name, "views") for name in knowing)


def test_only_main_imports_the_application() -> None:
    knowing = {
        module_name(path)
        for path in sources(*PACKAGES)
        for _, name in imports_of(path)
        if lies_in(name, "desktop.application")
    }
    assert knowing <= {"desktop.__main__"}


def test_every_init_file_is_a_docstring_and_nothing_else() -> None:
    for path in sources():
        if path.name == "__init__.py":
            body = ast.parse(path.read_text(encoding="utf-8")).body
            assert len(body) == 1, path
            assert ast.get_docstring(ast.Module(body, [])), path


def test_resources_hold_data_only() -> None:
    assert [path.name for path in sources("resources") if path.name != "__init__.py"] == []


def test_files_are_named_for_a_noun_of_the_field() -> None:
    assert [path for path in sources() if NAMELESS.intersection(path.stem.split("_"))] == []


def test_no_file_hides_a_module_of_the_standard_library() -> None:
    """bootstrap.py runs as a script, so that its neighbours come first on the path."""
    neighbours = {path.stem for path in (ROOT / "desktop").iterdir()} - {"__init__", "__main__"}
    assert neighbours.isdisjoint(sys.stdlib_module_names)


def test_text_to_translate_is_whole() -> None:
    """An f-string or a joined text inside tr() is never found by the translator's tool."""
    wrong = []
    for path in sources(*PACKAGES):
        for call in calls(path):
            named = call.func.attr if isinstance(call.func, ast.Attribute) else None
            named = call.func.id if isinstance(call.func, ast.Name) else named
            if named in ("tr", "translate") and any(
                isinstance(part, (ast.JoinedStr, ast.BinOp))
                for argument in call.args
                for part in ast.walk(argument)
                if named == "tr" or argument in call.args[:2]
            ):
                wrong.append(f"{path.relative_to(ROOT)}:{call.lineno}")
    assert wrong == []


def test_charts_thin_their_points_by_plot_and_not_by_curve() -> None:
    """Given per curve the plot overwrites these, and clipToView raises in pyqtgraph 0.14."""
    wrong = [
        f"{path.relative_to(ROOT)}:{call.lineno}"
        for path in sources("views")
        for call in calls(path)
        for keyword in call.keywords
        if keyword.arg in ("clipToView", "autoDownsample", "downsample")
    ]
    assert wrong == []


def test_the_wheel_holds_the_program_and_not_its_tests() -> None:
    from setuptools import find_namespace_packages

    with (ROOT / "pyproject.toml").open("rb") as file:
        setuptools = tomllib.load(file)["tool"]["setuptools"]
    packages = find_namespace_packages(str(ROOT), **setuptools["packages"]["find"])
    assert {name.split(".")[0] for name in packages} == set(PACKAGES)
    assert "desktop.training" in packages

    patterns = setuptools["package-data"]["*"]
    left_out = [
        path
        for package in PACKAGES
        for path in (ROOT / package).rglob("*")
        if path.is_file()
        and path.suffix not in (".py", ".pyc", ".ts")
        and not any(fnmatch(path.name, pattern) for pattern in patterns)
    ]
    assert left_out == []
    placed = {
        Path(source).name: target.removeprefix("share/")
        for target, (source,) in setuptools["data-files"].items()
        if (ROOT / source).is_file()
    }
    assert placed == menu_entry.PLACES


def test_nothing_new_stands_at_the_top() -> None:
    if not (ROOT / ".git").exists() or not shutil.which("git"):
        pytest.skip("not a git checkout, or no git")
    listed = subprocess.run(
        ["git", "ls-files", "-z"], cwd=ROOT, capture_output=True, text=True, check=False
    )
    if listed.returncode != 0:
        pytest.skip("git cannot list this checkout")
    assert {name.split("/")[0] for name in listed.stdout.split("\0") if name} <= TOP_LEVEL


def test_every_dependency_is_pinned_once_for_each_python() -> None:
    with (ROOT / "pyproject.toml").open("rb") as file:
        project = tomllib.load(file)["project"]
    wanted = project["dependencies"] + project["optional-dependencies"]["dev"]
    pinned = [
        re.split(r"==|\s*;\s*", line.strip())
        for lock in ("run.lock", "test.lock")
        for line in (ROOT / ".ci" / lock).read_text(encoding="utf-8").splitlines()
        if line and not line.startswith("#")
    ]
    keys = [(entry[0], *entry[2:]) for entry in pinned]
    assert len(set(keys)) == len(keys)
    names = {re.split(r"[<>=~;\s]", line)[0].lower() for line in wanted}
    assert names <= {entry[0] for entry in pinned}
