"""Salvage: what comes out of the old track, by piece and by weight."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from railrules_api.domain.amounts import Amount
from railrules_api.domain.anchoring import anchored_runs
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.patterns import AnchorPattern
from railrules_api.domain.records import lean
from railrules_api.domain.track import Stretch, rail_count
from railrules_api.rules.model import Caution, Cite, Formula, Rule
from railrules_api.rules.quantities.given import (
    BarsPerJoint,
    OldSpikesPerPlate,
    PlatedShare,
    RecoveredShare,
    RenewedShare,
    TieKind,
    joint_count,
    mass_each,
    mass_of,
    ranges_of,
    worked_length,
)
from railrules_api.rules.quantities.lines import Line

NOISE = 1e-9
"""What shares may miss 1 by, summed."""


WornShare = Annotated[
    float, Field("Share of that mass worn away.", symbol="u", at_least=0.0, at_most=0.9, default="rail-worn-share")
]
RelayShare = Annotated[
    float,
    Field(
        "Share of the rail fit to be laid again.",
        symbol="s_1",
        at_least=0.0,
        at_most=1.0,
        default="rail-relay-share",
    ),
]
RerollShare = Annotated[
    float,
    Field("Share fit to be rolled anew.", symbol="s_2", at_least=0.0, at_most=1.0, default="rail-reroll-share"),
]
ScrapShare = Annotated[float | None, Field("Share that is scrap; left out: the rest.", at_least=0.0, at_most=1.0)]
RelayWear = Annotated[
    float | None,
    Field(
        "Most of the rail's mass worn away at which it is fit to be laid again, for its class by wear.", at_least=0.0, at_most=0.9
    ),
]
RerollWear = Annotated[
    float | None,
    Field("The same for rail to be rolled anew; what is worn more is scrap.", at_least=0.0, at_most=0.9),
]
BoltMass = Annotated[
    float | None,
    Field(
        "Mass of one old bolt with its nut.",
        kind=Kind.MASS,
        above=0.0,
        at_most=20.0,
        taken=Taken("old_bolt", "track-bolts", "mass"),
    ),
]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class SalvageInput:
    """A stretch and the old track in it."""

    stretch: Annotated[Stretch, Field("The stretch.")]
    tie_kind: TieKind
    renewed_share: RenewedShare
    old_mass_per_length: Annotated[
        float,
        Field(
            "Mass of the old rail when new.",
            kind=Kind.MASS_PER_LENGTH,
            symbol="w",
            above=0.0,
            at_most=200.0,
            taken=Taken("old_section", "rail-sections", "mass_per_length"),
        ),
    ]
    worn_share: WornShare
    relay_share: RelayShare
    reroll_share: RerollShare
    scrap_share: ScrapShare = None
    relay_wear: RelayWear = None
    reroll_wear: RerollWear = None
    old_rail_length: Annotated[
        float | None,
        Field(
            "Length of one old rail; left out: the old track has no joints.",
            kind=Kind.LENGTH,
            at_least=1.0,
            at_most=1000.0,
        ),
    ] = None
    bars_per_joint: BarsPerJoint
    bolts_per_joint: Annotated[
        int | None,
        Field("Bolts to an old joint.", at_least=0, at_most=16, taken=Taken("old_joint_bar", "joint-bars", "holes")),
    ] = None
    bar_mass: Annotated[
        float | None,
        Field(
            "Mass of one old bar.",
            kind=Kind.MASS,
            above=0.0,
            at_most=200.0,
            taken=Taken("old_joint_bar", "joint-bars", "mass"),
        ),
    ] = None
    pair_mass: Annotated[
        float | None,
        Field(
            "Mass of a pair of old bars, where that of one is not known.",
            kind=Kind.MASS,
            above=0.0,
            at_most=400.0,
            taken=Taken("old_joint_bar", "joint-bars", "mass_pair"),
        ),
    ] = None
    bolt_mass: BoltMass = None
    plated_share: PlatedShare
    plate_mass: Annotated[
        float | None,
        Field(
            "Mass of one old plate.",
            kind=Kind.MASS,
            above=0.0,
            at_most=200.0,
            taken=Taken("old_plate", "tie-plates", "mass"),
        ),
    ] = None
    old_spikes_per_plate: OldSpikesPerPlate
    spike_mass: Annotated[
        float | None,
        Field(
            "Mass of one old spike.",
            kind=Kind.MASS,
            above=0.0,
            at_most=10.0,
            taken=Taken("old_spike", "spikes", "mass"),
        ),
    ] = None
    keg_mass: Annotated[
        float | None,
        Field(
            "Mass of a keg of the old spike, where that of one is not known.",
            kind=Kind.MASS,
            above=0.0,
            at_most=5000.0,
            taken=Taken("old_spike", "spikes", "keg_mass"),
        ),
    ] = None
    per_keg: Annotated[
        float | None,
        Field("Spikes in that keg.", above=0.0, at_most=1e5, taken=Taken("old_spike", "spikes", "count_per_keg")),
    ] = None
    old_anchors: Annotated[
        AnchorPattern | None,
        Field("Anchors of the old track; left out: none.", taken=Taken("old_anchor_pattern", "anchor-patterns")),
    ] = None
    anchor_mass: Annotated[
        float | None,
        Field(
            "Mass of one old anchor.",
            kind=Kind.MASS,
            above=0.0,
            at_most=20.0,
            taken=Taken("old_anchor", "rail-anchors", "mass"),
        ),
    ] = None
    recovered_share: RecoveredShare
    anchors_reapplied: Annotated[
        float | None,
        Field("Anchors recovered here that are applied again, wherever; left out: none is.", at_least=0.0, at_most=1e9),
    ] = None
    plates_reused: Annotated[bool | None, Field("The old plates are used again and leave no salvage; left out: not so.")] = None
    car_capacity: Annotated[float | None, Field("Load of one car.", kind=Kind.MASS, above=0.0, at_most=1e6)] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class SalvageResult:
    """What comes out, unrounded."""

    rail_length: Annotated[float, Field("Old rail that comes out, all renewed rails.", kind=Kind.LENGTH, symbol="L")]
    rail_mass: Annotated[float, Field("Its mass as worn.", kind=Kind.MASS, symbol="M", answer=("short_ton", "t"))]
    relay_mass: Annotated[float, Field("Of this, fit to be laid again.", kind=Kind.MASS, answer=("short_ton", "t"))]
    reroll_mass: Annotated[float, Field("Of this, fit to be rolled anew.", kind=Kind.MASS, answer=("short_ton", "t"))]
    scrap_mass: Annotated[float, Field("Of this, scrap.", kind=Kind.MASS, answer=("short_ton", "t"))]
    joints: Annotated[float, Field("Old joints.")]
    other_mass: Annotated[
        float, Field("Mass of all other steel whose piece has a known mass.", kind=Kind.MASS, answer=("short_ton", "t"))
    ]
    cars: Annotated[float | None, Field("Car loads of rail and other steel, unrounded.")] = None
    without_mass: Annotated[tuple[str, ...], Field("Items that come out and whose mass is not known.")]
    lines: Annotated[tuple[Line, ...], Field("What comes out.")]


def _by_wear(given: SalvageInput) -> tuple[float, float, float]:
    """Return the class of the rail by its wear, as shares of relay, re-roll and scrap."""
    if given.relay_share or given.reroll_share or given.scrap_share is not None:
        reason = "give shares of the classes, or limits of wear that decide the class, not both"
        raise refuse("relay_wear" if given.relay_wear is not None else "reroll_wear", reason=reason)
    relay = -1.0 if given.relay_wear is None else given.relay_wear
    reroll = relay if given.reroll_wear is None else given.reroll_wear
    if reroll < relay:
        reason = "rail to be rolled anew may be worn no less than rail to be laid again"
        raise refuse("reroll_wear", reason=reason, value=given.reroll_wear, minimum=relay)
    if given.worn_share <= relay + NOISE:
        return 1.0, 0.0, 0.0
    return (0.0, 1.0, 0.0) if given.worn_share <= reroll + NOISE else (0.0, 0.0, 1.0)


def _shares(given: SalvageInput) -> tuple[float, float, float]:
    if given.relay_wear is not None or given.reroll_wear is not None:
        return _by_wear(given)
    rest = 1.0 - given.relay_share - given.reroll_share
    if given.scrap_share is None:
        if rest < -NOISE:
            raise refuse(
                "reroll_share",
                reason="shares of relay and re-roll come to more than 1",
                value=given.reroll_share,
                maximum=1.0 - given.relay_share,
            )
        return given.relay_share, given.reroll_share, max(0.0, rest)
    if abs(rest - given.scrap_share) > NOISE:
        raise refuse("scrap_share", reason="shares of relay, re-roll and scrap do not come to 1", value=given.scrap_share)
    return given.relay_share, given.reroll_share, given.scrap_share


def anchors_recovered(
    stretch: Stretch, pattern: AnchorPattern | None, recovered_share: float, *, pattern_field: str = "old_anchors"
) -> float:
    """Return the old anchors that come off and are recovered, unrounded.

    Raises:
        RefusedError: the stretch or the pattern contradicts itself; paths begin with `stretch` or the pattern's field.
    """
    if pattern is None:
        return 0.0
    runs = anchored_runs(stretch, pattern, pattern_field=pattern_field)
    return sum(run.held.anchors for run in runs) * rail_count(stretch.rails) * recovered_share


def _anchors_left(given: SalvageInput) -> float:
    recovered = anchors_recovered(given.stretch, given.old_anchors, given.recovered_share)
    reapplied = given.anchors_reapplied or 0.0
    if reapplied > recovered * (1.0 + NOISE):
        reason = "more anchors applied again than are recovered here"
        raise refuse("anchors_reapplied", reason=reason, value=reapplied, maximum=recovered)
    return max(0.0, recovered - reapplied)


def _other(given: SalvageInput, ties: int, joints: float) -> tuple[Line, ...]:
    seats = ties * rail_count(given.stretch.rails) if given.tie_kind == "wood" else 0
    if joints and given.bolts_per_joint is None:
        raise refuse("bolts_per_joint", reason="missing; old joints have bolts: give their number, or the old bar")
    plates = 0.0 if given.plates_reused else seats * given.plated_share
    share = given.recovered_share
    counts = (
        ("salvage-joint-bars", joints * given.bars_per_joint * share, mass_each(given.bar_mass, given.pair_mass, 2.0)),
        ("salvage-track-bolts", joints * (given.bolts_per_joint or 0) * share, given.bolt_mass),
        ("salvage-tie-plates", plates * share, given.plate_mass),
        (
            "salvage-spikes",
            seats * given.old_spikes_per_plate * share,
            mass_each(given.spike_mass, given.keg_mass, given.per_keg),
        ),
        ("salvage-anchors", _anchors_left(given), given.anchor_mass),
    )
    return tuple(Line(item=item, product="", net=Amount(count), mass=mass_of(count, each)) for item, count, each in counts)


def evaluate(given: SalvageInput) -> SalvageResult:
    """Weigh the rail that comes out, by class, and count everything that held it.

    Raises:
        RefusedError: the stretch contradicts itself, the shares do not come to 1, joints are there and their bolts are not, or
            more anchors are applied again than are recovered.
    """
    ties = sum(part.count for part in ranges_of(given.stretch))
    shares = _shares(given)
    length = rail_count(given.stretch.rails) * worked_length(given.stretch)
    mass = length * given.old_mass_per_length * (1.0 - given.worn_share)
    relay, reroll, scrap = (mass * share for share in shares)
    joints = joint_count(given.stretch, given.old_rail_length)
    other = _other(given, ties, joints)
    other_mass = sum(line.mass for line in other if line.mass is not None)
    rail = (("relay", relay), ("reroll", reroll), ("scrap", scrap))
    return SalvageResult(
        rail_length=length,
        rail_mass=mass,
        relay_mass=relay,
        reroll_mass=reroll,
        scrap_mass=scrap,
        joints=joints,
        other_mass=other_mass,
        cars=None if given.car_capacity is None else (mass + other_mass) / given.car_capacity,
        without_mass=tuple(line.item for line in other if line.net.value and line.mass is None),
        lines=(
            *(Line(item=f"salvage-rail-{name}", product="", net=Amount(part, Kind.MASS), mass=part) for name, part in rail),
            *other,
            Line(item="salvage-ties", product="", net=Amount(ties * given.renewed_share)),
        ),
    )


RULE = Rule(
    id="quantities.salvage",
    title="Salvage",
    summary=(
        "Old rail by length and by weight less wear, divided into relay, re-roll and scrap by given shares or by limits of wear; "
        "bars, bolts, plates, spikes and anchors by the old track's pattern less what is not recovered or goes back into track; "
        "ties renewed. "
        "Wear, classes and recovery are the user's: no published shares were found."
    ),
    formulas=(
        Formula("rail_length", "renewed rails times length", exact=False),
        Formula("rail_mass", "L * w * (1 - u)"),
        Formula("relay_mass", "M * s_1, or all of M where wear is within the limit for relay", exact=False),
        Formula("reroll_mass", "M * s_2, or all of M where wear is within the limit for re-roll only", exact=False),
    ),
    cites=(
        Cite(
            "net-liquidation-report",
            "layout: relay, re-roll and scrap, with reductions for wear and recovery",
            "published",
        ),
        Cite("vose-1857", "article 288: weight of a mile of rail", "published"),
    ),
    cautions=(
        Caution(
            code="shares-need-inspection",
            text="Wear, classes and recovery decide what salvage is worth. Inspect the rail before relying on these shares.",
            cite=Cite("common-practice", "classing of rail by inspection", "common-practice"),
        ),
    ),
    input=SalvageInput,
    output=SalvageResult,
    evaluate=evaluate,
)
