"""The profile of a rail section: a drawing, its points, or a file for a drawing program, new or worn."""

from __future__ import annotations

import base64
import hashlib
import math
from typing import TYPE_CHECKING, Annotated, Literal

import msgspec
from msgspec import UNSET, Meta, UnsetType

from railrules_api.api.answering import writer_of
from railrules_api.api.catalogue_pages import catalogue_reply, number_asked, system_asked
from railrules_api.api.envelope import Citation
from railrules_api.api.operations import Parameter, Reply
from railrules_api.api.problems import ProblemError
from railrules_api.api.wire import LINES, answer_type, quantity_type
from railrules_api.catalogue.outlines import FITTINGS, HOLES
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.kinds import Kind
from railrules_api.domain.profile.compatibility import Drilling
from railrules_api.domain.profile.flatten import SMALLEST_CHORD_ERROR, flatten
from railrules_api.domain.profile.parameters import ProfileParameters
from railrules_api.domain.profile.wear import FaceWear, Side, wear_head
from railrules_api.drawing.dxf import profile_dxf
from railrules_api.drawing.marks import STYLE
from railrules_api.drawing.profile import ProfileSheet, draw_profile
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from railrules_api.api.operations import Asked
    from railrules_api.api.service import Service
    from railrules_api.catalogue.outlines import RailProfile
    from railrules_api.domain.profile.elements import Point
    from railrules_api.domain.profile.outline import Outline
    from railrules_api.drawing.marks import LengthUnit

SVG, JSON, DXF = "image/svg+xml", "application/json", "image/vnd.dxf"
MEDIA_TYPES = (SVG, JSON, DXF)
_CHORD_ERROR = 0.00001
"""Chord error of the points where none is asked for [m]: a hundredth of a millimetre, far below rolling tolerances."""
_LARGEST_CHORD_ERROR = 0.005
# The sheet carries its style within; the policy names that very style and allows nothing else.
_STYLE_DIGEST = base64.b64encode(hashlib.sha256(STYLE.encode()).digest()).decode()
_POLICY = f"default-src 'none'; style-src 'sha256-{_STYLE_DIGEST}'; frame-ancestors 'none'"

PARAMETERS = (
    Parameter(
        "chord_error", "query",
        "Greatest distance between the outline and the lines through its points, in the units asked for; JSON only.",
        {"type": "number", "exclusiveMinimum": 0, "maximum": 5},
    ),
    Parameter(
        "vertical_wear", "query", "Depth of vertical head wear laid over the new section, in the units asked for.",
        {"type": "number", "minimum": 0, "maximum": 100},
    ),
    Parameter(
        "face_wear", "query", "Horizontal loss of one face at the gage line, in the units asked for.",
        {"type": "number", "minimum": 0, "maximum": 100},
    ),
    Parameter(
        "face_angle", "query", "Lean of the worn face from the vertical, in degrees; upright when left out.",
        {"type": "number", "minimum": 0, "maximum": 60},
    ),
    Parameter(
        "face_side", "query", "The worn side, as drawn; left when left out.", {"type": "string", "enum": ["left", "right"]}
    ),
)  # fmt: skip


class OutlinePoint(msgspec.Struct, frozen=True):
    """A point of the outline, in the unit of the outline."""

    x: Annotated[float, Meta(ge=-1e6, le=1e6, description="To the right of the middle of the base.")]
    y: Annotated[float, Meta(ge=-1e6, le=1e6, description="Above the bottom of the base.")]


Points = Annotated[list[OutlinePoint], Meta(max_length=100_000)]


class ProfileOrigin(msgspec.Struct, frozen=True, omit_defaults=True):
    """Where a group of measures comes from."""

    group: Annotated[Literal["overall", "head", "web", "base"], Meta(description="Group of measures.")]
    cite: Annotated[Citation, Meta(description="Where it comes from.")]
    note: Annotated[str, Meta(max_length=4000, pattern=LINES, description="What was fitted or inferred.")] | UnsetType = UNSET


class SectionProfile(msgspec.Struct, frozen=True, omit_defaults=True):
    """A section's outline as points counter-clockwise, the first not repeated, and the measures it was built from."""

    id: Annotated[str, Meta(max_length=80, description="Id of the section.")]
    title: Annotated[str, Meta(max_length=400, description="Its name.")]
    version: Annotated[str, Meta(max_length=80, description="Version of the catalogue.")]
    unit: Annotated[Literal["in", "mm"], Meta(description="Unit of the points.")]
    chord_error: Annotated[
        quantity_type(Kind.LENGTH), Meta(description="Greatest distance between the true arcs and the lines through the points.")  # type: ignore[valid-type]
    ]
    points: Annotated[Points, Meta(description="The new section.")]
    measures: Annotated[answer_type(ProfileParameters), Meta(description="Measures of the drawing.")]  # type: ignore[valid-type]
    density: Annotated[quantity_type(Kind.DENSITY), Meta(description="Density on which the standard's own masses stand.")]  # type: ignore[valid-type]
    density_cite: Annotated[Citation, Meta(description="Where the density comes from.")]
    origins: Annotated[list[ProfileOrigin], Meta(max_length=4, description="Where each group of measures comes from.")]
    note: Annotated[str, Meta(max_length=4000, pattern=LINES, description="Remark on the section.")] | UnsetType = UNSET
    worn: Annotated[Points, Meta(description="The worn section, where wear is asked for.")] | UnsetType = UNSET


def profile_reply(service: Service, asked: Asked) -> Reply:
    """Answer the profile of a section in the form that is accepted.

    Raises:
        ProblemError: no such section, or none with a profile (404); wear that the head does not hold (400); DXF where the library
            that writes it is not installed (406).
    """
    name = asked.path["id"]
    profile = _profile(service, name)
    unit: LengthUnit = {"us": "in", "si": "mm", None: profile.row.unit}[system_asked(asked)]  # type: ignore[assignment]
    worn = _worn(service, asked, profile, unit)
    chord_error = _length(asked, "chord_error", unit)
    if chord_error is not None and not SMALLEST_CHORD_ERROR <= chord_error <= _LARGEST_CHORD_ERROR:
        least, most = (UNITS[Kind.LENGTH][unit].from_si(limit) for limit in (SMALLEST_CHORD_ERROR, _LARGEST_CHORD_ERROR))
        raise ProblemError(400, f"chord_error: from {least:.2g} to {most:.2g} {unit}")
    if asked.accept == DXF:
        return catalogue_reply(service, asked, _dxf(name, profile, worn), f"{DXF}; charset=us-ascii")
    if asked.accept == JSON:
        body = msgspec.json.encode(_points_answer(service, name, profile, worn, unit, chord_error or _CHORD_ERROR))
        return catalogue_reply(service, asked, body)
    body = draw_profile(_sheet(service, name, profile, worn, unit)).encode()
    return catalogue_reply(service, asked, body, SVG, {"Content-Security-Policy": _POLICY})


def _profile(service: Service, name: str) -> RailProfile:
    profile = service.catalogue.profiles.get(name)
    if profile is not None:
        return profile
    if service.catalogue.row("rail-sections", name) is not None:
        raise ProblemError(404, f"rail section {name[:80]!r} is in the catalogue, but its drawing is not known")
    near = service.catalogue.near("rail-profiles", name[:200])
    hint = f"; near: {', '.join(near)}" if near else ""
    raise ProblemError(404, f"there is no rail section {name[:80]!r}{hint}")


def _length(asked: Asked, name: str, unit: LengthUnit) -> float | None:
    value = number_asked(asked, name, unit)
    return None if value is None else UNITS[Kind.LENGTH][unit].to_si(value)


def _worn(service: Service, asked: Asked, profile: RailProfile, unit: LengthUnit) -> Outline | None:
    vertical, amount = _length(asked, "vertical_wear", unit), _length(asked, "face_wear", unit)
    angle, side = number_asked(asked, "face_angle", "degrees"), asked.query.get("face_side")
    if side not in (None, "left", "right"):
        raise ProblemError(400, f"face_side={side!r}: the side is left or right"[:300])
    if amount is None and not (angle is None and side is None):
        raise ProblemError(400, "face_angle and face_side need face_wear")
    if vertical is None and amount is None:
        return None
    depth = service.house.defaults["gage-line-depth"].si
    assert not isinstance(depth, str)
    faces = [
        FaceWear(side=Side(side or "left"), amount=part, angle=math.radians(angle or 0.0), gage_depth=depth)
        for part in (amount,)
        if part is not None
    ]
    try:
        return wear_head(profile.outline, vertical or 0.0, faces)
    except RefusedError as error:
        first = error.refusals[0]
        name = "vertical_wear" if first.path[:1] == ("vertical",) else "face_angle" if first.path[-1] == "angle" else "face_wear"
        raise ProblemError(400, f"{name}: {first.reason}{_limit(first.maximum, name, unit)}") from error


def _limit(maximum: float | None, name: str, unit: LengthUnit) -> str:
    if maximum is None or name == "face_angle":
        return ""
    return f"; at most {UNITS[Kind.LENGTH][unit].from_si(maximum):.4g} {unit}"


def _points(outline: Outline, unit: LengthUnit, chord_error: float) -> list[OutlinePoint]:
    scale = UNITS[Kind.LENGTH][unit]

    def shown(point: Point) -> OutlinePoint:
        # a billionth of the unit: below that, digits are noise of the conversion
        return OutlinePoint(*(round(scale.from_si(part), 9) + 0.0 for part in point))

    return [shown(point) for point in flatten(outline, chord_error)]


def _points_answer(  # noqa: PLR0913, PLR0917  what the answer is made of
    service: Service, name: str, profile: RailProfile, worn: Outline | None, unit: LengthUnit, chord_error: float
) -> SectionProfile:
    density, length = profile.density, UNITS[Kind.LENGTH][unit]
    return SectionProfile(
        id=name,
        title=profile.row.title,
        version=service.catalogue.version,
        unit=unit,
        chord_error=quantity_type(Kind.LENGTH)(length.from_si(chord_error), unit),
        points=_points(profile.outline, unit, chord_error),
        measures=writer_of(ProfileParameters, "us" if unit == "in" else "si")(profile.row.parameters),
        density=quantity_type(Kind.DENSITY)(UNITS[Kind.DENSITY][density.unit].from_si(density.si), density.unit),
        density_cite=service.citation_of(density.provenance),
        origins=[
            ProfileOrigin(group, service.citation(origin.source, origin.where, origin.status), origin.note or UNSET)  # type: ignore[arg-type]
            for group, origin in profile.row.origins.items()
        ],
        note=profile.row.note or UNSET,
        worn=UNSET if worn is None else _points(worn, unit, chord_error),
    )


def _drilling(service: Service, name: str) -> Drilling | None:
    row = service.catalogue.row("rail-sections", name)
    height = None if row is None else row.values.get("hole_height")
    if row is None or height is None:
        return None
    diameter = row.values.get("hole_diameter")
    fittings = service.catalogue.row(FITTINGS, name)
    spaced = [] if fittings is None else [fittings.values[hole].si for hole in HOLES if hole in fittings.values]
    return Drilling(distances=tuple(spaced), height=height.si, diameter=None if diameter is None else diameter.si)


def _sheet(service: Service, name: str, profile: RailProfile, worn: Outline | None, unit: LengthUnit) -> ProfileSheet:
    measures, origins = profile.row.parameters, profile.row.origins
    thinnest = measures.lower_web[0].centre_height
    states = ", ".join(f"{group} {origin.status}" for group, origin in origins.items())
    return ProfileSheet(
        name=name,
        title=profile.row.title,
        outline=profile.outline,
        head_width=measures.head_width,
        web_thickness=measures.web_thickness,
        web_height=measures.base_depth + measures.fishing_height / 2 if thinnest is None else thinnest,
        density=profile.density.si,
        unit=unit,
        drilling=_drilling(service, name),
        worn=worn,
        footnote=f"Nominal section; not for making tools. Measures: {states}. Catalogue {service.catalogue.version}.",
    )


def _dxf(name: str, profile: RailProfile, worn: Outline | None) -> bytes:
    try:
        return profile_dxf(profile.outline, name.upper(), worn).encode("ascii")
    except ImportError as error:
        raise ProblemError(406, f"this service has no library to write DXF; answers come as {SVG}, {JSON}") from error
