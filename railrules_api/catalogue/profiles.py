"""Reads `data/rail_profiles.toml` into SI parameters, refusing every row that is not whole.

Values are converted here and only here, through the closed lists of `railrules_api.units`; slopes become angles.
"""

from __future__ import annotations

import math
import tomllib
from dataclasses import dataclass
from importlib.resources import files
from typing import TYPE_CHECKING, Any

from railrules_api.domain.kinds import Kind
from railrules_api.domain.profile.parameters import CrownArc, ProfileParameters, WebArc
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

FILE = "rail_profiles.toml"
GROUPS = ("overall", "head", "web", "base")
STATUSES = ("published", "derived", "fitted", "from-memory")
_CITE = ("source", "where", "status", "note")
_OVERALL = ("height", "base_width", "head_width", "web_thickness", "head_depth", "base_depth")
_SECOND_SLOPE = ("outer_slope", "edge_thickness", "slope_radius")


class ProfileDataError(ValueError):
    """A row of the profile file that cannot be used; names file, row and reason."""

    def __init__(self, row: str, reason: str) -> None:
        """Keep row and reason."""
        self.row = row
        self.reason = reason
        super().__init__(f"{FILE}: {row}: {reason}")


@dataclass(frozen=True, slots=True)
class Origin:
    """Where a group of measures comes from.

    Attributes:
        source: id in `data/sources.toml`.
        where: place in it.
        status: published, derived, fitted or from-memory.
        note: what was fitted or inferred; empty when nothing.
    """

    source: str
    where: str
    status: str
    note: str = ""


@dataclass(frozen=True, slots=True)
class ProfileRow:
    """One section's drawing.

    Attributes:
        id: the trade's name without spaces, as in the catalogue of sections.
        title: name for people.
        unit: the unit of length the source prints, `in` or `mm`.
        note: remark on the section; empty when there is none.
        parameters: the measures in SI.
        origins: where each group of measures comes from, by group name.
    """

    id: str
    title: str
    unit: str
    note: str
    parameters: ProfileParameters
    origins: Mapping[str, Origin]


def read_profiles() -> dict[str, ProfileRow]:
    """Read the shipped file.

    Returns:
        Rows by id, in file order.

    Raises:
        ProfileDataError: a bad row.
    """
    return parse_profiles((files("railrules_api") / "data" / FILE).read_text(encoding="utf-8"))


def parse_profiles(text: str) -> dict[str, ProfileRow]:
    """Read rows from TOML text.

    Args:
        text: contents of a profile file.

    Returns:
        Rows by id, in file order.

    Raises:
        ProfileDataError: a missing or unknown key, a wrong type, an unknown unit or status, or an id used twice.
    """
    rows: dict[str, ProfileRow] = {}
    for position, table in enumerate(tomllib.loads(text).get("profile", ()), 1):
        name = str(table.get("id", f"profile {position}"))
        if name in rows:
            raise ProfileDataError(name, "the id is used twice")
        try:
            rows[name] = _row(table)
        except KeyError as missing:
            raise ProfileDataError(name, f"{missing.args[0]} is missing") from None
        except (TypeError, AttributeError) as wrong:
            raise ProfileDataError(name, f"a value has the wrong type: {wrong}") from None
    return rows


def _row(table: Mapping[str, Any]) -> ProfileRow:
    name: str = table["id"]
    _known(name, "row", table, ("id", "title", "unit", "note", *GROUPS))
    unit = UNITS[Kind.LENGTH].get(table["unit"])
    if unit is None or unit.code not in ("in", "mm"):
        raise ProfileDataError(name, f"unit must be in or mm, not {table['unit']!r}")

    def length(value: object) -> float:
        # TOML tells true from 1, Python does not.
        if isinstance(value, bool) or not isinstance(value, int | float) or not math.isfinite(value):
            raise ProfileDataError(name, f"{value!r} is not a length")
        return unit.to_si(float(value))

    overall, head, web, base = (table[group] for group in GROUPS)
    _known(name, "overall", overall, (*_OVERALL, *_CITE))
    _known(name, "head", head, ("crown", "side_slope", "head_width_depth", "lower_corner_radius", "fishing_slope", *_CITE))
    _known(name, "web", web, ("upper", "lower", *_CITE))
    _known(name, "base", base, ("fishing_slope", *_SECOND_SLOPE, "upper_edge_radius", "lower_edge_radius", *_CITE))
    return ProfileRow(
        id=name,
        title=table["title"],
        unit=unit.code,
        note=table.get("note", ""),
        parameters=ProfileParameters(
            **{key: length(overall[key]) for key in _OVERALL},
            crown=tuple(_crown_arc(name, step, length) for step in head["crown"]),
            head_side_angle=_angle(name, head["side_slope"]),
            head_width_depth=_optional(head, "head_width_depth", length),
            lower_corner_radius=length(head["lower_corner_radius"]),
            head_fishing_angle=_angle(name, head["fishing_slope"]),
            upper_web=tuple(_web_arc(name, step, length) for step in web["upper"]),
            lower_web=tuple(_web_arc(name, step, length) for step in web["lower"]),
            base_fishing_angle=_angle(name, base["fishing_slope"]),
            base_outer_angle=_angle(name, base["outer_slope"]) if "outer_slope" in base else None,
            base_edge_thickness=_optional(base, "edge_thickness", length),
            base_slope_radius=_optional(base, "slope_radius", length),
            base_upper_edge_radius=length(base["upper_edge_radius"]),
            base_lower_edge_radius=length(base["lower_edge_radius"]),
        ),
        origins={group: _origin(name, table[group]) for group in GROUPS},
    )


def _known(name: str, group: str, table: Mapping[str, Any], keys: tuple[str, ...]) -> None:
    unknown = sorted(set(table) - set(keys))
    if unknown:
        raise ProfileDataError(name, f"{group} has unknown keys: {', '.join(unknown)}")


def _origin(name: str, group: Mapping[str, Any]) -> Origin:
    origin = Origin(group["source"], group["where"], group["status"], group.get("note", ""))
    if not origin.source or not origin.where or origin.status not in STATUSES:
        raise ProfileDataError(name, "every group needs a source, a place in it and a status")
    return origin


def _optional(group: Mapping[str, Any], key: str, length: Callable[[object], float]) -> float | None:
    return length(group[key]) if key in group else None


def _crown_arc(name: str, step: Mapping[str, Any], length: Callable[[object], float]) -> CrownArc:
    _known(name, "crown", step, ("radius", "width"))
    return CrownArc(length(step["radius"]), _optional(step, "width", length))


def _web_arc(name: str, step: Mapping[str, Any], length: Callable[[object], float]) -> WebArc:
    _known(name, "web", step, ("radius", "centre_height"))
    return WebArc(length(step["radius"]), _optional(step, "centre_height", length))


def _angle(name: str, slope: Mapping[str, Any]) -> float:
    _known(name, "slope", slope, ("value", "unit"))
    value: float = slope["value"]
    if slope["unit"] == "one_in":
        return math.atan(1.0 / value)
    if slope["unit"] == "deg":
        return math.radians(value)
    raise ProfileDataError(name, f"a slope is given as one_in or deg, not {slope['unit']!r}")
