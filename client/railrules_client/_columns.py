"""Columns of a table, and their cells for people."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Literal, TypeAlias

from railrules_client._units import label_of

if TYPE_CHECKING:
    from collections.abc import Sequence

Kind: TypeAlias = Literal["text", "number", "count", "flag"]
Cell: TypeAlias = "str | float | bool | None"
_VERDICTS = {"passes": "\u2713 pass", "fails": "\u2717 FAIL", "not-checked": "\u2013 open"}


@dataclass(frozen=True, slots=True)
class Column:
    """A column of a table.

    Attributes:
        name: its heading.
        kind: what its cells hold, where they hold anything.
        cells: its cells, None where nothing is known.
        units: the column that holds the units of its numbers; empty where they have none.
    """

    name: str
    kind: Kind
    cells: tuple[Cell, ...] = field(repr=False)
    units: str = ""


def shown(value: Cell, unit: str = "") -> str:
    """Return a cell for people: thousands set apart, two decimals, a unit behind it, a word for a verdict.

    >>> shown(12996.923, "lb"), shown(6498.0), shown(0.05237), shown("fails"), shown(None)
    ('12,996.92 lb', '6,498', '0.05237', '✗ FAIL', '')
    """
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, str):
        return _VERDICTS.get(value, value)
    # below a unit as many digits as tell it apart, above it two decimals, and none where they would be noughts
    figure = round(value, 2) if abs(value) >= 1 else value
    text = f"{figure:,.0f}" if figure == int(figure) else f"{figure:,.2f}" if abs(figure) >= 1 else f"{figure:.4g}"
    return f"{text} {label_of(unit)}".rstrip() if unit else text


def plain(headings: Sequence[str], rows: Sequence[Sequence[str]], *, right: Sequence[int] = ()) -> str:
    """Return rows under their headings in columns for a terminal; the columns named in `right` are set to the right."""
    widths = [max(len(row[column]) for row in (headings, *rows)) for column in range(len(headings))]

    def line(cells: Sequence[str]) -> str:
        placed = (
            cell.rjust(width) if column in right else cell.ljust(width)
            for column, (cell, width) in enumerate(zip(cells, widths, strict=True))
        )
        return "  ".join(placed).rstrip()

    return "\n".join([line(headings), "  ".join("-" * width for width in widths), *(line(row) for row in rows)])
