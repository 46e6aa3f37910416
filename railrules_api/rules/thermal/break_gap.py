"""Gap that opens where cold welded rail breaks or is cut."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from railrules_api.domain.amounts import SMALL, Amount
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.slip import Restraint, force_for_movement, free_end, resistance_for_movement
from railrules_api.rules import words
from railrules_api.rules.checks import Check, compare
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
from railrules_api.rules.thermal.restraint_fields import Resistance, RestraintLaw, Stiffness, restraint


@dataclass(frozen=True, slots=True, kw_only=True)
class BreakGapInput:
    """One rail, how it is held, and how cold it gets."""

    area: Area
    elastic_modulus: ElasticModulus
    expansion: Expansion
    rail_temperature: RailTemperature
    neutral_temperature: NeutralTemperature
    law: RestraintLaw
    resistance: Resistance
    stiffness: Stiffness = None
    gap_limit: Annotated[
        float,
        Field(
            "Largest gap accepted.",
            kind=Kind.LENGTH,
            symbol="G_max",
            at_least=1e-3,
            at_most=1.0,
            default="break-gap-limit",
            answer=SMALL,
        ),
    ]


@dataclass(frozen=True, slots=True, kw_only=True)
class BreakGapResult:
    """What opens at the break, and how far the rail is disturbed."""

    temperature_drop: Annotated[
        float,
        Field(
            "Rail temperature below neutral; 0 where the rail is in compression and nothing opens.",
            kind=Kind.TEMPERATURE_CHANGE,
            symbol="drop",
        ),
    ]
    force: Annotated[
        float,
        Field("Force in one rail before the break, compression positive, so never above 0.", kind=Kind.FORCE, symbol="P"),
    ]
    slip_length: Annotated[
        float,
        Field("Length on each side along which the restraint is used up to its limit.", kind=Kind.LENGTH, symbol="x_0"),
    ]
    decay_length: Annotated[
        float,
        Field(
            "Length beyond it in which an elastic disturbance falls to 1/e; 0 for the rigid-plastic law.",
            kind=Kind.LENGTH,
            symbol="x_e",
        ),
    ]
    end_movement: Annotated[float, Field("Movement of each rail end.", kind=Kind.LENGTH, symbol="u_0", answer=SMALL)]
    gap: Annotated[float, Field("Gap, both ends together.", kind=Kind.LENGTH, symbol="G", answer=SMALL)]
    drop_at_limit: Annotated[
        float,
        Field(
            "Drop below neutral at which the gap would be the largest accepted.",
            kind=Kind.TEMPERATURE_CHANGE,
            symbol="drop_max",
        ),
    ]
    resistance_at_limit: Annotated[
        float | None,
        Field(
            "Resistance at which the gap would be the largest accepted; absent where no resistance is enough, or none is needed.",
            kind=Kind.FORCE_PER_LENGTH,
            symbol="r_min",
        ),
    ]
    checks: Annotated[tuple[Check, ...], Field("The gap against the largest accepted.")]


def evaluate(given: BreakGapInput) -> BreakGapResult:
    """Return the gap of a break: twice the movement of a free end under P0 = E A alpha (T_N - T).

    Rigid-plastic: G = E A (alpha drop)^2 / r.

    Raises:
        RefusedError: the elastic or bilinear law without a stiffness.
    """
    held = restraint(given.law, given.resistance, given.stiffness)
    axial_stiffness = given.elastic_modulus * given.area
    drop = max(0.0, given.neutral_temperature - given.rail_temperature)
    tension = axial_stiffness * given.expansion * drop
    slip = free_end(tension, axial_stiffness, held)
    gap = 2 * slip.movement
    drop_at_limit = force_for_movement(given.gap_limit / 2, axial_stiffness, held) / (axial_stiffness * given.expansion)
    needed = resistance_for_movement(given.gap_limit / 2, tension, axial_stiffness, held) if tension > 0.0 else None
    return BreakGapResult(
        temperature_drop=drop,
        force=-tension if tension > 0.0 else 0.0,
        slip_length=slip.slip_length,
        decay_length=slip.decay_length,
        end_movement=slip.movement,
        gap=gap,
        drop_at_limit=drop_at_limit,
        resistance_at_limit=needed,
        checks=(_check(given, held, gap, drop_at_limit, needed),),
    )


def _check(given: BreakGapInput, held: Restraint, gap: float, drop_at_limit: float, needed: float | None) -> Check:
    colder = words.temperature(given.rail_temperature + drop_at_limit)
    ways = [f"neutral temperature no higher than {colder}, if the hot side allows it"]
    if needed is not None:
        ways.insert(0, f"longitudinal resistance of at least {words.force_per_length(needed)} for each rail")
    elif held.law != "rigid-plastic":
        ways.append("a stiffer longitudinal fastening")
    return compare(
        code="break-gap",
        title="Gap at a break of cold rail",
        demand=Amount(gap, Kind.LENGTH, SMALL),
        capacity=Amount(given.gap_limit, Kind.LENGTH, SMALL),
        governing="stiffness" if held.law == "elastic" else "resistance",
        would_pass="; or ".join(ways),
        place="largest gap as given, or the house default (from memory: 2 in is common for transit; no regulation sets one)",
    )


RULE = Rule(
    id="thermal.break-gap",
    title="Gap at a break or cut of cold rail",
    summary=(
        "Rail colder than its neutral temperature is in tension; where it parts, both ends draw back until the longitudinal "
        "restraint has taken the force up. Gap, slip length and end movement by a rigid-plastic, an elastic or a bilinear law "
        "of restraint, in long rail with no other end, joint or fixed point within the slip length."
    ),
    formulas=(
        Formula("temperature_drop", "max(0, T_N - T)"),
        Formula("force", "-E * A * alpha * drop"),
        Formula("slip_length", "-P / r", when=("law", "rigid-plastic")),
        Formula("end_movement", "P**2 / (2 * E * A * r)", when=("law", "rigid-plastic")),
        Formula("decay_length", "sqrt(E * A / k)", when=("law", "elastic")),
        Formula("end_movement", "-P / sqrt(k * E * A)", when=("law", "elastic")),
        Formula("decay_length", "sqrt(E * A / k)", when=("law", "bilinear")),
        Formula("slip_length", "max(0, -P / r - x_e)", when=("law", "bilinear")),
        Formula(
            "end_movement",  # the elastic part beyond the slip, and what the slipping length adds
            "(-P - r * x_0) / sqrt(k * E * A) + (-P * x_0 - r * x_0**2 / 2) / (E * A)",
            when=("law", "bilinear"),
        ),
        Formula("gap", "2 * u_0"),
        Formula("drop_at_limit", "sqrt(G_max * r / (E * A)) / alpha", when=("law", "rigid-plastic")),
        Formula("drop_at_limit", "G_max * sqrt(k / (E * A)) / (2 * alpha)", when=("law", "elastic")),
        Formula("drop_at_limit", "the drop that gives G = G_max", exact=False, when=("law", "bilinear")),
        Formula("resistance_at_limit", "P**2 / (E * A * G_max)", when=("law", "rigid-plastic")),
        Formula("resistance_at_limit", "the resistance that gives G = G_max", exact=False, when=("law", "bilinear")),
    ),
    cites=(
        Cite("strength-of-materials", "equilibrium of a bar with distributed longitudinal restraint", "derived"),
        Cite("fra-ord-13-16", "appendix D, p. 159: 15 to 30 lb/in in wood-tie track, depending on anchoring", "published"),
        Cite("tcrp-155", "chapter 7: rail-break gap on structures; 2 in", "from-memory"),
    ),
    input=BreakGapInput,
    output=BreakGapResult,
    evaluate=evaluate,
    columns=True,
    cautions=(
        Caution(
            code="long-rail-on-both-sides",
            text="Holds where the rail runs on beyond the slip length. A joint, turnout or bridge nearer changes the gap.",
            cite=Cite("strength-of-materials", "boundary condition of the formula", "derived"),
        ),
        NEUTRAL_TEMPERATURE_DRIFTS,
        OWN_STANDARDS,
    ),
)
