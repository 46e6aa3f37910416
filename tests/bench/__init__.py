"""Costs as ratios, in one run: `make bench`."""
