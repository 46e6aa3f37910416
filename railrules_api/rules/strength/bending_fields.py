"""What the bending of rail under wheels depends on, and what is answered."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Final, Literal

from railrules_api.domain.amounts import SMALL
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.rules.checks import Check
from railrules_api.rules.common import ElasticModulus
from railrules_api.rules.sections.section_records import SectionShape
from railrules_api.rules.strength.combined_stress import CombinedStress, ThermalExtremes

_SECTION: Final = "rail-sections"


@dataclass(frozen=True, slots=True, kw_only=True)
class Wheel:
    """One wheel on the rail."""

    position: Annotated[float, Field("Position along the rail.", kind=Kind.LENGTH, at_least=-1000.0, at_most=1000.0)]
    load: Annotated[float, Field("Static load on the rail.", kind=Kind.FORCE, at_least=1.0, at_most=1e7)]


@dataclass(frozen=True, slots=True, kw_only=True)
class BendingSection:
    """What bending asks of a rail section, to set a second one against the first."""

    second_moment: Annotated[
        float,
        Field(
            "Second moment about the level axis.", kind=Kind.SECOND_MOMENT, at_least=1e-10, at_most=1e-3,
            taken=Taken("section", _SECTION, "second_moment"),
        ),
    ]  # fmt: skip
    section_modulus_base: Annotated[
        float,
        Field(
            "Section modulus of the base.", kind=Kind.SECTION_MODULUS, at_least=1e-8, at_most=1e-2,
            taken=Taken("section", _SECTION, "section_modulus_base"),
        ),
    ]  # fmt: skip
    section_modulus_head: Annotated[
        float,
        Field(
            "Section modulus of the head.", kind=Kind.SECTION_MODULUS, at_least=1e-8, at_most=1e-2,
            taken=Taken("section", _SECTION, "section_modulus_head"),
        ),
    ]  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class VerticalBendingInput:
    """A rail, its bed, its wheels, and what it may bear."""

    elastic_modulus: ElasticModulus
    second_moment: Annotated[
        float,
        Field(
            "Second moment of the rail about its level axis.",
            kind=Kind.SECOND_MOMENT,
            at_least=1e-10,
            at_most=1e-3,
            taken=Taken("section", _SECTION, "second_moment"),
        ),
    ]
    section_modulus_base: Annotated[
        float,
        Field(
            "Section modulus of the base.",
            kind=Kind.SECTION_MODULUS,
            at_least=1e-8,
            at_most=1e-2,
            taken=Taken("section", _SECTION, "section_modulus_base"),
        ),
    ]
    section_modulus_head: Annotated[
        float,
        Field(
            "Section modulus of the head.",
            kind=Kind.SECTION_MODULUS,
            at_least=1e-8,
            at_most=1e-2,
            taken=Taken("section", _SECTION, "section_modulus_head"),
        ),
    ]
    track_modulus: Annotated[
        float | None,
        Field(
            "Track modulus of one rail; give this or the condition.", kind=Kind.FOUNDATION_MODULUS, at_least=100.0, at_most=1e10
        ),
    ] = None
    condition: Annotated[
        Literal["poor", "average", "good"] | None,
        Field("Condition of the track, for a modulus of 1,000, 2,000 or 3,000 psi (the first two from memory)."),
    ] = None
    wheels: Annotated[tuple[Wheel, ...], Field("Wheels on the rail.", most_items=50)]
    speed_rule: Annotated[
        Literal["none", "speed-over-diameter", "hundredth", "given"],
        Field("Speed factor: none; 1 + 33 V / (100 D), mph and in; 1 + V / 100, km/h; or given."),
    ]
    speed: Annotated[float | None, Field("Speed.", kind=Kind.SPEED, at_least=0.0, at_most=150.0)] = None
    wheel_diameter: Annotated[
        float | None, Field("Diameter of wheel.", kind=Kind.LENGTH, at_least=1e-3, at_most=3.0, answer=SMALL)
    ] = None
    speed_factor: Annotated[float | None, Field("Speed factor, given.", at_least=1.0, at_most=10.0)] = None
    tie_spacing: Annotated[
        float, Field("Distance of ties, centre to centre.", kind=Kind.LENGTH, symbol="s", above=0.1, at_most=5.0, answer=SMALL)
    ]
    tie_section: Annotated[
        Literal["6x8", "7x9"] | None, Field("Wood tie, depth and width in inches, for tie bending and ballast pressure.")
    ] = None
    tie_bending_limit: Annotated[
        float,
        Field("Bending stress allowed in a wood tie.", kind=Kind.STRESS, at_least=1e3, at_most=1e9, default="tie-bending-limit"),
    ]
    ballast_pressure_limit: Annotated[
        float,
        Field("Pressure allowed on the ballast.", kind=Kind.STRESS, at_least=1e3, at_most=1e9, default="ballast-pressure-limit"),
    ]
    yield_strength: Annotated[
        float,
        Field(
            "Stress at which the rail steel yields.",
            kind=Kind.STRESS,
            symbol="Y",
            at_least=1e3,
            at_most=5e9,
            default="bending-yield-strength",
        ),
    ]
    thermal_stress: Annotated[
        float,
        Field(
            "Thermal tension set aside; 0 for jointed rail.",
            kind=Kind.STRESS,
            symbol="sigma_T",
            at_least=0.0,
            at_most=1e9,
            default="bending-thermal-stress",
        ),
    ]
    lateral_share: Annotated[
        float, Field("Share for bending sideways.", symbol="k_1", at_least=0.0, at_most=2.0, default="bending-lateral-share")
    ]
    condition_share: Annotated[
        float, Field("Share for track condition.", symbol="k_2", at_least=0.0, at_most=2.0, default="bending-condition-share")
    ]
    wear_share: Annotated[
        float, Field("Share for wear and corrosion.", symbol="k_3", at_least=0.0, at_most=2.0, default="bending-wear-share")
    ]
    unbalance_share: Annotated[
        float,
        Field("Share for unbalanced elevation.", symbol="k_4", at_least=0.0, at_most=2.0, default="bending-unbalance-share"),
    ]
    other: Annotated[BendingSection | None, Field("A second section to set against the first.")] = None
    worn: Annotated[
        SectionShape | None,
        Field("The rail as it is now, by its wear: its outline then gives second moment and moduli in place of those given."),
    ] = None
    thermal: Annotated[
        ThermalExtremes | None,
        Field("Rail temperatures, for the stresses that act together with bending; left out: not checked."),
    ] = None


@dataclass(frozen=True, slots=True, kw_only=True)
class UnderWheel:
    """What is found under one wheel."""

    position: Annotated[float, Field("Position along the rail.", kind=Kind.LENGTH)]
    deflection: Annotated[float, Field("Deflection.", kind=Kind.LENGTH, answer=SMALL)]
    moment: Annotated[float, Field("Moment, base in tension positive.", kind=Kind.MOMENT)]


@dataclass(frozen=True, slots=True, kw_only=True)
class OtherSection:
    """The second section under the same wheels, and its figures over those of the first."""

    deflection: Annotated[float, Field("Largest deflection.", kind=Kind.LENGTH, answer=SMALL)]
    base_stress: Annotated[float, Field("Largest tension in the base.", kind=Kind.STRESS)]
    head_stress: Annotated[float, Field("Compression in the head at the same place.", kind=Kind.STRESS)]
    seat_load: Annotated[float, Field("Largest rail-seat load.", kind=Kind.FORCE)]
    deflection_ratio: Annotated[float, Field("Deflection over that of the first.")]
    base_stress_ratio: Annotated[float, Field("Base stress over that of the first.")]
    seat_load_ratio: Annotated[float, Field("Rail-seat load over that of the first.")]


@dataclass(frozen=True, slots=True, kw_only=True)
class VerticalBendingResult:
    """Largest values with the speed factor in them, and the allowable stress."""

    section_from: Annotated[Literal["as-given", "worn-outline"], Field("Where second moment and moduli as used come from.")]
    second_moment_used: Annotated[float, Field("Second moment as used.", kind=Kind.SECOND_MOMENT, symbol="I")]
    modulus_base_used: Annotated[float, Field("Section modulus of the base as used.", kind=Kind.SECTION_MODULUS, symbol="S")]
    modulus_head_used: Annotated[float, Field("Section modulus of the head as used.", kind=Kind.SECTION_MODULUS, symbol="S_h")]
    track_modulus: Annotated[float, Field("Track modulus as used.", kind=Kind.FOUNDATION_MODULUS, symbol="u")]
    speed_factor: Annotated[float, Field("Speed factor as used.", symbol="theta")]
    wave_number: Annotated[float, Field("b = (u / (4 E I))^(1/4).", kind=Kind.CURVATURE, symbol="b")]
    first_zero: Annotated[
        float, Field("Distance from a single wheel at which the moment vanishes.", kind=Kind.LENGTH, symbol="x_1", answer=SMALL)
    ]
    deflection: Annotated[float, Field("Largest deflection.", kind=Kind.LENGTH, symbol="y", answer=SMALL)]
    uplift: Annotated[
        float,
        Field("Largest lift above the place at rest, if the bed could pull.", kind=Kind.LENGTH, symbol="y_up", answer=SMALL),
    ]
    moment: Annotated[float, Field("Largest moment, base in tension.", kind=Kind.MOMENT, symbol="M")]
    reverse_moment: Annotated[float, Field("Largest moment, head in tension.", kind=Kind.MOMENT, symbol="M_r")]
    static_base_stress: Annotated[float, Field("Tension in the base without speed factor.", kind=Kind.STRESS, symbol="sigma_0")]
    base_stress: Annotated[float, Field("Largest tension in the base.", kind=Kind.STRESS, symbol="sigma")]
    head_stress: Annotated[float, Field("Compression in the head at the same place.", kind=Kind.STRESS, symbol="sigma_h")]
    seat_load: Annotated[float, Field("Largest rail-seat load.", kind=Kind.FORCE, symbol="q")]
    tie_stress: Annotated[float | None, Field("Bending stress of the tie.", kind=Kind.STRESS)]
    ballast_pressure: Annotated[float | None, Field("Pressure on the ballast under the tie.", kind=Kind.STRESS)]
    allowable_stress: Annotated[float, Field("Tension in the base that is allowed.", kind=Kind.STRESS, symbol="sigma_a")]
    wheels: Annotated[tuple[UnderWheel, ...], Field("Deflection and moment under each wheel, in the order given.")]
    other: Annotated[OtherSection | None, Field("The second section.")]
    combined: Annotated[tuple[CombinedStress, ...], Field("Bending and thermal stress together, where temperatures are given.")]
    checks: Annotated[
        tuple[Check, ...], Field("Base stress, tie bending, ballast pressure, bending and thermal stress together.")
    ]
