"""What stands on a calculation sheet, before it is set in any form."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Literal

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from railrules_api.rules.model import Rule, Working
    from railrules_api.rules.ordering import ItemTerms, Order
    from railrules_api.sheets.working import WorkedLine
    from railrules_api.units import System

Paper = Literal["letter", "A4"]
Path = tuple[str | int, ...]

STATUS = {
    "published": "read in the source",
    "computed": "computed from a drawing",
    "derived": "worked out from the source",
    "from-memory": "from memory, not read in a document",
    "common-practice": "common practice",
}
"""How a statement was obtained, in words."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Block:
    """The title block. What is empty is left blank, to be filled in by hand."""

    project: str = ""
    location: str = ""
    prepared: str = ""
    checked: str = ""
    date: str = ""
    paper: Paper = "letter"


@dataclass(frozen=True, slots=True)
class Place:
    """A place in a source."""

    title: str
    where: str
    status: str

    @property
    def text(self) -> str:
        """The place in words."""
        return f"{self.title}: {self.where} ({STATUS[self.status]})"


@dataclass(frozen=True, slots=True, kw_only=True)
class StoodIn:
    """A value that the request did not give.

    Attributes:
        number: what the sheet calls it: `D3` a default of the rulebook, `C2` a value of the catalogue.
        origin: rulebook, or table and row of the catalogue.
        name: id of the default, or column of the row.
        about: what it means.
        value: as its source prints it, with the unit's label.
        place: where it comes from.
        used_at: paths in the input where it stood in.
    """

    number: str
    origin: str
    name: str
    about: str
    value: str
    place: Place
    used_at: tuple[Path, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Material:
    """Everything a sheet is made from.

    Attributes:
        rule: the rule that was asked.
        given: its bound input.
        found: its result.
        workings: every use of a rule on the way.
        orders: totals of what is ordered; empty where nothing is.
        terms: how each item is ordered.
        system: units of the answer.
        block: title block.
        versions: service, catalogue, rulebook.
        digest: SHA-256 of the request.
        stood_in: defaults and catalogue values.
        cautions: each with its place.
        title_of: the title of a source by its id.
    """

    rule: Rule[Any, Any]
    given: Any
    found: Any
    workings: tuple[Working, ...]
    orders: tuple[Order, ...]
    terms: Mapping[str, ItemTerms]
    system: System
    block: Block
    versions: tuple[str, str, str]
    digest: str
    stood_in: tuple[StoodIn, ...]
    cautions: tuple[tuple[str, Place], ...]
    title_of: Callable[[str], str]


# ---------------------------------------------------------------- what comes out


@dataclass(frozen=True, slots=True)
class Table:
    """A plain table: columns of numbers stand to the right."""

    title: str
    headings: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    right: frozenset[int] = frozenset()
    note: str = ""

    def without_empty_columns(self) -> Table:
        """Return the table without the columns that are empty throughout."""
        kept = [place for place in range(len(self.headings)) if any(row[place] for row in self.rows)]
        return Table(
            self.title,
            tuple(self.headings[place] for place in kept),
            tuple(tuple(row[place] for place in kept) for row in self.rows),
            frozenset(new for new, place in enumerate(kept) if place in self.right),
            self.note,
        )


@dataclass(frozen=True, slots=True)
class InputRow:
    """One value that went in."""

    meaning: str
    symbol: str
    value: str
    origin: str


@dataclass(frozen=True, slots=True)
class InputGroup:
    """The values of one part of the input; a list of alike parts is a table."""

    title: str
    rows: tuple[InputRow, ...]
    note: str = ""
    table: Table | None = None


@dataclass(frozen=True, slots=True)
class Worked:
    """One use of one rule: its lines, and the numbers of its sources."""

    rule: str
    title: str
    of: str
    lines: tuple[WorkedLine, ...]
    sources: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class OrderRow:
    """From the net total of an item to its order and packages."""

    title: str
    product: str
    order: WorkedLine
    packages: WorkedLine | None
    package: str
    mass: str


@dataclass(frozen=True, slots=True)
class CheckRow:
    """A check: the verdict in a word and a sign."""

    title: str
    of: tuple[str, ...]
    demand: str
    capacity: str
    utilisation: str
    sign: str
    verdict: str
    advice: str
    rule: str
    place: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheet:
    """A calculation sheet."""

    title: str
    subject: str
    rule: str
    summary: str
    block: Block
    versions: tuple[str, str, str]
    digest: str
    checks: tuple[CheckRow, ...]
    orders: tuple[OrderRow, ...]
    tables: tuple[Table, ...]
    inputs: tuple[InputGroup, ...]
    stood_in: tuple[StoodIn, ...]
    assumptions: tuple[tuple[str, str], ...]
    workings: tuple[Worked, ...]
    cautions: tuple[str, ...]
    sources: tuple[Place, ...]
