"""The data file: its backups, whether it is sound, its passphrase, everything in one file."""

from __future__ import annotations

from contextlib import closing

from db.backup import back_up
from db.database import Database
from db.everything import fill, read_everything, read_file, write_file
from db.seals import remove_file
from desktop import paths
from desktop.passphrase_prompt import asked_twice
from desktop.planning.safe_keeping import SafeKeeping
from desktop.verbs.data_files import counted, data, database_path, identity
from desktop.verbs.terminal import Options, Terminal, Wrong, print_lines


def backup(terminal: Terminal, options: Options) -> None:
    """A copy of the data file, while it may be in use."""
    if options.file.exists() and not options.replace:
        raise Wrong(f"{options.file} is there already; name another file or say --replace")
    if options.file.resolve() == database_path(options).resolve():
        raise Wrong("a backup goes to another file than the data file itself")
    with data(options) as repository:
        back_up(repository.database, options.file)
    print(f"backed up to {options.file}")


def check(terminal: Terminal, options: Options) -> None:
    """Whether the data file is sound."""
    with data(options) as repository:
        problems = repository.database.quick_check()
        trainees = repository.trainees(archived=True)
        sessions = sum(len(repository.sessions(identity(trainee))) for trainee in trainees)
    if problems:
        print_lines(problems)
        raise Wrong(f"{database_path(options)} is damaged: {problems[0]}")
    print(f"sound: {len(trainees)} trainees, {sessions} sessions")


def passphrase(terminal: Terminal, options: Options) -> None:
    """Set, change or remove the passphrase of the data file and its copies."""
    path = database_path(options)
    with data(options) as repository:
        old = repository.database.passphrase
    new = "" if options.remove else asked_twice("New passphrase")
    if not new and not options.remove:
        raise Wrong("no passphrase was given, or not the same twice; nothing was changed")
    keeping = SafeKeeping(path, paths.backups_of(path), passphrase=old)
    left = keeping.change_passphrase(new)
    print(f"{path} {'has a passphrase now' if new else 'has no passphrase'}")
    if left:
        raise Wrong(f"left as they were: {', '.join(map(str, left))}")


def export_all(terminal: Terminal, options: Options) -> None:
    """Write everything as one file."""
    with data(options) as repository:
        content = read_everything(repository.database)
    write_file(content, options.file)
    print(f"{counted(content)} written to {options.file}")


def import_all(terminal: Terminal, options: Options) -> None:
    """Fill a new data file with everything from a file."""
    content, path = read_file(options.file), database_path(options)
    there = path.exists()
    with closing(Database.open(path)) as database:
        try:
            fill(database, content)
        except BaseException:
            database.close()
            if not there:
                remove_file(path)
            raise
    print(f"{counted(content)} taken into {path}")
