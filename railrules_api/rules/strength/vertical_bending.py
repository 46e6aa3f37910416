"""Bending of rail under wheels: deflection, stress, rail-seat load, tie and ballast, allowable stress."""

from __future__ import annotations

import math
from typing import Final

from railrules_api.domain import bending
from railrules_api.domain.amounts import Amount
from railrules_api.domain.errors import below, refuse
from railrules_api.domain.kinds import Kind
from railrules_api.rules import words
from railrules_api.rules.checks import Check, compare
from railrules_api.rules.common import OWN_STANDARDS
from railrules_api.rules.model import Caution, Cite, Formula, Rule
from railrules_api.rules.sections.properties import shapes_of
from railrules_api.rules.strength import combined_stress
from railrules_api.rules.strength.bending_fields import (
    BendingSection,
    OtherSection,
    UnderWheel,
    VerticalBendingInput,
    VerticalBendingResult,
)

_KILOMETRE_PER_HOUR: Final = 1000 / 3600
_PSI: Final = words.POUND_FORCE / words.INCH**2
CONDITIONS: Final = {"poor": 1000 * _PSI, "average": 2000 * _PSI, "good": 3000 * _PSI}
"""Track modulus by condition [Pa]; 3,000 psi for well-kept track was read in an extract, the others are from memory."""
TIES: Final = {"6x8": bending.TIE_6_BY_8, "7x9": bending.TIE_7_BY_9}
MOST_WAVES: Final = 500.0
"""Longest row of wheels worked, in lengths 1 / b: beyond it the wheels have long ceased to know each other."""


def evaluate(given: VerticalBendingInput) -> VerticalBendingResult:
    """Return the largest deflection, moments, stresses and rail-seat load under all wheels, raised by the speed factor.

    Raises:
        RefusedError: neither or both of track modulus and condition; no wheel, or wheels too far apart; a speed rule without
            its inputs; thermal stress that leaves nothing to bend with; wear that the section does not hold; coldest rail
            above hottest.
    """
    if not given.wheels:
        raise refuse("wheels", reason="at least one wheel is needed")
    if given.thermal_stress >= given.yield_strength:
        reason = "leaves no stress for bending"
        raise refuse("thermal_stress", reason=reason, value=given.thermal_stress, maximum=given.yield_strength)
    section = _section(given)
    modulus, factor = _modulus(given), _factor(given)
    wheels = tuple(bending.Wheel(place=wheel.position, load=wheel.load * factor) for wheel in given.wheels)
    wave = _wave_number(given, section.second_moment, modulus)
    found = bending.rail_extremes(
        elastic_modulus=given.elastic_modulus, second_moment=section.second_moment, foundation_modulus=modulus, wheels=wheels
    )
    under = tuple(
        bending.rail_state(
            elastic_modulus=given.elastic_modulus,
            second_moment=section.second_moment,
            foundation_modulus=modulus,
            wheels=wheels,
            place=wheel.place,
        )
        for wheel in wheels
    )
    moment, deflection = found.sagging.moment, found.lowest.deflection
    reverse = max(0.0, -found.hogging.moment)
    seat = bending.rail_seat_load(pressure=found.lowest.pressure, tie_spacing=given.tie_spacing)
    raised = math.prod(
        1 + share for share in (given.lateral_share, given.condition_share, given.wear_share, given.unbalance_share)
    )
    allowable = (given.yield_strength - given.thermal_stress) / raised
    base_stress, head_stress = moment / section.section_modulus_base, moment / section.section_modulus_head
    combined = (
        ()
        if given.thermal is None
        else combined_stress.combine(
            extremes=given.thermal,
            elastic_modulus=given.elastic_modulus,
            base=(base_stress, reverse / section.section_modulus_base),
            head=(head_stress, reverse / section.section_modulus_head),
            raised=raised,
            yield_strength=given.yield_strength,
        )
    )
    tie = None if given.tie_section is None else bending.tie_check(rail_seat_load=seat, tie=TIES[given.tie_section])
    return VerticalBendingResult(
        section_from="as-given" if given.worn is None else "worn-outline",
        second_moment_used=section.second_moment,
        modulus_base_used=section.section_modulus_base,
        modulus_head_used=section.section_modulus_head,
        track_modulus=modulus,
        speed_factor=factor,
        wave_number=wave,
        first_zero=bending.zero_moment_distance(wave_number=wave),
        deflection=deflection,
        uplift=max(0.0, -found.highest.deflection),
        moment=moment,
        reverse_moment=reverse,
        static_base_stress=base_stress / factor,
        base_stress=base_stress,
        head_stress=head_stress,
        seat_load=seat,
        tie_stress=None if tie is None else tie.bending_stress,
        ballast_pressure=None if tie is None else tie.ballast_pressure,
        allowable_stress=allowable,
        wheels=tuple(UnderWheel(position=state.place, deflection=state.deflection, moment=state.moment) for state in under),
        other=_other(given, wheels, modulus, (deflection, base_stress)),
        combined=combined,
        checks=(
            _rail_check(given, section, base_stress, allowable, raised),
            *_tie_checks(given, tie),
            *combined_stress.checks(combined, given.thermal, given.yield_strength),
        ),
    )


def _section(given: VerticalBendingInput) -> BendingSection:
    """Return the section as it bends: as given, or as wear has left it."""
    if given.worn is None:
        return BendingSection(
            second_moment=given.second_moment,
            section_modulus_base=given.section_modulus_base,
            section_modulus_head=given.section_modulus_head,
        )
    with below("worn"):
        now = shapes_of(given.worn).now[1]
    return BendingSection(
        second_moment=now.second_moment_horizontal,
        section_modulus_base=now.section_modulus_base,
        section_modulus_head=now.section_modulus_head,
    )


def _wave_number(given: VerticalBendingInput, second_moment: float, modulus: float) -> float:
    wave = bending.wave_number(elastic_modulus=given.elastic_modulus, second_moment=second_moment, foundation_modulus=modulus)
    places = [wheel.position for wheel in given.wheels]
    if (max(places) - min(places)) * wave > MOST_WAVES:
        raise refuse("wheels", reason="wheels too far apart to act together: work them in groups", maximum=MOST_WAVES / wave)
    return wave


def _modulus(given: VerticalBendingInput) -> float:
    if (given.track_modulus is None) == (given.condition is None):
        raise refuse("track_modulus", reason="give one of track_modulus and condition", value=given.track_modulus)
    if given.track_modulus is not None:
        return given.track_modulus
    assert given.condition is not None
    return CONDITIONS[given.condition]


def _factor(given: VerticalBendingInput) -> float:
    if given.speed_rule == "none":
        return 1.0
    if given.speed_rule == "given":
        if given.speed_factor is None:
            raise refuse("speed_factor", reason="the rule `given` needs the factor")
        return given.speed_factor
    if given.speed is None:
        raise refuse("speed", reason="the speed rule needs the speed")
    if given.speed_rule == "hundredth":
        return 1 + given.speed / _KILOMETRE_PER_HOUR / 100
    if given.wheel_diameter is None:
        raise refuse("wheel_diameter", reason="the speed rule needs the diameter of the wheel")
    return bending.speed_factor(speed=given.speed, wheel_diameter=given.wheel_diameter)


def _other(
    given: VerticalBendingInput, wheels: tuple[bending.Wheel, ...], modulus: float, first: tuple[float, float]
) -> OtherSection | None:
    if given.other is None:
        return None
    _wave_number(given, given.other.second_moment, modulus)
    found = bending.rail_extremes(
        elastic_modulus=given.elastic_modulus,
        second_moment=given.other.second_moment,
        foundation_modulus=modulus,
        wheels=wheels,
    )
    moment, deflection = found.sagging.moment, found.lowest.deflection
    base_stress = moment / given.other.section_modulus_base
    return OtherSection(
        deflection=deflection,
        base_stress=base_stress,
        head_stress=moment / given.other.section_modulus_head,
        seat_load=bending.rail_seat_load(pressure=found.lowest.pressure, tie_spacing=given.tie_spacing),
        deflection_ratio=deflection / first[0],
        base_stress_ratio=base_stress / first[1],
        seat_load_ratio=deflection / first[0],
    )


def _rail_check(given: VerticalBendingInput, section: BendingSection, stress: float, allowable: float, raised: float) -> Check:
    needed = stress * section.section_modulus_base / allowable / words.INCH**3
    thermal = given.yield_strength - stress * raised
    cooler = f"; or thermal stress of no more than {words.stress(thermal)}" if thermal >= 0.0 else ""
    return compare(
        code="base-stress",
        title="Tension in the rail base against the allowable stress",
        demand=Amount(stress, Kind.STRESS),
        capacity=Amount(allowable, Kind.STRESS),
        governing="section_modulus_base",
        would_pass=(
            f"section modulus of the base of {words.figure(needed)} in3 ({words.figure(needed * 16.387064)} cm3) at the same "
            f"stiffness; or wheel loads of {words.figure(100 * allowable / stress)} % of those given{cooler}"
        ),
        place="yield less thermal stress over the shares for sideways bending, condition, wear, unbalance (from memory)",
    )


def _tie_checks(given: VerticalBendingInput, tie: bending.TieCheck | None) -> tuple[Check, Check]:
    stress, pressure = (None, None) if tie is None else (tie.bending_stress, tie.ballast_pressure)
    return (
        _against("tie-bending", "Bending stress of the tie", stress, given.tie_bending_limit, "TI 850-02 equation 6-9"),
        _against(
            "ballast-pressure", "Pressure on the ballast", pressure, given.ballast_pressure_limit, "TI 850-02 equation 6-10"
        ),
    )


def _against(code: str, title: str, stress: float | None, limit: float, place: str) -> Check:
    if stress is None:
        return Check(code=code, title=title, verdict="not-checked", governing="tie_section", place=place)
    return compare(
        code=code,
        title=title,
        demand=Amount(stress, Kind.STRESS),
        capacity=Amount(limit, Kind.STRESS),
        governing="tie_spacing",
        would_pass=f"rail-seat load of {words.figure(100 * limit / stress)} % of this: closer or larger ties, lighter wheels",
        place=place,
    )


RULE = Rule(
    id="strength.vertical-bending",
    title="Bending of rail under wheels",
    summary=(
        "The rail as a long beam on a bed that pushes back in proportion to its deflection; wheels added up and raised by a "
        "named speed factor. Deflection, moments, stress in base and head, rail-seat load, tie bending, ballast pressure, the "
        "allowable stress built up from yield, thermal stress and shares, and a second section under the same wheels. With rail "
        "temperatures, bending and thermal stress are added at base and head, hot and cold; with wear, the section is the worn "
        "one."
    ),
    formulas=(
        Formula("wave_number", "(u / (4 * E * I)) ** 0.25"),
        Formula("first_zero", "3.141592653589793 / 4 / b"),
        Formula("deflection", "theta sum of P b / (2 u) e^(-b x) (cos b x + sin b x), largest along the rail", exact=False),
        Formula("moment", "theta sum of P / (4 b) e^(-b x) (cos b x - sin b x), largest along the rail", exact=False),
        Formula("base_stress", "M / S"),
        Formula("static_base_stress", "sigma / theta"),
        Formula("head_stress", "M / S_h"),
        Formula("seat_load", "u * y * s"),
        Formula("tie_stress", "q / 29 in2 or q / 52 in2", exact=False),
        Formula("ballast_pressure", "q / 270 in2 or q / 312 in2", exact=False),
        Formula("allowable_stress", "(Y - sigma_T) / ((1 + k_1) * (1 + k_2) * (1 + k_3) * (1 + k_4))"),
        Formula("combined", "bending (1 + k_1) (1 + k_2) (1 + k_3) (1 + k_4) + E alpha |T - T_N| of the same sense", exact=False),
        Formula("speed_factor", "1; 1 + 33 V / (100 D) with mph and in; 1 + V / 100 with km/h; or as given", exact=False),
    ),
    cites=(
        Cite("talbot-1918", "beam on elastic foundation", "from-memory"),
        Cite("strength-of-materials", "beam on elastic foundation, superposed loads", "derived"),
        Cite("ti-850-02", "equations 6-9 and 6-10: tie bending and ballast pressure with their limits", "published"),
        Cite("bangalore-elrts-1997", "impact 1 + 0.01 V and rail stress", "published"),
        Cite("hay-railroad-engineering", "speed factor 33 V / (100 D); build-up of allowable stress", "from-memory"),
        Cite("wheel-load-snippet", "track modulus of 3,000 psi for well-kept track", "published"),
    ),
    input=VerticalBendingInput,
    output=VerticalBendingResult,
    evaluate=evaluate,
    cautions=(
        Caution(
            code="bed-that-pulls",
            text="The bed is taken to pull as well as push; track that lifts ahead of a wheel gives way a little more.",
            cite=Cite("strength-of-materials", "assumption of the model", "derived"),
        ),
        Caution(
            code="nominal-stress",
            text=(
                "Nominal stress of bending and temperature alone. Stress left by rolling and straightening, contact stress under "
                "the wheel, welds, bolt holes and defects are not in it; the share for wear stays in it even where the worn "
                "section is given, unless it is set to 0."
            ),
            cite=Cite("strength-of-materials", "assumption of the model", "derived"),
        ),
        OWN_STANDARDS,
    ),
)
