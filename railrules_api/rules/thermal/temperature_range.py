"""Desired laying temperature range, and the rail temperature above which speed is restricted."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Final, Literal

from railrules_api.domain.amounts import Amount
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.rules import words
from railrules_api.rules.checks import Check, compare
from railrules_api.rules.common import NEUTRAL_TEMPERATURE_DRIFTS, OWN_STANDARDS
from railrules_api.rules.model import Cite, Formula, Rule

# The published rules are dimensional (degrees Fahrenheit, or Celsius for the mean-plus rule); converted here, once.
_DEGREE: Final = words.FAHRENHEIT_DEGREE
TWO_THIRDS: Final = (2 / 3, 10 * _DEGREE, 25 * _DEGREE)
"""(2 H + L) / 3 + 10 °F to (2 H + L) / 3 + 25 °F: weight of the hottest, lower and upper offset [K]."""
MEAN_PLUS: Final = (1 / 2, 5.0, 5.0)
"""(H + L) / 2 + 5 °C: one temperature, so the range it gives has no width."""
RATIO: Final = 1.5
"""Rail over air temperature, both on the Celsius scale."""
ICE: Final = 273.15

_COLDEST: Final = 173.15
_HOTTEST: Final = 373.15
_Offset = Annotated[
    float | None,
    Field("House rule: added to the weighted temperature.", kind=Kind.TEMPERATURE_CHANGE, at_least=-60.0, at_most=60.0),
]


@dataclass(frozen=True, slots=True, kw_only=True)
class TemperatureRangeInput:
    """The extremes at the place, and the rules chosen."""

    rule: Annotated[
        Literal["two-thirds", "mean-plus", "house"],
        Field("Range rule: (2H+L)/3 + 10 to 25 °F; (H+L)/2 + 5 °C; or a house's own weight and offsets."),
    ]
    hottest_rail: Annotated[
        float | None,
        Field("Hottest rail; give this or hottest air.", kind=Kind.TEMPERATURE, at_least=_COLDEST, at_most=_HOTTEST),
    ] = None
    coldest_rail: Annotated[
        float | None,
        Field("Coldest rail; give this or coldest air.", kind=Kind.TEMPERATURE, at_least=_COLDEST, at_most=_HOTTEST),
    ] = None
    hottest_air: Annotated[float | None, Field("Hottest air.", kind=Kind.TEMPERATURE, at_least=_COLDEST, at_most=_HOTTEST)] = None
    coldest_air: Annotated[float | None, Field("Coldest air.", kind=Kind.TEMPERATURE, at_least=_COLDEST, at_most=_HOTTEST)] = None
    rail_from_air: Annotated[
        Literal["plus", "ratio"] | None,
        Field("How hottest air gives hottest rail: a rise added, or 1.5 times the Celsius reading. Coldest rail is coldest air."),
    ] = None
    rail_above_air: Annotated[
        float,
        Field(
            "Rise of the hottest rail above the hottest air, for `plus`.",
            kind=Kind.TEMPERATURE_CHANGE,
            symbol="r",
            at_least=0.0,
            at_most=60.0,
            default="rail-above-air",
        ),
    ]
    house_weight: Annotated[
        float | None,
        Field("House rule: weight of the hottest temperature, the rest on the coldest.", at_least=0.0, at_most=1.0),
    ] = None
    house_lower: _Offset = None
    house_upper: _Offset = None
    laid_at: Annotated[
        float | None,
        Field(
            "Neutral temperature as laid; without it the lower end of the range.",
            kind=Kind.TEMPERATURE,
            at_least=_COLDEST,
            at_most=_HOTTEST,
        ),
    ] = None
    drift: Annotated[
        float,
        Field(
            "Neutral temperature assumed lost in service.",
            kind=Kind.TEMPERATURE_CHANGE,
            symbol="d",
            at_least=0.0,
            at_most=60.0,
            default="neutral-drift",
        ),
    ]
    allowed_rise: Annotated[
        float | None,
        Field(
            "Rise above neutral that the track in its condition may be given; without it no restriction temperature.",
            kind=Kind.TEMPERATURE_CHANGE,
            symbol="R",
            at_least=0.0,
            at_most=200.0,
        ),
    ] = None
    margin: Annotated[
        float,
        Field(
            "Margin kept below the allowed rise.",
            kind=Kind.TEMPERATURE_CHANGE,
            symbol="m",
            at_least=0.0,
            at_most=60.0,
            default="restriction-margin",
        ),
    ]


@dataclass(frozen=True, slots=True, kw_only=True)
class TemperatureRangeResult:
    """The range, and what the extremes mean for rail laid in it."""

    hottest: Annotated[float, Field("Hottest rail temperature as used.", kind=Kind.TEMPERATURE, symbol="H")]
    coldest: Annotated[float, Field("Coldest rail temperature as used.", kind=Kind.TEMPERATURE, symbol="L")]
    weight: Annotated[float, Field("Weight of the hottest temperature as used.", symbol="w")]
    lower_offset: Annotated[float, Field("Lower offset as used.", kind=Kind.TEMPERATURE_CHANGE, symbol="a")]
    upper_offset: Annotated[float, Field("Upper offset as used.", kind=Kind.TEMPERATURE_CHANGE, symbol="b")]
    lower: Annotated[float, Field("Lowest desired laying temperature.", kind=Kind.TEMPERATURE, symbol="T_low")]
    upper: Annotated[float, Field("Highest desired laying temperature.", kind=Kind.TEMPERATURE, symbol="T_high")]
    middle: Annotated[float, Field("Middle of the range.", kind=Kind.TEMPERATURE, symbol="T_mid")]
    neutral_laid: Annotated[float, Field("Neutral temperature as laid, as used.", kind=Kind.TEMPERATURE, symbol="T_N")]
    neutral_drifted: Annotated[float, Field("Neutral temperature after the drift.", kind=Kind.TEMPERATURE, symbol="T_D")]
    greatest_rise: Annotated[
        float, Field("Hottest rail above the drifted neutral temperature.", kind=Kind.TEMPERATURE_CHANGE, symbol="rise")
    ]
    greatest_fall: Annotated[
        float,
        Field(
            "Higher of the neutral temperature as laid and the upper end of the range, above the coldest rail.",
            kind=Kind.TEMPERATURE_CHANGE,
            symbol="fall",
        ),
    ]
    restriction: Annotated[
        float | None, Field("Rail temperature above which speed is restricted.", kind=Kind.TEMPERATURE, symbol="T_R")
    ]
    checks: Annotated[tuple[Check, ...], Field("Laid in the range; hottest rail against the restriction temperature.")]


def evaluate(given: TemperatureRangeInput) -> TemperatureRangeResult:
    """Return the laying range w H + (1 - w) L + offsets, and the restriction temperature [K].

    Raises:
        RefusedError: rail and air temperature both given or both missing; coldest above hottest; a house rule without its
            weight and offsets, or with them turned round.
    """
    hottest = _hottest(given)
    coldest = _one("coldest_rail", given.coldest_rail, given.coldest_air)
    if coldest > hottest:
        name = "coldest_rail" if given.coldest_rail is not None else "coldest_air"
        raise refuse(name, reason="coldest lies above hottest", value=coldest, maximum=hottest)
    weight, lower_offset, upper_offset = _rule(given)
    weighted = weight * hottest + (1 - weight) * coldest
    lower, upper = weighted + lower_offset, weighted + upper_offset
    laid = lower if given.laid_at is None else given.laid_at
    drifted = laid - given.drift
    restriction = None if given.allowed_rise is None else drifted + given.allowed_rise - given.margin
    return TemperatureRangeResult(
        hottest=hottest,
        coldest=coldest,
        weight=weight,
        lower_offset=lower_offset,
        upper_offset=upper_offset,
        lower=lower,
        upper=upper,
        middle=(lower + upper) / 2,
        neutral_laid=laid,
        neutral_drifted=drifted,
        greatest_rise=hottest - drifted,
        greatest_fall=max(laid, upper) - coldest,
        restriction=restriction,
        checks=(_hot_check(given, hottest - drifted),),
    )


def _one(name: str, rail: float | None, air: float | None) -> float:
    if (rail is None) == (air is None):
        raise refuse(name, reason="give one of rail temperature and air temperature", value=rail)
    value = air if rail is None else rail
    assert value is not None
    return value


def _hottest(given: TemperatureRangeInput) -> float:
    value = _one("hottest_rail", given.hottest_rail, given.hottest_air)
    if given.hottest_air is None:
        return value
    if given.rail_from_air is None:
        raise refuse("rail_from_air", reason="hottest air needs the rule that gives rail temperature", allowed=("plus", "ratio"))
    if given.rail_from_air == "plus":
        return value + given.rail_above_air
    if value < ICE:
        raise refuse("hottest_air", reason="the ratio rule holds above freezing only", value=value, minimum=ICE)
    return ICE + RATIO * (value - ICE)


def _rule(given: TemperatureRangeInput) -> tuple[float, float, float]:
    if given.rule == "two-thirds":
        return TWO_THIRDS
    if given.rule == "mean-plus":
        return MEAN_PLUS
    for name in ("house_weight", "house_lower", "house_upper"):
        if getattr(given, name) is None:
            raise refuse(name, reason="a house rule needs its weight and both offsets")
    assert given.house_weight is not None
    assert given.house_lower is not None
    assert given.house_upper is not None
    if given.house_upper < given.house_lower:
        raise refuse("house_upper", reason="upper offset below the lower", value=given.house_upper, minimum=given.house_lower)
    return given.house_weight, given.house_lower, given.house_upper


def _hot_check(given: TemperatureRangeInput, rise: float) -> Check:
    code, title = "hottest-rail", "Hottest rail against the restriction temperature"
    place = "Rise above the drifted neutral temperature against allowed rise less margin (FRA ORD-13/16 p. 48 as quoted)"
    if given.allowed_rise is None:
        return Check(code=code, title=title, verdict="not-checked", governing="allowed_rise", place=place)
    capacity = given.allowed_rise - given.margin
    return compare(
        code=code,
        title=title,
        demand=Amount(rise, Kind.TEMPERATURE_CHANGE),
        capacity=Amount(capacity, Kind.TEMPERATURE_CHANGE),
        governing="laid_at" if given.laid_at is not None else "hottest_rail",
        would_pass=(
            f"neutral temperature higher by {words.temperature_change(rise - capacity)} (laid hotter, or less drift), or track "
            "whose allowed rise is greater by as much; until then restrict speed above the restriction temperature"
        ),
        place=place,
    )


RULE = Rule(
    id="thermal.temperature-range",
    title="Desired laying temperature range and restriction temperature",
    summary=(
        "The range of rail temperature in which to lay, from the hottest and coldest rail at the place by a named rule; those "
        "from air temperature where rail was not measured. Then, with the neutral temperature that service is assumed to "
        "take away and the rise the track may be given, the rail temperature above which speed is restricted. The hottest and "
        "coldest count in rail temperature. Rail whose laying temperature is not given is taken at the lower end of the range."
    ),
    formulas=(
        Formula("hottest", "as given; or air + r; or 1.5 times air on the Celsius scale", exact=False),
        Formula("lower", "w * H + (1 - w) * L + a"),
        Formula("upper", "w * H + (1 - w) * L + b"),
        Formula("middle", "(T_low + T_high) / 2"),
        Formula("neutral_drifted", "T_N - d"),
        Formula("greatest_rise", "H - T_D"),
        Formula("greatest_fall", "max(T_N, T_high) - L"),
        Formula("restriction", "T_D + R - m"),
    ),
    cites=(
        Cite("rail-transit-cwr-10-5-1", "section 10.5.1: (2 Ht + Lt) / 3 + 10 and + 25 °F", "published"),
        Cite("predictive-maintenance-book", "p. 62: (Tmax + Tmin) / 2 + 5 °C", "published"),
        Cite("jrc-2015-5720", "abstract: 30 °F added to peak air temperature is most common", "published"),
        Cite("memory", "rail temperature 1.5 times air temperature, °C", "from-memory"),
        Cite("framingham-destressing", "105 - 30 + 100 - 20 = 155 °F, quoting FRA ORD-13/16 p. 48", "published"),
        Cite("cfr-49-213", "213.119(a)(1) and (l): the plan designates the range, no figure is set", "published"),
    ),
    input=TemperatureRangeInput,
    output=TemperatureRangeResult,
    evaluate=evaluate,
    columns=True,
    cautions=(NEUTRAL_TEMPERATURE_DRIFTS, OWN_STANDARDS),
)
