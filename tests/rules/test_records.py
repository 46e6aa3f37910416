"""Records that cost less to make are as frozen, as equal and as strict as those that cost more."""

from __future__ import annotations

import copy
import pickle
from dataclasses import FrozenInstanceError, dataclass, field, replace

import pytest

from railrules_api.domain.amounts import Amount
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.rules.quantities.lines import Line


def test_nothing_but_the_cost_is_different() -> None:
    line = Line(item="anchors", product="", net=Amount(2.0, Kind.MASS))
    assert line == Line(item="anchors", product="", net=Amount(2.0, Kind.MASS), mass=None, package="")
    assert hash(line) == hash(copy.deepcopy(line))
    assert pickle.loads(pickle.dumps(line)) == line
    assert replace(line, item="spikes").item == "spikes"
    assert repr(line).startswith("Line(item='anchors'")
    with pytest.raises(FrozenInstanceError):
        line.item = "spikes"  # type: ignore[misc]
    with pytest.raises(TypeError, match="net"):
        Line(item="anchors", product="")  # type: ignore[call-arg]
    with pytest.raises(TypeError, match="depth"):
        Line(item="anchors", product="", net=Amount(2.0), depth=1.0)  # type: ignore[call-arg]


def test_what_an_init_does_besides_is_not_lost() -> None:
    @dataclass(frozen=True)
    class Loose:
        value: float

    @dataclass(slots=True)
    class Open:
        value: float

    @dataclass(frozen=True, slots=True)
    class Making:
        value: list[float] = field(default_factory=list)

    @dataclass(frozen=True, slots=True)
    class Checking:
        value: float

        def __post_init__(self) -> None:
            assert self.value

    for record in (Loose, Open, Making, Checking):
        with pytest.raises(TypeError):
            lean(record)
