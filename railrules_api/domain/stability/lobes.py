"""Mechanics of a buckle at a line defect: the shape in closed form, the conditions it meets, its integrals.

Half of the symmetric buckle lies between its outer end (`v = 0`) and its middle (`v = b`); `x = b - v` is measured from
the middle. With `w` the movement from the defect's own shape `w0`, positive outwards,

`EI w'''' + P (w'' + w0'') = P/R - F sign(w)`, `w0 = d (1 - (x/a)^2)^2` for `x < a`, zero beyond,

`w = w' = w'' = 0` at the outer end, `w' = w''' = 0` at the middle. One lobe: `w > 0` all over, and the rest of the track
is taken as immovable. Three or five lobes: neighbouring lobes move opposite ways, so the resistance turns round at every
node, where `w = 0`.
The solution is a sum of the responses of `response.rungs`; it is exact for this model, no series is cut off.

Source: differential equation as in the report DOT/FRA/ORD-13/16, Appendix A, page A-7 and around it, which solves it by
a Fourier series for one lobe; the closed form, the quartic defect and the further lobes are derived here.
"""

from __future__ import annotations

import math
import operator
from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING, NamedTuple

from railrules_api.domain.stability.response import SHEAR_RUNG, ladder, rungs

if TYPE_CHECKING:
    import numpy as np
    import numpy.typing as npt

    Array = npt.NDArray[np.float64]

_GAUSS_POINTS = 20


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """A track with a line defect, both rails together.

    Attributes:
        bending: `EI = 2 E I` [N m2].
        axial: `EA = 2 E A` [N].
        expansion: coefficient of expansion [1/K].
        resistance: lateral resistance `F` [N/m].
        stiffness: longitudinal stiffness `k` of the track [Pa].
        amplitude: `d` of the defect, zero or more [m].
        reach: half-length `a` of the defect [m].
        curvature: `1/R`, positive when the defect and the buckle point outwards [1/m].
        lobes: lobes of one half of the buckle, 1 to 3.
        inner_restraint: whether the rails are restrained along the track inside the buckle too.
    """

    bending: float
    axial: float
    expansion: float
    resistance: float
    stiffness: float
    amplitude: float
    reach: float
    curvature: float
    lobes: int
    inner_restraint: bool


class Shape(NamedTuple):
    """The unknowns of one equilibrium.

    Attributes:
        angle: `l b` with `l = sqrt(P/EI)` [rad].
        half_length: `b` [m].
        nodes: where lobes meet, as shares of `b` from the outer end, growing; none with one lobe.
    """

    angle: float
    half_length: float
    nodes: tuple[float, ...]


class Start(NamedTuple):
    """Loads that begin at one place and act from there to the middle.

    Attributes:
        origin: where they begin, as a distance from the outer end [m].
        shear: third derivative of `w` at that place [1/m2].
        load: constant load over EI [1/m3].
        slope: load growing as `v`, over EI [1/m4].
        bow: load growing as `v^2 / 2`, over EI [1/m5].
    """

    origin: float
    shear: float
    load: float
    slope: float
    bow: float


def starts(line: Line, shape: Shape) -> list[Start]:
    """Return what acts on the half buckle: from its end, from the end of the defect and from every node.

    The shear at the end follows from the balance of all loads on the half,
    `t = (F_out * outward lobes - F_in * inward lobes) / EI + l^2 w0'(b)`, with `F_out = F - P/R` and `F_in = F + P/R`.
    """
    half = shape.half_length
    square = (shape.angle / half) ** 2
    outward = line.resistance / line.bending - square * line.curvature
    inward = line.resistance / line.bending + square * line.curvature
    # The curvature of the defect seen from its own end: 4 d/a^2 (2 - 6 s/a + 3 s^2/a^2), s being the distance from there.
    reach = line.reach
    level = -square * 8.0 * line.amplitude / reach**2
    slope = square * 24.0 * line.amplitude / reach**3
    bow = -square * 24.0 * line.amplitude / reach**4
    cut = reach - half
    shear = 0.0
    if cut > 0.0:
        level += cut * slope + cut * cut / 2.0 * bow
        slope += cut * bow
        ratio = half / reach
        shear -= square * 4.0 * line.amplitude * ratio * (1.0 - ratio * ratio) / reach
    nodes: list[Start] = []
    # From the middle, which moves outwards, to the end: every lobe opposes the one before.
    moves_out, border = True, half
    for share in reversed((0.0, *shape.nodes)):
        place = share * half
        shear += (outward if moves_out else -inward) * (border - place)
        if share > 0.0:
            nodes.append(Start(place, 0.0, -outward - inward if moves_out else outward + inward, 0.0, 0.0))
            moves_out = not moves_out
        border = place
    first = Start(0.0, shear, -outward if moves_out else inward, 0.0, 0.0)
    return [first, Start(max(-cut, 0.0), 0.0, level, slope, bow), *nodes]


def mismatch(line: Line, shape: Shape, deflection: float) -> list[float]:
    """Return by how much a shape misses its conditions; all zero at an equilibrium.

    The conditions: no shear at the middle, the wanted deflection there and none at the nodes. Each is divided by a size
    that makes it a pure number.
    """
    wave = shape.angle / shape.half_length
    half = shape.half_length
    places = [share * half for share in shape.nodes]
    middle_shear = middle = 0.0
    at_nodes = [0.0] * len(places)
    for origin, *rows in starts(line, shape):
        steps = ladder(half - origin, wave)
        middle += sum(map(operator.mul, rows, steps[SHEAR_RUNG:]))
        middle_shear += sum(map(operator.mul, rows, steps[:4]))
        for index, place in enumerate(places):
            if place > origin:
                at_nodes[index] += sum(map(operator.mul, rows, ladder(place - origin, wave)[SHEAR_RUNG:]))
    shear = middle_shear * line.bending / (line.resistance * half)
    return [shear, middle / deflection - 1.0, *(value / deflection for value in at_nodes)]


class Integrals(NamedTuple):
    """Integrals of a row of equilibria, one entry for each.

    Attributes:
        force: compression inside the buckle [N].
        rise: temperature rise [K].
        take_up: `Z`, length taken up by one half of the buckle [m].
        energy: energy above that of the unbuckled track at the same rise, both halves [J].
        holds: whether every lobe moves the way its resistance was taken to oppose, all along, and a curve far from the
            buckle stays where it is.
    """

    force: Array
    rise: Array
    take_up: Array
    energy: Array
    holds: npt.NDArray[np.bool_]


@cache
def _gauss() -> tuple[Array, Array]:
    """Return places between -1 and 1 and weights of Gauss's rule; read-only, since all calls share them."""
    import numpy as np  # noqa: PLC0415

    points, weights = np.polynomial.legendre.leggauss(_GAUSS_POINTS)
    points.flags.writeable = weights.flags.writeable = False
    return points, weights


def integrate(line: Line, shapes: list[Shape]) -> Integrals:
    """Return the temperature rise and the energy of equilibria.

    `Z = int_0^b (w'^2/2 + w' w0' + w/R) dx`. Outside the buckle the rails are held by springs, `psi = sqrt(k / EA)`.

    Restraint outside the buckle only: `dT = P / (EA alpha) + Z psi / (alpha (1 + psi b))` (ORD-13/16, page A-7, for
    one lobe) and energy of one half `int EI w''^2 / 2 + F int |w| - (P0 + P) Z / 2`, `P0 = EA alpha dT`.

    Restraint inside too: the strain that the shape takes from the rails is `e(x) = (psi/2) int exp(-psi |x - s|) z(s) ds`
    over the whole track, `z` the integrand of `Z`. Force then varies in the buckle; `P` is its mean weighted by the
    work it does on the shape, `dT = P / (EA alpha) + int e y dx / (alpha int y dx)` with `y = w' (w' + w0') + w/R`, and the
    last part of the energy is `- P0 Z + EA int z e dx / 2`. Derived here.
    """
    import numpy as np  # noqa: PLC0415

    points, weights = _gauss()
    angle = np.array([shape.angle for shape in shapes])[:, None]
    half = np.array([shape.half_length for shape in shapes])[:, None]
    nodes = np.array([shape.nodes for shape in shapes]).reshape(len(shapes), -1) * half
    wave = angle / half
    table = np.array([starts(line, shape) for shape in shapes])
    # Smooth pieces: between the end, the node, the end of the defect and the middle.
    defect_end = np.maximum(half - line.reach, 0.0)
    marks = np.sort(np.concatenate([np.zeros_like(half), nodes, defect_end, half], axis=1), axis=1)
    spans = np.diff(marks, axis=1)
    place = (marks[:, :-1, None] + spans[:, :, None] * (points + 1.0) / 2.0).reshape(len(shapes), -1)
    weight = (spans[:, :, None] * weights / 2.0).reshape(len(shapes), -1)

    deflection = np.zeros_like(place)
    slope = np.zeros_like(place)
    bend = np.zeros_like(place)
    for column in range(table.shape[1]):
        rows = table[:, column]
        distance = np.maximum(place - rows[:, :1], 0.0)
        turned = wave * distance
        steps = rungs(distance, np.broadcast_to(wave, distance.shape), np.cos(turned), np.sin(turned))
        acts = place > rows[:, :1]
        for kind in range(4):
            factor = np.where(acts, rows[:, kind + 1 : kind + 2], 0.0)
            deflection += factor * steps[SHEAR_RUNG + kind]
            slope += factor * steps[SHEAR_RUNG + kind - 1]
            bend += factor * steps[SHEAR_RUNG + kind - 2]

    ratio = (half - place) / line.reach
    # Slope of the defect towards the middle, as the slopes above are.
    own = np.where(ratio < 1.0, 4.0 * line.amplitude / line.reach * ratio * (1.0 - ratio * ratio), 0.0)
    intake = slope * slope / 2.0 + slope * own + line.curvature * deflection
    take_up = np.sum(weight * intake, axis=1)
    force = line.bending * wave[:, 0] ** 2
    decay = math.sqrt(line.stiffness / line.axial)
    if line.inner_restraint:
        apart = np.exp(-decay * np.abs(place[:, :, None] - place[:, None, :]))
        apart += np.exp(-decay * (2.0 * half[:, :, None] - place[:, :, None] - place[:, None, :]))
        strain = decay / 2.0 * np.einsum("pij,pj->pi", apart, weight * intake)
        working = weight * (slope * (slope + own) + line.curvature * deflection)
        drop = np.sum(working * strain, axis=1) / np.sum(working, axis=1)
        stored = line.axial / 2.0 * np.sum(weight * intake * strain, axis=1)
    else:
        drop = take_up * decay / (1.0 + decay * half[:, 0])
        stored = line.axial * drop * take_up / 2.0
    far = force + line.axial * drop
    energy = np.sum(weight * (line.bending * bend**2 / 2.0 + line.resistance * np.abs(deflection)), axis=1)
    # Where the signs fail the shape solves the equations but not the problem. Near zeros round-off may show either sign.
    inner_nodes = np.sum(place[:, :, None] < nodes[:, None, :], axis=2)
    against = np.where(inner_nodes % 2 == 1, -deflection, deflection)
    holds = np.all(against >= -1e-9 * np.max(np.abs(deflection), axis=1, keepdims=True), axis=1)
    # In a curve the track far away must stay put under the full force, or nothing here means anything.
    holds &= line.resistance > far * line.curvature
    return Integrals(
        force=force,
        rise=far / (line.axial * line.expansion),
        take_up=take_up,
        energy=2.0 * (energy - far * take_up + stored),
        holds=holds,
    )
