"""Whether the plates and bars of an old section serve the new one, over HTTP and in a takeoff."""

from __future__ import annotations

from typing import Any

import pytest
from litestar import Litestar
from litestar.testing import TestClient

from railrules_api.api.service import Service
from railrules_api.catalogue import CatalogueError, load
from tests.catalogue.conftest import Copy
from tests.support.asking import ask
from tests.support.demo import demo_job
from tests.support.sections import COMPATIBILITY, inches, refused


def fits(service: Service, **body: Any) -> dict[str, Any]:
    found: dict[str, Any] = ask(service, COMPATIBILITY, body)["result"]
    return found


def test_a_wider_base_means_new_plates_and_says_why(service: Service) -> None:
    found = fits(service, old_section="115RE", new_section="136RE")
    assert not found["old_plates_serve"]
    assert found["plate_plan"] == "new-plates"
    assert "wider than the old plates' shoulders" in found["notes"][0]
    assert "6.000 in (152.4 mm)" in found["notes"][0]
    assert found["checks"] == []


def test_a_narrower_base_is_not_held(service: Service) -> None:
    found = fits(service, old_section="136RE", new_section="115RE", plates="reused")
    assert [check["verdict"] for check in found["checks"]] == ["passes", "fails"]
    assert "narrower" in found["notes"][0]


def test_the_plates_own_table_decides_where_it_is_known(service: Service) -> None:
    # 8-14 takes bases to 5 1/2 in
    found = fits(service, old_section="90RA-A", new_section="115RE", old_plate="8-14", plates="reused")
    assert found["old_plates_serve"]
    assert found["plate_plan"] == "keep-old-plates"
    assert fits(service, old_section="90RA-A", new_section="115RE", old_plate="8-14", plates="new")["plate_plan"] == (
        "new-plates-by-choice"
    )


def test_what_is_not_known_gives_no_verdict(service: Service) -> None:
    found = fits(service, old_height=inches(7), new_height=inches(7), old_base_width=inches(6), new_base_width=inches(6))
    assert "same_joint_bars" not in found
    assert "compromise_joint" not in found
    assert set(found["not_known"]) == {"fishing_height", "head_fishing_angle", "base_fishing_angle", "drilling"}


def test_contradicting_plates_are_refused(http: TestClient[Litestar]) -> None:
    body = {
        "old_section": "115RE",
        "new_section": "136RE",
        "old_plate_base_least": inches(6),
        "old_plate_base_most": inches(5),
    }
    assert refused(http, "/v1/section-compatibility", body)["pointer"] == "/old_plate_base_least"


@pytest.mark.parametrize(("plates", "verdicts"), [("reused", {"fails", "passes"}), ("new", set())])
def test_the_takeoff_asks_whether_the_old_plates_serve(plates: str, verdicts: set[str], service: Service) -> None:

    body = demo_job()
    segment = body["segments"][0]
    segment["new"]["plates"] = plates
    del segment["old"]["plate"]  # its table takes bases to 5 1/2 in, the old rail has 5 1/8
    body["segments"] = [segment]
    body.pop("prices", None)  # they price the old plates by weight, which is not known now
    found = ask(service, "takeoffs", body)["result"]
    checks = [item["check"] for item in found["checks"] if item["rule"] == COMPATIBILITY]
    assert {check["verdict"] for check in checks} == verdicts
    assert any("wider than the old plates' shoulders" in note for note in found["segments"][0]["notes"])
    assert any("run it off over 31.00 ft" in note for note in found["segments"][0]["notes"])


def test_a_drilling_that_cannot_be_read_stops_the_start(tmp_path: Any) -> None:
    copy = Copy(tmp_path / "data")
    copy.cell("rail_sections.csv", "136RE", "drilling", "six inches apart")
    with pytest.raises(CatalogueError, match="is not of the form"):
        load(copy.directory)
