"""The measures that a rail drawing gives, from which the outline is built."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class CrownArc:
    """One arc of the running surface, from the top outwards.

    Attributes:
        radius: radius [m].
        width: distance between the two ends of the arc, measured across the head [m]; None where it follows from
            tangency.
    """

    radius: float
    width: float | None = None


@dataclass(frozen=True, slots=True)
class WebArc:
    """One arc of a web face, from the web's thinnest place outwards to the fishing plane.

    Attributes:
        radius: radius [m].
        centre_height: height of its centre above the bottom of the base [m]; None for the last one, the fillet that
            touches the fishing plane, because tangency settles it.
    """

    radius: float
    centre_height: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class ProfileParameters:
    """A rail section as its drawing dimensions it; symmetrical about the vertical axis.

    Attributes:
        height: bottom of the base to the top of the head [m].
        base_width: width over the base [m].
        head_width: width of the head [m], see `head_width_depth`.
        web_thickness: thickness at the web's thinnest place [m].
        head_depth: top of the head down to where the two head fishing planes meet on the vertical axis [m].
        base_depth: bottom of the base up to where the two base fishing planes meet on the vertical axis [m].
        crown: arcs of the running surface from the top outwards; the last is the gage corner, tangent to the head side.
        head_side_angle: lean of the head side from the vertical, the head being narrower above [rad].
        head_width_depth: depth below the top at which `head_width` is measured [m]; None when it is measured where head
            side and fishing plane would meet. It places the head side when the last but one crown arc has no width;
            when every arc before the corner has one, the crown places the head side and the head width is nominal.
        lower_corner_radius: rounding between head side and underside [m].
        head_fishing_angle: slope of the head's underside from the horizontal [rad].
        base_fishing_angle: slope of the upper face of the base from the horizontal, next to the web [rad].
        upper_web: arcs from the web up to the head.
        lower_web: arcs from the web down to the base.
        base_outer_angle: slope of the outer part of the upper face of the base [rad]; None for a single slope.
        base_edge_thickness: height at which the outer slope would meet the edge of the base [m]; None for a single
            slope.
        base_slope_radius: rounding between the two slopes [m]; None for a single slope.
        base_upper_edge_radius: rounding of the upper edge of the base [m].
        base_lower_edge_radius: rounding of the lower edge of the base [m].
    """

    height: float
    base_width: float
    head_width: float
    web_thickness: float
    head_depth: float
    base_depth: float
    crown: tuple[CrownArc, ...]
    head_side_angle: float
    head_width_depth: float | None
    lower_corner_radius: float
    head_fishing_angle: float
    base_fishing_angle: float
    upper_web: tuple[WebArc, ...]
    lower_web: tuple[WebArc, ...]
    base_outer_angle: float | None = None
    base_edge_thickness: float | None = None
    base_slope_radius: float | None = None
    base_upper_edge_radius: float
    base_lower_edge_radius: float

    @property
    def fishing_height(self) -> float:
        """Distance between head and base fishing planes on the vertical axis [m]."""
        return self.height - self.head_depth - self.base_depth
