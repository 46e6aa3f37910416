"""Described records taken apart, and refusals: what a maker of a rule gets wrong is said at once."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

import pytest

from railrules_api.domain.errors import RefusedError, refuse
from railrules_api.domain.fields import Field, slots_of


@dataclass(frozen=True, slots=True, kw_only=True)
class Listed:
    """A record of lists and of one field that may be left out."""

    shares: Annotated[tuple[float, ...], Field("Shares.")] = ()
    words: Annotated[tuple[str, ...], Field("Words.")] = ()
    count: Annotated[int | None, Field("Count.")] = None


@dataclass(frozen=True, slots=True)
class Undescribed:
    """A record whose field says nothing of itself."""

    length: float


@dataclass(frozen=True, slots=True)
class Shapeless:
    """A record of a type that has no form in a request."""

    raw: Annotated[bytes, Field("Bytes.")]


@dataclass(frozen=True, slots=True)
class Mapped:
    """A record that holds what is no class."""

    prices: Annotated[dict[str, float], Field("Prices.")]


def test_shapes_of_lists() -> None:
    assert [(slot.name, slot.shape, slot.optional) for slot in slots_of(Listed)] == [
        ("shares", "numbers", False),
        ("words", "texts", False),
        ("count", "count", True),
    ]


@pytest.mark.parametrize(
    ("record", "reason"),
    [
        (Undescribed, "Undescribed.length is not described"),
        (Shapeless, "no wire shape for <class 'bytes'>"),
        (Mapped, r"no wire shape for dict\[str, float\]"),
    ],
)
def test_a_record_that_the_edge_cannot_serve_is_an_error(record: type, reason: str) -> None:
    with pytest.raises(TypeError, match=reason):
        slots_of(record)


def test_a_refusal_has_a_reason() -> None:
    with pytest.raises(TypeError, match="needs a reason"):
        RefusedError()
    assert str(refuse("ties", 2, "spacing", reason="is missing").below("segments", 1)) == "segments/1/ties/2/spacing: is missing"
