"""The style sheet, made from roles, sizes and the grid."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path
from string import Template
from typing import Final

from views.palettes import Palette

# importlib.resources takes longer to import than this whole sheet to make.
_ICONS: Final = Path(__file__).parent.parent / "resources" / "icons"

_SHEET = Template("""
* { outline: none; }
QToolTip { background: $surface; color: $text; border: 1px solid $line; padding: ${p4}px; }
QMainWindow, QDialog { background: $background; }
QStackedWidget, QScrollArea { background: transparent; border: none; }
QWidget[kind="page"] { background: $background; }

QLabel { background: transparent; color: $text; }
QLabel[scale="title"] { font-size: ${title}pt; font-weight: 600; }
QLabel[scale="asked"] { font-size: ${asked}pt; font-weight: 600; color: $accent; }
QLabel[scale="heading"] { font-size: ${heading}pt; font-weight: 600; }
QLabel[scale="answer"] { font-size: ${heading}pt; }
QLabel[scale="small"] { font-size: ${small}pt; }
QLabel[tone="muted"] { color: $muted; }
QLabel[tone="accent"] { color: $accent; }
QLabel[tone="caution"] { color: $caution; }
QLabel[tone="stop"] { color: $stop; }
QLabel[tone="good"] { color: $good; }
QLabel[tone="text"] { color: $text; }

QFrame[kind="block"] { background: $surface; border: 1px solid $line; border-radius: ${p6}px; }
QFrame[kind="rule"] { background: $line; border: none; max-height: 1px; min-height: 1px; }
QFrame[kind="inset"] { background: $background; border: none; border-bottom: 1px solid $line;
  border-left: ${p3}px solid $accent; }
QLineEdit[kind="quiet"] { background: transparent; border: 1px solid transparent;
  padding-left: 0; margin-left: -3px; }
QLineEdit[kind="quiet"]:hover { border-color: $line; padding-left: ${p5}px; margin-left: 0; }
QLineEdit[kind="quiet"]:focus { background: $surface; border: 2px solid $accent;
  padding-left: ${p5}px; margin-left: 0; }
QLineEdit[scale="title"] { font-size: ${title}pt; font-weight: 600; }
QWidget[kind="side"] { background: $surface; border: none; border-right: 1px solid $line; }
QFrame[kind="map"] { background: $surface; border: none; border-left: 1px solid $line; }
QFrame[kind="banner"][tone="note"] { background: $accent_soft; border: 1px solid $accent; }
QFrame[kind="banner"][tone="caution"] { background: $caution_soft; border: 1px solid $caution; }
QFrame[kind="banner"][tone="stop"] { background: $stop_soft; border: 1px solid $stop; }
QFrame[kind="banner"] { border-radius: ${p6}px; }

QPushButton[kind="word"] { background: transparent; color: $accent; border: 1px solid transparent;
  border-radius: ${p3}px; padding: ${p3}px ${p6}px; text-align: left; }
QPushButton[kind="word"][tone="muted"] { color: $muted; }
QPushButton[kind="word"][tone="stop"] { color: $stop; }
QPushButton[kind="word"][tone="caution"] { color: $caution; }
QPushButton[kind="word"][strong="true"] { font-weight: 600; }
QPushButton[kind="word"][flush="true"] { padding: ${p3}px 1px; }
QPushButton[kind="word"][scale="small"] { font-size: ${small}pt; }
QPushButton[kind="word"]:hover { background: $accent_soft; color: $text; }
QPushButton[kind="word"]:focus { border-color: $accent; }
QPushButton[kind="word"]:disabled { color: $muted; }

QPushButton { background: $surface; color: $text; border: 1px solid $line;
  border-radius: ${p3}px; padding: ${p4}px ${p12}px; min-height: ${p20}px; }
QPushButton:hover { border-color: $accent; }
QPushButton:focus { border-color: $accent; }
QPushButton:pressed { background: $accent_soft; }
QPushButton:disabled { color: $muted; }
QPushButton[kind="main"] { background: $accent; color: $on_accent; border-color: $accent;
  font-weight: 600; }
QPushButton[kind="main"]:focus { border: 2px solid $text; }
QPushButton[kind="main"]:disabled { background: $surface; color: $muted; border-color: $line; }

QLineEdit, QTextEdit, QPlainTextEdit, QComboBox, QDateEdit, QAbstractSpinBox {
  background: $surface; color: $text; border: 1px solid $line; border-radius: ${p3}px;
  padding: ${p2}px ${p6}px; selection-background-color: $accent;
  selection-color: $on_accent; }
QLineEdit, QComboBox, QDateEdit, QAbstractSpinBox { min-height: ${p20}px; }
QLineEdit, QPlainTextEdit { placeholder-text-color: $muted; }
QLineEdit:focus, QTextEdit:focus, QPlainTextEdit:focus, QComboBox:focus, QDateEdit:focus,
QAbstractSpinBox:focus { border: 2px solid $accent; padding: ${p1}px ${p5}px; }
QLineEdit[wrong="true"] { border: 2px solid $stop; padding: ${p1}px ${p5}px; }
QLineEdit:disabled, QComboBox:disabled { color: $muted; background: $background; }
QLineEdit[kind="cell"] { min-height: 0; padding: 0 ${p6}px; placeholder-text-color: $muted; }
QLineEdit[kind="cell"]:focus { padding: 0 ${p5}px; }
QLineEdit[kind="cell"][row="done"] { font-size: ${body}pt; font-weight: 600; }
QLineEdit[kind="cell"][row="quiet"] { font-size: ${small}pt; background: transparent;
  border: 1px solid transparent; border-bottom: 1px solid $line; border-radius: 0; }
QLineEdit[kind="cell"][row="quiet"]:focus { background: $surface; border: 2px solid $accent;
  border-radius: ${p3}px; }
QLineEdit[state="wrong"], QLineEdit[kind="cell"][row="quiet"][state="wrong"] {
  border: 2px solid $stop; border-radius: ${p3}px; padding: 0 ${p5}px; }
QLineEdit[state="doubt"], QLineEdit[kind="cell"][row="quiet"][state="doubt"] {
  border: 2px solid $caution; border-radius: ${p3}px; padding: 0 ${p5}px; }
QLineEdit[kind="note"] { min-height: 0; padding: 0 ${p2}px; background: transparent;
  border: 1px solid transparent; border-bottom: 1px solid $line; border-radius: 0;
  font-size: ${small}pt; placeholder-text-color: $muted; }
QLineEdit[kind="note"]:focus { border: 2px solid $accent; border-radius: ${p3}px;
  background: $surface; padding: 0 ${p1}px; }
QFrame[kind="callout"] { background: $stop_soft; border: 1px solid $stop;
  border-radius: ${p3}px; }
QFrame[kind="callout"][tone="caution"] { background: $caution_soft; border-color: $caution; }
QComboBox::drop-down { border: none; width: ${p20}px; }
QComboBox::down-arrow { image: url("$down"); width: ${p12}px; height: ${p12}px; }
QComboBox[kind="title"] { background: transparent; border: 1px solid transparent; padding: 0;
  font-size: ${title}pt; font-weight: 600; }
QComboBox[kind="title"]:hover { border-bottom-color: $line; border-radius: 0; }
QComboBox[kind="title"]:focus { border: 1px solid transparent; border-bottom: 2px solid $accent;
  border-radius: 0; padding: 0; }
QComboBox[kind="title"] QAbstractItemView { font-size: ${body}pt; font-weight: 400; }
QComboBox QAbstractItemView { background: $surface; color: $text; border: 1px solid $line;
  selection-background-color: $accent_soft; selection-color: $text; }

QCheckBox, QRadioButton { color: $text; spacing: ${p6}px; padding: ${p2}px; background: transparent;
  border: 1px solid transparent; border-radius: ${p3}px; }
QCheckBox:focus, QRadioButton:focus { border-color: $accent; }
QCheckBox::indicator { width: ${p14}px; height: ${p14}px; border: 1px solid $muted;
  border-radius: ${p3}px; background: $surface; }
QCheckBox::indicator:checked { background: $accent; border-color: $accent; image: url("$tick"); }

QAbstractItemView { background: $surface; color: $text; border: 1px solid $line;
  selection-background-color: $accent_soft; selection-color: $text;
  alternate-background-color: $background; gridline-color: $line; }
QAbstractItemView[kind="quiet"] { background: transparent; border: none; }
QAbstractItemView:focus { border-color: $accent; }
QAbstractItemView[kind="quiet"]:focus { border: none; }
QHeaderView { border: none; background: transparent; }
QHeaderView::section { background: $surface; color: $muted; border: none;
  border-bottom: 1px solid $line; padding: ${p4}px; font-size: ${small}pt; }
QAbstractScrollArea::corner { background: transparent; border: none; }
QTableCornerButton::section { background: transparent; border: none; }
QTableView[kind="quiet"]::item, QTableView[kind="sheet"]::item { padding: 0 ${p5}px; border: none; }
QTableView[kind="quiet"]::item:selected, QTableView[kind="sheet"]::item:selected {
  background: $accent_soft; color: $text; }
QTableView[kind="quiet"] QHeaderView::section, QTableView[kind="sheet"] QHeaderView::section {
  padding: ${p4}px ${p8}px; }
QTableView[kind="sheet"] { border-radius: ${p6}px; padding: ${p3}px; }
QTableView[kind="desk"] { background: transparent; border: none; }
QTableView[kind="desk"] QHeaderView::section { padding: ${p4}px ${p8}px; }

QMenuBar { background: $surface; color: $text; border-bottom: 1px solid $line; padding: 0; }
QMenuBar::item { padding: ${p4}px ${p8}px; background: transparent; border-radius: ${p3}px; }
QMenuBar::item:selected { background: $accent_soft; color: $text; }
QMenu { background: $surface; color: $text; border: 1px solid $line; padding: ${p4}px 0; }
QMenu::item { padding: ${p4}px ${p24}px ${p4}px ${p24}px; }
QMenu::item:selected { background: $accent_soft; color: $text; }
QMenu::item:disabled { color: $muted; }
QMenu::separator { height: 1px; background: $line; margin: ${p4}px 0; }

QScrollBar:vertical { background: transparent; width: ${p10}px; margin: 0; }
QScrollBar:horizontal { background: transparent; height: ${p10}px; margin: 0; }
QScrollBar::handle { background: $line; border-radius: ${p3}px; margin: ${p2}px; }
QScrollBar::handle:vertical { min-height: ${p24}px; }
QScrollBar::handle:horizontal { min-width: ${p24}px; }
QScrollBar::handle:hover { background: $muted; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QSplitter::handle { background: $line; }
QProgressBar { background: $line; border: none; border-radius: ${p3}px; color: $text;
  text-align: center; max-height: ${p8}px; }
QProgressBar::chunk { background: $accent; border-radius: ${p3}px; }
""")


def style_sheet(palette: Palette, sizes: Mapping[str, float], px: Callable[[float], int]) -> str:
    """The sheet for ``palette``; ``sizes`` in points by name; ``px`` scales pixels of the grid."""
    spacing = {f"p{pixels}": px(pixels) for pixels in (1, 2, 3, 4, 5, 6, 8, 10, 12, 14, 20, 24)}
    colours = {role: getattr(palette, role) for role in palette._fields if role != "dark"}
    points = {name: f"{points:.2f}" for name, points in sizes.items()}
    icons = {
        "down": _icon("down.svg"),
        "tick": _icon("tick-dark.svg" if palette.dark else "tick-light.svg"),
    }
    return _SHEET.substitute(colours, **spacing, **points, **icons)


def _icon(name: str) -> str:
    return (_ICONS / name).as_posix()
