"""What mutation testing of counting, intervals and radii found untested: their edges, each worked by hand."""

from __future__ import annotations

import math

import pytest

from railrules_api.domain.counting import RELATIVE_SLACK, SLACK, first_tie_from, multiples_between, round_up
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.intervals import Interval, subtract
from railrules_api.rules.radius import radius_from


def test_the_slack_itself_still_stands_on_the_tie() -> None:
    assert first_tie_from(SLACK, origin=0.0, spacing=1.0) == 0
    assert first_tie_from(2 * SLACK, origin=0.0, spacing=1.0) == 1


def test_ties_are_numbered_from_their_origin() -> None:
    assert first_tie_from(10.0, origin=4.0, spacing=2.0) == 3
    assert first_tie_from(1.0 + SLACK / 10, origin=0.0, spacing=1.0) == 1


def test_multiples_are_counted_from_a_number_that_is_none() -> None:
    assert multiples_between(1, 24, 2) == len(range(2, 24, 2))
    assert multiples_between(1, 24, 5, 3) == len([3, 8, 13, 18, 23])


def test_a_billionth_is_noise_and_more_is_a_step() -> None:
    assert round_up(RELATIVE_SLACK) == 0.0
    assert round_up(1.5 * RELATIVE_SLACK) == 1.0
    assert round_up(1.0 + 1.5 * RELATIVE_SLACK) == 2.0
    assert round_up(1e6 * (1 + RELATIVE_SLACK / 2)) == 1e6


def test_holes_outside_an_interval_take_nothing_and_nothing_stays_nothing() -> None:
    assert subtract(Interval(0.0, 3.0), [Interval(-2.0, -1.0), Interval(4.0, 5.0)]) == (Interval(0.0, 3.0),)
    assert subtract(Interval(0.0, 3.0), [Interval(-2.0, -1.0), Interval(1.0, 2.0)]) == (Interval(0.0, 1.0), Interval(2.0, 3.0))
    assert subtract(Interval(1.0, 1.0), []) == ()
    assert subtract(Interval(1.0, 2.0), []) == (Interval(1.0, 2.0),)


@pytest.mark.parametrize(("radius", "degree"), [(None, None), (400.0, 0.1)])
def test_a_curve_has_one_of_radius_and_degree(radius: float | None, degree: float | None) -> None:
    with pytest.raises(RefusedError) as caught:
        radius_from(radius, degree)
    [refusal] = caught.value.refusals
    assert refusal.path == ("radius",)
    assert refusal.reason == "give one of radius and degree"
    assert refusal.value == radius


def test_the_radius_of_a_degree_is_that_of_its_chord() -> None:
    """A chord of 100 ft that spans 60 degrees is the side of a triangle of equal sides: its radius is 100 ft."""
    assert radius_from(400.0, None) == 400.0
    assert radius_from(None, math.radians(60)) == pytest.approx(30.48)
