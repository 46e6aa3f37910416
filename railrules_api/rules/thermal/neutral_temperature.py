"""Neutral temperature after a cut, after rail was added or removed, after a curve shifted; or worked from a gap."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Annotated, Literal

from railrules_api.domain.amounts import SMALL, Amount
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.rules import words
from railrules_api.rules.checks import Check, compare
from railrules_api.rules.common import NEUTRAL_TEMPERATURE_DRIFTS, OWN_STANDARDS, Area, ElasticModulus, Expansion, RailTemperature
from railrules_api.rules.model import Caution, Cite, Formula, Rule
from railrules_api.rules.radius import Degree, Radius, radius_from
from railrules_api.rules.thermal.restraint_fields import Resistance


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """A length of rail with one neutral temperature."""

    length: Annotated[float, Field("Length.", kind=Kind.LENGTH, at_least=1e-3, at_most=1e6)]
    neutral_temperature: Annotated[
        float, Field("Its neutral temperature.", kind=Kind.TEMPERATURE, at_least=173.15, at_most=373.15)
    ]


@dataclass(frozen=True, slots=True, kw_only=True)
class NeutralTemperatureInput:
    """What was there before, one of three ways; what was done to it."""

    area: Area
    elastic_modulus: ElasticModulus
    expansion: Expansion
    rail_temperature: RailTemperature
    resistance: Resistance
    neutral_temperature: Annotated[
        float | None, Field("Neutral temperature before, if known.", kind=Kind.TEMPERATURE, at_least=173.15, at_most=373.15)
    ] = None
    parts: Annotated[tuple[Part, ...], Field("Lengths of different neutral temperature, to be averaged.")] = ()
    measured_gap: Annotated[
        float | None,
        Field("Gap that opened at a cut before any pull.", kind=Kind.LENGTH, at_least=0.0, at_most=2.0, answer=SMALL),
    ] = None
    rail_added: Annotated[
        float | None,
        Field(
            "Length of rail put in less rail taken out; removed negative.",
            kind=Kind.LENGTH,
            at_least=-10.0,
            at_most=10.0,
            answer=SMALL,
        ),
    ] = None
    disturbed_length: Annotated[
        float | None,
        Field(
            "Length over which the change spreads; without it the slip length on both sides of a cut.",
            kind=Kind.LENGTH,
            at_least=1e-3,
            at_most=1e6,
        ),
    ] = None
    inward_shift: Annotated[
        float | None,
        Field(
            "Even shift of the curve towards its centre; outward negative.",
            kind=Kind.LENGTH,
            at_least=-5.0,
            at_most=5.0,
            answer=SMALL,
        ),
    ] = None
    radius: Radius = None
    degree: Degree = None
    accepted_loss: Annotated[
        float,
        Field(
            "Loss of neutral temperature accepted.",
            kind=Kind.TEMPERATURE_CHANGE,
            symbol="D",
            at_least=0.01,
            at_most=60.0,
            default="neutral-drift",
        ),
    ]
    range_lower: Annotated[
        float | None, Field("Lowest desired laying temperature.", kind=Kind.TEMPERATURE, at_least=173.15, at_most=373.15)
    ] = None


@dataclass(frozen=True, slots=True, kw_only=True)
class NeutralTemperatureResult:
    """Before, changes, after."""

    before: Annotated[float, Field("Neutral temperature before.", kind=Kind.TEMPERATURE, symbol="T_N")]
    before_from: Annotated[Literal["given", "parts", "gap"], Field("How that was found.")]
    slip_length: Annotated[
        float, Field("Slip length on each side of a cut at this rail temperature.", kind=Kind.LENGTH, symbol="x_0")
    ]
    disturbed_length: Annotated[
        float | None, Field("Length over which the rail change spreads, as used; absent without one.", kind=Kind.LENGTH)
    ]
    change_by_rail: Annotated[
        float, Field("Average change by rail added or removed.", kind=Kind.TEMPERATURE_CHANGE, symbol="c_1")
    ]
    change_by_shift: Annotated[float, Field("Change by the shift of the curve.", kind=Kind.TEMPERATURE_CHANGE, symbol="c_2")]
    after: Annotated[float, Field("Neutral temperature after, average over the length.", kind=Kind.TEMPERATURE, symbol="T_A")]
    at_cut: Annotated[
        float | None,
        Field(
            "Neutral temperature at the cut if joined as it lay, unpulled; absent where no rail was changed.",
            kind=Kind.TEMPERATURE,
        ),
    ]
    rail_to_restore: Annotated[
        float | None,
        Field(
            "Rail to take out, to put in when negative, so that nothing is lost; absent likewise.",
            kind=Kind.LENGTH,
            answer=SMALL,
        ),
    ]
    checks: Annotated[tuple[Check, ...], Field("Loss against the accepted loss; rail added below the desired range.")]


def evaluate(given: NeutralTemperatureInput) -> NeutralTemperatureResult:
    """Return T_A = T_N - added / (alpha L) - shift / (alpha R).

    From a gap, rigid-plastic restraint: T_N = T + sqrt(G r / (E A)) / alpha.

    Raises:
        RefusedError: not exactly one way to know the neutral temperature before; rail changed over no length; a shift without
            a curve, or a curve without a shift; a result outside the limits of temperature.
    """
    axial_stiffness = given.elastic_modulus * given.area
    before, before_from = _before(given, axial_stiffness)
    slip_length = axial_stiffness * given.expansion * abs(given.rail_temperature - before) / given.resistance
    length = _disturbed(given, slip_length)
    by_rail = 0.0
    if given.rail_added is not None:
        assert length is not None
        by_rail = -given.rail_added / (given.expansion * length)
    by_shift = _by_shift(given)
    after = before + by_rail + by_shift
    if after <= 0.0:
        raise refuse("rail_added", reason="the change is too large for this length", value=given.rail_added)
    return NeutralTemperatureResult(
        before=before,
        before_from=before_from,
        slip_length=slip_length,
        disturbed_length=length,
        change_by_rail=by_rail,
        change_by_shift=by_shift,
        after=after,
        at_cut=None if given.rail_added is None else given.rail_temperature,
        rail_to_restore=None if length is None else (before - after) * given.expansion * length,
        checks=(_loss_check(given, before - after), _added_check(given)),
    )


def _before(given: NeutralTemperatureInput, axial_stiffness: float) -> tuple[float, Literal["given", "parts", "gap"]]:
    ways = (given.neutral_temperature is not None) + bool(given.parts) + (given.measured_gap is not None)
    if ways != 1:
        reason = "give one of neutral_temperature, parts and measured_gap"
        raise refuse("neutral_temperature", reason=reason, value=given.neutral_temperature)
    if given.neutral_temperature is not None:
        return given.neutral_temperature, "given"
    if given.measured_gap is not None:
        drop = math.sqrt(given.measured_gap * given.resistance / axial_stiffness) / given.expansion
        return given.rail_temperature + drop, "gap"
    length = math.fsum(part.length for part in given.parts)
    return math.fsum(part.length * part.neutral_temperature for part in given.parts) / length, "parts"


def _disturbed(given: NeutralTemperatureInput, slip_length: float) -> float | None:
    if given.disturbed_length is not None:
        return given.disturbed_length
    if given.rail_added is None:
        return None
    if slip_length == 0.0:
        reason = "rail at its neutral temperature does not slip at a cut: give the length over which the change spreads"
        raise refuse("disturbed_length", reason=reason)
    return 2 * slip_length


def _by_shift(given: NeutralTemperatureInput) -> float:
    if given.inward_shift is None:
        if given.radius is not None or given.degree is not None:
            raise refuse("inward_shift", reason="a curve without a shift")
        return 0.0
    return -given.inward_shift / (given.expansion * radius_from(given.radius, given.degree))


def _loss_check(given: NeutralTemperatureInput, loss: float) -> Check:
    return compare(
        code="neutral-loss",
        title="Neutral temperature lost against the loss accepted",
        demand=Amount(max(0.0, loss), Kind.TEMPERATURE_CHANGE),
        capacity=Amount(given.accepted_loss, Kind.TEMPERATURE_CHANGE),
        governing="rail_added" if given.rail_added is not None else "inward_shift",
        would_pass=(
            f"neutral temperature restored by {words.temperature_change(max(0.0, loss - given.accepted_loss))} at least, by "
            "taking out rail, pulling or lining the curve out"
        ),
        place="FRA Compliance Manual 2021 p. 97: a decrease of 30 to 40 °F can be critical; the loss as given or by default",
    )


def _added_check(given: NeutralTemperatureInput) -> Check:
    code, title = "added-below-range", "No rail added below the desired range without provision for later adjustment"
    place = "49 CFR 213.119(d)(2)"
    if given.rail_added is None or given.range_lower is None:
        missing = "rail_added" if given.rail_added is None else "range_lower"
        return Check(code=code, title=title, verdict="not-checked", governing=missing, place=place)
    below = given.rail_temperature < given.range_lower
    return compare(
        code=code,
        title=title,
        demand=Amount(max(0.0, given.rail_added) if below else 0.0, Kind.LENGTH, SMALL),
        capacity=Amount(0.0, Kind.LENGTH, SMALL),
        governing="rail_added",
        would_pass=f"recorded, and {words.small_length(max(0.0, given.rail_added))} of rail taken out again in the range",
        place=place,
    )


RULE = Rule(
    id="thermal.neutral-temperature",
    title="Neutral temperature after work on the rail",
    summary=(
        "Rail put in lowers the neutral temperature and rail taken out raises it, on average over the length that feels it: the "
        "slip length on both sides of a cut unless another is given. A curve that shifts inwards loses by the shift over its "
        "radius. The start is a known value, the average of several lengths, or the value told by the gap that opened at a cut."
    ),
    formulas=(
        Formula("before", "as given; or sum of length times T over sum of length; or T + sqrt(G r / (E A)) / alpha", exact=False),
        Formula("slip_length", "E * A * alpha * abs(T - T_N) / r"),
        Formula("change_by_rail", "-added / (alpha L); L = 2 x_0 unless given", exact=False),
        Formula("change_by_shift", "-shift / (alpha R)", exact=False),
        Formula("after", "T_N + c_1 + c_2"),
        Formula("rail_to_restore", "(T_N - T_A) alpha L", exact=False),
    ),
    cites=(
        Cite("strength-of-materials", "bar with distributed longitudinal restraint; strain of added length", "derived"),
        Cite(
            "fra-compliance-manual-2021",
            "Volume II, chapter 1, pp. 95 and 97: rail added to a string; critical loss",
            "published",
        ),
        Cite("cfr-49-213", "213.119(d)(1) and (d)(2)", "published"),
        Cite("kish-2011", "managing neutral temperature at cuts and repairs, abstract", "published"),
    ),
    input=NeutralTemperatureInput,
    output=NeutralTemperatureResult,
    evaluate=evaluate,
    cautions=(
        Caution(
            code="average-over-length",
            text=(
                "The result is an average. Rail joined as it lay at a cut has its neutral temperature at the rail temperature of "
                "that moment there, and the old one at the ends of the disturbed length."
            ),
            cite=Cite("strength-of-materials", "force grows evenly from the cut", "derived"),
        ),
        NEUTRAL_TEMPERATURE_DRIFTS,
        OWN_STANDARDS,
    ),
)
