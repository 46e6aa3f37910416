"""Stability of hot track: buckling of straight and of crooked track, sideways and upwards, and margins against it."""

from railrules_api.domain.stability.energy import buckling_energy
from railrules_api.domain.stability.ideal import (
    BuckledState,
    LowestRise,
    buckled_state,
    lowest_rise,
    lowest_vertical_rise,
)
from railrules_api.domain.stability.margins import (
    UIC_720,
    AllowedRise,
    DifferenceRule,
    allowed_by_difference,
    allowed_by_lower_rise,
)
from railrules_api.domain.stability.modes import MODES, ModeConstants, mode_constants
from railrules_api.domain.stability.path import defect_path
from railrules_api.domain.stability.results import (
    BuckleShape,
    BucklingPath,
    Equilibrium,
    LongitudinalRestraint,
    PathKind,
)

__all__ = [
    "MODES",
    "UIC_720",
    "AllowedRise",
    "BuckleShape",
    "BuckledState",
    "BucklingPath",
    "DifferenceRule",
    "Equilibrium",
    "LongitudinalRestraint",
    "LowestRise",
    "ModeConstants",
    "PathKind",
    "allowed_by_difference",
    "allowed_by_lower_rise",
    "buckled_state",
    "buckling_energy",
    "defect_path",
    "lowest_rise",
    "lowest_vertical_rise",
    "mode_constants",
]
