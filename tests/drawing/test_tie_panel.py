"""The tie panel draws as many anchors and spikes as the rules count."""

from __future__ import annotations

from collections import Counter
from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.domain.patterns import SpikeBand
from railrules_api.drawing import tie_panel
from railrules_api.drawing.plate_detail import sides_of
from tests.drawing.drawn import answered, marks, tree

if TYPE_CHECKING:
    from railrules_api.api.service import Service

SPACING = 19.5


def anchors(pattern: dict[str, Any], ties: int = tie_panel.TIES, rails: str = "both", **more: Any) -> dict[str, Any]:
    stretch = {
        "begin": {"value": 0, "unit": "in"},
        "end": {"value": SPACING * ties, "unit": "in"},
        "rails": rails,
        "ties": {"spacing": {"value": SPACING, "unit": "in"}},
    }
    return {"stretch": stretch, "pattern": pattern, **more}


@pytest.mark.parametrize(
    "pattern",
    [
        {"boxed_every": 1},
        {"boxed_every": 2},
        {"boxed_every": 3},
        {"per_rail": {"rail_length": {"value": 39, "unit": "ft"}, "forward": 8, "back_up": 2}},
        {},
    ],
)
@pytest.mark.parametrize("rails", ["both", "left"])
def test_one_panel_has_the_anchors_that_the_rule_counts(pattern: dict[str, Any], rails: str, service: Service) -> None:
    given, found, system = answered(service, "quantities.anchors", anchors(pattern, rails=rails))
    root = tree(tie_panel.draw_anchors(given, found, system))
    assert len(marks(root, "anchor")) == found.anchors


def test_the_limit_of_a_zone_is_shown_in_the_middle(service: Service) -> None:
    zone = {
        "begin": {"value": SPACING * 60, "unit": "in"},
        "end": {"value": SPACING * 90, "unit": "in"},
        "anchoring": "boxed",
        "reason": "joint",
    }
    given, found, system = answered(service, "quantities.anchors", anchors({"boxed_every": 2}, ties=240, zones=[zone]))
    panel = tie_panel.Panel(given.stretch, given.pattern, given.zones, elastic=False, spikes=None)
    plain, into, out = tie_panel.strips_of(panel, 3)
    assert plain.first == 0
    assert (into.first, out.first) == (60 - 12, 90 - 12)
    heights = Counter(round(y) for _, y in marks(tree(tie_panel.draw_anchors(given, found, system)), "anchor"))
    # 12 boxed ties on plain track; 6 + 12 at the limit, on each rail
    assert sorted(heights.values()) == [24, 24, 36, 36, 36, 36]


def test_elastic_fasteners_carry_no_anchor(service: Service) -> None:
    given, found, system = answered(service, "quantities.anchors", anchors({"boxed_every": 1}, elastic_fasteners=True))
    assert marks(tree(tie_panel.draw_anchors(given, found, system)), "anchor") == []


@pytest.mark.parametrize("rail", range(5))
@pytest.mark.parametrize("plate", range(5))
def test_sides_add_up_to_the_band(rail: int, plate: int) -> None:
    for gage in (None, *range(rail + plate + 1)):
        sides = sides_of(SpikeBand(rail_spikes=rail, plate_spikes=plate, gage_spikes=gage))
        assert min(sides) >= 0
        assert sides.rail_gage + sides.rail_field == rail
        assert sides.plate_gage + sides.plate_field == plate
        if gage is not None:
            assert sides.rail_gage + sides.plate_gage == gage
