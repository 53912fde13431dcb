"""Words of the past: what a change does today, what the change log says, sets in a list."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from datetime import UTC, date, datetime
from itertools import groupby

from PySide6.QtCore import QCoreApplication, QDateTime, QLocale, QTimeZone

from desktop.planning.past import Difference, LoggedChange, NoRepair, Repair, What
from desktop.planning.past_effects import BestChange, PastEffect, StepsChange
from desktop.training.exercises import Exercise, LoadingKind
from desktop.training.limits import Limit, LimitId
from desktop.training.quantities import Unit
from desktop.training.session import ChangeKind, SetDone, Wellness
from views import words
from views.caution_texts import caution_text
from views.exercise_words import short_variation
from views.next_time import effect_text, line_name, unchanged_text

translate = QCoreApplication.translate

NameOf = Callable[[int | None], str]


def effect_lines(
    effect: PastEffect,
    unit: Unit,
    limits: Mapping[LimitId, Limit],
    today: date,
    names: NameOf,
) -> tuple[str, ...]:
    """What a change of the past changes today, from → to; where nothing does, why."""
    if effect.none:
        return (nothing_changes(effect),)
    target = translate("Past", "{line}, {day}: {change}")
    raised = translate("Past", "New caution: {text}")
    settled = translate("Past", "No longer a caution: {text}")
    return (
        *(
            target.format(
                line=line_name(each.exercise.name, each.line.name),
                day=words.short_day(each.day, today),
                change=effect_text(each, unit),
            )
            for each in effect.targets
        ),
        *(steps_change(each, today) for each in effect.steps),
        *(best_change(each, unit) for each in effect.bests),
        *(
            text.format(text=caution_text(each, limits, unit, today, names(each.line_id)))
            for text, found in ((raised, effect.raised), (settled, effect.settled))
            for each in found
        ),
    )


def nothing_changes(effect: PastEffect) -> str:
    """Why a change of the past changes nothing today."""
    if effect.later:
        return unchanged_text()
    return translate(
        "Past", "No target, best or caution changes: what is asked rests on the same work."
    )


def steps_change(change: StepsChange, today: date) -> str:
    """Other sessions that count differently: "Back squat: 2 sessions count differently, ..."."""
    one = translate("Past", "{line}: the session of {day} counts differently")
    more = translate("Past", "{line}: {count} sessions count differently, the first on {day}")
    return (one if len(change.steps) == 1 else more).format(
        line=line_name(change.exercise.name, change.line.name),
        count=words.number(len(change.steps)),
        day=words.short_day(change.steps[0].day, today),
    )


def best_change(change: BestChange, unit: Unit) -> str:
    """The best set before and after: "Best of Back squat: 8 × 60 kg → 9 × 60 kg"."""
    none = translate("Past", "none")
    parts = [
        set_done(done, change.exercise, unit) if done is not None else none
        for done in (change.before, change.after)
    ]
    text = translate("Past", "Best of {line}: {change}")
    return text.format(
        line=line_name(change.exercise.name, change.line.name),
        change=f" {words.ARROW} ".join(parts),
    )


def set_done(done: SetDone, exercise: Exercise, unit: Unit) -> str:
    """One set: "8 × 60 kg", "6 with 10 kg, on 45 cm", "20 s"."""
    amount = words.hold(done.seconds) if done.seconds is not None else f"{done.reps or 0}"
    if exercise.loading is LoadingKind.BODYWEIGHT:
        shown = " ".join(w for w in (amount, words.added_load(done.load_g, unit)) if w)
    else:
        shown = words.set_words(done, unit)
    key = done.variation
    known = {each.key: each.name for each in exercise.variations}
    name = known.get(key) or short_variation(key, key) if key else ""
    pain = translate("Past", "pain {pain}").format(pain=done.pain) if done.pain else ""
    side = {"left": translate("Past", "left"), "right": translate("Past", "right")}.get(done.side)
    return ", ".join(part for part in (shown, side, name, pain) if part)


def sets_done(sets: Sequence[SetDone], unit: Unit, *, bodyweight: bool) -> str:
    """The working sets in short: "10 · 10 · 9 at 60 kg"; "" without any."""
    working = [done for done in sets if not done.warm_up]
    runs = []
    for load_g, alike in groupby(working, key=lambda done: done.load_g):
        run = list(alike)
        held = run[0].seconds is not None and run[0].reps is None
        amounts = words.DOT.join(f"{done.amount}" for done in run)
        amounts = translate("Past", "{amounts} s").format(amounts=amounts) if held else amounts
        if bodyweight:
            load = words.added_load(load_g, unit)
        else:
            text = translate("Past", "at {load}")
            load = text.format(load=words.load(load_g, unit)) if load_g else ""
        runs.append(f"{amounts} {load}".strip())
    return ", ".join(runs)


def logged(change: LoggedChange, names: Mapping[str, Exercise], unit: Unit, today: date) -> str:
    """One entry of the change log: when, what, and what it changed."""
    done = {
        ChangeKind.ENTERED: translate("Past", "Entered"),
        ChangeKind.CORRECTED: translate("Past", "Corrected"),
    }[change.what]
    said = [difference_text(each, names, unit, today) for each in change.differences]
    text = translate("Past", "{done} {when}").format(done=done, when=moment(change.at))
    return f"{text}: {'; '.join(said)}" if said else text


def moment(at: datetime) -> str:
    """A moment of the log in local time."""
    stamp = QDateTime.fromSecsSinceEpoch(
        int(at.astimezone(UTC).timestamp()), QTimeZone(QTimeZone.Initialization.LocalTime)
    )
    return QLocale().toString(stamp, QLocale.FormatType.ShortFormat)


def difference_text(
    each: Difference, names: Mapping[str, Exercise], unit: Unit, today: date
) -> str:
    """One difference, from → to."""
    exercise = names.get(each.exercise)
    name = exercise.name if exercise is not None else each.exercise
    before, after = (_value(value, exercise, unit, today) for value in (each.before, each.after))
    change = f"{before} {words.ARROW} {after}"
    texts = {
        What.DAY: translate("Past", "day {change}"),
        What.SET: translate("Past", "{name}, set {number}: {change}"),
        What.SETS: translate("Past", "{name}, number of sets {change}"),
        What.EXERCISE_ADDED: translate("Past", "{name} added"),
        What.EXERCISE_GONE: translate("Past", "{name} taken out"),
        What.EFFORT: translate("Past", "effort {change}"),
        What.MINUTES: translate("Past", "minutes {change}"),
        What.NOTE: translate("Past", "note {change}"),
        What.LINE_NOTE: translate("Past", "{name}, note {change}"),
        What.WELLNESS: translate("Past", "wellness {change}"),
        What.RED_FLAG: translate("Past", "red flag {change}"),
    }
    return texts[each.what].format(name=name, number=each.number, change=change)


def _value(value: object, exercise: Exercise | None, unit: Unit, today: date) -> str:
    match value:
        case None:
            return translate("Past", "blank")
        case bool():
            return translate("Past", "yes") if value else translate("Past", "no")
        case SetDone() if exercise is not None:
            reserve = "" if value.rir is None else f" ({words.number(value.rir, 1)})"
            return f"{set_done(value, exercise, unit)}{reserve}"
        case Wellness():
            felt = (value.sleep, value.soreness, value.stress, value.motivation)
            return "/".join("-" if each is None else str(each) for each in felt)
        case date():
            return words.short_day(value, today)
        case float() | int():
            return words.number(value, 1)
        case str():
            return f"“{value}”" if value else translate("Past", "blank")
    return str(value)


def refusal(why: NoRepair) -> str:
    """Why sessions cannot be given to another exercise, and what is possible."""
    return {
        NoRepair.POSSIBLE: "",
        NoRepair.SAME: translate("Past", "That is the exercise they are recorded as."),
        NoRepair.MEASURE: translate(
            "Past", "One is counted and the other is held: choose one measured alike."
        ),
        NoRepair.HELP: translate(
            "Past", "Some sets were done with help: choose a bodyweight exercise."
        ),
    }[why]


def repair_text(repair: Repair, today: date) -> str:
    """What else a repair does: sets that come together, variations that are dropped."""
    said = []
    if repair.joined:
        days = [words.short_day(day, today) for day in repair.joined[:5]]
        more = "" if len(repair.joined) <= 5 else " …"
        text = translate("Past", "Both stand on {days}: their sets come together there.")
        said.append(text.format(days=f"{words.listed(days)}{more}"))
    if repair.variations:
        text = translate(
            "Past", "Variations of {count} sets are unknown to the other exercise and go."
        )
        said.append(text.format(count=words.number(repair.variations)))
    return " ".join(said)
