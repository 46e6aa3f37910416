"""Buckling, written out: the governing equation at the root found, and by how much the root misses it."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from railrules_api.domain import stability
from railrules_api.domain.amounts import Amount
from railrules_api.domain.kinds import Kind
from railrules_api.rules.radius import radius_from
from railrules_api.rules.thermal.buckling import path_of, vertical_state
from railrules_api.rules.written.terms import Written, count, length, read
from railrules_api.rules.written.thermal import change, expansion

if TYPE_CHECKING:
    from collections.abc import Iterator

    from railrules_api.rules.thermal.buckling_fields import BucklingInput, BucklingResult, Mode
    from railrules_api.rules.written.terms import Numbers, Way

_TURNED: Final = 1e-6
"""Slope of the rise below which a state of the path is a turning point."""


def _doubled(given: BucklingInput, second_moment: float) -> Numbers:
    """Return what both rails together have: I in bending, N lengthwise, R along the track."""
    return {
        "I": Amount(2 * second_moment, Kind.SECOND_MOMENT),
        "N": Amount(2 * given.elastic_modulus * given.area, Kind.FORCE),
        "R": Amount(2 * given.resistance, Kind.FORCE_PER_LENGTH),
    }


def _both_rails(given: BucklingInput) -> Iterator[Written]:
    both = _doubled(given, given.second_moment_lateral)
    modulus = Amount(given.elastic_modulus, Kind.STRESS)
    lateral = Amount(given.second_moment_lateral, Kind.SECOND_MOMENT)
    yield Written("2 * I_y", {"I_y": lateral}, both["I"], "both rails, I")
    yield Written("2 * E * A", {"E": modulus, "A": Amount(given.area, Kind.AREA)}, both["N"], "both rails, N")
    yield Written("2 * r", {"r": Amount(given.resistance, Kind.FORCE_PER_LENGTH)}, both["R"], "both rails, R")


def _mode(given: BucklingInput, state: Mode | stability.BuckledState, both: Numbers, resistance: float) -> Iterator[Written]:
    """Write the rise of one shape at the length found, and the condition that makes that length the one of least rise."""
    constants = stability.mode_constants(state.mode)
    of = f"{state.mode} lobe{'' if state.mode == 1 else 's'}"
    at, second = length(state.length), count(constants.feed_in)
    lateral = Amount(resistance, Kind.FORCE_PER_LENGTH)
    modulus, bending = Amount(given.elastic_modulus, Kind.STRESS), given.elastic_modulus * both["I"].value
    ratio = constants.feed_in * both["N"].value * (lateral.value / bending) ** 2 * at.value**5 / both["R"].value
    numbers: Numbers = {**both, "E": modulus, "k_2": second, "F": lateral, "L": at}
    yield Written("k_2 * N * F ** 2 * L ** 5 / (R * (E * I) ** 2)", numbers, count(ratio), f"{of}: q at L")
    numbers = {
        **both, "E": modulus, "k_1": count(constants.force), "k_3": count(constants.length_factor), "L": at, "q": count(ratio),
        "alpha": expansion(given.expansion),
    }  # fmt: skip
    text = "k_1 * E * I / L ** 2 / (N * alpha) + k_3 * R * L * (sqrt(1 + q) - 1) / (N * alpha)"
    yield Written(text, numbers, change(state.temperature_rise), of)
    root = math.sqrt(1 + ratio)
    growth = constants.length_factor * both["R"].value * at.value * (ratio / (1 + root) + 2.5 * ratio / root)
    fall = 2 * constants.force * bending / at.value**2
    numbers = {"k_1": count(constants.force), "E": modulus, "I": both["I"], "L": at}
    yield Written("2 * k_1 * E * I / L ** 2", numbers, Amount(fall, Kind.FORCE), f"{of}: the first term falls with L by")
    numbers = {"k_3": count(constants.length_factor), "R": both["R"], "L": at, "q": count(ratio)}
    note = f"as much, so the rise is least: the root found misses it by {abs(growth / fall - 1):.1e} of itself"
    slope = "k_3 * R * L * (q / (1 + sqrt(1 + q)) + 2.5 * q / sqrt(1 + q))"
    yield Written(slope, numbers, Amount(growth, Kind.FORCE), f"{of}: the second grows by", note)


def _lowest(given: BucklingInput, found: BucklingResult) -> Iterator[Written]:
    if found.lowest_rise is None:
        return
    yield from _both_rails(given)
    for state in found.modes:
        yield from _mode(given, state, _doubled(given, given.second_moment_lateral), given.lateral_resistance)
    rises = {f"d_{state.mode}": change(state.temperature_rise) for state in found.modes}
    yield Written(f"min({', '.join(rises)})", rises, change(found.lowest_rise), "least of the shapes")


def _lifted(given: BucklingInput, found: BucklingResult) -> Iterator[Written]:
    """Write the rise at which track stands lifted: one lobe, its weight in place of the lateral resistance."""
    state = vertical_state(given)
    if found.vertical_rise is not None and state is not None and given.second_moment is not None:
        yield from _mode(given, state, _doubled(given, given.second_moment), given.track_weight or 0.0)


def _turning(given: BucklingInput, found: BucklingResult, which: str) -> Iterator[Written]:
    """Write the rise of a state on the path with a defect."""
    rise: float | None = getattr(found, f"{which}_rise")
    if rise is None:
        return
    curved = given.radius is not None or given.degree is not None
    path = path_of(given, 1 / radius_from(given.radius, given.degree) if curved else 0.0)
    state: stability.Equilibrium | None = None if path is None else getattr(path, which)
    if state is None:
        yield read(change(rise), "without a line defect: the lowest rise")
        return
    yield from _state(given, state)


def _state(given: BucklingInput, state: stability.Equilibrium) -> Iterator[Written]:
    axial = 2 * given.elastic_modulus * given.area
    strain = state.temperature_rise * given.expansion - state.buckled_force / axial
    numbers: Numbers = {
        "E": Amount(given.elastic_modulus, Kind.STRESS), "A": Amount(given.area, Kind.AREA), "alpha": expansion(given.expansion),
        "P": Amount(state.buckled_force, Kind.FORCE), "e": count(strain),
    }  # fmt: skip
    turned = abs(state.slope) <= _TURNED
    found = f"there the rise changes by {abs(state.slope):.1e} of itself for each e-fold of the deflection"
    note = (
        f"{state.lobes} lobe{'' if state.lobes == 1 else 's'}, half length {state.half_length:.6g} m, deflection "
        f"{state.deflection:.6g} m; {found if turned else 'a corner of the path, where the number of lobes changes'}"
    )
    of = "at the turning point" if turned else "at the corner"
    yield Written("(P / (2 * E * A) + e) / alpha", numbers, change(state.temperature_rise), of, note)
    if given.held == "outside" and given.stiffness is not None:
        numbers = {
            "Z": length(state.take_up), "b": length(state.half_length), "k": Amount(given.stiffness, Kind.FOUNDATION_MODULUS),
            "E": Amount(given.elastic_modulus, Kind.STRESS), "A": Amount(given.area, Kind.AREA),
        }  # fmt: skip
        of = "e, by the length Z that half the shape takes up"
        yield Written("Z * sqrt(k / (E * A)) / (1 + b * sqrt(k / (E * A)))", numbers, count(strain), of)


def _allowed(given: BucklingInput, found: BucklingResult) -> Iterator[Written]:
    if found.allowed_rise is None or found.lower_rise is None:
        return
    lower, allowed = change(found.lower_rise), change(found.allowed_rise)
    if given.margin_rule == "lower-rise":
        yield Written("d_l - m", {"d_l": lower, "m": change(given.margin)}, allowed, note=found.allowed_by)
        return
    assert found.upper_rise is not None  # the difference rule has both
    rule, apart = stability.UIC_720, found.upper_rise - found.lower_rise
    if apart > rule.large_difference:
        numbers = {"d_l": lower, "p": count(rule.share), "d_u": change(found.upper_rise)}
        yield Written("d_l + p * (d_u - d_l)", numbers, allowed, note=found.allowed_by)
    elif apart >= rule.small_difference:
        yield Written("d_l", {"d_l": lower}, allowed, note=found.allowed_by)
    else:
        yield Written("d_l - q", {"d_l": lower, "q": change(rule.deduction)}, allowed, note=found.allowed_by)


WAYS: Final[dict[tuple[str, str], Way]] = {
    ("thermal.buckling", "lowest_rise"): _lowest,
    ("thermal.buckling", "vertical_rise"): _lifted,
    ("thermal.buckling", "lower_rise"): lambda given, found: _turning(given, found, "lower"),
    ("thermal.buckling", "upper_rise"): lambda given, found: _turning(given, found, "upper"),
    ("thermal.buckling", "allowed_rise"): _allowed,
}
