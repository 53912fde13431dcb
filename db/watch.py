"""A watch over a data file: what was written since the last look, by whomever.

Temporary triggers note what this connection writes, whatever the way, and are undone with what
they noted; SQLite itself tells of other connections. So what is kept in memory is never older
than the file.
"""

from __future__ import annotations

from dataclasses import dataclass
from threading import get_ident
from typing import Final

from db.database import Database

_SESSION, _TRAINEE, _SHARED = "session", "trainee", "shared"
_EVENTS: Final = {"INSERT": ("new",), "UPDATE": ("new", "old"), "DELETE": ("old",)}
_WATCHED: Final = (  # kind, table, and the column that is noted: each write of a part touches it
    (_SESSION, "session", "id"),
    (_TRAINEE, "trainee", "id"),
    *(
        (_TRAINEE, table, "trainee_id")
        for table in (
            "line",
            "assignment",
            "body_mass",
            "equipment_from",
            "deload_window",
            "absence",
            "activity",
            "goal",
            "dismissed_caution",
        )
    ),
    *((_SHARED, table, "id") for table in ("exercise", "program", "coach_settings")),
)


def _trigger(kind: str, table: str, column: str, event: str) -> str:
    # Not "OR IGNORE": what the statement that sets it off says of conflicts would hold here too.
    noted = "".join(
        f" INSERT INTO touched SELECT '{kind}', {row}.{column} WHERE NOT EXISTS"
        f" (SELECT 1 FROM touched WHERE kind = '{kind}' AND id = {row}.{column});"
        for row in _EVENTS[event]
    )
    name = f"{table}_{event.lower()}"
    return f"CREATE TEMP TRIGGER {name} AFTER {event} ON main.{table} BEGIN{noted} END"


_STATEMENTS: Final = (
    "CREATE TEMP TABLE touched (kind TEXT, id INTEGER, PRIMARY KEY (kind, id)) WITHOUT ROWID",
    *(_trigger(*watched, event) for watched in _WATCHED for event in _EVENTS),
)


@dataclass(frozen=True, slots=True)
class Seen:
    """What was written since the last look: ``everything`` may be new, the ``sessions`` of these
    ids are, other facts of the ``trainees`` of these ids, or what is ``shared`` by all trainees
    (exercises, programs, settings).
    """

    everything: bool = False
    sessions: frozenset[int] = frozenset()
    trainees: frozenset[int] = frozenset()
    shared: bool = False


class Watch:
    """Serves the thread that made it; in another one, beside another watch over the same
    connection, and in a transaction that wrote what is watched and may yet be undone, it cannot
    tell.
    """

    def __init__(self, database: Database) -> None:
        self._database = database
        self._thread = get_ident()
        self._connection: object = None
        self._version = -1

    def begin(self) -> None:
        """Begin to note what is written; not within a transaction, which could undo that."""
        if get_ident() != self._thread or self._database.in_transaction:
            return
        connection = self._database.connection
        if connection is not self._connection and not self._taken():
            self._connection, self._version = connection, -1
            for statement in _STATEMENTS:
                self._database.execute(statement)

    def _taken(self) -> bool:
        """Whether another watch notes on this connection; what it notes is its own to forget."""
        return bool(
            self._database.execute("SELECT 1 FROM temp.sqlite_master WHERE name = 'touched'")
        )

    def look(self) -> Seen | None:
        """What was written since the last look; None where nobody can tell, and nothing that is
        read now may be kept.
        """
        self.begin()
        if get_ident() != self._thread or self._database.connection is not self._connection:
            return None
        rows = self._database.execute("SELECT kind, id FROM touched")
        if rows and self._database.in_transaction:
            return None
        if rows:
            self._database.execute("DELETE FROM touched")
        known, self._version = self._version, self._database.data_version
        sessions, trainees, shared = (
            frozenset(identity for kind, identity in rows if kind == wanted)
            for wanted in (_SESSION, _TRAINEE, _SHARED)
        )
        return Seen(known != self._version, sessions, trainees, bool(shared))
