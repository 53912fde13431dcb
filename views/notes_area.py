"""The notes work area: free text at the left, what was read of it at the right, nothing saved
before the coach takes it over.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import Final

from PySide6.QtCore import QLocale, Qt, QTimer
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from db.errors import StoreError
from desktop.planning import kept_drafts
from desktop.planning.exercise_search import find_exercises
from desktop.planning.note_files import CannotRead, read_note_file
from desktop.planning.noted import (
    Alternative,
    Answer,
    Doubt,
    Noted,
    ProposedDay,
    ProposedLine,
    Question,
    corrections,
    read_noted,
)
from desktop.planning.noted_sessions import (
    Takeable,
    draft_of_noted,
    is_recorded,
    take_noted,
    takeable,
)
from desktop.planning.session_draft import SessionDraft
from views import words
from views.exercise_words import exercise_kind
from views.file_dialogs import ask_source
from views.notes_page import NotesPage
from views.notes_texts import (
    Offered,
    no_answer_text,
    offered_answers,
    part_word,
    question_text,
    summary,
    take_word,
)
from views.record import MessageKind, Record
from views.sentences import worded
from views.session_texts import why_text
from views.theme import Theme
from views.work_area import WorkArea

_WAIT_MS: Final = 250


class NotesArea(WorkArea):
    """Reads what a trainee wrote. Each trainee's text stays while the program runs."""

    def __init__(
        self, record: Record, today: date, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(record, today, theme, parent)
        self.noted: Noted | None = None
        self.found = Takeable(())
        self._texts: dict[int, tuple[str, tuple[Answer, ...]]] = {}
        self._at = 0
        self._asked: Callable[[object], None] = lambda _value: None
        self._wait = QTimer(self)
        self._wait.setSingleShot(True)
        self._wait.setInterval(_WAIT_MS)
        self._wait.timeout.connect(self.read)
        self.page = NotesPage(theme, today)
        self.outer.addWidget(self.page)
        self._connect()
        self._show()

    def keys(self) -> tuple[tuple[str, str], ...]:
        """What keys do here."""
        return (
            (self.tr("Take an answer"), "1 … 9"),
            (self.tr("Next question, the one before"), "F8, Shift+F8"),
            (self.tr("Back to the text"), "Ctrl+T"),
            (self.tr("Open a text"), "Ctrl+Shift+O"),
            (self.tr("Take over what is certain"), "Ctrl+Return"),
        )

    # Reading

    def refresh(self) -> None:
        """Another trainee's text, or the same text over newer records."""
        if self.trainee_id is None:
            return
        trainee = self.record.repository.trainee(self.trainee_id)
        self.page.heading.say(self.tr("Notes"), trainee.name)
        text, answers = self._texts.get(self.trainee_id, ("", ()))
        if text != self.page.text.toPlainText():
            self.page.text.setPlainText(text)
            self.page.text.answers = answers
        self.read()

    def leave(self) -> None:
        """Keep the text for this trainee."""
        if self.trainee_id is not None:
            self._texts[self.trainee_id] = (self.page.text.toPlainText(), self.page.text.answers)

    def read(self) -> None:
        """Read the text as it stands."""
        self._wait.stop()
        text = self.page.text.toPlainText()
        self.noted, self.found = None, Takeable(())
        if self.trainee_id is not None and text.strip():
            try:
                self.noted = read_noted(
                    self.record.repository,
                    self.trainee_id,
                    text,
                    self.page.day.day or self.today,
                    self.page.text.answers,
                    day_first=_day_first(),
                )
                self.found = takeable(self.record.repository, self.noted, self.today)
            except StoreError as error:
                self.record.reported(error)
        self._at = min(self._at, max(0, len(self.questions) - 1))
        self._show()

    @property
    def questions(self) -> tuple[Question, ...]:
        """What is open, in the order of the text."""
        return self.noted.reading.questions if self.noted is not None else ()

    @property
    def question(self) -> Question | None:
        """The question that is asked now."""
        return self.questions[self._at] if self._at < len(self.questions) else None

    # Showing

    def _show(self) -> None:
        reading = self.noted.reading if self.noted is not None else None
        question = self.question
        self.page.text.show_reading(reading, question.span if question is not None else None)
        self.page.proposal.show_noted(self.noted, self._recorded)
        self.page.empty.setVisible(self.noted is None)
        self.page.proposal.setVisible(self.noted is not None)
        self.page.asking.setVisible(question is not None)
        if question is not None:
            self._show_question(question)
        unread = len(reading.unread) if reading is not None else 0
        self.page.said.setText(summary(self.found, len(self.questions), unread))
        word = take_word(self.found)
        self.page.take.setText(word)
        self.page.take.setAccessibleName(word)
        self.page.take.setEnabled(bool(self.found.days))
        self._show_place(self.page.text.textCursor().position())

    def _show_question(self, question: Question) -> None:
        assert self.noted is not None
        text = self.tr("Question {number} of {count}")
        place = text.format(
            number=words.number(self._at + 1), count=words.number(len(self.questions))
        )
        said = question_text(question, self.noted.reading.text)
        hint = "" if question.alternatives else no_answer_text(question)
        answers = [each for each, _ in self.answers_to(question)]
        self.page.asking.ask(place, said, hint, answers, several=len(self.questions) > 1)

    def _show_place(self, position: int) -> None:
        """Say in words what the stretch under the cursor was taken for."""
        parts = self.noted.reading.parts if self.noted is not None else ()
        part = next((p for p in parts if p.span.start <= position < p.span.end), None)
        doubtful = self.page.text.doubtful(position) is not None
        here = part_word(part.kind, doubtful=doubtful) if part is not None else ""
        self.page.place.setText(self.tr("here: {word}").format(word=here) if here else "")

    def _recorded(self, day: ProposedDay, line: ProposedLine) -> bool:
        assert self.noted is not None
        return is_recorded(self.record.repository, self.noted.trainee_id, day, line)

    def _name(self, key: str) -> str:
        return self.record.repository.exercise(key).name

    # Answering

    def answers_to(self, question: Question) -> Offered:
        """Answers in words; None: another exercise is to be chosen."""
        assert self.noted is not None
        return offered_answers(question, self.noted.reading.unit, self._name)

    def answer(self, place: int) -> None:
        """Take one of the answers offered for the question."""
        question = self.question
        if question is None:
            return
        meant = self.answers_to(question)[place][1]
        if meant is None:
            self._ask_exercise(lambda key: self._settle(question, Alternative(exercise=key)))
        else:
            self._settle(question, meant)

    def _settle(self, question: Question, meant: Alternative) -> None:
        given = question.answered(meant)
        self.page.text.answers = (*self.page.text.answers, given)
        self.read()
        focus = self.page.asking.list if self.question is not None else self.page.take
        focus.setFocus(Qt.FocusReason.OtherFocusReason)

    def step(self, by: int) -> None:
        """Ask the next question, or the one before."""
        if self.questions:
            self._at = (self._at + by) % len(self.questions)
            self._show()
            self._go_to_question()

    def _ask_about(self, question: Question) -> None:
        if question in self.questions:
            self._at = self.questions.index(question)
            self._show()
            self._go_to_question()

    def _go_to_question(self) -> None:
        if self.question is not None:
            self.page.text.show_span(self.question.span)
            self.page.asking.list.setFocus(Qt.FocusReason.OtherFocusReason)

    def _correct(self, line: ProposedLine) -> None:
        """The coach means another exercise by a name that was read."""
        name = line.entry.name
        if name is None:
            return

        def said(key: str) -> None:
            answer = Answer(Doubt.EXERCISE, name, Alternative(exercise=key))
            kept = [a for a in self.page.text.answers if (a.doubt, a.span) != (answer.doubt, name)]
            self.page.text.answers = (*kept, answer)
            self.read()

        self._ask_exercise(said)

    def _ask_exercise(self, then: Callable[[str], None]) -> None:
        known = self.record.repository.exercises()

        def find(text: str) -> list[tuple[str, object]]:
            found = find_exercises(text, known)
            return [(f"{each.name}{words.DOT}{exercise_kind(each)}", each.key) for each in found]

        self._asked = lambda value: then(str(value))
        title = self.tr("Which exercise is meant?")
        self.page.chooser.ask(title, self.tr("A few letters of its name"), find)

    # Taking over

    def take_over(self) -> None:
        """One day opens in the session form, filled; several are saved as one step."""
        noted, found, trainee_id = self.noted, self.found, self.trainee_id
        if noted is None or trainee_id is None or not found.days:
            return
        names = corrections(noted, self.page.text.answers)
        try:
            draft = self._draft(trainee_id, found)
            if draft is not None and not self._keep(draft):
                return
            days = () if draft is not None else found.days
            changes, before = take_noted(self.record.repository, trainee_id, days, names)
        except StoreError as error:
            self.record.reported(error)
            return
        self.page.text.clear()
        self.page.text.answers = ()
        if changes.saved:
            self.record.took(self.tr("Take over notes"), changes, before)
        if draft is not None:
            self.record.say(self.tr("Look it over, and save it with Ctrl+Return."))
            self.draft_wanted.emit(draft)
        else:
            text = self.tr("Saved {sets} on {count} days.")
            counted = text.format(sets=words.sets(found.sets), count=words.number(len(found.days)))
            self.record.say(counted, MessageKind.DONE)

    def _keep(self, draft: SessionDraft) -> bool:
        """Keep the draft for the form; not over one that is being typed."""
        if kept_drafts.kept(self.record.repository, draft) is not None:
            text = self.tr("The session of {day} is being typed: save or clear it first.")
            self.record.say(text.format(day=words.short_day(draft.day)), MessageKind.ERROR)
            return False
        kept_drafts.keep(self.record.repository, draft)
        return True

    def _draft(self, trainee_id: int, found: Takeable) -> SessionDraft | None:
        if len(found.days) != 1:
            return None
        unit = self.record.repository.trainee(trainee_id).unit
        return draft_of_noted(
            self.record.repository,
            trainee_id,
            found.days[0],
            lambda slot: why_text(slot, unit, self.today),
            QLocale().decimalPoint(),
        )

    def ask_file(self) -> None:
        """Ask for a text file, and show it."""
        kinds = (self.tr("Text (*.txt *.md)"), self.tr("All files (*)"))
        ask_source(self, self.tr("Open notes"), kinds, self.open_file)

    def open_file(self, path: Path) -> None:
        """Show the text of a file."""
        try:
            text = read_note_file(path)
        except (CannotRead, OSError) as error:
            self.record.say(worded(error), MessageKind.ERROR)
            return
        self.page.text.answers = ()
        self.page.text.setPlainText(text)
        self.read()

    # Keys and signals

    def _connect(self) -> None:
        self.page.text.edited.connect(self._wait.start)
        self.page.text.stood.connect(self._show_place)
        self.page.day.committed.connect(self.read)
        self.page.open.clicked.connect(self.ask_file)
        self.page.take.clicked.connect(self.take_over)
        self.page.asking.answered.connect(self.answer)
        self.page.asking.stepped.connect(self.step)
        self.page.proposal.question_wanted.connect(self._ask_about)
        self.page.proposal.exercise_wanted.connect(self._correct)
        self.page.chooser.chosen.connect(lambda value: self._asked(value))
        for key, act in {
            "Ctrl+Return": self.take_over,
            "Ctrl+T": lambda: self.page.text.setFocus(Qt.FocusReason.ShortcutFocusReason),
        }.items():
            shortcut = QShortcut(QKeySequence(key), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(act)

    def showEvent(self, event: object) -> None:
        super().showEvent(event)
        self.page.text.setFocus(Qt.FocusReason.OtherFocusReason)


def _day_first() -> bool:
    order = QLocale().dateFormat(QLocale.FormatType.ShortFormat).upper()
    return order.find("D") < order.find("M")
