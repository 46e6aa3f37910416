"""Requests that take every way a formula can be written: a worked request, and what is otherwise; None takes a field out."""

from __future__ import annotations

from typing import Any

from railrules_api.api.examples import requests
from railrules_api.api.resources import calculations, operations

TIES = {"ties": {"spacing": {"value": 19.5, "unit": "in"}}}


def q(value: float, unit: str) -> dict[str, Any]:
    """Return a quantity."""
    return {"value": value, "unit": unit}


def stretch(begin: float, end: float, **more: Any) -> dict[str, Any]:
    """Return a stretch, in feet."""
    return {"begin": q(begin, "ft"), "end": q(end, "ft"), "rails": "both", **TIES, **more}


NO_TIE = stretch(0.5, 1.0)
LEFT_OUT = stretch(0, 300, left_out=[{"begin": q(0, "ft"), "end": q(300, "ft")}])
BANDS = {"bands": [{"rail_spikes": 2, "plate_spikes": 2}], "extra_at_joint_ties": 0}
GAP = {"left_out": [{"begin": q(100, "ft"), "end": q(150, "ft")}]}
ON_CONCRETE = {"tie_kind": "concrete"}
BILINEAR = {"law": "bilinear", "stiffness": q(2000, "lbf_per_in2")}
RATE = {"operation": "adze-seats", "done": q(1300, "each"), "time": q(1, "h"), "crews": 2}

VARIANTS: list[tuple[str, dict[str, Any]]] = [
    ("quantities.sound-ties", {"track_class": 4, "degree": q(3, "deg")}),
    ("quantities.sound-ties", {"track_class": 4, "degree": None, "in_turnout": True}),
    ("quantities.tie-plates", ON_CONCRETE),
    ("quantities.tie-plates", {"plate": None, "plate_mass": None}),
    ("quantities.tie-plates", {"reused": True, "plated_share": 0.9, "recovered_share": 0.9}),
    ("quantities.tie-plugs", {"hole_shape": "round"}),
    ("quantities.tie-plugs", ON_CONCRETE),
    ("quantities.spikes", ON_CONCRETE),
    ("quantities.spikes", {"joint_rail_length": q(39, "ft")}),
    ("quantities.spikes", {"spike_pattern": "two-per-plate"}),
    ("quantities.spikes", {"spike_pattern": None, "pattern": BANDS}),
    ("quantities.spikes", {"stretch": NO_TIE}),
    *((f"quantities.{name}", {"stretch": LEFT_OUT}) for name in ("ties", "spikes", "plate-pins", "salvage", "joints")),
    ("quantities.anchors", {"stretch": LEFT_OUT, "zones": []}),
    ("quantities.work-per-tie", {"stretch": LEFT_OUT, "old_anchor_pattern": "jointed-8-two-way"}),
    ("quantities.plate-pins", ON_CONCRETE),
    ("quantities.plate-pins", {"stretch": stretch(0, 300, **GAP)}),
    ("quantities.plate-pins", {"stretch": NO_TIE}),
    ("quantities.plate-pins", {"stretch": stretch(0, 900, curves=[
        {"begin": q(100, "ft"), "end": q(400, "ft"), "degree": q(2, "deg"), "hand": "left"}])}),
    ("quantities.preservative", ON_CONCRETE),
    ("quantities.anchors", {"stretch": NO_TIE, "zones": []}),
    ("quantities.anchors", {"anchor_pattern": "jointed-8-two-way", "old_anchors": 500}),
    ("quantities.anchors", {"elastic_fasteners": True}),
    ("quantities.anchors", {"anchor": None, "per_bag": 50}),
    ("quantities.anchors", {"anchor": None}),
    ("quantities.anchor-reuse", {"places": [{"needed": 0, "recovered": 0, "fit_share": 0.8}]}),
    ("quantities.rail-supply", {"field_weld": "thermite", "string": {
        "stock": [{"length": q(39, "ft"), "count": 37}], "process": "gas-pressure",
        "made_temperature": q(70, "degF"), "rail_temperature": q(40, "degF")}}),
    ("quantities.string-layout", {"field_weld": "thermite"}),
    ("quantities.string-layout", {"field_weld": "flash-butt"}),
    ("quantities.train-loads", {
        "train_mass_limit": q(2000, "short_ton"), "car_mass_limit": q(60, "short_ton"),
        "temperature_change": q(40, "delta_degF")}),
    ("quantities.salvage", {"worn_share": 0.06, "reroll_share": None, "relay_wear": 0.07}),
    ("quantities.salvage", {"worn_share": 0.06, "reroll_share": None, "relay_wear": 0.03}),
    ("quantities.work-per-tie", {**ON_CONCRETE, "rates": []}),
    ("quantities.work-per-tie", {"anchor_pattern": "box-every-tie", "old_anchor_pattern": "jointed-8-two-way", "rates": [RATE]}),
    ("quantities.work-per-tie", {"stretch": NO_TIE, "occupancy": None}),
    ("quantities.work-plan", {"ties": 0}),
    ("quantities.loads", {"goods": [{"item": "gravel"}]}),
    ("quantities.order", {"net": q(1201, "each"), "whole_packages": None, "extra": q(7, "each")}),
    ("quantities.order", {"net": q(1201, "each"), "package_size": q(500, "each"), "whole_packages": True}),
    ("quantities.order", {"net": q(1201.5, "ft"), "mass_each": None, "net_mass": q(900, "lb"), "whole_packages": None}),
    ("quantities.order", {"net": q(1201.5, "ft"), "mass_each": None, "package_size": None, "whole_packages": None}),
    ("quantities.order", {"net": q(1201.5, "lb"), "mass_each": None}),
    ("quantities.order", {"mass_each": None, "package_size": q(200, "each")}),
    ("quantities.order", {"net": q(1201, "each"), "step": q(25, "each"), "package_size": None, "whole_packages": None}),
    ("thermal.worn-rail", {"vertical_wear": None, "face_wear": []}),
    ("thermal.temperature-range", {"hottest_rail": None, "hottest_air": q(100, "degF"), "rail_from_air": "plus"}),
    ("thermal.temperature-range", {"hottest_rail": None, "hottest_air": q(100, "degF"), "rail_from_air": "ratio"}),
    ("thermal.temperature-range", {"hottest_rail": q(140, "degF"), "hottest_air": None, "rail_from_air": None}),
    ("thermal.laying-adjustment", {"rail_temperature": q(110, "degF"), "movement_made": q(0.5, "in")}),
    ("thermal.destressing", {"rail_temperature": q(110, "degF"), "neutral_temperature": None}),
    ("thermal.neutral-temperature", {"neutral_temperature": q(90, "degF"), "parts": [], "measured_gap": None, "rail_added": None,
        "disturbed_length": None, "inward_shift": None, "radius": None, "degree": None}),
    ("thermal.neutral-temperature", {"neutral_temperature": None, "parts": [
        {"length": q(400, "ft"), "neutral_temperature": q(90, "degF")},
        {"length": q(900, "ft"), "neutral_temperature": q(70, "degF")}], "measured_gap": None,
        "rail_added": q(1, "in"), "disturbed_length": q(900, "ft")}),
    ("thermal.neutral-temperature", {"neutral_temperature": None, "parts": [], "measured_gap": q(2, "in"),
        "rail_added": q(1, "in"), "disturbed_length": None, "inward_shift": q(1, "in"), "radius": q(1000, "ft"), "degree": None}),
    ("thermal.neutral-temperature", {"neutral_temperature": None, "measured_gap": None, "parts": [
        {"length": q(400, "ft"), "neutral_temperature": q(90, "degF")}]}),
    ("quantities.plate-pins", {"pin": None, "per_keg": 300}),
    ("quantities.plate-pins", {"pin": None}),
    ("strength.turnout-radius", {"switch_point_length": q(16.5, "ft")}),
    ("strength.turnout-radius", {"switch_point_length": None}),
    ("thermal.break-gap", BILINEAR),
    ("thermal.break-gap", {**BILINEAR, "gap_limit": q(0.04, "in"), "stiffness": q(200, "lbf_per_in2")}),
    ("thermal.break-gap", {**BILINEAR, "rail_temperature": q(110, "degF")}),
    ("thermal.end-movement", BILINEAR),
    ("thermal.end-movement", {**BILINEAR, "hottest": q(101, "degF"), "coldest": q(99, "degF")}),
    ("thermal.curve-load", {"radius": q(900, "ft"), "degree": None}),
    ("thermal.curve-load", {"radius": None, "degree": q(4, "deg")}),
    ("thermal.joint-gap", {"rail_length": q(39, "ft")}),
    ("thermal.joint-gap", {"rail_length": q(36, "ft")}),
    ("thermal.buckling", {"degree": q(9, "deg")}),
    ("thermal.buckling", {"track_weight": q(200, "lbf_per_ft"), "second_moment": q(94.5, "in4")}),
    ("thermal.buckling", {"lateral_resistance": q(200, "lbf_per_in"), "margin": q(100, "delta_degF")}),
    ("thermal.buckling", {
        "stiffness": q(200, "lbf_per_in2"), "defect_amplitude": q(1.5, "in"), "defect_half_length": q(15, "ft")}),
    ("thermal.buckling", {"lateral_resistance": q(100, "lbf_per_in"), "stiffness": q(200, "lbf_per_in2"), "shape": "three-lobes",
        "held": "throughout", "defect_amplitude": q(0.75, "in"), "defect_half_length": q(15, "ft"), "margin_rule": "difference",
        "degree": q(4, "deg")}),
    *(("thermal.buckling", {"lateral_resistance": q(60, "lbf_per_in"), "stiffness": q(200, "lbf_per_in2"),
        "defect_amplitude": q(amplitude, "in"), "defect_half_length": q(15, "ft"), "margin_rule": "difference"})
      for amplitude in (1.0, 1.5, 2.0)),
]  # fmt: skip


def body_of(rule: str, changes: dict[str, Any]) -> dict[str, Any]:
    """Return the worked request of a rule with something otherwise."""
    ids = {operation.path: operation.id for operation in operations()}
    path = next(resource.path for resource in calculations() if resource.rule.id == rule)
    return {name: value for name, value in {**requests()[ids[path]], **changes}.items() if value is not None}
