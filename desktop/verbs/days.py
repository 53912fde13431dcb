"""Days: what one asks, its sheet, and what notes say was done."""

from __future__ import annotations

from datetime import date

from db.repository import Repository
from desktop import answers
from desktop.note_answers import noted_text, noted_values
from desktop.planning.days import DayPlan, day_plan
from desktop.planning.groups import group_plans
from desktop.planning.noted import read_noted
from desktop.verbs.data_files import data, identity, trainee_called
from desktop.verbs.terminal import Options, Terminal, Wrong, print_json, print_lines


def targets(terminal: Terminal, options: Options) -> None:
    """What a trainee is asked on a day, and why."""
    with data(options) as repository:
        plan = _plan(repository, options)
    if options.json:
        print_json(answers.targets(plan, terminal.sentence))
    else:
        print_lines(answers.targets_text(plan, terminal.sentence))


def sheet(terminal: Terminal, options: Options) -> None:
    """The printed sheet of a day."""
    if options.group:
        _group_sheet(terminal, options)
        return
    with data(options) as repository:
        plan = _plan(repository, options)
    if not plan.slots:
        why = answers.WHY_EMPTY.get(plan.why_empty, "the day is empty")
        raise Wrong(f"there is no sheet for {plan.trainee.name} on {plan.day}: {why}")
    terminal.write_sheet(plan, options.pdf)
    print(f"sheet written to {options.pdf}")


def read_notes(terminal: Terminal, options: Options) -> None:
    """What free-text notes say was done; nothing is saved."""
    try:
        text = options.file.read_text(encoding="utf-8-sig")
    except UnicodeDecodeError:
        raise Wrong(f"{options.file} is no text in UTF-8; save it as such") from None
    with data(options) as repository:
        trainee = trainee_called(repository, options.trainee)
        noted = read_noted(
            repository,
            identity(trainee),
            text,
            options.date or date.today(),
            day_first=options.dates != "month-first",
        )
    if options.json:
        print_json(noted_values(noted))
    else:
        print_lines(noted_text(noted))


def _group_sheet(terminal: Terminal, options: Options) -> None:
    """One sheet for all who train on the day."""
    day = options.date or date.today()
    with data(options) as repository:
        plans = group_plans(repository, day)
    sheets = terminal.sheets()
    try:
        sheets.write_group_pdf(plans, day, options.pdf)
    except sheets.SheetError as error:
        raise Wrong(str(error)) from error
    print(f"sheet of {len(plans)} trainees written to {options.pdf}")


def _plan(repository: Repository, options: Options) -> DayPlan:
    trainee = trainee_called(repository, options.trainee)
    return day_plan(repository, identity(trainee), options.date or date.today())
