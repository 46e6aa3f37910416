"""Properties of a rail section from its true geometry, new or worn, and how they agree with the printed ones."""

from __future__ import annotations

from contextlib import contextmanager
from dataclasses import fields, replace
from functools import lru_cache
from typing import TYPE_CHECKING, NamedTuple

from railrules_api.domain.amounts import Amount
from railrules_api.domain.errors import Refusal, RefusedError, refuse
from railrules_api.domain.kinds import Kind
from railrules_api.domain.profile.builder import build_outline
from railrules_api.domain.profile.comparison import compare
from railrules_api.domain.profile.outline import FEWEST_POINTS, Outline, outline_from_points
from railrules_api.domain.profile.parameters import ProfileParameters
from railrules_api.domain.profile.properties import SectionProperties, mass_per_length, section_properties
from railrules_api.domain.profile.torsion import PIECES, TorsionProperties, torsion_properties
from railrules_api.domain.profile.wear import FaceWear, Side, replace_head, wear_head
from railrules_api.rules.common import OWN_STANDARDS
from railrules_api.rules.model import Caution, Cite, Formula, Rule
from railrules_api.rules.sections.section_records import (
    PrintedComparison,
    SectionFigures,
    SectionPoint,
    SectionPropertiesInput,
    SectionPropertiesResult,
    SectionShape,
    Torsion,
    WearLoss,
)

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

MOST_TORSION_POINTS = 250
"""Outlines of more elements are not solved for torsion: the system grows with their square, the time with their cube."""


_KINDS: Mapping[str, Kind] = {
    "mass_per_length": Kind.MASS_PER_LENGTH,
    "area": Kind.AREA,
    "area_head": Kind.AREA,
    "area_web": Kind.AREA,
    "area_base": Kind.AREA,
    "neutral_axis": Kind.LENGTH,
    "second_moment": Kind.SECOND_MOMENT,
    "section_modulus_head": Kind.SECTION_MODULUS,
    "section_modulus_base": Kind.SECTION_MODULUS,
    "second_moment_lateral": Kind.SECOND_MOMENT,
    "section_modulus_lateral_head": Kind.SECTION_MODULUS,
    "section_modulus_lateral_base": Kind.SECTION_MODULUS,
    "torsion_constant": Kind.SECOND_MOMENT,
    "shear_centre": Kind.LENGTH,
}
_MEASURES = frozenset(field.name for field in fields(ProfileParameters))


# ---------------------------------------------------------------- refusals in the caller's own words


@contextmanager
def _points_named(field: str, inner: str) -> Iterator[None]:
    """Turn the number of a point, counted from 1, into its place in the list, and keep the number in the reason."""
    try:
        yield
    except RefusedError as error:
        raise RefusedError(*(_point_refusal(refusal, field, inner) for refusal in error.refusals)) from error


def _point_refusal(refusal: Refusal, field: str, inner: str) -> Refusal:
    path, reason = refusal.path, refusal.reason
    if path[:1] != (inner,):
        return refusal
    if len(path) > 1 and isinstance(path[1], int):
        return replace(refusal, path=(field, path[1] - 1), reason=f"point {path[1]}: {reason}")
    return replace(refusal, path=(field,))


@contextmanager
def _measures_named() -> Iterator[None]:
    """Put the refusals of the builder under `profile`; a fault between groups of measures stands at the profile itself."""
    try:
        yield
    except RefusedError as error:
        found = []
        for refusal in error.refusals:
            if refusal.path and refusal.path[0] in _MEASURES:
                found.append(replace(refusal, path=("profile", *refusal.path)))
            else:
                where = " ".join(map(str, refusal.path))
                found.append(replace(refusal, path=("profile",), reason=f"{where}: {refusal.reason}"))
        raise RefusedError(*found) from error


@contextmanager
def _wear_named() -> Iterator[None]:
    names = {"vertical": "vertical_wear", "faces": "face_wear"}
    try:
        yield
    except RefusedError as error:
        raise RefusedError(
            *(
                replace(refusal, path=(names.get(str(refusal.path[0]), refusal.path[0]), *refusal.path[1:]))
                for refusal in error.refusals
            )
        ) from error


# ---------------------------------------------------------------- outlines


@lru_cache(maxsize=256)
def drawn(profile: ProfileParameters) -> tuple[Outline, SectionProperties]:
    """Return the outline of a drawing and its properties; the same drawings are asked for again and again.

    Raises:
        RefusedError: measures that contradict each other.
    """
    outline = build_outline(profile)
    return outline, section_properties(outline)


@lru_cache(maxsize=256)
def torsion_of(outline: Outline) -> TorsionProperties:
    """Return torsion constant and shear centre of an outline, which take long enough to be kept.

    Raises:
        RefusedError: the outline has too many elements.
    """
    count = len(outline.elements)
    if count > MOST_TORSION_POINTS:
        reason = f"torsion is solved for outlines of at most {MOST_TORSION_POINTS} lines and arcs"
        raise refuse("torsion", reason=reason, value=count, maximum=float(MOST_TORSION_POINTS))
    # Both divisions must be finer than the outline itself, or their distance would say nothing of the error.
    return torsion_properties(outline, max(PIECES, 2 * count))


def _points(given: tuple[SectionPoint, ...]) -> tuple[tuple[float, float], ...]:
    return tuple((point.x, point.y) for point in given)


def _drawn(given: SectionShape) -> tuple[Outline, SectionProperties] | tuple[None, None]:
    if given.profile is None:
        return None, None
    with _measures_named():
        return drawn(given.profile)


def _worn_outline(given: SectionShape, new: Outline | None) -> Outline | None:
    """Return the outline as it is now; None where it is the new one."""
    amounts = given.vertical_wear is not None or bool(given.face_wear)
    ways = [name for name, used in (("outline", given.outline), ("measured_head", given.measured_head)) if used]
    if amounts:
        ways.append("vertical_wear" if given.vertical_wear is not None else "face_wear")
    if len(ways) > 1:
        raise refuse(ways[1], reason=f"wear is given twice: give {' or '.join(ways)}")
    if given.outline:
        with _points_named("outline", "outline"):
            return outline_from_points(_points(given.outline))
    if new is None:
        if ways:
            raise refuse(ways[0], reason="wear needs the new section: give `section` or `profile`")
        raise refuse("profile", reason=f"missing; give a section, its measures, or an outline of {FEWEST_POINTS} points or more")
    if given.measured_head:
        # A head of too few points fails as a chain, and a crossing is numbered along the whole outline.
        with _points_named("measured_head", "points"):
            return _measured(new, given)
    if amounts:
        faces = [
            FaceWear(side=Side(face.side), amount=face.amount, angle=face.angle, gage_depth=face.gage_depth)
            for face in given.face_wear
        ]
        with _wear_named():
            return wear_head(new, given.vertical_wear or 0.0, faces)
    return None


def _measured(new: Outline, given: SectionShape) -> Outline:
    try:
        return replace_head(new, _points(given.measured_head), given.measuring_tolerance)
    except RefusedError as error:
        raise RefusedError(
            *(
                replace(refusal, path=("measured_head",)) if refusal.path[:1] == ("outline",) else refusal
                for refusal in error.refusals
            )
        ) from error


class Shapes(NamedTuple):
    """A section as it is now and as it was.

    Attributes:
        now: outline and properties as it is now.
        new: those of the new section; None where the caller gave points alone.
        worn: whether the two differ.
    """

    now: tuple[Outline, SectionProperties]
    new: tuple[Outline, SectionProperties] | None
    worn: bool


def shapes_of(given: SectionShape) -> Shapes:
    """Return the outlines of a section, new and as it is now, with their properties.

    Raises:
        RefusedError: as `evaluate`.
    """
    outline, properties = _drawn(given)
    worn = _worn_outline(given, outline)
    new = None if outline is None or properties is None else (outline, properties)
    if worn is None:
        assert new is not None  # without either outline the question is refused
        return Shapes(new, new, worn=False)
    now = section_properties(worn)
    if properties is not None and now.area - properties.area > given.measuring_tolerance * properties.perimeter:
        # Points of an unworn rail may lie outside it by as much as they are accurate, all the way round.
        raise refuse(
            "outline",
            reason="holds more steel than the new section: another section, or another unit",
            value=now.area,
            maximum=properties.area,
        )
    return Shapes((worn, now), new, worn=new is not None)


# ---------------------------------------------------------------- figures


def _figures(outline: Outline, found: SectionProperties, given: SectionPropertiesInput) -> SectionFigures:
    parts = found.parts
    twisting = None
    if given.torsion:
        solved = torsion_of(outline)
        twisting = Torsion(
            torsion_constant=solved.torsion_constant,
            shear_centre=solved.shear_centre_height,
            shear_centre_offset=solved.shear_centre_offset,
            relative_error=solved.relative_error,
        )
    return SectionFigures(
        area=found.area,
        area_head=None if parts is None else parts.head,
        area_web=None if parts is None else parts.web,
        area_base=None if parts is None else parts.base,
        height=found.height,
        width=found.width,
        neutral_axis=found.centroid_height,
        centroid_offset=found.centroid_offset,
        second_moment=found.second_moment_horizontal,
        second_moment_lateral=found.second_moment_vertical,
        product_of_inertia=found.product_of_inertia,
        section_modulus_head=found.section_modulus_head,
        section_modulus_base=found.section_modulus_base,
        section_modulus_lateral_head=found.lateral_modulus_head,
        section_modulus_lateral_base=found.lateral_modulus_base,
        perimeter=found.perimeter,
        mass_per_length=mass_per_length(found.area, given.density),
        force_per_degree=given.elastic_modulus * given.expansion * found.area,
        torsion=twisting,
    )


def _loss(new: SectionFigures, now: SectionFigures, given: SectionPropertiesInput) -> WearLoss:
    lost = new.area - now.area
    assert new.area_head is not None  # the parts of a drawing are known
    return WearLoss(
        area_lost=lost,
        head_area_lost_share=lost / new.area_head,
        mass_lost_per_length=lost * given.density,
        height_lost=new.height - now.height,
        area_left_share=now.area / new.area,
        second_moment_left_share=now.second_moment / new.second_moment,
        second_moment_lateral_left_share=now.second_moment_lateral / new.second_moment_lateral,
        section_modulus_head_left_share=now.section_modulus_head / new.section_modulus_head,
        section_modulus_base_left_share=now.section_modulus_base / new.section_modulus_base,
    )


def _comparison(new: SectionFigures, given: SectionPropertiesInput) -> tuple[PrintedComparison, ...]:
    computed: dict[str, float] = {}
    for name in _KINDS:
        value = getattr(new.torsion if name in ("torsion_constant", "shear_centre") else new, name, None)
        if value is not None:
            computed[name] = value
    printed = {name: value for name in _KINDS if (value := getattr(given, f"printed_{name}")) is not None}
    return tuple(
        PrintedComparison(
            property=item.name,
            printed=Amount(item.published, _KINDS[item.name]),
            computed=Amount(item.computed, _KINDS[item.name]),
            difference=item.relative,
            agrees=item.within(given.agreement),
        )
        for item in compare(printed, computed)
    )


def _notes(given: SectionPropertiesInput, comparison: tuple[PrintedComparison, ...], now: SectionFigures) -> Iterator[str]:
    for item in comparison:
        if not item.agrees:
            way = "above" if item.difference > 0.0 else "below"
            yield (
                f"{item.property}: the outline gives {100 * abs(item.difference):.2f} % {way} the printed value, beyond the "
                f"{100 * given.agreement:.2f} % asked for. Print may be rounded, remembered or of another edition."
            )
    if now.area_head is None:
        yield "Head, web and base of a section given by points are not told apart, so their areas are left out."


def evaluate(given: SectionPropertiesInput) -> SectionPropertiesResult:
    """Return the properties of the section as it is now, what wear has taken, and how the new one agrees with print.

    Raises:
        RefusedError: measures that contradict each other, an outline that bounds no section, wear that the head does not hold, or
            no section at all.
    """
    shapes = shapes_of(given)
    now = _figures(*shapes.now, given)
    new = _figures(*shapes.new, given) if shapes.new is not None and shapes.worn else None
    loss = None if new is None else _loss(new, now, given)
    comparison = _comparison(new or now, given)
    return SectionPropertiesResult(
        section=now,
        new=new,
        loss=loss,
        comparison=comparison,
        notes=tuple(_notes(given, comparison, now)),
    )


RULE = Rule(
    id="sections.properties",
    resource="section-properties",
    title="Properties of a rail section, new or worn",
    summary=(
        "Area, centroid, second moments, section moduli, perimeter, mass and thermal force per degree of a rail section, "
        "integrated in closed form over its lines and arcs. The section is one of the catalogue, or has its own measures, or "
        "measured points. "
        "Wear is vertical, of a face, or measured; what it leaves is integrated in the same way. Head, web and base are divided "
        "along the fishing planes, so fillets count as web. Torsion constant and shear centre, on demand, come from the boundary "
        "integral of the warping function, extrapolated from two divisions whose distance is stated. The new section is compared "
        "with printed values."
    ),
    formulas=(
        Formula("section", "A = 1/2 contour integral of (x dy - y dx), exact on lines and arcs", exact=False),
        Formula("section", "I_x = -1/3 contour integral of y^3 dx - A y_0^2; I_y likewise", exact=False),
        Formula("section", "Z_h = I_x / (h - y_0), Z_b = I_x / y_0, m = rho A, P_1 = E alpha A", exact=False),
        Formula("loss", "new less worn", exact=False),
        Formula("comparison", "computed over printed, less 1", exact=False),
    ),
    cites=(
        Cite(
            "geometry", "Green's theorem: area and its moments as contour integrals, closed on lines and circular arcs", "derived"
        ),
        Cite(
            "strength-of-materials",
            "parallel axes; warping function of Saint-Venant torsion; restrained thermal strain",
            "derived",
        ),
    ),
    input=SectionPropertiesInput,
    output=SectionPropertiesResult,
    evaluate=evaluate,
    cautions=(
        Caution(
            code="outline-from-drawing",
            text=(
                "Computed from nominal measures. Rolling tolerances, and radii that were fitted or remembered (the sources of "
                "the profile say which), are not in the figures. Not for making tools or gauges."
            ),
            cite=Cite("geometry", "many sets of radii give the same area and second moments", "derived"),
        ),
        Caution(
            code="wear-is-not-strength",
            text=(
                "The figures tell what steel is left. Whether a worn rail may stay in track is settled by the railroad's wear "
                "limits and by inspection for defects, not by its section modulus alone."
            ),
            cite=Cite("common-practice", "wear limits are set by each railroad", "common-practice"),
        ),
        OWN_STANDARDS,
    ),
)
