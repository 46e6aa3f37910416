"""Strength rules: bending under wheels and in haulage."""
