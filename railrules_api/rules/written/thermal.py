"""Thermal force, laying, restraint and gaps, written out."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any, Final

from railrules_api.domain.amounts import Amount
from railrules_api.domain.kinds import Kind
from railrules_api.domain.track import CHORD
from railrules_api.rules import words
from railrules_api.rules.radius import radius_from
from railrules_api.rules.thermal.temperature_range import ICE, RATIO
from railrules_api.rules.written.terms import Written, added, count, length, read, small

if TYPE_CHECKING:
    from collections.abc import Iterator

    from railrules_api.rules.sections.section_records import SectionShape
    from railrules_api.rules.thermal import (
        break_gap,
        curve_load,
        destressing,
        end_movement,
        joint_gap,
        laying_adjustment,
        neutral_temperature,
        restraint,
        temperature_range,
        worn_rail,
    )
    from railrules_api.rules.written.terms import Numbers, Way


def temperature(value: float) -> Amount:
    """Return a temperature [K]."""
    return Amount(value, Kind.TEMPERATURE)


def change(value: float) -> Amount:
    """Return a temperature change [K]."""
    return Amount(value, Kind.TEMPERATURE_CHANGE)


def force(value: float) -> Amount:
    """Return a force [N]."""
    return Amount(value, Kind.FORCE)


def expansion(value: float) -> Amount:
    """Return a coefficient of expansion [1/K]."""
    return Amount(value, Kind.EXPANSION)


def rail(given: Any) -> Numbers:  # noqa: ANN401  any input with the three fields
    """Return modulus, area and expansion of a rail."""
    return {
        "E": Amount(given.elastic_modulus, Kind.STRESS), "A": Amount(given.area, Kind.AREA), "alpha": expansion(given.expansion),
    }  # fmt: skip


def _worn_area(given: worn_rail.WornRailInput, found: worn_rail.WornRailResult) -> Iterator[Written]:
    area = Amount(found.area, Kind.AREA)
    if found.area_new is not None and found.area_new != found.area:
        numbers = {"A_n": Amount(found.area_new, Kind.AREA), "A_l": Amount(found.area_new - found.area, Kind.AREA)}
        yield Written("A_n - A_l", numbers, area, note=f"new section less what wear took; {_outlined(given)}")
    else:
        yield read(area, _outlined(given))


def _outlined(given: SectionShape) -> str:
    points = len(given.outline) or len(given.measured_head)
    return f"from {points} measured points" if points else "integrated over the lines and arcs of the outline"


def _hottest(
    given: temperature_range.TemperatureRangeInput, found: temperature_range.TemperatureRangeResult
) -> Iterator[Written]:
    hottest = temperature(found.hottest)
    if given.hottest_air is None:
        yield read(hottest, "as given")
    elif given.rail_from_air == "plus":
        yield Written("T_a + r", {"T_a": temperature(given.hottest_air), "r": change(given.rail_above_air)}, hottest)
    else:
        numbers = {"T_0": temperature(ICE), "k": count(RATIO), "T_a": temperature(given.hottest_air)}
        yield Written("T_0 + k * (T_a - T_0)", numbers, hottest, note="above freezing")


# ---------------------------------------------------------------- laying and destressing


def _pull(given: laying_adjustment.LayingAdjustmentInput, found: laying_adjustment.LayingAdjustmentResult) -> Iterator[Written]:
    del given
    if found.pull_force is not None:
        yield Written("S + F", {"S": force(found.strain_force), "F": force(found.friction_force)}, force(found.pull_force))


def _achieved(
    given: laying_adjustment.LayingAdjustmentInput, found: laying_adjustment.LayingAdjustmentResult
) -> Iterator[Written]:
    numbers = {
        "T": temperature(given.rail_temperature), "u_m": small(given.movement_made or 0.0),
        "alpha": expansion(given.expansion), "L": length(given.string_length),
    }  # fmt: skip
    yield Written("T + u_m / (alpha * L)", numbers, temperature(found.neutral_achieved))


def _opening(given: destressing.DestressingInput, found: destressing.DestressingResult) -> Iterator[Written]:
    if found.opening is not None and given.neutral_temperature is not None:
        numbers = {
            "alpha": expansion(given.expansion), "L": length(found.length),
            "T_N": temperature(given.neutral_temperature), "T": temperature(given.rail_temperature),
        }  # fmt: skip
        yield Written("alpha * L * (T_N - T)", numbers, small(found.opening))


def _removed(given: destressing.DestressingInput, found: destressing.DestressingResult) -> Iterator[Written]:
    del given
    if found.opening is not None and found.rail_to_remove is not None:
        yield Written("G - o", {"G": small(found.gap), "o": small(found.opening)}, small(found.rail_to_remove))


def _marks(given: destressing.DestressingInput, found: destressing.DestressingResult) -> Iterator[Written]:
    told: dict[float, float] = {}
    for mark in found.marks:
        told.setdefault(mark.from_fixed_end, abs(mark.movement))
    sign = "-" if given.target_temperature < given.rail_temperature else ""
    for distance, movement in sorted(told.items()):
        numbers = {
            "alpha": expansion(given.expansion), "t": temperature(given.target_temperature),
            "T": temperature(given.rail_temperature), "x": length(distance),
        }  # fmt: skip
        of = f"at {words.long_length(distance)} from a fixed end"
        yield Written(f"{sign}alpha * (t - T) * x", numbers, small(movement), of)


# ---------------------------------------------------------------- neutral temperature


def _before(
    given: neutral_temperature.NeutralTemperatureInput, found: neutral_temperature.NeutralTemperatureResult
) -> Iterator[Written]:
    before = temperature(found.before)
    numbers: Numbers
    if given.measured_gap is not None:
        numbers = rail(given) | {
            "T": temperature(given.rail_temperature), "G": small(given.measured_gap),
            "r": Amount(given.resistance, Kind.FORCE_PER_LENGTH),
        }  # fmt: skip
        yield Written("T + sqrt(G * r / (E * A)) / alpha", numbers, before, note="from the gap measured")
    elif given.parts:
        whole = length(math.fsum(part.length for part in given.parts))
        yield Written(*added([length(part.length) for part in given.parts], "l"), whole, "all parts, L")
        first, *others = given.parts
        numbers = {"T_1": temperature(first.neutral_temperature)}
        text = "T_1"
        for place, part in enumerate(others, 2):
            text += f" + l_{place} / L * (T_{place} - T_1)"
            numbers[f"l_{place}"], numbers[f"T_{place}"] = length(part.length), temperature(part.neutral_temperature)
        if others:
            numbers["L"] = whole
        yield Written(text, numbers, before, "average over the parts")
    else:
        yield read(before, "as given")


def _by_rail(
    given: neutral_temperature.NeutralTemperatureInput, found: neutral_temperature.NeutralTemperatureResult
) -> Iterator[Written]:
    if given.rail_added is None or found.disturbed_length is None:
        yield read(change(found.change_by_rail), "no rail is put in or taken out")
        return
    numbers = {
        "l_a": small(given.rail_added), "alpha": expansion(given.expansion), "L": length(found.disturbed_length),
    }  # fmt: skip
    note = "over the length given" if given.disturbed_length is not None else "over the slip length on both sides"
    yield Written("-l_a / (alpha * L)", numbers, change(found.change_by_rail), note=note)


def _by_shift(
    given: neutral_temperature.NeutralTemperatureInput, found: neutral_temperature.NeutralTemperatureResult
) -> Iterator[Written]:
    if given.inward_shift is None:
        yield read(change(found.change_by_shift), "no curve is shifted")
        return
    radius = length(radius_from(given.radius, given.degree))
    numbers = {"z": small(given.inward_shift), "alpha": expansion(given.expansion), "R": radius}
    yield Written("-z / (alpha * R)", numbers, change(found.change_by_shift))


def _restore(
    given: neutral_temperature.NeutralTemperatureInput, found: neutral_temperature.NeutralTemperatureResult
) -> Iterator[Written]:
    if found.rail_to_restore is not None and found.disturbed_length is not None:
        numbers = {
            "T_N": temperature(found.before), "T_A": temperature(found.after),
            "alpha": expansion(given.expansion), "L": length(found.disturbed_length),
        }  # fmt: skip
        yield Written("(T_N - T_A) * alpha * L", numbers, small(found.rail_to_restore))


# ---------------------------------------------------------------- gaps and ends, the bilinear law


def _drop_at_limit(given: break_gap.BreakGapInput, found: break_gap.BreakGapResult) -> Iterator[Written]:
    """Write the drop at which the gap is the largest accepted: each half of it elastic, or slipping."""
    assert given.stiffness is not None  # of the bilinear law
    numbers = rail(given) | {
        "G_max": small(given.gap_limit), "k": Amount(given.stiffness, Kind.FOUNDATION_MODULUS),
        "r": Amount(given.resistance, Kind.FORCE_PER_LENGTH),
    }  # fmt: skip
    drop = change(found.drop_at_limit)
    if given.gap_limit / 2 <= given.resistance / given.stiffness:
        del numbers["r"]
        yield Written("G_max * sqrt(k / (E * A)) / (2 * alpha)", numbers, drop, note="no end slips")
    else:
        yield Written("sqrt(r * (G_max - r / k) / (E * A)) / alpha", numbers, drop, note="the ends slip")


def _resistance_at_limit(given: break_gap.BreakGapInput, found: break_gap.BreakGapResult) -> Iterator[Written]:
    """Write the movement of an end at the resistance found: half of the largest gap accepted."""
    if found.resistance_at_limit is None:
        return
    assert given.stiffness is not None  # of the bilinear law
    resistance = Amount(found.resistance_at_limit, Kind.FORCE_PER_LENGTH)
    stiffness = Amount(given.stiffness, Kind.FOUNDATION_MODULUS)
    numbers = {
        "P": force(found.force), "E": Amount(given.elastic_modulus, Kind.STRESS), "A": Amount(given.area, Kind.AREA),
        "G_max": small(given.gap_limit), "k": stiffness,
    }  # fmt: skip
    half = given.gap_limit / 2
    root = "sqrt((k * G_max / 2) ** 2 - k * P ** 2 / (E * A))"
    yield Written(f"P ** 2 * k / (E * A) / (k * G_max / 2 + {root})", numbers, resistance)
    check = {name: numbers[name] for name in ("P", "E", "A", "k")} | {"r_min": resistance}
    gap = found.force**2 / (given.elastic_modulus * given.area * resistance.value) + resistance.value / given.stiffness
    note = f"the gap at that resistance; it misses G_max by {abs(gap - 2 * half) / 0.0254:.1e} in"
    yield Written("P ** 2 / (E * A * r_min) + r_min / k", check, small(2 * half), "shown by putting it in", note)


def _free_end(given: end_movement.EndMovementInput, found: end_movement.EndMovementResult, side: str) -> Iterator[Written]:
    movement = small(getattr(found, f"{side}_movement"))
    assert given.stiffness is not None  # of the bilinear law
    numbers: Numbers = {
        "E": Amount(given.elastic_modulus, Kind.STRESS), "A": Amount(given.area, Kind.AREA),
        "P": force(abs(getattr(found, f"{side}_force"))), "J": force(given.joint_force),
        "k": Amount(given.stiffness, Kind.FOUNDATION_MODULUS), "r": Amount(given.resistance, Kind.FORCE_PER_LENGTH),
    }  # fmt: skip
    pull = "max(0, P - J)"
    if getattr(found, f"{side}_slip_length") > 0.0:
        yield Written(f"{pull} ** 2 / (2 * E * A * r) + r / (2 * k)", numbers, movement, note="the end slips")
    else:
        del numbers["r"]
        yield Written(f"{pull} / sqrt(k * E * A)", numbers, movement, note="no part slips")


def _zones(given: restraint.RestraintInput, found: restraint.RestraintResult) -> Iterator[Written]:
    for zone, hold in zip(given.zones, found.zones, strict=True):
        numbers: Numbers = {
            "n": count(given.anchors_acting), "a": force(given.anchor_slip), "s": small(given.tie_spacing),
            "m": count(zone.every), "b": Amount(given.ballast_resistance, Kind.FORCE_PER_LENGTH),
            "p": count(hold.ballast_holds / given.ballast_resistance), "l": length(zone.length),
        }  # fmt: skip
        note = f"{hold.governing} give way first"
        yield Written("min(n * a / (s * m), b * p) * l", numbers, force(hold.held), f"{zone.name}: held", note)
        numbers = {"P": force(abs(found.force)), "P_z": force(hold.held)}
        yield Written("max(0, P - P_z)", numbers, force(hold.short), f"{zone.name}: left to the track beyond")


def _radius(given: curve_load.CurveLoadInput, found: curve_load.CurveLoadResult) -> Iterator[Written]:
    yield radius_written(given.radius, given.degree, found.radius)


def radius_written(radius: float | None, degree: float | None, result: float) -> Written:
    """Write a radius: as given, or from the degree by 100-ft chord."""
    if degree is None:
        return read(length(result), "as given")
    del radius
    numbers = {"c": length(CHORD), "D": Amount(degree, Kind.ANGLE)}
    return Written("c / 2 / sin(D / 2)", numbers, length(result))


def _table_gap(given: joint_gap.JointGapInput, found: joint_gap.JointGapResult) -> Iterator[Written]:
    if found.table_gap is not None:
        reading = math.floor(words.fahrenheit(given.rail_temperature) + 0.5 + 1e-9)
        yield read(small(found.table_gap), f"row {found.table_row}; rail at {reading} °F")


WAYS: Final[dict[tuple[str, str], Way]] = {
    ("thermal.worn-rail", "area"): _worn_area,
    ("thermal.temperature-range", "hottest"): _hottest,
    ("thermal.laying-adjustment", "pull_force"): _pull,
    ("thermal.laying-adjustment", "neutral_achieved"): _achieved,
    ("thermal.destressing", "opening"): _opening,
    ("thermal.destressing", "rail_to_remove"): _removed,
    ("thermal.destressing", "marks"): _marks,
    ("thermal.neutral-temperature", "before"): _before,
    ("thermal.neutral-temperature", "change_by_rail"): _by_rail,
    ("thermal.neutral-temperature", "change_by_shift"): _by_shift,
    ("thermal.neutral-temperature", "rail_to_restore"): _restore,
    ("thermal.break-gap", "drop_at_limit"): _drop_at_limit,
    ("thermal.break-gap", "resistance_at_limit"): _resistance_at_limit,
    ("thermal.end-movement", "hot_movement"): lambda given, found: _free_end(given, found, "hot"),
    ("thermal.end-movement", "cold_movement"): lambda given, found: _free_end(given, found, "cold"),
    ("thermal.restraint", "zones"): _zones,
    ("thermal.curve-load", "radius"): _radius,
    ("thermal.joint-gap", "table_gap"): _table_gap,
}
