"""Trainees: taking them in, all about one, who trains when, erasing one for good."""

from __future__ import annotations

from datetime import date

from db.trainee_files import read_trainees
from desktop import answers, paths
from desktop.planning.arrivals import take_trainees
from desktop.planning.everything_files import give_to_trainee
from desktop.planning.report import trainee_report
from desktop.planning.roster import roster as read_roster
from desktop.planning.safe_keeping import SafeKeeping
from desktop.verbs.data_files import (
    counted,
    data,
    database_path,
    identity,
    print_arrival,
    trainee_called,
)
from desktop.verbs.terminal import Options, Terminal, Wrong, print_json, print_lines


def import_trainees(terminal: Terminal, options: Options) -> None:
    """Add trainees from their file."""
    content = read_trainees(options.file)
    with data(options, create=True) as repository:
        print_arrival("trainee", take_trainees(repository, content))


def export_trainee(terminal: Terminal, options: Options) -> None:
    """Write all about one trainee, for that person: JSON and a table of the training."""
    with data(options) as repository:
        trainee = trainee_called(repository, options.trainee)
        content = give_to_trainee(repository, trainee, options.out)
    print(f"{counted(content)} written to {options.out}")


def roster(terminal: Terminal, options: Options) -> None:
    """Who trains when."""
    with data(options) as repository:
        entries = read_roster(repository, options.date or date.today())
    if options.json:
        print_json(answers.roster_values(entries))
    else:
        print_lines(answers.roster_text(entries))


def report(terminal: Terminal, options: Options) -> None:
    """A trainee's progress over a span as PDF."""
    with data(options) as repository:
        trainee = trainee_called(repository, options.trainee)
        last = options.to or date.today()
        found = trainee_report(repository, identity(trainee), options.first, last)
    if not found.sessions:
        raise Wrong(f"{trainee.name} did not train from {options.first} to {last}")
    sheets = terminal.sheets()
    try:
        pages = sheets.write_report_pdf(found, options.pdf)
    except sheets.SheetError as error:
        raise Wrong(str(error)) from error
    print(f"report of {trainee.name}, {pages} pages, written to {options.pdf}")


def erase(terminal: Terminal, options: Options) -> None:
    """Erase a trainee from the data file and its copies for good."""
    path = database_path(options)
    with data(options) as repository:
        trainee, old = trainee_called(repository, options.trainee), repository.database.passphrase
    if not options.yes:
        raise Wrong(
            f"all of {trainee.name} would be erased from {path} and from every copy of it, "
            "for good; say --yes to do it"
        )
    keeping = SafeKeeping(path, paths.backups_of(path), passphrase=old)
    erased = keeping.erase(identity(trainee), trainee.name)
    print(f"erased from {path} and {len(erased.rewritten)} copies")
    print_lines(f"removed, since it is damaged: {one}" for one in erased.removed)
    for mention in erased.mentions:
        print(f"the name still stands in {mention.table} {mention.number}: {mention.column}")
    if erased.left:
        raise Wrong("; ".join(f"{one} still holds it: {why}" for one, why in erased.left))
