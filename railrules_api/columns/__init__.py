"""Rules over columns, and takeoffs over Arrow record batches: the same functions, next to where the data is.

`evaluate` puts whole columns to a rule without nested input: its own function takes them for numbers (`numbers`), to the
same bits. Where the registry does not say `columns`, the rule iterates or lists things, and rows are asked one by one.

`takeoff_totals` maps a record batch of jobs to a record batch of totals. It keeps no state and every row stands for itself, so it
runs unchanged in any engine that maps over batches, in however many processes; `summed` adds the totals up exactly, so that
the result hangs neither on the engine nor on how it cut the rows. NumPy and pyarrow are loaded when they are first needed.
"""

from __future__ import annotations

from dataclasses import fields
from functools import cache
from typing import TYPE_CHECKING, Any, Final

from railrules_api.api.arrow_stream import SUMS, TEXTS, schema
from railrules_api.api.arrow_stream import totals as totals_of
from railrules_api.api.resources import calculation_of
from railrules_api.api.service import Service, start
from railrules_api.columns.numbers import LARGEST, Column, OneByOne, Parting
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.exact_sum import ExactSum
from railrules_api.domain.fields import Slot, slots_of
from railrules_api.rules.registry import ALL, BY_ID

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from numpy.typing import NDArray

    from railrules_api.rules.model import Rule

__all__ = ["NUMBERS", "ColumnsError", "evaluate", "rules", "schema", "summed", "takeoff_totals", "takes_columns"]

NUMBERS: Final = frozenset({"quantity", "number", "count"})
_PLAIN: Final = NUMBERS | {"flag", "word", "text"}


class ColumnsError(ValueError):
    """Columns that a rule cannot be asked with; the message names the column, and the row where there is one."""


def takes_columns(rule: Rule[Any, Any]) -> bool:
    """Tell whether a rule can be asked with columns: its input has nothing nested in it."""
    return all(slot.shape in _PLAIN for slot in slots_of(rule.input))


def rules() -> tuple[Rule[Any, Any], ...]:
    """Return the rules that can be asked with columns."""
    return tuple(rule for rule in ALL if takes_columns(rule))


# ---------------------------------------------------------------- rules


def evaluate(rule: str, /, **given: Any) -> dict[str, NDArray[Any]]:  # noqa: ANN401  columns or single values of any shape
    """Put columns to a rule and return its numbers as columns, by name, in coherent SI like what is given.

    Args:
        rule: id of the rule.
        **given: inputs by name; a column, or one value for all rows.

    Returns:
        Columns of the numbers of the result. What is not there in any row is left out; in some rows, it is NaN.

    Raises:
        ColumnsError: there is no such rule, or it has nested input, or an input is missing, unknown, uneven or out of its limits.
        RefusedError: the rule refuses a row.
    """
    import numpy as np  # noqa: PLC0415  nothing else here needs it

    asked = BY_ID.get(rule)
    if asked is None or not takes_columns(asked):
        raise ColumnsError(f"{rule}: no rule without nested input has this id")
    slots = {slot.name: slot for slot in slots_of(asked.input)}
    unknown = [name for name in given if name not in slots]
    missing = [item.name for item in fields(asked.input) if item.name not in given and item.default is not None]
    if unknown or missing:
        raise ColumnsError(f"{rule}: unknown columns {unknown}, missing ones {missing}")
    columns = {
        name: np.asarray(value, dtype=float if slots[name].shape in {"quantity", "number"} else None)
        for name, value in given.items()
        if np.ndim(value)
    }
    if len({column.shape for column in columns.values()}) > 1 or any(column.ndim > 1 for column in columns.values()):
        raise ColumnsError(f"{rule}: the columns are not of one length")
    rows = len(next(iter(columns.values()))) if columns else 1
    for name, value in given.items():
        _check(slots[name], value)
    asking = _Asking(asked, given, columns, rows)
    asking.ask(rows)
    return asking.answer(rows)


def _check(slot: Slot, value: Any) -> None:  # noqa: ANN401
    import numpy as np  # noqa: PLC0415

    if slot.shape not in NUMBERS or value is None:
        return
    field = slot.field
    column = np.atleast_1d(np.asarray(value, dtype=float))
    good = np.isfinite(column)
    if field.above is not None:
        good &= column > field.above
    if field.at_least is not None:
        good &= column >= field.at_least
    if field.at_most is not None:
        good &= column <= field.at_most
    if not good.all():
        row = int(np.argmin(good))
        raise ColumnsError(f"{slot.name}, row {row}: {column[row]} is no number within its limits")


FEWEST: Final = 4
"""Rows that are asked one by one rather than together."""
MOST_LOTS: Final = 500
"""Lots after which a rule is taken to have no branches worth following, and its rows are asked one by one."""


class _Asking:
    """A rule asked with columns: lots of rows that take the same branches together, the rest one by one."""

    def __init__(self, rule: Rule[Any, Any], given: Mapping[str, Any], columns: Mapping[str, NDArray[Any]], rows: int) -> None:
        import numpy as np  # noqa: PLC0415

        self.rule = rule
        self.single = {name: value for name, value in given.items() if name not in columns}
        self.columns = columns
        self.numbers = {slot.name for slot in slots_of(rule.input) if slot.shape in NUMBERS}
        self.names = [slot.name for slot in slots_of(rule.output) if slot.shape in NUMBERS]
        self.told = {name: np.full(rows, np.nan) for name in self.names}
        self.fractions = dict.fromkeys(self.names, False)
        self.empty = dict.fromkeys(self.names, 0)
        self.refused: list[int] = []
        self.alone = 0

    def ask(self, rows: int) -> None:
        """Ask for all rows."""
        import numpy as np  # noqa: PLC0415

        lots = [np.arange(rows)]
        for name in self.columns.keys() - self.numbers:  # words and flags are the same for all rows of a lot
            column = self.columns[name]
            lots = [lot[column[lot] == value] for lot in lots for value in dict.fromkeys(column[lot].tolist())]
        done = 0
        while lots:
            lot = lots.pop()
            done += 1
            if len(lot) < FEWEST or done > MOST_LOTS:
                self._one_by_one(lot)
                continue
            try:
                self._together(lot)
            except Parting as parting:
                lots += [lot[~parting.mask], lot[parting.mask]]
            except (OneByOne, ArithmeticError):
                self._one_by_one(lot)

    def _together(self, lot: NDArray[Any]) -> None:
        values = {
            name: Column(column[lot]) if name in self.numbers else column[lot[0]].item() for name, column in self.columns.items()
        }
        try:
            found = self.rule.evaluate(self.rule.input(**self.single, **values))
        except RefusedError:
            self.refused.append(int(lot[0]))
            return
        for name in self.names:
            value = getattr(found, name)
            self._tell(name, lot, value.values if isinstance(value, Column) else value, len(lot))

    def _tell(self, name: str, lot: Any, value: Any, count: int) -> None:  # noqa: ANN401  an index or a row, a column or a number
        if value is None:
            self.empty[name] += count
            return
        self.told[name][lot] = value
        whole = value.dtype.kind in "iu" if hasattr(value, "dtype") else isinstance(value, int) and abs(value) <= LARGEST
        self.fractions[name] |= not whole

    def _one_by_one(self, lot: NDArray[Any]) -> None:
        self.alone += len(lot)
        for row in lot.tolist():
            try:
                found = self.row(row)
            except RefusedError:
                self.refused.append(row)
                return
            for name in self.names:
                self._tell(name, row, getattr(found, name), 1)

    def row(self, row: int) -> Any:  # noqa: ANN401  any rule's record
        """Ask for one row."""
        # item gives plain numbers, which is what a rule is made for
        return self.rule.evaluate(
            self.rule.input(**self.single, **{name: column[row].item() for name, column in self.columns.items()})
        )

    def answer(self, rows: int) -> dict[str, NDArray[Any]]:
        """Return the numbers found.

        Raises:
            RefusedError: of the first row that is refused.
        """
        if self.refused:
            first = min(self.refused)
            try:
                self.row(first)
            except RefusedError as error:
                raise error.below("row", first) from error
        return {
            name: told if self.fractions[name] or self.empty[name] else told.astype("int64")
            for name, told in self.told.items()
            if self.empty[name] < rows
        }


# ---------------------------------------------------------------- takeoffs


@cache
def _service() -> Service:
    """Return the service of this process; every worker of an engine makes its own."""
    return start()


def takeoff_totals(batch: Any, column: str = "job") -> Any:  # noqa: ANN401  of pyarrow, both
    """Take off every job of a record batch.

    Args:
        batch: a record batch or table with a column of jobs, each the JSON body of a takeoff request.
        column: its name.

    Returns:
        A record batch of `schema()`: `job` is the row in `batch`; a job that is refused has one row, with its `problem`.
    """
    bodies = (job if isinstance(job, bytes) else str(job).encode() for job in batch.column(column).to_pylist())
    return totals_of(bodies, calculation_of("takeoffs"), _service())


def summed(batches: Iterable[Any]) -> dict[tuple[str, str, str, str], tuple[int, float, float, float]]:
    """Add up batches of totals exactly: the same bits in any order, however they were cut.

    Returns:
        (item, product, direction, kind) -> jobs, and sums of net, order and mass, sorted; jobs that were refused stand under
        empty words. A mass that is not known adds nothing.
    """
    sums: dict[tuple[str, str, str, str], tuple[ExactSum, ExactSum, ExactSum]] = {}
    jobs: dict[tuple[str, str, str, str], int] = {}
    for batch in batches:
        rows = batch.to_pydict()
        for position in range(batch.num_rows):
            item, product, direction, kind = (rows[name][position] or "" for name in TEXTS)
            key = (item, product, direction, kind)
            jobs[key] = jobs.get(key, 0) + 1
            totals = sums.setdefault(key, (ExactSum(), ExactSum(), ExactSum()))
            for total, name in zip(totals, SUMS, strict=True):
                if rows[name][position] is not None:
                    total.add(rows[name][position])
    return {key: (jobs[key], *(total.value for total in sums[key])) for key in sorted(sums)}  # type: ignore[misc]
