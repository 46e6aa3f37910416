"""The bands of a track chart: each draws what lies on one sheet's length of line, at its own height."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final, NamedTuple

from railrules_api.domain.kinds import Kind
from railrules_api.domain.track import radius_of
from railrules_api.drawing.marks import line, number, text
from railrules_api.drawing.sheet import fitted, path, rect, shown, text_width, unit_of, upright
from railrules_api.drawing.stations import station_text

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from railrules_api.domain.strings import RailRun
    from railrules_api.domain.track import Curve
    from railrules_api.drawing.sheet import Scale
    from railrules_api.rules.quantities.string_layout import PlacedWeld, StringLayoutResult
    from railrules_api.rules.takeoff.job import JobFeature, Segment
    from railrules_api.rules.takeoff.result import RailPlan, SegmentSummary
    from railrules_api.units import System

CURVES: Final = 30.0
OBJECTS: Final = 53.0
LANES: Final = {"left": 71.0, "right": 80.0}
LANE: Final = 5.0
ANCHORS: Final = 104.5
OLD: Final = {"left": 115.5, "right": 119.7}
SEGMENTS: Final = 127.0
TRAINS: Final = 136.5
AXIS: Final = 153.5
_MOST_LABELS: Final = 100
_LABEL_PITCH: Final = 2.3
JOINTS: Final = ("joint", "insulated-joint", "compromise-joint")


class Window(NamedTuple):
    """The length of line on a sheet, and how it is drawn."""

    scale: Scale
    system: System

    def span(self, begin: float, end: float) -> tuple[float, float] | None:
        """Return where a part of the line begins and ends on the sheet; None where nothing of it lies there."""
        low, high = max(begin, self.scale.low), min(end, self.scale.high)
        return (self.scale.at(low), self.scale.at(high)) if high > low else None


def _each(words: str, x: float, y: float) -> list[str]:
    return [text(x, y, words, "head")]


def curvature(window: Window, curves: Iterable[Curve]) -> list[str]:
    """Draw the curves: a hill on the side the line turns to, as high as the curve is sharp."""
    parts = [*_each("Curves", 6, CURVES - 1.2), text(6, CURVES + 2.2, "left above", "small")]
    parts.append(line(window.scale.start, CURVES, window.scale.stop, CURVES, "rule"))
    found = list(curves)
    sharpest = max((1 / radius_of(curve) for curve in found), default=1.0)
    for curve in found:
        place = window.span(curve.begin, curve.end)
        if place is None:
            continue
        radius = radius_of(curve)
        side = -1.0 if curve.hand == "left" else 1.0
        top = CURVES + side * (2.6 + 4.6 / radius / sharpest)
        begin, end = place
        slope = min(1.2, (end - begin) / 3)
        parts.append(path(((begin, CURVES), (begin + slope, top), (end - slope, top), (end, CURVES)), "mid", closed=True))
        parts.append(path(((begin, CURVES), (begin + slope, top), (end - slope, top), (end, CURVES)), "stroke"))
        degrees = f"{math.degrees(2 * math.asin(min(1.0, 15.24 / radius))):.2f}° {curve.hand}"
        bend = f"R {shown(radius, Kind.LENGTH, unit_of(window.system, 'ft', 'm'), 0)}"
        words = f"{degrees}, {bend}" if window.system == "us" else f"{bend} {curve.hand}"
        middle = min(max((begin + end) / 2, begin + 2), end + 20)
        parts.append(text(middle, top + (-1.1 if side < 0 else 2.9), words, "cell", "middle"))
    return parts


def object_mark(feature: JobFeature) -> str:
    """Tell which of the marks stands for an object, by what it asks of the relay."""
    if feature.end is None:
        return "ends" if feature.rule.breaks_string else "point"
    if not feature.rule.rail_through:
        return "keeps"
    return "bare" if feature.rule.within == "none" else "through"


def object_shape(kind: str, begin: float, end: float, y: float) -> list[str]:
    """Return the mark of an object between two places on a line at height y."""
    middle = (begin + end) / 2
    begin, end = min(begin, middle - 0.9), max(end, middle + 0.9)
    if kind == "ends":
        return [
            path(((middle, y - 2), (middle, y + 2)), "stroke"),
            f'<circle class="void" cx="{number(middle)}" cy="{number(y)}" r="1"/>',
        ]
    if kind == "keeps":
        return [rect(begin, y - 1.5, end - begin, 3, "void"), path(((begin, y + 1.5), (end, y - 1.5)), "stroke")]
    if kind == "bare":
        return [path(((begin, y + 1.6), (begin, y - 1.6), (end, y - 1.6), (end, y + 1.6)), "stroke")]
    if kind == "through":
        return [rect(begin, y - 1.5, end - begin, 3, "ink")]
    return [path(((middle, y - 1.6), (middle + 1.2, y + 1.2), (middle - 1.2, y + 1.2)), "ink", closed=True)]


def objects(window: Window, features: Sequence[JobFeature]) -> list[str]:
    """Draw the fixed objects with their names, a drop line through all bands."""
    parts = _each("Objects", 6, OBJECTS + 0.9)
    parts.append(line(window.scale.start, OBJECTS, window.scale.stop, OBJECTS, "thin"))
    rows = [window.scale.start - 20.0] * 3
    for feature in sorted(features, key=lambda one: one.begin):
        end = feature.begin if feature.end is None else feature.end
        if end < window.scale.low or feature.begin > window.scale.high:
            continue
        low, high = window.scale.at(max(feature.begin, window.scale.low)), window.scale.at(min(end, window.scale.high))
        for x in {low, high}:
            parts.append(line(x, OBJECTS + 2, x, AXIS, "drop"))
        parts += object_shape(object_mark(feature), low, high, OBJECTS)
        words = f"{feature.name or feature.kind}, {station_text(feature.begin, window.system)}"
        half = text_width(words, 2.5) / 2
        middle = min(max((low + high) / 2, window.scale.start + half - 14), window.scale.stop - half)
        row = next((index for index, reached in enumerate(rows) if middle - half > reached + 1), None)
        if row is not None:
            rows[row] = middle + half
            parts.append(text(middle, OBJECTS - 2.9 - 3.1 * row, words, "cell", "middle"))
    return parts


def _weld_mark(kind: str, x: float, y: float) -> str:
    size = 1.35
    corners = ((x, y - size), (x + size, y), (x, y + size), (x - size, y))
    if kind == "junction":
        return path(corners, "ink", closed=True)
    if kind == "weld":
        return path(corners, "void", closed=True)
    return path(corners, "void", closed=True) + path(((x, y - size), (x + size, y), (x, y + size)), "ink", closed=True)


def weld_mark(kind: str, x: float, y: float) -> str:
    """Return the mark of a field weld: filled between pieces, open at a closing, half filled between sections."""
    return f'<g data-mark="{kind}">{_weld_mark(kind, x, y)}</g>'


def joint_mark(x: float, y: float) -> str:
    """Return the mark of a joint that closes a run."""
    return line(x - 0.45, y - 2, x - 0.45, y + 2, "stroke") + line(x + 0.45, y - 2, x + 0.45, y + 2, "stroke")


def flag_mark(x: float, y: float, side: int) -> str:
    """Return the mark of a temporary closure, a pennant that stands on the rail."""
    return line(x, y, x, y + 3.4 * side, "stroke") + path(
        ((x, y + 3.4 * side), (x + 2.2, y + 2.6 * side), (x, y + 1.8 * side)), "warm", closed=True
    )


def _labels(window: Window, rail: str, welds: Sequence[PlacedWeld]) -> list[str]:
    """Write the station of each weld of a rail, moved aside where two stand too near to be read."""
    here = [weld for weld in welds if weld.rail == rail and window.scale.holds(weld.station)]
    if len(here) > _MOST_LABELS:
        return []
    y = LANES[rail]
    reached = -math.inf
    parts = []
    for weld in sorted(here, key=lambda one: one.station):
        x = window.scale.at(weld.station)
        at = max(x, reached + _LABEL_PITCH)
        reached = at
        words = station_text(weld.station, window.system)
        if rail == "left":
            parts += [path(((x, y + 1.2), (x, y - 0.4), (at, y - 1.6)), "thin"), upright(at + 0.75, y - 2, words, "small halo")]
        else:
            low = y + LANE
            parts += [
                path(((x, low - 1.2), (x, low + 0.4), (at, low + 1.6)), "thin"),
                upright(at + 0.75, low + 2, words, "small halo", "end"),
            ]
    return parts


def new_rail(window: Window, layout: StringLayoutResult, runs: Iterable[RailRun]) -> list[str]:
    """Draw the pieces of new rail on both rails, their numbers, field welds and temporary closures, each at its station."""
    parts: list[str] = []
    turn = dict.fromkeys(LANES, 0)
    for piece in sorted(layout.pieces, key=lambda one: one.begin):
        place = window.span(piece.begin, piece.end)
        if place is None:
            continue
        y, (begin, end) = LANES[piece.rail], place
        turn[piece.rail] += 1
        style = "cut" if not piece.whole else "rail2" if turn[piece.rail] % 2 else "rail"
        parts.append(rect(begin, y + 0.6, end - begin, LANE - 1.2, style))
        words = fitted(f"{piece.string}", 2.5, end - begin - 3)
        if words:
            parts.append(text((begin + end) / 2, y + 3.4, words, "cell halo", "middle"))
    for run in runs:
        for station, closing in ((run.begin, run.begin_closing), (run.end, run.end_closing)):
            if closing in JOINTS and window.scale.holds(station):
                parts.append(joint_mark(window.scale.at(station), LANES[run.rail] + LANE / 2))
    for closure in layout.block_closures:
        if window.scale.holds(closure.station):
            lane = LANES[closure.rail]
            side, foot = (1, lane + LANE - 0.6) if closure.rail == "left" else (-1, lane + 0.6)
            parts.append(flag_mark(window.scale.at(closure.station), foot, side))
    parts += [
        weld_mark(weld.kind, window.scale.at(weld.station), LANES[weld.rail] + LANE / 2)
        for weld in layout.welds
        if window.scale.holds(weld.station)
    ]
    return [*parts, *_labels(window, "left", layout.welds), *_labels(window, "right", layout.welds)]


def anchors(window: Window, pairs: Iterable[tuple[Segment, SegmentSummary]]) -> list[str]:
    """Draw how the ties are anchored: plain track, zones where it is otherwise."""
    parts = [*_each("Anchors", 6, ANCHORS + 3.4)]
    for segment, summary in pairs:
        place = window.span(segment.begin, segment.end)
        if place is None:
            continue
        bare = bool(segment.new.elastic_fasteners) or (
            segment.new.anchors.boxed_every is None and segment.new.anchors.per_rail is None
        )
        parts.append(rect(place[0], ANCHORS + 1, place[1] - place[0], 3, "none" if bare else "plain"))
        for zone in summary.zones:
            spot = window.span(zone.begin, zone.end)
            if spot is None:
                continue
            x, width = spot[0], max(spot[1] - spot[0], 0.8)
            every = zone.boxed_every == 1
            style = "dense" if every else "none" if zone.anchoring == "none" else "plain"
            parts += [rect(x, ANCHORS, width, 5, "paper"), rect(x, ANCHORS, width, 5, style)]
    return parts


def old_rail(window: Window, segments: Iterable[Segment], renewed: dict[str, tuple[str, ...]]) -> list[str]:
    """Draw the rail that comes out, and a thin line where a rail stays."""
    parts = _each("Old rail", 6, OLD["left"] + 4)
    for segment in segments:
        place = window.span(segment.begin, segment.end)
        if place is None:
            continue
        begin, end = place
        for rail, y in OLD.items():
            if rail in renewed[segment.name]:
                parts.append(rect(begin, y, end - begin, 3, "old"))
            else:
                parts.append(line(begin, y + 1.5, end, y + 1.5, "rule"))
        old = segment.old
        length = shown(old.rail_length, Kind.LENGTH, unit_of(window.system, "ft", "m")) if old.rail_length else ""
        words = f"{old.section_id or 'old rail'}, {length + ' rails' if length else 'no joints'}"
        words = fitted(words, 2.5, end - begin - 3)
        if words:
            parts += [rect(begin + 1, OLD["left"] + 2, text_width(words, 2.5) + 1, 3.3, "paper", 0.6)]
            parts.append(text(begin + 1.5, OLD["left"] + 4.5, words, "cell"))
    return parts


def segments(window: Window, pairs: Iterable[tuple[Segment, SegmentSummary]]) -> list[str]:
    """Draw the segments with their ties."""
    parts = _each("Segments", 6, SEGMENTS + 3.4)
    for segment, summary in pairs:
        place = window.span(segment.begin, segment.end)
        if place is None:
            continue
        begin, end = place
        parts.append(rect(begin, SEGMENTS, end - begin, 5, "void"))
        spacing = shown(summary.spacing, Kind.LENGTH, unit_of(window.system, "in", "mm"))
        words = f"{segment.name}: {summary.ties:,} ties at {spacing}, {summary.anchors:,} anchors"
        parts.append(text(begin + 1.5, SEGMENTS + 3.4, fitted(words, 2.5, end - begin - 2), "cell"))
    return parts


def trains(window: Window, plans: Iterable[RailPlan]) -> list[str]:
    """Draw from where to where the strings of each train lie."""
    parts = _each("Rail trains", 6, TRAINS + 6)
    reached = [-math.inf, -math.inf]
    for plan in plans:
        for load in plan.trains.loads:
            mine = [piece for piece in plan.layout.pieces if load.first_string <= piece.string <= load.last_string]
            place = window.span(min(p.begin for p in mine), max(p.end for p in mine)) if mine else None
            if place is None:
                continue
            begin, end = place
            row = 0 if begin >= reached[0] else 1
            reached[row] = max(reached[row], end)
            y = TRAINS + 6.0 * row
            parts.append(rect(begin, y, end - begin, 4.8, "pale"))
            parts += [path(((begin, y), (begin, y + 4.8)), "stroke"), path(((end, y), (end, y + 4.8)), "stroke")]
            mass = shown(load.mass, Kind.MASS, unit_of(window.system, "short_ton", "t"), 0)
            strings = f"strings {load.first_string} to {load.last_string}"
            words = f"Train {load.train}: {strings}, {mass}, drawn off {load.unloadings} times"
            parts.append(text(begin + 1.5, y + 3.3, fitted(words, 2.5, end - begin - 2), "cell"))
    return parts
