"""Measuring: medians of interleaved rounds, and one line of result."""

from __future__ import annotations

import math
import statistics
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import AbstractContextManager
from dataclasses import asdict, dataclass
from typing import TypeVar

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Line:
    """One figure and its floor (or peer) in ``unit``, both measured in this run.

    ``goal`` bounds the ratio; None where there is only something to know.
    """

    name: str
    figure: float
    floor: float | None = None
    floor_name: str = ""
    unit: str = "ms"
    goal: float | None = None

    @property
    def ratio(self) -> float | None:
        """How many floors the figure is."""
        return None if not self.floor else self.figure / self.floor

    @property
    def met(self) -> bool | None:
        """Whether the goal is met; None without one."""
        if self.goal is None:
            return None
        return (self.figure if self.ratio is None else self.ratio) <= self.goal

    def as_data(self) -> dict[str, object]:
        """The line as it goes into JSON."""
        return asdict(self) | {"ratio": self.ratio, "met": self.met}

    def as_text(self) -> str:
        """The line as it is printed."""
        text = f"{self.name:<64}{self.figure:>10.2f} {self.unit:<4}"
        if self.ratio is not None:
            text += f"{self.ratio:>8.2f} x {self.floor_name} ({self.floor:.2f})"
        if self.goal is not None:
            text += f"  goal {self.goal:g}: {'met' if self.met else 'MISSED'}"
        return text


def medians(rounds: int, *tasks: Callable[[], object]) -> list[float]:
    """Median milliseconds of each task over interleaved rounds, after one warm-up each."""
    for task in tasks:
        task()
    times: list[list[float]] = [[] for _ in tasks]
    for _ in range(rounds):
        for place, task in enumerate(tasks):
            began = time.perf_counter()
            task()
            times[place].append((time.perf_counter() - began) * 1000)
    return [statistics.median(each) for each in times]


@dataclass(frozen=True, slots=True)
class Taken:
    """What a task took, in milliseconds: the median by the clock, and the least of the processor,
    which others on the machine disturb less.
    """

    wall: float
    cpu: float


def taken(rounds: int, *tasks: Callable[[], object]) -> list[Taken]:
    """What each task takes over interleaved rounds, after one warm-up each."""
    for task in tasks:
        task()
    walls: list[list[float]] = [[] for _ in tasks]
    cpus: list[list[float]] = [[] for _ in tasks]
    for _ in range(rounds):
        for place, task in enumerate(tasks):
            began, worked = time.perf_counter(), time.process_time()
            task()
            cpus[place].append((time.process_time() - worked) * 1000)
            walls[place].append((time.perf_counter() - began) * 1000)
    return [Taken(statistics.median(wall), min(cpu)) for wall, cpu in zip(walls, cpus, strict=True)]


def taken_afresh(
    rounds: int, fresh: Callable[[], AbstractContextManager[T]], *tasks: Callable[[T], object]
) -> list[Taken]:
    """As `taken`, without warm-up; each task is given something ``fresh``, made off the clock."""
    walls: list[list[float]] = [[] for _ in tasks]
    cpus: list[list[float]] = [[] for _ in tasks]
    for _ in range(rounds):
        for place, task in enumerate(tasks):
            with fresh() as given:
                began, worked = time.perf_counter(), time.process_time()
                task(given)
                cpus[place].append((time.process_time() - worked) * 1000)
                walls[place].append((time.perf_counter() - began) * 1000)
    return [Taken(statistics.median(wall), min(cpu)) for wall, cpu in zip(walls, cpus, strict=True)]


def twice(
    name: str, figure: Taken, floor: Taken | None = None, floor_name: str = "",
    goal: float | None = None,
) -> Iterator[Line]:  # fmt: skip
    """A task by the clock and by the processor, both against ``goal``, and the latter beside its
    floor.
    """
    yield Line(name, figure.wall, goal=goal)
    yield Line(f"{name}: processor", figure.cpu, goal=goal)
    if floor is not None:
        yield Line(f"{name}: processor", figure.cpu, floor.cpu, floor_name)


def growth(name: str, sizes: Sequence[float], times: Sequence[float]) -> Line:
    """How times grow with sizes: the exponent, by least squares over logarithms. 1: in proportion;
    0: not at all.
    """
    across = [math.log(size) for size in sizes]
    up = [math.log(max(each, 1e-3)) for each in times]
    slope, _ = statistics.linear_regression(across, up)
    return Line(f"growth exponent: {name}", slope, unit="")
