"""The laying-adjustment chart: what the free end and the marks must move at each rail temperature."""

from __future__ import annotations

from fractions import Fraction
from typing import TYPE_CHECKING, Final

from railrules_api.domain.kinds import Kind
from railrules_api.drawing.marks import line, text
from railrules_api.drawing.plot import Plot
from railrules_api.drawing.sheet import Head, document, legend, rect, shown, unit_of
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from railrules_api.drawing.sheet import Swatch
    from railrules_api.rules.thermal.laying_adjustment import LayingAdjustmentInput, LayingAdjustmentResult
    from railrules_api.units import System

_BOX: Final = (30.0, 26.0, 214.0, 146.0)
_BELOW: Final = 45.0
_ABOVE: Final = 15.0
"""How far below and above the target the chart reaches, at the least [K]."""
_MARKS: Final = ((1.0, "free end", "main"), (0.75, "¾ mark", "stroke"), (0.5, "½ mark", "stroke"), (0.25, "¼ mark", "stroke"))


def draw(given: LayingAdjustmentInput, found: LayingAdjustmentResult, system: System) -> str:
    """Draw the movement against rail temperature: at the free end, at the quarter marks, and for other lengths asked for."""
    small, degree = unit_of(system, "in", "mm"), unit_of(system, "degF", "degC")
    length, warm = UNITS[Kind.LENGTH][small], UNITS[Kind.TEMPERATURE][degree]
    long = unit_of(system, "ft", "m")
    target = given.target_temperature
    cold = min(target - _BELOW, given.rail_temperature - 3.0)
    hot = max(target + _ABOVE, given.rail_temperature + 3.0)
    if given.table is not None:
        cold, hot = min(cold, given.table.coldest), max(hot, given.table.hottest)

    def move(share: float, temperature: float, of: float) -> float:
        return length.from_si(given.expansion * of * share * (target - temperature))

    lengths = [given.string_length] if given.table is None else [one.length for one in given.table.lengths]
    longest = max(given.string_length, *lengths)
    ys = [move(1.0, cold, longest), move(1.0, hot, longest)]
    plot = Plot.over([warm.from_si(cold), warm.from_si(hot)], ys, _BOX, 9)
    parts = _range(plot, given, system)
    parts += plot.axes(f"rail temperature, {warm.label}", f"movement, lengthening upwards, {length.label}")
    for share, words, style in _MARKS:
        points = [(warm.from_si(t), move(share, t, given.string_length)) for t in (cold, hot)]
        parts.append(plot.curve(points, style))
        x, y = plot.place(*points[0])
        parts.append(text(x + 2.5, y - 1.0, words, "cell halo"))
    for other in lengths:
        if other != given.string_length:
            points = [(warm.from_si(t), move(1.0, t, other)) for t in (cold, hot)]
            parts.append(plot.curve(points, "other"))
            x, y = plot.place(*points[1])
            parts.append(text(x + 1.5, y + 1, shown(other, Kind.LENGTH, long, 0), "cell"))
    now = warm.from_si(given.rail_temperature)
    movement = shown(found.movement, Kind.LENGTH, small, 2)
    parts += plot.dot(now, length.from_si(found.movement), f"rail now: {movement}", name="now")
    x = plot.across.at(warm.from_si(target))
    parts += [line(x, plot.up.start, x, plot.up.stop, "limit"), text(x + 1, plot.up.stop + 3, "target", "cell halo")]
    parts += _table(given, found, system)
    parts += legend(166.0, _legend(given), columns=3)
    achieved = shown(found.neutral_achieved, Kind.TEMPERATURE, degree)
    head = Head(
        name="Laying adjustment",
        title=(
            f"String of {shown(given.string_length, Kind.LENGTH, long)}, fixed at one end; "
            f"target {shown(target, Kind.TEMPERATURE, degree)}"
        ),
        right=f"move {movement}",
        right_below=f"neutral temperature with the movement made: {achieved}",
        foot="Check the quarter marks: rail that moves less than they ask is held by friction and is not yet adjusted there.",
        about="Movement of the free end and of the quarter marks of a string against rail temperature.",
    )
    return document(head, parts)


def _range(plot: Plot, given: LayingAdjustmentInput, system: System) -> list[str]:
    if given.range_lower is None or given.range_upper is None:
        return []
    warm = UNITS[Kind.TEMPERATURE][unit_of(system, "degF", "degC")]
    low = max(plot.across.start, plot.across.at(warm.from_si(given.range_lower)))
    high = min(plot.across.stop, plot.across.at(warm.from_si(given.range_upper)))
    return [rect(low, plot.up.stop, max(high - low, 0.0), plot.up.start - plot.up.stop, "pale")]


def _table(given: LayingAdjustmentInput, found: LayingAdjustmentResult, system: System) -> list[str]:
    small, force = unit_of(system, "in", "mm"), unit_of(system, "lbf", "kN")
    pull = "none" if found.pull_force is None else shown(found.pull_force, Kind.FORCE, force, 0 if system == "us" else 1)
    sign = "-" if found.gap_eighths < 0 else ""
    whole, rest = divmod(abs(found.gap_eighths), 8)
    parts_of_inch = [str(whole)] * (whole > 0 or not rest) + [str(Fraction(rest, 8))] * (rest > 0)
    eighths = f"{sign}{' '.join(parts_of_inch)} in"
    rows = [
        ("rail temperature", shown(given.rail_temperature, Kind.TEMPERATURE, unit_of(system, "degF", "degC"))),
        ("¼ mark moves", shown(found.quarter_movement, Kind.LENGTH, small, 2)),
        ("½ mark moves", shown(found.half_movement, Kind.LENGTH, small, 2)),
        ("¾ mark moves", shown(found.three_quarter_movement, Kind.LENGTH, small, 2)),
        ("free end moves", shown(found.movement, Kind.LENGTH, small, 2)),
        ("opening for the weld", shown(given.weld_opening, Kind.LENGTH, small, 2)),
        ("gap to leave", shown(found.gap, Kind.LENGTH, small, 2)),
        ("to the nearest eighth", eighths),
        ("greatest pull", pull),
        ("the rail needs", {"none": "nothing", "lengthen": "pull or heat", "shorten": "cool or cut"}[found.means]),
    ]
    parts: list[str] = []
    for index, (words, value) in enumerate(rows):
        y = 34.0 + 9.6 * index
        parts += [text(228, y, words, "small"), text(228, y + 3.8, value, "title"), line(228, y + 5.4, 252, y + 5.4, "grid")]
    return parts


def _legend(given: LayingAdjustmentInput) -> list[Swatch]:
    """Return the legend of what is drawn, and of nothing else."""
    found: list[Swatch] = [
        ("free end of this string", lambda x, y: line(x, y, x + 7, y, "main")),
        ("marks along it", lambda x, y: line(x, y, x + 7, y, "stroke")),
        ("target neutral temperature", lambda x, y: line(x, y, x + 7, y, "limit")),
    ]
    if given.table is not None and any(one.length != given.string_length for one in given.table.lengths):
        found.append(("free end, other lengths asked for", lambda x, y: line(x, y, x + 7, y, "other")))
    if given.range_lower is not None and given.range_upper is not None:
        found.append(("desired range of laying temperature", lambda x, y: rect(x, y - 1.6, 7, 3.2, "pale")))
    return found
