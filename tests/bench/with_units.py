"""A small part of a takeoff three times: by the rules, as plain arithmetic, and with a quantity of pint for every value.

What is counted: ties, plates, spikes, rail, what they weigh, preservative, and the old rail, of one segment of tangent track.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any

import pint

from railrules_api.domain.patterns import SpikeBand, SpikePattern
from railrules_api.domain.track import Stretch, TieSetting
from railrules_api.rules.quantities import preservative, rail_mass, salvage, spikes, tie_plates, ties

if TYPE_CHECKING:
    from collections.abc import Callable

BEGIN, END = 12.0, 14.6  # mi
SPACING = 19.5  # in
SPIKES = 4
SPIKE, PLATE = 0.8, 22.0  # lb
RAIL, OLD = 115.0, 90.0  # lb/yd
WORN = 0.06
MARGIN, COVERAGE = 2.0, 100.0  # in, ft2/gal
WIDTH, LENGTH = 7.75, 14.0  # in
MILE, INCH, POUND, YARD, FOOT, GALLON = 1609.344, 0.0254, 0.45359237, 0.9144, 0.3048, 231 * 0.0254**3


def with_pint() -> Callable[[], tuple[float, ...]]:
    """Return the part with pint; units are parsed once, outside."""
    registry: Any = pint.UnitRegistry()
    quantity = registry.Quantity
    names = ("mile", "inch", "pound", "pound/yard", "foot**2/gallon", "gallon", "kilogram")
    units = {name: registry.Unit(name) for name in names}

    def work() -> tuple[float, ...]:
        begin, end = quantity(BEGIN, units["mile"]), quantity(END, units["mile"])
        spacing = quantity(SPACING, units["inch"])
        first = math.ceil((begin / spacing).to("").magnitude - 1e-6)
        beyond = math.ceil((end / spacing).to("").magnitude - 1e-6)
        count = beyond - first
        seats = 2 * count
        plates = (seats * quantity(PLATE, units["pound"])).to(units["kilogram"])
        driven = (seats * SPIKES * quantity(SPIKE, units["pound"])).to(units["kilogram"])
        rail_length = 2 * (end - begin)
        rail = (rail_length * quantity(RAIL, units["pound/yard"])).to(units["kilogram"])
        old = (rail_length * quantity(OLD, units["pound/yard"]) * (1 - WORN)).to(units["kilogram"])
        margin = quantity(MARGIN, units["inch"])
        area = (quantity(LENGTH, units["inch"]) + margin) * (quantity(WIDTH, units["inch"]) + margin)
        volume = (seats * area / quantity(COVERAGE, units["foot**2/gallon"])).to(units["gallon"])
        return (
            count, plates.magnitude, driven.magnitude, rail.magnitude, old.magnitude, volume.magnitude
        )  # fmt: skip

    return work


def plain() -> Callable[[], tuple[float, ...]]:
    """Return the part as arithmetic on SI numbers, no more."""

    def work() -> tuple[float, ...]:
        begin, end, spacing = BEGIN * MILE, END * MILE, SPACING * INCH
        count = math.ceil(end / spacing - 1e-6) - math.ceil(begin / spacing - 1e-6)
        seats = 2 * count
        rail_length = 2 * (end - begin)
        area = (LENGTH + MARGIN) * INCH * (WIDTH + MARGIN) * INCH
        return (
            count,
            seats * PLATE * POUND,
            seats * SPIKES * SPIKE * POUND,
            rail_length * RAIL * POUND / YARD,
            rail_length * OLD * POUND / YARD * (1 - WORN),
            seats * area / (COVERAGE * FOOT**2 / GALLON) / GALLON,
        )

    return work


def by_rules() -> Callable[[], tuple[float, ...]]:
    """Return the part as the rules answer it: every check, note and line with it."""
    setting = TieSetting(spacing=SPACING * INCH, origin=0.0)
    pattern = SpikePattern(bands=(SpikeBand(rail_spikes=SPIKES, plate_spikes=0),), extra_at_joint_ties=0)

    def work() -> tuple[float, ...]:
        stretch = Stretch(begin=BEGIN * MILE, end=END * MILE, rails="both", ties=setting)
        counted = ties.evaluate(ties.TiesInput(stretch=stretch, renewed_share=0.0))
        plates = tie_plates.evaluate(
            tie_plates.TiePlatesInput(
                stretch=stretch, tie_kind="wood", plated_share=1.0, recovered_share=1.0, plate_mass=PLATE * POUND
            )
        )
        driven = spikes.evaluate(
            spikes.SpikesInput(
                stretch=stretch, tie_kind="wood", pattern=pattern, sharp_curve_radius=291.0, spike_mass=SPIKE * POUND
            )
        )
        rail = rail_mass.evaluate(
            rail_mass.RailMassInput(mass_per_length=RAIL * POUND / YARD, length=stretch.end - stretch.begin, rail_lines=2)
        )
        old = salvage.evaluate(
            salvage.SalvageInput(
                stretch=stretch, tie_kind="wood", renewed_share=0.0, old_mass_per_length=OLD * POUND / YARD, worn_share=WORN,
                relay_share=0.0, reroll_share=1.0, bars_per_joint=2, plated_share=1.0, old_spikes_per_plate=2.0,
                recovered_share=1.0,
            )
        )  # fmt: skip
        treated = preservative.evaluate(
            preservative.PreservativeInput(
                stretch=stretch, tie_kind="wood", renewed_share=0.0, plate_length=LENGTH * INCH, plate_width=WIDTH * INCH,
                adze_margin=MARGIN * INCH / 2, coats=1, coverage=COVERAGE * FOOT**2 / GALLON,
            )
        )  # fmt: skip
        assert plates.mass is not None
        assert driven.mass is not None
        return counted.ties, plates.mass, driven.mass, rail.mass, old.rail_mass, treated.volume / GALLON

    return work
