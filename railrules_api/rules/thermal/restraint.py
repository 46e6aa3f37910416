"""What anchors and ballast hold lengthwise, and whether an anchored zone suffices."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Annotated, Final, Literal

from railrules_api.domain.amounts import SMALL, Amount
from railrules_api.domain.errors import below, refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
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

BALLAST_SHARE: Final = {1: 1.0, 2: 0.9}
"""Ballast resistance with every tie, every second tie anchored, over that with every tie: 29,000/32,000 and 18,000/20,000."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Zone:
    """A length of track in which one rail is anchored by one pattern."""

    name: Annotated[str, Field("What the zone is for.")]
    length: Annotated[float, Field("Length, to one side.", kind=Kind.LENGTH, at_least=0.0, at_most=1e6)]
    every: Annotated[int, Field("Every n-th tie is anchored: 1 every tie, 2 every second.", at_least=1, at_most=20)]
    ballast_share: Annotated[
        float | None,
        Field("Share of the ballast's resistance that the pattern engages; known for 1 and 2.", at_least=0.01, at_most=1.0),
    ] = None


@dataclass(frozen=True, slots=True, kw_only=True)
class RestraintInput:
    """The force to be held, the anchors, the ballast, the zones."""

    area: Area
    elastic_modulus: ElasticModulus
    expansion: Expansion
    rail_temperature: RailTemperature
    neutral_temperature: NeutralTemperature
    tie_spacing: Annotated[
        float,
        Field("Distance of ties, centre to centre.", kind=Kind.LENGTH, symbol="s", above=0.1, at_most=5.0, answer=SMALL),
    ]
    anchor_slip: Annotated[
        float,
        Field(
            "Force at which an anchor slips on the rail.",
            kind=Kind.FORCE,
            symbol="a",
            at_least=1.0,
            at_most=1e6,
            default="anchor-slip-load",
        ),
    ]
    anchors_acting: Annotated[
        int,
        Field(
            "Anchors of one rail that act against one direction at an anchored tie; boxed: 1.", symbol="n", at_least=1, at_most=4
        ),
    ]
    ballast_resistance: Annotated[
        float,
        Field(
            "Resistance of the ballast to one rail per length, every tie anchored.",
            kind=Kind.FORCE_PER_LENGTH,
            symbol="b",
            at_least=1.0,
            at_most=1e7,
            default="longitudinal-resistance",
        ),
    ]
    zones: Annotated[tuple[Zone, ...], Field("Zones next to ends, joints, turnouts and bridges.", most_items=1000)]


@dataclass(frozen=True, slots=True, kw_only=True)
class ZoneHold:
    """What one zone holds."""

    name: Annotated[str, Field("What the zone is for.")]
    anchors_hold: Annotated[float, Field("What the anchors hold per length, one rail.", kind=Kind.FORCE_PER_LENGTH)]
    ballast_holds: Annotated[float, Field("What the ballast holds per length, one rail.", kind=Kind.FORCE_PER_LENGTH)]
    governing: Annotated[Literal["anchors", "ballast"], Field("Which of the two gives way first.")]
    resistance: Annotated[float, Field("The smaller of the two.", kind=Kind.FORCE_PER_LENGTH)]
    held: Annotated[float, Field("Force that the zone holds.", kind=Kind.FORCE)]
    held_change: Annotated[float, Field("Temperature change that the zone alone fully restrains.", kind=Kind.TEMPERATURE_CHANGE)]
    short: Annotated[float, Field("Force that is left to the track beyond; 0 when the zone suffices.", kind=Kind.FORCE)]
    length_needed: Annotated[float, Field("Length that this pattern needs to hold the whole force.", kind=Kind.LENGTH)]
    ties_needed: Annotated[int, Field("Anchored ties in that length, rounded up.")]


@dataclass(frozen=True, slots=True, kw_only=True)
class RestraintResult:
    """The force and what each zone does about it."""

    temperature_change: Annotated[
        float, Field("Rail temperature minus neutral temperature.", kind=Kind.TEMPERATURE_CHANGE, symbol="dT")
    ]
    force: Annotated[float, Field("Axial force in one rail, compression positive.", kind=Kind.FORCE, symbol="P")]
    zones: Annotated[tuple[ZoneHold, ...], Field("What each zone holds, in the order given.")]
    checks: Annotated[tuple[Check, ...], Field("Whether each zone holds the whole force, in the order given.")]


def evaluate(given: RestraintInput) -> RestraintResult:
    """Return what each zone holds: the smaller of n a / (s every) and b times the pattern's share.

    Raises:
        RefusedError: a pattern sparser than every second tie without the share of ballast resistance it engages.
    """
    change = given.rail_temperature - given.neutral_temperature
    per_degree = given.elastic_modulus * given.area * given.expansion
    holds: list[ZoneHold] = []
    checks: list[Check] = []
    for position, zone in enumerate(given.zones):
        with below("zones", position):
            hold = _hold(given, zone, abs(per_degree * change), per_degree)
        holds.append(hold)
        checks.append(_check(zone, hold, abs(per_degree * change)))
    return RestraintResult(temperature_change=change, force=per_degree * change, zones=tuple(holds), checks=tuple(checks))


def _hold(given: RestraintInput, zone: Zone, force: float, per_degree: float) -> ZoneHold:
    share = BALLAST_SHARE.get(zone.every) if zone.ballast_share is None else zone.ballast_share
    if share is None:
        reason = "no measured share of ballast resistance is known for this pattern; give it"
        raise refuse("ballast_share", reason=reason)
    anchors = given.anchors_acting * given.anchor_slip / (given.tie_spacing * zone.every)
    ballast = given.ballast_resistance * share
    resistance = min(anchors, ballast)
    held = resistance * zone.length
    needed = force / resistance
    return ZoneHold(
        name=zone.name,
        anchors_hold=anchors,
        ballast_holds=ballast,
        governing="anchors" if anchors < ballast else "ballast",
        resistance=resistance,
        held=held,
        held_change=held / per_degree,
        short=max(0.0, force - held),
        length_needed=needed,
        ties_needed=math.ceil(needed / (given.tie_spacing * zone.every) * (1 - 1e-12)),
    )


def _check(zone: Zone, hold: ZoneHold, force: float) -> Check:
    return compare(
        code="anchored-zone",
        title=f"Anchored zone holds the thermal force: {zone.name}",
        demand=Amount(force, Kind.FORCE),
        capacity=Amount(hold.held, Kind.FORCE),
        governing=hold.governing,
        would_pass=(
            f"a zone of {words.long_length(hold.length_needed)} with this pattern, or a temperature change of no more than "
            f"{words.temperature_change(hold.held_change)}; until then the track beyond must hold {words.force(hold.short)}"
        ),
        place="equilibrium; 49 CFR 213.119(c) names 195 ft for joints and asks for no force",
    )


RULE = Rule(
    id="thermal.restraint",
    title="Longitudinal restraint by anchors and ballast",
    summary=(
        "A zone holds one rail lengthwise with the lesser of what its anchors hold on the rail and what the ballast holds of "
        "its ties. Against the thermal force of the rail: what the zone holds, what is left over, and the length that would "
        "hold it all. A zone of 195 ft satisfies the regulation for joints and still lets a heavy rail move on a cold night."
    ),
    formulas=(
        Formula("temperature_change", "T - T_N"),
        Formula("force", "E * A * alpha * dT"),
        Formula("zones", "for each zone: min(n a / (s every), b share) times its length against the force", exact=False),
    ),
    cites=(
        Cite("strength-of-materials", "equilibrium of a bar with distributed longitudinal restraint", "derived"),
        Cite("code-1961", "32,000 and 29,000 lb, 20,000 and 18,000 lb: every tie and every second tie anchored", "published"),
        Cite("fra-ord-13-16", "appendix D, p. 159: 15 to 30 lb/in in wood-tie track, depending on anchoring", "published"),
        Cite("cfr-49-213", "213.119(c)(2) and (c)(3): every tie anchored 195 ft in both directions", "published"),
    ),
    input=RestraintInput,
    output=RestraintResult,
    evaluate=evaluate,
    cautions=(
        Caution(
            code="ballast-shares-measured",
            text=(
                "Ballast shares are known from two test sites, for every tie and every second tie anchored. Ties anchored in a "
                "row lean on one crib each, so resistance per tie is not a constant; frozen or disturbed ballast differs much."
            ),
            cite=Cite("code-1961", "averages of both sites", "published"),
        ),
        NEUTRAL_TEMPERATURE_DRIFTS,
        OWN_STANDARDS,
    ),
)
