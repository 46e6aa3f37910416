"""Items: what quantity lines speak of, and how each is ordered."""

from __future__ import annotations

from typing import TYPE_CHECKING, get_args

from railrules_api.catalogue.model import Direction, Item, Measure, Package
from railrules_api.catalogue.reading import (
    BadEntryError,
    id_of,
    number_of,
    provenance_of,
    refuse_unknown,
    text_of,
    word_of,
)
from railrules_api.catalogue.records import quantity_of, table_of
from railrules_api.catalogue.rulebook import Default
from railrules_api.domain.kinds import Kind

if TYPE_CHECKING:
    from collections.abc import Container, Mapping

    from railrules_api.catalogue.model import Table

_KEYS = frozenset(
    {"id", "title", "title_plural", "measure", "family", "direction", "order_step", "products", "package", "allowance"}
    | {"source", "where", "status", "also_in"}
)
LARGEST_ALLOWANCE = 1.0


def _amount(raw: object, name: str, measure: str) -> float:
    """Return pieces, or SI of a measured item.

    Raises:
        BadEntryError: it is not a number above zero, or has the wrong unit.
    """
    amount = number_of(raw)[0] if measure == "each" else quantity_of(raw, name, Kind(measure))[0]
    if amount <= 0.0:
        msg = f"{name} must lie above zero"
        raise BadEntryError(msg)
    return amount


def _package(raw: object, measure: str, products: Table | None) -> Package:
    entry = table_of(raw, "package")
    refuse_unknown(entry, {"name", "size", "column"})
    name, column = text_of(entry, "name"), text_of(entry, "column", required=False)
    if bool(column) == ("size" in entry):
        msg = "package needs one of size and column"
        raise BadEntryError(msg)
    if not column:
        return Package(name=name, size=_amount(entry["size"], "package.size", measure))
    if products is None or column not in products.columns:
        msg = f"package column {column!r} is not in the products' table"
        raise BadEntryError(msg)
    return Package(name=name, column=column)


def item_of(entry: Mapping[str, object], tables: Mapping[str, Table], sources: Container[str]) -> Item:
    """Read one `[[item]]` block.

    Raises:
        BadEntryError: whatever is wrong with it.
    """
    refuse_unknown(entry, _KEYS)
    measure = word_of(entry, "measure", get_args(Measure))
    products = text_of(entry, "products", required=False)
    if products and products not in tables:
        msg = f"products {products!r} is not a table"
        raise BadEntryError(msg)
    allowance = number_of(entry.get("allowance", 0.0))[0]
    if not 0.0 <= allowance <= LARGEST_ALLOWANCE:
        msg = f"allowance is {allowance:g}, must be a share from 0 to {LARGEST_ALLOWANCE:g}"
        raise BadEntryError(msg)
    return Item(
        id=id_of(entry),
        title=text_of(entry, "title"),
        title_plural=text_of(entry, "title_plural"),
        measure=measure,  # type: ignore[arg-type]
        family=text_of(entry, "family"),
        direction=word_of(entry, "direction", get_args(Direction)),  # type: ignore[arg-type]
        order_step=_amount(entry["order_step"], "order_step", measure) if "order_step" in entry else None,
        products=products,
        package=_package(entry["package"], measure, tables.get(products)) if "package" in entry else None,
        allowance=allowance,
        provenance=provenance_of(entry, sources),
    )


def allowance_entry(item: Item, rulebook: str) -> Default:
    """Return the rulebook entry that lets a house change an item's allowance."""
    return Default(
        id=f"allowance-{item.id}",
        about=f"Share added to the job's net total of {item.title_plural}.",
        si=item.allowance,
        printed=f"{item.allowance:g}",
        unit="",
        kind=None,
        provenance=item.provenance,
        rulebook=rulebook,
        at_least=0.0,
        at_most=LARGEST_ALLOWANCE,
    )
