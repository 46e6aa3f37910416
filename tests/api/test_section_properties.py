"""Properties of rail sections over HTTP: whole, worn and measured, and what is refused."""

from __future__ import annotations

import json
import math
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from litestar import Litestar
from litestar.testing import TestClient
from railrules_client.command_line.running import main

from railrules_api.api.profile_pages import JSON
from railrules_api.api.service import Service
from railrules_api.catalogue.profiles import read_profiles
from tests.support.asking import ask, body_of
from tests.support.sections import OUTLINE, PROFILE, PROPERTIES, STEEL, inches, points, refused, result, worn


@pytest.mark.parametrize("name", read_profiles())
def test_every_profile_is_answered_and_compared(name: str, service: Service) -> None:
    found = result(service, section=name)
    # of the thick web, mass alone is printed
    printed = {"area", "mass_per_length"} if name == "136TW" else {"area", "second_moment"}
    assert printed <= {item["property"] for item in found["comparison"]}
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


def test_what_was_fitted_and_how_far_it_is_off_stands_in_the_answer(service: Service) -> None:
    told = ask(service, PROPERTIES, {"section": "136TW"})
    profile = next(item for item in told["assumptions"] if item["origin"] == "catalogue rail-profiles/136TW")
    mass = next(item for item in told["result"]["comparison"] if item["property"] == "mass_per_length")
    assert "fillets of 11/16 in are fitted by us to the mill mass" in profile["note"]
    assert f"{-100 * mass['difference']:.3f} % less than the {mass['printed']['value']:.2f} printed" in profile["note"]


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


def test_the_command_shows_print_beside_geometry(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["section", "136RE"]) == 0
    shown = capsys.readouterr().out
    assert "Computed from the outline" in shown
    assert "-0.403 %" in shown
    assert "Measures of the outline" in shown
    assert main(["section", "CR104"]) == 0
    assert "Its drawing is not known" in capsys.readouterr().out
