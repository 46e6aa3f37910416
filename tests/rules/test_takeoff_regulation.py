"""What the takeoff asks of 49 CFR Part 213 about the joints it leaves, and how the ends of its welded rail move."""

from __future__ import annotations

import json
from typing import Any

import pytest

from railrules_api.api.replying import bind
from railrules_api.api.resources import calculation_of
from railrules_api.api.service import Service
from railrules_api.rules.checks import Check
from railrules_api.rules.strength.joint_rules import Joint
from railrules_api.rules.takeoff import takeoff
from railrules_api.rules.takeoff.result import Done
from tests.support.asking import ask
from tests.support.demo import demo_job

FOOT = 0.3048
RULE = "regulation.track-joints"


def plain_job(**changes: Any) -> dict[str, Any]:
    """Return the demo's Cinder Road to Long Reach alone, mile 14.6 to 17.0, without features, closed by joints of four bolts."""
    body: dict[str, Any] = demo_job()
    segment = next(segment for segment in body["segments"] if segment["name"] == "Cinder Road to Long Reach")
    segment |= {"features": [], **changes}
    segment.pop("end_closing", None)
    body["segments"] = [segment]
    body["supply"]["tie_in"] = "joint"
    body["supply"]["joints"]["bolts_per_joint"] = 4
    # what the demo provides for is left out: what a job does not say is what is tested here
    return {name: part for name, part in body.items() if name not in {"hauling", "prices", "provisions", "stability"}}


def done(service: Service, body: dict[str, Any]) -> Done:
    given = bind(calculation_of("takeoffs"), json.dumps(body).encode(), service).given
    return takeoff.take_off(given, service.terms(service.house))


def joints_asked(found: Done) -> list[Joint]:
    return [joint for working in found.workings if working.rule.id == RULE for joint in working.given.joints]


def checks(found: Done, code: str, of: str = "") -> list[Check]:
    return [
        item.check for item in found.result.checks if item.rule == RULE and item.check.code == code and of in item.check.title
    ]


def feature(kind: str, mile: float, **rule: Any) -> dict[str, Any]:
    made: dict[str, Any] = {"kind": kind, "begin": {"value": mile, "unit": "mi"}}
    if rule:
        made["rule"] = {"rail_through": True, "ties_through": True, "within": "boxed", "breaks_string": True, **rule}
    return made


def test_a_joint_at_the_end_of_the_job_is_never_passed(service: Service) -> None:
    """Two bolts a rail do; neither a weld within 60 days nor the anchors of the track that stays are known."""
    found = done(service, plain_job())
    (joint,) = joints_asked(found)
    assert (joint.bolts_in_rail, joint.anchored_each_way, joint.welded_after) == (2, None, None)
    assert joint.name == "plain joint, 77,088 ft (23,496 m) and 3 more alike"
    (bolts,) = checks(found, "joint-bolts")
    assert (bolts.verdict, bolts.place) == ("passes", "49 CFR 213.119(c)(1)")
    (new,) = checks(found, "joint-new")
    assert (new.verdict, new.place) == ("not-checked", "49 CFR 213.119(c)(2)")
    assert new.governing == "welded_after, anchored_each_way"
    assert [check.verdict for check in checks(found, "welded-rail-plan")] == ["not-checked"]


def test_six_bolts_are_one_of_the_three_ways(service: Service) -> None:
    body = plain_job()
    body["supply"]["joints"]["bolts_per_joint"] = 6
    (new,) = checks(done(service, body), "joint-new")
    assert (new.verdict, new.governing) == ("passes", "six bolts installed")


@pytest.mark.parametrize(
    ("feet", "verdict", "anchored"), [(195.0, "passes", 195.0), (194.0, "not-checked", 194.0), (400.0, "passes", 195.0)]
)
def test_195_ft_of_anchored_ties_each_way(feet: float, verdict: str, anchored: float, service: Service) -> None:
    """The zones of a joint in the middle of the job are what the job anchors; every other tie beyond them does not do."""
    rule = feature("bolted-joint", 16.6, approach_length={"value": feet, "unit": "ft"})
    found = done(service, plain_job(features=[rule]))
    inside = [joint for joint in joints_asked(found) if joint.anchored_each_way is not None]
    assert [joint.anchored_each_way for joint in inside] == pytest.approx([anchored * FOOT], rel=1e-9)
    (new,) = checks(found, "joint-new", of="87,648 ft")
    assert new.verdict == verdict
    if verdict == "passes":
        assert new.governing == "every tie anchored 195 ft both ways"
    else:
        assert new.governing == "welded_after"


def test_anchors_end_where_a_bridge_carries_none(service: Service) -> None:
    """A bridge 50 ft beyond the joint whose ties carry no anchors leaves 50 ft on that side."""
    mile = 16.6
    bridge = {
        **feature("open-deck-bridge", mile + 50 / 5280, within="none", approach_length={"value": 0, "unit": "ft"}),
        "end": {"value": mile + 150 / 5280, "unit": "mi"},
    }
    bridge["rule"]["breaks_string"] = False
    found = done(service, plain_job(features=[feature("bolted-joint", mile), bridge]))
    (joint,) = [joint for joint in joints_asked(found) if joint.anchored_each_way is not None]
    assert joint.anchored_each_way == pytest.approx(50 * FOOT, rel=1e-6)
    (new,) = checks(found, "joint-new", of="87,648 ft")
    assert new.verdict == "not-checked"


def test_near_the_end_of_the_job_anchors_may_go_on_and_nothing_is_said(service: Service) -> None:
    found = done(service, plain_job(features=[feature("bolted-joint", 17.0 - 100 / 5280)]))
    assert {joint.anchored_each_way for joint in joints_asked(found)} == {None}


def test_a_segment_limit_does_not_end_the_anchors(service: Service) -> None:
    body = plain_job(features=[feature("bolted-joint", 16.6)])
    first = body["segments"][0]
    limit = {"value": 16.6 + 60 / 5280, "unit": "mi"}
    second = {**first, "name": "the rest", "begin": limit, "features": [], "curves": []}
    first |= {"end": limit}
    assert {joint.anchored_each_way for joint in joints_asked(done(service, body))} == {None}
    body["segments"].append(second)
    (joint,) = [joint for joint in joints_asked(done(service, body)) if joint.anchored_each_way is not None]
    assert joint.anchored_each_way == pytest.approx(195 * FOOT, rel=1e-9)


def test_elastic_fasteners_are_not_counted_as_anchors(service: Service) -> None:
    body = plain_job(features=[feature("bolted-joint", 16.6)])
    body["segments"][0]["new"]["elastic_fasteners"] = True
    assert {joint.anchored_each_way for joint in joints_asked(done(service, body))} == {None}


def test_joints_alike_are_asked_about_once_and_classes_apart(service: Service) -> None:
    features = [feature("insulated-joint", 14.8 + 0.1 * number) for number in range(20)]
    body = plain_job(features=features)
    found = done(service, body)
    (insulated,) = [joint for joint in joints_asked(found) if joint.name.startswith("insulated")]
    assert insulated.name.endswith("and 39 more alike")
    assert insulated.bolts_in_rail is None
    (bolts,) = checks(found, "joint-bolts", of="insulated")
    assert (bolts.verdict, bolts.governing) == ("not-checked", "bolts_in_rail")
    assert [working.given.track_class for working in found.workings if working.rule.id == RULE] == [4]


def test_without_a_class_what_hangs_on_it_is_not_checked(service: Service) -> None:
    body = plain_job()
    del body["segments"][0]["track_class"]
    found = done(service, body)
    assert [working.given.track_class for working in found.workings if working.rule.id == RULE] == [None]
    assert [check.verdict for check in checks(found, "anchored-turnouts")] == ["not-checked"]
    assert [check.verdict for check in checks(found, "joint-bolts")] == ["passes"]


def test_a_job_without_joints_asks_nothing(service: Service) -> None:
    body = plain_job()
    body["supply"]["tie_in"] = "weld"
    assert joints_asked(done(service, body)) == []
    assert checks(done(service, body), "welded-rail-plan") == []


def test_the_end_of_welded_rail_moves_and_breathes(service: Service) -> None:
    """By pencil, u = P^2 / (2 E A r): 11.2171 in2, 30e6 psi, 6.5e-6 per degF, 30 lb/in; 126 and 4 degF about 100, drift 30."""
    body = plain_job(features=[feature("end-of-cwr", 16.6)])
    answer = ask(service, "takeoffs", body)
    (safety,) = answer["result"]["safety"]
    stiffness = 30e6 * 11.2171
    for name, neutral in (("end", 100.0), ("end_drifted", 70.0)):
        end = safety[name]
        hot, cold = (stiffness * 6.5e-6 * change for change in (126 - neutral, neutral - 4))
        assert end["hot_movement"]["value"] == pytest.approx(hot**2 / (2 * stiffness * 30), rel=1e-9)
        assert end["cold_movement"]["value"] == pytest.approx(cold**2 / (2 * stiffness * 30), rel=1e-9)
        assert end["breathing_length"]["value"] == pytest.approx(max(hot, cold) / 30 / 12, rel=1e-9)
    assert safety["end"]["cold_movement"]["value"] == pytest.approx(2.1838, abs=5e-5)
    assert safety["end"]["breathing_length"]["value"] == pytest.approx(583.3, abs=0.05)
    told = [item["check"] for item in answer["result"]["checks"] if item["rule"] == "thermal.end-movement"]
    assert [check["verdict"] for check in told] == ["not-checked"] * 4
    assert {"first-movement", "neutral-temperature-drifts", "own-standards-decide"} <= {one["code"] for one in answer["cautions"]}


def test_a_joint_that_holds_moves_less_and_without_an_end_nothing_is_told(service: Service) -> None:
    body = plain_job(features=[feature("end-of-cwr", 16.6)])
    body["temperatures"]["joint_slip"] = {"value": 60_000, "unit": "lbf"}
    body["temperatures"]["drift"] = {"value": 0, "unit": "delta_degF"}
    (safety,) = ask(service, "takeoffs", body)["result"]["safety"]
    force = 30e6 * 11.2171 * 6.5e-6 * 96 - 60_000
    assert safety["end"]["cold_movement"]["value"] == pytest.approx(force**2 / (2 * 30e6 * 11.2171 * 30), rel=1e-9)
    assert "end_drifted" not in safety
    (bare,) = ask(service, "takeoffs", plain_job())["result"]["safety"]
    assert "end" not in bare
