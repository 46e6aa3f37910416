"""Tracks with a line defect, in the units of a note and in those of the solver."""

from __future__ import annotations

import math
from typing import Any

from railrules_api.domain.stability import (
    BuckleShape,
    BucklingPath,
    LongitudinalRestraint,
    defect_path,
)
from railrules_api.domain.stability.balance import Balance
from railrules_api.domain.stability.lobes import Line
from railrules_api.domain.stability.trace import Point, at

INCH = 0.0254
PSI = 6894.757293168
POUND_PER_INCH = 4.4482216152605 / INCH
FAHRENHEIT = 1.8
EVERY_MODEL = [(shape, restraint) for shape in BuckleShape for restraint in LongitudinalRestraint]


def inputs(**changed: Any) -> dict[str, Any]:
    """The note's track: 136 lb section, 60 lb/in, 200 psi, 1.5 in over 360 in; changes in those units."""
    given_ = {"lateral": 60.0, "stiffness": 200.0, "amplitude": 1.5, "reach": 180.0, "degrees": 0.0, **changed}
    return {
        "elastic_modulus": 30e6 * PSI,
        "second_moment": 14.5 * INCH**4,
        "area": 13.35 * INCH**2,
        "expansion_coefficient": 6.5e-6 * FAHRENHEIT,
        "lateral_resistance": given_["lateral"] * POUND_PER_INCH,
        "longitudinal_stiffness": given_["stiffness"] * PSI,
        "defect_amplitude": given_["amplitude"] * INCH,
        "defect_half_length": given_["reach"] * INCH,
        "shape": given_.get("shape", BuckleShape.ONE_LOBE),
        "restraint": given_.get("restraint", LongitudinalRestraint.OUTSIDE),
        "curvature": given_["degrees"] / 1746.4,  # a degree of curve on a 100 ft chord, near enough
    }


def path(**changed: Any) -> BucklingPath:
    return defect_path(**inputs(**changed))


def rises(found: BucklingPath) -> tuple[float, float]:
    assert found.upper is not None
    assert found.lower is not None
    return found.upper.temperature_rise * FAHRENHEIT, found.lower.temperature_rise * FAHRENHEIT


def line(*, lobes: int = 1, inner: bool = False, **changed: Any) -> Line:
    """The same in units in which bending stiffness and lateral resistance are 1."""
    data = inputs(**changed)
    bending = 2.0 * data["elastic_modulus"] * data["second_moment"]
    axial = 2.0 * data["elastic_modulus"] * data["area"]
    length = (bending / data["lateral_resistance"]) ** (1.0 / 3.0)
    return Line(
        axial=axial / (data["lateral_resistance"] * length),
        decay=math.sqrt(data["longitudinal_stiffness"] / axial) * length,
        amplitude=data["defect_amplitude"] / length,
        reach=data["defect_half_length"] / length,
        curvature=data["curvature"] * length,
        lobes=lobes,
        inner_restraint=inner,
    )


def balance_at(crooked: Line, log_deflection: float, *near: Point) -> Balance:
    found = next(filter(None, (at(crooked, math.exp(log_deflection), point.shape) for point in near)), None)
    assert found is not None
    return found.balance
