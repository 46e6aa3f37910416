"""Sections, bending, hauling and regulation, written out."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from railrules_api.domain import bending
from railrules_api.domain.amounts import Amount
from railrules_api.domain.kinds import Kind
from railrules_api.rules.sections.compatibility import shoulders_of
from railrules_api.rules.written.terms import Written, count, length, read, small
from railrules_api.rules.written.thermal import expansion, force, temperature

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from railrules_api.rules.sections import compatibility
    from railrules_api.rules.sections.section_records import SectionFigures, SectionPropertiesInput, SectionPropertiesResult
    from railrules_api.rules.strength import hauling_curve, regulation, turnout_radius
    from railrules_api.rules.strength.bending_fields import VerticalBendingInput, VerticalBendingResult
    from railrules_api.rules.written.terms import Numbers, Way


def _stress(value: float) -> Amount:
    return Amount(value, Kind.STRESS)


# ---------------------------------------------------------------- sections


def _integrals(given: SectionPropertiesInput, found: SectionPropertiesResult) -> Iterator[Written]:
    """Tell the area: whole, and head, web and base added up."""
    del given
    now = found.section
    parts = (now.area_head, now.area_web, now.area_base)
    area = Amount(now.area, Kind.AREA)
    if None in parts:
        yield read(area, "integrated over the lines of the outline", "area A")
    else:
        numbers = {f"A_{name}": Amount(part or 0.0, Kind.AREA) for name, part in zip("hwb", parts, strict=True)}
        yield Written("A_h + A_w + A_b", numbers, area, "area A: head, web and base", "each integrated over its lines and arcs")


def _moments(given: SectionPropertiesInput, found: SectionPropertiesResult) -> Iterator[Written]:
    """Tell the second moment about the base, and shift it to the centroid."""
    del given
    now = found.section
    second = Amount(now.second_moment, Kind.SECOND_MOMENT)
    about_base = Amount(now.second_moment + now.area * now.neutral_axis**2, Kind.SECOND_MOMENT)
    numbers = {"I_0": about_base, "A": Amount(now.area, Kind.AREA), "y_0": small(now.neutral_axis)}
    yield Written("I_0 - A * y_0 ** 2", numbers, second, "I_x", "I_0 integrated about the bottom of the base")
    yield read(
        Amount(now.second_moment_lateral, Kind.SECOND_MOMENT), "integrated about the upright axis through the centroid", "I_y"
    )


def _derived(given: SectionPropertiesInput, found: SectionPropertiesResult) -> Iterator[Written]:
    now = found.section
    moment, centroid = Amount(now.second_moment, Kind.SECOND_MOMENT), small(now.neutral_axis)
    numbers: Numbers = {"I_x": moment, "h": small(now.height), "y_0": centroid}
    yield Written("I_x / (h - y_0)", numbers, Amount(now.section_modulus_head, Kind.SECTION_MODULUS), "Z_h, head")
    yield Written(
        "I_x / y_0", {"I_x": moment, "y_0": centroid}, Amount(now.section_modulus_base, Kind.SECTION_MODULUS), "Z_b, base"
    )
    area = Amount(now.area, Kind.AREA)
    numbers = {"rho": Amount(given.density, Kind.DENSITY), "A": area}
    yield Written("rho * A", numbers, Amount(now.mass_per_length, Kind.MASS_PER_LENGTH), "m, mass per length")
    numbers = {"E": _stress(given.elastic_modulus), "alpha": expansion(given.expansion), "A": area}
    yield Written("E * alpha * A", numbers, Amount(now.force_per_degree, Kind.FORCE_PER_TEMPERATURE), "P_1, force per degree")


_LOST: Final[tuple[tuple[str, Callable[[SectionFigures], Amount], str], ...]] = (
    ("area_lost", lambda figures: Amount(figures.area, Kind.AREA), "area"),
    ("height_lost", lambda figures: small(figures.height), "height"),
    ("mass_lost_per_length", lambda figures: Amount(figures.mass_per_length, Kind.MASS_PER_LENGTH), "mass per length"),
)


def _loss(given: SectionPropertiesInput, found: SectionPropertiesResult) -> Iterator[Written]:
    del given
    if found.loss is None or found.new is None:
        return
    for name, of, words in _LOST:
        before, now = of(found.new), of(found.section)
        lost = Amount(getattr(found.loss, name), before.kind, before.answer)
        yield Written("n - w", {"n": before, "w": now}, lost, f"{words} lost")
    assert found.new.area_head is not None  # the parts of a drawing are known
    numbers = {"l": Amount(found.loss.area_lost, Kind.AREA), "A_h": Amount(found.new.area_head, Kind.AREA)}
    yield Written("l / A_h", numbers, count(found.loss.head_area_lost_share), "share of the head's area lost")


def _comparison(given: SectionPropertiesInput, found: SectionPropertiesResult) -> Iterator[Written]:
    del given
    for item in found.comparison:
        numbers = {"c": item.computed, "p": item.printed}
        yield Written("c / p - 1", numbers, count(item.difference), item.property.replace("_", " "))


def _plates(given: compatibility.SectionCompatibilityInput, found: compatibility.SectionCompatibilityResult) -> Iterator[Written]:
    narrowest, widest = shoulders_of(given)
    play, width = small(given.plate_play), small(given.new_base_width)
    yield Written(
        "b - p", {"b": small(narrowest), "p": play}, small(narrowest - play.value), "narrowest base that the plates hold"
    )
    yield Written("b + p", {"b": small(widest), "p": play}, small(widest + play.value), "widest base that the plates take")
    note = "lies between the two: the old plates serve" if found.old_plates_serve else "does not lie between the two: new plates"
    yield read(width, note, "base of the new rail")


# ---------------------------------------------------------------- bending


def _beam(given: VerticalBendingInput, found: VerticalBendingResult) -> tuple[bending.RailExtremes, tuple[bending.Wheel, ...]]:
    wheels = tuple(bending.Wheel(place=wheel.position, load=wheel.load * found.speed_factor) for wheel in given.wheels)
    return bending.rail_extremes(
        elastic_modulus=given.elastic_modulus, second_moment=found.second_moment_used,
        foundation_modulus=found.track_modulus, wheels=wheels,
    ), wheels  # fmt: skip


_AT_THE_WHEEL: Final = 1e-9
"""Length [m] below which a place that was searched for is the wheel itself: what is left is the search's own noise."""


def _greatest_at(place: float) -> str:
    return f"greatest at {0.0 if abs(place) < _AT_THE_WHEEL else place:.6g} m"


def _influence(given: VerticalBendingInput, found: VerticalBendingResult, place: float, one: str) -> tuple[str, Numbers, Amount]:
    """Return the sum over the wheels at a place, one term a wheel: its load, faded with its distance as the beam's shape is."""
    numbers: Numbers = {}
    terms: list[str] = []
    total = 0.0
    sign = 1.0 if one == "+" else -1.0
    for number, wheel in enumerate(given.wheels, 1):
        distance = abs(place - wheel.position)
        numbers[f"P_{number}"] = force(wheel.load)
        if distance < _AT_THE_WHEEL:
            terms.append(f"P_{number}")
            total += wheel.load
            continue
        numbers[f"x_{number}"] = small(distance)
        turned = f"b * x_{number}"
        terms.append(f"P_{number} * exp(-({turned})) * (cos({turned}) {one} sin({turned}))")
        angle = found.wave_number * distance
        total += wheel.load * math.exp(-angle) * (math.cos(angle) + sign * math.sin(angle))
    if any("exp" in term for term in terms):
        numbers["b"] = Amount(found.wave_number, Kind.CURVATURE)
    return " + ".join(terms), numbers, force(total)


def _deflection(given: VerticalBendingInput, found: VerticalBendingResult) -> Iterator[Written]:
    place = _beam(given, found)[0].lowest.place
    text, numbers, total = _influence(given, found, place, "+")
    yield Written(text, numbers, total, "sum W over the wheels", _greatest_at(place))
    numbers = {
        "theta": count(found.speed_factor), "b": Amount(found.wave_number, Kind.CURVATURE),
        "u": Amount(found.track_modulus, Kind.FOUNDATION_MODULUS), "W": total,
    }  # fmt: skip
    yield Written("theta * b / (2 * u) * W", numbers, small(found.deflection), "at that place")


def _moment(given: VerticalBendingInput, found: VerticalBendingResult) -> Iterator[Written]:
    place = _beam(given, found)[0].sagging.place
    text, numbers, total = _influence(given, found, place, "-")
    yield Written(text, numbers, total, "sum W over the wheels", _greatest_at(place))
    numbers = {"theta": count(found.speed_factor), "b": Amount(found.wave_number, Kind.CURVATURE), "W": total}
    yield Written("theta / (4 * b) * W", numbers, Amount(found.moment, Kind.MOMENT), "at that place")


def _tie(given: VerticalBendingInput, found: VerticalBendingResult, which: str) -> Iterator[Written]:
    result: float | None = getattr(found, which)
    if result is None or given.tie_section is None:
        return
    numbers = {"q": force(found.seat_load), "A": Amount(found.seat_load / result, Kind.AREA)}
    yield Written("q / A", numbers, _stress(result), note=f"a tie of {given.tie_section} in; TI 850-02")


def _combined(given: VerticalBendingInput, found: VerticalBendingResult) -> Iterator[Written]:
    extremes = given.thermal
    if extremes is None:
        return
    shares = (given.lateral_share, given.condition_share, given.wear_share, given.unbalance_share)
    raised = {f"k_{place}": count(share) for place, share in enumerate(shares, 1)}
    for item in found.combined:
        cold = item.sense == "tension"
        numbers: Numbers = {"sigma": _stress(item.bending), **raised} | {
            "E": _stress(given.elastic_modulus), "alpha": expansion(extremes.expansion),
            "T_N": temperature(extremes.neutral_temperature),
            "T": temperature(extremes.coldest if cold else extremes.hottest),
        }  # fmt: skip
        thermal = "E * alpha * max(0, T_N - T)" if cold else "E * alpha * max(0, T - T_N)"
        text = f"sigma * (1 + k_1) * (1 + k_2) * (1 + k_3) * (1 + k_4) + {thermal}"
        yield Written(text, numbers, _stress(item.together), item.where.replace("-", " "))


def _speed_factor(given: VerticalBendingInput, found: VerticalBendingResult) -> Iterator[Written]:
    factor = count(found.speed_factor)
    if given.speed_rule == "speed-over-diameter" and given.speed is not None and given.wheel_diameter is not None:
        miles = count(given.speed / _MILE_PER_HOUR)
        numbers = {"V": miles, "D": count(given.wheel_diameter / _INCH)}
        yield Written("1 + 33 * V / (100 * D)", numbers, factor, note="V in mph, D in in")
    elif given.speed_rule == "hundredth" and given.speed is not None:
        yield Written("1 + V / 100", {"V": count(given.speed * 3.6)}, factor, note="V in km/h")
    else:
        yield read(factor, "as given" if given.speed_rule == "given" else "no speed rule")


_MILE_PER_HOUR: Final = 0.44704
_INCH: Final = 0.0254


# ---------------------------------------------------------------- hauling


def _head(given: hauling_curve.HaulingCurveInput, found: hauling_curve.HaulingCurveResult) -> Iterator[Written]:
    if found.head_stress is not None and given.head_width is not None:
        numbers = {"E": _stress(given.elastic_modulus), "w": small(given.head_width), "R_i": length(found.inner_radius)}
        yield Written("E * w / 2 / R_i", numbers, _stress(found.head_stress))


def _sideways(given: hauling_curve.HaulingCurveInput, found: hauling_curve.HaulingCurveResult) -> Iterator[Written]:
    if found.moment is not None and given.second_moment_lateral is not None:
        numbers = {
            "E": _stress(given.elastic_modulus), "I_y": Amount(given.second_moment_lateral, Kind.SECOND_MOMENT),
            "R_i": length(found.inner_radius),
        }  # fmt: skip
        yield Written("E * I_y / R_i", numbers, Amount(found.moment, Kind.MOMENT))


def _versine(given: hauling_curve.HaulingCurveInput, found: hauling_curve.HaulingCurveResult) -> Iterator[Written]:
    numbers = {"a": length(given.rack_spacing), "R_i": length(found.inner_radius)}
    yield Written("a ** 2 / 4 / (R_i + sqrt(R_i ** 2 - a ** 2 / 4))", numbers, small(found.rack_versine))


def _angle(given: hauling_curve.HaulingCurveInput, found: hauling_curve.HaulingCurveResult) -> Iterator[Written]:
    share = 2 if given.clamped_at == "middle" else 1
    numbers = {"L": length(given.string_length), "R": length(found.radius)}
    turned = f"L / {share} / R" if share > 1 else "L / R"
    result, note = Amount(found.angle, Kind.ANGLE), f"clamped at the {given.clamped_at}"
    if given.turn_angle is None:
        yield Written(turned, numbers, result, note=note)
    else:
        yield Written(f"min({turned}, phi)", numbers | {"phi": Amount(given.turn_angle, Kind.ANGLE)}, result, note=note)


def _welded(given: regulation.TrackJointsInput, found: regulation.TrackJointsResult) -> Iterator[Written]:
    limit = 400 * 0.3048
    by_length = "longer than" if given.rail_length > limit * (1 + 1e-9) else "no longer than"
    laid = "; laid as such" if given.laid_as_welded_rail else ""
    note = f"{by_length} 400 ft{laid}: {'it is' if found.continuous_welded_rail else 'it is not'}"
    yield read(length(given.rail_length), note, "length of the rail")


def _frog(given: turnout_radius.TurnoutRadiusInput, found: turnout_radius.TurnoutRadiusResult) -> Iterator[Written]:
    yield Written("2 * atan(1 / (2 * N))", {"N": count(given.turnout_number)}, Amount(found.frog_angle, Kind.ANGLE))


def _switch(given: turnout_radius.TurnoutRadiusInput, found: turnout_radius.TurnoutRadiusResult) -> Iterator[Written]:
    if given.switch_point_length is None:
        yield read(count(found.switch_sine), "the switch is taken not to turn")
        return
    numbers = {
        "h": small(given.heel_spread), "t": small(given.point_thickness), "a": length(given.switch_point_length),
    }  # fmt: skip
    yield Written("(h - t) / a", numbers, count(found.switch_sine))


WAYS: Final[dict[tuple[str, str], Way]] = {
    ("sections.properties", "section 1"): _integrals,
    ("sections.properties", "section 2"): _moments,
    ("sections.properties", "section 3"): _derived,
    ("sections.properties", "loss"): _loss,
    ("sections.properties", "comparison"): _comparison,
    ("sections.compatibility", "old_plates_serve"): _plates,
    ("strength.vertical-bending", "deflection"): _deflection,
    ("strength.vertical-bending", "moment"): _moment,
    ("strength.vertical-bending", "tie_stress"): lambda given, found: _tie(given, found, "tie_stress"),
    ("strength.vertical-bending", "ballast_pressure"): lambda given, found: _tie(given, found, "ballast_pressure"),
    ("strength.vertical-bending", "combined"): _combined,
    ("strength.vertical-bending", "speed_factor"): _speed_factor,
    ("strength.hauling-curve", "head_stress"): _head,
    ("strength.hauling-curve", "moment"): _sideways,
    ("strength.hauling-curve", "rack_versine"): _versine,
    ("strength.hauling-curve", "angle"): _angle,
    ("strength.turnout-radius", "frog_angle"): _frog,
    ("strength.turnout-radius", "switch_sine"): _switch,
    ("regulation.track-joints", "continuous_welded_rail"): _welded,
}
