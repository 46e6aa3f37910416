"""Responses of a compressed beam, the building blocks of every buckled shape in this package.

The beam obeys `w'''' + l^2 w'' = g(v)` with `l^2 = P/EI`, where `v` runs from one end of the buckle, at which `w`, `w'`
and `w''` are zero, towards its middle. Loads that start at some place and then grow as a power of the distance have
responses that follow from one another by integration; the ladder below holds them. Derived here.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, TypeVar

if TYPE_CHECKING:
    import numpy as np
    import numpy.typing as npt

    Number = TypeVar("Number", float, npt.NDArray[np.float64])

SHEAR_RUNG = 3
"""Where the response to a unit third derivative at the end stands in a ladder; its n-th derivative is n places before.

The response to a load `v^k / k!` stands k + 1 places after.
"""


def rungs(distance: Number, wave_number: Number, cosine: Number, sine: Number) -> tuple[Number, ...]:
    """Return the ladder of responses at a distance; each rung is the derivative of the next.

    `cos(l v)`, `x0 = sin(l v)/l`, `x1 = (1 - cos(l v))/l^2`, and `x_j = (v^(j-1)/(j-1)! - x_(j-2))/l^2` up to `x5`.

    Args:
        distance: `v`, from where the load starts, zero or more [m].
        wave_number: `l`, above zero [1/m].
        cosine: `cos(l v)`; passed in so that one text serves numbers and arrays.
        sine: `sin(l v)`.

    Returns:
        `cos(l v), x0, ..., x5`; `x_j` in m^(j+1).
    """
    square = wave_number * wave_number
    x0 = sine / wave_number
    x1 = (1.0 - cosine) / square
    x2 = (distance - x0) / square
    x3 = (distance * distance / 2.0 - x1) / square
    x4 = (distance * distance * distance / 6.0 - x2) / square
    x5 = (distance * distance * distance * distance / 24.0 - x3) / square
    return cosine, x0, x1, x2, x3, x4, x5


def ladder(distance: float, wave_number: float) -> tuple[float, ...]:
    """Return the ladder at a distance, see `rungs`.

    Args:
        distance: from where the load starts, zero or more [m].
        wave_number: `sqrt(P/EI)`, above zero [1/m].

    Returns:
        `cos(l v), x0, ..., x5`.
    """
    angle = wave_number * distance
    return rungs(distance, wave_number, math.cos(angle), math.sin(angle))
