"""A chart on paper or in a file: always light, with its title and its answer above it."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Final

from PySide6.QtCore import QPoint, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtSvg import QSvgGenerator
from PySide6.QtWidgets import QWidget

from views.line_plot import LinePlot
from views.progress_series import Series
from views.theme import Scheme, TextSize, Theme
from views.week_bars import WeekBars

SIZE: Final = QSize(1200, 800)
_SCALE: Final = 2
_EDGE, _BARS, _GAP = 24, 150, 12


@dataclass(frozen=True, slots=True)
class Picture:
    """What is drawn: words and a series, over these days."""

    title: str
    detail: str
    sentence: str
    legend: str
    bars_title: str
    series: Series
    names: dict[str, str]
    days: tuple[float, float]
    week_starts: int = 0
    body_mass: bool = False


def save_png(picture: Picture, target: Path) -> None:
    """Write ``picture`` as an image of twice its size. Raises OSError."""
    image = QImage(SIZE * _SCALE, QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(_SCALE)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    paint(picture, painter)
    painter.end()
    if not image.save(str(target), b"PNG"):
        raise OSError(f"the picture cannot be written: {target}")


def save_svg(picture: Picture, target: Path) -> None:
    """Write ``picture`` as lines and text. Raises OSError."""
    with target.open("ab"):  # says why where it cannot be written; the generator would not
        pass
    generator = QSvgGenerator()
    generator.setFileName(str(target))
    generator.setSize(SIZE)
    generator.setViewBox(QRect(QPoint(0, 0), SIZE))
    generator.setTitle(picture.title)
    generator.setDescription(picture.sentence)
    painter = QPainter(generator)
    paint(picture, painter)
    painter.end()


def paint(picture: Picture, painter: QPainter) -> None:
    """Draw ``picture`` at the painter's origin, `SIZE` large."""
    theme = Theme(Scheme.LIGHT, calm=True)
    width = SIZE.width() - 2 * _EDGE
    painter.fillRect(QRect(QPoint(0, 0), SIZE), theme.colour("surface"))
    top = _EDGE
    for text, size, bold, role in (
        (picture.title, TextSize.TITLE, True, "text"),
        (picture.detail, TextSize.BODY, False, "muted"),
        (picture.sentence, TextSize.HEADING, False, "text"),
        (picture.legend, TextSize.SMALL, False, "muted"),
    ):
        top += _write(painter, theme, text, (top, width), size, bold=bold, role=role)
    plots = _plots(picture, theme)
    chart, bars = plots
    foot = SIZE.height() - _EDGE - _BARS
    _render(painter, chart, QRect(_EDGE, top, width, foot - top - 2 * _GAP))
    _write(painter, theme, picture.bars_title, (foot - _GAP, width), TextSize.SMALL, role="muted")
    _render(painter, bars, QRect(_EDGE, foot + _GAP, width, _BARS - _GAP))
    for plot in plots:
        plot.deleteLater()


def _plots(picture: Picture, theme: Theme) -> tuple[LinePlot, WeekBars]:
    chart = LinePlot(theme, picture.week_starts)
    chart.body_mass_shown = picture.body_mass
    bars = WeekBars(theme, chart.plot)
    theme.setParent(chart)
    chart.show_series(picture.series, picture.names, None)
    chart.show_days(*picture.days)
    bars.show_weeks(picture.series.weeks)
    return chart, bars


def _render(painter: QPainter, plot: QWidget, place: QRect) -> None:
    plot.resize(place.size())
    plot.ensurePolished()
    plot.render(painter, place.topLeft(), renderFlags=QWidget.RenderFlag.DrawChildren)


def _write(
    painter: QPainter,
    theme: Theme,
    text: str,
    place: tuple[int, int],
    size: TextSize,
    *,
    bold: bool = False,
    role: str = "text",
) -> int:
    """Write ``text`` from ``place`` (top, width) on; the height that it took."""
    if not text:
        return 0
    top, width = place
    painter.save()
    painter.setFont(theme.font(size, bold=bold))
    painter.setPen(theme.colour(role))
    room = QRectF(_EDGE, top, width, SIZE.height())
    flags = Qt.AlignmentFlag.AlignTop | Qt.TextFlag.TextWordWrap
    taken = painter.boundingRect(room, flags, text)
    painter.drawText(taken.adjusted(0, 0, 2, 2), flags, text)
    painter.restore()
    return round(taken.height()) + _GAP // 2
