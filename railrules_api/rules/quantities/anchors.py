"""Rail anchors: the pattern of plain track, zones, and what is used again."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Annotated, Literal

from railrules_api.domain.amounts import Amount
from railrules_api.domain.anchoring import AnchorZone, Run, anchored_runs, anchors_per_metre
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.domain.track import Station, Stretch, rail_count, spacing_of
from railrules_api.rules.model import Caution, Cite, Formula, Rule
from railrules_api.rules.quantities.given import METRES_PER_MILE, NewAnchors, mass_of, packed
from railrules_api.rules.quantities.lines import Line

if TYPE_CHECKING:
    from collections.abc import Iterable


ElasticFasteners = Annotated[
    bool | None, Field("The fastenings hold the rail lengthwise, so no anchor is applied; left out: they do not.")
]
ReappliedShare = Annotated[
    float,
    Field(
        "Share of the old anchors that is fit to be applied again.",
        at_least=0.0,
        at_most=1.0,
        default="anchors-reapplied-share",
    ),
]
AnchorProduct = Annotated[str | None, Field("Catalogue id of the anchor.", taken=Taken("anchor", "rail-anchors", "id"))]
AnchorMass = Annotated[
    float | None,
    Field("Mass of one anchor.", kind=Kind.MASS, above=0.0, at_most=20.0, taken=Taken("anchor", "rail-anchors", "mass")),
]
AnchorsPerBag = Annotated[
    float | None,
    Field("Anchors in a bag or crate.", above=0.0, at_most=1e5, taken=Taken("anchor", "rail-anchors", "count_per_bag")),
]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class AnchorsInput:
    """A stretch, the anchors of plain track, and the zones where it is otherwise."""

    stretch: Annotated[Stretch, Field("The stretch.")]
    pattern: NewAnchors
    zones: Annotated[tuple[AnchorZone, ...], Field("Where it is otherwise; zones may overlap and reach past the stretch.")] = ()
    elastic_fasteners: ElasticFasteners = None
    old_anchors: Annotated[
        float | None,
        Field("Old anchors at hand here: those that come off, or this stretch's part of a job's.", at_least=0.0, at_most=1e9),
    ] = None
    reapplied_share: ReappliedShare
    product: AnchorProduct = None
    anchor_mass: AnchorMass = None
    per_bag: AnchorsPerBag = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class ZoneUsed:
    """A zone as used: overlapping and touching zones of equal anchoring merged, cut to the stretch."""

    begin: Station
    end: Station
    anchoring: Annotated[Literal["boxed", "per-rail-length", "none"], Field("How its ties are anchored.")]
    boxed_every: Annotated[int | None, Field("Every n-th tie is boxed.")] = None
    ties: Annotated[int, Field("Ties in it.")]
    anchored_ties: Annotated[int, Field("Ties that carry anchors.")]
    anchors: Annotated[int, Field("Anchors, all renewed rails.")]
    reasons: Annotated[tuple[str, ...], Field("What asks for it.")]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class AnchorsResult:
    """Anchors, zone by zone, new and used again."""

    rails: Annotated[int, Field("Rails renewed.", symbol="r")]
    ties: Annotated[int, Field("Ties that stand in the stretch.")]
    anchored_ties: Annotated[int, Field("Ties that carry anchors.")]
    anchors_forward: Annotated[int, Field("Anchors that hold the rail in the main direction.", symbol="n_f")]
    anchors_back_up: Annotated[int, Field("Anchors that hold it the other way.", symbol="n_b")]
    anchors: Annotated[int, Field("Anchors applied.", symbol="n")]
    anchors_in_zones: Annotated[int, Field("Of these, anchors in zones.")]
    anchors_per_mile: Annotated[float, Field("Average of the plain pattern on the renewed rails, per mile, not rounded.")]
    anchors_reapplied: Annotated[float, Field("Old anchors applied again, unrounded.", symbol="n_old")]
    anchors_new: Annotated[float, Field("New anchors, unrounded.", symbol="n_new")]
    bags: Annotated[float | None, Field("Bags of new anchors, unrounded.")] = None
    mass: Annotated[float | None, Field("Mass of the new anchors.", kind=Kind.MASS)] = None
    zones: Annotated[tuple[ZoneUsed, ...], Field("Zones as used, in order.")]
    notes: Annotated[tuple[str, ...], Field("What to mind about this answer.")]
    lines: Annotated[tuple[Line, ...], Field("Anchors to order, and to apply again.")]


def zones_used(runs: Iterable[Run], rails: int) -> tuple[ZoneUsed, ...]:
    """Return the runs that lie in zones, as the answer tells them."""
    return tuple(
        ZoneUsed(
            begin=run.begin,
            end=run.end,
            anchoring="boxed" if run.boxed_every else "per-rail-length" if run.per_rail else "none",
            boxed_every=run.boxed_every,
            ties=run.ties,
            anchored_ties=run.held.ties,
            anchors=run.held.anchors * rails,
            reasons=run.reasons,
        )
        for run in runs
        if run.in_zone
    )


def evaluate(given: AnchorsInput) -> AnchorsResult:
    """Count anchors by the number of each tie, zones merged.

    Raises:
        RefusedError: the stretch, the pattern or a zone contradicts itself.
    """
    elastic = bool(given.elastic_fasteners)
    runs = anchored_runs(given.stretch, given.pattern, given.zones, forbidden=elastic)
    rails = rail_count(given.stretch.rails)
    zones = zones_used(runs, rails)
    forward, back_up = sum(run.held.forward for run in runs) * rails, sum(run.held.back_up for run in runs) * rails
    anchors = forward + back_up
    reapplied = min(float(anchors), (given.old_anchors or 0.0) * given.reapplied_share)
    new = anchors - reapplied
    average = 0.0 if elastic else anchors_per_metre(given.pattern, spacing_of(given.stretch.ties)) * rails
    mass = mass_of(new, given.anchor_mass)
    notes = []
    if elastic:
        notes.append("No anchor is counted: the elastic fastenings hold the rail lengthwise.")
    if anchors and rails == 1:
        notes.append("Only one rail is anchored here: see to the other, since anchors on one rail only turn the tie.")
    lines = [packed(Line(item="anchors", product=given.product or "", net=Amount(new), mass=mass), "bag", given.per_bag)]
    if given.old_anchors is not None:  # told even where it is none, so that the bill has its order from what is asked
        lines.append(Line(item="anchors-reapplied", product="", net=Amount(reapplied)))
    return AnchorsResult(
        rails=rails,
        ties=sum(run.ties for run in runs),
        anchored_ties=sum(run.held.ties for run in runs),
        anchors_forward=forward,
        anchors_back_up=back_up,
        anchors=anchors,
        anchors_in_zones=sum(zone.anchors for zone in zones),
        anchors_per_mile=average * METRES_PER_MILE,
        anchors_reapplied=reapplied,
        anchors_new=new,
        bags=None if given.per_bag is None else new / given.per_bag,
        mass=mass,
        zones=zones,
        notes=tuple(notes),
        lines=tuple(lines),
    )


RULE = Rule(
    id="quantities.anchors",
    title="Rail anchors",
    summary=(
        "A boxed tie has an anchor on each side at each renewed rail. Which ties are boxed goes by the tie's own number, and "
        "jointed patterns by rail lengths laid from tie 0, so counts add up however the line is cut. Zones that overlap merge: "
        "one that forbids anchors wins, else the densest, the plain pattern included."
    ),
    formulas=(
        Formula("anchors_forward", "renewed rails times ties with an anchor in the main direction", exact=False),
        Formula("anchors_back_up", "renewed rails times ties with an anchor the other way", exact=False),
        Formula("anchors", "n_f + n_b"),
        Formula(
            "anchors_per_mile",
            "1609.344 * r * 2 / (every * spacing), or (forward + back_up) / rail length",
            exact=False,
        ),
        Formula("anchors_reapplied", "old anchors times the share applied again, at most n", exact=False),
        Formula("anchors_new", "n - n_old"),
        Formula("bags", "n_new / anchors in a bag", exact=False),
    ),
    cites=(
        Cite("cfr-49-213", "213.119(c): every tie anchored for 195 ft both ways at a bolted joint", "published"),
        Cite(
            "cwr-policy-cards",
            "every other tie boxed; every tie within 195 ft of fixed objects; none with elastic fastenings",
            "published",
        ),
        Cite("area-proceedings-1947", "tests of anchor arrangements: box them, spread them evenly", "published"),
        Cite("rail-anchors-supplier", "8 anchors to a 39-ft rail", "published"),
    ),
    cautions=(
        Caution(
            code="plan-sets-the-pattern",
            text="49 CFR 213.119 asks for anchoring patterns in the railroad's own plan and gives none for plain track.",
            cite=Cite("cfr-49-213", "213.119(b)", "published"),
        ),
        Caution(
            code="anchors-on-both-rails",
            text="Anchors on one rail only, or on one side of a tie, turn the tie.",
            cite=Cite("ti-850-02", "C-20: loose or missing track fastenings", "published"),
        ),
    ),
    input=AnchorsInput,
    output=AnchorsResult,
    evaluate=evaluate,
)
