"""Radial load of welded rail in a curve, neutral temperature lost by shifting, lateral resistance needed."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Final

from railrules_api.domain.amounts import SMALL, Amount
from railrules_api.domain.errors import refuse
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
)
from railrules_api.rules.model import Caution, Cite, Formula, Rule
from railrules_api.rules.radius import Degree, Radius, radius_from

_PER_LENGTH: Final = ("lbf_per_ft", "kN_per_m")


@dataclass(frozen=True, slots=True, kw_only=True)
class CurveLoadInput:
    """A curve, its rail, and the extremes of rail temperature."""

    radius: Radius = None
    degree: Degree = None
    area: Area
    elastic_modulus: ElasticModulus
    expansion: Expansion
    neutral_temperature: NeutralTemperature
    hottest: Annotated[float, Field("Hottest rail.", kind=Kind.TEMPERATURE, symbol="H", at_least=173.15, at_most=373.15)]
    coldest: Annotated[float, Field("Coldest rail.", kind=Kind.TEMPERATURE, symbol="C", at_least=173.15, at_most=373.15)]
    tie_spacing: Annotated[
        float, Field("Distance of ties, centre to centre.", kind=Kind.LENGTH, symbol="s", above=0.1, at_most=5.0, answer=SMALL)
    ]
    inward_shift: Annotated[
        float,
        Field(
            "Even shift of the curve towards its centre since laying; outward negative.",
            kind=Kind.LENGTH,
            symbol="e",
            at_least=-5.0,
            at_most=5.0,
            default="curve-shift",
            answer=SMALL,
        ),
    ]
    accepted_loss: Annotated[
        float,
        Field(
            "Neutral temperature that may be lost by shifting.",
            kind=Kind.TEMPERATURE_CHANGE,
            symbol="D",
            at_least=0.01,
            at_most=60.0,
            default="neutral-drift",
        ),
    ]
    tie_resistance: Annotated[
        float | None,
        Field("Lateral resistance of one tie in its ballast.", kind=Kind.FORCE, at_least=1.0, at_most=1e6),
    ] = None


@dataclass(frozen=True, slots=True, kw_only=True)
class CurveLoadResult:
    """Radial loads, outward positive, with the neutral temperature left after the shift."""

    radius: Annotated[float, Field("Radius as used.", kind=Kind.LENGTH, symbol="R")]
    neutral_lost: Annotated[
        float, Field("Neutral temperature lost by the shift; gained when negative.", kind=Kind.TEMPERATURE_CHANGE, symbol="lost")
    ]
    neutral_left: Annotated[float, Field("Neutral temperature after the shift.", kind=Kind.TEMPERATURE, symbol="T_L")]
    hot_load: Annotated[
        float, Field("Radial load of one rail when hottest.", kind=Kind.FORCE_PER_LENGTH, symbol="p_hot", answer=_PER_LENGTH)
    ]
    cold_load: Annotated[
        float, Field("Radial load of one rail when coldest.", kind=Kind.FORCE_PER_LENGTH, symbol="p_cold", answer=_PER_LENGTH)
    ]
    hot_load_on_tie: Annotated[
        float, Field("Radial load of both rails on one tie when hottest.", kind=Kind.FORCE, symbol="q_hot")
    ]
    cold_load_on_tie: Annotated[
        float, Field("Radial load of both rails on one tie when coldest.", kind=Kind.FORCE, symbol="q_cold")
    ]
    resistance_needed: Annotated[
        float, Field("Lateral resistance of a tie that the radial load asks for.", kind=Kind.FORCE, symbol="q")
    ]
    shift_for_loss: Annotated[
        float,
        Field("Inward shift that costs the accepted loss.", kind=Kind.LENGTH, symbol="e_max", answer=SMALL),
    ]
    checks: Annotated[tuple[Check, ...], Field("Neutral temperature lost; lateral resistance of a tie.")]


def evaluate(given: CurveLoadInput) -> CurveLoadResult:
    """Return p = P / R for one rail, and the neutral temperature s / (alpha R) lost by an inward shift s.

    Raises:
        RefusedError: neither or both of radius and degree; coldest above hottest.
    """
    if given.coldest > given.hottest:
        raise refuse("coldest", reason="coldest lies above hottest", value=given.coldest, maximum=given.hottest)
    radius = radius_from(given.radius, given.degree)
    per_degree = given.elastic_modulus * given.area * given.expansion
    lost = given.inward_shift / (given.expansion * radius)
    left = given.neutral_temperature - lost
    hot = per_degree * (given.hottest - left) / radius
    cold = per_degree * (given.coldest - left) / radius
    needed = 2 * max(abs(hot), abs(cold)) * given.tie_spacing
    return CurveLoadResult(
        radius=radius,
        neutral_lost=lost,
        neutral_left=left,
        hot_load=hot,
        cold_load=cold,
        hot_load_on_tie=2 * hot * given.tie_spacing,
        cold_load_on_tie=2 * cold * given.tie_spacing,
        resistance_needed=needed,
        shift_for_loss=given.accepted_loss * given.expansion * radius,
        checks=(_loss_check(given, lost, radius), _lateral_check(given, needed)),
    )


def _loss_check(given: CurveLoadInput, lost: float, radius: float) -> Check:
    back = words.small_length(max(0.0, lost - given.accepted_loss) * given.expansion * radius)
    return compare(
        code="curve-shift",
        title="Neutral temperature lost by inward shift of the curve",
        demand=Amount(max(0.0, lost), Kind.TEMPERATURE_CHANGE),
        capacity=Amount(given.accepted_loss, Kind.TEMPERATURE_CHANGE),
        governing="inward_shift",
        would_pass=f"curve lined out again by {back}, or rail cut out to match",
        place="FRA Compliance Manual 2021 p. 97: a decrease of 30 to 40 °F can be critical; 49 CFR 213.119(e): monitor the shift",
    )


def _lateral_check(given: CurveLoadInput, needed: float) -> Check:
    code, title = "curve-lateral", "Lateral resistance of a tie against the radial load"
    place = "equilibrium P / R, static; holds no reserve against buckling or trains"
    if given.tie_resistance is None:
        return Check(
            code=code,
            title=title,
            verdict="not-checked",
            demand=Amount(needed, Kind.FORCE),
            governing="tie_resistance",
            place=place,
        )
    return compare(
        code=code,
        title=title,
        demand=Amount(needed, Kind.FORCE),
        capacity=Amount(given.tie_resistance, Kind.FORCE),
        governing="tie_resistance",
        would_pass=f"lateral resistance of {words.force(needed)} for each tie, or closer ties",
        place=place,
    )


RULE = Rule(
    id="thermal.curve-load",
    title="Radial load and shift of curves",
    summary=(
        "Rail under axial force presses outwards in a curve when hot and inwards when cold, with P / R for each unit of length. "
        "A curve that has been pulled in has shorter rail room and so a lower neutral temperature; the loads are worked with "
        "what is left of it. Static: buckling and trains need their own check."
    ),
    formulas=(
        Formula("radius", "as given, or 50 ft / sin(degree / 2)", exact=False),
        Formula("neutral_lost", "e / (alpha * R)"),
        Formula("neutral_left", "T_N - lost"),
        Formula("hot_load", "E * A * alpha * (H - T_L) / R"),
        Formula("cold_load", "E * A * alpha * (C - T_L) / R"),
        Formula("hot_load_on_tie", "2 * p_hot * s"),
        Formula("cold_load_on_tie", "2 * p_cold * s"),
        Formula("resistance_needed", "2 * max(abs(p_hot), abs(p_cold)) * s"),
        Formula("shift_for_loss", "D * alpha * R"),
    ),
    cites=(
        Cite("strength-of-materials", "ring under axial force: P / R; shift e changes the strain by e / R", "derived"),
        Cite("fra-compliance-manual-2021", "Volume II, chapter 1, p. 97: radial movement of curves", "published"),
        Cite("cfr-49-213", "213.119(e): monitoring curves for inward shift", "published"),
    ),
    input=CurveLoadInput,
    output=CurveLoadResult,
    evaluate=evaluate,
    columns=True,
    cautions=(
        Caution(
            code="even-shift",
            text="The shift is taken as even along the whole curve; a local shift changes less, over the length that feeds it.",
            cite=Cite("strength-of-materials", "strain e / R of a full arc", "derived"),
        ),
        NEUTRAL_TEMPERATURE_DRIFTS,
        OWN_STANDARDS,
    ),
)
