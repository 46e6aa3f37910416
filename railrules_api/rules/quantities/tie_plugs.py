"""Tie plugs, or compound, for the holes of old spikes in ties that stay."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Annotated, Literal

from railrules_api.domain.amounts import Amount
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.domain.track import Stretch, rail_count
from railrules_api.rules.model import Caution, Cite, Formula, Rule
from railrules_api.rules.quantities.given import (
    OldSpikesPerPlate,
    RenewedShare,
    TieKind,
    held_by_others,
    kept_ties,
    packed,
    ranges_of,
)
from railrules_api.rules.quantities.lines import Line

HoleFilling = Annotated[Literal["plugs", "compound"], Field("What fills the holes.", default="hole-filling")]
HoleShape = Annotated[
    Literal["square", "round"],
    Field("Shape of a hole: square of a cut spike, round of a screw spike or a bored one.", default="hole-shape"),
]
HoleSide = Annotated[
    float,
    Field(
        "Side of a square spike hole, or diameter of a round one.",
        kind=Kind.LENGTH,
        symbol="a",
        above=0.0,
        at_most=0.1,
        default="spike-hole-side",
    ),
]
HoleDepth = Annotated[
    float,
    Field("Depth of a spike hole.", kind=Kind.LENGTH, symbol="d", above=0.0, at_most=0.5, default="spike-hole-depth"),
]
CompoundWaste = Annotated[
    float,
    Field(
        "Compound lost, as a share of what the holes take.",
        symbol="w",
        at_least=0.0,
        at_most=5.0,
        default="compound-waste",
    ),
]
PlugProduct = Annotated[str | None, Field("Catalogue id of the plug.", taken=Taken("plug", "tie-plugs", "id"))]
PlugsPerBundle = Annotated[
    float | None,
    Field("Plugs in a bundle.", above=0.0, at_most=1e6, taken=Taken("plug", "tie-plugs", "count_per_bundle")),
]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class TiePlugsInput:
    """A stretch, the old spikes at its ties, and what fills their holes."""

    stretch: Annotated[Stretch, Field("The stretch.")]
    tie_kind: TieKind
    renewed_share: RenewedShare
    old_spikes_per_plate: OldSpikesPerPlate
    filling: HoleFilling
    hole_shape: HoleShape
    hole_side: HoleSide
    hole_depth: HoleDepth
    compound_waste: CompoundWaste
    product: PlugProduct = None
    per_bundle: PlugsPerBundle = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class TiePlugsResult:
    """Holes to fill and what fills them, unrounded."""

    seats: Annotated[float, Field("Tie seats that stay, at renewed rails, on wood ties.", symbol="n_s")]
    holes: Annotated[float, Field("Old spike holes to fill.", symbol="n")]
    plugs: Annotated[float, Field("Plugs, if plugs fill them.")]
    bundles: Annotated[float | None, Field("Bundles of plugs, unrounded.")] = None
    hole_volume: Annotated[float, Field("Volume of one hole.", kind=Kind.VOLUME, symbol="v", answer=("in3", "l"))]
    compound: Annotated[float, Field("Compound, if compound fills them.", kind=Kind.VOLUME)]
    note: Annotated[str | None, Field("Why none is counted, where none is.")] = None
    lines: Annotated[tuple[Line, ...], Field("Plugs or compound to order.")]


def evaluate(given: TiePlugsInput) -> TiePlugsResult:
    """Count the holes that old spikes leave in ties that stay.

    Raises:
        RefusedError: the stretch contradicts itself.
    """
    ties = sum(part.count for part in ranges_of(given.stretch)) if given.tie_kind == "wood" else 0
    seats = kept_ties(ties, given.renewed_share) * rail_count(given.stretch.rails)
    holes = seats * given.old_spikes_per_plate
    hole = given.hole_side**2 * given.hole_depth * (math.pi / 4.0 if given.hole_shape == "round" else 1.0)
    compound = holes * hole * (1.0 + given.compound_waste)
    if given.filling == "plugs":
        line = packed(Line(item="tie-plugs", product=given.product or "", net=Amount(holes)), "bundle", given.per_bundle)
    else:
        line = Line(item="plug-compound", product="", net=Amount(compound, Kind.VOLUME))
    return TiePlugsResult(
        seats=seats,
        holes=holes,
        plugs=holes,
        bundles=None if given.per_bundle is None else holes / given.per_bundle,
        hole_volume=hole,
        compound=compound,
        note=held_by_others(given.tie_kind, "spike holes"),
        lines=(line,),
    )


RULE = Rule(
    id="quantities.tie-plugs",
    title="Tie plugs or compound",
    summary=(
        "One plug for each old spike that is pulled out of a wood tie that stays, at the rails renewed. Holes follow the old "
        "pattern, whatever the new one is. Compound is the volume of the holes and what is lost."
    ),
    formulas=(
        Formula("seats", "(ties - ties renewed) times renewed rails, on wood ties", exact=False),
        Formula("holes", "n_s * k_old"),
        Formula("plugs", "n"),
        Formula("hole_volume", "a ** 2 * d of a square hole, pi / 4 times that of a round one", exact=False),
        Formula("compound", "n * v * (1 + w)"),
    ),
    cites=(
        Cite("tr0670", "3.21: holes of pulled spikes are filled with plugs", "published"),
        Cite("mil-hdbk-1005-6", "4.3(d): empty spike holes are filled with treated plugs", "published"),
        Cite("tie-plugs-supplier", "100 sticks of 5 plugs to a bundle", "published"),
    ),
    cautions=(
        Caution(
            code="spikes-into-solid-wood",
            text="New spikes go into solid wood and not into a plugged hole.",
            cite=Cite("tr0671", "inspection of spikes", "published"),
        ),
    ),
    input=TiePlugsInput,
    output=TiePlugsResult,
    evaluate=evaluate,
)
