"""Lines: the model on one, without a data file."""

from __future__ import annotations

from db.case_files import read_case
from desktop import answers
from desktop.training.asking import starting_state, target_on
from desktop.training.quantities import Unit
from desktop.training.replay import replay as replayed
from desktop.training.state import Context
from desktop.verbs.terminal import Options, Terminal, print_json, print_lines


def replay(terminal: Terminal, options: Options) -> None:
    """The model on one line, without a data file."""
    case = read_case(options.file)
    context = Context(settings=case.settings)
    start = starting_state(case.start, case.rule, case.surroundings, context)
    done = replayed(case.revisions, start, [one.event for one in case.events], context)
    target = None
    if case.ask_on:
        target = target_on(done.state, case.ask_on, context, deload=case.eased_on(case.ask_on))
    day = case.ask_on or max((step.day for step in done.steps), default=case.start.day)
    told = (done, target, Unit(options.unit or "kg"), day, terminal.sentence)
    if options.json:
        print_json(answers.replay_values(*told))
    else:
        print_lines(answers.replay_text(*told))
