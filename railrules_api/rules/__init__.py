"""What we answer for: the registry of rules."""
