"""What a job says of the strength of its track against buckling."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from railrules_api.domain.amounts import SMALL
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.rules.thermal.buckling_fields import BuckleHeld, BuckleShape, MarginRule

LateralResistance = Annotated[
    float,
    Field("Lateral resistance of the track per length.", kind=Kind.FORCE_PER_LENGTH, at_least=1.0, at_most=1e7),
]


@dataclass(frozen=True, slots=True, kw_only=True)
class Stability:
    """What holds the hot track sideways, and how crooked it lies.

    Lateral resistance has no value to stand in for it: it differs fivefold between track just tamped and track long at rest.
    Both rails are taken to be of the new section and of one neutral temperature, also where one is renewed alone.
    """

    lateral_resistance: LateralResistance
    stiffness: Annotated[
        float,
        Field(
            "Longitudinal stiffness of one rail per length.",
            kind=Kind.FOUNDATION_MODULUS, at_least=100.0, at_most=1e11, default="longitudinal-stiffness",
        ),
    ]  # fmt: skip
    defect_amplitude: Annotated[
        float,
        Field(
            "Line defect at its middle; 0 for none, which leaves curves without an answer.",
            kind=Kind.LENGTH, at_least=0.0, at_most=1.0, default="line-defect", answer=SMALL,
        ),
    ]  # fmt: skip
    defect_half_length: Annotated[
        float,
        Field(
            "From the middle of the defect to where it ends.",
            kind=Kind.LENGTH, at_least=0.1, at_most=100.0, default="line-defect-half-length",
        ),
    ]  # fmt: skip
    shape: Annotated[BuckleShape, Field("How the track beside the defect may move, see the rule.", default="buckle-shape")]
    held: Annotated[BuckleHeld, Field("Where the rails are held along the track, see the rule.", default="buckle-held")]
    margin_rule: Annotated[MarginRule, Field("Rule of the allowed rise, see the rule.", default="buckling-margin-rule")]
    margin: Annotated[
        float,
        Field(
            "Margin taken off the lower rise.",
            kind=Kind.TEMPERATURE_CHANGE, at_least=0.0, at_most=60.0, default="restriction-margin",
        ),
    ]  # fmt: skip
