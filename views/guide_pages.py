"""The pages of the guide: Markdown files that ship, in the order of their table of contents.

A translation lies in a folder named for its language; a page that is not there is shown in English.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from pathlib import Path
from typing import Final

GUIDE: Final = Path(__file__).parent.parent / "resources" / "guide"
PICTURES: Final = GUIDE.parent / "pictures"
FIRST: Final = "first-ten-minutes"
_CONTENTS: Final = "contents"
_ENTRY: Final = re.compile(r"- \[(?P<title>[^\]]+)\]\((?P<key>[a-z-]+)\.md\)")
_FIGURE: Final = re.compile(
    r"!\[[^\]]*\]\(\.\./pictures/(?P<name>[a-z-]+\.png)\)\n?(?:\n\*[^*\n]+\*\n)?"
)
"""A picture with its caption."""


@dataclass(frozen=True, slots=True)
class GuidePage:
    """One page: its key (the file's name), its title, and the part that it stands in."""

    key: str
    title: str
    part: str


def contents(language: str = "") -> tuple[GuidePage, ...]:
    """Every page, in order; titles in the language of that code where there are such."""
    pages, part = [], ""
    for line in _read(_CONTENTS, language).splitlines():
        if line.startswith("## "):
            part = line.removeprefix("## ")
        elif found := _ENTRY.fullmatch(line):
            pages.append(GuidePage(found["key"], found["title"], part))
    return tuple(pages)


def page_text(key: str, language: str = "", pictures: Path = PICTURES) -> str:
    """A page as Markdown; pictures that do not lie in ``pictures`` are left out with their
    caption. Raises KeyError where there is no such page.
    """
    if key == _CONTENTS or not (GUIDE / f"{key}.md").is_file():
        raise KeyError(f"no page {key!r} in the guide")

    def shown(figure: re.Match[str]) -> str:
        return figure[0] if (pictures / figure["name"]).is_file() else ""

    return _FIGURE.sub(shown, _read(key, language))


def page_at(link: str) -> str | None:
    """The page that a link within the guide leads to; None for every other link."""
    key, dot, suffix = link.partition(".")
    is_page = dot and suffix == "md" and (GUIDE / link).is_file() and "/" not in link
    return key if is_page else None


def _read(key: str, language: str) -> str:
    own = GUIDE / language / f"{key}.md"
    path = own if language and own.is_file() else GUIDE / f"{key}.md"
    return path.read_text(encoding="utf-8")
