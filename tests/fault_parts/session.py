"""Killed (kill -9) while a session is typed by real keys: nothing typed or saved is lost.

The child types fields of random length and tells each one it has finished; now and then it saves.
Afterwards the file is sound, every saved session is whole, the draft holds every field finished
and at most one more, and a window opened on the file shows that draft.
"""

from __future__ import annotations

import json
import os
import shutil
from collections.abc import Iterator
from contextlib import closing
from dataclasses import dataclass, field
from datetime import date, timedelta
from pathlib import Path
from random import Random

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from db.database import Database
from db.repository import Repository
from desktop.planning import kept_drafts
from desktop.planning.session_draft import Field, SessionDraft
from desktop.planning.typed_cells import Row
from desktop.training.session import Session
from tests.benches.people import TODAY, many_trainees
from tests.fault_parts import child
from tests.fault_parts.child import Ended, Tell

FULL = 200
SHARE = 5

_MONDAY = TODAY + timedelta(days=7 - TODAY.weekday())
_DAYS = tuple(_MONDAY + timedelta(days=each) for each in (0, 3, 7))
_LATER = _MONDAY + timedelta(days=30)
_SIZE = (6, 3)


@dataclass(slots=True)
class Told:
    """What the child said of one day: fields finished, whether saving began and was done."""

    fields: dict[str, str] = field(default_factory=dict)
    saving: bool = False
    saved: bool = False


@dataclass(frozen=True, slots=True)
class Shown:
    """What stands in a session form: the day as its number, and the text of each place."""

    day: int
    texts: dict[str, str]


def run(count: int, chance: Random, folder: Path) -> Iterator[str]:
    """Kill the typing ``count`` times at moments spread over its whole length."""
    if not child.CAN_FORK:
        yield "not on this system"
        return
    template = many_trainees(folder / "template.db", trainees=1, weeks=4)
    seconds = _round(template, folder, 0, None).seconds
    midway = fields = saved = drafts = 0
    for number in range(1, count + 1):
        ended = _round(template, folder, number, chance.uniform(seconds / 4, seconds))
        days = _days_told(ended.told)
        midway += ended.killed
        fields += sum(len(day.fields) for day in days.values())
        saved += sum(day.saved for day in days.values())
        drafts += any(not day.saved and day.fields for day in days.values())
    yield (
        f"killed {midway} of {count} times within {seconds * 1000:.0f} ms: {fields} fields typed,"
        f" {saved} sessions saved, {drafts} drafts came back, nothing lost"
    )


def _round(template: Path, folder: Path, number: int, kill_after: float | None) -> Ended:
    path = folder / f"{number}.db"
    shutil.copy(template, path)
    ended = child.run(lambda tell: _type(path, number, tell), kill_after)
    assert ended.killed or ended.status == 0, "typing failed by itself"
    _check(path, _days_told(ended.told))
    for each in folder.glob(f"{number}.db*"):
        each.unlink()
    return ended


def _type(path: Path, seed: int, tell: Tell) -> None:
    """Type three sessions, field by field."""
    from PySide6.QtCore import Qt, qInstallMessageHandler
    from PySide6.QtTest import QTest
    from PySide6.QtWidgets import QApplication

    from views.record import Record
    from views.session_form import SessionForm
    from views.theme import Scheme, Theme

    chance = Random(seed)
    qInstallMessageHandler(lambda *_: None)
    application = QApplication([])
    form = SessionForm(
        Record(Repository(Database.open(path))), _LATER, Theme(Scheme.LIGHT, calm=True)
    )
    form.show()
    form.activateWindow()
    application.processEvents()
    form.show_trainee(1)

    def write(text: str) -> None:
        for letter in text:
            target = application.focusWidget()
            assert target is not None
            QTest.keyClick(target, letter)  # type: ignore[call-overload]

    def press(key: Qt.Key, modifier: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
        target = application.focusWidget()
        assert target is not None
        QTest.keyClick(target, key, modifier)

    for day in _DAYS:
        form.open_day(day)
        for line in range(_SIZE[0]):
            for index in range(_SIZE[1]):
                text = str(chance.randint(3, 12))
                write(text)
                press(Qt.Key.Key_Return)
                _say(tell, day, f"{line}.{index}", text)
        form.typing.foot.go_to(Field.NOTE)
        text = "a long word " * chance.randint(1, 4)
        write(text)
        form.typing.foot.go_to(Field.EFFORT)
        _say(tell, day, "note", text)
        tell(json.dumps({"day": day.toordinal(), "saving": True}))
        press(Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
        assert form.showing_outcomes, "the session was not saved"
        tell(json.dumps({"day": day.toordinal(), "saved": True}))


def _say(tell: Tell, day: date, place: str, text: str) -> None:
    tell(json.dumps({"day": day.toordinal(), "place": place, "text": text}))


def _days_told(lines: tuple[str, ...]) -> dict[date, Told]:
    days: dict[date, Told] = {}
    for line in lines:
        said = json.loads(line)
        day = days.setdefault(date.fromordinal(said["day"]), Told())
        if "place" in said:
            day.fields[said["place"]] = said["text"]
        day.saving |= "saving" in said
        day.saved |= "saved" in said
    return days


def _check(path: Path, days: dict[date, Told]) -> None:
    with closing(Database.open(path, create=False)) as database:
        problems = database.quick_check()
        assert not problems, f"the file is damaged: {problems}"
        repository = Repository(database)
        sessions = {one.day: one for one in repository.sessions(1, _MONDAY)}
        drafts = {one.day: one for one in kept_drafts.all_kept(repository, 1)}
        for day, told in days.items():
            session, draft = sessions.get(day), drafts.get(day)
            if told.saving:
                assert (session is None) != (draft is None), f"{day}: {session}, {draft}"
                assert session is not None or not told.saved, f"{day}: a saved session is gone"
            else:
                assert session is None, f"{day}: saved though nobody asked"
            typed = _of_session(session) if session else _of_draft(draft) if draft else {}
            _compare(day, told, typed)
        left = kept_drafts.at_work(repository)
    if left is not None:
        _compare_texts(left, _shown_again(path))


def _compare(day: date, told: Told, typed: dict[str, str]) -> None:
    for place, text in told.fields.items():
        assert typed.get(place, "").strip() == text.strip(), (
            f"{day}: {place} holds {typed.get(place)!r}, typed was {text!r}"
        )
    more = [place for place, text in typed.items() if text and place not in told.fields]
    assert len(more) <= 1, f"{day}: fields beyond the one being typed: {more}"


def _of_draft(draft: SessionDraft) -> dict[str, str]:
    cells = {
        f"{line}.{index}": each.text(Row.DONE)
        for line, part in enumerate(draft.lines)
        for index, each in enumerate(part.sets)
    }
    return cells | {"note": draft.text(Field.NOTE)}


def _of_session(session: Session) -> dict[str, str]:
    cells = {
        f"{line}.{index}": str(each.reps)
        for line, part in enumerate(session.lines)
        for index, each in enumerate(part.sets)
    }
    return cells | {"note": session.note}


def _shown_again(path: Path) -> Shown | None:
    """What a window opened on the file shows in its session form, in a process of its own."""
    ended = child.run(lambda tell: _open_window(path, tell))
    assert ended.status == 0, "the window did not open again"
    return Shown(**json.loads(ended.told[-1])) if ended.told else None


def _open_window(path: Path, tell: Tell) -> None:
    from PySide6.QtWidgets import QApplication

    from views.gallery import ForgottenSettings
    from views.main_window import MainWindow
    from views.record import Record
    from views.session_form import SessionForm
    from views.theme import Scheme, Theme

    application = QApplication([])
    theme = Theme(Scheme.LIGHT, calm=True)
    record = Record(Repository(Database.open(path)))
    window = MainWindow(record, _LATER, theme, ForgottenSettings())
    window.show()
    application.processEvents()
    area = window.areas.area
    if isinstance(area, SessionForm) and area.draft is not None:
        told = {"day": area.draft.day.toordinal(), "texts": _of_draft(area.draft)}
        tell(json.dumps(told))


def _compare_texts(left: SessionDraft, shown: Shown | None) -> None:
    assert shown is not None, "no draft was shown again"
    assert date.fromordinal(shown.day) == left.day
    assert shown.texts == _of_draft(left), "another draft was shown than was kept"
