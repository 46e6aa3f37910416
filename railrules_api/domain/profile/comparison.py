"""How far computed properties lie from printed ones."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from railrules_api.domain.errors import refuse

if TYPE_CHECKING:
    from collections.abc import Mapping


@dataclass(frozen=True, slots=True)
class Difference:
    """One property, printed and computed.

    Attributes:
        name: the property.
        published: the printed value, SI.
        computed: the value from the outline, SI.
        relative: (computed - published) / published.
    """

    name: str
    published: float
    computed: float
    relative: float

    def within(self, tolerance: float) -> bool:
        """Tell whether the relative difference stays within a tolerance."""
        return abs(self.relative) <= tolerance


def compare(published: Mapping[str, float], computed: Mapping[str, float]) -> tuple[Difference, ...]:
    """Compare the properties that both sides have, in the order of the printed ones.

    Args:
        published: printed values by name, SI.
        computed: values from the outline by the same names, SI.

    Returns:
        One `Difference` a property.

    Raises:
        RefusedError: a printed value of zero, against which nothing can be measured.

    >>> compare({"area": 0.00767}, {"area": 0.00767, "perimeter": 0.69})[0].relative
    0.0
    """
    found = []
    for name, value in published.items():
        if name not in computed:
            continue
        if value == 0.0:
            raise refuse("published", name, reason="a printed value of zero cannot be compared with", value=value)
        found.append(Difference(name, value, computed[name], (computed[name] - value) / value))
    return tuple(found)
