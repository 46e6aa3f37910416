"""A buckle at a line defect while the force in it is even: the shape in closed form and the conditions it meets.

Half of the symmetric buckle lies between its outer end (`v = 0`) and its middle (`v = b`); `x = b - v` is measured from
the middle. With `w` the movement from the defect's own shape `w0`, positive outwards,

`w'''' + P (w'' + w0'') = P/R - sign(w)`, `w0 = d (1 - (x/a)^2)^2` for `x < a`, zero beyond,

`w = w' = w'' = 0` at the outer end, `w' = w''' = 0` at the middle. One lobe: `w > 0` all over, and the rest of the track
is taken as immovable. Three lobes: neighbouring lobes move opposite ways, so the resistance turns round at the node,
where `w = 0`.
The solution is a sum of the responses of `response.rungs`; it is exact for this model, no series is cut off. Where the
rails are held in the buckle too, the force in it is uneven, and this shape is where `balance.settle` starts from.

Lengths are in units of `(EI/F)^(1/3)`, forces in units of `(EI F^2)^(1/3)`, so that `EI = F = 1` (see `path.defect_path`).

Source: differential equation as in the report DOT/FRA/ORD-13/16, Appendix A, page A-7 and around it, which solves it by
a Fourier series for one lobe; the closed form, the quartic defect and the further lobes are derived here.
"""

from __future__ import annotations

import operator
from dataclasses import dataclass
from typing import NamedTuple

from railrules_api.domain.stability.response import SHEAR_RUNG, ladder


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """A track with a line defect, both rails together, in units in which its `EI` and its resistance are 1.

    Attributes:
        axial: `EA`.
        decay: `psi = sqrt(k / EA)`, `k` being the longitudinal stiffness.
        amplitude: `d` of the defect, zero or more.
        reach: half-length `a` of the defect.
        curvature: `1/R`, positive when the defect and the buckle point outwards.
        lobes: lobes of one half of the buckle, 1 or 2.
        inner_restraint: whether the rails are restrained along the track inside the buckle too.
    """

    axial: float
    decay: float
    amplitude: float
    reach: float
    curvature: float
    lobes: int
    inner_restraint: bool


class Shape(NamedTuple):
    """The unknowns of one equilibrium under an even force.

    Attributes:
        angle: `sqrt(P) b` [rad].
        half_length: `b`.
        nodes: where lobes meet, as shares of `b` from the outer end, growing; none with one lobe.
    """

    angle: float
    half_length: float
    nodes: tuple[float, ...]


class Start(NamedTuple):
    """Loads that begin at one place and act from there to the middle.

    Attributes:
        origin: where they begin, as a distance from the outer end.
        shear: third derivative of `w` at that place.
        load: constant load.
        slope: load growing as `v`.
        bow: load growing as `v^2 / 2`.
    """

    origin: float
    shear: float
    load: float
    slope: float
    bow: float


def starts(line: Line, shape: Shape) -> list[Start]:
    """Return what acts on the half buckle: from its end, from the end of the defect and from every node.

    The shear at the end follows from the balance of all loads on the half,
    `t = F_out * outward lobes - F_in * inward lobes + P w0'(b)`, with `F_out = 1 - P/R` and `F_in = 1 + P/R`.
    """
    half = shape.half_length
    square = (shape.angle / half) ** 2
    outward = 1.0 - square * line.curvature
    inward = 1.0 + square * line.curvature
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
    return [middle_shear / half, middle / deflection - 1.0, *(value / deflection for value in at_nodes)]
