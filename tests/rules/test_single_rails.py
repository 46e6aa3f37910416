"""New track laid of single rails inside a job: its joints, wherever its segments are cut."""

from __future__ import annotations

from typing import Any

import pytest

from railrules_api.api.service import Service
from railrules_api.domain.errors import RefusedError
from tests.rules.whole_job_help import done
from tests.support.random_jobs import random_job


def singly(name: str, begin: float, end: float, section: str = "115RE", **more: Any) -> dict[str, Any]:
    """Return a segment laid of single rails, of old rail that does not matter here."""
    plate = "8-14" if section == "115RE" else "12-14"
    return {
        "name": name,
        "begin": {"value": begin, "unit": "ft"},
        "end": {"value": end, "unit": "ft"},
        "rails": "both",
        "ties": {"spacing": {"value": 19.5, "unit": "in"}},
        "old": {"section": "90RA-A"},
        "new": {
            "section": section,
            "plates": "new",
            "plate": plate,
            "joints": {"rail_length": {"value": 39, "unit": "ft"}, "bolts_per_joint": 4},
        },
    } | more


@pytest.mark.parametrize(
    ("tie_in", "segments", "count"),
    [
        # nothing changes within one section, however it is cut
        ("joint", [singly("a", 0, 3900)], 0),
        ("joint", [singly("a", 0, 1950), singly("b", 1950, 3900)], 0),
        # a change of section is one joint on each rail, whichever side is told first
        ("joint", [singly("a", 0, 1950), singly("b", 1950, 3900, "136RE")], 2),
        ("joint", [singly("b", 1950, 3900, "136RE"), singly("a", 0, 1950)], 2),
        ("joint", [singly("a", 0, 1950, rails="left"), singly("b", 1950, 3900, "136RE")], 1),
        # both ends of what is renewed meet another section, on each rail
        ("compromise-joint", [singly("a", 0, 3900)], 4),
        ("compromise-joint", [singly("a", 0, 1950), singly("b", 1950, 3900)], 4),
        ("compromise-joint", [singly("a", 0, 1950), singly("b", 2000, 3900)], 8),
        ("compromise-joint", [singly("a", 0, 3900, end_closing="joint")], 2),
        ("compromise-joint", [singly("a", 0, 1950), singly("b", 1950, 3900, "136RE")], 6),
        # a part left out has two ends of its own; on another track nothing touches
        ("compromise-joint", [singly("a", 0, 3900, left_out=[
            {"begin": {"value": 1000, "unit": "ft"}, "end": {"value": 1200, "unit": "ft"}}])], 8),
        ("joint", [singly("a", 0, 1950, track="1"), singly("b", 1950, 3900, "136RE", track="2")], 0),
    ],
)  # fmt: skip
def test_compromise_joints_stand_where_the_section_changes(
    tie_in: str, segments: list[dict[str, Any]], count: int, service: Service
) -> None:
    body = {**random_job(1), "segments": segments, "hauling": None, "allowances": []}
    del body["hauling"]
    body["supply"] |= {"tie_in": tie_in, "fixed_tie_in": "joint"}
    orders = {order.item: order.net.value for order in done(body, service).result.orders}
    assert orders.get("compromise-joints", 0.0) == count


def test_compromise_joints_stand_at_turnouts_that_keep_another_section(service: Service) -> None:
    turnout = {"kind": "turnout", "begin": {"value": 1000, "unit": "ft"}, "end": {"value": 1200, "unit": "ft"}}
    body = {**random_job(1), "segments": [singly("a", 0, 3900, features=[turnout])]}
    body["supply"] |= {"tie_in": "joint", "fixed_tie_in": "compromise-joint"}
    orders = {order.item: order.net.value for order in done(body, service).result.orders}
    assert orders["compromise-joints"] == 4
    body["segments"][0]["new"]["joints"]["section_changes"] = 3
    orders = {order.item: order.net.value for order in done(body, service).result.orders}
    assert orders["compromise-joints"] == 6


# ---------------------------------------------------------------- cuts


def feet(begin: float, end: float | None = None, **more: Any) -> dict[str, Any]:
    return {"begin": {"value": begin, "unit": "ft"}} | ({} if end is None else {"end": {"value": end, "unit": "ft"}}) | more


def insulated(*stations: float) -> list[dict[str, Any]]:
    return [feet(station, kind="insulated-joint") for station in stations]


def orders_of(segments: list[dict[str, Any]], service: Service, **supply: str) -> dict[str, float]:
    body = {**random_job(1), "segments": segments, "allowances": []}
    body["supply"] |= supply
    return {order.item: order.net.value for order in done(body, service).result.orders}


def test_a_part_with_more_insulated_joints_than_joints_is_no_refusal(service: Service) -> None:
    whole = orders_of([singly("a", 0, 3900, features=insulated(1001, 1003))], service)
    assert whole["insulated-joints"] == 4
    assert whole["joint-bars"] == pytest.approx(2 * (200 - 4))
    parts = [singly("a", 0, 1000), singly("b", 1000, 1004, features=insulated(1001, 1003)), singly("c", 1004, 3900)]
    assert orders_of(parts, service) == pytest.approx(whole, rel=1e-9)
    # whichever is told first
    assert orders_of(parts[::-1], service) == pytest.approx(whole, rel=1e-9)


def test_what_runs_on_is_one_line_that_names_its_segments(service: Service) -> None:
    body = {**random_job(1), "segments": [singly("a", 0, 1000), singly("b", 1000, 1100), singly("c", 1200, 2000)]}
    lines = [line for line in done(body, service).result.lines if line.item == "joint-bars"]
    assert [line.of for line in lines] == ["a and 1 more", "c"]
    assert [line.net.value for line in lines] == pytest.approx([2 * 2 * 1100 / 39, 2 * 2 * 800 / 39])


@pytest.mark.parametrize(
    ("other", "lines"),
    [
        ({}, 1),
        ({"track": "2"}, 2),
        ({"rails": "left"}, 2),
        ({"track_class": 3}, 2),
    ],
)
def test_only_what_is_made_alike_is_asked_about_as_one(other: dict[str, Any], lines: int, service: Service) -> None:
    body = {**random_job(1), "segments": [singly("a", 0, 1000), singly("b", 1000, 2000, **other)]}
    assert sum(line.item == "joint-bars" for line in done(body, service).result.lines) == lines


@pytest.mark.parametrize(
    ("segments", "path", "most"),
    [
        ([singly("a", 0, 30), singly("b", 30, 60, features=insulated(40, 45, 50))], ("segments", 1, "features"), 4),
        (
            [singly("a", 0, 30, features=insulated(1, 2)), singly("b", 30, 60, features=insulated(40))],
            ("segments", 0, "features"),
            4,
        ),
    ],
)
def test_more_special_joints_than_joints_in_all_of_it_are_refused(
    segments: list[dict[str, Any]], path: tuple[str | int, ...], most: float, service: Service
) -> None:
    with pytest.raises(RefusedError) as caught:
        orders_of(segments, service)
    (refusal,) = caught.value.refusals
    assert (refusal.path, refusal.value, refusal.maximum) == (path, 6, most)


def test_more_changes_of_section_than_joints_are_refused_where_they_are_told(service: Service) -> None:
    segments = [singly("a", 0, 30), singly("b", 30, 60)]
    segments[1]["new"]["joints"]["section_changes"] = 3
    with pytest.raises(RefusedError) as caught:
        orders_of(segments, service)
    assert [refusal.path for refusal in caught.value.refusals] == [("segments", 1, "new", "joints", "section_changes")]


@pytest.mark.parametrize("cut", [999.0, 1000.0, 1100.0, 1200.0, 1201.0])
def test_a_turnout_is_closed_alike_wherever_the_track_is_cut(cut: float, service: Service) -> None:
    def turnout(begin: float, end: float) -> list[dict[str, Any]]:
        low, high = max(begin, 1000), min(end, 1200)
        return [feet(low, high, kind="turnout")] if low < high else []

    closings = {"tie_in": "joint", "fixed_tie_in": "compromise-joint"}
    whole = orders_of([singly("a", 0, 3900, features=turnout(0, 3900))], service, **closings)
    assert whole["compromise-joints"] == 4
    parts = [singly("a", 0, cut, features=turnout(0, cut)), singly("b", cut, 3900, features=turnout(cut, 3900))]
    assert orders_of(parts, service, **closings) == pytest.approx(whole, rel=1e-9)


def test_a_piece_with_an_insulated_joint_in_it_is_one_though_it_is_cut(service: Service) -> None:
    whole = orders_of([singly("a", 0, 3900, features=[feet(1000, 1020, kind="insulated-joint")])], service)
    assert whole["insulated-joints"] == 2
    parts = [
        singly("a", 0, 1010, features=[feet(1000, 1010, kind="insulated-joint")]),
        singly("b", 1010, 3900, features=[feet(1010, 1020, kind="insulated-joint")]),
    ]
    assert orders_of(parts, service) == pytest.approx(whole, rel=1e-9)
