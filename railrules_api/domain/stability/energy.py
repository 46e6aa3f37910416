"""Energy that a disturbance must bring in to make a hot track buckle, and the balance of energy along a path."""

from __future__ import annotations

from itertools import pairwise

from railrules_api.domain.errors import refuse
from railrules_api.domain.stability.results import BucklingPath, Equilibrium, PathKind


def buckling_energy(*, path: BucklingPath, temperature_rise: float) -> float:
    """Return the energy between the stable state before buckling and the unstable state beyond it at one rise.

    `U = E_unstable - E_stable`, both read off the path by linear interpolation between its points. Zero at the upper rise,
    largest at the lower rise. Below the first rise of the path the stable state is the track at rest with `E = 0`.

    Source: the notion is that of ORD-13/16, from memory; the energy is derived here, see `balance`.

    Args:
        path: a path that snaps through.
        temperature_rise: between the lower and the upper rise [K].

    Returns:
        The energy for the whole track [J].

    Raises:
        RefusedError: when the path does not snap through or the rise is not between its lower and its upper rise.
    """
    if path.kind is not PathKind.SNAP_THROUGH or path.upper is None or path.lower is None:
        raise refuse("path", reason="only a path that snaps through has a buckling energy", value=path.kind.value)
    upper, lower = path.upper, path.lower
    if not lower.temperature_rise <= temperature_rise <= upper.temperature_rise:
        raise refuse(
            "temperature_rise",
            reason="must lie between the lower and the upper rise",
            value=temperature_rise,
            minimum=lower.temperature_rise,
            maximum=upper.temperature_rise,
        )
    before = [point for point in path.points if point.deflection < upper.deflection]
    between = [point for point in path.points if upper.deflection < point.deflection < lower.deflection]
    # An upper rise at which movement only begins has no points before it.
    at_rest = not before or temperature_rise <= before[0].temperature_rise
    stable = 0.0 if at_rest else _read([*before, upper], temperature_rise)
    return _read([upper, *between, lower], temperature_rise) - stable


def _read(points: list[Equilibrium], rise: float) -> float:
    """Return the energy at a rise on a run of points that brackets it; the last one's when its last digit is passed."""
    return next(
        (
            one.energy + (rise - one.temperature_rise) / (two.temperature_rise - one.temperature_rise) * (two.energy - one.energy)
            for one, two in pairwise(points)
            if one.temperature_rise != two.temperature_rise
            and 0.0 <= (rise - one.temperature_rise) / (two.temperature_rise - one.temperature_rise) <= 1.0
        ),
        points[-1].energy,
    )
