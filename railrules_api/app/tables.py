"""Plain text tables for the terminal: numbers to the right, words to the left, nothing else."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence


def table(headings: Sequence[str], rows: Sequence[Sequence[str]], *, right: Sequence[int] = ()) -> str:
    """Return rows under their headings in columns; the columns named in `right` are set to the right."""
    widths = [max(len(row[column]) for row in (headings, *rows)) for column in range(len(headings))]

    def line(cells: Sequence[str]) -> str:
        placed = (
            cell.rjust(width) if column in right else cell.ljust(width)
            for column, (cell, width) in enumerate(zip(cells, widths, strict=True))
        )
        return "  ".join(placed).rstrip()

    return "\n".join([line(headings), "  ".join("-" * width for width in widths), *(line(row) for row in rows)])


def number(value: float, digits: int = 2) -> str:
    """Return a number with its thousands set apart; a whole one without decimals.

    >>> number(6498.0), number(12996.923), number(0.05)
    ('6,498', '12,996.92', '0.05')
    """
    rounded = round(value, digits)
    return f"{rounded:,.0f}" if rounded == int(rounded) else f"{rounded:,.{digits}f}"
