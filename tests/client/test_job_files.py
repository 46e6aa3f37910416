"""Spreadsheets of segments as estimators keep them, with the mistakes that people make: read, or refused with row and column."""

from __future__ import annotations

from pathlib import Path

import pytest
from railrules_client.command_line.commands import BAD_INPUT, GOOD
from railrules_client.command_line.running import main
from railrules_client.jobs import SpreadsheetError, read
from railrules_client.jobs.headings import paths_of
from railrules_client.models import Segment

from tests.client.job_files import JOB, complaint, long_line, segments, written

# ---------------------------------------------------------------- what is read


def test_units_in_headings_and_in_cells_blank_rows_and_a_byte_order_mark(tmp_path: Path) -> None:
    text = "\ufeffname,Begin [mi],end (mi),ties.spacing\n\n,,,\na,12,14.6,19.5 in\n  ,,\t,\nb,14.6 mi,17,500mm\n"
    assert segments(tmp_path, text) == [
        {
            "name": "a",
            "begin": {"value": 12.0, "unit": "mi"},
            "end": {"value": 14.6, "unit": "mi"},
            "ties": {"spacing": {"value": 19.5, "unit": "in"}},
        },
        {
            "name": "b",
            "begin": {"value": 14.6, "unit": "mi"},
            "end": {"value": 17.0, "unit": "mi"},
            "ties": {"spacing": {"value": 500.0, "unit": "mm"}},
        },
    ]


def test_every_shape_of_field(tmp_path: Path) -> None:
    text = (
        "name,track,begin [ft],end [ft],rails,renewed_share,track_class,old.section,new.pins_per_plate,new.elastic_fasteners,"
        "ties.count,ties.per_length [ft],new.spikes.extra_at_joint_ties,new.spikes.bands.1.rail_spikes\n"
        "a,1,0,3900,left,0.15,4,90RA-A,2,yes,24,39,0,2\n"
    )
    (found,) = segments(tmp_path, text)
    assert found["track"] == "1"
    assert found["track_class"] == 4
    assert isinstance(found["track_class"], int)
    assert found["renewed_share"] == 0.15
    assert found["old"] == {"section": "90RA-A"}
    assert found["new"]["elastic_fasteners"] is True
    assert found["new"]["spikes"] == {"extra_at_joint_ties": 0, "bands": [{"rail_spikes": 2}]}
    assert found["ties"] == {"count": 24.0, "per_length": {"value": 39.0, "unit": "ft"}}


@pytest.mark.parametrize(
    ("stated", "cell", "value"),
    [
        ("", "1234.5", 1234.5),
        ("# decimal: comma", "1234,5", 1234.5),
        ("# thousands: comma", '"1,234"', 1234.0),
        ("# thousands: comma", '"1,234.5"', 1234.5),
        ("# decimal: comma\n# thousands: point", "1.234,5", 1234.5),
        ("# thousands: space", "1 234.5", 1234.5),
        ("# thousands: space", "1\u00a0234", 1234.0),
        ("# Thousands = apostrophe", "1\u2019234", 1234.0),
        ("# thousands: comma", "1234", 1234.0),
        ("", "1.2e3", 1200.0),
    ],
)
def test_numbers_as_the_file_says_it_writes_them(tmp_path: Path, stated: str, cell: str, value: float) -> None:
    text = f"# made for a test\n{stated}\nname;begin [ft];end [ft]\na;0;{cell}\n"
    assert segments(tmp_path, text)[0]["end"] == {"value": value, "unit": "ft"}


@pytest.mark.parametrize("separator", [",", ";", "\t"])
def test_the_separator_is_the_one_between_the_headings(tmp_path: Path, separator: str) -> None:
    rows = [["name", "begin [mi]", "end [mi]"], ["a", "1", "2"]]
    assert segments(tmp_path, "\n".join(separator.join(row) for row in rows))[0]["end"]["value"] == 2.0


def test_lists_in_one_cell_in_numbered_columns_and_in_files_of_their_own(tmp_path: Path) -> None:
    one = segments(
        tmp_path,
        "name,begin [mi],end [mi],curves [mi],features [mi],left_out\n"
        "a,12,17,12.42 to 12.71 2 deg left; 13.5 to 13.8 1432.5 ft right,"
        "turnout 14.1 to 14.13 named Marl Pit switch; insulated-joint 15,16 mi to 16.1 mi\n",
    )
    numbered = segments(
        tmp_path,
        "name,begin [mi],end [mi],curves.1.begin [mi],curves.1.end [mi],curves.1.degree [deg],curves.1.hand,"
        "curves.2.begin [mi],curves.2.end [mi],curves.2.radius [ft],curves.2.hand,features.1.kind,features.1.begin [mi],"
        "features.1.end [mi],features.1.name,features.2.kind,features.2.begin [mi],left_out.1.begin [mi],left_out.1.end [mi]\n"
        "a,12,17,12.42,12.71,2,left,13.5,13.8,1432.5,right,turnout,14.1,14.13,Marl Pit switch,insulated-joint,15,16,16.1\n",
    )
    curves = written(
        tmp_path,
        "segment,begin [mi],end [mi],degree [deg],radius [ft],hand\na,12.42,12.71,2,,left\na,13.5,13.8,,1432.5,right\n",
        "curves.csv",
    )
    features = written(
        tmp_path,
        "segment,kind,begin [mi],end [mi],name\na,turnout,14.1,14.13,Marl Pit switch\n,,,,\na,insulated-joint,15,,\n",
        "features.csv",
    )
    left_out = written(tmp_path, "segment,begin [mi],end [mi]\na,16,16.1\n", "left_out.csv")
    filed = segments(tmp_path, "name,begin [mi],end [mi]\na,12,17\n", curves, features, left_out)
    assert one == numbered == filed
    assert one[0]["curves"][1] == {
        "begin": {"value": 13.5, "unit": "mi"},
        "end": {"value": 13.8, "unit": "mi"},
        "radius": {"value": 1432.5, "unit": "ft"},
        "hand": "right",
    }


def test_rows_take_over_what_they_share_and_what_they_are_like(tmp_path: Path) -> None:
    text = (
        "name,like,begin [mi],end [mi],old.section,old.spikes_per_plate,features [mi]\n"
        "a,,1,2,90RA-A,2,road-crossing 1.5 to 1.51\nb,a,2,3,,4,\n"
    )
    first, second = segments(tmp_path, text, rails="both", old={"section": "115RE", "rail_length": "39 ft"})
    assert first["rails"] == "both"
    assert first["old"] == {"section": "90RA-A", "rail_length": {"value": 39.0, "unit": "ft"}, "spikes_per_plate": 2.0}
    assert second["old"] == {"section": "90RA-A", "rail_length": {"value": 39.0, "unit": "ft"}, "spikes_per_plate": 4.0}
    assert "features" not in second


def test_every_field_of_a_segment_has_a_heading() -> None:
    known = paths_of(Segment)
    for path in ("name", "begin", "rails", "tie_kind", "ties.spacing", "old.section", "new.section", "curves", "curves.N.hand"):
        assert path in known


# ---------------------------------------------------------------- what is refused


@pytest.mark.parametrize(
    ("text", "where", "what"),
    [
        ("name,begin [mi],end [mi]\na,12,14\nb,14,13\n", "row 3, column C (end [mi])", "stations must rise"),
        ("name,begin [mi],end [mi]\na,12,14\nb,11,12\n", "row 3, column B (begin [mi])", "mile posts run backward"),
        ("name,begin,end\na,12 mi,14 mi\nb,10 km,11 km\n", "row 3, column B (begin)", "mile posts run backward"),
        ("name,begin [mi],end [mi]\na,1,2\n\na,2,3\n", "row 4, column A (name)", "is the name of row 2 already"),
        ('name,begin [ft],end [ft]\na,0,"1,234"\n', "row 2, column C (end [ft])", "may be 1234 or 1.234"),
        ('name,begin [ft],end [ft]\na,0,"12,5"\n', "row 2, column C (end [ft])", "`# decimal: comma`"),
        ('name,begin [ft],end [ft]\na,0,"1,234.5"\n', "row 2, column C (end [ft])", "grouped digits"),
        ("# decimal: comma\nname;begin [ft];end [ft]\na;0;1234.5\n", "row 3, column C", "no number with a decimal comma"),
        ('# thousands: comma\nname,begin [ft],end [ft]\na,0,"12,34"\n', "row 3, column C", "grouped by threes"),
        ("name,begin [ft],end [ft]\na,0,12+34\n", "row 2, column C", "`12+34` is not a number"),
        ("name,begin,end [ft]\na,0,12\n", "row 2, column B (begin)", "no unit"),
        ("name,begin [mi],end [mi]\na,0 ft,12\n", "row 2, column B", "the cell says ft and the heading says mi"),
        ("name,begin [miles],end [mi]\na,0,12\n", "row 1, column B", "`miles` is no unit of length"),
        ("name,begin,end [mi]\na,0 feet,12\n", "row 2, column B", "`feet` is no unit of length"),
        ("name,begin [mi],end [mi],rails [mi]\na,0,12,both\n", "row 1, column D", "`rails` has no unit"),
        ("name,begin [mi],end [mi],tie_spacing\na,0,12,3\n", "row 1, column D", "no field `tie_spacing`; near: "),
        ("name,begin [mi],end [mi],ties\na,0,12,3\n", "row 1, column D", "name one of them: ties.spacing"),
        ("name,begin [mi],end [mi],begin [km]\na,0,12,3\n", "row 1, column D", "the same field as column B"),
        ("name,begin [mi],,end [mi]\na,0,5,12\n", "row 1, column C", "no heading, and row 2 has something"),
        ("name,begin [mi]\na,0\n", "row 1", "no column `end`"),
        ("name,begin [mi],end [mi]\na,0,1\nTotal,,5\n", "row 3, column B (begin [mi])", "blank"),
        ("name,begin [mi],end [mi]\n,0,1\n", "row 2, column A (name)", "blank"),
        ("name,begin [mi],end [mi]\nMarl Pit, south,0,1\n", "row 2, column D", "4 cells under 3 headings"),
        ("name,begin [mi],end [mi]\na,0\n", "row 2, column C", "2 cells under 3 headings"),
        ("name,begin [mi],end [mi],rails\na,0,1,Both\n", "row 2, column D (rails)", "one of both"),
        ("name,begin [mi],end [mi],renewed_share\na,0,1,15%\n", "row 2, column D", "0.15 for 15 %"),
        ("name,begin [mi],end [mi],track_class\na,0,1,4.5\n", "row 2, column D", "a whole number"),
        ("name,begin [mi],end [mi],new.elastic_fasteners\na,0,1,x\n", "row 2, column D", "yes or no"),
        ("name,begin [mi],end [mi]\na,0,#REF!\n", "row 2, column C", "the error #REF!"),
        ("name,begin [mi],end [mi]\na,0,1e999\n", "row 2, column C", "too large"),
        ("name,begin [mi],end [mi],curves [mi]\na,0,1,0.1 - 0.2 2 deg left\n", "row 2, column D", "not of the form"),
        ("name,begin [mi],end [mi],curves [mi]\na,0,1,0.1 to 0.2 2 left\n", "row 2, column D", "needs its unit"),
        ("name,begin [mi],end [mi],curves.2.begin [mi]\na,0,1,0.1\n", "row 2", "entry 1 of a list is blank"),
        ("name,begin [mi],end [mi],like\na,0,1,b\nb,1,2,\n", "row 2, column D (like)", "no row above is named `b`"),
        ("name,begin [mi];end [mi]\na,0;1\n", "line.csv", "more than one of comma, semicolon and tab"),
        ('name,begin [mi],end [mi]\na,0,1\n"b,1,2\n', "row 3", "unexpected end of data"),
        ("# decimal: dot\nname,begin [mi],end [mi]\na,0,1\n", "row 1", "`dot` is no sign"),
        ("# decimal: comma\n# thousands: comma\nname,begin [mi],end [mi]\na,0,1\n", "line.csv", "cannot have the same sign"),
        ("", "line.csv", "no table of segments among the files"),
        ("# only a remark\n", "line.csv", "no headings"),
        ("name,begin [mi],end [mi]\n", "line.csv", "no rows below the headings"),
    ],
)
def test_mistakes_are_refused_with_row_and_column(tmp_path: Path, text: str, where: str, what: str) -> None:
    told = complaint(tmp_path, text)
    assert what in told
    if what != "no table of segments among the files":
        assert told.startswith("line.csv")
        assert where in told


def test_all_mistakes_are_told_together(tmp_path: Path) -> None:
    told = complaint(tmp_path, "name,begin [mi],end [mi]\na,x,1\nb,2,y\nb,3,4\n").splitlines()
    assert [line.split(":")[0] for line in told] == [
        "line.csv, row 2, column B (begin [mi])",
        "line.csv, row 3, column C (end [mi])",
        "line.csv, row 4, column A (name)",
    ]


@pytest.mark.parametrize(
    ("name", "text", "what"),
    [
        (
            "curves.csv",
            "segment,begin [mi],end [mi],degree [deg],hand\nb,0.1,0.2,2,left\n",
            "row 2, column A (segment): no segment",
        ),
        ("curves.csv", "segment,begin [mi],end [mi],degree [deg],hand\na,0.2,0.1,2,left\n", "row 2, column C (end [mi])"),
        ("curves.csv", "segment,begin [mi],end [mi],hand\na,0.5,0.6,left\na,0.1,0.2,left\n", "row 3, column B (begin [mi])"),
        ("features.csv", "segment,kind,station [mi]\na,turnout,0.1\n", "row 1, column C: no field `station`"),
        ("features.csv", "kind,begin [mi]\nturnout,0.1\n", "no column `segment`"),
        ("bridges.csv", "segment,begin [mi]\na,0.1\n", "a table is named segments, job, curves"),
    ],
)
def test_mistakes_in_files_of_lists(tmp_path: Path, name: str, text: str, what: str) -> None:
    told = complaint(tmp_path, "name,begin [mi],end [mi]\na,0,1\n", written(tmp_path, text, name))
    assert told.startswith(name)
    assert what in told


def test_a_list_is_in_one_place_only(tmp_path: Path) -> None:
    curves = written(tmp_path, "segment,begin [mi],end [mi],hand\na,0.1,0.2,left\n", "curves.csv")
    told = complaint(tmp_path, "name,begin [mi],end [mi],curves [mi]\na,0,1,0.3 to 0.4 2 deg left\n", curves)
    assert "has its curves in its own row already" in told


def test_files_of_another_form(tmp_path: Path) -> None:
    (tmp_path / "line.csv").write_bytes("name,begin [mi],end [mi]\nM\u00fchle,0,1\n".encode("cp1252"))
    with pytest.raises(SpreadsheetError, match=r"line\.csv, row 2: not UTF-8"):
        read(tmp_path / "line.csv")
    with pytest.raises(SpreadsheetError, match="CSV or XLSX is wanted"):
        read(written(tmp_path, "", "line.xls"))
    with pytest.raises(SpreadsheetError, match=r"none\.csv"):
        read(tmp_path / "none.csv")


# ---------------------------------------------------------------- the command


def test_500_rows_are_read_and_answered(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path, line = written(tmp_path, JOB, "job.toml"), written(tmp_path, long_line(500))
    found = read(path, line)
    assert isinstance(found.request["segments"], list)
    assert len(found.request["segments"]) == 500
    assert found.where("/segments/499/curves") == "line.csv, row 501"
    assert found.where("/segments/498/curves/0/degree/value") == "line.csv, row 500, column E (curves [mi])"
    assert main(["takeoff", str(path), "--segments", str(line)]) == GOOD
    assert "500 segments, 264,000 ft of track" in capsys.readouterr().out


def test_refusals_of_the_service_name_row_and_column(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = written(tmp_path, JOB, "job.toml")
    text = "name,begin [mi],end [mi],renewed_share,new.plate\na,0,1,0.2,8-14\nb,1,2,1.5,8-14\nc,2,3,0.2,8-41\n"
    assert main(["takeoff", str(path), "--segments", str(written(tmp_path, text))]) == BAD_INPUT
    told = capsys.readouterr().err
    assert "line.csv, row 3, column D (renewed_share)" in told
    assert main(["takeoff", str(path), "--segments", str(written(tmp_path, text.replace("1.5", "0.5")))]) == BAD_INPUT
    assert "line.csv, row 4, column E (new.plate)" in capsys.readouterr().err


def test_a_job_with_segments_of_its_own_takes_no_spreadsheet(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = written(tmp_path, JOB + "[[segments]]\nname = 'a'\n", "job.toml")
    assert main(["takeoff", str(path), "--segments", str(written(tmp_path, long_line(1)))]) == BAD_INPUT
    assert "has segments of its own" in capsys.readouterr().err
