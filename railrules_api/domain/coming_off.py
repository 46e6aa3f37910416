"""Which string every piece of rail is cut from, as a train that goes ahead can lay it.

A train goes along the line once, toward rising stations, and strings come off it where their first piece begins. Where a string
is cut, what is left of it stays with the train. It can be laid further ahead, on either rail, from the station that the train has
reached by then: the far end of the piece before. It is never carried back, and it does not outlast its train: what is left when
the strings of the next train are begun is an offcut.
"""

from __future__ import annotations

from bisect import bisect_left, insort
from typing import TYPE_CHECKING, NamedTuple

from railrules_api.domain.layout import SLACK

if TYPE_CHECKING:
    from collections.abc import Sequence

    from railrules_api.domain.strings import Rail

WHOLE = 10 * SLACK
"""A piece that lacks no more of a string than this is the whole string [m]."""


class Wanted(NamedTuple):
    """A piece of rail to be laid, before it has a string; sorts by its place.

    Attributes:
        begin: station where it begins [m].
        rail: which rail.
        end: station where it ends [m].
        steel: its length [m].
        whole: whether it is a whole string.
        closes: whether it is a cut piece that closes a run.
    """

    begin: float
    rail: Rail
    end: float
    steel: float
    whole: bool
    closes: bool


class _Left(NamedTuple):
    """What is left of a string; sorts by its length."""

    length: float
    string: int
    at: float


def strings_for(
    pieces: Sequence[Wanted], *, string: float, saw: float, train_strings: int | None = None, reach: float | None = None
) -> list[list[Wanted]]:
    """Take every piece, in order, from the shortest left-over at hand that holds it, else from the next string off the train.

    Args:
        pieces: pieces of rail in the order of their begins, none longer than a string.
        string: length of a string [m].
        saw: what a saw cut between two pieces takes [m].
        train_strings: strings that one train brings; None where one brings them all.
        reach: how far ahead of its cut a left-over may be laid; None as far as its train goes [m].

    Returns:
        The pieces of each string, strings and pieces in the order they are laid.

    >>> two = [Wanted(0.0, "left", 6.0, 6.0, False, True), Wanted(8.0, "left", 12.0, 4.0, False, True)]
    >>> [len(strings_for(two, string=10.0, saw=0.0, reach=reach)) for reach in (None, 2.0, 1.0)]
    [1, 1, 2]
    """
    cut: list[list[Wanted]] = []
    left: list[_Left] = []  # the shortest first
    for piece in pieces:
        found = None if piece.whole else _at_hand(left, piece, reach)
        if found is None:
            if train_strings is not None and cut and len(cut) % train_strings == 0:
                left.clear()
            found = _Left(string, len(cut), piece.begin)
            cut.append([])
        cut[found.string].append(piece)
        rest = found.length - piece.steel - saw
        if rest > 0.0:
            insort(left, _Left(rest, found.string, piece.end))
    return cut


def _at_hand(left: list[_Left], piece: Wanted, reach: float | None) -> _Left | None:
    """Take the shortest left-over that holds a piece and that the train has with it; what is out of reach is left behind."""
    position = bisect_left(left, piece.steel - SLACK, key=lambda one: one.length)
    while position < len(left):
        one = left[position]
        if reach is not None and piece.begin - one.at > reach + SLACK:
            del left[position]
        elif piece.begin < one.at - SLACK:
            position += 1
        else:
            return left.pop(position)
    return None
