"""Where the welds of one run of rail go, and which cut pieces come out of which string: the pure algorithms.

A run is laid out of strings that each reach over `pitch`. A string may lie whole, or be cut to a piece that reaches over at
least `shortest`. Between two pieces stands a field weld, and no weld may stand strictly inside a blocked interval; welds on
the limits of a blocked interval are allowed. `weld_places` finds

1. the fewest field welds,
2. among those the fewest cut pieces,
3. among those the layout whose cuts come latest, so that a run closes with its cut piece.

Both numbers are the true minima for the run, by breadth-first search over sets of places. Let reach(j) be every place that a
weld can stand at with j pieces behind it and no fewer: reach(j - 1) shifted by everything from `shortest` to `pitch`, less
what is blocked, less what was reached before. Each is a union of few closed intervals, so it is kept exactly and no grid is
needed. In a layout with the fewest welds the j-th weld lies in reach(j), else there would be a shorter way to it. The first j
whose shifted set holds the far end gives the fewest welds; where nothing fresh is reached, the run cannot be laid. Walking back
from the far end keeps of every set only the places that lie on some layout with the fewest welds. Within those, the same
recursion in two variables, (j, number of cut pieces so far), gives the fewest cut pieces: a whole string shifts a set by
exactly `pitch`, a cut one by the range.

In a layout with the fewest welds two neighbouring pieces always reach over more than `pitch` together, else the weld between
them could be left out. So a run of length L needs at most 2 ceil(L / pitch) + 1 pieces, or cannot be laid at all.
"""

from __future__ import annotations

import math
from bisect import bisect_left
from typing import TYPE_CHECKING, NamedTuple

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from railrules_api.domain.intervals import Interval

SLACK = 1e-6
"""Lengths closer than this are equal [m]: a micrometre, far above float noise and far below a saw cut."""


class Reach(NamedTuple):
    """Places where a weld can stand, both ends included [m]."""

    low: float
    high: float


Reaches = tuple[Reach, ...]


def _merged(reaches: Iterable[Reach]) -> Reaches:
    merged: list[Reach] = []
    for reach in sorted(reaches):
        if merged and reach.low <= merged[-1].high:
            if reach.high > merged[-1].high:
                merged[-1] = Reach(merged[-1].low, reach.high)
        else:
            merged.append(reach)
    return tuple(merged)


class Room:
    """The places between two limits that are not blocked, quick to meet with a set of places."""

    __slots__ = ("_highs", "_reaches")

    def __init__(self, reaches: Reaches) -> None:
        """Keep disjoint sorted places."""
        self._reaches = reaches
        self._highs = [reach.high for reach in reaches]

    @classmethod
    def between(cls, begin: float, end: float, blocked: Iterable[Interval]) -> Room:
        """Leave the inside of the blocked intervals out, to within `SLACK`."""
        free: list[Reach] = []
        reached = begin
        for low, high in sorted((zone.begin + SLACK, zone.end - SLACK) for zone in blocked):
            if low >= high or high <= reached:
                continue
            if low >= end:
                break
            if low >= reached:
                free.append(Reach(reached, low))
            reached = high
        if reached <= end:
            free.append(Reach(reached, end))
        return cls(tuple(free))

    def meet(self, reaches: Reaches) -> Reaches:
        """Return what of a set of places lies in the room."""
        met: list[Reach] = []
        for low, high in reaches:
            position = bisect_left(self._highs, low)
            while position < len(self._reaches) and self._reaches[position].low <= high:
                place = self._reaches[position]
                met.append(Reach(max(low, place.low), min(high, place.high)))
                position += 1
        return _merged(met)


def _shifted(reaches: Reaches, least: float, most: float) -> Reaches:
    return _merged(Reach(low + least, high + most) for low, high in reaches)


def _without(reaches: Reaches, seen: Reaches) -> Reaches:
    """Return what of a set of places is not in another; a limit that both share may stay."""
    left: list[Reach] = []
    for low, high in reaches:
        begin, met = low, False
        for known in seen:
            if known.high < begin:
                continue
            if known.low > high:
                break
            met = True
            if known.low > begin:
                left.append(Reach(begin, known.low))
            begin = known.high
        if begin < high or not met:
            left.append(Reach(begin, high))
    return tuple(left)


def _nearest(reaches: Reaches, place: float) -> float | None:
    """Return the place of a set that stands within `SLACK` of a place; None when there is none."""
    for low, high in reaches:
        if low - SLACK <= place <= high + SLACK:
            return min(max(place, low), high)
    return None


def _latest(reaches: Reaches, low: float, high: float) -> float | None:
    """Return the latest place of a set between two limits, to within `SLACK`; None when there is none."""
    best: float | None = None
    for reach in reaches:
        if reach.low <= high + SLACK and reach.high >= low - SLACK:
            best = max(min(high, reach.high), reach.low)
    return best


class Layers:
    """The sets of one weld by the number of cut pieces so far; from the last layer kept on, nothing more can be reached."""

    __slots__ = ("first", "sets")

    def __init__(self, first: int, sets: list[Reaches]) -> None:
        """Keep the sets, `sets[0]` being that of `first` cut pieces."""
        self.first = first
        self.sets = sets

    def at(self, cut: int) -> Reaches:
        """Return the places that can be reached with at most so many cut pieces."""
        if cut < self.first:
            return ()
        return self.sets[min(cut - self.first, len(self.sets) - 1)]


def _fewest(begin: float, end: float, pitch: float, shortest: float, room: Room) -> list[Reaches] | None:
    """Return the places of each weld over all layouts with the fewest welds, begin and end among them; None if there is none."""
    forward: list[Reaches] = [(Reach(begin, begin),)]
    seen: Reaches = ()
    for _ in range(2 * math.ceil((end - begin) / pitch) + 1):
        ahead = _shifted(forward[-1], shortest, pitch)
        if _nearest(ahead, end) is not None:
            break
        fresh = _without(room.meet(ahead), seen)
        if not fresh:
            return None
        forward.append(fresh)
        seen = _merged(reach for reach in (*seen, *fresh) if reach.high >= fresh[0].low)
    else:
        return None
    windows: list[Reaches] = [(Reach(end, end),)]
    for places in reversed(forward):
        # widened by SLACK, so that a place reached by a hair is not lost on the way back
        behind = _shifted(windows[-1], -pitch - SLACK, -shortest + SLACK)
        windows.append(Room(places).meet(behind))
    return windows[::-1]


def _layered(windows: list[Reaches], pitch: float, shortest: float) -> list[Layers]:
    """Split the places of each weld by the fewest cut pieces that lead there."""
    layers = [Layers(0, [windows[0]])]
    for window in windows[1:]:
        room = Room(tuple(Reach(low - SLACK, high + SLACK) for low, high in window))
        before = layers[-1]
        first = before.first
        sets: list[Reaches] = []
        for cut in range(before.first, before.first + len(before.sets) + 1):
            whole = _shifted(before.at(cut), pitch, pitch)
            short = _shifted(before.at(cut - 1), shortest, pitch)
            reached = room.meet(_merged((*whole, *short)))
            if not sets and not reached:
                first = cut + 1
                continue
            sets.append(reached)
        while len(sets) > 1 and sets[-1] == sets[-2]:
            sets.pop()
        layers.append(Layers(first, sets))
    return layers


def weld_places(
    begin: float, end: float, *, pitch: float, shortest: float, blocked: Iterable[Interval] = ()
) -> tuple[float, ...] | None:
    """Return where the field welds inside a run stand, fewest first; None when the run cannot be laid.

    Args:
        begin: where the run begins [m].
        end: where it ends [m].
        pitch: what a whole string reaches over, from weld to weld [m].
        shortest: the least that a piece may reach over, above zero and no more than `pitch` [m].
        blocked: where no weld may stand [m].

    >>> weld_places(0.0, 1000.0, pitch=400.0, shortest=5.0)
    (400.0, 800.0)
    >>> weld_places(0.0, 801.0, pitch=400.0, shortest=5.0)
    (400.0, 796.0)
    """
    windows = _fewest(begin, end, pitch, shortest, Room.between(begin, end, blocked))
    if windows is None:
        return None
    layers = _layered(windows, pitch, shortest)
    cut = layers[-1].first
    place = end
    welds: list[float] = []
    for before in reversed(layers[1:-1]):
        # cut the later piece rather than the earlier one
        short = _latest(before.at(cut - 1), place - pitch, place - shortest)
        if short is not None:
            cut -= 1
            place = short
        else:
            whole = _nearest(before.at(cut), place - pitch)
            assert whole is not None
            place = whole
        welds.append(place)
    return tuple(reversed(welds))


def allot(pieces: Sequence[float], *, string: float, saw: float) -> tuple[tuple[int, ...], ...]:
    """Choose which pieces are cut from one string: longest first, each into the fullest string that still holds it.

    Every string loses one saw cut between two pieces. Best-fit decreasing needs the fewest strings wherever the total
    length shows so, and never more than 11/9 of the fewest and one more.

    Args:
        pieces: lengths of steel [m], each no longer than a string.
        string: length of a string [m].
        saw: what a saw cut takes [m].

    Returns:
        For each string that is cut, the positions of its pieces in `pieces`.

    >>> allot([6.0, 3.0, 4.0], string=10.0, saw=0.0)
    ((0, 2), (1,))
    """
    cut: list[list[int]] = []
    left: list[float] = []
    for position in sorted(range(len(pieces)), key=lambda index: (-pieces[index], index)):
        need = pieces[position]
        fits = [index for index, rest in enumerate(left) if rest + SLACK >= need]
        if fits:
            best = min(fits, key=lambda index: (left[index], index))
            cut[best].append(position)
            left[best] -= need + saw
        else:
            cut.append([position])
            left.append(string - need - saw)
    return tuple(tuple(chosen) for chosen in cut)
