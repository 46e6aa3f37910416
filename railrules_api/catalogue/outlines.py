"""Profiles joined to the rows of the section table: outlines built and checked, densities, fishing angles, drilling.

Everything is built when the service starts: a profile that does not close, is not smooth or has no row among the sections
stops it, and nothing has to be remembered between requests.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from types import MappingProxyType
from typing import TYPE_CHECKING

from railrules_api.catalogue.model import Column, Provenance, Row, Table, Value
from railrules_api.catalogue.profiles import FILE, ProfileDataError, ProfileRow, parse_profiles
from railrules_api.catalogue.reading import (
    BadEntryError,
    CatalogueError,
    Folder,
    about,
    entries_of,
    number_of,
    provenance_of,
    refuse_unknown,
    texts_of,
    to_si,
)
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.kinds import Kind
from railrules_api.domain.profile.builder import build_outline
from railrules_api.domain.profile.parameters import ProfileParameters

if TYPE_CHECKING:
    from collections.abc import Container, Iterator, Mapping

    from railrules_api.catalogue.profiles import Origin
    from railrules_api.domain.profile.outline import Outline

PROFILES, FITTINGS = "rail-profiles", "rail-fittings"
HOLES = ("hole_first", "hole_second", "hole_third")
_ANGLES = {"head_fishing_angle": "head", "base_fishing_angle": "base"}
"""Fishing angles and the group of measures of the drawing that each belongs to."""
_DRILLING = re.compile(r"(?P<first>[0-9/-]+), (?P<second>[0-9/-]+), (?P<third>[0-9/-]+) in(?: \(from memory\))?")
_DENSITY_UNIT = "g_per_cm3"


@dataclass(frozen=True, slots=True)
class RailProfile:
    """A section's drawing and what was built from it.

    Attributes:
        row: the measures as read, and where each group of them comes from.
        outline: the closed outline.
        density: on which the standard's own masses stand.
    """

    row: ProfileRow
    outline: Outline
    density: Value


def rail_profiles(folder: Folder, sections: Mapping[str, Row], sources: Container[str]) -> Mapping[str, RailProfile]:
    """Read and build every profile.

    Raises:
        CatalogueError: a bad row; a profile that is no closed and smooth outline, has no row among the sections, cites an
            unknown source, or has no density or two.
    """
    try:
        rows = parse_profiles(folder.content(FILE).decode())
    except ProfileDataError as error:
        raise CatalogueError(FILE, error.row, error.reason) from error
    except ValueError as error:  # not UTF-8, or not TOML
        raise CatalogueError(FILE, "", str(error)) from error
    for name in rows:
        if name not in sections:
            raise CatalogueError(FILE, name, "has no row in rail_sections.csv")
    densities = _densities(folder, rows, sources)
    found: dict[str, RailProfile] = {}
    for name, row in rows.items():
        unknown = [origin.source for origin in row.origins.values() if origin.source not in sources]
        if unknown:
            raise CatalogueError(FILE, name, f"source {unknown[0]!r} is not in sources.toml")
        if name not in densities:
            raise CatalogueError(FILE, name, "stands in no [[density]] block")
        try:
            outline = build_outline(row.parameters)
        except RefusedError as error:
            raise CatalogueError(FILE, name, str(error)) from error
        found[name] = RailProfile(row, outline, densities[name])
    return MappingProxyType(found)


def _densities(folder: Folder, rows: Container[str], sources: Container[str]) -> dict[str, Value]:
    found: dict[str, Value] = {}
    for position, entry in enumerate(entries_of(folder.toml(FILE), "density", FILE), 1):
        with about(FILE, f"density {position}"):
            refuse_unknown(entry, {"value", "profiles", "source", "where", "status", "also_in"})
            number, printed = number_of(entry.get("value"))
            value = Value(
                si=to_si(number, _DENSITY_UNIT, Kind.DENSITY),
                printed=printed,
                unit=_DENSITY_UNIT,
                kind=Kind.DENSITY,
                provenance=provenance_of(entry, sources),
            )
            for name in texts_of(entry, "profiles"):
                if name not in rows or name in found:
                    msg = f"{name} is no profile, or has a density already"
                    raise BadEntryError(msg)
                found[name] = value
    return found


def place_of(origin: Origin) -> Provenance:
    """Return where a group of measures comes from; what stands on memory is never said to be read or worked out."""
    status = "from-memory" if origin.source == "memory" else origin.status
    return Provenance(source=origin.source, where=origin.where, status=status)  # type: ignore[arg-type]


def profile_table(profiles: Mapping[str, RailProfile], sections: Mapping[str, Row]) -> Table:
    """Return the profiles as a table whose rows carry the measures of the drawing and the density."""
    columns = {"density": Column("density", "Density on which the standard's own masses stand.", kind=Kind.DENSITY)}
    rows = {
        name: Row(
            id=name,
            title=profile.row.title,
            provenance=place_of(profile.row.origins["overall"]),
            values=MappingProxyType({"density": profile.density}),
            record=profile.row.parameters,
            also=sections[name].also,
            notes=_notes(profile.row),
        )
        for name, profile in profiles.items()
    }
    return Table(
        id=PROFILES,
        title="Rail profiles",
        about="Rail sections as their drawings dimension them: lines and arcs from which a closed outline is built.",
        columns=MappingProxyType(columns),
        rows=MappingProxyType(rows),
        record=ProfileParameters,
    )


def _notes(row: ProfileRow) -> str:
    """Return what to know of a profile: the remark on the section, then what was fitted, group by group."""
    told = [f"{group}: {origin.note}" for group, origin in row.origins.items() if origin.status == "fitted"]
    return " ".join(filter(None, (row.note, *(part[0].upper() + part[1:] for part in told))))


def fittings_table(profiles: Mapping[str, RailProfile], sections: Mapping[str, Row]) -> Table:
    """Return what furniture needs to know and the section table does not tell in numbers: fishing angles and drilling.

    It has a row for every section, also where nothing is known, so that a name is known here when it is known there.

    Raises:
        CatalogueError: the drilling of a section is not of the form `3-1/2, 6, 6 in`.
    """
    columns = {
        **{name: Column(name, f"Slope of the {part}'s fishing plane.", kind=Kind.ANGLE) for name, part in _ANGLES.items()},
        HOLES[0]: Column(HOLES[0], "Rail end to the first bolt hole.", kind=Kind.LENGTH),
        HOLES[1]: Column(HOLES[1], "First to second bolt hole.", kind=Kind.LENGTH),
        HOLES[2]: Column(HOLES[2], "Second to third bolt hole.", kind=Kind.LENGTH),
    }
    rows = {
        name: Row(
            id=name,
            title=section.title,
            provenance=section.provenance,
            values=MappingProxyType({**dict(_angles(profiles.get(name))), **dict(_holes(section))}),
            also=section.also,
        )
        for name, section in sections.items()
    }
    return Table(
        id=FITTINGS,
        title="Fishing angles and drilling",
        about="Fishing angles from the profiles, drilling from the table of sections.",
        columns=MappingProxyType(columns),
        rows=MappingProxyType(rows),
    )


def _angles(profile: RailProfile | None) -> Iterator[tuple[str, Value]]:
    if profile is None:
        return
    for name, group in _ANGLES.items():
        angle: float = getattr(profile.row.parameters, name)
        if angle > 0.0:  # a value of the catalogue lies above zero
            printed = f"{math.degrees(angle):.4g}"
            yield (
                name,
                Value(si=angle, printed=printed, unit="deg", kind=Kind.ANGLE, provenance=place_of(profile.row.origins[group])),
            )


def _holes(section: Row) -> Iterator[tuple[str, Value]]:
    for text in section.texts.get("drilling", ()):
        match = _DRILLING.fullmatch(text)
        if match is None or "hole_height" not in section.values:
            raise CatalogueError("rail_sections.csv", section.id, f"drilling {text!r} is not of the form '3-1/2, 6, 6 in'")
        for name, digits in zip(HOLES, match.groups(), strict=True):
            number, printed = number_of(digits.replace("-", " "))
            # the height of the holes is part of the same drilling, and comes from the same place
            provenance = section.values["hole_height"].provenance
            yield (
                name,
                Value(si=to_si(number, "in", Kind.LENGTH), printed=printed, unit="in", kind=Kind.LENGTH, provenance=provenance),
            )
