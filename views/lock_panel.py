"""The lock: after idle minutes a panel covers the window until the passphrase is typed.

A file without a passphrase is only hidden from passers-by, and the panel says so.
"""

from __future__ import annotations

import hmac
from typing import Final

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtWidgets import QApplication, QFrame, QMainWindow, QVBoxLayout, QWidget

from views.blocks import Label, MainButton
from views.passphrase import hidden_field
from views.theme import Theme

_SIGNS_OF_LIFE: Final = frozenset(
    {
        QEvent.Type.KeyPress,
        QEvent.Type.MouseButtonPress,
        QEvent.Type.MouseMove,
        QEvent.Type.Wheel,
        QEvent.Type.TouchBegin,
        QEvent.Type.InputMethod,
    }
)


class IdleWatch(QObject):
    """``idle`` when nothing was typed or pointed at for so many minutes."""

    idle = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self.idle)

    def wait(self, minutes: float) -> None:
        """Begin to count; 0 stops it."""
        application = QApplication.instance()
        assert application is not None
        application.removeEventFilter(self)
        self._timer.stop()
        if minutes > 0:
            self._timer.setInterval(round(minutes * 60_000))
            self._timer.start()
            application.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() in _SIGNS_OF_LIFE:
            self._timer.start()
        return False


class LockPanel(QFrame):
    """Covers ``window``, whose menus and parts do nothing meanwhile; ``opened`` when it goes."""

    opened = Signal()

    def __init__(self, theme: Theme, window: QMainWindow, passphrase: str) -> None:
        super().__init__(window)
        self._window, self._passphrase = window, passphrase
        self._hidden: list[QWidget] = []
        content = window.centralWidget()
        assert content is not None, "a window without content hides nothing"
        self._content = content
        self._focus = window.focusWidget()
        self.setProperty("kind", "page")
        self.setAutoFillBackground(True)
        self.field = hidden_field(self.tr("Passphrase"))
        self.field.setVisible(bool(passphrase))
        self.field.setMaximumWidth(theme.px(320))
        self.field.returnPressed.connect(self._try)
        self.why_not = Label(tone="stop")
        self.go_on = MainButton(self.tr("Go on"))
        self.go_on.setDefault(True)
        self.go_on.clicked.connect(self._try)
        said = (
            self.tr("Type the passphrase to go on.")
            if passphrase
            else self.tr(
                "The window is only hidden: the data file has no passphrase, so anybody can go on."
            )
        )
        column = QVBoxLayout(self)
        column.setSpacing(theme.px(12))
        column.addStretch(1)
        for widget in (Label(self.tr("Locked"), "title"), Label(said), self.field, self.why_not):
            column.addWidget(widget, 0, Qt.AlignmentFlag.AlignHCenter)
        column.addWidget(self.go_on, 0, Qt.AlignmentFlag.AlignHCenter)
        column.addStretch(1)
        self._cover()

    def _cover(self) -> None:
        window = self._window
        window.menuBar().setEnabled(False)
        self._content.hide()
        for other in QApplication.topLevelWidgets():
            if other is not window and other.isVisible():
                other.hide()
                self._hidden.append(other)
        window.installEventFilter(self)
        self.setGeometry(window.rect())
        self.show()
        self.raise_()
        (self.field if self._passphrase else self.go_on).setFocus()

    def _try(self) -> None:
        typed = self.field.text().encode("utf-8", "surrogatepass")
        if not hmac.compare_digest(typed, self._passphrase.encode("utf-8", "surrogatepass")):
            self.field.clear()
            self.why_not.setText(self.tr("That is not the passphrase."))
            return
        window = self._window
        window.removeEventFilter(self)
        window.menuBar().setEnabled(True)
        self._content.show()
        for other in self._hidden:
            other.show()
        if self._focus is not None:
            self._focus.setFocus()
        self.hide()
        self.deleteLater()
        self.opened.emit()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if watched is self._window and event.type() == QEvent.Type.Resize:
            self.setGeometry(self._window.rect())
        return False
