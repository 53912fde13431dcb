"""The desk: who trains today, who needs attention and why; or what to do first."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QWidget

from db.changes import Changes
from desktop.planning.roster import RosterEntry
from desktop.training.limits import Severity
from views import words
from views.blocks import Block, Heading, Label, MainButton, Page, Tone, WordButton
from views.caution_texts import caution_text, headline_text, severity_word
from views.general_caution import general_caution
from views.severity_mark import SeverityMark
from views.work_area import WorkArea
from views.work_areas import PROGRESS, SESSION, SHEET

_MOST_ROWS = 24


class DeskOverview(WorkArea):
    """Everybody at a glance. Every row leads on to the trainee's session, sheet or progress."""

    def concerns(self, changes: Changes) -> bool:
        """Every trainee is shown here."""
        return True

    def refresh(self) -> None:
        """Read the roster again and show it."""
        while (item := self.outer.takeAt(0)) is not None:
            if (widget := item.widget()) is not None:
                widget.hide()
                widget.deleteLater()
        page = Page(self.theme)
        entries = self.record.roster(self.today)
        heading = Heading(self.theme)
        page.body.addWidget(heading)
        if entries:
            due = [entry for entry in entries if entry.due_today]
            heading.say(words.long_day(self.today), self._counted(due))
            self._fill(page, entries, due)
        else:
            heading.say(self.tr("Nobody is on the roster yet"))
            page.body.addWidget(self._first_steps())
        page.body.addStretch(1)
        page.body.addWidget(Label(general_caution(), "small", "muted", wrap=True))
        self.outer.addWidget(page)

    def _counted(self, due: Sequence[RosterEntry]) -> str:
        if not due:
            return self.tr("nobody trains today")
        if len(due) == 1:
            return self.tr("1 trains today")
        return self.tr("{count} train today").format(count=len(due))

    def _fill(self, page: Page, entries: Sequence[RosterEntry], due: Sequence[RosterEntry]) -> None:
        page.body.addWidget(self._today(due))
        worried = [
            entry
            for entry in entries
            if any(each.severity is not Severity.NOTE for each in entry.cautions)
        ]
        if worried:
            page.body.addWidget(self._attention(worried))
        others = [entry for entry in entries if not entry.due_today]
        if others:
            page.body.addWidget(self._others(others))

    def _first_steps(self) -> Block:
        block = Block(self.theme)
        block.body.addWidget(
            Label(
                self.tr(
                    "Start with one person: their name, what they can train with, and when. "
                    "Then give them a program, print the first sheet, and type what was done."
                ),
                wrap=True,
            )
        )
        add = MainButton(self.tr("Add a trainee"))
        add.clicked.connect(lambda: self.area_wanted.emit("add trainee"))
        demo = WordButton(self.tr("Open the demo scenario"))
        demo.clicked.connect(lambda: self.area_wanted.emit("open demo"))
        row = QHBoxLayout()
        row.setSpacing(self.theme.grid(2))
        row.addWidget(add)
        row.addWidget(demo)
        row.addStretch(1)
        block.body.addLayout(row)
        block.body.addWidget(
            Label(
                self.tr("The demo is an invented rowing club in a data file of its own."),
                "small",
                "muted",
                wrap=True,
            )
        )
        return block

    def _today(self, due: Sequence[RosterEntry]) -> Block:
        block = self._titled(self.tr("Today"), self.tr("type a session, or print its sheet"))
        grid = self._grid(block)
        for row, entry in enumerate(due):
            self._name(grid, row, entry)
            grid.addWidget(self._last(entry), row, 1)
            for column, (text, area) in enumerate(
                ((self.tr("Session"), SESSION), (self.tr("Sheet"), SHEET)), start=2
            ):
                grid.addWidget(self._link(text, entry, area), row, column)
        if not due:
            grid.addWidget(Label(self.tr("Nobody is due today."), tone="muted"), 0, 0)
        return block

    def _attention(self, worried: Sequence[RosterEntry]) -> Block:
        block = self._titled(self.tr("Needs attention"), self.tr("most serious first"))
        grid = self._grid(block)
        rank = {"stop": 0, "caution": 1, "note": 2}
        ordered = sorted(worried, key=lambda each: rank[each.cautions[0].severity.value])
        for row, entry in enumerate(ordered[:_MOST_ROWS]):
            caution = entry.cautions[0]
            severity = caution.severity.value
            self._name(grid, row, entry)
            name = self.record.line_names(entry.trainee.id)(caution.line_id)
            text = caution_text(caution, self.record.limits, entry.trainee.unit, self.today, name)
            said = QWidget()
            line = QHBoxLayout(said)
            line.setContentsMargins(0, self.theme.px(4), 0, self.theme.px(4))
            line.setSpacing(self.theme.grid())
            top = Qt.AlignmentFlag.AlignTop
            tones: dict[str, Tone] = {"stop": "stop", "caution": "caution"}
            line.addWidget(SeverityMark(self.theme, severity), 0, top)
            word = Label(severity_word(severity), tone=tones.get(severity, "muted"))
            line.addWidget(word, 0, top)
            sentence = Label(text, wrap=True)
            sentence.setAlignment(top)
            line.addWidget(sentence, 1)
            grid.addWidget(said, row, 1)
            link = self._link(self.tr("Progress"), entry, PROGRESS)
            grid.addWidget(link, row, 2, top)
        if len(ordered) > _MOST_ROWS:
            more = self.tr("and {count} more in the roster").format(count=len(ordered) - _MOST_ROWS)
            block.body.addWidget(Label(more, "small", "muted"))
        return block

    def _others(self, others: Sequence[RosterEntry]) -> Block:
        block = self._titled(self.tr("The others"), self.tr("last and next session"))
        grid = self._grid(block)
        for row, entry in enumerate(others[:_MOST_ROWS]):
            self._name(grid, row, entry)
            grid.addWidget(self._last(entry), row, 1)
            after = words.short_day(entry.next, self.today) if entry.next else ""
            grid.addWidget(Label(after or headline_text(entry), tone="muted"), row, 2)
        return block

    def _titled(self, title: str, detail: str) -> Block:
        block = Block(self.theme)
        row = QHBoxLayout()
        row.setSpacing(self.theme.grid())
        row.addWidget(Label(title, "heading"))
        row.addWidget(Label(detail, tone="muted"), 1, Qt.AlignmentFlag.AlignBottom)
        block.body.addLayout(row)
        return block

    def _grid(self, block: Block) -> QGridLayout:
        grid = QGridLayout()
        grid.setHorizontalSpacing(self.theme.grid(2))
        grid.setVerticalSpacing(self.theme.px(2))
        grid.setColumnStretch(1, 1)
        grid.setColumnMinimumWidth(0, self.theme.grid(20))
        block.body.addLayout(grid)
        return grid

    def _name(self, grid: QGridLayout, row: int, entry: RosterEntry) -> None:
        grid.addWidget(
            self._link(entry.trainee.name, entry, SESSION, strong=True),
            row,
            0,
            Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft,
        )

    def _last(self, entry: RosterEntry) -> Label:
        if entry.last is None:
            return Label(self.tr("first session"), tone="muted")
        last = words.short_day(entry.last, self.today)
        return Label(self.tr("last {day}").format(day=last), tone="muted")

    def _link(
        self, text: str, entry: RosterEntry, area: str, *, strong: bool = False
    ) -> WordButton:
        button = WordButton(text, strong=strong, flush=strong)
        if text != entry.trainee.name:
            spoken = self.tr("{action} of {name}").format(action=text, name=entry.trainee.name)
            button.setAccessibleName(spoken)
        button.clicked.connect(lambda: self._go(entry, area))
        return button

    def _go(self, entry: RosterEntry, area: str) -> None:
        if entry.trainee.id is not None:
            self.trainee_wanted.emit(entry.trainee.id)
            self.area_wanted.emit(area)
