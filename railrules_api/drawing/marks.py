"""Small pieces of an engineering drawing as SVG text: dimension lines, labels, lengths in both units.

Everything here is in millimetres of the sheet, y downwards; classes carry the colours, so that one style sheet serves light,
dark and print.
"""

from __future__ import annotations

import math
from fractions import Fraction
from html import escape
from typing import TYPE_CHECKING, Literal

from railrules_api.domain.kinds import Kind
from railrules_api.domain.profile.elements import Arc
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from railrules_api.domain.profile.elements import Element, Point

LengthUnit = Literal["in", "mm"]

STYLE = """
.paper{fill:#fbfbf8}.steel{fill:#cfd8e0;stroke:#17242f;stroke-width:.45;stroke-linejoin:round}
.lost{fill:#f0c9a8;stroke:#b4541a;stroke-width:.3;stroke-dasharray:1.6 .8}
.thin{fill:none;stroke:#51626f;stroke-width:.18}.hidden{fill:none;stroke:#51626f;stroke-width:.18;stroke-dasharray:1.4 .9}
.axis{fill:none;stroke:#0f7173;stroke-width:.25;stroke-dasharray:5 1.1 1 1.1}.axis-text{fill:#0f7173}
.arrow{fill:#51626f}.rule{fill:none;stroke:#17242f;stroke-width:.35}
text{font-family:'Helvetica Neue',Helvetica,Arial,'Liberation Sans',sans-serif;fill:#17242f}
.name{font-size:9px;font-weight:700}.title{font-size:3.7px}.size{font-size:3.2px}.second{font-size:2.7px;fill:#51626f}
.cell{font-size:3px}.head{font-size:2.6px;fill:#51626f}.foot{font-size:2.3px;fill:#51626f}
@media screen and (prefers-color-scheme:dark){.paper{fill:#12191f}.steel{fill:#3a4a57;stroke:#e8eef2}
.lost{fill:#5a3a22;stroke:#f0a468}.thin,.hidden{stroke:#93a5b1}.axis{stroke:#4fc4c4}.axis-text{fill:#4fc4c4}
.arrow{fill:#93a5b1}.rule{stroke:#e8eef2}text{fill:#e8eef2}.second,.head,.foot{fill:#a9b8c2}}
""".strip()


def number(value: float, places: int = 3) -> str:
    """Return a coordinate without superfluous zeros."""
    text = f"{value:.{places}f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


def length_text(metres: float, unit: LengthUnit) -> str:
    """Return a length for people: inches as a fraction where a 64th fits it, millimetres with up to two places.

    >>> length_text(0.1857375, "in"), length_text(0.1857375, "mm"), length_text(0.0165, "in")
    ('7 5/16 in', '185.74 mm', '0.650 in')
    """
    value = UNITS[Kind.LENGTH][unit].from_si(metres)
    if unit == "mm":
        return f"{number(value, 2)} mm"
    sixty_fourths = round(value * 64)
    if not math.isclose(sixty_fourths / 64, value, abs_tol=1e-6):
        return f"{value:.3f} in"
    whole, rest = divmod(sixty_fourths, 64)
    part = Fraction(rest, 64)
    words = [str(whole)] if whole or not rest else []
    if rest:
        words.append(f"{part.numerator}/{part.denominator}")
    return f"{' '.join(words)} in"


def both(metres: float, first: LengthUnit) -> tuple[str, str]:
    """Return a length in both units, the given one first."""
    second: LengthUnit = "mm" if first == "in" else "in"
    return length_text(metres, first), length_text(metres, second)


def text(x: float, y: float, words: str, style: str, anchor: str = "start") -> str:
    """Return a line of text."""
    place = "" if anchor == "start" else f' text-anchor="{anchor}"'
    return f'<text class="{style}" x="{number(x)}" y="{number(y)}"{place}>{escape(words)}</text>'


def line(x1: float, y1: float, x2: float, y2: float, style: str = "thin") -> str:
    """Return a straight line."""
    return f'<path class="{style}" d="M{number(x1)} {number(y1)}L{number(x2)} {number(y2)}"/>'


def arrow(x: float, y: float, angle: float) -> str:
    """Return an arrow head with its tip at a point, pointing along an angle [rad, y downwards]."""
    long, half = 2.1, 0.42
    back = (x - long * math.cos(angle), y - long * math.sin(angle))
    side = (half * math.sin(angle), -half * math.cos(angle))
    left, right = (back[0] + side[0], back[1] + side[1]), (back[0] - side[0], back[1] - side[1])
    corners = " ".join(f"{number(a)} {number(b)}" for a, b in ((x, y), left, right))
    return f'<path class="arrow" d="M{corners}Z"/>'


def vertical_dimension(x: float, top: float, bottom: float, words: Sequence[str]) -> list[str]:
    """Return a vertical dimension between two heights, its words across the middle of the line."""
    middle = (top + bottom) / 2
    gap = 1.7 + 1.8 * (len(words) - 1)
    parts = [arrow(x, top, -math.pi / 2), arrow(x, bottom, math.pi / 2)]
    parts += [line(x, top, x, middle - gap - 0.6), line(x, middle + gap + 0.6, x, bottom)]
    return parts + _stack(x, middle, words)


def horizontal_dimension(y: float, left: float, right: float, words: Sequence[str]) -> list[str]:
    """Return a horizontal dimension between two places, its words on one line in the middle."""
    middle = (left + right) / 2
    label = f"{words[0]}   ({words[1]})" if len(words) > 1 else words[0]
    half = 0.85 * len(label) + 1.2
    parts = [arrow(left, y, math.pi), arrow(right, y, 0.0)]
    parts += [line(left, y, middle - half, y), line(middle + half, y, right, y)]
    return [*parts, text(middle, y + 1.1, label, "size", "middle")]


def thickness_dimension(y: float, left: float, right: float, words: Sequence[str]) -> list[str]:
    """Return a dimension with its arrows outside, for a gap too narrow for words; the words stand on the right."""
    reach = 9.0
    parts = [arrow(left, y, 0.0), arrow(right, y, math.pi)]
    parts += [line(left - reach, y, left, y), line(right, y, right + reach, y)]
    return [
        *parts,
        text(right + reach + 1, y - 0.2, words[0], "size"),
        text(right + reach + 1, y + 3.2, words[1], "second"),
    ]


def outline_path(elements: Sequence[Element], place: Callable[[Point], Point], scale: float, style: str) -> str:
    """Return a closed outline; arcs stay true arcs.

    Args:
        elements: lines and arcs [m].
        place: from section coordinates to the sheet.
        scale: millimetres of the sheet per metre of section.
        style: class.
    """

    def at(point: Point) -> str:
        x, y = place(point)
        return f"{number(x)} {number(y)}"

    words = [f"M{at(elements[0].start)}"]
    for element in elements:
        if isinstance(element, Arc):
            radius = number(element.radius * scale)
            large = int(abs(element.sweep) > math.pi)
            # Counter-clockwise stays so for the eye, but the sheet's y runs down: flag 0.
            words.append(f"A{radius} {radius} 0 {large} {int(element.sweep < 0)} {at(element.end)}")
        else:
            words.append(f"L{at(element.end)}")
    return f'<path class="{style}" d="{"".join(words)}Z"/>'


def _stack(x: float, middle: float, words: Sequence[str]) -> list[str]:
    first = middle + 1.1 - 1.8 * (len(words) - 1)
    styles = ("size", "second")
    return [text(x, first + 3.5 * k, word, styles[min(k, 1)], "middle") for k, word in enumerate(words)]
