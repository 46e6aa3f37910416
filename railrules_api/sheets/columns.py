"""How wide the columns of a table are, from what stands in them: numbers whole, texts by what is left."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Final

from railrules_api.sheets.model import Table

if TYPE_CHECKING:
    from collections.abc import Sequence

_NARROWEST: Final = 4
_TEXT: Final = 44
"""Characters beyond which a text is no reason for a wider column."""
_PAD: Final = 2
_LONG: Final = 16
"""Rows from which a narrow table is set with several of its rows side by side."""
_MOST_BESIDE: Final = 3
_BETWEEN: Final = 6
"""Characters of the empty column between rows that stand side by side."""
_ROOM: Final = (("", 104), ("wide", 124), ("widest", 150))
"""Styles, each smaller than the one before, and how many characters stand side by side in it."""


def _longest_word(texts: Sequence[str]) -> int:
    # hyphens and strokes end a line as well as spaces do
    return max([_NARROWEST, *(len(word) for text in texts for word in text.replace("-", "- ").replace("/", "/ ").split(" "))])


def _needs(table: Table) -> list[tuple[int, int]]:
    """Return of each column the least width that breaks no word or number, and the width it would like."""
    needs: list[tuple[int, int]] = []
    for place, heading in enumerate(table.headings):
        cells = [row[place] for row in table.rows]
        longest = max([0, *(len(cell) for cell in cells)])
        if place in table.right and longest <= _TEXT:
            least = max(longest, _longest_word([heading]))
            needs.append((least + _PAD, least + _PAD))
        else:
            least = min(_longest_word([heading, *cells]), _TEXT)
            needs.append((least + _PAD, max(least, min(longest, _TEXT)) + _PAD))
    return needs


def folded(table: Table) -> Table:
    """Return a long and narrow table with two or three of its rows side by side, read like a text; others as they are."""
    width = sum(need[1] for need in _needs(table)) + _BETWEEN
    beside = min(_MOST_BESIDE, (_ROOM[0][1] + _BETWEEN) // max(width, 1))
    if len(table.rows) < _LONG or beside < 2:  # noqa: PLR2004  one beside another
        return table
    nothing = ("",) * len(table.headings)
    lines = [table.rows[first : first + beside] for first in range(0, len(table.rows), beside)]
    lines[-1] = (*lines[-1], *[nothing] * (beside - len(lines[-1])))
    step = len(table.headings) + 1
    right = frozenset(place + step * block for place in table.right for block in range(beside))
    return replace(table, headings=_joined([table.headings] * beside), rows=tuple(map(_joined, lines)), right=right)


def _joined(rows: Sequence[tuple[str, ...]]) -> tuple[str, ...]:
    """Return rows as one, an empty cell between each."""
    first, *others = rows
    return (*first, *(cell for row in others for cell in ("", *row)))


def shares(table: Table) -> tuple[list[int], str]:
    """Return the widths of a table's columns in whole percents that add up to a hundred, and the style in which they fit.

    A table that fits in no style keeps the smallest one, and its texts break inside words.
    """
    needs = _needs(table)
    least = sum(need[0] for need in needs)
    wishes = sum(need[1] for need in needs) - least
    # a long table is set smaller before its texts take two lines each
    wanted = least + wishes if len(table.rows) >= _LONG and least + wishes <= _ROOM[1][1] else least
    style, room = next((choice for choice in _ROOM if wanted <= choice[1]), _ROOM[-1])
    spare = max(0, min(room - least, wishes))
    widths = [need[0] + ((need[1] - need[0]) * spare / wishes if wishes else 0.0) for need in needs]
    exact = [100.0 * width / sum(widths) for width in widths]
    whole = [int(share) for share in exact]
    # what rounding left over goes to those that lost most by it
    for place in sorted(range(len(exact)), key=lambda place: whole[place] - exact[place])[: 100 - sum(whole)]:
        whole[place] += 1
    return whole, style
