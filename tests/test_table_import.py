"""Any table into the data: columns guessed, lines read, doubts asked, nothing twice."""

from __future__ import annotations

import csv
import io
import shutil
from collections.abc import Iterator
from dataclasses import replace
from datetime import date, datetime
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from db.database import Database
from db.log_saving import carry_out, carrying_out
from db.repository import Repository
from db.steps import finished
from db.tables import UnreadableTable
from desktop.planning.arriving_files import (
    ArrivingTable,
    CannotRead,
    opening,
    reading,
    with_kept,
)
from desktop.planning.log_prospect import (
    Decisions,
    Fate,
    Prospect,
    foreseeing,
    hand_back_lines,
    like,
)
from desktop.planning.table_columns import fitting, role_of_heading
from desktop.training.program import Program
from desktop.training.quantities import Unit
from desktop.training.table_mapping import LEAVE_OUT, Role, TableMapping
from tests.scenario import open_club
from tests.test_tables import written

TODAY = date(2026, 12, 31)
BOW = Decisions((("Rower 1", "Bow"),))


@pytest.fixture(scope="module")
def shelved(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A club on the shelf, copied for each test."""
    folder = tmp_path_factory.mktemp("club")
    club = open_club(folder)
    club.database.close()
    (path,) = folder.glob("*.db")
    return path


@pytest.fixture
def club(shelved: Path, tmp_path: Path) -> Iterator[Repository]:
    repository = Repository(Database.open(Path(shutil.copy(shelved, tmp_path / "club.db"))))
    yield repository
    repository.database.close()


@pytest.fixture(scope="module")
def still(shelved: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Repository]:
    """A club that nothing is taken into."""
    path = tmp_path_factory.mktemp("still") / "club.db"
    repository = Repository(Database.open(Path(shutil.copy(shelved, path))))
    yield repository
    repository.database.close()


def table(club: Repository, tmp_path: Path, text: str, **mapping: object) -> ArrivingTable:
    path = tmp_path / "table.csv"
    path.write_text(text, encoding="utf-8")
    return arrived(club, path, **mapping)


def arrived(club: Repository, path: Path, **mapping: object) -> ArrivingTable:
    found = finished(opening(path, club, Unit.KG))
    assert isinstance(found, ArrivingTable)
    return replace(found, mapping=replace(found.mapping, **mapping))  # type: ignore[arg-type]


def foreseen(club: Repository, arriving: ArrivingTable, decisions: Decisions = BOW) -> Prospect:
    return finished(foreseeing(club, finished(reading(arriving, TODAY)), decisions))


def sets(prospect: Prospect) -> list[tuple[str, str, int, int | None, int | None]]:
    return [
        (each.session.day.isoformat(), part.exercise, done.load_g, done.reps, done.seconds)
        for each in prospect.plan.sessions
        for part in each.parts
        for done in part.sets
    ]


@pytest.mark.parametrize(
    ("heading", "role"),
    [
        ("Date", Role.DATE),
        ("Datum", Role.DATE),
        ("Exercise name", Role.EXERCISE),
        ("Übung", Role.EXERCISE),
        ("Weight (kg)", Role.LOAD),
        ("Load, lbs", Role.LOAD),
        ("Reps", Role.REPS),
        ("Wdh.", Role.REPS),
        ("# reps", Role.REPS),
        ("Set 1 reps", Role.REPS),
        ("Set 2 kg", Role.LOAD),
        ("Sets", Role.SETS),
        ("Set #", Role.SET),
        ("RIR", Role.RIR),
        ("RPE", Role.RPE),
        ("session RPE", Role.EFFORT),
        ("Notes", Role.NOTE),
        ("Bodyweight", Role.BODY_MASS),
        ("weather", Role.NOTHING),
    ],
)
def test_headings_are_known_by_the_words_of_the_trade(heading: str, role: Role) -> None:
    assert role_of_heading(heading) is role


def test_a_table_with_titles_gaps_and_another_language_is_read(
    club: Repository, tmp_path: Path
) -> None:
    arriving = table(
        club,
        tmp_path,
        "Mein Winter;;;;\n\nDatum;Übung;Gewicht;Sätze;Wdh;RPE;Bemerkung\n"
        "23.11.2026;Back squat;60,5;3;5;8;gut\n;Bench press;40;;5/5/4;;\n;Push-up;BW+10;;2x5;;\n",
        trainee="Bow",
    )
    assert [role.value for role in arriving.mapping.roles] == [
        "date", "exercise", "load", "sets", "reps", "rpe", "note",
    ]  # fmt: skip
    assert arriving.mapping.fill_down
    prospect = foreseen(club, arriving)
    assert [line.reasons for line in prospect.lines] == [(), (), ()]
    assert sets(prospect) == [
        ("2026-11-23", "back-squat", 60_500, 5, None),
        ("2026-11-23", "back-squat", 60_500, 5, None),
        ("2026-11-23", "back-squat", 60_500, 5, None),
        ("2026-11-23", "bench-press", 40_000, 5, None),
        ("2026-11-23", "bench-press", 40_000, 5, None),
        ("2026-11-23", "bench-press", 40_000, 4, None),
        ("2026-11-23", "push-up", 10_000, 5, None),
        ("2026-11-23", "push-up", 10_000, 5, None),
    ]
    squat = prospect.plan.sessions[0].parts[0].sets
    assert [(done.rir, done.note) for done in squat] == [(2.0, "gut"), (2.0, ""), (2.0, "")]


def test_sets_side_by_side_under_their_numbers_are_counted(
    club: Repository, tmp_path: Path
) -> None:
    arriving = table(
        club,
        tmp_path,
        "date\tlift\tkg\tset 1\tset 2\tset 3\n2026-11-25\tbench press\t37,5\t6\t6\t5\n",
        trainee="Bow",
    )
    assert arriving.mapping.roles[3:] == (Role.REPS,) * 3
    prospect = foreseen(club, arriving)
    assert [each[2:4] for each in sets(prospect)] == [(37_500, 6), (37_500, 6), (37_500, 5)]
    numbered = table(club, tmp_path, "date,lift,kg,set,reps\n2026-11-25,squat,60,1,5\n")
    assert numbered.mapping.roles[3:] == (Role.SET, Role.REPS)


@pytest.mark.parametrize(
    ("heading", "counts"),
    [("Reps x Sets", [12] * 3), ("Wdh × Sätze", [12] * 3), ("Sets x Reps", [3] * 12)],
)
def test_a_heading_says_what_comes_first_in_its_cells(
    club: Repository, tmp_path: Path, heading: str, counts: list[int]
) -> None:
    text = f"Date;Exercise;Kilos;{heading}\n2026-11-25;Back squat;60;12x3\n"
    prospect = foreseen(club, table(club, tmp_path, text, trainee="Bow"))
    assert [each[2:4] for each in sets(prospect)] == [(60_000, count) for count in counts]


def test_a_load_ten_times_that_of_the_other_lines_is_asked_about(
    club: Repository, tmp_path: Path
) -> None:
    lines = [
        f"2026-11-{day},Back squat,{load},5" for day, load in ((23, 60), (25, 62.5), (27, 625))
    ]
    text = "\n".join(["date,exercise,kg,reps", *lines, "2026-11-28,Bench press,40,5"])
    prospect = foreseen(club, table(club, tmp_path, text, trainee="Bow"))
    assert [line.fate for line in prospect.lines] == [
        Fate.TAKEN,
        Fate.TAKEN,
        Fate.DOUBTFUL,
        Fate.TAKEN,
    ]
    assert prospect.lines[2].reasons == (
        "a load 10 times that of the other lines: is a decimal mark missing?",
    )


def test_merged_headings_over_pairs_of_columns_make_one_set_each(
    club: Repository, tmp_path: Path
) -> None:
    path = written(
        tmp_path / "wide.xlsx",
        ["Date", "Exercise", "Set 1", None, "Set 2", None, "Set 3", None],
        [None, None, "kg", "reps", "kg", "reps", "kg", "reps"],
        [datetime(2026, 11, 24), "Back squat", 60, 5, 62.5, 5, 65, 4],
        [datetime(2026, 11, 25), "Back squat", 60, 5, None, None, None, None],
    )
    arriving = arrived(club, path, trainee="Bow")
    assert arriving.columns.headers[2:4] == ("Set 1 kg", "Set 1 reps")
    assert sets(foreseen(club, arriving)) == [
        ("2026-11-24", "back-squat", 60_000, 5, None),
        ("2026-11-24", "back-squat", 62_500, 5, None),
        ("2026-11-24", "back-squat", 65_000, 4, None),
        ("2026-11-25", "back-squat", 60_000, 5, None),
    ]


def test_a_day_as_a_bare_number_of_a_workbook_is_doubtful(club: Repository, tmp_path: Path) -> None:
    rows: list[list[object]] = [["date", "exercise", "kg", "reps"], [46349, "Back squat", 60, 5]]
    arriving = arrived(club, written(tmp_path / "log.xlsx", *rows), trainee="Bow")
    prospect = foreseen(club, arriving)
    (line,) = prospect.lines
    assert line.fate is Fate.DOUBTFUL
    assert "2026-11-23" in line.reasons[0]
    assert prospect.empty
    agreed = foreseen(club, arriving, replace(BOW, take_doubtful=True))
    assert sets(agreed) == [("2026-11-23", "back-squat", 60_000, 5, None)]
    assert agreed.lines[0].fate is Fate.DOUBTFUL


def test_pounds_of_a_heading_hold_for_its_column(club: Repository, tmp_path: Path) -> None:
    arriving = table(
        club,
        tmp_path,
        "date,exercise,weight (lb),reps\n2026-11-24,Back squat,135,5\n"
        "2026-11-24,Bench press,40kg,5\n",
        trainee="Bow",
    )
    assert arriving.mapping.unit is Unit.LB
    assert [load for _, _, load, _, _ in sets(foreseen(club, arriving))] == [61_235, 40_000]


def test_dates_that_do_not_tell_are_asked_about(club: Repository, tmp_path: Path) -> None:
    text = "date,exercise,kg,reps\n3/11/2026,Back squat,60,5\n"
    asked = foreseen(club, table(club, tmp_path, text, trainee="Bow"))
    assert "say which" in asked.lines[0].reasons[0]
    told = foreseen(club, table(club, tmp_path, text, trainee="Bow", date_order="day first"))
    assert sets(told)[0][0] == "2026-11-03"
    shown = table(club, tmp_path, text + "24/11/2026,Back squat,60,5\n")
    assert shown.mapping.date_order == "day first"


def test_no_load_is_a_doubt_only_where_weights_are_lifted(club: Repository, tmp_path: Path) -> None:
    arriving = table(
        club,
        tmp_path,
        "date,exercise,kg,reps\n2026-11-24,Back squat,,5\n2026-11-24,Push-up,,12\n",
        trainee="Bow",
    )
    assert [line.fate for line in foreseen(club, arriving).lines] == [Fate.DOUBTFUL, Fate.TAKEN]


def test_names_are_asked_about_answered_and_left_out(club: Repository, tmp_path: Path) -> None:
    arriving = table(
        club,
        tmp_path,
        "name,date,exercise,kg,reps\nRower 1,2026-11-24,Back squatt,60,5\n"
        "Rower 1,2026-11-24,Sled push,80,10\nBoww,2026-11-24,Rope climb,0,3\n",
    )
    # "name" of a table of unknown people may be either: it is told here
    roles = (Role.TRAINEE, Role.DATE, Role.EXERCISE, Role.LOAD, Role.REPS)
    arriving = replace(arriving, mapping=replace(arriving.mapping, roles=roles))
    asked = foreseen(club, arriving, Decisions())
    questions = {each.name: each for each in asked.names}
    assert set(questions) == {"Rower 1", "Back squatt", "Sled push", "Boww", "Rope climb"}
    assert questions["Back squatt"].nearest[0] == ("back-squat", "Back squat")
    assert questions["Boww"].nearest[0] == ("Bow", "Bow")
    assert asked.empty
    sled = like(club.exercise("back-squat"), "Sled push", ("back-squat",))
    said = Decisions(
        (
            ("Rower 1", "Bow"),
            ("Back squatt", "back-squat"),
            ("Sled push", sled.key),
            ("Boww", "Boww"),
            ("Rope climb", LEAVE_OUT),
        ),
        (sled,),
    )
    told = foreseen(club, arriving, said)
    assert [line.fate for line in told.lines] == [Fate.TAKEN, Fate.TAKEN, Fate.LEFT_OUT]
    result = carry_out(club, told.plan)
    assert result.sets == 2
    assert club.exercise("sled-push").own
    again = foreseen(club, arriving, replace(said, new_exercises=()))
    assert [line.fate for line in again.lines] == [Fate.THERE, Fate.THERE, Fate.LEFT_OUT]
    assert again.empty


def test_a_trainee_unlike_everybody_is_new_by_itself(club: Repository, tmp_path: Path) -> None:
    arriving = table(
        club, tmp_path, "client,date,exercise,kg,reps\nZorka Q,2026-11-24,Back squat,60,5\n"
    )
    prospect = foreseen(club, arriving, Decisions())
    assert [(each.kind, each.answer) for each in prospect.names] == [("trainee", "Zorka Q")]
    assert prospect.plan.new_trainees == (("Zorka Q", Unit.KG),)


def test_bad_lines_are_handed_back_and_can_be_mended(club: Repository, tmp_path: Path) -> None:
    arriving = table(
        club,
        tmp_path,
        "date;exercise;kg;reps\n2026-11-24;Back squat;60-70;5\n2026-11-25;Back squat;60;5\n"
        "total;;;10\n2027-11-25;Back squat;60;5\n",
        trainee="Bow",
    )
    prospect = foreseen(club, arriving)
    assert [line.fate for line in prospect.lines] == [
        Fate.REFUSED, Fate.TAKEN, Fate.REFUSED, Fate.REFUSED,
    ]  # fmt: skip
    target = tmp_path / "back.csv"
    assert hand_back_lines(prospect, target) == 3
    text = target.read_text(encoding="utf-8-sig")
    assert text.startswith(
        "date;exercise;kg;reps;problem\n2026-11-24;Back squat;60-70;5;'60-70' is"
    )
    mended = table(club, tmp_path, text.replace("60-70", "60"), trainee="Bow")
    assert sets(foreseen(club, mended)) == [("2026-11-24", "back-squat", 60_000, 5, None)]


def test_an_exercise_is_taken_whole_or_not_at_all(club: Repository, tmp_path: Path) -> None:
    arriving = table(
        club,
        tmp_path,
        "date,exercise,kg,reps\n2026-11-24,Back squat,60,5\n2026-11-24,Back squat,60,five\n",
        trainee="Bow",
    )
    assert [line.fate for line in foreseen(club, arriving).lines] == [Fate.HELD, Fate.REFUSED]


def test_our_own_log_is_known_by_its_heading_even_in_a_workbook(
    club: Repository, tmp_path: Path
) -> None:
    rows: list[list[object]] = [
        ["trainee", "date", "exercise", "load", "unit", "reps", "asked_reps"],
        ["Bow", datetime(2026, 11, 24), "Back squat", 62.5, "kg", 5, 6],
    ]
    arriving = arrived(club, written(tmp_path / "log.xlsx", *rows))
    assert arriving.own
    prospect = foreseen(club, arriving)
    assert sets(prospect) == [("2026-11-24", "back-squat", 62_500, 5, None)]
    assert prospect.plan.sessions[0].parts[0].asked[0].reps == 6


def test_a_kept_mapping_is_offered_for_the_same_heading(club: Repository, tmp_path: Path) -> None:
    text = "Tag;Was;Wieviel;Wie oft\n24.11.2026;Back squat;60;5\n"
    first = table(club, tmp_path, text)
    roles = (Role.DATE, Role.EXERCISE, Role.LOAD, Role.REPS)
    mapping = replace(first.mapping, name="from the village", roles=roles, trainee="Bow")
    settings = club.coach_settings()
    club.save(replace(settings, tables=with_kept(settings.tables, mapping)))
    again = table(club, tmp_path, text)
    assert again.mapping == mapping
    assert sets(foreseen(club, again))
    other = table(club, tmp_path, text.replace("Wieviel", "Anders"))
    assert other.kept == ()


def test_columns_of_one_role_are_told_from_the_left() -> None:
    mapping = TableMapping(roles=(Role.REPS, Role.LOAD, Role.REPS))
    assert mapping.columns(Role.REPS) == (0, 2)
    assert mapping.columns(Role.DATE) == ()


def test_mappings_of_one_name_replace_each_other_and_the_newest_is_offered_first() -> None:
    one, two = TableMapping("a", ("x",)), TableMapping("b", ("X",))
    kept = with_kept(with_kept(with_kept((), one), two), replace(one, trainee="Bow"))
    assert [each.name for each in kept] == ["b", "a"]
    assert [each.name for each in fitting(kept, ("x",))] == ["a", "b"]


def test_an_import_closed_midway_leaves_nothing(club: Repository, tmp_path: Path) -> None:
    days = [date(2025, 1, 1).fromordinal(date(2025, 1, 1).toordinal() + n) for n in range(160)]
    text = "date,exercise,kg,reps\n" + "".join(f"{day},Back squat,60,5\n" for day in days)
    prospect = foreseen(club, table(club, tmp_path, text, trainee="Bow"))
    bow = club.trainee_named("Bow")
    assert bow is not None
    assert bow.id is not None
    before = club.sessions(bow.id)
    steps = carrying_out(club, prospect.plan)
    assert 0 < next(steps) < 1
    steps.close()
    assert club.sessions(bow.id) == before
    assert carry_out(club, prospect.plan).new_sessions == 160


def test_programs_and_trainees_are_known_by_their_schema(club: Repository) -> None:
    demo = Path(__file__).parent.parent / "resources" / "demo"
    assert isinstance(finished(opening(demo / "program-first-winter.json", club)), Program)
    found = finished(opening(demo / "trainees.json", club))
    assert not isinstance(found, ArrivingTable | Program)


CELLS = st.sampled_from(
    ("date", "exercise", "kg", "reps", "sets", "client", "", "2026-11-24", "24/11/26", "46349",
     "Bow", "Back squat", "Push-up", "60", "60kg", "1,250", "BW+10", "3x5", "5/5/4", "8/8", "-",
     "=1+1", "0:30", "2x24kg", "9" * 40, "\N{ARABIC-INDIC DIGIT THREE}x5", "x" * 300)
)  # fmt: skip


@given(
    st.lists(st.lists(CELLS | st.text(max_size=8), max_size=7), max_size=8),
    st.sampled_from((Unit.KG, Unit.LB, None)),
    st.booleans(),
)
def test_no_table_breaks_the_import_or_writes_before_it_is_asked(
    still: Repository, rows: list[list[str]], unit: Unit | None, agree: bool
) -> None:
    out = io.StringIO()
    csv.writer(out).writerows([["date", "exercise", "kg", "reps"], *rows])
    path = Path(str(still.database.path)).with_name("fuzz.csv")
    path.write_text(out.getvalue(), encoding="utf-8", errors="replace")
    token = still.changes_token()
    try:
        arriving = finished(opening(path, still, unit))
    except CannotRead:
        return
    assert isinstance(arriving, ArrivingTable)
    mapping = replace(arriving.mapping, trainee="Bow")
    arriving = replace(arriving, mapping=mapping)
    prospect = foreseen(still, arriving, Decisions(take_doubtful=agree))
    assert len({line.number for line in prospect.lines}) == len(prospect.lines)
    taken = {line.number for line in prospect.lines if line.fate in (Fate.TAKEN, Fate.DOUBTFUL)}
    assert set(prospect.plan.taken) <= taken
    assert still.changes_token() == token


@pytest.mark.parametrize(
    ("text", "said"), [('{"schema": "other"}', "neither a program"), ("", "empty")]
)
def test_what_cannot_be_taken_is_said(
    club: Repository, tmp_path: Path, text: str, said: str
) -> None:
    path = tmp_path / "file.any"
    path.write_text(text)
    with pytest.raises((CannotRead, UnreadableTable), match=said):
        finished(opening(path, club))
