"""Restoring: the backups there are, what one of them would change, and the way back to it.

The present file is always kept: as a good copy where it is sound, byte by byte where it is damaged.
"""

from __future__ import annotations

import shutil
from collections.abc import Iterable
from contextlib import closing, suppress
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from db.backup import day_of
from db.database import Database
from db.errors import DamagedFile, StoreError
from db.files import beside, free_name, make_private, replacing, write_through
from db.refusals import cannot_write
from db.seals import is_broken, put_seal, read_seal, seal_path
from desktop.training.name_order import name_key
from desktop.training.sentence import sentence

# Sessions change by their log; all else by the number of its revision.
_OF_TRAINEE = (
    "body_mass",
    "equipment_from",
    "line",
    "assignment",
    "activity",
    "deload_window",
    "absence",
    "goal",
    "dismissed_caution",
    "remembered_name",
)
_VERSIONS = """
    SELECT s.trainee_id, 1, s.id, s.revision || ' ' || coalesce(max(c.at), '')
    FROM session s LEFT JOIN session_change c ON c.session_id = s.id GROUP BY s.id
    UNION ALL SELECT id, 0, 'trainee ' || id, revision FROM trainee
""" + "".join(
    f" UNION ALL SELECT trainee_id, 0, '{table} ' || id, revision FROM {table}"
    for table in _OF_TRAINEE
)


@dataclass(frozen=True, slots=True)
class Backup:
    """A backup by its day and place, with its size in bytes."""

    path: Path
    day: date
    size: int


@dataclass(frozen=True, slots=True)
class Contents:
    """What a file holds: trainees, sessions, and the day of the last session."""

    trainees: int
    sessions: int
    last_session: date | None


@dataclass(frozen=True, slots=True)
class Difference:
    """How many sessions and other records of one trainee would go, come or change back."""

    trainee: str
    sessions_lost: int = 0
    sessions_back: int = 0
    sessions_changed: int = 0
    others_lost: int = 0
    others_back: int = 0
    others_changed: int = 0


@dataclass(frozen=True, slots=True)
class Preview:
    """What restoring would do. ``now`` and ``differences`` are unknown (None, empty) where the
    present file cannot be read; ``programs`` is whether programs differ.
    """

    then: Contents
    now: Contents | None = None
    differences: tuple[Difference, ...] = ()
    programs: bool = False


def backups_in(folder: Path) -> tuple[Backup, ...]:
    """The backups in ``folder``, the newest first; none where there is no folder."""
    try:
        dated = [(day, path) for path in folder.iterdir() if (day := day_of(path)) is not None]
        found = [Backup(path, day, path.stat().st_size) for day, path in dated]
    except FileNotFoundError:
        return ()
    except OSError as error:
        raise cannot_write(folder, error) from error
    return tuple(sorted(found, key=lambda backup: backup.day, reverse=True))


def contents_of(path: Path, passphrase: str = "") -> Contents:
    """What a file holds, once it has been found sound. Raises StoreError."""
    with closing(_opened_sound(path, passphrase)) as database:
        return _contents(database)


def newest_good(folder: Path, passphrase: str = "") -> tuple[Backup, Contents] | None:
    """The newest backup that is sound, with what it holds; None where there is none."""
    for backup in backups_in(folder):
        with suppress(StoreError):
            return backup, contents_of(backup.path, passphrase)
    return None


def preview(path: Path, backup: Path, passphrase: str = "") -> Preview:
    """What taking ``backup`` in place of ``path`` would change; reads only. Raises StoreError
    where the backup is not sound.
    """
    with closing(_opened_sound(backup, passphrase)) as then:
        try:
            now = Database.look_into(path, passphrase)
        except StoreError:
            return Preview(_contents(then))
        with closing(now):
            try:
                return Preview(
                    _contents(then), _contents(now), _differences(now, then), _programs(now, then)
                )
            except DamagedFile:
                return Preview(_contents(then))


def restore(
    path: Path, backup: Path, today: date, damaged: bool = False, passphrase: str = ""
) -> Path:
    """Take ``backup`` in place of ``path``; gives the copy of the present file that is kept.

    A sound file may be open meanwhile: its whole content changes in one transaction. A damaged one
    (found so here, or said to be so) must be closed everywhere. Raises StoreError; then the
    present file stands as it was.
    """
    with closing(_opened_sound(backup, passphrase)) as source:
        if damaged or is_broken(path, read_seal(path)):
            return _replace_damaged(path, source, today)
        try:
            present = Database.look_into(path, passphrase)
        except StoreError:
            return _replace_damaged(path, source, today)
        with closing(present):
            if present.quick_check():
                present.close()
                return _replace_damaged(path, source, today)
            kept = free_name(path, f"before-restoring-{today.isoformat()}")
            present.copy_to(kept)
        Database.refill(path, source)
    return kept


def _replace_damaged(path: Path, source: Database, today: date) -> Path:
    kept = free_name(path, f"damaged-{today.isoformat()}")
    try:
        for old, new in zip((path, *beside(path)), (kept, *beside(kept)), strict=True):
            if old.exists():
                make_private(new)
                shutil.copyfile(old, new)
                write_through(new)
        seal_path(path).unlink(missing_ok=True)
        with replacing(path) as fresh:
            source.copy_content_to(fresh)
            # The log of the damaged file must not be taken for one of the fresh file.
            for other in beside(path):
                other.unlink(missing_ok=True)
        put_seal(path)
    except OSError as error:
        raise cannot_write(path, error) from error
    return kept


def _opened_sound(path: Path, passphrase: str) -> Database:
    """A backup, only to be looked into; it is not migrated, nor changed in any way."""
    if is_broken(path, read_seal(path)):
        raise DamagedFile(
            sentence("{file} changed on the disk though nobody wrote to it.", file=path.name)
        )
    database = Database.look_into(path, passphrase)
    problems = database.quick_check()
    if problems:
        database.close()
        raise DamagedFile(
            sentence("{file} is damaged: {problems}", file=path.name, problems=problems[0]),
            sentence("Choose another backup."),
        )
    return database


def _contents(database: Database) -> Contents:
    ((trainees, sessions, last),) = database.execute(
        "SELECT (SELECT count(*) FROM trainee), (SELECT count(*) FROM session),"
        " (SELECT max(day) FROM session)"
    )
    return Contents(trainees, sessions, None if last is None else date.fromordinal(last))


def _differences(now: Database, then: Database) -> tuple[Difference, ...]:
    names = {**_names(then), **_names(now)}
    versions_now, versions_then = _versions(now), _versions(then)
    found = (
        _difference(name, versions_now.get(identity, {}), versions_then.get(identity, {}))
        for identity, name in sorted(names.items(), key=lambda item: name_key(item[1]))
    )
    return tuple(one for one in found if one != Difference(one.trainee))


def _names(database: Database) -> dict[int, str]:
    return dict(database.execute("SELECT id, name FROM trainee"))


Versions = dict[tuple[bool, object], object]


def _difference(name: str, now: Versions, then: Versions) -> Difference:
    def count(of_session: bool, keys: Iterable[tuple[bool, object]]) -> int:
        return sum(is_session == of_session for is_session, _ in keys)

    changed = [key for key in now.keys() & then.keys() if now[key] != then[key]]
    lost, back = now.keys() - then.keys(), then.keys() - now.keys()
    return Difference(
        name,
        *(count(True, keys) for keys in (lost, back, changed)),
        *(count(False, keys) for keys in (lost, back, changed)),
    )


def _versions(database: Database) -> dict[int, Versions]:
    found: dict[int, Versions] = {}
    for trainee_id, is_session, identity, version in database.stream(_VERSIONS):
        found.setdefault(trainee_id, {})[bool(is_session), identity] = version
    return found


def _programs(now: Database, then: Database) -> bool:
    sql = "SELECT id, name, revision FROM program ORDER BY id"
    return now.execute(sql) != then.execute(sql)
