"""The line: one item, one net amount. What every quantity rule answers with and the takeoff adds up."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from railrules_api.domain.amounts import Amount
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """A net amount of one item, neither allowance nor rounding in it."""

    item: Annotated[str, Field("Id of the item in `data/items.toml`.")]
    product: Annotated[str, Field("Catalogue id of the product; empty where the item needs none.")]
    net: Annotated[Amount, Field("Exact amount, before allowance and rounding.")]
    mass: Annotated[
        float | None,
        Field("Mass of the net amount; left out where none is known.", kind=Kind.MASS, answer=("lb", "kg")),
    ] = None
    package: Annotated[str, Field("What the product is packed in; empty where the item's usual package holds.")] = ""
    package_size: Annotated[Amount | None, Field("What one package of the product holds.")] = None
