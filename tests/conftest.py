"""What holds for every test: offscreen, nobody's own settings, no unexpected log record."""

from __future__ import annotations

import gc
import logging
import os
import tempfile
from collections.abc import Iterator
from pathlib import Path

# Before anything imports Qt or asks for a folder.
os.environ["QT_QPA_PLATFORM"] = "offscreen"
_HOME = tempfile.TemporaryDirectory(prefix="rungwise-tests-")
os.environ["RUNGWISE_HOME"] = _HOME.name

import pytest
from hypothesis import HealthCheck, settings

# The same examples every time, so that a failure here is a failure everywhere; a long, random
# search is asked for with HYPOTHESIS_PROFILE=long.
settings.register_profile(
    "same",
    derandomize=True,
    database=None,
    deadline=None,
    max_examples=25,
    suppress_health_check=[HealthCheck.too_slow],
)
settings.register_profile("long", deadline=None, max_examples=2000)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "same"))

GUI_FIXTURES = {"qapp", "qtbot", "qtmodeltester"}
FILE_FIXTURES = {"tmp_path", "tmp_path_factory"}


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Mark what needs a Qt application or files, so that the pure suite runs alone in seconds."""
    for item in items:
        fixtures = set(getattr(item, "fixturenames", ()))
        if fixtures & GUI_FIXTURES:
            item.add_marker(pytest.mark.gui)
        if fixtures & FILE_FIXTURES:
            item.add_marker(pytest.mark.files)


def pytest_collection_finish() -> None:
    """Modules and tests stay to the end: collections between tests need not look at them again,
    which took a sixth of a second each.
    """
    gc.collect()
    gc.freeze()


def pytest_unconfigure() -> None:
    """Take the tests' home away again."""
    _HOME.cleanup()


class _Unexpected(logging.Handler):
    def __init__(self) -> None:
        super().__init__(logging.WARNING)
        self.said: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        self.said.append(f"{record.levelname} {record.name}: {record.getMessage()}")


@pytest.fixture(autouse=True)
def _no_unexpected_log_record(request: pytest.FixtureRequest) -> Iterator[None]:
    """A warning or worse in the log fails the test, unless the test asks for caplog."""
    if "caplog" in request.fixturenames:
        yield
        return
    handler = _Unexpected()
    logging.getLogger().addHandler(handler)
    try:
        yield
    finally:
        logging.getLogger().removeHandler(handler)
    if handler.said:
        pytest.fail("unexpected in the log:\n" + "\n".join(handler.said), pytrace=False)


@pytest.fixture(autouse=True)
def _nothing_left_of_the_screen(request: pytest.FixtureRequest) -> Iterator[None]:
    """Widgets given to deleteLater go before the next test, not in the middle of it."""
    yield
    if GUI_FIXTURES.intersection(request.fixturenames):
        from PySide6.QtCore import QCoreApplication, QEvent

        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
        gc.collect()


@pytest.fixture
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A home of this test's own for settings, data and logs."""
    monkeypatch.setenv("RUNGWISE_HOME", str(tmp_path))
    return tmp_path


@pytest.fixture
def english() -> Iterator[None]:
    """Numbers and dates as in English with metric units, whatever the machine says."""
    yield from _in_locale("en_GB")


@pytest.fixture
def german() -> Iterator[None]:
    """Decimal comma, points between thousands."""
    yield from _in_locale("de_DE")


def _in_locale(name: str) -> Iterator[None]:
    from PySide6.QtCore import QLocale

    before = QLocale()
    QLocale.setDefault(QLocale(name))
    try:
        yield
    finally:
        QLocale.setDefault(before)
