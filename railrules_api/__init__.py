"""Quantities, thermal and stability answers for rail relay work, from named rules with named sources."""

__version__ = "0.1.0"
