"""The few functions of `math` that rules use, for single numbers and for columns of them alike."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from collections.abc import Callable


def square_root(value: float) -> float:
    """Return the square root; of a column, that of each number.

    >>> square_root(2.25)
    1.5
    """
    return _each(math.sqrt, value)


def sine(angle: float) -> float:
    """Return the sine of an angle [rad]; of a column, that of each."""
    return _each(math.sin, angle)


def arctangent(value: float) -> float:
    """Return the angle of a tangent [rad]; of a column, that of each."""
    return _each(math.atan, value)


def _each(function: Callable[[float], float], value: Any) -> float:  # noqa: ANN401  a number or a column of them
    found: float = function(value) if isinstance(value, float | int) else value.each(function)
    return found


def near(one: float, other: float, slack: float) -> bool:
    """Tell whether two finite numbers differ by no more than a slack."""
    return abs(one - other) <= slack
