"""The registry: every rule, one line each, in the order of the document. No import magic, no decorators with side effects."""

from __future__ import annotations

from types import MappingProxyType
from typing import TYPE_CHECKING, Any

from railrules_api.rules.quantities import (
    anchor_reuse,
    anchors,
    closing_joints,
    cribbing,
    custom,
    joints,
    loads,
    order,
    plate_pins,
    preservative,
    rail_mass,
    rail_supply,
    salvage,
    sound_ties,
    spikes,
    string_layout,
    tie_plates,
    tie_plugs,
    ties,
    train_loads,
    work,
    work_plan,
)
from railrules_api.rules.sections import compatibility as section_compatibility
from railrules_api.rules.sections import properties as section_properties
from railrules_api.rules.strength import hauling_curve, regulation, turnout_radius, vertical_bending
from railrules_api.rules.takeoff import takeoff
from railrules_api.rules.thermal import (
    break_gap,
    buckling,
    curve_load,
    destressing,
    end_movement,
    force,
    joint_gap,
    laying_adjustment,
    neutral_temperature,
    restraint,
    temperature_range,
    worn_rail,
)

if TYPE_CHECKING:
    from collections.abc import Mapping

    from railrules_api.rules.model import Rule

ALL: tuple[Rule[Any, Any], ...] = (
    ties.RULE,
    sound_ties.RULE,
    tie_plates.RULE,
    spikes.RULE,
    tie_plugs.RULE,
    plate_pins.RULE,
    preservative.RULE,
    anchors.RULE,
    anchor_reuse.RULE,
    cribbing.RULE,
    joints.RULE,
    closing_joints.RULE,
    rail_mass.RULE,
    rail_supply.RULE,
    string_layout.RULE,
    train_loads.RULE,
    salvage.RULE,
    custom.RULE,
    work.RULE,
    work_plan.RULE,
    loads.RULE,
    order.RULE,
    force.RULE,
    worn_rail.RULE,
    temperature_range.RULE,
    laying_adjustment.RULE,
    destressing.RULE,
    neutral_temperature.RULE,
    break_gap.RULE,
    end_movement.RULE,
    restraint.RULE,
    curve_load.RULE,
    buckling.RULE,
    joint_gap.RULE,
    vertical_bending.RULE,
    hauling_curve.RULE,
    turnout_radius.RULE,
    regulation.RULE,
    section_properties.RULE,
    section_compatibility.RULE,
)
RESOURCES: tuple[Rule[Any, Any], ...] = (*ALL, takeoff.RULE)
"""Everything that can be asked: the rules, and the takeoff that asks them on behalf of a whole job."""
BY_ID: Mapping[str, Rule[Any, Any]] = MappingProxyType({rule.id: rule for rule in RESOURCES})
