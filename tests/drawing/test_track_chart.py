"""The track chart: every weld, piece and limit at its station, and nowhere else."""

from __future__ import annotations

from itertools import pairwise
from typing import TYPE_CHECKING

import pytest

from railrules_api.domain.errors import RefusedError
from railrules_api.drawing import track_chart
from railrules_api.drawing.sheet import LEFT, RIGHT
from railrules_api.drawing.stations import MILE, station_text
from railrules_api.drawing.track_bands import LANE, LANES
from tests.drawing.drawn import answered, job_body, marks, tree, words

if TYPE_CHECKING:
    from railrules_api.api.service import Service
    from railrules_api.rules.takeoff.job import Job
    from railrules_api.rules.takeoff.result import TakeoffResult

WELDS = ("junction", "weld", "compromise-weld")


@pytest.fixture(scope="module")
def demo(service: Service) -> tuple[Job, TakeoffResult]:
    given, found, _ = answered(service, "takeoffs", job_body())
    return given, found


def test_sheets_cover_the_job_without_gap(demo: tuple[Job, TakeoffResult]) -> None:
    sheets = track_chart.sheets_of(demo[0], "us")
    assert sheets[0].begin == pytest.approx(12.0 * MILE)
    assert sheets[-1].end >= 20.1 * MILE - 1e-6
    for before, after in pairwise(sheets):
        assert after.begin == pytest.approx(before.end)
    assert all(sheet.end - sheet.begin <= 3.1 * MILE for sheet in sheets)


def test_every_weld_stands_at_its_station(demo: tuple[Job, TakeoffResult]) -> None:
    job, result = demo
    for number, sheet in enumerate(track_chart.sheets_of(job, "us"), start=1):
        root = tree(track_chart.draw(job, result, "us", number))
        for kind in WELDS:
            wanted = sorted(
                (
                    # straight proportion, worked out here and not by the chart's own scale
                    round(LEFT + (weld.station - sheet.begin) / (sheet.end - sheet.begin) * (RIGHT - 2 - LEFT), 3),
                    round(LANES[weld.rail] + LANE / 2 - 1.35, 3),
                )
                for plan in result.rail
                for weld in plan.layout.welds
                if weld.kind == kind and sheet.begin <= weld.station <= sheet.end
            )
            found = sorted(marks(root, kind))
            assert len(found) == len(wanted)
            for one, other in zip(found, wanted, strict=True):
                assert one == pytest.approx(other, abs=2e-3)


def test_every_weld_is_on_some_sheet_with_its_station_in_words(demo: tuple[Job, TakeoffResult]) -> None:
    job, result = demo
    count = len(track_chart.sheets_of(job, "us"))
    said = [word for number in range(1, count + 1) for word in words(tree(track_chart.draw(job, result, "us", number)))]
    for plan in result.rail:
        for weld in plan.layout.welds:
            assert station_text(weld.station, "us") in said


def test_what_a_foreman_looks_for_is_on_the_sheet(demo: tuple[Job, TakeoffResult]) -> None:
    job, result = demo
    said = " | ".join(words(tree(track_chart.draw(job, result, "us", 2))))
    for wanted in ("3.00° left, R 1,910 ft", "Fallow Creek bridge", "signal 16.6", "Train 1: strings 1 to 40", "90RA-A", "115RE"):
        assert wanted in said
    assert f"{result.segments[1].ties:,} ties" in said


def test_the_root_tells_how_many_sheets_there_are(demo: tuple[Job, TakeoffResult]) -> None:
    root = tree(track_chart.draw(*demo, "us", 3))
    assert (root.get("data-sheet"), root.get("data-sheets")) == ("3", "3")


@pytest.mark.parametrize("number", [0, 4])
def test_a_sheet_that_is_not_there_is_refused(demo: tuple[Job, TakeoffResult], number: int) -> None:
    with pytest.raises(RefusedError, match="no such sheet"):
        track_chart.draw(*demo, "us", number)


def test_tracks_have_sheets_of_their_own(service: Service) -> None:
    body = job_body()
    body["segments"][0]["track"] = "main 2"
    given, found, _ = answered(service, "takeoffs", body)
    tracks = [sheet.track for sheet in track_chart.sheets_of(given, "us")]
    assert sorted(set(tracks)) == ["", "main 2"]
    for number, track in enumerate(tracks, start=1):
        said = " ".join(words(tree(track_chart.draw(given, found, "us", number))))
        assert ("Marl Pit to Cinder Road:" in said) == (track == "main 2")


@pytest.mark.parametrize(
    ("station", "system", "text"),
    [
        (13.1 * MILE, "us", "13 mi 528 ft"),
        (14 * MILE - 0.01, "us", "14 mi 0 ft"),
        (21082.4, "si", "21 km 82 m"),
        (-30.0, "si", "-0 km 30 m"),
    ],
)
def test_stations_in_words(station: float, system: str, text: str) -> None:
    assert station_text(station, system) == text  # type: ignore[arg-type]
