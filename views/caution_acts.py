"""A caution in words with what can be done about it, and doing it as one act."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QCoreApplication

from desktop.planning.caution_sessions import sessions_behind
from desktop.planning.caution_ways import Way, ways_of
from desktop.planning.cautions import dismissal
from desktop.planning.history import History
from desktop.training.exercises import Exercise
from desktop.training.recovery import Caution
from desktop.training.session import Session
from views.caution_texts import caution_text, short_caution
from views.record import MessageKind, Record
from views.way_texts import way_text

translate = QCoreApplication.translate


@dataclass(frozen=True, slots=True)
class CautionWords:
    """A caution as it is shown: its sentence, its ways with their words, its sessions."""

    caution: Caution
    sentence: str
    ways: Sequence[tuple[Way, str]]
    sessions: Sequence[Session]

    @property
    def in_one_step(self) -> bool:
        """Whether one of the ways changes something by itself."""
        return any(way.changed is not None for way, _ in self.ways)


def words_of(record: Record, history: History, caution: Caution, today: date) -> CautionWords:
    """What is said of ``caution``, and what can be done."""
    unit, exercise = history.trainee.unit, _exercise(caution, history)
    ways = [(way, way_text(way, unit, exercise)) for way in ways_of(history, caution, today)]
    sentence = sentence_of(record, history, caution, today)
    return CautionWords(caution, sentence, ways, sessions_behind(history, caution, today))


def sentence_of(record: Record, history: History, caution: Caution, today: date) -> str:
    """The whole sentence where everything in it is known, else in short."""
    limits, unit = history.library.limits, history.trainee.unit
    name = record.line_names(history.trainee_id)(caution.line_id)
    known = dict(caution.evidence)
    spoken = all(
        each in known and not str(known[each]).startswith("weekday")
        for each in limits[caution.limit].placeholders
    )
    if spoken:
        return caution_text(caution, limits, unit, today, name)
    return short_caution(caution, name)


def take(record: Record, history: History, caution: Caution, way: Way, today: date) -> bool:
    """Do what ``way`` says, as one act that is undone as one; False where it changes nothing or
    could not be saved. What was seen and will still be seen is set aside with it.
    """
    if way.changed is None:
        return False
    said = way_text(way, history.trainee.unit, _exercise(caution, history))
    name = record.line_names(history.trainee_id)(caution.line_id)
    text = translate("CautionPart", "{what} ({who})").format(
        what=said, who=name or history.trainee.name
    )
    aside = [dismissal(caution, history.trainee_id, today, said)] if way.settles else []
    if record.save(text, way.changed, *aside) is None:
        return False
    record.say(text, MessageKind.DONE)
    return True


def _exercise(caution: Caution, history: History) -> Exercise | None:
    if caution.line_id is None:
        return None
    return history.exercise_of(history.line(caution.line_id))
