"""Makes the demo: sixteen weeks of training by people whose true strength is known.

At each session the program itself says what to do, by the same functions that the screens use;
the simulated trainee then does what he or she can on that day. Everything is seeded, so the files
are the same each time. `python -m tests.simulator` writes them to resources/demo.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from pathlib import Path
from random import Random
from tempfile import TemporaryDirectory
from typing import Final

from db.database import MEMORY, Database
from db.log_export import write_log
from db.program_files import program_bytes
from db.repository import Repository
from db.trainee_files import (
    ProgramFrom,
    TraineeFile,
    TraineesFile,
    WeighedOn,
    trainees_bytes,
)
from desktop.catalogue import load_catalogue
from desktop.demo import DEMO, LOG_FILE, TRAINEES_FILE
from desktop.planning.arrivals import take_program, take_trainees
from desktop.planning.history import read_history
from desktop.planning.schedule import place_on, training_day_on
from desktop.planning.standing import Standing, key_of, lines_of_slots, standings_on
from desktop.training.demand import effective_load_g, scaled
from desktop.training.session import (
    Activity,
    AskedSet,
    LineDone,
    Session,
    SetDone,
    Wellness,
)
from desktop.training.trainee import BodyMass
from tests.demo_club import CLUB, FIRST_MONDAY, UNKNOWN_SHARES, WEEKS, Member, on
from tests.demo_programs import INVENTED, PROGRAMS

SEED: Final = "a village rowing club"
DAY_SD: Final = 0.02
"""How much the ability differs from day to day (logarithm)."""
SET_FATIGUE: Final = 0.985
SKIPS: Final = 0.04
ROWING: Final = "rowing outing"


@dataclass(frozen=True, slots=True)
class Demo:
    """The files of the demo by name, and the true abilities behind them by trainee and exercise."""

    files: Mapping[str, bytes]
    truth: Mapping[tuple[str, str], tuple[tuple[date, float], ...]]


def trainees_file() -> TraineesFile:
    """What the ordinary import takes for the people of the club."""
    return TraineesFile(
        tuple(
            TraineeFile(
                member.trainee,
                (WeighedOn(on(member.joins, 0), round(member.body_mass_kg * 1000)),),
                member.equipment,
                (ProgramFrom(member.program, on(member.joins, 0)),),
                member.lines,
                member.goals,
                absences=member.absences,
            )
            for member in CLUB
        ),
        about=INVENTED,
    )


def make_demo() -> Demo:
    """Run the winter and write it down."""
    database = Database.open(MEMORY)
    try:
        repository = Repository(database)
        repository.sync_catalogue(load_catalogue())
        for program in PROGRAMS:
            take_program(repository, program)
        content = trainees_file()
        take_trainees(repository, content)
        truth: dict[tuple[str, str], tuple[tuple[date, float], ...]] = {}
        for member in CLUB:
            winter = _Winter(repository, member)
            winter.run()
            truth |= {
                (member.trainee.name, exercise): tuple(points)
                for exercise, points in winter.truth.items()
            }
        files = {_file_name(program.name): program_bytes(program) for program in PROGRAMS}
        files[TRAINEES_FILE] = trainees_bytes(content)
        files[LOG_FILE] = _log(repository)
        return Demo(files, truth)
    finally:
        database.close()


def _file_name(program: str) -> str:
    return f"program-{program.casefold().replace(',', '').replace(' ', '-')}.json"


def _log(repository: Repository) -> bytes:
    with TemporaryDirectory() as folder:
        target = Path(folder) / LOG_FILE
        write_log(repository, target, repository.trainees())
        return target.read_bytes()


class _Winter:
    """One member's winter, day by day."""

    def __init__(self, repository: Repository, member: Member) -> None:
        self.truth: dict[str, list[tuple[date, float]]] = {}
        self._repository = repository
        self._member = member
        self._random = Random(f"{SEED}, {member.trainee.name}")
        trainee = repository.trainee_named(member.trainee.name)
        assert trainee is not None
        assert trainee.id is not None
        self._id: int = trainee.id
        self._history = read_history(repository, self._id)

    def run(self) -> None:
        """Train until the last Sunday of the scenario."""
        for number in range(WEEKS * 7):
            day = FIRST_MONDAY + timedelta(days=number)
            if day < on(self._member.joins, 0) or self._is_away(day):
                continue
            if number % 28 == 0 and number:
                self._weigh(day)
            if day.weekday() == 6 and self._member.rows_out and self._random.random() < 0.8:
                effort = self._random.choice((4.0, 5.0, 6.0))
                self._save(Activity(self._id, day, ROWING, 90, effort))
            session = self._session(day)
            if session is not None and self._random.random() >= SKIPS:
                self._save(session)

    def _save(self, record: Session | BodyMass | Activity) -> None:
        self._repository.save(record)
        self._history = read_history(self._repository, self._id, self._history.library)

    def _is_away(self, day: date) -> bool:
        return any(
            away.first <= day and (away.last is None or day <= away.last)
            for away in self._member.absences
        )

    def _weigh(self, day: date) -> None:
        weeks = (day - FIRST_MONDAY).days / 7
        mass = self._member.body_mass_kg + self._member.mass_trend_kg * weeks / WEEKS
        mass += self._random.gauss(0, 0.3)
        self._save(BodyMass(self._id, day, round(mass * 10) * 100))

    def _session(self, day: date) -> Session | None:
        history = self._history
        planned, place = training_day_on(history, day), place_on(history, day)
        if planned is None or place is None:
            return None
        lines = lines_of_slots(history, planned.slots, place.assignment)
        standings = standings_on(history, day, lines)
        parts: list[LineDone] = []
        reserves: list[float] = []
        for slot in planned.slots:
            standing = standings[key_of(slot)]
            if standing.target.sets:
                done, spare = self._train(standing, day)
                parts.append(done)
                reserves += spare
        if not parts:
            return None
        mean = sum(reserves) / len(reserves)
        effort = min(max(9.2 - 0.7 * mean + self._random.gauss(0, 0.4), 3), 10)
        sets = sum(len(part.sets) for part in parts)
        return Session(
            self._id,
            day,
            tuple(parts),
            effort=round(effort * 2) / 2,
            minutes=round(12 + 2.9 * sets + self._random.gauss(0, 3)),
            wellness=self._wellness(),
            program_id=place.program.id,
            week=place.week,
            day_name=planned.name,
        )

    def _wellness(self) -> Wellness:
        if self._random.random() < 0.5:
            return Wellness()
        return Wellness(*(self._random.choice((3, 3, 4, 4, 5)) for _ in range(4)))

    def _train(self, standing: Standing, day: date) -> tuple[LineDone, list[float]]:
        exercise = standing.exercise.key
        ability = self._ability(exercise, day)
        week = (day - FIRST_MONDAY).days // 7 + 1
        pain = self._member.pains.get((exercise, week), 0)
        if pain >= 4:
            ability *= 0.8
        today = ability * math.exp(self._random.gauss(0, DAY_SD))
        sets: list[SetDone] = []
        spare: list[float] = []
        asked_sets = standing.target.sets
        for number, asked in enumerate(asked_sets):
            most = _most(standing, asked, today * SET_FATIGUE**number)
            last = number == len(asked_sets) - 1
            amount = self._amount(asked, most, last)
            reserve = max(most - amount, 0.0)
            sets.append(self._done(asked, amount, reserve, pain if last else 0))
            if asked.reps is not None:
                spare.append(min(reserve, 6))
            if pain >= 4:
                break
        note = "stopped: the back hurt" if pain >= 4 else "a pinch" if pain else ""
        assert standing.line.id is not None
        part = LineDone(
            standing.line.id,
            exercise,
            asked=asked_sets,
            sets=tuple(sets),
            deload=standing.target.deload,
            note=note,
        )
        return part, spare or [3.0]

    def _ability(self, exercise: str, day: date) -> float:
        """The true ability; time away takes 1.5 % a week of it, which comes back in as long."""
        weeks = (day - FIRST_MONDAY).days / 7
        lost = 0.0
        for away in self._member.absences:
            last = away.last or day
            length = ((last - away.first).days + 1) / 7
            since = (day - last).days / 7
            if since > 0:
                lost += 0.015 * length * max(1 - since / length, 0)
        true = self._member.abilities[exercise].in_week(weeks) * (1 - lost)
        self.truth.setdefault(exercise, []).append((day, true))
        return true

    def _amount(self, asked: AskedSet, most: float, last: bool) -> int:
        """Repetitions or seconds done: as asked where it goes, sometimes a little more."""
        wanted = asked.reps if asked.reps is not None else asked.seconds or 0
        can = int(most)
        if can < wanted:
            return max(can, 0)
        if asked.open_ended:
            stop = asked.stop_at or can
            return max(wanted, min(can - 1, stop))
        eager = last and asked.reps is not None and most - wanted >= 4
        return wanted + 1 if eager and self._random.random() < 0.3 else wanted

    def _done(self, asked: AskedSet, amount: int, reserve: float, pain: int) -> SetDone:
        rir = None
        if asked.reps is not None and self._random.random() < self._member.gives_rir:
            rir = float(min(max(round(reserve + self._random.gauss(0, 0.7)), 0), 5))
        return SetDone(
            asked.load_g,
            reps=amount if asked.reps is not None else None,
            seconds=amount if asked.reps is None else None,
            variation=asked.variation,
            rir=rir,
            tempo_s=asked.tempo_s,
            pain=pain,
        )


def _most(standing: Standing, asked: AskedSet, ability: float) -> float:
    """The repetitions or seconds to failure, by the invented truth: load falls by a thirtieth for
    each repetition; a hold's time falls with the square of its difficulty.
    """
    around = standing.state.surroundings
    exercise = standing.exercise.key
    share = UNKNOWN_SHARES.get((exercise, asked.variation or ""))
    if asked.reps is None:
        if share is None:
            step = scaled(around, asked.variation)
            share = step.share if step is not None else None
        if share is not None:
            return ability / share**2
        return 60 * (ability * 1000 / max(asked.load_g, 1)) ** 2
    effective = effective_load_g(asked.load_g, asked.variation, around)
    if share is not None:
        effective = share * (around.body_mass_g or 70_000) + asked.load_g
    assert effective is not None, (exercise, asked)
    return 30 * (ability * 1000 / effective - 1)


def write_demo(folder: Path) -> None:
    """Write the files of the demo to ``folder``."""
    for name, data in make_demo().files.items():
        (folder / name).write_bytes(data)


if __name__ == "__main__":
    write_demo(Path(str(DEMO)))
