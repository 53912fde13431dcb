"""A share of the fault tests; all of them: ``python -m tests.faults``."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from tests.faults import PARTS

ROOT = Path(__file__).parent.parent


@pytest.mark.slow
@pytest.mark.parametrize("part", PARTS)
def test_what_was_saved_stands_after_any_harm(part: str) -> None:
    ended = subprocess.run(
        [sys.executable, "-W", "error", "-m", "tests.faults", "--share", part],
        cwd=ROOT,
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )
    assert ended.returncode == 0, ended.stdout + ended.stderr
