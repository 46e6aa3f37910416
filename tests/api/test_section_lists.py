"""Lists of rail sections: by standard, by ranges, in either system of units."""

from __future__ import annotations

from typing import Any

import pytest
from litestar import Litestar
from litestar.testing import TestClient

from railrules_api.api.service import Service

PATH = "/v1/rail-sections"


def names(http: TestClient[Litestar], query: str) -> list[str]:
    answer = http.get(f"{PATH}?{query}")
    assert answer.status_code == 200, answer.text
    return [row["id"] for row in answer.json()["rows"]]


def test_a_range_of_masses_takes_what_lies_in_it_with_its_ends(http: TestClient[Litestar], service: Service) -> None:
    pound_per_yard = 0.45359237 / 0.9144
    masses = {
        row.id: row.values["mass_per_length"].si / pound_per_yard
        for row in service.catalogue.tables["rail-sections"].rows.values()
        if "mass_per_length" in row.values
    }
    wanted = [name for name, mass in masses.items() if 130.0 <= mass <= 140.0]
    assert names(http, "mass_from=130&mass_to=140") == wanted
    assert {"132RE", "133RE", "136RE", "R65"} <= set(wanted)
    assert "115RE" not in wanted


def test_a_range_of_bases_is_read_in_the_units_asked_for(http: TestClient[Litestar]) -> None:
    assert {"60E1", "R65"} <= set(names(http, "units=si&base_from=150&base_to=150"))
    assert "136RE" not in names(http, "units=si&base_from=150&base_to=150")
    assert {"132RE", "136RE", "141RE"} <= set(names(http, "base_from=6&base_to=6"))


def test_a_standard_is_found_by_part_of_its_name(http: TestClient[Litestar]) -> None:
    found = names(http, "standard=arema")
    assert found == names(http, "standard=AREMA")
    assert {"115RE", "119RE", "132RE", "133RE", "136RE", "141RE"} <= set(found)
    assert "60E1" not in found
    assert names(http, "standard=EN 13674&mass_from=121&mass_to=122") == ["60E1", "60E2"]


def value(http: TestClient[Litestar], name: str, column: str, query: str) -> Any:
    return http.get(f"{PATH}/{name}{query}").json()["values"][column]["value"]


@pytest.mark.parametrize(
    ("name", "query", "base"),
    [
        ("136RE", "", {"value": 6.0, "unit": "in"}),
        ("136RE", "?units=si", {"value": 152.4, "unit": "mm"}),
        ("60E1", "", {"value": 150.0, "unit": "mm"}),
        ("60E1", "?units=us", {"value": pytest.approx(150 / 25.4), "unit": "in"}),
    ],
)
def test_measures_are_told_in_inches_or_millimetres(name: str, query: str, base: Any, http: TestClient[Litestar]) -> None:
    assert value(http, name, "base_width", query) == base


@pytest.mark.parametrize("query", ["mass_from=140&mass_to=130", "units=si&base_from=151&base_to=150"])
def test_a_range_that_ends_below_its_beginning_is_refused(query: str, http: TestClient[Litestar]) -> None:
    answer = http.get(f"{PATH}?{query}")
    assert answer.status_code == 422
    assert "lies above" in answer.json()["detail"]
