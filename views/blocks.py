"""The small parts that every screen is made of: labels, words to act on, blocks, rules."""

from __future__ import annotations

from math import ceil
from typing import Literal

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QFontMetricsF, QKeyEvent, QKeySequence, QShortcutEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from views.theme import Theme

Size = Literal["title", "asked", "heading", "answer", "body", "small"]
Tone = Literal["", "text", "muted", "accent", "caution", "stop", "good"]


class Label(QLabel):
    """Plain text in a size of the scale and the colour of a role; markup in it is shown as is."""

    def __init__(
        self,
        text: str = "",
        size: Size = "body",
        tone: Tone = "",
        *,
        wrap: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setProperty("scale", size)
        self.setProperty("tone", tone)
        self.setWordWrap(wrap)
        self.setText(text)

    def set_tone(self, tone: Tone) -> None:
        """Show the text in another role's colour."""
        if self.property("tone") != tone:
            self.setProperty("tone", tone)
            restyle(self)


class OneLine(Label):
    """A label that asks for one line, and goes on in the next where it does not get it."""

    def __init__(self, text: str = "", size: Size = "body", tone: Tone = "") -> None:
        super().__init__(text, size, tone, wrap=True)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)

    def sizeHint(self) -> QSize:
        metrics = QFontMetricsF(self.font())
        return QSize(ceil(metrics.horizontalAdvance(self.text())) + 1, ceil(metrics.lineSpacing()))


class PromptButton(QPushButton):
    """A button that acts at once: on Return as on Space, and on its shortcut without the pause of
    an animated click, in which keys typed right after it would go astray.
    """

    def event(self, event: QEvent) -> bool:
        if isinstance(event, QShortcutEvent) and not event.isAmbiguous() and self.isEnabled():
            self.click()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.click()
            return
        super().keyPressEvent(event)


class WordButton(PromptButton):
    """An action as a word, with its key beside it where it has one ("All as asked  F9").

    ``shortcut`` acts in the whole window while the button is shown and enabled. ``flush``: the
    word begins at the edge, in line with what stands above it.
    """

    def __init__(
        self,
        text: str,
        shortcut: str = "",
        *,
        strong: bool = False,
        flush: bool = False,
        tone: Tone = "",
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._key = shortcut
        self.setProperty("kind", "word")
        self.setProperty("strong", "true" if strong else "false")
        self.setProperty("flush", "true" if flush else "false")
        self.setProperty("tone", tone)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
        self.setAutoDefault(False)
        self.set_words(text)

    def set_words(self, text: str) -> None:
        """Say something else; the key stays."""
        shown = text.replace("&", "&&")
        if self._key:
            native = QKeySequence(self._key).toString(QKeySequence.SequenceFormat.NativeText)
            shown = f"{shown}  {native}"
        self.setText(shown)
        self.setAccessibleName(text)
        if self._key:  # setText takes the shortcut away
            self.setShortcut(QKeySequence(self._key))

    def event(self, event: QEvent) -> bool:
        """The key acts at once: Qt would first show a click for a tenth of a second, and what is
        typed meanwhile would go astray.
        """
        if isinstance(event, QShortcutEvent) and not event.isAmbiguous():
            self.click()
            return True
        return super().event(event)


class MainButton(PromptButton):
    """The one most likely next action of a screen or panel."""

    def __init__(self, text: str, parent: QWidget | None = None) -> None:
        super().__init__(text.replace("&", "&&"), parent)
        self.setProperty("kind", "main")
        self.setAccessibleName(text)
        self.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)


class Block(QFrame):
    """A surface with a hairline round it; ``body`` is the layout to fill."""

    def __init__(
        self, theme: Theme, *, across: bool = False, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setProperty("kind", "block")
        self._theme = theme
        self.body: QBoxLayout = QHBoxLayout(self) if across else QVBoxLayout(self)
        self._space()
        theme.changed.connect(self._space)

    def _space(self) -> None:
        inside = self._theme.grid(2)
        self.body.setContentsMargins(inside, self._theme.px(12), inside, self._theme.px(12))
        self.body.setSpacing(self._theme.grid())


class Page(QScrollArea):
    """The ground of a work area: scrolls down where it must, and across with very large text; 24
    at the edges, 12 between blocks.

    Fill ``body``.
    """

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        ground = QWidget()
        ground.setProperty("kind", "page")
        self.body = QVBoxLayout(ground)
        self.setWidget(ground)
        self._space()
        theme.changed.connect(self._space)
        self.verticalScrollBar().rangeChanged.connect(lambda _least, _most: self._space())

    def _space(self) -> None:
        """The scroll bar stands inside the edge, so that blocks end where the banner ends."""
        edge = self._theme.grid(3)
        bar = self.verticalScrollBar()
        inside = bar.sizeHint().width() if bar.maximum() > 0 else 0
        self.body.setContentsMargins(edge, self._theme.grid(2), edge - inside, self._theme.grid(2))
        self.body.setSpacing(self._theme.px(12))


class Heading(QWidget):
    """A screen's title, what belongs to it in muted words, and its actions at the right."""

    def __init__(self, theme: Theme, *actions: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.title = OneLine(size="title")
        self.detail = Label(tone="muted", wrap=True)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(theme.grid(3))
        row.addWidget(self.title)
        row.addWidget(self.detail, 1)
        for action in actions:
            row.addWidget(action)

    def say(self, title: str, detail: str = "") -> None:
        """Show a title and what belongs to it."""
        self.title.setText(title)
        self.detail.setText(detail)


def rule(parent: QWidget | None = None) -> QFrame:
    """A hairline across."""
    line = QFrame(parent)
    line.setProperty("kind", "rule")
    line.setFixedHeight(1)
    return line


def restyle(widget: QWidget) -> None:
    """Let the style sheet look again at ``widget`` after a dynamic property has changed."""
    style = widget.style()
    style.unpolish(widget)
    style.polish(widget)
