"""Money: decimal arithmetic on the totals of a job, each line rounded once to the currency's decimals."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import ROUND_HALF_UP, Decimal, localcontext
from typing import TYPE_CHECKING, Annotated, Final

from railrules_api.domain.errors import below, refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean

if TYPE_CHECKING:
    from collections.abc import Sequence

    from railrules_api.rules.ordering import Order
    from railrules_api.rules.takeoff.job import Price, Prices

PER: Final[dict[str, tuple[Kind, Decimal]]] = {  # what one unit of a price is in SI, exactly
    "ft": (Kind.LENGTH, Decimal("0.3048")),
    "m": (Kind.LENGTH, Decimal(1)),
    "mi": (Kind.LENGTH, Decimal("1609.344")),
    "km": (Kind.LENGTH, Decimal(1000)),
    "gal": (Kind.VOLUME, Decimal("0.003785411784")),
    "l": (Kind.VOLUME, Decimal("0.001")),
    "lb": (Kind.MASS, Decimal("0.45359237")),
    "kg": (Kind.MASS, Decimal(1)),
    "short_ton": (Kind.MASS, Decimal("907.18474")),
    "long_ton": (Kind.MASS, Decimal("1016.0469088")),
    "t": (Kind.MASS, Decimal(1000)),
}
QUANTITY_DIGITS: Final = Decimal("0.000001")
"""Quantities that are not whole numbers are priced to the millionth of the unit, so that float noise never shows in a price."""


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Cost:
    """The price of a total. What is recovered is a credit, shown as a positive amount."""

    item: Annotated[str, Field("Id of the item.")]
    title: Annotated[str, Field("Name of the item.")]
    product: Annotated[str, Field("Catalogue id of the product; empty where none is named.")]
    credit: Annotated[bool, Field("A credit for what is recovered, not a cost.")]
    quantity: Annotated[Decimal, Field("What is priced, in the price's unit.")]
    per: Annotated[str, Field("Unit of the price.")]
    price: Annotated[Decimal, Field("Price of one.")]
    amount: Annotated[Decimal, Field("Quantity times price, rounded once.")]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Money:
    """Costs and credits of a job in one currency."""

    currency: Annotated[str, Field("Currency code.")]
    costs: Annotated[tuple[Cost, ...], Field("Priced totals.")]
    cost: Annotated[Decimal, Field("Sum of costs.")]
    credit: Annotated[Decimal, Field("Sum of credits.")]
    balance: Annotated[Decimal, Field("Costs less credits; below zero when more is recovered than spent.")]
    unpriced: Annotated[tuple[str, ...], Field("Items to buy or recover that have no price.")]


def _quantity(order: Order, per: str) -> Decimal:
    """Return what is priced: the order of what is bought, the net of what is recovered, in the price's unit."""
    if per == "package":
        if order.packages is None:
            raise refuse("per", reason=f"{order.item} is not packed here; price it by the piece or by a measure", value=per)
        return Decimal(order.packages)
    if per == "each":
        if order.order.kind is not None:
            raise refuse("per", reason=f"{order.item} is measured, not counted; price it by a measure", value=per)
        return Decimal(repr(order.order.value)).quantize(QUANTITY_DIGITS).normalize()
    kind, unit = PER[per]
    value = order.order.value if order.order.kind is kind else order.order_mass if kind is Kind.MASS else None
    if value is None:
        wanted = "mass is not known" if kind is Kind.MASS else f"amount is not a {kind.value}"
        raise refuse("per", reason=f"{order.item} cannot be priced so: its {wanted}", value=per)
    return (Decimal(repr(value)) / unit).quantize(QUANTITY_DIGITS).normalize()


def _plain(value: Decimal) -> Decimal:
    """Return a decimal without an exponent: 1E+2 would read as anything but a quantity."""
    return value.quantize(Decimal(1)) if value == value.to_integral_value() else value


def _price_of(order: Order, prices: Sequence[Price]) -> tuple[int, Price] | None:
    exact = [
        (position, price)
        for position, price in enumerate(prices)
        if price.item == order.item and price.product in (None, order.product)
    ]
    # a price for the very product beats one for any product of the item
    return max(exact, key=lambda found: found[1].product is not None, default=None)


def price(orders: Sequence[Order], prices: Prices) -> Money:
    """Price the totals of a job.

    Raises:
        RefusedError: a price is by a measure that its item does not have; paths are below the prices.
    """
    cent = Decimal(1).scaleb(-prices.decimals)
    costs: list[Cost] = []
    unpriced: list[str] = []
    with localcontext() as context:
        context.prec = 50
        for order in orders:
            if order.direction == "work" or order.net.value == 0.0:
                continue
            found = _price_of(order, prices.items)
            if found is None:
                unpriced.append(order.item)
                continue
            position, terms = found
            with below("items", position):
                quantity = _plain(_quantity(order, terms.per))
            costs.append(
                Cost(
                    item=order.item,
                    title=order.title,
                    product=order.product,
                    credit=order.direction == "recover",
                    quantity=quantity,
                    per=terms.per,
                    price=terms.price,
                    amount=(quantity * terms.price).quantize(cent, rounding=ROUND_HALF_UP),
                )
            )
        cost = sum((item.amount for item in costs if not item.credit), Decimal(0).quantize(cent))
        credit = sum((item.amount for item in costs if item.credit), Decimal(0).quantize(cent))
    return Money(
        currency=prices.currency,
        costs=tuple(costs),
        cost=cost,
        credit=credit,
        balance=cost - credit,
        unpriced=tuple(dict.fromkeys(unpriced)),
    )
