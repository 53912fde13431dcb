"""What every work area is: a widget over the record that shows one trainee, or all."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from db.changes import Changes
from views.record import Record
from views.theme import Theme

if TYPE_CHECKING:
    from desktop.planning.caution_ways import WayKind
    from desktop.planning.session_draft import SessionDraft
    from desktop.training.recovery import Caution


class WorkArea(QWidget):
    """Base of the screens in the middle of the window. Subclasses override `refresh`.

    ``trainee_id`` is the trainee chosen in the roster (None: none). `refresh` is called when that
    changes and when the record changes while the area is shown; a hidden area is refreshed when
    it is shown again. `leave` is asked before another area or trainee is shown: keep drafts there.
    ``session_wanted`` names a session that the session area is to open, ``draft_wanted`` gives a
    draft, ``everything_brought`` a file that holds everything. ``drawn``: what takes its time to be
    drawn stands on the screen.
    """

    trainee_wanted = Signal(int)
    area_wanted = Signal(str)
    session_wanted = Signal(int)
    draft_wanted = Signal(object)
    everything_brought = Signal(Path)
    drawn = Signal()

    def __init__(
        self, record: Record, today: date, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.record = record
        self.today = today
        self.theme = theme
        self.trainee_id: int | None = None
        self.stale = True
        self.outer = QVBoxLayout(self)
        self.outer.setContentsMargins(0, 0, 0, 0)
        self.outer.setSpacing(0)
        record.changed.connect(self._record_changed)

    @property
    def stood_on(self) -> int | None:
        """The trainee whom the cursor stands on, where all are shown: whose the next screen is."""
        return None

    def show_trainee(self, trainee_id: int | None) -> None:
        """Show another trainee."""
        if trainee_id != self.trainee_id:
            self.leave()
            self.trainee_id = trainee_id
            self.stale = True
        self.bring_up_to_date()

    def bring_up_to_date(self) -> None:
        """Refresh where something changed since the last time."""
        if self.stale and self.isVisible():
            self.stale = False
            self.refresh()

    def refresh(self) -> None:
        """Read from the record and show."""

    def show_session(self, session_id: int) -> None:
        """Show one session of the trainee, where the area can."""

    def resume(self, draft: SessionDraft) -> None:
        """Show a draft of a session of the trainee, where the area can."""

    def take_focus(self) -> None:
        """Put the cursor where work begins, where it went away with the screen before."""

    def take_up(self, caution: Caution) -> None:
        """Put the cursor on what can be done about a caution, where the area can."""

    def follow(self, caution: Caution, kind: WayKind) -> None:
        """Go where a way out of a caution leads, where that is in the area."""

    def show_part(self, code: str) -> None:
        """Show one of several parts, where the area has any."""

    def open_file(self, path: Path) -> None:
        """Open a file that was dropped on the window, where the area can."""

    def keys(self) -> Sequence[tuple[str, str]]:
        """What keys do here, for the keyboard map: (what it does, the key)."""
        return ()

    def recall(self, kept: str) -> None:
        """Stand as the coach left the screen last time, as `to_recall` told it."""

    def to_recall(self) -> str:
        """What this computer keeps of how the coach left the screen; "" for nothing."""
        return ""

    def leave(self) -> None:
        """Something else will be shown: save drafts."""

    def concerns(self, changes: Changes) -> bool:
        """Whether a change may alter what this area shows; all trainees' changes do. A change of
        no kind says only that the roster is complete.
        """
        touched = not changes.trainees or self.trainee_id in changes.trainees
        return bool(changes.kinds) and touched

    def showEvent(self, event: object) -> None:
        super().showEvent(event)  # type: ignore[arg-type]
        self.bring_up_to_date()

    def _record_changed(self, changes: Changes) -> None:
        if self.concerns(changes):
            self.stale = True
            self.bring_up_to_date()
