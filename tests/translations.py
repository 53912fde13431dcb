"""python -m tests.translations: bring the catalogues of other languages up to date.

Reads every text that goes through tr() or translate() in views and desktop, and what data bring to
the screens (tests/shipped_words.py), into resources/translations/rungwise_XX.ts; translations stay.
Then makes the .qm files that the program loads. A new language: name it on the command line once.
"""

from __future__ import annotations

import argparse
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ET
from dataclasses import dataclass
from pathlib import Path

from tests.shipped_words import ROOT, listing

FOLDER = ROOT / "resources" / "translations"
SOURCES = ("views", "desktop")
_NAME = re.compile(r"rungwise_([a-z]{2,3}(?:_[A-Z]{2})?)\.ts")


@dataclass(frozen=True, slots=True)
class Entry:
    """One text of a catalogue; ``translation`` is empty and ``finished`` False where it waits."""

    context: str
    source: str
    translation: str
    finished: bool


def catalogues(folder: Path = FOLDER) -> dict[str, Path]:
    """The catalogues there are, by the code of their language."""
    found = {path: _NAME.fullmatch(path.name) for path in sorted(folder.glob("*.ts"))}
    return {name[1]: path for path, name in found.items() if name}


def entries(catalogue: Path) -> tuple[Entry, ...]:
    """Every text of a catalogue, in its order."""
    found = []
    for context in ET.parse(catalogue).getroot().iter("context"):
        for message in context.iter("message"):
            target = message.find("translation")
            text = "" if target is None else "".join(target.itertext())
            finished = target is not None and target.get("type") is None
            source = message.findtext("source", "")
            found.append(Entry(context.findtext("name", ""), source, text, finished))
    return tuple(found)


def _by_text(catalogue: Path) -> dict[tuple[str, str], Entry]:
    return {(entry.context, entry.source): entry for entry in entries(catalogue)}


def refresh(catalogue: Path, language: str) -> None:
    """Take in texts that are new and drop those that are gone; translations stay."""
    with tempfile.TemporaryDirectory() as folder:
        shipped = Path(folder) / "shipped.py"
        shipped.write_text(listing(), encoding="utf-8")
        _run(
            "lupdate",
            *(path for name in SOURCES for path in sorted((ROOT / name).rglob("*.py"))),
            shipped,
            *("-no-obsolete", "-locations", "none", "-sort-messages"),
            *("-source-language", "en_GB", "-target-language", language, "-ts", catalogue),
        )


def compile_catalogue(catalogue: Path, target: Path) -> None:
    """Make what the program loads; unfinished texts are left out, so that they stay English."""
    _run("lrelease", "-nounfinished", catalogue, "-qm", target)


def _run(tool: str, *words: object) -> None:
    program = Path(sys.executable).with_name(f"pyside6-{tool}")
    done = subprocess.run(
        [program, *map(str, words)], cwd=ROOT, capture_output=True, text=True, check=False
    )
    if done.returncode or "warning" in done.stderr.lower():
        raise RuntimeError(f"{tool} failed:\n{done.stdout}{done.stderr}")


def main() -> int:
    """Refresh and compile every catalogue, and say how far each is."""
    parser = argparse.ArgumentParser(prog="python -m tests.translations", description=__doc__)
    parser.add_argument("language", nargs="*", help="code of a new language, such as fr")
    chosen = parser.parse_args()
    FOLDER.mkdir(exist_ok=True)
    new = {code: FOLDER / f"rungwise_{code}.ts" for code in chosen.language}
    for language, catalogue in {**catalogues(), **new}.items():
        before = (
            {(e.context, e.source): e for e in entries(catalogue)} if catalogue.exists() else {}
        )
        refresh(catalogue, language)
        compile_catalogue(catalogue, catalogue.with_suffix(".qm"))
        there = _by_text(catalogue)
        waiting = sum(not entry.finished for entry in there.values())
        print(f"{language}: {len(there)} texts, {waiting} wait for a translation")
        for context, source in before.keys() - there.keys():
            if before[context, source].translation:
                print(f"  gone: {context}: {source!r} ({before[context, source].translation!r})")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
