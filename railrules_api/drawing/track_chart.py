"""The track chart of a relay job: curves, objects, old and new rail, welds, anchors and trains along the line, sheet by sheet."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final, NamedTuple

from railrules_api.domain.errors import refuse
from railrules_api.drawing import track_bands as bands
from railrules_api.drawing.marks import line, text
from railrules_api.drawing.sheet import LEFT, RIGHT, Head, Scale, document, fitted, legend, rect
from railrules_api.drawing.stations import axis, big_unit, station_text
from railrules_api.rules.takeoff.parts import rails_of
from railrules_api.rules.takeoff.rail import groups_of

if TYPE_CHECKING:
    from collections.abc import Sequence

    from railrules_api.drawing.sheet import Swatch
    from railrules_api.rules.takeoff.job import Job
    from railrules_api.rules.takeoff.result import TakeoffResult
    from railrules_api.units import System

LONGEST: Final = {"us": 3.0, "si": 5.0}
"""The most line on one sheet, in miles or kilometres: strings of a quarter mile are then long enough to hold their number."""


class Sheet(NamedTuple):
    """The part of a line that one sheet shows [m]."""

    track: str
    begin: float
    end: float


def sheets_of(job: Job, system: System) -> list[Sheet]:
    """Cut each track of a job into sheets of equal length, whole tenths of a mile or kilometre long."""
    big, _ = big_unit(system)
    found: list[Sheet] = []
    for track in dict.fromkeys(segment.track or "" for segment in job.segments):
        mine = [segment for segment in job.segments if (segment.track or "") == track]
        low = math.floor(min(segment.begin for segment in mine) / big * 10 + 1e-6) / 10
        high = max(segment.end for segment in mine) / big
        count = max(1, math.ceil((high - low) / LONGEST[system] - 1e-6))
        each = max(0.1, math.ceil((high - low) / count * 10 - 1e-6) / 10)
        found += [Sheet(track, (low + each * index) * big, (low + each * (index + 1)) * big) for index in range(count)]
    return found


def draw(job: Job, result: TakeoffResult, system: System, sheet: int = 1) -> str:
    """Draw one sheet of the track chart.

    Args:
        job: the job.
        result: its takeoff.
        system: units of the labels.
        sheet: number of the sheet, from 1.

    Raises:
        RefusedError: there is no such sheet.
    """
    sheets = sheets_of(job, system)
    if not 1 <= sheet <= len(sheets):
        raise refuse("sheet", reason="the chart has no such sheet", value=sheet, minimum=1, maximum=len(sheets))
    shown = sheets[sheet - 1]
    window = bands.Window(Scale(shown.begin, shown.end, LEFT, RIGHT - 2), system)
    pairs = [
        (segment, summary)
        for segment, summary in zip(job.segments, result.segments, strict=True)
        if (segment.track or "") == shown.track
    ]
    segments = [segment for segment, _ in pairs]
    plans = [(group, plan) for group, plan in zip(groups_of(job), result.rail, strict=True) if group.section.track == shown.track]
    parts = axis(window.scale, system, bands.AXIS, 19.0)
    parts += bands.curvature(window, [curve for segment in segments for curve in segment.curves])
    parts += bands.objects(window, [feature for segment in segments for feature in segment.features])
    parts += _lane_names([plan.of for _, plan in plans])
    for group, plan in plans:
        parts += bands.new_rail(window, plan.layout, group.runs)
    parts += bands.anchors(window, pairs)
    parts += bands.old_rail(window, segments, {segment.name: rails_of(segment) for segment in segments})
    parts += bands.segments(window, pairs)
    parts += bands.trains(window, [plan for _, plan in plans])
    parts += legend(164.0, _legend(), columns=5)
    track = f"{shown.track}, " if shown.track else ""
    limits = f"{station_text(shown.begin, system)} to {station_text(shown.end, system)}"
    head = Head(
        name=job.name,
        title=f"Track chart, {track}{limits}, rising stations to the right",
        right=f"Sheet {sheet} of {len(sheets)}",
        right_below="stations of welds are those of their middles",
        foot="Drawn from the takeoff's own stations. It does not replace the railroad's own standards and track charts.",
        about=f"Curves, objects, old and new rail, field welds, anchors and rail trains from {limits}.",
    )
    return document(head, parts, data=f' data-sheet="{sheet}" data-sheets="{len(sheets)}"')


def _lane_names(sections: Sequence[str]) -> list[str]:
    names = [text(6, bands.LANES["left"] + 8.8 + 3.0 * row, fitted(name, 2.15, 14), "small") for row, name in enumerate(sections)]
    return [
        *names,
        text(6, bands.LANES["left"] + 2.2, "New rail", "head"),
        text(21, bands.LANES["left"] + 3.4, "L", "head", "end"),
        text(21, bands.LANES["right"] + 3.4, "R", "head", "end"),
        text(6, bands.LANES["left"] + 5.4, "by string", "small"),
    ]


def _legend() -> list[Swatch]:
    def area(style: str) -> Swatch:
        return "", lambda x, y: rect(x, y - 1.6, 7, 3.2, style)

    return [
        ("whole string, with its number", area("rail2")[1]),
        ("part of a string", area("cut")[1]),
        ("old rail", area("old")[1]),
        ("rail that stays", lambda x, y: line(x, y, x + 7, y, "rule")),
        ("rail train, from where to where", area("pale")[1]),
        ("field weld between pieces", lambda x, y: bands.weld_mark("junction", x + 3.5, y)),
        ("field weld that closes a run", lambda x, y: bands.weld_mark("weld", x + 3.5, y)),
        ("weld between two sections", lambda x, y: bands.weld_mark("compromise-weld", x + 3.5, y)),
        ("joint that closes a run", lambda x, y: bands.joint_mark(x + 3.5, y)),
        ("temporary closure, end of a block", lambda x, y: bands.flag_mark(x + 3, y + 1.7, -1)),
        ("anchors as on plain track", area("plain")[1]),
        ("every tie boxed", area("dense")[1]),
        ("no anchors", area("none")[1]),
        ("object keeps its own rail", lambda x, y: "".join(bands.object_shape("keeps", x + 1, x + 6, y))),
        ("rail goes through", lambda x, y: "".join(bands.object_shape("through", x + 1, x + 6, y))),
        ("rail goes through, no anchors", lambda x, y: "".join(bands.object_shape("bare", x + 1, x + 6, y))),
        ("strings end here", lambda x, y: "".join(bands.object_shape("ends", x + 3.5, x + 3.5, y))),
        ("object at one station", lambda x, y: "".join(bands.object_shape("point", x + 3.5, x + 3.5, y))),
    ]
