"""The kinds of physical quantity the rules speak of.

Two quantities of the same dimension may still be different kinds: a temperature is not a temperature change, a mass is
not a force, a stress is not a foundation modulus. Kinds keep them apart on the wire and in the registry.
"""

from __future__ import annotations

from enum import StrEnum


class Kind(StrEnum):
    """A kind of quantity; the comment gives its coherent SI unit."""

    LENGTH = "length"  # m
    AREA = "area"  # m2
    VOLUME = "volume"  # m3
    SECTION_MODULUS = "section_modulus"  # m3
    SECOND_MOMENT = "second_moment"  # m4
    MASS = "mass"  # kg
    MASS_PER_LENGTH = "mass_per_length"  # kg/m
    DENSITY = "density"  # kg/m3
    FORCE = "force"  # N
    FORCE_PER_LENGTH = "force_per_length"  # N/m
    STRESS = "stress"  # Pa
    FOUNDATION_MODULUS = "foundation_modulus"  # N/m per m, Pa
    STIFFNESS = "stiffness"  # N/m
    MOMENT = "moment"  # N m
    TEMPERATURE = "temperature"  # K
    TEMPERATURE_CHANGE = "temperature_change"  # K
    EXPANSION = "expansion"  # 1/K
    COVERAGE = "coverage"  # m2/m3: area that a volume of liquid covers
    CURVATURE = "curvature"  # 1/m
    ANGLE = "angle"  # rad
    SPEED = "speed"  # m/s
    DURATION = "duration"  # s
    FORCE_PER_TEMPERATURE = "force_per_temperature"  # N/K
    STRESS_PER_TEMPERATURE = "stress_per_temperature"  # Pa/K
    LENGTH_PER_TEMPERATURE = "length_per_temperature"  # m/K
    ENERGY = "energy"  # J
