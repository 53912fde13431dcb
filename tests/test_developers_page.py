"""The worked examples of DEVELOPERS.md say what the model does."""

from __future__ import annotations

import doctest
from pathlib import Path

PAGE = Path(__file__).resolve().parent.parent / "DEVELOPERS.md"


def test_every_worked_example_is_true() -> None:
    result = doctest.testfile(str(PAGE), module_relative=False)
    assert result.failed == 0
    assert result.attempted > 30
