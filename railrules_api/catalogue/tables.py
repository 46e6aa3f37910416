"""The tables of the catalogue: one declaration each. A table of values says its columns, a table of patterns its record."""

from __future__ import annotations

from dataclasses import dataclass

from railrules_api.catalogue.model import Column
from railrules_api.domain.kinds import Kind
from railrules_api.domain.patterns import AnchorPattern, FeatureRule, JointGapTable, SpikePattern


@dataclass(frozen=True, slots=True)
class Plan:
    """How a table is read.

    Attributes:
        id: the table's name.
        file: CSV (with a TOML file of the same name beside it) or TOML.
        columns: what a row may have.
        record: the described record that every row carries; None for a table of values.
    """

    id: str
    file: str
    columns: tuple[Column, ...] = ()
    record: type | None = None


def _length(name: str, about: str, *, required: bool = False) -> Column:
    return Column(name, about, kind=Kind.LENGTH, required=required)


RAIL_SECTIONS = Plan(
    "rail-sections",
    "rail_sections.csv",
    (
        Column("standard", "Standard or figure that sets the section.", "text", required=True),
        Column("grade", "A: read and confirmed; B: partly read, the rest confirmed; C: from memory.", "text", required=True),
        Column("mass_nominal", "Mass per length that the name speaks of.", kind=Kind.MASS_PER_LENGTH),
        Column("mass_per_length", "Calculated mass per length.", kind=Kind.MASS_PER_LENGTH),
        _length("height", "Height.", required=True),
        _length("base_width", "Width of the base.", required=True),
        _length("head_width", "Width of the head, nominal."),
        _length("web", "Thickness of the web at its thinnest."),
        _length("head_depth", "Depth of the head on the centre line, to the fishing plane."),
        _length("fishing_height", "Distance of the fishing planes on the centre line."),
        _length("base_depth", "Depth of the base on the centre line, to the fishing plane."),
        Column("area", "Cross-section.", kind=Kind.AREA),
        Column("area_head", "Part of the cross-section above the upper fishing plane.", kind=Kind.AREA),
        Column("area_web", "Part of the cross-section between the fishing planes.", kind=Kind.AREA),
        Column("area_base", "Part of the cross-section below the lower fishing plane.", kind=Kind.AREA),
        Column("second_moment", "Second moment of area about the horizontal axis.", kind=Kind.SECOND_MOMENT),
        Column("section_modulus_head", "Section modulus at the top of the head.", kind=Kind.SECTION_MODULUS),
        Column("section_modulus_base", "Section modulus at the bottom of the base.", kind=Kind.SECTION_MODULUS),
        _length("neutral_axis", "Height of the neutral axis above the bottom of the base."),
        Column("second_moment_lateral", "Second moment of area about the vertical axis.", kind=Kind.SECOND_MOMENT),
        Column(
            "section_modulus_lateral_head",
            "Lateral section modulus at the edge of the head.",
            kind=Kind.SECTION_MODULUS,
        ),
        Column(
            "section_modulus_lateral_base",
            "Lateral section modulus at the edge of the base.",
            kind=Kind.SECTION_MODULUS,
        ),
        Column("torsion_constant", "Torsion constant.", kind=Kind.SECOND_MOMENT),
        _length("shear_centre", "Height of the shear centre above the bottom of the base."),
        _length("hole_height", "Height of the bolt holes above the bottom of the base."),
        _length("hole_diameter", "Diameter of the bolt holes."),
        Column("drilling", "Distance of the first hole from the rail end, then from hole to hole.", "text"),
    ),
)
TIE_PLATES = Plan(
    "tie-plates",
    "tie_plates.csv",
    (
        Column("plan", "Plan number, where the source gives one.", "text"),
        Column("shoulders", "Single or double shoulder.", "text", required=True),
        _length("base_width_least", "Narrowest rail base it takes.", required=True),
        _length("base_width_most", "Widest rail base it takes.", required=True),
        _length("length", "Length, across the track.", required=True),
        _length("width", "Width, along the track."),
        Column("mass", "Mass of one plate.", kind=Kind.MASS, required=True),
    ),
)
SPIKES = Plan(
    "spikes",
    "spikes.csv",
    (
        _length("length", "Length under the head.", required=True),
        _length("side", "Side of the square shank; diameter over the thread of a screw spike.", required=True),
        Column("keg_mass", "Mass of a keg.", kind=Kind.MASS),
        Column("count_per_keg", "Spikes in a keg.", "count"),
        Column("mass", "Mass of one spike.", kind=Kind.MASS, required=True, quotient=("keg_mass", "count_per_keg")),
    ),
)
JOINT_BARS = Plan(
    "joint-bars",
    "joint_bars.csv",
    (
        Column("fits", "Rail sections it fits.", "texts", required=True),
        Column("holes", "Bolt holes, that is bolts to a joint.", "count"),
        _length("length", "Length."),
        Column("mass", "Mass of one bar.", kind=Kind.MASS),
        Column("mass_pair", "Mass of a pair of bars, where the source gives that.", kind=Kind.MASS),
    ),
)
TIE_PLUGS = Plan(
    "tie-plugs",
    "tie_plugs.toml",
    (
        _length("side", "Side of the square shank.", required=True),
        Column("count_per_bundle", "Plugs in a bundle.", "count", required=True),
        Column("count_per_stick", "Plugs in a stick.", "count"),
    ),
)
RAIL_ANCHORS = Plan(
    "rail-anchors",
    "rail_anchors.toml",
    (
        Column("mass", "Mass of one anchor.", kind=Kind.MASS),
        Column("count_per_bag", "Anchors in a bag.", "count"),
        Column("slip_force", "Longitudinal force that it must hold.", kind=Kind.FORCE),
    ),
)
PLATE_PINS = Plan(
    "plate-pins",
    "plate_pins.toml",
    (
        _length("diameter", "Diameter of the shank."),
        _length("length", "Length under the head."),
        Column("mass", "Mass of one pin.", kind=Kind.MASS),
        Column("count_per_package", "Pins in a package.", "count"),
    ),
)
TRACK_BOLTS = Plan(
    "track-bolts",
    "track_bolts.toml",
    (
        _length("diameter", "Diameter."),
        _length("length", "Length under the head."),
        Column("mass", "Mass of one bolt with its nut.", kind=Kind.MASS, quotient=("keg_mass", "count_per_keg")),
        Column("keg_mass", "Mass of a keg.", kind=Kind.MASS),
        Column("count_per_keg", "Bolts with nuts in a keg.", "count"),
    ),
)
PRESERVATIVES = Plan(
    "preservatives",
    "preservatives.toml",
    (
        Column("coverage_rough", "Area a volume covers on rough wood, one coat.", kind=Kind.COVERAGE),
        Column("coverage_smooth", "Area a volume covers on smooth wood, one coat.", kind=Kind.COVERAGE),
        Column("coverage_smooth_most", "The same at best.", kind=Kind.COVERAGE),
        Column("coverage_spray", "Area a volume covers when sprayed, one coat.", kind=Kind.COVERAGE),
        Column("coats", "Coats asked for.", "count"),
        Column("between_coats", "Time between coats.", kind=Kind.DURATION),
        Column("drum_volume", "Volume of a drum.", kind=Kind.VOLUME),
    ),
)
TURNOUTS = Plan(
    "turnouts",
    "turnouts.toml",
    (
        Column("turnout_number", "Number of the frog.", "number", required=True),
        Column("degree", "Degree of the closure curve, where the source gives that.", kind=Kind.ANGLE),
        _length("radius", "Radius of the closure curve, middle of the track, where the source gives that."),
    ),
)
SPIKE_PATTERNS = Plan("spike-patterns", "spike_patterns.toml", record=SpikePattern)
ANCHOR_PATTERNS = Plan("anchor-patterns", "anchor_patterns.toml", record=AnchorPattern)
FEATURE_KINDS = Plan("feature-kinds", "feature_kinds.toml", record=FeatureRule)
JOINT_GAP_TABLES = Plan("joint-gap-tables", "joint_gap_tables.toml", record=JointGapTable)

PLANS: tuple[Plan, ...] = (
    RAIL_SECTIONS,
    TIE_PLATES,
    SPIKES,
    JOINT_BARS,
    TIE_PLUGS,
    RAIL_ANCHORS,
    PLATE_PINS,
    TRACK_BOLTS,
    PRESERVATIVES,
    TURNOUTS,
    SPIKE_PATTERNS,
    ANCHOR_PATTERNS,
    FEATURE_KINDS,
    JOINT_GAP_TABLES,
)
PATTERNS: dict[str, Plan] = {plan.id: plan for plan in PLANS if plan.record is not None}
"""The tables to which a house rulebook can add rows."""
