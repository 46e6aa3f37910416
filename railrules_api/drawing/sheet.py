"""A landscape sheet that A4 and Letter both print: its frame, its style, its scales and its legend.

Everything is in millimetres of the sheet, y downwards. Classes carry the colours, so that one style sheet serves light, dark and
paper; no mark is told from another by colour alone.
"""

from __future__ import annotations

import base64
import hashlib
import math
from html import escape
from typing import TYPE_CHECKING, Final, NamedTuple

from railrules_api.drawing.marks import line, number, text
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Sequence

    from railrules_api.domain.kinds import Kind
    from railrules_api.units import System

WIDTH: Final = 258.0
HEIGHT: Final = 188.0
LEFT: Final = 24.0
"""Where diagrams begin; the names of bands stand to the left of it."""
RIGHT: Final = 252.0
FOOT: Final = HEIGHT - 3.0

STYLE: Final = """
.paper{fill:#fbfbf8}.ink{fill:#17242f}.pale{fill:#e4e9ec}.mid{fill:#b4c2cb}.deep{fill:#0f5f61}.warm{fill:#b4541a}
.void{fill:#fbfbf8;stroke:#17242f;stroke-width:.3}
.rail{fill:#dbe3e8;stroke:#17242f;stroke-width:.25}.rail2{fill:#aebdc7;stroke:#17242f;stroke-width:.25}
.cut{fill:url(#slope);stroke:#17242f;stroke-width:.25}.old{fill:url(#dots);stroke:#51626f;stroke-width:.2}
.dense{fill:url(#bars);stroke:#17242f;stroke-width:.3}.plain{fill:url(#wide);stroke:#51626f;stroke-width:.2}
.none{fill:none;stroke:#17242f;stroke-width:.3;stroke-dasharray:1 .8}
.thin{fill:none;stroke:#51626f;stroke-width:.18}.grid{fill:none;stroke:#51626f;stroke-width:.1;stroke-opacity:.55}
.drop{fill:none;stroke:#51626f;stroke-width:.15;stroke-dasharray:1.2 .9}.rule{fill:none;stroke:#17242f;stroke-width:.35}
.main{fill:none;stroke:#0f5f61;stroke-width:.75;stroke-linejoin:round}
.other{fill:none;stroke:#b4541a;stroke-width:.75;stroke-dasharray:2.6 1.1;stroke-linejoin:round}
.limit{fill:none;stroke:#17242f;stroke-width:.45;stroke-dasharray:.5 .9;stroke-linecap:round}
.stroke{fill:none;stroke:#17242f;stroke-width:.5}.hatch{stroke:#17242f;stroke-width:.22;fill:none}
.dot{fill:#51626f}.tie{fill:#efe6d8;stroke:#6d5b43;stroke-width:.2}.plate{fill:#dbe3e8;stroke:#17242f;stroke-width:.25}
.halo{paint-order:stroke;stroke:#fbfbf8;stroke-width:.9;stroke-linejoin:round}
text{font-family:'Helvetica Neue',Helvetica,Arial,'Liberation Sans',sans-serif;fill:#17242f}
.name{font-size:5.2px;font-weight:700}.title{font-size:3.1px}.size{font-size:2.7px}.cell{font-size:2.5px}
.head{font-size:2.5px;font-weight:700;fill:#17242f}.small{font-size:2.15px}.foot{font-size:2.1px;fill:#46555f}
@media screen and (prefers-color-scheme:dark){.paper{fill:#12191f}.ink{fill:#e8eef2}.pale{fill:#2a3741}.mid{fill:#4a5d6b}
.deep{fill:#4fc4c4}.warm{fill:#f0a468}.void{fill:#12191f;stroke:#e8eef2}.rail{fill:#2d3b46;stroke:#e8eef2}
.rail2{fill:#52636f;stroke:#e8eef2}.cut,.dense{stroke:#e8eef2}.old,.plain{stroke:#93a5b1}.none{stroke:#e8eef2}
.thin,.grid,.drop{stroke:#93a5b1}.rule,.stroke,.limit,.hatch{stroke:#e8eef2}.main{stroke:#4fc4c4}.other{stroke:#f0a468}
.dot{fill:#93a5b1}.tie{fill:#3a3327;stroke:#b9a483}.plate{fill:#2d3b46;stroke:#e8eef2}.halo{stroke:#12191f}
text,.head{fill:#e8eef2}.foot{fill:#a9b8c2}}
""".strip()
STYLE_HASH: Final = "sha256-" + base64.b64encode(hashlib.sha256(STYLE.encode()).digest()).decode()
"""What a content security policy must name so that the style of a drawing shows."""

_PATTERNS: Final = (
    "<defs>"
    '<pattern id="slope" width="1.6" height="1.6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">'
    '<path class="hatch" d="M.4 0V1.6"/></pattern>'
    '<pattern id="dots" width="2.2" height="1.1" patternUnits="userSpaceOnUse"><circle class="dot" cx=".5" cy=".55" r=".22"/>'
    "</pattern>"
    '<pattern id="bars" width=".9" height="8" patternUnits="userSpaceOnUse"><path class="stroke" d="M.4 0V8"/></pattern>'
    '<pattern id="wide" width="3.2" height="8" patternUnits="userSpaceOnUse"><path class="hatch" d="M.4 0V8"/></pattern>'
    "</defs>"
)


class Scale(NamedTuple):
    """A straight scale from numbers to places on the sheet."""

    low: float
    high: float
    start: float
    stop: float

    def at(self, value: float) -> float:
        """Return the place of a number."""
        return self.start + (value - self.low) / (self.high - self.low) * (self.stop - self.start)

    def holds(self, value: float) -> bool:
        """Tell whether a number lies on the scale, its ends included."""
        return self.low <= value <= self.high


def round_steps(low: float, high: float, most: int = 8) -> list[float]:
    """Return round numbers that cover a range, at most about `most` of them.

    >>> round_steps(0.0, 97.0, 5)
    [0.0, 20.0, 40.0, 60.0, 80.0, 100.0]
    """
    span = max(high - low, 1e-12)
    rough = 10.0 ** math.floor(math.log10(span / most))
    step = next(rough * factor for factor in (1, 2, 5, 10) if rough * factor * most >= span)
    first, last = math.floor(low / step + 1e-9), math.ceil(high / step - 1e-9)
    return [index * step for index in range(first, max(last, first + 1) + 1)]


def rect(  # noqa: PLR0913, PLR0917  a rectangle has as many parts
    x: float, y: float, width: float, height: float, style: str, round_by: float = 0.0
) -> str:
    """Return a rectangle."""
    corner = f' rx="{number(round_by)}"' if round_by else ""
    return (
        f'<rect class="{style}" x="{number(x)}" y="{number(y)}" width="{number(max(width, 0.0))}" '
        f'height="{number(height)}"{corner}/>'
    )


def path(points: Iterable[tuple[float, float]], style: str, *, closed: bool = False) -> str:
    """Return a line through points, or the area it encloses."""
    corners = "L".join(f"{number(x)} {number(y)}" for x, y in points)
    return f'<path class="{style}" d="M{corners}{"Z" if closed else ""}"/>'


def upright(x: float, y: float, words: str, style: str, anchor: str = "start") -> str:
    """Return a line of text that reads upwards."""
    place = "" if anchor == "start" else f' text-anchor="{anchor}"'
    turned = f"rotate(-90 {number(x)} {number(y)})"
    return f'<text class="{style}" x="{number(x)}" y="{number(y)}" transform="{turned}"{place}>{escape(words)}</text>'


def text_width(words: str, size: float) -> float:
    """Return about how wide a text runs at a font size; on the wide side."""
    return 0.52 * size * len(words)


def fitted(words: str, size: float, room: float) -> str:
    """Return a text cut to the room there is; empty where not even a few letters go in.

    >>> fitted("Fallow Creek bridge", 2.5, 18.0), fitted("Fallow Creek bridge", 2.5, 3.0)
    ('Fallow Creek…', '')
    """
    if text_width(words, size) <= room:
        return words
    letters = int(room / (0.52 * size)) - 1
    return words[:letters].rstrip(" ,") + "…" if letters >= 3 else ""  # noqa: PLR2004  two letters tell nothing


def shown(value: float, kind: Kind, unit: str, places: int = 1) -> str:
    """Return an SI value for people in a unit, thousands set apart."""
    found = UNITS[kind][unit]
    return f"{found.from_si(value):,.{places}f} {found.label}"


def unit_of(system: System, us: str, si: str) -> str:
    """Return the unit code for a unit system."""
    return us if system == "us" else si


Swatch = tuple[str, "Callable[[float, float], str]"]
"""A word of the legend, and how its mark is drawn at a place; the mark is 7 mm wide and stands on the line of the text."""


def legend(top: float, swatches: Sequence[Swatch], *, columns: int = 6) -> list[str]:
    """Return the legend: mark and word, row by row."""
    step = (RIGHT - 6.0) / columns
    parts = [line(6, top - 4.2, RIGHT, top - 4.2, "thin")]
    for index, (words, mark) in enumerate(swatches):
        row, column = divmod(index, columns)
        x, y = 6.0 + column * step, top + row * 4.6
        parts += [mark(x, y), text(x + 8.6, y + 0.9, words, "cell")]
    return parts


class Head(NamedTuple):
    """What stands at the head and the foot of a sheet."""

    name: str
    title: str
    right: str
    right_below: str
    foot: str
    about: str


def document(head: Head, parts: Iterable[str], data: str = "") -> str:
    """Return the whole sheet as an SVG document.

    Args:
        head: title block and foot.
        parts: what is drawn.
        data: further attributes of the root, each with a leading space.
    """
    size = f'width="{WIDTH:g}mm" height="{HEIGHT:g}mm" viewBox="0 0 {WIDTH:g} {HEIGHT:g}"'
    return "\n".join(
        [
            f'<svg xmlns="http://www.w3.org/2000/svg" {size} role="img" aria-labelledby="t d"{data}>',
            f'<title id="t">{escape(head.name)}: {escape(head.title)}</title>',
            f'<desc id="d">{escape(head.about)}</desc>',
            f"<style>{STYLE}</style>",
            _PATTERNS,
            f'<rect class="paper" width="{WIDTH:g}" height="{HEIGHT:g}"/>',
            text(6, 9.2, fitted(head.name, 5.2, 180), "name"),
            text(6, 14.2, head.title, "title"),
            text(RIGHT, 8.6, head.right, "title", "end"),
            text(RIGHT, 14.2, head.right_below, "cell", "end"),
            line(6, 16.8, RIGHT, 16.8, "rule"),
            *parts,
            text(6, FOOT, head.foot, "foot"),
            "</svg>",
            "",
        ]
    )
