from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from railrules_api.domain.anchoring import AnchorZone, anchored_runs
from railrules_api.domain.features import Feature, zones_for_features
from railrules_api.domain.kinds import Kind
from railrules_api.domain.patterns import AnchorPattern, FeatureRule
from railrules_api.domain.track import Span, Stretch, TieSetting
from railrules_api.rules.quantities import anchors
from railrules_api.rules.quantities.anchors import AnchorsInput, AnchorsResult
from railrules_api.units import UNITS
from tests.rules.stretches import FOOT, INCH, MILE, boxed, formulas_hold, per_rail, refused_at, stretch


def count(
    pattern: AnchorPattern, zones: tuple[AnchorZone, ...] = (), where: Stretch | None = None, **rest: object
) -> AnchorsResult:
    given = AnchorsInput(stretch=where or stretch(), pattern=pattern, zones=zones, reapplied_share=0.0, **rest)  # type: ignore[arg-type]
    result = anchors.evaluate(given)
    formulas_hold(anchors.RULE, given, result)
    return result


def zone(begin: float, end: float, every: int | None = 1, reason: str = "joint") -> AnchorZone:
    if every is None:
        return AnchorZone(begin=begin, end=end, anchoring="none", reason=reason)
    return AnchorZone(begin=begin, end=end, anchoring="boxed", boxed_every=every, reason=reason)


@pytest.mark.parametrize(
    ("every", "spacing", "per_mile"),
    [(1, 19.5, 12_996.9), (2, 19.5, 6_498.5), (2, 22, 5_760), (3, 19.5, 4_332.3), (4, 19.5, 3_249.2), (3, 24, 3_520)],
)
def test_average_per_mile(every: int, spacing: float, per_mile: float) -> None:
    assert count(boxed(every), where=stretch(spacing=spacing * INCH)).anchors_per_mile == pytest.approx(per_mile, abs=0.05)


@pytest.mark.parametrize(("every", "panel"), [(1, 96), (2, 48), (3, 32), (4, 24)])
def test_boxed_ties_of_a_panel(every: int, panel: int) -> None:
    assert count(boxed(every), where=stretch(end=39 * FOOT)).anchors == panel


def test_alternate_ties_boxed_means_two_anchors_a_rail_at_every_other_tie() -> None:
    one_rail = count(boxed(2), where=stretch(end=39 * FOOT, rails="left"))
    assert (one_rail.anchored_ties, one_rail.anchors) == (12, 24)
    assert one_rail.notes


@pytest.mark.parametrize(("forward", "back_up", "per_mile"), [(8, 0, 2_166.2), (8, 2, 2_707.7), (6, 6, 3_249.2), (8, 8, 4_332.3)])
def test_jointed_patterns_by_rail_length(forward: int, back_up: int, per_mile: float) -> None:
    panel = count(per_rail(forward, back_up), where=stretch(end=39 * FOOT))
    assert (panel.anchors_forward, panel.anchors_back_up) == (2 * forward, 2 * back_up)
    assert panel.anchored_ties == max(forward, back_up)
    assert panel.anchors_per_mile == pytest.approx(per_mile, abs=0.05)
    assert count(per_rail(forward, back_up), where=stretch(end=390 * FOOT, spacing=20 * INCH)).anchors == 20 * (forward + back_up)


def test_195_ft_each_way_of_a_joint_are_120_ties_each_way() -> None:
    joint = Feature(kind="bolted-joint", begin=2640 * FOOT)
    rule = FeatureRule(rail_through=True, ties_through=True, within="boxed", approach_length=195 * FOOT, breaks_string=True)
    zones = zones_for_features([joint], {"bolted-joint": rule})
    # tie 0 at the joint, so that both sides hold whole spacings
    where = stretch(ties=TieSetting(spacing=19.5 * INCH, origin=2640 * FOOT))
    result = count(boxed(2), zones, where)
    (used,) = result.zones
    assert (used.ties, used.anchored_ties, used.anchors) == (240, 240, 960)
    assert [count(boxed(2), zones[i : i + 1], where).zones[0].ties for i in (0, 1)] == [120, 120]
    assert result.anchors - count(boxed(2), where=where).anchors == 480
    assert used.reasons == ("approach to bolted-joint",)
    assert used.begin == pytest.approx(2445 * FOOT)
    assert used.end == pytest.approx(2835 * FOOT)


def test_overlapping_zones_are_counted_once() -> None:
    apart = count(boxed(2), (zone(0.0, 60.0), zone(100.0, 160.0, reason="bridge")))
    assert len(apart.zones) == 2
    (merged,) = count(boxed(2), (zone(0.0, 60.0), zone(30.0, 100.0, reason="bridge"), zone(10.0, 20.0))).zones
    assert (merged.begin, merged.end, merged.reasons) == (0.0, 100.0, ("joint", "bridge"))
    assert merged.anchors == 4 * merged.ties


def test_denser_pattern_wins_and_forbidding_beats_all() -> None:
    zones = (zone(0.0, 50.0, 3), zone(20.0, 40.0, 1), zone(30.0, 60.0, None, "bridge"))
    used = count(boxed(2), zones).zones
    assert [(part.anchoring, part.boxed_every) for part in used] == [("boxed", 2), ("boxed", 1), ("none", None)]
    assert [(part.begin, part.end) for part in used] == [(0.0, 20.0), (20.0, 30.0), (30.0, 60.0)]
    assert used[2].anchors == 0
    assert used[2].reasons == ("bridge",)


def test_zone_beats_a_thinner_jointed_pattern_only() -> None:
    assert count(per_rail(8, 0), (zone(0.0, 50.0, 2),)).zones[0].anchoring == "boxed"
    assert count(per_rail(10, 10), (zone(0.0, 50.0, 3),)).zones[0].anchoring == "per-rail-length"


def test_zones_end_with_the_stretch_and_skip_what_is_left_out() -> None:
    where = stretch(begin=100.0, end=200.0, left_out=(Span(begin=140.0, end=150.0),))
    used = count(boxed(2), (zone(50.0, 180.0), zone(500.0, 600.0)), where).zones
    assert [(part.begin, part.end) for part in used] == [(100.0, 140.0), (150.0, 180.0)]


def test_elastic_fastenings_take_no_anchors() -> None:
    result = count(boxed(1), (zone(0.0, 50.0),), elastic_fasteners=True)
    assert (result.anchors, result.anchored_ties, result.anchors_per_mile) == (0, 0, 0.0)
    assert result.zones[0].anchoring == "none"
    assert result.notes


def test_old_anchors_are_applied_again_as_far_as_they_go() -> None:
    given = AnchorsInput(
        stretch=stretch(end=390 * FOOT), pattern=boxed(2), old_anchors=160.0, reapplied_share=0.5, anchor_mass=1.0, per_bag=50.0
    )
    result = anchors.evaluate(given)
    assert (result.anchors, result.anchors_reapplied, result.anchors_new, result.bags) == (480, 80.0, 400.0, 8.0)
    assert [(line.item, line.net.value) for line in result.lines] == [("anchors", 400.0), ("anchors-reapplied", 80.0)]
    assert result.mass == 400.0
    assert (
        anchors.evaluate(AnchorsInput(stretch=given.stretch, pattern=boxed(2), old_anchors=1e6, reapplied_share=1.0)).anchors_new
        == 0.0
    )


def test_refusals_name_their_field() -> None:
    assert refused_at(lambda: count(boxed(2), (zone(5.0, 5.0),))) == ("zones", 0, "end")
    bare = AnchorZone(begin=0.0, end=1.0, anchoring="none", boxed_every=2, reason="bridge")
    assert refused_at(lambda: count(boxed(2), (bare,))) == ("zones", 0, "boxed_every")
    both = AnchorPattern(boxed_every=2, per_rail=per_rail(8, 0).per_rail)
    assert refused_at(lambda: count(both)) == ("pattern", "boxed_every")
    assert refused_at(lambda: count(per_rail(25, 0))) == ("pattern", "per_rail", "forward")
    assert refused_at(lambda: count(per_rail(3, 1, 1.0))) == ("pattern", "per_rail", "forward")
    assert refused_at(lambda: count(boxed(2), where=stretch(begin=5.0, end=1.0))) == ("stretch", "end")
    neither = stretch(ties=TieSetting(origin=0.0))
    assert refused_at(lambda: count(boxed(2), where=neither)) == ("stretch", "ties", "spacing")


def test_no_pattern_means_no_anchors() -> None:
    assert count(AnchorPattern()).anchors == 0
    assert count(per_rail(0, 0, 1.0)).anchors == 0


def test_features_ask_for_zones() -> None:
    bridge = FeatureRule(rail_through=True, ties_through=False, within="none", approach_length=60.0, breaks_string=False)
    crossing = FeatureRule(rail_through=True, ties_through=True, within="as-adjoining", approach_length=0.0, breaks_string=False)
    rules = {"bridge": bridge, "road": crossing}
    features = [Feature(kind="bridge", begin=100.0, end=130.0, name="bridge 4.1"), Feature(kind="road", begin=150.0, end=160.0)]
    zones = zones_for_features(features, rules)
    assert [(part.begin, part.end, part.anchoring) for part in zones] == [
        (40.0, 100.0, "boxed"),
        (130.0, 190.0, "boxed"),
        (100.0, 130.0, "none"),
    ]
    assert zones[2].reason == "bridge 4.1"
    assert refused_at(lambda: zones_for_features([Feature(kind="ford", begin=0.0)], rules)) == ("features", 0, "kind")
    turned = Feature(kind="road", begin=2.0, end=1.0)
    assert refused_at(lambda: zones_for_features([turned], rules)) == ("features", 0, "end")


PATTERNS = st.one_of(
    st.integers(1, 6).map(boxed),
    st.tuples(st.integers(0, 10), st.integers(0, 10), st.sampled_from([39 * FOOT, 33 * FOOT, 11.0])).map(lambda p: per_rail(*p)),
)
ZONES = st.lists(
    st.builds(
        lambda begin, length, every: zone(begin, begin + length, every),
        st.floats(-200, 2000),
        st.floats(0.01, 500),
        st.sampled_from([1, 2, 3, None]),
    ),
    max_size=5,
).map(tuple)
KEYS = ("ties", "anchored_ties", "anchors_forward", "anchors_back_up", "anchors", "anchors_in_zones")


@settings(max_examples=150, deadline=None)
@given(PATTERNS, ZONES, st.floats(0, 1000), st.floats(0.5, 1000), st.floats(0.001, 0.999), st.sampled_from([19.5, 20, 22, 24]))
def test_counts_add_up_under_any_cut(  # noqa: PLR0913, PLR0917  what is drawn
    pattern: AnchorPattern, zones: tuple[AnchorZone, ...], begin: float, length: float, share: float, spacing: float
) -> None:
    end, cut = begin + length, begin + length * share
    whole, left, right = (
        count(pattern, zones, stretch(begin=a, end=b, spacing=spacing * INCH))
        for a, b in ((begin, end), (begin, cut), (cut, end))
    )
    for key in KEYS:
        assert getattr(whole, key) == getattr(left, key) + getattr(right, key)


@pytest.mark.parametrize("factor", [1.0, FOOT, INCH, 0.001, MILE])
def test_zone_limits_count_alike_in_every_unit(factor: float) -> None:
    """A zone of 120 spacings holds 120 ties, whatever unit its limits went through."""
    spacing = 19.5 * INCH
    for first in range(0, 3000, 37):
        begin, end = (first * 19.5 * INCH / factor) * factor, ((first + 120) * 19.5 * INCH / factor) * factor
        (used,) = count(boxed(2), (zone(begin, end),), stretch(spacing=spacing)).zones
        assert used.ties == 120 or used.end == MILE


@pytest.mark.parametrize("unit", list(UNITS[Kind.LENGTH]))
@pytest.mark.parametrize("inches", [19.5, 20, 22, 24, 30])
def test_exact_divisions_count_exactly_in_every_unit(unit: str, inches: float) -> None:
    """Lengths of whole spacings that went through a caller's unit hold that many ties, wherever they begin."""
    measure, spacing = UNITS[Kind.LENGTH][unit], inches * INCH
    for first, ties in ((0, 24), (3249, 1), (-777, 3250), (123_457, 48), (4_000_003, 12_996)):
        begin, end, step = (
            measure.to_si(measure.from_si(length)) for length in (first * spacing, (first + ties) * spacing, spacing)
        )
        result = count(boxed(1), where=stretch(begin=begin, end=end, spacing=step))
        assert (result.ties, result.anchors) == (ties, 4 * ties)


def test_many_zones_are_quick() -> None:
    zones = tuple(zone(10.0 * position, 10.0 * position + 500.0, 1 + position % 3) for position in range(1000))
    assert count(boxed(2), zones, stretch(end=20_000.0)).anchors > 0


def test_zones_in_a_list_that_changes_are_counted_anew() -> None:
    where = stretch()
    pattern = boxed(2)
    zones: list[AnchorZone] = []
    assert [one.boxed_every for one in anchored_runs(where, pattern, zones)] == [2]
    zones.append(zone(where.begin, where.end, None))
    assert [one.boxed_every for one in anchored_runs(where, pattern, zones)] == [None]
