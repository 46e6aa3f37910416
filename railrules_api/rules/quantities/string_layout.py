"""String layout: which string lies where, every field weld by station, cuts, offcuts and work-block closures."""

from __future__ import annotations

import math
from bisect import bisect_right
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING, Annotated, Literal

from railrules_api.domain.amounts import Amount
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.laying import lay
from railrules_api.domain.layout import SLACK
from railrules_api.domain.records import lean
from railrules_api.domain.strings import Laying, Rail
from railrules_api.domain.track import Station
from railrules_api.rules.common import OWN_STANDARDS
from railrules_api.rules.model import Caution, Cite, Formula, Rule
from railrules_api.rules.quantities.lines import Line

if TYPE_CHECKING:
    from collections.abc import Sequence

    from railrules_api.domain.laying import Layout

MOST_BLOCKS = 1000


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class BlockEnd:
    """Where the work of one track occupancy is to end."""

    station: Station


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class StringLayoutInput(Laying):
    """What is laid, and where work stops for the day."""

    block_ends: Annotated[tuple[BlockEnd, ...], Field("Ends of the work blocks, in order; or give their length.")] = ()
    block_length: Annotated[
        float | None,
        Field("Length of a work block, from the lowest station of the runs.", kind=Kind.LENGTH, at_least=10.0, at_most=1e6),
    ] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class PlacedPiece:
    """A string or a part of one as it lies."""

    string: Annotated[int, Field("Number of the string, in the order they come off the train.")]
    rail: Annotated[Rail, Field("Which rail.")]
    begin: Station
    end: Station
    length: Annotated[float, Field("Rail in the piece.", kind=Kind.LENGTH)]
    cut_begin: Annotated[float, Field("Where the piece begins in the string.", kind=Kind.LENGTH)]
    cut_end: Annotated[float, Field("Where it ends in the string.", kind=Kind.LENGTH)]
    whole: Annotated[bool, Field("Whether the string lies uncut.")]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class PlacedWeld:
    """A field weld by the station of its middle."""

    station: Station
    rail: Annotated[Rail, Field("Which rail.")]
    kind: Annotated[Literal["junction", "weld", "compromise-weld"], Field("Between pieces, or closing a run.")]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Offcut:
    """What is left of a string that was cut."""

    string: Annotated[int, Field("Number of the string.")]
    length: Annotated[float, Field("Rail left.", kind=Kind.LENGTH)]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class BlockClosure:
    """A temporary closure from new rail to old at the end of a work block."""

    block_end: Station
    station: Station
    rail: Annotated[Rail, Field("Which rail.")]
    at_string_end: Annotated[bool, Field("False where the block ends inside a string, which then waits unlaid or is cut.")]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class StringLayoutResult:
    """Every piece, weld, offcut and closure."""

    string_length: Annotated[float, Field("Length of a string as made.", kind=Kind.LENGTH)]
    string_length_laid: Annotated[
        float, Field("What can be laid of it: less drilled ends, at the rail temperature.", kind=Kind.LENGTH)
    ]
    strings: Annotated[int, Field("Strings used.")]
    pieces: Annotated[tuple[PlacedPiece, ...], Field("By string number; the parts of a string in order of station.")]
    welds: Annotated[tuple[PlacedWeld, ...], Field("Field welds in order of station.")]
    junctions: Annotated[int, Field("Field welds between pieces.", symbol="n_j")]
    closing_welds: Annotated[int, Field("Field welds that close runs.", symbol="n_c")]
    field_welds: Annotated[int, Field("All field welds.", symbol="n_f")]
    cut_pieces: Annotated[int, Field("Pieces that are not whole strings.")]
    cuts: Annotated[int, Field("Saw cuts.")]
    offcuts: Annotated[tuple[Offcut, ...], Field("What is left of strings that were cut.")]
    offcut_length: Annotated[float, Field("Rail left over.", kind=Kind.LENGTH)]
    carried_farthest: Annotated[
        float | None,
        Field("Farthest ahead of its cut that what is left of a string is laid; left out where none is.", kind=Kind.LENGTH),
    ] = None
    least_stagger: Annotated[
        float | None,
        Field("Least distance of a weld between pieces from a weld of the other rail; left out with one rail.", kind=Kind.LENGTH),
    ] = None
    block_closures: Annotated[tuple[BlockClosure, ...], Field("Temporary closures, block by block.")]
    welds_are_fewest: Annotated[bool, Field("Whether no layout at all has fewer field welds; false: not shown.")]
    strings_are_fewest: Annotated[bool, Field("Whether these pieces cannot come out of fewer strings; false: not shown.")]
    lines: Annotated[tuple[Line, ...], Field("Temporary closures; the rest stands in quantities.rail-supply.")]


def _block_ends(given: StringLayoutInput) -> list[float]:
    ends = [place.station for place in given.block_ends]
    if given.block_length is not None:
        if ends:
            raise refuse("block_length", reason="give block ends or a block length, not both", value=given.block_length)
        begin, end = min(run.begin for run in given.runs), max(run.end for run in given.runs)
        blocks = math.ceil((end - begin) / given.block_length - SLACK)
        if blocks > MOST_BLOCKS:
            reason = "too many work blocks for one answer"
            raise refuse("block_length", reason=reason, value=given.block_length, minimum=(end - begin) / MOST_BLOCKS)
        return [begin + number * given.block_length for number in range(1, blocks)]
    for position in range(1, len(ends)):
        if ends[position] <= ends[position - 1]:
            reason = "block ends must rise"
            raise refuse("block_ends", position, "station", reason=reason, value=ends[position], minimum=ends[position - 1])
    return ends


def _closures(layout: Layout, ends: Sequence[float]) -> tuple[BlockClosure, ...]:
    """Stop at the last string end of the block on each rail; a run's own limit needs no temporary closure."""
    closures: list[BlockClosure] = []
    for rail in ("left", "right"):
        pieces = sorted((piece for piece in layout.pieces if piece.rail == rail), key=lambda piece: piece.begin)
        begins = [piece.begin for piece in pieces]
        reached = -math.inf
        for end in ends:
            index = bisect_right(begins, end + SLACK) - 1
            if index < 0 or end >= pieces[index].end - SLACK:
                continue  # no rail is laid here
            station = begins[index]
            continued = index > 0 and abs(pieces[index - 1].end - station) <= SLACK
            if station <= reached or not continued:
                # the block lies inside the piece, unless nothing of the run is laid yet
                at_end, station = False, end
            else:
                at_end = True
            closures.append(BlockClosure(block_end=end, station=station, rail=rail, at_string_end=at_end))
            reached = station
    return tuple(sorted(closures, key=lambda closure: (closure.block_end, closure.rail)))


def _carried_farthest(layout: Layout) -> float | None:
    return max((other.begin - one.end for one, other in pairwise(layout.pieces) if one.string == other.string), default=None)


def _least_stagger(layout: Layout) -> float | None:
    places = {rail: sorted(weld.station for weld in layout.welds if weld.rail == rail) for rail in ("left", "right")}
    least = math.inf
    for weld in layout.welds:
        if weld.kind == "junction":
            other = places["left" if weld.rail == "right" else "right"]
            index = bisect_right(other, weld.station)
            least = min([least, *(abs(place - weld.station) for place in other[max(index - 1, 0) : index + 1])])
    return None if math.isinf(least) else least


def evaluate(given: StringLayoutInput) -> StringLayoutResult:
    """Lay the runs out of strings.

    Raises:
        RefusedError: the input contradicts itself, or a run cannot be laid.
    """
    return placed(given, lay(given))


def placed(given: StringLayoutInput, layout: Layout) -> StringLayoutResult:
    """Tell a layout piece by piece; `layout` is what `lay` says of the input.

    Raises:
        RefusedError: the ends of the work blocks contradict themselves.
    """
    closures = _closures(layout, _block_ends(given))
    return StringLayoutResult(
        string_length=layout.length.made,
        string_length_laid=layout.length.laid,
        strings=layout.strings,
        pieces=tuple(
            PlacedPiece(
                string=piece.string,
                rail=piece.rail,
                begin=piece.begin,
                end=piece.end,
                length=piece.steel,
                cut_begin=piece.cut_begin,
                cut_end=piece.cut_end,
                whole=piece.whole,
            )
            for piece in layout.pieces
        ),
        welds=tuple(PlacedWeld(station=weld.station, rail=weld.rail, kind=weld.kind) for weld in layout.welds),
        junctions=layout.junctions,
        closing_welds=len(layout.welds) - layout.junctions,
        field_welds=len(layout.welds),
        cut_pieces=sum(not piece.whole for piece in layout.pieces),
        cuts=layout.cuts,
        offcuts=tuple(Offcut(string=number, length=length) for number, length in layout.offcuts),
        offcut_length=sum(length for _, length in layout.offcuts),
        carried_farthest=_carried_farthest(layout),
        least_stagger=_least_stagger(layout),
        block_closures=closures,
        welds_are_fewest=layout.junctions == layout.weld_bound,
        strings_are_fewest=layout.strings == layout.string_bound,
        lines=(Line(item="temporary-closures", product="", net=Amount(float(len(closures)))),) if closures else (),
    )


RULE = Rule(
    id="quantities.string-layout",
    title="Where every string and field weld lies",
    summary=(
        "Lays each run out of whole strings and cut pieces so that no field weld stands in a keep-out or nearer than the stagger "
        "to a weld or end of the other rail, and no piece is shorter than the shortest allowed: with the fewest field welds, "
        "among those the fewest cut pieces, among those the cut pieces as late in the run as they go; then each cut piece, along "
        "the line, is taken from the shortest left-over at hand that holds it, else from the next string. A left-over is at hand "
        "ahead of its cut, on either rail, within the reach given and until the next train begins; never behind. For each rail "
        "beside the other the first two are true minima; "
        "for both rails together the answer says whether its field welds are shown to be the fewest. Strings are numbered by "
        "the station where their first piece begins, left rail first. On curves the rails are longer or shorter than the "
        "centreline by half their distance over the radius; spirals are not modelled. A work block ends at the last string end "
        "within it, where a temporary closure leads to the old rail."
    ),
    formulas=(
        Formula("pieces", "steel = reach along the rail - gap, or + consumption, per weld; half at a run's end", exact=False),
        Formula("field_welds", "n_j + n_c"),
    ),
    cites=(
        Cite("counting-rules", "layout of strings: objective, stagger, numbering", "common-practice"),
        Cite("welding-northeast", "thermite welding: rail ends about one inch apart", "published"),
        Cite("tr0671", "1.15d: temporary closures before trains and at the end of the day", "published"),
        Cite("geometry", "length of an arc beside the centreline: 1 + d / R", "derived"),
    ),
    input=StringLayoutInput,
    output=StringLayoutResult,
    evaluate=evaluate,
    cautions=(
        Caution(
            code="left-overs-go-ahead",
            text=(
                "The train is taken to go toward rising stations once, and what is left of a cut string to stay with it until it "
                "is laid further ahead. Where left-overs are dragged or trucked, say how far; for a train that goes the other "
                "way, turn the stations round."
            ),
            cite=Cite("counting-rules", "layout of strings: left-overs", "common-practice"),
        ),
        Caution(
            code="run-ends-as-given",
            text="The ends of runs stand where they were given; keep-outs and stagger bind the welds between pieces only.",
            cite=Cite("counting-rules", "layout of strings: what binds", "common-practice"),
        ),
        OWN_STANDARDS,
    ),
)
