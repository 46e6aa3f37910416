"""The hauling of a job: what is ordered and what is recovered, put to the rule that loads trucks and cars."""

from __future__ import annotations

from typing import TYPE_CHECKING

from railrules_api.domain.errors import refuse
from railrules_api.rules.quantities.loads import Goods, LoadsInput

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from railrules_api.rules.ordering import Direction, ItemTerms, Order
    from railrules_api.rules.takeoff.book import JobLine
    from railrules_api.rules.takeoff.job import Hauling


def check_items(hauling: Hauling | None, terms: Mapping[str, ItemTerms], lines: Iterable[JobLine]) -> None:
    """Refuse a vehicle that carries an item which is in no line and no catalogue: a slip of the pen.

    Raises:
        RefusedError: so it is.
    """
    if hauling is None:
        return
    known = {*terms, *(line.item for line in lines)}
    for position, vehicle in enumerate(hauling.vehicles):
        for place, item in enumerate(vehicle.items):
            if item not in known:
                allowed = tuple(sorted(known))[:200]
                raise refuse("vehicles", position, "items", place, reason="no such item", value=item, allowed=allowed)


def loads_input(orders: Iterable[Order], direction: Direction, hauling: Hauling | None) -> LoadsInput:
    """Return the question to `quantities.loads` for what goes one way: bought goods as ordered, recovered ones as counted."""
    return LoadsInput(
        goods=tuple(
            Goods(
                item=order.item,
                product=order.product or None,
                mass=order.order_mass if direction == "order" else order.net_mass,
            )
            for order in orders
            if order.direction == direction and order.net.value > 0.0
        ),
        vehicles=() if hauling is None else hauling.vehicles,
    )
