"""The loop is a plugin of the mutation tool's own environment: no other one has what it imports."""

from __future__ import annotations

collect_ignore = ["loop.py"]
