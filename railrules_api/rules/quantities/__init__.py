"""Quantity rules: what a relay takes, leaves and hauls."""
