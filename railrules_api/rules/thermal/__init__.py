"""Thermal rules: force, laying adjustment, neutral temperature, break gap, restraint, curves, buckling."""
