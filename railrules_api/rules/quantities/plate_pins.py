"""Pins or studs that hold plates down on every n-th tie."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from railrules_api.domain.amounts import Amount
from railrules_api.domain.counting import multiples_between
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.domain.track import Stretch, rail_count
from railrules_api.rules.model import Cite, Formula, Rule
from railrules_api.rules.quantities.given import TieKind, held_by_others, mass_of, packed, ranges_of
from railrules_api.rules.quantities.lines import Line

PinnedEvery = Annotated[
    int,
    Field(
        "Plates are pinned on every n-th tie, by its own number.",
        at_least=1,
        at_most=1000,
        default="plate-pin-every",
    ),
]
PinsPerPlate = Annotated[int, Field("Pins in each pinned plate.", symbol="k", at_least=0, at_most=16, default="pins-per-plate")]
PinProduct = Annotated[str | None, Field("Catalogue id of the pin.", taken=Taken("pin", "plate-pins", "id"))]
PinMass = Annotated[
    float | None,
    Field("Mass of one pin.", kind=Kind.MASS, above=0.0, at_most=10.0, taken=Taken("pin", "plate-pins", "mass")),
]
PinsPerKeg = Annotated[
    float | None,
    Field("Pins in a keg.", symbol="c", above=0.0, at_most=1e5, taken=Taken("pin", "plate-pins", "count_per_package")),
]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class PlatePinsInput:
    """A stretch and how its plates are pinned."""

    stretch: Annotated[Stretch, Field("The stretch.")]
    tie_kind: TieKind
    every: PinnedEvery
    per_plate: PinsPerPlate
    product: PinProduct = None
    pin_mass: PinMass = None
    per_keg: PinsPerKeg = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class PlatePinsResult:
    """Pins and where they go."""

    rails: Annotated[int, Field("Rails renewed.", symbol="r")]
    ties_pinned: Annotated[int, Field("Ties whose plates are pinned.", symbol="n_t")]
    plates_pinned: Annotated[int, Field("Plates that are pinned.", symbol="n_p")]
    pins: Annotated[int, Field("Pins.", symbol="n")]
    kegs: Annotated[float | None, Field("Kegs, unrounded; left out where what one holds is not known.")] = None
    mass: Annotated[float | None, Field("Mass of the pins.", kind=Kind.MASS)] = None
    note: Annotated[str | None, Field("Why none is counted, where none is.")] = None
    lines: Annotated[tuple[Line, ...], Field("Pins to order.")]


def evaluate(given: PlatePinsInput) -> PlatePinsResult:
    """Count pins on ties whose own number is a multiple of `every`.

    Raises:
        RefusedError: the stretch contradicts itself.
    """
    rails = rail_count(given.stretch.rails)
    ranges = ranges_of(given.stretch)
    on_wood = given.tie_kind == "wood"
    ties = sum(multiples_between(part.first, part.beyond, given.every) for part in ranges) if on_wood else 0
    pins = ties * rails * given.per_plate
    mass = mass_of(pins, given.pin_mass)
    line = Line(item="plate-pins", product=given.product or "", net=Amount(float(pins)), mass=mass)
    return PlatePinsResult(
        rails=rails,
        ties_pinned=ties,
        plates_pinned=ties * rails,
        pins=pins,
        kegs=None if given.per_keg is None else pins / given.per_keg,
        mass=mass,
        note=held_by_others(given.tie_kind, "plate pins"),
        lines=(packed(line, "keg", given.per_keg),),
    )


RULE = Rule(
    id="quantities.plate-pins",
    title="Plate pins",
    summary=(
        "Plates are pinned on every n-th wood tie by the tie's own number, so counts add up however the line is cut: a stretch "
        "may have one pinned tie more or less than its ties divided by n."
    ),
    formulas=(
        Formula("ties_pinned", "number of ties k with k mod every = 0, on wood ties", exact=False),
        Formula("plates_pinned", "n_t * r"),
        Formula("pins", "n_p * k"),
        Formula("kegs", "n / c", exact=False),
    ),
    cites=(Cite("common-practice", "two studs in the plates of every fifth tie", "common-practice"),),
    input=PlatePinsInput,
    output=PlatePinsResult,
    evaluate=evaluate,
)
