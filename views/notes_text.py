"""The notes as they were written, with what was read, doubtful and not read marked by shape."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtGui import QTextCharFormat, QTextCursor
from PySide6.QtWidgets import QPlainTextEdit, QTextEdit, QWidget

from desktop.planning.noted import Answer, PartKind, Question, Reading, Span
from views.theme import Theme

_SHAPES = QTextCharFormat.UnderlineStyle


class NotesText(QPlainTextEdit):
    """Text to paste and change. ``edited`` when the words changed; ``stood(position)`` when the
    cursor moved. Underlines: a line for what was read, a wave for what is doubtful, dashes for
    words that nothing came of.
    """

    edited = Signal()
    stood = Signal(int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._reading: Reading | None = None
        self._asked: Span | None = None
        self._last = ""
        self.answers: tuple[Answer, ...] = ()
        self.setAccessibleName(self.tr("Notes of the trainee"))
        self.setTabChangesFocus(True)
        self.setUndoRedoEnabled(True)
        self.textChanged.connect(self._changed)
        self.cursorPositionChanged.connect(lambda: self.stood.emit(self.textCursor().position()))
        theme.changed.connect(self._mark)

    def show_reading(self, reading: Reading | None, asked: Span | None) -> None:
        """Mark what was read; ``asked``: the stretch that the open question is about."""
        self._reading, self._asked = reading, asked
        self._mark()

    def show_span(self, span: Span) -> None:
        """Scroll to a stretch."""
        cursor = self.textCursor()
        cursor.setPosition(min(self._units(span.start), len(self.toPlainText())))
        self.setTextCursor(cursor)
        self.ensureCursorVisible()

    def doubtful(self, position: int) -> Question | None:
        """The question that a place of the text belongs to."""
        questions = self._reading.questions if self._reading is not None else ()
        return next((q for q in questions if q.span.start <= position <= q.span.end), None)

    def _mark(self) -> None:
        reading = self._reading
        if reading is None or reading.text != self.toPlainText():
            self.setExtraSelections([])
            return
        marks = [
            self._selection(part.span, *self._look(part.kind))
            for part in reading.parts
            if part.kind is not PartKind.PLAIN
        ]
        for question in reading.questions:
            marks.append(self._selection(question.span, _SHAPES.WaveUnderline, "caution"))
        if self._asked is not None:
            mark = self._selection(self._asked, _SHAPES.WaveUnderline, "caution")
            mark.format.setBackground(self._theme.colour("caution_soft"))
            marks.append(mark)
        self.setExtraSelections(marks)

    def _look(self, kind: PartKind) -> tuple[QTextCharFormat.UnderlineStyle, str]:
        if kind is PartKind.UNREAD:
            return _SHAPES.DashUnderline, "muted"
        return _SHAPES.SingleUnderline, "accent"

    def _selection(
        self, span: Span, shape: QTextCharFormat.UnderlineStyle, tone: str
    ) -> QTextEdit.ExtraSelection:
        mark = QTextEdit.ExtraSelection()
        cursor = QTextCursor(self.document())
        cursor.setPosition(self._units(span.start))
        cursor.setPosition(self._units(span.end), QTextCursor.MoveMode.KeepAnchor)
        look = QTextCharFormat()
        look.setUnderlineStyle(shape)
        look.setUnderlineColor(self._theme.colour(tone))
        mark.cursor, mark.format = cursor, look
        return mark

    def _units(self, position: int) -> int:
        """A place in the text as Qt counts it: some characters are two there."""
        text = self._reading.text if self._reading is not None else ""
        return position + sum(1 for each in text[:position] if ord(each) > 0xFFFF)

    def _changed(self) -> None:
        """Answers stay with their words: those behind a change move, others are asked again."""
        old, new = self._last, self.toPlainText()
        if old == new:
            return  # only how it looks changed
        self._last = new
        self.answers = moved_answers(self.answers, old, new)
        self.edited.emit()


def moved_answers(answers: Sequence[Answer], old: str, new: str) -> tuple[Answer, ...]:
    """The answers to ``old`` that still hold in ``new``, at their places there."""
    least = min(len(old), len(new))
    at = next((n for n in range(least) if old[n] != new[n]), least)
    after = next((n for n in range(least - at) if old[-1 - n] != new[-1 - n]), least - at)
    end, by = len(old) - after, len(new) - len(old)
    kept = []
    for answer in answers:
        span = answer.span
        if span.end <= at:
            kept.append(answer)
        elif span.start >= end:
            there = Span(span.start + by, span.end + by)
            kept.append(Answer(answer.doubt, there, answer.meant))
    return tuple(kept)
