"""Anchors and spikes on a panel of ties seen from above: which ties carry anchors, how the plates are spiked."""

from __future__ import annotations

import dataclasses
from itertools import pairwise
from typing import TYPE_CHECKING, Final, NamedTuple

from railrules_api.domain.anchoring import AnchorZone, Run, anchored_runs
from railrules_api.domain.counting import first_tie_from
from railrules_api.domain.errors import refuse
from railrules_api.domain.kinds import Kind
from railrules_api.domain.track import Stretch, spacing_of, tie_ranges
from railrules_api.drawing import plate_detail
from railrules_api.drawing.marks import arrow, line, text
from railrules_api.drawing.sheet import RIGHT, Head, document, legend, rect, shown, unit_of
from railrules_api.drawing.stations import station_text
from railrules_api.rules.quantities.spikes import band_of
from railrules_api.rules.takeoff.parts import stretch_of, zones_of

if TYPE_CHECKING:
    from collections.abc import Sequence

    from railrules_api.domain.patterns import AnchorPattern, SpikePattern
    from railrules_api.drawing.sheet import Swatch
    from railrules_api.rules.quantities.anchors import AnchorsInput, AnchorsResult
    from railrules_api.rules.quantities.spikes import SpikesInput, SpikesResult
    from railrules_api.rules.takeoff.job import Job
    from railrules_api.rules.takeoff.result import TakeoffResult
    from railrules_api.units import System

TIES: Final = 24
"""Ties in a panel: a rail length of 39 ft holds as many at usual spacings."""
_LEFT: Final = 10.0
_STEP: Final = (RIGHT - 2 - _LEFT) / TIES
_RAILS: Final = {"left": 8.0, "right": 27.0}
_NO_SPIKES: Final = "no spikes: the ties are not of wood"


class Panel(NamedTuple):
    """What a panel is drawn from."""

    stretch: Stretch
    pattern: AnchorPattern | None
    zones: tuple[AnchorZone, ...]
    elastic: bool
    spikes: SpikePattern | None
    track_class: int | None = None


class Strip(NamedTuple):
    """Consecutive ties that are drawn, and why these."""

    first: int
    title: str


def _renewed(stretch: Stretch) -> tuple[str, ...]:
    if stretch.rails == "both":
        return ("left", "right")
    if stretch.rails in ("left", "right"):
        return (stretch.rails,)
    outer, inner = ("left", "right") if stretch.curves[0].hand == "right" else ("right", "left")
    return (outer,) if stretch.rails == "high" else (inner,)


def _runs(panel: Panel) -> tuple[Run, ...]:
    if panel.pattern is None:
        return ()
    return anchored_runs(panel.stretch, panel.pattern, panel.zones, forbidden=panel.elastic)


def _anchors_at(panel: Panel, tie: int) -> tuple[int, int]:
    """Return the anchors of one rail at a tie, in the main direction and the other way, by the rule that counts them."""
    if panel.pattern is None:
        return 0, 0
    spacing = spacing_of(panel.stretch.ties)
    place = panel.stretch.ties.origin + tie * spacing
    alone = dataclasses.replace(
        panel.stretch, begin=place - spacing / 4, end=place + spacing / 4, rails="both", curves=(), left_out=()
    )
    runs = anchored_runs(alone, panel.pattern, panel.zones, forbidden=panel.elastic)
    return sum(run.held.forward for run in runs), sum(run.held.back_up for run in runs)


def strips_of(panel: Panel, most: int) -> list[Strip]:
    """Choose what is shown: plain track first, then the limits of zones, each with its ties in the middle."""
    spacing, origin = spacing_of(panel.stretch.ties), panel.stretch.ties.origin
    runs = _runs(panel)
    at = runs[0].begin if runs else panel.stretch.begin
    plain = next((run for run in runs if not run.in_zone and run.ties >= TIES), None)
    if plain is not None:
        at = plain.begin
    first = first_tie_from(at, origin=origin, spacing=spacing)
    strips = [Strip(first, "Plain track" if plain is not None or not runs else "From the begin")]
    for before, after in pairwise(runs):
        if len(strips) == most:
            break
        if after.begin - before.end < spacing and (before.in_zone or after.in_zone):
            edge = first_tie_from(after.begin, origin=origin, spacing=spacing)
            zone = after if after.in_zone else before
            reason = ", ".join(zone.reasons) or "zone"
            strips.append(Strip(edge - TIES // 2, f"Limit of the zone: {reason}"))
    return strips


def _band_at(panel: Panel, tie: int) -> int | None:
    """Return the band of the spike pattern that a tie falls in; None where the tie is not in the work."""
    if panel.spikes is None:
        return None
    found = next((part for part in tie_ranges(panel.stretch) if part.first <= tie < part.beyond), None)
    return None if found is None else band_of(panel.spikes, found.radius, panel.track_class)


def _strip(panel: Panel, strip: Strip, top: float, system: System) -> list[str]:
    spacing, origin = spacing_of(panel.stretch.ties), panel.stretch.ties.origin
    place = station_text(origin + strip.first * spacing, system)
    parts = [
        text(6, top - 3.2, strip.title, "head"),
        text(RIGHT, top - 3.2, f"first tie number {strip.first:,} at {place}", "cell", "end"),
    ]
    renewed = _renewed(panel.stretch)
    xs = [_LEFT + _STEP * (index + 0.5) for index in range(TIES)]
    in_work = [
        any(part.first <= strip.first + index < part.beyond for part in tie_ranges(panel.stretch)) for index in range(TIES)
    ]
    parts += [rect(x - 2.1, top, 4.2, 35, "tie" if work else "none", 0.5) for x, work in zip(xs, in_work, strict=True)]
    for rail, y in _RAILS.items():
        for index, x in enumerate(xs):
            band = _band_at(panel, strip.first + index)
            if panel.spikes is not None and band is not None and rail in renewed:
                parts += plate_detail.small(x - 2.6, top + y - 4.2, panel.spikes.bands[band], gage_below=rail == "left")
        if rail in renewed:
            parts.append(rect(_LEFT - 2, top + y - 1.1, RIGHT - _LEFT + 0.0, 2.2, "rail2"))
        else:
            parts += [line(_LEFT - 2, top + y - 1, RIGHT - 2, top + y - 1), line(_LEFT - 2, top + y + 1, RIGHT - 2, top + y + 1)]
        parts.append(text(5.4, top + y + 0.9, rail[0].upper(), "head"))
        for index, x in enumerate(xs):
            if rail not in renewed or not in_work[index]:
                continue
            forward, back = _anchors_at(panel, strip.first + index)
            # an anchor that holds rail in the main direction leans on the tie from behind
            parts += [plate_detail.tick(x - 2.1, top + y, -1.0)] * bool(forward)
            parts += [plate_detail.tick(x + 2.1, top + y, 1.0)] * bool(back)
    parts += [text(x, top + 38, f"{strip.first + index}", "small", "middle") for index, x in enumerate(xs) if index % 4 == 0]
    return parts


def _sheet(panel: Panel, head: Head, system: System, bands: Sequence[int] | None) -> str:
    """Put strips, plates and legend on the sheet."""
    with_plates = panel.spikes is not None and bands is not None
    parts: list[str] = []
    strips = strips_of(panel, 2 if with_plates else 3)
    for index, strip in enumerate(strips):
        parts += _strip(panel, strip, 27.0 + 46.0 * index, system)
    if panel.spikes is not None and bands is not None:
        parts += plate_detail.details(panel.spikes.bands, bands, 25.0 + 46.0 * len(strips), system)
    parts += [
        text(RIGHT - 22, 171.0, "main direction", "cell", "end"),
        line(RIGHT - 20, 170.2, RIGHT, 170.2, "rule"),
        arrow(RIGHT, 170.2, 0.0),
    ]
    return document(head, [*parts, *legend(166.0, _legend(panel), columns=4)])


def _legend(panel: Panel) -> list[Swatch]:
    swatches: list[Swatch] = [("tie in the work", lambda x, y: rect(x + 2, y - 1.8, 3, 3.6, "tie"))]
    if panel.pattern is not None:
        swatches.append(("anchor, leaning on its tie", lambda x, y: plate_detail.tick(x + 3, y, 1.0)))
    if panel.spikes is not None:
        swatches += [
            ("spike that holds the rail", lambda x, y: plate_detail.spike(x + 3.5, y, 2.2, holds_rail=True)),
            ("spike that holds the plate only", lambda x, y: plate_detail.spike(x + 3.5, y, 2.2, holds_rail=False)),
        ]
    return [*swatches, ("renewed rail", lambda x, y: rect(x, y - 1.1, 7, 2.2, "rail2"))]


def _head(name: str, title: str, right: str, below: str) -> Head:
    return Head(
        name=name,
        title=title,
        right=right,
        right_below=below,
        foot="Counts are the rule's. Where spikes stand in a plate is shown as an example; the railroad's own standard decides.",
        about="Ties seen from above with anchors and spikes.",
    )


def _spaced(stretch: Stretch, system: System) -> str:
    return f"ties at {shown(spacing_of(stretch.ties), Kind.LENGTH, unit_of(system, 'in', 'mm'), 2)}"


def draw_anchors(given: AnchorsInput, found: AnchorsResult, system: System) -> str:
    """Draw the anchors of a stretch: plain track and the limits of its zones."""
    panel = Panel(given.stretch, given.pattern, given.zones, bool(given.elastic_fasteners), None)
    title = f"{_spaced(given.stretch, system)}, rails renewed: {given.stretch.rails}"
    head = _head("Anchor pattern", title, f"{found.anchors:,} anchors", f"on {found.anchored_ties:,} of {found.ties:,} ties")
    return _sheet(panel, head, system, None)


def draw_spikes(given: SpikesInput, found: SpikesResult, system: System) -> str:
    """Draw the spikes of a stretch: a panel of its ties, and one plate for each band of the pattern."""
    on_wood = given.tie_kind == "wood"
    panel = Panel(
        given.stretch, None, (), elastic=False, spikes=given.pattern if on_wood else None, track_class=given.track_class
    )
    title = f"{_spaced(given.stretch, system)}, rails renewed: {given.stretch.rails}"
    below = _NO_SPIKES if panel.spikes is None else f"{found.rail_spikes:,} hold the rail, {found.plate_spikes:,} the plate only"
    head = _head("Spike pattern", title, f"{found.spikes:,.0f} spikes", below)
    return _sheet(panel, head, system, [band.ties for band in found.bands])


def draw_segment(job: Job, result: TakeoffResult, system: System, sheet: int = 1) -> str:
    """Draw anchors and spikes of one segment of a job.

    Args:
        job: the job.
        result: its takeoff.
        system: units of the labels.
        sheet: number of the segment, from 1.

    Raises:
        RefusedError: there is no such segment.
    """
    if not 1 <= sheet <= len(job.segments):
        raise refuse("sheet", reason="the job has no such segment", value=sheet, minimum=1, maximum=len(job.segments))
    segment, summary = job.segments[sheet - 1], result.segments[sheet - 1]
    zones = zones_of(job).get(segment.track or "", [])
    near = tuple(zone for zone in zones if zone.begin < segment.end and zone.end > segment.begin)
    on_wood = segment.tie_kind == "wood"
    stretch = stretch_of(segment)
    spikes = segment.new.spikes if on_wood else None
    panel = Panel(stretch, segment.new.anchors, near, bool(segment.new.elastic_fasteners), spikes, segment.track_class)
    bands = None
    if spikes is not None:
        bands = [0] * len(spikes.bands)
        for part in tie_ranges(stretch):
            bands[band_of(spikes, part.radius, segment.track_class)] += part.count
    head = _head(
        f"Tie panel: {segment.name}",
        f"{job.name}; {_spaced(stretch, system)}, rails renewed: {segment.rails}",
        f"Segment {sheet} of {len(job.segments)}",
        f"{summary.ties:,} ties, {summary.anchors:,} anchors" + ("" if on_wood else f"; {_NO_SPIKES}"),
    )
    return _sheet(panel, head, system, bands)
