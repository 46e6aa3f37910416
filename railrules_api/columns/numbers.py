"""A column that a rule takes for a number: one formula for both, to the same bits.

A rule is written for numbers, with `if`, `min` and `max` as they come. Put to it, a `Column` does + - x / on all of its rows at
once, as NumPy does them: to the same bits, IEEE 754 leaves no choice. Where the rule asks whether something is so, all rows must
agree; where they do not, `Parting` says which rows go which way, and the rule is asked again with each of the two lots. So every
row takes the branches that it would take alone. What NumPy might do otherwise (powers, sines) is done number by number.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any, Final

if TYPE_CHECKING:
    from collections.abc import Callable

    from numpy.typing import NDArray

LARGEST: Final = 2**53
"""Whole numbers beyond this are no longer told apart by floats; rows that have them are asked one by one."""


class Parting(BaseException):
    """The rows of a column do not agree: those of the mask go one way, the others the other. No rule may catch it."""

    def __init__(self, mask: NDArray[Any]) -> None:
        """Keep which rows go one way."""
        super().__init__("the rows of a column go different ways")
        self.mask = mask


class OneByOne(BaseException):
    """A rule does something with a number that is not done with a column: its rows are asked one by one."""


def _values(other: Any) -> Any:  # noqa: ANN401  a column's array, or a number
    if isinstance(other, Column):
        return other.values
    if isinstance(other, bool | int | float):
        return other
    raise OneByOne


class Column:
    """Numbers of many rows, in place of one."""

    __slots__ = ("values",)

    def __init__(self, values: NDArray[Any]) -> None:
        """Keep the numbers, floats or whole ones."""
        self.values = values

    def each(self, function: Callable[[float], float]) -> Column:
        """Return what a function of one number makes of each."""
        import numpy as np  # noqa: PLC0415

        if function is math.sqrt and (self.values >= 0.0).all():
            return Column(np.sqrt(self.values))  # rounded rightly, as IEEE 754 wants it
        try:
            return Column(np.array([function(value) for value in self.values.tolist()]))
        except (ValueError, OverflowError) as error:
            raise OneByOne from error

    # ---------------------------------------------------------------- arithmetic

    def _done(self, other: Any, operation: Callable[[Any, Any], Any], *, turned: bool = False) -> Column:  # noqa: ANN401
        import numpy as np  # noqa: PLC0415

        values = _values(other)
        if self.values.dtype.kind != "f" and (isinstance(values, int) or getattr(values, "dtype", np.dtype(float)).kind != "f"):
            # whole numbers: looked at as floats first, in which no product of two of them overflows
            with np.errstate(all="ignore"):
                rough = operation(*((values, self.values * 1.0) if turned else (self.values * 1.0, values)))
            if rough.size and float(np.abs(rough).max()) > LARGEST:
                raise OneByOne
        with np.errstate(all="ignore"):
            return Column(operation(values, self.values) if turned else operation(self.values, values))

    def __add__(self, other: Any) -> Column:  # noqa: ANN401
        """Add."""
        return self._done(other, lambda one, two: one + two)

    def __radd__(self, other: Any) -> Column:  # noqa: ANN401
        """Add to."""
        return self._done(other, lambda one, two: one + two, turned=True)

    def __sub__(self, other: Any) -> Column:  # noqa: ANN401
        """Subtract."""
        return self._done(other, lambda one, two: one - two)

    def __rsub__(self, other: Any) -> Column:  # noqa: ANN401
        """Subtract from."""
        return self._done(other, lambda one, two: one - two, turned=True)

    def __mul__(self, other: Any) -> Column:  # noqa: ANN401
        """Multiply."""
        return self._done(other, lambda one, two: one * two)

    def __rmul__(self, other: Any) -> Column:  # noqa: ANN401
        """Multiply by."""
        return self._done(other, lambda one, two: one * two, turned=True)

    def __truediv__(self, other: Any) -> Column:  # noqa: ANN401
        """Divide; a zero below the line is an error, as it is for a number."""
        if isinstance(other, Column):
            _refuse_zero(other)
        elif other == 0:
            raise ZeroDivisionError("division by zero")
        return self._done(other, lambda one, two: one / two)

    def __rtruediv__(self, other: Any) -> Column:  # noqa: ANN401
        """Divide something by it."""
        _refuse_zero(self)
        return self._done(other, lambda one, two: one / two, turned=True)

    def __pow__(self, power: Any) -> Column:  # noqa: ANN401
        """Raise to a power, number by number."""
        if not isinstance(power, int | float):
            raise OneByOne
        return self.each(lambda value: value**power)

    def __neg__(self) -> Column:
        """Turn the sign."""
        return Column(-self.values)

    def __pos__(self) -> Column:
        """Leave it as it is."""
        return self

    def __abs__(self) -> Column:
        """Take the size."""
        return Column(abs(self.values))

    def __floordiv__(self, other: Any) -> Column:  # noqa: ANN401
        """Divide whole numbers, rounded down."""
        return self._among_whole(other, lambda one, two: one // two)

    def __mod__(self, other: Any) -> Column:  # noqa: ANN401
        """Return the rest of dividing whole numbers."""
        return self._among_whole(other, lambda one, two: one % two)

    def _among_whole(self, other: Any, operation: Callable[[Any, Any], Any]) -> Column:  # noqa: ANN401
        if self.values.dtype.kind == "f" or (isinstance(other, Column) and other.values.dtype.kind == "f"):
            raise OneByOne
        if isinstance(other, float):
            raise OneByOne
        if isinstance(other, Column):
            _refuse_zero(other)
        return Column(operation(self.values, _values(other)))

    def _rounded(self, function: str) -> Column:
        import numpy as np  # noqa: PLC0415

        if self.values.dtype.kind != "f":
            return self
        found = getattr(np, function)(self.values)
        if not (np.abs(found) <= LARGEST).all():
            raise OneByOne
        return Column(found.astype(np.int64))

    def __floor__(self) -> Column:
        """Round down."""
        return self._rounded("floor")

    def __ceil__(self) -> Column:
        """Round up."""
        return self._rounded("ceil")

    def __round__(self, digits: int | None = None) -> Column:
        """Round to whole numbers, halves to the even one."""
        if digits is not None:
            raise OneByOne
        return self._rounded("rint")

    # ---------------------------------------------------------------- questions

    def _asked(self, other: Any, question: Callable[[Any, Any], Any]) -> Answers:  # noqa: ANN401
        return Answers(question(self.values, _values(other)))

    def __lt__(self, other: Any) -> Answers:  # noqa: ANN401
        """Ask which are less."""
        return self._asked(other, lambda one, two: one < two)

    def __le__(self, other: Any) -> Answers:  # noqa: ANN401
        """Ask which are no more."""
        return self._asked(other, lambda one, two: one <= two)

    def __gt__(self, other: Any) -> Answers:  # noqa: ANN401
        """Ask which are more."""
        return self._asked(other, lambda one, two: one > two)

    def __ge__(self, other: Any) -> Answers:  # noqa: ANN401
        """Ask which are no less."""
        return self._asked(other, lambda one, two: one >= two)

    def __eq__(self, other: object) -> Answers:  # type: ignore[override]
        """Ask which are equal; nothing is equal to what is no number."""
        if not isinstance(other, Column | bool | int | float):
            return Answers(self.values != self.values)
        return self._asked(other, lambda one, two: one == two)

    def __ne__(self, other: object) -> Answers:  # type: ignore[override]
        """Ask which are not equal."""
        return Answers(~(self == other).values)

    def __bool__(self) -> bool:
        """Tell whether all are other than zero."""
        return bool(self != 0)

    def __hash__(self) -> int:
        """Look a number up: rows of one number go together."""
        first = self.values[0]
        if not bool(Answers(self.values == first)):
            raise OneByOne  # not reached: the rows part before
        return hash(first.item())

    # ---------------------------------------------------------------- what is no arithmetic

    def __float__(self) -> float:
        """Refuse to be one number; `float(x)` of a column is written `x * 1.0`."""
        raise OneByOne

    def __int__(self) -> int:
        """Refuse to be one number."""
        raise OneByOne

    def __index__(self) -> int:
        """Refuse to be one number."""
        raise OneByOne

    def __format__(self, form: str) -> str:
        """Stand in a sentence: columns are told as numbers, and sentences not at all."""
        return "…"


class Answers:
    """What each row of a column says to a question."""

    __slots__ = ("values",)

    def __init__(self, values: NDArray[Any]) -> None:
        """Keep the answers."""
        self.values = values

    def __bool__(self) -> bool:
        """Tell what all rows say.

        Raises:
            Parting: they do not all say the same.
        """
        if self.values.all():
            return True
        if not self.values.any():
            return False
        raise Parting(self.values)

    def __eq__(self, other: object) -> bool:
        """Compare as the one answer that all rows give."""
        return bool(self) == other

    def __hash__(self) -> int:
        """Look up as the one answer that all rows give."""
        return hash(bool(self))

    def __int__(self) -> int:
        """Count as the one answer that all rows give."""
        return int(bool(self))

    __index__ = __int__

    def __float__(self) -> float:
        """Count as the one answer that all rows give."""
        return float(bool(self))


def _refuse_zero(column: Column) -> None:
    zeros = column.values == 0
    if bool(Answers(zeros)):
        raise ZeroDivisionError("division by zero")
