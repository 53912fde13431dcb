"""Version 2 of the schema, as it was shipped: never edited, only followed by further versions.

It adds briefs: dated facts drawn up from a trainee's record, kept so that the desk need not read
years of sets again. A brief is no record of its own. Whatever touches what it was drawn up from
takes it away in the same transaction, by triggers, so that no way of writing can forget to.
"""

from __future__ import annotations

BRIEF = """
CREATE TABLE brief (
    trainee_id INTEGER NOT NULL PRIMARY KEY REFERENCES trainee (id) ON DELETE CASCADE,
    made_by TEXT NOT NULL,
    first INTEGER NOT NULL,
    until INTEGER NOT NULL,
    next_days TEXT NOT NULL,
    value TEXT NOT NULL
){strict}
"""

_OF_A_TRAINEE = (
    "body_mass",
    "equipment_from",
    "activity",
    "deload_window",
    "absence",
    "dismissed_caution",
    "line",
    "goal",
    "assignment",
    "session",
)


def _trigger(table: str, event: str, which: str) -> str:
    return (
        f"CREATE TRIGGER brief_after_{event.lower()}_of_{table} AFTER {event} ON {table}"
        f" BEGIN DELETE FROM brief {which}; END"
    )


TRIGGERS = (
    *(
        _trigger(table, event, f"WHERE trainee_id = {row}.trainee_id")
        for table in _OF_A_TRAINEE
        for event, row in (("INSERT", "NEW"), ("UPDATE", "NEW"), ("DELETE", "OLD"))
    ),
    _trigger("trainee", "UPDATE", "WHERE trainee_id = NEW.id"),
    _trigger(
        "program",
        "UPDATE",
        "WHERE trainee_id IN (SELECT trainee_id FROM assignment WHERE program_id = NEW.id)",
    ),
    *(_trigger("exercise", event, "") for event in ("UPDATE", "DELETE")),
    *(_trigger("coach_settings", event, "") for event in ("INSERT", "UPDATE")),
)

STATEMENTS = (BRIEF, *TRIGGERS)
