"""Intervals of a line by station: half-open, begin included, end not."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence


class Interval(NamedTuple):
    """A stretch of line [m]."""

    begin: float
    end: float

    @property
    def length(self) -> float:
        """Length [m]."""
        return self.end - self.begin


def union(intervals: Iterable[Interval]) -> tuple[Interval, ...]:
    """Merge overlapping and touching intervals; the result is sorted and disjoint."""
    merged: list[Interval] = []
    for interval in sorted(intervals):
        if merged and interval.begin <= merged[-1].end:
            merged[-1] = Interval(merged[-1].begin, max(merged[-1].end, interval.end))
        else:
            merged.append(interval)
    return tuple(merged)


def subtract(interval: Interval, holes: Sequence[Interval]) -> tuple[Interval, ...]:
    """Return what is left of an interval outside the holes, in order."""
    if not holes:
        return (interval,) if interval.begin < interval.end else ()
    left: list[Interval] = []
    begin = interval.begin
    for hole in union(holes):
        if hole.end <= begin or hole.begin >= interval.end:
            continue
        if hole.begin > begin:
            left.append(Interval(begin, hole.begin))
        begin = max(begin, hole.end)
    if begin < interval.end:
        left.append(Interval(begin, interval.end))
    return tuple(left)
