"""An amount of something to buy, haul or recover: a count, or a measured quantity whose kind goes with it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from railrules_api.domain.kinds import Kind


@dataclass(frozen=True, slots=True)
class Amount:
    """A value that is a count when `kind` is None, else a physical quantity in SI.

    Attributes:
        value: the number, SI when a kind is given.
        kind: the kind of quantity; None for pieces.
    """

    value: float
    kind: Kind | None = None
