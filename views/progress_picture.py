"""A chart on paper or in a file: always light, with its title and its answer above it."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Final

from PySide6.QtCore import QByteArray, QPoint, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QGuiApplication, QImage, QImageWriter, QPainter
from PySide6.QtSvg import QSvgGenerator
from PySide6.QtWidgets import QWidget

from views.chart_window import fitting
from views.line_plot import LinePlot
from views.progress_series import Series
from views.series_cut import cut, flattened
from views.theme import Scheme, TextSize, Theme
from views.week_bars import WeekBars

SIZE: Final = QSize(1200, 800)
_PNG_SCALE: Final = 2
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
    image = QImage(SIZE * _PNG_SCALE, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    paint(picture, painter, _PNG_SCALE)
    painter.end()
    writer = QImageWriter(str(target), QByteArray(b"png"))
    if not writer.write(image):
        raise OSError(f"{target}: {writer.errorString()}")


def save_svg(picture: Picture, target: Path) -> None:
    """Write ``picture`` as lines and text. Raises OSError."""
    with target.open("wb"):  # says why where it cannot be written; the generator would not
        pass
    generator = QSvgGenerator()
    generator.setFileName(str(target))
    generator.setSize(SIZE)
    generator.setViewBox(QRect(QPoint(0, 0), SIZE))
    generator.setResolution(round(QGuiApplication.primaryScreen().logicalDotsPerInch()))
    generator.setTitle(picture.title)
    generator.setDescription(picture.sentence)
    painter = QPainter(generator)
    paint(picture, painter)
    painter.end()


def paint(picture: Picture, painter: QPainter, scale: int = 1) -> None:
    """Draw ``picture`` at the painter's origin, `SIZE` times ``scale`` (1 or 2) large."""
    theme = Theme(Scheme.LIGHT, 100 * scale, calm=True)
    size, edge, gap = SIZE * scale, _EDGE * scale, _GAP * scale
    width, bars_height = size.width() - 2 * edge, _BARS * scale
    painter.fillRect(QRect(QPoint(0, 0), size), theme.colour("surface"))
    top = edge
    for text, type_size, role in (
        (picture.title, TextSize.TITLE, "text"),
        (picture.detail, TextSize.BODY, "muted"),
        (picture.sentence, TextSize.HEADING, "text"),
        (picture.legend, TextSize.SMALL, "muted"),
    ):
        top += _write(painter, theme, text, QRect(edge, top, width, size.height()), type_size, role)
    chart, bars = _plots(picture, theme)
    foot = size.height() - edge - bars_height
    _render(painter, chart, QRect(edge, top, width, foot - top - 2 * gap))
    place = QRect(edge, foot - gap, width, size.height())
    _write(painter, theme, picture.bars_title, place, TextSize.SMALL, "muted")
    _render(painter, bars, QRect(edge, foot + gap, width, bars_height - gap))
    for plot in (chart, bars):
        plot.deleteLater()


def _plots(picture: Picture, theme: Theme) -> tuple[LinePlot, WeekBars]:
    """The two plots, cut to the days: a drawing hides nothing that runs out of its frame."""
    shown = cut(picture.series, *picture.days)
    shown = flattened(shown, *fitting(shown, *picture.days))
    chart = LinePlot(theme, picture.week_starts)
    theme.setParent(chart)
    chart.body_mass_shown = picture.body_mass
    bars = WeekBars(theme, chart.plot)
    chart.show_series(shown, picture.names, None)
    bars.show_weeks(shown.weeks)
    chart.show_days(*picture.days)
    return chart, bars


def _render(painter: QPainter, plot: QWidget, place: QRect) -> None:
    plot.resize(place.size())
    plot.ensurePolished()
    plot.render(painter, place.topLeft(), renderFlags=QWidget.RenderFlag.DrawChildren)


def _write(
    painter: QPainter, theme: Theme, text: str, place: QRect, size: TextSize, role: str
) -> int:
    """Write ``text`` at the top of ``place``; the height that it took."""
    if not text:
        return 0
    painter.save()
    painter.setFont(theme.font(size, bold=size is TextSize.TITLE))
    painter.setPen(theme.colour(role))
    flags = Qt.AlignmentFlag.AlignTop | Qt.TextFlag.TextWordWrap
    taken = painter.boundingRect(QRectF(place), flags, text)
    painter.drawText(taken.adjusted(0, 0, 2, 2), flags, text)
    painter.restore()
    return round(taken.height()) + theme.px(_GAP // 2)
