"""Rail sections over HTTP: properties, wear, compatibility, drawings, and what is refused."""

from __future__ import annotations

import importlib
import io
import json
import math
from typing import Any
from xml.etree import ElementTree as ET

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from litestar import Litestar
from litestar.testing import TestClient
from railrules_client.command_line import main

from railrules_api.api.profile_pages import DXF, JSON, MEDIA_TYPES, SVG
from railrules_api.api.service import Service
from railrules_api.catalogue import CatalogueError, load
from railrules_api.catalogue.profiles import read_profiles
from tests.catalogue.conftest import Copy
from tests.support.asking import ask, body_of
from tests.support.demo import demo_job

PROPERTIES, COMPATIBILITY = "sections.properties", "sections.compatibility"
PROFILE = "/v1/rail-sections/136RE/profile"
STEEL = {"value": 7850, "unit": "kg_per_m3"}
OUTLINE = [
    (-1.0, 0.0), (1.0, 0.0), (1.0, 0.5), (0.2, 0.5), (0.2, 2.0), (0.5, 2.0), (0.5, 3.0), (-0.5, 3.0), (-0.5, 2.0), (-0.2, 2.0),
    (-0.2, 0.5), (-1.0, 0.5),
]  # fmt: skip


def inches(value: float) -> dict[str, Any]:
    return {"value": value, "unit": "in"}


def points(outline: list[tuple[float, float]], unit: str = "in") -> list[dict[str, Any]]:
    return [{"x": {"value": x, "unit": unit}, "y": {"value": y, "unit": unit}} for x, y in outline]


def worn(amount: float, side: str = "left", angle: float = 20.0) -> list[dict[str, Any]]:
    return [{"side": side, "amount": inches(amount), "angle": {"value": angle, "unit": "deg"}}]


def result(service: Service, **body: Any) -> dict[str, Any]:
    found: dict[str, Any] = ask(service, PROPERTIES, body)["result"]
    return found


def refused(http: TestClient[Litestar], path: str, body: dict[str, Any]) -> dict[str, Any]:
    answer = http.post(path, content=json.dumps(body), headers={"content-type": "application/json"})
    assert answer.status_code == 422, answer.text
    found: dict[str, Any] = answer.json()["errors"][0]
    return found


# ---------------------------------------------------------------- properties


@pytest.mark.parametrize("name", read_profiles())
def test_every_profile_is_answered_and_compared(name: str, service: Service) -> None:
    found = result(service, section=name)
    assert {"area", "second_moment"} <= {item["property"] for item in found["comparison"]}
    apart = [item for item in found["comparison"] if not item["agrees"]]
    assert len(found["notes"]) == len(apart)
    assert "new" not in found
    assert "loss" not in found
    section = found["section"]
    parts = section["area_head"]["value"] + section["area_web"]["value"] + section["area_base"]["value"]
    assert parts == pytest.approx(section["area"]["value"], rel=1e-12)


def test_where_geometry_and_print_disagree_the_answer_says_so(service: Service) -> None:
    notes = result(service, section="136RE")["notes"]
    assert [note.partition(":")[0] for note in notes] == ["second_moment"]
    assert "0.40 % below" in notes[0]
    assert result(service, section="136RE", agreement=0.01)["notes"] == []


def test_printed_values_are_told_with_their_places(service: Service) -> None:
    told = ask(service, PROPERTIES, {"section": "115RE"})["assumptions"]
    area = next(item for item in told if item["name"] == "area")
    assert (area["value"], area["cite"]["source"], area["cite"]["status"]) == ("11.2171 in2", "arema-ch4-figures", "published")
    density = next(item for item in told if item["name"] == "density")
    assert (density["origin"], density["value"]) == ("catalogue rail-profiles/115RE", "7.84 g_per_cm3")


def test_the_measures_of_a_section_give_what_the_section_gives(service: Service) -> None:
    measures = body_of(read_profiles()["60E1"].parameters)
    by_measures = result(service, profile=measures, density=STEEL)["section"]
    assert by_measures == result(service, section="60E1", density=STEEL)["section"]


def test_force_per_degree_of_the_worn_section(service: Service) -> None:
    found = result(service, section="136RE", vertical_wear=inches(0.5))
    share = found["loss"]["area_left_share"]
    assert found["section"]["force_per_degree"]["value"] == pytest.approx(share * found["new"]["force_per_degree"]["value"])
    # 30e6 psi, 6.5e-6 per degF
    assert found["section"]["force_per_degree"]["value"] == pytest.approx(195 * found["section"]["area"]["value"])
    assert found["loss"]["head_area_lost_share"] == pytest.approx(
        found["loss"]["area_lost"]["value"] / found["new"]["area_head"]["value"]
    )


@settings(deadline=None, max_examples=60)
@given(
    name=st.sampled_from(sorted(read_profiles())),
    wear=st.tuples(st.floats(0.0, 0.6), st.floats(0.0, 0.6)),
    face=st.tuples(st.floats(0.0, 0.35), st.floats(0.0, 0.35)),
)
def test_more_wear_never_adds(name: str, wear: tuple[float, float], face: tuple[float, float], service: Service) -> None:
    less, more = (
        result(service, section=name, vertical_wear=inches(pick(wear)), face_wear=worn(pick(face)))["section"]
        for pick in (min, max)
    )
    for column in ("area", "area_head", "second_moment", "second_moment_lateral", "mass_per_length", "force_per_degree"):
        assert more[column]["value"] <= less[column]["value"] * (1 + 1e-12), column


def test_wear_that_is_none_leaves_the_new_section(service: Service) -> None:
    found = result(service, section="115RE", vertical_wear=inches(0.0), face_wear=worn(0.0))
    assert found["section"] == found["new"]
    assert found["loss"]["area_lost"]["value"] == 0.0


def test_a_measured_head_on_the_cut_is_the_cut(service: Service) -> None:
    cut = result(service, section="136RE", vertical_wear=inches(0.25))
    height, half = 7.3125 - 0.25, 1.4
    # the chord of the cut, found where it meets the head
    profile = service.catalogue.profiles["136RE"].outline
    level = height * 0.0254
    ends = [e.at(f)[0] / 0.0254 for e in profile.elements for f in e.crossings((0.0, level), (0.0, 1.0))]
    right, left = max(ends), min(ends)
    assert right < half + 0.1
    found = result(service, section="136RE", measured_head=points([(right, height), (0.0, height), (left, height)]))
    assert found["loss"]["area_lost"]["value"] == pytest.approx(cut["loss"]["area_lost"]["value"], rel=1e-6)


def test_a_measured_outline_stands_beside_the_new_section(service: Service, http: TestClient[Litestar]) -> None:
    drawn = http.get(PROFILE + "?vertical_wear=0.3&chord_error=0.0001&units=us", headers={"accept": JSON}).json()
    outline = [(point["x"], point["y"]) for point in drawn["worn"]]
    found = result(service, section="136RE", outline=points(outline))
    exact = result(service, section="136RE", vertical_wear=inches(0.3))
    assert found["loss"]["area_lost"]["value"] == pytest.approx(exact["loss"]["area_lost"]["value"], abs=0.003)
    assert "area_head" not in found["section"]
    assert found["new"] == exact["new"]


def test_torsion_states_its_error_and_stays_within_it(service: Service) -> None:
    assert "torsion" not in result(service, section="60E1")["section"]
    found = result(service, section="60E1", torsion=True, units="si")["section"]["torsion"]
    assert found["torsion_constant"]["value"] == pytest.approx(220.9, rel=0.02)  # fine mesh, reference data section 4
    assert found["shear_centre"]["value"] == pytest.approx(46.3, rel=0.01)
    assert 0.0 < found["relative_error"] < 0.05


def test_explanation_and_both_systems(service: Service) -> None:
    us, si = (
        ask(service, PROPERTIES, {"section": "115RE", "units": units, "explain": True})["result"]["section"]["neutral_axis"]
        for units in ("us", "si")
    )
    assert us["unit"] == "in"
    assert si["unit"] == "mm"
    assert si["value"] == pytest.approx(25.4 * us["value"])


# ---------------------------------------------------------------- refusals


def mixed() -> list[dict[str, Any]]:
    outline = points(OUTLINE)
    outline[4]["y"] = {"value": 50.8, "unit": "mm"}
    return outline


@pytest.mark.parametrize(
    ("body", "pointer", "reason"),
    [
        ({"section": "136RE", "vertical_wear": inches(2.5)}, "/vertical_wear", "deeper than the head"),
        ({"section": "136RE", "face_wear": worn(1.6)}, "/face_wear/0/amount", "middle of the head"),
        ({"section": "136RE", "face_wear": worn(0.1) + worn(0.1)}, "/face_wear", "each side can be given once"),
        ({"section": "136RE", "face_wear": worn(0.1, angle=70.0)}, "/face_wear/0/angle", "outside"),
        ({"section": "136-RE"}, "/section", "no such row"),
        ({"section": "CR104"}, "/section", "no such row in rail-profiles"),
        ({"density": STEEL}, "/profile", "give a section"),
        ({"density": STEEL, "vertical_wear": inches(0.1)}, "/vertical_wear", "needs the new section"),
        ({"outline": points(OUTLINE)}, "/density", "give it"),
        ({"density": STEEL, "outline": points(OUTLINE[::-1])}, "/outline", "runs clockwise"),
        ({"density": STEEL, "outline": points(OUTLINE[:7])}, "/outline", "at least 8 points"),
        (
            {"density": STEEL, "outline": points([*OUTLINE, OUTLINE[0]])},
            "/outline/12",
            "point 13: two neighbouring points coincide",
        ),
        (
            {"density": STEEL, "outline": points([*OUTLINE[:4], (-0.4, 2.0), *OUTLINE[5:]])},
            "/outline/3",
            "point 4: the outline crosses itself",
        ),
        (
            {"density": STEEL, "outline": points([(0.0, 0.0), *OUTLINE[1:7], (0.2, 3.0), (0.0, 3.0)])},
            "/outline/8",
            "point 9: the outline is open",
        ),
        ({"density": STEEL, "outline": mixed()}, "/outline/4/y", "units are mixed: point 5 is given in `mm`"),
        (
            {
                "section": "136RE",
                "outline": points([(25.4 * x, 25.4 * y) for x, y in OUTLINE], "mm"),
                "vertical_wear": inches(0.1),
            },
            "/vertical_wear",
            "wear is given twice",
        ),
        (
            {"section": "136RE", "outline": points([(4 * x, 3 * y) for x, y in OUTLINE])},
            "/outline",
            "more steel than the new section",
        ),
        (
            {"section": "136RE", "measured_head": points([(1.0, 6.0), (0.0, 7.2), (-1.0, 6.0)])},
            "/measured_head/0",
            "point 1: the measured line must begin and end on the new head",
        ),
        (
            {"section": "136RE", "measured_head": points([(1.46, 6.0), (0.0, 7.6), (-1.46, 6.0)])},
            "/measured_head/1",
            "point 2: lies outside the new section",
        ),
        ({"section": "136RE", "measured_head": points([(0.0, 7.2)])}, "/measured_head", "two points"),
    ],
)
def test_bad_sections_are_refused_by_name(http: TestClient[Litestar], body: dict[str, Any], pointer: str, reason: str) -> None:
    fault = refused(http, "/v1/section-properties", body)
    assert fault["pointer"] == pointer
    assert reason in fault["detail"]


def test_the_limit_of_wear_is_told_in_the_unit_of_the_caller(http: TestClient[Litestar]) -> None:
    fault = refused(http, "/v1/section-properties", {"section": "136RE", "vertical_wear": inches(2.5)})
    assert fault["unit"] == "in"
    assert 1.6 < fault["maximum"] < 1.8


@pytest.mark.parametrize(
    ("change", "pointer"),
    [
        ({"web_thickness": inches(5.0)}, "/profile"),
        ({"head_depth": inches(6.0)}, "/profile/height"),
        ({"crown": [{"radius": inches(8.0)}, {"radius": inches(30.0)}]}, "/profile/crown"),
        ({"lower_corner_radius": inches(2.0)}, "/profile"),
        ({"upper_web": [{"radius": inches(0.75), "centre_height": inches(3.0)}]}, "/profile/upper_web/0/centre_height"),
    ],
)
def test_measures_that_contradict_each_other(http: TestClient[Litestar], change: dict[str, Any], pointer: str) -> None:
    measures = body_of(read_profiles()["115RE"].parameters) | change
    fault = refused(http, "/v1/section-properties", {"profile": measures, "density": STEEL})
    assert fault["pointer"] == pointer


def test_torsion_of_a_long_outline_is_refused(http: TestClient[Litestar]) -> None:
    circle = [(3 * math.cos(a), 3 + 3 * math.sin(a)) for a in (2 * math.pi * k / 400 for k in range(400))]
    fault = refused(http, "/v1/section-properties", {"density": STEEL, "outline": points(circle), "torsion": True})
    assert fault["pointer"] == "/torsion"
    assert "250" in fault["detail"]


@settings(deadline=None, max_examples=60)
@given(
    outline=st.lists(st.tuples(st.floats(-8, 8), st.floats(-8, 8)), max_size=30),
    head=st.lists(st.tuples(st.floats(-8, 8), st.floats(-8, 8)), max_size=12),
)
def test_never_a_failure_of_ours(
    outline: list[tuple[float, float]], head: list[tuple[float, float]], http: TestClient[Litestar]
) -> None:
    for body in (
        {"density": STEEL, "outline": points(outline)},
        {"section": "115RE", "outline": points(outline)},
        {"section": "115RE", "measured_head": points(head)},
    ):
        answer = http.post("/v1/section-properties", content=json.dumps(body), headers={"content-type": "application/json"})
        assert answer.status_code in (200, 422), answer.text


# ---------------------------------------------------------------- compatibility


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


# ---------------------------------------------------------------- drawings


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


# ---------------------------------------------------------------- validators, versions, start-up, command line


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


def test_a_drilling_that_cannot_be_read_stops_the_start(tmp_path: Any) -> None:
    copy = Copy(tmp_path / "data")
    copy.cell("rail_sections.csv", "136RE", "drilling", "six inches apart")
    with pytest.raises(CatalogueError, match="is not of the form"):
        load(copy.directory)


def test_the_command_shows_print_beside_geometry(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["section", "136RE"]) == 0
    shown = capsys.readouterr().out
    assert "Computed from the outline" in shown
    assert "-0.40 %" in shown
    assert "Measures of the outline" in shown
    assert main(["section", "CR104"]) == 0
    assert "Its drawing is not known" in capsys.readouterr().out
