"""Buckling of a perfectly straight track: force, temperature rise at a given length, and the lowest rise of all.

The track is a beam of two rails, `EI = 2 E I` and `EA = 2 E A` with `I` and `A` those of one rail; the turning stiffness of
the fastenings is left out. Lateral resistance is constant and opposes movement; along the track the rails slip against a
constant resistance outside the buckle.

Source: formulas in the form of Hobbs, ASCE Journal of Transportation Engineering 110(2), 1984 (from memory); constants
and the compatibility condition derived here. The vertical form is that of one lobe with the weight of the track in
place of the resistance (from memory, same place).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from railrules_api.domain.errors import refuse
from railrules_api.domain.stability._inputs import require_positive
from railrules_api.domain.stability.modes import MODES, ModeConstants, mode_constants


@dataclass(frozen=True, slots=True, kw_only=True)
class BuckledState:
    """A buckled equilibrium of a perfectly straight track.

    Attributes:
        mode: 1 to 4, the number of lobes.
        length: the mode's reference length `L`, see `mode_constants` [m].
        whole_length: length of the whole buckle [m].
        buckled_force: compression inside the buckle, both rails [N].
        far_force: compression far from the buckle, both rails [N].
        temperature_rise: rise above the neutral temperature at which this state is in equilibrium [K].
        deflection: largest deflection [m].
        moment: largest bending moment, both rails [N m].
        slip_length: length on each side of the buckle over which the rails slip [m].
    """

    mode: int
    length: float
    whole_length: float
    buckled_force: float
    far_force: float
    temperature_rise: float
    deflection: float
    moment: float
    slip_length: float


@dataclass(frozen=True, slots=True, kw_only=True)
class LowestRise:
    """The lowest temperature rise at which a perfectly straight track has a buckled equilibrium.

    Attributes:
        temperature_rise: the lowest over lengths and modes [K].
        governing: the state that gives it.
        by_mode: the lowest state of every mode, in the order of the modes.
    """

    temperature_rise: float
    governing: BuckledState
    by_mode: tuple[BuckledState, ...]


@dataclass(frozen=True, slots=True)
class _Beam:
    bending: float
    axial: float
    expansion: float
    resistance: float
    slip: float


def buckled_state(  # noqa: PLR0913 - one keyword for each physical input
    *,
    mode: int,
    length: float,
    elastic_modulus: float,
    second_moment: float,
    area: float,
    expansion_coefficient: float,
    lateral_resistance: float,
    longitudinal_resistance: float,
) -> BuckledState:
    """Return the buckled equilibrium of a straight track in one mode at one length.

    `P = k1 EI / L^2`; `P0 = P + k3 r L (sqrt(1 + k2 EA rho^2 L^5 / (r EI^2)) - 1)`; `dT = P0 / (EA alpha)`;
    `w_max = k4 rho L^4 / EI`; `M_max = k5 rho L^2`; slip length `(P0 - P) / r`.

    Args:
        mode: 1 to 4.
        length: reference length `L` of the mode [m].
        elastic_modulus: of the rail steel [Pa].
        second_moment: of one rail about its vertical axis [m4].
        area: of one rail [m2].
        expansion_coefficient: of the rail steel [1/K].
        lateral_resistance: `rho`, of the track [N/m].
        longitudinal_resistance: `r`, of the track, both rails [N/m].

    Returns:
        The state.

    Raises:
        RefusedError: for an unknown mode or an input that is not a finite number above zero.
    """
    require_positive(length=length)
    beam = _beam(
        elastic_modulus=elastic_modulus,
        second_moment=second_moment,
        area=area,
        expansion_coefficient=expansion_coefficient,
        lateral_resistance=lateral_resistance,
        longitudinal_resistance=longitudinal_resistance,
    )
    return _state(beam, mode_constants(mode), length)


def lowest_rise(  # noqa: PLR0913 - one keyword for each physical input
    *,
    elastic_modulus: float,
    second_moment: float,
    area: float,
    expansion_coefficient: float,
    lateral_resistance: float,
    longitudinal_resistance: float,
    modes: tuple[int, ...] = MODES,
) -> LowestRise:
    """Return the lowest temperature rise at which a straight track can be in a buckled state, over lengths and modes.

    `dT_safe = min over L and modes of P0(L) / (EA alpha)`, `P0` as in `buckled_state`. Below it no buckled state of
    these shapes exists, so a straight track stays straight whatever pushes it.

    The far force has one minimum over length: the slope condition `2 k1 EI / L^2 = L d(P0 - P)/dL` has a left side
    that falls and a right side that grows. Its root is bracketed from below by the length for an infinite longitudinal
    resistance, `L^8 = 2 k1 EI^3 / (3 k2 k3 EA rho^2)`. As the longitudinal resistance goes to zero so does the rise.

    Args:
        elastic_modulus: of the rail steel [Pa].
        second_moment: of one rail about its vertical axis [m4].
        area: of one rail [m2].
        expansion_coefficient: of the rail steel [1/K].
        lateral_resistance: `rho`, of the track [N/m].
        longitudinal_resistance: `r`, of the track, both rails [N/m].
        modes: the modes to search, at least one of 1 to 4.

    Returns:
        The lowest rise, its state and the lowest state of every mode searched.

    Raises:
        RefusedError: for no mode, an unknown mode or an input that is not a finite number above zero.
    """
    if not modes:
        raise refuse("modes", reason="at least one mode is needed", value=modes, allowed=tuple(map(str, MODES)))
    beam = _beam(
        elastic_modulus=elastic_modulus,
        second_moment=second_moment,
        area=area,
        expansion_coefficient=expansion_coefficient,
        lateral_resistance=lateral_resistance,
        longitudinal_resistance=longitudinal_resistance,
    )
    states = tuple(_state(beam, constants, _lowest_length(beam, constants)) for constants in map(mode_constants, modes))
    governing = min(states, key=lambda state: state.temperature_rise)
    return LowestRise(temperature_rise=governing.temperature_rise, governing=governing, by_mode=states)


def lowest_vertical_rise(  # noqa: PLR0913 - one keyword for each physical input
    *,
    elastic_modulus: float,
    second_moment: float,
    area: float,
    expansion_coefficient: float,
    track_weight: float,
    longitudinal_resistance: float,
) -> BuckledState:
    """Return the lowest rise at which a straight track can stand lifted off its bed against its own weight.

    One lobe with the weight of the track per length in place of the lateral resistance and the rail's second moment
    about its horizontal axis: `P = k1 EI / L^2`, `v_max = k4 q L^4 / EI`, far force and rise as in `buckled_state`.
    The bed is rigid, and no rail vehicle holds the track down.

    Args:
        elastic_modulus: of the rail steel [Pa].
        second_moment: of one rail about its horizontal axis [m4].
        area: of one rail [m2].
        expansion_coefficient: of the rail steel [1/K].
        track_weight: weight of rails, ties and fastenings that is lifted, per length of track [N/m].
        longitudinal_resistance: of the track, both rails [N/m].

    Returns:
        The lowest state of the one-lobe shape.

    Raises:
        RefusedError: for an input that is not a finite number above zero.
    """
    require_positive(track_weight=track_weight)
    beam = _beam(
        elastic_modulus=elastic_modulus,
        second_moment=second_moment,
        area=area,
        expansion_coefficient=expansion_coefficient,
        lateral_resistance=track_weight,
        longitudinal_resistance=longitudinal_resistance,
    )
    constants = mode_constants(1)
    return _state(beam, constants, _lowest_length(beam, constants))


def _beam(  # noqa: PLR0913 - one keyword for each physical input
    *,
    elastic_modulus: float,
    second_moment: float,
    area: float,
    expansion_coefficient: float,
    lateral_resistance: float,
    longitudinal_resistance: float,
) -> _Beam:
    require_positive(
        elastic_modulus=elastic_modulus,
        second_moment=second_moment,
        area=area,
        expansion_coefficient=expansion_coefficient,
        lateral_resistance=lateral_resistance,
        longitudinal_resistance=longitudinal_resistance,
    )
    return _Beam(
        bending=2.0 * elastic_modulus * second_moment,
        axial=2.0 * elastic_modulus * area,
        expansion=expansion_coefficient,
        resistance=lateral_resistance,
        slip=longitudinal_resistance,
    )


def _feed_ratio(beam: _Beam, constants: ModeConstants, length: float) -> float:
    """Return `k2 EA rho^2 L^5 / (r EI^2)`."""
    return constants.feed_in * beam.axial * (beam.resistance / beam.bending) ** 2 * length**5 / beam.slip


def _state(beam: _Beam, constants: ModeConstants, length: float) -> BuckledState:
    ratio = _feed_ratio(beam, constants, length)
    # sqrt(1 + x) - 1 loses all its digits for the small x of a large longitudinal resistance; this form does not.
    feed = constants.length_factor * beam.slip * length * ratio / (1.0 + math.sqrt(1.0 + ratio))
    force = constants.force * beam.bending / length**2
    return BuckledState(
        mode=constants.mode,
        length=length,
        whole_length=constants.whole_length * length,
        buckled_force=force,
        far_force=force + feed,
        temperature_rise=(force + feed) / (beam.axial * beam.expansion),
        deflection=constants.deflection * beam.resistance * length**4 / beam.bending,
        moment=constants.moment * beam.resistance * length**2,
        slip_length=feed / beam.slip,
    )


def _lowest_length(beam: _Beam, constants: ModeConstants) -> float:
    """Return the length at which the far force of a mode is lowest [m]."""
    from scipy.optimize import brentq  # noqa: PLC0415

    # Pure numbers, so that the units of the question leave no trace: lengths over that for an infinite longitudinal
    # resistance, which solves `growth = force` for a small ratio.
    stiff = 2.0 * constants.force * beam.bending**3
    stiff /= 3.0 * constants.feed_in * constants.length_factor * beam.axial * beam.resistance**2
    stiff = math.sqrt(math.sqrt(math.sqrt(stiff)))
    unit = _feed_ratio(beam, constants, stiff)

    def slope(log_length: float) -> float:
        length = math.exp(log_length)
        root = math.sqrt(1.0 + unit * length**5)
        return length**8 * (2.0 / (1.0 + root) + 5.0 / root) - 6.0

    # Half and twice: the root may sit on the lower bound itself when the longitudinal resistance is very large.
    low, high = -math.log(2.0), math.log(2.0)
    while slope(high) <= 0.0:
        high += math.log(2.0)
    return stiff * math.exp(float(brentq(slope, low, high, xtol=1e-15, rtol=1e-15)))
