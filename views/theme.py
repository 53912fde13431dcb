"""The theme: colours, type and spacing in use, and the style sheet made of them.

One `Theme` is made at the start and handed to every widget that paints itself. Widgets made of
standard parts get their look from the style sheet by dynamic properties: ``kind`` (such as
"block" or "word") and ``tone`` (a role of the palette).
"""

from __future__ import annotations

from enum import Enum, StrEnum

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QColor, QFont, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication, QStyle

from views.palettes import DARK, LIGHT, Palette
from views.paper import Paper, usual_paper
from views.style_sheet import style_sheet

GRID = 8
SMALLEST_TEXT = 80
LARGEST_TEXT = 200
SLIDE_MS = 150


class Scheme(StrEnum):
    """Which palette the coach chose."""

    SYSTEM = "system"
    LIGHT = "light"
    DARK = "dark"


class TextSize(Enum):
    """The type scale, in points at 100 %."""

    TITLE = 16.0
    ASKED = 12.5
    HEADING = 11.0
    BODY = 9.5
    SMALL = 8.5


class Theme(QObject):
    """Colours, fonts and spacing in use; ``changed`` tells widgets that paint themselves.

    ``text_percent`` scales type and everything measured in `px`, so that the grid grows with the
    text. ``calm`` switches movement off whatever the system says. ``paper`` is what sheets are
    printed on ("": as usual in the locale's country).
    """

    changed = Signal()

    def __init__(
        self,
        scheme: str = Scheme.SYSTEM,
        text_percent: int = 100,
        *,
        calm: bool = False,
        paper: str = "",
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._paper = Paper(paper) if paper else None
        self._scheme = Scheme(scheme)
        self._percent = max(SMALLEST_TEXT, min(LARGEST_TEXT, text_percent))
        self._calm = calm
        self._application: QApplication | None = None
        self._palette = self._chosen_palette()

    @property
    def palette(self) -> Palette:
        """The colours by role."""
        return self._palette

    @property
    def scheme(self) -> Scheme:
        """What the coach chose."""
        return self._scheme

    @property
    def text_percent(self) -> int:
        """Size of text in percent."""
        return self._percent

    @property
    def paper(self) -> Paper:
        """The paper that sheets are printed on."""
        return self._paper or usual_paper()

    @property
    def paper_chosen(self) -> str:
        """The paper that the coach chose; empty where the country's is used."""
        return self._paper.value if self._paper else ""

    @property
    def slide_ms(self) -> int:
        """How long a movement that explains something lasts; 0 where none is wanted."""
        style = QApplication.style() if self._application else None
        if self._calm or style is None:
            return 0
        asked = style.styleHint(QStyle.StyleHint.SH_Widget_Animation_Duration)
        return SLIDE_MS if asked > 0 else 0

    def colour(self, role: str) -> QColor:
        """The colour of a role of the palette by its name."""
        return self._palette.colour(role)

    def font(self, size: TextSize = TextSize.BODY, *, bold: bool = False) -> QFont:
        """The system's font in a size of the scale, with numbers of one width."""
        font = QFont(QGuiApplication.font())
        font.setPointSizeF(size.value * self._percent / 100)
        font.setWeight(QFont.Weight.DemiBold if bold else QFont.Weight.Normal)
        font.setFeature(QFont.Tag("tnum"), 1)
        return font

    def px(self, pixels: float) -> int:
        """``pixels`` at 100 % text as pixels at the size in use, at least 1."""
        return max(1, round(pixels * self._percent / 100))

    def grid(self, steps: float = 1) -> int:
        """So many steps of the 8-pixel grid, in pixels at the size in use."""
        return self.px(GRID * steps)

    def choose(self, scheme: str) -> None:
        """Use another palette from now on."""
        self._scheme = Scheme(scheme)
        self._refresh()

    def resize_text(self, percent: int) -> None:
        """Use another size of text; values outside 80 to 200 are taken to the nearest."""
        self._percent = max(SMALLEST_TEXT, min(LARGEST_TEXT, percent))
        self._refresh()

    def choose_paper(self, paper: Paper) -> None:
        """Print on another paper from now on."""
        self._paper = paper
        self.changed.emit()

    def apply(self, application: QApplication) -> None:
        """Dress ``application`` in this theme and follow the system's scheme from now on."""
        first = self._application is None
        self._application = application
        if first:
            application.setStyle("Fusion")
            application.styleHints().colorSchemeChanged.connect(self._refresh)
        self._dress(application)

    def _refresh(self) -> None:
        self._palette = self._chosen_palette()
        if self._application is not None:
            self._dress(self._application)
        self.changed.emit()

    def _dress(self, application: QApplication) -> None:
        self._palette = self._chosen_palette()
        application.setPalette(qt_palette(self._palette))
        application.setFont(self.font())
        sizes = {size.name.lower(): size.value * self._percent / 100 for size in TextSize}
        application.setStyleSheet(style_sheet(self._palette, sizes, self.px))

    def _chosen_palette(self) -> Palette:
        if self._scheme is Scheme.SYSTEM:
            hints = QGuiApplication.styleHints() if QGuiApplication.instance() else None
            system_dark = hints is not None and hints.colorScheme() == Qt.ColorScheme.Dark
            return DARK if system_dark else LIGHT
        return DARK if self._scheme is Scheme.DARK else LIGHT


def qt_palette(palette: Palette) -> QPalette:
    """The roles as Qt's own, for the parts that the style draws itself."""
    roles = QPalette.ColorRole
    pairs = {
        roles.Window: palette.background,
        roles.WindowText: palette.text,
        roles.Base: palette.surface,
        roles.AlternateBase: palette.background,
        roles.Text: palette.text,
        roles.PlaceholderText: palette.muted,
        roles.Button: palette.surface,
        roles.ButtonText: palette.text,
        roles.BrightText: palette.stop,
        roles.ToolTipBase: palette.surface,
        roles.ToolTipText: palette.text,
        roles.Highlight: palette.accent,
        roles.HighlightedText: palette.on_accent,
        roles.Accent: palette.accent,
        roles.Link: palette.accent,
        roles.LinkVisited: palette.accent,
        roles.Light: palette.surface,
        roles.Midlight: palette.line,
        roles.Mid: palette.line,
        roles.Dark: palette.muted,
        roles.Shadow: palette.line,
    }
    made = QPalette()
    for role, colour in pairs.items():
        made.setColor(role, QColor(colour))
    for role in (roles.WindowText, roles.Text, roles.ButtonText):
        made.setColor(QPalette.ColorGroup.Disabled, role, QColor(palette.muted))
    return made
