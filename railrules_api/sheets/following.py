"""Which lines of a bill follow the ties of their segment, and by what formula."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from railrules_api.rules.quantities import (
    anchors,
    cribbing,
    custom,
    joints,
    plate_pins,
    preservative,
    rail_mass,
    salvage,
    spikes,
    tie_plates,
    tie_plugs,
    ties,
)
from railrules_api.sheets.book import Formula

if TYPE_CHECKING:
    from collections.abc import Callable

    from railrules_api.rules.takeoff.book import JobLine
    from railrules_api.sheets.segment_page import Followed, SegmentRow

_SAME: Final = 1e-9
_BY_TIES: Final = frozenset({"salvage-tie-plates", "salvage-spikes"})
_UNTOUCHED: Final = frozenset({joints.RULE.id, rail_mass.RULE.id})
"""Rules whose lines go by length alone."""


def _times(base: str, was: float, value: float) -> Formula | None:
    """Return a line that goes with a base; None where the base is nothing and so tells no proportion."""
    return Formula(f"={base}*{value / was!r}", value) if was else None


def _by(base: Followed, value: float) -> Formula | None:
    return _times(base.at, base.value, value)


def _kept(segment: SegmentRow, value: float) -> Formula | None:
    return _times(f"({segment.ties.at}-{segment.renewed.at})", segment.ties.value - segment.renewed.value, value)


def _spikes(segment: SegmentRow, value: float) -> Formula | None:
    at_joints = value - segment.spikes.value * segment.rails  # joints go by length
    if at_joints < -_SAME * max(1.0, value):
        return None
    return Formula(f"={segment.spikes.at}*{segment.rails}" + (f"+{at_joints!r}" if at_joints > _SAME * value else ""), value)


def _anchors(segment: SegmentRow, value: float) -> Formula | None:
    # with old ones applied again, how many are new hangs on the whole job's
    if segment.anchors is None or not math.isclose(value, segment.anchors.value, rel_tol=_SAME):
        return None
    return Formula(f"={segment.anchors.at}", value)


def _cribbing(segment: SegmentRow, value: float) -> Formula | None:
    return None if segment.anchors is None else _by(segment.anchors, value)


def _custom(line: JobLine, segment: SegmentRow, value: float) -> Formula | None:
    asked = segment.own_items.get(line.item)
    if asked is None:  # two of one name: which of them the line is of cannot be told
        return None
    each = (asked.per_tie or 0.0) + segment.rails * (asked.per_seat or 0.0)
    rest = value - each * segment.ties.value
    return Formula(f"={segment.ties.at}*{each!r}+{rest!r}", value)


_WAYS: Final[dict[str, Callable[[SegmentRow, float], Formula | None]]] = {
    ties.RULE.id: lambda segment, value: Formula(f"={segment.renewed.at}", value),
    tie_plates.RULE.id: lambda segment, value: _by(segment.ties, value),
    spikes.RULE.id: _spikes,
    tie_plugs.RULE.id: _kept,
    plate_pins.RULE.id: lambda segment, value: _by(segment.pinned, value),
    preservative.RULE.id: _kept,
    anchors.RULE.id: _anchors,
    cribbing.RULE.id: _cribbing,
}


def net_of(line: JobLine, segment: SegmentRow, value: float) -> Formula | float | None:
    """Return the net of a line of a segment: a formula where it goes by ties, the number where it goes by length alone.

    None is returned where it goes by ties in a way that no formula of cells follows.
    """
    if line.rule in _UNTOUCHED:
        return value
    if line.rule == salvage.RULE.id:
        if line.item == "salvage-ties":
            return Formula(f"={segment.renewed.at}", value)
        if line.item in _BY_TIES and value:
            return _by(segment.ties, value)
        return None if line.item == "salvage-anchors" and value else value
    if line.rule == custom.RULE.id:
        return _custom(line, segment, value)
    way = _WAYS.get(line.rule)
    return None if way is None else way(segment, value)
