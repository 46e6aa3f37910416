"""Sums that come out the same whatever the order of what is added."""

from __future__ import annotations

import math
from dataclasses import dataclass, field


@dataclass(slots=True)
class ExactSum:
    """A sum of floats that is not rounded until it is read: it hangs neither on their order nor on how they were grouped.

    Kept as floats that do not overlap, as `math.fsum` does within one call.
    """

    parts: list[float] = field(default_factory=list)

    def add(self, value: float) -> None:
        """Add a finite number."""
        kept = 0
        for part in self.parts:
            larger, smaller = (value, part) if abs(value) >= abs(part) else (part, value)
            high = larger + smaller
            low = smaller - (high - larger)
            if low:
                self.parts[kept] = low
                kept += 1
            value = high
        self.parts[kept:] = [value]

    @property
    def value(self) -> float:
        """The sum, rounded once."""
        return math.fsum(self.parts)
