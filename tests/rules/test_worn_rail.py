"""Thermal force of worn rail: what is lost of the section is lost of the force, and nothing else changes."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from railrules_api.catalogue.profiles import read_profiles
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.profile.builder import build_outline
from railrules_api.domain.profile.wear import Side
from railrules_api.rules.sections.section_records import SectionPoint, WornFace
from railrules_api.rules.thermal import force, worn_rail

PROFILES = read_profiles()
WORN = worn_rail.WornRailInput(
    profile=PROFILES["136RE"].parameters,
    measuring_tolerance=1e-4,
    elastic_modulus=2.068e11,
    expansion=1.17e-5,
    rail_temperature=325.0,
    neutral_temperature=305.0,
)
BLOCK = ((-0.05, 0), (0.05, 0), (0.05, 0.02), (0.01, 0.02), (0.01, 0.1), (0.03, 0.1), (0.03, 0.13), (-0.03, 0.13), (-0.03, 0.1),
         (-0.01, 0.1), (-0.01, 0.02), (-0.05, 0.02))  # fmt: skip


def test_unworn_rail_pulls_as_the_force_rule_says() -> None:
    found = worn_rail.evaluate(WORN)
    plain = force.evaluate(
        force.ThermalForceInput(
            area=found.area, elastic_modulus=2.068e11, expansion=1.17e-5, rail_temperature=325.0, neutral_temperature=305.0
        )
    )
    assert found.section_from == "new-section"
    assert (found.area, found.area_left_share) == (found.area_new, 1.0)
    assert (found.force, found.stress, found.track_force) == (plain.force, plain.stress, plain.track_force)
    assert (found.force_per_degree, found.stress_per_degree) == (plain.force_per_degree, plain.stress_per_degree)


@settings(deadline=None, max_examples=60)
@given(
    name=st.sampled_from(sorted(PROFILES)),
    depths=st.tuples(st.floats(0.0, 0.012), st.floats(0.0, 0.012)),
    amounts=st.tuples(st.floats(0.0, 0.008), st.floats(0.0, 0.008)),
    rail=st.floats(240.0, 340.0),
)
def test_more_wear_never_pulls_or_presses_more(
    name: str, depths: tuple[float, float], amounts: tuple[float, float], rail: float
) -> None:
    def at(depth: float, amount: float) -> worn_rail.WornRailResult:
        face = WornFace(side=Side.LEFT.value, amount=amount, angle=0.3, gage_depth=0.0159)
        return worn_rail.evaluate(
            replace(WORN, profile=PROFILES[name].parameters, vertical_wear=depth, face_wear=(face,), rail_temperature=rail)
        )

    less, more = at(min(depths), min(amounts)), at(max(depths), max(amounts))
    assert abs(more.force) <= abs(less.force) * (1 + 1e-12)
    assert more.force_per_degree <= less.force_per_degree * (1 + 1e-12)
    assert more.stress == less.stress
    assert more.force_new == less.force_new
    assert more.force_new is not None
    assert more.area_left_share is not None
    assert more.force == pytest.approx(more.force_new * more.area_left_share, rel=1e-12, abs=1e-6)
    assert more.section_from == "new-section-less-wear"


def test_points_alone_have_no_new_section() -> None:
    found = worn_rail.evaluate(replace(WORN, profile=None, outline=tuple(SectionPoint(x, y) for x, y in BLOCK)))
    assert found.section_from == "measured-outline"
    assert (found.area_new, found.area_left_share, found.force_new, found.force_per_degree_new) == (None, None, None, None)
    assert found.area == pytest.approx(0.1 * 0.02 + 0.02 * 0.08 + 0.06 * 0.03, rel=1e-12)


def test_a_measured_head_replaces_the_new_one() -> None:
    level = PROFILES["136RE"].parameters.height - 0.006
    ends = [
        e.at(f)[0] for e in build_outline(PROFILES["136RE"].parameters).elements for f in e.crossings((0.0, level), (0.0, 1.0))
    ]
    flat = tuple(SectionPoint(x, level) for x in (max(ends), 0.0, min(ends)))
    found = worn_rail.evaluate(replace(WORN, measured_head=flat))
    cut = worn_rail.evaluate(replace(WORN, vertical_wear=0.006))
    assert found.section_from == "measured-head"
    assert found.area == pytest.approx(cut.area, rel=1e-6)


def test_a_heavier_outline_than_the_new_section_is_refused() -> None:
    wide = tuple(SectionPoint(3 * x, y) for x, y in BLOCK)
    with pytest.raises(RefusedError) as caught:
        worn_rail.evaluate(replace(WORN, outline=wide))
    assert caught.value.refusals[0].path == ("outline",)
    assert "more steel" in caught.value.refusals[0].reason


@pytest.mark.parametrize("name", sorted(PROFILES))
def test_a_rail_worn_down_to_the_last_of_its_head_is_answered_and_a_hair_more_is_refused(name: str) -> None:
    with pytest.raises(RefusedError) as caught:
        worn_rail.evaluate(replace(WORN, profile=PROFILES[name].parameters, vertical_wear=0.09))
    (refusal,) = caught.value.refusals
    assert refusal.path == ("vertical_wear",)
    assert refusal.maximum is not None
    last = worn_rail.evaluate(replace(WORN, profile=PROFILES[name].parameters, vertical_wear=refusal.maximum * (1 - 1e-9)))
    assert last.area_left_share is not None
    assert 0.3 < last.area_left_share < 0.8
    assert last.second_moment > 0.0
    assert last.force == pytest.approx(last.area * 2.068e11 * 1.17e-5 * 20.0, rel=1e-12)
    with pytest.raises(RefusedError):
        worn_rail.evaluate(replace(WORN, profile=PROFILES[name].parameters, vertical_wear=refusal.maximum * (1 + 1e-6)))
