"""The coach's settings that influence training; they travel with the data."""

from __future__ import annotations

from dataclasses import dataclass, field

from desktop.training.position import ProgressionSettings
from desktop.training.quantities import Unit
from desktop.training.table_mapping import TableMapping


@dataclass(frozen=True, slots=True)
class CoachSettings:
    """What the coach set for everybody; one per data file.

    ``equation`` names the estimate of the one-repetition maximum ("" is the default mean).
    ``monotony_sample``: divide by n - 1 instead of n. Deloads are proposed every
    ``deload_every_weeks``; their sets are multiplied by ``deload_sets_factor`` and loads lowered
    by ``deload_load_percent``. ``trend_half_life_weeks`` damps a forecast's slope;
    ``plateau_slope_percent`` a week is what counts as still rising. ``tables``: how tables of
    others are read, the newest last. ``unit``: of loads, for trainees who come.
    """

    progression: ProgressionSettings = field(default_factory=ProgressionSettings)
    equation: str = ""
    monotony_sample: bool = False
    deload_every_weeks: int = 6
    deload_sets_factor: float = 0.6
    deload_load_percent: float = 10.0
    trend_half_life_weeks: float = 12.0
    plateau_slope_percent: float = 0.1
    tables: tuple[TableMapping, ...] = ()
    unit: Unit = Unit.KG
    revision: int = 0
