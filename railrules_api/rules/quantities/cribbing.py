"""Cribbing: ballast moved aside so that anchors can be applied."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from railrules_api.domain.amounts import Amount
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.rules.model import Cite, Formula, Rule
from railrules_api.rules.quantities.given import mass_of
from railrules_api.rules.quantities.lines import Line

PocketLength = Annotated[
    float,
    Field(
        "Length of the pocket that an anchor needs, along the rail.",
        kind=Kind.LENGTH,
        symbol="l",
        above=0.0,
        at_most=1.0,
        default="anchor-pocket-length",
    ),
]
PocketWidth = Annotated[
    float,
    Field(
        "Width of that pocket, across the rail.",
        kind=Kind.LENGTH,
        symbol="b",
        above=0.0,
        at_most=2.0,
        default="anchor-pocket-width",
    ),
]
PocketDepth = Annotated[
    float,
    Field("Depth of that pocket.", kind=Kind.LENGTH, symbol="d", above=0.0, at_most=1.0, default="anchor-pocket-depth"),
]
FullShare = Annotated[
    float,
    Field(
        "Share of the pockets that are full of ballast beforehand.",
        symbol="f",
        at_least=0.0,
        at_most=1.0,
        default="anchor-pocket-full-share",
    ),
]
BallastDensity = Annotated[float | None, Field("Bulk density of the ballast.", kind=Kind.DENSITY, above=0.0, at_most=5000.0)]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class CribbingInput:
    """Anchors to apply, and the pocket each needs in the ballast."""

    anchors: Annotated[float, Field("Anchors to apply.", symbol="n", at_least=0.0, at_most=1e9)]
    pocket_length: PocketLength
    pocket_width: PocketWidth
    pocket_depth: PocketDepth
    full_share: FullShare
    ballast_density: BallastDensity = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class CribbingResult:
    """Ballast to move aside."""

    pocket: Annotated[float, Field("Volume of one pocket.", kind=Kind.VOLUME, symbol="v", answer=("ft3", "l"))]
    volume: Annotated[float, Field("Ballast moved aside.", kind=Kind.VOLUME, answer=("yd3", "m3"))]
    mass: Annotated[float | None, Field("Its mass.", kind=Kind.MASS, answer=("short_ton", "t"))] = None
    lines: Annotated[tuple[Line, ...], Field("Ballast moved aside; nothing to order.")]


def evaluate(given: CribbingInput) -> CribbingResult:
    """Return the ballast in the pockets beside ties that anchors need; an anchor needs one.

    >>> evaluate(CribbingInput(anchors=8.0, pocket_length=0.25, pocket_width=0.5, pocket_depth=0.125, full_share=1.0)).volume
    0.125
    """
    pocket = given.pocket_length * given.pocket_width * given.pocket_depth
    volume = given.anchors * pocket * given.full_share
    mass = mass_of(volume, given.ballast_density)
    return CribbingResult(
        pocket=pocket,
        volume=volume,
        mass=mass,
        lines=(Line(item="crib-ballast", product="", net=Amount(volume, Kind.VOLUME, ("yd3", "m3")), mass=mass),),
    )


RULE = Rule(
    id="quantities.cribbing",
    title="Cribbing for anchors",
    summary=(
        "Each anchor needs a pocket in the crib beside its tie, under and beside the rail base. The volume is that of the "
        "pockets times the share of them that ballast fills."
    ),
    formulas=(Formula("pocket", "l * b * d"), Formula("volume", "n * v * f")),
    cites=(Cite("common-practice", "a pocket beside the tie at each anchor", "common-practice"),),
    input=CribbingInput,
    output=CribbingResult,
    evaluate=evaluate,
    columns=True,
)
