"""Saint-Venant torsion constant and shear centre by a boundary-element solution of the warping function.

The warping function w is harmonic in the section, with dw/dn = y nx - x ny on its edge (coordinates from the centroid;
any text on elasticity). Then
    J = Ix + Iy - ∮ w dw/dn ds
and, for material without lateral contraction, the shear centre from the centroid (Trefftz's definition) is
    x_s = (Ixy ∫xw dA - Iy ∫yw dA) / D,  y_s = (Ix ∫xw dA - Ixy ∫yw dA) / D,  D = Ix Iy - Ixy²
with Ix = ∫y² dA, Iy = ∫x² dA; the area integrals become edge integrals because x and y are the Laplacians of x³/6 and
y³/6. Only the edge is divided, into straight pieces with constant w, over which the kernels and the linear dw/dn are integrated
exactly. Two divisions, the second twice as fine, are extrapolated; how far they lie apart is stated with the answer.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from railrules_api.domain.errors import refuse
from railrules_api.domain.profile.flatten import flatten
from railrules_api.domain.profile.properties import section_properties

if TYPE_CHECKING:
    from railrules_api.domain.profile.elements import Point
    from railrules_api.domain.profile.outline import Outline

PIECES = 180
"""Pieces of the coarse division, about; the fine one has twice as many."""
NOISE = 1e-9
"""Share of the height below which an offset is nothing but the rounding of the equations, which differs between machines."""


@dataclass(frozen=True, slots=True)
class TorsionProperties:
    """Resistance to twisting.

    Attributes:
        torsion_constant: J [m4].
        shear_centre_height: above the bottom of the base [m].
        shear_centre_offset: to the right of the drawing's vertical axis [m]; 0 for an unworn rail.
        relative_error: distance between the two solutions from which the answer is extrapolated, relative to J. The answer
            is much closer than that when the error falls with the square of the length, as it does for rails; for
            shapes as thin as ten to one it falls more slowly. An estimate, not a bound.
    """

    torsion_constant: float
    shear_centre_height: float
    shear_centre_offset: float
    relative_error: float


def torsion_properties(outline: Outline, pieces: int = PIECES) -> TorsionProperties:
    """Compute torsion constant and shear centre.

    Args:
        outline: a checked outline.
        pieces: about how many pieces the coarse division has; 40 to 1000.

    Returns:
        The torsion properties.

    Raises:
        RefusedError: a number of pieces outside its limits.
    """
    fewest, most = 40, 1000
    if not fewest <= pieces <= most:
        raise refuse("pieces", reason="outside its limits", value=pieces, minimum=float(fewest), maximum=float(most))
    whole = section_properties(outline)
    centre = (whole.centroid_offset, whole.centroid_height + outline.bounds()[1])
    inertia = (whole.second_moment_horizontal, whole.second_moment_vertical, whole.product_of_inertia)
    results = []
    for fineness in (pieces, 2 * pieces):
        # A chord error that shrinks with the square of the length keeps the divisions similar, fit to extrapolate.
        longest = whole.perimeter / fineness
        points = flatten(outline, chord_error=longest * longest / (4 * whole.height), longest=longest)
        results.append(_solve([(x - centre[0], y - centre[1]) for x, y in points], inertia))
    coarse, fine = results
    # The error falls with the square of the length of a piece.
    constant, x, y = (b + (b - a) / 3 for a, b in zip(coarse, fine, strict=True))
    offset = x + whole.centroid_offset
    return TorsionProperties(
        torsion_constant=constant,
        shear_centre_height=y + whole.centroid_height,
        shear_centre_offset=0.0 if abs(offset) < NOISE * whole.height else offset,
        relative_error=abs(fine[0] - coarse[0]) / constant,
    )


def _solve(points: list[Point], inertia: tuple[float, float, float]) -> tuple[float, float, float]:
    """Solve one division; return J and the shear centre from the centroid."""
    import numpy as np  # noqa: PLC0415  (the only general numerics in the house; loaded when torsion is asked for)

    start = np.asarray(points)
    end = np.roll(start, -1, axis=0)
    length = np.hypot(*(end - start).T)
    along = (end - start) / length[:, None]
    normal = np.column_stack((along[:, 1], -along[:, 0]))
    middle = (start + end) / 2
    # Piece j seen from the middle of piece i: its ends along its own direction, and its distance square to it.
    first = start[None, :, :] - middle[:, None, :]
    t_first = np.einsum("ijk,jk->ij", first, along)
    t_last = t_first + length[None, :]
    away = np.einsum("ijk,jk->ij", first, normal)
    np.fill_diagonal(away, 0.0)
    r_first, r_last = np.hypot(t_first, away), np.hypot(t_last, away)
    ln_first, ln_last = np.log(r_first), np.log(r_last)
    angle = np.arctan2(t_last, away) - np.arctan2(t_first, away)
    # atan2 of a negative distance jumps by a full turn; a straight piece is seen under less than half a turn.
    angle = (angle + np.pi) % (2 * np.pi) - np.pi
    np.fill_diagonal(angle, 0.0)
    log_integral = t_last * ln_last - t_first * ln_first - length[None, :] + away * angle
    moment = (r_last**2 * (ln_last - 0.5) - r_first**2 * (ln_first - 0.5)) / 2
    # dw/dn = position · direction, linear along a piece: its value at the foot of the perpendicular, plus t.
    foot = np.einsum("ik,jk->ij", middle, along)
    load = -(foot * log_integral + moment).sum(axis=1)
    matrix = angle.copy()
    # A constant warping must be free: every row adds up to nothing. That fixes the diagonal better than theory does.
    np.fill_diagonal(matrix, 0.0)
    np.fill_diagonal(matrix, -matrix.sum(axis=1))
    # The constant itself is settled by asking for zero mean.
    bordered = np.vstack((np.column_stack((matrix, np.ones(len(length)))), np.append(length, 0.0)))
    warping = np.linalg.solve(bordered, np.append(-load, 0.0))[:-1]
    flux = (np.einsum("ij,ij->i", middle, along)) * length
    horizontal, vertical, product = inertia
    constant = horizontal + vertical - float(warping @ flux)
    # Area integrals of x w and y w as edge integrals, two Gauss points a piece.
    moments = np.zeros(2)
    for offset in (-1 / math.sqrt(3), 1 / math.sqrt(3)):
        place = middle + along * (offset * length / 2)[:, None]
        slope = np.einsum("ij,ij->i", place, along)
        for axis in (0, 1):
            coordinate = place[:, axis]
            part = warping * coordinate**2 / 2 * normal[:, axis] - coordinate**3 / 6 * slope
            moments[axis] += float((part * length / 2).sum())
    determinant = horizontal * vertical - product * product
    return (
        constant,
        float(product * moments[0] - vertical * moments[1]) / determinant,
        float(horizontal * moments[0] - product * moments[1]) / determinant,
    )
