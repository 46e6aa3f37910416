"""Finite-element model of a track with a line defect, written without any of the package's mechanics.

A witness for `railrules_api.domain.stability`: it shares the statement of the problem with the package, not the way to the
answer. One half of a symmetric track is cut into beam elements (cubic sideways, linear along the track). Large rotations
enter through the strain `u' + w'^2/2 + w' w0' + w/R`, averaged over the element. The sideways resistance is
`F w / sqrt(w^2 + s^2)`, which turns into a constant one as the smoothing length `s` goes to zero. Rails are held along the
track by springs, in the buckle too; beyond the last element a spring `sqrt(k EA)` and the thermal force stand for a rail
without end. The deflection at the middle is prescribed and grows step by step; the rise is an unknown.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np
from scipy.linalg import solve_banded

if TYPE_CHECKING:
    import numpy.typing as npt

    Array = npt.NDArray[np.float64]

BAND = 5  # three unknowns for each of two neighbouring nodes
PER_NODE = 3  # movement along the track, movement sideways, rotation
SIDEWAYS = (1, 2, 4, 5)  # places of the cubic beam's unknowns among the element's six


@dataclass(frozen=True, slots=True, kw_only=True)
class ElementTrack:
    """The problem in SI units, both rails together.

    Attributes:
        bending: EI of both rails [N m2].
        axial: EA of both rails [N].
        expansion: coefficient of expansion [1/K].
        resistance: lateral resistance to outward movement [N/m].
        stiffness: longitudinal stiffness [Pa].
        amplitude: of the defect [m].
        reach: half-length of the defect [m].
        curvature: one over the radius [1/m].
        inward_factor: resistance to inward movement over that to outward movement.
        smoothing: smoothing length of the resistance [m].
        length: of the half track that is cut into elements [m].
        elements: their number.
    """

    bending: float
    axial: float
    expansion: float
    resistance: float
    stiffness: float
    amplitude: float
    reach: float
    curvature: float = 0.0
    inward_factor: float = 1.0
    smoothing: float = 1.25e-4
    length: float = 24.0
    elements: int = 100


class ElementPath:
    """Follows the equilibria of an `ElementTrack` to growing deflections."""

    def __init__(self, track: ElementTrack) -> None:
        """Prepare what does not change: shape functions, bending stiffness, the defect's slope."""
        self.track = track
        count, size = track.elements, track.length / track.elements
        self.size = size
        points, weights = np.polynomial.legendre.leggauss(4)
        place = (points + 1.0) / 2.0
        self.weights = weights / 2.0 * size
        self.value, self.slope, bend = _cubics(place, size)
        self.stiff = track.bending * np.einsum("ig,jg,g->ij", bend, bend, self.weights)
        self.turning = np.einsum("ig,jg,g->gij", self.slope, self.slope, self.weights)
        # The resistance changes its sign within a fraction of an element: many more points than the rest needs.
        fine, fine_weights = np.polynomial.legendre.leggauss(24)
        self.fine, _, _ = _cubics((fine + 1.0) / 2.0, size)
        self.fine_force = self.fine * (fine_weights / 2.0 * size)
        self.fine_stiff = np.einsum("ig,jg->gij", self.fine, self.fine_force).reshape(len(fine), 16)
        ratio = (np.arange(count)[:, None] + place[None, :]) * size / track.reach
        inside = -4.0 * track.amplitude / track.reach * ratio * (1.0 - ratio * ratio)
        self.own = np.where(ratio < 1.0, inside, 0.0)
        self.unknowns = PER_NODE * (count + 1)
        self.index = PER_NODE * np.arange(count)[:, None] + np.arange(6)[None, :]
        self.springs = np.full(count + 1, track.stiffness * size)
        self.springs[[0, -1]] /= 2.0
        self.held = (0, 2, self.unknowns - 2, self.unknowns - 1)

    def system(self, state: Array, rise: float) -> tuple[Array, Array, Array]:
        """Return the forces out of balance, their change with the rise and the banded tangent stiffness."""
        track, size = self.track, self.size
        local = state[self.index]
        sideways = local[:, SIDEWAYS]
        gradient = sideways @ self.slope
        intake = gradient**2 / 2.0 + gradient * self.own + track.curvature * (sideways @ self.value)
        strain = (local[:, 3] - local[:, 0] + intake @ self.weights) / size
        tension = track.axial * (strain - track.expansion * rise)

        lever = np.zeros_like(local)
        lever[:, 0], lever[:, 3] = -1.0, 1.0
        lever[:, SIDEWAYS] = (gradient + self.own) @ (self.slope * self.weights).T
        lever[:, SIDEWAYS] += track.curvature * (self.value @ self.weights)

        moved = sideways @ self.fine
        limit = np.where(moved < 0.0, track.inward_factor, 1.0) * track.resistance
        root = np.sqrt(moved**2 + track.smoothing**2)
        forces = tension[:, None] * lever
        forces[:, SIDEWAYS] += sideways @ self.stiff + (limit * moved / root) @ self.fine_force.T

        blocks = track.axial / size * np.einsum("ei,ej->eij", lever, lever)
        side = self.stiff[None] + tension[:, None, None] * self.turning.sum(axis=0)[None]
        side = side + ((limit * track.smoothing**2 / root**3) @ self.fine_stiff).reshape(-1, 4, 4)
        blocks[np.ix_(range(track.elements), SIDEWAYS, SIDEWAYS)] += side

        balance = self._gather(forces)
        balance[0::PER_NODE] += self.springs * state[0::PER_NODE]
        end = math.sqrt(track.stiffness * track.axial)
        # The rail beyond pushes with the full thermal force and gives way like a spring.
        balance[-3] += end * state[-3] + track.axial * track.expansion * rise
        heat = -track.axial * track.expansion * lever
        heating = self._gather(heat)
        heating[-3] += track.axial * track.expansion

        band = np.zeros((2 * BAND + 1, self.unknowns))
        for row in range(6):
            for column in range(6):
                # Within one pair of places no unknown occurs twice, so plain addition is enough.
                band[BAND + row - column, self.index[:, column]] += blocks[:, row, column]
        band[BAND, 0::PER_NODE] += self.springs
        band[BAND, -3] += end
        for held in self.held:
            for other in range(max(0, held - BAND), min(self.unknowns, held + BAND + 1)):
                band[BAND + held - other, other] = 0.0
                band[BAND + other - held, held] = 0.0
            band[BAND, held] = 1.0
            balance[held] = heating[held] = 0.0
        return balance, heating, band

    def _gather(self, forces: Array) -> Array:
        gathered = np.zeros(self.unknowns)
        np.add.at(gathered, self.index, forces)
        return gathered

    def equilibrium(self, state: Array, rise: float, deflection: float) -> tuple[Array, float] | None:
        """Return the equilibrium with a deflection at the middle, by Newton's method; None when it does not settle."""
        for _ in range(12):
            balance, heating, band = self.system(state, rise)
            both = np.column_stack([-balance, -heating])
            steps = solve_banded((BAND, BAND), band, both, check_finite=False)
            change = (deflection - state[1] - steps[1, 0]) / steps[1, 1]
            move = steps[:, 0] + change * steps[:, 1]
            state, rise = state + move, rise + float(change)
            largest = float(np.max(np.abs(move[1::PER_NODE])))
            if not math.isfinite(largest) or largest > 10.0 * self.track.length:
                return None
            if largest < 1e-4 * self.track.smoothing and abs(change) < 1e-6:
                return state, rise
        return None

    def follow(self, first: float, last: float, ratio: float = 1.12) -> tuple[Array, Array]:
        """Return deflections and rises from the first deflection until the last, or until well past the lower rise."""
        before: tuple[float, Array, float] | None = None
        now = (0.0, np.zeros(self.unknowns), 0.0)
        deflections: list[float] = []
        rises: list[float] = []
        factor = ratio
        while now[0] < last:
            target = min(last, now[0] * factor) if now[0] > 0.0 else first
            state, rise = now[1], now[2]
            if before is not None and before[0] > 0.0:
                share = math.log(target / now[0]) / math.log(now[0] / before[0])
                state = state + share * (state - before[1])
                rise += share * (rise - before[2])
            found = self.equilibrium(state, rise, target)
            if found is None:
                factor = math.sqrt(factor)
                if factor < 1.0002 or now[0] == 0.0:
                    msg = f"the elements do not settle at a deflection of {target} m"
                    raise ArithmeticError(msg)
                continue
            before, now = now, (target, *found)
            factor = min(ratio, factor**1.5)
            deflections.append(target)
            rises.append(found[1])
            turned = turning_points(np.array(deflections), np.array(rises))
            if turned is not None and rises[-1] > turned[1] + 0.03 * abs(turned[1]) and rises[-1] > rises[-2]:
                break
        return np.array(deflections), np.array(rises)


def turning_points(deflections: Array, rises: Array) -> tuple[float, float] | None:
    """Return the first maximum and the lowest value after it; None when the rise grows all along."""
    falling = np.nonzero(np.diff(rises) < 0.0)[0]
    if len(falling) == 0:
        return None
    top = int(falling[0])
    low = top + int(np.argmin(rises[top:]))
    return _peak(deflections, rises, top), _peak(deflections, rises, low)


def _peak(deflections: Array, rises: Array, index: int) -> float:
    """Return the turning value of the parabola through a point and its neighbours over the logarithm of deflection."""
    if not 0 < index < len(rises) - 1:
        return float(rises[index])
    place = np.log(deflections[index - 1 : index + 2] / deflections[index])
    quadratic, linear, constant = np.polyfit(place, rises[index - 1 : index + 2], 2)
    return float(constant - linear**2 / (4.0 * quadratic))


def _cubics(place: Array, size: float) -> tuple[Array, Array, Array]:
    """Return values, slopes and curvatures of the beam's four cubic shape functions."""
    square, cube = place**2, place**3
    values = [
        1 - 3 * square + 2 * cube,
        size * (place - 2 * square + cube),
        3 * square - 2 * cube,
        size * (cube - square),
    ]
    slopes = [
        6 * (square - place) / size,
        1 - 4 * place + 3 * square,
        6 * (place - square) / size,
        3 * square - 2 * place,
    ]
    bends = [
        (12 * place - 6) / size**2,
        (6 * place - 4) / size,
        (6 - 12 * place) / size**2,
        (6 * place - 2) / size,
    ]
    return np.array(values), np.array(slopes), np.array(bends)
