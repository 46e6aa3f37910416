"""The way of a job's strings from the plant, put to the rule of hauling for each section of new rail."""

from __future__ import annotations

import math
from typing import Any

import pytest

from railrules_api.api.problems import pointer as pointer_of
from railrules_api.api.service import Service
from railrules_api.domain.errors import RefusedError
from railrules_api.rules.strength.hauling_curve import HaulingCurveResult
from tests.rules.whole_job_help import done
from tests.support.demo import demo_job


def on_the_way(service: Service, way: dict[str, Any] | None) -> list[HaulingCurveResult | None]:
    body = demo_job()
    if way is None:
        del body["supply"]["way"]
    else:
        kept = {name: value for name, value in body["supply"]["way"].items() if name not in ("turnout", "turn_angle")}
        body["supply"]["way"] = kept | way
    return [plan.way for plan in done(body, service).result.rail]


def test_a_string_is_bent_to_the_sharpest_curve_of_its_way(service: Service) -> None:
    """By hand: 30e6 psi x 5.5 in / 2 over 573.69 ft less the 4 ft that the outermost string stands off the middle."""
    (found,) = on_the_way(service, {"degree": {"value": 10, "unit": "deg"}})
    assert found is not None
    radius = 50 / math.sin(math.radians(5)) - 4  # [ft]
    assert found.base_stress / 6894.757293168 == pytest.approx(30e6 * 2.75 / (radius * 12), rel=1e-9)


def test_the_turnout_may_be_told_by_its_number(service: Service) -> None:
    """A closure curve not listed is taken sharper than the listed one of that number, which is on the safe side."""
    (listed,) = on_the_way(service, {"turnout": "9"})
    (worked,) = on_the_way(service, {"turnout_number": 9})
    assert listed is not None
    assert worked is not None
    assert worked.radius < listed.radius
    assert worked.base_stress > listed.base_stress


def test_a_job_without_a_way_is_not_asked_about_it(service: Service) -> None:
    assert on_the_way(service, None) == [None]


@pytest.mark.parametrize(
    ("way", "pointer"),
    [
        ({}, "/supply/way/radius"),
        ({"degree": {"value": 10, "unit": "deg"}, "turnout_number": 9}, "/supply/way/turnout_number"),
        ({"radius": {"value": 12, "unit": "m"}, "rack_spacing": {"value": 30, "unit": "m"}}, "/supply/way/rack_spacing"),
    ],
)
def test_a_way_that_contradicts_itself_is_refused_where_it_stands(service: Service, way: dict[str, Any], pointer: str) -> None:
    with pytest.raises(RefusedError) as caught:
        on_the_way(service, way)
    assert [pointer_of(refusal.path) for refusal in caught.value.refusals] == [pointer]


def test_the_width_of_the_base_is_asked_for(service: Service) -> None:
    body = demo_job()
    for segment in body["segments"]:
        new = segment["new"]
        del new["section"]
        new["mass_per_length"] = {"value": 115, "unit": "lb_per_yd"}
        new["area"] = {"value": 11.25, "unit": "in2"}
    del body["stability"]
    with pytest.raises(RefusedError) as caught:
        done(body, service)
    assert [pointer_of(refusal.path) for refusal in caught.value.refusals] == ["/segments/0/new/base_width"]
