"""From exact lines to orders: lines of one item and product are added up, and rounded once, on their total."""

from __future__ import annotations

from dataclasses import dataclass, field
from math import fsum
from typing import TYPE_CHECKING, Annotated, Literal

from railrules_api.domain.amounts import Amount
from railrules_api.domain.counting import RELATIVE_SLACK
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.rules.quantities import order as order_rule

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from railrules_api.rules.quantities.lines import Line

Direction = Literal["order", "recover", "work"]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class ItemTerms:
    """How an item is ordered, from the catalogue.

    Attributes:
        item: id of the item.
        title: its name for people, plural.
        direction: bought, recovered from the old track, or work done.
        order_step: smallest amount that can be ordered, SI or pieces; None where any amount can.
        package: what it comes in; empty for none.
        package_size: what a package holds, SI or pieces; None for none.
        allowance: share added to the net total.
    """

    item: str
    title: str
    direction: Direction
    order_step: float | None
    package: str
    package_size: float | None
    allowance: float


@dataclass(frozen=True, slots=True)
class AllowanceTerms:
    """What a job changes of the items' terms.

    Attributes:
        allowances: item -> share added.
        packages: item -> (name of the package, what it holds).
    """

    allowances: Mapping[str, float] = field(default_factory=dict)
    packages: Mapping[str, tuple[str, float]] = field(default_factory=dict)


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Order:
    """The total of one item and product: exact net, allowance, rounded order, packages."""

    item: Annotated[str, Field("Id of the item.")]
    title: Annotated[str, Field("Name of the item.")]
    product: Annotated[str, Field("Catalogue id of the product; empty where none is named.")]
    direction: Annotated[Direction, Field("Bought, recovered from the old track, or work done.")]
    net: Annotated[Amount, Field("Exact total, before allowance and rounding.")]
    allowance: Annotated[float, Field("Share added to the net total.")]
    order: Annotated[Amount, Field("Net with allowance, rounded up once to what can be ordered.")]
    package: Annotated[str | None, Field("What it comes in.")] = None
    packages: Annotated[int | None, Field("Whole packages that hold the order.")] = None
    net_mass: Annotated[float | None, Field("Mass of the net total.", kind=Kind.MASS)] = None
    order_mass: Annotated[float | None, Field("Mass of the order.", kind=Kind.MASS)] = None


def order_lines(lines: Iterable[Line], terms: Mapping[str, ItemTerms], changes: AllowanceTerms) -> tuple[Order, ...]:
    """Add lines up by item and product, in order of first appearance, and order the totals by `quantities.order`.

    An item that the catalogue does not know is the caller's own: ordered by the piece, without allowance.
    """
    groups: dict[tuple[str, str], list[Line]] = {}
    for line in lines:
        groups.setdefault((line.item, line.product), []).append(line)
    return tuple(_order(group, terms.get(item) or own_terms(item), changes) for (item, _), group in groups.items())


def own_terms(item: str) -> ItemTerms:
    """Return the terms of an item of the caller's own."""
    return ItemTerms(item=item, title=item, direction="order", order_step=None, package="", package_size=None, allowance=0.0)


def total_of(values: list[float]) -> float:
    """Add up; where lines stand in for each other and leave nothing but float noise, nothing is left."""
    total = fsum(values)
    return 0.0 if abs(total) <= RELATIVE_SLACK * fsum(map(abs, values)) else total


def _order(group: list[Line], terms: ItemTerms, changes: AllowanceTerms) -> Order:
    first = group[0]
    kind = first.net.kind
    net = total_of([line.net.value for line in group])
    counted = [line.mass for line in group if line.net.value != 0.0]  # a line of nothing weighs nothing, known or not
    masses = [mass for mass in counted if mass is not None]
    net_mass = fsum(masses) if len(masses) == len(counted) else None
    package, size = terms.package, None if terms.package_size is None else Amount(terms.package_size, kind)
    packed = next((line for line in group if line.package_size is not None), first)
    if packed.package_size is not None:
        package, size = packed.package, packed.package_size
    if terms.item in changes.packages:
        package, pieces = changes.packages[terms.item]
        size = Amount(pieces)
    bought = terms.direction == "order"
    if not bought:  # work and salvage are what they are: only what is bought is rounded to what can be bought
        order, mass, packages, allowance = net, net_mass, None, 0.0
    else:
        allowance = changes.allowances.get(terms.item, terms.allowance)
        found = order_rule.evaluate(
            order_rule.OrderInput(
                net=Amount(net, kind),
                net_mass=net_mass,
                allowance=allowance,
                step=None if terms.order_step is None else Amount(terms.order_step, kind),
                package_size=size,
            )
        )
        order, mass, packages = found.order.value, found.mass, found.packages
    return Order(
        item=terms.item,
        title=terms.title,
        product=first.product,
        direction=terms.direction,
        net=Amount(net, kind, first.net.answer),
        allowance=allowance,
        order=Amount(order, kind, first.net.answer),
        package=None if packages is None else package,
        packages=None if packages is None else int(packages),
        net_mass=net_mass,
        order_mass=mass,
    )
