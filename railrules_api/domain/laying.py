"""Strings laid out along the line, both rails: pieces, field welds, and which string every piece is cut from."""

from __future__ import annotations

import math
from collections import Counter
from typing import TYPE_CHECKING, NamedTuple

from railrules_api.domain.coming_off import WHOLE
from railrules_api.domain.errors import below, refuse
from railrules_api.domain.runs import WELDED, Layer, WeldKind, both_rails, closings_of, joined_runs
from railrules_api.domain.strings import Laying, Rail, StringLength, string_length

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from railrules_api.domain.coming_off import Wanted
    from railrules_api.domain.progress import Tell

MOST_STRINGS = 5000
"""Strings laid out in one answer at most; about 700 miles of track at 1,600 ft."""


class Piece(NamedTuple):
    """A string or a part of one as it lies.

    Attributes:
        string: number of the string, in the order they come off the train.
        rail: which rail.
        begin: station of its begin, the middle of the weld there [m].
        end: station of its end [m].
        steel: its length [m].
        cut_begin: where the piece begins in the string [m].
        cut_end: where it ends in the string [m].
        whole: whether the string lies uncut.
        closes: whether it is a cut piece that closes a run.
    """

    string: int
    rail: Rail
    begin: float
    end: float
    steel: float
    cut_begin: float
    cut_end: float
    whole: bool
    closes: bool


class Weld(NamedTuple):
    """A field weld: `junction` of two pieces, or a run's end of kind `weld` or `compromise-weld`."""

    station: float
    rail: Rail
    kind: WeldKind


class Layout(NamedTuple):
    """Everything as laid, in order of station.

    Attributes:
        length: the string.
        pieces: by string number, then by place in the string.
        welds: field welds.
        joints: closings of runs that are joints, each place once, by kind.
        run_length: length of rail that the runs span, along the rails [m].
        steel: rail in the track [m].
        strings: strings used.
        cuts: saw cuts.
        offcuts: for each string that leaves one: its number and the length left [m].
        weld_bound: field welds inside runs that no layout can do without.
        string_bound: strings that no choice of cuts can do without, given the pieces, wherever left-overs may be laid.
    """

    length: StringLength
    pieces: tuple[Piece, ...]
    welds: tuple[Weld, ...]
    joints: Mapping[str, int]
    run_length: float
    steel: float
    strings: int
    cuts: int
    offcuts: tuple[tuple[int, float], ...]
    weld_bound: int
    string_bound: int

    @property
    def junctions(self) -> int:
        """Field welds inside runs."""
        return sum(weld.kind == "junction" for weld in self.welds)


def _numbered(
    drawn: Sequence[Sequence[Wanted]], string: float, saw: float
) -> tuple[list[Piece], int, list[tuple[int, float]], int]:
    """Number the strings as they come off, and say where they are cut and what is left of them.

    Returns:
        Pieces; saw cuts; offcuts by string number; fewest strings that any choice would need.
    """
    pieces: list[Piece] = []
    offcuts: list[tuple[int, float]] = []
    lengths: list[float] = []
    sawn = wholes = 0
    for number, group in enumerate(drawn, start=1):
        at = 0.0
        for begin, rail, end, steel, whole, closes in group:
            pieces.append(Piece(number, rail, begin, end, steel, at, at + steel, whole, closes))
            at += steel + saw
        if group[0].whole:
            wholes += 1
        else:
            lengths += [piece.steel for piece in group]
        left = string - (at - saw)
        sawn += len(group) - 1 + (left > WHOLE)
        if left - saw > WHOLE:
            offcuts.append((number, left - saw))
    by_length = math.ceil(sum(lengths) / string - WHOLE)
    over_half = sum(2 * length + saw > string + WHOLE for length in lengths)
    return pieces, sawn, offcuts, wholes + max(by_length, over_half)


def lay(given: Laying, tell: Tell | None = None) -> Layout:
    """Lay every run out of strings.

    Args:
        given: what is to be laid, and how.
        tell: is told how many groups of runs are laid, as stage `rail`.

    Raises:
        RefusedError: the input contradicts itself, or a run cannot be laid within keep-outs, stagger and shortest piece.
    """
    with below("string"):
        length = string_length(given.string)
    string = length.laid
    if given.minimum_piece > string:
        reason = "the shortest piece is longer than a string"
        raise refuse("minimum_piece", reason=reason, value=given.minimum_piece, maximum=string)
    runs = joined_runs(given.runs)
    if not runs:
        raise refuse("runs", reason="at least one run of rail is needed")
    layer = Layer(given, string)
    if layer.pitch <= 0.0 or layer.shortest <= 0.0:
        raise refuse(
            "field_consumption", reason="a field weld uses up the whole of the shortest piece", value=given.field_consumption
        )
    expected = sum((run.end - run.begin) / layer.pitch for run in runs) + len(runs)
    if expected > MOST_STRINGS:
        raise refuse("runs", reason="more strings than one answer lays out", value=expected, maximum=float(MOST_STRINGS))
    cuts, bound = both_rails(layer, runs, tell)
    pieces, sawn, offcuts, string_bound = _numbered(layer.drawn(cuts), string, given.saw_cut)
    closings = closings_of(runs)
    welds = [Weld(place, cut.run.rail, "junction") for cut in cuts for place in cut.places[1:-1]]
    welds.extend(Weld(place, rail, WELDED[kind]) for place, rail, kind in closings if kind in WELDED)
    along = layer.along
    return Layout(
        length=length,
        pieces=tuple(pieces),
        welds=tuple(sorted(welds)),
        joints=Counter(closing.kind for closing in closings if closing.kind not in WELDED),
        run_length=math.fsum([along[run.rail].length(run.end) - along[run.rail].length(run.begin) for run in runs]),
        steel=math.fsum([piece.steel for piece in pieces]),
        strings=pieces[-1].string,
        cuts=sawn,
        offcuts=tuple(offcuts),
        weld_bound=bound,
        string_bound=string_bound,
    )
