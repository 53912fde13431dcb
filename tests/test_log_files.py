"""The training log: what can be taken, what is wrong and where, and nothing read wrongly."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from db.database import MEMORY, Database
from db.log_export import COMMA_STYLE, LogStyle, write_log
from db.log_files import UnreadableLog, decode, read_log, read_log_text, write_back
from db.log_import import plan_import
from db.log_saving import carry_out
from db.repository import Repository
from desktop.catalogue import load_catalogue
from desktop.training.program import Line, Program
from desktop.training.quantities import Unit
from desktop.training.session import Activity, AskedSet, LineDone, Session, SetDone, Wellness
from desktop.training.trainee import BodyMass, Trainee

CATALOGUE = load_catalogue()
HEADING = "trainee,date,exercise,set,load,unit,reps\n"
DAY = date(2026, 11, 24)


@pytest.fixture
def repository() -> Iterator[Repository]:
    database = Database.open(MEMORY)
    made = Repository(database)
    made.sync_catalogue(CATALOGUE)
    yield made
    database.close()


def only_set(text: str) -> SetDone:
    preview = read_log_text(text)
    assert preview.problems == ()
    (row,) = preview.rows
    assert row.done is not None
    return row.done


# --- reading ------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("line", "load_g"),
    [
        ("Bow,2026-11-24,back squat,1,62.5,kg,8", 62_500),
        ('Bow,2026-11-24,back squat,1,"62,5",kg,8', 62_500),
        ("Bow,2026-11-24,back squat,1,135,lb,8", 61_235),
        ("Bow,2026-11-24,back squat,1,135 lbs,,8", 61_235),
        ("Bow,2026-11-24,back squat,1,135 lb,kg,8", 61_235),
        ("Bow,2026-11-24,pull-up,1,-20,kg,8", -20_000),
        ("Bow,2026-11-24,pull-up,1,\N{MINUS SIGN}20,kg,8", -20_000),
        ("Bow,2026-11-24,pull-up,1,,,8", 0),
        ("Bow,2026-11-24,pull-up,1,0,,8", 0),
        ("Bow,2026-11-24,back squat,1,1.250,kg,8", 1_250),
        ("Bow,2026-11-24,back squat,1,+60,Kg,8", 60_000),
    ],
)
def test_a_load_is_read_as_it_was_meant(line: str, load_g: int) -> None:
    assert only_set(HEADING + line).load_g == load_g


@pytest.mark.parametrize(
    ("line", "column", "said"),
    [
        ("Bow,2026-11-24,back squat,1,1e9,kg,8", "load", "not a number"),
        ("Bow,2026-11-24,back squat,1,1000000000,kg,8", "load", "allowed is"),
        ("Bow,2026-11-24,back squat,1,60,kg,-3", "reps", "0 to 1000"),
        ("Bow,2026-11-24,back squat,1,60,kg,8.5", "reps", "not a whole number"),
        ("Bow,2026-11-24,back squat,1,60,kg,eight", "reps", "not a number"),
        ("Bow,2026-11-24,back squat,1,60,kg,", "reps", "what was done"),
        ("Bow,2026-11-24,back squat,1,,,", "reps", "what was done"),
        ("Bow,2026-11-24,,1,60,kg,8", "exercise", "which exercise"),
        ("Bow,2026-11-24,back squat,1,60,,8", "load", "no unit"),
        ("Bow,2026-11-24,back squat,1,60,stone,8", "unit", "allowed are kg and lb"),
        ("Bow,2026-11-24,back squat,1,9 st,,8", "load", "allowed are kg and lb"),
        ('Bow,2026-11-24,back squat,1,"1,250",kg,8', "load", "may be 1250 or 1.250"),
        ('Bow,2026-11-24,back squat,1,"1,250.5",kg,8', "load", "separators between thousands"),
        ("Bow,2026-11-24,back squat,1,NaN,kg,8", "load", "no unit: allowed"),
        ("Bow,2026-11-24,back squat,1,=1+1,kg,8", "load", "not a number"),
        ("Bow,2026-11-24,back squat,0,60,kg,8", "set", "1 to 200"),
        (",2026-11-24,back squat,1,60,kg,8", "trainee", "names no trainee"),
        ("Bow,,back squat,1,60,kg,8", "date", "no date"),
        ("Bow,2026-02-30,back squat,1,60,kg,8", "date", "no day of the calendar"),
        ("Bow,1026-11-24,back squat,1,60,kg,8", "date", "before 1900"),
        ("Bow,2062-11-24,back squat,1,60,kg,8", "date", "in the future"),
        ("Bow,24/11/26,back squat,1,60,kg,8", "date", "four digits"),
        ("Bow,yesterday,back squat,1,60,kg,8", "date", "is no date"),
        ("Bow,04/11/2026,back squat,1,60,kg,8", "date", "day or month first"),
        ("Bow,2026-11-24,back squat,1,62,5,kg,8", "", "cells for 7 columns"),
        ("Bow,2026-11-24,,,,,", "", "nothing to record"),
    ],
)
def test_a_bad_cell_is_named_by_line_and_column(line: str, column: str, said: str) -> None:
    preview = read_log_text(HEADING + line, latest=date(2027, 1, 1))
    assert preview.rows == ()
    problems = [problem for problem in preview.problems if said in problem.text]
    assert [(problem.line, problem.column) for problem in problems] == [(2, column)]


@pytest.mark.parametrize(
    ("heading", "cells", "column"),
    [
        ("rir", "21", "rir"),
        ("pain", "11", "pain"),
        ("effort", "10,5", "effort"),
        ("side", "middle", "side"),
        ("warm_up", "perhaps", "warm_up"),
        ("state", "injured", "state"),
        ("tempo", "0-0-0-0-0", "tempo"),
        ("sleep", "6", "sleep"),
        ("seconds", "20", "seconds"),
        ("body_mass", "700", "body_mass"),
        ("minutes", "1441", "minutes"),
        ("activity", "rowing", "activity"),
    ],
)
def test_every_column_has_its_limits(heading: str, cells: str, column: str) -> None:
    text = f"trainee;date;exercise;unit;reps;{heading}\nBow;2026-11-24;dip;kg;8;{cells}\n"
    assert column in {problem.column for problem in read_log_text(text).problems}


def test_a_whole_line_is_read() -> None:
    preview = read_log_text(
        "Trainee;Date;Session;Exercise;Line;Variation;Load;Unit;Reps;RIR;Tempo;Warm-up;Pain;Note;"
        "asked load;asked reps;asked stop at;state;effort;minutes;sleep;red flag;body mass\n"
        "Bow;2026-11-24;2;Back squat;heavy;;62,5;kg;8;1,5;3-1-1;yes;2;felt ½ good;"
        "60;8;12;deload, test;7,5;48;4;no;61,4\n"
    )
    assert preview.problems == ()
    (row,) = preview.rows
    assert row.done == SetDone(
        62_500, 8, rir=1.5, tempo_s=5, warm_up=True, pain=2, note="felt ½ good"
    )
    assert row.asked == AskedSet(60_000, 8, open_ended=True, stop_at=12)
    assert (row.said.entry, row.line_name, row.said.states) == (1, "heavy", ("deload", "test"))
    assert (row.said.effort, row.said.minutes, row.said.wellness) == (7.5, 48, Wellness(sleep=4))
    assert row.said.body_mass_g == 61_400


@pytest.mark.parametrize(
    ("dates", "days"),
    [
        (["24.11.2026", "04.11.2026"], [date(2026, 11, 24), date(2026, 11, 4)]),
        (["24/11/2026", "04/11/2026"], [date(2026, 11, 24), date(2026, 11, 4)]),
        (["11/24/2026", "11/04/2026"], [date(2026, 11, 24), date(2026, 11, 4)]),
        (["24-11-2026", "2026-11-04"], [date(2026, 11, 24), date(2026, 11, 4)]),
        (["11/11/2026"], [date(2026, 11, 11)]),
        (["2026-11-24T18:30:00"], [date(2026, 11, 24)]),
    ],
)
def test_the_whole_file_decides_how_dates_are_written(dates: list[str], days: list[date]) -> None:
    text = HEADING + "".join(f"Bow,{day},dip,,,,8\n" for day in dates)
    preview = read_log_text(text)
    assert preview.problems == ()
    assert [row.day for row in preview.rows] == days


def test_dates_that_contradict_each_other_are_all_refused() -> None:
    text = HEADING + "Bow,24/11/2026,dip,,,,8\nBow,11/25/2026,dip,,,,8\nBow,2026-11-26,dip,,,,8\n"
    preview = read_log_text(text)
    assert [problem.line for problem in preview.problems] == [2, 3]
    assert [row.line for row in preview.rows] == [4]


def test_the_order_of_dates_can_be_told() -> None:
    text = HEADING + "Bow,04/11/2026,dip,,,,8\n"
    assert read_log_text(text, date_order="day first").rows[0].day == date(2026, 11, 4)
    assert read_log_text(text, date_order="month first").rows[0].day == date(2026, 4, 11)


def test_a_comma_that_can_be_no_thousands_makes_it_the_decimal_mark_of_the_file() -> None:
    text = HEADING.replace(",", ";") + "Bow;2026-11-24;squat;1;1,250;kg;8\n"
    assert [problem.column for problem in read_log_text(text).problems] == ["load"]
    text += "Bow;2026-11-24;squat;2;62,5;kg;8\n"
    rows = read_log_text(text).rows
    assert [row.done.load_g for row in rows if row.done] == [1_250, 62_500]


def test_where_both_marks_stand_three_places_are_refused() -> None:
    text = (
        HEADING.replace(",", ";")
        + "Bow;2026-11-24;squat;1;62,5;kg;8\n"
        + "Bow;2026-11-24;squat;2;62.5;kg;8\n"
        + "Bow;2026-11-24;squat;3;1.250;kg;8\n"
    )
    preview = read_log_text(text)
    assert [row.done.load_g for row in preview.rows if row.done] == [62_500, 62_500]
    assert [(problem.line, problem.column) for problem in preview.problems] == [(4, "load")]


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "cp1252", "utf-16"])
@pytest.mark.parametrize("newline", ["\n", "\r\n", "\r"])
def test_every_usual_encoding_is_read(tmp_path: Path, encoding: str, newline: str) -> None:
    text = "trainee;date;exercise;reps;note\nRenée – Büg;2026-11-24;dip;8;½ tired\n"
    (tmp_path / "log.csv").write_bytes(text.replace("\n", newline).encode(encoding))
    (row,) = read_log(tmp_path / "log.csv").rows
    assert row.trainee == "Renée – Büg"
    assert row.done is not None
    assert row.done.note == "½ tired"


def test_a_text_over_several_lines_keeps_the_count_of_lines() -> None:
    text = 'trainee,date,exercise,reps,note\nBow,2026-11-24,dip,8,"one\ntwo"\nBow,x,dip,8,\n'
    preview = read_log_text(text)
    assert [row.line for row in preview.rows] == [2]
    assert [problem.line for problem in preview.problems] == [4]


def test_a_broken_quotation_ends_the_reading_with_a_problem() -> None:
    text = 'trainee,date,exercise,reps,note\nBow,2026-11-24,dip,8,"open\nBow,2026-11-25,dip,8,\n'
    preview = read_log_text(text)
    assert preview.rows == ()
    assert preview.problems[0].line == 2
    assert "quotation" in preview.problems[0].text


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "empty"),
        ("\n\n", "empty"),
        ("Bow,2026-11-24,dip,8\n", "no date and no trainee"),
        ("trainee,date,reps\n", "no exercise"),
        ("trainee,date,exercise,reps,Reps\n", "stands twice"),
    ],
)
def test_what_is_no_log_is_refused(text: str, said: str) -> None:
    with pytest.raises(UnreadableLog, match=said):
        read_log_text(text)


@pytest.mark.parametrize("data", [b"a\0b", b"\xff\xfea", b"\x81\x8d"])
def test_what_is_no_text_is_refused(data: bytes) -> None:
    with pytest.raises(UnreadableLog, match="no text file"):
        decode(data)


def test_columns_of_others_are_named_and_left_alone() -> None:
    preview = read_log_text("trainee,date,exercise,reps,repz,weather\nBow,2026-11-24,dip,8,1,wet\n")
    assert preview.problems == ()
    assert [remark for remark in preview.remarks if "did you mean 'reps'" in remark]
    assert len(preview.remarks) == 2


def test_a_log_of_one_person_needs_no_column_for_the_name_or_the_unit() -> None:
    preview = read_log_text(
        "date,exercise,load,reps\n2026-11-24,squat,60,8\n", trainee="Bow", unit=Unit.LB
    )
    (row,) = preview.rows
    assert row.trainee == "Bow"
    assert row.done is not None
    assert row.done.load_g == 27_216


@given(st.text(max_size=200))
def test_no_text_breaks_the_reading(text: str) -> None:
    try:
        preview = read_log_text(text)
    except UnreadableLog:
        return
    assert all(problem.line >= 1 for problem in preview.problems)


@given(st.lists(st.lists(st.text(max_size=8), max_size=9), max_size=5))
def test_no_cells_break_the_reading(table: list[list[str]]) -> None:
    lines = [",".join(cells) for cells in table]
    preview = read_log_text(HEADING + "\n".join(lines))
    assert not set(preview.cells) & {1}


# --- planning and carrying out ------------------------------------------------------------------

LOG = """trainee,date,exercise,set,load,unit,reps,effort,minutes,body_mass
Bow,2026-11-23,Back squat,1,60,kg,8,7,55,61.5
Bow,2026-11-23,Back squat,2,60,kg,8,,,
Bow,2026-11-23,Bench press,1,40,kg,10,,,
Bow,2026-11-25,Back squat,1,62.5,kg,8,,,
Stroke,2026-11-23,dips,1,10,kg,6,,,
"""


def taken(repository: Repository, text: str = LOG) -> tuple[int, int, int, int]:
    plan = plan_import(repository, read_log_text(text))
    result = carry_out(repository, plan)
    return result.new_trainees, result.new_sessions, result.sets, result.doubles


def test_a_log_into_an_empty_file_brings_everything(repository: Repository) -> None:
    assert taken(repository) == (2, 3, 5, 0)
    bow = repository.trainee_named("Bow")
    assert bow is not None
    assert bow.id is not None
    first, second = repository.sessions(bow.id)
    assert (first.day, first.effort, first.minutes) == (date(2026, 11, 23), 7, 55)
    assert [(part.exercise, len(part.sets)) for part in first.lines] == [
        ("back-squat", 2),
        ("bench-press", 1),
    ]
    assert second.lines[0].line_id == first.lines[0].line_id
    assert [one.mass_g for one in repository.body_masses(bow.id)] == [61_500]


def test_importing_twice_adds_nothing_twice(repository: Repository) -> None:
    taken(repository)
    before = everything(repository)
    plan = plan_import(repository, read_log_text(LOG))
    assert plan.problems == ()
    assert plan.taken == ()
    assert plan.doubles == (2, 3, 4, 5, 6)
    carry_out(repository, plan)
    assert everything(repository) == before


def test_a_longer_log_adds_only_what_is_new(repository: Repository) -> None:
    taken(repository)
    longer = LOG + "Bow,2026-11-25,Bench press,1,42.5,kg,9,,,\nBow,2026-11-27,dip,1,,,9,,,\n"
    assert taken(repository, longer) == (0, 1, 2, 5)


def test_what_is_recorded_otherwise_is_a_problem_and_stays(repository: Repository) -> None:
    taken(repository)
    before = everything(repository)
    other = LOG.replace("2026-11-25,Back squat,1,62.5", "2026-11-25,Back squat,1,65")
    other = other.replace("61.5", "62.5")
    plan = plan_import(repository, read_log_text(other))
    assert [(problem.line, problem.column) for problem in plan.problems] == [
        (2, "body_mass"),
        (5, "exercise"),
    ]
    carry_out(repository, plan)
    assert everything(repository) == before


def test_good_lines_are_taken_and_bad_ones_handed_back(
    repository: Repository, tmp_path: Path
) -> None:
    bad = LOG.replace(
        "Bow,2026-11-23,Bench press,1,40,kg,10", "Bow,2026-11-23,Bench press,1,40,,10"
    )
    preview = read_log_text(bad)
    plan = plan_import(repository, preview)
    assert carry_out(repository, plan).sets == 4
    write_back(preview, plan.reasons, tmp_path / "back.csv")
    text = (tmp_path / "back.csv").read_text(encoding="utf-8-sig")
    assert text.splitlines()[0] == LOG.splitlines()[0] + ",problem"
    assert "no unit" in text.splitlines()[1]
    mended = text.replace("40,,10", "40,kg,10")
    assert taken(repository, mended) == (0, 0, 1, 0)
    assert taken(repository, LOG) == (0, 0, 0, 5)


def test_gaps_around_cells_are_no_part_of_them(tmp_path: Path, repository: Repository) -> None:
    wide = LOG.replace(",", " ,\t")
    assert read_log_text(wide).rows == read_log_text(LOG).rows
    preview = read_log_text(wide.replace("kg", "stone"))
    write_back(preview, plan_import(repository, preview).reasons, tmp_path / "back.csv")
    lines = (tmp_path / "back.csv").read_text(encoding="utf-8-sig").splitlines()
    assert lines[0] == LOG.splitlines()[0] + ",problem"
    assert lines[1].startswith("Bow,2026-11-23,Back squat,1,60,stone,8,")


def test_lines_that_say_the_same_share_what_was_read() -> None:
    first, second, *_ = read_log_text(LOG + LOG.splitlines()[1] + "\n").rows[::5]
    assert first.line != second.line
    assert first.done is second.done
    assert first.said is second.said


def test_an_effort_of_nought_is_recorded_and_stays(repository: Repository) -> None:
    log = "trainee,date,exercise,reps,effort\nBow,2026-11-23,Back squat,8,{}\n"
    taken(repository, log.format(0))
    assert plan_import(repository, read_log_text(log.format(5))).sessions == ()
    (session,) = repository.sessions(repository.trainees()[0].id or 0)
    assert session.effort == 0


def test_an_exercise_is_taken_whole_or_not_at_all(repository: Repository) -> None:
    preview = read_log_text(LOG.replace("Back squat,2,60,kg,8", "Back squat,2,60,kg,-8"))
    plan = plan_import(repository, preview)
    assert sorted(plan.reasons) == [2, 3]
    assert "held back with line 3" in plan.reasons[2]
    carry_out(repository, plan)
    bow = repository.trainee_named("Bow")
    assert bow is not None
    assert bow.id is not None
    assert [part.exercise for part in repository.sessions(bow.id)[0].lines] == ["bench-press"]


def test_an_unknown_exercise_is_asked_about_with_the_nearest_names(repository: Repository) -> None:
    plan = plan_import(repository, read_log_text(LOG.replace("Bench press", "Bench pres")))
    (unknown,) = plan.unknown
    assert (unknown.kind, unknown.name, unknown.lines) == ("exercise", "Bench pres", (4,))
    assert unknown.closest[0] == "Bench press"
    told = plan_import(
        repository,
        read_log_text(LOG.replace("Bench press", "Bench pres")),
        names={"bench pres": "Bench press"},
    )
    assert told.problems == ()


def test_a_name_close_to_a_known_trainee_is_a_question_first(repository: Repository) -> None:
    repository.save(Trainee("Stroke"))
    text = LOG.replace("Stroke", "Strok")
    plan = plan_import(repository, read_log_text(text))
    assert [(one.kind, one.name, one.closest) for one in plan.unknown] == [
        ("trainee", "Strok", ("Stroke",))
    ]
    assert plan.new_trainees == (("Bow", Unit.KG),)
    assert plan_import(repository, read_log_text(text), new_trainees="always").unknown == ()
    never = plan_import(repository, read_log_text(LOG), new_trainees="never")
    assert {problem.line for problem in never.problems} == {2, 3, 4, 5}


@pytest.mark.parametrize(
    ("line", "column"),
    [
        ("Bow,2026-11-24,L-sit,1,,,8", "reps"),
        ("Bow,2026-11-24,push-up,1,,,8,on the moon", "variation"),
        ("Bow,2026-11-24,dip,1,,,,,20", "seconds"),
    ],
)
def test_a_line_must_fit_its_exercise(repository: Repository, line: str, column: str) -> None:
    preview = read_log_text(HEADING.strip() + ",variation,seconds\n" + line)
    assert [p.column for p in plan_import(repository, preview).problems] == [column]


def test_a_variation_is_found_by_key_name_or_height(repository: Repository) -> None:
    text = "trainee,date,exercise,reps,variation\n" + "".join(
        f"Bow,2026-11-{day},push-up,8,{name}\n"
        for day, name in ((20, "floor"), (21, "hands on a wall"), (22, "hands-450"))
    )
    plan = plan_import(repository, read_log_text(text))
    assert plan.problems == ()
    keys = [part.sets[0].variation for one in plan.sessions for part in one.parts]
    assert keys == ["floor", "wall", "hands-450"]


def test_a_set_may_stand_in_the_file_once(repository: Repository) -> None:
    text = LOG + "Bow,2026-11-25,Back squat,1,62.5,kg,8,,,\n"
    plan = plan_import(repository, read_log_text(text))
    assert [(problem.line, problem.column) for problem in plan.problems] == [(7, "set")]


def test_what_is_said_of_a_session_twice_must_agree(repository: Repository) -> None:
    text = LOG.replace("2,60,kg,8,,,", "2,60,kg,8,6,55,61.5")
    plan = plan_import(repository, read_log_text(text))
    assert [(problem.line, problem.column) for problem in plan.problems] == [(3, "effort")]


def test_a_failed_import_leaves_nothing(repository: Repository) -> None:
    taken(repository)
    before = everything(repository)
    plan = plan_import(repository, read_log_text(LOG + "Bow,2026-11-23,dip,1,,,8,,,\n"))
    (planned,) = plan.sessions
    stale = replace(planned, session=replace(planned.session, revision=99))
    with pytest.raises(Exception, match="changed"):
        carry_out(repository, replace(plan, sessions=(stale,), new_trainees=(("Cox", Unit.KG),)))
    assert everything(repository) == before


def test_a_program_that_is_not_there_is_remarked_and_left_out(repository: Repository) -> None:
    text = "trainee,date,exercise,reps,program\nBow,2026-11-24,dip,8,Winter\n"
    plan = plan_import(repository, read_log_text(text))
    assert plan.problems == ()
    assert "there is no program 'Winter'" in plan.remarks[0]
    repository.save(Program("Winter"))
    assert plan_import(repository, read_log_text(text)).remarks == ()


def test_a_skipped_exercise_needs_no_set(repository: Repository) -> None:
    text = "trainee,date,exercise,reps,load,state\nBow,2026-11-24,dip,,,skipped\n"
    carry_out(repository, plan_import(repository, read_log_text(text)))
    bow = repository.trainee_named("Bow")
    assert bow is not None
    assert bow.id is not None
    (part,) = repository.sessions(bow.id)[0].lines
    assert (part.skipped, part.sets) == (True, ())
    with_load = read_log_text(text.replace(",,,skipped", ",,20 kg,skipped"))
    assert [problem.column for problem in with_load.problems] == ["reps"]


def test_what_was_not_read_cannot_be_handed_back(repository: Repository, tmp_path: Path) -> None:
    preview = read_log_text(LOG + '"Bow,2026-11-26\n')
    plan = plan_import(repository, preview)
    write_back(preview, plan.reasons, tmp_path / "back.csv")
    assert len((tmp_path / "back.csv").read_text(encoding="utf-8-sig").splitlines()) == 1


def test_a_file_far_too_large_is_refused_unread(tmp_path: Path) -> None:
    with (tmp_path / "log.csv").open("wb") as stream:
        stream.truncate(300_000_000)
    with pytest.raises(UnreadableLog, match="300 MB"):
        read_log(tmp_path / "log.csv")


# --- writing ------------------------------------------------------------------------------------

FORMULAS = ["=1+1", "+1", "-1", "@sum", "'=1+1", "''+", "\tx".strip() or "x", "=cmd|' /C calc'!A0"]


@pytest.mark.parametrize("text", FORMULAS)
def test_no_cell_is_a_formula_for_a_spreadsheet(
    repository: Repository, tmp_path: Path, text: str
) -> None:
    trainee = repository.save(Trainee(text)).saved[0]
    line = repository.save(Line(trainee.id, "dip")).saved[0]
    part = LineDone(line.id, "dip", sets=(SetDone(-20_000, 8, note=text),), note=text)
    repository.save(Session(trainee.id, DAY, (part,), note=text))
    write_log(repository, tmp_path / "log.csv", [trainee])
    preview = read_log(tmp_path / "log.csv")
    cells = [cell for cells in preview.cells.values() for cell in cells]
    assert [cell for cell in cells if cell[:1] in "=+@" and cell] == []
    assert [cell for cell in cells if cell.startswith("-")] == ["-20"]
    (row,) = preview.rows
    assert row.trainee == row.said.session_note == row.said.exercise_note == text
    assert row.done is not None
    assert row.done.note == text


@pytest.mark.parametrize("unit", Unit)
@pytest.mark.parametrize("load_g", [0, 1, 61_235, 60_001, 62_500, 1_999_999, 2_000_000, -20_000])
def test_every_load_is_written_so_that_it_reads_back_exactly(
    repository: Repository, tmp_path: Path, unit: Unit, load_g: int
) -> None:
    trainee = repository.save(Trainee("Bow", unit=unit)).saved[0]
    line = repository.save(Line(trainee.id, "dip")).saved[0]
    part = LineDone(line.id, "dip", sets=(SetDone(load_g, 8),))
    repository.save(Session(trainee.id, DAY, (part,)))
    for style in (LogStyle(), COMMA_STYLE):
        write_log(repository, tmp_path / "log.csv", [trainee], style)
        (row,) = read_log(tmp_path / "log.csv").rows
        assert row.done is not None
        assert row.done.load_g == load_g


def everything(repository: Repository) -> list[object]:
    """All that a log carries, in an order and with ids that do not depend on the way in."""
    found: list[object] = []
    for trainee in repository.trainees():
        assert trainee.id is not None
        names = {line.id: (line.exercise, line.name) for line in repository.lines(trainee.id)}
        found += [(trainee.name, one.day, one.mass_g) for one in repository.body_masses(trainee.id)]
        found += sorted(
            (trainee.name, one.day, one.name, one.minutes, one.effort)
            for one in repository.activities(trainee.id)
        )
        programs = {program.id: program.name for program in repository.programs()}
        for session in repository.sessions(trainee.id):
            plain = replace(session, trainee_id=0, id=None, revision=0, program_id=None, lines=())
            found.append((trainee.name, plain, programs.get(session.program_id)))
            found += [(names[part.line_id], replace(part, line_id=0)) for part in session.lines]
    return found


def words(most: int = 12) -> st.SearchStrategy[str]:
    letters = st.characters(codec="utf-8", exclude_characters="\0")
    return st.text(letters, max_size=most).map(lambda text: " ".join(text.split()))


LOADS = st.one_of(
    st.integers(-200, 2000).map(lambda half: half * 500),
    st.integers(1, 900).map(lambda lb: round(lb * 453.59237)),
    st.integers(-300_000, 300_000),
)
HALVES = st.none() | st.integers(0, 20).map(lambda half: half / 2)
DONE = st.builds(
    SetDone,
    load_g=LOADS,
    reps=st.integers(0, 100),
    rir=HALVES,
    tempo_s=st.none() | st.integers(1, 10),
    warm_up=st.booleans(),
    pain=st.integers(0, 10),
    side=st.sampled_from(["", "left", "right"]),
    variation=st.none() | st.sampled_from(["floor", "wall", "hands-450", "knees"]),
    note=words(),
)
STOPS = st.sampled_from([(False, None), (True, None), (True, 12)])
ASKED = st.builds(
    lambda stop, **values: AskedSet(**values, open_ended=stop[0], stop_at=stop[1]),
    STOPS,
    load_g=LOADS,
    reps=st.integers(1, 100),
    variation=st.none() | st.sampled_from(["floor", "hands-300"]),
    tempo_s=st.none() | st.integers(1, 10),
    rir=HALVES,
)
PARTS = st.builds(
    LineDone,
    line_id=st.just(0),
    exercise=st.just("push-up"),
    asked=st.lists(ASKED, max_size=4).map(tuple),
    sets=st.lists(DONE, min_size=1, max_size=4).map(tuple),
    deload=st.booleans(),
    test=st.booleans(),
    skipped=st.booleans(),
    reason=words(),
    note=words(),
)
RATING = st.none() | st.integers(1, 5)
SESSIONS = st.builds(
    Session,
    trainee_id=st.just(0),
    day=st.integers(0, 400).map(lambda days: DAY - timedelta(days=days)),
    lines=st.lists(PARTS, max_size=1).map(tuple),
    effort=HALVES,
    minutes=st.none() | st.integers(1, 200),
    wellness=st.builds(Wellness, sleep=RATING, soreness=RATING, stress=RATING, motivation=RATING),
    note=words(),
    red_flag=st.booleans(),
    program_id=st.none() | st.just(1),
    week=st.none() | st.integers(1, 60),
    day_name=words(),
)
STYLES = st.sampled_from([LogStyle(), COMMA_STYLE, LogStyle("\t", ","), LogStyle(",", ",")])


@settings(max_examples=15)
@given(
    sessions=st.lists(SESSIONS, max_size=4, unique_by=lambda session: session.day),
    unit=st.sampled_from(Unit),
    mass_g=st.integers(30_000, 150_000),
    style=STYLES,
)
def test_what_is_exported_reads_back_the_same_under_any_locale(
    tmp_path_factory: pytest.TempPathFactory,
    sessions: list[Session],
    unit: Unit,
    mass_g: int,
    style: LogStyle,
) -> None:
    target = tmp_path_factory.mktemp("log") / "log.csv"
    here, there = Database.open(MEMORY), Database.open(MEMORY)
    try:
        first, second = Repository(here), Repository(there)
        for one in (first, second):
            one.sync_catalogue(CATALOGUE)
            one.save(Program("Winter"))
        trainee = first.save(Trainee("Bow", unit=unit)).saved[0]
        line = first.save(Line(trainee.id, "push-up", "hard")).saved[0]
        with_ids = (
            replace(
                session,
                trainee_id=trainee.id,
                lines=tuple(replace(part, line_id=line.id) for part in session.lines),
            )
            for session in sessions
        )
        first.save(
            *with_ids,
            BodyMass(trainee.id, DAY, mass_g),
            Activity(trainee.id, DAY, "rowing", 60, 5.5),
        )
        write_log(first, target, [trainee], style)
        plan = plan_import(second, read_log(target))
        assert plan.problems == ()
        carry_out(second, plan)
        assert everything(second) == everything(first)
        assert plan_import(second, read_log(target)).taken == ()
    finally:
        here.close()
        there.close()
