"""What the catalogue holds once it is read: sources, rows of tables, values, items. All of it frozen."""

from __future__ import annotations

from dataclasses import dataclass, field
from types import MappingProxyType
from typing import TYPE_CHECKING, Literal

if TYPE_CHECKING:
    from collections.abc import Mapping

    from railrules_api.domain.kinds import Kind

Status = Literal["published", "computed", "derived", "fitted", "from-memory", "common-practice"]
"""How a value was obtained: read in the document, computed from a drawing, worked out, remembered, a fact of the trade."""

SourceKind = Literal[
    "regulation", "government", "standard", "handbook", "railroad-practice", "supplier", "paper", "mathematics", "trade"
]
Measure = Literal["each", "length", "mass", "volume", "area"]
Direction = Literal["order", "recover", "work"]
Shape = Literal["quantity", "number", "count", "text", "texts"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Source:
    """A document that is cited; `year` is None where the copy read gives none."""

    id: str
    title: str
    publisher: str
    kind: SourceKind
    year: int | None = None
    address: str = ""
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Provenance:
    """Where a value comes from: a source, the place in it, how it was obtained, and sources that print the same."""

    source: str
    where: str
    status: Status
    also: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Value:
    """One number of a row.

    Attributes:
        si: the value in coherent SI; a count or pure number as it stands.
        printed: the digits of the data file, which are the digits of the source.
        unit: unit code of the printed value; empty for a count or pure number.
        kind: kind of quantity; None for a count or pure number.
        provenance: where it comes from.
    """

    si: float
    printed: str
    unit: str
    kind: Kind | None
    provenance: Provenance

    @property
    def source(self) -> str:
        """Id of the source."""
        return self.provenance.source

    @property
    def where(self) -> str:
        """Place in the source."""
        return self.provenance.where

    @property
    def status(self) -> Status:
        """How the value was obtained."""
        return self.provenance.status


@dataclass(frozen=True, slots=True)
class Column:
    """A property that the rows of a table may have; a number must lie above zero.

    Where a row has none, `quotient` names two columns whose quotient stands in, marked as derived: the mass of one spike is
    that of the keg over the count.
    """

    name: str
    about: str
    shape: Shape = "quantity"
    kind: Kind | None = None
    required: bool = False
    quotient: tuple[str, str] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """A row of a table. A value that is not known is absent from `values`, never zero.

    Attributes:
        id: the name in requests and addresses.
        title: the name for people.
        provenance: where the row comes from; where every value has its own, that of the first.
        values: numbers by column.
        texts: words by column.
        record: the described record of a pattern row, else None.
        also: further names by which the same thing goes.
        notes: what a user of the row should know; may be empty.
    """

    id: str
    title: str
    provenance: Provenance
    values: Mapping[str, Value] = field(default_factory=lambda: MappingProxyType({}))
    texts: Mapping[str, tuple[str, ...]] = field(default_factory=lambda: MappingProxyType({}))
    record: object | None = None
    also: tuple[str, ...] = ()
    notes: str = ""

    @property
    def source(self) -> str:
        """Id of the source."""
        return self.provenance.source

    @property
    def where(self) -> str:
        """Place in the source."""
        return self.provenance.where

    @property
    def status(self) -> Status:
        """How the row was obtained."""
        return self.provenance.status

    @property
    def sources(self) -> tuple[str, ...]:
        """Ids of all sources of the row, in order of first mention."""
        parts = (self.provenance, *(value.provenance for value in self.values.values()))
        return tuple(dict.fromkeys(name for part in parts for name in (part.source, *part.also)))


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """Rows of one kind of thing, in the order of the file."""

    id: str
    title: str
    about: str
    columns: Mapping[str, Column]
    rows: Mapping[str, Row]
    record: type | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Package:
    """What an item is sold or hauled in: of a fixed size (SI, or pieces), or as the product's row says in `column`."""

    name: str
    size: float | None = None
    column: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Item:
    """Something a quantity line speaks of.

    Attributes:
        id: the name in a line.
        title: name of one.
        title_plural: name of several.
        measure: pieces, or the kind of quantity it is counted in.
        family: heading under which a bill of material lists it.
        direction: bought, recovered, or work to be done.
        order_step: smallest amount that can be ordered, SI or pieces; None where any amount can.
        products: catalogue table of its products; empty where it has none.
        package: what it comes in; None where it is not packed.
        allowance: share added to the job's net total; the rulebook entry `allowance-<id>` carries the same and can be overridden.
        provenance: where allowance and package come from.
    """

    id: str
    title: str
    title_plural: str
    measure: Measure
    family: str
    direction: Direction
    order_step: float | None
    products: str
    package: Package | None
    allowance: float
    provenance: Provenance


def plain(name: str) -> str:
    """Return a name without spaces, hyphens and case, so that `136 re` and `136RE` are the same."""
    return "".join(letter for letter in name.casefold() if letter.isalnum())
