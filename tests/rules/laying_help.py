"""What the tests of rail supply share: inputs made short, and a verifier that knows the layout only by its answer."""

from __future__ import annotations

from collections import defaultdict
from itertools import pairwise
from typing import Any

from railrules_api.domain.strings import Along, KeepOut, Laying, RailRun, StockLength, WeldedString, string_length

FT = 0.3048
IN = 0.0254
MILE = 1609.344
WELDED = ("weld", "compromise-weld")
CLOSE = 1e-4
"""A tenth of a millimetre: the layout works to a micrometre a weld."""


def string(length: float = 80.0, count: int = 20, **changes: Any) -> WeldedString:
    values: dict[str, Any] = {
        "stock": (StockLength(length=length * FT, count=count),),
        "process": "flash-butt",
        "flash_butt_consumption": 0.75 * IN,
        "gas_pressure_consumption": 1.0 * IN,
        "end_trim": 0.0,
        "drilled_ends": 0,
        "drilled_end_cut": 18 * IN,
        "expansion": 6.5e-6 * 1.8,
    }
    return WeldedString(**(values | changes))


def run(rail: Any, begin: float, end: float, first: Any = "weld", last: Any = "weld") -> RailRun:
    return RailRun(rail=rail, begin=begin * FT, end=end * FT, begin_closing=first, end_closing=last)


def keep_out(begin: float, end: float, distance: float = 0.0) -> KeepOut:
    return KeepOut(begin=begin * FT, end=end * FT, distance=distance * FT, reason="road crossing")


def laying(*runs: RailRun, **changes: Any) -> dict[str, Any]:
    values: dict[str, Any] = {
        "runs": runs,
        "string": string(),
        "rail_centres": 59.5 * IN,
        "field_weld": "thermite",
        "thermite_gap": 1.0 * IN,
        "field_consumption": 1.5 * IN,
        "minimum_piece": 19.5 * FT,
        "stagger": 6 * FT,
        "saw_cut": 0.25 * IN,
    }
    return values | changes


def joined(runs: tuple[RailRun, ...], rail: str) -> list[tuple[float, float, str, str]]:
    spans: list[tuple[float, float, str, str]] = []
    for one in sorted((one for one in runs if one.rail == rail), key=lambda one: one.begin):
        if one.begin_closing == "continues":
            begin, _, first, _ = spans.pop()
            spans.append((begin, one.end, first, one.end_closing))
        else:
            spans.append((one.begin, one.end, one.begin_closing, one.end_closing))
    return spans


def take_of(given: Laying) -> float:
    return given.field_consumption if given.field_weld == "flash-butt" else -given.thermite_gap


def verify(given: Laying, found: Any) -> None:
    """Hold a string-layout answer against everything that was asked, from the answer alone."""
    junctions: dict[str, list[float]] = {"left": [], "right": []}
    laid = 0
    for rail, own in junctions.items():
        pieces = sorted((piece for piece in found.pieces if piece.rail == rail), key=lambda piece: piece.begin)
        for span in joined(given.runs, rail):
            mine = [piece for piece in pieces if span[0] - CLOSE <= piece.begin and piece.end <= span[1] + CLOSE]
            laid += len(mine)
            verify_run(given, rail, span, mine)
            own.extend(piece.begin for piece in mine[1:])
    assert laid == len(found.pieces)
    verify_strings(given, found)
    verify_welds(given, found, junctions)


def verify_run(given: Laying, rail: Any, span: tuple[float, float, str, str], mine: list[Any]) -> None:
    """Hold that the pieces cover their run without gap or overlap, and that the rail in them is what that takes."""
    begin, end, first, last = span
    take = take_of(given)
    along = Along(rail, given.curves, given.rail_centres)
    assert abs(mine[0].begin - begin) < CLOSE
    assert abs(mine[-1].end - end) < CLOSE
    assert all(abs(one.end - other.begin) < CLOSE for one, other in pairwise(mine))
    needed = along.length(end) - along.length(begin) + take * (len(mine) - 1 + ((first in WELDED) + (last in WELDED)) / 2)
    assert abs(sum(piece.length for piece in mine) - needed) < CLOSE * len(mine)
    for index, piece in enumerate(mine):
        halves = (index > 0 or first in WELDED) + (index < len(mine) - 1 or last in WELDED)
        reach = along.length(piece.end) - along.length(piece.begin)
        assert abs(piece.length - reach - take * halves / 2) < CLOSE


def verify_strings(given: Laying, found: Any) -> None:
    """Hold the pieces to their limits, and that every string is used, once over its length, numbered as they come off."""
    length = string_length(given.string).laid
    parts = defaultdict(list)
    for piece in found.pieces:
        assert given.minimum_piece - CLOSE <= piece.length <= length + CLOSE
        assert piece.whole == (piece.length > length - CLOSE)
        assert abs(piece.cut_end - piece.cut_begin - piece.length) < CLOSE
        parts[piece.string].append(piece)
    assert sorted(parts) == list(range(1, found.strings + 1))
    offcuts = {offcut.string: offcut.length for offcut in found.offcuts}
    for number, own in parts.items():
        assert abs(own[0].cut_begin) < CLOSE
        assert all(abs(other.cut_begin - one.cut_end - given.saw_cut) < CLOSE for one, other in pairwise(own))
        left = length - own[-1].cut_end
        assert left > -CLOSE
        assert abs(max(left - given.saw_cut, 0.0) - offcuts.get(number, 0.0)) < CLOSE
    firsts = [min(piece.begin for piece in parts[number]) for number in sorted(parts)]
    assert firsts == sorted(firsts)
    verify_left_overs(given, found, list(parts.values()), firsts)


def verify_left_overs(given: Laying, found: Any, strings: list[list[Any]], firsts: list[float]) -> None:
    """Hold that a train which goes ahead once can lay what is left of its strings: never behind a cut, nor from a train gone."""
    carried = [other.begin - one.end for own in strings for one, other in pairwise(own)]
    assert found.carried_farthest == (max(carried) if carried else None)
    assert all(distance > -CLOSE for distance in carried)
    if given.leftover_reach is not None:
        assert all(distance < given.leftover_reach + CLOSE for distance in carried)
    if given.train_strings is not None:
        for number, own in enumerate(strings):
            next_train = (number // given.train_strings + 1) * given.train_strings
            if next_train < len(firsts):
                assert all(piece.begin <= firsts[next_train] + CLOSE for piece in own)


def verify_welds(given: Laying, found: Any, junctions: dict[str, list[float]]) -> None:
    """Hold that welds are the junctions and the welded ends, out of the keep-outs, apart by the stagger."""
    assert len(found.welds) == found.field_welds == found.junctions + found.closing_welds
    closing: dict[tuple[str, float], str] = {}
    ends: dict[str, list[float]] = {"left": [], "right": []}
    for rail, own in ends.items():
        for begin, end, first, last in joined(given.runs, rail):
            own.extend((begin, end))
            closing.update({(rail, round(place, 3)): kind for place, kind in ((begin, first), (end, last)) if kind in WELDED})
        told = sorted(weld.station for weld in found.welds if weld.rail == rail and weld.kind == "junction")
        assert len(told) == len(junctions[rail])
        assert all(abs(one - other) < CLOSE for one, other in zip(told, sorted(junctions[rail]), strict=True))
    assert {(weld.rail, round(weld.station, 3)): weld.kind for weld in found.welds if weld.kind != "junction"} == closing
    for rail, other in (("left", "right"), ("right", "left")):
        for station in junctions[rail]:
            for place in given.keep_outs:
                assert not place.begin - place.distance + CLOSE < station < place.end + place.distance - CLOSE
            assert all(abs(station - place) > given.stagger - CLOSE for place in (*junctions[other], *ends[other]))
