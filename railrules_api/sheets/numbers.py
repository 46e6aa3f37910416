"""Numbers as they are printed: the text, what the text says, and half a unit of its last digit."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import ROUND_HALF_EVEN, Decimal
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from railrules_api.units import System, Unit

EXACT: Final = 12
"""Significant digits to which a binary float is taken at its word; what lies beyond is the noise of its fractions."""
MOST: Final = 15
"""Significant digits that every binary float keeps."""
USUAL: Final = 6
"""Significant digits of a result, where the line does not need more."""
_LARGE, _SMALL = Decimal("1e9"), Decimal("1e-3")
_SEPARATORS: Final[dict[str, str]] = {"us": ",", "si": "\u202f"}
MINUS: Final = "\u2212"
_RAISED = str.maketrans("0123456789-", "⁰¹²³⁴⁵⁶⁷⁸⁹⁻")


@dataclass(frozen=True, slots=True)
class Printed:
    """A number on paper.

    Attributes:
        mantissa: its digits with separators, the minus sign first.
        exponent: power of ten that stands behind it; 0 for none.
        value: what the text says.
        half: half a unit of the last printed digit.
        unit: label of the unit; empty for none.
    """

    mantissa: str
    exponent: int
    value: float
    half: float
    unit: str = ""

    @property
    def digits(self) -> str:
        """The number without its unit."""
        return self.mantissa + (f" × 10{str(self.exponent).translate(_RAISED)}" if self.exponent else "")

    @property
    def label(self) -> str:
        """The unit, which stays on one line."""
        return self.unit.replace(" ", "\u00a0")

    @property
    def text(self) -> str:
        """The number with its unit, which stays on the same line."""
        return self.digits + (f"\u00a0{self.label}" if self.unit else "")


def _rounded(number: Decimal, significant: int) -> Decimal:
    return number.quantize(Decimal(1).scaleb(number.adjusted() - significant + 1), rounding=ROUND_HALF_EVEN)


def _grouped(text: str, system: System) -> str:
    sign, digits = (MINUS, text[1:]) if text.startswith("-") else ("", text)
    whole, point, fraction = digits.partition(".")
    return sign + f"{int(whole):,}".replace(",", _SEPARATORS[system]) + point + fraction


def printed(value: float, system: System, *, significant: int = USUAL, unit: str = "") -> Printed:
    """Print a number to some significant digits; a whole number in full, a short one without idle zeros.

    >>> printed(209984.11, "us", unit="lbf").text.replace(chr(160), " "), printed(6.5e-6, "us").text
    ('209,984 lbf', '6.5 × 10⁻⁶')
    """
    number = Decimal(repr(float(value)))
    if number == 0:
        return Printed("0", 0, 0.0, 0.5, unit)
    known = _rounded(number, EXACT)
    whole = known == known.to_integral_value() and abs(known) < _LARGE
    plain = _SMALL <= abs(known) < _LARGE
    # digits before the point are never rounded away: zeros in their place would pass for digits
    kept = max(significant, number.adjusted() + 1) if plain else significant
    shown = known.to_integral_value() if whole else _rounded(number, kept)
    if not whole and shown == known:
        shown = known.normalize()  # the digits end here, so no zeros are needed to say how far they are known
    exponent = 0 if whole or plain else shown.adjusted()
    mantissa = shown.scaleb(-exponent) if exponent else shown
    text = _grouped(f"{mantissa:f}", system)
    last = mantissa.as_tuple().exponent
    assert isinstance(last, int)
    half = float(Decimal(5).scaleb(min(last, 0) - 1 + exponent))
    return Printed(text, exponent, float(shown), half, unit)


def in_unit(value: float, unit: Unit, system: System, *, significant: int = USUAL) -> Printed:
    """Print an SI value in a unit."""
    return printed(unit.from_si(value), system, significant=significant, unit=unit.label)
