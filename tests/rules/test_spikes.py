from __future__ import annotations

import math
from typing import Any

import pytest

from railrules_api.domain.patterns import SpikeBand, SpikePattern
from railrules_api.domain.track import Curve
from railrules_api.rules.quantities import spikes as rule
from railrules_api.rules.quantities.spikes import SpikesInput, SpikesResult
from tests.rules.stretches import FOOT, MILE, POUND, formulas_hold, refused_at, spikes, stretch

VOSE = SpikePattern(
    bands=(SpikeBand(at_least_radius=1500 * FOOT, rail_spikes=2, plate_spikes=0), SpikeBand(rail_spikes=3, plate_spikes=0)),
    extra_at_joint_ties=2,
)


def count(**rest: Any) -> SpikesResult:
    given = SpikesInput(**{"stretch": stretch(), "tie_kind": "wood", "sharp_curve_radius": 955 * FOOT, **rest})
    result = rule.evaluate(given)
    formulas_hold(rule.RULE, given, result)
    return result


def test_trautwine_mile() -> None:
    result = count(
        stretch=stretch(spacing=2.5 * FOOT), pattern=spikes(2, at_joints=2), joint_rail_length=24 * FOOT, spike_mass=0.5 * POUND
    )
    assert result.joints == pytest.approx(440, abs=1e-9)
    assert result.spikes == pytest.approx(9328, abs=1e-9)
    assert result.mass == pytest.approx(4664 * POUND)


def test_mass_comes_from_the_keg_where_the_spike_has_none() -> None:
    result = count(stretch=stretch(spacing=2.5 * FOOT), pattern=spikes(2), keg_mass=200 * POUND, per_keg=400.0)
    assert result.kegs == 8448 / 400
    assert result.mass == pytest.approx(8448 * 0.5 * POUND)


def test_bands_follow_curvature() -> None:
    curves = (
        Curve(begin=100.0, end=200.0, radius=1500 * FOOT, hand="left"),
        Curve(begin=200.0, end=300.0, radius=1499 * FOOT, hand="left"),
    )
    result = count(stretch=stretch(end=400.0, spacing=0.5, curves=curves), pattern=VOSE)
    assert [band.ties for band in result.bands] == [600, 200]
    assert result.rail_spikes == 600 * 4 + 200 * 6
    high = count(stretch=stretch(begin=200.0, end=300.0, spacing=0.5, curves=curves[1:], rails="high"), pattern=VOSE)
    assert high.rail_spikes == 200 * 3


@pytest.mark.parametrize(("degree", "sharp"), [(6.0, False), (6.01, True), (2.0, False)])
def test_curves_sharper_than_six_degrees_are_pointed_out(degree: float, sharp: bool) -> None:  # noqa: FBT001
    curve = Curve(begin=0.0, end=100.0, degree=math.radians(degree), hand="left")
    result = count(stretch=stretch(end=100.0, curves=(curve,)), pattern=spikes(2))
    assert (result.sharp_curve_ties > 0, bool(result.notes)) == (sharp, sharp)


def test_rail_and_plate_spikes_are_told_apart() -> None:
    result = count(stretch=stretch(end=39 * FOOT), pattern=spikes(2, 2))
    assert (result.rail_spikes, result.plate_spikes, result.spikes) == (96, 96, 192)


@pytest.mark.parametrize("kind", ["concrete", "steel"])
def test_none_on_other_ties(kind: str) -> None:
    result = count(tie_kind=kind, pattern=spikes(2, at_joints=2), joint_rail_length=39 * FOOT)
    assert (result.spikes, result.lines[0].net.value) == (0.0, 0.0)
    assert kind in result.notes[0]


def test_refusals_name_their_field() -> None:
    closed = SpikePattern(bands=(SpikeBand(at_least_radius=1.0, rail_spikes=2, plate_spikes=0),), extra_at_joint_ties=0)
    assert refused_at(lambda: count(pattern=closed)) == ("pattern", "bands", 0, "at_least_radius")
    open_first = SpikePattern(bands=(*spikes(2).bands, *spikes(3).bands), extra_at_joint_ties=0)
    assert refused_at(lambda: count(pattern=open_first)) == ("pattern", "bands", 0, "at_least_radius")
    rising = SpikePattern(bands=(VOSE.bands[0], VOSE.bands[0], VOSE.bands[1]), extra_at_joint_ties=0)
    assert refused_at(lambda: count(pattern=rising)) == ("pattern", "bands", 1, "at_least_radius")
    assert refused_at(lambda: count(stretch=stretch(end=-1.0), pattern=VOSE)) == ("stretch", "end")


def test_counts_add_up() -> None:
    whole = count(pattern=spikes(2, 1, 2), joint_rail_length=39 * FOOT)
    parts = [
        count(stretch=stretch(a, b), pattern=spikes(2, 1, 2), joint_rail_length=39 * FOOT)
        for a, b in ((0.0, 321.7), (321.7, MILE))
    ]
    assert whole.spikes == pytest.approx(sum(part.spikes for part in parts), rel=1e-12)
    assert whole.rail_spikes == sum(part.rail_spikes for part in parts)


def test_sides_are_told_apart_where_every_band_with_ties_tells_them() -> None:
    sided = SpikeBand(rail_spikes=2, plate_spikes=1, gage_spikes=1)
    wide = SpikeBand(at_least_radius=500.0, rail_spikes=2, plate_spikes=0)
    curves = (Curve(begin=0.0, end=100.0, radius=300.0, hand="left"),)

    def spiked(pattern: SpikePattern, end: float) -> tuple[int | None, int | None]:
        result = rule.evaluate(
            SpikesInput(stretch=stretch(end=end, curves=curves), tie_kind="wood", pattern=pattern, sharp_curve_radius=1.0)
        )
        return result.gage_spikes, result.field_spikes

    both = SpikePattern(bands=(wide, sided), extra_at_joint_ties=0)
    ties = 202  # 19.5 in apart, from 0 to 100 m
    assert spiked(both, 100.0) == (2 * ties, 4 * ties)
    assert spiked(both, 200.0) == (None, None)


def test_more_spikes_on_a_side_than_there_are_is_refused() -> None:
    wrong = SpikePattern(bands=(SpikeBand(rail_spikes=2, plate_spikes=0, gage_spikes=3),), extra_at_joint_ties=0)
    given = SpikesInput(stretch=stretch(), tie_kind="wood", pattern=wrong, sharp_curve_radius=1.0)
    assert refused_at(lambda: rule.evaluate(given)) == ("pattern", "bands", 0, "gage_spikes")


BY_CLASS = SpikePattern(
    bands=(
        SpikeBand(class_to=3, at_least_radius=500.0, rail_spikes=2, plate_spikes=0),
        SpikeBand(class_to=3, rail_spikes=2, plate_spikes=2),
        SpikeBand(class_from=4, class_to=5, rail_spikes=3, plate_spikes=2),
    ),
    extra_at_joint_ties=0,
)


@pytest.mark.parametrize(("track_class", "ties"), [(1, (0, 202, 0)), (3, (0, 202, 0)), (4, (0, 0, 202)), (5, (0, 0, 202))])
def test_a_pattern_goes_by_class_of_track(track_class: int, ties: tuple[int, ...]) -> None:
    curves = (Curve(begin=0.0, end=100.0, radius=300.0, hand="left"),)
    given = SpikesInput(
        stretch=stretch(end=100.0, curves=curves), tie_kind="wood", pattern=BY_CLASS, track_class=track_class,
        sharp_curve_radius=1.0,
    )  # fmt: skip
    assert tuple(band.ties for band in rule.evaluate(given).bands) == ties


def test_a_pattern_by_class_wants_a_class_that_it_knows() -> None:
    def asked(track_class: int | None) -> tuple[str | int, ...]:
        given = SpikesInput(stretch=stretch(), tie_kind="wood", pattern=BY_CLASS, track_class=track_class, sharp_curve_radius=1.0)
        return refused_at(lambda: rule.evaluate(given))

    assert asked(None) == asked(6) == ("track_class",)
    assert refused_at(lambda: count(pattern=BY_CLASS)) == ("track_class",)


def test_what_holds_the_plate_may_be_another_spike() -> None:
    where = stretch(end=39 * FOOT)
    same = count(stretch=where, pattern=spikes(2, 2), product="cut", spike_mass=0.8, per_keg=250.0)
    apart = count(
        stretch=where, pattern=spikes(2, 2), product="cut", spike_mass=0.8, per_keg=250.0,
        plate_spike="screw", plate_spike_mass=1.4,
    )  # fmt: skip
    assert [(line.product, line.net.value) for line in same.lines] == [("cut", 192.0)]
    assert [(line.product, line.net.value) for line in apart.lines] == [("cut", 96.0), ("screw", 96.0)]
    assert [line.mass for line in apart.lines] == pytest.approx([96 * 0.8, 96 * 1.4])
    assert apart.spikes == same.spikes
    assert apart.kegs == 96 / 250
    assert apart.mass == pytest.approx(96 * 2.2)
    assert count(stretch=where, pattern=spikes(2, 2), spike_mass=0.8, plate_spike="screw").mass is None
