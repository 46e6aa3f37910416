"""Answering whole jobs, and cutting their segments up, for the tests of the takeoff."""

from __future__ import annotations

import json
import math
from dataclasses import replace
from functools import cache
from itertools import pairwise
from typing import Any

import pytest

from railrules_api.api.replying import bind
from railrules_api.api.resources import calculation_of
from railrules_api.api.service import Service, start
from railrules_api.rules.takeoff.job import Job, JobFeature, Segment
from railrules_api.rules.takeoff.result import Done
from railrules_api.rules.takeoff.takeoff import RULE, take_off


@cache
def started() -> Service:
    """Return a service that is not an argument of the test: hypothesis would print it whole beside a case that fails."""
    return start()


def bound(body: dict[str, Any], service: Service) -> Job:
    given: Job = bind(calculation_of(RULE.id), json.dumps(body).encode(), service).given
    return given


def done(body: dict[str, Any], service: Service) -> Done:
    return take_off(bound(body, service), service.terms(service.house))


def part(segment: Segment, begin: float, end: float) -> Segment:
    """Return what of a segment lies between two stations; curves and long objects that reach over them are cut too."""

    def inside(feature: JobFeature) -> JobFeature | None:
        if feature.end is None:
            return feature if begin <= feature.begin < end else None
        if feature.end <= begin or feature.begin >= end:
            return None
        return replace(feature, begin=max(feature.begin, begin), end=min(feature.end, end))

    return replace(
        segment,
        name=f"{segment.name} from {begin}",
        begin=begin,
        end=end,
        curves=tuple(
            replace(curve, begin=max(curve.begin, begin), end=min(curve.end, end))
            for curve in segment.curves
            if curve.begin < end and curve.end > begin
        ),
        left_out=tuple(
            replace(span, begin=max(span.begin, begin), end=min(span.end, end))
            for span in segment.left_out
            if span.begin < end and span.end > begin
        ),
        features=tuple(found for feature in segment.features if (found := inside(feature)) is not None),
        begin_closing=segment.begin_closing if begin == segment.begin else None,
        end_closing=segment.end_closing if end == segment.end else None,
    )


def cut(segment: Segment, stations: list[float]) -> tuple[Segment, ...]:
    """Cut a segment at any stations within it."""
    return tuple(part(segment, *limits) for limits in pairwise([segment.begin, *stations, segment.end]))


def netted(found: Done) -> dict[str, float]:
    return {f"{order.item} {order.product}": order.net.value for order in found.result.orders}


def worked(found: Done) -> dict[str, float]:
    return {operation.operation: operation.amount.value for operation in found.result.work.operations}


Cut = tuple[float, str, float]
"""Where a segment is cut: how far along it or how many-th of what stands in it, beside what, and by how much [m]."""


def stations_of(segment: Segment, cuts: list[Cut]) -> list[float]:
    """Return the stations of some cuts, in order; parts are a stretch of track, not less than the counting tells from nothing."""
    spacing, origin = segment.ties.spacing, segment.ties.origin
    assert spacing is not None
    standing = [(feature.begin, feature.end) for feature in segment.features]
    standing += [(span.begin, span.end) for span in segment.left_out]
    limits = [station for ends in standing for station in ends if station is not None]
    found = [segment.begin, segment.end]
    for share, place, away in cuts:
        station = segment.begin + share * (segment.end - segment.begin)
        if place == "at a tie":
            station = origin + math.ceil((station - origin) / spacing) * spacing
        elif place == "at an object" and limits:
            station = limits[int(share * len(limits))]
        elif place == "beside an object" and limits:
            station = limits[int(share * len(limits))] + away
        if all(abs(station - other) > 1e-3 for other in found) and segment.begin < station < segment.end:
            found.append(station)
    return sorted(found)[1:-1]


def assert_the_same(one: Done, other: Done) -> None:
    """Hold what is found of a job against what is found of the same job cut up."""
    assert netted(other) == pytest.approx(netted(one), rel=1e-9, abs=1e-6)
    assert worked(other) == pytest.approx(worked(one), rel=1e-9, abs=1e-6)
    assert sum(segment.ties for segment in other.result.segments) == sum(segment.ties for segment in one.result.segments)
    assert sum(segment.anchors for segment in other.result.segments) == sum(segment.anchors for segment in one.result.segments)
    # orders come as their items first appear, and a part may begin with less than its segment does
    again = {(order.item, order.product): order for order in other.result.orders}
    assert len(again) == len(one.result.orders)
    for order in one.result.orders:
        same = again[order.item, order.product]
        assert same.packages == order.packages
        assert (same.net_mass is None) == (order.net_mass is None)
        assert same.net_mass is None or same.net_mass == pytest.approx(order.net_mass, rel=1e-9, abs=1e-6)
