"""Drawings of rail sections over HTTP, their versions, and the data they are drawn from."""

from __future__ import annotations

import importlib
import io
from typing import Any
from xml.etree import ElementTree as ET

import pytest
from litestar import Litestar
from litestar.testing import TestClient

from railrules_api.api.profile_pages import DXF, JSON, MEDIA_TYPES, SVG
from railrules_api.api.service import Service
from railrules_api.catalogue import CatalogueError, load
from railrules_api.catalogue.profiles import read_profiles
from tests.catalogue.conftest import Copy
from tests.support.sections import PROFILE


@pytest.mark.parametrize("name", read_profiles())
def test_every_profile_is_drawn(name: str, http: TestClient[Litestar]) -> None:
    answer = http.get(f"/v1/rail-sections/{name}/profile", headers={"accept": SVG})
    assert answer.status_code == 200
    assert ET.fromstring(answer.text).tag.endswith("svg")


def test_the_form_follows_accept(http: TestClient[Litestar]) -> None:
    for accept, kind in (("*/*", SVG), ("image/*", SVG), (JSON, JSON), (DXF, DXF)):
        answer = http.get(PROFILE, headers={"accept": accept})
        assert answer.status_code == 200
        assert answer.headers["content-type"].partition(";")[0] == kind
        assert "accept" in answer.headers["vary"].lower()
    refusal = http.get(PROFILE, headers={"accept": "text/html"})
    assert refusal.status_code == 406
    assert all(form in refusal.json()["detail"] for form in MEDIA_TYPES)


def test_the_policy_names_the_style_of_the_drawing(http: TestClient[Litestar]) -> None:
    import base64  # noqa: PLC0415
    import hashlib  # noqa: PLC0415

    answer = http.get(PROFILE)
    style = answer.text.partition("<style>")[2].partition("</style>")[0]
    digest = base64.b64encode(hashlib.sha256(style.encode()).digest()).decode()
    assert answer.headers["content-security-policy"] == f"default-src 'none'; style-src 'sha256-{digest}'; frame-ancestors 'none'"
    assert answer.text.count(" style=") == 0


def test_points_keep_within_the_chord_error(http: TestClient[Litestar], service: Service) -> None:
    counts = []
    for error in (0.05, 0.001):
        found = http.get(f"{PROFILE}?chord_error={error}", headers={"accept": JSON}).json()
        assert found["chord_error"] == {"value": error, "unit": "in"}
        assert found["version"] == service.catalogue.version
        counts.append(len(found["points"]))
        corners = [(point["x"], point["y"]) for point in found["points"]]
        following = [*corners[1:], corners[0]]
        area = sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(corners, following, strict=True)) / 2
        # no point of the outline lies farther from the polygon than the error
        assert area == pytest.approx(13.3172, abs=error * 27.7)
    assert counts[0] < counts[1]
    millimetres = http.get(f"{PROFILE}?units=si", headers={"accept": JSON}).json()
    assert millimetres["unit"] == "mm"
    assert max(point["y"] for point in millimetres["points"]) <= 185.7375 + 1e-6


def test_every_group_of_measures_tells_its_place(http: TestClient[Litestar], service: Service) -> None:
    found = http.get(PROFILE, headers={"accept": JSON}).json()
    assert [origin["group"] for origin in found["origins"]] == ["overall", "head", "web", "base"]
    assert {origin["cite"]["source"] for origin in found["origins"]} <= set(service.catalogue.sources)
    assert found["measures"]["height"] == {"value": pytest.approx(7.3125), "unit": "in"}


def test_wear_is_laid_over_the_new_section(http: TestClient[Litestar]) -> None:
    drawing = http.get(f"{PROFILE}?vertical_wear=0.375&face_wear=0.25&face_angle=20&face_side=right").text
    assert 'class="lost"' in drawing
    assert "worn section over the new one" in drawing
    outline = http.get(f"{PROFILE}?face_wear=6&units=si", headers={"accept": JSON}).json()
    assert min(point["x"] for point in outline["worn"] if point["y"] > 170) > min(
        point["x"] for point in outline["points"] if point["y"] > 170
    )


@pytest.mark.parametrize(
    ("query", "reason"),
    [
        ("vertical_wear=3", "deeper than the head"),
        ("vertical_wear=-1", "a number of in"),
        ("vertical_wear=nan", "a number of in"),
        ("vertical_wear=a", "a number of in"),
        ("face_wear=2", "middle of the head"),
        ("face_wear=0.2&face_angle=75", "face_angle: outside its limits"),
        ("face_angle=10", "need face_wear"),
        ("face_wear=0.1&face_side=top", "face_side"),
        ("chord_error=0", "chord_error"),
        ("chord_error=3", "chord_error"),
        ("units=furlongs", "units"),
        ("colour=red", "unknown query parameter"),
    ],
)
def test_bad_queries_are_refused(query: str, reason: str, http: TestClient[Litestar]) -> None:
    answer = http.get(f"{PROFILE}?{query}", headers={"accept": JSON})
    assert answer.status_code == 400
    assert reason in answer.json()["detail"]


def test_sections_without_a_profile(http: TestClient[Litestar]) -> None:
    known = http.get("/v1/rail-sections/CR104/profile")
    assert known.status_code == 404
    assert "drawing is not known" in known.json()["detail"]
    assert "near: 136RE" in http.get("/v1/rail-sections/136-RE/profile").json()["detail"]


def test_dxf_opens_and_is_the_same_each_time(http: TestClient[Litestar]) -> None:
    ezdxf = importlib.import_module("ezdxf")
    first, second = (http.get(f"{PROFILE}?vertical_wear=0.2", headers={"accept": DXF}) for _ in range(2))
    assert first.content == second.content
    document = ezdxf.read(io.StringIO(first.text))
    assert document.dxfversion == "AC1009"
    assert {"136RE", "136RE-WORN"} <= {layer.dxf.name for layer in document.layers}
    assert document.audit().errors == []


def test_without_the_library_dxf_is_not_acceptable(http: TestClient[Litestar], monkeypatch: pytest.MonkeyPatch) -> None:
    def missing(*_: object) -> str:
        raise ImportError

    monkeypatch.setattr("railrules_api.api.profile_pages.profile_dxf", missing)
    answer = http.get(PROFILE, headers={"accept": DXF})
    assert answer.status_code == 406
    assert "no library" in answer.json()["detail"]


@pytest.mark.parametrize("name", ["115RE", "136RE", "136TW", "ASCE85", "60E1", "R65", "AS60"])
def test_dxf_spans_the_height_and_the_base_of_its_section(name: str, http: TestClient[Litestar]) -> None:
    ezdxf, boxes = importlib.import_module("ezdxf"), importlib.import_module("ezdxf.bbox")
    document = ezdxf.read(io.StringIO(http.get(f"/v1/rail-sections/{name}/profile", headers={"accept": DXF}).text))
    size = boxes.extents(document.modelspace(), fast=False).size
    measures = read_profiles()[name].parameters
    # millimetres
    assert (size.x, size.y) == pytest.approx((1000 * measures.base_width, 1000 * measures.height), abs=1e-6)


@pytest.mark.parametrize("path", [PROFILE, "/v1/rail-sections/136RE", "/v1/rail-sections?standard=AREMA", "/v1/spikes"])
def test_an_address_with_the_version_is_kept_for_ever(path: str, http: TestClient[Litestar], service: Service) -> None:
    plain = http.get(path)
    assert "immutable" not in plain.headers["cache-control"]
    again = http.get(path, headers={"if-none-match": plain.headers["etag"]})
    assert (again.status_code, again.content) == (304, b"")
    version = service.catalogue.version
    joint = "&" if "?" in path else "?"
    for written in (version, version.replace("+", "%2B")):
        kept = http.get(f"{path}{joint}version={written}")
        assert kept.headers["cache-control"] == "public, max-age=31536000, immutable"
        assert kept.content == plain.content
    gone = http.get(f"{path}{joint}version=2019.1")
    assert gone.status_code == 404
    assert version in gone.json()["detail"]


@pytest.mark.parametrize(
    ("before", "after", "reason"),
    [
        ('id = "115RE"\n', 'id = "115XX"\n', "has no row in rail_sections.csv"),
        ("web_thickness = 0.625\n", "web_thickness = 5.625\n", "115RE"),
        ('profiles = ["115RE", ', "profiles = [", "stands in no [[density]] block"),
        ("value = 7.84\n", "value = 7.84\nunit = 3\n", "unknown column"),
        ('source = "mill-catalogue-properties"\n', 'source = "hearsay"\n', "'hearsay' is not in sources.toml"),
        ('profiles = ["49E1", ', 'profiles = ["115RE", "49E1", ', "has a density already"),
    ],
)
def test_a_bad_profile_stops_the_start(before: str, after: str, reason: str, tmp_path: Any) -> None:
    copy = Copy(tmp_path / "data")
    copy.replace("rail_profiles.toml", before, after)
    with pytest.raises(CatalogueError) as caught:
        load(copy.directory)
    assert "rail_profiles.toml" in str(caught.value)
    assert reason in str(caught.value)
