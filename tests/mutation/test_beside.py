"""What mutation testing found untested: refusals and numbers that neither the check cases nor the probes come upon."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.api.problems import ProblemError
from railrules_api.domain.counting import round_up
from railrules_api.domain.intervals import Interval, subtract, union
from tests.hostile.extremes import examples
from tests.support.asking import ask

if TYPE_CHECKING:
    from railrules_api.api.service import Service


def feet(value: float) -> dict[str, Any]:
    return {"value": value, "unit": "ft"}


def stretch(**parts: Any) -> dict[str, Any]:
    usual = {"begin": feet(0), "end": feet(1000), "rails": "both", "ties": {"spacing": {"value": 20, "unit": "in"}}}
    return {**usual, **parts}


def curve(begin: float, end: float, **parts: Any) -> dict[str, Any]:
    return {"begin": feet(begin), "end": feet(end), "degree": {"value": 4, "unit": "deg"}, "hand": "left", **parts}


def span(begin: float, end: float) -> dict[str, Any]:
    return {"begin": feet(begin), "end": feet(end)}


HANDS = "high and low rail exist only where all of the stretch lies in curves of one hand"
ABOVE = "outside the allowed range; the minimum itself is not allowed"
TIES: list[tuple[dict[str, Any], str, str, float | None, float | None]] = [
    (stretch(end=feet(0)), "/end", "end must lie beyond begin", 0, None),
    (stretch(left_out=[span(5, 6), span(7, 7)]), "/left_out/1/end", "end must lie beyond begin", 7, None),
    (stretch(left_out=[span(5, 6), span(-1, 7)]), "/left_out/1/begin", "lies before the stretch", 0, None),
    (stretch(left_out=[span(5, 6), span(7, 1001)]), "/left_out/1/end", "lies beyond the stretch", None, 1000),
    (stretch(curves=[curve(0, 9), curve(10, 10)]), "/curves/1/end", "end must lie beyond begin", 10, None),
    (stretch(curves=[curve(0, 9), curve(10, 1001)]), "/curves/1/end", "curve ends beyond the stretch", None, 1000),
    (stretch(rails="low", curves=[curve(0, 999)]), "/rails", HANDS, None, None),
    (stretch(rails="low", curves=[curve(0, 500), curve(500, 1000, hand="right")]), "/rails", HANDS, None, None),
    (stretch(rails="low"), "/rails", HANDS, None, None),
]


@pytest.mark.parametrize("case", TIES, ids=lambda case: case[1])
def test_a_stretch_that_contradicts_itself(
    case: tuple[dict[str, Any], str, str, float | None, float | None], service: Service
) -> None:
    place, pointer, detail, minimum, maximum = case
    with pytest.raises(ProblemError) as caught:
        ask(service, "quantities.ties", {"stretch": place})
    [fault] = caught.value.faults
    assert (fault.pointer, fault.detail) == ("/stretch" + pointer, detail)
    for found, wanted in ((fault.minimum, minimum), (fault.maximum, maximum)):
        assert (found if isinstance(found, float) else None) == (None if wanted is None else pytest.approx(wanted))
    if pointer == "/rails":
        assert fault.allowed == ["both", "left", "right"]


def test_curves_must_not_overlap(service: Service) -> None:
    with pytest.raises(ProblemError) as caught:
        ask(service, "quantities.ties", {"stretch": stretch(curves=[curve(0, 20), curve(19, 30)])})
    [fault] = caught.value.faults
    assert fault.pointer == "/stretch/curves/1/begin"
    assert fault.minimum == pytest.approx(20)


@pytest.mark.parametrize("rails", ["high", "low"])
def test_high_and_low_rail_are_known_in_curves_of_one_hand(rails: str, service: Service) -> None:
    place = stretch(rails=rails, curves=[curve(0, 400), curve(400, 1000)])
    assert ask(service, "quantities.ties", {"stretch": place})["result"]["ties"] == 600


ORDERS: list[tuple[dict[str, Any], str, str]] = [
    ({"net": {"value": 5, "unit": "each"}, "step": feet(1)}, "/step", "the item's total is a count, so this must be one"),
    (
        {"net": {"value": 5, "unit": "ft"}, "step": {"value": 1, "unit": "each"}},
        "/step",
        "the item's total is a length, so this must be one",
    ),
    ({"net": {"value": 5, "unit": "each"}, "step": {"value": 0, "unit": "each"}}, "/step/value", ABOVE),
    (
        {"net": {"value": 5, "unit": "ft"}, "mass_each": {"value": 1, "unit": "lb"}},
        "/mass_each",
        "only a count has a mass of one piece; give net_mass",
    ),
]


@pytest.mark.parametrize(("body", "pointer", "detail"), ORDERS)
def test_an_order_that_contradicts_itself(body: dict[str, Any], pointer: str, detail: str, service: Service) -> None:
    with pytest.raises(ProblemError) as caught:
        ask(service, "quantities.order", body)
    [fault] = caught.value.faults
    assert (fault.pointer, fault.detail) == (pointer, detail)


def test_a_small_total_has_a_mass_too(service: Service) -> None:
    body = {"net": {"value": 0.5, "unit": "ft"}, "net_mass": {"value": 20, "unit": "lb"}, "units": "us"}
    assert ask(service, "quantities.order", body)["result"]["mass"]["value"] == pytest.approx(20 / ask_tons(service))


def ask_tons(service: Service) -> float:
    """Return how many pounds the unit has in which masses are told."""
    body = {"net": {"value": 2000, "unit": "lb"}}
    found: float = 2000 / ask(service, "quantities.order", body)["result"]["mass"]["value"]
    return found


def test_plates_come_off_only_where_there_were_plates(service: Service) -> None:
    body = next(body for rule, body in examples() if rule == "quantities.work-per-tie")

    def plates(share: float) -> float:
        lines = ask(service, "quantities.work-per-tie", {**body, "plated_share": share})["result"]["operations"]
        found: float = next(line["amount"]["value"] for line in lines if line["operation"] == "remove-plates")
        return found

    assert plates(0.5) == pytest.approx(0.5 * plates(1.0))


def test_rounding_up_to_steps() -> None:
    assert round_up(5.0000000001, 2.5) == 5.0
    assert round_up(0.9000000000001, 0.3) == pytest.approx(0.9)
    assert round_up(0.4, 0.3) == pytest.approx(0.6)


def test_intervals_that_touch() -> None:
    assert union([Interval(1.0, 2.0), Interval(0.0, 1.0)]) == (Interval(0.0, 2.0),)
    assert subtract(Interval(0.0, 3.0), [Interval(-1.0, 0.0), Interval(3.0, 4.0)]) == (Interval(0.0, 3.0),)
    assert subtract(Interval(0.0, 3.0), [Interval(0.0, 1.0), Interval(2.0, 3.0)]) == (Interval(1.0, 2.0),)
