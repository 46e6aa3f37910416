"""Joints of jointed track: bars, bolts, nuts, washers, bonds; insulated and compromise joints."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, NamedTuple

from railrules_api.domain.amounts import Amount
from railrules_api.domain.counting import round_down, round_up
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.domain.track import Stretch, rail_count
from railrules_api.rules.checks import Check, compare
from railrules_api.rules.model import Cite, Formula, Rule
from railrules_api.rules.quantities.given import BarsPerJoint, joint_count, mass_each, mass_of, ranges_of
from railrules_api.rules.quantities.lines import Line


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class JointSet:
    """What a plain joint is made of."""

    bars_per_joint: BarsPerJoint
    bolts_per_joint: Annotated[
        int,
        Field("Bolts to a joint.", symbol="h", at_least=0, at_most=16, taken=Taken("joint_bar", "joint-bars", "holes")),
    ]
    nuts_per_bolt: Annotated[int, Field("Nuts to a bolt.", symbol="k_n", at_least=0, at_most=4, default="nuts-per-bolt")]
    washers_per_bolt: Annotated[
        int, Field("Spring washers to a bolt.", symbol="k_w", at_least=0, at_most=4, default="washers-per-bolt")
    ]
    bonds_per_joint: Annotated[
        int,
        Field("Bonds around a joint of signalled track.", symbol="k_b", at_least=0, at_most=8, default="bonds-per-joint"),
    ]
    product: Annotated[str | None, Field("Catalogue id of the bar.", taken=Taken("joint_bar", "joint-bars", "id"))] = None
    bar_mass: Annotated[
        float | None,
        Field("Mass of one bar.", kind=Kind.MASS, above=0.0, at_most=200.0, taken=Taken("joint_bar", "joint-bars", "mass")),
    ] = None
    pair_mass: Annotated[
        float | None,
        Field(
            "Mass of a pair of bars, where that of one is not known.",
            kind=Kind.MASS,
            above=0.0,
            at_most=400.0,
            taken=Taken("joint_bar", "joint-bars", "mass_pair"),
        ),
    ] = None
    bolt_product: Annotated[str | None, Field("Catalogue id of the bolt.", taken=Taken("bolt", "track-bolts", "id"))] = None
    bolt_mass: Annotated[
        float | None,
        Field(
            "Mass of one bolt with its nut.", kind=Kind.MASS, above=0.0, at_most=20.0, taken=Taken("bolt", "track-bolts", "mass")
        ),
    ] = None


SectionChanges = Annotated[
    int | None,
    Field(
        "Places where the rail section changes, each a compromise joint in every renewed rail; left out: none.",
        at_least=0,
        at_most=100_000,
    ),
]
TrackClass = Annotated[int | None, Field("Class of track, for the check of bolts.", at_least=1, at_most=5)]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class JointsInput(JointSet):
    """A stretch of jointed track and what its joints are made of."""

    stretch: Annotated[Stretch, Field("The stretch.")]
    rail_length: Annotated[float, Field("Length of one rail.", kind=Kind.LENGTH, symbol="l", at_least=1.0, at_most=1000.0)]
    insulated_joints: Annotated[
        int | None,
        Field("Joints that are insulated, counted on each rail; left out: none.", at_least=0, at_most=100_000),
    ] = None
    section_changes: SectionChanges = None
    compromise_joints: Annotated[
        int | None,
        Field(
            "Compromise joints at its ends, besides the joints within it, counted on each rail; left out: none.",
            at_least=0,
            at_most=100_000,
        ),
    ] = None
    piece: Annotated[
        bool | None,
        Field(
            "The stretch is a piece of a longer one, to be added to the others: special joints in it may stand in place of plain "
            "ones beside it, so that its plain joints may come out below zero; left out: it is all there is."
        ),
    ] = None
    track_class: TrackClass = None
    welded: Annotated[bool | None, Field("The joints stand in continuous welded rail; left out: in jointed track.")] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class JointsResult:
    """Joints and their parts, unrounded."""

    joints: Annotated[float, Field("Joints: rails times length over rail length, unrounded.", symbol="j")]
    joints_whole: Annotated[float, Field("Whole joints within the stretch.")]
    joints_up: Annotated[float, Field("Joints rounded up.")]
    joints_insulated: Annotated[int, Field("Of these, insulated.", symbol="j_i")]
    joints_compromise: Annotated[int, Field("Of these, compromise joints.", symbol="j_c")]
    joints_plain: Annotated[float, Field("Of these, plain.", symbol="j_p")]
    bars: Annotated[float, Field("Bars of plain joints.", symbol="n_bars")]
    bolts: Annotated[float, Field("Bolts of plain joints.", symbol="n_bolts")]
    nuts: Annotated[float, Field("Nuts.")]
    washers: Annotated[float, Field("Spring washers.")]
    bonds: Annotated[float, Field("Bonds, at all joints that are not insulated.")]
    bars_mass: Annotated[float | None, Field("Mass of the bars.", kind=Kind.MASS)] = None
    bolts_mass: Annotated[float | None, Field("Mass of the bolts.", kind=Kind.MASS)] = None
    check: Annotated[Check, Field("Bolts in each rail end against the least that the regulation allows.")]
    lines: Annotated[tuple[Line, ...], Field("Joints and parts to order.")]


def least_bolts(track_class: int, *, welded: bool) -> int:
    """Return the least number of bolts in each rail at a joint: 49 CFR 213.121(d) and (e), 1 in class 1, else 2; 2 in CWR."""
    return 1 if track_class == 1 and not welded else 2


def bolts_check(bolts_per_joint: int, track_class: int | None, *, welded: bool) -> Check:
    """Hold the bolts of a joint against the least that the regulation asks for; half of them stand in each rail."""
    code, title = "bolts-at-joint", "Bolts in each rail at a joint"
    place = "49 CFR 213.121(d) and (e)"
    if track_class is None:
        return Check(code=code, title=title, verdict="not-checked", governing="track_class", place=place)
    return compare(
        code=code,
        title=title,
        demand=Amount(float(least_bolts(track_class, welded=welded))),
        capacity=Amount(float(bolts_per_joint // 2)),
        governing="bolts_per_joint",
        would_pass="more bolts in each rail",  # noqa: S106  no password
        place=place,
    )


class Parts(NamedTuple):
    """Parts of joints, unrounded; masses None where that of one is not known [kg]."""

    bars: float
    bolts: float
    nuts: float
    washers: float
    bonds: float
    bars_mass: float | None
    bolts_mass: float | None


def parts_of(made_of: JointSet, plain: float, *, bonded: float) -> Parts:
    """Return the parts of plain joints, and the bonds of all that are bonded."""
    bars, bolts = plain * made_of.bars_per_joint, plain * made_of.bolts_per_joint
    return Parts(
        bars=bars,
        bolts=bolts,
        nuts=bolts * made_of.nuts_per_bolt,
        washers=bolts * made_of.washers_per_bolt,
        bonds=bonded * made_of.bonds_per_joint,
        bars_mass=mass_of(bars, mass_each(made_of.bar_mass, made_of.pair_mass, 2.0)),
        bolts_mass=mass_of(bolts, made_of.bolt_mass),
    )


def lines_of(made_of: JointSet, parts: Parts) -> tuple[Line, ...]:
    """Return the parts as lines."""
    return (
        Line(item="joint-bars", product=made_of.product or "", net=Amount(parts.bars), mass=parts.bars_mass),
        Line(item="track-bolts", product=made_of.bolt_product or "", net=Amount(parts.bolts), mass=parts.bolts_mass),
        Line(item="track-nuts", product="", net=Amount(parts.nuts)),
        Line(item="spring-washers", product="", net=Amount(parts.washers)),
        Line(item="rail-bonds", product="", net=Amount(parts.bonds)),
    )


def special_lines(insulated: float, compromise: float) -> tuple[Line, ...]:
    """Return the joints that come complete as lines."""
    return (
        Line(item="insulated-joints", product="", net=Amount(insulated)),
        Line(item="compromise-joints", product="", net=Amount(compromise)),
    )


def evaluate(given: JointsInput) -> JointsResult:
    """Count joints and their parts. Insulated and compromise joints within stand in place of plain ones and come complete.

    Pieces of a stretch, asked about as such, add up to it however it is cut.

    Raises:
        RefusedError: the stretch contradicts itself; or it is all there is, and more insulated and compromise joints are given
            than can stand in it.
    """
    ranges_of(given.stretch)
    joints = joint_count(given.stretch, given.rail_length)
    insulated = given.insulated_joints or 0
    changes, at_ends = (given.section_changes or 0) * rail_count(given.stretch.rails), given.compromise_joints or 0
    compromise = changes + at_ends
    special, plain, bonded = insulated + changes, joints - insulated - changes, joints - insulated
    if not given.piece:
        # a rail of the stretch may begin short of a joint, so that a part of a rail length holds one as well
        rails = rail_count(given.stretch.rails)
        most = rails * round_up(joints / rails)
        if special > most:
            field = "insulated_joints" if insulated else "section_changes"
            raise refuse(field, reason="more special joints than joints", value=special, maximum=most)
        plain, bonded = max(0.0, plain), max(0.0, bonded)
    parts = parts_of(given, plain, bonded=bonded + at_ends)
    return JointsResult(
        joints=joints,
        joints_whole=round_down(joints),
        joints_up=round_up(joints),
        joints_insulated=insulated,
        joints_compromise=compromise,
        joints_plain=plain,
        bars=parts.bars,
        bolts=parts.bolts,
        nuts=parts.nuts,
        washers=parts.washers,
        bonds=parts.bonds,
        bars_mass=parts.bars_mass,
        bolts_mass=parts.bolts_mass,
        check=bolts_check(given.bolts_per_joint, given.track_class, welded=bool(given.welded)),
        lines=(*lines_of(given, parts), *special_lines(float(insulated), float(compromise))),
    )


RULE = Rule(
    id="quantities.joints",
    title="Joints and their parts",
    summary=(
        "A joint to each rail length of each rail. Insulated joints and those of section changes stand in place of plain ones, "
        "compromise joints at the ends stand there besides; all come complete with bars and bolts. What is told to be a piece of "
        "a longer stretch may hold more special joints than joints: its plain ones are below zero then, and the pieces add up. "
        "Nothing is rounded but in the two fields that say so."
    ),
    formulas=(
        Formula("joints", "renewed rails times length over rail length", exact=False),
        Formula("joints_plain", "j less insulated joints and those of section changes, not below 0 but in a piece", exact=False),
        Formula("bars", "j_p * b"),
        Formula("bolts", "j_p * h"),
        Formula("nuts", "n_bolts * k_n"),
        Formula("washers", "n_bolts * k_w"),
        Formula("bonds", "(j - j_i, not below 0 but in a piece, and compromise joints at the ends) * k_b", exact=False),
    ),
    cites=(
        Cite("trautwine", "weight of railroad spikes: 24-ft rails make 440 joints a mile", "published"),
        Cite("mills-1898", "pp. 242-247: one-mile bills", "published"),
        Cite("cfr-49-213", "213.121(d) and (e): least bolts in each rail", "published"),
        Cite("joint-bars-length-supplier", "bars of 24 in with 4 holes, 36 in with 6", "published"),
    ),
    input=JointsInput,
    output=JointsResult,
    evaluate=evaluate,
)
