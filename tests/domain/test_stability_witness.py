"""Agreement with a finite-element model on twenty-four straight tracks and nine curves.

What was seen: the three-lobe model with restraint throughout lies within 0.1 per cent of the elements' lower rise and, but for
the tracks whose upper state is at a movement of a millimetre or so, within 1 per cent of their upper rise. There the
elements are lower by up to 4 per cent because their resistance needs some tenths of a millimetre to build up; less
smoothing brings them closer. The one-lobe model is higher by 2 to 8 per cent at the upper and 1 to 3 per cent at the lower rise,
because it keeps the neighbouring track from moving the other way; elements that cannot move inwards agree with it.
"""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from typing import NamedTuple

import pytest

from railrules_api.domain.stability import BuckleShape, BucklingPath, LongitudinalRestraint, PathKind, defect_path
from tests.witness.track_finite_element import ElementPath, ElementTrack, turning_points

INCH = 0.0254
PSI = 6894.757293168
POUND_PER_INCH = 4.4482216152605 / INCH
FOOT = 0.3048
MODULUS = 30e6 * PSI
EXPANSION = 6.5e-6 * 1.8


class Case(NamedTuple):
    """Second moment [in4] and area [in2] of a rail, lb/in, psi, in, in, radius in ft (zero: straight). Not catalogue data."""

    second_moment: float
    area: float
    lateral: float
    stiffness: float
    amplitude: float
    reach: float
    radius: float = 0.0


STRAIGHT = [
    Case(14.5, 13.35, 60, 200, 1.5, 180),
    Case(14.5, 13.35, 40, 200, 1.5, 180),
    Case(14.5, 13.35, 100, 200, 1.5, 180),
    Case(14.5, 13.35, 60, 100, 1.5, 180),
    Case(14.5, 13.35, 60, 400, 1.5, 180),
    Case(14.5, 13.35, 60, 200, 1.0, 180),
    Case(14.5, 13.35, 60, 200, 2.0, 180),
    Case(14.5, 13.35, 60, 200, 1.5, 120),
    Case(14.5, 13.35, 60, 200, 1.5, 240),
    Case(14.5, 13.35, 120, 300, 1.5, 150),
    Case(14.5, 13.35, 80, 500, 1.25, 140),
    Case(10.8, 11.25, 60, 200, 1.5, 180),
    Case(10.8, 11.25, 40, 100, 1.0, 150),
    Case(10.8, 11.25, 80, 300, 1.5, 200),
    Case(10.8, 11.25, 100, 400, 1.0, 120),
    Case(14.9, 13.8, 60, 200, 1.5, 180),
    Case(14.9, 13.8, 100, 400, 2.0, 180),
    Case(14.9, 13.8, 50, 150, 0.75, 120),
    Case(12.3, 11.9, 45, 200, 1.2, 160),
    Case(12.3, 11.9, 70, 300, 1.5, 160),
    Case(12.3, 11.9, 55, 120, 0.8, 120),
    Case(14.6, 12.95, 60, 200, 1.5, 180),
    Case(14.6, 12.95, 90, 250, 1.25, 150),
    Case(14.6, 12.95, 75, 350, 1.75, 220),
]
CURVED = [
    Case(14.5, 13.35, lateral, stiffness, amplitude, reach, radius)
    for lateral, stiffness, amplitude, reach in ((100, 200, 1.5, 180), (60, 200, 1.5, 180), (80, 300, 1.0, 140))
    for radius in (5730, 1910, 1146)
]


@cache
def element_track(case: Case) -> ElementTrack:
    return ElementTrack(
        bending=2.0 * MODULUS * case.second_moment * INCH**4,
        axial=2.0 * MODULUS * case.area * INCH**2,
        expansion=EXPANSION,
        resistance=case.lateral * POUND_PER_INCH,
        stiffness=case.stiffness * PSI,
        amplitude=case.amplitude * INCH,
        reach=case.reach * INCH,
        curvature=1.0 / (case.radius * FOOT) if case.radius else 0.0,
    )


@cache
def witness(track: ElementTrack) -> tuple[float, float]:
    found = turning_points(*ElementPath(track).follow(2e-5, 0.6))
    assert found is not None
    return found


def path(case: Case, shape: BuckleShape, restraint: LongitudinalRestraint) -> BucklingPath:
    track = element_track(case)
    return defect_path(
        elastic_modulus=MODULUS,
        second_moment=case.second_moment * INCH**4,
        area=case.area * INCH**2,
        expansion_coefficient=EXPANSION,
        lateral_resistance=track.resistance,
        longitudinal_stiffness=track.stiffness,
        defect_amplitude=track.amplitude,
        defect_half_length=track.reach,
        shape=shape,
        restraint=restraint,
        curvature=track.curvature,
    )


def over_witness(found: BucklingPath, elements: tuple[float, float]) -> tuple[float, float]:
    """Upper and lower rise as shares above those of the elements."""
    assert found.kind is PathKind.SNAP_THROUGH
    assert found.upper is not None
    assert found.lower is not None
    return found.upper.temperature_rise / elements[0] - 1.0, found.lower.temperature_rise / elements[1] - 1.0


@pytest.mark.parametrize("case", [*STRAIGHT, *CURVED], ids=str)
def test_three_lobes_with_restraint_throughout(case: Case) -> None:
    found = path(case, BuckleShape.THREE_LOBES, LongitudinalRestraint.THROUGHOUT)
    upper, lower = over_witness(found, witness(element_track(case)))
    assert found.upper is not None
    assert 0.0 < lower < 0.001
    assert 0.0 < upper < (0.01 if found.upper.deflection > 0.005 else 0.04)


@pytest.mark.parametrize("case", [*STRAIGHT, *CURVED], ids=str)
def test_one_lobe_is_higher_by_what_it_leaves_out(case: Case) -> None:
    upper, lower = over_witness(path(case, BuckleShape.ONE_LOBE, LongitudinalRestraint.OUTSIDE), witness(element_track(case)))
    assert 0.0 < upper < 0.08
    assert -0.005 < lower < 0.03


@pytest.mark.parametrize("case", [STRAIGHT[7], STRAIGHT[10], STRAIGHT[15], STRAIGHT[20]], ids=str)
def test_elements_that_cannot_move_inwards_agree_with_one_lobe(case: Case) -> None:
    one_way = replace(element_track(case), inward_factor=1000.0)
    upper, lower = over_witness(path(case, BuckleShape.ONE_LOBE, LongitudinalRestraint.THROUGHOUT), witness(one_way))
    assert upper == pytest.approx(0.0, abs=0.004)
    assert lower == pytest.approx(0.0, abs=0.002)


def test_less_smoothing_brings_the_elements_closer() -> None:
    case = STRAIGHT[2]
    rough = witness(element_track(case))
    sharp = witness(replace(element_track(case), smoothing=6e-5, elements=200))
    found = path(case, BuckleShape.THREE_LOBES, LongitudinalRestraint.THROUGHOUT)
    assert found.upper is not None
    assert rough[0] < sharp[0] < found.upper.temperature_rise


def test_the_mesh_is_fine_enough() -> None:
    coarse, fine = element_track(STRAIGHT[0]), replace(element_track(STRAIGHT[0]), elements=200)
    assert witness(coarse) == pytest.approx(witness(fine), rel=2e-4)
    longer = replace(element_track(STRAIGHT[0]), elements=150, length=36.0)
    assert witness(coarse) == pytest.approx(witness(longer), rel=2e-4)
