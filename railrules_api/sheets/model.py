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
Extent = Literal["whole", "summary"]
"""How much of a sheet is printed: all of it, or what stands before the details."""
Path = tuple[str | int, ...]

STATUS = {
    "published": "read in the source",
    "computed": "computed from a drawing",
    "derived": "worked out from the source",
    "fitted": "fitted by us to what the source prints",
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
    extent: Extent = "whole"


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
        note: what to know of it; may be empty.
    """

    number: str
    origin: str
    name: str
    about: str
    value: str
    place: Place
    used_at: tuple[Path, ...]
    note: str = ""


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
    """A plain table: columns of numbers stand to the right; a table of details is left out of a summary."""

    title: str
    headings: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    right: frozenset[int] = frozenset()
    note: str = ""
    detail: bool = False

    def without_empty_columns(self) -> Table:
        """Return the table without the columns that are empty throughout."""
        kept = [place for place in range(len(self.headings)) if any(row[place] for row in self.rows)]
        return Table(
            self.title,
            tuple(self.headings[place] for place in kept),
            tuple(tuple(row[place] for place in kept) for row in self.rows),
            frozenset(new for new, place in enumerate(kept) if place in self.right),
            self.note,
            self.detail,
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
class Step:
    """One formula of a rule with the numbers of every use; uses whose numbers are alike share a line.

    Attributes:
        lines: each with the parts of the job that it holds for; no parts where the rule was used once, or alike everywhere.
    """

    lines: tuple[tuple[tuple[str, ...], WorkedLine], ...]


@dataclass(frozen=True, slots=True)
class Worked:
    """The uses of one rule: for which parts of the job, its formulas one by one, and the numbers of its sources."""

    rule: str
    title: str
    of: tuple[str, ...]
    steps: tuple[Step, ...]
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
    """A calculation sheet.

    What stood in comes with the number of its source; the verdict is the sign of the gravest check, and all of them counted.
    """

    title: str
    subject: str
    rule: str
    summary: str
    verdict: tuple[str, str]
    block: Block
    versions: tuple[str, str, str]
    digest: str
    checks: tuple[CheckRow, ...]
    orders: tuple[OrderRow, ...]
    tables: tuple[Table, ...]
    inputs: tuple[InputGroup, ...]
    stood_in: tuple[tuple[StoodIn, int], ...]
    assumptions: tuple[tuple[str, str], ...]
    workings: tuple[Worked, ...]
    cautions: tuple[str, ...]
    sources: tuple[Place, ...]
