"""A buckle in balance sideways and along the track at once, from one total potential.

With `w` the movement sideways, `u` that along the track, `x` from the middle and dashes for derivatives, the rails give way by
`z = w'^2/2 + w' w0' + w/R`, are relieved of the strain `e = u' + z`, and press with `N = P0 - EA e`. Half of the track has

`V = int EI w''^2/2 + F |w| - P0 z + EA e^2/2 + k u^2/2 dx + sqrt(k EA) u(b)^2 / 2`,

above the unbuckled track at the same `P0 = EA alpha dT`. The last term is what the springs of the endless rail beyond the
buckle hold; the term before it is left out where rails are held outside the buckle only. Where `V` is stationary,

`EI w''' = int_0^x (N/R - F sign w) dx - N (w' + w0')`, `EA e' = k u` (`e' = 0` with restraint outside only),

`w = w' = w'' = 0` at the outer end, `w' = 0` and `u = 0` at the middle, `e = -psi u` at the outer end, `w = 0` at the nodes.
These are solved by Gauss's collocation and Newton's method with exact derivatives, for a whole batch of deflections at
once. Since nothing but `V` decides, `dV = -Z dP0` along a path, `Z = int z dx` (with restraint outside only, less the
springs that a growing buckle does away with). With an even force `P` in the buckle `P0 = P + EA Z psi / (1 + psi b)`: the
rise of ORD-13/16, page A-7.

Units as in `lobes`: `EI = F = 1`. Derived here.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from railrules_api.domain.stability.grid import Field, Grid, rule
from railrules_api.domain.stability.lobes import Line, Shape, starts
from railrules_api.domain.stability.response import rungs

if TYPE_CHECKING:
    import numpy as np
    import numpy.typing as npt

    Array = npt.NDArray[np.float64]
    Indices = npt.NDArray[np.intp]

_ROUNDS = 9  # of Newton's method; from a near guess four are enough
_SETTLED = 1e-9  # change of a round, as a share; the error left is about its square
_EVEN = 0.3  # `psi b` up to which the shape under an even force is near enough to begin with
_BEND, _RELIEF, _FORCE = 0, 1, 2  # places of the single unknowns after those at the points
_DEFLECTION = 3  # place of its condition after those at the points


class Balance(NamedTuple):
    """What is read off one equilibrium.

    Attributes:
        far_force: `P0`.
        middle_force: `N` at the middle.
        half_length: `b`.
        take_up: `Z`, length taken up by one half.
        energy: of both halves, `2 V`.
        stored: what of it beam, rails and springs hold and the resistance has used up, so `2 (V + P0 Z)`.
        slope: derivative of `P0` by the logarithm of the deflection.
    """

    far_force: float
    middle_force: float
    half_length: float
    take_up: float
    energy: float
    stored: float
    slope: float


class _State(NamedTuple):
    """A batch of problems at given unknowns: by how much they miss, how that changes, and what is read off."""

    missed: Array
    change: Array
    weights: Array
    bend: Array
    moved: Array
    sign: Array
    intake: Array
    strain: Array


def settle(line: Line, deflections: list[float], shapes: list[Shape]) -> list[Balance | None]:
    """Return the equilibria with the given deflections at the middle that grow out of shapes under an even force.

    None where no equilibrium was found, where a lobe does not move the way its resistance was taken to oppose, and where a
    curve far from the buckle would not stay where it is.
    """
    import numpy as np  # noqa: PLC0415

    wanted = np.array(deflections)
    unknowns = _begin(line, shapes)
    settled = np.arange(len(shapes))
    longest = max(shape.half_length for shape in shapes)
    decay = min(line.decay, _EVEN / longest) if line.inner_restraint else line.decay
    while True:
        settled = _newton(line, decay, wanted, unknowns, settled)
        if decay == line.decay or len(settled) == 0:
            break
        decay = min(line.decay, 2.0 * decay)
    found: list[Balance | None] = [None] * len(shapes)
    if len(settled) > 0:
        for index, balance in zip(settled.tolist(), _read(line, wanted[settled], unknowns[settled]), strict=True):
            found[index] = balance
    return found


def _newton(line: Line, decay: float, wanted: Array, unknowns: Array, among: Indices) -> Indices:
    """Bring the unknowns of some problems into balance, in place; return those that settled."""
    import numpy as np  # noqa: PLC0415

    left = among
    settled = np.zeros(len(wanted), dtype=bool)
    for _ in range(_ROUNDS):
        if len(left) == 0:
            break
        now = unknowns[left]
        # What goes astray may overflow on its way; it is left out below.
        with np.errstate(over="ignore", invalid="ignore"):
            state = _state(line, decay, wanted[left], now)
            steps: Array = np.linalg.solve(state.change, -state.missed[:, :, None])[:, :, 0].astype(float, copy=False)
            points = state.moved.shape[1]
            now = now + _share(now, steps, points, line.lobes)[:, None] * steps
            moved = _moved(line, now, steps, points)
        unknowns[left] = now
        settled[left[moved < _SETTLED]] = True
        left = left[(moved >= _SETTLED) & np.isfinite(moved)]
    return np.nonzero(settled)[0]


def _moved(line: Line, now: Array, steps: Array, points: int) -> Array:
    """Return by how much a step changes the bend at the middle, the force there and far off, and the length, as shares.

    Nodes and the values at the points do not count: where a lobe is about to vanish its node is defeated by round-off and takes
    the points beside it along, and nothing that is read off depends on either.
    """
    import numpy as np  # noqa: PLC0415

    singles = 2 * points
    own = slice(singles + _FORCE, singles + _FORCE + 2)
    lone = np.max(np.abs(steps[:, own] / now[:, own]), axis=1)
    bend = np.abs(steps[:, singles + _BEND] / now[:, singles + _BEND])
    relief = np.abs(line.axial * steps[:, singles + _RELIEF] / now[:, singles + _FORCE])
    moved: Array = np.maximum(np.maximum(lone, bend), relief)
    return moved


def _share(now: Array, steps: Array, points: int, lobes: int) -> Array:
    """Return how much of a step may be taken so that no lobe loses more than half of its length."""
    import numpy as np  # noqa: PLC0415

    ends = slice(2 * points + _FORCE + 1, None)
    lengths: Array = now[:, ends]
    change: Array = steps[:, ends]
    if lobes > 1:
        # the unknowns are the buckle's half length and the node: the lobes are the node's and what is beyond it
        lengths = np.stack([lengths[:, 0] - lengths[:, 1], lengths[:, 1]], axis=1)
        change = np.stack([change[:, 0] - change[:, 1], change[:, 1]], axis=1)
    share: Array = 1.0 / np.maximum(1.0, np.max(-2.0 * change / lengths, axis=1))
    return share


def _pieces(line: Line, unknowns: Array) -> tuple[Grid, Array, Indices]:
    """Return the grid, the sign of the lobe at every point, and which mark is the node.

    The marks: the middle, the node, half way, the end of the defect, the outer end.
    """
    import numpy as np  # noqa: PLC0415

    count, ends = len(unknowns), line.lobes
    places = unknowns[:, -ends:]
    half, beyond = places[:, :1], places[:, 0] > line.reach
    marks = np.concatenate([np.zeros((count, 1)), places[:, 1:], half / 2.0, np.minimum(half, line.reach), half], axis=1)
    moves = np.zeros((count, ends + 3, ends))
    moves[:, -1, 0] = 1.0
    moves[:, -2, 0] = np.where(beyond, 0.0, 1.0)
    moves[:, -3, 0] = 0.5
    for node in range(1, ends):
        moves[:, node, node] = 1.0
    order = np.argsort(marks, axis=1, kind="stable")
    marks = np.take_along_axis(marks, order, axis=1)
    moves = np.take_along_axis(moves, order[:, :, None], axis=1)
    grid = Grid.of(np.diff(marks, axis=1), np.diff(moves, axis=1))
    middles = (marks[:, 1:] + marks[:, :-1]) / 2.0
    crossed = np.sum(middles[:, :, None] > places[:, None, 1:], axis=2)
    sign = np.repeat(1.0 - 2.0 * (crossed % 2), len(rule(1).weights), axis=1)
    return grid, sign, np.argsort(order, axis=1)[:, 1:ends]


def _begin(line: Line, shapes: list[Shape]) -> Array:
    """Return unknowns to begin with: the shapes under an even force, and the relief that they bring to it."""
    import numpy as np  # noqa: PLC0415

    half = np.array([shape.half_length for shape in shapes])[:, None]
    wave = np.array([shape.angle for shape in shapes])[:, None] / half
    nodes = (1.0 - np.array([shape.nodes for shape in shapes]).reshape(len(shapes), -1)) * half
    places = np.concatenate([half, nodes], axis=1)
    grid, _, _ = _pieces(line, places)
    ones = np.ones((len(shapes), grid.inside.shape[1]))
    place = (grid.inside @ ones[:, :, None])[:, :, 0]
    # measured from the outer end, where odd derivatives have the other sign; the middle comes last
    place = np.concatenate([half - place, half], axis=1)
    table = np.array([starts(line, shape) for shape in shapes])
    third, second, first = np.zeros_like(place), np.zeros_like(place), np.zeros_like(place)
    for column in range(table.shape[1]):
        rows = table[:, column]
        distance = np.maximum(place - rows[:, :1], 0.0)
        steps = rungs(distance, wave, np.cos(wave * distance), np.sin(wave * distance))
        for kind in range(4):
            factor = np.where(place > rows[:, :1], rows[:, kind + 1 : kind + 2], 0.0)
            third -= factor * steps[kind]
            second += factor * steps[kind + 1]
            first -= factor * steps[kind + 2]
    from_middle = half - place
    own, _ = _defect(line, from_middle)
    slope = first[:, :-1]
    deflection = -(grid.marks[:, -1:] - grid.inside) @ slope[:, :, None]
    intake = slope * (slope / 2.0 + own[:, :-1]) + line.curvature * deflection[:, :, 0]
    take_up = np.sum(grid.marks[:, -1] * intake, axis=1, keepdims=True)
    relief = take_up * line.decay / (1.0 + line.decay * half)
    force = wave**2 + line.axial * relief
    return np.concatenate([third[:, :-1], relief - intake, second[:, -1:], relief, force, places], axis=1)


def _defect(line: Line, place: Array) -> tuple[Array, Array]:
    """Return slope and curvature of the defect at distances from the middle."""
    import numpy as np  # noqa: PLC0415

    ratio = place / line.reach
    size = -4.0 * line.amplitude / line.reach
    inside = ratio < 1.0
    slope = np.where(inside, size * ratio * (1.0 - ratio * ratio), 0.0)
    return slope, np.where(inside, size / line.reach * (1.0 - 3.0 * ratio * ratio), 0.0)


def _state(line: Line, decay: float, wanted: Array, unknowns: Array) -> _State:
    """Return by how much a batch of problems is out of balance, and how that changes with every unknown."""
    import numpy as np  # noqa: PLC0415

    grid, sign, node_marks = _pieces(line, unknowns)
    count, points = sign.shape
    size = unknowns.shape[1]
    unit = np.broadcast_to(np.eye(size), (count, size, size))
    singles = 2 * points

    def at_points(first: int) -> Field:
        return Field(unknowns[:, first : first + points], unit[:, first : first + points])

    def single(place: int) -> tuple[Array, Array]:
        return unknowns[:, singles + place, None], unit[:, singles + place, None]

    def plus(field: Field, place: int, factor: float = 1.0) -> Field:
        value, change = single(place)
        return Field(factor * field.values + value, factor * field.changes + change)

    third, stretch = at_points(0), at_points(points)
    place, _ = grid.integral(Field(np.ones((count, points)), np.zeros((count, points, size))))
    bend, bend_marks = (plus(field, _BEND) for field in grid.integral(third))
    slope, slope_marks = grid.integral(bend)
    risen, risen_marks = grid.integral(slope)
    along, along_marks = grid.integral(stretch)
    held = decay**2 if line.inner_restraint else 0.0
    strain, strain_marks = (plus(field, _RELIEF, held) for field in grid.integral(along))
    moved = Field(risen.values - risen_marks.values[:, -1:], risen.changes - risen_marks.changes[:, -1:])
    far, far_change = single(_FORCE)
    force = Field(far - line.axial * strain.values, far_change - line.axial * strain.changes)
    side, _ = grid.integral(Field(line.curvature * force.values - sign, line.curvature * force.changes))

    own, own_bend = _defect(line, place.values)
    own_change = own_bend[:, :, None] * place.changes
    lever = slope.values + own
    intake = slope.values * (slope.values / 2.0 + own) + line.curvature * moved.values
    intake_change = lever[:, :, None] * slope.changes + slope.values[:, :, None] * own_change + line.curvature * moved.changes
    across = third.values + force.values * lever - side.values
    across_change = third.changes + force.values[:, :, None] * (slope.changes + own_change)
    across_change += lever[:, :, None] * force.changes - side.changes
    rows = np.arange(count)[:, None]
    end = decay * along_marks.values[:, -1:] + strain_marks.values[:, -1:]
    end_change = decay * along_marks.changes[:, -1:] + strain_marks.changes[:, -1:]
    at_nodes = risen_marks.values[rows, node_marks] - risen_marks.values[:, -1:]
    at_nodes_change = risen_marks.changes[rows, node_marks] - risen_marks.changes[:, -1:]
    missed = [across, stretch.values - strain.values + intake, slope_marks.values[:, -1:], bend_marks.values[:, -1:]]
    missed += [end, -risen_marks.values[:, -1:] - wanted[:, None], at_nodes]
    change = [across_change, stretch.changes - strain.changes + intake_change, slope_marks.changes[:, -1:]]
    change += [bend_marks.changes[:, -1:], end_change, -risen_marks.changes[:, -1:], at_nodes_change]
    return _State(
        missed=np.concatenate(missed, axis=1),
        change=np.concatenate(change, axis=1),
        weights=grid.marks[:, -1],
        bend=bend.values,
        moved=moved.values,
        sign=sign,
        intake=intake,
        strain=strain.values,
    )


def _read(line: Line, wanted: Array, unknowns: Array) -> list[Balance | None]:
    """Return what is asked of equilibria; None where the shape solves the equations but not the problem."""
    import numpy as np  # noqa: PLC0415

    found = _state(line, line.decay, wanted, unknowns)
    singles = 2 * found.moved.shape[1]
    # The deflection at the middle is the only condition that a step along the path changes.
    load = np.zeros_like(unknowns)
    load[:, singles + _DEFLECTION] = wanted
    tangent = np.linalg.solve(found.change, load[:, :, None])[:, :, 0]
    far = unknowns[:, singles + _FORCE]
    take_up = np.sum(found.weights * found.intake, axis=1)
    per_length = found.bend**2 / 2.0 + np.abs(found.moved) + line.axial / 2.0 * found.intake * found.strain
    stored = 2.0 * np.sum(found.weights * per_length, axis=1)
    # Near zeros round-off may show either sign.
    sound = np.all(found.sign * found.moved >= -1e-9 * wanted[:, None], axis=1) & (far * line.curvature < 1.0)
    columns = (
        far,
        far - line.axial * unknowns[:, singles + _RELIEF],
        unknowns[:, singles + _FORCE + 1],
        take_up,
        stored - 2.0 * far * take_up,
        stored,
        tangent[:, singles + _FORCE],
    )
    rows = zip(*(column.tolist() for column in columns), strict=True)
    return [Balance(*row) if good else None for row, good in zip(rows, sound.tolist(), strict=True)]
