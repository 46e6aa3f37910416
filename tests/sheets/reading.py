"""Reads a printed sheet back: its page as a tree, its formulas as sums a person would do with the printed digits."""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from html.parser import HTMLParser
from typing import TYPE_CHECKING, Any

from railrules_api.units import UNITS

if TYPE_CHECKING:
    from collections.abc import Iterator

VOID = {"meta", "col", "wbr", "br", "link"}
_SIGNS = {
    "=": "=",
    "·": "*",
    "\u00d7": "*",
    "\u2212": "-",
    "+": "+",
    "(": "(",
    ")": ")",
    ",": ",",
    "⌈": "ceil(",
    "⌉": ")",
    "⌊": "floor(",
    "⌋": ")",
}


@dataclass
class Node:
    """An element with its texts and children in order."""

    tag: str
    attributes: dict[str, str] = field(default_factory=dict)
    parts: list[Node | str] = field(default_factory=list)

    @property
    def children(self) -> list[Node]:
        return [part for part in self.parts if isinstance(part, Node)]

    @property
    def text(self) -> str:
        return "".join(part if isinstance(part, str) else part.text for part in self.parts)

    def all(self, tag: str, kind: str = "") -> Iterator[Node]:
        """Yield the elements of a tag, and of a class where one is named."""
        for child in self.children:
            if child.tag == tag and (not kind or kind in child.attributes.get("class", "").split()):
                yield child
            yield from child.all(tag, kind)


class _Builder(HTMLParser):
    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.stack = [Node("document")]

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        node = Node(tag, {name: value or "" for name, value in attrs})
        self.stack[-1].parts.append(node)
        if tag not in VOID:
            self.stack.append(node)

    def handle_endtag(self, tag: str) -> None:
        assert self.stack[-1].tag == tag, f"<{self.stack[-1].tag}> is closed by </{tag}>"
        self.stack.pop()

    def handle_data(self, data: str) -> None:
        self.stack[-1].parts.append(data)


def page_of(text: str) -> Node:
    """Return a page as a tree; every element must be closed in its turn."""
    builder = _Builder()
    builder.feed(text)
    builder.close()
    assert len(builder.stack) == 1
    return builder.stack[0]


def sum_of(node: Node) -> str:  # noqa: PLR0911  one return an element
    """Return a MathML element as a Python expression of its printed digits; units are left out."""
    children = node.children
    if node.tag == "mn":
        return node.text.replace(",", "").replace("\u202f", "")
    if node.tag == "mi":
        return {"π": "pi"}.get(node.text, node.text)
    if node.tag == "mtext":
        return ""
    if node.tag == "mo":
        return _SIGNS[node.text]
    if node.tag == "mfrac":
        return f"(({sum_of(children[0])})/({sum_of(children[1])}))"
    if node.tag == "msup":
        return f"{sum_of(children[0])}**({sum_of(children[1])})"
    if node.tag == "msqrt":
        return f"sqrt({''.join(map(sum_of, children))})"
    if node.tag == "msub":
        raise ValueError("a symbol among numbers")
    bars = [place for place, child in enumerate(children) if child.text == "|" and child.tag == "mo"]
    if bars:
        assert bars == [0, len(children) - 1]
        return f"abs({''.join(map(sum_of, children[1:-1]))})"
    return "".join(map(sum_of, children))


def _ceil(value: float) -> int:
    nearest = round(value)
    return nearest if abs(value - nearest) <= 1e-9 * max(1.0, abs(value)) else math.ceil(value)


def value_of(expression: str) -> float:
    """Do a sum."""
    names = {
        "atan": math.atan,
        "sqrt": math.sqrt,
        "ceil": _ceil,
        "exp": math.exp,
        "floor": lambda value: math.floor(value + 1e-9 * max(1.0, abs(value))),
        "pi": math.pi,
        "max": max,
        "min": min,
        "abs": abs,
        "sin": math.sin,
        "cos": math.cos,
    }
    return float(eval(expression, {"__builtins__": {}}, names))  # our own sheet, read back


def half_of(node: Node) -> float:
    """Return half a unit of the last printed digit of a number."""
    digits = next(node.all("mn")).text.replace(",", "").replace("\u202f", "")
    places = len(digits.partition(".")[2])
    powers = list(node.all("msup"))
    power = int(value_of(sum_of(powers[0].children[1]))) if powers else 0
    return 0.5 * 10.0 ** (power - places)


def numbers_of(row: Node) -> tuple[str, list[Node]]:
    """Return the sum of a printed line and the `math` elements of its results."""
    whole = next(row.all("div", "numbers"))
    pieces = list(whole.all("math"))
    starts = [place for place, node in enumerate(pieces) if node.children[0].text == "="]
    if len(starts) < 2:
        return "".join(map(sum_of, pieces)).lstrip("="), []
    first = "".join(map(sum_of, pieces[: starts[1]])).lstrip("=")
    return first, [pieces[place] for place in starts[1:]]


def unit_of(node: Node) -> str:
    """Return the label of a printed number's unit."""
    return "".join(part.text for part in node.all("mtext")).replace("\u00a0", " ").strip()


def in_si(value: float, label: str, other: str) -> float:
    """Return a number in SI; of two kinds that share a label, the one that knows the other label as well."""
    for units in UNITS.values():
        labels = {unit.label: unit for unit in units.values()}
        if label in labels and other in labels:
            return labels[label].to_si(value)
    raise AssertionError((label, other))


def cells_of(row: Any) -> list[str]:
    """Return the texts of a table row."""
    return [node.text.replace("\u00a0", " ") for node in row.children if node.tag in ("td", "th")]
