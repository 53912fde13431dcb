"""Other activities of a week in rows: typed, changed and removed where they stand."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from decimal import Decimal

from PySide6.QtCore import QCoreApplication, QStringListModel, Qt, Signal
from PySide6.QtWidgets import QCompleter, QGridLayout, QWidget

from desktop.training.session import Activity
from desktop.training.workload import MOST_EFFORT, MOST_MINUTES
from views.blocks import Label, WordButton
from views.date_field import DateField
from views.number_fields import FieldError, NumberField, WholeField, Wrong
from views.rows_editor import TextField
from views.theme import Theme

translate = QCoreApplication.translate


class ActivityRow:
    """The fields of one activity; ``activity`` None is the empty row for a new one."""

    def __init__(self, today: date, known: QStringListModel, activity: Activity | None) -> None:
        self.activity = activity
        self.day = DateField(translate("Activities", "Day of the activity"), today)
        self.name = TextField(translate("Activities", "Name of the activity"))
        self.minutes = WholeField(
            translate("Activities", "Minutes of the activity"), 1, MOST_MINUTES
        )
        self.effort = NumberField(
            translate("Activities", "Effort of the activity, 0 to 10"), 0, MOST_EFFORT, decimals=1
        )
        self.remove = WordButton(translate("Activities", "Remove"), flush=True, tone="muted")
        completer = QCompleter(known, self.name)
        completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        completer.setFilterMode(Qt.MatchFlag.MatchContains)
        self.name.setCompleter(completer)

    @property
    def fields(self) -> tuple[QWidget, ...]:
        """The fields in the order in which they are typed."""
        return (self.name, self.day, self.minutes, self.effort)

    def show(self, day: date) -> None:
        """Show the activity, or an empty row on ``day``."""
        shown = self.activity
        self.name.set_value(shown.name if shown else "")
        self.day.set_day(shown.day if shown else day)
        self.minutes.set_value(shown.minutes if shown else None)
        self.effort.set_value(None if shown is None else Decimal(str(shown.effort)))

    def read(self, trainee_id: int) -> Activity | None:
        """The activity as typed; None while something is missing or wrong."""
        day, minutes, effort = self.day.day, self.minutes.whole, self.effort.value
        name = " ".join(self.name.text().split())
        if not name or day is None or minutes is None:
            return None
        if effort is None or isinstance(effort, Wrong):
            return None
        base = self.activity or Activity(trainee_id, day, name, minutes, 0.0)
        return replace(base, day=day, name=name, minutes=minutes, effort=float(effort))


class ActivityRows(QWidget):
    """Rows under headings, the last one empty. ``saved(Activity)`` when one stands complete and
    is another than before; ``removed(Activity)``.
    """

    saved = Signal(object)
    removed = Signal(object)

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme, self._today = theme, today
        self._trainee_id = 0
        self._day = today
        self._known = QStringListModel(self)
        self.rows: list[ActivityRow] = []
        self.error = FieldError()
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setColumnStretch(0, 1)
        headings = (self.tr("activity"), self.tr("day"), self.tr("min"), self.tr("effort"))
        for place, text in enumerate(headings):
            self._grid.addWidget(Label(text, "small", "muted"), 0, place)
        self._space()
        theme.changed.connect(self._space)

    @property
    def new(self) -> ActivityRow:
        """The empty row."""
        return self.rows[-1]

    @property
    def widgets(self) -> tuple[QWidget, ...]:
        """Everything that takes the cursor, in the order in which it should."""
        return tuple(widget for row in self.rows for widget in (*row.fields, row.remove))

    def show_activities(
        self, trainee_id: int, activities: Sequence[Activity], names: Sequence[str], day: date
    ) -> None:
        """Show ``activities``; a new one is offered on ``day``, with ``names`` typed before."""
        kept = trainee_id == self._trainee_id and day == self._day
        self._trainee_id, self._day = trainee_id, day
        self._known.setStringList(list(names))
        shown = [row.activity.id for row in self.rows[:-1] if row.activity is not None]
        if not kept or shown != [each.id for each in activities]:
            self._rebuild(activities)
        for row, activity in zip(self.rows, activities, strict=False):
            if row.activity != activity:
                row.activity = activity
                row.show(day)

    def begin(self) -> None:
        """Put the cursor into the empty row."""
        self.new.name.setFocus(Qt.FocusReason.OtherFocusReason)

    def _rebuild(self, activities: Sequence[Activity]) -> None:
        for row in self.rows:
            for widget in (*row.fields, row.remove):
                self._grid.removeWidget(widget)
                widget.hide()
                widget.deleteLater()
        self._grid.removeWidget(self.error)
        self.rows = [self._add(each) for each in (*activities, None)]
        self._grid.addWidget(self.error, len(self.rows) + 1, 0, 1, 5)
        self._space()

    def _add(self, activity: Activity | None) -> ActivityRow:
        row = ActivityRow(self._today, self._known, activity)
        row.show(self._day)
        line = self._grid.rowCount()
        for place, field in enumerate(row.fields):
            self._grid.addWidget(field, line, place)
        self._grid.addWidget(row.remove, line, len(row.fields))
        row.remove.setVisible(activity is not None)
        if activity is not None:
            spoken = self.tr("Remove {name}").format(name=activity.name)
            row.remove.setAccessibleName(spoken)
        for field in (row.day, row.minutes, row.effort):
            field.bind_error(self.error)
        for signal in (
            row.name.committed, row.day.committed, row.minutes.committed, row.effort.committed
        ):  # fmt: skip
            signal.connect(lambda row=row: self._take(row))
        row.remove.clicked.connect(lambda _on=False, row=row: self.removed.emit(row.activity))
        if activity is None:
            row.name.setPlaceholderText(self.tr("Another activity"))
        return row

    def _take(self, row: ActivityRow) -> None:
        typed = row.read(self._trainee_id)
        if typed is None or typed == row.activity:
            return
        self.error.setText("")
        if row.activity is None:
            row.show(self._day)
        self.saved.emit(typed)

    def _space(self) -> None:
        px = self._theme.px
        self._grid.setHorizontalSpacing(px(8))
        self._grid.setVerticalSpacing(px(4))
        for row in self.rows:
            row.name.setMinimumWidth(px(60))
            row.day.setFixedWidth(px(96))
            row.minutes.setFixedWidth(px(46))
            row.effort.setFixedWidth(px(46))
