"""Version 1 of the schema, as it was shipped: never edited, only followed by further versions.

``{identity}``, ``{real}`` and ``{strict}`` are filled in by the dialect. Days are ordinals
(`date.toordinal`), masses grams, lengths millimetres; columns that hold a value object hold it as
JSON text. An identity is never given twice, so that what was removed can come back as itself.
"""

from __future__ import annotations

FILE = """
CREATE TABLE file_fact (
    name TEXT NOT NULL PRIMARY KEY,
    value TEXT NOT NULL
){strict};

CREATE TABLE coach_settings (
    id INTEGER NOT NULL PRIMARY KEY CHECK (id = 1),
    revision INTEGER NOT NULL,
    value TEXT NOT NULL
){strict};
"""

TRAINEES = """
CREATE TABLE trainee (
    id {identity},
    revision INTEGER NOT NULL,
    name TEXT NOT NULL UNIQUE CHECK (name <> ''),
    birth_year INTEGER,
    sex TEXT NOT NULL CHECK (sex IN ('m', 'f')),
    stature_mm INTEGER CHECK (stature_mm > 0),
    unit TEXT NOT NULL CHECK (unit IN ('kg', 'lb')),
    weekdays TEXT NOT NULL,
    minutes_per_session INTEGER CHECK (minutes_per_session > 0),
    experience TEXT NOT NULL,
    aims TEXT NOT NULL,
    avoid TEXT NOT NULL,
    screened INTEGER,
    screening_clear INTEGER CHECK (screening_clear IN (0, 1)),
    consent INTEGER,
    clearances TEXT NOT NULL,
    activities_recorded INTEGER NOT NULL CHECK (activities_recorded IN (0, 1)),
    notes TEXT NOT NULL,
    archived INTEGER NOT NULL CHECK (archived IN (0, 1))
){strict};

CREATE TABLE body_mass (
    id {identity},
    revision INTEGER NOT NULL,
    trainee_id INTEGER NOT NULL REFERENCES trainee (id) ON DELETE CASCADE,
    day INTEGER NOT NULL,
    mass_g INTEGER NOT NULL CHECK (mass_g > 0),
    UNIQUE (trainee_id, day)
){strict};

CREATE TABLE equipment_from (
    id {identity},
    revision INTEGER NOT NULL,
    trainee_id INTEGER NOT NULL REFERENCES trainee (id) ON DELETE CASCADE,
    day INTEGER NOT NULL,
    equipment TEXT NOT NULL,
    UNIQUE (trainee_id, day)
){strict};

CREATE TABLE activity (
    id {identity},
    revision INTEGER NOT NULL,
    trainee_id INTEGER NOT NULL REFERENCES trainee (id) ON DELETE CASCADE,
    day INTEGER NOT NULL,
    name TEXT NOT NULL,
    minutes INTEGER NOT NULL CHECK (minutes >= 0),
    effort {real} NOT NULL CHECK (effort BETWEEN 0 AND 10)
){strict};

CREATE TABLE deload_window (
    id {identity},
    revision INTEGER NOT NULL,
    trainee_id INTEGER NOT NULL REFERENCES trainee (id) ON DELETE CASCADE,
    first INTEGER NOT NULL,
    last INTEGER NOT NULL,
    sets_factor {real} NOT NULL CHECK (sets_factor > 0 AND sets_factor <= 1),
    load_percent {real} NOT NULL CHECK (load_percent BETWEEN 0 AND 100),
    planned INTEGER NOT NULL CHECK (planned IN (0, 1)),
    note TEXT NOT NULL,
    CHECK (first <= last)
){strict};

CREATE TABLE absence (
    id {identity},
    revision INTEGER NOT NULL,
    trainee_id INTEGER NOT NULL REFERENCES trainee (id) ON DELETE CASCADE,
    first INTEGER NOT NULL,
    last INTEGER,
    kind TEXT NOT NULL,
    note TEXT NOT NULL,
    CHECK (last IS NULL OR first <= last)
){strict};

CREATE TABLE dismissed_caution (
    id {identity},
    revision INTEGER NOT NULL,
    trainee_id INTEGER NOT NULL REFERENCES trainee (id) ON DELETE CASCADE,
    limit_id TEXT NOT NULL,
    evidence TEXT NOT NULL,
    day INTEGER NOT NULL,
    why TEXT NOT NULL
){strict};
"""

EXERCISES = """
CREATE TABLE exercise (
    id {identity},
    revision INTEGER NOT NULL,
    key TEXT NOT NULL UNIQUE CHECK (key <> ''),
    name TEXT NOT NULL CHECK (name <> ''),
    pattern TEXT NOT NULL,
    loading TEXT NOT NULL,
    measure TEXT NOT NULL CHECK (measure IN ('reps', 'hold')),
    implements INTEGER NOT NULL CHECK (implements > 0),
    unilateral INTEGER NOT NULL CHECK (unilateral IN (0, 1)),
    increment_g INTEGER NOT NULL CHECK (increment_g > 0),
    heights TEXT NOT NULL,
    cue TEXT NOT NULL,
    other_names TEXT NOT NULL,
    needs TEXT NOT NULL,
    own INTEGER NOT NULL CHECK (own IN (0, 1)),
    retired INTEGER NOT NULL CHECK (retired IN (0, 1))
){strict};

CREATE TABLE muscle_share (
    exercise_id INTEGER NOT NULL REFERENCES exercise (id) ON DELETE CASCADE,
    place INTEGER NOT NULL,
    muscle TEXT NOT NULL,
    direct INTEGER NOT NULL CHECK (direct IN (0, 1)),
    PRIMARY KEY (exercise_id, direct, place)
){strict};

CREATE TABLE variation (
    exercise_id INTEGER NOT NULL REFERENCES exercise (id) ON DELETE CASCADE,
    place INTEGER NOT NULL,
    key TEXT NOT NULL CHECK (key <> ''),
    name TEXT NOT NULL CHECK (name <> ''),
    family TEXT NOT NULL,
    geometry_kind TEXT CHECK (geometry_kind IN ('push_up', 'row', 'hold', 'share')),
    geometry TEXT,
    needs TEXT NOT NULL,
    PRIMARY KEY (exercise_id, place),
    UNIQUE (exercise_id, key),
    CHECK ((geometry_kind IS NULL) = (geometry IS NULL))
){strict};

CREATE TABLE remembered_name (
    id {identity},
    revision INTEGER NOT NULL,
    trainee_id INTEGER NOT NULL REFERENCES trainee (id) ON DELETE CASCADE,
    text TEXT NOT NULL CHECK (text <> ''),
    exercise TEXT NOT NULL REFERENCES exercise (key),
    UNIQUE (trainee_id, text)
){strict};
"""

LINES = """
CREATE TABLE line (
    id {identity},
    revision INTEGER NOT NULL,
    trainee_id INTEGER NOT NULL REFERENCES trainee (id) ON DELETE CASCADE,
    exercise TEXT NOT NULL REFERENCES exercise (key),
    name TEXT NOT NULL,
    UNIQUE (trainee_id, exercise, name)
){strict};

CREATE TABLE rule_revision (
    line_id INTEGER NOT NULL REFERENCES line (id) ON DELETE CASCADE,
    place INTEGER NOT NULL,
    day INTEGER NOT NULL,
    rule TEXT NOT NULL,
    PRIMARY KEY (line_id, place)
){strict};

CREATE TABLE line_start (
    line_id INTEGER NOT NULL REFERENCES line (id) ON DELETE CASCADE,
    place INTEGER NOT NULL,
    day INTEGER NOT NULL,
    position TEXT NOT NULL,
    kind TEXT NOT NULL,
    plus_minus {real} CHECK (plus_minus >= 0),
    PRIMARY KEY (line_id, place)
){strict};

CREATE TABLE line_override (
    line_id INTEGER NOT NULL REFERENCES line (id) ON DELETE CASCADE,
    place INTEGER NOT NULL,
    day INTEGER NOT NULL,
    position TEXT NOT NULL,
    note TEXT NOT NULL,
    entry INTEGER NOT NULL,
    PRIMARY KEY (line_id, place)
){strict};

CREATE TABLE goal (
    id {identity},
    revision INTEGER NOT NULL,
    trainee_id INTEGER NOT NULL REFERENCES trainee (id) ON DELETE CASCADE,
    line_id INTEGER NOT NULL REFERENCES line (id) ON DELETE CASCADE,
    kind TEXT NOT NULL,
    value INTEGER NOT NULL,
    variation TEXT,
    by_day INTEGER,
    note TEXT NOT NULL
){strict};
"""

PROGRAMS = """
CREATE TABLE program (
    id {identity},
    revision INTEGER NOT NULL,
    name TEXT NOT NULL UNIQUE CHECK (name <> ''),
    about TEXT NOT NULL,
    deload_every INTEGER CHECK (deload_every > 0)
){strict};

CREATE TABLE phase (
    program_id INTEGER NOT NULL REFERENCES program (id) ON DELETE CASCADE,
    place INTEGER NOT NULL,
    name TEXT NOT NULL,
    weeks INTEGER NOT NULL CHECK (weeks > 0),
    purpose TEXT NOT NULL,
    PRIMARY KEY (program_id, place)
){strict};

CREATE TABLE training_day (
    program_id INTEGER NOT NULL,
    phase_place INTEGER NOT NULL,
    place INTEGER NOT NULL,
    name TEXT NOT NULL,
    weekday INTEGER CHECK (weekday BETWEEN 0 AND 6),
    PRIMARY KEY (program_id, phase_place, place),
    FOREIGN KEY (program_id, phase_place) REFERENCES phase (program_id, place) ON DELETE CASCADE
){strict};

CREATE TABLE slot (
    program_id INTEGER NOT NULL,
    phase_place INTEGER NOT NULL,
    day_place INTEGER NOT NULL,
    place INTEGER NOT NULL,
    exercise TEXT NOT NULL REFERENCES exercise (key),
    line_name TEXT NOT NULL,
    rule TEXT NOT NULL,
    start TEXT NOT NULL,
    rest_s INTEGER NOT NULL CHECK (rest_s >= 0),
    tempo TEXT NOT NULL,
    pair TEXT NOT NULL,
    note TEXT NOT NULL,
    PRIMARY KEY (program_id, phase_place, day_place, place),
    FOREIGN KEY (program_id, phase_place, day_place)
        REFERENCES training_day (program_id, phase_place, place) ON DELETE CASCADE
){strict};

CREATE TABLE assignment (
    id {identity},
    revision INTEGER NOT NULL,
    trainee_id INTEGER NOT NULL REFERENCES trainee (id) ON DELETE CASCADE,
    program_id INTEGER NOT NULL REFERENCES program (id) ON DELETE CASCADE,
    start INTEGER NOT NULL,
    weekdays TEXT NOT NULL,
    ended INTEGER
){strict};
"""

SESSIONS = """
-- The program is no foreign key: that a session was planned by one remains true of a removed one.
CREATE TABLE session (
    id {identity},
    revision INTEGER NOT NULL,
    trainee_id INTEGER NOT NULL REFERENCES trainee (id) ON DELETE CASCADE,
    day INTEGER NOT NULL,
    entry INTEGER NOT NULL,
    effort {real} CHECK (effort BETWEEN 0 AND 10),
    minutes INTEGER CHECK (minutes >= 0),
    sleep INTEGER CHECK (sleep BETWEEN 1 AND 5),
    soreness INTEGER CHECK (soreness BETWEEN 1 AND 5),
    stress INTEGER CHECK (stress BETWEEN 1 AND 5),
    motivation INTEGER CHECK (motivation BETWEEN 1 AND 5),
    note TEXT NOT NULL,
    red_flag INTEGER NOT NULL CHECK (red_flag IN (0, 1)),
    program_id INTEGER,
    week INTEGER,
    day_name TEXT NOT NULL
){strict};

CREATE TABLE line_done (
    session_id INTEGER NOT NULL REFERENCES session (id) ON DELETE CASCADE,
    place INTEGER NOT NULL,
    line_id INTEGER NOT NULL REFERENCES line (id),
    exercise TEXT NOT NULL REFERENCES exercise (key),
    asked TEXT NOT NULL,
    deload INTEGER NOT NULL CHECK (deload IN (0, 1)),
    test INTEGER NOT NULL CHECK (test IN (0, 1)),
    skipped INTEGER NOT NULL CHECK (skipped IN (0, 1)),
    reason TEXT NOT NULL,
    note TEXT NOT NULL,
    PRIMARY KEY (session_id, place)
){strict};

-- Line, exercise and day stand here again, so that charts read one index and nothing else.
CREATE TABLE set_done (
    session_id INTEGER NOT NULL,
    line_place INTEGER NOT NULL,
    place INTEGER NOT NULL,
    line_id INTEGER NOT NULL REFERENCES line (id),
    exercise TEXT NOT NULL REFERENCES exercise (key),
    day INTEGER NOT NULL,
    load_g INTEGER NOT NULL CHECK (load_g BETWEEN -2000000 AND 2000000),
    reps INTEGER CHECK (reps >= 0),
    seconds INTEGER CHECK (seconds >= 0),
    variation TEXT,
    rir {real} CHECK (rir >= 0),
    tempo_s INTEGER CHECK (tempo_s >= 0),
    warm_up INTEGER NOT NULL CHECK (warm_up IN (0, 1)),
    pain INTEGER NOT NULL CHECK (pain BETWEEN 0 AND 10),
    side TEXT NOT NULL CHECK (side IN ('', 'left', 'right')),
    note TEXT NOT NULL,
    PRIMARY KEY (session_id, line_place, place),
    FOREIGN KEY (session_id, line_place) REFERENCES line_done (session_id, place)
        ON DELETE CASCADE
){strict};

CREATE TABLE session_change (
    id {identity},
    revision INTEGER NOT NULL,
    trainee_id INTEGER NOT NULL REFERENCES trainee (id) ON DELETE CASCADE,
    session_id INTEGER NOT NULL REFERENCES session (id) ON DELETE CASCADE,
    at TEXT NOT NULL,
    what TEXT NOT NULL,
    before TEXT
){strict};
"""

INDEXES = (
    "CREATE INDEX session_of_trainee ON session (trainee_id, day, entry)",
    "CREATE INDEX line_of_exercise ON line (exercise)",
    "CREATE INDEX slot_of_exercise ON slot (exercise)",
    "CREATE INDEX assignment_of_trainee ON assignment (trainee_id, start)",
    "CREATE INDEX assignment_of_program ON assignment (program_id)",
    "CREATE INDEX line_done_of_line ON line_done (line_id)",
    "CREATE INDEX line_done_of_exercise ON line_done (exercise)",
    "CREATE INDEX set_of_line ON set_done (line_id, day, load_g, reps)",
    "CREATE INDEX set_of_exercise ON set_done (exercise, day, load_g, reps)",
    "CREATE INDEX change_of_session ON session_change (session_id)",
    "CREATE INDEX change_of_trainee ON session_change (trainee_id)",
    "CREATE INDEX activity_of_trainee ON activity (trainee_id, day)",
    "CREATE INDEX deload_of_trainee ON deload_window (trainee_id, first)",
    "CREATE INDEX absence_of_trainee ON absence (trainee_id, first)",
    "CREATE INDEX goal_of_trainee ON goal (trainee_id)",
    "CREATE INDEX goal_of_line ON goal (line_id)",
    "CREATE INDEX dismissed_of_trainee ON dismissed_caution (trainee_id)",
    "CREATE INDEX remembered_of_exercise ON remembered_name (exercise)",
)

STATEMENTS = (
    *(
        statement.strip()
        for tables in (FILE, TRAINEES, EXERCISES, LINES, PROGRAMS, SESSIONS)
        for statement in tables.split(";\n")
        if statement.strip()
    ),
    *INDEXES,
)
