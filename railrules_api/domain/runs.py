"""Runs of rail in order, and the placing of their field welds on both rails with keep-outs and stagger.

A field weld changes the length of rail needed by what it takes: minus its gap for a thermite weld, whose metal fills the gap;
plus what is flashed and upset for a flash-butt weld. A piece between two welds therefore reaches over its steel less what one
weld takes, and at a run's end that is a joint the other half is given back. With this the algorithms of `layout` see runs
and pieces only.

The two rails meet only in the stagger. One rail is laid as if alone, which is the best it can do; the other then keeps clear
of its welds, which is the best it can do beside that one. Both orders are tried, with the first rail cut early and cut late,
until both rails are as good as alone; else the best is kept: fewest welds, then fewest cut pieces, then fewest strings. That is
done for each group of runs that lie within the stagger of each other, since no other run has to do with them. The sum of what
each rail needs alone bounds every layout from below, so a layout that reaches it has the fewest welds of all; where it does not,
no claim is made.
"""

from __future__ import annotations

import math
from bisect import bisect_left, bisect_right
from contextlib import suppress
from itertools import pairwise
from typing import TYPE_CHECKING, Final, Literal, NamedTuple

from railrules_api.domain.coming_off import WHOLE, Wanted, strings_for
from railrules_api.domain.errors import RefusedError, refuse
from railrules_api.domain.layout import SLACK, weld_places
from railrules_api.domain.progress import told
from railrules_api.domain.strings import Along, Closing, Laying, Rail, RailRun

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from railrules_api.domain.progress import Tell

WeldKind = Literal["junction", "weld", "compromise-weld"]
WELDED: Final[Mapping[Closing, WeldKind]] = {"weld": "weld", "compromise-weld": "compromise-weld"}
"""Closings that are field welds."""


class Run(NamedTuple):
    """A run after those that continue have been joined; `position` is that of its last part in the input."""

    position: int
    rail: Rail
    begin: float
    end: float
    closings: tuple[Closing, Closing]


class Closed(NamedTuple):
    """How a run is closed at a station."""

    station: float
    rail: Rail
    kind: Closing


class Cut(NamedTuple):
    """A run divided into pieces.

    Attributes:
        run: the run.
        welds: where its welds stand along the rail [m].
        steel: length of rail of each piece [m].
        along: the rail.
    """

    run: Run
    welds: tuple[float, ...]
    steel: tuple[float, ...]
    along: Along

    @property
    def places(self) -> tuple[float, ...]:
        """Stations of its begin, its welds and its end [m]; worked out where they are wanted, as most layouts are not taken."""
        return (self.run.begin, *self.along.stations(self.welds), self.run.end)


def joined_runs(runs: Sequence[RailRun]) -> list[Run]:
    """Put the runs of each rail in order and join those that continue; refuse overlaps and ends that contradict each other."""
    joined: list[Run] = []
    for position, run in sorted(enumerate(runs), key=lambda item: (item[1].rail, item[1].begin, item[1].end)):
        if run.end <= run.begin:
            raise refuse("runs", position, "end", reason="end must lie beyond begin", value=run.end, minimum=run.begin)
        before = joined[-1] if joined and joined[-1].rail == run.rail else None
        if before is not None and run.begin < before.end - SLACK:
            raise refuse(
                "runs", position, "begin", reason="run overlaps another of its rail", value=run.begin, minimum=before.end
            )
        touches = before is not None and run.begin <= before.end + SLACK
        if before is not None and touches and before.closings[1] != run.begin_closing:
            raise refuse(
                "runs", position, "begin_closing", reason="touching runs name different closings", value=run.begin_closing
            )
        if run.begin_closing == "continues":
            if before is None or not touches:
                raise refuse("runs", position, "begin_closing", reason="no touching run to continue from", value="continues")
            joined[-1] = Run(position, run.rail, before.begin, run.end, (before.closings[0], run.end_closing))
        else:
            joined.append(Run(position, run.rail, run.begin, run.end, (run.begin_closing, run.end_closing)))
    for whole in joined:
        if whole.closings[1] == "continues":
            raise refuse("runs", whole.position, "end_closing", reason="no touching run to continue in", value="continues")
    return joined


class Layer:
    """Lays runs; knows the lines of rail, what a string reaches over, and the keep-outs."""

    def __init__(self, given: Laying, string: float) -> None:
        """Prepare to lay.

        Args:
            given: what is laid, and what it must keep to.
            string: length of a string as laid [m].

        Raises:
            RefusedError: a curve or a keep-out contradicts itself.
        """
        self.take = given.field_consumption if given.field_weld == "flash-butt" else -given.thermite_gap
        self.string = string
        self.pitch = string - self.take
        self.shortest = given.minimum_piece - self.take
        self.stagger = given.stagger
        self.saw, self.train_strings, self.reach = given.saw_cut, given.train_strings, given.leftover_reach
        self.along = {rail: Along(rail, given.curves, given.rail_centres) for rail in ("left", "right")}
        self.keep_outs: list[tuple[float, float]] = []
        self._limits: dict[Run, tuple[float, float]] = {}
        for position, place in enumerate(given.keep_outs):
            if place.end < place.begin:
                raise refuse("keep_outs", position, "end", reason="end lies before begin", value=place.end, minimum=place.begin)
            self.keep_outs.append((place.begin - place.distance, place.end + place.distance))

    def drawn(self, cuts: Sequence[Cut]) -> list[list[Wanted]]:
        """Return which pieces come out of which string, in the order they are laid."""
        pieces = wanted(cuts, self.string)
        return strings_for(pieces, string=self.string, saw=self.saw, train_strings=self.train_strings, reach=self.reach)

    def strings(self, cuts: Sequence[Cut]) -> int:
        """Return how many strings some cut runs take."""
        return len(self.drawn(cuts))

    def limits(self, run: Run) -> tuple[float, float]:
        """Return a run's limits along its rail, as if a weld closed both ends."""
        known = self._limits.get(run)
        if known is not None:
            return known
        along = self.along[run.rail]
        begin, end = along.length(run.begin), along.length(run.end)
        if run.closings[0] not in WELDED:
            begin += self.take / 2
        if run.closings[1] not in WELDED:
            end -= self.take / 2
        self._limits[run] = begin, end
        return begin, end

    def lay(self, runs: Sequence[Run], clear_of: Sequence[float], *, backward: bool = False) -> list[Cut]:
        """Lay the runs of one rail.

        Args:
            runs: the runs of that rail.
            clear_of: stations of the other rail that welds keep clear of by the stagger [m].
            backward: lay from the end, so that cuts come early in place of late.

        Raises:
            RefusedError: a run cannot be laid.
        """
        zones = list(self.keep_outs)
        if self.stagger > 0.0:
            zones += [(place - self.stagger, place + self.stagger) for place in clear_of]
        merged = _merged(zones)
        begins, ends = [begin for begin, _ in merged], [end for _, end in merged]
        laid: list[Cut] = []
        for run in runs:
            along = self.along[run.rail]
            begin, end = self.limits(run)
            first, beyond = bisect_right(ends, run.begin), bisect_left(begins, run.end)
            blocked = list(zip(along.lengths(begins[first:beyond]), along.lengths(ends[first:beyond]), strict=True))
            if end - begin < self.shortest - SLACK:
                reason = "run is shorter than the shortest piece of rail"
                raise refuse(
                    "runs", run.position, "end", reason=reason, value=run.end, minimum=run.begin + self.shortest + self.take
                )
            if backward:
                turned = [(-high, -low) for low, high in reversed(blocked)]
                found = weld_places(-end, -begin, pitch=self.pitch, shortest=self.shortest, blocked=turned)
                welds = None if found is None else tuple([-weld for weld in reversed(found)])
            else:
                welds = weld_places(begin, end, pitch=self.pitch, shortest=self.shortest, blocked=blocked)
            if welds is None:
                reason = "no layout keeps every field weld out of the keep-outs and clear of the ends of the other rail"
                raise refuse("runs", run.position, reason=reason)
            take = self.take
            steel = tuple([after - before + take for before, after in pairwise((begin, *welds, end))])
            laid.append(Cut(run, welds, steel, along))
        return laid


def _merged(zones: list[tuple[float, float]]) -> list[tuple[float, float]]:
    """Merge overlapping and touching zones, in order."""
    zones.sort()
    merged: list[tuple[float, float]] = []
    low, high = math.inf, -math.inf
    for begin, end in zones:
        if begin <= high:
            high = max(high, end)
        else:
            if low <= high:
                merged.append((low, high))
            low, high = begin, end
    if low <= high:
        merged.append((low, high))
    return merged


def both_rails(layer: Layer, runs: Sequence[Run], tell: Tell | None = None) -> tuple[list[Cut], int]:
    """Lay both rails and keep the best layout found; with it, the field welds that both need at least.

    Runs that lie farther than the stagger from all others have nothing to do with them, and are laid for themselves. A rail by
    itself has only the ends of the other to keep clear of, so what it needs then bounds what it needs in any layout.
    """
    laid: list[Cut] = []
    bound = 0
    for group in told(_beside(runs, layer.stagger), "rail", tell):
        cuts, least = _both_of(layer, group)
        laid.extend(cuts)
        bound += least
    laid.sort(key=_place)
    return laid, bound


def _beside(runs: Sequence[Run], stagger: float) -> list[list[Run]]:
    """Divide runs into groups that lie farther than the stagger from each other; their rails in order, and the runs of each."""
    groups: list[list[Run]] = []
    reached = -math.inf
    for run in sorted(runs, key=_begin):
        if not groups or run.begin - stagger > reached + SLACK:
            groups.append([])
        groups[-1].append(run)
        reached = max(reached, run.end)
    return groups


def _begin(run: Run) -> float:
    return run.begin


def _place(cut: Cut) -> tuple[Rail, float]:
    return cut.run.rail, cut.run.begin


def _both_of(layer: Layer, runs: Sequence[Run]) -> tuple[Sequence[Cut], int]:
    """Lay one group of runs, each rail first in turn, and keep the better; with it, the field welds it needs at least."""
    left = [run for run in runs if run.rail == "left"]
    right = [run for run in runs if run.rail == "right"]
    alone = layer.lay(left, _ends(right)), layer.lay(right, _ends(left))
    least = [_rank(cuts, layer.string) for cuts in alone]
    bound = sum(pieces for pieces, _ in least) - len(runs)
    if layer.stagger <= 0.0 or not left or not right:
        return [*alone[0], *alone[1]], bound
    rails = left, right
    found: list[list[Cut]] = []
    # rails laid from opposite ends mostly stand clear of each other as they are, rails laid from the same end hardly ever do
    for first, backward in ((0, True), (1, True), (0, False), (1, False)):
        second = 1 - first
        leader = layer.lay(rails[first], _ends(rails[second]), backward=True) if backward else alone[first]
        taken = [place for cut in leader for place in cut.places]
        with suppress(RefusedError):
            follower = layer.lay(rails[second], taken)
            found.append([*leader, *follower])
            if _rank(follower, layer.string) == least[second]:
                break  # both rails have the least that either can have
    if not found:
        reason = "no layout found that holds the stagger beside the keep-outs"
        raise refuse("stagger", reason=reason, value=layer.stagger)
    ranks = [_rank(cuts, layer.string) for cuts in found]
    best = [cuts for cuts, rank in zip(found, ranks, strict=True) if rank == min(ranks)]
    if len(best) == 1:
        return best[0], bound
    return min(best, key=layer.strings), bound


def _ends(runs: Sequence[Run]) -> list[float]:
    return [place for run in runs for place in (run.begin, run.end)]


def short_pieces(cuts: Sequence[Cut], string: float) -> list[float]:
    """Return the lengths of the pieces that are not whole strings."""
    whole = string - WHOLE
    return [steel for cut in cuts for steel in cut.steel if steel < whole]


def _rank(cuts: Sequence[Cut], string: float) -> tuple[int, int]:
    """Return the number of pieces and how many of them are cut."""
    return sum(len(cut.steel) for cut in cuts), len(short_pieces(cuts, string))


def wanted(cuts: Sequence[Cut], string: float) -> list[Wanted]:
    """Return the pieces of some runs in the order of their begins, left rail first."""
    uncut = string - WHOLE
    found: list[Wanted] = []
    for cut in cuts:
        places, last = cut.places, len(cut.steel) - 1
        for index, steel in enumerate(cut.steel):
            whole = steel >= uncut
            length = string if whole else steel
            found.append(Wanted(places[index], cut.run.rail, places[index + 1], length, whole, not whole and index == last))
    found.sort()
    return found


def closings_of(runs: Sequence[Run]) -> list[Closed]:
    """Return what closes the runs, a place that two runs share once."""
    closings: list[Closed] = []
    for run in runs:
        for place, kind in zip((run.begin, run.end), run.closings, strict=True):
            last = closings[-1] if closings else None
            if last is None or last.rail != run.rail or place > last.station + SLACK:
                closings.append(Closed(place, run.rail, kind))
    return closings
