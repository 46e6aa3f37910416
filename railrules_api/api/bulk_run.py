"""Running the lines of a bulk takeoff: cut out of chunks of bytes, answered in blocks, totalled, and vouched for by a digest.

Knows nothing of HTTP; `bulk` is the resource that reads and sends.
"""

from __future__ import annotations

import hashlib
import logging
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Annotated, Final

import msgspec
from msgspec import UNSET, Meta, UnsetType

from railrules_api.api.answering import amount_answer
from railrules_api.api.calculations import Calculation
from railrules_api.api.envelope import Versions
from railrules_api.api.problems import ProblemError
from railrules_api.api.replying import answer, bind, worked
from railrules_api.api.wire import amount_type
from railrules_api.domain.amounts import Amount
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.exact_sum import ExactSum
from railrules_api.domain.kinds import Kind

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from railrules_api.api.service import Service
    from railrules_api.rules.ordering import Order
    from railrules_api.units import System

_LOG = logging.getLogger("railrules")
LONGEST_LINE: Final = 2**20
"""Bytes of one line at most, some 800 segments; a longer job has the whole of `POST /v1/takeoffs` to itself."""
MOST_TOTALS: Final = 10_000
"""Different totals at most, so that invented item names cannot fill the memory."""


class BulkTotal(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The total of one item and product over all jobs that were answered: an exact sum, rounded once to a binary number."""

    item: Annotated[str, Meta(max_length=200, description="Id of the item.")]
    product: Annotated[str, Meta(max_length=200, description="Catalogue id of the product; empty where none is named.")]
    direction: Annotated[str, Meta(max_length=20, description="order, recover or work.")]
    jobs: Annotated[int, Meta(ge=1, le=2**53, description="Jobs that have it.")]
    net: Annotated[amount_type(), Meta(description="Sum of the jobs' net totals.")]  # type: ignore[valid-type]
    order: Annotated[amount_type(), Meta(description="Sum of what the jobs order.")]  # type: ignore[valid-type]
    mass: Annotated[amount_type(), Meta(description="Mass of that; left out where a job does not know it.")] | UnsetType = UNSET  # type: ignore[valid-type]


class BulkTrailer(msgspec.Struct, frozen=True, kw_only=True):
    """The last line: without it the answer is not complete."""

    lines: Annotated[int, Meta(ge=0, le=2**53, description="Lines that held something.")]
    answered: Annotated[int, Meta(ge=0, le=2**53, description="Jobs that were answered.")]
    refused: Annotated[int, Meta(ge=0, le=2**53, description="Lines that ended in a problem.")]
    digest: Annotated[
        str,
        Meta(
            max_length=80,
            pattern=r"^sha-256:[0-9a-f]{64}$",
            description="SHA-256 of every byte of the answer before this line.",
        ),
    ]
    totals: Annotated[list[BulkTotal], Meta(max_length=MOST_TOTALS, description="Totals by item and product, sorted by both.")]
    versions: Annotated[Versions, Meta(description="What answered.")]


@dataclass(slots=True)
class _Total:
    jobs: int = 0
    net: ExactSum = field(default_factory=ExactSum)
    order: ExactSum = field(default_factory=ExactSum)
    mass: ExactSum | None = field(default_factory=ExactSum)

    def add(self, order: Order) -> None:
        """Add what a job has of the item."""
        self.jobs += 1
        self.net.add(order.net.value)
        self.order.add(order.order.value)
        mass = order.order_mass if order.direction == "order" else order.net_mass
        if mass is None or self.mass is None:
            self.mass = None
        else:
            self.mass.add(mass)


class Lines:
    """Cuts chunks of bytes, wherever they begin and end, into numbered lines; a line that is too long comes without its bytes."""

    def __init__(self, longest: int = LONGEST_LINE) -> None:
        """Begin with line 1."""
        self.longest = longest
        self.number = 0
        self._parts: list[bytes] = []
        self._size = 0

    def feed(self, chunk: bytes) -> Iterator[tuple[int, bytes | None]]:
        """Yield the lines that a chunk completes."""
        *complete, rest = chunk.split(b"\n")
        for piece in complete:
            self._add(piece)
            yield from self._line()
        self._add(rest)

    def end(self) -> Iterator[tuple[int, bytes | None]]:
        """Yield the last line, if it has no line end."""
        if self._size:
            yield from self._line()

    def _add(self, piece: bytes) -> None:
        self._size += len(piece)
        if self._size > self.longest:
            self._parts.clear()
        elif piece:
            self._parts.append(piece)

    def _line(self) -> Iterator[tuple[int, bytes | None]]:
        self.number += 1
        line = None if self._size > self.longest else b"".join(self._parts)
        self._parts.clear()
        self._size = 0
        if line is None or line.strip():
            yield self.number, line


class Run:
    """The answers to one stream of jobs: lines in, bytes out, a trailer at the end. Knows nothing of HTTP."""

    def __init__(self, resource: Calculation, service: Service, *, system: System = "us", totals_only: bool = False) -> None:
        """Begin a stream.

        Args:
            resource: the takeoff as a resource.
            service: what answers.
            system: units of the totals.
            totals_only: say nothing of a job that could be answered; its totals are in the trailer.
        """
        self.resource, self.service = resource, service
        self.system: System = system
        self.totals_only = totals_only
        self.answered = self.refused = 0
        self._digest = hashlib.sha256()
        self._totals: dict[tuple[str, str, str, Kind | None, tuple[str, str] | None], _Total] = {}

    def work(self, lines: Iterable[tuple[int, bytes | None]]) -> bytes:
        """Answer some lines."""
        told = b"".join(self._answered(number, line) for number, line in lines)
        self._digest.update(told)
        return told

    def _answered(self, number: int, line: bytes | None) -> bytes:
        if line is None:
            detail = f"the line is longer than {LONGEST_LINE} bytes; ask POST /v1/takeoffs for a job of that size"
            return self._refused(number, ProblemError(413, detail))
        try:
            found = self._job(line)
        except ProblemError as problem:
            return self._refused(number, problem)
        except Exception as error:  # noqa: BLE001  the lines after it are to be answered whatever this one holds
            _LOG.error("unhandled error in a line of a bulk takeoff", exc_info=error)
            return self._refused(number, ProblemError(500, "the service failed on this line; the fault is ours"))
        self.answered += 1
        return b"" if self.totals_only else b'{"line":%d,"answer":%b}\n' % (number, found)

    def _refused(self, number: int, problem: ProblemError) -> bytes:
        self.refused += 1
        return b'{"line":%d,"problem":%b}\n' % (number, problem.body())

    def _job(self, line: bytes) -> bytes:
        if not self.totals_only:
            return answer(self.resource, line, self.service)
        bound = bind(self.resource, line, self.service)
        found, _ = worked(self.resource, bound, self.service)
        orders: tuple[Order, ...] = found.orders
        keys = [(order.item, order.product, order.direction, order.net.kind, order.net.answer) for order in orders]
        if len(self._totals) + sum(key not in self._totals for key in keys) > MOST_TOTALS:
            raise ProblemError(422, f"the jobs before and this one have more than {MOST_TOTALS} different items")
        for key, order in zip(keys, orders, strict=True):
            self._totals.setdefault(key, _Total()).add(order)
        return b""

    def trailer(self) -> bytes:
        """Return the last line."""
        book = self.service.house
        return b'{"trailer":%b}\n' % msgspec.json.encode(
            BulkTrailer(
                lines=self.answered + self.refused,
                answered=self.answered,
                refused=self.refused,
                digest=f"sha-256:{self._digest.hexdigest()}",
                totals=list(self._told()),
                versions=self.service.versions(book),
            )
        )

    def _told(self) -> Iterator[BulkTotal]:
        for (item, product, direction, kind, told_in), total in sorted(self._totals.items(), key=lambda entry: entry[0][:3]):
            try:
                yield BulkTotal(
                    item=item,
                    product=product,
                    direction=direction,
                    jobs=total.jobs,
                    net=amount_answer(Amount(total.net.value, kind, told_in), self.system),
                    order=amount_answer(Amount(total.order.value, kind, told_in), self.system),
                    mass=UNSET if total.mass is None else amount_answer(Amount(total.mass.value, Kind.MASS), self.system),
                )
            except RefusedError:
                _LOG.warning("a total of a bulk takeoff is beyond every number that is told, and is left out")
