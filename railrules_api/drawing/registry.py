"""Which rules have a drawing: from a rule's id to the function that draws what it was asked and what it found."""

from __future__ import annotations

from types import MappingProxyType
from typing import TYPE_CHECKING, Any, Final, Literal

from railrules_api.drawing import buckling_path, end_diagram, laying_chart, tie_panel, track_chart
from railrules_api.rules.quantities import anchors, spikes
from railrules_api.rules.takeoff import takeoff
from railrules_api.rules.thermal import break_gap, buckling, end_movement, laying_adjustment

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from railrules_api.units import System

MEDIA_TYPE: Final = "image/svg+xml"

JobDrawing = Literal["track-chart", "tie-panel"]

DRAWINGS: Final[Mapping[str, Callable[[Any, Any, System], str]]] = MappingProxyType(
    {
        anchors.RULE.id: tie_panel.draw_anchors,
        spikes.RULE.id: tie_panel.draw_spikes,
        laying_adjustment.RULE.id: laying_chart.draw,
        break_gap.RULE.id: end_diagram.draw_break,
        end_movement.RULE.id: end_diagram.draw_end,
        buckling.RULE.id: buckling_path.draw,
    }
)
"""One drawing a rule, of (given, found, system)."""

JOB_DRAWINGS: Final[Mapping[str, Callable[[Any, Any, System, int], str]]] = MappingProxyType(
    {
        "track-chart": track_chart.draw,
        "tie-panel": tie_panel.draw_segment,
    }
)
"""Drawings of a whole job, of (job, result, system, sheet); the first is the usual one."""


def is_drawn(rule_id: str) -> bool:
    """Tell whether a rule's answers come as a drawing too."""
    return rule_id in DRAWINGS or rule_id == takeoff.RULE.id
