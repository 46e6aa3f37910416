"""Resources of railrules 0.1.0, named as the trade names them. Made from the OpenAPI document; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, Literal, Unpack

from railrules_client._calls import Operation
from railrules_client._generated.models import (
    AnchorReuseAnswer,
    AnchorsAnswer,
    BreakGapAnswer,
    BucklingAnswer,
    BulkLine,
    CatalogueRow,
    CatalogueTable,
    ClosingJointsAnswer,
    CribbingAnswer,
    CurveLoadAnswer,
    CustomAnswer,
    DestressingAnswer,
    EndMovementAnswer,
    HaulingCurveAnswer,
    Health,
    JointGapAnswer,
    JointsAnswer,
    LayingAdjustmentAnswer,
    LoadsAnswer,
    NeutralTemperatureAnswer,
    OrderAnswer,
    PlatePinsAnswer,
    PreservativeAnswer,
    RailMassAnswer,
    RailSupplyAnswer,
    RestraintAnswer,
    RuleList,
    RuleRecord,
    RulebookList,
    SalvageAnswer,
    SectionCompatibilityAnswer,
    SectionProfile,
    SectionPropertiesAnswer,
    SoundTiesAnswer,
    SourceList,
    SpikesAnswer,
    StringLayoutAnswer,
    TakeoffAnswer,
    TakeoffLine,
    TemperatureRangeAnswer,
    ThermalForceAnswer,
    TiePlatesAnswer,
    TiePlugsAnswer,
    TiesAnswer,
    TrackJointsAnswer,
    TrainLoadsAnswer,
    TurnoutRadiusAnswer,
    VerticalBendingAnswer,
    WorkAnswer,
    WorkPlanAnswer,
    WornRailAnswer,
)
from railrules_client._takeoffs import AsyncTakeoffs, Takeoffs

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from railrules_client._calls import AsyncCaller, Caller, CallOptions
    from railrules_client._generated.models import (
        AnchorReuseRequest,
        AnchorsRequest,
        BreakGapRequest,
        BucklingRequest,
        ClosingJointsRequest,
        CribbingRequest,
        CurveLoadRequest,
        CustomRequest,
        DestressingRequest,
        EndMovementRequest,
        HaulingCurveRequest,
        JointGapRequest,
        JointsRequest,
        LayingAdjustmentRequest,
        LoadsRequest,
        NeutralTemperatureRequest,
        OrderRequest,
        PlatePinsRequest,
        PreservativeRequest,
        Progress,
        RailMassRequest,
        RailSupplyRequest,
        RestraintRequest,
        SalvageRequest,
        SectionCompatibilityRequest,
        SectionPropertiesRequest,
        SoundTiesRequest,
        SpikesRequest,
        StringLayoutRequest,
        TakeoffRequest,
        TemperatureRangeRequest,
        ThermalForceRequest,
        TiePlatesRequest,
        TiePlugsRequest,
        TiesRequest,
        TrackJointsRequest,
        TrainLoadsRequest,
        TurnoutRadiusRequest,
        VerticalBendingRequest,
        WorkPlanRequest,
        WorkRequest,
        WornRailRequest,
    )

_LIST_RAIL_SECTIONS: Final = Operation(
    "listRailSections",
    "GET",
    "/v1/rail-sections",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_RAIL_SECTION: Final = Operation(
    "getRailSection",
    "GET",
    "/v1/rail-sections/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_GET_RAIL_SECTION_PROFILE: Final = Operation(
    "getRailSectionProfile",
    "GET",
    "/v1/rail-sections/{id}/profile",
    accept="application/json",
    answer=SectionProfile,
)
_GET_RAIL_SECTION_PROFILE_SVG: Final = Operation(
    "getRailSectionProfile",
    "GET",
    "/v1/rail-sections/{id}/profile",
    accept="image/svg+xml",
    answer=str,
)
_GET_RAIL_SECTION_PROFILE_DXF: Final = Operation(
    "getRailSectionProfile",
    "GET",
    "/v1/rail-sections/{id}/profile",
    accept="image/vnd.dxf",
    answer=bytes,
)
_LIST_JOINT_BARS: Final = Operation(
    "listJointBars",
    "GET",
    "/v1/joint-bars",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_JOINT_BAR: Final = Operation(
    "getJointBar",
    "GET",
    "/v1/joint-bars/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_TIE_PLATES: Final = Operation(
    "listTiePlates",
    "GET",
    "/v1/tie-plates",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_TIE_PLATE: Final = Operation(
    "getTiePlate",
    "GET",
    "/v1/tie-plates/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_SPIKES: Final = Operation("listSpikes", "GET", "/v1/spikes", accept="application/json", answer=CatalogueTable)
_GET_SPIKE: Final = Operation("getSpike", "GET", "/v1/spikes/{id}", accept="application/json", answer=CatalogueRow)
_LIST_TIE_PLUGS: Final = Operation(
    "listTiePlugs",
    "GET",
    "/v1/tie-plugs",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_TIE_PLUG: Final = Operation(
    "getTiePlug",
    "GET",
    "/v1/tie-plugs/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_RAIL_ANCHORS: Final = Operation(
    "listRailAnchors",
    "GET",
    "/v1/rail-anchors",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_RAIL_ANCHOR: Final = Operation(
    "getRailAnchor",
    "GET",
    "/v1/rail-anchors/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_PLATE_PINS: Final = Operation(
    "listPlatePins",
    "GET",
    "/v1/plate-pins",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_PLATE_PIN: Final = Operation(
    "getPlatePin",
    "GET",
    "/v1/plate-pins/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_TRACK_BOLTS: Final = Operation(
    "listTrackBolts",
    "GET",
    "/v1/track-bolts",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_TRACK_BOLT: Final = Operation(
    "getTrackBolt",
    "GET",
    "/v1/track-bolts/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_TURNOUTS: Final = Operation(
    "listTurnouts",
    "GET",
    "/v1/turnouts",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_TURNOUT: Final = Operation(
    "getTurnout",
    "GET",
    "/v1/turnouts/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_PRESERVATIVES: Final = Operation(
    "listPreservatives",
    "GET",
    "/v1/preservatives",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_PRESERVATIVE: Final = Operation(
    "getPreservative",
    "GET",
    "/v1/preservatives/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_SPIKE_PATTERNS: Final = Operation(
    "listSpikePatterns",
    "GET",
    "/v1/spike-patterns",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_SPIKE_PATTERN: Final = Operation(
    "getSpikePattern",
    "GET",
    "/v1/spike-patterns/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_ANCHOR_PATTERNS: Final = Operation(
    "listAnchorPatterns",
    "GET",
    "/v1/anchor-patterns",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_ANCHOR_PATTERN: Final = Operation(
    "getAnchorPattern",
    "GET",
    "/v1/anchor-patterns/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_FEATURE_KINDS: Final = Operation(
    "listFeatureKinds",
    "GET",
    "/v1/feature-kinds",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_KIND_OF_FEATURE: Final = Operation(
    "getKindOfFeature",
    "GET",
    "/v1/feature-kinds/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_JOINT_GAP_TABLES: Final = Operation(
    "listJointGapTables",
    "GET",
    "/v1/joint-gap-tables",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_JOINT_GAP_TABLE: Final = Operation(
    "getJointGapTable",
    "GET",
    "/v1/joint-gap-tables/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_RULES: Final = Operation("listRules", "GET", "/v1/rules", accept="application/json", answer=RuleList)
_GET_RULE: Final = Operation("getRule", "GET", "/v1/rules/{id}", accept="application/json", answer=RuleRecord)
_LIST_SOURCES: Final = Operation("listSources", "GET", "/v1/sources", accept="application/json", answer=SourceList)
_LIST_RULEBOOKS: Final = Operation(
    "listRulebooks",
    "GET",
    "/v1/rulebooks",
    accept="application/json",
    answer=RulebookList,
)
_CALCULATE_TIES: Final = Operation(
    "calculateTies",
    "POST",
    "/v1/quantities/ties",
    accept="application/json",
    answer=TiesAnswer,
    content_type="application/json",
)
_CALCULATE_TIES_HTML: Final = Operation(
    "calculateTies",
    "POST",
    "/v1/quantities/ties",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_TIES_PDF: Final = Operation(
    "calculateTies",
    "POST",
    "/v1/quantities/ties",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_SOUND_TIES: Final = Operation(
    "calculateSoundTies",
    "POST",
    "/v1/quantities/sound-ties",
    accept="application/json",
    answer=SoundTiesAnswer,
    content_type="application/json",
)
_CALCULATE_SOUND_TIES_HTML: Final = Operation(
    "calculateSoundTies",
    "POST",
    "/v1/quantities/sound-ties",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_SOUND_TIES_PDF: Final = Operation(
    "calculateSoundTies",
    "POST",
    "/v1/quantities/sound-ties",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_TIE_PLATES: Final = Operation(
    "calculateTiePlates",
    "POST",
    "/v1/quantities/tie-plates",
    accept="application/json",
    answer=TiePlatesAnswer,
    content_type="application/json",
)
_CALCULATE_TIE_PLATES_HTML: Final = Operation(
    "calculateTiePlates",
    "POST",
    "/v1/quantities/tie-plates",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_TIE_PLATES_PDF: Final = Operation(
    "calculateTiePlates",
    "POST",
    "/v1/quantities/tie-plates",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_SPIKES: Final = Operation(
    "calculateSpikes",
    "POST",
    "/v1/quantities/spikes",
    accept="application/json",
    answer=SpikesAnswer,
    content_type="application/json",
)
_CALCULATE_SPIKES_SVG: Final = Operation(
    "calculateSpikes",
    "POST",
    "/v1/quantities/spikes",
    accept="image/svg+xml",
    answer=str,
    content_type="application/json",
)
_CALCULATE_SPIKES_HTML: Final = Operation(
    "calculateSpikes",
    "POST",
    "/v1/quantities/spikes",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_SPIKES_PDF: Final = Operation(
    "calculateSpikes",
    "POST",
    "/v1/quantities/spikes",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_TIE_PLUGS: Final = Operation(
    "calculateTiePlugs",
    "POST",
    "/v1/quantities/tie-plugs",
    accept="application/json",
    answer=TiePlugsAnswer,
    content_type="application/json",
)
_CALCULATE_TIE_PLUGS_HTML: Final = Operation(
    "calculateTiePlugs",
    "POST",
    "/v1/quantities/tie-plugs",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_TIE_PLUGS_PDF: Final = Operation(
    "calculateTiePlugs",
    "POST",
    "/v1/quantities/tie-plugs",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_PLATE_PINS: Final = Operation(
    "calculatePlatePins",
    "POST",
    "/v1/quantities/plate-pins",
    accept="application/json",
    answer=PlatePinsAnswer,
    content_type="application/json",
)
_CALCULATE_PLATE_PINS_HTML: Final = Operation(
    "calculatePlatePins",
    "POST",
    "/v1/quantities/plate-pins",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_PLATE_PINS_PDF: Final = Operation(
    "calculatePlatePins",
    "POST",
    "/v1/quantities/plate-pins",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_PRESERVATIVE: Final = Operation(
    "calculatePreservative",
    "POST",
    "/v1/quantities/preservative",
    accept="application/json",
    answer=PreservativeAnswer,
    content_type="application/json",
)
_CALCULATE_PRESERVATIVE_HTML: Final = Operation(
    "calculatePreservative",
    "POST",
    "/v1/quantities/preservative",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_PRESERVATIVE_PDF: Final = Operation(
    "calculatePreservative",
    "POST",
    "/v1/quantities/preservative",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_ANCHORS: Final = Operation(
    "calculateAnchors",
    "POST",
    "/v1/quantities/anchors",
    accept="application/json",
    answer=AnchorsAnswer,
    content_type="application/json",
)
_CALCULATE_ANCHORS_SVG: Final = Operation(
    "calculateAnchors",
    "POST",
    "/v1/quantities/anchors",
    accept="image/svg+xml",
    answer=str,
    content_type="application/json",
)
_CALCULATE_ANCHORS_HTML: Final = Operation(
    "calculateAnchors",
    "POST",
    "/v1/quantities/anchors",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_ANCHORS_PDF: Final = Operation(
    "calculateAnchors",
    "POST",
    "/v1/quantities/anchors",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_ANCHOR_REUSE: Final = Operation(
    "calculateAnchorReuse",
    "POST",
    "/v1/quantities/anchor-reuse",
    accept="application/json",
    answer=AnchorReuseAnswer,
    content_type="application/json",
)
_CALCULATE_ANCHOR_REUSE_HTML: Final = Operation(
    "calculateAnchorReuse",
    "POST",
    "/v1/quantities/anchor-reuse",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_ANCHOR_REUSE_PDF: Final = Operation(
    "calculateAnchorReuse",
    "POST",
    "/v1/quantities/anchor-reuse",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_CRIBBING: Final = Operation(
    "calculateCribbing",
    "POST",
    "/v1/quantities/cribbing",
    accept="application/json",
    answer=CribbingAnswer,
    content_type="application/json",
)
_CALCULATE_CRIBBING_HTML: Final = Operation(
    "calculateCribbing",
    "POST",
    "/v1/quantities/cribbing",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_CRIBBING_PDF: Final = Operation(
    "calculateCribbing",
    "POST",
    "/v1/quantities/cribbing",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_JOINTS: Final = Operation(
    "calculateJoints",
    "POST",
    "/v1/quantities/joints",
    accept="application/json",
    answer=JointsAnswer,
    content_type="application/json",
)
_CALCULATE_JOINTS_HTML: Final = Operation(
    "calculateJoints",
    "POST",
    "/v1/quantities/joints",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_JOINTS_PDF: Final = Operation(
    "calculateJoints",
    "POST",
    "/v1/quantities/joints",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_CLOSING_JOINTS: Final = Operation(
    "calculateClosingJoints",
    "POST",
    "/v1/quantities/closing-joints",
    accept="application/json",
    answer=ClosingJointsAnswer,
    content_type="application/json",
)
_CALCULATE_CLOSING_JOINTS_HTML: Final = Operation(
    "calculateClosingJoints",
    "POST",
    "/v1/quantities/closing-joints",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_CLOSING_JOINTS_PDF: Final = Operation(
    "calculateClosingJoints",
    "POST",
    "/v1/quantities/closing-joints",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_RAIL_MASS: Final = Operation(
    "calculateRailMass",
    "POST",
    "/v1/quantities/rail-mass",
    accept="application/json",
    answer=RailMassAnswer,
    content_type="application/json",
)
_CALCULATE_RAIL_MASS_HTML: Final = Operation(
    "calculateRailMass",
    "POST",
    "/v1/quantities/rail-mass",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_RAIL_MASS_PDF: Final = Operation(
    "calculateRailMass",
    "POST",
    "/v1/quantities/rail-mass",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_RAIL_SUPPLY: Final = Operation(
    "calculateRailSupply",
    "POST",
    "/v1/quantities/rail-supply",
    accept="application/json",
    answer=RailSupplyAnswer,
    content_type="application/json",
)
_CALCULATE_RAIL_SUPPLY_HTML: Final = Operation(
    "calculateRailSupply",
    "POST",
    "/v1/quantities/rail-supply",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_RAIL_SUPPLY_PDF: Final = Operation(
    "calculateRailSupply",
    "POST",
    "/v1/quantities/rail-supply",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_STRING_LAYOUT: Final = Operation(
    "calculateStringLayout",
    "POST",
    "/v1/quantities/string-layout",
    accept="application/json",
    answer=StringLayoutAnswer,
    content_type="application/json",
)
_CALCULATE_STRING_LAYOUT_HTML: Final = Operation(
    "calculateStringLayout",
    "POST",
    "/v1/quantities/string-layout",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_STRING_LAYOUT_PDF: Final = Operation(
    "calculateStringLayout",
    "POST",
    "/v1/quantities/string-layout",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_TRAIN_LOADS: Final = Operation(
    "calculateTrainLoads",
    "POST",
    "/v1/quantities/train-loads",
    accept="application/json",
    answer=TrainLoadsAnswer,
    content_type="application/json",
)
_CALCULATE_TRAIN_LOADS_HTML: Final = Operation(
    "calculateTrainLoads",
    "POST",
    "/v1/quantities/train-loads",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_TRAIN_LOADS_PDF: Final = Operation(
    "calculateTrainLoads",
    "POST",
    "/v1/quantities/train-loads",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_SALVAGE: Final = Operation(
    "calculateSalvage",
    "POST",
    "/v1/quantities/salvage",
    accept="application/json",
    answer=SalvageAnswer,
    content_type="application/json",
)
_CALCULATE_SALVAGE_HTML: Final = Operation(
    "calculateSalvage",
    "POST",
    "/v1/quantities/salvage",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_SALVAGE_PDF: Final = Operation(
    "calculateSalvage",
    "POST",
    "/v1/quantities/salvage",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_CUSTOM: Final = Operation(
    "calculateCustom",
    "POST",
    "/v1/quantities/custom",
    accept="application/json",
    answer=CustomAnswer,
    content_type="application/json",
)
_CALCULATE_CUSTOM_HTML: Final = Operation(
    "calculateCustom",
    "POST",
    "/v1/quantities/custom",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_CUSTOM_PDF: Final = Operation(
    "calculateCustom",
    "POST",
    "/v1/quantities/custom",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_WORK_PER_TIE: Final = Operation(
    "calculateWorkPerTie",
    "POST",
    "/v1/quantities/work-per-tie",
    accept="application/json",
    answer=WorkAnswer,
    content_type="application/json",
)
_CALCULATE_WORK_PER_TIE_HTML: Final = Operation(
    "calculateWorkPerTie",
    "POST",
    "/v1/quantities/work-per-tie",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_WORK_PER_TIE_PDF: Final = Operation(
    "calculateWorkPerTie",
    "POST",
    "/v1/quantities/work-per-tie",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_WORK_PLAN: Final = Operation(
    "calculateWorkPlan",
    "POST",
    "/v1/quantities/work-plan",
    accept="application/json",
    answer=WorkPlanAnswer,
    content_type="application/json",
)
_CALCULATE_WORK_PLAN_HTML: Final = Operation(
    "calculateWorkPlan",
    "POST",
    "/v1/quantities/work-plan",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_WORK_PLAN_PDF: Final = Operation(
    "calculateWorkPlan",
    "POST",
    "/v1/quantities/work-plan",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_LOADS: Final = Operation(
    "calculateLoads",
    "POST",
    "/v1/quantities/loads",
    accept="application/json",
    answer=LoadsAnswer,
    content_type="application/json",
)
_CALCULATE_LOADS_HTML: Final = Operation(
    "calculateLoads",
    "POST",
    "/v1/quantities/loads",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_LOADS_PDF: Final = Operation(
    "calculateLoads",
    "POST",
    "/v1/quantities/loads",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_ORDER: Final = Operation(
    "calculateOrder",
    "POST",
    "/v1/quantities/order",
    accept="application/json",
    answer=OrderAnswer,
    content_type="application/json",
)
_CALCULATE_ORDER_HTML: Final = Operation(
    "calculateOrder",
    "POST",
    "/v1/quantities/order",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_ORDER_PDF: Final = Operation(
    "calculateOrder",
    "POST",
    "/v1/quantities/order",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_FORCE: Final = Operation(
    "calculateForce",
    "POST",
    "/v1/thermal/force",
    accept="application/json",
    answer=ThermalForceAnswer,
    content_type="application/json",
)
_CALCULATE_FORCE_HTML: Final = Operation(
    "calculateForce",
    "POST",
    "/v1/thermal/force",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_FORCE_PDF: Final = Operation(
    "calculateForce",
    "POST",
    "/v1/thermal/force",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_WORN_RAIL: Final = Operation(
    "calculateWornRail",
    "POST",
    "/v1/thermal/worn-rail",
    accept="application/json",
    answer=WornRailAnswer,
    content_type="application/json",
)
_CALCULATE_WORN_RAIL_HTML: Final = Operation(
    "calculateWornRail",
    "POST",
    "/v1/thermal/worn-rail",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_WORN_RAIL_PDF: Final = Operation(
    "calculateWornRail",
    "POST",
    "/v1/thermal/worn-rail",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_TEMPERATURE_RANGE: Final = Operation(
    "calculateTemperatureRange",
    "POST",
    "/v1/thermal/temperature-range",
    accept="application/json",
    answer=TemperatureRangeAnswer,
    content_type="application/json",
)
_CALCULATE_TEMPERATURE_RANGE_HTML: Final = Operation(
    "calculateTemperatureRange",
    "POST",
    "/v1/thermal/temperature-range",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_TEMPERATURE_RANGE_PDF: Final = Operation(
    "calculateTemperatureRange",
    "POST",
    "/v1/thermal/temperature-range",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_LAYING_ADJUSTMENT: Final = Operation(
    "calculateLayingAdjustment",
    "POST",
    "/v1/thermal/laying-adjustment",
    accept="application/json",
    answer=LayingAdjustmentAnswer,
    content_type="application/json",
)
_CALCULATE_LAYING_ADJUSTMENT_SVG: Final = Operation(
    "calculateLayingAdjustment",
    "POST",
    "/v1/thermal/laying-adjustment",
    accept="image/svg+xml",
    answer=str,
    content_type="application/json",
)
_CALCULATE_LAYING_ADJUSTMENT_HTML: Final = Operation(
    "calculateLayingAdjustment",
    "POST",
    "/v1/thermal/laying-adjustment",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_LAYING_ADJUSTMENT_PDF: Final = Operation(
    "calculateLayingAdjustment",
    "POST",
    "/v1/thermal/laying-adjustment",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_DESTRESSING: Final = Operation(
    "calculateDestressing",
    "POST",
    "/v1/thermal/destressing",
    accept="application/json",
    answer=DestressingAnswer,
    content_type="application/json",
)
_CALCULATE_DESTRESSING_HTML: Final = Operation(
    "calculateDestressing",
    "POST",
    "/v1/thermal/destressing",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_DESTRESSING_PDF: Final = Operation(
    "calculateDestressing",
    "POST",
    "/v1/thermal/destressing",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_NEUTRAL_TEMPERATURE: Final = Operation(
    "calculateNeutralTemperature",
    "POST",
    "/v1/thermal/neutral-temperature",
    accept="application/json",
    answer=NeutralTemperatureAnswer,
    content_type="application/json",
)
_CALCULATE_NEUTRAL_TEMPERATURE_HTML: Final = Operation(
    "calculateNeutralTemperature",
    "POST",
    "/v1/thermal/neutral-temperature",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_NEUTRAL_TEMPERATURE_PDF: Final = Operation(
    "calculateNeutralTemperature",
    "POST",
    "/v1/thermal/neutral-temperature",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_BREAK_GAP: Final = Operation(
    "calculateBreakGap",
    "POST",
    "/v1/thermal/break-gap",
    accept="application/json",
    answer=BreakGapAnswer,
    content_type="application/json",
)
_CALCULATE_BREAK_GAP_SVG: Final = Operation(
    "calculateBreakGap",
    "POST",
    "/v1/thermal/break-gap",
    accept="image/svg+xml",
    answer=str,
    content_type="application/json",
)
_CALCULATE_BREAK_GAP_HTML: Final = Operation(
    "calculateBreakGap",
    "POST",
    "/v1/thermal/break-gap",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_BREAK_GAP_PDF: Final = Operation(
    "calculateBreakGap",
    "POST",
    "/v1/thermal/break-gap",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_END_MOVEMENT: Final = Operation(
    "calculateEndMovement",
    "POST",
    "/v1/thermal/end-movement",
    accept="application/json",
    answer=EndMovementAnswer,
    content_type="application/json",
)
_CALCULATE_END_MOVEMENT_SVG: Final = Operation(
    "calculateEndMovement",
    "POST",
    "/v1/thermal/end-movement",
    accept="image/svg+xml",
    answer=str,
    content_type="application/json",
)
_CALCULATE_END_MOVEMENT_HTML: Final = Operation(
    "calculateEndMovement",
    "POST",
    "/v1/thermal/end-movement",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_END_MOVEMENT_PDF: Final = Operation(
    "calculateEndMovement",
    "POST",
    "/v1/thermal/end-movement",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_RESTRAINT: Final = Operation(
    "calculateRestraint",
    "POST",
    "/v1/thermal/restraint",
    accept="application/json",
    answer=RestraintAnswer,
    content_type="application/json",
)
_CALCULATE_RESTRAINT_HTML: Final = Operation(
    "calculateRestraint",
    "POST",
    "/v1/thermal/restraint",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_RESTRAINT_PDF: Final = Operation(
    "calculateRestraint",
    "POST",
    "/v1/thermal/restraint",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_CURVE_LOAD: Final = Operation(
    "calculateCurveLoad",
    "POST",
    "/v1/thermal/curve-load",
    accept="application/json",
    answer=CurveLoadAnswer,
    content_type="application/json",
)
_CALCULATE_CURVE_LOAD_HTML: Final = Operation(
    "calculateCurveLoad",
    "POST",
    "/v1/thermal/curve-load",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_CURVE_LOAD_PDF: Final = Operation(
    "calculateCurveLoad",
    "POST",
    "/v1/thermal/curve-load",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_BUCKLING: Final = Operation(
    "calculateBuckling",
    "POST",
    "/v1/thermal/buckling",
    accept="application/json",
    answer=BucklingAnswer,
    content_type="application/json",
)
_CALCULATE_BUCKLING_SVG: Final = Operation(
    "calculateBuckling",
    "POST",
    "/v1/thermal/buckling",
    accept="image/svg+xml",
    answer=str,
    content_type="application/json",
)
_CALCULATE_BUCKLING_HTML: Final = Operation(
    "calculateBuckling",
    "POST",
    "/v1/thermal/buckling",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_BUCKLING_PDF: Final = Operation(
    "calculateBuckling",
    "POST",
    "/v1/thermal/buckling",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_JOINT_GAP: Final = Operation(
    "calculateJointGap",
    "POST",
    "/v1/thermal/joint-gap",
    accept="application/json",
    answer=JointGapAnswer,
    content_type="application/json",
)
_CALCULATE_JOINT_GAP_HTML: Final = Operation(
    "calculateJointGap",
    "POST",
    "/v1/thermal/joint-gap",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_JOINT_GAP_PDF: Final = Operation(
    "calculateJointGap",
    "POST",
    "/v1/thermal/joint-gap",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_VERTICAL_BENDING: Final = Operation(
    "calculateVerticalBending",
    "POST",
    "/v1/strength/vertical-bending",
    accept="application/json",
    answer=VerticalBendingAnswer,
    content_type="application/json",
)
_CALCULATE_VERTICAL_BENDING_HTML: Final = Operation(
    "calculateVerticalBending",
    "POST",
    "/v1/strength/vertical-bending",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_VERTICAL_BENDING_PDF: Final = Operation(
    "calculateVerticalBending",
    "POST",
    "/v1/strength/vertical-bending",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_HAULING_CURVE: Final = Operation(
    "calculateHaulingCurve",
    "POST",
    "/v1/strength/hauling-curve",
    accept="application/json",
    answer=HaulingCurveAnswer,
    content_type="application/json",
)
_CALCULATE_HAULING_CURVE_HTML: Final = Operation(
    "calculateHaulingCurve",
    "POST",
    "/v1/strength/hauling-curve",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_HAULING_CURVE_PDF: Final = Operation(
    "calculateHaulingCurve",
    "POST",
    "/v1/strength/hauling-curve",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_TURNOUT_RADIUS: Final = Operation(
    "calculateTurnoutRadius",
    "POST",
    "/v1/strength/turnout-radius",
    accept="application/json",
    answer=TurnoutRadiusAnswer,
    content_type="application/json",
)
_CALCULATE_TURNOUT_RADIUS_HTML: Final = Operation(
    "calculateTurnoutRadius",
    "POST",
    "/v1/strength/turnout-radius",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_TURNOUT_RADIUS_PDF: Final = Operation(
    "calculateTurnoutRadius",
    "POST",
    "/v1/strength/turnout-radius",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_TRACK_JOINTS: Final = Operation(
    "calculateTrackJoints",
    "POST",
    "/v1/regulation/track-joints",
    accept="application/json",
    answer=TrackJointsAnswer,
    content_type="application/json",
)
_CALCULATE_TRACK_JOINTS_HTML: Final = Operation(
    "calculateTrackJoints",
    "POST",
    "/v1/regulation/track-joints",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_TRACK_JOINTS_PDF: Final = Operation(
    "calculateTrackJoints",
    "POST",
    "/v1/regulation/track-joints",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_SECTION_PROPERTIES: Final = Operation(
    "calculateSectionProperties",
    "POST",
    "/v1/section-properties",
    accept="application/json",
    answer=SectionPropertiesAnswer,
    content_type="application/json",
)
_CALCULATE_SECTION_PROPERTIES_HTML: Final = Operation(
    "calculateSectionProperties",
    "POST",
    "/v1/section-properties",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_SECTION_PROPERTIES_PDF: Final = Operation(
    "calculateSectionProperties",
    "POST",
    "/v1/section-properties",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CALCULATE_SECTION_COMPATIBILITY: Final = Operation(
    "calculateSectionCompatibility",
    "POST",
    "/v1/section-compatibility",
    accept="application/json",
    answer=SectionCompatibilityAnswer,
    content_type="application/json",
)
_CALCULATE_SECTION_COMPATIBILITY_HTML: Final = Operation(
    "calculateSectionCompatibility",
    "POST",
    "/v1/section-compatibility",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CALCULATE_SECTION_COMPATIBILITY_PDF: Final = Operation(
    "calculateSectionCompatibility",
    "POST",
    "/v1/section-compatibility",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CREATE_TAKEOFF: Final = Operation(
    "createTakeoff",
    "POST",
    "/v1/takeoffs",
    accept="application/json",
    answer=TakeoffAnswer,
    content_type="application/json",
)
_CREATE_TAKEOFF_CSV: Final = Operation(
    "createTakeoff",
    "POST",
    "/v1/takeoffs",
    accept="text/csv",
    answer=str,
    content_type="application/json",
)
_CREATE_TAKEOFF_SVG: Final = Operation(
    "createTakeoff",
    "POST",
    "/v1/takeoffs",
    accept="image/svg+xml",
    answer=str,
    content_type="application/json",
)
_CREATE_TAKEOFF_HTML: Final = Operation(
    "createTakeoff",
    "POST",
    "/v1/takeoffs",
    accept="text/html",
    answer=str,
    content_type="application/json",
)
_CREATE_TAKEOFF_PDF: Final = Operation(
    "createTakeoff",
    "POST",
    "/v1/takeoffs",
    accept="application/pdf",
    answer=bytes,
    content_type="application/json",
)
_CREATE_TAKEOFF_XLSX: Final = Operation(
    "createTakeoff",
    "POST",
    "/v1/takeoffs",
    accept="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
    answer=bytes,
    content_type="application/json",
)
_CREATE_TAKEOFF_LINES: Final = Operation(
    "createTakeoff",
    "POST",
    "/v1/takeoffs",
    accept="application/x-ndjson",
    answer=TakeoffLine,
    content_type="application/json",
)
_CREATE_TAKEOFFS: Final = Operation(
    "createTakeoffs",
    "POST",
    "/v1/takeoffs/bulk",
    accept="application/x-ndjson",
    answer=BulkLine,
    content_type="application/x-ndjson",
)
_HEALTH_LIVE: Final = Operation("healthLive", "GET", "/health/live", accept="application/json", answer=Health)
_HEALTH_READY: Final = Operation("healthReady", "GET", "/health/ready", accept="application/json", answer=Health)


class AnchorPatternsResource:
    """`client.anchor_patterns`. List anchor patterns; get one anchor pattern."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List anchor patterns.

        Every row of the table of anchor patterns, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_LIST_ANCHOR_PATTERNS, options, query={"units": units, "version": version})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one anchor pattern.

        One anchor pattern with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(
            _GET_ANCHOR_PATTERN,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )


class FeatureKindsResource:
    """`client.feature_kinds`. List kinds of feature; get one kind of feature."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List kinds of feature.

        Every row of the table of kinds of feature, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_LIST_FEATURE_KINDS, options, query={"units": units, "version": version})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one kind of feature.

        One kind of feature with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(
            _GET_KIND_OF_FEATURE,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )


class HealthResource:
    """`client.health`. The process runs; requests can be answered."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def live(self, **options: Unpack[CallOptions]) -> Health:
        """The process runs.

        Answers 200 while it is so.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The service is up, and what it answers with.

        Raises:
            BadRequestError: The request is malformed (400).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_HEALTH_LIVE, options)

    def ready(self, **options: Unpack[CallOptions]) -> Health:
        """Requests can be answered.

        Answers 200 while it is so.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The service is up, and what it answers with.

        Raises:
            BadRequestError: The request is malformed (400).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_HEALTH_READY, options)


class JointBarsResource:
    """`client.joint_bars`. List joint bars; get one joint bar."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List joint bars.

        Every row of the table of joint bars, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_LIST_JOINT_BARS, options, query={"units": units, "version": version})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one joint bar.

        One joint bar with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_GET_JOINT_BAR, options, path={"id": id}, query={"units": units, "version": version})


class JointGapTablesResource:
    """`client.joint_gap_tables`. List joint gap tables; get one joint gap table."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List joint gap tables.

        Every row of the table of joint gap tables, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_LIST_JOINT_GAP_TABLES, options, query={"units": units, "version": version})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one joint gap table.

        One joint gap table with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(
            _GET_JOINT_GAP_TABLE,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )


class PlatePinsResource:
    """`client.plate_pins`. List plate pins; get one plate pin."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List plate pins.

        Every row of the table of plate pins, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_LIST_PLATE_PINS, options, query={"units": units, "version": version})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one plate pin.

        One plate pin with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_GET_PLATE_PIN, options, path={"id": id}, query={"units": units, "version": version})


class PreservativesResource:
    """`client.preservatives`. List preservatives; get one preservative."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List preservatives.

        Every row of the table of preservatives, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_LIST_PRESERVATIVES, options, query={"units": units, "version": version})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one preservative.

        One preservative with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(
            _GET_PRESERVATIVE,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )


class QuantitiesResource:
    """`client.quantities`. What a relay takes, leaves and hauls: one resource a rule."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def ties(self, request: TiesRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> TiesAnswer:
        """Ties standing, kept and renewed.

        Ties stand at origin + k * spacing; a stretch owns those with begin <= x < end, so counts add up however the
        line is cut. The average per mile is a separate figure and is not rounded. The spacing of wood ties is held
        against the limits of a manual of government railroads; a railroad's own standard goes before.

        Args:
            request: see `TiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.ties`: Ties standing, kept and renewed.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TIES, options, body=request)

    def ties_html(self, request: TiesRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Ties standing, kept and renewed, as text/html.

        Ties stand at origin + k * spacing; a stretch owns those with begin <= x < end, so counts add up however the
        line is cut. The average per mile is a separate figure and is not rounded. The spacing of wood ties is held
        against the limits of a manual of government railroads; a railroad's own standard goes before.

        Args:
            request: see `TiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TIES_HTML, options, body=request)

    def ties_pdf(self, request: TiesRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> bytes:
        """Ties standing, kept and renewed, as application/pdf.

        Ties stand at origin + k * spacing; a stretch owns those with begin <= x < end, so counts add up however the
        line is cut. The average per mile is a separate figure and is not rounded. The spacing of wood ties is held
        against the limits of a manual of government railroads; a railroad's own standard goes before.

        Args:
            request: see `TiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TIES_PDF, options, body=request)

    def sound_ties(
        self,
        request: SoundTiesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> SoundTiesAnswer:
        """Sound ties in 39 ft.

        Each 39 ft of track in classes 1 to 5 must have at least a number of ties that are not defective, more of them
        in turnouts and in curves of more than 2 degrees.

        Args:
            request: see `SoundTiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.sound-ties`: Sound ties in 39 ft.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_SOUND_TIES, options, body=request)

    def sound_ties_html(
        self,
        request: SoundTiesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Sound ties in 39 ft, as text/html.

        Each 39 ft of track in classes 1 to 5 must have at least a number of ties that are not defective, more of them
        in turnouts and in curves of more than 2 degrees.

        Args:
            request: see `SoundTiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_SOUND_TIES_HTML, options, body=request)

    def sound_ties_pdf(
        self,
        request: SoundTiesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Sound ties in 39 ft, as application/pdf.

        Each 39 ft of track in classes 1 to 5 must have at least a number of ties that are not defective, more of them
        in turnouts and in curves of more than 2 degrees.

        Args:
            request: see `SoundTiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_SOUND_TIES_PDF, options, body=request)

    def tie_plates(
        self,
        request: TiePlatesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> TiePlatesAnswer:
        """Tie plates.

        One plate under each renewed rail on each wood tie, whatever its shoulders. Where plates are used again, only
        those are ordered that the old track lacks or that are not recovered. Handed plates are split by rail; the high
        rail of a curve to the left is the right one.

        Args:
            request: see `TiePlatesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.tie-plates`: Tie plates.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TIE_PLATES, options, body=request)

    def tie_plates_html(
        self,
        request: TiePlatesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Tie plates, as text/html.

        One plate under each renewed rail on each wood tie, whatever its shoulders. Where plates are used again, only
        those are ordered that the old track lacks or that are not recovered. Handed plates are split by rail; the high
        rail of a curve to the left is the right one.

        Args:
            request: see `TiePlatesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TIE_PLATES_HTML, options, body=request)

    def tie_plates_pdf(
        self,
        request: TiePlatesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Tie plates, as application/pdf.

        One plate under each renewed rail on each wood tie, whatever its shoulders. Where plates are used again, only
        those are ordered that the old track lacks or that are not recovered. Handed plates are split by rail; the high
        rail of a curve to the left is the right one.

        Args:
            request: see `TiePlatesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TIE_PLATES_PDF, options, body=request)

    def spikes(self, request: SpikesRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> SpikesAnswer:
        """Spikes.

        Spikes per plate follow the pattern's band for the curvature at each tie and, where it goes by that, for the
        class of track; tangent track takes the first band. Each joint of jointed track stands at a tie of its own,
        which takes the pattern's further spikes.

        Args:
            request: see `SpikesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.spikes`: Spikes.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_SPIKES, options, body=request)

    def spikes_svg(self, request: SpikesRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Spikes, as image/svg+xml.

        Spikes per plate follow the pattern's band for the curvature at each tie and, where it goes by that, for the
        class of track; tangent track takes the first band. Each joint of jointed track stands at a tie of its own,
        which takes the pattern's further spikes.

        Args:
            request: see `SpikesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/svg+xml.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_SPIKES_SVG, options, body=request)

    def spikes_html(self, request: SpikesRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Spikes, as text/html.

        Spikes per plate follow the pattern's band for the curvature at each tie and, where it goes by that, for the
        class of track; tangent track takes the first band. Each joint of jointed track stands at a tie of its own,
        which takes the pattern's further spikes.

        Args:
            request: see `SpikesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_SPIKES_HTML, options, body=request)

    def spikes_pdf(self, request: SpikesRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> bytes:
        """Spikes, as application/pdf.

        Spikes per plate follow the pattern's band for the curvature at each tie and, where it goes by that, for the
        class of track; tangent track takes the first band. Each joint of jointed track stands at a tie of its own,
        which takes the pattern's further spikes.

        Args:
            request: see `SpikesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_SPIKES_PDF, options, body=request)

    def tie_plugs(
        self,
        request: TiePlugsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> TiePlugsAnswer:
        """Tie plugs or compound.

        One plug for each old spike that is pulled out of a wood tie that stays, at the rails renewed. Holes follow the
        old pattern, whatever the new one is. Compound is the volume of the holes and what is lost.

        Args:
            request: see `TiePlugsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.tie-plugs`: Tie plugs or compound.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TIE_PLUGS, options, body=request)

    def tie_plugs_html(self, request: TiePlugsRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Tie plugs or compound, as text/html.

        One plug for each old spike that is pulled out of a wood tie that stays, at the rails renewed. Holes follow the
        old pattern, whatever the new one is. Compound is the volume of the holes and what is lost.

        Args:
            request: see `TiePlugsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TIE_PLUGS_HTML, options, body=request)

    def tie_plugs_pdf(
        self,
        request: TiePlugsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Tie plugs or compound, as application/pdf.

        One plug for each old spike that is pulled out of a wood tie that stays, at the rails renewed. Holes follow the
        old pattern, whatever the new one is. Compound is the volume of the holes and what is lost.

        Args:
            request: see `TiePlugsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TIE_PLUGS_PDF, options, body=request)

    def plate_pins(
        self,
        request: PlatePinsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> PlatePinsAnswer:
        """Plate pins.

        Plates are pinned on every n-th wood tie by the tie's own number, so counts add up however the line is cut: a
        stretch may have one pinned tie more or less than its ties divided by n.

        Args:
            request: see `PlatePinsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.plate-pins`: Plate pins.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_PLATE_PINS, options, body=request)

    def plate_pins_html(
        self,
        request: PlatePinsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Plate pins, as text/html.

        Plates are pinned on every n-th wood tie by the tie's own number, so counts add up however the line is cut: a
        stretch may have one pinned tie more or less than its ties divided by n.

        Args:
            request: see `PlatePinsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_PLATE_PINS_HTML, options, body=request)

    def plate_pins_pdf(
        self,
        request: PlatePinsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Plate pins, as application/pdf.

        Plates are pinned on every n-th wood tie by the tie's own number, so counts add up however the line is cut: a
        stretch may have one pinned tie more or less than its ties divided by n.

        Args:
            request: see `PlatePinsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_PLATE_PINS_PDF, options, body=request)

    def preservative(
        self,
        request: PreservativeRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> PreservativeAnswer:
        """Preservative for adzed tie seats.

        Seats are adzed on wood ties that stay, at the rails renewed, over the new plate and a margin on all four sides.
        New ties come treated and are not adzed.

        Args:
            request: see `PreservativeRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.preservative`: Preservative for adzed tie seats.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_PRESERVATIVE, options, body=request)

    def preservative_html(
        self,
        request: PreservativeRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Preservative for adzed tie seats, as text/html.

        Seats are adzed on wood ties that stay, at the rails renewed, over the new plate and a margin on all four sides.
        New ties come treated and are not adzed.

        Args:
            request: see `PreservativeRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_PRESERVATIVE_HTML, options, body=request)

    def preservative_pdf(
        self,
        request: PreservativeRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Preservative for adzed tie seats, as application/pdf.

        Seats are adzed on wood ties that stay, at the rails renewed, over the new plate and a margin on all four sides.
        New ties come treated and are not adzed.

        Args:
            request: see `PreservativeRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_PRESERVATIVE_PDF, options, body=request)

    def anchors(
        self,
        request: AnchorsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> AnchorsAnswer:
        """Rail anchors.

        A boxed tie has an anchor on each side at each renewed rail. Which ties are boxed goes by the tie's own number,
        and jointed patterns by rail lengths laid from tie 0, so counts add up however the line is cut. Zones that
        overlap merge: one that forbids anchors wins, else the densest, the plain pattern included.

        Args:
            request: see `AnchorsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.anchors`: Rail anchors.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_ANCHORS, options, body=request)

    def anchors_svg(self, request: AnchorsRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Rail anchors, as image/svg+xml.

        A boxed tie has an anchor on each side at each renewed rail. Which ties are boxed goes by the tie's own number,
        and jointed patterns by rail lengths laid from tie 0, so counts add up however the line is cut. Zones that
        overlap merge: one that forbids anchors wins, else the densest, the plain pattern included.

        Args:
            request: see `AnchorsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/svg+xml.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_ANCHORS_SVG, options, body=request)

    def anchors_html(self, request: AnchorsRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Rail anchors, as text/html.

        A boxed tie has an anchor on each side at each renewed rail. Which ties are boxed goes by the tie's own number,
        and jointed patterns by rail lengths laid from tie 0, so counts add up however the line is cut. Zones that
        overlap merge: one that forbids anchors wins, else the densest, the plain pattern included.

        Args:
            request: see `AnchorsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_ANCHORS_HTML, options, body=request)

    def anchors_pdf(self, request: AnchorsRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> bytes:
        """Rail anchors, as application/pdf.

        A boxed tie has an anchor on each side at each renewed rail. Which ties are boxed goes by the tie's own number,
        and jointed patterns by rail lengths laid from tie 0, so counts add up however the line is cut. Zones that
        overlap merge: one that forbids anchors wins, else the densest, the plain pattern included.

        Args:
            request: see `AnchorsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_ANCHORS_PDF, options, body=request)

    def anchor_reuse(
        self,
        request: AnchorReuseRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> AnchorReuseAnswer:
        """Anchors applied again over a whole job.

        Anchors that come off one part of a job and are fit are applied again on another, as far as the new track needs
        them; what is over is salvage. The cap holds for the whole job, not part by part, so the answer does not hang on
        where the job is cut. Each part takes in proportion to its need.

        Args:
            request: see `AnchorReuseRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.anchor-reuse`: Anchors applied again over a whole job.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_ANCHOR_REUSE, options, body=request)

    def anchor_reuse_html(
        self,
        request: AnchorReuseRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Anchors applied again over a whole job, as text/html.

        Anchors that come off one part of a job and are fit are applied again on another, as far as the new track needs
        them; what is over is salvage. The cap holds for the whole job, not part by part, so the answer does not hang on
        where the job is cut. Each part takes in proportion to its need.

        Args:
            request: see `AnchorReuseRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_ANCHOR_REUSE_HTML, options, body=request)

    def anchor_reuse_pdf(
        self,
        request: AnchorReuseRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Anchors applied again over a whole job, as application/pdf.

        Anchors that come off one part of a job and are fit are applied again on another, as far as the new track needs
        them; what is over is salvage. The cap holds for the whole job, not part by part, so the answer does not hang on
        where the job is cut. Each part takes in proportion to its need.

        Args:
            request: see `AnchorReuseRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_ANCHOR_REUSE_PDF, options, body=request)

    def cribbing(
        self,
        request: CribbingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> CribbingAnswer:
        """Cribbing for anchors.

        Each anchor needs a pocket in the crib beside its tie, under and beside the rail base. The volume is that of the
        pockets times the share of them that ballast fills.

        Args:
            request: see `CribbingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.cribbing`: Cribbing for anchors.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_CRIBBING, options, body=request)

    def cribbing_html(self, request: CribbingRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Cribbing for anchors, as text/html.

        Each anchor needs a pocket in the crib beside its tie, under and beside the rail base. The volume is that of the
        pockets times the share of them that ballast fills.

        Args:
            request: see `CribbingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_CRIBBING_HTML, options, body=request)

    def cribbing_pdf(self, request: CribbingRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> bytes:
        """Cribbing for anchors, as application/pdf.

        Each anchor needs a pocket in the crib beside its tie, under and beside the rail base. The volume is that of the
        pockets times the share of them that ballast fills.

        Args:
            request: see `CribbingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_CRIBBING_PDF, options, body=request)

    def joints(self, request: JointsRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> JointsAnswer:
        """Joints and their parts.

        A joint to each rail length of each rail. Insulated joints and those of section changes stand in place of plain
        ones, compromise joints at the ends stand there besides; all come complete with bars and bolts. What is told to
        be a piece of a longer stretch may hold more special joints than joints: its plain ones are below zero then, and
        the pieces add up. Nothing is rounded but in the two fields that say so.

        Args:
            request: see `JointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.joints`: Joints and their parts.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_JOINTS, options, body=request)

    def joints_html(self, request: JointsRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Joints and their parts, as text/html.

        A joint to each rail length of each rail. Insulated joints and those of section changes stand in place of plain
        ones, compromise joints at the ends stand there besides; all come complete with bars and bolts. What is told to
        be a piece of a longer stretch may hold more special joints than joints: its plain ones are below zero then, and
        the pieces add up. Nothing is rounded but in the two fields that say so.

        Args:
            request: see `JointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_JOINTS_HTML, options, body=request)

    def joints_pdf(self, request: JointsRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> bytes:
        """Joints and their parts, as application/pdf.

        A joint to each rail length of each rail. Insulated joints and those of section changes stand in place of plain
        ones, compromise joints at the ends stand there besides; all come complete with bars and bolts. What is told to
        be a piece of a longer stretch may hold more special joints than joints: its plain ones are below zero then, and
        the pieces add up. Nothing is rounded but in the two fields that say so.

        Args:
            request: see `JointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_JOINTS_PDF, options, body=request)

    def closing_joints(
        self,
        request: ClosingJointsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> ClosingJointsAnswer:
        """Joints left in welded rail.

        The joints that close runs of welded strings, by kind, and their bars, bolts, nuts, washers and bonds. Insulated
        and compromise joints come complete. A joint left in welded rail needs two bolts in each rail.

        Args:
            request: see `ClosingJointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.closing-joints`: Joints left in welded rail.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_CLOSING_JOINTS, options, body=request)

    def closing_joints_html(
        self,
        request: ClosingJointsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Joints left in welded rail, as text/html.

        The joints that close runs of welded strings, by kind, and their bars, bolts, nuts, washers and bonds. Insulated
        and compromise joints come complete. A joint left in welded rail needs two bolts in each rail.

        Args:
            request: see `ClosingJointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_CLOSING_JOINTS_HTML, options, body=request)

    def closing_joints_pdf(
        self,
        request: ClosingJointsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Joints left in welded rail, as application/pdf.

        The joints that close runs of welded strings, by kind, and their bars, bolts, nuts, washers and bonds. Insulated
        and compromise joints come complete. A joint left in welded rail needs two bolts in each rail.

        Args:
            request: see `ClosingJointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_CLOSING_JOINTS_PDF, options, body=request)

    def rail_mass(
        self,
        request: RailMassRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> RailMassAnswer:
        """Mass of rail.

        Mass of one or two lines of rail, and what a mile of rail and of track weighs in short, long and metric tons.
        The old rule that a mile of track weighs 11/7 of the pounds per yard in long tons is exact: 2 x 1760 / 2240.

        Args:
            request: see `RailMassRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.rail-mass`: Mass of rail.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_RAIL_MASS, options, body=request)

    def rail_mass_html(self, request: RailMassRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Mass of rail, as text/html.

        Mass of one or two lines of rail, and what a mile of rail and of track weighs in short, long and metric tons.
        The old rule that a mile of track weighs 11/7 of the pounds per yard in long tons is exact: 2 x 1760 / 2240.

        Args:
            request: see `RailMassRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_RAIL_MASS_HTML, options, body=request)

    def rail_mass_pdf(
        self,
        request: RailMassRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Mass of rail, as application/pdf.

        Mass of one or two lines of rail, and what a mile of rail and of track weighs in short, long and metric tons.
        The old rule that a mile of track weighs 11/7 of the pounds per yard in long tons is exact: 2 x 1760 / 2240.

        Args:
            request: see `RailMassRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_RAIL_MASS_PDF, options, body=request)

    def rail_supply(
        self,
        request: RailSupplyRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> RailSupplyAnswer:
        """Stock rails, strings, welds and closures.

        A string is its stock rails less what n - 1 plant welds use up and both end trims. The runs are laid out of
        strings as in quantities.string-layout, with the fewest field welds, then the fewest cut pieces, and the
        strings, welds, closures and offcuts of that layout are counted. A thermite weld fills its gap with weld metal,
        so the rail needed is shorter than the runs by the gaps. A place where two runs meet counts once.

        Args:
            request: see `RailSupplyRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.rail-supply`: Stock rails, strings, welds and closures.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_RAIL_SUPPLY, options, body=request)

    def rail_supply_html(
        self,
        request: RailSupplyRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Stock rails, strings, welds and closures, as text/html.

        A string is its stock rails less what n - 1 plant welds use up and both end trims. The runs are laid out of
        strings as in quantities.string-layout, with the fewest field welds, then the fewest cut pieces, and the
        strings, welds, closures and offcuts of that layout are counted. A thermite weld fills its gap with weld metal,
        so the rail needed is shorter than the runs by the gaps. A place where two runs meet counts once.

        Args:
            request: see `RailSupplyRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_RAIL_SUPPLY_HTML, options, body=request)

    def rail_supply_pdf(
        self,
        request: RailSupplyRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Stock rails, strings, welds and closures, as application/pdf.

        A string is its stock rails less what n - 1 plant welds use up and both end trims. The runs are laid out of
        strings as in quantities.string-layout, with the fewest field welds, then the fewest cut pieces, and the
        strings, welds, closures and offcuts of that layout are counted. A thermite weld fills its gap with weld metal,
        so the rail needed is shorter than the runs by the gaps. A place where two runs meet counts once.

        Args:
            request: see `RailSupplyRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_RAIL_SUPPLY_PDF, options, body=request)

    def string_layout(
        self,
        request: StringLayoutRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> StringLayoutAnswer:
        """Where every string and field weld lies.

        Lays each run out of whole strings and cut pieces so that no field weld stands in a keep-out or nearer than the
        stagger to a weld or end of the other rail, and no piece is shorter than the shortest allowed: with the fewest
        field welds, among those the fewest cut pieces, among those the cut pieces as late in the run as they go; then
        each cut piece, along the line, is taken from the shortest left-over at hand that holds it, else from the next
        string. A left-over is at hand ahead of its cut, on either rail, within the reach given and until the next train
        begins; never behind. For each rail beside the other the first two are true minima; for both rails together the
        answer says whether its field welds are shown to be the fewest. Strings are numbered by the station where their
        first piece begins, left rail first. On curves the rails are longer or shorter than the centreline by half their
        distance over the radius; spirals are not modelled. A work block ends at the last string end within it, where a
        temporary closure leads to the old rail.

        Args:
            request: see `StringLayoutRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.string-layout`: Where every string and field weld lies.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_STRING_LAYOUT, options, body=request)

    def string_layout_html(
        self,
        request: StringLayoutRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Where every string and field weld lies, as text/html.

        Lays each run out of whole strings and cut pieces so that no field weld stands in a keep-out or nearer than the
        stagger to a weld or end of the other rail, and no piece is shorter than the shortest allowed: with the fewest
        field welds, among those the fewest cut pieces, among those the cut pieces as late in the run as they go; then
        each cut piece, along the line, is taken from the shortest left-over at hand that holds it, else from the next
        string. A left-over is at hand ahead of its cut, on either rail, within the reach given and until the next train
        begins; never behind. For each rail beside the other the first two are true minima; for both rails together the
        answer says whether its field welds are shown to be the fewest. Strings are numbered by the station where their
        first piece begins, left rail first. On curves the rails are longer or shorter than the centreline by half their
        distance over the radius; spirals are not modelled. A work block ends at the last string end within it, where a
        temporary closure leads to the old rail.

        Args:
            request: see `StringLayoutRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_STRING_LAYOUT_HTML, options, body=request)

    def string_layout_pdf(
        self,
        request: StringLayoutRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Where every string and field weld lies, as application/pdf.

        Lays each run out of whole strings and cut pieces so that no field weld stands in a keep-out or nearer than the
        stagger to a weld or end of the other rail, and no piece is shorter than the shortest allowed: with the fewest
        field welds, among those the fewest cut pieces, among those the cut pieces as late in the run as they go; then
        each cut piece, along the line, is taken from the shortest left-over at hand that holds it, else from the next
        string. A left-over is at hand ahead of its cut, on either rail, within the reach given and until the next train
        begins; never behind. For each rail beside the other the first two are true minima; for both rails together the
        answer says whether its field welds are shown to be the fewest. Strings are numbered by the station where their
        first piece begins, left rail first. On curves the rails are longer or shorter than the centreline by half their
        distance over the radius; spirals are not modelled. A work block ends at the last string end within it, where a
        temporary closure leads to the old rail.

        Args:
            request: see `StringLayoutRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_STRING_LAYOUT_PDF, options, body=request)

    def train_loads(
        self,
        request: TrainLoadsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> TrainLoadsAnswer:
        """Rail trains and what each brings.

        A train takes as many strings as its racks hold and as its mass allows, rounded down to a multiple of those
        unloaded side by side, so that no pair is parted. Strings lie over as many cars as their length spans, each
        carrying an equal share, clamped at the middle so that both ends move alike. Strings are loaded to come off in
        the order of their numbers; what is left of a cut string stays in its rack until it is laid further ahead.

        Args:
            request: see `TrainLoadsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.train-loads`: Rail trains and what each brings.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TRAIN_LOADS, options, body=request)

    def train_loads_html(
        self,
        request: TrainLoadsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Rail trains and what each brings, as text/html.

        A train takes as many strings as its racks hold and as its mass allows, rounded down to a multiple of those
        unloaded side by side, so that no pair is parted. Strings lie over as many cars as their length spans, each
        carrying an equal share, clamped at the middle so that both ends move alike. Strings are loaded to come off in
        the order of their numbers; what is left of a cut string stays in its rack until it is laid further ahead.

        Args:
            request: see `TrainLoadsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TRAIN_LOADS_HTML, options, body=request)

    def train_loads_pdf(
        self,
        request: TrainLoadsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Rail trains and what each brings, as application/pdf.

        A train takes as many strings as its racks hold and as its mass allows, rounded down to a multiple of those
        unloaded side by side, so that no pair is parted. Strings lie over as many cars as their length spans, each
        carrying an equal share, clamped at the middle so that both ends move alike. Strings are loaded to come off in
        the order of their numbers; what is left of a cut string stays in its rack until it is laid further ahead.

        Args:
            request: see `TrainLoadsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TRAIN_LOADS_PDF, options, body=request)

    def salvage(
        self,
        request: SalvageRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> SalvageAnswer:
        """Salvage.

        Old rail by length and by weight less wear, divided into relay, re-roll and scrap by given shares or by limits
        of wear; bars, bolts, plates, spikes and anchors by the old track's pattern less what is not recovered or goes
        back into track; ties renewed. Wear, classes and recovery are the user's: no published shares were found.

        Args:
            request: see `SalvageRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.salvage`: Salvage.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_SALVAGE, options, body=request)

    def salvage_html(self, request: SalvageRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Salvage, as text/html.

        Old rail by length and by weight less wear, divided into relay, re-roll and scrap by given shares or by limits
        of wear; bars, bolts, plates, spikes and anchors by the old track's pattern less what is not recovered or goes
        back into track; ties renewed. Wear, classes and recovery are the user's: no published shares were found.

        Args:
            request: see `SalvageRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_SALVAGE_HTML, options, body=request)

    def salvage_pdf(self, request: SalvageRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> bytes:
        """Salvage, as application/pdf.

        Old rail by length and by weight less wear, divided into relay, re-roll and scrap by given shares or by limits
        of wear; bars, bolts, plates, spikes and anchors by the old track's pattern less what is not recovered or goes
        back into track; ties renewed. Wear, classes and recovery are the user's: no published shares were found.

        Args:
            request: see `SalvageRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_SALVAGE_PDF, options, body=request)

    def custom(self, request: CustomRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> CustomAnswer:
        """Item of the caller's own.

        An item that no other rule counts: so many to a tie, to a tie seat, to a rail length, to a joint, to a length of
        track, together. Rails and joints are each renewed rail's length over the rail length, unrounded. A count is
        negative where something else takes its place; only of what is told to be a piece of a longer stretch may the
        sum be below zero.

        Args:
            request: see `CustomRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.custom`: Item of the caller's own.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_CUSTOM, options, body=request)

    def custom_html(self, request: CustomRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Item of the caller's own, as text/html.

        An item that no other rule counts: so many to a tie, to a tie seat, to a rail length, to a joint, to a length of
        track, together. Rails and joints are each renewed rail's length over the rail length, unrounded. A count is
        negative where something else takes its place; only of what is told to be a piece of a longer stretch may the
        sum be below zero.

        Args:
            request: see `CustomRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_CUSTOM_HTML, options, body=request)

    def custom_pdf(self, request: CustomRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> bytes:
        """Item of the caller's own, as application/pdf.

        An item that no other rule counts: so many to a tie, to a tie seat, to a rail length, to a joint, to a length of
        track, together. Rails and joints are each renewed rail's length over the rail length, unrounded. A count is
        negative where something else takes its place; only of what is told to be a piece of a longer stretch may the
        sum be below zero.

        Args:
            request: see `CustomRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_CUSTOM_PDF, options, body=request)

    def work_per_tie(
        self,
        request: WorkRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> WorkAnswer:
        """Work per tie and per mile.

        Operations of an out-of-face rail gang in trade order, for the rails renewed. With the user's production rates:
        the time of each, and the operation that sets the pace, since all work one behind the other. No rate is given by
        default: none was found published.

        Args:
            request: see `WorkRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.work-per-tie`: Work per tie and per mile.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_WORK_PER_TIE, options, body=request)

    def work_per_tie_html(self, request: WorkRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Work per tie and per mile, as text/html.

        Operations of an out-of-face rail gang in trade order, for the rails renewed. With the user's production rates:
        the time of each, and the operation that sets the pace, since all work one behind the other. No rate is given by
        default: none was found published.

        Args:
            request: see `WorkRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_WORK_PER_TIE_HTML, options, body=request)

    def work_per_tie_pdf(self, request: WorkRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> bytes:
        """Work per tie and per mile, as application/pdf.

        Operations of an out-of-face rail gang in trade order, for the rails renewed. With the user's production rates:
        the time of each, and the operation that sets the pace, since all work one behind the other. No rate is given by
        default: none was found published.

        Args:
            request: see `WorkRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_WORK_PER_TIE_PDF, options, body=request)

    def work_plan(
        self,
        request: WorkPlanRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> WorkPlanAnswer:
        """Work plan of a rail gang.

        Given how much there is of each operation and the user's own production rates: crew time, time, days and track
        occupancies of each in trade order, and the operation that sets the pace, since all work one behind the other.
        No rate is given by default: none was found published.

        Args:
            request: see `WorkPlanRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.work-plan`: Work plan of a rail gang.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_WORK_PLAN, options, body=request)

    def work_plan_html(self, request: WorkPlanRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Work plan of a rail gang, as text/html.

        Given how much there is of each operation and the user's own production rates: crew time, time, days and track
        occupancies of each in trade order, and the operation that sets the pace, since all work one behind the other.
        No rate is given by default: none was found published.

        Args:
            request: see `WorkPlanRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_WORK_PLAN_HTML, options, body=request)

    def work_plan_pdf(
        self,
        request: WorkPlanRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Work plan of a rail gang, as application/pdf.

        Given how much there is of each operation and the user's own production rates: crew time, time, days and track
        occupancies of each in trade order, and the operation that sets the pace, since all work one behind the other.
        No rate is given by default: none was found published.

        Args:
            request: see `WorkPlanRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_WORK_PLAN_PDF, options, body=request)

    def loads(self, request: LoadsRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> LoadsAnswer:
        """Truck and car loads.

        Tons by item, and the loads they make by mass: each item alone, and all that a vehicle carries together, rounded
        up once from the exact mass. Vehicles stand in place of each other. What takes more room than weight fills a
        vehicle sooner than its mass says.

        Args:
            request: see `LoadsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.loads`: Truck and car loads.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_LOADS, options, body=request)

    def loads_html(self, request: LoadsRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Truck and car loads, as text/html.

        Tons by item, and the loads they make by mass: each item alone, and all that a vehicle carries together, rounded
        up once from the exact mass. Vehicles stand in place of each other. What takes more room than weight fills a
        vehicle sooner than its mass says.

        Args:
            request: see `LoadsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_LOADS_HTML, options, body=request)

    def loads_pdf(self, request: LoadsRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> bytes:
        """Truck and car loads, as application/pdf.

        Tons by item, and the loads they make by mass: each item alone, and all that a vehicle carries together, rounded
        up once from the exact mass. Vehicles stand in place of each other. What takes more room than weight fills a
        vehicle sooner than its mass says.

        Args:
            request: see `LoadsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_LOADS_PDF, options, body=request)

    def order(self, request: OrderRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> OrderAnswer:
        """From the job's total to the order.

        Allowance and rounding are applied once, to the job's total of an item and never to its lines. The total with
        allowance is rounded up to what is sold; packages are counted from that. A total that misses a whole step by
        float noise only counts as whole.

        Args:
            request: see `OrderRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.order`: From the job's total to the order.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_ORDER, options, body=request)

    def order_html(self, request: OrderRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """From the job's total to the order, as text/html.

        Allowance and rounding are applied once, to the job's total of an item and never to its lines. The total with
        allowance is rounded up to what is sold; packages are counted from that. A total that misses a whole step by
        float noise only counts as whole.

        Args:
            request: see `OrderRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_ORDER_HTML, options, body=request)

    def order_pdf(self, request: OrderRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> bytes:
        """From the job's total to the order, as application/pdf.

        Allowance and rounding are applied once, to the job's total of an item and never to its lines. The total with
        allowance is rounded up to what is sold; packages are counted from that. A total that misses a whole step by
        float noise only counts as whole.

        Args:
            request: see `OrderRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_ORDER_PDF, options, body=request)


class RailAnchorsResource:
    """`client.rail_anchors`. List rail anchors; get one rail anchor."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List rail anchors.

        Every row of the table of rail anchors, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_LIST_RAIL_ANCHORS, options, query={"units": units, "version": version})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one rail anchor.

        One rail anchor with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_GET_RAIL_ANCHOR, options, path={"id": id}, query={"units": units, "version": version})


class RailSectionsResource:
    """`client.rail_sections`. List rail sections; get one rail section; draw a rail section."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(
        self,
        *,
        standard: str | None = None,
        mass_from: float | None = None,
        mass_to: float | None = None,
        base_from: float | None = None,
        base_to: float | None = None,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List rail sections.

        Every row of the table of rail sections, each value as its source prints it and with its place.

        Args:
            standard: Part of the name of the standard, in any case.
            mass_from: Smallest mass per length: lb/yd, or kg/m with units=si.
            mass_to: Largest mass per length: lb/yd, or kg/m with units=si.
            base_from: Smallest base width: in, or mm with units=si.
            base_to: Largest base width: in, or mm with units=si.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(
            _LIST_RAIL_SECTIONS,
            options,
            query={
                "standard": standard,
                "mass_from": mass_from,
                "mass_to": mass_to,
                "base_from": base_from,
                "base_to": base_to,
                "units": units,
                "version": version,
            },
        )

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one rail section.

        One rail section with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(
            _GET_RAIL_SECTION,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )

    def profile(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        chord_error: float | None = None,
        vertical_wear: float | None = None,
        face_wear: float | None = None,
        face_angle: float | None = None,
        face_side: Literal["left", "right"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> SectionProfile:
        """Draw a rail section.

        The section from its true geometry: as a dimensioned drawing (SVG, to scale on A4 and Letter, light and dark),
        as points with their chord error (JSON), or as lines and arcs for drawing programs (DXF R12, millimetres; only
        where the service has the library for it). Wear is laid over the new section. Lengths in the query are in, or mm
        with units=si; when `units` is left out, what the section's own drawing is in.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            chord_error: Greatest distance between the outline and the lines through its points, in the units asked for;
                JSON only.
            vertical_wear: Depth of vertical head wear laid over the new section, in the units asked for.
            face_wear: Horizontal loss of one face at the gage line, in the units asked for.
            face_angle: Lean of the worn face from the vertical, in degrees; upright when left out.
            face_side: The worn side, as drawn; left when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A section's outline as points counter-clockwise, the first not repeated, and the measures it was built from.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(
            _GET_RAIL_SECTION_PROFILE,
            options,
            path={"id": id},
            query={
                "units": units,
                "chord_error": chord_error,
                "vertical_wear": vertical_wear,
                "face_wear": face_wear,
                "face_angle": face_angle,
                "face_side": face_side,
                "version": version,
            },
        )

    def profile_svg(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        chord_error: float | None = None,
        vertical_wear: float | None = None,
        face_wear: float | None = None,
        face_angle: float | None = None,
        face_side: Literal["left", "right"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> str:
        """Draw a rail section, as image/svg+xml.

        The section from its true geometry: as a dimensioned drawing (SVG, to scale on A4 and Letter, light and dark),
        as points with their chord error (JSON), or as lines and arcs for drawing programs (DXF R12, millimetres; only
        where the service has the library for it). Wear is laid over the new section. Lengths in the query are in, or mm
        with units=si; when `units` is left out, what the section's own drawing is in.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            chord_error: Greatest distance between the outline and the lines through its points, in the units asked for;
                JSON only.
            vertical_wear: Depth of vertical head wear laid over the new section, in the units asked for.
            face_wear: Horizontal loss of one face at the gage line, in the units asked for.
            face_angle: Lean of the worn face from the vertical, in degrees; upright when left out.
            face_side: The worn side, as drawn; left when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/svg+xml.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(
            _GET_RAIL_SECTION_PROFILE_SVG,
            options,
            path={"id": id},
            query={
                "units": units,
                "chord_error": chord_error,
                "vertical_wear": vertical_wear,
                "face_wear": face_wear,
                "face_angle": face_angle,
                "face_side": face_side,
                "version": version,
            },
        )

    def profile_dxf(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        chord_error: float | None = None,
        vertical_wear: float | None = None,
        face_wear: float | None = None,
        face_angle: float | None = None,
        face_side: Literal["left", "right"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Draw a rail section, as image/vnd.dxf.

        The section from its true geometry: as a dimensioned drawing (SVG, to scale on A4 and Letter, light and dark),
        as points with their chord error (JSON), or as lines and arcs for drawing programs (DXF R12, millimetres; only
        where the service has the library for it). Wear is laid over the new section. Lengths in the query are in, or mm
        with units=si; when `units` is left out, what the section's own drawing is in.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            chord_error: Greatest distance between the outline and the lines through its points, in the units asked for;
                JSON only.
            vertical_wear: Depth of vertical head wear laid over the new section, in the units asked for.
            face_wear: Horizontal loss of one face at the gage line, in the units asked for.
            face_angle: Lean of the worn face from the vertical, in degrees; upright when left out.
            face_side: The worn side, as drawn; left when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/vnd.dxf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(
            _GET_RAIL_SECTION_PROFILE_DXF,
            options,
            path={"id": id},
            query={
                "units": units,
                "chord_error": chord_error,
                "vertical_wear": vertical_wear,
                "face_wear": face_wear,
                "face_angle": face_angle,
                "face_side": face_side,
                "version": version,
            },
        )


class RegulationResource:
    """`client.regulation`. Track held against the sections of the federal track safety standards."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def track_joints(
        self,
        request: TrackJointsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> TrackJointsAnswer:
        """Joints, bolts and anchors by 49 CFR Part 213.

        Holds a job against the sections of Part 213 on bolted joints, their bolts, torch-cut ends and mismatch, on
        anchoring at turnouts, and on laying welded rail: what is left out is not checked. Part 213 is a floor; a
        railroad's plan goes further.

        Args:
            request: see `TrackJointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `regulation.track-joints`: Joints, bolts and anchors by 49 CFR Part 213.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TRACK_JOINTS, options, body=request)

    def track_joints_html(
        self,
        request: TrackJointsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Joints, bolts and anchors by 49 CFR Part 213, as text/html.

        Holds a job against the sections of Part 213 on bolted joints, their bolts, torch-cut ends and mismatch, on
        anchoring at turnouts, and on laying welded rail: what is left out is not checked. Part 213 is a floor; a
        railroad's plan goes further.

        Args:
            request: see `TrackJointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TRACK_JOINTS_HTML, options, body=request)

    def track_joints_pdf(
        self,
        request: TrackJointsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Joints, bolts and anchors by 49 CFR Part 213, as application/pdf.

        Holds a job against the sections of Part 213 on bolted joints, their bolts, torch-cut ends and mismatch, on
        anchoring at turnouts, and on laying welded rail: what is left out is not checked. Part 213 is a floor; a
        railroad's plan goes further.

        Args:
            request: see `TrackJointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TRACK_JOINTS_PDF, options, body=request)


class RulebooksResource:
    """`client.rulebooks`. List the rulebooks."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(self, **options: Unpack[CallOptions]) -> RulebookList:
        """List the rulebooks.

        The defaults that stand in where a request leaves something out, with their sources.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rulebooks of this service.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_LIST_RULEBOOKS, options)


class RulesResource:
    """`client.rules`. List the rules; get one rule."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(self, **options: Unpack[CallOptions]) -> RuleList:
        """List the rules.

        The registry: formulas, inputs with units and limits, cautions and sources of every rule.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The registry of rules.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_LIST_RULES, options)

    def get(self, id: str, /, **options: Unpack[CallOptions]) -> RuleRecord:
        """Get one rule.

        One record of the registry.

        Args:
            id: Id of the rule.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A rule as the registry has it.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_GET_RULE, options, path={"id": id})


class SectionCompatibilityResource:
    """`client.section_compatibility`. Compatibility of an old and a new rail section."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def calculate(
        self,
        request: SectionCompatibilityRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> SectionCompatibilityAnswer:
        """Compatibility of an old and a new rail section.

        Whether plates, joint bars and drilling of the old rail serve the new one, and how the change of height is run
        off. Plates serve when the new base lies between their shoulders within the play; where their table is not
        given, they are taken as made for the old rail. Joint bars serve both when fishing height, both fishing angles
        and drilling are the same, within 1/64 in and a quarter of a degree; a thicker web does not matter. A joint
        between the two is a compromise joint when the bars or the running surface differ. What is not known gives no
        verdict.

        Args:
            request: see `SectionCompatibilityRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `sections.compatibility`: Compatibility of an old and a new rail section.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_SECTION_COMPATIBILITY, options, body=request)

    def calculate_html(
        self,
        request: SectionCompatibilityRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Compatibility of an old and a new rail section, as text/html.

        Whether plates, joint bars and drilling of the old rail serve the new one, and how the change of height is run
        off. Plates serve when the new base lies between their shoulders within the play; where their table is not
        given, they are taken as made for the old rail. Joint bars serve both when fishing height, both fishing angles
        and drilling are the same, within 1/64 in and a quarter of a degree; a thicker web does not matter. A joint
        between the two is a compromise joint when the bars or the running surface differ. What is not known gives no
        verdict.

        Args:
            request: see `SectionCompatibilityRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_SECTION_COMPATIBILITY_HTML, options, body=request)

    def calculate_pdf(
        self,
        request: SectionCompatibilityRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Compatibility of an old and a new rail section, as application/pdf.

        Whether plates, joint bars and drilling of the old rail serve the new one, and how the change of height is run
        off. Plates serve when the new base lies between their shoulders within the play; where their table is not
        given, they are taken as made for the old rail. Joint bars serve both when fishing height, both fishing angles
        and drilling are the same, within 1/64 in and a quarter of a degree; a thicker web does not matter. A joint
        between the two is a compromise joint when the bars or the running surface differ. What is not known gives no
        verdict.

        Args:
            request: see `SectionCompatibilityRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_SECTION_COMPATIBILITY_PDF, options, body=request)


class SectionPropertiesResource:
    """`client.section_properties`. Properties of a rail section, new or worn."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def calculate(
        self,
        request: SectionPropertiesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> SectionPropertiesAnswer:
        """Properties of a rail section, new or worn.

        Area, centroid, second moments, section moduli, perimeter, mass and thermal force per degree of a rail section,
        integrated in closed form over its lines and arcs. The section is one of the catalogue, or has its own measures,
        or measured points. Wear is vertical, of a face, or measured; what it leaves is integrated in the same way.
        Head, web and base are divided along the fishing planes, so fillets count as web. Torsion constant and shear
        centre, on demand, come from the boundary integral of the warping function, extrapolated from two divisions
        whose distance is stated. The new section is compared with printed values.

        Args:
            request: see `SectionPropertiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `sections.properties`: Properties of a rail section, new or worn.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_SECTION_PROPERTIES, options, body=request)

    def calculate_html(
        self,
        request: SectionPropertiesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Properties of a rail section, new or worn, as text/html.

        Area, centroid, second moments, section moduli, perimeter, mass and thermal force per degree of a rail section,
        integrated in closed form over its lines and arcs. The section is one of the catalogue, or has its own measures,
        or measured points. Wear is vertical, of a face, or measured; what it leaves is integrated in the same way.
        Head, web and base are divided along the fishing planes, so fillets count as web. Torsion constant and shear
        centre, on demand, come from the boundary integral of the warping function, extrapolated from two divisions
        whose distance is stated. The new section is compared with printed values.

        Args:
            request: see `SectionPropertiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_SECTION_PROPERTIES_HTML, options, body=request)

    def calculate_pdf(
        self,
        request: SectionPropertiesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Properties of a rail section, new or worn, as application/pdf.

        Area, centroid, second moments, section moduli, perimeter, mass and thermal force per degree of a rail section,
        integrated in closed form over its lines and arcs. The section is one of the catalogue, or has its own measures,
        or measured points. Wear is vertical, of a face, or measured; what it leaves is integrated in the same way.
        Head, web and base are divided along the fishing planes, so fillets count as web. Torsion constant and shear
        centre, on demand, come from the boundary integral of the warping function, extrapolated from two divisions
        whose distance is stated. The new section is compared with printed values.

        Args:
            request: see `SectionPropertiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_SECTION_PROPERTIES_PDF, options, body=request)


class SourcesResource:
    """`client.sources`. List the sources."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(self, **options: Unpack[CallOptions]) -> SourceList:
        """List the sources.

        Every document that a value or a rule cites.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Every cited document.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_LIST_SOURCES, options)


class SpikePatternsResource:
    """`client.spike_patterns`. List spike patterns; get one spike pattern."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List spike patterns.

        Every row of the table of spike patterns, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_LIST_SPIKE_PATTERNS, options, query={"units": units, "version": version})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one spike pattern.

        One spike pattern with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(
            _GET_SPIKE_PATTERN,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )


class SpikesResource:
    """`client.spikes`. List spikes; get one spike."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List spikes.

        Every row of the table of spikes, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_LIST_SPIKES, options, query={"units": units, "version": version})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one spike.

        One spike with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_GET_SPIKE, options, path={"id": id}, query={"units": units, "version": version})


class StrengthResource:
    """`client.strength`. Bending under wheels and in haulage."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def vertical_bending(
        self,
        request: VerticalBendingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> VerticalBendingAnswer:
        """Bending of rail under wheels.

        The rail as a long beam on a bed that pushes back in proportion to its deflection; wheels added up and raised by
        a named speed factor. Deflection, moments, stress in base and head, rail-seat load, tie bending, ballast
        pressure, the allowable stress built up from yield, thermal stress and shares, and a second section under the
        same wheels. With rail temperatures, bending and thermal stress are added at base and head, hot and cold; with
        wear, the section is the worn one.

        Args:
            request: see `VerticalBendingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `strength.vertical-bending`: Bending of rail under wheels.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_VERTICAL_BENDING, options, body=request)

    def vertical_bending_html(
        self,
        request: VerticalBendingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Bending of rail under wheels, as text/html.

        The rail as a long beam on a bed that pushes back in proportion to its deflection; wheels added up and raised by
        a named speed factor. Deflection, moments, stress in base and head, rail-seat load, tie bending, ballast
        pressure, the allowable stress built up from yield, thermal stress and shares, and a second section under the
        same wheels. With rail temperatures, bending and thermal stress are added at base and head, hot and cold; with
        wear, the section is the worn one.

        Args:
            request: see `VerticalBendingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_VERTICAL_BENDING_HTML, options, body=request)

    def vertical_bending_pdf(
        self,
        request: VerticalBendingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Bending of rail under wheels, as application/pdf.

        The rail as a long beam on a bed that pushes back in proportion to its deflection; wheels added up and raised by
        a named speed factor. Deflection, moments, stress in base and head, rail-seat load, tie bending, ballast
        pressure, the allowable stress built up from yield, thermal stress and shares, and a second section under the
        same wheels. With rail temperatures, bending and thermal stress are added at base and head, hot and cold; with
        wear, the section is the worn one.

        Args:
            request: see `VerticalBendingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_VERTICAL_BENDING_PDF, options, body=request)

    def hauling_curve(
        self,
        request: HaulingCurveRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> HaulingCurveAnswer:
        """Strings hauled round a curve.

        A string carried upright bends about its upright axis to the radius of the track; the base, being widest, is
        stressed most. Strings off the middle of the train run on a shorter or longer path and their free ends shift
        along it. Elastic; worked for the innermost string, evenly bent.

        Args:
            request: see `HaulingCurveRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `strength.hauling-curve`: Strings hauled round a curve.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_HAULING_CURVE, options, body=request)

    def hauling_curve_html(
        self,
        request: HaulingCurveRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Strings hauled round a curve, as text/html.

        A string carried upright bends about its upright axis to the radius of the track; the base, being widest, is
        stressed most. Strings off the middle of the train run on a shorter or longer path and their free ends shift
        along it. Elastic; worked for the innermost string, evenly bent.

        Args:
            request: see `HaulingCurveRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_HAULING_CURVE_HTML, options, body=request)

    def hauling_curve_pdf(
        self,
        request: HaulingCurveRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Strings hauled round a curve, as application/pdf.

        A string carried upright bends about its upright axis to the radius of the track; the base, being widest, is
        stressed most. Strings off the middle of the train run on a shorter or longer path and their free ends shift
        along it. Elastic; worked for the innermost string, evenly bent.

        Args:
            request: see `HaulingCurveRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_HAULING_CURVE_PDF, options, body=request)

    def turnout_radius(
        self,
        request: TurnoutRadiusRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> TurnoutRadiusAnswer:
        """Radius of a turnout by its number.

        The closure curve between a straight switch and a straight frog, by the number of the frog and the gauge.
        Without the length of the switch point the switch is taken not to turn, which gives a radius somewhat smaller
        than any such turnout has: on the safe side for strings hauled through. The wider radius of a turnout curved all
        the way is given beside it.

        Args:
            request: see `TurnoutRadiusRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `strength.turnout-radius`: Radius of a turnout by its number.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TURNOUT_RADIUS, options, body=request)

    def turnout_radius_html(
        self,
        request: TurnoutRadiusRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Radius of a turnout by its number, as text/html.

        The closure curve between a straight switch and a straight frog, by the number of the frog and the gauge.
        Without the length of the switch point the switch is taken not to turn, which gives a radius somewhat smaller
        than any such turnout has: on the safe side for strings hauled through. The wider radius of a turnout curved all
        the way is given beside it.

        Args:
            request: see `TurnoutRadiusRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TURNOUT_RADIUS_HTML, options, body=request)

    def turnout_radius_pdf(
        self,
        request: TurnoutRadiusRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Radius of a turnout by its number, as application/pdf.

        The closure curve between a straight switch and a straight frog, by the number of the frog and the gauge.
        Without the length of the switch point the switch is taken not to turn, which gives a radius somewhat smaller
        than any such turnout has: on the safe side for strings hauled through. The wider radius of a turnout curved all
        the way is given beside it.

        Args:
            request: see `TurnoutRadiusRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TURNOUT_RADIUS_PDF, options, body=request)


class TakeoffsResource(Takeoffs):
    """`client.takeoffs`. A whole relay job: every quantity, order, check and price in one answer."""

    _create = _CREATE_TAKEOFF
    _bulk = _CREATE_TAKEOFFS

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def create(
        self,
        request: TakeoffRequest | Mapping[str, object],
        /,
        *,
        drawing: Literal["track-chart", "tie-panel"] | None = None,
        sheet: int | None = None,
        progress: bool | Callable[[Progress], object] = False,
        **options: Unpack[CallOptions],
    ) -> TakeoffAnswer:
        """Takeoff of a relay job.

        Every quantity, order, train load, recovered material, check and price of a relay job, in one answer. Each line
        comes from the same rule that answers the question alone; allowances and rounding are applied once, to the job's
        total of an item.

        Args:
            drawing: Which drawing of the job, where `image/svg+xml` is accepted; the track chart when left out.
            sheet: Sheet of the drawing, from 1: a few miles of the track chart, or a segment's tie panel. The root of
                the drawing tells how many there are.
            request: see `TakeoffRequest`; a mapping is sent as it stands.
            progress: True for a bar (the extra `progress`), or a function that is told how far the work has come.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `takeoffs`: Takeoff of a relay job.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._watched(
            _CREATE_TAKEOFF,
            _CREATE_TAKEOFF_LINES,
            options,
            query={"drawing": drawing, "sheet": sheet},
            body=request,
            progress=progress,
        )

    def create_csv(
        self,
        request: TakeoffRequest | Mapping[str, object],
        /,
        *,
        drawing: Literal["track-chart", "tie-panel"] | None = None,
        sheet: int | None = None,
        **options: Unpack[CallOptions],
    ) -> str:
        """Takeoff of a relay job, as text/csv.

        Every quantity, order, train load, recovered material, check and price of a relay job, in one answer. Each line
        comes from the same rule that answers the question alone; allowances and rounding are applied once, to the job's
        total of an item.

        Args:
            drawing: Which drawing of the job, where `image/svg+xml` is accepted; the track chart when left out.
            sheet: Sheet of the drawing, from 1: a few miles of the track chart, or a segment's tie panel. The root of
                the drawing tells how many there are.
            request: see `TakeoffRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/csv.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CREATE_TAKEOFF_CSV, options, query={"drawing": drawing, "sheet": sheet}, body=request)

    def create_svg(
        self,
        request: TakeoffRequest | Mapping[str, object],
        /,
        *,
        drawing: Literal["track-chart", "tie-panel"] | None = None,
        sheet: int | None = None,
        **options: Unpack[CallOptions],
    ) -> str:
        """Takeoff of a relay job, as image/svg+xml.

        Every quantity, order, train load, recovered material, check and price of a relay job, in one answer. Each line
        comes from the same rule that answers the question alone; allowances and rounding are applied once, to the job's
        total of an item.

        Args:
            drawing: Which drawing of the job, where `image/svg+xml` is accepted; the track chart when left out.
            sheet: Sheet of the drawing, from 1: a few miles of the track chart, or a segment's tie panel. The root of
                the drawing tells how many there are.
            request: see `TakeoffRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/svg+xml.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CREATE_TAKEOFF_SVG, options, query={"drawing": drawing, "sheet": sheet}, body=request)

    def create_html(
        self,
        request: TakeoffRequest | Mapping[str, object],
        /,
        *,
        drawing: Literal["track-chart", "tie-panel"] | None = None,
        sheet: int | None = None,
        **options: Unpack[CallOptions],
    ) -> str:
        """Takeoff of a relay job, as text/html.

        Every quantity, order, train load, recovered material, check and price of a relay job, in one answer. Each line
        comes from the same rule that answers the question alone; allowances and rounding are applied once, to the job's
        total of an item.

        Args:
            drawing: Which drawing of the job, where `image/svg+xml` is accepted; the track chart when left out.
            sheet: Sheet of the drawing, from 1: a few miles of the track chart, or a segment's tie panel. The root of
                the drawing tells how many there are.
            request: see `TakeoffRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(
            _CREATE_TAKEOFF_HTML,
            options,
            query={"drawing": drawing, "sheet": sheet},
            body=request,
        )

    def create_pdf(
        self,
        request: TakeoffRequest | Mapping[str, object],
        /,
        *,
        drawing: Literal["track-chart", "tie-panel"] | None = None,
        sheet: int | None = None,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Takeoff of a relay job, as application/pdf.

        Every quantity, order, train load, recovered material, check and price of a relay job, in one answer. Each line
        comes from the same rule that answers the question alone; allowances and rounding are applied once, to the job's
        total of an item.

        Args:
            drawing: Which drawing of the job, where `image/svg+xml` is accepted; the track chart when left out.
            sheet: Sheet of the drawing, from 1: a few miles of the track chart, or a segment's tie panel. The root of
                the drawing tells how many there are.
            request: see `TakeoffRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CREATE_TAKEOFF_PDF, options, query={"drawing": drawing, "sheet": sheet}, body=request)

    def create_xlsx(
        self,
        request: TakeoffRequest | Mapping[str, object],
        /,
        *,
        drawing: Literal["track-chart", "tie-panel"] | None = None,
        sheet: int | None = None,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Takeoff of a relay job, as application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.

        Every quantity, order, train load, recovered material, check and price of a relay job, in one answer. Each line
        comes from the same rule that answers the question alone; allowances and rounding are applied once, to the job's
        total of an item.

        Args:
            drawing: Which drawing of the job, where `image/svg+xml` is accepted; the track chart when left out.
            sheet: Sheet of the drawing, from 1: a few miles of the track chart, or a segment's tie panel. The root of
                the drawing tells how many there are.
            request: see `TakeoffRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(
            _CREATE_TAKEOFF_XLSX,
            options,
            query={"drawing": drawing, "sheet": sheet},
            body=request,
        )


class ThermalResource:
    """`client.thermal`. Force, laying, breaks, restraint and stability of welded rail."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def force(
        self,
        request: ThermalForceRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> ThermalForceAnswer:
        """Thermal force in fully restrained rail.

        Axial force and stress of rail that cannot move, from the difference between its temperature and its neutral
        temperature. Independent of length; holds away from ends, joints and cuts, where nothing moves.

        Args:
            request: see `ThermalForceRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.force`: Thermal force in fully restrained rail.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_FORCE, options, body=request)

    def force_html(self, request: ThermalForceRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Thermal force in fully restrained rail, as text/html.

        Axial force and stress of rail that cannot move, from the difference between its temperature and its neutral
        temperature. Independent of length; holds away from ends, joints and cuts, where nothing moves.

        Args:
            request: see `ThermalForceRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_FORCE_HTML, options, body=request)

    def force_pdf(
        self,
        request: ThermalForceRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Thermal force in fully restrained rail, as application/pdf.

        Axial force and stress of rail that cannot move, from the difference between its temperature and its neutral
        temperature. Independent of length; holds away from ends, joints and cuts, where nothing moves.

        Args:
            request: see `ThermalForceRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_FORCE_PDF, options, body=request)

    def worn_rail(
        self,
        request: WornRailRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> WornRailAnswer:
        """Thermal force in worn rail.

        Axial force and stress of restrained rail with the section that wear has left, integrated from its outline: of
        the catalogue or of given measures less vertical and face wear, or of measured points. Stress does not depend on
        wear; force does, so a worn rail pulls and pushes less than the new one by the share of area lost. Area and
        second moments as they are now can be put to every other thermal rule in place of those of the new section.

        Args:
            request: see `WornRailRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.worn-rail`: Thermal force in worn rail.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_WORN_RAIL, options, body=request)

    def worn_rail_html(self, request: WornRailRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Thermal force in worn rail, as text/html.

        Axial force and stress of restrained rail with the section that wear has left, integrated from its outline: of
        the catalogue or of given measures less vertical and face wear, or of measured points. Stress does not depend on
        wear; force does, so a worn rail pulls and pushes less than the new one by the share of area lost. Area and
        second moments as they are now can be put to every other thermal rule in place of those of the new section.

        Args:
            request: see `WornRailRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_WORN_RAIL_HTML, options, body=request)

    def worn_rail_pdf(
        self,
        request: WornRailRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Thermal force in worn rail, as application/pdf.

        Axial force and stress of restrained rail with the section that wear has left, integrated from its outline: of
        the catalogue or of given measures less vertical and face wear, or of measured points. Stress does not depend on
        wear; force does, so a worn rail pulls and pushes less than the new one by the share of area lost. Area and
        second moments as they are now can be put to every other thermal rule in place of those of the new section.

        Args:
            request: see `WornRailRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_WORN_RAIL_PDF, options, body=request)

    def temperature_range(
        self,
        request: TemperatureRangeRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> TemperatureRangeAnswer:
        """Desired laying temperature range and restriction temperature.

        The range of rail temperature in which to lay, from the hottest and coldest rail at the place by a named rule;
        those from air temperature where rail was not measured. Then, with the neutral temperature that service is
        assumed to take away and the rise the track may be given, the rail temperature above which speed is restricted.
        The hottest and coldest count in rail temperature. Rail whose laying temperature is not given is taken at the
        lower end of the range.

        Args:
            request: see `TemperatureRangeRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.temperature-range`: Desired laying temperature range and restriction
                temperature.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TEMPERATURE_RANGE, options, body=request)

    def temperature_range_html(
        self,
        request: TemperatureRangeRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Desired laying temperature range and restriction temperature, as text/html.

        The range of rail temperature in which to lay, from the hottest and coldest rail at the place by a named rule;
        those from air temperature where rail was not measured. Then, with the neutral temperature that service is
        assumed to take away and the rise the track may be given, the rail temperature above which speed is restricted.
        The hottest and coldest count in rail temperature. Rail whose laying temperature is not given is taken at the
        lower end of the range.

        Args:
            request: see `TemperatureRangeRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TEMPERATURE_RANGE_HTML, options, body=request)

    def temperature_range_pdf(
        self,
        request: TemperatureRangeRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Desired laying temperature range and restriction temperature, as application/pdf.

        The range of rail temperature in which to lay, from the hottest and coldest rail at the place by a named rule;
        those from air temperature where rail was not measured. Then, with the neutral temperature that service is
        assumed to take away and the rise the track may be given, the rail temperature above which speed is restricted.
        The hottest and coldest count in rail temperature. Rail whose laying temperature is not given is taken at the
        lower end of the range.

        Args:
            request: see `TemperatureRangeRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_TEMPERATURE_RANGE_PDF, options, body=request)

    def laying_adjustment(
        self,
        request: LayingAdjustmentRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> LayingAdjustmentAnswer:
        """Adjustment of a string at laying.

        A string fixed at one end must change its length by alpha L (t - T) to be free of force at the target
        temperature t. Gives the movement of the free end and of marks at the quarter points, the gap to leave with the
        opening for the weld, the pull with friction, the table by temperature and length, the verdict on the neutral
        temperature achieved, what must follow, and the record to keep. Movement is even along the length only where
        nothing holds the rail between its ends.

        Args:
            request: see `LayingAdjustmentRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.laying-adjustment`: Adjustment of a string at laying.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_LAYING_ADJUSTMENT, options, body=request)

    def laying_adjustment_svg(
        self,
        request: LayingAdjustmentRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Adjustment of a string at laying, as image/svg+xml.

        A string fixed at one end must change its length by alpha L (t - T) to be free of force at the target
        temperature t. Gives the movement of the free end and of marks at the quarter points, the gap to leave with the
        opening for the weld, the pull with friction, the table by temperature and length, the verdict on the neutral
        temperature achieved, what must follow, and the record to keep. Movement is even along the length only where
        nothing holds the rail between its ends.

        Args:
            request: see `LayingAdjustmentRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/svg+xml.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_LAYING_ADJUSTMENT_SVG, options, body=request)

    def laying_adjustment_html(
        self,
        request: LayingAdjustmentRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Adjustment of a string at laying, as text/html.

        A string fixed at one end must change its length by alpha L (t - T) to be free of force at the target
        temperature t. Gives the movement of the free end and of marks at the quarter points, the gap to leave with the
        opening for the weld, the pull with friction, the table by temperature and length, the verdict on the neutral
        temperature achieved, what must follow, and the record to keep. Movement is even along the length only where
        nothing holds the rail between its ends.

        Args:
            request: see `LayingAdjustmentRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_LAYING_ADJUSTMENT_HTML, options, body=request)

    def laying_adjustment_pdf(
        self,
        request: LayingAdjustmentRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Adjustment of a string at laying, as application/pdf.

        A string fixed at one end must change its length by alpha L (t - T) to be free of force at the target
        temperature t. Gives the movement of the free end and of marks at the quarter points, the gap to leave with the
        opening for the weld, the pull with friction, the table by temperature and length, the verdict on the neutral
        temperature achieved, what must follow, and the record to keep. Movement is even along the length only where
        nothing holds the rail between its ends.

        Args:
            request: see `LayingAdjustmentRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_LAYING_ADJUSTMENT_PDF, options, body=request)

    def destressing(
        self,
        request: DestressingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> DestressingAnswer:
        """Destressing plan by stations.

        Welded rail is cut, freed between two fixed ends, brought to the strain of the target neutral temperature and
        welded. Gives the gap, the rail to remove, the pull, the length that must hold beyond the ends, and for marks
        along the line the movement each must show: in proportion to its distance from the fixed end on its side of the
        cut.

        Args:
            request: see `DestressingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.destressing`: Destressing plan by stations.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_DESTRESSING, options, body=request)

    def destressing_html(
        self,
        request: DestressingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Destressing plan by stations, as text/html.

        Welded rail is cut, freed between two fixed ends, brought to the strain of the target neutral temperature and
        welded. Gives the gap, the rail to remove, the pull, the length that must hold beyond the ends, and for marks
        along the line the movement each must show: in proportion to its distance from the fixed end on its side of the
        cut.

        Args:
            request: see `DestressingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_DESTRESSING_HTML, options, body=request)

    def destressing_pdf(
        self,
        request: DestressingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Destressing plan by stations, as application/pdf.

        Welded rail is cut, freed between two fixed ends, brought to the strain of the target neutral temperature and
        welded. Gives the gap, the rail to remove, the pull, the length that must hold beyond the ends, and for marks
        along the line the movement each must show: in proportion to its distance from the fixed end on its side of the
        cut.

        Args:
            request: see `DestressingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_DESTRESSING_PDF, options, body=request)

    def neutral_temperature(
        self,
        request: NeutralTemperatureRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> NeutralTemperatureAnswer:
        """Neutral temperature after work on the rail.

        Rail put in lowers the neutral temperature and rail taken out raises it, on average over the length that feels
        it: the slip length on both sides of a cut unless another is given. A curve that shifts inwards loses by the
        shift over its radius. The start is a known value, the average of several lengths, or the value told by the gap
        that opened at a cut.

        Args:
            request: see `NeutralTemperatureRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.neutral-temperature`: Neutral temperature after work on the rail.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_NEUTRAL_TEMPERATURE, options, body=request)

    def neutral_temperature_html(
        self,
        request: NeutralTemperatureRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Neutral temperature after work on the rail, as text/html.

        Rail put in lowers the neutral temperature and rail taken out raises it, on average over the length that feels
        it: the slip length on both sides of a cut unless another is given. A curve that shifts inwards loses by the
        shift over its radius. The start is a known value, the average of several lengths, or the value told by the gap
        that opened at a cut.

        Args:
            request: see `NeutralTemperatureRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_NEUTRAL_TEMPERATURE_HTML, options, body=request)

    def neutral_temperature_pdf(
        self,
        request: NeutralTemperatureRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Neutral temperature after work on the rail, as application/pdf.

        Rail put in lowers the neutral temperature and rail taken out raises it, on average over the length that feels
        it: the slip length on both sides of a cut unless another is given. A curve that shifts inwards loses by the
        shift over its radius. The start is a known value, the average of several lengths, or the value told by the gap
        that opened at a cut.

        Args:
            request: see `NeutralTemperatureRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_NEUTRAL_TEMPERATURE_PDF, options, body=request)

    def break_gap(
        self,
        request: BreakGapRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> BreakGapAnswer:
        """Gap at a break or cut of cold rail.

        Rail colder than its neutral temperature is in tension; where it parts, both ends draw back until the
        longitudinal restraint has taken the force up. Gap, slip length and end movement by a rigid-plastic, an elastic
        or a bilinear law of restraint, in long rail with no other end, joint or fixed point within the slip length.

        Args:
            request: see `BreakGapRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.break-gap`: Gap at a break or cut of cold rail.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_BREAK_GAP, options, body=request)

    def break_gap_svg(self, request: BreakGapRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Gap at a break or cut of cold rail, as image/svg+xml.

        Rail colder than its neutral temperature is in tension; where it parts, both ends draw back until the
        longitudinal restraint has taken the force up. Gap, slip length and end movement by a rigid-plastic, an elastic
        or a bilinear law of restraint, in long rail with no other end, joint or fixed point within the slip length.

        Args:
            request: see `BreakGapRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/svg+xml.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_BREAK_GAP_SVG, options, body=request)

    def break_gap_html(self, request: BreakGapRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Gap at a break or cut of cold rail, as text/html.

        Rail colder than its neutral temperature is in tension; where it parts, both ends draw back until the
        longitudinal restraint has taken the force up. Gap, slip length and end movement by a rigid-plastic, an elastic
        or a bilinear law of restraint, in long rail with no other end, joint or fixed point within the slip length.

        Args:
            request: see `BreakGapRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_BREAK_GAP_HTML, options, body=request)

    def break_gap_pdf(
        self,
        request: BreakGapRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Gap at a break or cut of cold rail, as application/pdf.

        Rail colder than its neutral temperature is in tension; where it parts, both ends draw back until the
        longitudinal restraint has taken the force up. Gap, slip length and end movement by a rigid-plastic, an elastic
        or a bilinear law of restraint, in long rail with no other end, joint or fixed point within the slip length.

        Args:
            request: see `BreakGapRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_BREAK_GAP_PDF, options, body=request)

    def end_movement(
        self,
        request: EndMovementRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> EndMovementAnswer:
        """Movement at the end of welded rail.

        Where welded rail ends at a joint, the force there is no more than the joint holds and the last length of the
        rail breathes. Movement outwards at the hottest and inwards at the coldest rail temperature, each reached from
        the neutral temperature for the first time, and the length that moves.

        Args:
            request: see `EndMovementRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.end-movement`: Movement at the end of welded rail.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_END_MOVEMENT, options, body=request)

    def end_movement_svg(
        self,
        request: EndMovementRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Movement at the end of welded rail, as image/svg+xml.

        Where welded rail ends at a joint, the force there is no more than the joint holds and the last length of the
        rail breathes. Movement outwards at the hottest and inwards at the coldest rail temperature, each reached from
        the neutral temperature for the first time, and the length that moves.

        Args:
            request: see `EndMovementRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/svg+xml.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_END_MOVEMENT_SVG, options, body=request)

    def end_movement_html(
        self,
        request: EndMovementRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Movement at the end of welded rail, as text/html.

        Where welded rail ends at a joint, the force there is no more than the joint holds and the last length of the
        rail breathes. Movement outwards at the hottest and inwards at the coldest rail temperature, each reached from
        the neutral temperature for the first time, and the length that moves.

        Args:
            request: see `EndMovementRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_END_MOVEMENT_HTML, options, body=request)

    def end_movement_pdf(
        self,
        request: EndMovementRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Movement at the end of welded rail, as application/pdf.

        Where welded rail ends at a joint, the force there is no more than the joint holds and the last length of the
        rail breathes. Movement outwards at the hottest and inwards at the coldest rail temperature, each reached from
        the neutral temperature for the first time, and the length that moves.

        Args:
            request: see `EndMovementRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_END_MOVEMENT_PDF, options, body=request)

    def restraint(
        self,
        request: RestraintRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> RestraintAnswer:
        """Longitudinal restraint by anchors and ballast.

        A zone holds one rail lengthwise with the lesser of what its anchors hold on the rail and what the ballast holds
        of its ties. Against the thermal force of the rail: what the zone holds, what is left over, and the length that
        would hold it all. A zone of 195 ft satisfies the regulation for joints and still lets a heavy rail move on a
        cold night.

        Args:
            request: see `RestraintRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.restraint`: Longitudinal restraint by anchors and ballast.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_RESTRAINT, options, body=request)

    def restraint_html(
        self,
        request: RestraintRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Longitudinal restraint by anchors and ballast, as text/html.

        A zone holds one rail lengthwise with the lesser of what its anchors hold on the rail and what the ballast holds
        of its ties. Against the thermal force of the rail: what the zone holds, what is left over, and the length that
        would hold it all. A zone of 195 ft satisfies the regulation for joints and still lets a heavy rail move on a
        cold night.

        Args:
            request: see `RestraintRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_RESTRAINT_HTML, options, body=request)

    def restraint_pdf(
        self,
        request: RestraintRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Longitudinal restraint by anchors and ballast, as application/pdf.

        A zone holds one rail lengthwise with the lesser of what its anchors hold on the rail and what the ballast holds
        of its ties. Against the thermal force of the rail: what the zone holds, what is left over, and the length that
        would hold it all. A zone of 195 ft satisfies the regulation for joints and still lets a heavy rail move on a
        cold night.

        Args:
            request: see `RestraintRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_RESTRAINT_PDF, options, body=request)

    def curve_load(
        self,
        request: CurveLoadRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> CurveLoadAnswer:
        """Radial load and shift of curves.

        Rail under axial force presses outwards in a curve when hot and inwards when cold, with P / R for each unit of
        length. A curve that has been pulled in has shorter rail room and so a lower neutral temperature; the loads are
        worked with what is left of it. Static: buckling and trains need their own check.

        Args:
            request: see `CurveLoadRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.curve-load`: Radial load and shift of curves.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_CURVE_LOAD, options, body=request)

    def curve_load_html(
        self,
        request: CurveLoadRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Radial load and shift of curves, as text/html.

        Rail under axial force presses outwards in a curve when hot and inwards when cold, with P / R for each unit of
        length. A curve that has been pulled in has shorter rail room and so a lower neutral temperature; the loads are
        worked with what is left of it. Static: buckling and trains need their own check.

        Args:
            request: see `CurveLoadRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_CURVE_LOAD_HTML, options, body=request)

    def curve_load_pdf(
        self,
        request: CurveLoadRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Radial load and shift of curves, as application/pdf.

        Rail under axial force presses outwards in a curve when hot and inwards when cold, with P / R for each unit of
        length. A curve that has been pulled in has shorter rail room and so a lower neutral temperature; the loads are
        worked with what is left of it. Static: buckling and trains need their own check.

        Args:
            request: see `CurveLoadRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_CURVE_LOAD_PDF, options, body=request)

    def buckling(
        self,
        request: BucklingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> BucklingAnswer:
        """Buckling of hot track.

        Two rails as one beam held sideways by a constant resistance. For straight track the lowest rise at which a
        buckled state exists, over four shapes and all lengths; with a line defect the whole path of equilibria, its
        upper rise, at which the track snaps, and its lower rise, below which no buckled state exists; upwards against
        the track's weight. The allowed rise by a named margin rule. Turning stiffness of fastenings, trains and
        vibration are left out. For curves only with a defect that points outwards, and only as far as a finite-element
        witness agreed.

        Args:
            request: see `BucklingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.buckling`: Buckling of hot track.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_BUCKLING, options, body=request)

    def buckling_svg(self, request: BucklingRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Buckling of hot track, as image/svg+xml.

        Two rails as one beam held sideways by a constant resistance. For straight track the lowest rise at which a
        buckled state exists, over four shapes and all lengths; with a line defect the whole path of equilibria, its
        upper rise, at which the track snaps, and its lower rise, below which no buckled state exists; upwards against
        the track's weight. The allowed rise by a named margin rule. Turning stiffness of fastenings, trains and
        vibration are left out. For curves only with a defect that points outwards, and only as far as a finite-element
        witness agreed.

        Args:
            request: see `BucklingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/svg+xml.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_BUCKLING_SVG, options, body=request)

    def buckling_html(self, request: BucklingRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Buckling of hot track, as text/html.

        Two rails as one beam held sideways by a constant resistance. For straight track the lowest rise at which a
        buckled state exists, over four shapes and all lengths; with a line defect the whole path of equilibria, its
        upper rise, at which the track snaps, and its lower rise, below which no buckled state exists; upwards against
        the track's weight. The allowed rise by a named margin rule. Turning stiffness of fastenings, trains and
        vibration are left out. For curves only with a defect that points outwards, and only as far as a finite-element
        witness agreed.

        Args:
            request: see `BucklingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_BUCKLING_HTML, options, body=request)

    def buckling_pdf(self, request: BucklingRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> bytes:
        """Buckling of hot track, as application/pdf.

        Two rails as one beam held sideways by a constant resistance. For straight track the lowest rise at which a
        buckled state exists, over four shapes and all lengths; with a line defect the whole path of equilibria, its
        upper rise, at which the track snaps, and its lower rise, below which no buckled state exists; upwards against
        the track's weight. The allowed rise by a named margin rule. Turning stiffness of fastenings, trains and
        vibration are left out. For curves only with a defect that points outwards, and only as far as a finite-element
        witness agreed.

        Args:
            request: see `BucklingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_BUCKLING_PDF, options, body=request)

    def joint_gap(
        self,
        request: JointGapRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> JointGapAnswer:
        """Gap at bolted joints by rail temperature.

        The gap to leave between rails when laying jointed track: by a table, that of TI 850-02 unless another is given,
        for the rail lengths that it lists, and by thermal expansion up to the temperature at which joints shall close.
        Insulated joints are left only as wide as the end post.

        Args:
            request: see `JointGapRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.joint-gap`: Gap at bolted joints by rail temperature.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_JOINT_GAP, options, body=request)

    def joint_gap_html(self, request: JointGapRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Gap at bolted joints by rail temperature, as text/html.

        The gap to leave between rails when laying jointed track: by a table, that of TI 850-02 unless another is given,
        for the rail lengths that it lists, and by thermal expansion up to the temperature at which joints shall close.
        Insulated joints are left only as wide as the end post.

        Args:
            request: see `JointGapRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_JOINT_GAP_HTML, options, body=request)

    def joint_gap_pdf(
        self,
        request: JointGapRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Gap at bolted joints by rail temperature, as application/pdf.

        The gap to leave between rails when laying jointed track: by a table, that of TI 850-02 unless another is given,
        for the rail lengths that it lists, and by thermal expansion up to the temperature at which joints shall close.
        Insulated joints are left only as wide as the end post.

        Args:
            request: see `JointGapRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_CALCULATE_JOINT_GAP_PDF, options, body=request)


class TiePlatesResource:
    """`client.tie_plates`. List tie plates; get one tie plate."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List tie plates.

        Every row of the table of tie plates, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_LIST_TIE_PLATES, options, query={"units": units, "version": version})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one tie plate.

        One tie plate with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_GET_TIE_PLATE, options, path={"id": id}, query={"units": units, "version": version})


class TiePlugsResource:
    """`client.tie_plugs`. List tie plugs; get one tie plug."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List tie plugs.

        Every row of the table of tie plugs, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_LIST_TIE_PLUGS, options, query={"units": units, "version": version})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one tie plug.

        One tie plug with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_GET_TIE_PLUG, options, path={"id": id}, query={"units": units, "version": version})


class TrackBoltsResource:
    """`client.track_bolts`. List track bolts; get one track bolt."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List track bolts.

        Every row of the table of track bolts, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_LIST_TRACK_BOLTS, options, query={"units": units, "version": version})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one track bolt.

        One track bolt with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_GET_TRACK_BOLT, options, path={"id": id}, query={"units": units, "version": version})


class TurnoutsResource:
    """`client.turnouts`. List turnouts; get one turnout."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List turnouts.

        Every row of the table of turnouts, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_LIST_TURNOUTS, options, query={"units": units, "version": version})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one turnout.

        One turnout with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return self._caller.call(_GET_TURNOUT, options, path={"id": id}, query={"units": units, "version": version})


class Resources:
    """Every resource of the service."""

    def __init__(self, caller: Caller) -> None:
        """Reach the resources through a caller."""
        self.anchor_patterns: AnchorPatternsResource = AnchorPatternsResource(caller)
        self.feature_kinds: FeatureKindsResource = FeatureKindsResource(caller)
        self.health: HealthResource = HealthResource(caller)
        self.joint_bars: JointBarsResource = JointBarsResource(caller)
        self.joint_gap_tables: JointGapTablesResource = JointGapTablesResource(caller)
        self.plate_pins: PlatePinsResource = PlatePinsResource(caller)
        self.preservatives: PreservativesResource = PreservativesResource(caller)
        self.quantities: QuantitiesResource = QuantitiesResource(caller)
        self.rail_anchors: RailAnchorsResource = RailAnchorsResource(caller)
        self.rail_sections: RailSectionsResource = RailSectionsResource(caller)
        self.sections: RailSectionsResource = self.rail_sections
        self.regulation: RegulationResource = RegulationResource(caller)
        self.rulebooks: RulebooksResource = RulebooksResource(caller)
        self.rules: RulesResource = RulesResource(caller)
        self.section_compatibility: SectionCompatibilityResource = SectionCompatibilityResource(caller)
        self.section_properties: SectionPropertiesResource = SectionPropertiesResource(caller)
        self.sources: SourcesResource = SourcesResource(caller)
        self.spike_patterns: SpikePatternsResource = SpikePatternsResource(caller)
        self.spikes: SpikesResource = SpikesResource(caller)
        self.strength: StrengthResource = StrengthResource(caller)
        self.takeoffs: TakeoffsResource = TakeoffsResource(caller)
        self.thermal: ThermalResource = ThermalResource(caller)
        self.tie_plates: TiePlatesResource = TiePlatesResource(caller)
        self.tie_plugs: TiePlugsResource = TiePlugsResource(caller)
        self.track_bolts: TrackBoltsResource = TrackBoltsResource(caller)
        self.turnouts: TurnoutsResource = TurnoutsResource(caller)


class AsyncAnchorPatternsResource:
    """`client.anchor_patterns`. List anchor patterns; get one anchor pattern."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List anchor patterns.

        Every row of the table of anchor patterns, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_LIST_ANCHOR_PATTERNS, options, query={"units": units, "version": version})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one anchor pattern.

        One anchor pattern with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _GET_ANCHOR_PATTERN,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )


class AsyncFeatureKindsResource:
    """`client.feature_kinds`. List kinds of feature; get one kind of feature."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List kinds of feature.

        Every row of the table of kinds of feature, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_LIST_FEATURE_KINDS, options, query={"units": units, "version": version})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one kind of feature.

        One kind of feature with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _GET_KIND_OF_FEATURE,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )


class AsyncHealthResource:
    """`client.health`. The process runs; requests can be answered."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def live(self, **options: Unpack[CallOptions]) -> Health:
        """The process runs.

        Answers 200 while it is so.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The service is up, and what it answers with.

        Raises:
            BadRequestError: The request is malformed (400).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_HEALTH_LIVE, options)

    async def ready(self, **options: Unpack[CallOptions]) -> Health:
        """Requests can be answered.

        Answers 200 while it is so.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The service is up, and what it answers with.

        Raises:
            BadRequestError: The request is malformed (400).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_HEALTH_READY, options)


class AsyncJointBarsResource:
    """`client.joint_bars`. List joint bars; get one joint bar."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List joint bars.

        Every row of the table of joint bars, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_LIST_JOINT_BARS, options, query={"units": units, "version": version})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one joint bar.

        One joint bar with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _GET_JOINT_BAR,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )


class AsyncJointGapTablesResource:
    """`client.joint_gap_tables`. List joint gap tables; get one joint gap table."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List joint gap tables.

        Every row of the table of joint gap tables, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_LIST_JOINT_GAP_TABLES, options, query={"units": units, "version": version})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one joint gap table.

        One joint gap table with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _GET_JOINT_GAP_TABLE,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )


class AsyncPlatePinsResource:
    """`client.plate_pins`. List plate pins; get one plate pin."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List plate pins.

        Every row of the table of plate pins, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_LIST_PLATE_PINS, options, query={"units": units, "version": version})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one plate pin.

        One plate pin with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _GET_PLATE_PIN,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )


class AsyncPreservativesResource:
    """`client.preservatives`. List preservatives; get one preservative."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List preservatives.

        Every row of the table of preservatives, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_LIST_PRESERVATIVES, options, query={"units": units, "version": version})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one preservative.

        One preservative with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _GET_PRESERVATIVE,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )


class AsyncQuantitiesResource:
    """`client.quantities`. What a relay takes, leaves and hauls: one resource a rule."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def ties(self, request: TiesRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> TiesAnswer:
        """Ties standing, kept and renewed.

        Ties stand at origin + k * spacing; a stretch owns those with begin <= x < end, so counts add up however the
        line is cut. The average per mile is a separate figure and is not rounded. The spacing of wood ties is held
        against the limits of a manual of government railroads; a railroad's own standard goes before.

        Args:
            request: see `TiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.ties`: Ties standing, kept and renewed.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TIES, options, body=request)

    async def ties_html(self, request: TiesRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Ties standing, kept and renewed, as text/html.

        Ties stand at origin + k * spacing; a stretch owns those with begin <= x < end, so counts add up however the
        line is cut. The average per mile is a separate figure and is not rounded. The spacing of wood ties is held
        against the limits of a manual of government railroads; a railroad's own standard goes before.

        Args:
            request: see `TiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TIES_HTML, options, body=request)

    async def ties_pdf(self, request: TiesRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> bytes:
        """Ties standing, kept and renewed, as application/pdf.

        Ties stand at origin + k * spacing; a stretch owns those with begin <= x < end, so counts add up however the
        line is cut. The average per mile is a separate figure and is not rounded. The spacing of wood ties is held
        against the limits of a manual of government railroads; a railroad's own standard goes before.

        Args:
            request: see `TiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TIES_PDF, options, body=request)

    async def sound_ties(
        self,
        request: SoundTiesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> SoundTiesAnswer:
        """Sound ties in 39 ft.

        Each 39 ft of track in classes 1 to 5 must have at least a number of ties that are not defective, more of them
        in turnouts and in curves of more than 2 degrees.

        Args:
            request: see `SoundTiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.sound-ties`: Sound ties in 39 ft.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_SOUND_TIES, options, body=request)

    async def sound_ties_html(
        self,
        request: SoundTiesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Sound ties in 39 ft, as text/html.

        Each 39 ft of track in classes 1 to 5 must have at least a number of ties that are not defective, more of them
        in turnouts and in curves of more than 2 degrees.

        Args:
            request: see `SoundTiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_SOUND_TIES_HTML, options, body=request)

    async def sound_ties_pdf(
        self,
        request: SoundTiesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Sound ties in 39 ft, as application/pdf.

        Each 39 ft of track in classes 1 to 5 must have at least a number of ties that are not defective, more of them
        in turnouts and in curves of more than 2 degrees.

        Args:
            request: see `SoundTiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_SOUND_TIES_PDF, options, body=request)

    async def tie_plates(
        self,
        request: TiePlatesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> TiePlatesAnswer:
        """Tie plates.

        One plate under each renewed rail on each wood tie, whatever its shoulders. Where plates are used again, only
        those are ordered that the old track lacks or that are not recovered. Handed plates are split by rail; the high
        rail of a curve to the left is the right one.

        Args:
            request: see `TiePlatesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.tie-plates`: Tie plates.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TIE_PLATES, options, body=request)

    async def tie_plates_html(
        self,
        request: TiePlatesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Tie plates, as text/html.

        One plate under each renewed rail on each wood tie, whatever its shoulders. Where plates are used again, only
        those are ordered that the old track lacks or that are not recovered. Handed plates are split by rail; the high
        rail of a curve to the left is the right one.

        Args:
            request: see `TiePlatesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TIE_PLATES_HTML, options, body=request)

    async def tie_plates_pdf(
        self,
        request: TiePlatesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Tie plates, as application/pdf.

        One plate under each renewed rail on each wood tie, whatever its shoulders. Where plates are used again, only
        those are ordered that the old track lacks or that are not recovered. Handed plates are split by rail; the high
        rail of a curve to the left is the right one.

        Args:
            request: see `TiePlatesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TIE_PLATES_PDF, options, body=request)

    async def spikes(
        self,
        request: SpikesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> SpikesAnswer:
        """Spikes.

        Spikes per plate follow the pattern's band for the curvature at each tie and, where it goes by that, for the
        class of track; tangent track takes the first band. Each joint of jointed track stands at a tie of its own,
        which takes the pattern's further spikes.

        Args:
            request: see `SpikesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.spikes`: Spikes.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_SPIKES, options, body=request)

    async def spikes_svg(self, request: SpikesRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Spikes, as image/svg+xml.

        Spikes per plate follow the pattern's band for the curvature at each tie and, where it goes by that, for the
        class of track; tangent track takes the first band. Each joint of jointed track stands at a tie of its own,
        which takes the pattern's further spikes.

        Args:
            request: see `SpikesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/svg+xml.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_SPIKES_SVG, options, body=request)

    async def spikes_html(
        self,
        request: SpikesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Spikes, as text/html.

        Spikes per plate follow the pattern's band for the curvature at each tie and, where it goes by that, for the
        class of track; tangent track takes the first band. Each joint of jointed track stands at a tie of its own,
        which takes the pattern's further spikes.

        Args:
            request: see `SpikesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_SPIKES_HTML, options, body=request)

    async def spikes_pdf(
        self,
        request: SpikesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Spikes, as application/pdf.

        Spikes per plate follow the pattern's band for the curvature at each tie and, where it goes by that, for the
        class of track; tangent track takes the first band. Each joint of jointed track stands at a tie of its own,
        which takes the pattern's further spikes.

        Args:
            request: see `SpikesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_SPIKES_PDF, options, body=request)

    async def tie_plugs(
        self,
        request: TiePlugsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> TiePlugsAnswer:
        """Tie plugs or compound.

        One plug for each old spike that is pulled out of a wood tie that stays, at the rails renewed. Holes follow the
        old pattern, whatever the new one is. Compound is the volume of the holes and what is lost.

        Args:
            request: see `TiePlugsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.tie-plugs`: Tie plugs or compound.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TIE_PLUGS, options, body=request)

    async def tie_plugs_html(
        self,
        request: TiePlugsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Tie plugs or compound, as text/html.

        One plug for each old spike that is pulled out of a wood tie that stays, at the rails renewed. Holes follow the
        old pattern, whatever the new one is. Compound is the volume of the holes and what is lost.

        Args:
            request: see `TiePlugsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TIE_PLUGS_HTML, options, body=request)

    async def tie_plugs_pdf(
        self,
        request: TiePlugsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Tie plugs or compound, as application/pdf.

        One plug for each old spike that is pulled out of a wood tie that stays, at the rails renewed. Holes follow the
        old pattern, whatever the new one is. Compound is the volume of the holes and what is lost.

        Args:
            request: see `TiePlugsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TIE_PLUGS_PDF, options, body=request)

    async def plate_pins(
        self,
        request: PlatePinsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> PlatePinsAnswer:
        """Plate pins.

        Plates are pinned on every n-th wood tie by the tie's own number, so counts add up however the line is cut: a
        stretch may have one pinned tie more or less than its ties divided by n.

        Args:
            request: see `PlatePinsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.plate-pins`: Plate pins.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_PLATE_PINS, options, body=request)

    async def plate_pins_html(
        self,
        request: PlatePinsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Plate pins, as text/html.

        Plates are pinned on every n-th wood tie by the tie's own number, so counts add up however the line is cut: a
        stretch may have one pinned tie more or less than its ties divided by n.

        Args:
            request: see `PlatePinsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_PLATE_PINS_HTML, options, body=request)

    async def plate_pins_pdf(
        self,
        request: PlatePinsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Plate pins, as application/pdf.

        Plates are pinned on every n-th wood tie by the tie's own number, so counts add up however the line is cut: a
        stretch may have one pinned tie more or less than its ties divided by n.

        Args:
            request: see `PlatePinsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_PLATE_PINS_PDF, options, body=request)

    async def preservative(
        self,
        request: PreservativeRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> PreservativeAnswer:
        """Preservative for adzed tie seats.

        Seats are adzed on wood ties that stay, at the rails renewed, over the new plate and a margin on all four sides.
        New ties come treated and are not adzed.

        Args:
            request: see `PreservativeRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.preservative`: Preservative for adzed tie seats.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_PRESERVATIVE, options, body=request)

    async def preservative_html(
        self,
        request: PreservativeRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Preservative for adzed tie seats, as text/html.

        Seats are adzed on wood ties that stay, at the rails renewed, over the new plate and a margin on all four sides.
        New ties come treated and are not adzed.

        Args:
            request: see `PreservativeRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_PRESERVATIVE_HTML, options, body=request)

    async def preservative_pdf(
        self,
        request: PreservativeRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Preservative for adzed tie seats, as application/pdf.

        Seats are adzed on wood ties that stay, at the rails renewed, over the new plate and a margin on all four sides.
        New ties come treated and are not adzed.

        Args:
            request: see `PreservativeRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_PRESERVATIVE_PDF, options, body=request)

    async def anchors(
        self,
        request: AnchorsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> AnchorsAnswer:
        """Rail anchors.

        A boxed tie has an anchor on each side at each renewed rail. Which ties are boxed goes by the tie's own number,
        and jointed patterns by rail lengths laid from tie 0, so counts add up however the line is cut. Zones that
        overlap merge: one that forbids anchors wins, else the densest, the plain pattern included.

        Args:
            request: see `AnchorsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.anchors`: Rail anchors.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_ANCHORS, options, body=request)

    async def anchors_svg(
        self,
        request: AnchorsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Rail anchors, as image/svg+xml.

        A boxed tie has an anchor on each side at each renewed rail. Which ties are boxed goes by the tie's own number,
        and jointed patterns by rail lengths laid from tie 0, so counts add up however the line is cut. Zones that
        overlap merge: one that forbids anchors wins, else the densest, the plain pattern included.

        Args:
            request: see `AnchorsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/svg+xml.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_ANCHORS_SVG, options, body=request)

    async def anchors_html(
        self,
        request: AnchorsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Rail anchors, as text/html.

        A boxed tie has an anchor on each side at each renewed rail. Which ties are boxed goes by the tie's own number,
        and jointed patterns by rail lengths laid from tie 0, so counts add up however the line is cut. Zones that
        overlap merge: one that forbids anchors wins, else the densest, the plain pattern included.

        Args:
            request: see `AnchorsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_ANCHORS_HTML, options, body=request)

    async def anchors_pdf(
        self,
        request: AnchorsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Rail anchors, as application/pdf.

        A boxed tie has an anchor on each side at each renewed rail. Which ties are boxed goes by the tie's own number,
        and jointed patterns by rail lengths laid from tie 0, so counts add up however the line is cut. Zones that
        overlap merge: one that forbids anchors wins, else the densest, the plain pattern included.

        Args:
            request: see `AnchorsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_ANCHORS_PDF, options, body=request)

    async def anchor_reuse(
        self,
        request: AnchorReuseRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> AnchorReuseAnswer:
        """Anchors applied again over a whole job.

        Anchors that come off one part of a job and are fit are applied again on another, as far as the new track needs
        them; what is over is salvage. The cap holds for the whole job, not part by part, so the answer does not hang on
        where the job is cut. Each part takes in proportion to its need.

        Args:
            request: see `AnchorReuseRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.anchor-reuse`: Anchors applied again over a whole job.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_ANCHOR_REUSE, options, body=request)

    async def anchor_reuse_html(
        self,
        request: AnchorReuseRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Anchors applied again over a whole job, as text/html.

        Anchors that come off one part of a job and are fit are applied again on another, as far as the new track needs
        them; what is over is salvage. The cap holds for the whole job, not part by part, so the answer does not hang on
        where the job is cut. Each part takes in proportion to its need.

        Args:
            request: see `AnchorReuseRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_ANCHOR_REUSE_HTML, options, body=request)

    async def anchor_reuse_pdf(
        self,
        request: AnchorReuseRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Anchors applied again over a whole job, as application/pdf.

        Anchors that come off one part of a job and are fit are applied again on another, as far as the new track needs
        them; what is over is salvage. The cap holds for the whole job, not part by part, so the answer does not hang on
        where the job is cut. Each part takes in proportion to its need.

        Args:
            request: see `AnchorReuseRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_ANCHOR_REUSE_PDF, options, body=request)

    async def cribbing(
        self,
        request: CribbingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> CribbingAnswer:
        """Cribbing for anchors.

        Each anchor needs a pocket in the crib beside its tie, under and beside the rail base. The volume is that of the
        pockets times the share of them that ballast fills.

        Args:
            request: see `CribbingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.cribbing`: Cribbing for anchors.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_CRIBBING, options, body=request)

    async def cribbing_html(
        self,
        request: CribbingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Cribbing for anchors, as text/html.

        Each anchor needs a pocket in the crib beside its tie, under and beside the rail base. The volume is that of the
        pockets times the share of them that ballast fills.

        Args:
            request: see `CribbingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_CRIBBING_HTML, options, body=request)

    async def cribbing_pdf(
        self,
        request: CribbingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Cribbing for anchors, as application/pdf.

        Each anchor needs a pocket in the crib beside its tie, under and beside the rail base. The volume is that of the
        pockets times the share of them that ballast fills.

        Args:
            request: see `CribbingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_CRIBBING_PDF, options, body=request)

    async def joints(
        self,
        request: JointsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> JointsAnswer:
        """Joints and their parts.

        A joint to each rail length of each rail. Insulated joints and those of section changes stand in place of plain
        ones, compromise joints at the ends stand there besides; all come complete with bars and bolts. What is told to
        be a piece of a longer stretch may hold more special joints than joints: its plain ones are below zero then, and
        the pieces add up. Nothing is rounded but in the two fields that say so.

        Args:
            request: see `JointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.joints`: Joints and their parts.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_JOINTS, options, body=request)

    async def joints_html(
        self,
        request: JointsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Joints and their parts, as text/html.

        A joint to each rail length of each rail. Insulated joints and those of section changes stand in place of plain
        ones, compromise joints at the ends stand there besides; all come complete with bars and bolts. What is told to
        be a piece of a longer stretch may hold more special joints than joints: its plain ones are below zero then, and
        the pieces add up. Nothing is rounded but in the two fields that say so.

        Args:
            request: see `JointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_JOINTS_HTML, options, body=request)

    async def joints_pdf(
        self,
        request: JointsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Joints and their parts, as application/pdf.

        A joint to each rail length of each rail. Insulated joints and those of section changes stand in place of plain
        ones, compromise joints at the ends stand there besides; all come complete with bars and bolts. What is told to
        be a piece of a longer stretch may hold more special joints than joints: its plain ones are below zero then, and
        the pieces add up. Nothing is rounded but in the two fields that say so.

        Args:
            request: see `JointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_JOINTS_PDF, options, body=request)

    async def closing_joints(
        self,
        request: ClosingJointsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> ClosingJointsAnswer:
        """Joints left in welded rail.

        The joints that close runs of welded strings, by kind, and their bars, bolts, nuts, washers and bonds. Insulated
        and compromise joints come complete. A joint left in welded rail needs two bolts in each rail.

        Args:
            request: see `ClosingJointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.closing-joints`: Joints left in welded rail.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_CLOSING_JOINTS, options, body=request)

    async def closing_joints_html(
        self,
        request: ClosingJointsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Joints left in welded rail, as text/html.

        The joints that close runs of welded strings, by kind, and their bars, bolts, nuts, washers and bonds. Insulated
        and compromise joints come complete. A joint left in welded rail needs two bolts in each rail.

        Args:
            request: see `ClosingJointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_CLOSING_JOINTS_HTML, options, body=request)

    async def closing_joints_pdf(
        self,
        request: ClosingJointsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Joints left in welded rail, as application/pdf.

        The joints that close runs of welded strings, by kind, and their bars, bolts, nuts, washers and bonds. Insulated
        and compromise joints come complete. A joint left in welded rail needs two bolts in each rail.

        Args:
            request: see `ClosingJointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_CLOSING_JOINTS_PDF, options, body=request)

    async def rail_mass(
        self,
        request: RailMassRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> RailMassAnswer:
        """Mass of rail.

        Mass of one or two lines of rail, and what a mile of rail and of track weighs in short, long and metric tons.
        The old rule that a mile of track weighs 11/7 of the pounds per yard in long tons is exact: 2 x 1760 / 2240.

        Args:
            request: see `RailMassRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.rail-mass`: Mass of rail.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_RAIL_MASS, options, body=request)

    async def rail_mass_html(
        self,
        request: RailMassRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Mass of rail, as text/html.

        Mass of one or two lines of rail, and what a mile of rail and of track weighs in short, long and metric tons.
        The old rule that a mile of track weighs 11/7 of the pounds per yard in long tons is exact: 2 x 1760 / 2240.

        Args:
            request: see `RailMassRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_RAIL_MASS_HTML, options, body=request)

    async def rail_mass_pdf(
        self,
        request: RailMassRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Mass of rail, as application/pdf.

        Mass of one or two lines of rail, and what a mile of rail and of track weighs in short, long and metric tons.
        The old rule that a mile of track weighs 11/7 of the pounds per yard in long tons is exact: 2 x 1760 / 2240.

        Args:
            request: see `RailMassRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_RAIL_MASS_PDF, options, body=request)

    async def rail_supply(
        self,
        request: RailSupplyRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> RailSupplyAnswer:
        """Stock rails, strings, welds and closures.

        A string is its stock rails less what n - 1 plant welds use up and both end trims. The runs are laid out of
        strings as in quantities.string-layout, with the fewest field welds, then the fewest cut pieces, and the
        strings, welds, closures and offcuts of that layout are counted. A thermite weld fills its gap with weld metal,
        so the rail needed is shorter than the runs by the gaps. A place where two runs meet counts once.

        Args:
            request: see `RailSupplyRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.rail-supply`: Stock rails, strings, welds and closures.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_RAIL_SUPPLY, options, body=request)

    async def rail_supply_html(
        self,
        request: RailSupplyRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Stock rails, strings, welds and closures, as text/html.

        A string is its stock rails less what n - 1 plant welds use up and both end trims. The runs are laid out of
        strings as in quantities.string-layout, with the fewest field welds, then the fewest cut pieces, and the
        strings, welds, closures and offcuts of that layout are counted. A thermite weld fills its gap with weld metal,
        so the rail needed is shorter than the runs by the gaps. A place where two runs meet counts once.

        Args:
            request: see `RailSupplyRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_RAIL_SUPPLY_HTML, options, body=request)

    async def rail_supply_pdf(
        self,
        request: RailSupplyRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Stock rails, strings, welds and closures, as application/pdf.

        A string is its stock rails less what n - 1 plant welds use up and both end trims. The runs are laid out of
        strings as in quantities.string-layout, with the fewest field welds, then the fewest cut pieces, and the
        strings, welds, closures and offcuts of that layout are counted. A thermite weld fills its gap with weld metal,
        so the rail needed is shorter than the runs by the gaps. A place where two runs meet counts once.

        Args:
            request: see `RailSupplyRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_RAIL_SUPPLY_PDF, options, body=request)

    async def string_layout(
        self,
        request: StringLayoutRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> StringLayoutAnswer:
        """Where every string and field weld lies.

        Lays each run out of whole strings and cut pieces so that no field weld stands in a keep-out or nearer than the
        stagger to a weld or end of the other rail, and no piece is shorter than the shortest allowed: with the fewest
        field welds, among those the fewest cut pieces, among those the cut pieces as late in the run as they go; then
        each cut piece, along the line, is taken from the shortest left-over at hand that holds it, else from the next
        string. A left-over is at hand ahead of its cut, on either rail, within the reach given and until the next train
        begins; never behind. For each rail beside the other the first two are true minima; for both rails together the
        answer says whether its field welds are shown to be the fewest. Strings are numbered by the station where their
        first piece begins, left rail first. On curves the rails are longer or shorter than the centreline by half their
        distance over the radius; spirals are not modelled. A work block ends at the last string end within it, where a
        temporary closure leads to the old rail.

        Args:
            request: see `StringLayoutRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.string-layout`: Where every string and field weld lies.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_STRING_LAYOUT, options, body=request)

    async def string_layout_html(
        self,
        request: StringLayoutRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Where every string and field weld lies, as text/html.

        Lays each run out of whole strings and cut pieces so that no field weld stands in a keep-out or nearer than the
        stagger to a weld or end of the other rail, and no piece is shorter than the shortest allowed: with the fewest
        field welds, among those the fewest cut pieces, among those the cut pieces as late in the run as they go; then
        each cut piece, along the line, is taken from the shortest left-over at hand that holds it, else from the next
        string. A left-over is at hand ahead of its cut, on either rail, within the reach given and until the next train
        begins; never behind. For each rail beside the other the first two are true minima; for both rails together the
        answer says whether its field welds are shown to be the fewest. Strings are numbered by the station where their
        first piece begins, left rail first. On curves the rails are longer or shorter than the centreline by half their
        distance over the radius; spirals are not modelled. A work block ends at the last string end within it, where a
        temporary closure leads to the old rail.

        Args:
            request: see `StringLayoutRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_STRING_LAYOUT_HTML, options, body=request)

    async def string_layout_pdf(
        self,
        request: StringLayoutRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Where every string and field weld lies, as application/pdf.

        Lays each run out of whole strings and cut pieces so that no field weld stands in a keep-out or nearer than the
        stagger to a weld or end of the other rail, and no piece is shorter than the shortest allowed: with the fewest
        field welds, among those the fewest cut pieces, among those the cut pieces as late in the run as they go; then
        each cut piece, along the line, is taken from the shortest left-over at hand that holds it, else from the next
        string. A left-over is at hand ahead of its cut, on either rail, within the reach given and until the next train
        begins; never behind. For each rail beside the other the first two are true minima; for both rails together the
        answer says whether its field welds are shown to be the fewest. Strings are numbered by the station where their
        first piece begins, left rail first. On curves the rails are longer or shorter than the centreline by half their
        distance over the radius; spirals are not modelled. A work block ends at the last string end within it, where a
        temporary closure leads to the old rail.

        Args:
            request: see `StringLayoutRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_STRING_LAYOUT_PDF, options, body=request)

    async def train_loads(
        self,
        request: TrainLoadsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> TrainLoadsAnswer:
        """Rail trains and what each brings.

        A train takes as many strings as its racks hold and as its mass allows, rounded down to a multiple of those
        unloaded side by side, so that no pair is parted. Strings lie over as many cars as their length spans, each
        carrying an equal share, clamped at the middle so that both ends move alike. Strings are loaded to come off in
        the order of their numbers; what is left of a cut string stays in its rack until it is laid further ahead.

        Args:
            request: see `TrainLoadsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.train-loads`: Rail trains and what each brings.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TRAIN_LOADS, options, body=request)

    async def train_loads_html(
        self,
        request: TrainLoadsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Rail trains and what each brings, as text/html.

        A train takes as many strings as its racks hold and as its mass allows, rounded down to a multiple of those
        unloaded side by side, so that no pair is parted. Strings lie over as many cars as their length spans, each
        carrying an equal share, clamped at the middle so that both ends move alike. Strings are loaded to come off in
        the order of their numbers; what is left of a cut string stays in its rack until it is laid further ahead.

        Args:
            request: see `TrainLoadsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TRAIN_LOADS_HTML, options, body=request)

    async def train_loads_pdf(
        self,
        request: TrainLoadsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Rail trains and what each brings, as application/pdf.

        A train takes as many strings as its racks hold and as its mass allows, rounded down to a multiple of those
        unloaded side by side, so that no pair is parted. Strings lie over as many cars as their length spans, each
        carrying an equal share, clamped at the middle so that both ends move alike. Strings are loaded to come off in
        the order of their numbers; what is left of a cut string stays in its rack until it is laid further ahead.

        Args:
            request: see `TrainLoadsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TRAIN_LOADS_PDF, options, body=request)

    async def salvage(
        self,
        request: SalvageRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> SalvageAnswer:
        """Salvage.

        Old rail by length and by weight less wear, divided into relay, re-roll and scrap by given shares or by limits
        of wear; bars, bolts, plates, spikes and anchors by the old track's pattern less what is not recovered or goes
        back into track; ties renewed. Wear, classes and recovery are the user's: no published shares were found.

        Args:
            request: see `SalvageRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.salvage`: Salvage.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_SALVAGE, options, body=request)

    async def salvage_html(
        self,
        request: SalvageRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Salvage, as text/html.

        Old rail by length and by weight less wear, divided into relay, re-roll and scrap by given shares or by limits
        of wear; bars, bolts, plates, spikes and anchors by the old track's pattern less what is not recovered or goes
        back into track; ties renewed. Wear, classes and recovery are the user's: no published shares were found.

        Args:
            request: see `SalvageRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_SALVAGE_HTML, options, body=request)

    async def salvage_pdf(
        self,
        request: SalvageRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Salvage, as application/pdf.

        Old rail by length and by weight less wear, divided into relay, re-roll and scrap by given shares or by limits
        of wear; bars, bolts, plates, spikes and anchors by the old track's pattern less what is not recovered or goes
        back into track; ties renewed. Wear, classes and recovery are the user's: no published shares were found.

        Args:
            request: see `SalvageRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_SALVAGE_PDF, options, body=request)

    async def custom(
        self,
        request: CustomRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> CustomAnswer:
        """Item of the caller's own.

        An item that no other rule counts: so many to a tie, to a tie seat, to a rail length, to a joint, to a length of
        track, together. Rails and joints are each renewed rail's length over the rail length, unrounded. A count is
        negative where something else takes its place; only of what is told to be a piece of a longer stretch may the
        sum be below zero.

        Args:
            request: see `CustomRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.custom`: Item of the caller's own.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_CUSTOM, options, body=request)

    async def custom_html(
        self,
        request: CustomRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Item of the caller's own, as text/html.

        An item that no other rule counts: so many to a tie, to a tie seat, to a rail length, to a joint, to a length of
        track, together. Rails and joints are each renewed rail's length over the rail length, unrounded. A count is
        negative where something else takes its place; only of what is told to be a piece of a longer stretch may the
        sum be below zero.

        Args:
            request: see `CustomRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_CUSTOM_HTML, options, body=request)

    async def custom_pdf(
        self,
        request: CustomRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Item of the caller's own, as application/pdf.

        An item that no other rule counts: so many to a tie, to a tie seat, to a rail length, to a joint, to a length of
        track, together. Rails and joints are each renewed rail's length over the rail length, unrounded. A count is
        negative where something else takes its place; only of what is told to be a piece of a longer stretch may the
        sum be below zero.

        Args:
            request: see `CustomRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_CUSTOM_PDF, options, body=request)

    async def work_per_tie(
        self,
        request: WorkRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> WorkAnswer:
        """Work per tie and per mile.

        Operations of an out-of-face rail gang in trade order, for the rails renewed. With the user's production rates:
        the time of each, and the operation that sets the pace, since all work one behind the other. No rate is given by
        default: none was found published.

        Args:
            request: see `WorkRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.work-per-tie`: Work per tie and per mile.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_WORK_PER_TIE, options, body=request)

    async def work_per_tie_html(
        self,
        request: WorkRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Work per tie and per mile, as text/html.

        Operations of an out-of-face rail gang in trade order, for the rails renewed. With the user's production rates:
        the time of each, and the operation that sets the pace, since all work one behind the other. No rate is given by
        default: none was found published.

        Args:
            request: see `WorkRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_WORK_PER_TIE_HTML, options, body=request)

    async def work_per_tie_pdf(
        self,
        request: WorkRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Work per tie and per mile, as application/pdf.

        Operations of an out-of-face rail gang in trade order, for the rails renewed. With the user's production rates:
        the time of each, and the operation that sets the pace, since all work one behind the other. No rate is given by
        default: none was found published.

        Args:
            request: see `WorkRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_WORK_PER_TIE_PDF, options, body=request)

    async def work_plan(
        self,
        request: WorkPlanRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> WorkPlanAnswer:
        """Work plan of a rail gang.

        Given how much there is of each operation and the user's own production rates: crew time, time, days and track
        occupancies of each in trade order, and the operation that sets the pace, since all work one behind the other.
        No rate is given by default: none was found published.

        Args:
            request: see `WorkPlanRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.work-plan`: Work plan of a rail gang.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_WORK_PLAN, options, body=request)

    async def work_plan_html(
        self,
        request: WorkPlanRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Work plan of a rail gang, as text/html.

        Given how much there is of each operation and the user's own production rates: crew time, time, days and track
        occupancies of each in trade order, and the operation that sets the pace, since all work one behind the other.
        No rate is given by default: none was found published.

        Args:
            request: see `WorkPlanRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_WORK_PLAN_HTML, options, body=request)

    async def work_plan_pdf(
        self,
        request: WorkPlanRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Work plan of a rail gang, as application/pdf.

        Given how much there is of each operation and the user's own production rates: crew time, time, days and track
        occupancies of each in trade order, and the operation that sets the pace, since all work one behind the other.
        No rate is given by default: none was found published.

        Args:
            request: see `WorkPlanRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_WORK_PLAN_PDF, options, body=request)

    async def loads(
        self,
        request: LoadsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> LoadsAnswer:
        """Truck and car loads.

        Tons by item, and the loads they make by mass: each item alone, and all that a vehicle carries together, rounded
        up once from the exact mass. Vehicles stand in place of each other. What takes more room than weight fills a
        vehicle sooner than its mass says.

        Args:
            request: see `LoadsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.loads`: Truck and car loads.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_LOADS, options, body=request)

    async def loads_html(self, request: LoadsRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """Truck and car loads, as text/html.

        Tons by item, and the loads they make by mass: each item alone, and all that a vehicle carries together, rounded
        up once from the exact mass. Vehicles stand in place of each other. What takes more room than weight fills a
        vehicle sooner than its mass says.

        Args:
            request: see `LoadsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_LOADS_HTML, options, body=request)

    async def loads_pdf(self, request: LoadsRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> bytes:
        """Truck and car loads, as application/pdf.

        Tons by item, and the loads they make by mass: each item alone, and all that a vehicle carries together, rounded
        up once from the exact mass. Vehicles stand in place of each other. What takes more room than weight fills a
        vehicle sooner than its mass says.

        Args:
            request: see `LoadsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_LOADS_PDF, options, body=request)

    async def order(
        self,
        request: OrderRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> OrderAnswer:
        """From the job's total to the order.

        Allowance and rounding are applied once, to the job's total of an item and never to its lines. The total with
        allowance is rounded up to what is sold; packages are counted from that. A total that misses a whole step by
        float noise only counts as whole.

        Args:
            request: see `OrderRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `quantities.order`: From the job's total to the order.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_ORDER, options, body=request)

    async def order_html(self, request: OrderRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> str:
        """From the job's total to the order, as text/html.

        Allowance and rounding are applied once, to the job's total of an item and never to its lines. The total with
        allowance is rounded up to what is sold; packages are counted from that. A total that misses a whole step by
        float noise only counts as whole.

        Args:
            request: see `OrderRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_ORDER_HTML, options, body=request)

    async def order_pdf(self, request: OrderRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> bytes:
        """From the job's total to the order, as application/pdf.

        Allowance and rounding are applied once, to the job's total of an item and never to its lines. The total with
        allowance is rounded up to what is sold; packages are counted from that. A total that misses a whole step by
        float noise only counts as whole.

        Args:
            request: see `OrderRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_ORDER_PDF, options, body=request)


class AsyncRailAnchorsResource:
    """`client.rail_anchors`. List rail anchors; get one rail anchor."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List rail anchors.

        Every row of the table of rail anchors, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_LIST_RAIL_ANCHORS, options, query={"units": units, "version": version})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one rail anchor.

        One rail anchor with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _GET_RAIL_ANCHOR,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )


class AsyncRailSectionsResource:
    """`client.rail_sections`. List rail sections; get one rail section; draw a rail section."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(
        self,
        *,
        standard: str | None = None,
        mass_from: float | None = None,
        mass_to: float | None = None,
        base_from: float | None = None,
        base_to: float | None = None,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List rail sections.

        Every row of the table of rail sections, each value as its source prints it and with its place.

        Args:
            standard: Part of the name of the standard, in any case.
            mass_from: Smallest mass per length: lb/yd, or kg/m with units=si.
            mass_to: Largest mass per length: lb/yd, or kg/m with units=si.
            base_from: Smallest base width: in, or mm with units=si.
            base_to: Largest base width: in, or mm with units=si.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _LIST_RAIL_SECTIONS,
            options,
            query={
                "standard": standard,
                "mass_from": mass_from,
                "mass_to": mass_to,
                "base_from": base_from,
                "base_to": base_to,
                "units": units,
                "version": version,
            },
        )

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one rail section.

        One rail section with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _GET_RAIL_SECTION,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )

    async def profile(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        chord_error: float | None = None,
        vertical_wear: float | None = None,
        face_wear: float | None = None,
        face_angle: float | None = None,
        face_side: Literal["left", "right"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> SectionProfile:
        """Draw a rail section.

        The section from its true geometry: as a dimensioned drawing (SVG, to scale on A4 and Letter, light and dark),
        as points with their chord error (JSON), or as lines and arcs for drawing programs (DXF R12, millimetres; only
        where the service has the library for it). Wear is laid over the new section. Lengths in the query are in, or mm
        with units=si; when `units` is left out, what the section's own drawing is in.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            chord_error: Greatest distance between the outline and the lines through its points, in the units asked for;
                JSON only.
            vertical_wear: Depth of vertical head wear laid over the new section, in the units asked for.
            face_wear: Horizontal loss of one face at the gage line, in the units asked for.
            face_angle: Lean of the worn face from the vertical, in degrees; upright when left out.
            face_side: The worn side, as drawn; left when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A section's outline as points counter-clockwise, the first not repeated, and the measures it was built from.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _GET_RAIL_SECTION_PROFILE,
            options,
            path={"id": id},
            query={
                "units": units,
                "chord_error": chord_error,
                "vertical_wear": vertical_wear,
                "face_wear": face_wear,
                "face_angle": face_angle,
                "face_side": face_side,
                "version": version,
            },
        )

    async def profile_svg(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        chord_error: float | None = None,
        vertical_wear: float | None = None,
        face_wear: float | None = None,
        face_angle: float | None = None,
        face_side: Literal["left", "right"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> str:
        """Draw a rail section, as image/svg+xml.

        The section from its true geometry: as a dimensioned drawing (SVG, to scale on A4 and Letter, light and dark),
        as points with their chord error (JSON), or as lines and arcs for drawing programs (DXF R12, millimetres; only
        where the service has the library for it). Wear is laid over the new section. Lengths in the query are in, or mm
        with units=si; when `units` is left out, what the section's own drawing is in.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            chord_error: Greatest distance between the outline and the lines through its points, in the units asked for;
                JSON only.
            vertical_wear: Depth of vertical head wear laid over the new section, in the units asked for.
            face_wear: Horizontal loss of one face at the gage line, in the units asked for.
            face_angle: Lean of the worn face from the vertical, in degrees; upright when left out.
            face_side: The worn side, as drawn; left when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/svg+xml.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _GET_RAIL_SECTION_PROFILE_SVG,
            options,
            path={"id": id},
            query={
                "units": units,
                "chord_error": chord_error,
                "vertical_wear": vertical_wear,
                "face_wear": face_wear,
                "face_angle": face_angle,
                "face_side": face_side,
                "version": version,
            },
        )

    async def profile_dxf(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        chord_error: float | None = None,
        vertical_wear: float | None = None,
        face_wear: float | None = None,
        face_angle: float | None = None,
        face_side: Literal["left", "right"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Draw a rail section, as image/vnd.dxf.

        The section from its true geometry: as a dimensioned drawing (SVG, to scale on A4 and Letter, light and dark),
        as points with their chord error (JSON), or as lines and arcs for drawing programs (DXF R12, millimetres; only
        where the service has the library for it). Wear is laid over the new section. Lengths in the query are in, or mm
        with units=si; when `units` is left out, what the section's own drawing is in.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            chord_error: Greatest distance between the outline and the lines through its points, in the units asked for;
                JSON only.
            vertical_wear: Depth of vertical head wear laid over the new section, in the units asked for.
            face_wear: Horizontal loss of one face at the gage line, in the units asked for.
            face_angle: Lean of the worn face from the vertical, in degrees; upright when left out.
            face_side: The worn side, as drawn; left when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/vnd.dxf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _GET_RAIL_SECTION_PROFILE_DXF,
            options,
            path={"id": id},
            query={
                "units": units,
                "chord_error": chord_error,
                "vertical_wear": vertical_wear,
                "face_wear": face_wear,
                "face_angle": face_angle,
                "face_side": face_side,
                "version": version,
            },
        )


class AsyncRegulationResource:
    """`client.regulation`. Track held against the sections of the federal track safety standards."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def track_joints(
        self,
        request: TrackJointsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> TrackJointsAnswer:
        """Joints, bolts and anchors by 49 CFR Part 213.

        Holds a job against the sections of Part 213 on bolted joints, their bolts, torch-cut ends and mismatch, on
        anchoring at turnouts, and on laying welded rail: what is left out is not checked. Part 213 is a floor; a
        railroad's plan goes further.

        Args:
            request: see `TrackJointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `regulation.track-joints`: Joints, bolts and anchors by 49 CFR Part 213.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TRACK_JOINTS, options, body=request)

    async def track_joints_html(
        self,
        request: TrackJointsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Joints, bolts and anchors by 49 CFR Part 213, as text/html.

        Holds a job against the sections of Part 213 on bolted joints, their bolts, torch-cut ends and mismatch, on
        anchoring at turnouts, and on laying welded rail: what is left out is not checked. Part 213 is a floor; a
        railroad's plan goes further.

        Args:
            request: see `TrackJointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TRACK_JOINTS_HTML, options, body=request)

    async def track_joints_pdf(
        self,
        request: TrackJointsRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Joints, bolts and anchors by 49 CFR Part 213, as application/pdf.

        Holds a job against the sections of Part 213 on bolted joints, their bolts, torch-cut ends and mismatch, on
        anchoring at turnouts, and on laying welded rail: what is left out is not checked. Part 213 is a floor; a
        railroad's plan goes further.

        Args:
            request: see `TrackJointsRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TRACK_JOINTS_PDF, options, body=request)


class AsyncRulebooksResource:
    """`client.rulebooks`. List the rulebooks."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(self, **options: Unpack[CallOptions]) -> RulebookList:
        """List the rulebooks.

        The defaults that stand in where a request leaves something out, with their sources.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rulebooks of this service.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_LIST_RULEBOOKS, options)


class AsyncRulesResource:
    """`client.rules`. List the rules; get one rule."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(self, **options: Unpack[CallOptions]) -> RuleList:
        """List the rules.

        The registry: formulas, inputs with units and limits, cautions and sources of every rule.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The registry of rules.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_LIST_RULES, options)

    async def get(self, id: str, /, **options: Unpack[CallOptions]) -> RuleRecord:
        """Get one rule.

        One record of the registry.

        Args:
            id: Id of the rule.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A rule as the registry has it.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_GET_RULE, options, path={"id": id})


class AsyncSectionCompatibilityResource:
    """`client.section_compatibility`. Compatibility of an old and a new rail section."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def calculate(
        self,
        request: SectionCompatibilityRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> SectionCompatibilityAnswer:
        """Compatibility of an old and a new rail section.

        Whether plates, joint bars and drilling of the old rail serve the new one, and how the change of height is run
        off. Plates serve when the new base lies between their shoulders within the play; where their table is not
        given, they are taken as made for the old rail. Joint bars serve both when fishing height, both fishing angles
        and drilling are the same, within 1/64 in and a quarter of a degree; a thicker web does not matter. A joint
        between the two is a compromise joint when the bars or the running surface differ. What is not known gives no
        verdict.

        Args:
            request: see `SectionCompatibilityRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `sections.compatibility`: Compatibility of an old and a new rail section.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_SECTION_COMPATIBILITY, options, body=request)

    async def calculate_html(
        self,
        request: SectionCompatibilityRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Compatibility of an old and a new rail section, as text/html.

        Whether plates, joint bars and drilling of the old rail serve the new one, and how the change of height is run
        off. Plates serve when the new base lies between their shoulders within the play; where their table is not
        given, they are taken as made for the old rail. Joint bars serve both when fishing height, both fishing angles
        and drilling are the same, within 1/64 in and a quarter of a degree; a thicker web does not matter. A joint
        between the two is a compromise joint when the bars or the running surface differ. What is not known gives no
        verdict.

        Args:
            request: see `SectionCompatibilityRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_SECTION_COMPATIBILITY_HTML, options, body=request)

    async def calculate_pdf(
        self,
        request: SectionCompatibilityRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Compatibility of an old and a new rail section, as application/pdf.

        Whether plates, joint bars and drilling of the old rail serve the new one, and how the change of height is run
        off. Plates serve when the new base lies between their shoulders within the play; where their table is not
        given, they are taken as made for the old rail. Joint bars serve both when fishing height, both fishing angles
        and drilling are the same, within 1/64 in and a quarter of a degree; a thicker web does not matter. A joint
        between the two is a compromise joint when the bars or the running surface differ. What is not known gives no
        verdict.

        Args:
            request: see `SectionCompatibilityRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_SECTION_COMPATIBILITY_PDF, options, body=request)


class AsyncSectionPropertiesResource:
    """`client.section_properties`. Properties of a rail section, new or worn."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def calculate(
        self,
        request: SectionPropertiesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> SectionPropertiesAnswer:
        """Properties of a rail section, new or worn.

        Area, centroid, second moments, section moduli, perimeter, mass and thermal force per degree of a rail section,
        integrated in closed form over its lines and arcs. The section is one of the catalogue, or has its own measures,
        or measured points. Wear is vertical, of a face, or measured; what it leaves is integrated in the same way.
        Head, web and base are divided along the fishing planes, so fillets count as web. Torsion constant and shear
        centre, on demand, come from the boundary integral of the warping function, extrapolated from two divisions
        whose distance is stated. The new section is compared with printed values.

        Args:
            request: see `SectionPropertiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `sections.properties`: Properties of a rail section, new or worn.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_SECTION_PROPERTIES, options, body=request)

    async def calculate_html(
        self,
        request: SectionPropertiesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Properties of a rail section, new or worn, as text/html.

        Area, centroid, second moments, section moduli, perimeter, mass and thermal force per degree of a rail section,
        integrated in closed form over its lines and arcs. The section is one of the catalogue, or has its own measures,
        or measured points. Wear is vertical, of a face, or measured; what it leaves is integrated in the same way.
        Head, web and base are divided along the fishing planes, so fillets count as web. Torsion constant and shear
        centre, on demand, come from the boundary integral of the warping function, extrapolated from two divisions
        whose distance is stated. The new section is compared with printed values.

        Args:
            request: see `SectionPropertiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_SECTION_PROPERTIES_HTML, options, body=request)

    async def calculate_pdf(
        self,
        request: SectionPropertiesRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Properties of a rail section, new or worn, as application/pdf.

        Area, centroid, second moments, section moduli, perimeter, mass and thermal force per degree of a rail section,
        integrated in closed form over its lines and arcs. The section is one of the catalogue, or has its own measures,
        or measured points. Wear is vertical, of a face, or measured; what it leaves is integrated in the same way.
        Head, web and base are divided along the fishing planes, so fillets count as web. Torsion constant and shear
        centre, on demand, come from the boundary integral of the warping function, extrapolated from two divisions
        whose distance is stated. The new section is compared with printed values.

        Args:
            request: see `SectionPropertiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_SECTION_PROPERTIES_PDF, options, body=request)


class AsyncSourcesResource:
    """`client.sources`. List the sources."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(self, **options: Unpack[CallOptions]) -> SourceList:
        """List the sources.

        Every document that a value or a rule cites.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Every cited document.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_LIST_SOURCES, options)


class AsyncSpikePatternsResource:
    """`client.spike_patterns`. List spike patterns; get one spike pattern."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List spike patterns.

        Every row of the table of spike patterns, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_LIST_SPIKE_PATTERNS, options, query={"units": units, "version": version})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one spike pattern.

        One spike pattern with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _GET_SPIKE_PATTERN,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )


class AsyncSpikesResource:
    """`client.spikes`. List spikes; get one spike."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List spikes.

        Every row of the table of spikes, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_LIST_SPIKES, options, query={"units": units, "version": version})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one spike.

        One spike with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_GET_SPIKE, options, path={"id": id}, query={"units": units, "version": version})


class AsyncStrengthResource:
    """`client.strength`. Bending under wheels and in haulage."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def vertical_bending(
        self,
        request: VerticalBendingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> VerticalBendingAnswer:
        """Bending of rail under wheels.

        The rail as a long beam on a bed that pushes back in proportion to its deflection; wheels added up and raised by
        a named speed factor. Deflection, moments, stress in base and head, rail-seat load, tie bending, ballast
        pressure, the allowable stress built up from yield, thermal stress and shares, and a second section under the
        same wheels. With rail temperatures, bending and thermal stress are added at base and head, hot and cold; with
        wear, the section is the worn one.

        Args:
            request: see `VerticalBendingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `strength.vertical-bending`: Bending of rail under wheels.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_VERTICAL_BENDING, options, body=request)

    async def vertical_bending_html(
        self,
        request: VerticalBendingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Bending of rail under wheels, as text/html.

        The rail as a long beam on a bed that pushes back in proportion to its deflection; wheels added up and raised by
        a named speed factor. Deflection, moments, stress in base and head, rail-seat load, tie bending, ballast
        pressure, the allowable stress built up from yield, thermal stress and shares, and a second section under the
        same wheels. With rail temperatures, bending and thermal stress are added at base and head, hot and cold; with
        wear, the section is the worn one.

        Args:
            request: see `VerticalBendingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_VERTICAL_BENDING_HTML, options, body=request)

    async def vertical_bending_pdf(
        self,
        request: VerticalBendingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Bending of rail under wheels, as application/pdf.

        The rail as a long beam on a bed that pushes back in proportion to its deflection; wheels added up and raised by
        a named speed factor. Deflection, moments, stress in base and head, rail-seat load, tie bending, ballast
        pressure, the allowable stress built up from yield, thermal stress and shares, and a second section under the
        same wheels. With rail temperatures, bending and thermal stress are added at base and head, hot and cold; with
        wear, the section is the worn one.

        Args:
            request: see `VerticalBendingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_VERTICAL_BENDING_PDF, options, body=request)

    async def hauling_curve(
        self,
        request: HaulingCurveRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> HaulingCurveAnswer:
        """Strings hauled round a curve.

        A string carried upright bends about its upright axis to the radius of the track; the base, being widest, is
        stressed most. Strings off the middle of the train run on a shorter or longer path and their free ends shift
        along it. Elastic; worked for the innermost string, evenly bent.

        Args:
            request: see `HaulingCurveRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `strength.hauling-curve`: Strings hauled round a curve.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_HAULING_CURVE, options, body=request)

    async def hauling_curve_html(
        self,
        request: HaulingCurveRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Strings hauled round a curve, as text/html.

        A string carried upright bends about its upright axis to the radius of the track; the base, being widest, is
        stressed most. Strings off the middle of the train run on a shorter or longer path and their free ends shift
        along it. Elastic; worked for the innermost string, evenly bent.

        Args:
            request: see `HaulingCurveRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_HAULING_CURVE_HTML, options, body=request)

    async def hauling_curve_pdf(
        self,
        request: HaulingCurveRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Strings hauled round a curve, as application/pdf.

        A string carried upright bends about its upright axis to the radius of the track; the base, being widest, is
        stressed most. Strings off the middle of the train run on a shorter or longer path and their free ends shift
        along it. Elastic; worked for the innermost string, evenly bent.

        Args:
            request: see `HaulingCurveRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_HAULING_CURVE_PDF, options, body=request)

    async def turnout_radius(
        self,
        request: TurnoutRadiusRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> TurnoutRadiusAnswer:
        """Radius of a turnout by its number.

        The closure curve between a straight switch and a straight frog, by the number of the frog and the gauge.
        Without the length of the switch point the switch is taken not to turn, which gives a radius somewhat smaller
        than any such turnout has: on the safe side for strings hauled through. The wider radius of a turnout curved all
        the way is given beside it.

        Args:
            request: see `TurnoutRadiusRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `strength.turnout-radius`: Radius of a turnout by its number.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TURNOUT_RADIUS, options, body=request)

    async def turnout_radius_html(
        self,
        request: TurnoutRadiusRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Radius of a turnout by its number, as text/html.

        The closure curve between a straight switch and a straight frog, by the number of the frog and the gauge.
        Without the length of the switch point the switch is taken not to turn, which gives a radius somewhat smaller
        than any such turnout has: on the safe side for strings hauled through. The wider radius of a turnout curved all
        the way is given beside it.

        Args:
            request: see `TurnoutRadiusRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TURNOUT_RADIUS_HTML, options, body=request)

    async def turnout_radius_pdf(
        self,
        request: TurnoutRadiusRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Radius of a turnout by its number, as application/pdf.

        The closure curve between a straight switch and a straight frog, by the number of the frog and the gauge.
        Without the length of the switch point the switch is taken not to turn, which gives a radius somewhat smaller
        than any such turnout has: on the safe side for strings hauled through. The wider radius of a turnout curved all
        the way is given beside it.

        Args:
            request: see `TurnoutRadiusRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TURNOUT_RADIUS_PDF, options, body=request)


class AsyncTakeoffsResource(AsyncTakeoffs):
    """`client.takeoffs`. A whole relay job: every quantity, order, check and price in one answer."""

    _create = _CREATE_TAKEOFF
    _bulk = _CREATE_TAKEOFFS

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def create(
        self,
        request: TakeoffRequest | Mapping[str, object],
        /,
        *,
        drawing: Literal["track-chart", "tie-panel"] | None = None,
        sheet: int | None = None,
        progress: bool | Callable[[Progress], object] = False,
        **options: Unpack[CallOptions],
    ) -> TakeoffAnswer:
        """Takeoff of a relay job.

        Every quantity, order, train load, recovered material, check and price of a relay job, in one answer. Each line
        comes from the same rule that answers the question alone; allowances and rounding are applied once, to the job's
        total of an item.

        Args:
            drawing: Which drawing of the job, where `image/svg+xml` is accepted; the track chart when left out.
            sheet: Sheet of the drawing, from 1: a few miles of the track chart, or a segment's tie panel. The root of
                the drawing tells how many there are.
            request: see `TakeoffRequest`; a mapping is sent as it stands.
            progress: True for a bar (the extra `progress`), or a function that is told how far the work has come.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `takeoffs`: Takeoff of a relay job.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._watched(
            _CREATE_TAKEOFF,
            _CREATE_TAKEOFF_LINES,
            options,
            query={"drawing": drawing, "sheet": sheet},
            body=request,
            progress=progress,
        )

    async def create_csv(
        self,
        request: TakeoffRequest | Mapping[str, object],
        /,
        *,
        drawing: Literal["track-chart", "tie-panel"] | None = None,
        sheet: int | None = None,
        **options: Unpack[CallOptions],
    ) -> str:
        """Takeoff of a relay job, as text/csv.

        Every quantity, order, train load, recovered material, check and price of a relay job, in one answer. Each line
        comes from the same rule that answers the question alone; allowances and rounding are applied once, to the job's
        total of an item.

        Args:
            drawing: Which drawing of the job, where `image/svg+xml` is accepted; the track chart when left out.
            sheet: Sheet of the drawing, from 1: a few miles of the track chart, or a segment's tie panel. The root of
                the drawing tells how many there are.
            request: see `TakeoffRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/csv.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _CREATE_TAKEOFF_CSV,
            options,
            query={"drawing": drawing, "sheet": sheet},
            body=request,
        )

    async def create_svg(
        self,
        request: TakeoffRequest | Mapping[str, object],
        /,
        *,
        drawing: Literal["track-chart", "tie-panel"] | None = None,
        sheet: int | None = None,
        **options: Unpack[CallOptions],
    ) -> str:
        """Takeoff of a relay job, as image/svg+xml.

        Every quantity, order, train load, recovered material, check and price of a relay job, in one answer. Each line
        comes from the same rule that answers the question alone; allowances and rounding are applied once, to the job's
        total of an item.

        Args:
            drawing: Which drawing of the job, where `image/svg+xml` is accepted; the track chart when left out.
            sheet: Sheet of the drawing, from 1: a few miles of the track chart, or a segment's tie panel. The root of
                the drawing tells how many there are.
            request: see `TakeoffRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/svg+xml.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _CREATE_TAKEOFF_SVG,
            options,
            query={"drawing": drawing, "sheet": sheet},
            body=request,
        )

    async def create_html(
        self,
        request: TakeoffRequest | Mapping[str, object],
        /,
        *,
        drawing: Literal["track-chart", "tie-panel"] | None = None,
        sheet: int | None = None,
        **options: Unpack[CallOptions],
    ) -> str:
        """Takeoff of a relay job, as text/html.

        Every quantity, order, train load, recovered material, check and price of a relay job, in one answer. Each line
        comes from the same rule that answers the question alone; allowances and rounding are applied once, to the job's
        total of an item.

        Args:
            drawing: Which drawing of the job, where `image/svg+xml` is accepted; the track chart when left out.
            sheet: Sheet of the drawing, from 1: a few miles of the track chart, or a segment's tie panel. The root of
                the drawing tells how many there are.
            request: see `TakeoffRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _CREATE_TAKEOFF_HTML,
            options,
            query={"drawing": drawing, "sheet": sheet},
            body=request,
        )

    async def create_pdf(
        self,
        request: TakeoffRequest | Mapping[str, object],
        /,
        *,
        drawing: Literal["track-chart", "tie-panel"] | None = None,
        sheet: int | None = None,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Takeoff of a relay job, as application/pdf.

        Every quantity, order, train load, recovered material, check and price of a relay job, in one answer. Each line
        comes from the same rule that answers the question alone; allowances and rounding are applied once, to the job's
        total of an item.

        Args:
            drawing: Which drawing of the job, where `image/svg+xml` is accepted; the track chart when left out.
            sheet: Sheet of the drawing, from 1: a few miles of the track chart, or a segment's tie panel. The root of
                the drawing tells how many there are.
            request: see `TakeoffRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _CREATE_TAKEOFF_PDF,
            options,
            query={"drawing": drawing, "sheet": sheet},
            body=request,
        )

    async def create_xlsx(
        self,
        request: TakeoffRequest | Mapping[str, object],
        /,
        *,
        drawing: Literal["track-chart", "tie-panel"] | None = None,
        sheet: int | None = None,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Takeoff of a relay job, as application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.

        Every quantity, order, train load, recovered material, check and price of a relay job, in one answer. Each line
        comes from the same rule that answers the question alone; allowances and rounding are applied once, to the job's
        total of an item.

        Args:
            drawing: Which drawing of the job, where `image/svg+xml` is accepted; the track chart when left out.
            sheet: Sheet of the drawing, from 1: a few miles of the track chart, or a segment's tie panel. The root of
                the drawing tells how many there are.
            request: see `TakeoffRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _CREATE_TAKEOFF_XLSX,
            options,
            query={"drawing": drawing, "sheet": sheet},
            body=request,
        )


class AsyncThermalResource:
    """`client.thermal`. Force, laying, breaks, restraint and stability of welded rail."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def force(
        self,
        request: ThermalForceRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> ThermalForceAnswer:
        """Thermal force in fully restrained rail.

        Axial force and stress of rail that cannot move, from the difference between its temperature and its neutral
        temperature. Independent of length; holds away from ends, joints and cuts, where nothing moves.

        Args:
            request: see `ThermalForceRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.force`: Thermal force in fully restrained rail.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_FORCE, options, body=request)

    async def force_html(
        self,
        request: ThermalForceRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Thermal force in fully restrained rail, as text/html.

        Axial force and stress of rail that cannot move, from the difference between its temperature and its neutral
        temperature. Independent of length; holds away from ends, joints and cuts, where nothing moves.

        Args:
            request: see `ThermalForceRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_FORCE_HTML, options, body=request)

    async def force_pdf(
        self,
        request: ThermalForceRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Thermal force in fully restrained rail, as application/pdf.

        Axial force and stress of rail that cannot move, from the difference between its temperature and its neutral
        temperature. Independent of length; holds away from ends, joints and cuts, where nothing moves.

        Args:
            request: see `ThermalForceRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_FORCE_PDF, options, body=request)

    async def worn_rail(
        self,
        request: WornRailRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> WornRailAnswer:
        """Thermal force in worn rail.

        Axial force and stress of restrained rail with the section that wear has left, integrated from its outline: of
        the catalogue or of given measures less vertical and face wear, or of measured points. Stress does not depend on
        wear; force does, so a worn rail pulls and pushes less than the new one by the share of area lost. Area and
        second moments as they are now can be put to every other thermal rule in place of those of the new section.

        Args:
            request: see `WornRailRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.worn-rail`: Thermal force in worn rail.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_WORN_RAIL, options, body=request)

    async def worn_rail_html(
        self,
        request: WornRailRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Thermal force in worn rail, as text/html.

        Axial force and stress of restrained rail with the section that wear has left, integrated from its outline: of
        the catalogue or of given measures less vertical and face wear, or of measured points. Stress does not depend on
        wear; force does, so a worn rail pulls and pushes less than the new one by the share of area lost. Area and
        second moments as they are now can be put to every other thermal rule in place of those of the new section.

        Args:
            request: see `WornRailRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_WORN_RAIL_HTML, options, body=request)

    async def worn_rail_pdf(
        self,
        request: WornRailRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Thermal force in worn rail, as application/pdf.

        Axial force and stress of restrained rail with the section that wear has left, integrated from its outline: of
        the catalogue or of given measures less vertical and face wear, or of measured points. Stress does not depend on
        wear; force does, so a worn rail pulls and pushes less than the new one by the share of area lost. Area and
        second moments as they are now can be put to every other thermal rule in place of those of the new section.

        Args:
            request: see `WornRailRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_WORN_RAIL_PDF, options, body=request)

    async def temperature_range(
        self,
        request: TemperatureRangeRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> TemperatureRangeAnswer:
        """Desired laying temperature range and restriction temperature.

        The range of rail temperature in which to lay, from the hottest and coldest rail at the place by a named rule;
        those from air temperature where rail was not measured. Then, with the neutral temperature that service is
        assumed to take away and the rise the track may be given, the rail temperature above which speed is restricted.
        The hottest and coldest count in rail temperature. Rail whose laying temperature is not given is taken at the
        lower end of the range.

        Args:
            request: see `TemperatureRangeRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.temperature-range`: Desired laying temperature range and restriction
                temperature.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TEMPERATURE_RANGE, options, body=request)

    async def temperature_range_html(
        self,
        request: TemperatureRangeRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Desired laying temperature range and restriction temperature, as text/html.

        The range of rail temperature in which to lay, from the hottest and coldest rail at the place by a named rule;
        those from air temperature where rail was not measured. Then, with the neutral temperature that service is
        assumed to take away and the rise the track may be given, the rail temperature above which speed is restricted.
        The hottest and coldest count in rail temperature. Rail whose laying temperature is not given is taken at the
        lower end of the range.

        Args:
            request: see `TemperatureRangeRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TEMPERATURE_RANGE_HTML, options, body=request)

    async def temperature_range_pdf(
        self,
        request: TemperatureRangeRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Desired laying temperature range and restriction temperature, as application/pdf.

        The range of rail temperature in which to lay, from the hottest and coldest rail at the place by a named rule;
        those from air temperature where rail was not measured. Then, with the neutral temperature that service is
        assumed to take away and the rise the track may be given, the rail temperature above which speed is restricted.
        The hottest and coldest count in rail temperature. Rail whose laying temperature is not given is taken at the
        lower end of the range.

        Args:
            request: see `TemperatureRangeRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_TEMPERATURE_RANGE_PDF, options, body=request)

    async def laying_adjustment(
        self,
        request: LayingAdjustmentRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> LayingAdjustmentAnswer:
        """Adjustment of a string at laying.

        A string fixed at one end must change its length by alpha L (t - T) to be free of force at the target
        temperature t. Gives the movement of the free end and of marks at the quarter points, the gap to leave with the
        opening for the weld, the pull with friction, the table by temperature and length, the verdict on the neutral
        temperature achieved, what must follow, and the record to keep. Movement is even along the length only where
        nothing holds the rail between its ends.

        Args:
            request: see `LayingAdjustmentRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.laying-adjustment`: Adjustment of a string at laying.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_LAYING_ADJUSTMENT, options, body=request)

    async def laying_adjustment_svg(
        self,
        request: LayingAdjustmentRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Adjustment of a string at laying, as image/svg+xml.

        A string fixed at one end must change its length by alpha L (t - T) to be free of force at the target
        temperature t. Gives the movement of the free end and of marks at the quarter points, the gap to leave with the
        opening for the weld, the pull with friction, the table by temperature and length, the verdict on the neutral
        temperature achieved, what must follow, and the record to keep. Movement is even along the length only where
        nothing holds the rail between its ends.

        Args:
            request: see `LayingAdjustmentRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/svg+xml.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_LAYING_ADJUSTMENT_SVG, options, body=request)

    async def laying_adjustment_html(
        self,
        request: LayingAdjustmentRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Adjustment of a string at laying, as text/html.

        A string fixed at one end must change its length by alpha L (t - T) to be free of force at the target
        temperature t. Gives the movement of the free end and of marks at the quarter points, the gap to leave with the
        opening for the weld, the pull with friction, the table by temperature and length, the verdict on the neutral
        temperature achieved, what must follow, and the record to keep. Movement is even along the length only where
        nothing holds the rail between its ends.

        Args:
            request: see `LayingAdjustmentRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_LAYING_ADJUSTMENT_HTML, options, body=request)

    async def laying_adjustment_pdf(
        self,
        request: LayingAdjustmentRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Adjustment of a string at laying, as application/pdf.

        A string fixed at one end must change its length by alpha L (t - T) to be free of force at the target
        temperature t. Gives the movement of the free end and of marks at the quarter points, the gap to leave with the
        opening for the weld, the pull with friction, the table by temperature and length, the verdict on the neutral
        temperature achieved, what must follow, and the record to keep. Movement is even along the length only where
        nothing holds the rail between its ends.

        Args:
            request: see `LayingAdjustmentRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_LAYING_ADJUSTMENT_PDF, options, body=request)

    async def destressing(
        self,
        request: DestressingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> DestressingAnswer:
        """Destressing plan by stations.

        Welded rail is cut, freed between two fixed ends, brought to the strain of the target neutral temperature and
        welded. Gives the gap, the rail to remove, the pull, the length that must hold beyond the ends, and for marks
        along the line the movement each must show: in proportion to its distance from the fixed end on its side of the
        cut.

        Args:
            request: see `DestressingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.destressing`: Destressing plan by stations.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_DESTRESSING, options, body=request)

    async def destressing_html(
        self,
        request: DestressingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Destressing plan by stations, as text/html.

        Welded rail is cut, freed between two fixed ends, brought to the strain of the target neutral temperature and
        welded. Gives the gap, the rail to remove, the pull, the length that must hold beyond the ends, and for marks
        along the line the movement each must show: in proportion to its distance from the fixed end on its side of the
        cut.

        Args:
            request: see `DestressingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_DESTRESSING_HTML, options, body=request)

    async def destressing_pdf(
        self,
        request: DestressingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Destressing plan by stations, as application/pdf.

        Welded rail is cut, freed between two fixed ends, brought to the strain of the target neutral temperature and
        welded. Gives the gap, the rail to remove, the pull, the length that must hold beyond the ends, and for marks
        along the line the movement each must show: in proportion to its distance from the fixed end on its side of the
        cut.

        Args:
            request: see `DestressingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_DESTRESSING_PDF, options, body=request)

    async def neutral_temperature(
        self,
        request: NeutralTemperatureRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> NeutralTemperatureAnswer:
        """Neutral temperature after work on the rail.

        Rail put in lowers the neutral temperature and rail taken out raises it, on average over the length that feels
        it: the slip length on both sides of a cut unless another is given. A curve that shifts inwards loses by the
        shift over its radius. The start is a known value, the average of several lengths, or the value told by the gap
        that opened at a cut.

        Args:
            request: see `NeutralTemperatureRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.neutral-temperature`: Neutral temperature after work on the rail.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_NEUTRAL_TEMPERATURE, options, body=request)

    async def neutral_temperature_html(
        self,
        request: NeutralTemperatureRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Neutral temperature after work on the rail, as text/html.

        Rail put in lowers the neutral temperature and rail taken out raises it, on average over the length that feels
        it: the slip length on both sides of a cut unless another is given. A curve that shifts inwards loses by the
        shift over its radius. The start is a known value, the average of several lengths, or the value told by the gap
        that opened at a cut.

        Args:
            request: see `NeutralTemperatureRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_NEUTRAL_TEMPERATURE_HTML, options, body=request)

    async def neutral_temperature_pdf(
        self,
        request: NeutralTemperatureRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Neutral temperature after work on the rail, as application/pdf.

        Rail put in lowers the neutral temperature and rail taken out raises it, on average over the length that feels
        it: the slip length on both sides of a cut unless another is given. A curve that shifts inwards loses by the
        shift over its radius. The start is a known value, the average of several lengths, or the value told by the gap
        that opened at a cut.

        Args:
            request: see `NeutralTemperatureRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_NEUTRAL_TEMPERATURE_PDF, options, body=request)

    async def break_gap(
        self,
        request: BreakGapRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> BreakGapAnswer:
        """Gap at a break or cut of cold rail.

        Rail colder than its neutral temperature is in tension; where it parts, both ends draw back until the
        longitudinal restraint has taken the force up. Gap, slip length and end movement by a rigid-plastic, an elastic
        or a bilinear law of restraint, in long rail with no other end, joint or fixed point within the slip length.

        Args:
            request: see `BreakGapRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.break-gap`: Gap at a break or cut of cold rail.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_BREAK_GAP, options, body=request)

    async def break_gap_svg(
        self,
        request: BreakGapRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Gap at a break or cut of cold rail, as image/svg+xml.

        Rail colder than its neutral temperature is in tension; where it parts, both ends draw back until the
        longitudinal restraint has taken the force up. Gap, slip length and end movement by a rigid-plastic, an elastic
        or a bilinear law of restraint, in long rail with no other end, joint or fixed point within the slip length.

        Args:
            request: see `BreakGapRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/svg+xml.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_BREAK_GAP_SVG, options, body=request)

    async def break_gap_html(
        self,
        request: BreakGapRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Gap at a break or cut of cold rail, as text/html.

        Rail colder than its neutral temperature is in tension; where it parts, both ends draw back until the
        longitudinal restraint has taken the force up. Gap, slip length and end movement by a rigid-plastic, an elastic
        or a bilinear law of restraint, in long rail with no other end, joint or fixed point within the slip length.

        Args:
            request: see `BreakGapRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_BREAK_GAP_HTML, options, body=request)

    async def break_gap_pdf(
        self,
        request: BreakGapRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Gap at a break or cut of cold rail, as application/pdf.

        Rail colder than its neutral temperature is in tension; where it parts, both ends draw back until the
        longitudinal restraint has taken the force up. Gap, slip length and end movement by a rigid-plastic, an elastic
        or a bilinear law of restraint, in long rail with no other end, joint or fixed point within the slip length.

        Args:
            request: see `BreakGapRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_BREAK_GAP_PDF, options, body=request)

    async def end_movement(
        self,
        request: EndMovementRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> EndMovementAnswer:
        """Movement at the end of welded rail.

        Where welded rail ends at a joint, the force there is no more than the joint holds and the last length of the
        rail breathes. Movement outwards at the hottest and inwards at the coldest rail temperature, each reached from
        the neutral temperature for the first time, and the length that moves.

        Args:
            request: see `EndMovementRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.end-movement`: Movement at the end of welded rail.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_END_MOVEMENT, options, body=request)

    async def end_movement_svg(
        self,
        request: EndMovementRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Movement at the end of welded rail, as image/svg+xml.

        Where welded rail ends at a joint, the force there is no more than the joint holds and the last length of the
        rail breathes. Movement outwards at the hottest and inwards at the coldest rail temperature, each reached from
        the neutral temperature for the first time, and the length that moves.

        Args:
            request: see `EndMovementRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/svg+xml.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_END_MOVEMENT_SVG, options, body=request)

    async def end_movement_html(
        self,
        request: EndMovementRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Movement at the end of welded rail, as text/html.

        Where welded rail ends at a joint, the force there is no more than the joint holds and the last length of the
        rail breathes. Movement outwards at the hottest and inwards at the coldest rail temperature, each reached from
        the neutral temperature for the first time, and the length that moves.

        Args:
            request: see `EndMovementRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_END_MOVEMENT_HTML, options, body=request)

    async def end_movement_pdf(
        self,
        request: EndMovementRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Movement at the end of welded rail, as application/pdf.

        Where welded rail ends at a joint, the force there is no more than the joint holds and the last length of the
        rail breathes. Movement outwards at the hottest and inwards at the coldest rail temperature, each reached from
        the neutral temperature for the first time, and the length that moves.

        Args:
            request: see `EndMovementRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_END_MOVEMENT_PDF, options, body=request)

    async def restraint(
        self,
        request: RestraintRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> RestraintAnswer:
        """Longitudinal restraint by anchors and ballast.

        A zone holds one rail lengthwise with the lesser of what its anchors hold on the rail and what the ballast holds
        of its ties. Against the thermal force of the rail: what the zone holds, what is left over, and the length that
        would hold it all. A zone of 195 ft satisfies the regulation for joints and still lets a heavy rail move on a
        cold night.

        Args:
            request: see `RestraintRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.restraint`: Longitudinal restraint by anchors and ballast.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_RESTRAINT, options, body=request)

    async def restraint_html(
        self,
        request: RestraintRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Longitudinal restraint by anchors and ballast, as text/html.

        A zone holds one rail lengthwise with the lesser of what its anchors hold on the rail and what the ballast holds
        of its ties. Against the thermal force of the rail: what the zone holds, what is left over, and the length that
        would hold it all. A zone of 195 ft satisfies the regulation for joints and still lets a heavy rail move on a
        cold night.

        Args:
            request: see `RestraintRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_RESTRAINT_HTML, options, body=request)

    async def restraint_pdf(
        self,
        request: RestraintRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Longitudinal restraint by anchors and ballast, as application/pdf.

        A zone holds one rail lengthwise with the lesser of what its anchors hold on the rail and what the ballast holds
        of its ties. Against the thermal force of the rail: what the zone holds, what is left over, and the length that
        would hold it all. A zone of 195 ft satisfies the regulation for joints and still lets a heavy rail move on a
        cold night.

        Args:
            request: see `RestraintRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_RESTRAINT_PDF, options, body=request)

    async def curve_load(
        self,
        request: CurveLoadRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> CurveLoadAnswer:
        """Radial load and shift of curves.

        Rail under axial force presses outwards in a curve when hot and inwards when cold, with P / R for each unit of
        length. A curve that has been pulled in has shorter rail room and so a lower neutral temperature; the loads are
        worked with what is left of it. Static: buckling and trains need their own check.

        Args:
            request: see `CurveLoadRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.curve-load`: Radial load and shift of curves.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_CURVE_LOAD, options, body=request)

    async def curve_load_html(
        self,
        request: CurveLoadRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Radial load and shift of curves, as text/html.

        Rail under axial force presses outwards in a curve when hot and inwards when cold, with P / R for each unit of
        length. A curve that has been pulled in has shorter rail room and so a lower neutral temperature; the loads are
        worked with what is left of it. Static: buckling and trains need their own check.

        Args:
            request: see `CurveLoadRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_CURVE_LOAD_HTML, options, body=request)

    async def curve_load_pdf(
        self,
        request: CurveLoadRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Radial load and shift of curves, as application/pdf.

        Rail under axial force presses outwards in a curve when hot and inwards when cold, with P / R for each unit of
        length. A curve that has been pulled in has shorter rail room and so a lower neutral temperature; the loads are
        worked with what is left of it. Static: buckling and trains need their own check.

        Args:
            request: see `CurveLoadRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_CURVE_LOAD_PDF, options, body=request)

    async def buckling(
        self,
        request: BucklingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> BucklingAnswer:
        """Buckling of hot track.

        Two rails as one beam held sideways by a constant resistance. For straight track the lowest rise at which a
        buckled state exists, over four shapes and all lengths; with a line defect the whole path of equilibria, its
        upper rise, at which the track snaps, and its lower rise, below which no buckled state exists; upwards against
        the track's weight. The allowed rise by a named margin rule. Turning stiffness of fastenings, trains and
        vibration are left out. For curves only with a defect that points outwards, and only as far as a finite-element
        witness agreed.

        Args:
            request: see `BucklingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.buckling`: Buckling of hot track.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_BUCKLING, options, body=request)

    async def buckling_svg(
        self,
        request: BucklingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Buckling of hot track, as image/svg+xml.

        Two rails as one beam held sideways by a constant resistance. For straight track the lowest rise at which a
        buckled state exists, over four shapes and all lengths; with a line defect the whole path of equilibria, its
        upper rise, at which the track snaps, and its lower rise, below which no buckled state exists; upwards against
        the track's weight. The allowed rise by a named margin rule. Turning stiffness of fastenings, trains and
        vibration are left out. For curves only with a defect that points outwards, and only as far as a finite-element
        witness agreed.

        Args:
            request: see `BucklingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as image/svg+xml.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_BUCKLING_SVG, options, body=request)

    async def buckling_html(
        self,
        request: BucklingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Buckling of hot track, as text/html.

        Two rails as one beam held sideways by a constant resistance. For straight track the lowest rise at which a
        buckled state exists, over four shapes and all lengths; with a line defect the whole path of equilibria, its
        upper rise, at which the track snaps, and its lower rise, below which no buckled state exists; upwards against
        the track's weight. The allowed rise by a named margin rule. Turning stiffness of fastenings, trains and
        vibration are left out. For curves only with a defect that points outwards, and only as far as a finite-element
        witness agreed.

        Args:
            request: see `BucklingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_BUCKLING_HTML, options, body=request)

    async def buckling_pdf(
        self,
        request: BucklingRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Buckling of hot track, as application/pdf.

        Two rails as one beam held sideways by a constant resistance. For straight track the lowest rise at which a
        buckled state exists, over four shapes and all lengths; with a line defect the whole path of equilibria, its
        upper rise, at which the track snaps, and its lower rise, below which no buckled state exists; upwards against
        the track's weight. The allowed rise by a named margin rule. Turning stiffness of fastenings, trains and
        vibration are left out. For curves only with a defect that points outwards, and only as far as a finite-element
        witness agreed.

        Args:
            request: see `BucklingRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_BUCKLING_PDF, options, body=request)

    async def joint_gap(
        self,
        request: JointGapRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> JointGapAnswer:
        """Gap at bolted joints by rail temperature.

        The gap to leave between rails when laying jointed track: by a table, that of TI 850-02 unless another is given,
        for the rail lengths that it lists, and by thermal expansion up to the temperature at which joints shall close.
        Insulated joints are left only as wide as the end post.

        Args:
            request: see `JointGapRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Answer of the rule `thermal.joint-gap`: Gap at bolted joints by rail temperature.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_JOINT_GAP, options, body=request)

    async def joint_gap_html(
        self,
        request: JointGapRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> str:
        """Gap at bolted joints by rail temperature, as text/html.

        The gap to leave between rails when laying jointed track: by a table, that of TI 850-02 unless another is given,
        for the rail lengths that it lists, and by thermal expansion up to the temperature at which joints shall close.
        Insulated joints are left only as wide as the end post.

        Args:
            request: see `JointGapRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as text/html.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_JOINT_GAP_HTML, options, body=request)

    async def joint_gap_pdf(
        self,
        request: JointGapRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> bytes:
        """Gap at bolted joints by rail temperature, as application/pdf.

        The gap to leave between rails when laying jointed track: by a table, that of TI 850-02 unless another is given,
        for the rail lengths that it lists, and by thermal expansion up to the temperature at which joints shall close.
        Insulated joints are left only as wide as the end post.

        Args:
            request: see `JointGapRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The answer as application/pdf.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            TooLargeError: The request body is too large. Unless the operator says otherwise: A body is read up to
                16,777,216 bytes and 1,000,000 values (413).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            RefusedError: The request is understood but its values are refused (422).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_CALCULATE_JOINT_GAP_PDF, options, body=request)


class AsyncTiePlatesResource:
    """`client.tie_plates`. List tie plates; get one tie plate."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List tie plates.

        Every row of the table of tie plates, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_LIST_TIE_PLATES, options, query={"units": units, "version": version})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one tie plate.

        One tie plate with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _GET_TIE_PLATE,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )


class AsyncTiePlugsResource:
    """`client.tie_plugs`. List tie plugs; get one tie plug."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List tie plugs.

        Every row of the table of tie plugs, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_LIST_TIE_PLUGS, options, query={"units": units, "version": version})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one tie plug.

        One tie plug with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _GET_TIE_PLUG,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )


class AsyncTrackBoltsResource:
    """`client.track_bolts`. List track bolts; get one track bolt."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List track bolts.

        Every row of the table of track bolts, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_LIST_TRACK_BOLTS, options, query={"units": units, "version": version})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one track bolt.

        One track bolt with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _GET_TRACK_BOLT,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )


class AsyncTurnoutsResource:
    """`client.turnouts`. List turnouts; get one turnout."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(
        self,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List turnouts.

        Every row of the table of turnouts, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(_LIST_TURNOUTS, options, query={"units": units, "version": version})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        version: str | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one turnout.

        One turnout with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            version: Version of the catalogue, as its lists and every answer name it. The answer under such an address
                never changes and may be kept for ever; another version than the one in force is not found.
            **options: settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            UnauthorizedError: The request has no key that the service knows. Only where the operator asks for keys
                (401).
            ForbiddenError: The key does not open this resource. Only where the operator asks for keys (403).
            NotFoundError: There is no such resource (404).
            ProblemError: The request did not arrive in time. Unless the operator says otherwise: A header must arrive
                within 15 s and a body within 45 s (408).
            ProblemError: The address of the request is too long. Unless the operator says otherwise: A request target
                is read up to 8,192 bytes (414).
            TooManyRequestsError: Too many requests. Only where the operator asks for keys. Unless the operator says
                otherwise: A key opens 600 requests in 60 s (429).
            ProblemError: The header of the request is too large. Unless the operator says otherwise: A header is read
                up to 32,768 bytes and 100 fields (431).
            ServiceFailedError: The service failed (500).
            UnavailableError: The service cannot take the request now. Unless the operator says otherwise: A worker
                keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms,
                each for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that
                stops is not ready (503).
        """
        return await self._caller.call(
            _GET_TURNOUT,
            options,
            path={"id": id},
            query={"units": units, "version": version},
        )


class AsyncResources:
    """Every resource of the service."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the resources through a caller."""
        self.anchor_patterns: AsyncAnchorPatternsResource = AsyncAnchorPatternsResource(caller)
        self.feature_kinds: AsyncFeatureKindsResource = AsyncFeatureKindsResource(caller)
        self.health: AsyncHealthResource = AsyncHealthResource(caller)
        self.joint_bars: AsyncJointBarsResource = AsyncJointBarsResource(caller)
        self.joint_gap_tables: AsyncJointGapTablesResource = AsyncJointGapTablesResource(caller)
        self.plate_pins: AsyncPlatePinsResource = AsyncPlatePinsResource(caller)
        self.preservatives: AsyncPreservativesResource = AsyncPreservativesResource(caller)
        self.quantities: AsyncQuantitiesResource = AsyncQuantitiesResource(caller)
        self.rail_anchors: AsyncRailAnchorsResource = AsyncRailAnchorsResource(caller)
        self.rail_sections: AsyncRailSectionsResource = AsyncRailSectionsResource(caller)
        self.sections: AsyncRailSectionsResource = self.rail_sections
        self.regulation: AsyncRegulationResource = AsyncRegulationResource(caller)
        self.rulebooks: AsyncRulebooksResource = AsyncRulebooksResource(caller)
        self.rules: AsyncRulesResource = AsyncRulesResource(caller)
        self.section_compatibility: AsyncSectionCompatibilityResource = AsyncSectionCompatibilityResource(caller)
        self.section_properties: AsyncSectionPropertiesResource = AsyncSectionPropertiesResource(caller)
        self.sources: AsyncSourcesResource = AsyncSourcesResource(caller)
        self.spike_patterns: AsyncSpikePatternsResource = AsyncSpikePatternsResource(caller)
        self.spikes: AsyncSpikesResource = AsyncSpikesResource(caller)
        self.strength: AsyncStrengthResource = AsyncStrengthResource(caller)
        self.takeoffs: AsyncTakeoffsResource = AsyncTakeoffsResource(caller)
        self.thermal: AsyncThermalResource = AsyncThermalResource(caller)
        self.tie_plates: AsyncTiePlatesResource = AsyncTiePlatesResource(caller)
        self.tie_plugs: AsyncTiePlugsResource = AsyncTiePlugsResource(caller)
        self.track_bolts: AsyncTrackBoltsResource = AsyncTrackBoltsResource(caller)
        self.turnouts: AsyncTurnoutsResource = AsyncTurnoutsResource(caller)


__all__ = [
    "AnchorPatternsResource",
    "AsyncAnchorPatternsResource",
    "AsyncFeatureKindsResource",
    "AsyncHealthResource",
    "AsyncJointBarsResource",
    "AsyncJointGapTablesResource",
    "AsyncPlatePinsResource",
    "AsyncPreservativesResource",
    "AsyncQuantitiesResource",
    "AsyncRailAnchorsResource",
    "AsyncRailSectionsResource",
    "AsyncRegulationResource",
    "AsyncResources",
    "AsyncRulebooksResource",
    "AsyncRulesResource",
    "AsyncSectionCompatibilityResource",
    "AsyncSectionPropertiesResource",
    "AsyncSourcesResource",
    "AsyncSpikePatternsResource",
    "AsyncSpikesResource",
    "AsyncStrengthResource",
    "AsyncTakeoffsResource",
    "AsyncThermalResource",
    "AsyncTiePlatesResource",
    "AsyncTiePlugsResource",
    "AsyncTrackBoltsResource",
    "AsyncTurnoutsResource",
    "FeatureKindsResource",
    "HealthResource",
    "JointBarsResource",
    "JointGapTablesResource",
    "PlatePinsResource",
    "PreservativesResource",
    "QuantitiesResource",
    "RailAnchorsResource",
    "RailSectionsResource",
    "RegulationResource",
    "Resources",
    "RulebooksResource",
    "RulesResource",
    "SectionCompatibilityResource",
    "SectionPropertiesResource",
    "SourcesResource",
    "SpikePatternsResource",
    "SpikesResource",
    "StrengthResource",
    "TakeoffsResource",
    "ThermalResource",
    "TiePlatesResource",
    "TiePlugsResource",
    "TrackBoltsResource",
    "TurnoutsResource",
]
