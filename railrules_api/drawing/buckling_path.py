"""The path of a buckle: temperature rise against sideways movement, with what the margin rule allows."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from railrules_api.domain.kinds import Kind
from railrules_api.drawing.marks import line, text
from railrules_api.drawing.plot import Plot
from railrules_api.drawing.sheet import Head, document, legend, shown, unit_of
from railrules_api.rules.radius import radius_from
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from railrules_api.drawing.sheet import Swatch
    from railrules_api.rules.thermal.buckling_fields import BucklingInput, BucklingResult
    from railrules_api.units import System

_BOX: Final = (30.0, 26.0, 250.0, 148.0)
_FAR: Final = 2.6
"""The path is drawn to this many times the movement at its lower rise, where it has one; what lies beyond tells little."""


def _points(found: BucklingResult) -> list[tuple[float, float]]:
    """Return the path [m, K], cut where it has told what it has to tell."""
    points = [(point.deflection, point.temperature_rise) for point in found.path]
    if found.lower_rise is None or not points:
        return points
    turned = _where(points, found.lower_rise, top=False)
    return [point for point in points if point[0] <= _FAR * turned] if turned > 0.0 else points


def _where(path: list[tuple[float, float]], rise: float, *, top: bool) -> float:
    """Return the movement at the upper or the lower rise: the path passes the lower one's height on its way up too."""
    if top:
        return min(path, key=lambda point: abs(point[1] - rise))[0]
    falling = next((index for index in range(1, len(path)) if path[index][1] < path[index - 1][1]), 0)
    return min(path[falling:], key=lambda point: abs(point[1] - rise))[0]


def draw(given: BucklingInput, found: BucklingResult, system: System) -> str:
    """Draw the path of equilibria, or the straight track's lowest states where no defect is given."""
    small, degree = unit_of(system, "in", "mm"), unit_of(system, "delta_degF", "delta_degC")
    length, warm = UNITS[Kind.LENGTH][small], UNITS[Kind.TEMPERATURE_CHANGE][degree]
    path = [(length.from_si(x), warm.from_si(y)) for x, y in _points(found)]
    states = [] if path else [(length.from_si(mode.deflection), warm.from_si(mode.temperature_rise)) for mode in found.modes]
    rises = [
        rise for rise in (found.allowed_rise, found.lower_rise, found.upper_rise, found.temperature_change) if rise is not None
    ]
    xs = [0.0, *(x for x, _ in (*path, *states))]
    ys = [0.0, *(warm.from_si(rise) for rise in rises), *(y for _, y in (*path, *states))]
    plot = Plot.over(xs if max(xs) > 0.0 else [0.0, 1.0], ys, _BOX, 9)
    parts = plot.axes(f"movement sideways at the middle, {length.label}", f"rise above neutral temperature, {warm.label}")
    # the words of the lower line stand below it and those of the upper one above, so that the two never meet
    hot, allowed = found.temperature_change, found.allowed_rise
    cooler = allowed is not None and hot <= allowed
    parts += plot.level(warm.from_si(hot), f"rail now: {_rise(hot, system)}", style="rule", below=cooler)
    if allowed is not None:
        parts += plot.level(warm.from_si(allowed), f"allowed: {_rise(allowed, system)}", below=not cooler)
    if path:
        parts.append(plot.curve(path, "main"))
    for rise, words in (
        (found.upper_rise, "upper rise: the track snaps"),
        (found.lower_rise, "lower rise: no buckled state below"),
    ):
        if rise is not None and path:
            x = _where(path, warm.from_si(rise), top=rise == found.upper_rise)
            lift = -2.4 if rise == found.upper_rise else 4.4
            parts += plot.dot(x, warm.from_si(rise), f"{words}, {_rise(rise, system)}", lift=lift, name=words.partition(":")[0])
    for mode, (x, y) in zip(found.modes, states, strict=False):
        words = f"{mode.mode} lobe{'s' * (mode.mode > 1)}, {_rise(mode.temperature_rise, system)}"
        lift = 4.2 if mode.mode == found.governing_mode else -2.2
        parts += plot.dot(x, y, words, anchor="end" if x > max(xs) / 2 else "start", lift=lift)
    if not path and not states:
        parts.append(text(140, 86, "no path: " + found.allowed_by, "size", "middle"))
    parts += legend(166.0, _legend(with_path=bool(path)), columns=3)
    check = found.checks[0]
    defect = (
        "no line defect"
        if given.defect_amplitude is None
        else f"line defect {shown(given.defect_amplitude, Kind.LENGTH, small, 2)}"
    )
    resistance = shown(given.lateral_resistance, Kind.FORCE_PER_LENGTH, unit_of(system, "lbf_per_in", "kN_per_m"))
    bent = ""
    if given.radius is not None or given.degree is not None:
        radius = radius_from(given.radius, given.degree)
        bent = f", curve of {shown(radius, Kind.LENGTH, unit_of(system, 'ft', 'm'), 0)} radius"
    head = Head(
        name="Buckling of hot track",
        title=f"Two rails{bent}, {defect}, lateral resistance {resistance}",
        right={"passes": "✓ passes", "fails": "✗ FAILS", "not-checked": "○ not checked"}[check.verdict],
        right_below=f"by {found.allowed_by}"[:90],
        foot="Static results. Trains, weak spots and disturbed ballast lower the rise at which track buckles.",
        about="Temperature rise above neutral against sideways movement of track with a line defect.",
    )
    return document(head, parts)


def _rise(value: float, system: System) -> str:
    return shown(value, Kind.TEMPERATURE_CHANGE, unit_of(system, "delta_degF", "delta_degC"))


def _legend(*, with_path: bool) -> list[Swatch]:
    swatches: list[Swatch] = [
        ("rise of the rail now", lambda x, y: line(x, y, x + 7, y, "rule")),
        ("rise that the margin rule allows", lambda x, y: line(x, y, x + 7, y, "limit")),
    ]
    if with_path:
        return [("states of balance, from straight to buckled", lambda x, y: line(x, y, x + 7, y, "main")), *swatches]
    lowest = "lowest buckled state of a shape, straight track"
    return [(lowest, lambda x, y: f'<circle class="void" cx="{x + 3.5:g}" cy="{y:g}" r="1.1"/>'), *swatches]
