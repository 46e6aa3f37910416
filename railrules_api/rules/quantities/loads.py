"""Loads: tons by item, and the truck and car loads that they make."""

from __future__ import annotations

from dataclasses import dataclass
from math import fsum
from typing import Annotated

from railrules_api.domain.counting import round_up
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.rules.model import Cite, Formula, Rule


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Goods:
    """An item to haul."""

    item: Annotated[str, Field("What it is.")]
    product: Annotated[str | None, Field("Which of its products; left out: it has one.")] = None
    mass: Annotated[
        float | None, Field("Mass of all of it; left out: not known, and so said.", kind=Kind.MASS, at_least=0.0, at_most=1e12)
    ] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Vehicle:
    """A kind of truck or car."""

    name: Annotated[str, Field("What it is called, such as `truck` or `gondola`.")]
    capacity: Annotated[float, Field("What one carries.", kind=Kind.MASS, above=0.0, at_most=1e6)]
    items: Annotated[tuple[str, ...], Field("Items that it carries; left out: all of them.", most_items=200)] = ()


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class LoadsInput:
    """What is hauled, and in what."""

    goods: Annotated[tuple[Goods, ...], Field("What is hauled.", most_items=1000)]
    vehicles: Annotated[
        tuple[Vehicle, ...], Field("Kinds of truck and car, each in place of the others; left out: tons only.", most_items=20)
    ] = ()


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class VehicleLoads:
    """The loads of one kind of vehicle."""

    vehicle: Annotated[str, Field("Kind of vehicle.")]
    exact: Annotated[float, Field("Mass over what one carries, not rounded.")]
    loads: Annotated[int, Field("Loads, rounded up.")]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class GoodsLoads:
    """One item as it is hauled."""

    item: Annotated[str, Field("What it is.")]
    product: Annotated[str | None, Field("Which of its products.")] = None
    mass: Annotated[float | None, Field("Mass of it; left out: not known.", kind=Kind.MASS, answer=("short_ton", "t"))] = None
    loads: Annotated[tuple[VehicleLoads, ...], Field("Loads of this item alone, by each vehicle that carries it.")]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class LoadsResult:
    """Tons by item and in all, and loads of each vehicle."""

    mass: Annotated[float, Field("Mass of all items whose mass is known.", kind=Kind.MASS, answer=("short_ton", "t"))]
    goods: Annotated[tuple[GoodsLoads, ...], Field("Each item, loaded alone.")]
    mixed: Annotated[tuple[VehicleLoads, ...], Field("Loads of each vehicle when all it carries is loaded together.")]
    without_mass: Annotated[tuple[str, ...], Field("Items whose mass is not known: they are in no load.")]


def _loads(vehicle: Vehicle, mass: float) -> VehicleLoads:
    exact = mass / vehicle.capacity
    return VehicleLoads(vehicle=vehicle.name, exact=exact, loads=int(round_up(exact)))


def _carries(vehicle: Vehicle, item: str) -> bool:
    return not vehicle.items or item in vehicle.items


def evaluate(given: LoadsInput) -> LoadsResult:
    """Divide the mass of each item, and of all together, by what a vehicle carries.

    Raises:
        RefusedError: two vehicles have one name.
    """
    named: set[str] = set()
    for position, vehicle in enumerate(given.vehicles):
        if vehicle.name in named:
            raise refuse("vehicles", position, "name", reason="another vehicle has the same name", value=vehicle.name)
        named.add(vehicle.name)
    goods = tuple(
        GoodsLoads(
            item=entry.item,
            product=entry.product,
            mass=entry.mass,
            loads=()
            if entry.mass is None
            else tuple(_loads(vehicle, entry.mass) for vehicle in given.vehicles if _carries(vehicle, entry.item)),
        )
        for entry in given.goods
    )
    known = [(entry.item, entry.mass) for entry in given.goods if entry.mass is not None]
    return LoadsResult(
        mass=fsum(mass for _, mass in known),
        goods=goods,
        mixed=tuple(_loads(vehicle, fsum(mass for item, mass in known if _carries(vehicle, item))) for vehicle in given.vehicles),
        without_mass=tuple(dict.fromkeys(entry.item for entry in given.goods if entry.mass is None)),
    )


RULE = Rule(
    id="quantities.loads",
    title="Truck and car loads",
    summary=(
        "Tons by item, and the loads they make by mass: each item alone, and all that a vehicle carries together, rounded up "
        "once from the exact mass. Vehicles stand in place of each other. What takes more room than weight fills a vehicle "
        "sooner than its mass says."
    ),
    formulas=(
        Formula("mass", "sum of the masses that are known", exact=False),
        Formula("goods", "loads of an item = ceil(mass / capacity)", exact=False),
        Formula("mixed", "loads together = ceil(sum of masses / capacity)", exact=False),
    ),
    cites=(Cite("counting-rules", "rounding: at the end, once, upwards", "common-practice"),),
    input=LoadsInput,
    output=LoadsResult,
    evaluate=evaluate,
)
