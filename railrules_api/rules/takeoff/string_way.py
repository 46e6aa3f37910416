"""What a job says of the way of its strings: the sharpest place, and the racks that carry them past it."""

from __future__ import annotations

from dataclasses import dataclass

from railrules_api.domain.records import lean
from railrules_api.rules.strength.hauling_fields import (
    ClampedAt,
    EndClearance,
    FacingEnds,
    RackOffset,
    RackSpacing,
    TurnAngle,
    WayDegree,
    WayRadius,
    WayTurnoutNumber,
    YieldShare,
    YieldStrength,
)
from railrules_api.rules.strength.turnout_radius import FrogToeSpread, Gauge, HeelSpread


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class StringWay:
    """The sharpest place on the way of the rail train, and the racks on which it carries the strings."""

    radius: WayRadius = None
    degree: WayDegree = None
    turnout_number: WayTurnoutNumber = None
    gauge: Gauge
    heel_spread: HeelSpread
    frog_toe_spread: FrogToeSpread
    turn_angle: TurnAngle = None
    clamped_at: ClampedAt
    rack_spacing: RackSpacing
    rack_offset: RackOffset
    facing_ends: FacingEnds
    end_clearance: EndClearance = None
    yield_strength: YieldStrength
    yield_share: YieldShare = None
