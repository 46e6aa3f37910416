"""Welded strings hauled round a curve: bending stress, offset between racks, shift of the ends."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Final

from railrules_api.domain.amounts import SMALL, Amount
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.roots import square_root
from railrules_api.rules import words
from railrules_api.rules.checks import Check, compare
from railrules_api.rules.common import OWN_STANDARDS, ElasticModulus
from railrules_api.rules.model import Caution, Cite, Formula, Rule
from railrules_api.rules.radius import radius_from
from railrules_api.rules.strength.hauling_fields import (
    ClampedAt,
    EndClearance,
    FacingEnds,
    RackOffset,
    RackSpacing,
    TurnAngle,
    WayDegree,
    WayRadius,
    WayTurnoutNumber,
    YieldShare,
    YieldStrength,
)
from railrules_api.rules.strength.turnout_radius import FrogToeSpread, Gauge, HeelSpread, middle_radius

_SECTION: Final = "rail-sections"


@dataclass(frozen=True, slots=True, kw_only=True)
class HaulingCurveInput:
    """The sharpest curve of the way, the rail, the racks, the string."""

    radius: WayRadius = None
    degree: WayDegree = None
    turnout_number: WayTurnoutNumber = None
    gauge: Gauge
    heel_spread: HeelSpread
    frog_toe_spread: FrogToeSpread
    turn_angle: TurnAngle = None
    elastic_modulus: ElasticModulus
    base_width: Annotated[
        float,
        Field(
            "Width of the rail base.",
            kind=Kind.LENGTH,
            symbol="b",
            at_least=1e-3,
            at_most=0.5,
            taken=Taken("section", _SECTION, "base_width"),
            answer=SMALL,
        ),
    ]
    head_width: Annotated[
        float | None,
        Field(
            "Width of the rail head, for the stress there.",
            kind=Kind.LENGTH,
            at_least=1e-3,
            at_most=0.5,
            taken=Taken("section", _SECTION, "head_width"),
            answer=SMALL,
        ),
    ] = None
    second_moment_lateral: Annotated[
        float | None,
        Field(
            "Second moment of the rail about its upright axis, for the moment.",
            kind=Kind.SECOND_MOMENT,
            at_least=1e-10,
            at_most=1e-3,
            taken=Taken("section", _SECTION, "second_moment_lateral"),
        ),
    ] = None
    yield_strength: YieldStrength
    yield_share: YieldShare = None
    string_length: Annotated[float, Field("Length of string.", kind=Kind.LENGTH, symbol="L", at_least=1e-3, at_most=1e4)]
    clamped_at: ClampedAt
    rack_spacing: RackSpacing
    rack_offset: RackOffset
    facing_ends: FacingEnds
    end_clearance: EndClearance = None


@dataclass(frozen=True, slots=True, kw_only=True)
class HaulingCurveResult:
    """Stress about the upright axis, offset, shift."""

    radius: Annotated[float, Field("Radius of the track as used.", kind=Kind.LENGTH, symbol="R")]
    inner_radius: Annotated[float, Field("Radius of the innermost string.", kind=Kind.LENGTH, symbol="R_i")]
    base_stress: Annotated[float, Field("Bending stress at the edge of the base.", kind=Kind.STRESS, symbol="sigma")]
    head_stress: Annotated[float | None, Field("Bending stress at the side of the head.", kind=Kind.STRESS)]
    share_of_yield: Annotated[float, Field("Stress at the edge of the base over yield strength.", symbol="share")]
    moment: Annotated[float | None, Field("Bending moment about the upright axis.", kind=Kind.MOMENT)]
    rack_versine: Annotated[
        float,
        Field(
            "Offset of the string, head and base alike, from the chord between neighbouring racks.",
            kind=Kind.LENGTH,
            symbol="v",
            answer=SMALL,
        ),
    ]
    angle: Annotated[float, Field("Angle of the curve under the free part of the string.", kind=Kind.ANGLE, symbol="theta")]
    end_shift: Annotated[
        float,
        Field(
            "Shift of the outermost string's end along the train, ahead inside, behind outside.",
            kind=Kind.LENGTH,
            symbol="e",
            answer=SMALL,
        ),
    ]
    shift_between: Annotated[
        float, Field("Shift of the inner against the outer string.", kind=Kind.LENGTH, symbol="e_2", answer=SMALL)
    ]
    clearance_used: Annotated[float, Field("Clearance that the facing ends take up.", kind=Kind.LENGTH, symbol="c", answer=SMALL)]
    checks: Annotated[tuple[Check, ...], Field("Stress against the share of yield; clearance at the ends.")]


def evaluate(given: HaulingCurveInput) -> HaulingCurveResult:
    """Return sigma = E (b / 2) / R, the versine between racks, and the shift y theta of a string y off the middle.

    Raises:
        RefusedError: neither or both of radius and degree; racks further apart than the curve is wide; strings outside it.
    """
    radius = _radius(given)
    inner = radius - given.rack_offset
    if inner <= given.base_width / 2:
        raise refuse("rack_offset", reason="not inside the curve", value=given.rack_offset, maximum=radius)
    if given.rack_spacing > 2 * inner:
        raise refuse(
            "rack_spacing", reason="racks further apart than the curve is wide", value=given.rack_spacing, maximum=2 * inner
        )
    stress = given.elastic_modulus * given.base_width / 2 / inner
    half = given.rack_spacing / 2
    free_length = given.string_length / (2 if given.clamped_at == "middle" else 1)
    turned = free_length / radius
    angle = turned if given.turn_angle is None else min(turned, given.turn_angle)
    shift = given.rack_offset * angle
    lateral = given.second_moment_lateral
    return HaulingCurveResult(
        radius=radius,
        inner_radius=inner,
        base_stress=stress,
        head_stress=None if given.head_width is None else given.elastic_modulus * given.head_width / 2 / inner,
        share_of_yield=stress / given.yield_strength,
        moment=None if lateral is None else given.elastic_modulus * lateral / inner,
        rack_versine=half * half / (inner + square_root(inner * inner - half * half)),
        angle=angle,
        end_shift=shift,
        shift_between=2 * shift,
        clearance_used=given.facing_ends * shift,
        checks=(_stress_check(given, stress), _clearance_check(given, given.facing_ends * shift)),
    )


def _radius(given: HaulingCurveInput) -> float:
    """Return the radius of the curve, or of the closure of the turnout whose number is given [m]."""
    if given.turnout_number is None:
        return radius_from(given.radius, given.degree)
    if given.radius is not None or given.degree is not None:
        raise refuse(
            "turnout_number", reason="give one of radius, degree, turnout and turnout number", value=given.turnout_number
        )
    return middle_radius(given.turnout_number, given.gauge, given.heel_spread, given.frog_toe_spread)


def _stress_check(given: HaulingCurveInput, stress: float) -> Check:
    code, title = "hauling-stress", "Bending stress of the string in the sharpest curve"
    place = "elastic bending E c / R; the share of yield is the house's own, no published limit was found"
    demand = Amount(stress, Kind.STRESS)
    if given.yield_share is None:
        return Check(code=code, title=title, verdict="not-checked", demand=demand, governing="yield_share", place=place)
    capacity = given.yield_share * given.yield_strength
    needed = given.elastic_modulus * given.base_width / 2 / capacity + given.rack_offset
    return compare(
        code=code,
        title=title,
        demand=demand,
        capacity=Amount(capacity, Kind.STRESS),
        governing="radius" if given.radius is not None else "degree" if given.degree is not None else "turnout_number",
        would_pass=f"a way with no curve sharper than {words.long_length(needed)} radius, or a narrower base",
        place=place,
    )


def _clearance_check(given: HaulingCurveInput, used: float) -> Check:
    code, title = "end-clearance", "Clearance at the ends of strings in the sharpest curve"
    place = "geometry: a string y off the middle shifts by y theta"
    demand = Amount(used, Kind.LENGTH, SMALL)
    if given.end_clearance is None:
        return Check(code=code, title=title, verdict="not-checked", demand=demand, governing="end_clearance", place=place)
    return compare(
        code=code,
        title=title,
        demand=demand,
        capacity=Amount(given.end_clearance, Kind.LENGTH, SMALL),
        governing="end_clearance",
        would_pass=f"{words.small_length(used)} of clearance, or strings nearer the middle of the train",
        place=place,
    )


RULE = Rule(
    id="strength.hauling-curve",
    title="Strings hauled round a curve",
    summary=(
        "A string carried upright bends about its upright axis to the radius of the track; the base, being widest, is stressed "
        "most. Strings off the middle of the train run on a shorter or longer path and their free ends shift along it. Elastic; "
        "worked for the innermost string, evenly bent."
    ),
    formulas=(
        Formula("inner_radius", "R - y"),
        Formula("base_stress", "E * b / 2 / R_i"),
        Formula("head_stress", "E times half the head width over R_i", exact=False),
        Formula("share_of_yield", "sigma / Y"),
        Formula("moment", "E times the lateral second moment over R_i", exact=False),
        Formula("rack_versine", "R_i - sqrt(R_i**2 - (a / 2)**2), written so that no digits are lost", exact=False),
        Formula(
            "angle",
            "free length over R, no more than the curve turns; free length L, or L / 2 clamped in the middle",
            exact=False,
        ),
        Formula("end_shift", "y * theta"),
        Formula("shift_between", "2 * e"),
        Formula("clearance_used", "n * e"),
    ),
    cites=(
        Cite("ti-850-02", "table 6-12 and figure 6-28: curves of turnouts", "published"),
        Cite("strength-of-materials", "elastic bending to a radius: E c / R", "derived"),
        Cite("geometry", "arcs about one centre", "derived"),
    ),
    input=HaulingCurveInput,
    output=HaulingCurveResult,
    evaluate=evaluate,
    columns=True,
    cautions=(
        Caution(
            code="bends-unevenly",
            text=(
                "Racks, buffing and slack bend a string more sharply in places than the track curves; switches and crossovers "
                "are sharper than the main line. No published limit for hauling was found."
            ),
            cite=Cite("common-practice", "handling of rail trains", "common-practice"),
        ),
        OWN_STANDARDS,
    ),
)
