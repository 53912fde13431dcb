"""Where a line stands, and the rule by which it moves."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import StrEnum

from desktop.training.sentence import sentence


class Variable(StrEnum):
    """A training variable: what can grow."""

    LOAD = "load"
    REPS = "reps"
    SETS = "sets"
    HOLD = "hold"
    TEMPO = "tempo"
    VARIATION = "variation"


class WhenSlower(StrEnum):
    """What becomes of a variable when a slower one moves."""

    RESET = "reset"
    KEEP = "keep"
    MATCH = "match"


DEFAULT_WHEN_SLOWER = {
    Variable.REPS: WhenSlower.MATCH,
    Variable.HOLD: WhenSlower.RESET,
    Variable.SETS: WhenSlower.RESET,
    Variable.TEMPO: WhenSlower.RESET,
    Variable.LOAD: WhenSlower.KEEP,
    Variable.VARIATION: WhenSlower.KEEP,
}


class InvalidRule(ValueError):
    """A rule, range or position that cannot be; the message says what is allowed."""


@dataclass(frozen=True, slots=True)
class Position:
    """The value of every training variable of one line at one time.

    ``load_g``: grams per implement, signed for bodyweight exercises (assistance below 0).
    ``reps`` or ``hold_s`` (one of them) per set, or over all sets where the scheme is a total.
    ``sets`` includes back-off and ascending sets. ``tempo_s``: seconds of one repetition.
    """

    load_g: int = 0
    reps: int | None = None
    sets: int = 1
    hold_s: int | None = None
    tempo_s: int | None = None
    variation: str | None = None

    def value(self, variable: Variable) -> int | None:
        """The number that ``variable`` stands at; VARIATION has none."""
        return {
            Variable.LOAD: self.load_g,
            Variable.REPS: self.reps,
            Variable.SETS: self.sets,
            Variable.HOLD: self.hold_s,
            Variable.TEMPO: self.tempo_s,
            Variable.VARIATION: None,
        }[variable]

    def at(self, variable: Variable, value: int) -> Position:
        """This position with ``variable`` (any but VARIATION) at ``value``; one that counted
        seconds counts repetitions from then on, or the other way round.
        """
        match variable:
            case Variable.LOAD:
                return replace(self, load_g=value)
            case Variable.REPS:
                return replace(self, reps=value, hold_s=None)
            case Variable.SETS:
                return replace(self, sets=value)
            case Variable.HOLD:
                return replace(self, hold_s=value, reps=None)
            case Variable.TEMPO:
                return replace(self, tempo_s=value)
            case _:
                raise InvalidRule(sentence("a variation is named, not numbered"))

    @property
    def amount(self) -> int:
        """Repetitions, or seconds where the line is a hold."""
        return self.reps if self.reps is not None else self.hold_s or 0


@dataclass(frozen=True, slots=True)
class VariableRange:
    """One variable's range. Numbers are grams (LOAD), counts, or seconds.

    ``easiest`` and ``hardest`` bound VARIATION by key (None: the whole scale). ``floors`` gives
    floors per variation where they differ (HOLD, REPS). ``when_slower`` None: the default.
    """

    variable: Variable
    floor: int | None = None
    ceiling: int | None = None
    increment: int = 1
    when_slower: WhenSlower | None = None
    easiest: str | None = None
    hardest: str | None = None
    floors: tuple[tuple[str, int], ...] = ()

    def __post_init__(self) -> None:
        name = self.variable
        if self.increment < 1:
            raise InvalidRule(
                sentence(
                    "{name}: the increment is at least 1, not {increment}",
                    name=name,
                    increment=self.increment,
                )
            )
        if self.variable is Variable.VARIATION:
            if self.floor is not None or self.ceiling is not None:
                raise InvalidRule(
                    sentence("variation: give easiest and hardest, not floor and ceiling")
                )
            return
        if self.easiest is not None or self.hardest is not None:
            raise InvalidRule(
                sentence("{name}: easiest and hardest belong to a variation", name=name)
            )
        if self.variable is not Variable.LOAD:
            if self.floor is None or self.floor < 1:
                raise InvalidRule(
                    sentence(
                        "{name}: the floor is at least 1, not {floor}", name=name, floor=self.floor
                    )
                )
            if any(floor < 1 for _, floor in self.floors):
                raise InvalidRule(sentence("{name}: every floor is at least 1", name=name))
        self._check_ceiling(name)

    def _check_ceiling(self, name: str) -> None:
        if self.ceiling is None or self.floor is None:
            return
        if self.ceiling < self.floor:
            raise InvalidRule(
                sentence(
                    "{name}: the ceiling {ceiling} is below the floor {floor}",
                    name=name,
                    ceiling=self.ceiling,
                    floor=self.floor,
                )
            )
        if self.variable is Variable.LOAD:
            return
        if (self.ceiling - self.floor) % self.increment:
            raise InvalidRule(
                sentence(
                    "{name}: the ceiling {ceiling} is not on the grid of {floor} in steps of "
                    "{increment}",
                    name=name,
                    ceiling=self.ceiling,
                    floor=self.floor,
                    increment=self.increment,
                )
            )
        if any(floor > self.ceiling for _, floor in self.floors):
            raise InvalidRule(
                sentence(
                    "{name}: a floor lies above the ceiling {ceiling}",
                    name=name,
                    ceiling=self.ceiling,
                )
            )

    @property
    def then(self) -> WhenSlower:
        """What happens to this variable when a slower one moves."""
        return self.when_slower or DEFAULT_WHEN_SLOWER[self.variable]

    def floor_at(self, variation: str | None) -> int:
        """The floor that holds at ``variation``; 0 where a LOAD has none."""
        for key, floor in self.floors:
            if key == variation:
                return floor
        return self.floor or 0


class CriterionKind(StrEnum):
    """When a step is earned."""

    ALL_SETS = "all sets"
    LAST_SET_OVER = "last set over"
    RESERVE = "reserve"
    TOTAL = "total"


@dataclass(frozen=True, slots=True)
class Criterion:
    """``sessions`` in a row that fulfil ``kind``; ``over``: repetitions over in the last set."""

    kind: CriterionKind = CriterionKind.ALL_SETS
    sessions: int = 1
    over: int = 2

    def __post_init__(self) -> None:
        if not 1 <= self.sessions <= 10:
            raise InvalidRule(
                sentence("sessions in a row: 1 to 10, not {sessions}", sessions=self.sessions)
            )
        if not 1 <= self.over <= 10:
            raise InvalidRule(sentence("repetitions over: 1 to 10, not {over}", over=self.over))


TWO_FOR_TWO = Criterion(CriterionKind.LAST_SET_OVER, sessions=2, over=2)


class BackOff(StrEnum):
    """What gets easier after too many misses in a row."""

    LOAD = "load"
    REPS = "reps"
    VARIATION = "variation"


@dataclass(frozen=True, slots=True)
class MissPolicy:
    """After ``misses`` in a row back off by ``back_off``; ``percent`` of effective load."""

    misses: int = 2
    back_off: BackOff = BackOff.LOAD
    percent: float = 7.5

    def __post_init__(self) -> None:
        if not 1 <= self.misses <= 5:
            raise InvalidRule(sentence("misses in a row: 1 to 5, not {misses}", misses=self.misses))
        if not 0 < self.percent <= 50:
            raise InvalidRule(
                sentence(
                    "back off by more than 0 and at most 50 %, not {percent}", percent=self.percent
                )
            )


class SchemeKind(StrEnum):
    """How the sets of one exercise relate to each other."""

    STRAIGHT = "straight"
    TOP_AND_BACK_OFF = "top and back-off"
    ASCENDING = "ascending"
    TOTAL = "total"


@dataclass(frozen=True, slots=True)
class SetScheme:
    """``percent``: how much lower each back-off set, or each earlier ascending set, lies."""

    kind: SchemeKind = SchemeKind.STRAIGHT
    percent: float = 10.0

    def __post_init__(self) -> None:
        if not 0 < self.percent <= 50:
            raise InvalidRule(
                sentence(
                    "set scheme: more than 0 and at most 50 %, not {percent}", percent=self.percent
                )
            )


@dataclass(frozen=True, slots=True)
class FrequencyCondition:
    """When one more day a week is proposed: after so many steps or weeks, up to ``most`` days."""

    steps: int | None = None
    weeks: int | None = None
    most: int = 4

    def __post_init__(self) -> None:
        if self.steps is None and self.weeks is None:
            raise InvalidRule(sentence("frequency: give a number of steps or of weeks"))
        if not 1 <= self.most <= 7:
            raise InvalidRule(sentence("frequency: 1 to 7 days a week, not {most}", most=self.most))


@dataclass(frozen=True, slots=True)
class Follow:
    """The line's own rule rests: it asks ``percent`` of the effective load of line ``line_name``
    of the same exercise and trainee.
    """

    line_name: str
    percent: float

    def __post_init__(self) -> None:
        if not 0 < self.percent <= 100:
            raise InvalidRule(
                sentence(
                    "a following line asks above 0 to 100 %, not {percent}", percent=self.percent
                )
            )


@dataclass(frozen=True, slots=True)
class ProgressionRule:
    """Which variables grow, fastest first, when, and what follows misses.

    ``target_rir``: repetitions in reserve asked of the last set, None where not asked.
    ``least_share_step``: the smallest step on a variation scale, as a fraction of body mass.
    ``start_percent``: the first load as a percentage of the estimated maximum on the day that the
    program is given, None: as the slot says. It moves nothing afterwards.
    """

    ranges: tuple[VariableRange, ...] = ()
    criterion: Criterion = Criterion()
    miss: MissPolicy = MissPolicy()
    scheme: SetScheme = SetScheme()
    target_rir: float | None = None
    least_share_step: float = 0.01
    frequency: FrequencyCondition | None = None
    follow: Follow | None = None
    start_percent: float | None = None

    def __post_init__(self) -> None:
        variables = [r.variable for r in self.ranges]
        if len(set(variables)) != len(variables):
            raise InvalidRule(sentence("a variable stands twice in the rule; each may stand once"))
        if Variable.REPS in variables and Variable.HOLD in variables:
            raise InvalidRule(sentence("a rule counts repetitions or seconds held, not both"))
        for faster in self.ranges[:-1]:
            open_ended = faster.ceiling is None and faster.variable is not Variable.VARIATION
            if open_ended:
                raise InvalidRule(
                    sentence(
                        "{variable}: only the slowest variable may lack a ceiling",
                        variable=faster.variable,
                    )
                )
        if self.target_rir is not None and not 0 <= self.target_rir <= 10:
            raise InvalidRule(
                sentence(
                    "repetitions in reserve: 0 to 10, not {target_rir}", target_rir=self.target_rir
                )
            )
        if self.start_percent is not None and not 0 < self.start_percent <= 100:
            raise InvalidRule(
                sentence(
                    "a start above 0 to 100 % of the maximum, not {start_percent}",
                    start_percent=self.start_percent,
                )
            )

    def range_of(self, variable: Variable) -> VariableRange | None:
        """The range of ``variable``, None where it does not grow."""
        return next((r for r in self.ranges if r.variable is variable), None)


@dataclass(frozen=True, slots=True)
class ScaledVariation:
    """One step of a variation scale as this trainee can set it up: easiest first in a scale.

    ``share`` and ``plus_minus`` are fractions of body mass (or of the full position's moment for
    holds), None where the order alone is known. ``modelled`` False: published, else computed.
    ``available`` False: it is known (from the record) but cannot be set up now.
    """

    key: str
    name: str
    share: float | None = None
    plus_minus: float | None = None
    modelled: bool = False
    available: bool = True


@dataclass(frozen=True, slots=True)
class ProgressionSettings:
    """Coach's settings of the model. Fractions, days; where no source is named beside a value it
    is common practice.
    """

    match_demand: float = 0.94
    jump_limit: float = 0.10
    easy_jump_rir: float = 3.0
    hard_rir_margin: float = 2.0
    plateau_weeks: int = 8
    streak_gap_days: int = 14
    gap_repeat_days: int = 15
    gap_lighter_days: int = 29
    gap_lighter_percent: float = 10.0
    gap_easier_days: int = 57
    gap_easier_percent: float = 20.0
    gap_restart_days: int = 181
    pain_no_increase: int = 1
    pain_hold: int = 4
    pain_in_a_row: int = 2
    start_sessions: int = 2
    start_correction: float = 0.20
    start_rir_margin: float = 3.0


@dataclass(frozen=True, slots=True)
class Surroundings:
    """What surrounds a line on a day: what can be loaded, set up, and what the body weighs.

    ``loads_g``: reachable loads, sorted, signed on the bodyweight axis; None: any load.
    ``scale``: variations known, easiest first, those that can be set up marked available. With
    ``bodyweight`` the effective load is share x body mass + load, else the external load alone.
    """

    loads_g: tuple[int, ...] | None = None
    scale: tuple[ScaledVariation, ...] = ()
    body_mass_g: int | None = None
    bodyweight: bool = False
