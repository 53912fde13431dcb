"""Pages of a progress report: blocks on the sheet's grid, none of them broken."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from typing import Final

from PySide6.QtCore import QPointF, QRectF

from desktop.planning.report import LineReport, TraineeReport
from desktop.training.quantities import Unit
from desktop.training.volume import MARKS
from views import words
from views.measures import Shown, measures_of
from views.paper import Paper
from views.paper_chart import PaperChart
from views.progress_series import series_of
from views.progress_texts import axis_unit, measure_detail
from views.report_texts import Fact, LineText, ReportText, report_aloud, report_text
from views.sheet_layout import EDGE, SIDE, flow, foot, page_size, stacked
from views.sheet_parts import Block, Line, Page, Part, PlacedBlock, Sheet, Sleeve, Text
from views.sheet_texts import translate
from views.sheet_type import Density, Role, SheetType, mm

_FACTS: Final = mm(54)
_GAP: Final = mm(5)
_CHART: Final = mm(37)
_AHEAD_SHARE: Final = 0.3
_MOST_AHEAD: Final = 84


def lay_out_report(report: TraineeReport, paper: Paper, week_starts: int = 0) -> Sheet:
    """The pages of ``report``. Needs a QGuiApplication."""
    text = report_text(report)
    type_ = SheetType(Density.USUAL)
    size = page_size(paper)
    width = size.width() - 2 * SIDE
    blocks = [facts_block(text.facts, width, type_)]
    if text.bests:
        blocks.append(_bests(text.bests, width, type_))
    for line, said in zip(report.lines, text.lines, strict=True):
        blocks.append(_line(line, said, report, width, type_, week_starts))
    if report.lines:
        blocks.append(_said((text.legend,), width, type_))
    blocks += _rest(text, width, type_)
    return paged(text.trainee, text.span, text.title, blocks, text.foot, paper, report_aloud(text))


def paged(
    name: str, span: str, title: str, blocks: Sequence[Block], foot_text: str, paper: Paper,
    spoken: str, under: Sequence[Part] = (),
) -> Sheet:  # fmt: skip
    """Blocks on as many pages as they need, each with the same head and a numbered foot. ``under``:
    a line of texts under the head of every page after the first, such as those of columns.
    """
    type_ = SheetType(Density.USUAL)
    size = page_size(paper)
    width = size.width() - 2 * SIDE
    first, later = (_head(name, span, title, width, type_, each) for each in ((), under))
    caution = type_.wrapped(foot_text, Role.SMALL, width - mm(24), 4)
    foot_top = size.height() - EDGE - len(caution) * type_.line_height(Role.SMALL)
    flows = flow(blocks, foot_top - mm(2) - EDGE - later.height)
    heads = [first, *[later] * (len(flows) - 1)]
    pages = tuple(
        Page(
            (
                PlacedBlock(QPointF(SIDE, EDGE), head),
                *stacked(page, EDGE + head.height),
                PlacedBlock(QPointF(SIDE, foot_top), foot(caution, width, at, len(flows), type_)),
            )
        )
        for at, (head, page) in enumerate(zip(heads, flows, strict=True), start=1)
    )
    return Sheet(paper, type_, pages, f"{name}, {span}", spoken)


@dataclass(slots=True)
class Pen:
    """Writes parts one below the other."""

    width: float
    type: SheetType
    y: float = 0.0
    parts: list[Part] = field(default_factory=list)

    def skip(self, space: float) -> None:
        """Leave space."""
        self.y += space

    def write(
        self, text: str, role: Role, *, most: int = 4, quiet: bool = False, width: float = 0.0
    ) -> None:
        """Write a text, wrapped."""
        wide = width or self.width
        height = self.type.line_height(role)
        for line in self.type.wrapped(text, role, wide, most):
            self.parts.append(Text(QRectF(0, self.y, wide, height), line, role, quiet))
            self.y += height

    def beside(self, left: float, text: str, role: Role, *, right: bool = False) -> None:
        """Write one line from ``left`` on the present height, without going down."""
        place = QRectF(left, self.y, self.width - left, self.type.line_height(role))
        self.parts.append(Text(place, text, role, right=right))

    def rule(self, *, strong: bool = False) -> None:
        """A line across."""
        self.parts.append(Line(QPointF(0, self.y), QPointF(self.width, self.y), strong))

    def heading(self, text: str) -> None:
        """The heading of a section, over a hairline."""
        self.skip(mm(3.5))
        self.write(text, Role.NAME, most=1)
        self.skip(mm(0.6))
        self.rule()
        self.skip(mm(1.4))

    def block(self) -> Block:
        """What was written."""
        return Block(self.y, tuple(self.parts))


def _head(
    name: str, span: str, title: str, width: float, type_: SheetType, under: Sequence[Part]
) -> Block:
    pen = Pen(width, type_)
    drop = type_.metrics(Role.TRAINEE).ascent() - type_.metrics(Role.HOW).ascent()
    low = type_.line_height(Role.HOW)
    pen.parts.append(Text(QRectF(0, drop, width, low), span, Role.HOW, right=True))
    pen.write(name, Role.TRAINEE, most=2, width=width - type_.width(span, Role.HOW) - mm(6))
    pen.write(title, Role.HOW, most=1, quiet=True)
    pen.skip(mm(1.6))
    pen.rule(strong=True)
    if under:
        pen.skip(mm(1.2))
        pen.parts += [moved_down(part, pen.y) for part in under]
        pen.skip(type_.line_height(Role.SMALL) + mm(0.6))
        pen.rule()
    return pen.block()


def heads_block(heads: Sequence[Part], width: float, type_: SheetType) -> Block:
    """The words of columns above a hairline, for the first page."""
    pen = Pen(width, type_)
    pen.skip(mm(2.5))
    pen.parts += [moved_down(part, pen.y) for part in heads]
    pen.skip(type_.line_height(Role.SMALL) + mm(0.6))
    pen.rule()
    return pen.block()


def moved_down(part: Part, by: float) -> Part:
    """A text, a line or a bar further down."""
    match part:
        case Text():
            return replace(part, rect=part.rect.translated(0, by))
        case Sleeve():
            return Sleeve(part.rect.translated(0, by))
        case Line():
            down = QPointF(0, by)
            return replace(part, start=part.start + down, end=part.end + down)
    raise TypeError(f"a row holds no {type(part).__name__}")


def facts_block(facts: Sequence[Fact], width: float, type_: SheetType) -> Block:
    """Facts side by side, three in a row."""
    pen = Pen(width, type_)
    pen.skip(mm(3))
    columns = 3
    wide = width / columns
    row = type_.line_height(Role.SMALL) + type_.line_height(Role.SET_UP) + mm(1.6)
    for at, fact in enumerate(facts):
        left, top = at % columns * wide, pen.y + at // columns * row
        pen.parts += _fact(fact, left, top, wide - mm(3), type_)
    rows = (len(facts) + columns - 1) // columns
    pen.skip(rows * row)
    return pen.block()


def _fact(fact: Fact, left: float, top: float, wide: float, type_: SheetType) -> list[Part]:
    low, tall = type_.line_height(Role.SMALL), type_.line_height(Role.SET_UP)
    value = type_.elided(fact.value, Role.SET_UP, wide)
    return [
        Text(QRectF(left, top, wide, low), fact.caption, Role.SMALL, quiet=True),
        Text(QRectF(left, top + low, wide, tall), value, Role.SET_UP),
    ]


def _line(
    line: LineReport, text: LineText, report: TraineeReport, width: float, type_: SheetType,
    week_starts: int,
) -> Block:  # fmt: skip
    pen = Pen(width, type_)
    pen.skip(mm(4.5))
    change_width = type_.width(text.change, Role.SET_UP)
    name = type_.elided(text.name, Role.NAME, width - change_width - mm(4))
    pen.beside(0, text.change, Role.SET_UP, right=True)
    pen.write(name, Role.NAME, most=1)
    pen.write(text.sentence, Role.HOW, most=3)
    pen.skip(mm(1.5))
    chart = _chart(line, report, QRectF(0, pen.y, width - _FACTS - _GAP, _CHART), week_starts)
    pen.parts.append(chart)
    top = pen.y
    left = width - _FACTS
    for fact in text.facts:
        low = type_.line_height(Role.SMALL)
        pen.parts.append(Text(QRectF(left, top, _FACTS, low), fact.caption, Role.SMALL, True))
        top += low
        tall = type_.line_height(Role.SET_UP)
        for said in type_.wrapped(fact.value, Role.SET_UP, _FACTS, 2):
            pen.parts.append(Text(QRectF(left, top, _FACTS, tall), said, Role.SET_UP))
            top += tall
        top += mm(1.4)
    for said in type_.wrapped(_measure(line, report.trainee.unit), Role.SMALL, _FACTS, 3):
        low = type_.line_height(Role.SMALL)
        pen.parts.append(Text(QRectF(left, top, _FACTS, low), said, Role.SMALL, quiet=True))
        top += low
    pen.y = max(pen.y + _CHART, top)
    return pen.block()


def _shown(line: LineReport) -> Shown:
    return measures_of(line.progress)[0]


def _measure(line: LineReport, unit: Unit) -> str:
    series = series_of(line.progress, _shown(line), unit)
    detail = measure_detail(series.shown, bodyweight=series.bodyweight)
    shown_unit = axis_unit(series)
    text = translate("Report", "Chart: {what}, {unit}") if shown_unit else ""
    return (text or translate("Report", "Chart: {what}")).format(what=detail, unit=shown_unit)


def _chart(line: LineReport, report: TraineeReport, place: QRectF, week_starts: int) -> PaperChart:
    series = series_of(line.progress, _shown(line), report.trainee.unit)
    first, last = float(report.first.toordinal()), float(report.last.toordinal())
    ahead = min(_MOST_AHEAD, (last - first) * _AHEAD_SHARE) if series.forecast is not None else 2
    names = {step.key: step.name for step in line.progress.scale}
    return PaperChart(place, series, names, first - 2, last + ahead, week_starts)


def _rest(text: ReportText, width: float, type_: SheetType) -> list[Block]:
    """What follows the lines: muscles, what is ahead, cautions."""
    blocks: list[Block] = []
    if text.muscles:
        blocks.append(_muscles(text, width, type_))
    if text.ahead:
        blocks.append(_listed(translate("Report", "Ahead"), text.ahead, width, type_))
    if text.cautions:
        first = True
        for one in text.cautions:
            pen = Pen(width, type_)
            if first:
                pen.heading(translate("Report", "To be careful about"))
            first = False
            pen.write(f"{one.severity}{words.DOT}{one.sentence}", Role.HOW)
            source = translate("Report", "Source: {source}").format(source=one.source)
            pen.write(source, Role.SMALL, quiet=True)
            pen.skip(mm(1.2))
            blocks.append(pen.block())
    return blocks


def _muscles(text: ReportText, width: float, type_: SheetType) -> Block:
    """Hard sets a week by muscle as bars in two columns, with the published numbers as lines."""
    pen = Pen(width, type_)
    pen.heading(translate("Report", "Hard sets a week by muscle"))
    row = type_.line_height(Role.BODY)
    most = max([MARKS[-1].sets + 2.0, *(sets for _, sets in text.muscles)])
    wide = (width - _GAP) / 2
    name, number = mm(30), mm(9)
    bar = wide - name - number
    rows = (len(text.muscles) + 1) // 2
    for at, (muscle, sets) in enumerate(text.muscles):
        left, top = at // rows * (wide + _GAP), pen.y + at % rows * row
        pen.parts.append(Text(QRectF(left, top, name, row), muscle, Role.BODY))
        reach = sets / most * bar
        pen.parts.append(Sleeve(QRectF(left + name, top + row * 0.25, reach, row * 0.5)))
        said = words.number(sets, 1)
        place = QRectF(left + name + bar, top, number, row)
        pen.parts.append(Text(place, said, Role.BODY, right=True))
    for column in range(1 if len(text.muscles) <= rows else 2):
        for mark in MARKS:
            x = column * (wide + _GAP) + name + mark.sets / most * bar
            pen.parts.append(Line(QPointF(x, pen.y), QPointF(x, pen.y + rows * row)))
    pen.skip(rows * row + mm(1))
    pen.write(text.marks, Role.SMALL, quiet=True)
    return pen.block()


def _bests(bests: Sequence[str], width: float, type_: SheetType) -> Block:
    """The best sets in two columns, down the first one and then the second."""
    pen = Pen(width, type_)
    pen.heading(translate("Report", "Better than ever before"))
    row, wide = type_.line_height(Role.BODY), (width - _GAP) / 2
    rows = (len(bests) + 1) // 2
    for at, best in enumerate(bests):
        place = QRectF(at // rows * (wide + _GAP), pen.y + at % rows * row, wide, row)
        pen.parts.append(Text(place, type_.elided(best, Role.BODY, wide), Role.BODY))
    pen.skip(rows * row)
    return pen.block()


def _listed(title: str, lines: Sequence[str], width: float, type_: SheetType) -> Block:
    pen = Pen(width, type_)
    pen.heading(title)
    for line in lines:
        pen.write(line, Role.HOW, most=2)
    return pen.block()


def _said(lines: Sequence[str], width: float, type_: SheetType) -> Block:
    pen = Pen(width, type_)
    pen.skip(mm(2))
    for line in lines:
        pen.write(line, Role.SMALL, quiet=True)
    return pen.block()
