"""An outline as points, with a stated chord error, for drawings and for numerical methods."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from railrules_api.domain.errors import refuse
from railrules_api.domain.profile.elements import Arc

if TYPE_CHECKING:
    from railrules_api.domain.profile.elements import Point
    from railrules_api.domain.profile.outline import Outline

SMALLEST_CHORD_ERROR = 1e-8
"""Smallest chord error accepted [m]; a rail then takes about 30 000 points."""


def flatten(outline: Outline, chord_error: float, longest: float = math.inf) -> tuple[Point, ...]:
    """Return points on the outline, counter-clockwise, the first not repeated.

    Arcs are divided evenly so that no chord lies farther than the chord error from its arc: a piece of angle t on
    radius r stands off by r (1 - cos(t / 2)).

    Args:
        outline: the outline.
        chord_error: greatest distance between chord and arc [m].
        longest: greatest length of a piece [m]; lines are divided too when it is given.

    Returns:
        Points [m].

    Raises:
        RefusedError: a chord error that is not finite or smaller than `SMALLEST_CHORD_ERROR`, or a length not positive.
    """
    if not SMALLEST_CHORD_ERROR <= chord_error < math.inf:
        raise refuse("chord_error", reason="must be a length not too small", value=chord_error, minimum=SMALLEST_CHORD_ERROR)
    if not longest > 0.0:
        raise refuse("longest", reason="must be a positive length", value=longest, minimum=0.0)
    points: list[Point] = []
    for element in outline.elements:
        pieces = math.ceil(element.length / longest) or 1
        if isinstance(element, Arc) and chord_error < element.radius:
            step = 2 * math.acos(1.0 - chord_error / element.radius)
            pieces = max(pieces, math.ceil(abs(element.sweep) / step))
        points.append(element.start)
        points.extend(element.at(k / pieces) for k in range(1, pieces))
    return tuple(points)
