"""String layouts held against an independent verifier, and by hand."""

from __future__ import annotations

import random
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from railrules_api.domain.errors import RefusedError
from railrules_api.domain.layout import weld_places
from railrules_api.domain.track import Curve
from railrules_api.rules.quantities.string_layout import BlockEnd, StringLayoutInput, evaluate
from tests.rules.laying_help import FT, IN, MILE, keep_out, laying, run, string, verify


def layout_of(*runs: Any, **changes: Any) -> tuple[StringLayoutInput, Any]:
    asked = StringLayoutInput(**laying(*runs, **changes))
    return asked, evaluate(asked)


def test_eight_miles_of_both_rails() -> None:
    length = 8 * 5280
    crossings = tuple(keep_out(place, place + 60, 10) for place in range(1560, length, 4000))
    asked, found = layout_of(run("left", 0, length), run("right", 0, length), keep_outs=crossings)
    verify(asked, found)
    assert found.junctions == 52
    assert found.welds_are_fewest
    assert found.strings_are_fewest
    assert found.strings == 53
    assert found.least_stagger is not None
    assert found.least_stagger >= 6 * FT - 1e-5


def test_whole_strings_need_no_cut() -> None:
    # 1,600 ft less 19 welds of 3/4 in, and a gap of 1 in at each weld
    pitch = 1600 - 19 * 0.75 / 12 + 1 / 12
    asked, found = layout_of(run("left", 100, 100 + 5 * pitch))
    verify(asked, found)
    assert (found.strings, found.cuts, found.cut_pieces, found.offcuts) == (5, 0, 0, ())
    assert [weld.kind for weld in found.welds] == ["weld", *["junction"] * 4, "weld"]
    assert found.lines == ()


def test_a_weld_is_moved_out_of_a_crossing() -> None:
    asked, found = layout_of(run("left", 0, 3000), keep_outs=(keep_out(1580, 1620, 20),))
    verify(asked, found)
    assert found.junctions == 1
    assert found.welds[1].station <= 1560 * FT + 1e-5


def test_the_second_rail_starts_with_the_cut_piece() -> None:
    pitch = 1600 - 19 * 0.75 / 12 + 1 / 12
    length = 4 * pitch + 500
    asked, found = layout_of(run("left", 0, length), run("right", 0, length))
    verify(asked, found)
    assert found.junctions == 8
    assert found.cut_pieces == 2
    # both cut pieces come out of one string
    assert found.strings == 9
    assert len(found.offcuts) == 1


def test_a_weld_keeps_clear_of_rail_that_begins_beyond_the_end_of_the_other() -> None:
    """The stagger is 40 ft. Six feet beyond the end of the left rail begins the right: no weld stands 31 ft before that end."""
    whole = layout_of(run("left", 0.0, 1000.0))[1].string_length / FT
    end = whole + 31.0
    found_at = []
    for apart in (6.0, 41.0):
        given, found = layout_of(run("left", 0.0, end), run("right", end + apart, end + 900.0), stagger=40 * FT)
        verify(given, found)
        first, weld, last = sorted(one.station / FT for one in found.welds if one.rail == "left")
        assert (first, last) == (0.0, pytest.approx(end))
        found_at.append(weld)
    assert found_at[0] <= end + 6.0 - 40.0 + 1e-6
    assert found_at[1] == pytest.approx(whole, abs=0.2)


def test_a_left_over_is_laid_ahead_of_its_cut_and_the_answer_says_how_far() -> None:
    # closed by joints, a piece is as long as its run; the first and the last come out of one string
    runs = [run("left", *limits, "joint", "joint") for limits in ((0, 500), (2000, 3500), (6000, 6900))]
    asked, found = layout_of(*runs)
    verify(asked, found)
    assert (found.strings, [piece.string for piece in found.pieces]) == (2, [1, 1, 2])
    assert found.carried_farthest == pytest.approx(5500 * FT)
    near, found = layout_of(*runs, leftover_reach=5000 * FT)
    verify(near, found)
    assert (found.strings, found.carried_farthest) == (3, None)
    parted, found = layout_of(*runs, train_strings=1)
    verify(parted, found)
    assert found.strings == 3
    # the right rail beside a cut piece is behind the train when the piece is laid
    beside, found = layout_of(run("left", 0, 500, "joint", "joint"), run("right", 100, 400, "joint", "joint"))
    verify(beside, found)
    assert found.strings == 2


def test_joints_leave_the_rail_longer_than_welds() -> None:
    _, welded = layout_of(run("left", 0, 1000))
    _, jointed = layout_of(run("left", 0, 1000, "joint", "insulated-joint"))
    assert jointed.pieces[0].length == pytest.approx(1000 * FT, abs=1e-9)
    assert welded.pieces[0].length == pytest.approx(1000 * FT - 1 * IN, abs=1e-9)
    assert jointed.welds == ()


def test_flash_butt_in_the_field_takes_rail() -> None:
    asked, found = layout_of(run("left", 0, 3000), field_weld="flash-butt")
    verify(asked, found)
    assert sum(piece.length for piece in found.pieces) == pytest.approx(3000 * FT + 2 * 1.5 * IN, abs=1e-6)


def test_runs_that_continue_are_one_and_a_shared_weld_counts_once() -> None:
    _, whole = layout_of(run("left", 0, 9000))
    _, joined = layout_of(run("left", 4000, 9000, "continues"), run("left", 0, 4000, "weld", "continues"))
    assert joined == whole
    _, tied = layout_of(run("left", 0, 4000), run("left", 4000, 9000))
    assert tied.closing_welds == 3


def test_curved_rails_differ_in_length() -> None:
    curve = Curve(begin=500 * FT, end=1500 * FT, radius=955 * FT, hand="left")
    asked, found = layout_of(run("left", 0, 2000, "joint", "joint"), run("right", 0, 2000, "joint", "joint"), curves=(curve,))
    verify(asked, found)
    by_rail = {rail: sum(piece.length for piece in found.pieces if piece.rail == rail) for rail in ("left", "right")}
    # each rail has one gap; the turning angle times the distance of the rails lies between them
    assert by_rail["right"] - by_rail["left"] == pytest.approx(1000 / 955 * 59.5 * IN, abs=1e-6)


def test_work_blocks_end_at_the_last_string_end() -> None:
    pitch = 1600 - 19 * 0.75 / 12 + 1 / 12
    _, found = layout_of(run("left", 0, 4 * pitch), block_length=2500 * FT)
    assert [(round(one.station / FT / pitch, 6), one.at_string_end) for one in found.block_closures] == [(1.0, True), (3.0, True)]
    assert found.lines[0].net.value == 2
    _, found = layout_of(run("left", 0, 4 * pitch), block_ends=(BlockEnd(station=1700 * FT), BlockEnd(station=2000 * FT)))
    assert [one.at_string_end for one in found.block_closures] == [True, False]
    assert found.block_closures[1].station == 2000 * FT
    _, found = layout_of(run("left", 0, 4 * pitch), block_ends=(BlockEnd(station=4 * pitch * FT),))
    assert found.block_closures == ()


@pytest.mark.parametrize(
    ("runs", "changes", "path"),
    [
        ([], {}, ("runs",)),
        ([run("left", 10, 10)], {}, ("runs", 0, "end")),
        ([run("left", 0, 100), run("left", 90, 300)], {}, ("runs", 1, "begin")),
        ([run("left", 0, 100), run("left", 100, 300, "joint")], {}, ("runs", 1, "begin_closing")),
        ([run("left", 0, 100, "continues")], {}, ("runs", 0, "begin_closing")),
        ([run("left", 0, 100, "weld", "continues")], {}, ("runs", 0, "end_closing")),
        ([run("left", 0, 19)], {}, ("runs", 0, "end")),
        ([run("left", 0, 5000)], {"keep_outs": (keep_out(1000, 3000),)}, ("runs", 0)),
        ([run("left", 0, 5000)], {"keep_outs": (keep_out(1000, 900),)}, ("keep_outs", 0, "end")),
        ([run("left", 0, 5000)], {"minimum_piece": 1700 * FT}, ("minimum_piece",)),
        ([run("left", 0, 5000), run("right", 0, 5000)], {"stagger": 1640 * FT}, ("runs", 0)),
        ([run("left", 0, 5e7)], {}, ("runs",)),
        ([run("left", 0, 5000)], {"string": string(made_temperature=290.0)}, ("string", "rail_temperature")),
        ([run("left", 0, 5000)], {"string": string(stock=())}, ("string", "stock")),
        ([run("left", 0, 5000)], {"string": string(1 / 0.3048, 1, end_trim=0.5)}, ("string", "stock")),
        ([run("left", 0, 5000)], {"curves": (Curve(begin=9.0, end=8.0, radius=300.0, hand="left"),)}, ("curves", 0, "end")),
        ([run("left", 0, 5000)], {"curves": (Curve(begin=1.0, end=8.0, hand="left"),)}, ("curves", 0, "radius")),
        (
            [run("left", 0, 5000)],
            {
                "curves": (
                    Curve(begin=1.0, end=8.0, radius=300.0, hand="left"),
                    Curve(begin=7.0, end=9.0, radius=300.0, hand="left"),
                )
            },
            ("curves", 1, "begin"),
        ),
        # each piece gives both its welds more than the shortest piece has
        ([run("left", 0, 5000)], {"field_weld": "flash-butt", "field_consumption": 20 * FT}, ("field_consumption",)),
        ([run("left", 0, 5000)], {"block_length": 100.0, "block_ends": (BlockEnd(station=9.0),)}, ("block_length",)),
        (
            [run("left", 0, 5000)],
            {"block_ends": (BlockEnd(station=9.0), BlockEnd(station=9.0))},
            ("block_ends", 1, "station"),
        ),
    ],
)
def test_what_contradicts_itself_is_refused(runs: list[Any], changes: dict[str, Any], path: tuple[Any, ...]) -> None:
    with pytest.raises(RefusedError) as refused:
        layout_of(*runs, **changes)
    assert refused.value.refusals[0].path == path


def random_job(chance: random.Random) -> StringLayoutInput:
    closings = ("weld", "compromise-weld", "joint", "insulated-joint", "compromise-joint")
    runs = []
    for rail in ("left", "right"):
        place = chance.uniform(0, 500)
        closing = chance.choice(closings)
        for _ in range(chance.randint(0 if rail == "right" else 1, 4)):
            end = place + chance.uniform(40, 6000)
            last = chance.choice((*closings, "continues"))
            runs.append(run(rail, place, end, closing, last))
            apart = last != "continues" and chance.random() < 0.5
            place, closing = (end + chance.uniform(1, 800), chance.choice(closings)) if apart else (end, last)
        if runs and runs[-1].rail == rail and runs[-1].end_closing == "continues":
            runs[-1] = run(rail, runs[-1].begin / FT, runs[-1].end / FT, runs[-1].begin_closing, "weld")
    chance.shuffle(runs)
    outs = []
    for _ in range(chance.randint(0, 6)):
        place = chance.uniform(0, 12000)
        outs.append(keep_out(place, place + chance.uniform(0, 150), chance.choice((0.0, 10.0, 30.0))))
    curves = []
    place = 0.0
    for _ in range(chance.randint(0, 3)):
        begin = place + chance.uniform(0, 2000)
        place = begin + chance.uniform(50, 2000)
        curves.append(
            Curve(begin=begin * FT, end=place * FT, radius=chance.uniform(80, 2000), hand=chance.choice(("left", "right")))
        )
    wear: dict[str, Any] = {"drilled_ends": chance.choice((0, 0, 1, 2))}
    if chance.random() < 0.5:
        wear |= {"made_temperature": 290.0, "rail_temperature": chance.uniform(260.0, 320.0)}
    return StringLayoutInput(
        **laying(
            *runs,
            string=string(chance.choice((39.0, 80.0)), chance.choice((5, 20, 37)), **wear),
            keep_outs=tuple(outs),
            curves=tuple(curves),
            field_weld=chance.choice(("thermite", "flash-butt")),
            minimum_piece=chance.choice((4.0, 13.0, 19.5)) * FT,
            stagger=chance.choice((0.0, 2.0, 6.0, 25.0)) * FT,
            leftover_reach=chance.choice((None, None, 0.0, 500.0)),
            train_strings=chance.choice((None, 1, 2, 6)),
        )
    )


@settings(max_examples=400, deadline=None)
@given(seed=st.integers(0, 2**32))
def test_random_jobs_are_laid_as_asked(seed: int) -> None:
    asked = random_job(random.Random(seed))
    try:
        found = evaluate(asked)
    except RefusedError:
        assume(False)  # too short a run, or no room for a weld
    verify(asked, found)


def test_the_order_of_the_runs_does_not_matter() -> None:
    runs = [run("left", 0, 3000), run("right", 0, 3000), run("left", 4000, 9000), run("right", 3500, 9000, "joint")]
    _, first = layout_of(*runs)
    _, second = layout_of(*runs[::-1])
    assert first == second


def test_a_year_of_relay_is_laid_in_one_answer() -> None:
    length = 700 * MILE / FT
    crossings = tuple(keep_out(place, place + 60, 10) for place in range(1560, int(length), 10_000))
    _, found = layout_of(run("left", 0, length), run("right", 0, length), keep_outs=crossings)
    assert found.welds_are_fewest
    assert found.junctions >= 2 * (length // 1600) - 2


def test_a_weld_is_cut_in_from_the_one_place_that_reaches_the_next() -> None:
    # welds may stand at 4, at 5 and from 7 to 9 of a run of 13; whole strings reach over 6, no piece over less than 3. Two
    # welds are needed, and a last piece that lies whole wants the second at 7, which 4 alone is far enough before.
    blocked = [(0.0, 4.0), (4.0, 5.0), (5.0, 7.0), (9.0, 13.0)]
    assert weld_places(0.0, 13.0, pitch=6.0, shortest=3.0, blocked=blocked) == pytest.approx((4.0, 7.0), abs=1e-5)


def test_a_weld_may_stand_at_the_very_limit_of_a_keep_out() -> None:
    assert weld_places(0.0, 10.0, pitch=6.0, shortest=3.0, blocked=[(6.0, 8.0)]) == pytest.approx((6.0,), abs=1e-5)
    # half a metre on it may not, and the whole string lies last
    assert weld_places(0.0, 10.0, pitch=6.0, shortest=3.0, blocked=[(5.5, 8.0)]) == pytest.approx((4.0,), abs=1e-5)
