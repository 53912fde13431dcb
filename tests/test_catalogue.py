"""The catalogue of exercises: what ships, and that every slip is told with its line."""

from __future__ import annotations

import re
from collections import Counter
from pathlib import Path

import pytest

from desktop.catalogue import CatalogueError, load_catalogue, read_catalogue
from desktop.training.exercises import Exercise, LoadingKind, Measure, Muscle, Pattern, Sex
from desktop.training.leverage import (
    calf_raise_share,
    pistol_share,
    pull_up_share,
    split_squat_share,
    squat_share,
    variation_share,
)

CATALOGUE = load_catalogue()
BY_KEY = {exercise.key: exercise for exercise in CATALOGUE}

SQUAT = """\
[[exercise]]
key = "squat"
name = "Squat"
pattern = "squat"
loading = "barbell"
direct = ["quadriceps"]
cue = "Stand up."
"""

PUSH_UP = """\
[[exercise]]
key = "push"
name = "Push"
pattern = "horizontal push"
loading = "bodyweight"
direct = ["chest"]
cue = "Straight body."
variations = [
  { key = "box", name = "on a box", push_up = { hands_mm = 400 }, needs = ["box"] },
  { key = "floor", name = "on the floor", push_up = {} },
]
"""


def test_the_shipped_catalogue_covers_every_pattern_loading_kind_and_muscle() -> None:
    assert len(CATALOGUE) >= 90
    assert min(Counter(e.pattern for e in CATALOGUE)[pattern] for pattern in Pattern) >= 5
    assert min(Counter(e.loading for e in CATALOGUE)[kind] for kind in LoadingKind) >= 10
    trained = {muscle for exercise in CATALOGUE for muscle in exercise.direct}
    assert trained == set(Muscle)


def test_every_shipped_exercise_has_a_cue_and_other_names_of_its_own() -> None:
    assert all(exercise.cue.endswith(".") for exercise in CATALOGUE)
    assert all(exercise.other_names for exercise in CATALOGUE)
    cues = [exercise.cue for exercise in CATALOGUE]
    assert len(set(cues)) == len(cues)


@pytest.mark.parametrize(
    ("typed", "key"),
    [
        ("bench", "bench-press"),
        ("push ups", "push-up"),
        ("pullup", "pull-up"),
        ("squat", "back-squat"),
        ("ohp", "overhead-press"),
        ("rdl", "romanian-deadlift"),
    ],
)
def test_exercises_are_found_as_people_type_them(typed: str, key: str) -> None:
    assert typed in BY_KEY[key].other_names


@pytest.mark.parametrize(
    "key",
    [
        "push-up",
        "bar-row",
        "strap-row",
        "pull-up",
        "dip",
        "squat-to-single-leg",
        "split-squat",
        "bridge",
        "l-sit",
        "front-lever",
        "planche",
        "plank",
        "handstand-push-up",
        "calf-raise",
        "hollow-hold",
        "side-plank",
        "hanging-raise",
        "kneeling-hamstring-lowering",
    ],
)
def test_bodyweight_exercises_have_a_scale(key: str) -> None:
    assert BY_KEY[key].loading is LoadingKind.BODYWEIGHT
    assert len(BY_KEY[key].variations) >= 3


def test_static_positions_are_held() -> None:
    holds = {"l-sit", "front-lever", "planche", "plank", "hollow-hold", "side-plank", "hang"}
    assert all(BY_KEY[key].measure is Measure.HOLD for key in holds)
    assert BY_KEY["push-up"].measure is Measure.REPS


@pytest.mark.parametrize("sex", Sex)
def test_fixed_shares_in_the_file_are_those_of_the_model(sex: Sex) -> None:
    def given(key: str, variation: str) -> float:
        share = variation_share(BY_KEY[key].variation(variation), sex, 1750)
        assert share.value is not None
        return share.value

    def about(share: float | None) -> object:
        return pytest.approx(share, abs=0.0011)

    assert given("pull-up", "full") == about(pull_up_share(sex).value)
    assert given("chin-up", "full") == about(pull_up_share(sex).value)
    assert given("dip", "full") == about(pull_up_share(sex).value)
    assert given("squat-to-single-leg", "full") == about((squat_share(sex).value or 0) / 2)
    assert given("squat-to-single-leg", "single") == about(pistol_share(sex).value)
    assert given("split-squat", "floor") == split_squat_share().value
    assert given("split-squat", "rear-raised") == split_squat_share(rear_foot_raised=True).value
    assert given("calf-raise", "both") == about((calf_raise_share(sex).value or 0) / 2)


def test_a_catalogue_is_read_from_any_path(tmp_path: Path) -> None:
    file = tmp_path / "own.toml"
    file.write_text(SQUAT, encoding="utf-8")
    squat = Exercise(
        "squat",
        "Squat",
        Pattern.SQUAT,
        LoadingKind.BARBELL,
        (Muscle.QUADRICEPS,),
        cue="Stand up.",
    )
    assert load_catalogue(file) == (squat,)


def test_an_empty_catalogue_is_empty() -> None:
    assert read_catalogue("# nothing yet\n") == ()


# The file, what is changed in it, the line that must be named, and what must be said.
BROKEN = [
    (SQUAT, '"Squat"', '"Squat', 3, "Illegal character"),
    (SQUAT, 'name = "Squat"\n', "", 1, "missing required field `name`"),
    (SQUAT, '"squat"\nname', '""\nname', 2, "key must not be empty"),
    (SQUAT, '"Squat"', '" "', 3, "name must not be empty"),
    (SQUAT, '"Stand up."', '""', 7, "cue must not be empty"),
    (SQUAT, '"Squat"', "7", 3, "name: Expected `str`, got `int`"),
    (SQUAT, 'pattern = "squat"', 'pattern = "sqat"', 4, "allowed are squat, hinge"),
    (SQUAT, '"barbell"', '"bar bell"', 5, "allowed are barbell, dumbbell"),
    (SQUAT, '["quadriceps"]', '["quads"]', 6, "direct[1]: Invalid enum value 'quads'; allowed are"),
    (SQUAT, '["quadriceps"]', "[]", 6, "at least one muscle"),
    (SQUAT, '"Stand up."', '"Up."\nindirect = ["quadriceps"]', 8, "direct and indirect as well"),
    (SQUAT, '"Stand up."', '"Up."\nincrement_g = 0', 8, "at least 1 g, not 0"),
    (SQUAT, '"Stand up."', '"Up."\nimplements = 3', 8, "1 or 2, not 3"),
    (SQUAT, '"Stand up."', '"Up."\nincremnt_g = 5', 8, "'incremnt_g' is not a field"),
    (SQUAT, '"Stand up."', '"Up."\nneeds = ["rack"]', 8, "need 'rack' is not known"),
    (SQUAT, '"Stand up."', '"Up."\nown = true', 8, "own is the data file's own"),
    (SQUAT, '"Stand up."', '"Up."\nvariations = [\n{ key = "a", name = "b" } ]', 8, "bodyweight"),
    (SQUAT, '"barbell"', '"stack"\nimplements = 2', 6, "a pair is held"),
    (SQUAT, '"barbell"', '"bodyweight"', 1, "at least one variation"),
    (SQUAT, "[[exercise]]", "[exercise]", 1, "under a line [[exercise]]"),
    (SQUAT, "[[exercise]]", "[[exercises]]", 1, "under a line [[exercise]]"),
    (PUSH_UP, "push_up = {}", 'push_up = { hands = 3 }', 10, "'hands' is not a field"),
    (PUSH_UP, "push_up = {}", 'push_up = {}, family = 3', 10, "variations[2].family: Expected"),
    (PUSH_UP, "push_up = {}", "push_up = {}, row = {}", 10, "gives 2 geometries; at most one"),
    (PUSH_UP, "push_up = {}", "pushup = {}", 10, "'pushup' is not a field"),
    (PUSH_UP, '"floor", name', '"box", name', 10, "'box' stands twice"),
    (PUSH_UP, '"floor", name', '"hands-450", name', 10, "is kept for heights"),
    (PUSH_UP, '"on the floor"', '""', 10, "a key and a name"),
    (PUSH_UP, '["box"]', '["boxes"]', 9, "allowed are bar, bench, box"),
    (PUSH_UP, "hands_mm = 400", "feet_mm = 400", 10, "list them from easiest to hardest"),
    (PUSH_UP, "hands_mm = 400", "hands_mm = 4000", 9, "further apart than a body"),
    (PUSH_UP, "push_up = {}", "share = { male = 1.2, female = 1, plus_minus = 0.1, source = 's' }",
     10, "a share lies above 0 and at most at 1"),
    (PUSH_UP, '"Straight body."', '"Straight."\nheights = ["bar"]', 8, "need a variation with row"),
    (PUSH_UP, '"Straight body."', '"Straight."\nheights = ["head"]', 8, "allowed are hands, feet"),
    (SQUAT + SQUAT, "", "", 9, "stands on line 2 already"),
    (SQUAT + PUSH_UP, '"Push"', '"squat"', 10, "'squat' already names 'squat'"),
    (SQUAT + PUSH_UP, '"Straight body."', '"S."\nother_names = ["SQUAT"]', 15, "already names"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "old", "new", "line", "says"), BROKEN)
def test_every_slip_is_told_with_its_line(
    text: str, old: str, new: str, line: int, says: str
) -> None:
    assert old in text
    with pytest.raises(CatalogueError, match=re.escape(says)) as caught:
        read_catalogue(text.replace(old, new, 1), "mine.toml")
    assert caught.value.line == line
    assert str(caught.value).startswith(f"mine.toml, line {line}: ")


def test_the_entry_is_named_beside_the_line() -> None:
    with pytest.raises(CatalogueError, match="line 9: push: variation 'box'") as caught:
        read_catalogue(PUSH_UP.replace("hands_mm = 400", "hands_mm = 4000"))
    assert caught.value.entry == "push"
    assert caught.value.file == "exercises.toml"


def test_an_unfinished_file_is_told_at_its_end() -> None:
    with pytest.raises(CatalogueError, match="line 5"):
        read_catalogue('[[exercise]]\nkey = "a"\nvariations = [\n  { key = "b" },\n')


def test_a_family_is_listed_in_one_piece() -> None:
    knees = '  { key = "knees", name = "knees", family = "knees" },\n'
    high = '  { key = "high", name = "high" },\n]\n'
    with pytest.raises(CatalogueError, match="interrupted by 'knees'") as caught:
        read_catalogue(PUSH_UP.removesuffix("]\n") + knees + high)
    assert caught.value.line == 12


def test_variations_on_one_line_are_told_at_the_field() -> None:
    text = PUSH_UP.replace("[\n  {", "[ {").replace('"on a box"', '""')
    with pytest.raises(CatalogueError, match="a key and a name") as caught:
        read_catalogue(text)
    assert caught.value.line == 8
