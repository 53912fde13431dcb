"""The chart library, loaded without what no chart here needs: the one place that imports it.

Importing this takes a tenth of a second.
"""

from __future__ import annotations

import sys
from functools import partial
from types import ModuleType
from typing import Final

import numpy as np
from numpy.typing import NDArray
from PySide6 import QtCore, QtGui, QtWidgets

Floats = NDArray[np.float64]
"""Days or values of what is drawn."""

_QT: Final = (QtCore, QtGui, QtWidgets)


def _mirror(module: ModuleType) -> ModuleType:
    """A stand-in for a module of Qt that hands on whatever is asked of it."""
    mirror = ModuleType(f"pyqtgraph.Qt.{module.__name__.rpartition('.')[2]}")
    mirror.__getattr__ = partial(getattr, module)  # type: ignore[method-assign]
    return mirror


# The library copies all that Qt has into modules of its own, by which the binding must build each
# of a thousand classes: as long as all the rest of its import. Ours hand them on instead, and the
# copying finds nothing to copy. Should another version do without, this changes nothing.
_listings = [(_module, vars(_module).get("__dir__")) for _module in _QT]
for _module in _QT:
    _stand_in = _mirror(_module)
    sys.modules.setdefault(_stand_in.__name__, _stand_in)
    vars(_module)["__dir__"] = list
try:
    import pyqtgraph as pg
finally:
    for _module, _listing in _listings:
        if _listing is None:
            del vars(_module)["__dir__"]
        else:
            vars(_module)["__dir__"] = _listing

__all__ = ["Floats", "pg"]
