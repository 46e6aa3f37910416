"""The formula texts of the rules as trees: evaluated with numbers, and set in MathML."""

from __future__ import annotations

import ast
import math
from functools import cache
from typing import TYPE_CHECKING, Final

from railrules_api.domain.counting import round_down, round_up

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

FUNCTIONS: Final[dict[str, Callable[..., float]]] = {
    "abs": abs,
    "atan": math.atan,
    "ceil": round_up,  # as orders are rounded: float noise above a whole number does not cost one more
    "cos": math.cos,
    "exp": math.exp,
    "floor": round_down,
    "max": max,
    "min": min,
    "sin": math.sin,
    "sqrt": math.sqrt,
}
_BINARY: Final[dict[type[ast.operator], Callable[[float, float], float]]] = {
    ast.Add: lambda left, right: left + right,
    ast.Sub: lambda left, right: left - right,
    ast.Mult: lambda left, right: left * right,
    ast.Div: lambda left, right: left / right,
    ast.Pow: lambda left, right: float(left**right),
}


class NoFormulaError(ValueError):
    """A text that is not an expression of numbers, symbols and known functions."""


@cache
def tree_of(text: str) -> ast.expr:
    """Return the tree of a formula text.

    Raises:
        NoFormulaError: it is not an expression.
    """
    try:
        return ast.parse(text, mode="eval").body
    except SyntaxError as error:
        raise NoFormulaError(text) from error


def symbols_in(text: str) -> tuple[str, ...]:
    """Return the symbols of a formula text in order of appearance.

    >>> symbols_in("-E * A * max(0, T_N - T)")
    ('E', 'A', 'T_N', 'T')
    """
    names = [node for node in ast.walk(tree_of(text)) if isinstance(node, ast.Name) and node.id not in FUNCTIONS]
    return tuple(dict.fromkeys(node.id for node in sorted(names, key=lambda node: node.col_offset)))


def evaluate(text: str, numbers: Mapping[str, float]) -> float:
    """Return the value of a formula text.

    Raises:
        NoFormulaError: something in it is not arithmetic.
        KeyError: a symbol has no number.
        ArithmeticError, ValueError: the numbers give no result.
    """
    return _value(tree_of(text), numbers)


def _value(node: ast.expr, numbers: Mapping[str, float]) -> float:
    match node:
        case ast.Constant(value=int() | float() as value):
            return value
        case ast.Name(id=name):
            return numbers[name]
        case ast.UnaryOp(op=ast.USub(), operand=operand):
            return -_value(operand, numbers)
        case ast.BinOp(left=left, op=operator, right=right) if type(operator) in _BINARY:
            return _BINARY[type(operator)](_value(left, numbers), _value(right, numbers))
        case ast.Call(func=ast.Name(id=name), args=arguments) if name in FUNCTIONS:
            return FUNCTIONS[name](*(_value(argument, numbers) for argument in arguments))
    raise NoFormulaError(ast.unparse(node))
