"""Tips: Qt takes a tip with a tag in it for rich text, so names are made harmless first."""

from __future__ import annotations


def plain_tip(text: str) -> str:
    """``text`` as a tip that is shown letter by letter, whatever stands in it."""
    if "<" not in text and "&" not in text:
        return text
    from html import escape  # few names need it, and none before the first paint

    lines = escape(text, quote=False).replace("\n", "<br>")
    return f"<p>{lines}</p>"
