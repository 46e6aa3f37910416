"""Whether the furniture of an old rail serves a new one: plates, joint bars, run-off, compromise joints.

Joint bars bear on the fishing planes and stand clear of the web, so they serve another rail when fishing height,
fishing angles and drilling are its own too; the web may be thicker (132RE, 136RE and 141RE share their bars: figures
4-3-6 to 4-3-9 of the AREMA Manual, chapter 4, by their titles). Plates take the base between their shoulders, so they
serve when the base width is the same within a play. Two rails whose bars differ are joined by a compromise joint or a
transition rail. Facts of the trade.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from railrules_api.domain.errors import refuse
from railrules_api.domain.roots import near


@dataclass(frozen=True, slots=True, kw_only=True)
class Drilling:
    """Bolt holes at a rail end.

    Attributes:
        distances: end of rail to the first hole, then hole to hole [m].
        height: above the bottom of the base [m].
        diameter: [m]; None when not known.
    """

    distances: tuple[float, ...]
    height: float
    diameter: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class FittingDimensions:
    """The measures of a section that its furniture touches.

    Attributes:
        height: [m].
        base_width: [m].
        head_width: [m]; None when not known.
        fishing_height: between the fishing planes on the axis [m]; None when not known.
        head_fishing_angle: [rad]; None when not known.
        base_fishing_angle: [rad]; None when not known.
        drilling: None when not known or not drilled.
    """

    height: float
    base_width: float
    head_width: float | None = None
    fishing_height: float | None = None
    head_fishing_angle: float | None = None
    base_fishing_angle: float | None = None
    drilling: Drilling | None = None


@dataclass(frozen=True, slots=True)
class Compatibility:
    """How a new section fits where an old one lay; differences are new less old.

    Attributes:
        base_width_difference: [m].
        height_difference: of the running surface on the same plates [m].
        head_width_difference: [m]; None when either is not known.
        fishing_height_difference: [m]; None when either is not known.
        old_plates_serve: base widths equal within the play.
        run_off_length: length over which the height difference is spread at the ramp gradient [m].
        same_joint_bars: True or False where the known measures settle it, None where they do not.
        compromise_joint_needed: for a bolted joint between the two; None where the known measures do not settle it.
        same_drilling: None when either is not known.
        unknown: the measures that were missing for a verdict on joint bars.
    """

    base_width_difference: float
    height_difference: float
    head_width_difference: float | None
    fishing_height_difference: float | None
    old_plates_serve: bool
    run_off_length: float
    same_joint_bars: bool | None
    compromise_joint_needed: bool | None
    same_drilling: bool | None
    unknown: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class FittingLimits:
    """What counts as equal, and how steep a ramp may be.

    Attributes:
        ramp_gradient: rise over run allowed for a change of rail level, e.g. 1/480 [-].
        plate_play: greatest difference of base widths at which the old plates still serve [m].
        length_tolerance: difference at which two lengths count as equal [m].
        angle_tolerance: difference at which two angles count as equal [rad].
    """

    ramp_gradient: float
    plate_play: float
    length_tolerance: float
    angle_tolerance: float


def compare_sections(old: FittingDimensions, new: FittingDimensions, limits: FittingLimits) -> Compatibility:
    """Compare two sections.

    run-off length = |height difference| / ramp gradient.

    Args:
        old: the rail in track.
        new: the rail that replaces it or joins it.
        limits: what counts as equal, and the ramp gradient.

    Returns:
        The comparison.

    Raises:
        RefusedError: a gradient, play or tolerance out of range, or a dimension that is not positive.
    """
    if not 0.0 < limits.ramp_gradient < 1.0:
        raise refuse("ramp_gradient", reason="must lie between 0 and 1", value=limits.ramp_gradient, minimum=0.0, maximum=1.0)
    for name in ("plate_play", "length_tolerance", "angle_tolerance"):
        value = getattr(limits, name)
        if not 0.0 <= value < math.inf:
            raise refuse(name, reason="must not be negative", value=value, minimum=0.0)
    for side, dimensions in (("old", old), ("new", new)):
        for name in ("height", "base_width", "head_width"):
            value = getattr(dimensions, name)
            if value is not None and not 0.0 < value < math.inf:
                raise refuse(side, name, reason="must be a positive length", value=value, minimum=0.0)
    rise = new.height - old.height
    fishing = _difference(old.fishing_height, new.fishing_height)
    fits: dict[str, bool | None] = {
        "fishing_height": _equal(old.fishing_height, new.fishing_height, limits.length_tolerance),
        "head_fishing_angle": _equal(old.head_fishing_angle, new.head_fishing_angle, limits.angle_tolerance),
        "base_fishing_angle": _equal(old.base_fishing_angle, new.base_fishing_angle, limits.angle_tolerance),
    }
    drilling = _same_drilling(old.drilling, new.drilling, limits.length_tolerance)
    fits["drilling"] = drilling
    if any(fit is False for fit in fits.values()):
        bars: bool | None = False
    else:
        bars = None if any(fit is None for fit in fits.values()) else True
    # Bars that would fit still make a step at the joint when the rails differ in height or head width.
    same_head = _equal(old.head_width, new.head_width, limits.length_tolerance)
    step = not near(rise, 0.0, limits.length_tolerance) or same_head is False
    settled = bars if same_head else None
    return Compatibility(
        base_width_difference=new.base_width - old.base_width,
        height_difference=rise,
        head_width_difference=_difference(old.head_width, new.head_width),
        fishing_height_difference=fishing,
        old_plates_serve=abs(new.base_width - old.base_width) <= limits.plate_play,
        run_off_length=abs(rise) / limits.ramp_gradient,
        same_joint_bars=bars,
        compromise_joint_needed=True if step or bars is False else (None if settled is None else not settled),
        same_drilling=drilling,
        unknown=tuple(name for name, fit in fits.items() if fit is None) if bars is None else (),
    )


def _difference(old: float | None, new: float | None) -> float | None:
    return None if old is None or new is None else new - old


def _equal(old: float | None, new: float | None, tolerance: float) -> bool | None:
    return None if old is None or new is None else abs(new - old) <= tolerance


def _same_drilling(old: Drilling | None, new: Drilling | None, tolerance: float) -> bool | None:
    if old is None or new is None:
        return None
    if len(old.distances) != len(new.distances) or abs(old.height - new.height) > tolerance:
        return False
    if any(abs(a - b) > tolerance for a, b in zip(old.distances, new.distances, strict=True)):
        return False
    if old.diameter is None or new.diameter is None:
        return None
    return abs(old.diameter - new.diameter) <= tolerance
