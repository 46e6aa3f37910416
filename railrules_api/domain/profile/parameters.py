"""The measures that a rail drawing gives, from which the outline is built."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Annotated

from railrules_api.domain.amounts import SMALL
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind

# Whatever is not a rail at all is kept out here; what contradicts itself, the builder refuses.
_LARGEST = 1.0


def _length(about: str, most: float = _LARGEST) -> Field:
    return Field(about, kind=Kind.LENGTH, above=0.0, at_most=most, answer=SMALL)


def _slope(about: str) -> Field:
    return Field(about, kind=Kind.ANGLE, at_least=0.0, at_most=math.pi / 4)


Radius = Annotated[float, _length("Radius.", 100.0)]


@dataclass(frozen=True, slots=True)
class CrownArc:
    """One arc of the running surface, from the top outwards."""

    radius: Radius
    width: Annotated[
        float | None,
        _length("Distance between the two ends of the arc, across the head; left out where it follows from tangency."),
    ] = None


@dataclass(frozen=True, slots=True)
class WebArc:
    """One arc of a web face, from the web's thinnest place outwards to the fishing plane."""

    radius: Radius
    centre_height: Annotated[
        float | None,
        Field(
            "Height of its centre above the bottom of the base; left out for the last one, the fillet that touches the fishing "
            "plane, because tangency settles it.",
            kind=Kind.LENGTH,
            at_least=-_LARGEST,
            at_most=_LARGEST,
            answer=SMALL,
        ),
    ] = None


@dataclass(frozen=True, slots=True, kw_only=True)
class ProfileParameters:
    """A rail section as its drawing dimensions it; symmetrical about the vertical axis."""

    height: Annotated[float, _length("Bottom of the base to the top of the head.")]
    base_width: Annotated[float, _length("Width over the base.")]
    head_width: Annotated[float, _length("Width of the head, see `head_width_depth`.")]
    web_thickness: Annotated[float, _length("Thickness at the web's thinnest place.")]
    head_depth: Annotated[float, _length("Top of the head down to where the two head fishing planes meet on the vertical axis.")]
    base_depth: Annotated[float, _length("Bottom of the base up to where the two base fishing planes meet on the vertical axis.")]
    crown: Annotated[
        tuple[CrownArc, ...],
        Field(
            "Arcs of the running surface from the top outwards; the last is the gage corner, tangent to the head side.",
            at_least=2,
            most_items=8,
        ),
    ]
    head_side_angle: Annotated[float, _slope("Lean of the head side from the vertical, the head being narrower above.")]
    head_width_depth: Annotated[
        float | None,
        _length(
            "Depth below the top at which `head_width` is measured; left out when it is measured where head side and fishing "
            "plane would meet. It places the head side when the last but one crown arc has no width; when every arc before the "
            "corner has one, the crown places the head side and the head width is nominal."
        ),
    ]
    lower_corner_radius: Annotated[float, _length("Rounding between head side and underside.")]
    head_fishing_angle: Annotated[float, _slope("Slope of the head's underside from the horizontal.")]
    base_fishing_angle: Annotated[float, _slope("Slope of the upper face of the base from the horizontal, next to the web.")]
    upper_web: Annotated[tuple[WebArc, ...], Field("Arcs from the web up to the head.", at_least=1, most_items=8)]
    lower_web: Annotated[tuple[WebArc, ...], Field("Arcs from the web down to the base.", at_least=1, most_items=8)]
    base_outer_angle: Annotated[
        float | None, _slope("Slope of the outer part of the upper face of the base; left out for a single slope.")
    ] = None
    base_edge_thickness: Annotated[
        float | None,
        _length("Height at which the outer slope would meet the edge of the base; left out for a single slope."),
    ] = None
    base_slope_radius: Annotated[float | None, _length("Rounding between the two slopes; left out for a single slope.")] = None
    base_upper_edge_radius: Annotated[float, _length("Rounding of the upper edge of the base.")]
    base_lower_edge_radius: Annotated[float, _length("Rounding of the lower edge of the base.")]

    @property
    def fishing_height(self) -> float:
        """Distance between head and base fishing planes on the vertical axis [m]."""
        return self.height - self.head_depth - self.base_depth
