"""A curve given by its radius or by its degree: the two fields, and the one radius they mean."""

from __future__ import annotations

import math
from typing import Annotated

from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.roots import sine
from railrules_api.domain.track import CHORD

Radius = Annotated[float | None, Field("Radius; give this or the degree.", kind=Kind.LENGTH, at_least=10.0, at_most=1e6)]
Degree = Annotated[float | None, Field("Degree of curve, by 100-ft chord.", kind=Kind.ANGLE, at_least=3e-5, at_most=math.pi)]


def radius_from(radius: float | None, degree: float | None) -> float:
    """Return the radius [m]; R = 50 ft / sin(D / 2) from the degree.

    Args:
        radius: radius [m].
        degree: angle at the centre that a 100-ft chord spans [rad].

    Raises:
        RefusedError: neither or both are given.
    """
    if (radius is None) == (degree is None):
        raise refuse("radius", reason="give one of radius and degree", value=radius)
    if radius is not None:
        return radius
    assert degree is not None
    return CHORD / 2 / sine(degree / 2)
