"""Every kind of bad row is refused, with file, row and reason."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from railrules_api.catalogue import CatalogueError, load

if TYPE_CHECKING:
    from tests.catalogue.conftest import Copy

SECTIONS, BESIDE, SPIKES = "rail_sections.csv", "rail_sections.toml", "spikes.csv"


def refused(copy: Copy) -> tuple[str, str, str]:
    """Return file, row and reason of the refusal, which must all stand in its message."""
    with pytest.raises(CatalogueError) as caught:
        load(copy.directory)
    error = caught.value
    assert str(error).startswith(error.file)
    assert error.row in str(error)
    assert error.reason in str(error)
    return error.file, error.row, error.reason


def test_the_copy_itself_loads(copy: Copy) -> None:
    assert load(copy.directory) == load()


@pytest.mark.parametrize(
    ("row", "column", "value", "reason"),
    [
        ("115RE", "area", "1.12171", "mass: mass_per_length and what area give differ by"),
        ("115RE", "area_head", "3.9861", "parts: area and what area_head, area_web, area_base give"),
        ("115RE", "height", "6.5", "depths: height"),
        ("119RE", "neutral_axis", "3.31", "modulus-head: section_modulus_head"),
        ("60E1", "section_modulus_base", "335.5", "modulus-base: section_modulus_base"),
        ("ASCE60", "section_modulus_head", "6.72", "modulus-head"),
        ("60E2", "section_modulus_lateral_base", "78.3", "lateral-base"),
        ("115RE", "area", "0", "area is 0, must lie above zero"),
        ("115RE", "area", "-11.2171", "area is -11.2171, must lie above zero"),
        ("115RE", "area", "nan", "'nan' is not a finite number"),
        ("115RE", "area", "1e999", "'1e999' is not a finite number"),
        ("115RE", "area", "eleven", "'eleven' is not a number"),
        ("115RE", "height", "6 5/0", "'6 5/0' is not a number"),
        ("115RE", "height", "", "provenance of 'height', which has no value"),
        ("115RE", "area", "11.2171 in", "area: unit 'in' measures length, wanted area: one of"),
        ("115RE", "area", "11.2171 sqin", "area: unit 'sqin' is unknown, wanted area"),
        ("115RE", "units", "imperial", "unit set 'imperial' is not explained"),
        ("115RE", "title", "", "title is missing or empty"),
        ("115RE", "grade", "", "grade is missing"),
        ("115RE", "id", "115 RE", "id '115 RE' must be letters, digits, points and hyphens"),
        ("115RE", "id", "119RE", "id stands twice"),
        ("115RE", "id", "119-re", "'119RE' would be taken for 119-re"),
        ("119RE", "also", "115 re", "'115 re' would be taken for 115RE"),
    ],
)
def test_bad_cells_of_a_section(copy: Copy, row: str, column: str, value: str, reason: str) -> None:
    copy.cell(SECTIONS, row, column, value)
    file, where, found = refused(copy)
    assert file == SECTIONS
    assert where in (row, value, "119RE")
    assert reason in found


def test_no_provenance(copy: Copy) -> None:
    copy.replace(SECTIONS, "mass_per_length=S1", "mass_nominal=N")
    assert refused(copy) == (SECTIONS, "115RE", "mass_per_length has no provenance")


def test_unexplained_provenance(copy: Copy) -> None:
    copy.replace(SECTIONS, "mass_per_length=S1", "mass_per_length=S99")
    assert refused(copy) == (SECTIONS, "115RE", "provenance code 'S99' of mass_per_length is not explained")


def test_provenance_code_of_unknown_source(copy: Copy) -> None:
    copy.replace(BESIDE, 'source = "arema-ch4-figures"', 'source = "arema"')
    assert refused(copy)[2] == "source 'arema' is not in sources.toml"


def test_unknown_column(copy: Copy) -> None:
    copy.replace(SPIKES, "keg_mass", "keg_weight")
    file, row, reason = refused(copy)
    assert (file, row) == (SPIKES, "4-1-2x7-16-150-trautwine")
    assert reason == "unknown column 'keg_weight'"


def test_missing_required_value(copy: Copy) -> None:
    copy.cell(SPIKES, "6x5-8-200-memory", "keg_mass", "")
    assert refused(copy) == (SPIKES, "6x5-8-200-memory", "mass is missing")


def test_fraction_of_a_count(copy: Copy) -> None:
    copy.replace(SPIKES, ",200,250,", ",200,250.5,")
    assert refused(copy)[2] == "count_per_keg is 250.5, must be a whole number"


def test_unit_on_a_count(copy: Copy) -> None:
    copy.replace(SPIKES, ",200,250,", ",200,250 lb,")
    assert refused(copy)[2] == "count_per_keg has no unit, 'lb' is given"


def test_ragged_row(copy: Copy) -> None:
    copy.append(SPIKES, "extra,one\n")
    assert refused(copy) == (SPIKES, "extra", "2 cells under 11 columns")


@pytest.mark.parametrize(
    ("old", "new", "reason"),
    [
        (",trautwine,", ",trautwein,", "source 'trautwein' is not in sources.toml"),
        ('"table of spikes, 150-lb kegs"', "", "where is missing or empty"),
        (",published,", ",read,", "status is 'read', must be one of published, computed, derived, fitted, from-memory"),
        (",published,", ",,", "status is missing or empty"),
    ],
)
def test_bad_provenance_of_a_row(copy: Copy, old: str, new: str, reason: str) -> None:
    copy.replace(SPIKES, old, new)
    file, row, found = refused(copy)
    assert (file, row) == (SPIKES, "4-1-2x7-16-150-trautwine")
    assert found.startswith(reason)


@pytest.mark.parametrize(
    ("file", "old", "new", "reason"),
    [
        ("tie_plugs.toml", 'unit = "in"', 'unit = "lb"', "unit 'lb' measures mass, wanted length"),
        ("tie_plugs.toml", "count_per_bundle = 500", "", "count_per_bundle is missing"),
        ("tie_plugs.toml", "count_per_bundle = 500", "count_per_bundle = true", "True is not a number"),
        ("tie_plugs.toml", "count_per_bundle = 500", "colour = 5", "unknown column 'colour'"),
        ("rail_anchors.toml", '{ value = 2.2, unit = "lb" }', "2.2", "mass needs value and unit, and must be a table"),
        ("rail_anchors.toml", '{ value = 2.2, unit = "lb" }', "{ value = 2.2 }", "unit '' is missing, wanted mass"),
        ("rail_anchors.toml", 'unit = "lb" }', 'unit = "lb", kind = "mass" }', "unknown column 'kind'"),
        ("spike_patterns.toml", "rail_spikes = 2", "rail_spikes = 9", "rail_spikes is outside its limits (at least 0"),
        ("spike_patterns.toml", "rail_spikes = 2", "rail_spikes = 2.5", "rail_spikes must be a whole number"),
        ("spike_patterns.toml", "rail_spikes = 2", "railspikes = 2", "unknown column 'railspikes'"),
        ("spike_patterns.toml", "rail_spikes = 2, ", "", "rail_spikes is missing"),
        ("spike_patterns.toml", "[{ rail_spikes = 2, plate_spikes = 0, gage_spikes = 1 }]", "[]", "bands has 0 entries"),
        ("spike_patterns.toml", "value = 1500", "value = 0", "at_least_radius is outside its limits (above 0"),
        ("spike_patterns.toml", "{ rail_spikes = 3, plate_spikes = 0, gage_spikes = 1 }]", "]", "the last band, and only that"),
        ("spike_patterns.toml", "class_to = 3, rail_spikes", "class_to = 4, rail_spikes", "the last band, and only that"),
        ("spike_patterns.toml", "value = 1432", "value = 2865", "bands must go from wide to sharp"),
        ("spike_patterns.toml", "value = 1432", "value = 3432", "bands must go from wide to sharp"),
        ("anchor_patterns.toml", "boxed_every = 1", "boxed_every = 0", "boxed_every is outside its limits"),
        ("anchor_patterns.toml", "forward = 8,", "", "forward is missing"),
        ("feature_kinds.toml", 'within = "none"', 'within = "some"', "within is 'some', must be one of as-adjoining"),
        ("feature_kinds.toml", "rail_through = false", "rail_through = 0", "rail_through must be true or false"),
        ("feature_kinds.toml", "breaks_string = true", 'breaks_string = "yes"', "breaks_string must be true or false"),
        ("items.toml", 'measure = "each"', 'measure = "pieces"', "measure is 'pieces', must be one of each"),
        ("items.toml", "allowance = 0.0", "allowance = 5", "allowance is 5, must be a share from 0 to 1"),
        ("items.toml", "order_step = 1", "order_step = 0", "order_step must lie above zero"),
        ("items.toml", '"count_per_keg" }', '"kegs" }', "package column 'kegs' is not in the products' table"),
        ("items.toml", 'products = "spikes"', 'products = "nails"', "products 'nails' is not a table"),
        ("items.toml", 'id = "tie-plates"', 'id = "cross-ties"', "id stands twice"),
        ("sources.toml", 'kind = "trade"', 'kind = "rumour"', "kind is 'rumour', must be one of regulation"),
        ("sources.toml", "year = 2026", 'year = "2026"', "year is '2026', must be a year or left out"),
        ("sources.toml", 'id = "request"', 'id = "counting-rules"', "id stands twice"),
        ("defaults.toml", 'unit = "psi"', 'unit = "lbf"', "unit 'lbf' measures force, wanted stress"),
        ("defaults.toml", 'kind = "stress"', 'kind = "strain"', "kind 'strain' is unknown"),
        ("defaults.toml", "value = 30e6", "value = 30e9", "value 30e9 is outside its own limits"),
        ("defaults.toml", 'id = "thermal-expansion"', 'id = "elastic-modulus"', "id stands twice"),
        ("defaults.toml", 'value = "two-per-plate"', 'value = "three"', "value 'three' is not a row of spike-patterns"),
        ("defaults.toml", 'value = "wood"', 'value = "stone"', "value 'stone' is not one of wood, concrete, steel"),
        ("defaults.toml", 'source = "memory"', 'source = "rumour"', "source 'rumour' is not in sources.toml"),
        ("edition.toml", '"2026.1"', '""', "edition is missing or empty"),
    ],
)
def test_bad_blocks(copy: Copy, file: str, old: str, new: str, reason: str) -> None:
    copy.replace(file, old, new)
    found = refused(copy)
    assert found[0] == file
    assert reason in found[2]


def test_an_exception_that_nothing_needs_is_refused(copy: Copy) -> None:
    copy.append(BESIDE, '\n[[exception]]\nrow = "115RE"\ncheck = "mass"\nreason = "none"\n')
    assert refused(copy) == (BESIDE, "115RE", "exception from mass is not needed")


def test_a_known_contradiction_without_its_exception_is_refused(copy: Copy) -> None:
    copy.replace(BESIDE, 'row = "UIC54"', 'row = "60E2"')
    assert refused(copy)[:2] == (SECTIONS, "UIC54")


def test_not_toml(copy: Copy) -> None:
    copy.append("items.toml", "[[item\n")
    assert refused(copy)[0] == "items.toml"


def test_missing_file(copy: Copy) -> None:
    (copy.directory / "spikes.toml").unlink()
    assert refused(copy) == ("spikes.toml", "", "cannot be read")


def test_the_digest_follows_the_data(copy: Copy) -> None:
    before = load(copy.directory).version
    copy.replace(SPIKES, "No published count", "No count")
    assert load(copy.directory).version != before
