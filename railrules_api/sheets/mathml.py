"""A formula text as MathML, in symbols or with printed numbers in their place."""

from __future__ import annotations

import ast
import re
from html import escape
from typing import TYPE_CHECKING, Final

from railrules_api.sheets.expressions import tree_of
from railrules_api.sheets.numbers import MINUS, Printed

if TYPE_CHECKING:
    from collections.abc import Mapping

_GREEK: Final = {
    "alpha": "α", "beta": "β", "gamma": "γ", "delta": "δ", "theta": "θ", "lambda": "λ", "mu": "μ", "sigma": "σ", "tau": "τ",
    "dT": "ΔT",
}  # fmt: skip
_SUM, _PRODUCT, _SIGN, _POWER, _ATOM = range(5)
"""How tightly an expression holds together; a looser one inside a tighter one stands in brackets."""


def symbol(name: str) -> str:
    """Return a symbol of a rule: Greek by name, what follows an underscore as a subscript.

    >>> symbol("sigma_1")
    '<msub><mi>σ</mi><mn>1</mn></msub>'
    """
    base, _, below = name.partition("_")
    letter = _identifier(_GREEK.get(base, base))
    if not below:
        return letter
    index = f"<mn>{below}</mn>" if below.isdigit() else _identifier(_GREEK.get(below, below).replace("_", ","))
    return f"<msub>{letter}{index}</msub>"


def _identifier(name: str) -> str:
    """Set a name: one letter slanted, a word upright."""
    upright = ' mathvariant="normal"' if len(name) > 1 else ""
    return f"<mi{upright}>{escape(name)}</mi>"


def number(value: Printed) -> str:
    """Return a printed number with its unit."""
    sign, digits = ("<mo>−</mo>", value.mantissa[1:]) if value.mantissa.startswith(MINUS) else ("", value.mantissa)
    power = ""
    if value.exponent:
        sign_of_power = "<mo>−</mo>" if value.exponent < 0 else ""
        power = f"<mo>×</mo><msup><mn>10</mn><mrow>{sign_of_power}<mn>{abs(value.exponent)}</mn></mrow></msup>"
    unit = f"<mtext>\u00a0{escape(value.label)}</mtext>" if value.unit else ""
    return f'<mrow class="n">{sign}<mn>{escape(digits)}</mn>{power}{unit}</mrow>'


def _within(opening: str, inside: str, closing: str) -> str:
    """Set something between brackets, which grow with a fraction; a setter that knows no MathML needs telling."""
    tall = ' class="tall"' if "<mfrac>" in inside else ""
    return f"<mo{tall}>{opening}</mo>{inside}<mo{tall}>{closing}</mo>"


class _Setter:
    """Sets a tree, with numbers for those of its symbols that have one."""

    def __init__(self, numbers: Mapping[str, Printed]) -> None:
        self.numbers = numbers
        self.times = "×" if numbers else "·"

    def held(self, node: ast.expr, least: int) -> str:
        """Set a part, in brackets where it holds together less tightly than its place asks."""
        text, tightness = self.put(node)
        return text if tightness >= least else f"<mrow>{_within('(', text, ')')}</mrow>"

    def name(self, name: str) -> tuple[str, int]:
        value = self.numbers.get(name)
        if value is None:
            return symbol(name), _ATOM
        tightness = _SUM if value.mantissa.startswith(MINUS) else _PRODUCT if value.exponent else _SIGN if value.unit else _ATOM
        return number(value), tightness

    def call(self, name: str, arguments: list[ast.expr]) -> tuple[str, int]:
        if name == "sqrt":
            return f"<msqrt>{self.put(arguments[0])[0]}</msqrt>", _ATOM
        if name == "abs":
            return f"<mrow>{_within('|', self.put(arguments[0])[0], '|')}</mrow>", _ATOM
        if name == "ceil":
            return f"<mrow>{_within('⌈', self.put(arguments[0])[0], '⌉')}</mrow>", _ATOM
        if name == "floor":
            return f"<mrow>{_within('⌊', self.put(arguments[0])[0], '⌋')}</mrow>", _ATOM
        inside = "<mo>,</mo>".join(self.put(argument)[0] for argument in arguments)
        return f"<mrow>{_identifier(name)}{_within('(', inside, ')')}</mrow>", _ATOM

    def put(self, node: ast.expr) -> tuple[str, int]:  # noqa: PLR0911  one return a form
        """Set a part; return it and how tightly it holds together."""
        match node:
            case ast.Constant(value=3.141592653589793):
                return "<mi>π</mi>", _ATOM
            case ast.Constant(value=value):
                return f"<mn>{value!r}</mn>", _ATOM
            case ast.Name(id=name):
                return self.name(name)
            case ast.UnaryOp(op=ast.USub(), operand=operand):
                return f"<mrow><mo>−</mo>{self.held(operand, _PRODUCT)}</mrow>", _SUM
            case ast.BinOp(op=ast.Div()):
                return self.fraction(node), _SIGN
            case ast.BinOp(left=left, op=ast.Pow(), right=right):
                return f"<msup>{self.held(left, _ATOM)}<mrow>{self.put(right)[0]}</mrow></msup>", _POWER
            case ast.BinOp(left=left, op=ast.Mult(), right=right):
                first = self.put(left)[0] if isinstance(left, ast.UnaryOp) else self.held(left, _PRODUCT)
                product = f"{first}<mo>{self.times}</mo>{self.held(right, _PRODUCT)}"
                return f"<mrow>{product}</mrow>", _PRODUCT
            case ast.BinOp(left=left, op=operator, right=right):
                sign = "+" if isinstance(operator, ast.Add) else "−"
                first = self.put(left)[0] if not isinstance(left, ast.Name) or left.id not in self.numbers else self.lead(left.id)
                return f"<mrow>{first}<mo>{sign}</mo>{self.held(right, _PRODUCT)}</mrow>", _SUM
            case ast.Call(func=ast.Name(id=name), args=arguments):
                return self.call(name, arguments)
        return f"<mtext>{escape(ast.unparse(node))}</mtext>", _ATOM

    def fraction(self, node: ast.expr) -> str:
        """Set a quotient; what is divided twice stands over the product of both."""
        below: list[ast.expr] = []
        while isinstance(node, ast.BinOp) and isinstance(node.op, ast.Div):
            below.insert(0, node.right)
            node = node.left
        if len(below) == 1:
            under = self.put(below[0])[0]
        else:
            under = f"<mo>{self.times}</mo>".join(self.held(part, _PRODUCT) for part in below)
        return f"<mfrac><mrow>{self.put(node)[0]}</mrow><mrow>{under}</mrow></mfrac>"

    def parts(self, node: ast.expr) -> list[str]:
        """Set a sum or product in parts between which a line may end, each but the first with its sign in front."""
        match node:
            case ast.BinOp(left=left, op=ast.Mult(), right=right) if self._goes_on(left, ast.Mult):
                return [*self.parts(left), f'<mo form="infix">{self.times}</mo>{self.held(right, _PRODUCT)}']
            case ast.BinOp(left=left, op=ast.Add() | ast.Sub() as operator, right=right):
                sign = "+" if isinstance(operator, ast.Add) else "−"
                first, *others = self.factors(right)
                return [*self.parts(left), f'<mo form="infix">{sign}</mo>{first}', *others]
        return [self.lead(node.id) if isinstance(node, ast.Name) and node.id in self.numbers else self.put(node)[0]]

    def factors(self, node: ast.expr) -> list[str]:
        """Set what follows a sign in parts: a product ends its line between its factors too."""
        match node:
            case ast.BinOp(left=left, op=ast.Mult(), right=right) if self._goes_on(left, ast.Mult):
                return [*self.factors(left), f'<mo form="infix">{self.times}</mo>{self.held(right, _PRODUCT)}']
        return [self.held(node, _PRODUCT)]

    def _goes_on(self, left: ast.expr, operator: type[ast.operator]) -> bool:
        """Tell whether the left side of a product needs no brackets."""
        if isinstance(left, ast.BinOp):
            return isinstance(left.op, (operator, ast.Div, ast.Pow))
        number = self.numbers.get(left.id) if isinstance(left, ast.Name) else None
        return number is None or not number.mantissa.startswith(MINUS)

    def lead(self, name: str) -> str:
        """Set a number that begins a sum: a minus sign in front needs no brackets."""
        return number(self.numbers[name])


def expression(text: str, numbers: Mapping[str, Printed] | None = None) -> str:
    """Return the inside of a `math` element for a formula text.

    >>> expression("2 * P")
    '<mrow><mn>2</mn><mo>·</mo><mi>P</mi></mrow>'
    """
    return _Setter(numbers or {}).put(tree_of(text))[0]


def in_parts(text: str, numbers: Mapping[str, Printed] | None = None, lead: str = "") -> str:
    """Return a formula text as `math` elements between which a line may end, since no browser breaks a formula itself.

    >>> in_parts("a + b * c").count("<wbr>")
    2
    """
    first, *others = _Setter(numbers or {}).parts(tree_of(text))
    return "<wbr>".join(math(part) for part in (lead + first, *others))


_NAMED: Final = re.compile(r"\b([A-Za-z]+)_([A-Za-z0-9]+)\b")
_MINUS_OF: Final = re.compile(r"(?<![\w)])-(?=[A-Za-z(])")
_POWER_OF: Final = re.compile(r"([A-Za-z0-9)])(?:\^|\*\*)(\d+)")
_SIGNS: Final = {"&lt;=": "≤", "&gt;=": "≥", " * ": " × ", " - ": " − ", "sqrt(": "√("}


def in_words(text: str) -> str:
    """Return a formula that is told in words as HTML, its letters and signs as they are written by hand.

    >>> in_words("sum of n_c <= c * k")
    'sum of <i>n</i><sub>c</sub> ≤ c × k'
    """
    told = escape(text)
    for typed, written in _SIGNS.items():
        told = told.replace(typed, written)
    told = _MINUS_OF.sub("−", told)
    told = _POWER_OF.sub(r"\1<sup>\2</sup>", told)
    return _NAMED.sub(lambda found: f"<i>{_GREEK.get(found[1], found[1])}</i><sub>{found[2]}</sub>", told)


def math(inside: str) -> str:
    """Return a `math` element."""
    return f'<math displaystyle="true">{inside}</math>'
