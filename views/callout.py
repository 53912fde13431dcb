"""A callout: a short word right under a field, over what lies there, so that nothing moves."""

from __future__ import annotations

from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QFrame, QHBoxLayout, QSizePolicy, QWidget

from views.blocks import Label, restyle
from views.theme import Theme


class Callout(QFrame):
    """Says what is wrong (stop) or doubtful (caution) with one field of ``ground``."""

    def __init__(self, theme: Theme, ground: QWidget) -> None:
        super().__init__(ground)
        self._theme, self._ground = theme, ground
        self.setProperty("kind", "callout")
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self._text = Label(size="small")
        row = QHBoxLayout(self)
        row.setContentsMargins(theme.px(6), theme.px(3), theme.px(6), theme.px(3))
        row.addWidget(self._text)
        self.hide()

    @property
    def text(self) -> str:
        """What is said; "" while hidden."""
        return self._text.text() if not self.isHidden() else ""

    def say(self, field: QWidget, text: str, *, doubt: bool = False) -> None:
        """Say ``text`` under ``field``; "" hides it."""
        if not text:
            self.hide()
            return
        self._text.setText(text)
        tone = "caution" if doubt else "stop"
        if self.property("tone") != tone:
            self.setProperty("tone", tone)
            self._text.set_tone("caution" if doubt else "stop")
            restyle(self)
        self.adjustSize()
        ground = self._ground
        below = field.mapTo(ground, QPoint(0, field.height() + self._theme.px(2)))
        left = min(below.x(), ground.width() - self.width() - self._theme.px(4))
        top = below.y()
        if top + self.height() > ground.height():
            top = field.mapTo(ground, QPoint(0, 0)).y() - self.height() - self._theme.px(2)
        self.move(max(0, left), top)
        self.show()
        self.raise_()
