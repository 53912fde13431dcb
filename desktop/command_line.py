"""The same use cases without a window: `python -m desktop VERB`.

Imports neither screens nor Qt; words, sheets and pictures are handed in. Results go to standard
output, what is wrong in one line to standard error. Exit status: 0; 1 when something is wrong;
2 for wrong usage.
"""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import closing, contextmanager, suppress
from datetime import date, timedelta
from pathlib import Path
from typing import Any, Protocol

from db.backup import back_up
from db.case_files import read_case
from db.database import MEMORY, Database
from db.errors import PassphraseNeeded, StoreError
from db.everything import Everything, fill, of_trainee, read_everything, read_file, write_file
from db.json_files import InvalidFile
from db.log_export import COMMA_STYLE, LogStyle, write_log
from db.log_files import UnreadableLog, read_log, write_back
from db.log_import import ImportPlan, plan_import
from db.log_names import nearest
from db.log_saving import carry_out
from db.program_files import read_program, write_program
from db.repository import Repository
from db.seals import remove_file
from db.trainee_files import read_trainees
from desktop import answers, demo, menu_entry, paths, tour
from desktop.arguments import parser
from desktop.catalogue import load_catalogue
from desktop.entries import EntryError
from desktop.note_answers import noted_text, noted_values
from desktop.passphrase_prompt import asked, asked_twice
from desktop.planning.arrivals import Arrival, CannotTake, take_program, take_trainees
from desktop.planning.assignments import CannotAssign, assign
from desktop.planning.days import DayPlan, day_plan
from desktop.planning.drafts import (
    Aim,
    EquipmentClass,
    InvalidWish,
    Relaxation,
    Wish,
    draft_program,
    wishes_for_class,
)
from desktop.planning.groups import group_plans
from desktop.planning.history import read_history, read_library
from desktop.planning.noted import read_noted
from desktop.planning.outlook import Onlooker
from desktop.planning.program_weeks import ProgramWeeks
from desktop.planning.report import ReportError, TraineeReport, trainee_report
from desktop.planning.roster import roster
from desktop.planning.safe_keeping import SafeKeeping
from desktop.planning.weeks_table import program_weeks
from desktop.training.asking import starting_state, target_on
from desktop.training.quantities import Unit
from desktop.training.reasons import Reason
from desktop.training.replay import replay
from desktop.training.state import Context
from desktop.training.trainee import Experience, Trainee

AHEAD = timedelta(days=366)
"""So far ahead may the dates of a log lie; later ones are slips of the year."""


class Words(Protocol):
    """What says a reason in words."""

    def reason_text(self, reason: Reason, unit: Unit, today: date | None = None) -> str:
        """One sentence."""
        ...


class Sheets(Protocol):
    """What makes the printed sheet of a day."""

    SheetError: type[Exception]

    def write_pdf(self, plan: DayPlan, path: Path) -> None:
        """Write the sheet as PDF."""
        ...

    def write_program_pdf(self, weeks: ProgramWeeks, path: Path) -> int:
        """Write a whole program as PDF; how many pages it has."""
        ...

    def write_report_pdf(self, report: TraineeReport, path: Path) -> int:
        """Write a trainee's progress report as PDF; how many pages it has."""
        ...

    def write_group_pdf(self, plans: Sequence[DayPlan], day: date, path: Path) -> int:
        """Write the sheet of several trainees as PDF; how many pages it has."""
        ...


class Wrong(Exception):
    """Something is wrong; the text is the line that says what."""


Fetch = Callable[[], Sheets]
Painter = Callable[[Repository, date, Path], Sequence[Path]]
Options = argparse.Namespace


def main(
    arguments: Sequence[str], words: Words, sheets: Fetch, pictures: Painter | None = None
) -> int:
    """Do what the arguments ask for; the exit status.

    ``sheets`` is called only when a sheet is wanted; ``pictures`` draws the screens of a data
    file into a folder.
    """
    try:
        options = parser().parse_args(arguments)
    except SystemExit as stop:
        return int(stop.code or 0)
    verbs = Verbs(words, sheets, pictures)
    try:
        getattr(verbs, options.verb.replace("-", "_"))(options)
    except Wrong as error:
        return _complain(str(error))
    except StoreError as error:
        return _complain(f"{error} {error.remedy}")
    except (UnreadableLog, InvalidFile, CannotTake, CannotAssign, EntryError, ReportError) as error:
        return _complain(str(error))
    except BrokenPipeError:
        with suppress(OSError):
            sys.stdout.close()
    except OSError as error:
        return _complain(f"{error.filename or 'file'}: {error.strerror or error}")
    return 0


def _complain(text: str) -> int:
    print(f"rungwise: {' '.join(text.split())}", file=sys.stderr)
    return 1


class Verbs:
    """One method for each verb, named like it."""

    def __init__(self, words: Words, sheets: Fetch, pictures: Painter | None) -> None:
        self._words = words
        self._sheets = sheets
        self._pictures = pictures

    # --- bringing in and giving out ---------------------------------------------------------

    def import_log(self, options: Options) -> None:
        """Take the good lines of a log, hand back the bad ones."""
        preview = read_log(
            options.file,
            trainee=options.trainee or "",
            unit=Unit(options.unit) if options.unit else None,
            date_order=options.dates.replace("-", " ") if options.dates else None,
            latest=date.today() + AHEAD,
        )
        names = dict(options.name or ())
        path: Path | str = _database_path(options)
        if options.preview and not Path(path).exists():
            path = MEMORY
        with _opened(path, create=True) as repository:
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

    def import_program(self, options: Options) -> None:
        """Add a program from its file."""
        program = read_program(options.file)
        with self._data(options, create=True) as repository:
            _print_arrival("program", take_program(repository, program))

    def import_trainees(self, options: Options) -> None:
        """Add trainees from their file."""
        content = read_trainees(options.file)
        with self._data(options, create=True) as repository:
            _print_arrival("trainee", take_trainees(repository, content))

    def export_log(self, options: Options) -> None:
        """Write what was done as a log."""
        style = COMMA_STYLE if options.decimal_comma else LogStyle()
        with self._data(options) as repository:
            everybody = repository.trainees(archived=True)
            chosen = [_trainee(repository, options.trainee)] if options.trainee else everybody
            count = write_log(repository, options.file, chosen, style)
        print(f"{count} lines written to {options.file}")

    def export_program(self, options: Options) -> None:
        """Write a program as a file."""
        with self._data(options) as repository:
            program = repository.program(_program_id(repository, options.program))
        write_program(program, options.file)
        print(f"{program.name} written to {options.file}")

    def export_all(self, options: Options) -> None:
        """Write everything as one file."""
        with self._data(options) as repository:
            content = read_everything(repository.database)
        write_file(content, options.file)
        print(f"{_counted(content)} written to {options.file}")

    def import_all(self, options: Options) -> None:
        """Fill a new data file with everything from a file."""
        content, path = read_file(options.file), _database_path(options)
        there = path.exists()
        with closing(Database.open(path)) as database:
            try:
                fill(database, content)
            except BaseException:
                database.close()
                if not there:
                    remove_file(path)
                raise
        print(f"{_counted(content)} taken into {path}")

    def export_trainee(self, options: Options) -> None:
        """Write all about one trainee, for that person: JSON and a table of the training."""
        with self._data(options) as repository:
            trainee = _trainee(repository, options.trainee)
            content = of_trainee(read_everything(repository.database), _id(trainee))
            options.out.mkdir(mode=0o700, parents=True, exist_ok=True)
            write_file(content, options.out / "everything.json")
            write_log(repository, options.out / "training-log.csv", [trainee])
        print(f"{_counted(content)} written to {options.out}")

    def print_program(self, options: Options) -> None:
        """A whole program as PDF: for a trainee from where they stand, else from its starts."""
        with self._data(options) as repository:
            library = read_library(repository)
            program = library.programs[_program_id(repository, options.program)]
            history = None
            if options.trainee:
                trainee = _trainee(repository, options.trainee)
                history = read_history(repository, _id(trainee), library)
            today = options.date or date.today()
            weeks = program_weeks(program, Onlooker(library, today, history))
        sheets = self._sheets()
        try:
            pages = sheets.write_program_pdf(weeks, options.pdf)
        except sheets.SheetError as error:
            raise Wrong(str(error)) from error
        print(f"{program.name}, {pages} pages, written to {options.pdf}")

    def report(self, options: Options) -> None:
        """A trainee's progress over a span as PDF."""
        with self._data(options) as repository:
            trainee = _trainee(repository, options.trainee)
            last = options.to or date.today()
            found = trainee_report(repository, _id(trainee), options.first, last)
        if not found.sessions:
            raise Wrong(f"{trainee.name} did not train from {options.first} to {last}")
        sheets = self._sheets()
        try:
            pages = sheets.write_report_pdf(found, options.pdf)
        except sheets.SheetError as error:
            raise Wrong(str(error)) from error
        print(f"report of {trainee.name}, {pages} pages, written to {options.pdf}")

    # --- the coach's work -------------------------------------------------------------------

    def assign(self, options: Options) -> None:
        """Give a program to a trainee."""
        with self._data(options) as repository:
            trainee = _trainee(repository, options.trainee)
            planned = assign(
                repository,
                _id(trainee),
                _program_id(repository, options.program),
                options.start,
                options.weekdays or (),
            )
            repository.save(*planned.aggregates)
            program = repository.program(planned.assignment.program_id)
        for ended in planned.ended:
            print(f"what was assigned before ends on {ended.ended}")
        print(f"{trainee.name} trains by {program.name} from {options.start} on")

    def draft(self, options: Options) -> None:
        """Draft a program from wishes, or say which wish to relax."""
        path = _database_path(options)
        with _opened(path if path.exists() else MEMORY, create=not path.exists()) as repository:
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

    def targets(self, options: Options) -> None:
        """What a trainee is asked on a day, and why."""
        with self._data(options) as repository:
            plan = self._plan(repository, options)
        if options.json:
            _print_json(answers.targets(plan, self._sentence))
        else:
            _print_lines(answers.targets_text(plan, self._sentence))

    def sheet(self, options: Options) -> None:
        """The printed sheet of a day."""
        if options.group:
            self._group_sheet(options)
            return
        with self._data(options) as repository:
            plan = self._plan(repository, options)
        if not plan.slots:
            why = answers.WHY_EMPTY.get(plan.why_empty, "the day is empty")
            raise Wrong(f"there is no sheet for {plan.trainee.name} on {plan.day}: {why}")
        self._write_sheet(plan, options.pdf)
        print(f"sheet written to {options.pdf}")

    def _group_sheet(self, options: Options) -> None:
        """One sheet for all who train on the day."""
        day = options.date or date.today()
        with self._data(options) as repository:
            plans = group_plans(repository, day)
        sheets = self._sheets()
        try:
            sheets.write_group_pdf(plans, day, options.pdf)
        except sheets.SheetError as error:
            raise Wrong(str(error)) from error
        print(f"sheet of {len(plans)} trainees written to {options.pdf}")

    def read_notes(self, options: Options) -> None:
        """What free-text notes say was done; nothing is saved."""
        try:
            text = options.file.read_text(encoding="utf-8-sig")
        except UnicodeDecodeError:
            raise Wrong(f"{options.file} is no text in UTF-8; save it as such") from None
        with self._data(options) as repository:
            trainee = _trainee(repository, options.trainee)
            noted = read_noted(
                repository,
                _id(trainee),
                text,
                options.date or date.today(),
                day_first=options.dates != "month-first",
            )
        if options.json:
            _print_json(noted_values(noted))
        else:
            _print_lines(noted_text(noted))

    def roster(self, options: Options) -> None:
        """Who trains when."""
        with self._data(options) as repository:
            entries = roster(repository, options.date or date.today())
        if options.json:
            _print_json(answers.roster_values(entries))
        else:
            _print_lines(answers.roster_text(entries))

    def replay(self, options: Options) -> None:
        """The model on one line, without a data file."""
        case = read_case(options.file)
        context = Context(settings=case.settings)
        start = starting_state(case.start, case.rule, case.surroundings, context)
        done = replay(case.revisions, start, [one.event for one in case.events], context)
        target = None
        if case.ask_on:
            target = target_on(done.state, case.ask_on, context, deload=case.eased_on(case.ask_on))
        day = case.ask_on or max((step.day for step in done.steps), default=case.start.day)
        told = (done, target, Unit(options.unit or "kg"), day, self._sentence)
        if options.json:
            _print_json(answers.replay_values(*told))
        else:
            _print_lines(answers.replay_text(*told))

    # --- the data file ----------------------------------------------------------------------

    def backup(self, options: Options) -> None:
        """A copy of the data file, while it may be in use."""
        if options.file.exists() and not options.replace:
            raise Wrong(f"{options.file} is there already; name another file or say --replace")
        if options.file.resolve() == _database_path(options).resolve():
            raise Wrong("a backup goes to another file than the data file itself")
        with self._data(options) as repository:
            back_up(repository.database, options.file)
        print(f"backed up to {options.file}")

    def check(self, options: Options) -> None:
        """Whether the data file is sound."""
        with self._data(options) as repository:
            problems = repository.database.quick_check()
            trainees = repository.trainees(archived=True)
            sessions = sum(len(repository.sessions(_id(trainee))) for trainee in trainees)
        if problems:
            _print_lines(problems)
            raise Wrong(f"{_database_path(options)} is damaged: {problems[0]}")
        print(f"sound: {len(trainees)} trainees, {sessions} sessions")

    def install_menu(self, options: Options) -> None:
        """The menu entry, the icon, and what a program file is."""
        if not sys.platform.startswith("linux"):
            raise Wrong("menu entries of this kind are for Linux desktops")
        folder = paths.shared_folder()
        if options.remove:
            _print_lines(f"removed {path}" for path in menu_entry.remove(folder))
            return
        _print_lines(map(str, menu_entry.install(folder, menu_entry.starting_command())))
        print("Rungwise is in the menu; program files (*.rungwise.json) open with it")

    def passphrase(self, options: Options) -> None:
        """Set, change or remove the passphrase of the data file and its copies."""
        path = _database_path(options)
        with self._data(options) as repository:
            old = repository.database.passphrase
        new = "" if options.remove else asked_twice("New passphrase")
        if not new and not options.remove:
            raise Wrong("no passphrase was given, or not the same twice; nothing was changed")
        keeping = SafeKeeping(path, paths.backups_of(path), passphrase=old)
        left = keeping.change_passphrase(new)
        print(f"{path} {'has a passphrase now' if new else 'has no passphrase'}")
        if left:
            raise Wrong(f"left as they were: {', '.join(map(str, left))}")

    def erase(self, options: Options) -> None:
        """Erase a trainee from the data file and its copies for good."""
        path = _database_path(options)
        with self._data(options) as repository:
            trainee, old = _trainee(repository, options.trainee), repository.database.passphrase
        if not options.yes:
            raise Wrong(
                f"all of {trainee.name} would be erased from {path} and from every copy of it, "
                "for good; say --yes to do it"
            )
        keeping = SafeKeeping(path, paths.backups_of(path), passphrase=old)
        erased = keeping.erase(_id(trainee), trainee.name)
        print(f"erased from {path} and {len(erased.rewritten)} copies")
        _print_lines(f"removed, since it is damaged: {one}" for one in erased.removed)
        for mention in erased.mentions:
            print(f"the name still stands in {mention.table} {mention.number}: {mention.column}")
        if erased.left:
            raise Wrong("; ".join(f"{one} still holds it: {why}" for one, why in erased.left))

    def demo(self, options: Options) -> None:
        """A new data file with the demo."""
        path: Path = options.database or paths.data_folder() / "demo.db"
        _fill_demo(path, options.date or date.today())
        print(f"the demo, an invented scenario, is in {path}")

    def walk(self, options: Options) -> None:
        """The whole loop on the demo, with its results in a folder."""
        out: Path = options.out
        today = options.date or date.today()
        out.mkdir(parents=True, exist_ok=True)
        path = options.database or out / "demo.db"
        _fill_demo(path, today)
        with _opened(path, create=False) as repository:
            _print_lines(
                tour.walk(
                    repository,
                    today,
                    out,
                    self._sentence,
                    self._write_sheet,
                    self._pictures,
                )
            )
        print(out)

    # --- shared -----------------------------------------------------------------------------

    def _sentence(self, reason: Reason, unit: Unit, day: date) -> str:
        return self._words.reason_text(reason, unit, day)

    def _write_sheet(self, plan: DayPlan, path: Path) -> None:
        sheets = self._sheets()
        try:
            sheets.write_pdf(plan, path)
        except sheets.SheetError as error:
            raise Wrong(str(error)) from error

    def _plan(self, repository: Repository, options: Options) -> DayPlan:
        trainee = _trainee(repository, options.trainee)
        return day_plan(repository, _id(trainee), options.date or date.today())

    @contextmanager
    def _data(self, options: Options, create: bool = False) -> Iterator[Repository]:
        with _opened(_database_path(options), create) as repository:
            yield repository


def _database_path(options: Options) -> Path:
    path: Path = options.database or paths.default_data_file()
    return path


@contextmanager
def _opened(path: Path | str, create: bool) -> Iterator[Repository]:
    try:
        database = Database.open(path, create)
    except PassphraseNeeded:
        passphrase = asked("Passphrase")
        if not passphrase:
            raise
        database = Database.open(path, create, passphrase=passphrase)
    try:
        repository = Repository(database)
        repository.sync_catalogue(load_catalogue())
        yield repository
    finally:
        database.close()


def _fill_demo(path: Path, today: date) -> None:
    if path.exists() and path.stat().st_size:
        raise Wrong(f"{path} is there already; the demo goes into a new file")
    try:
        with _opened(path, create=True) as repository:
            demo.fill(repository, today)
    except BaseException:
        remove_file(path)
        raise


def _trainee(repository: Repository, name: str) -> Trainee:
    known = {trainee.name: trainee for trainee in repository.trainees(archived=True)}
    folded = [one for key, one in known.items() if key.casefold() == name.strip().casefold()]
    found = known.get(name) or (folded[0] if len(folded) == 1 else None)
    if found is None:
        raise Wrong(f"there is no trainee called {name!r}{_near(name, known)}")
    return found


def _program_id(repository: Repository, name: str) -> int:
    program = repository.program_named(name)
    if program is None or program.id is None:
        known = [one.name for one in repository.programs()]
        raise Wrong(f"there is no program called {name!r}{_near(name, known)}")
    return program.id


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


def _near(name: str, known: Iterable[str]) -> str:
    found = nearest(name, known)
    return f"; near it are {', '.join(found)}" if found else ""


def _id(trainee: Trainee) -> int:
    assert trainee.id is not None, "what the store gives has an id"
    return trainee.id


def _counted(content: Everything) -> str:
    return f"{len(content.trainees)} trainees, {len(content.sessions)} sessions"


def _print_plan(plan: ImportPlan) -> None:
    _print_lines(f"note: {remark}" for remark in plan.remarks)
    _print_lines(str(problem) for problem in (*plan.problems, *plan.held_back))


def _print_preview(plan: ImportPlan) -> None:
    print(
        f"would be taken: {len(plan.taken)} lines, {len(plan.sessions)} sessions; "
        f"already there: {len(plan.doubles)} lines"
    )
    if plan.reasons:
        raise Wrong(f"{len(plan.reasons)} lines would not be taken")


def _print_arrival(what: str, arrival: Arrival) -> None:
    for name in arrival.new:
        print(f"new {what}: {name}")
    for name in arrival.there:
        print(f"already there: {name}")


def _print_lines(lines: Iterable[str]) -> None:
    for line in lines:
        print(line)


def _print_json(values: Any) -> None:
    print(json.dumps(values, ensure_ascii=False, indent=2))
