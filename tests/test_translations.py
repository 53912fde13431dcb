"""Other languages: complete, true to the English text, up to date, and spoken by the window."""

from __future__ import annotations

import ast
import csv
import re
import shutil
from collections.abc import Iterator
from dataclasses import replace
from functools import cache
from pathlib import Path
from string import Formatter

import pytest
from PySide6.QtCore import QCoreApplication, QDate, QLocale
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from db.json_files import InvalidFile
from db.log_export import write_log
from db.log_files import read_log
from db.log_import import plan_import
from db.log_names import folded
from desktop import paths
from desktop.application import Desk
from desktop.catalogue import load_catalogue
from desktop.drafting.naming import about, program_name
from desktop.drafting.wishes import DraftWishes, EquipmentClass, equipment_of
from desktop.notes.reader import read_notes
from desktop.planning.exercise_search import find_exercises
from desktop.planning.history import read_history
from desktop.planning.noted import known_of
from desktop.planning.starters import starters
from desktop.settings import Settings
from desktop.training.equipment import Equipment, Height
from desktop.training.exercises import Exercise, Measure
from desktop.training.program import Program
from desktop.training.scale import scale
from desktop.training.sentence import enumerated, sentence, sentence_of
from desktop.training.trainee import Trainee
from desktop.translators import Translators, english_for, languages, locale_for
from tests.scenario import TODAY, open_club
from tests.shipped_words import ROOT
from tests.translations import Entry, catalogues, compile_catalogue, entries, refresh
from views.gallery import ForgottenSettings, settle
from views.guide_pages import contents
from views.language import ExerciseNames, program_said
from views.main_window import MainWindow
from views.menus import LANGUAGE_NAMES
from views.record import Record
from views.sentences import begun_small, small, worded
from views.theme import Scheme, Theme

LANGUAGES = tuple(catalogues())
SCREENS = [*sorted((ROOT / "views").glob("*.py")), *sorted((ROOT / "desktop").glob("*.py"))]
_MNEMONIC = re.compile(r"&(?!&)\w")


@pytest.fixture(params=LANGUAGES)
def language(request: pytest.FixtureRequest) -> str:
    return str(request.param)


@pytest.fixture
def catalogue(language: str) -> tuple[Entry, ...]:
    """What is translated so far; that this is everything has a test of its own."""
    return tuple(each for each in entries(catalogues()[language]) if each.finished)


@pytest.fixture
def german(qapp: QApplication) -> Iterator[None]:
    yield from _spoken(qapp, "de_DE")


@pytest.fixture
def spoken(qapp: QApplication, language: str) -> Iterator[None]:
    yield from _spoken(qapp, language)


def _spoken(application: QApplication, locale: str) -> Iterator[None]:
    before = QLocale()
    translators = Translators(application)
    assert translators.use(QLocale(locale))
    yield
    assert not translators.use(QLocale("en_GB"))
    QLocale.setDefault(before)


# --- the catalogues -------------------------------------------------------------------------------


def test_german_and_spanish_are_there_and_named_in_the_menu() -> None:
    assert set(LANGUAGES) >= {"de", "es"}
    assert languages() == ("en", *LANGUAGES)
    assert set(languages()) <= set(LANGUAGE_NAMES)


def test_every_text_is_translated(language: str) -> None:
    found = entries(catalogues()[language])
    waiting = [f"{e.context}: {e.source}" for e in found if not (e.finished and e.translation)]
    assert not waiting, "\n".join(waiting)


def test_placeholders_are_those_of_the_english_text(catalogue: tuple[Entry, ...]) -> None:
    assert not [e for e in catalogue if _places(e.source) != _places(e.translation)]


def _places(text: str) -> set[tuple[str, str | None, str | None]]:
    if "{" not in text:
        return set()
    parsed = Formatter().parse(text)
    return {(name, spec, how) for _, name, spec, how in parsed if name is not None}


def test_mnemonics_are_kept(catalogue: tuple[Entry, ...]) -> None:
    wrong = [
        entry
        for entry in catalogue
        if len(_MNEMONIC.findall(entry.source)) != len(_MNEMONIC.findall(entry.translation))
    ]
    assert not wrong


def test_one_and_many_are_told_apart(catalogue: tuple[Entry, ...]) -> None:
    """The code has one text for one of a thing and one for many; neither may stand for both."""
    texts = {(entry.context, entry.source): entry.translation for entry in catalogue}
    for (context, source), translation in texts.items():
        if source.startswith("1 "):
            many = source.replace("1 ", "{count} ", 1) + "s"
            assert texts.get((context, many), "") != translation, source
            assert "{count}" not in translation


def test_texts_that_end_as_a_sentence_do_so_in_translation(catalogue: tuple[Entry, ...]) -> None:
    ends = (".", "?", "…", ":")
    wrong = [
        entry
        for entry in catalogue
        for end in ends
        if entry.source.endswith(end) and not entry.translation.endswith((*ends, ")"))
    ]
    assert not wrong


def test_catalogues_are_up_to_date_with_the_sources(language: str, tmp_path: Path) -> None:
    """Otherwise: python -m tests.translations."""
    kept = catalogues()[language]
    made = tmp_path / kept.name
    shutil.copy(kept, made)
    refresh(made, language)
    assert made.read_text(encoding="utf-8") == kept.read_text(encoding="utf-8")


def test_what_is_loaded_is_up_to_date_with_the_catalogues(language: str, tmp_path: Path) -> None:
    kept = catalogues()[language]
    compile_catalogue(kept, tmp_path / "made.qm")
    assert (tmp_path / "made.qm").read_bytes() == kept.with_suffix(".qm").read_bytes()


def test_every_text_of_the_screens_is_found_under_the_name_it_is_asked_for(language: str) -> None:
    known = {(entry.context, entry.source) for entry in entries(catalogues()[language])}
    assert _asked_for() - known == set()


@cache
def _asked_for() -> frozenset[tuple[str, str]]:
    return frozenset(text for path in SCREENS for text in _asked(_tree(path)))


@cache
def _tree(path: Path) -> ast.Module:
    return ast.parse(path.read_text(encoding="utf-8"))


def _asked(tree: ast.Module) -> Iterator[tuple[str, str]]:
    for outer in tree.body:
        if isinstance(outer, ast.ClassDef):
            for node in ast.walk(outer):
                match node:
                    case ast.Call(ast.Attribute(_, "tr"), [ast.Constant(str() as text), *_]):
                        yield outer.name, text
    for node in ast.walk(tree):
        match node:
            case ast.Call(
                ast.Name("translate") | ast.Attribute(_, "translate"),
                [ast.Constant(str() as context), ast.Constant(str() as text), *_],
            ):
                yield context, text


_SHOWN_BY = {
    *("setText", "setToolTip", "setPlaceholderText", "setAccessibleName", "setWindowTitle"),
    *("setAccessibleDescription", "setTitle", "setStatusTip", "addMenu", "QAction", "QLabel"),
    *("QPushButton", "Label", "WordButton", "MainButton", "keyed_word", "ToggleWord", "say"),
}


def test_no_text_goes_to_the_screen_untranslated() -> None:
    """The first argument of what shows a text is no English literal, whole or in part."""
    wrong = []
    for path in SCREENS:
        for node in ast.walk(_tree(path)):
            if not isinstance(node, ast.Call) or not node.args:
                continue
            name = getattr(node.func, "attr", getattr(node.func, "id", ""))
            if name in _SHOWN_BY and _has_word(node.args[0]):
                wrong.append(f"{path.name}:{node.lineno}")
    assert not wrong


def _has_word(shown: ast.expr) -> bool:
    match shown:
        case ast.Constant(str() as text):
            return re.search(r"[A-Za-z]{2,}", text) is not None
        case ast.JoinedStr(values):
            return any(_has_word(each) for each in values)
        case ast.BinOp(left, _, right):
            return _has_word(left) or _has_word(right)
        case ast.IfExp(_, body, orelse):
            return _has_word(body) or _has_word(orelse)
    return False


# --- names of exercises ---------------------------------------------------------------------------


def _said() -> dict[str, Exercise]:
    names = ExerciseNames()
    return {one.key: names(one) for one in load_catalogue()}


@pytest.mark.usefixtures("spoken")
def test_no_name_of_an_exercise_means_two_of_them() -> None:
    meant: dict[str, str] = {}
    for key, exercise in _said().items():
        for name in {folded(name) for name in (exercise.name, *exercise.other_names)}:
            assert meant.setdefault(name, key) == key, f"{name}: {key} and {meant[name]}"


@pytest.mark.usefixtures("spoken")
def test_an_exercise_is_found_by_its_name_in_both_languages() -> None:
    said = _said()
    for stored in load_catalogue():
        for name in (stored.name, said[stored.key].name):
            assert find_exercises(name, said.values())[0].key == stored.key


@pytest.mark.usefixtures("german")
def test_what_the_coach_named_stays_as_typed() -> None:
    (squat,) = (one for one in load_catalogue() if one.key == "back-squat")
    own = ExerciseNames()(replace(squat, own=True))
    assert (own.name, own.cue) == (squat.name, squat.cue)


@pytest.mark.usefixtures("german")
def test_a_log_keeps_the_english_names_and_is_read_in_every_language(tmp_path: Path) -> None:
    repository = open_club(tmp_path, weeks=1)
    repository.said = ExerciseNames()
    log = tmp_path / "log.csv"
    write_log(repository, log, repository.trainees())
    lines = log.read_text(encoding="utf-8-sig").splitlines()
    written = {row["exercise"] for row in csv.DictReader(lines)} - {""}
    assert written
    assert written <= {
        name for one in repository.stored_exercises() for name in (one.name, one.key)
    }
    plan = plan_import(repository, read_log(log))
    assert plan.problems == ()
    assert len(plan.doubles) == len(lines) - 1
    repository.database.close()


@pytest.mark.usefixtures("german")
def test_a_log_may_name_exercises_in_german(tmp_path: Path) -> None:
    repository = open_club(tmp_path, weeks=1)
    repository.said = ExerciseNames()
    names = [one.name for one in repository.exercises() if one.measure is Measure.REPS]
    lines = [f"Bow,2026-11-2{place},{name},8,20 kg" for place, name in enumerate(names[:3], 1)]
    log = tmp_path / "log.csv"
    log.write_text("\n".join(["trainee,date,exercise,reps,load", *lines]), encoding="utf-8")
    assert plan_import(repository, read_log(log)).problems == ()
    repository.database.close()


@pytest.mark.usefixtures("german")
def test_notes_are_read_with_german_and_with_english_names(tmp_path: Path) -> None:
    repository = open_club(tmp_path, weeks=1)
    repository.said = ExerciseNames()
    (bow, *_) = repository.trainees()
    history = read_history(repository, bow.id or 0)
    known = known_of(history, (), TODAY)
    for stored in repository.stored_exercises():
        said = repository.exercise(stored.key)
        amount = "3x20s" if stored.measure is Measure.HOLD else "3x8"
        for name in (stored.name, said.name):
            entries_read = read_notes(f"{name} {amount}", known).entries
            assert [entry.exercise for entry in entries_read] == [stored.key], name
    repository.database.close()


@pytest.mark.usefixtures("german")
def test_a_variation_at_an_owned_height_is_said_in_german() -> None:
    push_up = next(one for one in load_catalogue() if one.key == "push-up")
    names = ExerciseNames()
    owned = Equipment(boxes=(Height("Stuhl", 455),))
    shown = [step.name for step in scale(names(push_up), Trainee("Bow"), owned)]
    assert "Hände auf Stuhl, 45,5 cm" in shown
    assert not {step.name for step in scale(push_up, Trainee("Bow"), owned)} & set(shown)


@pytest.mark.usefixtures("spoken")
def test_ready_made_programs_come_translated() -> None:
    for starter in starters():
        made = program_said(starter.program)
        assert made.name != starter.program.name
        assert made.about != starter.program.about
        assert "Deload" not in made.about
        assert {day.name for phase in made.phases for day in phase.days}.isdisjoint(
            day.name for phase in starter.program.phases for day in phase.days
        )


@pytest.mark.usefixtures("german")
def test_a_drafted_program_is_named_in_german() -> None:
    wishes = DraftWishes(2, 60, equipment_of(EquipmentClass.BARBELL), kind=EquipmentClass.BARBELL)
    said = program_said(Program(program_name(wishes), about=about(wishes, 8)))
    assert said.name.startswith("Zwei Tage")
    assert "{" not in said.about
    assert said.about != about(wishes, 8)


# --- sentences ------------------------------------------------------------------------------------


def test_a_sentence_is_plain_text_to_everybody_else() -> None:
    made = sentence("{day}, {what}", day=3, what=enumerated(["a", "b"]))
    assert made == "3, a, b"
    assert str(sentence("squat").begun()) == "Squat"
    assert sentence_of(InvalidFile(made)) is made
    assert sentence_of(InvalidFile("plain")) == "plain"


@pytest.mark.usefixtures("german")
def test_an_error_within_an_error_is_said_in_german() -> None:
    inner = InvalidFile(sentence("a program needs a name - at `$.program.name`"))
    outer = InvalidFile(sentence("{file}: {error}", file="winter.json", error=inner))
    assert str(outer) == "winter.json: a program needs a name - at `$.program.name`"
    assert worded(outer).startswith("winter.json: ")
    assert "needs" not in worded(outer)
    half = sentence("{value:g} is not a whole number", value=2.5)
    assert "2,5" in worded(half)
    assert worded("as it is") == "as it is"


def test_names_stay_capital_in_german_and_become_small_in_english(qapp: QApplication) -> None:
    assert (small("Back squat"), begun_small("Back Squat")) == ("back squat", "back Squat")
    for _ in _spoken(qapp, "de"):
        assert (small("Kniebeuge"), begun_small("Kniebeuge")) == ("Kniebeuge", "Kniebeuge")


# --- the window -----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("choice", "system", "expected"),
    [
        ("", "de_AT", "de_AT"),
        ("de", "de_AT", "de_AT"),
        ("de", "en_US", "de_DE"),
        ("en", "de_DE", "en_DE"),
        ("es", "en_US", "es_US"),
        ("", "fr_FR", "fr_FR"),
    ],
)
def test_numbers_and_days_follow_language_and_country(
    choice: str, system: str, expected: str
) -> None:
    assert locale_for(choice, QLocale(system)).name() == expected


@pytest.mark.parametrize(
    ("system", "expected"),
    [
        ("en_US", "en_US"),
        ("es_MX", "en_US"),
        ("de_DE", "en_001"),
        ("de_CH", "en_CH"),
        ("C", "en_001"),
    ],
)
def test_where_english_is_spoken_days_are_english_and_numbers_have_a_point(
    system: str, expected: str
) -> None:
    written = english_for(QLocale(system))
    assert (written.name(), written.decimalPoint()) == (expected, ".")


@pytest.mark.parametrize("locale", ["en_US", "en_GB", "C", "fr_FR"])
def test_for_english_and_for_what_is_not_translated_nothing_is_loaded(
    qapp: QApplication, locale: str
) -> None:
    before = QLocale()
    assert not Translators(qapp).use(QLocale(locale))
    assert QCoreApplication.translate("Words", "1 set") == "1 set"
    QLocale.setDefault(before)


@pytest.mark.usefixtures("german")
def test_qts_own_words_are_german_too() -> None:
    assert QCoreApplication.translate("QPlatformTheme", "Cancel") == "Abbrechen"


@pytest.mark.usefixtures("german")
def test_a_screen_in_german_is_german(qtbot: QtBot, tmp_path: Path) -> None:
    repository = open_club(tmp_path, weeks=1)
    repository.said = ExerciseNames()
    theme = Theme(Scheme.LIGHT, calm=True)
    window = MainWindow(Record(repository), TODAY, theme, ForgottenSettings())
    qtbot.addWidget(window)
    with qtbot.waitExposed(window):
        window.show()
    bar = [action.text() for action in window.menuBar().actions()]
    assert bar[0] == "&Datei"
    window.roster.step(1)
    window.show_area("session")
    settle()
    texts = " · ".join(label.text() for label in window.findChildren(QLabel))
    squat = repository.exercise("back-squat").name
    assert squat in texts
    assert "Back squat" not in texts
    assert QLocale().toString(QDate(TODAY.year, TODAY.month, TODAY.day), "MMMM") in texts
    window.close()
    repository.database.close()


def test_another_language_takes_effect_at_once_and_is_remembered(
    qtbot: QtBot, qapp: QApplication, home: Path
) -> None:
    before = QLocale()
    settings = Settings(paths.config_folder() / "settings.ini")
    settings.language = "en"
    desk = Desk(settings, Theme(calm=True), qapp)
    assert desk.open(paths.default_data_file())
    assert desk.window is not None
    first = desk.window
    first.show_area("program")
    first.menus.language_wanted.emit("de")
    assert desk.window is not first
    assert settings.language == "de"
    assert desk.window.menuBar().actions()[0].text() == "&Datei"
    assert desk.window.areas.key == "program"
    assert desk.record is not None
    assert desk.record.repository.exercise("bench-press").name == "Bankdrücken"
    desk.window.menus.language_wanted.emit("en")
    assert desk.window.menuBar().actions()[0].text() == "&File"
    assert desk.record.repository.exercise("bench-press").name == "Bench press"
    desk.close()
    QLocale.setDefault(before)


# --- the guide ------------------------------------------------------------------------------------


def test_a_guide_in_another_language_has_the_pages_of_the_english_one(language: str) -> None:
    english = [page.key for page in contents()]
    assert [page.key for page in contents(language)] == english
