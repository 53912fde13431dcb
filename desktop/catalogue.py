"""The catalogue: the exercises that ship with the program, read from a data file and checked."""

from __future__ import annotations

from importlib.resources import files
from itertools import pairwise
from pathlib import Path
from typing import Final

from desktop.entries import Entry, EntryError, as_type, read_entries
from desktop.training.exercises import Exercise, HeightUse, LoadingKind, Sex, Variation
from desktop.training.leverage import variation_share
from desktop.training.scale import HEIGHT_KEY, NEEDS, main_family
from desktop.training.share import LeverageError, Share

SHIPPED: Final = "exercises.toml"

# Scales are checked in order at a stature in the middle of what the published studies measured.
_CHECKED_STATURE_MM: Final = 1750
_LOADED: Final = (LoadingKind.BARBELL, LoadingKind.DUMBBELL, LoadingKind.KETTLEBELL)


class CatalogueError(EntryError):
    """An exercise of the data file that cannot be taken; names the entry and the line."""


def load_catalogue(path: Path | None = None) -> tuple[Exercise, ...]:
    """The exercises of the file at ``path`` (None: those shipped), in the file's order.

    Raises CatalogueError, naming file, line and entry, for the first thing that is wrong, and
    OSError where the file cannot be read.
    """
    source = files("resources") / SHIPPED if path is None else path
    return read_catalogue(source.read_text(encoding="utf-8"), source.name)


def read_catalogue(text: str, file: str = SHIPPED) -> tuple[Exercise, ...]:
    """The exercises of a catalogue's text. Raises CatalogueError."""
    try:
        entries = read_entries(text, "exercise", file)
        exercises = [as_type(entry, Exercise) for entry in entries]
        for entry, exercise in zip(entries, exercises, strict=True):
            _check(entry, exercise)
        _check_unique(entries, exercises)
    except EntryError as error:
        raise CatalogueError(error.file, error.line, error.why, error.entry) from None
    return tuple(exercises)


def _check(entry: Entry, exercise: Exercise) -> None:
    for name in ("key", "name", "cue"):
        if not getattr(exercise, name).strip():
            raise entry.error(f"{name} must not be empty", name)
    for name in ("own", "retired", "id", "revision", "height_words"):
        if name in entry.values:
            raise entry.error(f"{name} is the data file's own and not the catalogue's", name)
    if exercise.increment_g <= 0:
        raise entry.error(
            f"the increment is at least 1 g, not {exercise.increment_g}", "increment_g"
        )
    if exercise.implements not in (1, 2):
        raise entry.error(f"implements: 1 or 2, not {exercise.implements}", "implements")
    if exercise.implements == 2 and exercise.loading not in _LOADED:
        raise entry.error("a pair is held of dumbbells or kettlebells alone", "implements")
    if not exercise.direct:
        raise entry.error("name at least one muscle that the exercise trains directly", "direct")
    if both := set(exercise.direct) & set(exercise.indirect):
        raise entry.error(f"{', '.join(sorted(both))}: direct and indirect as well", "indirect")
    _check_needs(entry, exercise.needs, "needs", None)
    _check_variations(entry, exercise)


def _check_needs(entry: Entry, needs: tuple[str, ...], name: str, item: int | None) -> None:
    for need in needs:
        if need not in NEEDS:
            allowed = ", ".join(sorted(NEEDS))
            raise entry.error(f"need {need!r} is not known; allowed are {allowed}", name, item)


def _check_variations(entry: Entry, exercise: Exercise) -> None:
    if exercise.loading is not LoadingKind.BODYWEIGHT:
        if exercise.variations:
            raise entry.error("variations are for bodyweight exercises alone", "variations")
    elif not exercise.variations:
        raise entry.error("a bodyweight exercise lists at least one variation", "variations")
    seen: set[str] = set()
    for item, variation in enumerate(exercise.variations):
        if not variation.key.strip() or not variation.name.strip():
            raise entry.error("a variation has a key and a name", "variations", item)
        if variation.key in seen:
            raise entry.error(f"variation {variation.key!r} stands twice", "variations", item)
        seen.add(variation.key)
        if HEIGHT_KEY.fullmatch(variation.key):
            why = f"the key {variation.key!r} is kept for heights that a trainee owns"
            raise entry.error(why, "variations", item)
        if variation.other_names:
            raise entry.error(
                "other names are the exercise's, not a variation's", "variations", item
            )
        _check_needs(entry, variation.needs, "variations", item)
    families = [v.family for v in exercise.variations]
    for item, (before, after) in enumerate(pairwise(families), start=1):
        if after != before and after in families[:item]:
            raise entry.error(
                f"family {after!r} is interrupted by {before!r}; list each in one piece",
                "variations",
                item,
            )
    for sex in Sex:
        _check_order(entry, exercise, sex)
    _check_heights(entry, exercise)


def _check_order(entry: Entry, exercise: Exercise, sex: Sex) -> None:
    """Shares that are known never fall from one variation of a family to a later one."""
    hardest: dict[str, tuple[str, float]] = {}
    for item, variation in enumerate(exercise.variations):
        value = _share(entry, variation, sex, item).value
        if value is None:
            continue
        before, most = hardest.get(variation.family, ("", 0.0))
        if value < most:
            raise entry.error(
                f"variation {variation.key!r} loads {value:.3f} of body mass, less than "
                f"{before!r} before it ({most:.3f}); list them from easiest to hardest",
                "variations",
                item,
            )
        hardest[variation.family] = variation.key, value


def _share(entry: Entry, variation: Variation, sex: Sex, item: int) -> Share:
    try:
        share = variation_share(variation, sex, _CHECKED_STATURE_MM)
    except LeverageError as error:
        raise entry.error(f"variation {variation.key!r}: {error}", "variations", item) from None
    if share.value is not None and not (0 < share.value <= 1):
        why = f"variation {variation.key!r}: a share lies above 0 and at most at 1"
        raise entry.error(why, "variations", item)
    return share


def _check_heights(entry: Entry, exercise: Exercise) -> None:
    """Heights make sense where the main scale computes what a height does."""
    main = [v for v in exercise.variations if v.family == main_family(exercise)]
    for use in exercise.heights:
        has = any(v.row if use is HeightUse.BAR else v.push_up for v in main)
        if not has:
            needed = "row" if use is HeightUse.BAR else "push_up"
            raise entry.error(f"heights {use.value!r} need a variation with {needed}", "heights")


def _check_unique(entries: tuple[Entry, ...], exercises: list[Exercise]) -> None:
    keys: dict[str, int] = {}
    names: dict[str, str] = {}
    for entry, exercise in zip(entries, exercises, strict=True):
        if exercise.key in keys:
            raise entry.error(f"this key stands on line {keys[exercise.key]} already", "key")
        keys[exercise.key] = entry.line_of("key")
        for field, name in (
            ("name", exercise.name),
            *(("other_names", other) for other in exercise.other_names),
        ):
            plain = name.casefold().strip()
            if plain in names:
                raise entry.error(f"{name!r} already names {names[plain]!r}", field)
            names[plain] = exercise.key
