"""A check of a job that lacks an input says where in the job to give it, and is made once it is given there."""

from __future__ import annotations

from typing import Any

import pytest

from railrules_api.api.service import Service
from railrules_api.rules.takeoff.book import JobCheck
from tests.rules.whole_job_help import done
from tests.support.demo import demo_job

Tree = dict[str, Any]


def bare() -> Tree:
    """Return the demo without what its checks rest on."""
    job = demo_job()
    del job["stability"], job["provisions"], job["supply"]["joints"], job["temperatures"]["laying_rail"]
    del job["supply"]["way"]["yield_share"], job["supply"]["way"]["end_clearance"]
    job["supply"]["fixed_tie_in"] = "joint"
    for segment in job["segments"]:
        for name in ("track_class", "sound_ties", "sound_ties_in_curves"):
            del segment[name]
    return job


def open_checks(job: Tree, service: Service) -> list[JobCheck]:
    return [entry for entry in done(job, service).result.checks if entry.check.verdict == "not-checked"]


def give(job: Any, pointer: str, value: Any) -> None:
    *steps, last = pointer.split("/")[1:]
    for step in steps:
        job = job[int(step)] if isinstance(job, list) else job.setdefault(step, {})
    job[last] = value


VALUES: dict[str, Any] = {
    "stability": {"lateral_resistance": {"value": 85, "unit": "lbf_per_in"}},
    "joints": {"joint_bar": "115RE-36", "bolts_per_joint": 6},
    "laying_rail": {"value": 78, "unit": "degF"},
    "plan_in_force": True,
    "record_kept": {"value": 10 * 365, "unit": "d"},
    "later_adjustment": True,
    "anchored_at_turnouts": True,
    "torch_cut": False,
    "yield_share": 0.6,
    "end_clearance": {"value": 2, "unit": "ft"},
    "joints_welded_after": {"value": 30, "unit": "d"},
    "special_bolts_in_rail": 3,
    "room_to_close": {"value": 1, "unit": "in"},
    "room_to_open": {"value": 3, "unit": "in"},
    "track_class": 4,
    "sound_ties": 16,
    "sound_ties_in_curves": 16,
}


def test_following_what_open_checks_ask_for_closes_them(service: Service) -> None:
    job, asked = bare(), set()
    for _ in range(12):
        left = [entry for entry in open_checks(job, service) if entry.needs]
        if not left:
            break
        for entry in left:
            # any of several will do
            pointer = entry.needs[0]
            asked.add(pointer)
            give(job, pointer, VALUES[pointer.rpartition("/")[2]])
    assert asked >= {
        "/stability", "/supply/joints", "/temperatures/laying_rail", "/provisions/plan_in_force", "/provisions/record_kept",
        "/provisions/anchored_at_turnouts", "/provisions/torch_cut", "/provisions/special_bolts_in_rail",
        "/provisions/room_to_close", "/provisions/room_to_open", "/segments/0/track_class", "/segments/0/sound_ties",
        "/segments/0/sound_ties_in_curves",
    }  # fmt: skip
    # what no input can close: the rule of buckling has no answer for the sharpest curve, and so none for the hottest rail
    assert {entry.check.code for entry in open_checks(job, service)} <= {"buckling", "hottest-rail"}


def test_every_open_check_of_a_bare_job_says_what_it_lacks(service: Service) -> None:
    assert [entry for entry in open_checks(bare(), service) if not entry.needs] == []


def test_rail_laid_cold_asks_for_the_provision(service: Service) -> None:
    job = demo_job()
    del job["provisions"]["later_adjustment"]
    job["temperatures"]["laying_rail"] = {"value": 40, "unit": "degF"}
    (entry,) = [entry for entry in open_checks(job, service) if entry.check.code == "added-below-range"]
    assert entry.needs == ("/provisions/later_adjustment",)


def test_a_joint_that_may_still_be_welded_asks_for_any_of_the_ways(service: Service) -> None:
    job = demo_job()
    del job["supply"]["joints"]
    del job["supply"]["way"]["yield_share"], job["supply"]["way"]["end_clearance"]
    job["supply"]["fixed_tie_in"] = "joint"
    for segment in job["segments"]:
        segment["new"] |= {"elastic_fasteners": True}  # what holds such rail is not for a count of anchors to say
        segment["new"].pop("anchor_pattern", None)
    found = {entry.needs for entry in open_checks(job, service) if entry.check.code == "joint-new"}
    assert ("/supply/joints", "/provisions/joints_welded_after") in found


@pytest.mark.parametrize(
    ("forget", "pointer"),
    [
        (lambda one: one["new"].pop("plate"), "/segments/1/new/plate_base_most"),
        (lambda one: one["new"].pop("plate"), "/segments/1/new/plate_base_least"),
    ],
)
def test_a_check_of_one_segment_names_that_segment(forget: Any, pointer: str, service: Service) -> None:
    job = demo_job()
    forget(job["segments"][1])
    job.pop("prices")
    assert (pointer,) in {entry.needs for entry in open_checks(job, service)}


def test_anchors_applied_again_to_rail_of_unknown_base_ask_for_it(service: Service) -> None:
    job = demo_job()
    segment = job["segments"][3]
    segment["new"]["anchors_reapplied_share"] = 0.5
    old = segment["old"]
    del old["section"]
    old["mass_per_length"] = {"value": 90, "unit": "lb_per_yd"}
    job["segments"] = [segment]
    (entry,) = [entry for entry in open_checks(job, service) if entry.check.code == "anchors-grip-base"]
    assert entry.needs == ("/segments/0/old/base_width",)
