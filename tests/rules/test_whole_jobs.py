"""The takeoff as a whole: its lines are those of the rules asked alone, however the line is cut and in whatever units."""

from __future__ import annotations

import math
from collections import defaultdict
from itertools import pairwise
from typing import Any

import pytest

from railrules_api.api.problems import ProblemError
from railrules_api.api.service import Service
from railrules_api.domain.amounts import Amount
from railrules_api.domain.counting import round_up
from railrules_api.domain.kinds import Kind
from railrules_api.rules.quantities import anchors, string_layout, work_plan
from railrules_api.rules.takeoff.job import Job, Segment
from railrules_api.rules.takeoff.parts import parts_of, rails_of
from railrules_api.rules.takeoff.rail import groups_of
from railrules_api.rules.takeoff.segments import questions
from railrules_api.rules.takeoff.takeoff import RULE, take_off
from railrules_api.units import UNITS
from tests.rules.laying_help import verify
from tests.rules.whole_job_help import bound, done
from tests.support.asking import ask, body_of
from tests.support.demo import demo_job
from tests.support.random_jobs import random_job

SEEDS = range(12)
EXACT = 1e-12


def si(found: dict[str, Any]) -> tuple[float, Kind | None]:
    """Return an amount of an answer as the rules have it."""
    if found["unit"] == "each":
        return found["value"], None
    kind = next(kind for kind in (Kind.LENGTH, Kind.AREA, Kind.VOLUME, Kind.MASS) if found["unit"] in UNITS[kind])
    return UNITS[kind][found["unit"]].to_si(found["value"]), kind


# ---------------------------------------------------------------- every line is the line asked for alone


def bodies() -> list[Any]:
    made = [pytest.param(random_job(seed), id=f"made up by {seed}") for seed in SEEDS]
    return [pytest.param(demo_job(), id="demo"), *made]


@pytest.mark.parametrize("body", bodies())
def test_every_line_of_a_job_is_the_line_asked_for_alone(body: dict[str, Any], service: Service) -> None:
    answered = done(body, service)
    lines = iter(answered.result.lines)
    weighed = {given["item"] for given in body.get("masses", ())}
    compared = 0
    for working in answered.workings:
        expected = getattr(working.found, "lines", ())
        alone = ask(service, working.rule.id, {**body_of(working.given), "units": "si"})["result"]
        assert len(alone.get("lines", [])) == len(expected)
        for line, found in zip(expected, alone.get("lines", []), strict=True):
            in_bill = next(lines)
            assert (in_bill.of, in_bill.rule) == (working.of, working.rule.id)
            assert (in_bill.item, in_bill.net) == (line.item, line.net)
            assert in_bill.mass == line.mass or (line.mass is None and line.item in weighed)
            value, kind = si(found["net"])
            assert (found["item"], kind) == (line.item, line.net.kind)
            assert value == pytest.approx(line.net.value, rel=EXACT, abs=0.0)
            assert ("mass" in found) == (line.mass is not None)
            if line.mass is not None:
                assert si(found["mass"])[0] == pytest.approx(line.mass, rel=EXACT, abs=0.0)
            compared += 1
    assert next(lines, None) is None, "a line of the bill that no rule has given"
    assert compared > 15


@pytest.mark.parametrize("body", bodies())
def test_every_layout_of_a_job_holds_before_the_verifier(body: dict[str, Any], service: Service) -> None:
    answered = done(body, service)
    laid = [working for working in answered.workings if working.rule is string_layout.RULE]
    assert len(laid) == len(answered.result.rail)
    for working, plan in zip(laid, answered.result.rail, strict=True):
        assert working.found == plan.layout
        verify(working.given, plan.layout)
        # what is hauled is what is laid, train by train
        assert [load.first_string for load in plan.trains.loads][:1] == [1]
        assert sum(load.strings for load in plan.trains.loads) == plan.layout.strings == plan.supply.strings
        assert all(one.last_string + 1 == other.first_string for one, other in pairwise(plan.trains.loads))
        welds = plan.supply.junctions + plan.supply.tie_ins + plan.supply.compromise_welds
        assert welds == len(plan.layout.welds) == plan.supply.field_welds


@pytest.mark.parametrize("seed", SEEDS)
def test_orders_are_the_lines_added_up_and_rounded_once(seed: int, service: Service) -> None:
    answered = done(random_job(seed), service)
    terms = service.terms(service.house)
    totals: dict[tuple[str, Kind | None], list[float]] = defaultdict(list)
    for line in answered.result.lines:
        totals[line.item, line.net.kind].append(line.net.value)
    orders: dict[tuple[str, Kind | None], list[float]] = defaultdict(list)
    for order in answered.result.orders:
        orders[order.item, order.net.kind].append(order.net.value)
        if order.direction == "order" and order.item in terms and order.net.kind is None:
            assert order.order.value == round_up(order.net.value * (1.0 + order.allowance))
        if order.direction != "order":
            assert order.order == order.net
    assert {item: math.fsum(values) for item, values in orders.items()} == pytest.approx(
        {item: math.fsum(values) for item, values in totals.items()}, rel=EXACT
    )


# ---------------------------------------------------------------- units


US = {
    "m": "ft", "m2": "in2", "m3": "gal", "kg": "lb", "kg_per_m": "lb_per_yd", "N": "lbf", "N_per_m": "lbf_per_in", "Pa": "psi",
    "K": "degF", "rad": "deg", "s": "h", "m2_per_m3": "ft2_per_gal", "kg_per_m3": "lb_per_ft3", "per_K": "per_degF",
    "delta_K": "delta_degF", "m4": "in4",
}  # fmt: skip


def in_us_units(tree: Any) -> Any:
    """Return a request body with every SI unit exchanged for one of the trade's."""
    if isinstance(tree, list):
        return [in_us_units(item) for item in tree]
    if not isinstance(tree, dict):
        return tree
    if set(tree) == {"value", "unit"} and tree["unit"] != "each":
        kind = next(kind for kind in UNITS if tree["unit"] in UNITS[kind] and US[tree["unit"]] in UNITS[kind])
        other = UNITS[kind][US[tree["unit"]]]
        return {"value": other.from_si(UNITS[kind][tree["unit"]].to_si(tree["value"])), "unit": other.code}
    return {key: in_us_units(value) for key, value in tree.items()}


def figures(tree: Any, path: str = "") -> dict[str, float]:
    """Return the numbers of an answer by where they stand."""
    if isinstance(tree, dict):
        return {name: figure for key, value in tree.items() for name, figure in figures(value, f"{path}/{key}").items()}
    if isinstance(tree, list):
        return {name: figure for key, value in enumerate(tree) for name, figure in figures(value, f"{path}/{key}").items()}
    return {path: tree} if isinstance(tree, (int, float)) else {}


@pytest.mark.parametrize("seed", SEEDS)
def test_units_of_the_request_do_not_matter(seed: int, service: Service) -> None:
    body = body_of(bound(random_job(seed), service))
    one, other = (ask(service, RULE.id, {**tree, "units": "si"}) for tree in (body, in_us_units(body)))
    totals, same = ({(order["item"], order["product"]): order for order in answer["result"]["orders"]} for answer in (one, other))
    assert totals.keys() == same.keys()
    for key, order in totals.items():
        assert same[key]["net"]["value"] == pytest.approx(order["net"]["value"], rel=EXACT, abs=1e-9), key
        assert same[key].get("packages") == order.get("packages"), key
        assert same[key]["order"]["value"] == pytest.approx(order["order"]["value"], rel=EXACT, abs=1e-9), key
    work, same_work = (figures(answer["result"]["work"]) for answer in (one, other))
    assert same_work == pytest.approx(work, rel=EXACT)
    verdicts, same_verdicts = (
        sorted((item["of"], item["check"]["code"], item["check"]["verdict"]) for item in answer["result"]["checks"])
        for answer in (one, other)
    )
    assert same_verdicts == verdicts


@pytest.mark.parametrize("seed", SEEDS)
def test_old_anchors_go_back_in_wherever_they_come_from_and_never_twice(seed: int, service: Service) -> None:
    body = random_job(seed)
    for segment in body["segments"]:
        segment["new"]["section"], segment["new"]["plate"] = "115RE", "8-14"
        segment["old"]["recovered_share"] = 1.0
    found = {order.item: order.net.value for order in done(body, service).result.orders}
    for segment in body["segments"]:
        segment["new"]["anchors_reapplied_share"] = 0.0
    none = {order.item: order.net.value for order in done(body, service).result.orders}
    shares = [segment["new"]["anchors_reapplied_share"] for segment in random_job(seed)["segments"]]
    lines = done(body, service).result.lines
    off = [
        math.fsum(line.net.value for line in lines if (line.of, line.item) == (segment["name"], "salvage-anchors"))
        for segment in body["segments"]
    ]
    again = min(none["anchors"], math.fsum(share * count for share, count in zip(shares, off, strict=True)))
    assert found.get("anchors-reapplied", 0.0) == pytest.approx(again, rel=EXACT)
    assert found["anchors"] == pytest.approx(none["anchors"] - again, rel=EXACT, abs=1e-9)
    assert found["salvage-anchors"] == pytest.approx(none["salvage-anchors"] - again, rel=EXACT, abs=1e-9)


# ---------------------------------------------------------------- zones


def zones_by_hand(job: Job, track: str | None) -> list[tuple[float, float, str]]:
    """Return where features of a track ask for boxed ties or for none, from what each kind asks for."""
    found = []
    for segment in job.segments:
        for feature in segment.features:
            if segment.track != track:
                continue
            end = feature.begin if feature.end is None else feature.end
            reach = feature.rule.approach_length
            found += [(feature.begin - reach, feature.begin, "boxed"), (end, end + reach, "boxed")]
            if feature.rule.within != "as-adjoining":
                found.append((feature.begin, end, feature.rule.within))
    return [zone for zone in found if zone[1] > zone[0]]


def anchors_by_hand(job: Job, segment: Segment) -> int:
    """Count the anchors of a segment tie by tie; a tie carries them once, however many zones it stands in."""
    zones = zones_by_hand(job, segment.track)
    skipped = [(f.begin, f.end) for f in segment.features if f.end is not None and not f.rule.ties_through]
    skipped += [(span.begin, span.end) for span in segment.left_out]
    spacing, origin, every = segment.ties.spacing, segment.ties.origin, segment.new.anchors.boxed_every
    assert spacing is not None
    if segment.new.elastic_fasteners:
        return 0
    held = 0
    for number in range(math.ceil((segment.begin - origin) / spacing) - 1, math.ceil((segment.end - origin) / spacing) + 1):
        station = origin + number * spacing
        if not segment.begin <= station < segment.end or any(begin <= station < end for begin, end in skipped):
            continue
        asked = {kind for begin, end, kind in zones if begin <= station < end}
        if "none" not in asked and ("boxed" in asked or (every is not None and number % every == 0)):
            held += 2
    return held * len(rails_of(segment))


@pytest.mark.parametrize("seed", range(40))
def test_overlapping_zones_are_never_counted_twice(seed: int, service: Service) -> None:
    body = random_job(seed, 6, singly=0.0)
    for segment in body["segments"]:
        if segment["new"].get("anchor_pattern", "").startswith("jointed"):
            segment["new"]["anchor_pattern"] = "box-every-third-tie"
        # objects close to each other, whose approaches overlap and reach over the limits of segments
        begin = segment["begin"]["value"]
        near = [("bolted-joint", 3.7), ("road-crossing", 21.3), ("open-deck-bridge", 40.1), ("end-of-cwr", 97.9)]
        segment["features"] = [
            {"kind": kind, "begin": {"value": begin + at, "unit": "m"}}
            | ({} if "joint" in kind or "end" in kind else {"end": {"value": begin + at + 11.0, "unit": "m"}})
            for kind, at in near
        ] + [feature for feature in segment.get("features", ()) if feature["begin"]["value"] > begin + 120.0]
    job = bound(body, service)
    # strings are not what is counted here, and objects so close leave no room for them
    counted: dict[str, int] = {}
    for part in parts_of(job):
        found: dict[str, Any] = {}
        for question in questions(part, found):
            found[question.rule.id] = question.rule.evaluate(question.given)
        counted[part.segment.name] = found[anchors.RULE.id].anchors
        used = found[anchors.RULE.id].zones
        assert all(one.end <= other.begin for one, other in pairwise(used))
    assert counted == {segment.name: anchors_by_hand(job, segment) for segment in job.segments}


# ---------------------------------------------------------------- work and hauling


@pytest.mark.parametrize("seed", SEEDS)
def test_work_and_loads_of_a_job_are_those_of_its_parts(seed: int, service: Service) -> None:
    answered = done(random_job(seed), service)
    result = answered.result
    parts = [working.found for working in answered.workings if working.rule.id == "quantities.work-per-tie"]
    assert len(parts) == len(result.segments)
    for position, operation in enumerate(result.work.operations):
        assert operation.amount.value == pytest.approx(math.fsum(part.operations[position].amount.value for part in parts))
    assert [operation.operation for operation in result.work.operations] == list(work_plan.TITLES)
    assert result.work.governing in {"drive-spikes", "set-rail"}
    assert result.work.days == max(operation.days for operation in result.work.operations if operation.days is not None)
    assert result.hauled_in.mass == pytest.approx(result.mass_in, rel=EXACT)
    assert result.hauled_out.mass == pytest.approx(result.mass_out, rel=EXACT)
    assert {*result.hauled_in.without_mass, *result.hauled_out.without_mass} == set(result.without_mass)
    truck = next(vehicle for vehicle in result.hauled_out.mixed if vehicle.vehicle == "truck")
    assert truck.loads == math.ceil(result.mass_out / 20_000)
    carried = [item for item in result.hauled_in.goods if any(entry.vehicle == "gondola" for entry in item.loads)]
    assert {item.item for item in carried} <= {"tie-plates"}


def test_without_rates_and_vehicles_there_is_no_time_and_no_load(service: Service) -> None:
    body = random_job(3)
    del body["production"], body["hauling"]
    result = done(body, service).result
    assert (result.work.time, result.work.governing, result.hauled_in.mixed) == (None, None, ())
    assert any(operation.per_tie.value for operation in result.work.operations)
    assert all(item.loads == () for item in result.hauled_in.goods)


@pytest.mark.parametrize(
    ("change", "pointer"),
    [
        ({"hauling": {"vehicles": [{"name": "truck", "capacity": {"value": 1, "unit": "t"}, "items": ["plates"]}]}}, "/hauling"),
        ({"hauling": {"vehicles": [{"name": "a", "capacity": {"value": 1, "unit": "t"}}] * 2}}, "/hauling/vehicles/1/name"),
        (
            {"production": {"rates": [{"operation": "set-rail", "done": {"value": 1, "unit": "each"},
             "time": {"value": 1, "unit": "h"}, "crews": 1}]}},
            "/production/rates/0/done",
        ),
    ],
)  # fmt: skip
def test_refusals_of_work_and_hauling_name_the_field(change: dict[str, Any], pointer: str, service: Service) -> None:
    with pytest.raises(ProblemError) as caught:
        ask(service, RULE.id, {**random_job(1), **change})
    assert caught.value.faults[0].pointer.startswith(pointer)


# ---------------------------------------------------------------- masses that the job gives


def kilograms(value: float) -> dict[str, Any]:
    return {"value": value, "unit": "kg"}


def test_masses_of_the_job_go_into_totals_tons_and_prices(service: Service) -> None:
    body = random_job(2)
    body["segments"][0]["renewed_share"] = 0.5
    before = done(body, service).result
    assert "cross-ties" in before.without_mass
    body["masses"] = [
        {"item": "cross-ties", "mass_each": kilograms(100)},
        {"item": "preservative", "density": {"value": 1000, "unit": "kg_per_m3"}},
    ]
    body["prices"] = {"currency": "USD", "decimals": 2, "items": [{"item": "cross-ties", "price": "200.00", "per": "t"}]}
    after = done(body, service).result
    orders = {order.item: order for order in after.orders}
    ties = orders["cross-ties"]
    assert ties.order_mass == pytest.approx(100.0 * ties.order.value, rel=EXACT)
    assert ties.net_mass == pytest.approx(100.0 * ties.net.value, rel=EXACT)
    brushed = [order for order in after.orders if order.item == "preservative"]
    for order in brushed:
        assert order.net_mass == pytest.approx(1000.0 * order.net.value, rel=EXACT)
    assert "cross-ties" not in after.without_mass
    added = math.fsum(order.order_mass or 0.0 for order in (*brushed, ties))
    assert after.mass_in == pytest.approx(before.mass_in + added, rel=EXACT)
    assert after.money is not None
    assert float(after.money.cost) == pytest.approx(20.0 * ties.order.value, abs=0.005)


@pytest.mark.parametrize(
    ("masses", "pointer"),
    [
        ([{"item": "cross-ties"}], "/masses/0/mass_each"),
        (
            [{"item": "cross-ties", "mass_each": kilograms(1), "density": {"value": 900, "unit": "kg_per_m3"}}],
            "/masses/0/mass_each",
        ),
        ([{"item": "preservative", "mass_each": kilograms(1)}], "/masses/0/mass_each"),
        ([{"item": "cross-ties", "density": {"value": 900, "unit": "kg_per_m3"}}], "/masses/0/density"),
        ([{"item": "cross ties", "mass_each": kilograms(1)}], "/masses/0/item"),
        ([{"item": "spikes", "mass_each": kilograms(1)}], "/masses/0/item"),
        ([{"item": "rail-bonds", "mass_each": kilograms(1)}] * 2, "/masses/1/item"),
    ],
)
def test_refusals_of_masses_name_the_field(masses: list[dict[str, Any]], pointer: str, service: Service) -> None:
    with pytest.raises(ProblemError) as caught:
        ask(service, RULE.id, {**random_job(2), "masses": masses})
    assert [fault.pointer for fault in caught.value.faults] == [pointer]


# ---------------------------------------------------------------- checks and joints of a job


def test_sound_ties_are_checked_by_class_on_straight_track_and_in_sharp_curves(service: Service) -> None:
    body = demo_job()
    for segment in body["segments"]:
        segment |= {"track_class": 4, "sound_ties": 12, "sound_ties_in_curves": 13}
    checks = [entry for entry in done(body, service).result.checks if entry.check.code == "sound-ties"]
    found = {(entry.of, entry.check.verdict, entry.check.demand) for entry in checks}
    assert ("Marl Pit to Cinder Road", "passes", Amount(12.0)) in found
    assert ("Marl Pit to Cinder Road", "fails", Amount(14.0)) in found
    # all of this segment lies in a curve of 6 degrees
    assert [entry.check.verdict for entry in checks if entry.of == "Long Reach curve, high rail"] == ["fails"]
    # and this one has no curve at all
    assert [entry.check.verdict for entry in checks if entry.of == "Long Reach to Osier Yard"] == ["passes"]


def test_joints_left_in_welded_rail_are_counted_with_their_parts(service: Service) -> None:
    body = demo_job()
    body["supply"] |= {"fixed_tie_in": "joint", "joints": {"joint_bar": "115RE-36", "bonds_per_joint": 1}}
    result = done(body, service).result
    orders = {order.item: order.order.value for order in result.orders}
    (left,) = [plan.joints for plan in result.rail]
    assert left is not None
    assert orders["insulated-joints"] == 2
    # the turnout keeps its rail, a joint at each end of it on each rail; two more at the end of welded rail
    assert left.joints == 2 + 4 + 2
    assert orders["joint-bars"] == 2 * 6
    assert orders["track-bolts"] == 6 * 6
    assert orders["rail-bonds"] == 6
    del body["supply"]["joints"]
    (left,) = [plan.joints for plan in done(body, service).result.rail]
    assert left is not None
    assert "6 plain joints are not counted" in left.notes[0]


def test_500_segments_are_answered(service: Service) -> None:
    result = done(random_job(7, 500), service).result
    assert len(result.segments) == 500
    assert all(order.net.value >= 0.0 for order in result.orders)


def test_a_plug_and_a_part_left_out_each_break_the_rail_their_own_way(service: Service) -> None:
    body = demo_job()
    segment = body["segments"][3]  # tangent, both rails, 17.4 to 20.1 miles
    plug = {"kind": "insulated-joint", "begin": {"value": 18.0, "unit": "mi"}, "end": {"value": 18.01, "unit": "mi"}}
    gap = {"begin": {"value": 19.0, "unit": "mi"}, "end": {"value": 19.5, "unit": "mi"}}
    segment |= {"features": [plug], "left_out": [gap], "begin_closing": "weld", "end_closing": "joint"}
    body["segments"] = [segment]
    body["supply"]["tie_in"] = "compromise-weld"
    (group,) = groups_of(bound(body, service))
    told = [
        (run.rail, round(run.begin / 1609.344, 9), round(run.end / 1609.344, 9), run.begin_closing, run.end_closing)
        for run in group.runs
    ]
    # the insulated plug is of the new section and welded in; a part left out keeps the old rail, tied in as the supply says
    assert told == [
        (rail, *run)
        for rail in ("left", "right")
        for run in (
            (17.4, 18.0, "weld", "weld"),
            (18.01, 19.0, "weld", "compromise-weld"),
            (19.5, 20.1, "compromise-weld", "joint"),
        )
    ]


def test_without_a_catalogue_every_item_is_ordered_as_it_is_counted(service: Service) -> None:
    body = demo_job()
    for name in ("allowances", "packaging", "prices", "hauling", "masses"):
        body.pop(name, None)
    job = bound(body, service)
    alone, known = RULE.evaluate(job), take_off(job, service.terms(service.house)).result
    assert alone.lines == known.lines
    nets = {(order.item, order.product): order.net.value for order in known.orders}
    assert {(order.item, order.product): order.net.value for order in alone.orders} == nets
    assert {(order.title == order.item, order.direction, order.allowance) for order in alone.orders} == {(True, "order", 0.0)}
