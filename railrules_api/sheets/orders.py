"""From net totals to orders, step by step, as `quantities.order` takes them."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from railrules_api.domain.amounts import Amount
from railrules_api.domain.kinds import Kind
from railrules_api.rules.ordering import own_terms
from railrules_api.sheets.model import OrderRow
from railrules_api.sheets.numbers import MOST, USUAL, Printed, printed
from railrules_api.sheets.working import Number, WorkedLine, follows, shown, usual_unit

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from railrules_api.rules.model import Working
    from railrules_api.rules.ordering import ItemTerms, Order
    from railrules_api.rules.takeoff.job import Packaging
    from railrules_api.units import System


class Selling(NamedTuple):
    """How an item is sold in one job: the smallest amount, and what a package holds; None for neither."""

    step: float | None
    size: Amount | None


def selling(
    orders: Iterable[Order], workings: Iterable[Working], terms: Mapping[str, ItemTerms], packaging: Iterable[Packaging] = ()
) -> dict[tuple[str, str], Selling]:
    """Return how each ordered item is sold: as the job says, else as its product is packed, else as the item usually is."""
    packed = {entry.item: entry.pieces for entry in packaging}
    by_product: dict[tuple[str, str], Amount] = {}
    for working in workings:
        for line in getattr(working.found, "lines", ()):
            if line.package_size is not None:
                by_product.setdefault((line.item, line.product), line.package_size)
    found: dict[tuple[str, str], Selling] = {}
    for order in orders:
        key, own = (order.item, order.product), terms.get(order.item) or own_terms(order.item)
        kind = order.net.kind
        size = by_product.get(key) or (None if own.package_size is None else Amount(own.package_size, kind))
        if order.item in packed:
            size = Amount(packed[order.item])
        step = own.order_step if own.order_step is not None else 1.0 if kind is None else None
        found[key] = Selling(step, size if order.packages is not None else None)
    return found


def _amount(amount: Amount) -> Number:
    return Number(amount.value, amount.kind, amount.answer)


def _line(meaning: str, formula: str, given: Mapping[str, Number], result: Number, system: System) -> WorkedLine:
    """Print a formula with as many digits as its result needs."""
    last = shown(result, system)
    put: dict[str, Printed] = {}
    for significant in range(USUAL, MOST + 1):
        put = {name: shown(number, system, significant=significant) for name, number in given.items()}
        if follows(formula, put, last):
            break
    return WorkedLine("", meaning, formula, exact=True, text=formula, numbers=put, results=(last,), units="", number=0)


def order_row(order: Order, sold: Selling, system: System) -> OrderRow:
    """Return an order with its arithmetic: allowance, one rounding up, packages."""
    net = _amount(order.net)
    given = {"net": net}
    formula = "net"
    if order.allowance:
        given["allowance"] = Number(order.allowance, None, None)
        formula = "net * (1 + allowance)"
    if sold.step is not None and order.direction == "order":
        whole = sold.step if net.kind is None else (unit.from_si(sold.step) if (unit := usual_unit(net, system)) else sold.step)
        if abs(whole - 1.0) <= 1e-12:  # noqa: PLR2004  float noise of a unit's factor
            formula = f"ceil({formula})"
        else:
            given["step"] = Number(sold.step, net.kind, net.answer)
            formula = f"ceil({formula} / step) * step"
    line = _line(order.title, formula, given, _amount(order.order), system)
    packages = None
    if order.packages is not None and sold.size is not None:
        held = _amount(order.order)
        if sold.size.kind is not order.order.kind and order.order_mass is not None:
            held = Number(order.order_mass, Kind.MASS, None)
        counted = Number(order.packages, None, None)
        packages = _line(order.package or "", "ceil(order / size)", {"order": held, "size": _amount(sold.size)}, counted, system)
    mass = order.order_mass if order.direction == "order" else order.net_mass
    text = "" if mass is None else shown(Number(mass, Kind.MASS, None), system).text
    return OrderRow(order.title, order.product, line, packages, order.package or "", text)


def percent(share: float, system: System) -> str:
    """Return a share in percent."""
    return f"{printed(100 * share, system, significant=4).text}\u00a0%"
