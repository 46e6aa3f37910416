from __future__ import annotations

import math
from fractions import Fraction
from itertools import pairwise
from typing import Any, NamedTuple

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from railrules_api.domain.track import Rails, Span
from railrules_api.rules.quantities import joints as rule
from railrules_api.rules.quantities.joints import JointsInput, JointsResult
from tests.rules.stretches import FOOT, POUND, formulas_hold, refused_at, stretch


def count(feet: float, **rest: Any) -> JointsResult:
    given = JointsInput(
        **{
            "stretch": stretch(),
            "rail_length": feet * FOOT,
            "bars_per_joint": 2,
            "bolts_per_joint": 4,
            "nuts_per_bolt": 1,
            "washers_per_bolt": 1,
            "bonds_per_joint": 0,
            **rest,
        }
    )
    result = rule.evaluate(given)
    formulas_hold(rule.RULE, given, result)
    return result


@pytest.mark.parametrize(
    ("feet", "joints", "whole", "up"),
    [
        (20, 528, 528, 528),
        (24, 440, 440, 440),
        (26, 406.154, 406, 407),
        (30, 352, 352, 352),
        (33, 320, 320, 320),
        (39, 270.769, 270, 271),
        (80, 132, 132, 132),
    ],
)
def test_joints_of_a_mile(feet: float, joints: float, whole: int, up: int) -> None:
    result = count(feet)
    assert result.joints == pytest.approx(joints, abs=0.0005)
    assert (result.joints_whole, result.joints_up) == (whole, up)


@pytest.mark.parametrize(
    ("feet", "holes", "bolts", "bars"),
    [(39, 4, 1083.1, 541.5), (39, 6, 1624.6, 541.5), (33, 6, 1920, 640), (1440, 4, 29.3, 14.7)],
)
def test_bars_and_bolts_of_a_mile(feet: float, holes: int, bolts: float, bars: float) -> None:
    result = count(feet, bolts_per_joint=holes, bolt_mass=1.0)
    assert result.bolts == pytest.approx(bolts, abs=0.05)
    assert result.bars == pytest.approx(bars, abs=0.05)
    assert (result.nuts, result.washers, result.bolts_mass) == (result.bolts, result.bolts, result.bolts)


def test_special_joints_stand_in_place_of_plain_ones() -> None:
    result = count(33, insulated_joints=4, section_changes=3, bonds_per_joint=2, pair_mass=40 * POUND)
    assert (result.joints_insulated, result.joints_compromise) == (4, 6)
    assert result.joints_plain == pytest.approx(310)
    assert result.bonds == pytest.approx(632)
    assert result.bars_mass == pytest.approx(310 * 40 * POUND)
    assert refused_at(lambda: count(1000, insulated_joints=13)) == ("insulated_joints",)
    assert refused_at(lambda: count(1000, section_changes=7)) == ("section_changes",)


@pytest.mark.parametrize(
    ("track_class", "welded", "bolts", "verdict"),
    [
        (None, False, 4, "not-checked"),
        (1, False, 2, "passes"),
        (1, True, 2, "fails"),
        (2, False, 2, "fails"),
        (5, True, 4, "passes"),
    ],
)
def test_least_bolts(track_class: int | None, welded: bool, bolts: int, verdict: str) -> None:  # noqa: FBT001
    assert count(39, track_class=track_class, welded=welded, bolts_per_joint=bolts).check.verdict == verdict


def test_compromise_joints_at_the_ends_stand_there_besides_the_joints_within() -> None:
    where = stretch(end=390 * FOOT)
    plain, ended = count(39, stretch=where, bonds_per_joint=1), count(39, stretch=where, bonds_per_joint=1, compromise_joints=4)
    assert (ended.joints_plain, ended.joints_compromise) == (plain.joints_plain, 4)
    assert ended.bonds == plain.bonds + 4
    # a stretch shorter than a rail has ends as well
    short = count(39, stretch=stretch(end=FOOT), compromise_joints=4)
    assert short.joints_compromise == 4
    within = count(39, stretch=where, section_changes=1)
    assert within.joints_plain == plain.joints_plain - 2


# ---------------------------------------------------------------- pieces of a longer stretch

UNIT = 0.0254 / 16
"""Stations of the tests below are whole sixteenths of an inch, so that they can be counted exactly."""


class Track(NamedTuple):
    """Jointed track in whole sixteenths of an inch: its limits, rails, rail length, what is left out, its insulated joints."""

    begin: int
    end: int
    rails: Rails
    rail_length: int
    left_out: tuple[tuple[int, int], ...]
    insulated: tuple[int, ...]

    def piece(self, begin: int, end: int, **rest: Any) -> JointsResult:
        """Ask the rule about what lies between two stations."""
        holes = [(max(low, begin), min(high, end)) for low, high in self.left_out if low < end and high > begin]
        where = stretch(
            begin=begin * UNIT,
            end=end * UNIT,
            rails=self.rails,
            left_out=tuple(Span(begin=low * UNIT, end=high * UNIT) for low, high in holes),
        )
        special = sum(begin <= station < end for station in self.insulated) * (2 if self.rails == "both" else 1)
        return count(
            self.rail_length * UNIT / FOOT, stretch=where, insulated_joints=special, bonds_per_joint=1, bar_mass=20.0, **rest
        )

    def plain(self) -> Fraction:
        """Count the plain joints by laying rail after rail from one end; the last one may be a part of a rail."""
        laid, begun, station = Fraction(0), 0, self.begin
        while station < self.end:
            hole = next((high for low, high in self.left_out if low <= station < high), None)
            if hole is not None:
                station = hole
                continue
            stop = min([low for low, _ in self.left_out if low > station] + [self.end])
            step = min(stop - station, self.rail_length - begun)
            station, begun = station + step, begun + step
            if begun == self.rail_length:
                laid, begun = laid + 1, 0
        laid += Fraction(begun, self.rail_length)
        return (laid - len(self.insulated)) * (2 if self.rails == "both" else 1)


@st.composite
def tracks(draw: st.DrawFn) -> tuple[Track, list[int]]:
    """Return a track and where it is cut."""
    rail_length = draw(st.sampled_from((5760, 6336, 7488, 15360)))
    begin = draw(st.integers(-(10**6), 10**6))
    end = begin + draw(st.integers(4 * rail_length, 40 * rail_length))
    inside = st.integers(begin + 1, end - 1)
    limits = sorted(draw(st.lists(inside, max_size=6, unique=True)))
    left_out = tuple(zip(limits[::2], limits[1::2], strict=False))
    insulated = draw(st.lists(inside, max_size=2, unique=True))
    # cut anywhere, and close beside what stands there: the piece may be shorter than a rail
    beside = st.sampled_from([*insulated, *limits, begin + 1]).flatmap(lambda at: st.integers(at - 50, at + 200))
    cuts = draw(st.lists(st.one_of(inside, beside), min_size=1, max_size=8, unique=True))
    return Track(begin, end, draw(st.sampled_from(("both", "left"))), rail_length, left_out, tuple(insulated)), cuts


@given(tracks())
@settings(max_examples=400, deadline=None)
def test_pieces_add_up_to_the_whole_however_it_is_cut(drawn: tuple[Track, list[int]]) -> None:
    track, cuts = drawn
    stations = sorted({track.begin, *(cut for cut in cuts if track.begin < cut < track.end), track.end})
    found = [track.piece(*limits, piece=True) for limits in pairwise(stations)]
    whole = track.piece(track.begin, track.end, piece=True)
    assert whole.joints_plain == pytest.approx(float(track.plain()), rel=1e-9, abs=1e-9)
    for name in ("joints", "joints_insulated", "joints_plain", "bars", "bolts", "nuts", "washers", "bonds", "bars_mass"):
        total = math.fsum(getattr(piece, name) for piece in found)
        assert total == pytest.approx(getattr(whole, name), rel=1e-9, abs=1e-9), name
    for position, line in enumerate(whole.lines):
        total = math.fsum(piece.lines[position].net.value for piece in found)
        assert total == pytest.approx(line.net.value, rel=1e-9, abs=1e-9), line.item


def test_a_piece_shorter_than_a_rail_holds_an_insulated_joint_on_each_rail() -> None:
    where = stretch(begin=100 * FOOT, end=113 * FOOT)
    alone = count(39, stretch=where, insulated_joints=2)
    assert (alone.joints_plain, alone.joints_insulated, alone.bars) == (0.0, 2, 0.0)
    # two on each rail are more than one rail's ends, so that this must be a piece of more
    assert refused_at(lambda: count(39, stretch=where, insulated_joints=4)) == ("insulated_joints",)
    piece = count(39, stretch=where, insulated_joints=4, bonds_per_joint=1, piece=True)
    assert piece.joints_plain == pytest.approx(2 * 13 / 39 - 4)
    assert piece.bars == pytest.approx(2 * (2 * 13 / 39 - 4))
    assert piece.bonds == pytest.approx(2 * 13 / 39 - 4)
    assert piece.lines[-2].net.value == 4
