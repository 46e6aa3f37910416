"""What a rule refuses inside a job is told by the place in the job, never by the name of the rule's own input."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any

import pytest

from railrules_api.api.problems import ProblemError
from railrules_api.api.service import Service
from railrules_api.rules.takeoff.takeoff import RULE
from tests.support.asking import ask
from tests.support.demo import demo_job

Tree = dict[str, Any]
TOO_MANY = {"per_rail": {"rail_length": {"value": 39, "unit": "ft"}, "forward": 30, "back_up": 0}}


def feet(value: float) -> Tree:
    return {"value": value, "unit": "ft"}


def miles(value: float) -> Tree:
    return {"value": value, "unit": "mi"}


def first(change: Callable[[Tree], object]) -> Callable[[Tree], object]:
    return lambda job: change(job["segments"][0])


def in_place_of(record: Tree, name: str, **values: Any) -> Tree:
    record.pop(name, None)
    record.update(values)
    return record


CASES: list[tuple[str, Callable[[Tree], object], str]] = [
    ("a run too short", first(lambda one: one.update(features=[
        {"kind": "turnout", "begin": miles(12.002), "end": miles(12.1)}])), "/segments/0"),
    ("a keep-out longer than a string", first(lambda one: one.update(features=[
        {"kind": "road-crossing", "begin": miles(13.0), "end": miles(13.5)}])), "/segments/0"),
    ("too many blocks", lambda job: (job["segments"][0].update(begin=miles(-100)),
        job["segments"][0]["ties"].update(spacing=feet(2)),
        job["supply"].update(work_block=feet(400))), "/supply/work_block"),
    ("piece longer than a string", lambda job: job["supply"].update(minimum_piece=feet(1640)), "/supply/minimum_piece"),
    ("no stock", lambda job: job["supply"]["string"].update(stock=[]), "/supply/string/stock"),
    ("car too weak", lambda job: job["supply"].update(car_mass_limit={"value": 1, "unit": "lb"}), "/supply/car_mass_limit"),
    ("pattern by class and no class", first(lambda one: (
        one["new"].update(spike_pattern="by-class-and-curvature"), one.pop("track_class"))), "/segments/0/track_class"),
    ("surface unknown", first(lambda one: one["new"].update(preservative_surface="rough")),
        "/segments/0/new/preservative_surface"),
    ("new anchors", first(lambda one: in_place_of(one["new"], "anchor_pattern", anchors=TOO_MANY)),
        "/segments/0/new/anchors/per_rail/forward"),
    ("new anchors, others applied again", first(lambda one: in_place_of(
        one["new"], "anchor_pattern", anchors=TOO_MANY, anchors_reapplied_share=0.5)),
        "/segments/0/new/anchors/per_rail/forward"),
    ("old anchors", first(lambda one: in_place_of(one["old"], "anchor_pattern", anchors=TOO_MANY)),
        "/segments/0/old/anchors/per_rail/forward"),
    ("old anchors, applied again", first(lambda one: (
        in_place_of(one["old"], "anchor_pattern", anchors=TOO_MANY), one["new"].update(anchors_reapplied_share=0.5))),
        "/segments/0/old/anchors/per_rail/forward"),
    ("shares over 1", first(lambda one: one["old"].update(reroll_share=0.7, relay_share=0.7)), "/segments/0/old/reroll_share"),
    ("wear and shares", first(lambda one: one["old"].update(relay_wear=0.1)), "/segments/0/old/relay_wear"),
    ("bolts not told", first(lambda one: one["old"].pop("bolts_per_joint")), "/segments/0/old/bolts_per_joint"),
    ("ties half given", first(lambda one: one.update(ties={"count": 24})), "/segments/0/ties/spacing"),
    ("curve given twice", first(lambda one: one["curves"][0].update(radius=feet(900))), "/segments/0/curves/0/radius"),
    ("bands out of order", first(lambda one: in_place_of(one["new"], "spike_pattern", spikes={"bands": [
        {"rail_spikes": 2, "plate_spikes": 0}, {"rail_spikes": 2, "plate_spikes": 0}], "extra_at_joint_ties": 0})),
        "/segments/0/new/spikes/bands/0/at_least_radius"),
    ("more trains than one answer holds", lambda job: (
        job["segments"].__delitem__(slice(1, None)), job["segments"][0].update(begin=miles(-400), curves=[], features=[]),
        job["supply"].update(rack_strings=2, work_block=miles(100))), "/supply/string"),
    ("curves of the two rails overlap", lambda job: (
        job["segments"][0].update(rails="left"),
        job["segments"].append({**job["segments"][0], "name": "right rail", "rails": "right", "features": [], "curves": [
            {**job["segments"][0]["curves"][0], "begin": miles(12.5)}]})), "/segments"),
    ("a turnout over all of the job", lambda job: (
        job["segments"].__delitem__(slice(1, None)), job["segments"][0].update(curves=[], features=[
            {"kind": "turnout", "begin": job["segments"][0]["begin"], "end": job["segments"][0]["end"]}])), "/segments"),
    ("a custom item half told", first(lambda one: one.update(custom=[
        {"item": "pads", "per_tie": 1}, {"item": "posts", "pieces": 2}])), "/segments/0/custom/1/per_length"),
    ("a custom item below zero", first(lambda one: one.update(custom=[{"item": "pads", "per_tie": -1}])),
        "/segments/0/custom/0/per_tie"),
    ("a custom item below zero over the job", lambda job: (
        job["segments"][0].update(custom=[{"item": "pads", "per_tie": 1}, {"item": "pads", "per_seat": 1, "per_rail": 1}]),
        job["segments"][1].update(custom=[{"item": "posts", "per_tie": 1}, {"item": "pads", "per_tie": 1, "per_joint": -1000}])),
        "/segments/1/custom/1/per_joint"),
    ("one product in packages of two sizes", lambda job: (
        job["segments"][0]["new"].update(plates_per_bundle=160), job["segments"][3]["new"].update(plates_per_bundle=200)),
        "/segments/3/new/plates_per_bundle"),
    ("one spike in kegs of two sizes, driven at plates", lambda job: [
        one["new"].update(plate_spike="screw-15-16x6-memory", plate_spikes_per_keg=100 + number)
        for number, one in enumerate(job["segments"])],
        "/segments/1/new/plate_spikes_per_keg"),
    ("one of two custom items of one name half told", first(lambda one: one.update(custom=[
        {"item": "pads", "per_tie": 1}, {"item": "pads", "pieces": 2}])), "/segments/0/custom/1/per_length"),
]  # fmt: skip


@pytest.mark.parametrize(("title", "change", "pointer"), CASES, ids=[case[0] for case in CASES])
def test_a_refusal_names_the_place_in_the_job(
    title: str, change: Callable[[Tree], object], pointer: str, service: Service
) -> None:
    job = demo_job()
    change(job)
    with pytest.raises(ProblemError) as caught:
        ask(service, RULE.id, job)
    assert [fault.pointer for fault in caught.value.faults] == [pointer], title


def test_a_package_that_one_segment_names_is_that_of_the_job(service: Service) -> None:
    job = demo_job()
    job["segments"][3]["new"]["plates_per_bundle"] = 200
    job["segments"][0]["new"]["plates_per_bundle"] = 160
    job["packaging"] = [{"item": "tie-plates", "package": "crate", "pieces": 100}]
    # what the job says of the item settles it
    plates = next(order for order in ask(service, RULE.id, job)["result"]["orders"] if order["item"] == "tie-plates")
    assert (plates["package"], plates["packages"]) == ("crate", math.ceil(plates["order"]["value"] / 100))
    del job["packaging"], job["segments"][0]["new"]["plates_per_bundle"]
    plates = next(order for order in ask(service, RULE.id, job)["result"]["orders"] if order["item"] == "tie-plates")
    assert (plates["package"], plates["packages"]) == ("bundle", math.ceil(plates["order"]["value"] / 200))


def test_what_goes_by_joint_on_track_without_joints_is_refused_at_the_item(service: Service) -> None:
    job = demo_job()
    curve = job["segments"][2]  # its old rail is welded
    assert "rail_length" not in curve["old"]
    for goes_by in ("per_joint", "per_rail"):
        curve["custom"] = [{"item": "pads", goes_by: 1}]
        with pytest.raises(ProblemError) as caught:
            ask(service, RULE.id, job)
        (fault,) = caught.value.faults
        assert fault.pointer == f"/segments/2/custom/0/{goes_by}"
        assert "needs the length of a rail" in fault.detail


def test_a_run_is_told_by_rail_and_stations_in_both_units(service: Service) -> None:
    job = demo_job()
    job["segments"][1]["features"] = [{"kind": "turnout", "begin": miles(16.0), "end": miles(16.998)}]
    with pytest.raises(ProblemError) as caught:
        ask(service, RULE.id, job)
    (fault,) = caught.value.faults
    assert fault.pointer == "/segments/1"
    assert "rail from 89,749 ft (27,356 m)" in fault.detail
