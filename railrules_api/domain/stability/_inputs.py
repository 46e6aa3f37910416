"""Checks of the inputs that every stability function shares; nothing is repaired, all faults are reported at once."""

from __future__ import annotations

import math

from railrules_api.domain.errors import Refusal, RefusedError


def require_positive(**values: float) -> None:
    """Refuse every value that is not a finite number above zero.

    Args:
        values: the inputs by their field names.

    Raises:
        RefusedError: naming each field that is not finite or not above zero.
    """
    _refuse_all(
        [
            Refusal((name,), "must be a finite number above zero", value, minimum=0.0)
            for name, value in values.items()
            if not (math.isfinite(value) and value > 0.0)
        ]
    )


def require_not_negative(**values: float) -> None:
    """Refuse every value that is not a finite number of zero or more.

    Args:
        values: the inputs by their field names.

    Raises:
        RefusedError: naming each field that is not finite or is below zero.
    """
    _refuse_all(
        [
            Refusal((name,), "must be a finite number, zero or above", value, minimum=0.0)
            for name, value in values.items()
            if not (math.isfinite(value) and value >= 0.0)
        ]
    )


def _refuse_all(faults: list[Refusal]) -> None:
    if faults:
        raise RefusedError(*faults)
