"""The command line as a user types it."""

from __future__ import annotations

import csv
import io
import json
from pathlib import Path

import pytest

from railrules_api.app.command_line import BAD_INPUT, CHECK_FAILS, GOOD, main
from tests.support.demo import DEMO


def test_the_demo_prints_the_bill_the_checks_and_the_sources(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["takeoff", str(DEMO)]) == GOOD
    text = capsys.readouterr().out
    for heading in ("TO ORDER", "COMES OUT", "WORK AND HAULAGE", "NEW RAIL", "CHECKS", "MONEY", "CAUTIONS"):
        assert heading in text
    assert "tie plates" in text
    assert "FAIL  Anchored zone holds the thermal force" in text
    assert "49 CFR" in text
    assert max(map(len, text.splitlines())) <= 132


def test_json_csv_and_table_tell_the_same(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["takeoff", str(DEMO), "--output", "json"]) == GOOD
    orders = {(order["item"], order["product"]): order for order in json.loads(capsys.readouterr().out)["result"]["orders"]}
    assert main(["takeoff", str(DEMO), "--output", "csv"]) == GOOD
    rows = [row for row in csv.DictReader(io.StringIO(capsys.readouterr().out)) if row["record"] == "total"]
    assert len(rows) == len(orders)
    for row in rows:
        order = orders[row["item"], row["product"]]
        assert float(row["order"]) == pytest.approx(order["order"]["value"], rel=1e-11)
        assert row["order_unit"] == order["order"]["unit"]


def test_strict_fails_when_a_check_does() -> None:
    assert main(["takeoff", str(DEMO), "--strict"]) == CHECK_FAILS


def test_units_of_the_answer(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["takeoff", str(DEMO), "--units", "si", "--output", "json"]) == GOOD
    result = json.loads(capsys.readouterr().out)["result"]
    assert result["mass_in"]["unit"] == "t"
    assert result["range"]["lower"]["unit"] == "degC"


def test_explain_gives_formulas_with_numbers(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["takeoff", str(DEMO), "--explain", "--output", "json"]) == GOOD
    steps = json.loads(capsys.readouterr().out)["explanation"]
    force = next(step for step in steps if step["rule"] == "thermal.force" and step["field"] == "force")
    assert force["formula"] == "P = P_1 * dT"
    assert "P_1" not in force["substituted"]


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("name = 3", "name"),
        ("name = ", "Invalid value"),
        ('name = "x"\n[[segments]]\nname = "a"\nlike = "b"', "no earlier segment"),
    ],
)
def test_a_bad_job_file_is_told_and_exits_with_2(
    text: str, says: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "job.toml"
    path.write_text(text)
    assert main(["takeoff", str(path)]) == BAD_INPUT
    assert says in capsys.readouterr().err
    assert main(["takeoff", str(tmp_path / "missing.toml")]) == BAD_INPUT


def test_sections_section_rules(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["sections"]) == GOOD
    assert "136RE" in capsys.readouterr().out
    assert main(["section", "136RE"]) == GOOD
    assert "mill table" in capsys.readouterr().out
    assert main(["section", "136 re"]) == BAD_INPUT
    assert "near: 136RE" in capsys.readouterr().err
    assert main(["rules"]) == GOOD
    assert "thermal.force" in capsys.readouterr().out


def test_a_network_address_must_be_meant(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["serve", "--host", "0.0.0.0"]) == BAD_INPUT
    assert "--open-to-network" in capsys.readouterr().err


def test_a_house_rulebook_is_named_in_the_answer(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    book = tmp_path / "house.toml"
    book.write_text(
        '[rulebook]\nid = "harrow-vale"\nedition = "3"\ntitle = "Invented house"\n'
        '[[default]]\nid = "break-gap-limit"\nvalue = 3\nunit = "in"\nwhere = "standard 12"\n'
    )
    assert main(["takeoff", str(DEMO), "--output", "json", "--rulebook", str(book)]) == GOOD
    assert json.loads(capsys.readouterr().out)["versions"]["rulebook"] == "harrow-vale 3"
    book.write_text(
        '[rulebook]\nid = "harrow-vale"\nedition = "3"\ntitle = "x"\n[[default]]\nid = "no-such"\nvalue = 3\nwhere = "x"\n'
    )
    assert main(["takeoff", str(DEMO), "--rulebook", str(book)]) == BAD_INPUT
    assert "house.toml" in capsys.readouterr().err
