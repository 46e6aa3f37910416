"""What a question about a section says, and what an answer holds."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Literal

from railrules_api.domain.amounts import SMALL, Amount
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.profile.parameters import ProfileParameters
from railrules_api.domain.profile.wear import STEEPEST_FACE
from railrules_api.rules.common import ElasticModulus, Expansion

_LARGEST = 1.0


@dataclass(frozen=True, slots=True)
class SectionPoint:
    """A point of a section, seen along the track."""

    x: Annotated[float, Field("To the right of the middle of the base.", kind=Kind.LENGTH, at_least=-_LARGEST, at_most=_LARGEST)]
    y: Annotated[float, Field("Above the bottom of the base.", kind=Kind.LENGTH, at_least=-_LARGEST, at_most=_LARGEST)]


@dataclass(frozen=True, slots=True, kw_only=True)
class WornFace:
    """Wear of one face of the head, measured on the new section."""

    side: Annotated[Literal["left", "right"], Field("The worn side, as drawn.")]
    amount: Annotated[float, Field("Horizontal loss at the gage line; 0 for none.", kind=Kind.LENGTH, at_least=0.0, at_most=0.1)]
    angle: Annotated[
        float,
        Field(
            "Lean of the worn face from the vertical, towards the middle of the head going up.",
            kind=Kind.ANGLE, at_least=0.0, at_most=STEEPEST_FACE,
        ),
    ]  # fmt: skip
    gage_depth: Annotated[
        float,
        Field(
            "Depth of the gage line below the top of the new rail.",
            kind=Kind.LENGTH, above=0.0, at_most=0.1, default="gage-line-depth",
        ),
    ]  # fmt: skip


def _printed(about: str, kind: Kind, column: str) -> Field:
    about = f"Printed, to compare with: {about}."
    return Field(about, kind=kind, above=0.0, at_most=200.0, taken=Taken("section", "rail-sections", column))


@dataclass(frozen=True, slots=True, kw_only=True)
class SectionShape:
    """A section by its drawing or its points, and what wear has taken."""

    profile: Annotated[
        ProfileParameters | None,
        Field("Measures of the new section; left out: the outline alone.", taken=Taken("section", "rail-profiles")),
    ] = None
    outline: Annotated[
        tuple[SectionPoint, ...],
        Field(
            "Measured points of the whole section, counter-clockwise, the first not repeated: the section as it is now, or a "
            "section that has no drawing.",
            most_items=2000, one_unit=True,
        ),
    ] = ()  # fmt: skip
    vertical_wear: Annotated[float | None, Field("Depth of vertical head wear.", kind=Kind.LENGTH, at_least=0.0, at_most=0.1)] = (
        None
    )
    face_wear: Annotated[tuple[WornFace, ...], Field("Wear of the faces of the head, at most one a side.", most_items=2)] = ()
    measured_head: Annotated[
        tuple[SectionPoint, ...],
        Field(
            "Measured points over the worn head, from right to left, in place of amounts of wear.", most_items=2000, one_unit=True
        ),
    ] = ()
    measuring_tolerance: Annotated[
        float,
        Field("Accuracy of measured points.", kind=Kind.LENGTH, at_least=0.0, at_most=0.01, default="measuring-tolerance"),
    ]


@dataclass(frozen=True, slots=True, kw_only=True)
class SectionPropertiesInput(SectionShape):
    """A section, the steel it is of, and what is printed of it."""

    density: Annotated[
        float,
        Field(
            "Density of the steel, that of the section's own standard.", kind=Kind.DENSITY, symbol="rho",
            at_least=7000.0, at_most=8500.0, taken=Taken("section", "rail-profiles", "density"),
        ),
    ]  # fmt: skip
    elastic_modulus: ElasticModulus
    expansion: Expansion
    torsion: Annotated[
        bool | None, Field("Compute torsion constant and shear centre too, which takes a few tenths of a second.")
    ] = None
    agreement: Annotated[
        float,
        Field(
            "Share by which computed and printed values may differ before a note says so.",
            at_least=0.0, at_most=0.1, default="section-agreement",
        ),
    ]  # fmt: skip
    printed_mass_per_length: Annotated[float | None, _printed("mass per length", Kind.MASS_PER_LENGTH, "mass_per_length")] = None
    printed_area: Annotated[float | None, _printed("cross-section", Kind.AREA, "area")] = None
    printed_area_head: Annotated[float | None, _printed("area of the head", Kind.AREA, "area_head")] = None
    printed_area_web: Annotated[float | None, _printed("area of the web", Kind.AREA, "area_web")] = None
    printed_area_base: Annotated[float | None, _printed("area of the base", Kind.AREA, "area_base")] = None
    printed_neutral_axis: Annotated[float | None, _printed("height of the neutral axis", Kind.LENGTH, "neutral_axis")] = None
    printed_second_moment: Annotated[float | None, _printed("second moment", Kind.SECOND_MOMENT, "second_moment")] = None
    printed_section_modulus_head: Annotated[
        float | None, _printed("section modulus, head", Kind.SECTION_MODULUS, "section_modulus_head")
    ] = None
    printed_section_modulus_base: Annotated[
        float | None, _printed("section modulus, base", Kind.SECTION_MODULUS, "section_modulus_base")
    ] = None
    printed_second_moment_lateral: Annotated[
        float | None, _printed("lateral second moment", Kind.SECOND_MOMENT, "second_moment_lateral")
    ] = None
    printed_section_modulus_lateral_head: Annotated[
        float | None, _printed("lateral section modulus, head", Kind.SECTION_MODULUS, "section_modulus_lateral_head")
    ] = None
    printed_section_modulus_lateral_base: Annotated[
        float | None, _printed("lateral section modulus, base", Kind.SECTION_MODULUS, "section_modulus_lateral_base")
    ] = None
    printed_torsion_constant: Annotated[float | None, _printed("torsion constant", Kind.SECOND_MOMENT, "torsion_constant")] = None
    printed_shear_centre: Annotated[float | None, _printed("height of the shear centre", Kind.LENGTH, "shear_centre")] = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Torsion:
    """Resistance to twisting."""

    torsion_constant: Annotated[float, Field("Torsion constant.", kind=Kind.SECOND_MOMENT, symbol="J")]
    shear_centre: Annotated[
        float, Field("Height of the shear centre above the bottom of the base.", kind=Kind.LENGTH, answer=SMALL)
    ]
    shear_centre_offset: Annotated[
        float,
        Field("Shear centre to the right of the drawing's vertical axis; 0 for a new rail.", kind=Kind.LENGTH, answer=SMALL),
    ]
    relative_error: Annotated[
        float,
        Field("Distance of the two solutions from which the constant is extrapolated, over it; an estimate, and no bound."),
    ]


@dataclass(frozen=True, slots=True, kw_only=True)
class SectionFigures:
    """Properties of one section about its own centroid."""

    area: Annotated[float, Field("Cross-section.", kind=Kind.AREA, symbol="A")]
    area_head: Annotated[float | None, Field("Part above the fishing planes of the head.", kind=Kind.AREA)] = None
    area_web: Annotated[float | None, Field("Part between the fishing planes, fillets with it.", kind=Kind.AREA)] = None
    area_base: Annotated[float | None, Field("Part below the fishing planes of the base.", kind=Kind.AREA)] = None
    height: Annotated[float, Field("Lowest to highest point.", kind=Kind.LENGTH, symbol="h", answer=SMALL)]
    width: Annotated[float, Field("Leftmost to rightmost point.", kind=Kind.LENGTH, answer=SMALL)]
    neutral_axis: Annotated[
        float, Field("Height of the centroid above the bottom of the base.", kind=Kind.LENGTH, symbol="y_0", answer=SMALL)
    ]
    centroid_offset: Annotated[
        float,
        Field("Centroid to the right of the drawing's vertical axis; 0 for a new rail.", kind=Kind.LENGTH, answer=SMALL),
    ]
    second_moment: Annotated[
        float, Field("Second moment of area about the horizontal axis.", kind=Kind.SECOND_MOMENT, symbol="I_x")
    ]
    second_moment_lateral: Annotated[
        float, Field("Second moment of area about the vertical axis.", kind=Kind.SECOND_MOMENT, symbol="I_y")
    ]
    product_of_inertia: Annotated[float, Field("Product of inertia; 0 for a new rail.", kind=Kind.SECOND_MOMENT, symbol="I_xy")]
    section_modulus_head: Annotated[
        float, Field("Section modulus at the highest point.", kind=Kind.SECTION_MODULUS, symbol="Z_h")
    ]
    section_modulus_base: Annotated[float, Field("Section modulus at the lowest point.", kind=Kind.SECTION_MODULUS, symbol="Z_b")]
    section_modulus_lateral_head: Annotated[
        float | None, Field("Lateral section modulus at the outermost point of the head.", kind=Kind.SECTION_MODULUS)
    ] = None
    section_modulus_lateral_base: Annotated[
        float, Field("Lateral section modulus at the edge of the base.", kind=Kind.SECTION_MODULUS)
    ]
    perimeter: Annotated[float, Field("Length of the outline.", kind=Kind.LENGTH, answer=SMALL)]
    mass_per_length: Annotated[float, Field("Mass per length.", kind=Kind.MASS_PER_LENGTH, symbol="m")]
    force_per_degree: Annotated[
        float, Field("Thermal force of restrained rail per degree.", kind=Kind.FORCE_PER_TEMPERATURE, symbol="P_1")
    ]
    torsion: Annotated[Torsion | None, Field("Resistance to twisting, where it was asked for.")] = None


@dataclass(frozen=True, slots=True, kw_only=True)
class WearLoss:
    """What wear has taken, and the shares that are left."""

    area_lost: Annotated[float, Field("New less worn area.", kind=Kind.AREA)]
    head_area_lost_share: Annotated[float, Field("The same over the area of the new head.")]
    mass_lost_per_length: Annotated[float, Field("Mass lost per length.", kind=Kind.MASS_PER_LENGTH)]
    height_lost: Annotated[float, Field("New less worn height.", kind=Kind.LENGTH, answer=SMALL)]
    area_left_share: Annotated[float, Field("Worn over new area.")]
    second_moment_left_share: Annotated[float, Field("Worn over new second moment about the horizontal axis.")]
    second_moment_lateral_left_share: Annotated[float, Field("Worn over new second moment about the vertical axis.")]
    section_modulus_head_left_share: Annotated[float, Field("Worn over new section modulus at the top of the head.")]
    section_modulus_base_left_share: Annotated[float, Field("Worn over new section modulus at the bottom of the base.")]


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintedComparison:
    """A printed value beside the computed one."""

    property: Annotated[str, Field("The property.")]
    printed: Annotated[Amount, Field("As printed.", answer=SMALL)]
    computed: Annotated[Amount, Field("From the outline.", answer=SMALL)]
    difference: Annotated[float, Field("Computed less printed, over printed: 0.01 is one percent.")]
    agrees: Annotated[bool, Field("The difference lies within the agreement asked for.")]


@dataclass(frozen=True, slots=True, kw_only=True)
class SectionPropertiesResult:
    """The section as it is now, the new one beside it where it is worn, and the printed values."""

    section: Annotated[SectionFigures, Field("The section as it is now.")]
    new: Annotated[SectionFigures | None, Field("The new section; left out where nothing is worn.")] = None
    loss: Annotated[WearLoss | None, Field("What wear has taken; left out where nothing is worn.")] = None
    comparison: Annotated[
        tuple[PrintedComparison, ...], Field("The new section against printed values, as far as they are known.")
    ]
    notes: Annotated[tuple[str, ...], Field("Where geometry and print disagree, and what else to know.")]
