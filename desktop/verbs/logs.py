"""Training logs: taking them in, writing them."""

from __future__ import annotations

from datetime import date, timedelta
from pathlib import Path
from typing import Final

from db.database import MEMORY
from db.log_export import COMMA_STYLE, LogStyle, write_log
from db.log_files import read_log, write_back
from db.log_import import ImportPlan, plan_import
from db.log_saving import carry_out
from desktop.training.quantities import Unit
from desktop.verbs.data_files import data, database_path, opened, trainee_called
from desktop.verbs.terminal import Options, Terminal, Wrong, print_lines

AHEAD: Final = timedelta(days=366)
"""So far ahead may the dates of a log lie; later ones are slips of the year."""


def import_log(terminal: Terminal, options: Options) -> None:
    """Take the good lines of a log, hand back the bad ones."""
    preview = read_log(
        options.file,
        trainee=options.trainee or "",
        unit=Unit(options.unit) if options.unit else None,
        date_order=options.dates.replace("-", " ") if options.dates else None,
        latest=date.today() + AHEAD,
    )
    names = dict(options.name or ())
    path: Path | str = database_path(options)
    if options.preview and not Path(path).exists():
        path = MEMORY
    with opened(path, create=True) as repository:
        plan = plan_import(repository, preview, names, options.new_trainees)
        _print_plan(plan)
        if options.preview:
            _print_preview(plan)
            return
        result = carry_out(repository, plan)
    for name, _ in plan.new_trainees:
        print(f"new trainee: {name}")
    print(
        f"taken: {len(plan.taken)} lines, {result.new_sessions} new sessions, "
        f"{result.extended_sessions} completed, {result.sets} sets, "
        f"{result.body_masses} body masses, {result.activities} other activities; "
        f"already there: {result.doubles} lines"
    )
    if plan.reasons:
        target = options.rejects or options.file.with_name(f"{options.file.stem}.not-taken.csv")
        write_back(preview, plan.reasons, target)
        raise Wrong(f"{len(plan.reasons)} lines were not taken; they and why are in {target}")


def export_log(terminal: Terminal, options: Options) -> None:
    """Write what was done as a log."""
    style = COMMA_STYLE if options.decimal_comma else LogStyle()
    with data(options) as repository:
        everybody = repository.trainees(archived=True)
        chosen = [trainee_called(repository, options.trainee)] if options.trainee else everybody
        count = write_log(repository, options.file, chosen, style)
    print(f"{count} lines written to {options.file}")


def _print_plan(plan: ImportPlan) -> None:
    print_lines(f"note: {remark}" for remark in plan.remarks)
    print_lines(str(problem) for problem in (*plan.problems, *plan.held_back))


def _print_preview(plan: ImportPlan) -> None:
    print(
        f"would be taken: {len(plan.taken)} lines, {len(plan.sessions)} sessions; "
        f"already there: {len(plan.doubles)} lines"
    )
    if plan.reasons:
        raise Wrong(f"{len(plan.reasons)} lines would not be taken")
