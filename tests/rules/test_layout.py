"""The placing of welds against brute force, and the choice of strings against every choice."""

from __future__ import annotations

import itertools
import random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from railrules_api.domain import layout
from railrules_api.domain.intervals import Interval
from railrules_api.domain.layout import SLACK, weld_places


def best(length: int, pitch: int, shortest: int, blocked: list[Interval]) -> tuple[int, int] | None:
    """Fewest pieces, then fewest cut ones, by trying every whole metre: with whole numbers that is every layout that counts."""
    found: list[tuple[int, int] | None] = [None] * (length + 1)
    found[0] = (0, 0)
    for place in range(shortest, length + 1):
        if place < length and any(zone.begin < place < zone.end for zone in blocked):
            continue
        ways = [
            (way[0] + 1, way[1] + (step != pitch))
            for step in range(shortest, min(pitch, place) + 1)
            if (way := found[place - step]) is not None
        ]
        if ways:
            found[place] = min(ways)
    return found[length]


def score(welds: tuple[float, ...], length: float, pitch: float) -> tuple[int, int]:
    edges = (0.0, *welds, length)
    pieces = [after - before for before, after in itertools.pairwise(edges)]
    return len(pieces), sum(piece < pitch - 100 * SLACK for piece in pieces)


@settings(max_examples=400, deadline=None)
@given(
    length=st.integers(2, 160),
    pitch=st.integers(3, 40),
    shortest=st.integers(1, 12),
    zones=st.lists(st.tuples(st.integers(0, 160), st.integers(1, 30)), max_size=8),
)
def test_the_fewest_welds_and_then_the_fewest_cuts_are_found(
    length: int, pitch: int, shortest: int, zones: list[tuple[int, int]]
) -> None:
    shortest = min(shortest, pitch)
    blocked = [Interval(float(begin), float(begin + size)) for begin, size in zones]
    welds = weld_places(0.0, float(length), pitch=float(pitch), shortest=float(shortest), blocked=blocked)
    expected = best(length, pitch, shortest, blocked)
    if expected is None:
        assert welds is None
        return
    assert welds is not None
    assert score(welds, length, pitch) == expected
    for weld in welds:
        assert not any(zone.begin + 1e-5 < weld < zone.end - 1e-5 for zone in blocked)
    for before, after in itertools.pairwise((0.0, *welds, float(length))):
        assert shortest - 1e-5 < after - before < pitch + 1e-5


def test_the_quick_way_gives_the_bits_of_the_exact_sets(monkeypatch: pytest.MonkeyPatch) -> None:
    chosen = random.Random(20)
    told = 0
    for _ in range(1500):
        pitch, shortest = chosen.uniform(100.0, 500.0), chosen.uniform(1.0, 30.0)
        begin = chosen.uniform(-1000.0, 1000.0)
        end = begin + pitch * chosen.choice((1.0, 3.0, chosen.uniform(0.2, 20.0)))
        middles = [chosen.uniform(begin, end) for _ in range(chosen.randrange(8))]
        zones = [Interval(middle - half, middle + half) for middle in middles for half in (chosen.choice((2.0, 6.0, 40.0)),)]
        if chosen.random() < 0.5:  # the welds of the other rail
            zones += [Interval(begin + k * pitch - 6.0, begin + k * pitch + 6.0) for k in range(round((end - begin) / pitch) + 1)]
        quick = layout.with_one_cut(begin, end, pitch, shortest, sorted(zones))
        if quick is None:
            continue
        told += 1
        with monkeypatch.context() as patch:
            patch.setattr(layout, "with_one_cut", lambda *_: None)
            assert quick == weld_places(begin, end, pitch=pitch, shortest=shortest, blocked=zones)
    assert told > 600


@pytest.mark.parametrize("unit", [1.0, 0.3048, 0.0254, 1200 / 3937, 1 / 3])
@pytest.mark.parametrize("count", [1, 2, 7, 26, 333])
def test_a_length_of_whole_strings_takes_whole_strings_in_any_unit(unit: float, count: int) -> None:
    pitch = 1599.9 * unit
    welds = weld_places(7.3 * unit, 7.3 * unit + count * pitch, pitch=pitch, shortest=20 * unit)
    assert welds is not None
    assert score(tuple(weld - 7.3 * unit for weld in welds), count * pitch, pitch) == (count, 0)


def test_a_run_closes_with_its_cut_piece() -> None:
    assert weld_places(0.0, 1000.0, pitch=300.0, shortest=20.0) == (300.0, 600.0, 900.0)


def test_a_rest_that_is_too_short_is_made_up_from_the_string_before() -> None:
    assert weld_places(0.0, 605.0, pitch=300.0, shortest=20.0) == (300.0, 585.0)


def test_a_keep_out_longer_than_a_string_cannot_be_crossed() -> None:
    assert weld_places(0.0, 1000.0, pitch=300.0, shortest=20.0, blocked=[Interval(400.0, 701.0)]) is None
    assert weld_places(0.0, 1000.0, pitch=300.0, shortest=20.0, blocked=[Interval(400.0, 700.0)]) is not None
