"""Bending and thermal stress that act together, hot and cold, under the wheel and ahead of it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Annotated, Final, Literal

from railrules_api.domain.amounts import Amount
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.rules import words
from railrules_api.rules.checks import Check, compare
from railrules_api.rules.common import Expansion, NeutralTemperature

if TYPE_CHECKING:
    from collections.abc import Iterator

Place = Literal["base-cold", "head-cold", "head-hot", "base-hot"]
CODE: Final = "combined-stress"
_PLACE: Final = (
    "bending raised by the shares, plus thermal stress, against yield: the allowable stress written the other way round"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class ThermalExtremes:
    """How cold and hot restrained rail gets."""

    hottest: Annotated[float, Field("Hottest rail.", kind=Kind.TEMPERATURE, symbol="H", at_least=173.15, at_most=373.15)]
    coldest: Annotated[float, Field("Coldest rail.", kind=Kind.TEMPERATURE, symbol="C", at_least=173.15, at_most=373.15)]
    neutral_temperature: NeutralTemperature
    expansion: Expansion


@dataclass(frozen=True, slots=True, kw_only=True)
class CombinedStress:
    """Bending and thermal stress of one sign at one fibre."""

    where: Annotated[
        Place,
        Field(
            "Fibre and weather: base under the wheel and head ahead of it pull when cold; head under the wheel and base ahead of "
            "it press when hot."
        ),
    ]
    sense: Annotated[Literal["tension", "compression"], Field("Whether it pulls or presses.")]
    bending: Annotated[float, Field("Bending stress, with the speed factor.", kind=Kind.STRESS)]
    bending_raised: Annotated[float, Field("The same raised by all four shares.", kind=Kind.STRESS)]
    thermal: Annotated[float, Field("Thermal stress of the same sense; 0 where the weather gives none.", kind=Kind.STRESS)]
    together: Annotated[float, Field("Raised bending stress plus thermal stress.", kind=Kind.STRESS)]
    left_share: Annotated[float, Field("Share of yield that is left; negative beyond yield.")]


def combine(  # noqa: PLR0913  what acts together
    *,
    extremes: ThermalExtremes,
    elastic_modulus: float,
    base: tuple[float, float],
    head: tuple[float, float],
    raised: float,
    yield_strength: float,
) -> tuple[CombinedStress, ...]:
    """Add bending and thermal stress of one sense.

    Args:
        extremes: rail temperatures [K].
        elastic_modulus: E [Pa].
        base: bending stress of the base under the wheel, and ahead of it, where it is of the other sense [Pa].
        head: the same of the head [Pa].
        raised: product of 1 + share over the four shares.
        yield_strength: stress at which the steel yields [Pa].

    Raises:
        RefusedError: coldest above hottest.
    """
    if extremes.coldest > extremes.hottest:
        raise refuse("thermal", "coldest", reason="coldest lies above hottest", value=extremes.coldest, maximum=extremes.hottest)
    per_degree = elastic_modulus * extremes.expansion
    cold = per_degree * max(0.0, extremes.neutral_temperature - extremes.coldest)
    hot = per_degree * max(0.0, extremes.hottest - extremes.neutral_temperature)

    def one(where: Place, sense: Literal["tension", "compression"], bending: float, thermal: float) -> CombinedStress:
        together = bending * raised + thermal
        return CombinedStress(
            where=where,
            sense=sense,
            bending=bending,
            bending_raised=bending * raised,
            thermal=thermal,
            together=together,
            left_share=1.0 - together / yield_strength,
        )

    return (
        one("base-cold", "tension", base[0], cold),
        one("head-cold", "tension", head[1], cold),
        one("head-hot", "compression", head[0], hot),
        one("base-hot", "compression", base[1], hot),
    )


_TITLES: Final[dict[Place, str]] = {
    "base-cold": "Tension in the base under wheels, coldest rail",
    "head-cold": "Tension in the head ahead of wheels, coldest rail",
    "head-hot": "Compression in the head under wheels, hottest rail",
    "base-hot": "Compression in the base ahead of wheels, hottest rail",
}


def checks(found: tuple[CombinedStress, ...], extremes: ThermalExtremes | None, yield_strength: float) -> Iterator[Check]:
    """Hold every combination against yield; without temperatures one check that says what it lacks."""
    if extremes is None:
        title = "Bending and thermal stress together against yield"
        yield Check(code=CODE, title=title, verdict="not-checked", governing="thermal", place=_PLACE)
        return
    for item in found:
        cold = item.sense == "tension"
        room = yield_strength - item.thermal
        lighter = (
            f"wheel loads of {words.figure(100 * room / item.bending_raised)} % of those given"
            if room > 0.0 and item.bending_raised > 0.0
            else "no lighter wheel: thermal stress alone reaches yield"
        )
        yield compare(
            code=f"{CODE}-{item.where}",
            title=_TITLES[item.where],
            demand=Amount(item.together, Kind.STRESS),
            capacity=Amount(yield_strength, Kind.STRESS),
            governing="thermal" if item.thermal > item.bending_raised else "wheels",
            would_pass=(
                f"{words.stress(item.together - yield_strength)} less: {lighter}; or a neutral temperature "
                f"{'lower' if cold else 'higher'} to the same effect; or a section of greater modulus"
            ),
            place=_PLACE,
        )
