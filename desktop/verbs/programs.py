"""Programs: taking them in, giving them out, drafting and assigning them."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from db.database import MEMORY
from db.program_files import read_program, write_program
from desktop.planning.arrivals import take_program
from desktop.planning.assignments import assign as plan_assignment
from desktop.planning.drafts import (
    Aim,
    EquipmentClass,
    InvalidWish,
    Relaxation,
    Wish,
    draft_program,
    wishes_for_class,
)
from desktop.planning.history import read_history, read_library
from desktop.planning.outlook import Onlooker
from desktop.planning.weeks_table import program_weeks
from desktop.training.trainee import Experience
from desktop.verbs.data_files import (
    data,
    database_path,
    identity,
    opened,
    print_arrival,
    program_called,
    trainee_called,
)
from desktop.verbs.terminal import Options, Terminal, Wrong


def import_program(terminal: Terminal, options: Options) -> None:
    """Add a program from its file."""
    program = read_program(options.file)
    with data(options, create=True) as repository:
        print_arrival("program", take_program(repository, program))


def export_program(terminal: Terminal, options: Options) -> None:
    """Write a program as a file."""
    with data(options) as repository:
        program = repository.program(program_called(repository, options.program))
    write_program(program, options.file)
    print(f"{program.name} written to {options.file}")


def print_program(terminal: Terminal, options: Options) -> None:
    """A whole program as PDF: for a trainee from where they stand, else from its starts."""
    with data(options) as repository:
        library = read_library(repository)
        program = library.programs[program_called(repository, options.program)]
        history = None
        if options.trainee:
            trainee = trainee_called(repository, options.trainee)
            history = read_history(repository, identity(trainee), library)
        today = options.date or date.today()
        weeks = program_weeks(program, Onlooker(library, today, history))
    sheets = terminal.sheets()
    try:
        pages = sheets.write_program_pdf(weeks, options.pdf)
    except sheets.SheetError as error:
        raise Wrong(str(error)) from error
    print(f"{program.name}, {pages} pages, written to {options.pdf}")


def assign(terminal: Terminal, options: Options) -> None:
    """Give a program to a trainee."""
    with data(options) as repository:
        trainee = trainee_called(repository, options.trainee)
        planned = plan_assignment(
            repository,
            identity(trainee),
            program_called(repository, options.program),
            options.start,
            options.weekdays or (),
        )
        repository.save(*planned.aggregates)
        program = repository.program(planned.assignment.program_id)
    for ended in planned.ended:
        print(f"what was assigned before ends on {ended.ended}")
    print(f"{trainee.name} trains by {program.name} from {options.start} on")


def draft(terminal: Terminal, options: Options) -> None:
    """Draft a program from wishes, or say which wish to relax."""
    path = database_path(options)
    with opened(path if path.exists() else MEMORY, create=not path.exists()) as repository:
        try:
            wishes = wishes_for_class(
                repository,
                EquipmentClass(options.equipment),
                options.days,
                options.minutes,
                Experience(options.level),
                Aim(options.goal),
                tuple(options.avoid or ()),
            )
        except InvalidWish as error:
            raise Wrong(str(error)) from None
        drafted = draft_program(repository, wishes)
    if drafted.program is None:
        raise Wrong(f"no program meets all of this; {_relaxed(drafted.relaxations)}")
    write_program(drafted.program, options.out)
    print(f"{drafted.program.name}, {drafted.program.weeks} weeks, written to {options.out}")


def _relaxed(relaxations: Sequence[Relaxation]) -> str:
    """Which wish to relax, the smallest change first."""
    words = {
        Wish.MINUTES: "relax the minutes to {} a session",
        Wish.DAYS: "relax the days to {} a week",
        Wish.EQUIPMENT: "relax the equipment to {}",
        Wish.AVOID: "relax what is to be avoided: allow {}",
    }
    said = [words[one.wish].format(one.to) for one in relaxations]
    return ", or ".join(said) or "relax more than one wish"
