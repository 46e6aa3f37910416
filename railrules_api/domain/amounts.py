"""An amount of something to buy, haul or recover: a count, or a measured quantity whose kind goes with it."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Final

from railrules_api.domain.records import lean

if TYPE_CHECKING:
    from railrules_api.domain.kinds import Kind

SMALL: Final = ("in", "mm")
"""Units of lengths of the size of a gap, a plate or a tie spacing."""


@lean
@dataclass(frozen=True, slots=True)
class Amount:
    """A value that is a count when `kind` is None, else a physical quantity in SI.

    Attributes:
        value: the number, SI when a kind is given.
        kind: the kind of quantity; None for pieces.
        answer: units (us, si) it reads best in, where the kind's usual ones do not suit; says nothing of the amount itself.
    """

    value: float
    kind: Kind | None = None
    answer: tuple[str, str] | None = field(default=None, compare=False)
