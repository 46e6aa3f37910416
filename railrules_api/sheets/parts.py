"""A segment cut into parts whose ties are all treated alike, so that a workbook can count each part by its tie spacing."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING, Any

from railrules_api.domain.anchoring import anchored_runs
from railrules_api.domain.counting import first_tie_from, multiples_between
from railrules_api.domain.track import radius_of, spacing_of, worked_spans
from railrules_api.rules.quantities import anchors, plate_pins, spikes, ties

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from railrules_api.domain.anchoring import Run
    from railrules_api.domain.track import Stretch


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """Ties in a row that are treated alike.

    Attributes:
        begin: station [m].
        end: station [m].
        first: number of the first tie.
        beyond: number of the first tie that belongs to it no more.
        boxed_every: every n-th tie is boxed; None where none is.
        pinned_every: the plates of every n-th tie are pinned; None where none are.
        spikes: spikes driven at one rail of each tie.
    """

    begin: float
    end: float
    first: int
    beyond: int
    boxed_every: int | None
    pinned_every: int | None
    spikes: int

    @property
    def ties(self) -> int:
        """Ties in it."""
        return self.beyond - self.first

    def every(self, number: int | None) -> int:
        """Return how many of its ties have a number that is a multiple; none where there is no such rule."""
        return 0 if number is None else multiples_between(self.first, self.beyond, number)


def runs_of(given: Mapping[str, Any]) -> tuple[Run, ...]:
    """Return the runs of ties that are anchored alike, from what was asked of a segment, by rule."""
    held: anchors.AnchorsInput = given[anchors.RULE.id]
    return anchored_runs(held.stretch, held.pattern, held.zones, forbidden=bool(held.elastic_fasteners))


def _spikes_each(driven: spikes.SpikesInput, radius: float | None) -> int:
    if driven.tie_kind != "wood":
        return 0
    band = driven.pattern.bands[spikes.band_of(driven.pattern, radius, driven.track_class)]
    return band.rail_spikes + band.plate_spikes


def parts_of(given: Mapping[str, Any]) -> Iterator[Part]:
    """Yield a segment cut wherever work stops, or curvature or anchoring changes, from what was asked of it, by rule."""
    stretch: Stretch = given[ties.RULE.id].stretch
    driven: spikes.SpikesInput = given[spikes.RULE.id]
    pinned: plate_pins.PlatePinsInput | None = given.get(plate_pins.RULE.id)
    every = pinned.every if pinned is not None and pinned.tie_kind == "wood" else None
    runs = runs_of(given)
    limits = [(run.begin, run.end) for run in runs] + [(curve.begin, curve.end) for curve in stretch.curves]
    cuts = {station for both in limits for station in both}
    origin, spacing = stretch.ties.origin, spacing_of(stretch.ties)
    for span in worked_spans(stretch):
        stations = sorted({span.begin, span.end, *(cut for cut in cuts if span.begin < cut < span.end)})
        for begin, end in pairwise(stations):
            middle = (begin + end) / 2
            run = next((run for run in runs if run.begin <= middle < run.end), None)
            curve = next((curve for curve in stretch.curves if curve.begin <= middle < curve.end), None)
            yield Part(
                begin=begin,
                end=end,
                first=first_tie_from(begin, origin=origin, spacing=spacing),
                beyond=first_tie_from(end, origin=origin, spacing=spacing),
                boxed_every=None if run is None else run.boxed_every,
                pinned_every=every,
                spikes=_spikes_each(driven, None if curve is None else radius_of(curve)),
            )
