"""The order in which Tab goes through what was added to a screen later."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget


def put_before(field: QWidget, widgets: Sequence[QWidget]) -> None:
    """Let Tab reach ``widgets``, in their order, right before ``field``; all in one window."""
    before = _previous(field)
    while before is not field and (
        before in widgets or not before.focusPolicy() & Qt.FocusPolicy.TabFocus
    ):
        before = _previous(before)
    for widget in widgets:
        QWidget.setTabOrder(before, widget)
        before = widget


def _previous(widget: QWidget) -> QWidget:
    return widget.previousInFocusChain() or widget  # one alone is its own neighbour
