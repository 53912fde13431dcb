"""Linear: a mixed-integer problem put together by name, and solved.

The solver is HiGHS, through scipy, which is imported only when a problem is solved.
"""

from __future__ import annotations

from collections.abc import Hashable, Mapping
from dataclasses import dataclass, field
from math import inf
from typing import Final

NODES: Final = (1, 40, 1000)
"""So many branches are looked at: more where the first ones hold no solution at all. A limit in
seconds would give another answer on a busy day.
"""
GAP: Final = 0.1
"""A plan this close (as a fraction) to the best that could exist is taken."""

_INFEASIBLE: Final = 2

Terms = Mapping[Hashable, float]


class NoSolution(ValueError):
    """Nothing meets every condition of the problem."""


@dataclass(slots=True)
class Problem:
    """Variables by name with bounds and cost; conditions on sums of them. Costs are minimised."""

    _columns: dict[Hashable, int] = field(default_factory=dict)
    _costs: list[float] = field(default_factory=list)
    _lower: list[float] = field(default_factory=list)
    _upper: list[float] = field(default_factory=list)
    _whole: list[int] = field(default_factory=list)
    _rows: list[tuple[Terms, float, float]] = field(default_factory=list)

    def __contains__(self, name: Hashable) -> bool:
        return name in self._columns

    def add(
        self,
        name: Hashable,
        upper: float = inf,
        *,
        lower: float = 0.0,
        cost: float = 0.0,
        whole: bool = False,
    ) -> Hashable:
        """A variable; its name is given back."""
        self._columns[name] = len(self._columns)
        self._costs.append(cost)
        self._lower.append(lower)
        self._upper.append(upper)
        self._whole.append(int(whole))
        return name

    def choice(self, name: Hashable, cost: float = 0.0) -> Hashable:
        """A variable that is 0 or 1."""
        return self.add(name, 1.0, cost=cost, whole=True)

    def require(self, terms: Terms, least: float = -inf, most: float = inf) -> None:
        """The weighted sum lies between ``least`` and ``most``."""
        self._rows.append((terms, least, most))

    def solve(self) -> Mapping[Hashable, float]:
        """The value of every variable. Raises NoSolution."""
        import numpy as np
        from scipy.optimize import Bounds, LinearConstraint, milp
        from scipy.sparse import csr_array

        rows = [row for row, (terms, _, _) in enumerate(self._rows) for _ in terms]
        columns = [self._columns[name] for terms, _, _ in self._rows for name in terms]
        values = [weight for terms, _, _ in self._rows for weight in terms.values()]
        shape = (len(self._rows), len(self._columns))
        conditions = LinearConstraint(
            csr_array((values, (rows, columns)), shape=shape),
            np.array([least for _, least, _ in self._rows]),
            np.array([most for _, _, most in self._rows]),
        )
        for nodes in NODES:
            found = milp(
                np.array(self._costs),
                integrality=np.array(self._whole),
                bounds=Bounds(np.array(self._lower), np.array(self._upper)),
                constraints=conditions,
                options={"mip_rel_gap": GAP, "node_limit": nodes},
            )
            if found.x is not None:
                return {name: float(found.x[column]) for name, column in self._columns.items()}
            if found.status == _INFEASIBLE:
                break
        raise NoSolution(str(found.message))
