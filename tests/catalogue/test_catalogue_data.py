"""The data that ship with the service load whole, and stand as printed."""

from __future__ import annotations

import csv
import dataclasses
import re
from itertools import chain
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

import railrules_api
from railrules_api.catalogue import load
from railrules_api.catalogue.coherence import SECTION_CHECKS, contradictions
from railrules_api.catalogue.reading import STATUSES
from railrules_api.domain.kinds import Kind
from railrules_api.domain.patterns import AnchorPattern, FeatureRule, SpikePattern
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from railrules_api.catalogue import Catalogue

PACKAGE = Path(railrules_api.__file__).parent

# printed in the figure tables of AREMA, in EN 13674-1 and in AS 1085.1, as gathered from documents that were read
PRINTED = [
    ("115RE", "area", "11.2171", "in2"),
    ("115RE", "area_head", "3.8861", "in2"),
    ("115RE", "area_web", "3.0362", "in2"),
    ("115RE", "area_base", "4.2947", "in2"),
    ("115RE", "mass_per_length", "114.3757", "lb_per_yd"),
    ("115RE", "second_moment", "65.5", "in4"),
    ("115RE", "section_modulus_head", "18.0", "in3"),
    ("115RE", "section_modulus_base", "21.9", "in3"),
    ("115RE", "neutral_axis", "2.99", "in"),
    ("115RE", "second_moment_lateral", "10.7", "in4"),
    ("119RE", "area", "11.6378", "in2"),
    ("119RE", "mass_per_length", "118.6657", "lb_per_yd"),
    ("119RE", "second_moment", "71.4", "in4"),
    ("119RE", "torsion_constant", "5.11", "in4"),
    ("132RE", "area", "12.9124", "in2"),
    ("132RE", "mass_per_length", "131.6622", "lb_per_yd"),
    ("132RE", "second_moment", "87.9", "in4"),
    ("132RE", "section_modulus_base", "27.4", "in3"),
    ("60E1", "area", "76.70", "cm2"),
    ("60E1", "mass_per_length", "60.21", "kg_per_m"),
    ("60E1", "second_moment", "3038.3", "cm4"),
    ("60E1", "second_moment_lateral", "512.3", "cm4"),
    ("54E1", "area", "69.77", "cm2"),
    ("54E1", "second_moment", "2338", "cm4"),
    ("54E1", "neutral_axis", "75.1", "mm"),
    ("AS60", "area", "77.25", "cm2"),
    ("AS60", "section_modulus_base", "369.3", "cm3"),
    ("AS60", "second_moment_lateral", "490", "cm4"),
]


@pytest.mark.parametrize(("section", "column", "printed", "unit"), PRINTED)
def test_printed_values_stand_in_printed_units(catalogue: Catalogue, section: str, column: str, printed: str, unit: str) -> None:
    value = catalogue.tables["rail-sections"].rows[section].values[column]
    assert value.unit == unit
    assert float(value.printed) == float(printed)
    assert value.kind is not None
    assert value.si == pytest.approx(UNITS[value.kind][unit].to_si(float(printed)), rel=1e-15)
    assert value.status == "published"


def test_converted_values_against_hand_conversions(catalogue: Catalogue) -> None:
    sections = catalogue.tables["rail-sections"].rows
    assert sections["60E1"].values["area"].si == pytest.approx(0.007670)
    assert sections["60E1"].values["mass_per_length"].si == pytest.approx(60.21)
    assert sections["115RE"].values["height"].si == pytest.approx(6.625 * 0.0254)
    assert sections["115RE"].values["mass_per_length"].si == pytest.approx(114.3757 * 0.45359237 / 0.9144)
    defaults = catalogue.rulebook.defaults
    assert defaults["elastic-modulus"].si == pytest.approx(206.843e9, rel=1e-5)
    assert defaults["thermal-expansion"].si == pytest.approx(1.17e-5)
    assert defaults["rail-above-air"].si == pytest.approx(30 / 1.8)
    assert defaults["joint-closing-temperature"].si == pytest.approx((85 + 459.67) / 1.8)
    assert defaults["saw-cut"].si == pytest.approx(0.0254 / 8)


def test_all_sections_of_grades_a_to_c(catalogue: Catalogue) -> None:
    rows = catalogue.tables["rail-sections"].rows
    grades = [row.texts["grade"][0] for row in rows.values()]
    assert {grade: grades.count(grade) for grade in "ABC"} == {"A": 11, "B": 27, "C": 20}
    assert len(rows) == 58


def test_every_value_tells_where_it_comes_from(catalogue: Catalogue) -> None:
    rows = list(chain.from_iterable(table.rows.values() for table in catalogue.tables.values()))
    places = [value.provenance for row in rows for value in row.values.values()]
    places += [row.provenance for row in rows]
    places += [default.provenance for default in catalogue.rulebook.defaults.values()]
    places += [item.provenance for item in catalogue.items.values()]
    for place in places:
        assert {place.source, *place.also} <= catalogue.sources.keys()
        assert place.where
        assert place.status in STATUSES


def test_remembered_values_are_never_shown_as_read(catalogue: Catalogue) -> None:
    found = False
    for table in catalogue.tables.values():
        for row in table.rows.values():
            for value in row.values.values():
                assert (value.source == "memory") <= (value.status == "from-memory")
                found |= value.status == "from-memory"
    assert found


def test_a_value_that_is_not_known_is_absent(catalogue: Catalogue) -> None:
    assert "area" not in catalogue.tables["rail-sections"].rows["CR105"].values
    assert "coverage_rough" not in catalogue.tables["preservatives"].rows["liquid-brush-on"].values


def test_every_cell_of_the_section_file_is_a_value(catalogue: Catalogue) -> None:
    with (PACKAGE / "data/rail_sections.csv").open(encoding="utf-8", newline="") as file:
        lines = list(csv.DictReader(file))
    columns = catalogue.tables["rail-sections"].columns
    numbers = [name for name, column in columns.items() if column.shape == "quantity"]
    cells = sum(bool(line[name]) for line in lines for name in numbers)
    rows = catalogue.tables["rail-sections"].rows.values()
    assert cells == sum(len(row.values) for row in rows) > 800


def test_patterns_are_the_records_that_rules_use(catalogue: Catalogue) -> None:
    for table, record in (
        ("spike-patterns", SpikePattern),
        ("anchor-patterns", AnchorPattern),
        ("feature-kinds", FeatureRule),
    ):
        assert catalogue.tables[table].rows
        assert all(isinstance(row.record, record) for row in catalogue.tables[table].rows.values())
    vose = catalogue.tables["spike-patterns"].rows["vose"].record
    assert isinstance(vose, SpikePattern)
    assert vose.bands[0].at_least_radius == pytest.approx(1500 * 0.3048)
    turnout = catalogue.tables["feature-kinds"].rows["turnout"].record
    assert isinstance(turnout, FeatureRule)
    assert turnout.approach_length == pytest.approx(195 * 0.3048)


def test_a_two_degree_curve_belongs_to_the_wide_band(catalogue: Catalogue) -> None:
    record = catalogue.tables["spike-patterns"].rows["by-curvature"].record
    assert isinstance(record, SpikePattern)
    two_degrees, four_degrees = 2864.93 * 0.3048, 1432.69 * 0.3048
    limits = [band.at_least_radius or 0.0 for band in record.bands]
    assert limits[0] <= two_degrees < limits[0] + 1.0
    assert limits[1] <= four_degrees < limits[1] + 1.0


def test_mass_of_a_spike_is_keg_over_count_unless_the_source_gives_it(catalogue: Catalogue) -> None:
    spikes = catalogue.tables["spikes"].rows
    derived = spikes["5-1-2x9-16-150-trautwine"].values["mass"]
    assert derived.si == pytest.approx(150 / 289 * 0.45359237)
    assert (derived.status, derived.printed, derived.unit) == ("derived", "0.519", "lb")
    assert spikes["6x5-8-200-memory"].values["mass"].status == "from-memory"
    assert spikes["6x5-8-200-by-mass"].values["mass"].printed == "0.8"


def test_what_the_code_cites_assumes_and_speaks_of_exists(catalogue: Catalogue) -> None:
    cited: set[str] = set()
    assumed: set[str] = set()
    spoken: set[str] = set()
    for path in (*PACKAGE.joinpath("rules").rglob("*.py"), *PACKAGE.joinpath("domain").rglob("*.py")):
        text = path.read_text(encoding="utf-8")
        cited |= set(re.findall(r'Cite\(\s*(?:source=)?"([^"]+)"', text))
        assumed |= set(re.findall(r'default="([^"]+)"', text))
        spoken |= set(re.findall(r'Line\(\s*item="([^"]+)"', text))
    assert cited
    assert assumed
    assert spoken
    assert sorted(spoken - catalogue.items.keys()) == []
    assert sorted(cited - catalogue.sources.keys()) == []
    assert sorted(assumed - catalogue.rulebook.defaults.keys()) == []


def test_every_source_is_listed_for_readers(catalogue: Catalogue) -> None:
    listed = re.findall(r"^- `([^`]+)`", (PACKAGE / "data/README.md").read_text(encoding="utf-8"), re.MULTILINE)
    assert sorted(listed) == sorted(catalogue.sources)


def test_near_names(catalogue: Catalogue) -> None:
    assert catalogue.near("rail-sections", "136 re") == ("136RE",)
    assert catalogue.near("rail-sections", "tr-68") == ("136RE",)
    assert catalogue.near("rail-sections", "as 60 KG") == ("AS60",)
    assert "136RE" in catalogue.near("rail-sections", "137RE")
    assert catalogue.near("rail-sections", "zzzzzz") == ()
    assert len(catalogue.near("spikes", "6x5-8", most=2)) == 2


def test_rows_are_found_by_their_exact_id_only(catalogue: Catalogue) -> None:
    row = catalogue.row("rail-sections", "136RE")
    assert row is not None
    assert row.sources[0] == "common-practice"
    assert catalogue.row("rail-sections", "136 re") is None


def test_loading_twice_gives_the_same_and_nothing_can_be_changed(catalogue: Catalogue) -> None:
    again = load()
    assert again == catalogue
    assert re.fullmatch(r"\d{4}\.\d+\+[0-9a-f]{8}", again.version)
    with pytest.raises(TypeError):
        again.tables["spikes"].rows["x"] = None  # type: ignore[index]
    with pytest.raises(dataclasses.FrozenInstanceError):
        again.version = "1"  # type: ignore[misc]


def test_a_contradiction_is_seen_whichever_way_it_goes(catalogue: Catalogue) -> None:
    row = catalogue.tables["rail-sections"].rows["115RE"]
    tolerances = dict.fromkeys(SECTION_CHECKS, 0.02)
    assert contradictions(row, 7850.0, tolerances) == {}
    for factor in (0.97, 1.03):
        area = row.values["area"]
        values = {**row.values, "area": dataclasses.replace(area, si=area.si * factor)}
        spoiled = dataclasses.replace(row, values=values)
        assert set(contradictions(spoiled, 7850.0, tolerances)) == {"mass", "parts"}


def test_items_say_how_they_are_ordered(catalogue: Catalogue) -> None:
    spikes = catalogue.items["spikes"]
    assert spikes.package is not None
    assert (spikes.package.column, spikes.package.size, spikes.order_step) == ("count_per_keg", None, 1.0)
    preservative = catalogue.items["preservative"]
    assert preservative.package is not None
    assert preservative.package.size == pytest.approx(55 * 231 * 0.0254**3)
    for item in catalogue.items.values():
        allowance = catalogue.rulebook.defaults[f"allowance-{item.id}"]
        assert allowance.si == item.allowance
        assert item.measure == "each" or Kind(item.measure)
