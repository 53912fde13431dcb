"""A coach's month on paper: one row for each trainee."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QCoreApplication, QRectF

from desktop.planning.coach_month import CoachMonth, progressed
from desktop.planning.report import LineReport, TraineeReport
from views import words
from views.caution_texts import severity_word, short_caution
from views.paper import Paper
from views.progress_texts import tenths
from views.report_layout import Pen, facts_block, heads_block, paged
from views.report_texts import Fact
from views.sheet_layout import SIDE, page_size
from views.sheet_parts import Block, Part, Sheet, Text
from views.sheet_texts import long_date
from views.sheet_type import Density, Role, SheetType, mm
from views.slot_texts import plain

translate = QCoreApplication.translate

_SHARES: Final = (0.19, 0.09, 0.12, 0.32, 0.28)
"""What each column takes of the width."""

_GAP: Final = mm(2.5)
_MOST_NAMED: Final = 4


@dataclass(frozen=True, slots=True)
class RowText:
    """One trainee in words: name, sessions, days trained of those planned, progress, cautions."""

    name: str
    sessions: str
    kept: str
    progress: str
    cautions: str

    @property
    def cells(self) -> tuple[str, ...]:
        """The texts by column."""
        return (self.name, self.sessions, self.kept, self.progress, self.cautions)


def month_rows(month: CoachMonth) -> tuple[RowText, ...]:
    """The rows of ``month``."""
    return tuple(_row(report) for report in month.reports)


def lay_out_month(month: CoachMonth, paper: Paper) -> Sheet:
    """The pages of ``month``. Needs a QGuiApplication."""
    type_ = SheetType(Density.USUAL)
    width = page_size(paper).width() - 2 * SIDE
    rows = month_rows(month)
    span = translate("Report", "{first} to {last}").format(
        first=long_date(month.first), last=long_date(month.last)
    )
    heads = tuple(_heads(width, type_))
    blocks = [facts_block(tuple(_facts(month)), width, type_), heads_block(heads, width, type_)]
    blocks += [_row_block(row, width, type_) for row in rows]
    title = translate("Report", "Coach's report")
    foot = translate("Report", "Up and down: the 80 % band of the trend lies on one side of level.")
    name = translate("Report", "All trainees")
    return paged(name, span, title, blocks, foot, paper, month_aloud(month), heads)


def month_aloud(month: CoachMonth) -> str:
    """The report as plain text."""
    lines = [f"{fact.caption}: {fact.value}." for fact in _facts(month)]
    for row in month_rows(month):
        lines.append("; ".join(cell for cell in row.cells if cell))
    return "\n".join(lines)


def headings() -> tuple[str, ...]:
    """The columns in words."""
    return (
        translate("Report", "Trainee"),
        translate("Report", "Sessions"),
        translate("Report", "Days kept"),
        translate("Report", "Progress"),
        translate("Report", "To be careful about"),
    )


def _facts(month: CoachMonth) -> Iterator[Fact]:
    yield Fact(translate("Report", "Trainees"), words.number(len(month.reports)))
    yield Fact(translate("Report", "Sessions"), words.number(month.sessions))
    if month.kept is not None:
        yield Fact(translate("Report", "Planned days kept"), words.percent(month.kept))
    up = sum(bool(progressed(report)[0]) for report in month.reports)
    yield Fact(translate("Report", "Trainees with a line going up"), words.number(up))
    careful = sum(bool(report.cautions) for report in month.reports)
    yield Fact(translate("Report", "Trainees to be careful about"), words.number(careful))
    if month.weeks:
        mean = sum(sets for _, sets in month.weeks) / len(month.weeks)
        yield Fact(translate("Report", "Hard sets a week, everybody"), words.number(mean, 0))


def _row(report: TraineeReport) -> RowText:
    kept = ""
    if report.planned:
        kept = translate("Report", "{done} of {planned}").format(
            done=words.number(report.days), planned=words.number(report.planned)
        )
    return RowText(
        plain(report.trainee.name),
        words.number(report.sessions),
        kept,
        _progress(report),
        _cautions(report),
    )


def _progress(report: TraineeReport) -> str:
    if not report.lines:
        return translate("Report", "Not trained")
    up, down = progressed(report)
    parts = []
    for text, lines in (
        (translate("Report", "Up: {lines}"), up),
        (translate("Report", "Down: {lines}"), down),
    ):
        if lines:
            parts.append(text.format(lines=_named(lines)))
    still = len([line for line in report.lines if line.gain is not None]) - len(up) - len(down)
    if still > 0:
        text = translate("Report", "level or open: {count}")
        parts.append(text.format(count=words.number(still)))
    return "; ".join(parts) or translate("Report", "Too few sessions to tell")


def _named(lines: list[LineReport]) -> str:
    shown = [_with_gain(line) for line in lines[:_MOST_NAMED]]
    if len(lines) > _MOST_NAMED:
        text = translate("Report", "{count} more")
        shown.append(text.format(count=words.number(len(lines) - _MOST_NAMED)))
    return ", ".join(shown)


def _with_gain(line: LineReport) -> str:
    if line.gain is None:
        return plain(line.name)
    sign = "+" if line.gain >= 0 else words.MINUS
    return f"{plain(line.name)} {sign}{tenths(abs(line.gain) * 100)}\N{NO-BREAK SPACE}%"


def _cautions(report: TraineeReport) -> str:
    names = dict(report.line_names)
    said = []
    for one in report.cautions:
        text = short_caution(one, names.get(one.line_id or 0, ""))
        if one.severity.value == "stop":
            text = f"{severity_word('stop')}: {text}"
        said.append(text)
    return "; ".join(said)


def _heads(width: float, type_: SheetType) -> Iterator[Part]:
    low = type_.line_height(Role.SMALL)
    for (left, wide), text in zip(_columns(width), headings(), strict=True):
        yield Text(QRectF(left, 0, wide, low), text, Role.SMALL, quiet=True)


def _columns(width: float) -> list[tuple[float, float]]:
    lefts = [sum(_SHARES[:place]) * width for place in range(len(_SHARES))]
    pairs = zip(lefts, _SHARES, strict=True)
    return [(left, share * width - _GAP) for left, share in pairs]


def _row_block(row: RowText, width: float, type_: SheetType) -> Block:
    pen = Pen(width, type_)
    pen.skip(mm(1.2))
    top = bottom = pen.y
    for place, ((left, wide), text) in enumerate(zip(_columns(width), row.cells, strict=True)):
        role = Role.SET if place == 0 else Role.BODY
        tall = type_.line_height(role)
        y = top
        for line in type_.wrapped(text, role, wide, 5):
            pen.parts.append(Text(QRectF(left, y, wide, tall), line, role))
            y += tall
        bottom = max(bottom, y)
    pen.y = bottom + mm(1.2)
    pen.rule()
    return pen.block()
