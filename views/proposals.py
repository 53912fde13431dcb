"""What a caution's proposal does: some are carried out at once, others open the right screen."""

from __future__ import annotations

from datetime import date, timedelta

from PySide6.QtCore import QCoreApplication

from desktop.training.recovery import Caution
from desktop.training.trainee import DeloadWindow, Trainee
from views import words
from views.record import MessageKind, Record
from views.work_areas import PROGRAM, PROGRESS, SESSION, TRAINEE

translate = QCoreApplication.translate

_SCREENS = {
    "choose for pain": SESSION,
    "ease back in": SESSION,
    "follow guidance": TRAINEE,
    "record activities": TRAINEE,
    "record clearance": TRAINEE,
    "screen": TRAINEE,
    "other variable": PROGRESS,
}


def carry_out(caution: Caution, trainee: Trainee, record: Record, today: date) -> str:
    """Do what ``caution`` proposes; the key of the work area to show next, "" for none."""
    if caution.proposal == "plan a deload":
        plan_deload(trainee, record, today)
        return ""
    return _SCREENS.get(caution.proposal, PROGRAM)


def plan_deload(trainee: Trainee, record: Record, today: date) -> None:
    """An easier week from the next Monday on (today, where it is one); it can be undone."""
    if trainee.id is None:
        raise ValueError("a deload is planned for a trainee who has been saved")
    settings = record.repository.coach_settings()
    first = today + timedelta(days=-today.weekday() % 7)
    window = DeloadWindow(
        trainee.id,
        first,
        first + timedelta(days=6),
        sets_factor=settings.deload_sets_factor,
        load_percent=settings.deload_load_percent,
        planned=False,
    )
    act = translate("Proposals", "Plan a deload for {name}").format(name=trainee.name)
    if record.save(act, window):
        said = translate("Proposals", "Easier week from {day} for {name}").format(
            day=words.short_day(first, today), name=trainee.name
        )
        record.say(said, MessageKind.DONE)
