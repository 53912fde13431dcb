"""Version 3 of the schema, as it was shipped: never edited, only followed by further versions.

It adds drafts of sessions: what is being typed, as it was typed, until it is saved. A draft is no
record: nothing is computed from it. ``session_id`` is 0 for a session that is not on record yet,
so that a trainee has one draft of each session and one new one a day.
"""

from __future__ import annotations

SESSION_DRAFT = """
CREATE TABLE session_draft (
    trainee_id INTEGER NOT NULL REFERENCES trainee (id) ON DELETE CASCADE,
    day INTEGER NOT NULL,
    session_id INTEGER NOT NULL,
    at_work INTEGER NOT NULL,
    value TEXT NOT NULL,
    PRIMARY KEY (trainee_id, day, session_id)
){strict}
"""

STATEMENTS = (SESSION_DRAFT,)
