"""Integration along half a buckle on Gauss's points, piece by piece, with its change when the pieces grow or shrink.

A field is known by its values at the points of every piece. Its integral from the middle is exact for the polynomial
through them, so that a chain of integrals is Gauss's collocation method for the differential equation behind it
(Hairer, Norsett and Wanner, "Solving Ordinary Differential Equations I", section II.7, from memory): no step size, and an
error that falls with the 20th power of a piece's length.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING, NamedTuple

if TYPE_CHECKING:
    import numpy as np
    import numpy.typing as npt

    Array = npt.NDArray[np.float64]

POINTS = 10
"""Gauss points of a piece."""


class Rule(NamedTuple):
    """What integration on so many pieces of unit length is made of; read-only, since all calls share it.

    Attributes:
        weights: of one piece.
        inside: for every piece, the share that it adds to the integral at every point.
        marks: likewise at every mark, the middle being the first and the outer end the last.
    """

    weights: Array
    inside: Array
    marks: Array


@cache
def rule(pieces: int) -> Rule:
    """Return the rule for a number of pieces."""
    import numpy as np  # noqa: PLC0415

    points, weights = np.polynomial.legendre.leggauss(POINTS)
    # Legendre series through unit values at each point, integrated from the left end, on a piece from 0 to 1.
    series = np.polynomial.legendre.legvander(points, POINTS - 1).T * weights * (np.arange(POINTS)[:, None] + 0.5)
    integrals = np.polynomial.legendre.legint(series, lbnd=-1.0)
    partial = (np.polynomial.legendre.legvander(points, POINTS) @ integrals) / 2.0
    weights = weights / 2.0
    size = pieces * POINTS
    inside, marks = np.zeros((pieces, size, size)), np.zeros((pieces, pieces + 1, size))
    for piece in range(pieces):
        own = slice(piece * POINTS, (piece + 1) * POINTS)
        inside[piece, own, own] = partial
        inside[piece, own.stop :, own] = weights
        marks[piece, piece + 1 :, own] = weights
    for shared in (weights, inside, marks):
        shared.flags.writeable = False
    return Rule(weights, inside, marks)


class Field(NamedTuple):
    """A field and how it changes with every unknown of the problem.

    Attributes:
        values: at the points, one row for each problem of a batch.
        changes: derivatives of the values by the unknowns.
    """

    values: Array
    changes: Array


@dataclass(frozen=True, slots=True)
class Grid:
    """The pieces of a batch of problems.

    Attributes:
        spans: lengths of the pieces, one row for each problem.
        growth: derivatives of the spans by the unknowns that move the marks, which are the last of all unknowns.
        inside: integration to the points.
        marks: integration to the marks.
    """

    spans: Array
    growth: Array
    inside: Array
    marks: Array

    @classmethod
    def of(cls, spans: Array, growth: Array) -> Grid:
        """Return the grid of such pieces."""
        made = rule(spans.shape[1])
        size = made.inside.shape[2]
        return cls(
            spans,
            growth,
            (spans @ made.inside.reshape(len(made.inside), -1)).reshape(len(spans), -1, size),
            (spans @ made.marks.reshape(len(made.inside), -1)).reshape(len(spans), -1, size),
        )

    def integral(self, field: Field) -> tuple[Field, Field]:
        """Return the integral of a field from the middle, at the points and at the marks."""
        made = rule(self.spans.shape[1])
        return self._integral(field, self.inside, made.inside), self._integral(field, self.marks, made.marks)

    def _integral(self, field: Field, matrix: Array, parts: Array) -> Field:
        values = (matrix @ field.values[:, :, None])[:, :, 0]
        changes = matrix @ field.changes
        pieces, rows, size = parts.shape
        by_span = (field.values @ parts.reshape(-1, size).T).reshape(-1, pieces, rows).transpose(0, 2, 1)
        changes[:, :, -self.growth.shape[2] :] += by_span @ self.growth
        return Field(values, changes)
