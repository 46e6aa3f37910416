"""A welded rail against distributed longitudinal restraint: what its end does when the force there drops to nothing.

The rail is a bar under the axial force P0 that full restraint gives it. Where it is cut, breaks or ends, the force is zero and
the end moves; the restraint builds the force up again with distance. Three laws of restraint per unit length of rail:

- rigid-plastic: r everywhere the rail moves at all;
- elastic: k times the movement, without limit;
- bilinear: k times the movement up to r, then r.

Every force here is a magnitude, and so is every movement; the caller knows which way they point.
"""

from __future__ import annotations

import math
from typing import Final, Literal, NamedTuple

from railrules_api.domain.roots import square_root

Law = Literal["rigid-plastic", "elastic", "bilinear"]
LAWS: Final[tuple[Law, ...]] = ("rigid-plastic", "elastic", "bilinear")


class Restraint(NamedTuple):
    """How the track holds one rail lengthwise.

    Attributes:
        law: the law of restraint.
        resistance: limit r [N/m]; not used by the elastic law.
        stiffness: k [N/m per m]; not used by the rigid-plastic law.
    """

    law: Law
    resistance: float
    stiffness: float


class Slip(NamedTuple):
    """What happens at one free end.

    Attributes:
        movement: movement of the end [m].
        slip_length: length along which the restraint is used up to its limit [m].
        decay_length: length in which the elastic part of the disturbance falls to 1/e [m]; 0 for the rigid-plastic law.
    """

    movement: float
    slip_length: float
    decay_length: float

    def force_share(self, distance: float, reach: float) -> float:
        """Return the share of the full force found at a distance from the end; `reach` is P0 / r (rigid-plastic, bilinear)."""
        if distance < self.slip_length:
            return distance / reach
        if self.decay_length == 0.0:
            return 1.0
        at_slip = self.slip_length / reach if self.slip_length > 0.0 else 0.0
        return 1.0 - (1.0 - at_slip) * math.exp(-(distance - self.slip_length) / self.decay_length)


def free_end(force: float, axial_stiffness: float, restraint: Restraint) -> Slip:
    """Return how one end moves when the force P0 in the rail is released there.

    Rigid-plastic: x0 = P0 / r, u0 = P0^2 / (2 EA r). Elastic: lambda = sqrt(k / EA), u0 = P0 / (EA lambda). Bilinear: elastic
    while P0 <= r / lambda, else x_p = P0 / r - 1 / lambda and u0 = P0^2 / (2 EA r) + r / (2 k), which is the sum of r / k,
    r x_p / (EA lambda) and r x_p^2 / (2 EA).
    Source: equilibrium of a bar with distributed restraint.

    Args:
        force: P0, not negative [N].
        axial_stiffness: EA of one rail [N].
        restraint: law and its constants; those it uses must be positive.

    >>> free_end(1000.0, 1e6, Restraint("rigid-plastic", 10.0, 0.0))
    Slip(movement=0.05, slip_length=100.0, decay_length=0.0)
    """
    if restraint.law == "rigid-plastic":
        return Slip(force * force / (2 * axial_stiffness * restraint.resistance), force / restraint.resistance, 0.0)
    decay_length = square_root(axial_stiffness / restraint.stiffness)
    if restraint.law == "elastic" or force <= restraint.resistance * decay_length:
        return Slip(force * decay_length / axial_stiffness, 0.0, decay_length)
    movement = force * force / (2 * axial_stiffness * restraint.resistance) + restraint.resistance / (2 * restraint.stiffness)
    return Slip(movement, force / restraint.resistance - decay_length, decay_length)


def force_for_movement(movement: float, axial_stiffness: float, restraint: Restraint) -> float:
    """Return the force P0 [N] whose release moves an end by `movement` [m]: the inverse of `free_end`."""
    if restraint.law == "rigid-plastic":
        return square_root(2 * axial_stiffness * restraint.resistance * movement)
    decay_length = square_root(axial_stiffness / restraint.stiffness)
    elastic_limit = restraint.resistance / restraint.stiffness
    if restraint.law == "elastic" or movement <= elastic_limit:
        return movement * axial_stiffness / decay_length
    return square_root(2 * axial_stiffness * restraint.resistance * (movement - elastic_limit / 2))


def resistance_for_movement(movement: float, force: float, axial_stiffness: float, restraint: Restraint) -> float | None:
    """Return the resistance r [N/m] at which releasing `force` moves an end by no more than `movement`.

    None where no r is enough: the stiffness alone already lets it move further, or the law has no r. By bilinear law the
    movement falls with r down to the elastic limit.
    """
    if restraint.law == "elastic" or movement <= 0.0:
        return None
    if restraint.law == "rigid-plastic":
        return force * force / (2 * axial_stiffness * movement)
    squared = restraint.stiffness * movement
    under_root = squared * squared - restraint.stiffness * (force * force) / axial_stiffness
    if under_root < 0.0:
        return None
    return force * force * restraint.stiffness / axial_stiffness / (squared + square_root(under_root))
