"""Buckling inside the takeoff: each segment's straight track and curves, the restriction temperature that follows, its cost."""

from __future__ import annotations

import json
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from railrules_api.api.replying import bind
from railrules_api.api.resources import calculation_of
from railrules_api.api.service import Service
from railrules_api.domain.errors import RefusedError
from railrules_api.rules.takeoff import stability, takeoff
from railrules_api.rules.takeoff.job import Job
from railrules_api.rules.takeoff.result import Done
from railrules_api.rules.thermal import buckling
from railrules_api.units import UNITS
from tests.support.asking import ask, body_of
from tests.support.demo import demo_job

Tree = dict[str, Any]


def per_inch(value: float) -> Tree:
    return {"value": value, "unit": "lbf_per_in"}


def held(resistance: float = 100.0, **more: Any) -> Tree:
    """Return the demo with what stability needs, less the segment in the curve of 6 degrees, which is beyond the witness."""
    body: Tree = demo_job()
    body["segments"] = [segment for segment in body["segments"] if segment["name"] != "Long Reach curve, high rail"]
    body["stability"] = {"lateral_resistance": per_inch(resistance), **more}
    return body


def bound(body: Tree, service: Service) -> Job:
    found: Job = bind(calculation_of("takeoffs"), json.dumps(body).encode(), service).given
    return found


def done(body: Tree, service: Service) -> Done:
    return takeoff.take_off(bound(body, service), service.terms(service.house))


def of_rule(found: Done, rule: str) -> list[Any]:
    return [working for working in found.workings if working.rule.id == rule]


def test_a_job_that_does_not_ask_is_not_answered_and_says_so(service: Service) -> None:
    body = demo_job()
    del body["stability"]
    found = done(body, service)
    assert found.result.stability == ()
    assert of_rule(found, "thermal.buckling") == []
    (check,) = (item.check for item in found.result.checks if item.check.code == "hottest-rail")
    assert check.verdict == "not-checked"


def test_every_segment_is_answered_straight_and_curved_as_the_rule_alone(service: Service) -> None:
    found = done(held(), service)
    rows, workings = found.result.stability, of_rule(found, "thermal.buckling")
    assert [row.of for row in rows] == [working.of for working in workings]
    assert {row.of for row in rows} == {segment.name for segment in found.result.segments}
    assert sum(row.radius is not None for row in rows) >= 3
    for row, working in zip(rows, workings, strict=True):
        alone = ask(service, "thermal.buckling", {**body_of(working.given), "units": "si"})["result"]
        for name in ("lower_rise", "upper_rise", "allowed_rise"):
            assert getattr(row, name) == pytest.approx(alone[name]["value"], rel=1e-9)
        assert row.verdict == alone["checks"][0]["verdict"] == working.found.checks[0].verdict
        assert row.radius == working.given.radius
        assert row.radius_used is None
    for segment in found.result.segments:
        assert sum(row.length for row in rows if row.of == segment.name) == pytest.approx(segment.length, rel=1e-9)
    answer = ask(service, "takeoffs", held())
    assert {"static-results", "neutral-temperature-drifts", "own-standards-decide"} <= {
        item["code"] for item in answer["cautions"]
    }
    assert {item["name"] for item in answer["assumptions"]} >= {
        "longitudinal-stiffness", "line-defect", "line-defect-half-length", "buckle-shape", "restriction-margin",
    }  # fmt: skip


def test_the_restriction_temperature_follows_from_the_track_that_buckles_first(service: Service) -> None:
    found = done(held(), service)
    rise = min(row.allowed_rise for row in found.result.stability if row.allowed_rise is not None)
    laid = found.result.range
    assert laid.restriction == pytest.approx(laid.neutral_drifted + rise, abs=1e-9)
    (check,) = (item.check for item in found.result.checks if item.check.code == "hottest-rail")
    worst = max(
        (item.check for item in found.result.checks if item.check.code == "buckling"),
        key=lambda one: one.utilisation or 0.0,
    )
    assert check.verdict == worst.verdict != "not-checked"
    assert check.utilisation == pytest.approx(worst.utilisation, rel=1e-9)


def test_the_difference_rule_has_its_margin_in_it(service: Service) -> None:
    found = done(held(margin_rule="difference"), service)
    rises = [row.allowed_rise for row in found.result.stability]
    if None in rises:
        assert found.result.range.restriction is None
    else:
        assert found.result.range.restriction == pytest.approx(found.result.range.neutral_drifted + min(rises), abs=1e-9)  # type: ignore[type-var, operator]


def test_curves_beyond_the_witness_are_not_checked_and_leave_no_restriction_temperature(service: Service) -> None:
    body = held()
    body["segments"][0]["curves"][0] = {**body["segments"][0]["curves"][0], "degree": {"value": 8, "unit": "deg"}}
    found = done(body, service)
    verdicts = [row.verdict for row in found.result.stability if row.allowed_by.startswith("not available for curves")]
    assert set(verdicts) == {"not-checked"}
    assert found.result.range.restriction is None
    codes = {(item.check.code, item.check.verdict) for item in found.result.checks}
    assert {("buckling", "not-checked"), ("hottest-rail", "not-checked")} <= codes


def test_a_segment_may_hold_less(service: Service) -> None:
    body = held()
    plain = done(body, service).result.stability
    body["segments"][0]["lateral_resistance"] = per_inch(50.0)
    weak = done(body, service).result.stability
    first = plain[0].of
    for one, other in zip(plain, weak, strict=True):
        assert one.lower_rise is not None
        assert other.lower_rise is not None
        assert (other.lower_rise < one.lower_rise) if one.of == first else (other.lower_rise == one.lower_rise)


def test_equal_track_is_traced_once(service: Service, monkeypatch: pytest.MonkeyPatch) -> None:
    traced = []

    def counted(given: Any) -> Any:
        traced.append(given)
        return buckling.evaluate(given)

    monkeypatch.setattr(stability, "RULE", stability.RULE.__class__(**{**_parts(stability.RULE), "evaluate": counted}))
    body = held()
    segment = body["segments"][0]
    body["segments"] = [
        {**segment, "name": f"part {number}", "begin": {"value": number * 1000, "unit": "m"},
         "end": {"value": number * 1000 + 900, "unit": "m"}, "features": [], "curves": []}
        for number in range(50)
    ]  # fmt: skip
    found = done(body, service)
    assert len(found.result.stability) == 50
    assert len(traced) == 1


def _parts(rule: Any) -> Tree:
    return {name: getattr(rule, name) for name in rule.__dataclass_fields__}


def test_single_rails_are_not_welded_and_not_asked_about(service: Service) -> None:
    body = held()
    for segment in body["segments"]:
        made_of = {"rail_length": {"value": 39, "unit": "ft"}, "bars_per_joint": 2, "bolts_per_joint": 6}
        segment["new"] = {**segment["new"], "joints": made_of}
    given = bound(body, service)
    assert given.stability is not None
    assert stability.asked(given, given.stability, given.temperatures, 300.0) == ()


def test_a_segment_that_is_all_curve_has_no_straight_track(service: Service) -> None:
    body = held()
    limits = {"begin": {"value": 0, "unit": "m"}, "end": {"value": 800, "unit": "m"}}
    curves = [
        {"begin": {"value": begin, "unit": "m"}, "end": {"value": begin + 400, "unit": "m"},
         "radius": {"value": 700, "unit": "m"}, "hand": hand}
        for begin, hand in ((0, "left"), (400, "right"))
    ]  # fmt: skip
    body["segments"] = [{**body["segments"][0], **limits, "features": [], "curves": curves}]
    (row,) = done(body, service).result.stability
    assert row.radius == pytest.approx(700.0)
    assert row.length == pytest.approx(800.0)


def test_a_rail_without_its_lateral_second_moment_is_refused_by_name(service: Service) -> None:
    body = held()
    new = {key: value for key, value in body["segments"][0]["new"].items() if key != "section"}
    new |= {"area": {"value": 11.2, "unit": "in2"}, "mass_per_length": {"value": 115, "unit": "lb_per_yd"}}
    new |= {"base_width": {"value": 5.5, "unit": "in"}}
    body["segments"] = [{**body["segments"][0], "new": new}]
    with pytest.raises(RefusedError) as caught:
        done(body, service)
    assert caught.value.refusals[0].path == ("segments", 0, "new", "second_moment_lateral")


def test_too_many_different_tracks_are_refused(service: Service) -> None:
    body = held()
    segment = {**body["segments"][0], "features": [], "curves": []}
    body["segments"] = [
        {**segment, "name": f"part {number}", "lateral_resistance": per_inch(50.0 + number),
         "begin": {"value": number * 1000, "unit": "m"}, "end": {"value": number * 1000 + 900, "unit": "m"}}
        for number in range(stability.MOST_TRACKS + 1)
    ]  # fmt: skip
    with pytest.raises(RefusedError) as caught:
        done(body, service)
    assert caught.value.refusals[0].path == ("stability",)


@given(st.lists(st.floats(350.0, 1e5), min_size=1, max_size=200), st.integers(1, 20))
def test_every_curve_is_answered_for_one_as_sharp_or_sharper(radii: list[float], most: int) -> None:
    classes = stability.classes_of(radii, most)
    assert len(classes) <= most
    assert classes[0] == min(radii)
    assert set(classes) <= set(radii)
    for radius in radii:
        used = max(one for one in classes if one <= radius)
        assert used <= radius


def test_many_curves_are_answered_for_the_next_sharper_one(service: Service) -> None:
    body = held()
    segment = body["segments"][0]
    radii = [600.0 + 50.0 * number for number in range(30)]
    curves = [
        {"begin": {"value": 100.0 * number, "unit": "m"}, "end": {"value": 100.0 * number + 60.0, "unit": "m"},
         "radius": {"value": radius, "unit": "m"}, "hand": "left"}
        for number, radius in enumerate(radii)
    ]  # fmt: skip
    limits = {"begin": {"value": 0, "unit": "m"}, "end": {"value": 3000, "unit": "m"}}
    body["segments"] = [{**segment, **limits, "features": [], "curves": curves}]
    found = done(body, service)
    rows = [row for row in found.result.stability if row.radius is not None]
    assert len(rows) == 30
    assert len({row.radius_used or row.radius for row in rows}) == stability.MOST_RADII
    workings = {working.given.radius: working for working in of_rule(found, "thermal.buckling")}
    for row in (rows[1], rows[-1]):
        assert row.radius is not None
        assert row.radius_used is not None
        assert row.radius_used < row.radius
        own = ask(
            service,
            "thermal.buckling",
            {**body_of(workings[row.radius_used].given), "radius": {"value": row.radius, "unit": "m"}},
        )
        rise = own["result"]["allowed_rise"]
        assert row.allowed_rise is not None
        assert row.allowed_rise <= UNITS[next(k for k in UNITS if rise["unit"] in UNITS[k])][rise["unit"]].to_si(rise["value"])
