"""Bending of the rail under wheels on an elastic foundation, and what it does to ties and ballast.

The rail is an endless beam, `EI y'''' + u y = load`, on a foundation that pushes back with `u` per length and per depression
(it would pull where the rail lifts, as the theory has it). Responses to several wheels add up.

Source: Winkler's foundation as applied to track by Talbot's committee; formulas as in any textbook, from memory, and
checked here against a boundary-value solver. Ties and ballast: TI 850-02, Railroad Design and Rehabilitation, 1 March
2000, equations 6-9 and 6-10 (read).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING

from railrules_api.domain.errors import Refusal, RefusedError

if TYPE_CHECKING:
    from collections.abc import Callable

_INCH = 0.0254  # m, exact
_POUND_FORCE = 4.4482216152605  # N, exact
_MILE_PER_HOUR = 0.44704  # m/s, exact
_PSI = _POUND_FORCE / _INCH**2
_SAMPLES = 24  # places tried in every span before the best is refined; a span holds a fraction of a wave


@dataclass(frozen=True, slots=True, kw_only=True)
class Wheel:
    """One wheel on the rail.

    Attributes:
        place: where along the rail [m].
        load: on this rail, downwards [N].
    """

    place: float
    load: float


@dataclass(frozen=True, slots=True, kw_only=True)
class RailState:
    """The rail at one place.

    Attributes:
        place: where along the rail [m].
        deflection: downwards [m].
        moment: positive where the rail sags, with tension in its base [N m].
        pressure: what the foundation carries, upwards on the rail, per length [N/m].
    """

    place: float
    deflection: float
    moment: float
    pressure: float


@dataclass(frozen=True, slots=True, kw_only=True)
class RailExtremes:
    """The places that matter.

    Attributes:
        lowest: where the rail is deepest.
        highest: where it is highest; its deflection is negative where the rail lifts.
        sagging: where the moment is largest.
        hogging: where it is smallest, usually negative.
    """

    lowest: RailState
    highest: RailState
    sagging: RailState
    hogging: RailState


@dataclass(frozen=True, slots=True, kw_only=True)
class TieSize:
    """A wood tie as a rule treats it.

    Attributes:
        name: size of the cross-section.
        bending_divisor: rail-seat load over bending stress [m2].
        bearing_area: on which one rail's load reaches the ballast [m2].
    """

    name: str
    bending_divisor: float
    bearing_area: float


TIE_6_BY_8 = TieSize(name="6 x 8 in", bending_divisor=29.0 * _INCH**2, bearing_area=270.0 * _INCH**2)
"""TI 850-02 (2000), equations 6-9 and 6-10."""
TIE_7_BY_9 = TieSize(name="7 x 9 in", bending_divisor=52.0 * _INCH**2, bearing_area=312.0 * _INCH**2)
"""TI 850-02 (2000), equations 6-9 and 6-10."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TieCheck:
    """What a rail-seat load does to a tie and to the ballast below.

    Attributes:
        bending_stress: in the tie [Pa].
        ballast_pressure: below the tie [Pa].
    """

    bending_stress: float
    ballast_pressure: float


def wave_number(*, elastic_modulus: float, second_moment: float, foundation_modulus: float) -> float:
    """Return `beta = (u / (4 E I))^(1/4)` of one rail on its foundation.

    Args:
        elastic_modulus: of the rail steel [Pa].
        second_moment: of the rail about its horizontal axis [m4].
        foundation_modulus: `u`, force per length of rail and per depression [Pa].

    Returns:
        beta [1/m].

    Raises:
        RefusedError: for an input that is not a finite number above zero.
    """
    _require_positive(elastic_modulus=elastic_modulus, second_moment=second_moment, foundation_modulus=foundation_modulus)
    return math.pow(foundation_modulus / (4.0 * elastic_modulus * second_moment), 0.25)


def rail_state(
    *,
    elastic_modulus: float,
    second_moment: float,
    foundation_modulus: float,
    wheels: tuple[Wheel, ...],
    place: float,
) -> RailState:
    """Return deflection, moment and foundation pressure at a place, all wheels added up.

    With `x` the distance to a wheel of load `P`: `y = P beta/(2u) e^(-beta x) (cos beta x + sin beta x)`,
    `M = P/(4 beta) e^(-beta x) (cos beta x - sin beta x)`, `p = u y`.

    Args:
        elastic_modulus: of the rail steel [Pa].
        second_moment: of the rail about its horizontal axis [m4].
        foundation_modulus: `u` [Pa].
        wheels: at least one.
        place: along the rail, from the same origin as the wheels' [m].

    Returns:
        The state of the rail there.

    Raises:
        RefusedError: for no wheel, a place that is not finite or an input that is not a finite number above zero.
    """
    beta = wave_number(elastic_modulus=elastic_modulus, second_moment=second_moment, foundation_modulus=foundation_modulus)
    _require_wheels(wheels)
    if not math.isfinite(place):
        raise RefusedError(Refusal(("place",), "must be a finite number", place))
    return _state(beta, foundation_modulus, wheels, place)


def rail_extremes(
    *, elastic_modulus: float, second_moment: float, foundation_modulus: float, wheels: tuple[Wheel, ...]
) -> RailExtremes:
    """Return where the rail is deepest, highest, most sagging and most hogging under a group of wheels.

    Formulas as in `rail_state`. Searched under the wheels, between them and for `2 pi / beta` beyond the outer ones; farther
    out all is smaller than 0.2 per cent of the single-wheel value.

    Args:
        elastic_modulus: of the rail steel [Pa].
        second_moment: of the rail about its horizontal axis [m4].
        foundation_modulus: `u` [Pa].
        wheels: at least one, in any order.

    Returns:
        The four states.

    Raises:
        RefusedError: for no wheel, a place that is not finite or an input that is not a finite number above zero.
    """
    beta = wave_number(elastic_modulus=elastic_modulus, second_moment=second_moment, foundation_modulus=foundation_modulus)
    _require_wheels(wheels)

    def state(place: float) -> RailState:
        return _state(beta, foundation_modulus, wheels, place)

    places = sorted({wheel.place for wheel in wheels})
    far = 2.0 * math.pi / beta
    marks = [places[0] - far, *places, places[-1] + far]
    return RailExtremes(
        lowest=_greatest(state, lambda one: one.deflection, marks, beta),
        highest=_greatest(state, lambda one: -one.deflection, marks, beta),
        sagging=_greatest(state, lambda one: one.moment, marks, beta),
        hogging=_greatest(state, lambda one: -one.moment, marks, beta),
    )


def zero_moment_distance(*, wave_number: float) -> float:
    """Return the distance from a single wheel to the nearest place without moment, `x1 = pi / (4 beta)` [m].

    Args:
        wave_number: `beta`, see `wave_number` [1/m].
    """
    return math.pi / (4.0 * wave_number)


def rail_seat_load(*, pressure: float, tie_spacing: float) -> float:
    """Return the load of one rail on one tie, `q0 = p s`; under a single wheel `q0 = P beta s / 2`.

    Args:
        pressure: of the foundation at the tie, `p = u y` [N/m].
        tie_spacing: `s`, from middle to middle [m].

    Returns:
        The rail-seat load [N].

    Raises:
        RefusedError: for an input that is not a finite number above zero.
    """
    _require_positive(pressure=pressure, tie_spacing=tie_spacing)
    return pressure * tie_spacing


def bending_stress(*, moment: float, section_modulus: float) -> float:
    """Return the bending stress of the rail, `sigma = M / S`, with the sign of the moment.

    Args:
        moment: positive where the rail sags [N m].
        section_modulus: to the base for the stress in the base [m3].

    Returns:
        The stress, tension in the base positive [Pa].

    Raises:
        RefusedError: for a moment that is not finite or a section modulus that is not a finite number above zero.
    """
    _require_positive(section_modulus=section_modulus)
    if not math.isfinite(moment):
        raise RefusedError(Refusal(("moment",), "must be a finite number", moment))
    return moment / section_modulus


def speed_factor(*, speed: float, wheel_diameter: float) -> float:
    """Return the factor on the static wheel load for speed, `1 + 33 V / (100 D)`, V in mile/h and D in inches.

    Source: Talbot's committee and AREA practice, from memory.

    Args:
        speed: of the train, zero or more [m/s].
        wheel_diameter: of the wheel [m].

    Returns:
        The factor, 1 at rest.

    Raises:
        RefusedError: for a diameter that is not a finite number above zero, or a speed that is not finite or negative.
    """
    _require_positive(wheel_diameter=wheel_diameter)
    if not (math.isfinite(speed) and speed >= 0.0):
        raise RefusedError(Refusal(("speed",), "must be a finite number, zero or above", speed, minimum=0.0))
    return 1.0 + 33.0 * (speed / _MILE_PER_HOUR) / (100.0 * (wheel_diameter / _INCH))


def tie_check(*, rail_seat_load: float, tie: TieSize) -> TieCheck:
    """Return stresses of a wood tie and of the ballast: `f = q0 / c`, `p = q0 / A`, and how much of the limits they use.

    `c` = 29 in2 and 52 in2, `A` = 270 in2 and 312 in2 for 6 x 8 in and 7 x 9 in ties.
    Source: TI 850-02 (1 March 2000), equations 6-9 and 6-10.

    Args:
        rail_seat_load: of one rail on the tie, speed included [N].
        tie: its size.

    Returns:
        Stress and pressure.

    Raises:
        RefusedError: for an input that is not a finite number above zero.
    """
    _require_positive(rail_seat_load=rail_seat_load, bending_divisor=tie.bending_divisor, bearing_area=tie.bearing_area)
    stress = rail_seat_load / tie.bending_divisor
    pressure = rail_seat_load / tie.bearing_area
    return TieCheck(bending_stress=stress, ballast_pressure=pressure)


def _require_positive(**values: float) -> None:
    faults = [
        Refusal((name,), "must be a finite number above zero", value, minimum=0.0)
        for name, value in values.items()
        if not (math.isfinite(value) and value > 0.0)
    ]
    if faults:
        raise RefusedError(*faults)


def _require_wheels(wheels: tuple[Wheel, ...]) -> None:
    faults = [] if wheels else [Refusal(("wheels",), "at least one wheel is needed", len(wheels))]
    for index, wheel in enumerate(wheels):
        if not math.isfinite(wheel.place):
            faults.append(Refusal(("wheels", index, "place"), "must be a finite number", wheel.place))
        if not (math.isfinite(wheel.load) and wheel.load > 0.0):
            path = ("wheels", index, "load")
            faults.append(Refusal(path, "must be a finite number above zero", wheel.load, minimum=0.0))
    if faults:
        raise RefusedError(*faults)


def _state(beta: float, foundation: float, wheels: tuple[Wheel, ...], place: float) -> RailState:
    deflection = moment = 0.0
    for wheel in wheels:
        angle = beta * abs(place - wheel.place)
        fade, cosine, sine = math.exp(-angle), math.cos(angle), math.sin(angle)
        deflection += wheel.load * beta / (2.0 * foundation) * fade * (cosine + sine)
        moment += wheel.load / (4.0 * beta) * fade * (cosine - sine)
    return RailState(place=place, deflection=deflection, moment=moment, pressure=foundation * deflection)


def _greatest(
    state: Callable[[float], RailState], measure: Callable[[RailState], float], marks: list[float], beta: float
) -> RailState:
    """Return the state with the greatest measure over all spans between the marks, the marks included."""
    from scipy.optimize import minimize_scalar  # noqa: PLC0415

    candidates: list[RailState] = []
    for left, right in pairwise(marks):
        # A long gap between wheels holds several waves; every one must be sampled.
        count = _SAMPLES * max(1, math.ceil((right - left) * beta / (2.0 * math.pi)))
        step = (right - left) / count
        samples = [state(left + index * step) for index in range(count + 1)]
        best = max(range(count + 1), key=lambda index: measure(samples[index]))
        candidates.append(samples[best])
        if 0 < best < count:
            found = minimize_scalar(
                lambda place: -measure(state(place)),
                bounds=(samples[best - 1].place, samples[best + 1].place),
                method="bounded",
                options={"xatol": 1e-9 / beta},
            )
            candidates.append(state(float(found.x)))
    return max(candidates, key=measure)
