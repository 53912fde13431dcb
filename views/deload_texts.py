"""Words for the easier week: when and why, what it asks, and whether one helped."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import QCoreApplication

from desktop.planning.deload_effect import LEAST_AFTER, LEAST_BEFORE, Change, DeloadEffect
from desktop.planning.deload_plan import DeloadBasis, DeloadPlan, DeloadProposal, LineLater
from desktop.training.deload import Seen, Signal
from desktop.training.exercises import Exercise, LoadingKind
from desktop.training.quantities import Unit
from desktop.training.target import Target
from desktop.training.trainee import DeloadWindow
from views import words
from views.exercise_words import short_variation
from views.session_texts import asked_text

translate = QCoreApplication.translate


def window_text(window: DeloadWindow, today: date) -> str:
    """The days of a window."""
    first, last = words.short_day(window.first, today), words.short_day(window.last, today)
    return f"{first} \N{EN DASH} {last}"


def factors_text(window: DeloadWindow) -> str:
    """How a window eases: "sets × 0.6, load − 10 %"."""
    text = translate("Deload", "sets {times} {factor}, load {minus} {percent} %")
    return text.format(
        times=words.TIMES,
        factor=words.number(window.sets_factor, 2),
        minus=words.MINUS,
        percent=words.number(window.load_percent, 1),
    )


def proposal_sentence(proposal: DeloadProposal, today: date) -> str:
    """Why an easier week comes when it comes."""
    said = [_basis(proposal, today), _cycle(proposal, today)]
    return " ".join(part for part in said if part)


def stopped_sentence() -> str:
    """What is said while a clearance is needed."""
    return translate(
        "Deload", "Nothing is proposed until a licensed professional's clearance is recorded."
    )


def _basis(proposal: DeloadProposal, today: date) -> str:
    window = proposal.window
    day = words.short_day(window.first, today)
    match proposal.basis:
        case DeloadBasis.RECORDED if window.first <= today:
            last = words.short_day(window.last, today)
            return translate("Deload", "A deload runs until {day}.").format(day=last)
        case DeloadBasis.RECORDED:
            return translate("Deload", "A deload is planned from {day} on.").format(day=day)
        case DeloadBasis.PROGRAM:
            text = translate("Deload", "The program has a deload from {day} on.")
            return text.format(day=day)
        case DeloadBasis.SIGNALS:
            return translate("Deload", "Several signs at once speak for a deload soon.")
        case DeloadBasis.CYCLE if proposal.due is not None and proposal.due < today:
            return translate("Deload", "A deload is due.")
        case DeloadBasis.CYCLE:
            return translate("Deload", "The next deload is due from {day} on.").format(day=day)
    return translate("Deload", "Nothing asks for a deload now.")


def _cycle(proposal: DeloadProposal, today: date) -> str:
    if proposal.since is None:
        return translate("Deload", "No session is recorded yet.")
    built = translate("Deload", "{weeks} of building since {day}").format(
        weeks=words.weeks(proposal.built) if proposal.built else translate("Deload", "No week"),
        day=words.short_day(proposal.since, today),
    )
    if proposal.every is None:
        return translate("Deload", "{built}; the program asks for none.").format(built=built)
    text = translate("Deload", "{built}; one is proposed every {every}.")
    return text.format(built=built, every=words.weeks(proposal.every))


def signal_text(seen: Seen) -> str:
    """A signal with its numbers."""
    numbers = {
        name: words.number(float(value), 1)
        for name, value in seen.evidence
        if isinstance(value, int | float)
    }
    names = dict(seen.evidence)
    match seen.signal:
        case Signal.PLATEAUS:
            text = translate("Deload", "{lines} exercises have probably stopped growing")
        case Signal.WELLNESS:
            text = translate(
                "Deload", "wellness fell from {wellness_before} to {wellness_now} (of 5)"
            )
        case Signal.EFFORT if "rir_before" in names:
            text = translate(
                "Deload", "reps in reserve fell from {rir_before} to {rir_now} at the same work"
            )
        case Signal.EFFORT:
            text = translate(
                "Deload", "effort rose from {effort_before} to {effort_now} at no more work"
            )
        case Signal.ACHES:
            text = translate("Deload", "aches noted on {ache_days} of the last 14 days")
    return text.format_map(numbers)


def signals_sentence(seen: Sequence[Seen], needed: int) -> str:
    """The signs that are seen, of which so many make a deload due."""
    if not seen:
        text = translate(
            "Deload",
            "Signs seen: none of plateaus, wellness down, effort up at the same work, aches.",
        )
        return text
    text = translate("Deload", "Signs seen ({count}; {needed} make a deload due): {told}.")
    told = "; ".join(signal_text(each) for each in seen)
    return text.format(count=len(seen), needed=needed, told=told)


def sources_text() -> str:
    """Where easier weeks come from, and what is not known of them."""
    return translate(
        "Deload",
        "Every 5.6 ± 2.3 weeks for 6.4 ± 1.7 days, less volume "
        "and load, more in reserve, the same exercises and days: survey of 246 competitive "
        "athletes, Rogerson 2024, Sports Med Open 10:26, DOI 10.1186/s40798-024-00691-y. Less "
        "intensity, volume and closeness to failure: Bell 2023, Sports Med Open 9:87, DOI "
        "10.1186/s40798-023-00633-0. Every 4-8 weeks: Bell 2025, Strength Cond J. By how much to "
        "cut is published nowhere: the factors are yours. The thresholds of the signs, and two at "
        "once, are common practice.",
    )


def target_text(target: Target, exercise: Exercise, unit: Unit) -> str:
    """What a slot asks: "3 × 8 at 60 kg", with its variation in short."""
    if not target.sets:
        return translate("Deload", "nothing")
    bodyweight = exercise.loading is LoadingKind.BODYWEIGHT
    text = asked_text(target.sets, unit, bodyweight=bodyweight)
    key = target.sets[0].variation
    if key is None:
        return text
    names = {each.key: each.name for each in exercise.variations}
    return f"{text}, {short_variation(key, names.get(key, key))}"


def later_sentences(plan: DeloadPlan, unit: Unit, most: int = 4) -> tuple[str, ...]:
    """What the weeks after it look like: where lines stand otherwise than without it."""
    if not plan.weeks:
        return ()
    changed = [each for each in plan.later if each.planned.position != each.usual.position]
    weeks = words.weeks(len(plan.weeks))
    if not changed:
        text = translate(
            "Deload",
            "Positions resume where they stood. After these {weeks} every exercise stands where "
            "it would stand without it.",
        )
        return (text.format(weeks=weeks),)
    text = translate(
        "Deload",
        "Positions resume where they stood. If all goes as asked, after these {weeks} {count} of "
        "{all} exercises stand elsewhere than without it:",
    )
    head = text.format(weeks=weeks, count=len(changed), all=len(plan.later))
    told = [_later(each, unit) for each in changed[:most]]
    if len(changed) > most:
        more = translate("Deload", "and {count} more").format(count=len(changed) - most)
        told.append(more)
    return (head, *told)


def _later(line: LineLater, unit: Unit) -> str:
    text = translate("Deload", "{exercise}: {planned} instead of {usual}")
    return text.format(
        exercise=line_words(line.exercise, line.line_name),
        planned=target_text(line.planned, line.exercise, unit),
        usual=target_text(line.usual, line.exercise, unit),
    )


def line_words(exercise: Exercise, line_name: str) -> str:
    """An exercise with the name of its line."""
    return ", ".join(part for part in (exercise.name, line_name) if part)


def effect_text(effect: DeloadEffect, today: date) -> str:
    """Whether an easier week helped, and how sure that is."""
    if effect.window.last >= today:
        return ""
    if effect.change is None:
        text = translate(
            "Deload",
            "Too few sessions to say: {before} before and {after} after it are needed of an "
            "exercise.",
        )
        said = text.format(before=LEAST_BEFORE, after=LEAST_AFTER)
        if effect.waiting is None:
            return said
        day = words.short_day(effect.waiting, today)
        more = translate("Deload", "More is known by {day}.").format(day=day)
        return f"{said} {more}"
    text = translate("Deload", "{change} over {lines}; the trend before promised {promised}.")
    return text.format(
        change=change_text(effect.change),
        lines=_lines(len(effect.lines)),
        promised=_signed(effect.promised),
    )


def change_text(change: Change) -> str:
    """A change with its 80 % band, and whether it is clear."""
    text = (
        translate("Deload", "Performance after against before: {likely} (80 %: {low} to {high})")
        if change.clear
        else translate(
            "Deload",
            "No clear difference of performance: {likely} (80 %: {low} to {high})",
        )
    )
    return text.format(
        likely=_signed(change.likely), low=_signed(change.low), high=_signed(change.high)
    )


def _signed(fraction: float) -> str:
    shown = words.percent(fraction, 1)
    return f"+{shown}" if round(fraction, 3) > 0 else shown


def _lines(count: int) -> str:
    if count == 1:
        return translate("Deload", "1 exercise")
    return translate("Deload", "{count} exercises").format(count=count)
