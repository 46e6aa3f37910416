"""The order: allowance, one rounding up, packages, mass. What the takeoff does to the total of every item."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from railrules_api.domain.amounts import Amount
from railrules_api.domain.counting import round_up
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.rules.model import Cite, Formula, Rule


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class OrderInput:
    """A job's total of one item and how it is bought."""

    net: Annotated[Amount, Field("Exact total of the item over the whole job.")]
    net_mass: Annotated[float | None, Field("Mass of that total.", kind=Kind.MASS, at_least=0.0, at_most=1e12)] = None
    mass_each: Annotated[
        float | None,
        Field("Mass of one piece, in place of the mass of the total.", kind=Kind.MASS, above=0.0, at_most=1e6),
    ] = None
    allowance: Annotated[
        float | None, Field("Allowance for loss, as a share of the total; left out: none.", at_least=0.0, at_most=10.0)
    ] = None
    extra: Annotated[Amount | None, Field("Allowance as an amount, added besides.")] = None
    step: Annotated[
        Amount | None, Field("Smallest amount sold; left out: one piece of a count, any amount of what is measured.")
    ] = None
    package_size: Annotated[
        Amount | None, Field("What one package holds: pieces, or the item's own kind of quantity, or a mass.")
    ] = None
    whole_packages: Annotated[
        bool | None,
        Field("Only full packages are sold, so the order fills the last one; left out: loose pieces are sold as well."),
    ] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class OrderResult:
    """What to order."""

    with_allowance: Annotated[Amount, Field("Total with allowance, not rounded.")]
    order: Annotated[Amount, Field("What to order, rounded up once.")]
    packages_exact: Annotated[float | None, Field("Packages, not rounded.")] = None
    packages: Annotated[float | None, Field("Packages, rounded up.")] = None
    mass: Annotated[float | None, Field("Mass of the order.", kind=Kind.MASS)] = None


def _alike(given: OrderInput, name: str, amount: Amount, *, or_mass: bool = False) -> float:
    if amount.kind != given.net.kind and not (or_mass and amount.kind is Kind.MASS):
        spoken = "a count" if given.net.kind is None else f"a {given.net.kind.value.replace('_', ' ')}"
        raise refuse(name, reason=f"the item's total is {spoken}, so this must be one", value=amount.value)
    if amount.value <= 0.0 and name != "extra":
        raise refuse(
            name,
            "value",
            reason="outside the allowed range; the minimum itself is not allowed",
            value=amount.value,
            minimum=0.0,
        )
    if amount.value < 0.0:
        raise refuse(name, "value", reason="outside the allowed range", value=amount.value, minimum=0.0)
    return amount.value


def _per_unit(given: OrderInput) -> float | None:
    """Return the mass of one piece, or of one SI unit of what is measured."""
    if given.net.kind is Kind.MASS:
        return 1.0
    if given.mass_each is not None:
        if given.net_mass is not None:
            raise refuse("mass_each", reason="give either net_mass or mass_each", value=given.mass_each)
        if given.net.kind is not None:
            raise refuse("mass_each", reason="only a count has a mass of one piece; give net_mass", value=given.mass_each)
        return given.mass_each
    return given.net_mass / given.net.value if given.net_mass is not None and given.net.value > 0.0 else None


def _in_packages(given: OrderInput, order: float, per_unit: float | None) -> tuple[float, float] | None:
    """Return what is ordered, and what a package holds, in the package's own kind."""
    if given.package_size is None:
        return None
    size = _alike(given, "package_size", given.package_size, or_mass=True)
    if given.package_size.kind == given.net.kind:
        return order, size
    if per_unit is None:
        if order == 0.0:
            return 0.0, size
        raise refuse("package_size", reason="a package by mass needs the mass of a piece: give mass_each or net_mass", value=size)
    return order * per_unit, size


def evaluate(given: OrderInput) -> OrderResult:
    """Add the allowance, round up once to what is sold, and say how many packages that is.

    Raises:
        RefusedError: an amount is of another kind than the total, or not above zero, or a mass is missing.

    >>> result = evaluate(OrderInput(net=Amount(13001.0), package_size=Amount(500.0)))
    >>> result.order.value, result.packages
    (13001.0, 27.0)
    """
    if given.net.value < 0.0:
        raise refuse("net", "value", reason="outside the allowed range", value=given.net.value, minimum=0.0)
    extra = 0.0 if given.extra is None else _alike(given, "extra", given.extra)
    total = given.net.value * (1.0 + (given.allowance or 0.0)) + extra
    if given.step is not None:
        order = round_up(total, _alike(given, "step", given.step))
    else:
        order = round_up(total) if given.net.kind is None else total
    per_unit = _per_unit(given)
    mass = None if per_unit is None else order * per_unit
    exact = packages = None
    held = _in_packages(given, order, per_unit)
    if held is not None and given.package_size is not None:
        exact = held[0] / held[1]
        packages = round_up(exact)
        if given.whole_packages and given.package_size.kind == given.net.kind:
            order = packages * held[1]
            mass = None if per_unit is None else order * per_unit
        elif given.whole_packages:
            mass = packages * held[1]
    return OrderResult(
        with_allowance=Amount(total, given.net.kind),
        order=Amount(order, given.net.kind),
        packages_exact=exact,
        packages=packages,
        mass=mass,
    )


RULE = Rule(
    id="quantities.order",
    title="From the job's total to the order",
    summary=(
        "Allowance and rounding are applied once, to the job's total of an item and never to its lines. The total with "
        "allowance is rounded up to what is sold; packages are counted from that. A total that misses a whole step by float "
        "noise only counts as whole."
    ),
    formulas=(
        Formula("with_allowance", "net * (1 + allowance) + extra", exact=False),
        Formula("order", "ceil(with_allowance / step) * step", exact=False),
        Formula("packages", "ceil(order / package_size)", exact=False),
        Formula("mass", "order * mass of one", exact=False),
    ),
    cites=(
        Cite("counting-rules", "rounding: at the end, once, upwards, on the job's total", "common-practice"),
        Cite("alaska-standard-plan-2002", "plan 1.2: ties a mile rounded up", "published"),
    ),
    input=OrderInput,
    output=OrderResult,
    evaluate=evaluate,
)
