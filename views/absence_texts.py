"""Words for days away: how long, what they change, and what comes after them."""

from __future__ import annotations

from datetime import date
from itertools import groupby

from PySide6.QtCore import QCoreApplication

from desktop.planning.absences import AfterGap, NextSession
from desktop.training.position import ProgressionSettings
from desktop.training.quantities import Unit
from desktop.training.trainee import Absence
from views import words
from views.caution_texts import absence_word
from views.reason_texts import reason_text
from views.sentences import begun_small

translate = QCoreApplication.translate


def absence_text(absence: Absence, today: date) -> str:
    """Why and when: "ill, Mon 2 Nov – Wed 11 Nov (10 days)"."""
    kind = absence_word(absence.kind.value)
    first = words.short_day(absence.first, today)
    if absence.last is None:
        text = translate("Absences", "{kind} since {first}")
        if absence.first > today:
            text = translate("Absences", "{kind} from {first} on")
        return text.format(kind=kind, first=first)
    count = words.days((absence.last - absence.first).days + 1)
    if absence.last == absence.first:
        return f"{kind}, {first}"
    last = words.short_day(absence.last, today)
    return f"{kind}, {first} \N{EN DASH} {last} ({count})"


def what_it_changes(settings: ProgressionSettings) -> str:
    """What days away do to what is asked."""
    text = translate(
        "Absences",
        "Days away, ill or injured count as days without training; only days of a deload do not. "
        "From {repeat} days without an exercise on, the last is asked again; from {lighter} on "
        "less, from {easier} on clearly less, from {restart} on a new start is needed. No session "
        "is expected on these days.",
    )
    return text.format(
        repeat=words.number(settings.gap_repeat_days),
        lighter=words.number(settings.gap_lighter_days),
        easier=words.number(settings.gap_easier_days),
        restart=words.number(settings.gap_restart_days),
    )


def next_text(found: NextSession, unit: Unit, today: date) -> str:
    """When the next session is, and what the days until then change."""
    if found.day is None:
        return translate("Absences", "No session is planned ahead.")
    text = translate("Absences", "Next session: {day}.")
    if found.if_back:
        text = translate(
            "Absences",
            "Nothing is expected until the return; back today, the next session is {day}.",
        )
    said = text.format(day=words.short_day(found.day, today))
    if not found.gaps:
        unchanged = translate("Absences", "No gap changes what is asked.")
        return f"{said} {unchanged}"
    parts = []
    for why, alike in groupby(found.gaps, key=lambda gap: reason_text(gap.reason, unit, today)):
        names = words.listed(list(dict.fromkeys(_name(gap) for gap in alike)))
        parts.append(f"{names}: {begun_small(why)}.")
    return " ".join((said, *parts))


def _name(gap: AfterGap) -> str:
    return ", ".join(part for part in (gap.exercise.name, gap.line.name) if part)
