"""What the cells of a spreadsheet stand for: numbers by the signs that the file states, quantities, words, short lists."""

from __future__ import annotations

import math
import re
from difflib import get_close_matches
from typing import TYPE_CHECKING, Final, NamedTuple

from railrules_client._generated.models import Angle, Length

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence

    from railrules_client.jobs.files import Tree
    from railrules_client.jobs.spreadsheets import Value

SIGNS: Final = {"comma": ",", "point": ".", "space": " ", "apostrophe": "'", "none": ""}
_SPACES: Final = str.maketrans({"\u00a0": " ", "\u202f": " ", "\u2009": " ", "\u2019": "'"})
_NUMBER: Final = re.compile(r"^(?P<number>[-+]?[0-9][0-9.,' ]*(?:[eE][-+]?[0-9]+)?)\s*(?P<unit>[^\W\d]\w*)?$")
_LIST_ITEM: Final = r"[-+]?[0-9][0-9.,']*(?:\s?[^\W\d]\w*)?"
_SPAN: Final = re.compile(rf"^(?P<begin>{_LIST_ITEM})\s+to\s+(?P<end>{_LIST_ITEM})$")
_CURVE: Final = re.compile(
    rf"^(?P<begin>{_LIST_ITEM})\s+to\s+(?P<end>{_LIST_ITEM})\s+(?P<bend>{_LIST_ITEM})\s+(?P<hand>left|right)$"
)
_FEATURE: Final = re.compile(rf"^(?P<kind>[a-z][a-z-]*)\s+(?P<begin>{_LIST_ITEM})(?:\s+to\s+(?P<end>{_LIST_ITEM}))?$")


class CellError(ValueError):
    """What is wrong with a cell; whoever reads the row says where it stands."""


class Signs(NamedTuple):
    """The signs that a file says its numbers are written with."""

    decimal: str = "."
    thousands: str = ""

    def number(self, text: str) -> float:
        """Return the number that a text stands for, by these signs and no others.

        Raises:
            CellError: it is not written by them.

        >>> Signs().number("1234.5"), Signs(",", ".").number("1.234,5")
        (1234.5, 1234.5)
        """
        whole, exponent = re.match(r"^(.*?)([eE][-+]?[0-9]+)?$", text.strip()).groups("")  # type: ignore[union-attr]
        digits = rf"[0-9]{{1,3}}(?:{re.escape(self.thousands)}[0-9]{{3}})+|[0-9]+" if self.thousands else "[0-9]+"
        if not re.fullmatch(rf"[-+]?(?:{digits})(?:{re.escape(self.decimal)}[0-9]+)?", whole):
            raise CellError(self._complaint(whole))
        if self.thousands:
            whole = whole.replace(self.thousands, "")
        value = float(whole.replace(self.decimal, ".") + exponent)
        if not math.isfinite(value):
            raise CellError(f"`{text}` is too large")
        return value

    def _complaint(self, text: str) -> str:
        if "," in text and "," not in self:
            if "." in text:
                return (
                    f"`{text}` has grouped digits: say `# thousands: comma` in a row above the headings, or take the commas out"
                )
            one, other = text.replace(",", ""), text.replace(",", ".")
            which = "`# thousands: comma` or `# decimal: comma` in a row above the headings"
            return f"`{text}` may be {one} or {other}: say which, {which}"
        spoken = {sign: name for name, sign in SIGNS.items()}
        grouped = f"digits grouped by threes with a {spoken[self.thousands]}" if self.thousands else "digits not grouped"
        return f"`{text}` is no number with a decimal {spoken[self.decimal]} and {grouped}, as this file writes them"


def _parts(text: str) -> tuple[str, str]:
    """Part a number from the unit behind it."""
    found = _NUMBER.match(text.translate(_SPACES))
    if found is None:
        raise CellError(f"`{text}` is not a number" + (" with a unit" if any(sign.isalpha() for sign in text) else ""))
    return found["number"], found["unit"] or ""


def unit_code(code: str, units: Sequence[str], kind: str) -> str:
    """Return a unit code of a kind, as it was written.

    Raises:
        CellError: it is something else.
    """
    if code in units:
        return code
    near = get_close_matches(code, units, n=3, cutoff=0.3)
    raise CellError(f"`{code}` is no unit of {kind}; " + nearest(near or units, "one of"))


def quantity(value: Value, units: Sequence[str], kind: str, heading: str, signs: Signs) -> Tree:
    """Return the wire form of a quantity whose unit stands in its cell or in its heading.

    Raises:
        CellError: it is something else.
    """
    if isinstance(value, bool):
        raise CellError("a number is wanted, not yes or no")
    if isinstance(value, str):
        digits, own = _parts(value)
        number = signs.number(digits)
    else:
        assert value is not None
        number, own = value, ""
    if own and heading and own != heading:
        raise CellError(f"the cell says {own} and the heading says {heading}")
    if not own and not heading:
        raise CellError(f"no unit: write it behind the number or in the heading, such as [{units[0]}]")
    return {"value": number, "unit": unit_code(own or heading, units, kind)}


def plain_number(value: Value, signs: Signs) -> float:
    """Return a number without a unit.

    Raises:
        CellError: it is something else.
    """
    if isinstance(value, bool):
        raise CellError("a number is wanted, not yes or no")
    if not isinstance(value, str):
        assert value is not None
        return value
    if value.endswith("%"):
        raise CellError(f"`{value}`: a share is a number from 0 to 1 here, such as 0.15 for 15 %")
    digits, unit = _parts(value)
    if unit:
        raise CellError(f"`{value}`: a plain number is wanted, without a unit")
    return signs.number(digits)


def count(value: Value, signs: Signs) -> int:
    """Return a whole number.

    Raises:
        CellError: it is something else.
    """
    number = plain_number(value, signs)
    if not number.is_integer():
        raise CellError(f"a whole number is wanted, not {number:g}")
    return int(number)


def text_of(value: Value) -> str:
    """Return a cell as text; a workbook keeps the track number 1 as 1.0, so a number is written as short as it is."""
    if isinstance(value, bool):
        return "TRUE" if value else "FALSE"
    return f"{value:.15g}" if isinstance(value, float) else str(value)


def word(value: Value, words: Sequence[str]) -> str:
    """Return one of a field's words.

    Raises:
        CellError: it is something else.
    """
    text = text_of(value)
    if text in words:
        return text
    near = get_close_matches(text.casefold(), words, n=3, cutoff=0.5)
    raise CellError(f"`{text}` is not one of its words; " + nearest(near or list(words), "one of"))


def flag(value: Value) -> bool:
    """Return yes or no.

    Raises:
        CellError: it is something else.
    """
    known = {"yes": True, "no": False, "true": True, "false": False}
    if isinstance(value, bool):
        return value
    if text_of(value) not in known:
        raise CellError(f"`{text_of(value)}`: yes or no is wanted")
    return known[text_of(value)]


def nearest(words: Sequence[str], lead: str = "near:") -> str:
    """Return words as a hint."""
    return f"{lead} {', '.join(words)}" if words else "nothing near it"


# ---------------------------------------------------------------- lists in one cell


def _entries(value: Value, pattern: re.Pattern[str], form: str) -> Iterator[re.Match[str]]:
    for entry in text_of(value).translate(_SPACES).split(";"):
        if entry.strip():
            found = pattern.match(entry.strip())
            if found is None:
                raise CellError(f"`{entry.strip()}` is not of the form `{form}`")
            yield found


def _station(text: str, heading: str, signs: Signs) -> Tree:
    return quantity(text, Length.codes, "length", heading, signs)


def _bend(text: str, signs: Signs) -> tuple[str, Tree]:
    digits, unit = _parts(text)
    if not unit:
        raise CellError(f"`{text}`: a degree or radius needs its unit, such as 2 deg or 2865 ft")
    if unit in Angle.codes:
        return "degree", {"value": signs.number(digits), "unit": unit}
    return "radius", {"value": signs.number(digits), "unit": unit_code(unit, Length.codes, "length")}


def _curves(value: Value, heading: str, signs: Signs) -> list[Tree]:
    return [
        {
            "begin": _station(found["begin"], heading, signs),
            "end": _station(found["end"], heading, signs),
            **dict([_bend(found["bend"], signs)]),
            "hand": found["hand"],
        }
        for found in _entries(value, _CURVE, "BEGIN to END DEGREE-OR-RADIUS left|right; ...")
    ]


def _features(value: Value, heading: str, signs: Signs) -> list[Tree]:
    features: list[Tree] = []
    for entry in text_of(value).translate(_SPACES).split(";"):
        if not entry.strip():
            continue
        placed, _, name = entry.partition(" named ")
        for found in _entries(placed, _FEATURE, "KIND STATION [to STATION] [named NAME]; ..."):
            feature: Tree = {"kind": found["kind"], "begin": _station(found["begin"], heading, signs)}
            if found["end"]:
                feature["end"] = _station(found["end"], heading, signs)
            if name.strip():
                feature["name"] = name.strip()
            features.append(feature)
    return features


def _left_out(value: Value, heading: str, signs: Signs) -> list[Tree]:
    return [
        {"begin": _station(found["begin"], heading, signs), "end": _station(found["end"], heading, signs)}
        for found in _entries(value, _SPAN, "BEGIN to END; ...")
    ]


IN_ONE_CELL: Final[dict[str, Callable[[Value, str, Signs], list[Tree]]]] = {
    "curves": _curves,
    "features": _features,
    "left_out": _left_out,
}
