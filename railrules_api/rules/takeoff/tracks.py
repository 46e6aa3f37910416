"""The track that comes out and the track that goes in: rail, plates, spikes, anchors, joints of a part of a job."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Literal

from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.patterns import AnchorPattern
from railrules_api.domain.records import lean
from railrules_api.rules.common import Area
from railrules_api.rules.quantities import joints
from railrules_api.rules.quantities.anchor_reuse import BasePlay
from railrules_api.rules.quantities.anchors import AnchorMass, AnchorProduct, AnchorsPerBag, ElasticFasteners, ReappliedShare
from railrules_api.rules.quantities.cribbing import BallastDensity, FullShare, PocketDepth, PocketLength, PocketWidth
from railrules_api.rules.quantities.given import (
    BarsPerJoint,
    NewAnchors,
    NewSpikes,
    OldSpikesPerPlate,
    PlatedShare,
    RecoveredShare,
)
from railrules_api.rules.quantities.plate_pins import PinMass, PinnedEvery, PinProduct, PinsPerKeg, PinsPerPlate
from railrules_api.rules.quantities.preservative import (
    AdzeMargin,
    Coats,
    Coverage,
    CoverageRough,
    CoverageSmooth,
    CoverageSprayed,
    DrumVolume,
    PreservativeProduct,
    Surface,
)
from railrules_api.rules.quantities.salvage import (
    BoltMass,
    RelayShare,
    RelayWear,
    RerollShare,
    RerollWear,
    ScrapShare,
    WornShare,
)
from railrules_api.rules.quantities.spikes import (
    KegMass,
    PlateKegMass,
    PlateSpike,
    PlateSpikeMass,
    PlateSpikesPerKeg,
    SharpCurveRadius,
    SpikeMass,
    SpikeProduct,
    SpikesPerKeg,
)
from railrules_api.rules.quantities.tie_plates import (
    Handed,
    PlateBaseLeast,
    PlateBaseMost,
    PlateMass,
    PlateProduct,
    PlatesPerBundle,
    RailBase,
)
from railrules_api.rules.quantities.tie_plugs import (
    CompoundWaste,
    HoleDepth,
    HoleFilling,
    HoleShape,
    HoleSide,
    PlugProduct,
    PlugsPerBundle,
)
from railrules_api.rules.quantities.work import BoredShare, BrokenShare
from railrules_api.rules.sections.compatibility import PlatePlay, RunOffRun


def _section(about: str, column: str) -> Field:
    return Field(about, kind=Kind.LENGTH, above=0.0, at_most=1.0, taken=Taken("section", "rail-sections", column))


def _mass(about: str, by: str, table: str, column: str, most: float) -> Field:
    return Field(about, kind=Kind.MASS, above=0.0, at_most=most, taken=Taken(by, table, column))


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class OldTrack:
    """The track that comes out."""

    section_id: Annotated[
        str | None, Field("Catalogue id of the old rail section.", taken=Taken("section", "rail-sections", "id"))
    ] = None
    mass_per_length: Annotated[
        float,
        Field(
            "Mass of the old rail when new.", kind=Kind.MASS_PER_LENGTH, above=0.0, at_most=200.0,
            taken=Taken("section", "rail-sections", "mass_per_length"),
        ),
    ]  # fmt: skip
    height: Annotated[float | None, _section("Height of the old rail.", "height")] = None
    base_width: Annotated[float | None, _section("Width of the old rail's base.", "base_width")] = None
    rail_length: Annotated[
        float | None,
        Field("Length of one old rail; left out: the old track has no joints.", kind=Kind.LENGTH, at_least=1.0, at_most=1000.0),
    ] = None
    bars_per_joint: BarsPerJoint
    bolts_per_joint: Annotated[
        int | None, Field("Bolts to a joint.", at_least=0, at_most=16, taken=Taken("joint_bar", "joint-bars", "holes"))
    ] = None
    bar_mass: Annotated[float | None, _mass("Mass of one joint bar.", "joint_bar", "joint-bars", "mass", 200.0)] = None
    pair_mass: Annotated[
        float | None,
        _mass("Mass of a pair of bars, where that of one is not known.", "joint_bar", "joint-bars", "mass_pair", 400.0),
    ] = None
    bolt_mass: BoltMass = None
    spikes_per_plate: OldSpikesPerPlate
    spike_mass: Annotated[float | None, _mass("Mass of one old spike.", "spike", "spikes", "mass", 10.0)] = None
    keg_mass: Annotated[
        float | None, _mass("Mass of a keg of the old spike, where that of one is not known.", "spike", "spikes", "keg_mass", 5e3)
    ] = None
    spikes_per_keg: Annotated[
        float | None, Field("Spikes in that keg.", above=0.0, at_most=1e5, taken=Taken("spike", "spikes", "count_per_keg"))
    ] = None
    plated_share: PlatedShare
    broken_share: BrokenShare
    plate_mass: Annotated[float | None, _mass("Mass of one old tie plate.", "plate", "tie-plates", "mass", 200.0)] = None
    plate_base_least: PlateBaseLeast = None
    plate_base_most: PlateBaseMost = None
    anchors: Annotated[
        AnchorPattern | None,
        Field("Anchors of the old track; left out: none.", taken=Taken("anchor_pattern", "anchor-patterns")),
    ] = None
    anchor_mass: Annotated[float | None, _mass("Mass of one old anchor.", "anchor", "rail-anchors", "mass", 20.0)] = None
    worn_share: WornShare
    relay_share: RelayShare
    reroll_share: RerollShare
    scrap_share: ScrapShare = None
    relay_wear: RelayWear = None
    reroll_wear: RerollWear = None
    recovered_share: RecoveredShare


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class NewJoints(joints.JointSet):
    """The joints of new track that is laid of single rails."""

    rail_length: Annotated[float, Field("Length of one rail.", kind=Kind.LENGTH, at_least=1.0, at_most=1000.0)]
    section_changes: Annotated[
        int | None,
        Field(
            "Places where its rails meet those of another section, each a compromise joint in every renewed rail; left out: "
            "counted from the segments it touches, and from how new rail is closed to what stays.",
            at_least=0,
            at_most=100_000,
        ),
    ] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class NewTrack:
    """The track that goes in."""

    section_id: Annotated[
        str | None, Field("Catalogue id of the new rail section.", taken=Taken("section", "rail-sections", "id"))
    ] = None
    area: Area
    mass_per_length: Annotated[
        float,
        Field(
            "Mass of the new rail.", kind=Kind.MASS_PER_LENGTH, above=0.0, at_most=200.0,
            taken=Taken("section", "rail-sections", "mass_per_length"),
        ),
    ]  # fmt: skip
    second_moment_lateral: Annotated[
        float | None,
        Field(
            "Second moment of the new rail about its upright axis, for stability.",
            kind=Kind.SECOND_MOMENT, at_least=1e-10, at_most=1e-3,
            taken=Taken("section", "rail-sections", "second_moment_lateral"),
        ),
    ] = None  # fmt: skip
    height: Annotated[float | None, _section("Height of the new rail.", "height")] = None
    base_width: RailBase = None
    plate_play: PlatePlay
    run_off_run: RunOffRun
    plates: Annotated[
        Literal["new", "reused"],
        Field("Tie plates are new, or those in track are used again and only the missing ones are ordered."),
    ]
    handed_plates: Handed = None
    plate_id: PlateProduct = None
    plate_mass: PlateMass = None
    plate_base_least: PlateBaseLeast = None
    plate_base_most: PlateBaseMost = None
    plates_per_bundle: PlatesPerBundle = None
    plate_length: Annotated[
        float | None,
        Field(
            "Length of a plate along the tie, for the adzed area.", kind=Kind.LENGTH, above=0.0, at_most=2.0,
            taken=Taken("plate", "tie-plates", "length"),
        ),
    ] = None  # fmt: skip
    plate_width: Annotated[
        float | None,
        Field(
            "Width of a plate along the rail; without it and the length no adzing is counted.",
            kind=Kind.LENGTH, above=0.0, at_most=1.0, taken=Taken("plate", "tie-plates", "width"),
        ),
    ] = None  # fmt: skip
    adze_margin: AdzeMargin
    preservative_coats: Coats
    preservative_coverage: Coverage
    preservative_surface: Surface = None
    preservative_id: PreservativeProduct = None
    coverage_rough: CoverageRough = None
    coverage_smooth: CoverageSmooth = None
    coverage_sprayed: CoverageSprayed = None
    drum_volume: DrumVolume = None
    spikes: NewSpikes
    sharp_curve_radius: SharpCurveRadius
    spike_id: SpikeProduct = None
    spike_mass: SpikeMass = None
    keg_mass: KegMass = None
    spikes_per_keg: SpikesPerKeg = None
    plate_spike: PlateSpike = None
    plate_spike_mass: PlateSpikeMass = None
    plate_keg_mass: PlateKegMass = None
    plate_spikes_per_keg: PlateSpikesPerKeg = None
    hole_filling: HoleFilling
    hole_shape: HoleShape
    hole_side: HoleSide
    hole_depth: HoleDepth
    compound_waste: CompoundWaste
    plug_id: PlugProduct = None
    plugs_per_bundle: PlugsPerBundle = None
    pinned_every: PinnedEvery
    pins_per_plate: PinsPerPlate
    pin_id: PinProduct = None
    pin_mass: PinMass = None
    pins_per_keg: PinsPerKeg = None
    anchors: NewAnchors
    elastic_fasteners: ElasticFasteners = None
    anchors_reapplied_share: ReappliedShare
    anchor_base_play: BasePlay
    anchor_id: AnchorProduct = None
    anchor_mass: AnchorMass = None
    anchors_per_bag: AnchorsPerBag = None
    bored_share: BoredShare
    pocket_length: PocketLength
    pocket_width: PocketWidth
    pocket_depth: PocketDepth
    full_share: FullShare
    ballast_density: BallastDensity = None
    joints: Annotated[
        NewJoints | None, Field("Joints, where the new track is laid of single rails; left out: it is laid of welded strings.")
    ] = None
