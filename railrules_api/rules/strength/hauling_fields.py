"""What is told of the way of a rail train and of its racks: by itself, and as part of a job."""

from __future__ import annotations

import math
from typing import Annotated, Literal

from railrules_api.domain.amounts import SMALL
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind

WayRadius = Annotated[
    float | None,
    Field(
        "Radius of the sharpest curve; give this, the degree, a turnout, or a turnout number.",
        kind=Kind.LENGTH, at_least=10.0, at_most=1e6, taken=Taken("turnout", "turnouts", "radius"),
    ),
]  # fmt: skip
WayDegree = Annotated[
    float | None,
    Field(
        "Its degree, by 100-ft chord.",
        kind=Kind.ANGLE, at_least=3e-5, at_most=math.pi, taken=Taken("turnout", "turnouts", "degree"),
    ),
]  # fmt: skip
WayTurnoutNumber = Annotated[
    float | None,
    Field(
        "Number of the frog of the sharpest turnout, where the list of turnouts has none such; the sharpest closure curve "
        "that a straight switch can lead to is answered for.",
        at_least=2.0, at_most=100.0,
    ),
]  # fmt: skip
TurnAngle = Annotated[
    float | None,
    Field(
        "Angle that the curve turns through; without it longer than the string.",
        kind=Kind.ANGLE,
        at_least=3e-5,
        at_most=2 * math.pi,
    ),
]
YieldStrength = Annotated[
    float,
    Field(
        "Yield strength of the rail steel.",
        kind=Kind.STRESS,
        symbol="Y",
        at_least=1e3,
        at_most=5e9,
        default="rail-yield-strength",
    ),
]
YieldShare = Annotated[
    float | None, Field("Share of the yield strength that hauling may use; the house's own.", at_least=0.01, at_most=1.0)
]
ClampedAt = Annotated[Literal["middle", "end"], Field("Where along the string it is clamped to the train.")]
RackSpacing = Annotated[
    float, Field("Distance of racks along the train.", kind=Kind.LENGTH, symbol="a", at_least=1e-3, at_most=100.0)
]
RackOffset = Annotated[
    float,
    Field(
        "Distance of the outermost string from the middle of the track.",
        kind=Kind.LENGTH,
        symbol="y",
        at_least=0.0,
        at_most=5.0,
    ),
]
FacingEnds = Annotated[
    int,
    Field(
        "Free ends that face each other in a rack: 1 against a stop, 2 string against string.",
        symbol="n",
        at_least=1,
        at_most=2,
    ),
]
EndClearance = Annotated[
    float | None, Field("Clearance at the ends on tangent.", kind=Kind.LENGTH, at_least=0.0, at_most=100.0, answer=SMALL)
]
