"""What an analysis of a track with a line defect returns."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class BuckleShape(StrEnum):
    """How the track around the defect may move."""

    ONE_LOBE = "one-lobe"
    """The track moves one way only; outside the buckle it cannot move sideways. The form of ORD-13/16, Appendix A."""
    THREE_LOBES = "three-lobes"
    """On each side of the main lobe the track moves the other way, once the main lobe has reached that far; before, the
    main lobe stands alone. Derived here; gives lower rises and agrees with finite elements within one per cent."""


class LongitudinalRestraint(StrEnum):
    """Where ties and ballast hold the rails along the track."""

    OUTSIDE = "outside"
    """Outside the buckle only, so that the force in the buckle is constant. The form of ORD-13/16, Appendix A."""
    THROUGHOUT = "throughout"
    """Everywhere, the buckle included, so that the force is least at its middle. Derived here, see `balance`."""


class PathKind(StrEnum):
    """What the equilibrium path says."""

    SNAP_THROUGH = "snap-through"
    """The rise has a maximum and a later minimum: the track jumps at the upper, cannot buckle below the lower rise."""
    PROGRESSIVE = "progressive"
    """The rise grows all along: the track moves further with every degree and never jumps."""
    NO_DEFECT = "no-defect"
    """Straight track: the rise grows without bound as the deflection goes to zero; there is a lower rise only."""
    UPPER_BEYOND_PATH = "upper-beyond-path"
    """The rise is still falling where the path begins: the upper rise is above the path's first rise, by how much is
    not known to this model."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Equilibrium:
    """A state in which the track is in equilibrium; it may be a stable or an unstable one.

    Attributes:
        temperature_rise: above the neutral temperature [K].
        deflection: movement at the middle of the defect, the defect itself not counted; zero where movement begins [m].
        buckled_force: compression at the middle of the buckle, both rails [N].
        half_length: half of the buckle's length, all lobes counted [m].
        lobes: number of lobes of the whole buckle.
        take_up: rail length taken up by one half of the buckle [m].
        energy: energy above that of the unbuckled track at the same rise, whole track [J].
        slope: by what share the rise changes for each e-fold of the deflection; zero at a turning point of the path.
    """

    temperature_rise: float
    deflection: float
    buckled_force: float
    half_length: float
    lobes: int
    take_up: float
    energy: float
    slope: float


@dataclass(frozen=True, slots=True, kw_only=True)
class BucklingPath:
    """Equilibria of a track with a line defect.

    Attributes:
        kind: what the path says.
        upper: state at the upper buckling rise; None unless the path snaps through.
        lower: state at the lower buckling rise; None for a progressive path.
        points: the equilibria in the order of growing deflection, three or more.
        curve_shift_rise: rise at which the whole curve would slide outwards, `F R / (EA alpha)`, which ends every path;
            None on straight track [K].
    """

    kind: PathKind
    upper: Equilibrium | None
    lower: Equilibrium | None
    points: tuple[Equilibrium, ...]
    curve_shift_rise: float | None
