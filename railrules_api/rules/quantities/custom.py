"""A custom item: so many to a tie, a rail, a joint or a length."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from railrules_api.domain.amounts import Amount
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.domain.track import Stretch, rail_count
from railrules_api.rules.model import Cite, Formula, Rule
from railrules_api.rules.quantities.given import joint_count, mass_of, ranges_of, worked_length
from railrules_api.rules.quantities.lines import Line

NOISE = 1e-9
"""Share of its parts that a count may differ from zero by and still be none."""


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class CustomInput:
    """A stretch, an item of the caller's own, and how it is counted; what is left out adds nothing."""

    stretch: Annotated[Stretch, Field("The stretch.")]
    item: Annotated[str, Field("The caller's name of the item.")]
    per_tie: Annotated[float | None, Field("Pieces to each tie.", at_least=-1e4, at_most=1e4)] = None
    per_seat: Annotated[float | None, Field("Pieces to each tie at each renewed rail.", at_least=-1e4, at_most=1e4)] = None
    per_rail: Annotated[float | None, Field("Pieces to each rail length of each renewed rail.", at_least=-1e4, at_most=1e4)] = (
        None
    )
    per_joint: Annotated[
        float | None,
        Field("Pieces to each joint; negative where its own fastenings stand in for them.", at_least=-1e4, at_most=1e4),
    ] = None
    rail_length: Annotated[
        float | None,
        Field("Length of one rail, for what goes by rail or joint.", kind=Kind.LENGTH, at_least=1.0, at_most=1e4),
    ] = None
    pieces: Annotated[float | None, Field("Pieces to each `per_length` of track.", at_least=-1e6, at_most=1e6)] = None
    per_length: Annotated[
        float | None, Field("Length of track that takes `pieces`.", kind=Kind.LENGTH, above=0.0, at_most=1e6)
    ] = None
    mass_each: Annotated[float | None, Field("Mass of one piece.", kind=Kind.MASS, above=0.0, at_most=1e6)] = None
    piece: Annotated[
        bool | None,
        Field(
            "The stretch is a piece of a longer one, to be added to the others, so that its count may come out below zero; left "
            "out: it is all there is."
        ),
    ] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class CustomResult:
    """The item's count, unrounded, by what it goes by."""

    by_ties: Annotated[float, Field("Pieces that go by ties.", symbol="n_t")]
    by_seats: Annotated[float, Field("Pieces that go by tie seats.", symbol="n_s")]
    by_rails: Annotated[float, Field("Pieces that go by rails.", symbol="n_r")]
    by_joints: Annotated[float, Field("Pieces that go by joints.", symbol="n_j")]
    by_length: Annotated[float, Field("Pieces that go by length.", symbol="n_l")]
    count: Annotated[float, Field("All pieces, unrounded.", symbol="n")]
    mass: Annotated[float | None, Field("Their mass.", kind=Kind.MASS)] = None
    lines: Annotated[tuple[Line, ...], Field("The item to order.")]


def evaluate(given: CustomInput) -> CustomResult:
    """Count an item by ties, seats, rails, joints and length together.

    Raises:
        RefusedError: the stretch contradicts itself, a length that a count goes by is missing, or the count is below zero where
            the stretch is all there is.
    """
    ties = sum(part.count for part in ranges_of(given.stretch))
    if given.rail_length is None and (given.per_rail is not None or given.per_joint is not None):
        raise refuse("rail_length", reason="missing; what goes by rail or joint needs the length of a rail")
    if (given.pieces is None) != (given.per_length is None):
        missing = "per_length" if given.per_length is None else "pieces"
        raise refuse(missing, reason="missing; what goes by length needs both pieces and per_length")
    joints = joint_count(given.stretch, given.rail_length)
    by_length = given.pieces * worked_length(given.stretch) / given.per_length if given.pieces and given.per_length else 0.0
    parts = (
        ties * (given.per_tie or 0.0),
        ties * rail_count(given.stretch.rails) * (given.per_seat or 0.0),
        joints * (given.per_rail or 0.0),
        joints * (given.per_joint or 0.0),
        by_length,
    )
    count = sum(parts)
    if abs(count) <= NOISE * sum(map(abs, parts)):
        count = 0.0
    if count < 0.0 and not given.piece:
        raise refuse(
            "per_joint" if parts[3] < 0.0 else "per_tie", reason="the count comes out below zero", value=count, minimum=0.0
        )
    mass = mass_of(count, given.mass_each)
    return CustomResult(
        by_ties=parts[0],
        by_seats=parts[1],
        by_rails=parts[2],
        by_joints=parts[3],
        by_length=parts[4],
        count=count,
        mass=mass,
        lines=(Line(item=given.item, product="", net=Amount(count), mass=mass),),
    )


RULE = Rule(
    id="quantities.custom",
    title="Item of the caller's own",
    summary=(
        "An item that no other rule counts: so many to a tie, to a tie seat, to a rail length, to a joint, to a length of track, "
        "together. Rails and joints are each renewed rail's length over the rail length, unrounded. A count is negative where "
        "something else takes its place; only of what is told to be a piece of a longer stretch may the sum be below zero."
    ),
    formulas=(Formula("count", "n_t + n_s + n_r + n_j + n_l"),),
    cites=(
        Cite(
            "mills-1898",
            "pp. 242-247: bills of one mile of track, chairs and bolts by sleeper and by joint",
            "published",
        ),
    ),
    input=CustomInput,
    output=CustomResult,
    evaluate=evaluate,
)
