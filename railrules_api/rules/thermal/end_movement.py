"""Movement and breathing length at the end of continuous welded rail."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from railrules_api.domain.amounts import SMALL, Amount
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.slip import Restraint, free_end
from railrules_api.rules import words
from railrules_api.rules.checks import Check, compare
from railrules_api.rules.common import (
    NEUTRAL_TEMPERATURE_DRIFTS,
    OWN_STANDARDS,
    Area,
    ElasticModulus,
    Expansion,
    NeutralTemperature,
)
from railrules_api.rules.model import Caution, Cite, Formula, Rule
from railrules_api.rules.thermal.restraint_fields import Resistance, RestraintLaw, Stiffness, restraint


@dataclass(frozen=True, slots=True, kw_only=True)
class EndMovementInput:
    """One rail that ends, its neutral temperature, and the extremes of its temperature."""

    area: Area
    elastic_modulus: ElasticModulus
    expansion: Expansion
    neutral_temperature: NeutralTemperature
    hottest: Annotated[float, Field("Hottest rail.", kind=Kind.TEMPERATURE, symbol="H", at_least=173.15, at_most=373.15)]
    coldest: Annotated[float, Field("Coldest rail.", kind=Kind.TEMPERATURE, symbol="C", at_least=173.15, at_most=373.15)]
    law: RestraintLaw
    resistance: Resistance
    stiffness: Stiffness = None
    joint_force: Annotated[
        float,
        Field(
            "Force that the joint at the end holds before it slips.",
            kind=Kind.FORCE,
            symbol="J",
            at_least=0.0,
            at_most=1e7,
            default="joint-slip-force",
        ),
    ]
    room_to_close: Annotated[
        float | None,
        Field(
            "Room for the end to move out: the joint's gap at neutral temperature.", kind=Kind.LENGTH, at_least=0.0, answer=SMALL
        ),
    ] = None
    room_to_open: Annotated[
        float | None,
        Field("Room for the end to draw back before the bolts bear.", kind=Kind.LENGTH, at_least=0.0, answer=SMALL),
    ] = None


@dataclass(frozen=True, slots=True, kw_only=True)
class EndMovementResult:
    """What the end does, hot and cold, starting free of force at the neutral temperature."""

    hot_force: Annotated[
        float, Field("Force of the restrained rail when hottest, compression positive.", kind=Kind.FORCE, symbol="P_hot")
    ]
    cold_force: Annotated[
        float, Field("Force of the restrained rail when coldest, compression positive.", kind=Kind.FORCE, symbol="P_cold")
    ]
    hot_movement: Annotated[
        float, Field("Movement of the end outwards when hottest.", kind=Kind.LENGTH, symbol="u_hot", answer=SMALL)
    ]
    cold_movement: Annotated[
        float, Field("Movement of the end inwards when coldest.", kind=Kind.LENGTH, symbol="u_cold", answer=SMALL)
    ]
    travel: Annotated[float, Field("Both movements together.", kind=Kind.LENGTH, symbol="travel", answer=SMALL)]
    hot_slip_length: Annotated[float, Field("Length that slips when hottest.", kind=Kind.LENGTH, symbol="x_hot")]
    cold_slip_length: Annotated[float, Field("Length that slips when coldest.", kind=Kind.LENGTH, symbol="x_cold")]
    decay_length: Annotated[
        float, Field("Length beyond it in which an elastic disturbance falls to 1/e.", kind=Kind.LENGTH, symbol="x_e")
    ]
    breathing_length: Annotated[
        float, Field("Longer of the two slip lengths, with the decay length.", kind=Kind.LENGTH, symbol="x_b")
    ]
    checks: Annotated[tuple[Check, ...], Field("Movement out and in against the room there is.")]


def evaluate(given: EndMovementInput) -> EndMovementResult:
    """Return the movement of the end under the thermal force less what the joint holds.

    Raises:
        RefusedError: coldest above hottest; the elastic or bilinear law without a stiffness.
    """
    if given.coldest > given.hottest:
        raise refuse("coldest", reason="coldest lies above hottest", value=given.coldest, maximum=given.hottest)
    held = restraint(given.law, given.resistance, given.stiffness)
    axial_stiffness = given.elastic_modulus * given.area
    per_degree = axial_stiffness * given.expansion
    hot_force = per_degree * max(0.0, given.hottest - given.neutral_temperature)
    cold_force = per_degree * max(0.0, given.neutral_temperature - given.coldest)
    hot = free_end(max(0.0, hot_force - given.joint_force), axial_stiffness, held)
    cold = free_end(max(0.0, cold_force - given.joint_force), axial_stiffness, held)
    return EndMovementResult(
        hot_force=hot_force,
        cold_force=-cold_force if cold_force > 0.0 else 0.0,
        hot_movement=hot.movement,
        cold_movement=cold.movement,
        travel=hot.movement + cold.movement,
        hot_slip_length=hot.slip_length,
        cold_slip_length=cold.slip_length,
        decay_length=hot.decay_length,
        breathing_length=max(hot.slip_length, cold.slip_length) + hot.decay_length,
        checks=(
            _check("end-closes", "Movement outwards when hot", "room_to_close", hot.movement, given.room_to_close, held),
            _check("end-opens", "Movement inwards when cold", "room_to_open", cold.movement, given.room_to_open, held),
        ),
    )


def _check(code: str, title: str, name: str, movement: float, room: float | None, held: Restraint) -> Check:  # noqa: PLR0913, PLR0917
    place = "room at the joint, as given"
    if room is None:
        return Check(
            code=code,
            title=title,
            verdict="not-checked",
            demand=Amount(movement, Kind.LENGTH, SMALL),
            governing=name,
            place=place,
        )
    more = words.small_length(max(0.0, movement - room))
    hold = "a stiffer fastening" if held.law == "elastic" else "more longitudinal resistance at the end"
    return compare(
        code=code,
        title=title,
        demand=Amount(movement, Kind.LENGTH, SMALL),
        capacity=Amount(room, Kind.LENGTH, SMALL),
        governing=name,
        would_pass=f"{more} more room, or {hold}",
        place=place,
    )


RULE = Rule(
    id="thermal.end-movement",
    title="Movement at the end of welded rail",
    summary=(
        "Where welded rail ends at a joint, the force there is no more than the joint holds and the last length of the rail "
        "breathes. Movement outwards at the hottest and inwards at the coldest rail temperature, each reached from the neutral "
        "temperature for the first time, and the length that moves."
    ),
    formulas=(
        Formula("hot_force", "E * A * alpha * max(0, H - T_N)"),
        Formula("cold_force", "-E * A * alpha * max(0, T_N - C)"),
        Formula("hot_slip_length", "max(0, P_hot - J) / r", when=("law", "rigid-plastic")),
        Formula("cold_slip_length", "max(0, -P_cold - J) / r", when=("law", "rigid-plastic")),
        Formula("hot_movement", "max(0, P_hot - J)**2 / (2 * E * A * r)", when=("law", "rigid-plastic")),
        Formula("cold_movement", "max(0, -P_cold - J)**2 / (2 * E * A * r)", when=("law", "rigid-plastic")),
        Formula("hot_movement", "max(0, P_hot - J) / sqrt(k * E * A)", when=("law", "elastic")),
        Formula("cold_movement", "max(0, -P_cold - J) / sqrt(k * E * A)", when=("law", "elastic")),
        Formula(
            "hot_movement",
            "free-end movement (see thermal.break-gap) under P_hot - J, not below 0",
            exact=False,
            when=("law", "bilinear"),
        ),
        Formula(
            "cold_movement",
            "free-end movement (see thermal.break-gap) under -P_cold - J, not below 0",
            exact=False,
            when=("law", "bilinear"),
        ),
        Formula("travel", "u_hot + u_cold"),
        Formula("breathing_length", "max(x_hot, x_cold) + x_e"),
    ),
    cites=(
        Cite("strength-of-materials", "equilibrium of a bar with distributed longitudinal restraint", "derived"),
        Cite("fra-ord-13-16", "appendix D, p. 159: 15 to 30 lb/in in wood-tie track, depending on anchoring", "published"),
    ),
    input=EndMovementInput,
    output=EndMovementResult,
    evaluate=evaluate,
    columns=True,
    cautions=(
        Caution(
            code="first-movement",
            text=(
                "Restraint also resists the way back: after the first hot and cold season the end moves about a middle position "
                "that depends on what came before."
            ),
            cite=Cite("strength-of-materials", "friction reverses with the movement", "derived"),
        ),
        NEUTRAL_TEMPERATURE_DRIFTS,
        OWN_STANDARDS,
    ),
)
