"""Thermal force and stress of a rail as it is now: its section from the new one and what wear has taken."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Literal

from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.rules.common import (
    NEUTRAL_TEMPERATURE_DRIFTS,
    OWN_STANDARDS,
    ElasticModulus,
    Expansion,
    NeutralTemperature,
    RailTemperature,
)
from railrules_api.rules.model import Cite, Formula, Rule
from railrules_api.rules.sections.properties import RULE as SECTION_RULE
from railrules_api.rules.sections.properties import shapes_of
from railrules_api.rules.sections.section_records import SectionShape
from railrules_api.rules.thermal.force import FULL_RESTRAINT

SectionFrom = Literal["new-section", "new-section-less-wear", "measured-head", "measured-outline"]


def section_from(given: SectionShape) -> SectionFrom:
    """Tell what the section as it is now was made from."""
    if given.outline:
        return "measured-outline"
    if given.measured_head:
        return "measured-head"
    return "new-section" if given.vertical_wear is None and not given.face_wear else "new-section-less-wear"


@dataclass(frozen=True, slots=True, kw_only=True)
class WornRailInput(SectionShape):
    """A section, its wear, and the temperatures of the rail."""

    elastic_modulus: ElasticModulus
    expansion: Expansion
    rail_temperature: RailTemperature
    neutral_temperature: NeutralTemperature


@dataclass(frozen=True, slots=True, kw_only=True)
class WornRailResult:
    """Force and stress of one restrained rail as it is now, and of the new one beside it; compression positive."""

    section_from: Annotated[SectionFrom, Field("What the section as it is now was made from.")]
    area: Annotated[float, Field("Cross-section as it is now.", kind=Kind.AREA, symbol="A")]
    area_new: Annotated[
        float | None,
        Field("Cross-section of the new rail, from its drawing; left out where only points are given.", kind=Kind.AREA),
    ]
    area_left_share: Annotated[float | None, Field("Worn over new area: so much of the new rail's thermal force is left.")]
    second_moment: Annotated[
        float, Field("Second moment about the horizontal axis, as it is now.", kind=Kind.SECOND_MOMENT, symbol="I_x")
    ]
    second_moment_lateral: Annotated[
        float,
        Field(
            "Second moment about the vertical axis, as it is now, for buckling sideways.", kind=Kind.SECOND_MOMENT, symbol="I_y"
        ),
    ]
    temperature_change: Annotated[
        float, Field("Rail temperature minus neutral temperature.", kind=Kind.TEMPERATURE_CHANGE, symbol="dT")
    ]
    stress_per_degree: Annotated[
        float, Field("Stress per degree; wear does not change it.", kind=Kind.STRESS_PER_TEMPERATURE, symbol="sigma_1")
    ]
    stress: Annotated[float, Field("Axial stress, compression positive.", kind=Kind.STRESS, symbol="sigma")]
    force_per_degree: Annotated[
        float, Field("Force in one rail per degree, as it is now.", kind=Kind.FORCE_PER_TEMPERATURE, symbol="P_1")
    ]
    force_per_degree_new: Annotated[
        float | None, Field("Force in one new rail per degree.", kind=Kind.FORCE_PER_TEMPERATURE, symbol="P_1n")
    ]
    force: Annotated[float, Field("Axial force in one rail as it is now, compression positive.", kind=Kind.FORCE, symbol="P")]
    force_new: Annotated[float | None, Field("Axial force in one new rail at the same temperatures.", kind=Kind.FORCE)]
    track_force: Annotated[float, Field("Axial force in both rails, worn alike.", kind=Kind.FORCE, symbol="P_track")]


def evaluate(given: WornRailInput) -> WornRailResult:
    """Return P = E A alpha (T - T_N) with the area that wear has left.

    Raises:
        RefusedError: as `sections.properties`: measures, wear or points that bound no section.
    """
    shapes = shapes_of(given)
    now, new = shapes.now[1], None if shapes.new is None else shapes.new[1]
    change = given.rail_temperature - given.neutral_temperature
    stress_per_degree = given.elastic_modulus * given.expansion
    force = stress_per_degree * now.area * change
    return WornRailResult(
        section_from=section_from(given),
        area=now.area,
        area_new=None if new is None else new.area,
        area_left_share=None if new is None else now.area / new.area,
        second_moment=now.second_moment_horizontal,
        second_moment_lateral=now.second_moment_vertical,
        temperature_change=change,
        stress_per_degree=stress_per_degree,
        stress=stress_per_degree * change,
        force_per_degree=stress_per_degree * now.area,
        force_per_degree_new=None if new is None else stress_per_degree * new.area,
        force=force,
        force_new=None if new is None else stress_per_degree * new.area * change,
        track_force=2.0 * force,
    )


RULE = Rule(
    id="thermal.worn-rail",
    title="Thermal force in worn rail",
    summary=(
        "Axial force and stress of restrained rail with the section that wear has left, integrated from its outline: of the "
        "catalogue or of given measures less vertical and face wear, or of measured points. Stress does not depend on wear; "
        "force does, so a worn rail pulls and pushes less than the new one by the share of area lost. Area and second moments as "
        "they are now can be put to every other thermal rule in place of those of the new section."
    ),
    formulas=(
        Formula("area", "area inside the worn outline, by contour integral", exact=False),
        Formula("temperature_change", "T - T_N"),
        Formula("stress_per_degree", "E * alpha"),
        Formula("stress", "sigma_1 * dT"),
        Formula("force_per_degree", "sigma_1 * A"),
        Formula("force", "P_1 * dT"),
        Formula("track_force", "2 * P"),
    ),
    cites=(
        Cite("strength-of-materials", "restrained thermal expansion: strain alpha dT held to zero", "derived"),
        *(cite for cite in SECTION_RULE.cites if cite.source == "geometry"),
    ),
    input=WornRailInput,
    output=WornRailResult,
    evaluate=evaluate,
    cautions=(
        *(caution for caution in SECTION_RULE.cautions if caution.code == "outline-from-drawing"),
        FULL_RESTRAINT,
        NEUTRAL_TEMPERATURE_DRIFTS,
        OWN_STANDARDS,
    ),
)
