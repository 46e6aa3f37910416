"""One tie plate seen from above with its spikes: how many hold the rail, how many hold the plate only."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from railrules_api.domain.kinds import Kind
from railrules_api.drawing.marks import line, number, text
from railrules_api.drawing.sheet import path, rect, shown, unit_of

if TYPE_CHECKING:
    from collections.abc import Sequence

    from railrules_api.domain.patterns import SpikeBand
    from railrules_api.units import System


class Sides(NamedTuple):
    """Spikes of one plate by side and purpose."""

    rail_gage: int
    rail_field: int
    plate_gage: int
    plate_field: int


def sides_of(band: SpikeBand) -> Sides:
    """Share a band's spikes out between the sides: as the pattern counts them, else evenly, the gage side first."""
    rail, plate = band.rail_spikes, band.plate_spikes
    if band.gage_spikes is None:
        return Sides((rail + 1) // 2, rail // 2, plate // 2, (plate + 1) // 2)
    rail_gage = min((rail + 1) // 2, band.gage_spikes)
    plate_gage = min(plate, band.gage_spikes - rail_gage)
    rail_gage = min(rail, band.gage_spikes - plate_gage)
    return Sides(rail_gage, rail - rail_gage, plate_gage, plate - plate_gage)


def spike(x: float, y: float, size: float, *, holds_rail: bool) -> str:
    """Return the mark of a spike: filled where it holds the rail, open with a cross where it holds the plate only."""
    half = size / 2
    if holds_rail:
        return rect(x - half, y - half, size, size, "ink")
    cross = path(((x - half, y - half), (x + half, y + half)), "hatch") + path(
        ((x + half, y - half), (x - half, y + half)), "hatch"
    )
    return rect(x - half, y - half, size, size, "void") + cross


def _spread(count: int, low: float, high: float) -> list[float]:
    return [low + (high - low) * (2 * index + 1) / (2 * count) for index in range(count)]


def spikes(  # noqa: PLR0913, PLR0917  a plate and its spikes
    x: float, y: float, length: float, width: float, sides: Sides, size: float, *, gage_below: bool
) -> list[str]:
    """Return a plate's spikes; the rail runs level through its middle, the plate's length stands upright.

    Args:
        x: left edge of the plate.
        y: its upper edge.
        length: along the tie, upright on the sheet.
        width: along the rail.
        sides: spikes.
        size: of a spike.
        gage_below: the gage side is below the rail on the sheet.
    """
    middle = y + length / 2
    towards_gage = 1.0 if gage_below else -1.0
    parts: list[str] = []
    for count, side, share, holds_rail in (
        (sides.rail_gage, towards_gage, 0.22, True),
        (sides.rail_field, -towards_gage, 0.22, True),
        (sides.plate_gage, towards_gage, 0.39, False),
        (sides.plate_field, -towards_gage, 0.39, False),
    ):
        # opposite spikes stand at opposite ends, so that a row across the tie is not split
        places = _spread(count, x + 0.08 * width, x + 0.92 * width)
        shift = 0.1 * width * (1 if side > 0 else -1) if count == 1 else 0.0
        parts += [spike(place + shift, middle + side * share * length, size, holds_rail=holds_rail) for place in places]
    return parts


def details(bands: Sequence[SpikeBand], ties: Sequence[int], top: float, system: System) -> list[str]:
    """Draw one plate for each band of a pattern, side by side, with its limits, counts and ties."""
    parts: list[str] = []
    step = 244.0 / max(4, len(bands))
    for index, (band, count) in enumerate(zip(bands, ties, strict=True)):
        x = 8.0 + index * step
        parts += [
            rect(x, top, 19, 34, "plate", 1),
            rect(x - 2, top + 12, 23, 10, "pale"),
            rect(x - 2, top + 15.4, 23, 3.2, "rail2"),
        ]
        parts += [line(x - 2, top + 12, x + 21, top + 12, "rule"), line(x - 2, top + 22, x + 21, top + 22, "rule")]
        parts += spikes(x, top, 34, 19, sides_of(band), 2.4, gage_below=True)
        words = x + 24
        limit = band.at_least_radius
        radius = "" if limit is None else shown(limit, Kind.LENGTH, unit_of(system, "ft", "m"), 0)
        name = "sharper curves" if limit is None and index else "all track" if limit is None else f"R {radius} up"
        name = f"tangent, {name}" if index == 0 and limit is not None else name
        if band.class_from is not None or band.class_to is not None:
            name += f", class {band.class_from or 1} to {band.class_to}" if band.class_to else f", class {band.class_from} up"
        sides = "sides not told" if band.gage_spikes is None else f"{band.gage_spikes} on the gage side"
        parts += [
            text(words, top + 4, name, "head"),
            text(words, top + 9, f"{band.rail_spikes} hold the rail", "cell"),
            text(words, top + 13, f"{band.plate_spikes} hold the plate", "cell"),
            text(words, top + 17, sides, "small"),
            text(words, top + 21, f"{count:,} ties", "cell"),
            text(words, top + 32.5, "gage side", "small"),
        ]
    return parts


def small(x: float, y: float, band: SpikeBand, *, gage_below: bool) -> list[str]:
    """Draw a plate in a panel, with its spikes as small squares."""
    return [rect(x, y, 5.2, 8.4, "plate"), *spikes(x, y, 8.4, 5.2, sides_of(band), 0.85, gage_below=gage_below)]


def tick(x: float, y: float, side: float) -> str:
    """Return the mark of an anchor beside a tie: a wedge that leans on it, its point away from the tie.

    `side` is -1 on the side of falling stations and 1 on that of rising ones.
    """
    corners = ((x, y - 1.3), (x + 1.5 * side, y), (x, y + 1.3))
    return f'<g data-mark="anchor" data-x="{number(x)}">{path(corners, "ink", closed=True)}</g>'
