"""Words for cautions: what is seen, what can be done about it, and what the roster says.

QtCore only, so that the command line says the same as the screens. Plain text, never markup. The
sentence of a limit is data and travels with it; the values in it are formatted here.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from typing import Literal

from PySide6.QtCore import QCoreApplication

from desktop.planning.roster import HeadlineCode, RosterEntry
from desktop.training.deload import Signal
from desktop.training.exercises import Muscle, Pattern
from desktop.training.limits import Limit, LimitId
from desktop.training.quantities import Unit
from desktop.training.reasons import ReasonValue
from desktop.training.recovery import Caution
from desktop.training.trainee import AbsenceKind
from views import words
from views.exercise_words import muscle_word, pattern_word
from views.roster_line import RosterLine

translate = QCoreApplication.translate

Limits = Mapping[LimitId, Limit]


def caution_text(
    caution: Caution, limits: Limits, unit: Unit, today: date, line_name: str = ""
) -> str:
    """What is seen, as one sentence; ``line_name`` says on which exercise."""
    pattern = translate("Limits", limits[caution.limit].text)
    return filled(pattern, caution, unit, today, line_name)


def filled(pattern: str, caution: Caution, unit: Unit, today: date, line_name: str = "") -> str:
    """A sentence about ``caution`` with its values by name in place of the placeholders."""
    spoken = _Blank(
        {name: _spoken(caution, name, value, unit, today) for name, value in caution.evidence}
    )
    sentence = pattern.format_map(spoken)
    return f"{line_name}: {sentence}" if line_name else sentence


def short_caution(caution: Caution, line_name: str = "") -> str:
    """The same in a few words for the roster: "plateau likely: back squat"."""
    days = dict(caution.evidence).get("days")
    spoken = {"days": words.days(days)} if isinstance(days, int) else {}
    text = _in_short(caution.limit).format_map(_Blank(spoken))
    return f"{text}: {line_name}" if line_name else text


def proposal_text(proposal: str) -> str:
    """The action that a caution proposes, as the words of a button."""
    return {
        "smaller step": translate("Proposals", "Choose what to do"),
        "one variable": translate("Proposals", "Choose what to do"),
        "move a day": translate("Proposals", "Move a day"),
        "add a session": translate("Proposals", "Look at the program"),
        "plan a deload": translate("Proposals", "Plan a deload"),
        "vary the days": translate("Proposals", "Look at the week"),
        "record activities": translate("Proposals", "Say what is recorded"),
        "choose for pain": translate("Proposals", "Choose what to do"),
        "ease back in": translate("Proposals", "Look at the targets"),
        "follow guidance": translate("Proposals", "Look at the trainee"),
        "other variable": translate("Proposals", "Choose what to do"),
        "in-between": translate("Proposals", "Look at the rule"),
        "extend the rule": translate("Proposals", "Say what grows next"),
        "record clearance": translate("Proposals", "Record the clearance"),
        "screen": translate("Proposals", "Record the screening"),
    }[proposal]


def severity_word(severity: str) -> str:
    """The word beside a mark of severity."""
    return {
        "note": translate("Cautions", "Note"),
        "caution": translate("Cautions", "Caution"),
        "stop": translate("Cautions", "Stop"),
    }[severity]


def headline_text(entry: RosterEntry) -> str:
    """The second line of a trainee in the roster."""
    values = dict(entry.headline.values)
    due = translate("Roster", "due today")
    match entry.headline.code:
        case HeadlineCode.CAUTION if entry.cautions:
            seen = short_caution(entry.cautions[0])
            return words.DOT.join([due, seen]) if entry.due_today else seen
        case HeadlineCode.DUE_TODAY:
            return due
        case HeadlineCode.DELOAD:
            return translate("Roster", "deload from {day}").format(day=_day(values.get("first")))
        case HeadlineCode.AWAY:
            return absence_word(str(values.get("kind", AbsenceKind.AWAY)))
        case HeadlineCode.FIRST_WEEK:
            return translate("Roster", "first week")
        case HeadlineCode.LAST_SEEN:
            days = words.days(int(str(values.get("days", 0))))
            return translate("Roster", "{days} since last").format(days=days)
        case HeadlineCode.NEXT:
            return translate("Roster", "next {day}").format(day=_day(values.get("day")))
    return translate("Roster", "no program")


def headline_tone(entry: RosterEntry) -> Literal["text", "muted", "caution", "stop"]:
    """The role of the colour of that line."""
    code = entry.headline.code
    if code is HeadlineCode.CAUTION and entry.cautions:
        tones: dict[str, Literal["text", "caution", "stop"]] = {
            "note": "text",
            "caution": "caution",
            "stop": "stop",
        }
        return tones[entry.cautions[0].severity.value]
    quiet = (HeadlineCode.LAST_SEEN, HeadlineCode.NO_PROGRAM, HeadlineCode.NEXT, HeadlineCode.AWAY)
    return "muted" if code in quiet else "text"


def roster_line(entry: RosterEntry) -> RosterLine:
    """A trainee's two lines in the roster."""
    tone = headline_tone(entry)
    urgent = tone in ("caution", "stop") and entry.cautions
    return RosterLine(
        entry.trainee.id or 0,
        entry.trainee.name,
        headline_text(entry),
        tone,
        entry.cautions[0].severity.value if urgent else "",
    )


def absence_word(kind: str) -> str:
    """Why somebody does not train, in a word."""
    return {
        AbsenceKind.AWAY.value: translate("Roster", "away"),
        AbsenceKind.ILLNESS.value: translate("Roster", "ill"),
        AbsenceKind.INJURY.value: translate("Roster", "injured"),
    }.get(kind, kind)


class _Blank(dict[str, str]):
    """Values by name; one that is missing is left out of the sentence."""

    def __missing__(self, name: str) -> str:
        return ""


def _in_short(limit: LimitId) -> str:
    return {
        LimitId.LOAD_STEP: translate("Cautions", "large step"),
        LimitId.SEVERAL_AT_ONCE: translate("Cautions", "much grew at once"),
        LimitId.TOO_CLOSE: translate("Cautions", "no rest day between"),
        LimitId.TOO_SELDOM: translate("Cautions", "few sessions a week"),
        LimitId.NO_DELOAD: translate("Cautions", "no deload for long"),
        LimitId.REACTIVE_DELOAD: translate("Cautions", "deload advised"),
        LimitId.MONOTONY: translate("Cautions", "days much alike"),
        LimitId.LOAD_INCOMPLETE: translate("Cautions", "training load incomplete"),
        LimitId.PAIN: translate("Cautions", "pain noted"),
        LimitId.PAIN_HOLD: translate("Cautions", "pain: decide"),
        LimitId.GAP: translate("Cautions", "{days} since last"),
        LimitId.MINOR: translate("Cautions", "perhaps under 18"),
        LimitId.OLDER: translate("Cautions", "65 or older"),
        LimitId.PLATEAU: translate("Cautions", "plateau likely"),
        LimitId.EQUIPMENT_JUMP: translate("Cautions", "next step too large"),
        LimitId.RULE_COMPLETE: translate("Cautions", "rule complete"),
        LimitId.RED_FLAG: translate("Cautions", "red flag: clearance"),
        LimitId.CLEARANCE: translate("Cautions", "clearance needed"),
        LimitId.SCREENING: translate("Cautions", "not screened yet"),
    }[limit]


def _signals(caution: Caution) -> str:
    if "rir_before" in dict(caution.evidence):
        effort = translate(
            "Cautions", "reps in reserve fall at the same work ({rir_before} to {rir_now})"
        )
    else:
        effort = translate(
            "Cautions", "effort rises at the same work ({effort_before} to {effort_now})"
        )
    said = {
        Signal.PLATEAUS.value: translate("Cautions", "{lines} exercises stand still"),
        Signal.WELLNESS.value: translate(
            "Cautions", "wellness is down ({wellness_before} to {wellness_now})"
        ),
        Signal.EFFORT.value: effort,
        Signal.ACHES.value: translate("Cautions", "aches were noted"),
    }
    spoken = _Blank(
        {
            name: words.number(value, 1)
            for name, value in caution.evidence
            if isinstance(value, int | float)
        }
    )
    seen = str(caution["signals"]).split(", ")
    return words.listed([said.get(each, each).format_map(spoken) for each in seen])


def _spoken(caution: Caution, name: str, value: ReasonValue, unit: Unit, today: date) -> str:
    if name == "signals":
        return _signals(caution)
    if name == "muscles":
        return words.listed([muscle_word(Muscle(part)) for part in str(value).split(", ")])
    if name == "pattern":
        return pattern_word(Pattern(str(value)))
    if isinstance(value, date):
        return words.short_day(value, today)
    if value is None or isinstance(value, bool):
        return ""
    if isinstance(value, str):
        return words.listed([words.variable(part) for part in value.split(", ")])
    if name.endswith("_g"):
        return words.load(round(value), unit)
    if name in ("over", "probability"):
        return words.percent(value)
    if name == "birth_year":
        return str(value)
    return words.number(value, 1)


def _day(value: ReasonValue) -> str:
    return words.short_day(value) if isinstance(value, date) else ""
