"""Runs of new rail along a track, however its segments are told: closings at what breaks the rail, at ends, at other sections."""

from __future__ import annotations

from typing import Any

import pytest

from railrules_api.api.service import Service
from railrules_api.rules.takeoff.rail_lines import runs_of
from tests.rules.whole_job_help import bound
from tests.support.random_jobs import random_job

Told = tuple[float, float, str, str]


def at(begin: float, end: float | None = None, **more: Any) -> dict[str, Any]:
    return {"begin": {"value": begin, "unit": "m"}} | ({} if end is None else {"end": {"value": end, "unit": "m"}}) | more


def segment(begin: float, end: float, *, section: str = "115RE", singly: bool = False, **more: Any) -> dict[str, Any]:
    new: dict[str, Any] = {"section": section, "plates": "new", "plate": "8-14" if section == "115RE" else "12-14"}
    if singly:
        new["joints"] = {"rail_length": {"value": 39, "unit": "ft"}, "bolts_per_joint": 4}
    told = {"rails": "left", "ties": {"spacing": {"value": 0.5, "unit": "m"}}, "old": {"section": "90RA-A"}, "new": new}
    return at(begin, end, name=f"{begin} to {end}", **told) | more


def runs(service: Service, *segments: dict[str, Any], **supply: str) -> list[Told]:
    body = random_job(1)
    body["segments"] = list(segments)
    body["supply"] |= {"tie_in": "weld", "fixed_tie_in": "joint"} | supply
    found = [one.run for one in runs_of(bound(body, service))]
    return [(run.begin, run.end, run.begin_closing, run.end_closing) for run in found]


TURNOUT = at(400, 500, kind="turnout")
JOINT = at(400, kind="insulated-joint")
PLUG = at(400, 410, kind="insulated-joint")


@pytest.mark.parametrize(
    ("features", "broken", "cuts"),
    [
        ([TURNOUT], [(0, 400, "weld", "joint"), (500, 1000, "joint", "weld")], [399.0, 400.0, 450.0, 500.0, 501.0]),
        ([JOINT], [(0, 400, "weld", "insulated-joint"), (400, 1000, "insulated-joint", "weld")], [399.0, 400.0, 401.0]),
        ([PLUG], [(0, 400, "weld", "weld"), (410, 1000, "weld", "weld")], [400.0, 405.0, 410.0]),
        ([at(400, kind="bolted-joint")], [(0, 400, "weld", "joint"), (400, 1000, "joint", "weld")], [400.0]),
        ([at(400, 500, kind="road-crossing")], [(0, 1000, "weld", "weld")], [400.0, 450.0, 500.0]),
    ],
)
def test_what_breaks_the_rail_does_so_whichever_segment_tells_it(
    features: list[dict[str, Any]], broken: list[Told], cuts: list[float], service: Service
) -> None:
    assert runs(service, segment(0, 1000, features=features)) == broken
    for cut in cuts:
        before, after = [], []
        for feature in features:
            begin = feature["begin"]["value"]
            end = feature.get("end", feature["begin"])["value"]
            if begin < cut:
                before.append(feature | at(begin, None if begin == end else min(end, cut)))
            if end > cut or (begin == end == cut):
                after.append(feature | at(max(begin, cut), None if begin == end else end))
        assert runs(service, segment(0, cut, features=before), segment(cut, 1000, features=after)) == broken, cut


def test_a_joint_at_the_limit_of_segments_may_be_told_with_either(service: Service) -> None:
    with_first = runs(service, segment(0, 400, features=[JOINT]), segment(400, 1000))
    assert with_first == [(0, 400, "weld", "insulated-joint"), (400, 1000, "insulated-joint", "weld")]
    # it stands there, whatever is said of the ends of the segments
    said = runs(service, segment(0, 400, end_closing="joint"), segment(400, 1000, features=[JOINT], begin_closing="joint"))
    assert said == with_first


def test_a_part_left_out_keeps_its_rail(service: Service) -> None:
    left_out = [at(400, 500)]
    told = [(0, 400, "weld", "compromise-joint"), (500, 1000, "compromise-joint", "compromise-joint")]
    told[0] = (0, 400, "compromise-joint", "compromise-joint")
    assert runs(service, segment(0, 1000, left_out=left_out), tie_in="compromise-joint") == told
    cut = (segment(0, 500, left_out=left_out), segment(500, 1000))
    assert runs(service, *cut, tie_in="compromise-joint") == told


def test_a_closing_that_a_segment_gives_goes_before_that_of_its_neighbours_object(service: Service) -> None:
    found = runs(service, segment(0, 400, end_closing="compromise-joint"), segment(400, 1000, features=[TURNOUT]))
    assert found == [(0, 400, "weld", "compromise-joint"), (500, 1000, "joint", "weld")]
    found = runs(service, segment(0, 500, features=[TURNOUT]), segment(500, 1000, begin_closing="compromise-weld"))
    assert found == [(0, 400, "weld", "joint"), (500, 1000, "compromise-weld", "weld")]


def test_where_the_section_changes_the_joint_is_counted_once(service: Service) -> None:
    other = segment(400, 1000, section="136RE")
    assert runs(service, segment(0, 400), other) == [
        (0, 400, "weld", "compromise-weld"),
        (400, 1000, "counted-elsewhere", "weld"),
    ]
    assert runs(service, segment(0, 400, features=[JOINT]), other) == [
        (0, 400, "weld", "insulated-joint"),
        (400, 1000, "counted-elsewhere", "weld"),
    ]
    singly = segment(400, 1000, section="136RE", singly=True)
    assert runs(service, segment(0, 400, singly=True), singly) == [
        (0, 400, "weld", "compromise-joint"),
        (400, 1000, "counted-elsewhere", "weld"),
    ]


def test_where_strings_meet_single_rails_the_joint_is_the_strings(service: Service) -> None:
    assert runs(service, segment(0, 400), segment(400, 1000, singly=True), tie_in="joint") == [
        (0, 400, "joint", "joint"),
        (400, 1000, "counted-elsewhere", "joint"),
    ]
    assert runs(service, segment(0, 400, singly=True), segment(400, 1000, begin_closing="compromise-joint")) == [
        (0, 400, "weld", "counted-elsewhere"),
        (400, 1000, "compromise-joint", "weld"),
    ]


def test_single_rails_run_on_through_their_insulated_joints_and_stop_at_a_turnout(service: Service) -> None:
    found = runs(service, segment(0, 1000, singly=True, features=[at(100, kind="insulated-joint"), TURNOUT, PLUG | at(700, 710)]))
    assert found == [(0, 400, "weld", "joint"), (500, 1000, "joint", "weld")]


def test_what_no_tape_can_measure_is_no_rail(service: Service) -> None:
    sliver = [at(400, 999.9999999, kind="turnout")]
    assert runs(service, segment(0, 1000, features=sliver)) == [(0, 400, "weld", "joint")]
