"""What no reader of a table would see: values of one row that contradict each other.

A section's file says the tolerances and the known exceptions with their reason. An exception that is no longer needed is
refused too, so that the list stays true.
"""

from __future__ import annotations

from itertools import pairwise
from typing import TYPE_CHECKING

from railrules_api.catalogue.reading import (
    BadEntryError,
    CatalogueError,
    about,
    entries_of,
    number_of,
    refuse_unknown,
    text_of,
)
from railrules_api.catalogue.records import quantity_of, table_of
from railrules_api.domain.kinds import Kind
from railrules_api.domain.patterns import AnchorPattern, SpikePattern, bands_for, by_class

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from railrules_api.catalogue.model import Row

Check = tuple[str, tuple[str, ...], "Callable[..., tuple[float, float]]"]

_CHECKS: tuple[Check, ...] = (
    # name, columns it needs, (what they give, what the row says)
    (
        "parts",
        ("area_head", "area_web", "area_base", "area"),
        lambda head, web, base, whole: (head + web + base, whole),
    ),
    ("depths", ("head_depth", "fishing_height", "base_depth", "height"), lambda h, f, b, whole: (h + f + b, whole)),
    (
        "modulus-head",
        ("second_moment", "height", "neutral_axis", "section_modulus_head"),
        lambda i, h, n, z: (i / (h - n), z),
    ),
    ("modulus-base", ("second_moment", "neutral_axis", "section_modulus_base"), lambda i, n, z: (i / n, z)),
    (
        # needs no neutral axis, so it holds even where that was worked out from a modulus
        "moduli-height",
        ("second_moment", "section_modulus_head", "section_modulus_base", "height"),
        lambda i, head, base, height: (i / head + i / base, height),
    ),
    (
        "lateral-head",
        ("second_moment_lateral", "head_width", "section_modulus_lateral_head"),
        lambda i, w, z: (2 * i / w, z),
    ),
    (
        "lateral-base",
        ("second_moment_lateral", "base_width", "section_modulus_lateral_base"),
        lambda i, w, z: (2 * i / w, z),
    ),
)
SECTION_CHECKS = ("mass", *(name for name, _, _ in _CHECKS))


def contradictions(row: Row, density: float, tolerances: Mapping[str, float]) -> dict[str, str]:
    """Return what in a rail section contradicts itself, by check.

    Args:
        row: the section.
        density: of rail steel [kg/m3].
        tolerances: share by which the two sides of each check may differ.
    """
    found: dict[str, str] = {}
    si = {name: value.si for name, value in row.values.items()}
    checks: tuple[Check, ...] = (
        ("mass", ("area", "mass_per_length"), lambda area, mass: (area * density, mass)),
        *_CHECKS,
    )
    for check, columns, sides in checks:
        if all(column in si for column in columns):
            given, said = sides(*(si[column] for column in columns))
            apart = given / said - 1.0
            if not abs(apart) <= tolerances[check]:
                found[check] = f"{columns[-1]} and what {', '.join(columns[:-1])} give differ by {100 * apart:+.2f} %"
    return found


def check_sections(rows: Mapping[str, Row], beside: Mapping[str, object], file: str, beside_file: str) -> None:
    """Check every rail section against itself.

    Raises:
        CatalogueError: a section contradicts itself and is no known exception, or an exception is not needed.
    """
    with about(beside_file, "coherence"):
        terms = table_of(beside.get("coherence"), "coherence")
        refuse_unknown(terms, {"density", *SECTION_CHECKS})
        density = quantity_of(terms.get("density"), "density", Kind.DENSITY)[0]
        tolerances = {check: number_of(terms.get(check))[0] for check in SECTION_CHECKS}
    excepted: set[tuple[str, str]] = set()
    for entry in entries_of(beside, "exception", beside_file):
        with about(beside_file, "exception"):
            refuse_unknown(entry, {"row", "check", "reason"})
            name, check, _ = text_of(entry, "row"), text_of(entry, "check"), text_of(entry, "reason")
            excepted.add((name, check))
    for row in rows.values():
        for check, reason in contradictions(row, density, tolerances).items():
            if (row.id, check) not in excepted:
                raise CatalogueError(file, row.id, f"{check}: {reason}")
            excepted.remove((row.id, check))
    for name, check in sorted(excepted):
        raise CatalogueError(beside_file, name, f"exception from {check} is not needed")


CLASSES = range(1, 6)
"""Classes of track that the rules know: those of 49 CFR 213.9."""


def _check_bands(radii: list[float | None]) -> None:
    given = [radius for radius in radii if radius is not None]
    if not radii or radii[-1] is not None or len(given) != len(radii) - 1:
        msg = "the last band, and only that, must have no radius"
        raise BadEntryError(msg)
    if any(sharper >= wider for wider, sharper in pairwise(given)):
        msg = "bands must go from wide to sharp"
        raise BadEntryError(msg)


def check_pattern(record: object) -> None:
    """Check what the limits of single fields cannot say of a pattern.

    Raises:
        BadEntryError: spike bands are not in order, or an anchor pattern goes two ways at once.
    """
    if isinstance(record, SpikePattern):
        for track_class in CLASSES if by_class(record) else (None,):
            _check_bands([record.bands[position].at_least_radius for position in bands_for(record, track_class)])
    if isinstance(record, AnchorPattern) and record.boxed_every is not None and record.per_rail is not None:
        msg = "give one of boxed_every and per_rail"
        raise BadEntryError(msg)
