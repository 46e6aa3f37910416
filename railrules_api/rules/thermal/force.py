"""Thermal force and stress of fully restrained rail."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Final

from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.rules.common import (
    NEUTRAL_TEMPERATURE_DRIFTS,
    OWN_STANDARDS,
    Area,
    ElasticModulus,
    Expansion,
    NeutralTemperature,
    RailTemperature,
)
from railrules_api.rules.model import Caution, Cite, Formula, Rule

FULL_RESTRAINT: Final = Caution(
    code="full-restraint",
    text="Holds only where the rail does not move: near ends, joints, cuts and breaks the force is smaller.",
    cite=Cite("strength-of-materials", "equilibrium of a bar with distributed longitudinal restraint", "derived"),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class ThermalForceInput:
    """What the thermal force of restrained rail depends on."""

    area: Area
    elastic_modulus: ElasticModulus
    expansion: Expansion
    rail_temperature: RailTemperature
    neutral_temperature: NeutralTemperature


@dataclass(frozen=True, slots=True, kw_only=True)
class ThermalForceResult:
    """Force and stress of one fully restrained rail, compression positive."""

    temperature_change: Annotated[
        float, Field("Rail temperature minus neutral temperature.", kind=Kind.TEMPERATURE_CHANGE, symbol="dT")
    ]
    stress: Annotated[float, Field("Axial stress, compression positive.", kind=Kind.STRESS, symbol="sigma")]
    force: Annotated[float, Field("Axial force in one rail, compression positive.", kind=Kind.FORCE, symbol="P")]
    track_force: Annotated[float, Field("Axial force in both rails.", kind=Kind.FORCE, symbol="P_track")]
    force_per_degree: Annotated[float, Field("Force in one rail per degree.", kind=Kind.FORCE_PER_TEMPERATURE, symbol="P_1")]
    stress_per_degree: Annotated[float, Field("Stress per degree.", kind=Kind.STRESS_PER_TEMPERATURE, symbol="sigma_1")]


def evaluate(given: ThermalForceInput) -> ThermalForceResult:
    """Return P = E A alpha (T - T_N) and what goes with it.

    >>> round(evaluate(ThermalForceInput(area=0.01, elastic_modulus=2e11, expansion=1e-5, rail_temperature=300.0,
    ...     neutral_temperature=290.0)).force)
    200000
    """
    change = given.rail_temperature - given.neutral_temperature
    stress_per_degree = given.elastic_modulus * given.expansion
    force_per_degree = stress_per_degree * given.area
    force = force_per_degree * change
    return ThermalForceResult(
        temperature_change=change,
        stress=stress_per_degree * change,
        force=force,
        track_force=2.0 * force,
        force_per_degree=force_per_degree,
        stress_per_degree=stress_per_degree,
    )


RULE = Rule(
    id="thermal.force",
    title="Thermal force in fully restrained rail",
    summary=(
        "Axial force and stress of rail that cannot move, from the difference between its temperature and its neutral "
        "temperature. Independent of length; holds away from ends, joints and cuts, where nothing moves."
    ),
    formulas=(
        Formula("temperature_change", "T - T_N"),
        Formula("stress_per_degree", "E * alpha"),
        Formula("force_per_degree", "sigma_1 * A"),
        Formula("stress", "sigma_1 * dT"),
        Formula("force", "P_1 * dT"),
        Formula("track_force", "2 * P"),
    ),
    cites=(Cite("strength-of-materials", "restrained thermal expansion: strain alpha dT held to zero", "derived"),),
    input=ThermalForceInput,
    output=ThermalForceResult,
    evaluate=evaluate,
    columns=True,
    cautions=(
        FULL_RESTRAINT,
        NEUTRAL_TEMPERATURE_DRIFTS,
        OWN_STANDARDS,
    ),
)
