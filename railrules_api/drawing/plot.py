"""A diagram of curves over two straight scales: its axes, its lines, its marks."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from railrules_api.drawing.marks import line, number, text
from railrules_api.drawing.sheet import Scale, path, round_steps, upright

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence


def _tick(value: float) -> str:
    return f"{round(value, 9):,g}".replace("-", "\N{MINUS SIGN}")


class Plot(NamedTuple):
    """Two scales and the box they span on the sheet, and the numbers at their steps."""

    across: Scale
    up: Scale
    across_steps: Sequence[float]
    up_steps: Sequence[float]

    @classmethod
    def over(cls, xs: Sequence[float], ys: Sequence[float], box: tuple[float, float, float, float], most: int = 8) -> Plot:
        """Return a plot whose round scales cover the numbers.

        Args:
            xs: numbers across.
            ys: numbers upwards.
            box: left, top, right, bottom on the sheet.
            most: about how many steps upwards.
        """
        left, top, right, bottom = box
        across, up = round_steps(min(xs), max(xs), 10), round_steps(min(ys), max(ys), most)
        return cls(Scale(across[0], across[-1], left, right), Scale(up[0], up[-1], bottom, top), across, up)

    def place(self, x: float, y: float) -> tuple[float, float]:
        """Return where a pair of numbers stands on the sheet."""
        return self.across.at(x), self.up.at(y)

    def curve(self, points: Iterable[tuple[float, float]], style: str) -> str:
        """Return a line through pairs of numbers."""
        return path((self.place(x, y) for x, y in points), style)

    def level(self, y: float, words: str, *, style: str = "limit", below: bool = False) -> list[str]:
        """Return a level line with its words at the right end; nothing where it lies off the scale."""
        if not self.up.holds(y):
            return []
        at = self.up.at(y)
        return [
            line(self.across.start, at, self.across.stop, at, style),
            text(self.across.stop - 1, at + (3.1 if below else -1.2), words, "cell halo", "end"),
        ]

    def dot(  # noqa: PLR0913  a point, its words and where they stand
        self, x: float, y: float, words: str, *, anchor: str = "start", lift: float = -2.2, name: str = ""
    ) -> list[str]:
        """Return a marked point with its words."""
        across, up = self.place(x, y)
        shift = {"start": 2.2, "middle": 0.0, "end": -2.2}[anchor]
        mark = f' data-mark="{name}"' if name else ""
        return [
            f'<circle class="void"{mark} cx="{number(across)}" cy="{number(up)}" r="1.1"/>',
            text(across + shift, up + lift, words, "cell halo", anchor),
        ]

    def axes(self, across: str, up: str) -> list[str]:
        """Return grid, numbers and names of both axes, and the line of zero where it lies inside."""
        parts: list[str] = []
        left, right, bottom, top = self.across.start, self.across.stop, self.up.start, self.up.stop
        for value in self.across_steps:
            x = self.across.at(value)
            parts += [line(x, bottom, x, top, "grid"), text(x, bottom + 4, _tick(value), "size", "middle")]
        for value in self.up_steps:
            y = self.up.at(value)
            parts += [line(left, y, right, y, "grid"), text(left - 1.6, y + 0.9, _tick(value), "size", "end")]
        parts += [line(left, bottom, right, bottom, "rule"), line(left, bottom, left, top, "rule")]
        if self.up.low < 0.0 < self.up.high:
            parts.append(line(left, self.up.at(0.0), right, self.up.at(0.0), "rule"))
        parts.append(text((left + right) / 2, bottom + 8.4, across, "size", "middle"))
        parts.append(upright(left - 14.5, (top + bottom) / 2, up, "size", "middle"))
        return parts
