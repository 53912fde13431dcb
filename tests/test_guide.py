"""The guide: every page is reached, every link and picture leads somewhere, and nothing outside."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from PySide6.QtCore import Qt, QUrl
from PySide6.QtGui import QImage, QTextDocument
from pytestqt.qtbot import QtBot

from views import guide_pages
from views.guide import Guide, GuideText
from views.guide_pages import GUIDE, PICTURES, contents, page_at, page_text
from views.terms import Term, explain, meaning
from views.theme import Scheme, Theme
from views.work_areas import WORK_AREAS

PAGES = [page.key for page in contents()]
LINK = re.compile(r"(?<!!)\[[^\]]+\]\(([^)]+)\)")
LANGUAGES = sorted(path.name for path in GUIDE.iterdir() if path.is_dir())


def pictures_in(text: str) -> list[str]:
    """The names of the pictures that a page shows."""
    return re.findall(r"!\[[^\]]*\]\(\.\./pictures/([a-z-]+\.png)\)", text)


@pytest.fixture
def guide(qtbot: QtBot) -> Guide:
    made = Guide(Theme(calm=True))
    qtbot.addWidget(made)
    return made


def test_every_file_is_a_page_and_every_screen_has_one() -> None:
    files = {path.stem for path in GUIDE.glob("*.md")} - {"contents"}
    assert set(PAGES) == files
    assert len(PAGES) == len(files)
    assert {entry.key for entry in WORK_AREAS} <= files


@pytest.mark.parametrize("key", PAGES)
def test_a_page_begins_with_its_title_and_its_links_lead_to_pages(key: str) -> None:
    raw = (GUIDE / f"{key}.md").read_text(encoding="utf-8")
    assert raw.startswith("# ")
    assert raw.count("\n# ") == 0
    assert "http" not in raw
    assert "<" not in raw
    for link in LINK.findall(raw):
        assert page_at(link) in PAGES, link
    assert raw.count("![") == len(pictures_in(raw))


def test_links_to_anywhere_else_lead_nowhere() -> None:
    for link in ("https://example.org/a.md", "../data.md", "/etc/hosts", "contents.txt", "no.md"):
        assert page_at(link) is None
    with pytest.raises(KeyError):
        page_text("no-such-page")


def test_a_picture_that_is_not_there_is_left_out(tmp_path: Path) -> None:
    raw = (GUIDE / "desk.md").read_text(encoding="utf-8")
    assert pictures_in(raw) == ["desk.png"]
    assert pictures_in(page_text("desk", pictures=tmp_path)) == []
    assert "invented" not in page_text("desk", pictures=tmp_path)
    (tmp_path / "desk.png").touch()
    assert page_text("desk", pictures=tmp_path) == raw


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_translation_has_the_same_pages_links_pictures_and_numbers(
    language: str, tmp_path: Path
) -> None:
    assert [page.key for page in contents(language)] == PAGES
    for key in PAGES:
        english, other = page_text(key), page_text(key, language)
        assert other.startswith("# ")
        assert other != english, key
        assert sorted(LINK.findall(other)) == sorted(LINK.findall(english)), key
        assert pictures_in(other) == pictures_in(english), key
        assert sorted(re.findall(r"\d+", other)) == sorted(re.findall(r"\d+", english)), key
        bare = page_text(key, language, pictures=tmp_path)
        assert not re.search(r"^\*[^*]+\*$", bare, re.MULTILINE), f"caption without picture: {key}"


def test_a_translated_page_stands_in_for_the_english_one(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(guide_pages, "GUIDE", tmp_path)
    (tmp_path / "de").mkdir()
    (tmp_path / "desk.md").write_text("# Desk\n", encoding="utf-8")
    (tmp_path / "past.md").write_text("# Past\n", encoding="utf-8")
    (tmp_path / "de" / "desk.md").write_text("# Tisch\n", encoding="utf-8")
    assert page_text("desk", "de") == "# Tisch\n"
    assert page_text("past", "de") == "# Past\n"


def test_pages_are_read_and_walked_by_keyboard(guide: Guide, qtbot: QtBot) -> None:
    guide.open_page("session")
    assert guide.page == "session"
    assert "What is asked on a day" in guide.text.toPlainText()
    guide.text.anchorClicked.emit(QUrl("load.md"))
    assert guide.page == "load"
    guide.text.anchorClicked.emit(QUrl("https://example.org"))
    assert guide.page == "load"
    with qtbot.waitActive(guide):
        guide.activateWindow()
    qtbot.keyClick(guide.text, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert guide.page == "session"
    guide.list.setFocus()
    qtbot.keyClick(guide.list, Qt.Key.Key_Up)
    assert guide.page == "program"
    qtbot.keyClick(guide, Qt.Key.Key_Escape)
    assert guide.isHidden()


def test_a_link_is_reached_by_tab_and_followed_by_return(guide: Guide, qtbot: QtBot) -> None:
    guide.open_page("first-ten-minutes")
    with qtbot.waitExposed(guide):
        pass
    for _ in range(2):
        guide.text.focusNextPrevChild(True)
    qtbot.keyClick(guide.text, Qt.Key.Key_Return)
    assert guide.page in PAGES[1:]


def test_an_unknown_page_opens_the_first(guide: Guide) -> None:
    guide.open_page("nothing of that name")
    assert guide.page == "first-ten-minutes"


def test_size_and_colours_of_the_theme_are_followed(qtbot: QtBot) -> None:
    theme = Theme(calm=True)
    made = Guide(theme)
    qtbot.addWidget(made)
    made.open_page("decisions")
    before = made.text.document().defaultFont().pointSizeF()
    theme.resize_text(200)
    theme.choose(Scheme.DARK)
    qtbot.waitUntil(lambda: made.text.document().defaultFont().pointSizeF() == 2 * before)
    assert made.page == "decisions"


def test_nothing_is_fetched_and_markup_is_text(qtbot: QtBot) -> None:
    text = GuideText(Theme(calm=True))
    qtbot.addWidget(text)
    image, sheet = QTextDocument.ResourceType.ImageResource, QTextDocument.ResourceType.HtmlResource
    for name in ("https://example.org/a.png", "file:///etc/hosts", "../../demo/trainees.json"):
        assert text.loadResource(image.value, QUrl(name)) is None
        assert text.loadResource(sheet.value, QUrl(name)) is None
    text.show_markdown("<b>bold</b>")
    assert "<b>" in text.toPlainText()


def test_every_term_is_explained_in_one_sentence_here_and_in_the_guide(qtbot: QtBot) -> None:
    words = " ".join((GUIDE / "words.md").read_text(encoding="utf-8").split())
    for term in Term:
        said = meaning(term)
        assert said.endswith(".")
        assert said.count(". ") == 0
        assert said in words
    label = GuideText(Theme(calm=True))
    qtbot.addWidget(label)
    explain(label, Term.RIR)
    assert label.toolTip() == label.accessibleDescription() == meaning(Term.RIR)


def test_every_picture_that_is_named_ships_and_is_small() -> None:
    readme = GUIDE.parent.parent / "README.md"
    texts = [page.read_text(encoding="utf-8") for page in (readme, *GUIDE.glob("*.md"))]
    named = {name for text in texts for name in re.findall(r"pictures/(\w+\.png)", text)}
    assert len(named) >= 10
    assert named == {path.name for path in PICTURES.glob("*.png")}
    for path in PICTURES.glob("*.png"):
        assert path.stat().st_size <= 150_000, path.name
        assert not QImage(str(path)).isNull()
