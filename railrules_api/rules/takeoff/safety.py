"""What a job asks of the thermal rules: range, force, laying, break and restraint, for each new section."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from railrules_api.domain.track import spacing_of
from railrules_api.rules.thermal import break_gap, end_movement, force, laying_adjustment, restraint, temperature_range

if TYPE_CHECKING:
    from railrules_api.rules.takeoff.provisions import Provisions
    from railrules_api.rules.takeoff.rail import Group
    from railrules_api.rules.takeoff.supply import Temperatures

END_OF_WELDED_RAIL: Final = "end-of-cwr"
"""Kind of feature at which welded rail ends and breathes."""


def range_input(
    temperatures: Temperatures, allowed_rise: float | None = None, margin: float = 0.0
) -> temperature_range.TemperatureRangeInput:
    """Return the question to `thermal.temperature-range`.

    Args:
        temperatures: of the job.
        allowed_rise: rise that its track may be given, margin not yet taken off [K]; None where that is not known.
        margin: kept below it [K].
    """
    return temperature_range.TemperatureRangeInput(
        rule=temperatures.range_rule,
        hottest_rail=temperatures.hottest_rail,
        coldest_rail=temperatures.coldest_rail,
        rail_above_air=0.0,  # rail temperatures are given, so no rise is added
        laid_at=temperatures.target,
        drift=temperatures.drift,
        allowed_rise=allowed_rise,
        margin=margin,  # without an allowed rise it decides nothing
    )


def force_input(group: Group, temperatures: Temperatures, *, rail: float, neutral: float) -> force.ThermalForceInput:
    """Return the question to `thermal.force` for a rail temperature."""
    return force.ThermalForceInput(
        area=group.new.area,
        elastic_modulus=temperatures.elastic_modulus,
        expansion=temperatures.expansion,
        rail_temperature=rail,
        neutral_temperature=neutral,
    )


def break_input(group: Group, temperatures: Temperatures, *, neutral: float) -> break_gap.BreakGapInput:
    """Return the question to `thermal.break-gap` at the coldest rail temperature."""
    return break_gap.BreakGapInput(
        area=group.new.area,
        elastic_modulus=temperatures.elastic_modulus,
        expansion=temperatures.expansion,
        rail_temperature=temperatures.coldest_rail,
        neutral_temperature=neutral,
        law="rigid-plastic",
        resistance=temperatures.resistance,
        gap_limit=temperatures.break_gap_limit,
    )


def laying_input(  # noqa: PLR0913  what the adjustment of one string depends on
    group: Group,
    temperatures: Temperatures,
    *,
    string_length: float,
    laying_rail: float,
    target: float,
    opening: float,
    limits: tuple[float, float],
) -> laying_adjustment.LayingAdjustmentInput:
    """Return the question to `thermal.laying-adjustment` for one whole string."""
    return laying_adjustment.LayingAdjustmentInput(
        string_length=string_length,
        area=group.new.area,
        elastic_modulus=temperatures.elastic_modulus,
        expansion=temperatures.expansion,
        rail_temperature=laying_rail,
        target_temperature=target,
        weld_opening=opening,
        friction=temperatures.pulling_friction,
        movement_made=temperatures.expansion * string_length * (target - laying_rail),
        range_lower=limits[0],
        range_upper=limits[1],
    )


def ends(group: Group) -> bool:
    """Tell whether welded rail of a group ends at a place that the job names so."""
    return any(feature.kind == END_OF_WELDED_RAIL for segment in group.segments for feature in segment.features)


def end_input(group: Group, temperatures: Temperatures, provided: Provisions, *, neutral: float) -> end_movement.EndMovementInput:
    """Return the question to `thermal.end-movement` for an end of a group's welded rail, held as at a break."""
    return end_movement.EndMovementInput(
        area=group.new.area,
        elastic_modulus=temperatures.elastic_modulus,
        expansion=temperatures.expansion,
        neutral_temperature=neutral,
        hottest=temperatures.hottest_rail,
        coldest=temperatures.coldest_rail,
        law="rigid-plastic",
        resistance=temperatures.resistance,
        joint_force=temperatures.joint_slip,
        room_to_close=provided.room_to_close,
        room_to_open=provided.room_to_open,
    )


def restraint_input(group: Group, temperatures: Temperatures, *, rail: float, neutral: float) -> restraint.RestraintInput | None:
    """Return the question to `thermal.restraint` for the anchored approaches of a group; None where there are none.

    Approaches of one length beside one kind of object hold the same, so each is asked for once, at the widest tie spacing.
    """
    zones: dict[tuple[str, float], restraint.Zone] = {}
    spacings = []
    for segment in group.segments:
        if segment.new.elastic_fasteners:
            continue
        spacings.append(spacing_of(segment.ties))
        for feature in segment.features:
            length = feature.rule.approach_length
            if length > 0.0:
                zones.setdefault((feature.kind, length), restraint.Zone(name=feature.kind, length=length, every=1))
    if not zones:
        return None
    return restraint.RestraintInput(
        area=group.new.area,
        elastic_modulus=temperatures.elastic_modulus,
        expansion=temperatures.expansion,
        rail_temperature=rail,
        neutral_temperature=neutral,
        tie_spacing=max(spacings),
        anchor_slip=temperatures.anchor_slip,
        anchors_acting=1,
        ballast_resistance=temperatures.resistance,
        zones=tuple(zones.values()),
    )
