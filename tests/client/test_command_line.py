"""The command line as an estimator types it: tables, JSON, CSV, exit codes, in this process and against a server."""

from __future__ import annotations

import csv
import io
import json
import shutil
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from railrules_client.command_line.commands import ANSWERED_NOT, BAD_INPUT, CHECK_FAILS, GOOD
from railrules_client.command_line.running import main, parser

from tests.contract.serving import running_service
from tests.support.demo import DEMO

BOX = "segments.*.new.anchor_pattern=box-every-tie"


@pytest.fixture(scope="module")
def address() -> Iterator[str]:
    with running_service() as found:
        yield found


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
    assert main(["takeoff", str(DEMO), "--json"]) == GOOD
    orders = {(order["item"], order["product"]): order for order in json.loads(capsys.readouterr().out)["result"]["orders"]}
    assert main(["takeoff", str(DEMO), "--output", "csv"]) == GOOD
    rows = [row for row in csv.DictReader(io.StringIO(capsys.readouterr().out)) if row["record"] == "total"]
    assert len(rows) == len(orders)
    for row in rows:
        order = orders[row["item"], row["product"]]
        assert float(row["order"]) == pytest.approx(order["order"]["value"], rel=1e-11)
        assert row["order_unit"] == order["order"]["unit"]


def test_a_server_answers_what_this_process_answers(address: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["takeoff", str(DEMO), "--json"]) == GOOD
    here = capsys.readouterr().out
    assert main(["takeoff", str(DEMO), "--json", "--server", address]) == GOOD
    assert capsys.readouterr().out == here


def test_the_address_may_stand_in_the_environment(
    address: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("RAILRULES_URL", address)
    assert main(["rules"]) == GOOD
    assert "thermal.force" in capsys.readouterr().out
    monkeypatch.setenv("RAILRULES_URL", "http://127.0.0.1:9")
    assert main(["rules"]) == ANSWERED_NOT
    assert "was not reached" in capsys.readouterr().err


def test_a_rulebook_is_for_this_process(address: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["rules", "--server", address, "--rulebook", "house.toml"]) == BAD_INPUT
    assert "--rulebook is for the service in this process" in capsys.readouterr().err


def test_strict_fails_when_a_check_does() -> None:
    assert main(["takeoff", str(DEMO), "--strict"]) == CHECK_FAILS


def test_units_and_formulas_of_the_answer(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["takeoff", str(DEMO), "--units", "si", "--explain", "--json"]) == GOOD
    found = json.loads(capsys.readouterr().out)
    assert found["result"]["mass_in"]["unit"] == "t"
    assert found["result"]["range"]["lower"]["unit"] == "degC"
    force = next(step for step in found["explanation"] if step["rule"] == "thermal.force" and step["field"] == "force")
    assert force["formula"] == "P = P_1 * dT"
    assert "P_1" not in force["substituted"]


def test_a_workbook_is_written_beside(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    library = pytest.importorskip("openpyxl")
    assert main(["takeoff", str(DEMO), "--xlsx", str(tmp_path / "out.xlsx")]) == GOOD
    assert {"orders", "checks", "money_costs"} <= set(library.load_workbook(tmp_path / "out.xlsx").sheetnames)
    assert main(["takeoff", str(DEMO), "--xlsx", str(tmp_path / "nowhere" / "out.xlsx")]) == BAD_INPUT
    assert "nowhere" in capsys.readouterr().err


# ---------------------------------------------------------------- check


def test_check_tells_the_verdicts_and_fails_with_1(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check", str(DEMO)]) == CHECK_FAILS
    text = capsys.readouterr().out
    assert "\u2717 FAIL" in text
    assert "\u2713 pass" in text
    assert main(["check", str(DEMO), "--json"]) == CHECK_FAILS
    found = json.loads(capsys.readouterr().out)
    assert found["counts"]["fails"] == sum(row["check_verdict"] == "fails" for row in found["checks"]) > 0


def test_check_is_good_where_every_check_holds(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    job = tmp_path / "job.toml"
    job.write_text(SOUND)
    assert main(["check", str(job)]) == GOOD
    told = capsys.readouterr().out.splitlines()[-1]
    assert told.startswith("0 fail, ")
    assert int(told.split(", ")[1].split()[0]) > 0  # what lacks an input is open, never passed
    assert main(["check", str(job), "--strict"]) == CHECK_FAILS


def test_an_open_check_tells_where_in_the_job_to_give_what_it_lacks(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    job = tmp_path / "job.toml"
    job.write_text(SOUND)
    for command in ("takeoff", "check"):
        main([command, str(job)])
        assert "needs /stability" in capsys.readouterr().out
        main([command, str(DEMO)])
        text = capsys.readouterr().out
        assert "needs allowed rise" in text  # its stability is there, and one curve of it has no answer
        assert "needs not available" not in text


SOUND = """
name = "invented line"
[temperatures]
hottest_rail = "126 degF"
coldest_rail = "60 degF"
[supply]
tie_in = "weld"
fixed_tie_in = "weld"
[supply.string]
stock = [{ length = "80 ft", count = 18 }]
[[segments]]
name = "a"
begin = "0 mi"
end = "1 mi"
rails = "both"
ties = { spacing = "19.5 in" }
old = { section = "115RE" }
new = { section = "115RE", plates = "new", plate = "8-14" }
begin_closing = "joint"
end_closing = "joint"
"""


# ---------------------------------------------------------------- compare


def test_compare_with_a_change(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["compare", str(DEMO), "--set", "segments.*.new.section=136RE"]) == GOOD
    text = capsys.readouterr().out
    for part in ("JOBS", "TOTALS", "ORDERS", "BILL", "CHECKS", "MONEY", "115RE", "136RE", "mass in"):
        assert part in text
    assert main(["compare", str(DEMO), "--set", "segments.*.new.section=136RE", "--strict"]) == CHECK_FAILS


def test_compare_two_files_as_json_csv_and_workbook(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    other = tmp_path / "other.toml"
    shutil.copy(DEMO, other)
    other.write_text(other.read_text().replace('"115RE"', '"136RE"'))
    flags = ["--csv", str(tmp_path / "orders.csv"), "--xlsx", str(tmp_path / "both.xlsx")]
    assert main(["compare", str(DEMO), str(other), "--all", "--json", *flags]) == GOOD
    found = json.loads(capsys.readouterr().out)
    assert set(found) == {"jobs", "totals", "orders", "bill", "checks", "money"}
    with (tmp_path / "orders.csv").open(newline="") as file:
        assert len(list(csv.DictReader(file))) == len(found["orders"])
    assert (tmp_path / "both.xlsx").stat().st_size > 5000


def test_a_job_compared_with_itself_does_not_differ(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["compare", str(DEMO), str(DEMO)]) == GOOD
    assert "Nothing differs." in capsys.readouterr().out


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ([], "give the second job"),
        (["--set", "segments"], "FIELD=VALUE is wanted"),
        (["--set", "segments.*.new.sektion=115RE"], "no field `segments.1.new.sektion`"),
        (["--set", "segments.9.new.section=115RE"], "there are 4 entries"),
        (["--set", "temperatures.hottest_rail=warm"], "`warm` is not a number"),
        (["--set", "segments.*.new.section=115RX"], "115RX"),
    ],
)
def test_changes_that_cannot_be(words: list[str], says: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["compare", str(DEMO), *words]) == BAD_INPUT
    assert says in capsys.readouterr().err


# ---------------------------------------------------------------- many jobs


def test_bulk_answers_line_by_line(tmp_path: Path, capfdbinary: pytest.CaptureFixture[bytes]) -> None:
    line = subprocess.run([sys.executable, "-m", "railrules_client", "job", str(DEMO)], capture_output=True, check=True).stdout
    jobs = tmp_path / "jobs.ndjson"
    jobs.write_bytes(b"\n".join([json.dumps(json.loads(line)).encode(), b'{"name": 3}', b""]))
    assert main(["bulk", str(jobs), "--out", str(tmp_path / "out.ndjson")]) == BAD_INPUT
    first, second = (json.loads(told) for told in (tmp_path / "out.ndjson").read_bytes().splitlines())
    assert first["number"] == 0
    assert first["answer"]["rule"] == "takeoffs"
    assert second["problem"]["status"] in (400, 422)
    assert b"2 jobs, 1 refused" in capfdbinary.readouterr().err
    jobs.write_bytes(jobs.read_bytes().split(b"\n")[0])
    assert main(["bulk", str(jobs), "--totals", "--out", str(tmp_path / "totals.ndjson")]) == GOOD
    totals = json.loads((tmp_path / "totals.ndjson").read_bytes())["totals"]
    assert {total["item"] for total in totals} >= {"anchors", "tie-plates"}
    assert main(["bulk", str(tmp_path / "none.ndjson")]) == BAD_INPUT
    assert main(["bulk", str(jobs), "--connections", "0"]) == BAD_INPUT


# ---------------------------------------------------------------- files and the catalogue


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
    text = capsys.readouterr().out
    assert "mill table" in text
    assert "torsion constant" in text
    assert main(["section", "136RE", "--json"]) == GOOD
    assert json.loads(capsys.readouterr().out)["id"] == "136RE"
    assert main(["section", "136 re"]) == BAD_INPUT
    assert "136RE" in capsys.readouterr().err
    assert main(["rules", "--json"]) == GOOD
    assert "thermal.force" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (["39", "ft", "m"], "11.8872 m"),
        (["2-1/4 in", "mm"], "57.15 mm"),
        (["95 degF", "degC"], "35 degC"),
        (["136 lb/yd", "kg/m"], "67.4634321085 kg_per_m"),
    ],
)
def test_convert(words: list[str], says: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["convert", *words]) == GOOD
    assert capsys.readouterr().out.strip().startswith(says)
    assert main(["convert", *words, "--json"]) == GOOD
    assert set(json.loads(capsys.readouterr().out)) == {"value", "unit"}


@pytest.mark.parametrize(
    "words", [["39 ft", "lb"], ["39", "m"], ["39 furlong", "m"], ["39 ft", "furlong"], ["95 degF", "delta_degF"]]
)
def test_what_cannot_be_converted(words: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["convert", *words]) == BAD_INPUT
    assert capsys.readouterr().err.strip()


def test_a_house_rulebook_is_named_in_the_answer(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    book = tmp_path / "house.toml"
    book.write_text(
        '[rulebook]\nid = "harrow-vale"\nedition = "3"\ntitle = "Invented house"\n'
        '[[default]]\nid = "break-gap-limit"\nvalue = 3\nunit = "in"\nwhere = "standard 12"\n'
    )
    assert main(["takeoff", str(DEMO), "--json", "--rulebook", str(book)]) == GOOD
    assert json.loads(capsys.readouterr().out)["versions"]["rulebook"] == "harrow-vale 3"
    book.write_text(
        '[rulebook]\nid = "harrow-vale"\nedition = "3"\ntitle = "x"\n[[default]]\nid = "no-such"\nvalue = 3\nwhere = "x"\n'
    )
    assert main(["takeoff", str(DEMO), "--rulebook", str(book)]) == BAD_INPUT
    assert "house.toml" in capsys.readouterr().err


def test_a_job_is_printed_as_the_service_takes_it(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["job", str(DEMO), "--set", BOX, "--units", "si"]) == GOOD
    found = json.loads(capsys.readouterr().out)
    assert {segment["new"]["anchor_pattern"] for segment in found["segments"]} == {"box-every-tie"}
    assert found["units"] == "si"


# ---------------------------------------------------------------- completion


@pytest.mark.parametrize("shell", ["bash", "zsh", "fish"])
def test_completion_knows_every_command(shell: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["completion", shell]) == GOOD
    script = capsys.readouterr().out
    for command in ("takeoff", "check", "compare", "bulk", "section", "convert"):
        assert command in script
    assert "--strict" in script or "strict" in script


def test_bash_completes_with_the_script(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["completion", "bash"]) == GOOD
    script = tmp_path / "railrules.bash"
    script.write_text(capsys.readouterr().out)
    asking = (
        f"source {script}; COMP_WORDS=(railrules ta); COMP_CWORD=1; "
        "$(complete -p railrules | sed 's/.*-F \\([^ ]*\\).*/\\1/') railrules ta railrules; echo ${COMPREPLY[@]}"
    )
    found = subprocess.run(["bash", "--norc", "-c", asking], capture_output=True, text=True, check=False)
    assert found.stdout.strip() == "takeoff", found.stderr


def test_without_the_library_the_extra_is_named(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    monkeypatch.setitem(sys.modules, "shtab", None)
    assert main(["completion", "bash"]) == BAD_INPUT
    assert "railrules-client[completion]" in capsys.readouterr().err


def test_every_command_says_what_the_exit_codes_mean() -> None:
    assert "1 a check fails" in parser().format_help()
