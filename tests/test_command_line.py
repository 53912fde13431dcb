"""The command line: every verb on real files, in this process; a few as processes of their own."""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from collections.abc import Sequence
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from db.database import Database
from db.repository import Repository
from db.trainee_files import read_trainees, trainees_bytes
from desktop.catalogue import load_catalogue
from desktop.command_line import main
from desktop.planning.days import DayPlan
from desktop.planning.program_weeks import ProgramWeeks
from desktop.planning.report import TraineeReport
from desktop.training.session import Session
from views import reason_texts

ROOT = Path(__file__).resolve().parent.parent
FORMATS = (ROOT / "resources" / "formats.md").read_text(encoding="utf-8")
MONDAY = "2026-11-30"


class PaperSheets:
    """Writes a mark instead of a PDF; the real one has its own tests."""

    SheetError: type[Exception] = OSError

    def write_pdf(self, plan: DayPlan, path: Path) -> None:
        path.write_text(f"{plan.trainee.name} {plan.day} {len(plan.slots)}", encoding="utf-8")

    def write_program_pdf(self, weeks: ProgramWeeks, path: Path) -> int:
        path.write_text(weeks.program.name, encoding="utf-8")
        return 1

    def write_report_pdf(self, report: TraineeReport, path: Path) -> int:
        path.write_text(f"{report.trainee.name} {report.sessions}", encoding="utf-8")
        return 2

    def write_group_pdf(self, plans: Sequence[DayPlan], day: date, path: Path) -> int:
        path.write_text(f"{len(plans)} {day}", encoding="utf-8")
        return 1


class Ran:
    """What one call gave."""

    def __init__(self, code: int, out: str, err: str) -> None:
        self.code = code
        self.out = out
        self.err = err

    @property
    def json(self) -> Any:
        return json.loads(self.out)


class Line:
    """The command line over one data file."""

    def __init__(self, database: Path, capsys: pytest.CaptureFixture[str]) -> None:
        self.database = database
        self._capsys = capsys

    def __call__(self, *arguments: str | Path) -> Ran:
        self._capsys.readouterr()
        given = [str(one) for one in arguments]
        code = main([*given, "--database", str(self.database)], reason_texts, PaperSheets)
        out, err = self._capsys.readouterr()
        return Ran(code, out, err)


@pytest.fixture
def line(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Line:
    return Line(tmp_path / "data.db", capsys)


@pytest.fixture(scope="module")
def filled(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("demo") / "demo.db"
    code = main(
        ["demo", "--database", str(path), "--date", MONDAY], words=reason_texts, sheets=PaperSheets
    )
    assert code == 0
    return path


@pytest.fixture
def demo(filled: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Line:
    copy = tmp_path / "demo.db"
    database = Database.open(filled)
    database.copy_to(copy)
    database.close()
    return Line(copy, capsys)


def blocks(kind: str, text: str = FORMATS) -> list[str]:
    return re.findall(rf"```{kind}\n(.*?)```", text, re.DOTALL)


def example(schema: str) -> str:
    (found,) = (block for block in blocks("json") if f'"schema": "{schema}"' in block)
    return found


def written(folder: Path, name: str, text: str) -> Path:
    (folder / name).write_text(text, encoding="utf-8")
    return folder / name


def sessions(path: Path, name: str) -> tuple[Session, ...]:
    database = Database.open(path)
    try:
        trainee = Repository(database).trainee_named(name)
        assert trainee is not None
        assert trainee.id is not None
        return Repository(database).sessions(trainee.id)
    finally:
        database.close()


# --- the page on formats ------------------------------------------------------------------------


def test_every_example_of_the_formats_page_is_taken(line: Line, tmp_path: Path) -> None:
    program = written(tmp_path, "program.json", example("rungwise program"))
    trainees = written(tmp_path, "trainees.json", example("rungwise trainees"))
    (text,) = blocks("csv")
    log = written(tmp_path, "log.csv", text)
    for ran in (
        line("import-program", program),
        line("import-trainees", trainees),
        line("import-log", log, "--new-trainees", "always"),
    ):
        assert (ran.code, ran.err) == (0, "")
    assert [one.day for one in sessions(line.database, "Bow")] == [date(2026, 11, 23)]


def test_every_column_stands_on_the_formats_page() -> None:
    from db.log_rows import COLUMNS

    table = FORMATS[: FORMATS.index("## Programs")]
    assert set(re.findall(r"`([a-z_]+)`", table)) >= set(COLUMNS)


def test_the_example_case_ends_where_the_page_says(line: Line, tmp_path: Path) -> None:
    case = written(tmp_path, "case.json", example("rungwise case"))
    answer = line("replay", case, "--json").json
    assert answer["state"]["position"]["load_g"] == 62_500
    assert (answer["state"]["position"]["reps"], answer["state"]["position"]["sets"]) == (9, 2)
    assert [step["outcome"] for step in answer["steps"]] == ["met", "missed", "met"]
    assert answer["steps"][0]["reason"]["code"] == "roll over"
    assert len(answer["target"]["sets"]) == 2
    for name in ("successes", "misses", "last_day", "back_offs", "reason", "held"):
        assert name in answer["state"]
    text = line("replay", case).out
    assert "now: 2 × 9 at 62.5 kg" in text
    assert not line.database.exists()


def changed_case(folder: Path, **changes: Any) -> Path:
    return written(
        folder, "case.json", json.dumps({**json.loads(example("rungwise case")), **changes})
    )


def test_a_case_asks_less_on_a_day_within_its_deload(line: Line, tmp_path: Path) -> None:
    events = [{"deload": {"first": "2026-09-14", "last": "2026-09-20"}}]
    answer = line("replay", changed_case(tmp_path, events=events, ask_on="2026-09-20"), "--json")
    asked = answer.json["target"]
    # two sets x 0.6 are 1.2, rounded up; 60 kg - 10 % are 54, and 55 is the lightest there is
    assert [one["load_g"] for one in asked["sets"]] == [55_000, 55_000]
    assert asked["reason"]["code"] == "deload"
    later = line("replay", changed_case(tmp_path, events=events, ask_on="2026-09-21"), "--json")
    assert later.json["target"]["reason"]["code"] == "start"


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"events": [{}]}, "an event is one of"),
        (
            {
                "events": [
                    {"clearance": {"day": MONDAY}, "deload": {"first": MONDAY, "last": MONDAY}}
                ]
            },
            "$.events[0]",
        ),
        ({"start": {"day": MONDAY, "position": {"sets": 2}}}, "`$.start.position`"),
        ({"rule": {"ranges": [{"variable": "load", "floor": "heavy"}]}}, "$.rule.ranges[0].floor"),
        ({"answer": 42}, "unknown field `answer`"),
    ],
)
def test_a_wrong_case_is_told_with_its_place(
    line: Line, tmp_path: Path, changes: dict[str, Any], said: str
) -> None:
    ran = line("replay", changed_case(tmp_path, **changes))
    assert (ran.code, ran.out) == (1, "")
    assert said in ran.err


def test_a_case_of_a_hold_is_told_in_words(line: Line, tmp_path: Path) -> None:
    case = changed_case(
        tmp_path,
        rule={
            "ranges": [
                {"variable": "hold", "floor": 5, "ceiling": 20, "increment": 5},
                {"variable": "tempo", "floor": 3, "ceiling": 5},
            ]
        },
        start={
            "day": "2026-09-07",
            "position": {"hold_s": 5, "sets": 4, "tempo_s": 3, "load_g": 4536, "variation": "tuck"},
        },
        surroundings={},
        events=[],
    )
    out = line("replay", case, "--unit", "lb").out
    assert "now: 4 × 5 s at 10 lb, 3 s each, tuck" in out


# --- bringing in --------------------------------------------------------------------------------

LOG = """trainee,date,exercise,set,load,unit,reps
Bow,2026-11-23,Back squat,1,60,kg,8
Bow,2026-11-23,Bench press,1,40,kg,-10
"""


def test_bad_lines_are_named_and_handed_back_and_good_ones_taken(
    line: Line, tmp_path: Path
) -> None:
    ran = line("import-log", written(tmp_path, "log.csv", LOG))
    assert ran.code == 1
    assert "line 3, reps: -10 is not possible" in ran.out
    assert "new trainee: Bow" in ran.out
    assert len(ran.err.splitlines()) == 1
    back = tmp_path / "log.not-taken.csv"
    assert str(back) in ran.err
    mended = back.read_text(encoding="utf-8-sig").replace("-10", "10")
    again = line("import-log", written(tmp_path, "mended.csv", mended))
    assert (again.code, again.err) == (0, "")
    (session,) = sessions(line.database, "Bow")
    assert [part.exercise for part in session.lines] == ["back-squat", "bench-press"]


def test_importing_a_log_twice_adds_nothing_twice(line: Line, tmp_path: Path) -> None:
    log = written(tmp_path, "log.csv", LOG.replace("-10", "10"))
    line("import-log", log)
    before = sessions(line.database, "Bow")
    again = line("import-log", log)
    assert again.code == 0
    assert "already there: 2 lines" in again.out
    assert sessions(line.database, "Bow") == before


def test_a_preview_changes_nothing(line: Line, tmp_path: Path) -> None:
    ran = line("import-log", "--preview", written(tmp_path, "log.csv", LOG))
    assert ran.code == 1
    assert "would be taken: 1 lines, 1 sessions" in ran.out
    assert not line.database.exists()
    assert not (tmp_path / "log.not-taken.csv").exists()


def test_what_a_log_leaves_open_can_be_told(line: Line, tmp_path: Path) -> None:
    log = written(tmp_path, "log.csv", "date,exercise,load,reps\n04/11/2026,kniebeuge,135,8\n")
    told = ["--trainee", "Bow", "--unit", "lb", "--dates", "day-first"]
    ran = line("import-log", log, *told, "--name", "Kniebeuge=back squat")
    assert (ran.code, ran.err) == (0, "")
    (session,) = sessions(line.database, "Bow")
    assert session.day == date(2026, 11, 4)
    assert session.lines[0].sets[0].load_g == 61_235


def test_a_program_is_added_once(line: Line, tmp_path: Path) -> None:
    program = written(tmp_path, "program.json", example("rungwise program"))
    assert "new program: Two days, one bar" in line("import-program", program).out
    again = line("import-program", program)
    assert (again.code, again.out) == (0, "already there: Two days, one bar\n")
    other = written(
        tmp_path, "other.json", example("rungwise program").replace('"weeks": 6', '"weeks": 7')
    )
    assert "another program" in line("import-program", other).err
    strange = written(
        tmp_path, "strange.json", example("rungwise program").replace("l-sit", "l-stand")
    )
    assert "no exercise 'l-stand'" in line("import-program", strange).err


def test_trainees_who_are_there_are_left_as_they_are(line: Line, tmp_path: Path) -> None:
    trainees = written(tmp_path, "trainees.json", example("rungwise trainees"))
    assert (
        "no program 'Two days, one bar'; import it first" in line("import-trainees", trainees).err
    )
    line("import-program", written(tmp_path, "program.json", example("rungwise program")))
    assert "new trainee: Bow" in line("import-trainees", trainees).out
    assert "already there: Bow" in line("import-trainees", trainees).out


def test_trainees_need_names_of_their_own_and_known_exercises(line: Line, tmp_path: Path) -> None:
    line("import-program", written(tmp_path, "program.json", example("rungwise program")))
    nameless = example("rungwise trainees").replace('"name": "Bow"', '"name": " "')
    assert (
        "$.trainees[0].trainee.name"
        in line("import-trainees", written(tmp_path, "a.json", nameless)).err
    )
    strange = example("rungwise trainees").replace("back-squat", "front-flip")
    assert (
        "no exercise 'front-flip'"
        in line("import-trainees", written(tmp_path, "b.json", strange)).err
    )
    with_new_line = example("rungwise trainees").replace('"line": "heavy"', '"line": "spring"')
    ran = line("import-trainees", written(tmp_path, "c.json", with_new_line))
    assert (ran.code, ran.err) == (0, "")


def test_a_trainee_file_reads_back_the_same(tmp_path: Path) -> None:
    content = read_trainees(written(tmp_path, "a.json", example("rungwise trainees")))
    (tmp_path / "b.json").write_bytes(trainees_bytes(content))
    assert read_trainees(tmp_path / "b.json") == content


# --- the coach's work ---------------------------------------------------------------------------


def test_the_roster_lists_last_and_next(demo: Line) -> None:
    entries = demo("roster", "--json", "--date", MONDAY).json
    assert len(entries) >= 6
    bow = next(entry for entry in entries if entry["name"] == "Bow")
    assert (bow["last"], bow["next"]) == ("2026-11-28", MONDAY)
    text = demo("roster", "--date", MONDAY).out
    assert len(text.splitlines()) == len(entries)


def test_targets_say_what_and_why(demo: Line) -> None:
    asked = demo("targets", "--trainee", "Bow", "--date", MONDAY, "--json").json
    assert [one["exercise"] for one in asked][:2] == ["back-squat", "bench-press"]
    for one in asked:
        assert one["reason"]
        assert {"exercise", "line", "variation", "sets", "reason"} <= set(one)
        for done in one["sets"]:
            assert {"reps", "seconds", "load_g"} <= set(done)
            assert (done["reps"] is None) != (done["seconds"] is None)
    assert asked[0]["line"] == "heavy"
    assert asked[-1]["variation"] == "full"
    text = demo("targets", "--trainee", "bow", "--date", MONDAY).out
    assert "Back squat, heavy" in text
    assert len(text.splitlines()) >= 1 + 2 * len(asked)


def test_a_rest_day_asks_nothing_and_says_so(demo: Line) -> None:
    rest = ["--trainee", "Bow", "--date", "2026-12-01"]
    assert demo("targets", *rest, "--json").json == []
    assert "no training day" in demo("targets", *rest).out
    ran = demo("sheet", *rest, "--pdf", "nothing.pdf")
    assert (ran.code, ran.out) == (1, "")
    assert "no sheet for Bow" in ran.err


def test_a_sheet_is_written(demo: Line, tmp_path: Path) -> None:
    pdf = tmp_path / "sheet.pdf"
    assert demo("sheet", "--trainee", "Bow", "--date", MONDAY, "--pdf", pdf).code == 0
    assert pdf.read_text(encoding="utf-8") == f"Bow {MONDAY} 4"


def test_a_program_is_assigned_from_a_day_on(demo: Line) -> None:
    given = ["--trainee", "Seat 5", "--program", "Winter room, barbell", "--start", "2026-12-07"]
    ran = demo("assign", *given, "--weekdays", "tue,thu,sun")
    assert ran.code == 0
    assert "ends on 2026-12-06" in ran.out
    asked = demo("targets", "--trainee", "Seat 5", "--date", "2026-12-08", "--json").json
    assert asked[0]["exercise"] == "back-squat"
    again = demo("assign", *given)
    assert (again.code, len(again.err.splitlines())) == (1, 1)


def test_a_log_goes_out_and_comes_back_the_same(demo: Line, tmp_path: Path) -> None:
    log = tmp_path / "out.csv"
    ran = demo("export-log", log, "--trainee", "Seat 2", "--decimal-comma")
    assert ran.code == 0
    again = demo("import-log", log)
    assert (again.code, again.err) == (0, "")
    assert "taken: 0 lines" in again.out


def test_a_program_goes_out_as_it_came_in(demo: Line, tmp_path: Path) -> None:
    file = tmp_path / "out.json"
    assert demo("export-program", file, "--program", "First winter").code == 0
    shipped = ROOT / "resources" / "demo" / "program-first-winter.json"
    assert file.read_bytes() == shipped.read_bytes()


# --- the data file ------------------------------------------------------------------------------


def test_a_backup_is_a_sound_data_file(demo: Line, tmp_path: Path) -> None:
    copy = tmp_path / "copy.db"
    assert demo("backup", copy).code == 0
    assert "is there already" in demo("backup", copy).err
    assert demo("backup", copy, "--replace").code == 0
    assert demo("backup", demo.database, "--replace").code == 1
    whole = demo("check").out
    demo.database = copy
    assert demo("check").out == whole
    assert re.fullmatch(r"sound: \d+ trainees, \d+ sessions\n", whole)


def test_a_damaged_file_is_told_in_one_line(demo: Line) -> None:
    data = bytearray(demo.database.read_bytes())
    middle = len(data) // 2
    data[middle : middle + 20_000] = os.urandom(20_000)
    demo.database.write_bytes(data)
    ran = demo("check")
    assert ran.code == 1
    assert len(ran.err.splitlines()) == 1
    assert "damaged" in ran.err


def test_the_demo_goes_into_a_new_file_only(demo: Line) -> None:
    before = demo.database.read_bytes()
    ran = demo("demo")
    assert ran.code == 1
    assert "is there already" in ran.err
    assert demo.database.read_bytes() == before


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (["roster"], "no"),
        (["import-log", "missing.csv"], "missing.csv: No such file"),
        (["import-program", "missing.json"], "missing.json: No such file"),
        (["targets", "--trainee", "Bow"], "no"),
        (["replay", "missing.json"], "missing.json"),
    ],
)
def test_what_is_missing_is_told_in_one_line(line: Line, arguments: list[str], said: str) -> None:
    ran = line(*arguments)
    assert (ran.code, ran.out) == (1, "")
    assert len(ran.err.splitlines()) == 1
    assert said in ran.err
    assert not line.database.exists()


@pytest.mark.parametrize(
    "arguments",
    [
        ["dance"],
        ["targets"],
        ["targets", "--trainee", "Bow", "--date", "tomorrow"],
        ["import-log", "x.csv", "--unit", "stone"],
        ["import-log", "x.csv", "--name", "=x"],
        ["assign", "--trainee", "a", "--program", "b", "--start", MONDAY, "--weekdays", "someday"],
    ],
)
def test_wrong_usage_is_status_2(line: Line, arguments: list[str]) -> None:
    ran = line(*arguments)
    assert (ran.code, ran.out) == (2, "")
    assert "usage" in ran.err


def test_the_sheet_of_a_group_is_written(demo: Line, tmp_path: Path) -> None:
    pdf = tmp_path / "group.pdf"
    ran = demo("sheet", "--group", "--date", MONDAY, "--pdf", pdf)
    assert ran.code == 0, ran.err
    assert "trainees written" in ran.out
    assert demo("sheet", "--pdf", pdf).code == 2


def test_a_report_of_a_span_is_written(demo: Line, tmp_path: Path) -> None:
    pdf = tmp_path / "report.pdf"
    given = ["report", "--trainee", "Cox", "--pdf", str(pdf)]
    ran = demo(*given, "--from", "2026-08-01", "--to", "2026-11-29")
    assert ran.code == 0, ran.err
    assert ran.out == f"report of Cox, 2 pages, written to {pdf}\n"
    assert pdf.read_text(encoding="utf-8").startswith("Cox ")
    before = demo(*given, "--from", "2020-01-01", "--to", "2020-02-01")
    assert (before.code, before.err.count("did not train")) == (1, 1)
    backwards = demo(*given, "--from", "2026-11-29", "--to", "2026-08-01")
    assert "ends before it begins" in backwards.err
    assert demo(*given).code == 2


def test_a_sheet_that_cannot_be_written_is_told_in_one_line(demo: Line, tmp_path: Path) -> None:
    pdf = tmp_path / "no folder" / "sheet.pdf"
    ran = demo("sheet", "--trainee", "Bow", "--date", MONDAY, "--pdf", pdf)
    assert (ran.code, len(ran.err.splitlines())) == (1, 1)


def test_a_demo_that_cannot_be_filled_leaves_no_file(
    line: Line, monkeypatch: pytest.MonkeyPatch
) -> None:
    def out_of_space(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("desktop.demo.fill", out_of_space)
    ran = line("demo")
    assert (ran.code, len(ran.err.splitlines())) == (1, 1)
    assert not line.database.exists()


def test_unknown_names_come_with_near_ones(demo: Line) -> None:
    assert "near it are Stroke" in demo("targets", "--trainee", "Strok").err
    ran = demo("assign", "--trainee", "Bow", "--program", "First wnter", "--start", MONDAY)
    assert "near it are First winter" in ran.err


@pytest.mark.slow
def test_the_tour_leaves_its_results_in_the_folder(line: Line, tmp_path: Path) -> None:
    out = tmp_path / "walk"
    line.database = out / "demo.db"
    ran = line("walk", "--out", out, "--date", MONDAY)
    assert (ran.code, ran.err) == (0, "")
    assert ran.out.splitlines()[-1] == str(out)
    assert "Bow" in (out / "targets.txt").read_text(encoding="utf-8")
    assert json.loads((out / "targets.json").read_text(encoding="utf-8"))["Bow"]["targets"]
    assert len(list(out.glob("sheet-*.pdf"))) >= 6
    again = line("walk", "--out", out)
    assert (again.code, len(again.err.splitlines())) == (1, 1)


# --- as processes -------------------------------------------------------------------------------


def process(*arguments: str | Path, folder: Path) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-W", "error", "-m", "desktop", *map(str, arguments)],
        cwd=folder,
        env={**os.environ, "PYTHONPATH": str(ROOT), "RUNGWISE_HOME": str(folder / "home")},
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )


@pytest.mark.slow
def test_the_whole_way_as_processes(tmp_path: Path) -> None:
    filled = process("demo", "--database", "d.db", folder=tmp_path)
    assert (filled.returncode, filled.stderr) == (0, "")
    listed = process("roster", "--json", "--database", "d.db", folder=tmp_path)
    entry = json.loads(listed.stdout)[0]
    asked = process(
        "--database", "d.db", "targets", "--trainee", entry["name"], "--date", entry["next"],
        "--json", folder=tmp_path,
    )  # fmt: skip
    assert json.loads(asked.stdout)
    wrong = process("targets", "--trainee", "Nobody", "--database", "d.db", folder=tmp_path)
    assert (wrong.returncode, wrong.stdout) == (1, "")
    assert len(wrong.stderr.splitlines()) == 1
    assert process("dance", folder=tmp_path).returncode == 2


@pytest.mark.slow
def test_a_verb_needs_no_display_and_no_widgets(tmp_path: Path) -> None:
    code = (
        "import sys\n"
        "for name in ('PySide6.QtWidgets', 'PySide6.QtGui'): sys.modules[name] = None\n"
        "from desktop.__main__ import main\n"
        "sys.exit(main(['demo', '--database', 'd.db']))\n"
    )
    ran = subprocess.run(
        [sys.executable, "-c", code],
        cwd=tmp_path,
        env={**os.environ, "PYTHONPATH": str(ROOT), "RUNGWISE_HOME": str(tmp_path)},
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    assert (ran.returncode, ran.stderr) == (0, "")


def test_the_catalogue_reaches_a_new_data_file(line: Line, tmp_path: Path) -> None:
    line("import-log", written(tmp_path, "log.csv", LOG.replace("-10", "10")))
    database = Database.open(line.database)
    try:
        assert len(Repository(database).exercises()) == len(load_catalogue())
    finally:
        database.close()


@pytest.mark.slow
def test_it_speaks_english_on_a_german_computer_too(tmp_path: Path) -> None:
    (case,) = (block for block in blocks("json") if "rungwise case" in block)
    (tmp_path / "case.json").write_text(case, encoding="utf-8")
    ended = subprocess.run(
        [sys.executable, "-m", "desktop", "replay", tmp_path / "case.json"],
        cwd=ROOT,
        env={**os.environ, "LC_ALL": "de_DE.UTF-8"},
        capture_output=True,
        encoding="utf-8",
        check=True,
    )
    assert "on Mon 7 Sept: 60 kg becomes 62.5 kg" in ended.stdout
