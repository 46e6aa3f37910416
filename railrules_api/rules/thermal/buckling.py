"""Sideways and upward buckling of hot track: lowest rise, upper and lower rise with a defect, allowed rise."""

from __future__ import annotations

import math
from contextlib import contextmanager
from dataclasses import replace
from typing import TYPE_CHECKING, Final

from railrules_api.domain import stability
from railrules_api.domain.amounts import Amount
from railrules_api.domain.errors import RefusedError, refuse
from railrules_api.domain.kinds import Kind
from railrules_api.rules import words
from railrules_api.rules.checks import Check, compare
from railrules_api.rules.common import NEUTRAL_TEMPERATURE_DRIFTS, OWN_STANDARDS
from railrules_api.rules.model import Caution, Cite, Formula, Rule
from railrules_api.rules.radius import radius_from
from railrules_api.rules.thermal.buckling_fields import BucklingInput, BucklingResult, Mode, PathPoint, PathWord

if TYPE_CHECKING:
    from collections.abc import Iterator

SHARPEST_WITNESSED: Final = 1146 * words.FOOT
"""Sharpest curve for which the finite-element witness agreed, about 5 degrees [m]; it did for three lobes, held throughout."""
_PATH_WORDS: Final[dict[stability.PathKind, PathWord]] = {
    stability.PathKind.SNAP_THROUGH: "snap-through",
    stability.PathKind.PROGRESSIVE: "progressive",
    stability.PathKind.NO_DEFECT: "no-defect",
    stability.PathKind.UPPER_BEYOND_PATH: "upper-beyond-path",
}
_PLACE: Final = "allowed rise by the margin rule named; lower and upper rise worked out here"


LEAST_DEFECT: Final = 1e-6
"""A defect smaller than this is no defect [m]."""
_OWN_NAMES: Final = {
    "longitudinal_stiffness": "stiffness",
    "longitudinal_resistance": "resistance",
    "expansion_coefficient": "expansion",
    "curvature": "radius",
    "upper_rise": "margin_rule",
    "lower_rise": "margin_rule",
}
"""What the stability functions call our fields, where they differ."""


def evaluate(given: BucklingInput) -> BucklingResult:
    """Return the lowest buckling rise of straight track, the path with a line defect, and the allowed rise.

    Resistances and stiffness along the track are given for one rail and doubled here; lateral resistance is the track's.

    Raises:
        RefusedError: a defect without its length or a stiffness, or the reverse; the difference rule without a defect; a
            weight without the second moment it bends about.
    """
    _check_together(given)
    with _in_own_names():
        return _answer(given)


def _answer(given: BucklingInput) -> BucklingResult:
    change = given.rail_temperature - given.neutral_temperature
    curved = given.radius is not None or given.degree is not None
    radius = radius_from(given.radius, given.degree) if curved else math.inf
    if curved and not _curve_is_witnessed(given, radius):
        return _not_available(change, radius)
    straight = None if curved else _lowest(given)
    path = path_of(given, 1 / radius)
    lower = _rise(path.lower) if path is not None else (None if straight is None else straight.temperature_rise)
    upper = None if path is None else _rise(path.upper)
    allowed, reason = _allowed(given, path, lower, upper)
    where = words.long_length(radius) if curved else ""
    lifted = None if curved else vertical_state(given)
    return BucklingResult(
        available="yes",
        temperature_change=change,
        lowest_rise=None if straight is None else straight.temperature_rise,
        governing_mode=None if straight is None else straight.governing.mode,
        modes=() if straight is None else tuple(_mode(state) for state in straight.by_mode),
        vertical_rise=None if lifted is None else lifted.temperature_rise,
        path_kind=None if path is None else _PATH_WORDS[path.kind],
        lower_rise=lower,
        upper_rise=upper,
        lower_temperature=None if lower is None else given.neutral_temperature + lower,
        upper_temperature=None if upper is None else given.neutral_temperature + upper,
        allowed_rise=allowed,
        allowed_temperature=None if allowed is None else given.neutral_temperature + allowed,
        allowed_by=reason,
        buckling_energy=_energy(path, change),
        path=() if path is None else tuple(_point(state) for state in path.points),
        checks=(_check(change, allowed, reason, where),),
    )


def _curve_is_witnessed(given: BucklingInput, radius: float) -> bool:
    """Tell whether the witness covers this curve: a real defect, three lobes, held throughout, not too sharp."""
    return (
        given.shape == "three-lobes"
        and given.held == "throughout"
        and given.defect_amplitude is not None
        and given.defect_amplitude > 0.0
        and radius >= SHARPEST_WITNESSED * (1 - 1e-3)
    )


def _lowest(given: BucklingInput) -> stability.LowestRise:
    return stability.lowest_rise(
        elastic_modulus=given.elastic_modulus,
        second_moment=given.second_moment_lateral,
        area=given.area,
        expansion_coefficient=given.expansion,
        lateral_resistance=given.lateral_resistance,
        longitudinal_resistance=2 * given.resistance,
    )


@contextmanager
def _in_own_names() -> Iterator[None]:
    """Let refusals name the fields as this rule has them; a track without a path of equilibria is refused too."""
    try:
        yield
    except RefusedError as error:
        parts = [replace(one, path=(_OWN_NAMES.get(str(one.path[0]), one.path[0]), *one.path[1:])) for one in error.refusals]
        raise RefusedError(*parts) from error
    except ArithmeticError as error:
        raise refuse("defect_amplitude", reason="no path of equilibria is found for this track and defect") from error


def _check_together(given: BucklingInput) -> None:
    if (given.defect_amplitude is None) != (given.defect_half_length is None):
        name = "defect_amplitude" if given.defect_amplitude is None else "defect_half_length"
        raise refuse(name, reason="a line defect needs its amplitude and its half length")
    if given.defect_amplitude is not None and 0.0 < given.defect_amplitude < LEAST_DEFECT:
        reason = "too small to be a defect; give 0 for none"
        raise refuse("defect_amplitude", reason=reason, value=given.defect_amplitude, minimum=LEAST_DEFECT)
    if given.defect_amplitude is not None and given.stiffness is None:
        raise refuse("stiffness", reason="a line defect needs the longitudinal stiffness")
    if given.margin_rule == "difference" and given.defect_amplitude is None:
        reason = "the difference rule needs a line defect: straight track has no upper rise"
        raise refuse("margin_rule", reason=reason, value=given.margin_rule, allowed=("lower-rise",))
    if given.track_weight is not None and given.second_moment is None:
        raise refuse("second_moment", reason="buckling upwards needs the second moment about the level axis")


def path_of(given: BucklingInput, curvature: float) -> stability.BucklingPath | None:
    """Return the path of equilibria with the line defect; None where none is given."""
    if given.defect_amplitude is None or given.defect_half_length is None or given.stiffness is None:
        return None
    return stability.defect_path(
        elastic_modulus=given.elastic_modulus,
        second_moment=given.second_moment_lateral,
        area=given.area,
        expansion_coefficient=given.expansion,
        lateral_resistance=given.lateral_resistance,
        longitudinal_stiffness=2 * given.stiffness,
        defect_amplitude=given.defect_amplitude,
        defect_half_length=given.defect_half_length,
        shape=stability.BuckleShape(given.shape),
        restraint=stability.LongitudinalRestraint(given.held),
        curvature=curvature,
    )


def vertical_state(given: BucklingInput) -> stability.BuckledState | None:
    """Return the lowest state in which the track stands lifted off its bed; None where its weight is not given."""
    if given.track_weight is None or given.second_moment is None:
        return None
    return stability.lowest_vertical_rise(
        elastic_modulus=given.elastic_modulus,
        second_moment=given.second_moment,
        area=given.area,
        expansion_coefficient=given.expansion,
        track_weight=given.track_weight,
        longitudinal_resistance=2 * given.resistance,
    )


def _allowed(
    given: BucklingInput, path: stability.BucklingPath | None, lower: float | None, upper: float | None
) -> tuple[float | None, str]:
    """Return the allowed rise [K] and the branch of the rule, or None and why there is none."""
    if lower is None:
        return None, "progressive: the track moves further with every degree; no rise is allowed by a margin rule"
    if given.margin_rule == "lower-rise":
        if given.margin >= lower:
            return None, "the margin leaves no rise"
        allowed = stability.allowed_by_lower_rise(lower_rise=lower, margin=given.margin)
        return allowed, "lower rise less the margin" if path is not None else "lowest rise of straight track less the margin"
    if upper is None:
        return None, "the upper rise is not known to the model, so the difference rule says nothing"
    found = stability.allowed_by_difference(upper_rise=upper, lower_rise=lower, rule=stability.UIC_720)
    return found.temperature_rise, found.reason


def _energy(path: stability.BucklingPath | None, change: float) -> float | None:
    if path is None or path.upper is None or path.lower is None:
        return None
    if not path.lower.temperature_rise <= change <= path.upper.temperature_rise:
        return None
    return stability.buckling_energy(path=path, temperature_rise=change)


def _title(where: str) -> str:
    of = f", curve of {where} radius" if where else ""
    return f"Temperature rise against the rise allowed by the margin rule{of}"


def _check(change: float, allowed: float | None, reason: str, where: str) -> Check:
    code, title = "buckling", _title(where)
    demand = Amount(change, Kind.TEMPERATURE_CHANGE)
    if allowed is None:
        return Check(
            code=code,
            title=title,
            verdict="fails" if change > 0.0 else "passes",
            demand=demand,
            governing=reason,
            would_pass="more lateral resistance or a smaller line defect" if change > 0.0 else "",
            place=_PLACE,
        )
    return compare(
        code=code,
        title=title,
        demand=demand,
        capacity=Amount(allowed, Kind.TEMPERATURE_CHANGE),
        governing="lateral_resistance",
        would_pass=(
            f"neutral temperature higher by {words.temperature_change(max(0.0, change - allowed))}, or more lateral resistance "
            "or a smaller line defect to the same effect; until then restrict speed"
        ),
        place=_PLACE,
    )


def _rise(state: stability.Equilibrium | None) -> float | None:
    return None if state is None else state.temperature_rise


def _mode(state: stability.BuckledState) -> Mode:
    return Mode(
        mode=state.mode,
        temperature_rise=state.temperature_rise,
        length=state.length,
        whole_length=state.whole_length,
        buckled_force=state.buckled_force,
        deflection=state.deflection,
        moment=state.moment,
        slip_length=state.slip_length,
    )


def _point(state: stability.Equilibrium) -> PathPoint:
    return PathPoint(
        deflection=state.deflection,
        temperature_rise=state.temperature_rise,
        buckled_force=state.buckled_force,
        half_length=state.half_length,
        lobes=state.lobes,
        energy=state.energy,
    )


def _not_available(change: float, radius: float) -> BucklingResult:
    reason = "not available for curves, but for a measured defect, radius of 1,146 ft or more, three lobes, held throughout"
    return BucklingResult(
        available="not-available-for-curves",
        temperature_change=change,
        allowed_by=reason,
        checks=(
            Check(
                code="buckling",
                title=_title(words.long_length(radius)),
                verdict="not-checked",
                demand=Amount(change, Kind.TEMPERATURE_CHANGE),
                governing=reason,
                place=_PLACE,
            ),
        ),
    )


RULE = Rule(
    id="thermal.buckling",
    title="Buckling of hot track",
    summary=(
        "Two rails as one beam held sideways by a constant resistance. For straight track the lowest rise at which a buckled "
        "state exists, over four shapes and all lengths; with a line defect the whole path of equilibria, its upper rise, at "
        "which the track snaps, and its lower rise, below which no buckled state exists; upwards against the track's weight. The "
        "allowed rise by a named margin rule. Turning stiffness of fastenings, trains and vibration are left out. For "
        "curves only with a defect that points outwards, and only as far as a finite-element witness agreed."
    ),
    formulas=(
        Formula("temperature_change", "T - T_N"),
        Formula(
            "lowest_rise",
            "least over shapes and lengths L of (k_1 E I / L^2 + k_3 R L (sqrt(1 + q) - 1)) / (N alpha), with q = "
            "k_2 N F^2 L^5 / (R (E I)^2), I = 2 I_y, N = 2 E A, R = 2 r: there the first term falls with L as the second grows",
            exact=False,
        ),
        Formula(
            "vertical_rise",
            "as the lowest rise of one lobe, the track's weight for F, twice the second moment about the level axis for I",
            exact=False,
        ),
        Formula(
            "lower_rise",
            "least of (P / (2 E A) + e) / alpha on the path of equilibria after its first maximum, P the force at the middle and "
            "e the strain taken up there: B w'''' + (P (w' + w0'))' = P / R - F sign(w); without a defect the lowest rise",
            exact=False,
        ),
        Formula("upper_rise", "first maximum of (P / (2 E A) + e) / alpha on that path", exact=False),
        Formula("allowed_rise", "lower rise less margin; or by the difference of upper and lower rise", exact=False),
    ),
    cites=(
        Cite("hobbs-1984", "form of the constant-resistance modes; constants derived here", "from-memory"),
        Cite("kerr-1978", "lateral modes of straight track", "from-memory"),
        Cite("kerr-el-aini-1978", "buckling upwards; the title is known, the text was not read", "from-memory"),
        Cite("fra-ord-13-16", "appendix A, p. A-7: misalignment and longitudinal stiffness", "published"),
        Cite("uic-720", "allowed rise by the difference of upper and lower rise", "from-memory"),
    ),
    input=BucklingInput,
    output=BucklingResult,
    evaluate=evaluate,
    cautions=(
        Caution(
            code="static-results",
            text=(
                "Static results. Moving trains, weak spots and disturbed ballast lower the rise at which track buckles, and the "
                "straight modes do not hold for curves. Measure line defects; test resistance or take it on the safe side."
            ),
            cite=Cite("fra-ord-13-16", "safety concepts", "published"),
        ),
        NEUTRAL_TEMPERATURE_DRIFTS,
        OWN_STANDARDS,
    ),
)
