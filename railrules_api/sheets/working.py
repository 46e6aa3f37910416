"""The lines of a working: symbol, formula, numbers, result, so printed that each follows from what is printed."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any, Final, NamedTuple

from railrules_api.domain.amounts import Amount
from railrules_api.domain.fields import slots_of
from railrules_api.domain.kinds import Kind
from railrules_api.rules.written import written
from railrules_api.sheets.expressions import evaluate, symbols_in
from railrules_api.sheets.numbers import MOST, USUAL, Printed, in_unit, printed
from railrules_api.units import UNITS, Unit, answer_unit

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Mapping

    from railrules_api.domain.fields import Slot
    from railrules_api.rules.model import Formula, Working
    from railrules_api.units import System

_SAME: Final = 1e-9
_LOST: Final = 1e-15
"""What a difference of two numbers that are nearly one may be out by; far below any quantity in SI that stands on a sheet."""
_SHIFTS: Final = (1.07, 0.93, 1.13, 0.89, 1.19, 0.83, 1.29, 0.79, 1.31, 0.73)
_NOISE: Final = 1e-12
_IN_SI: Final = "worked in coherent SI"
# units that go together where the usual ones of an answer do not
_TOGETHER: Final[dict[str, tuple[dict[Kind, str], ...]]] = {
    "us": ({}, {Kind.LENGTH: "in", Kind.VOLUME: "in3"}, {Kind.LENGTH: "yd"}, {Kind.LENGTH: "ft", Kind.AREA: "ft2"}),
    "si": (
        {},
        {
            Kind.LENGTH: "mm", Kind.AREA: "mm2", Kind.FORCE: "N", Kind.SECTION_MODULUS: "mm3", Kind.SECOND_MOMENT: "mm4",
            Kind.FORCE_PER_TEMPERATURE: "N_per_K",
        },
        {Kind.LENGTH: "m", Kind.AREA: "m2", Kind.VOLUME: "m3", Kind.SECTION_MODULUS: "m3"},
    ),
}  # fmt: skip
# what a further step costs, in digits: another unit for the result, other units than the answer's, units of neither system
_STEP_COST, _OTHER_COST, _SI_COST = 4, 4, 12


class Number(NamedTuple):
    """A number of a record, SI, with the kind it is of and the units it is usually answered in."""

    value: float
    kind: Kind | None
    answer: tuple[str, str] | None


@dataclass(frozen=True, slots=True)
class WorkedLine:
    """One formula of one rule with its numbers.

    Attributes:
        symbol: what it gives; empty where the result has no letter.
        meaning: the result in words.
        formula: the right-hand side.
        exact: the formula is arithmetic; False where it is told in words.
        text: the arithmetic that the numbers are put into: the formula, or what it comes to in this use.
        numbers: printed numbers by symbol; empty where none are put in.
        results: the result, and once more where the answer has it in another unit.
        units: what the numbers of the line are in, where it is not the answer's units.
        number: place among the rule's formulas, from 1.
        of: the part of the result that the line is about; empty for the whole.
        note: the row of a table that was read, or the case that holds.
    """

    symbol: str
    meaning: str
    formula: str
    exact: bool
    text: str
    numbers: Mapping[str, Printed]
    results: tuple[Printed, ...]
    units: str
    number: int
    of: str = ""
    note: str = ""


def number_of(slot: Slot, value: Any) -> Number | None:  # noqa: ANN401  a field of any record
    """Return the number in a field; None where there is none."""
    if isinstance(value, Amount):
        wanted = value.answer or slot.field.answer
        if wanted is not None and (value.kind is None or wanted[0] not in UNITS[value.kind]):
            wanted = None  # a field may hold amounts of several kinds, and prefer units for one of them
        return Number(value.value, value.kind, wanted)
    if isinstance(value, bool) or not isinstance(value, (int, float)):
        return None
    return Number(value, slot.field.kind, slot.field.answer)


def symbols_of(record: Any) -> dict[str, Number]:  # noqa: ANN401  any described record
    """Return the numbers of a record and of the records in it by their symbols; the first of a name wins."""
    found: dict[str, Number] = {}
    for slot in slots_of(type(record)):
        value = getattr(record, slot.name)
        if slot.shape == "record" and value is not None:
            for name, number in symbols_of(value).items():
                found.setdefault(name, number)
        elif slot.field.symbol:
            held = number_of(slot, value)
            if held is not None:
                found.setdefault(slot.field.symbol, held)
    return found


def usual_unit(number: Number, system: System) -> Unit | None:
    """Return the unit in which the answer has a number."""
    return None if number.kind is None else answer_unit(number.kind, system, number.answer)


def shown(number: Number, system: System, *, significant: int = USUAL) -> Printed:
    """Print a number in the unit in which the answer has it."""
    unit = usual_unit(number, system)
    if unit is None:
        return printed(number.value, system, significant=significant)
    return in_unit(number.value, unit, system, significant=significant)


# ---------------------------------------------------------------- which units a line is worked in


def _unit_sets(system: System) -> Iterator[tuple[int, str, Callable[[Number], Unit | None]]]:
    """Yield ways of choosing units with what they cost; the last always fits, for rules are written in coherent SI."""
    yield 0, "", lambda number: usual_unit(number, system)
    for together in _TOGETHER[system]:
        yield _OTHER_COST, "", _by_kind(together, system)
    yield _SI_COST, _IN_SI, lambda number: None if number.kind is None else next(iter(UNITS[number.kind].values()))


def _by_kind(together: Mapping[Kind, str], system: System) -> Callable[[Number], Unit | None]:
    def choose(number: Number) -> Unit | None:
        if number.kind is None:
            return None
        code = together.get(number.kind)
        return answer_unit(number.kind, system) if code is None else UNITS[number.kind][code]

    return choose


def _in(number: Number, unit: Unit | None) -> float:
    return number.value if unit is None else unit.from_si(number.value)


def _close(one: float, other: float) -> bool:
    return abs(one - other) <= max(_SAME * max(abs(one), abs(other)), _LOST)


def _result_unit(kind: Kind | None, wanted: Unit | None, true: tuple[float, float], got: tuple[float, float]) -> Unit | None:
    """Return the unit of a kind in which a formula came out, at two points; the wanted one first.

    Raises:
        LookupError: in none.
    """
    units: list[Unit | None] = [wanted] if kind is None else [wanted, *UNITS[kind].values()]
    for unit in units:
        if all(_close(value if unit is None else unit.from_si(value), other) for value, other in zip(true, got, strict=True)):
            return unit
    raise LookupError


@dataclass(frozen=True, slots=True)
class _Choice:
    """Units in which a formula holds for the numbers as they stand."""

    cost: int
    about: str
    units: Mapping[str, Unit | None]
    worked_in: Unit | None


def _choices(formula: str, given: Mapping[str, Number], result: Number, system: System) -> Iterator[_Choice]:
    """Yield the choices of units in which a formula holds, here and beside here, so that no chance makes units agree."""
    beside = {
        name: number._replace(value=number.value * _SHIFTS[place % len(_SHIFTS)])
        for place, (name, number) in enumerate(given.items())
    }
    try:
        if not _close(evaluate(formula, {name: number.value for name, number in given.items()}), result.value):
            return  # a letter that two fields share: better no numbers than wrong ones
        true = (result.value, evaluate(formula, {name: number.value for name, number in beside.items()}))
    except (ArithmeticError, ValueError):
        return
    for cost, about, choose in _unit_sets(system):
        units = {name: choose(number) for name, number in given.items()}
        try:
            here = evaluate(formula, {name: _in(number, units[name]) for name, number in given.items()})
            there = evaluate(formula, {name: _in(number, units[name]) for name, number in beside.items()})
            worked_in = _result_unit(result.kind, usual_unit(result, system), true, (here, there))
        except (ArithmeticError, ValueError, LookupError):
            continue  # units that do not go together may even give the root of a negative number
        yield _Choice(cost, about, units, worked_in)


# ---------------------------------------------------------------- how many digits it takes


def _near(one: float, printed_as: Printed) -> bool:
    """Tell whether a number is what is printed, to half a unit of the last digit."""
    return abs(one - printed_as.value) <= printed_as.half + abs(one) * _NOISE


def follows(formula: str, numbers: Mapping[str, Printed], result: Printed) -> bool:
    """Tell whether a printed result follows from printed numbers to half a unit of its last digit."""
    try:
        return _near(evaluate(formula, {name: number.value for name, number in numbers.items()}), result)
    except (ArithmeticError, ValueError):
        return False


def _print(number: Number, unit: Unit | None, system: System, significant: int) -> Printed:
    return printed(_in(number, unit), system, significant=significant, unit="" if unit is None else unit.label)


def _results(number: Number, worked_in: Unit | None, system: System, significant: int) -> tuple[Printed, ...]:
    """Return the result in the unit it was worked in, and in the answer's own where that is another."""
    last = shown(number, system, significant=significant)
    wanted = usual_unit(number, system)
    if worked_in is None or wanted is None or worked_in.code == wanted.code:
        return (last,)
    first = _print(number, worked_in, system, MOST)
    for digits in range(MOST - 1, significant - 1, -1):
        fewer = _print(number, worked_in, system, digits)
        if not _near(wanted.from_si(worked_in.to_si(fewer.value)), last):
            break
        first = fewer
    return first, last


_Set = tuple[int, "_Choice", dict[str, Printed], tuple[Printed, ...]]


def _set(formula: str, given: Mapping[str, Number], result: Number, choice: _Choice, system: System) -> _Set | None:
    """Print a line in the units chosen: with the usual digits, with a few more, or with as many as it takes."""
    for digits, most in ((USUAL, USUAL + 2), (USUAL + 1, USUAL + 3), (USUAL + 2, USUAL + 4), (USUAL, MOST)):
        results = _results(result, choice.worked_in, system, digits)
        for significant in range(USUAL, most + 1):
            put = {name: _print(number, choice.units[name], system, significant) for name, number in given.items()}
            if follows(formula, put, results[0]):
                cost = choice.cost + _STEP_COST * len(results) + sum(len(number.mantissa) for number in put.values())
                return cost, choice, put, results
    return None


def _put(line: WorkedLine, given: Mapping[str, Number], result: Number, system: System) -> WorkedLine:
    """Return a line with its numbers, in the units in which they show best; without, where they do not give the result."""
    choices = _choices(line.text, given, result, system)
    sets = [found for choice in choices if (found := _set(line.text, given, result, choice, system)) is not None]
    if not sets:
        return line
    _, chosen, put, results = min(sets, key=lambda found: found[0])
    return replace(line, numbers=put, results=results, units=chosen.about)


def _told(working: Working, place: int, formula: Formula) -> WorkedLine:
    """Return a formula without numbers or result."""
    slot = next(slot for slot in slots_of(type(working.found)) if slot.name == formula.gives)
    return WorkedLine(
        symbol=slot.field.symbol, meaning=slot.field.about.rstrip("."), formula=formula.text, exact=formula.exact,
        text=formula.text if formula.exact else "", numbers={}, results=(), units="", number=place,
    )  # fmt: skip


def _number(amount: Amount) -> Number:
    return Number(amount.value, amount.kind, amount.answer)


def written_lines(working: Working, place: int, formula: Formula, system: System) -> Iterator[WorkedLine]:
    """Yield a formula that is told in words as it is written out for one use, line by line."""
    told = _told(working, place, formula)
    for item in written(working.rule, place, working.given, working.found):
        result = _number(item.result)
        line = replace(told, text=item.text, of=item.of, note=item.note, results=(shown(result, system),))
        yield _put(line, {name: _number(item.numbers[name]) for name in symbols_in(item.text)}, result, system)


def worked_line(formula: Formula, place: int, working: Working, system: System) -> WorkedLine:
    """Return a formula that is arithmetic with the numbers of one use; without a result where the rule gave none."""
    told = _told(working, place, formula)
    slot = next(slot for slot in slots_of(type(working.found)) if slot.name == formula.gives)
    result = number_of(slot, getattr(working.found, formula.gives))
    if result is None:
        return told
    line = replace(told, results=(shown(result, system),))
    numbers = {**symbols_of(working.found), **symbols_of(working.given)}
    names = symbols_in(formula.text)
    if any(name not in numbers for name in names):
        return line
    return _put(line, {name: numbers[name] for name in names}, result, system)


def worked_lines(working: Working, system: System) -> tuple[WorkedLine, ...]:
    """Return every formula of a rule with the numbers of one use; those whose result is not there are left out."""
    lines: list[WorkedLine] = []
    for place, formula in enumerate(working.rule.formulas, 1):
        if not formula.holds_for(working.given):
            continue
        if formula.exact:
            lines.append(worked_line(formula, place, working, system))
        else:
            lines += written_lines(working, place, formula, system)
    return tuple(line for line in lines if line.results)
