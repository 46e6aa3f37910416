"""What the buckling of track depends on, and what is answered."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Literal

from railrules_api.domain.amounts import SMALL
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.rules.checks import Check
from railrules_api.rules.common import Area, ElasticModulus, Expansion, NeutralTemperature, RailTemperature
from railrules_api.rules.radius import Degree, Radius
from railrules_api.rules.thermal.restraint_fields import Resistance, Stiffness

BuckleShape = Literal["one-lobe", "three-lobes"]
BuckleHeld = Literal["outside", "throughout"]
MarginRule = Literal["lower-rise", "difference"]
PathWord = Literal["snap-through", "progressive", "no-defect", "upper-beyond-path"]
_Rise = Annotated[float | None, Field("Rise above neutral.", kind=Kind.TEMPERATURE_CHANGE)]


@dataclass(frozen=True, slots=True, kw_only=True)
class BucklingInput:
    """Two rails of one section, how the track holds them, how hot they get, how crooked they lie."""

    area: Area
    elastic_modulus: ElasticModulus
    expansion: Expansion
    second_moment_lateral: Annotated[
        float,
        Field(
            "Second moment of one rail about its upright axis.",
            kind=Kind.SECOND_MOMENT,
            symbol="I_y",
            at_least=1e-10,
            at_most=1e-3,
            taken=Taken("section", "rail-sections", "second_moment_lateral"),
        ),
    ]
    second_moment: Annotated[
        float | None,
        Field(
            "Second moment of one rail about its level axis, for buckling upwards.",
            kind=Kind.SECOND_MOMENT,
            at_least=1e-10,
            at_most=1e-3,
            taken=Taken("section", "rail-sections", "second_moment"),
        ),
    ] = None
    rail_temperature: RailTemperature
    neutral_temperature: NeutralTemperature
    lateral_resistance: Annotated[
        float,
        Field("Lateral resistance of the track per length.", kind=Kind.FORCE_PER_LENGTH, symbol="F", at_least=1.0, at_most=1e7),
    ]
    resistance: Resistance
    stiffness: Stiffness = None
    track_weight: Annotated[
        float | None,
        Field(
            "Weight of rails, ties and fastenings per length of track, for buckling upwards.",
            kind=Kind.FORCE_PER_LENGTH,
            at_least=1.0,
            at_most=1e6,
        ),
    ] = None
    defect_amplitude: Annotated[
        float | None,
        Field("Line defect at its middle; 0 for none.", kind=Kind.LENGTH, at_least=0.0, at_most=1.0, answer=SMALL),
    ] = None
    defect_half_length: Annotated[
        float | None, Field("From the middle of the defect to where it ends.", kind=Kind.LENGTH, at_least=0.1, at_most=100.0)
    ] = None
    shape: Annotated[
        BuckleShape,
        Field("Whether the track beside the defect stays (published form) or may move the other way (lower, derived here)."),
    ]
    held: Annotated[
        BuckleHeld,
        Field("Where the rails are held along the track: outside the buckle only (published form), or everywhere."),
    ]
    radius: Radius = None
    degree: Degree = None
    margin_rule: Annotated[
        MarginRule,
        Field(
            "Allowed rise: the lower rise less the margin; or by the difference of upper and lower rise (UIC 720, from memory)."
        ),
    ]
    margin: Annotated[
        float,
        Field(
            "Margin taken off the lower rise.",
            kind=Kind.TEMPERATURE_CHANGE,
            symbol="m",
            at_least=0.0,
            at_most=60.0,
            default="restriction-margin",
        ),
    ]


@dataclass(frozen=True, slots=True, kw_only=True)
class Mode:
    """The lowest buckled state of straight track in one shape."""

    mode: Annotated[int, Field("Number of lobes.")]
    temperature_rise: Annotated[float, Field("Rise above neutral.", kind=Kind.TEMPERATURE_CHANGE)]
    length: Annotated[float, Field("Reference length of the shape.", kind=Kind.LENGTH)]
    whole_length: Annotated[float, Field("Length of the whole buckle.", kind=Kind.LENGTH)]
    buckled_force: Annotated[float, Field("Force in the buckle, both rails, compression positive.", kind=Kind.FORCE)]
    deflection: Annotated[float, Field("Largest deflection.", kind=Kind.LENGTH, answer=SMALL)]
    moment: Annotated[float, Field("Largest bending moment, both rails.", kind=Kind.MOMENT)]
    slip_length: Annotated[float, Field("Length that slips on each side of the buckle.", kind=Kind.LENGTH)]


@dataclass(frozen=True, slots=True, kw_only=True)
class PathPoint:
    """One equilibrium of track with a line defect."""

    deflection: Annotated[float, Field("Movement at the middle, the defect not counted.", kind=Kind.LENGTH, answer=SMALL)]
    temperature_rise: Annotated[float, Field("Rise above neutral.", kind=Kind.TEMPERATURE_CHANGE)]
    buckled_force: Annotated[
        float, Field("Force at the middle of the buckle, both rails, compression positive.", kind=Kind.FORCE)
    ]
    half_length: Annotated[float, Field("Half of the buckle's length.", kind=Kind.LENGTH)]
    lobes: Annotated[int, Field("Lobes of the buckle.")]
    energy: Annotated[float, Field("Energy above that of the unbuckled track at this rise.", kind=Kind.ENERGY)]


@dataclass(frozen=True, slots=True, kw_only=True)
class BucklingResult:
    """Rises above neutral, temperatures, path, verdict."""

    available: Annotated[Literal["yes", "not-available-for-curves"], Field("Whether there is an answer.")]
    temperature_change: Annotated[
        float, Field("Rail temperature minus neutral temperature.", kind=Kind.TEMPERATURE_CHANGE, symbol="dT")
    ]
    lowest_rise: Annotated[
        float | None,
        Field("Lowest rise at which straight track can be buckled; absent for curves.", kind=Kind.TEMPERATURE_CHANGE),
    ] = None
    governing_mode: Annotated[int | None, Field("Lobes of the shape that gives it.")] = None
    modes: Annotated[tuple[Mode, ...], Field("Lowest state of every shape, straight track.")] = ()
    vertical_rise: Annotated[
        float | None, Field("Lowest rise at which the track can stand lifted off its bed.", kind=Kind.TEMPERATURE_CHANGE)
    ] = None
    path_kind: Annotated[PathWord | None, Field("What the path with the defect says; absent without a defect.")] = None
    lower_rise: _Rise = None
    upper_rise: _Rise = None
    lower_temperature: Annotated[float | None, Field("Rail temperature at the lower rise.", kind=Kind.TEMPERATURE)] = None
    upper_temperature: Annotated[float | None, Field("Rail temperature at the upper rise.", kind=Kind.TEMPERATURE)] = None
    allowed_rise: Annotated[float | None, Field("Rise that the margin rule allows.", kind=Kind.TEMPERATURE_CHANGE)] = None
    allowed_temperature: Annotated[float | None, Field("Rail temperature at that rise.", kind=Kind.TEMPERATURE)] = None
    allowed_by: Annotated[str, Field("Branch of the margin rule, or why there is no allowed rise.")]
    buckling_energy: Annotated[
        float | None,
        Field("Energy a disturbance must bring in at the rail temperature, between lower and upper rise.", kind=Kind.ENERGY),
    ] = None
    path: Annotated[tuple[PathPoint, ...], Field("Equilibria in order of growing deflection, for plotting.")] = ()
    checks: Annotated[tuple[Check, ...], Field("Rise against allowed rise.")]
