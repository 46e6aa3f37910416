"""However the segments of a job are cut, its answer is the same."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import assume, given, settings
from hypothesis import strategies as st

from railrules_api.rules.takeoff.takeoff import take_off
from tests.rules.whole_job_help import Cut, assert_the_same, bound, cut, started, stations_of
from tests.support.random_jobs import random_job


@given(
    seed=st.integers(0, 10_000),
    singly=st.sampled_from((0.15, 1.0)),
    which=st.integers(0, 2),
    cuts=st.lists(
        st.tuples(
            st.floats(0.001, 0.999),
            st.sampled_from(("anywhere", "at a tie", "at an object", "beside an object")),
            st.floats(-12.0, 12.0),
        ),
        min_size=1,
        max_size=4,
    ),
)
@settings(max_examples=160, deadline=None)
def test_a_cut_changes_nothing_in_the_whole_takeoff(seed: int, singly: float, which: int, cuts: list[Cut]) -> None:
    service = started()
    whole = bound(random_job(seed, 3, singly=singly), service)
    segment = whole.segments[which]
    stations = stations_of(segment, cuts)
    assume(stations)
    terms = service.terms(service.house)
    parts = replace(whole, segments=(*whole.segments[:which], *cut(segment, stations), *whole.segments[which + 1 :]))
    assert_the_same(take_off(whole, terms), take_off(parts, terms))
