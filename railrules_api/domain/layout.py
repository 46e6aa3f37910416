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
from itertools import pairwise
from typing import TYPE_CHECKING, TypeAlias

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

SLACK = 1e-6
"""Lengths closer than this are equal [m]: a micrometre, far above float noise and far below a saw cut."""

CLOSE = 10 * SLACK
"""Places closer to a limit than this are looked at with exact sets [m]."""
NEAR = 1.0
"""More than all roundings of a run together [m]."""

Reach: TypeAlias = tuple[float, float]
"""Places where a weld can stand, both ends included [m]. A plain pair: a long line makes millions of them."""
Reaches: TypeAlias = tuple[Reach, ...]
"""Places in order."""


def _merged(reaches: Iterable[Reach]) -> Reaches:
    return _joined(sorted(reaches))


def _joined(reaches: Iterable[Reach]) -> Reaches:
    """Merge places that overlap or touch; they come in order of their begins."""
    merged: list[Reach] = []
    first, last = 0.0, -math.inf
    for low, high in reaches:
        if low > last:
            if merged:
                merged[-1] = (first, last)
            merged.append((low, high))
            first, last = low, high
        elif high > last:
            last = high
    if merged:
        merged[-1] = (first, last)
    return tuple(merged)


def _both(one: Reaches, other: Reaches) -> Reaches:
    """Merge two sets of places, as they are reached with one cut piece less and with as many.

    Where each is one stretch they overlap: what is reached with fewer cut pieces is reached with more, so the latest place of
    the one, which a whole string reaches, is a place of the other.
    """
    if len(one) == 1 and len(other) == 1:
        first, second = (one[0], other[0]) if one[0] <= other[0] else (other[0], one[0])
        return ((first[0], second[1] if second[1] > first[1] else first[1]),)  # noqa: FURB136
    return _merged((*one, *other))


class Room:
    """The places between two limits that are not blocked, quick to meet with a set of places."""

    __slots__ = ("_highs", "_reaches")

    def __init__(self, reaches: Reaches) -> None:
        """Keep disjoint sorted places."""
        self._reaches = reaches
        self._highs = [high for _, high in reaches]

    @classmethod
    def between(cls, begin: float, end: float, blocked: Iterable[tuple[float, float]]) -> Room:
        """Leave the inside of the blocked intervals out, to within `SLACK`."""
        free: list[Reach] = []
        reached = begin
        for low, high in sorted([(low + SLACK, high - SLACK) for low, high in blocked]):
            if low >= high or high <= reached:
                continue
            if low >= end:
                break
            if low >= reached:
                free.append((reached, low))
            reached = high
        if reached <= end:
            free.append((reached, end))
        return cls(tuple(free))

    def meet(self, reaches: Reaches) -> Reaches:
        """Return what of a set of places lies in the room."""
        places, highs = self._reaches, self._highs
        # calls of min and max would be a third of all the time
        if len(reaches) == 1 and len(places) == 1:
            ((low, high),), ((begin, end),) = reaches, places
            if begin > high or end < low:
                return ()
            return ((low if low > begin else begin, high if high < end else end),)  # noqa: FURB136
        met: list[Reach] = []
        count = len(places)
        for low, high in reaches:
            position = bisect_left(highs, low)
            while position < count:
                begin, end = places[position]
                if begin > high:
                    break
                met.append((low if low > begin else begin, high if high < end else end))  # noqa: FURB136
                position += 1
        return tuple(met) if len(met) < 2 else _joined(met)  # noqa: PLR2004  one place has none to merge with


def _shifted(reaches: Reaches, least: float, most: float) -> Reaches:
    if len(reaches) == 1:
        ((low, high),) = reaches
        return ((low + least, high + most),)
    return _joined([(low + least, high + most) for low, high in reaches])


def _beyond(reaches: Reaches, place: float) -> Reaches:
    """Return what of a set of places lies beyond a place; the place itself may stay as a limit."""
    return tuple([(low if low > place else place, high) for low, high in reaches if high > place])  # noqa: FURB136


def _nearest(reaches: Reaches, place: float) -> float | None:
    """Return the place of a set that stands within `SLACK` of a place; None when there is none."""
    for low, high in reaches:
        if low - SLACK <= place <= high + SLACK:
            return min(max(place, low), high)
    return None


def _latest(reaches: Reaches, low: float, high: float) -> float | None:
    """Return the latest place of a set between two limits, to within `SLACK`; None when there is none."""
    best: float | None = None
    for begin, end in reaches:
        if begin <= high + SLACK and end >= low - SLACK:
            best = max(min(high, end), begin)
    return best


def _fewest(begin: float, end: float, pitch: float, shortest: float, room: Room) -> list[Reaches] | None:
    """Return the places of each weld over all layouts with the fewest welds, begin and end among them; None if there is none."""
    forward = _ahead_in_sight(begin, end, pitch, shortest, room) or _ahead(begin, end, pitch, shortest, room)
    if forward is None:
        return None
    windows: list[Reaches] = [((end, end),)]
    for places in reversed(forward):
        # widened by SLACK, so that a place reached by a hair is not lost on the way back
        behind = _shifted(windows[-1], -pitch - SLACK, -shortest + SLACK)
        windows.append(Room(places).meet(behind))
    return windows[::-1]


def _ahead_in_sight(begin: float, end: float, pitch: float, shortest: float, room: Room) -> list[Reaches] | None:
    """Return the places that each weld can stand at on the way to the end, in ceil(L / pitch) pieces; None if it takes more.

    With so few pieces a weld lies no farther from the end than the strings still to come reach, so that little of what can be
    reached needs to be looked at, and no place can be reached with fewer pieces as well.
    """
    length = end - begin
    pieces = math.ceil(length / pitch)
    if length - (pieces - 1) * pitch < CLOSE:
        return None  # one string less may reach by a hair
    forward: list[Reaches] = [((begin, begin),)]
    for left in range(pieces - 1, 0, -1):
        sight = end - left * pitch - NEAR
        ahead = tuple([(max(low, sight), high) for low, high in _shifted(forward[-1], shortest, pitch) if high > sight])
        reached = room.meet(ahead)
        if not reached:
            return None
        forward.append(reached)
    return None if _nearest(_shifted(forward[-1], shortest, pitch), end) is None else forward


def _ahead(begin: float, end: float, pitch: float, shortest: float, room: Room) -> list[Reaches] | None:
    """Return the places that each weld can stand at and no weld before it, up to that from which the end is reached.

    A place that takes n pieces lies beyond every place that takes fewer. Say a chain of n pieces ended before a chain of n - 1:
    its first weld stands beyond the begin, so somewhere its weld k stands at or beyond weld k - 1 of the other, and its next
    before weld k of the other. That next weld is the shortest piece or more and no more than a string beyond weld k - 1 of the
    other, and so takes k pieces, not the k + 1 of its own chain. What lies beyond the last place so far is therefore all that
    is new.
    """
    forward: list[Reaches] = [((begin, begin),)]
    while forward[-1]:  # each weld stands the shortest piece or more beyond the one before, and the room ends where the run does
        ahead = _shifted(forward[-1], shortest, pitch)
        if _nearest(ahead, end) is not None:
            return forward
        forward.append(_beyond(room.meet(ahead), forward[-1][-1][1]))
    return None


def _rows(windows: list[Reaches], pitch: float, shortest: float) -> list[list[Reaches]]:
    """Split the places of each weld by the cut pieces that lead there: row c has those reached with at most c of them.

    Rows are made one after the other, until one reaches the end; it is the fewest cut pieces that do.
    """
    rooms = [Room(tuple([(low - SLACK, high + SLACK) for low, high in window])) for window in windows[1:]]
    rows: list[list[Reaches]] = []
    fewer: list[Reaches] = [()] * len(windows)
    reached: Reaches = ()
    while not reached and len(rows) < len(windows):  # no more pieces can be cut than there are
        reached = windows[0]
        row = [reached]
        for room, before in zip(rooms, fewer, strict=False):
            if reached or before:
                whole, short = _shifted(reached, pitch, pitch), _shifted(before, shortest, pitch)
                reached = room.meet(_both(whole, short) if whole and short else whole or short)
            row.append(reached)
        rows.append(row)
        fewer = row
    return rows


def _first_blocked(place: float, step: float, count: int, zones: Sequence[tuple[float, float]]) -> int | None:
    """Walk `count` steps; return which one first ends inside a zone, `count + 1` if none does, None if it is too close to tell.

    Args:
        place: where the walk begins [m].
        step: its step; ahead where above zero, else back [m].
        count: how many steps.
        zones: where none may end, sorted, in the order of their begins.
    """
    ahead = step > 0.0
    position, last = (0, len(zones)) if ahead else (len(zones) - 1, -1)
    for number in range(1, count + 1):
        place += step
        while position != last:
            low, high = zones[position]
            if (high + CLOSE < place) if ahead else (low - CLOSE > place):
                position += 1 if ahead else -1
                continue
            if low + CLOSE < place < high - CLOSE:
                return number
            if low - CLOSE <= place <= high + CLOSE:
                return None
            break
    return count + 1


def with_one_cut(
    begin: float, end: float, pitch: float, shortest: float, zones: Sequence[tuple[float, float]]
) -> tuple[float, ...] | None:
    """Lay a run with one cut piece if that can be done with the fewest pieces of all, the cut as late as it can be.

    With n = ceil(L / pitch) pieces, the fewest there can be, and one of them cut, the welds before the cut stand whole strings
    from the begin and those after it whole strings from the end. So the cut is as late as the first of the former that is
    blocked, and the layout stands if all of the latter from there on are free: a walk from either side tells. Most runs are
    laid so; None where this one is not, or where a place is so close to a limit that only exact sets can tell.
    """
    length = end - begin
    pieces = math.ceil(length / pitch)
    if pieces <= 1:
        return () if shortest <= length <= pitch else None
    if not CLOSE < pieces * pitch - length < pitch - shortest - CLOSE:
        return None  # it can be laid without a cut, or needs two
    if any(first[1] > second[0] for first, second in pairwise(zones)):
        return None
    blocked = _first_blocked(begin, pitch, pieces - 1, zones)
    if blocked is None:
        return None
    after = _first_blocked(end, -pitch, pieces - blocked, zones)
    if after is None or after <= pieces - blocked:
        return None
    welds: list[float] = []
    place = begin
    for _ in range(blocked - 1):
        place += pitch
        welds.append(place)
    behind: list[float] = []
    place = end
    for _ in range(pieces - blocked):
        place -= pitch
        behind.append(place)
    return (*welds, *reversed(behind))


def weld_places(
    begin: float, end: float, *, pitch: float, shortest: float, blocked: Iterable[tuple[float, float]] = ()
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
    zones = sorted(blocked)
    plain = with_one_cut(begin, end, pitch, shortest, zones)
    if plain is not None:
        return plain
    windows = _fewest(begin, end, pitch, shortest, Room.between(begin, end, zones))
    if windows is None:
        return None
    rows = _rows(windows, pitch, shortest)
    cut = len(rows) - 1
    place = end
    welds: list[float] = []
    for weld in range(len(windows) - 2, 0, -1):
        # cut the later piece rather than the earlier one
        short = _latest(rows[cut - 1][weld], place - pitch, place - shortest) if cut else None
        if short is not None:
            cut -= 1
            place = short
        else:
            whole = _nearest(rows[cut][weld], place - pitch)
            assert whole is not None
            place = whole
        welds.append(place)
    return tuple(reversed(welds))
