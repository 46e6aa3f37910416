"""How the new rail of a job is made, hauled and joined, and the temperatures that its checks rest on."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Literal

from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.domain.strings import (
    FieldConsumption,
    FieldWeld,
    LeftoverReach,
    MinimumPiece,
    RailCentres,
    SawCut,
    Stagger,
    ThermiteGap,
    WeldedString,
)
from railrules_api.rules.common import ElasticModulus, Expansion
from railrules_api.rules.quantities.joints import JointSet
from railrules_api.rules.quantities.rail_supply import (
    RailRejectShare,
    SpareShare,
    TestWeldRail,
    TestWeldShare,
    WeldRejectCut,
    WeldRejectShare,
)
from railrules_api.rules.quantities.train_loads import (
    CarMassLimit,
    CarSpacing,
    ExtraCars,
    RackStrings,
    TrainMassLimit,
    UnloadedAtOnce,
)
from railrules_api.rules.takeoff.string_way import StringWay

TieIn = Literal["weld", "compromise-weld", "joint", "compromise-joint"]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Supply:
    """How the new rail is made, hauled and joined."""

    string: Annotated[WeldedString, Field("The welded string.")]
    tie_in: Annotated[
        TieIn,
        Field("How new rail is closed to the rail that stays, at the ends of the job and of each rail renewed alone."),
    ]
    fixed_tie_in: Annotated[
        TieIn,
        Field("How new rail is closed to fixed objects that keep their own rail, such as turnouts."),
    ]
    rail_centres: RailCentres
    field_weld: FieldWeld
    thermite_gap: ThermiteGap
    field_consumption: FieldConsumption
    minimum_piece: MinimumPiece
    stagger: Stagger
    saw_cut: SawCut
    leftover_reach: LeftoverReach = None
    keep_out_distance: Annotated[
        float,
        Field(
            "Kept clear of field welds before and beyond crossings and bridges.",
            kind=Kind.LENGTH, at_least=0.0, at_most=1e4, default="keep-out-distance",
        ),
    ]  # fmt: skip
    work_block: Annotated[
        float | None,
        Field(
            "Length of track relaid in one occupancy; left out: no temporary closures are counted.",
            kind=Kind.LENGTH,
            at_least=10.0,
            at_most=1e6,
        ),
    ] = None
    joints: Annotated[
        JointSet | None,
        Field("What a plain joint left in welded rail is made of; left out: such joints are counted and their parts are not."),
    ] = None
    spare_share: SpareShare
    rail_reject_share: RailRejectShare
    weld_reject_share: WeldRejectShare
    weld_reject_cut: WeldRejectCut
    test_weld_share: TestWeldShare
    test_weld_rail: TestWeldRail
    rack_strings: RackStrings
    train_mass_limit: TrainMassLimit = None
    car_mass_limit: CarMassLimit = None
    car_spacing: CarSpacing
    extra_cars: ExtraCars
    unloaded_at_once: UnloadedAtOnce
    way: Annotated[
        StringWay | None,
        Field("Sharpest place on the way of the strings; left out: their bending on the way is not checked."),
    ] = None


_ExtremeRail = Annotated[float, Field("Rail temperature.", kind=Kind.TEMPERATURE, at_least=173.15, at_most=373.15)]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Temperatures:
    """Rail temperatures of the place and of the work, and how the rail is held."""

    hottest_rail: _ExtremeRail
    coldest_rail: _ExtremeRail
    range_rule: Annotated[
        Literal["two-thirds", "mean-plus"],
        Field("Rule of the desired laying range: (2H+L)/3 + 10 to 25 °F, or (H+L)/2 + 5 °C.", default="laying-range-rule"),
    ]
    target: Annotated[
        float | None,
        Field(
            "Neutral temperature wanted; left out: the middle of the desired range.",
            kind=Kind.TEMPERATURE, at_least=173.15, at_most=373.15,
        ),
    ] = None  # fmt: skip
    laying_rail: Annotated[
        float | None,
        Field(
            "Rail temperature expected while laying, for the adjustment; left out: none is worked out.",
            kind=Kind.TEMPERATURE, at_least=173.15, at_most=373.15,
        ),
    ] = None  # fmt: skip
    drift: Annotated[
        float,
        Field(
            "Neutral temperature assumed lost in service.",
            kind=Kind.TEMPERATURE_CHANGE, at_least=0.0, at_most=60.0, default="neutral-drift",
        ),
    ]  # fmt: skip
    elastic_modulus: ElasticModulus
    expansion: Expansion
    resistance: Annotated[
        float,
        Field(
            "Longitudinal resistance of one rail per length, every tie anchored.",
            kind=Kind.FORCE_PER_LENGTH, above=0.0, at_most=1e7, default="longitudinal-resistance",
        ),
    ]  # fmt: skip
    anchor_slip: Annotated[
        float,
        Field("Force at which an anchor slips on the rail.", kind=Kind.FORCE, above=0.0, at_most=1e6, default="anchor-slip-load"),
    ]
    joint_slip: Annotated[
        float,
        Field(
            "Force that a joint at an end of welded rail holds before it slips.",
            kind=Kind.FORCE, at_least=0.0, at_most=1e7, default="joint-slip-force",
        ),
    ]  # fmt: skip
    pulling_friction: Annotated[
        float,
        Field(
            "Drag on one unfastened rail per length while it is pulled.",
            kind=Kind.FORCE_PER_LENGTH, at_least=0.0, at_most=1e5, default="pulling-friction",
        ),
    ]  # fmt: skip
    break_gap_limit: Annotated[
        float,
        Field("Largest gap accepted at a break.", kind=Kind.LENGTH, above=0.0, at_most=1.0, default="break-gap-limit"),
    ]
