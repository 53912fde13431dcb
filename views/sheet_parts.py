"""What a printed sheet is made of, each part in its place: on the sheet's grid, from the upper left
corner of a block or page.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF

from views.paper import Paper
from views.paper_chart import PaperChart
from views.sheet_type import Role, SheetType
from views.strip_layout import StripLayout


@dataclass(frozen=True, slots=True)
class Text:
    """One line. ``quiet``: in grey; ``right``: it ends at the right of ``rect``."""

    rect: QRectF
    text: str
    role: Role
    quiet: bool = False
    right: bool = False


@dataclass(frozen=True, slots=True)
class Box:
    """A box to write in, with a small caption inside."""

    rect: QRectF
    caption: str


@dataclass(frozen=True, slots=True)
class Line:
    """A rule; ``strong``: black and thick, else a grey hairline."""

    start: QPointF
    end: QPointF
    strong: bool = False


@dataclass(frozen=True, slots=True)
class Sleeve:
    """The end of a bar or handle, on which the discs hang."""

    rect: QRectF


@dataclass(frozen=True, slots=True)
class Disc:
    """A disc seen from its edge, with its number."""

    rect: QRectF
    label: str


@dataclass(frozen=True, slots=True)
class Strip:
    """A step strip."""

    at: QPointF
    layout: StripLayout


Part = Text | Box | Line | Sleeve | Disc | Strip | PaperChart


@dataclass(frozen=True, slots=True)
class Block:
    """Parts that stay together on one page; ``pair``: the letter of slots done in turn."""

    height: float
    parts: tuple[Part, ...]
    pair: str = ""


@dataclass(frozen=True, slots=True)
class PlacedBlock:
    """A block and where its upper left corner lies on the page."""

    at: QPointF
    block: Block


@dataclass(frozen=True, slots=True)
class Page:
    """One page: its blocks from top to bottom, head and foot among them."""

    blocks: tuple[PlacedBlock, ...]


@dataclass(frozen=True, slots=True)
class Sheet:
    """A sheet laid out: ready to be painted on anything. ``spoken``: the same as text."""

    paper: Paper
    type: SheetType
    pages: tuple[Page, ...]
    title: str
    spoken: str
