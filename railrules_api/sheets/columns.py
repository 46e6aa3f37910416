"""How wide the columns of a table are, from what stands in them: numbers whole, texts by what is left."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from collections.abc import Sequence

    from railrules_api.sheets.model import Table

_NARROWEST: Final = 4
_TEXT: Final = 44
"""Characters beyond which a text is no reason for a wider column."""
_PAD: Final = 2
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


def shares(table: Table) -> tuple[list[int], str]:
    """Return the widths of a table's columns in whole percents that add up to a hundred, and the style in which they fit.

    A table that fits in no style keeps the smallest one, and its texts break inside words.
    """
    needs = _needs(table)
    least = sum(need[0] for need in needs)
    style, room = next((choice for choice in _ROOM if least <= choice[1]), _ROOM[-1])
    wishes = sum(need[1] for need in needs) - least
    spare = max(0, min(room - least, wishes))
    widths = [need[0] + ((need[1] - need[0]) * spare / wishes if wishes else 0.0) for need in needs]
    exact = [100.0 * width / sum(widths) for width in widths]
    whole = [int(share) for share in exact]
    # what rounding left over goes to those that lost most by it
    for place in sorted(range(len(exact)), key=lambda place: whole[place] - exact[place])[: 100 - sum(whole)]:
        whole[place] += 1
    return whole, style
