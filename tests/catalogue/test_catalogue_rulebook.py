"""A house overrides defaults in a file, a request overrides single ones; both are held to what they replace."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.catalogue import CatalogueError, load_rulebook
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.patterns import SpikePattern

if TYPE_CHECKING:
    from pathlib import Path

    from railrules_api.catalogue import Catalogue, Rulebook

HEAD = '[rulebook]\nid = "valley-line"\nedition = "2026"\ntitle = "Valley Line"\n'
PATTERN = """
[[spike-patterns]]
id = "valley"
title = "Three everywhere"
where = "standard plan 7"
record = { bands = [{ rail_spikes = 3, plate_spikes = 0 }], extra_at_joint_ties = 0 }

[[default]]
id = "spike-pattern"
value = "valley"
where = "standard plan 7"
"""


def read(tmp_path: Path, catalogue: Catalogue, text: str) -> Rulebook:
    path = tmp_path / "valley.toml"
    path.write_text(HEAD + text, encoding="utf-8")
    return load_rulebook(path, catalogue)


def entry(name: str, value: str, unit: str = "") -> str:
    unit_line = f'unit = "{unit}"\n' if unit else ""
    return f'\n[[default]]\nid = "{name}"\nvalue = {value}\n{unit_line}where = "section 4"\n'


def test_a_house_overrides_what_it_does_otherwise(tmp_path: Path, catalogue: Catalogue) -> None:
    text = entry("elastic-modulus", "207", "GPa") + entry("plate-pin-every", "4") + entry("allowance-spikes", "0.062")
    book = read(tmp_path, catalogue, text)
    assert (book.id, book.edition) == ("valley-line", "2026")
    modulus = book.defaults["elastic-modulus"]
    assert modulus.si == pytest.approx(207e9)
    assert (modulus.printed, modulus.unit, modulus.rulebook) == ("207", "GPa", "valley-line")
    assert (modulus.source, modulus.where, modulus.status) == ("house-rulebook", "section 4", "common-practice")
    assert book.defaults["plate-pin-every"].si == 4
    assert isinstance(book.defaults["plate-pin-every"].si, int)
    assert book.defaults["allowance-spikes"].si == pytest.approx(0.062)
    untouched = book.defaults["thermal-expansion"]
    assert untouched == catalogue.rulebook.defaults["thermal-expansion"]
    assert untouched.rulebook == "handbook"


def test_a_fraction_of_an_inch(tmp_path: Path, catalogue: Catalogue) -> None:
    book = read(tmp_path, catalogue, entry("saw-cut", '"3/16"', "in"))
    assert book.defaults["saw-cut"].si == pytest.approx(0.0047625)
    assert book.defaults["saw-cut"].printed == "3/16"


def test_a_house_has_patterns_of_its_own(tmp_path: Path, catalogue: Catalogue) -> None:
    book = read(tmp_path, catalogue, PATTERN)
    row = catalogue.row("spike-patterns", "valley", book)
    assert row is not None
    assert isinstance(row.record, SpikePattern)
    assert row.record.bands[0].rail_spikes == 3
    assert book.defaults["spike-pattern"].si == "valley"
    assert catalogue.row("spike-patterns", "valley") is None
    assert catalogue.row("spike-patterns", "vose", book) is catalogue.tables["spike-patterns"].rows["vose"]


@pytest.mark.parametrize(
    ("text", "row", "reason"),
    [
        (entry("elastic-moduli", "207", "GPa"), "elastic-moduli", "no such entry in the built-in rulebook"),
        (entry("elastic", "207", "GPa"), "elastic", "near: elastic-modulus"),
        (entry("elastic-modulus", "207", "kN"), "elastic-modulus", "unit: not a unit of stress; allowed: Pa, MPa"),
        (entry("elastic-modulus", "207"), "elastic-modulus", "unit: not a unit of stress"),
        (entry("elastic-modulus", "2070", "GPa"), "elastic-modulus", "value: outside the limits of this entry"),
        (entry("elastic-modulus", "true", "GPa"), "elastic-modulus", "True is not a number"),
        (entry("elastic-modulus", "nan", "GPa"), "elastic-modulus", "'nan' is not a finite number"),
        (entry("rail-above-air", "30", "degF"), "rail-above-air", "unit: not a unit of temperature_change"),
        (entry("plate-pin-every", "2.5"), "plate-pin-every", "value: must be a whole number"),
        (entry("plate-pin-every", "0"), "plate-pin-every", "value: outside the limits of this entry"),
        (entry("plate-pin-every", "4", "ft"), "plate-pin-every", "unit: plate-pin-every has no unit"),
        (entry("plate-pin-every", '"often"'), "plate-pin-every", "value: plate-pin-every is a number"),
        (entry("spike-pattern", '"valley"'), "spike-pattern", "word: no such row in spike-patterns; allowed: two"),
        (entry("spike-pattern", "2"), "spike-pattern", "word: spike-pattern is a word"),
        (entry("tie-kind", '"stone"'), "tie-kind", "word: not one of the accepted words; allowed: wood"),
        (entry("saw-cut", "0.1", "in") * 2, "saw-cut", "id stands twice"),
        (entry("saw-cut", "0.1", "in").replace('where = "section 4"', ""), "saw-cut", "where is missing or empty"),
        (entry("saw-cut", "0.1", "in") + 'source = "x"\nstatus = "published"\n', "saw-cut", "source 'x' is not in"),
        (entry("saw-cut", "0.1", "in") + 'kind = "length"\n', "saw-cut", "unknown column 'kind'"),
        (PATTERN.replace('id = "valley"', 'id = "vose"', 1), "vose", "'vose' would be taken for vose"),
        (PATTERN.replace("rail_spikes = 3", "rail_spikes = 30"), "valley", "rail_spikes is outside its limits"),
        ("\n[surprise]\n", "rulebook", "unknown column 'surprise'"),
    ],
)
def test_bad_entries_of_a_house(tmp_path: Path, catalogue: Catalogue, text: str, row: str, reason: str) -> None:
    with pytest.raises(CatalogueError) as caught:
        read(tmp_path, catalogue, text)
    assert (caught.value.file, caught.value.row) == ("valley.toml", row)
    assert reason in caught.value.reason


def test_a_house_cannot_pass_for_the_built_in_rulebook(tmp_path: Path, catalogue: Catalogue) -> None:
    path = tmp_path / "valley.toml"
    path.write_text(HEAD.replace("valley-line", "handbook"), encoding="utf-8")
    with pytest.raises(CatalogueError, match="is that of the built-in rulebook"):
        load_rulebook(path, catalogue)
    with pytest.raises(CatalogueError, match=r"nowhere\.toml: cannot be read"):
        load_rulebook(tmp_path / "nowhere.toml", catalogue)


def test_a_request_replaces_single_entries(catalogue: Catalogue) -> None:
    book = catalogue.rulebook.replacing("adze-margin", number=2.0, unit="in").replacing("tie-kind", word="steel")
    assert book.defaults["adze-margin"].si == pytest.approx(0.0508)
    assert book.defaults["adze-margin"].source == "request"
    assert book.defaults["tie-kind"].si == "steel"
    assert book.edition == "2026.1, changed by the request"
    assert book.digest != catalogue.rulebook.digest
    assert catalogue.rulebook.defaults["tie-kind"].si == "wood"


@pytest.mark.parametrize(
    ("name", "given", "path"),
    [
        ("adze", {"number": 2.0, "unit": "in"}, ("id",)),
        ("adze-margin", {"word": "wide"}, ("value",)),
        ("adze-margin", {"number": 2.0, "unit": "lb"}, ("unit",)),
        ("adze-margin", {"number": 200.0, "unit": "in"}, ("value",)),
        ("tie-kind", {"word": "stone"}, ("word",)),
        ("tie-kind", {"number": 1.0}, ("word",)),
    ],
)
def test_bad_entries_of_a_request(catalogue: Catalogue, name: str, given: dict[str, Any], path: tuple[str, ...]) -> None:
    with pytest.raises(RefusedError) as caught:
        catalogue.rulebook.replacing(name, **given)
    assert caught.value.refusals[0].path == path
