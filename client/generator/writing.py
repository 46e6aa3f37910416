"""Python text: docstrings, wrapped calls, and type expressions for schemas."""

from __future__ import annotations

import keyword
import textwrap
from typing import TYPE_CHECKING, cast

from generator.reading import GenerationError, camel, reference

if TYPE_CHECKING:
    from collections.abc import Iterable

    from generator.reading import Tree

WIDTH = 120
_TAB = "    "
_HUGE = 1e15
"""Bounds from here on only keep numbers finite; telling them helps nobody."""


def safe_name(name: str) -> str:
    """Return a property's name as a Python name."""
    cleaned = "".join(letter if letter.isalnum() or letter == "_" else "_" for letter in name)
    if not cleaned or cleaned[0].isdigit():
        cleaned = f"_{cleaned}"
    return f"{cleaned}_" if keyword.iskeyword(cleaned) else cleaned


def sentence(text: str) -> str:
    """Return a text as one line that ends like a sentence."""
    joined = " ".join(text.split())
    return joined if not joined or joined[-1] in ".!?:" else f"{joined}."


def _escaped(text: str) -> str:
    return text.replace("\\", "\\\\").replace('"""', '\\"\\"\\"')


def wrapped(text: str, indent: str, hanging: str | None = None) -> list[str]:
    """Return a text in lines no longer than the page is wide."""
    return textwrap.wrap(
        _escaped(text),
        WIDTH,
        initial_indent=indent,
        subsequent_indent=indent + _TAB if hanging is None else hanging,
        break_long_words=False,
        break_on_hyphens=False,
    )


def docstring(indent: str, text: str, sections: Iterable[tuple[str, list[tuple[str, str]]]] = ()) -> list[str]:
    """Return a docstring in the google convention: a text, then sections of named entries."""
    paragraphs = [part for part in text.split("\n\n") if part.strip()]
    first = wrapped(sentence(paragraphs[0]), indent, indent)
    first[0] = f'{indent}"""{first[0].removeprefix(indent)}'
    lines = first
    for part in paragraphs[1:]:
        lines += ["", *wrapped(sentence(part), indent, indent)]
    for title, entries in sections:
        if entries:
            lines += ["", f"{indent}{title}:"]
        for name, about in entries:
            lines += wrapped(f"{name}: {about}" if name else about, indent + _TAB)
    if len(lines) == 1 and len(lines[0]) + 3 <= WIDTH and not lines[0].endswith('"'):
        return [f'{lines[0]}"""']
    return [*lines, f'{indent}"""']


def call(indent: str, head: str, arguments: list[str], tail: str) -> list[str]:
    """Return `head(arguments)tail` on one line where it fits, else one argument a line."""
    one = f"{indent}{head}({', '.join(arguments)}){tail}"
    if len(one) <= WIDTH:
        return [one]
    return [f"{indent}{head}(", *(f"{indent}{_TAB}{argument}," for argument in arguments), f"{indent}){tail}"]


def literal(values: Iterable[object]) -> str:
    """Return a closed list of words or numbers as a type."""
    inner = ", ".join(f'"{value}"' if isinstance(value, str) else repr(value) for value in values)
    return f"Literal[{inner}]"


def tuple_lines(indent: str, head: str, words: list[str]) -> list[str]:
    """Return `head = (words)` wrapped as a paragraph."""
    one = f"{indent}{head} = ({', '.join(words)}{',' if len(words) == 1 else ''})"
    if len(one) <= WIDTH:
        return [one]
    body = textwrap.wrap(", ".join(words) + ",", WIDTH, initial_indent=indent + _TAB, subsequent_indent=indent + _TAB)
    return [f"{indent}{head} = (", *body, f"{indent})"]


def broken(line: str) -> list[str]:
    """Return a line of code with its closed list of words as a paragraph, where it is too long for one line."""
    head, opening, rest = line.partition("Literal[")
    if len(line) <= WIDTH or not opening:
        return [line]
    words, _, tail = rest.partition("]")
    indent = head[: len(head) - len(head.lstrip())]
    inner = indent + _TAB
    body = textwrap.wrap(f"{words},", WIDTH, initial_indent=inner, subsequent_indent=inner, break_on_hyphens=False)
    return [f"{head}Literal[", *body, f"{indent}]{tail}"]


def literal_lines(indent: str, head: str, values: list[str]) -> list[str]:
    """Return `head = Literal[...]` wrapped as a paragraph."""
    return broken(f"{indent}{head} = {literal(values)}")


_PLAIN = {"string": "str", "number": "float", "integer": "int", "boolean": "bool", "null": "None"}
_CONTAINERS = {  # requests take any sequence or mapping, so that tuples and subclasses go in as well
    ("array", True): "list[{}]",
    ("array", False): "Sequence[{}]",
    ("object", True): "dict[str, {}]",
    ("object", False): "Mapping[str, {}]",
}
_BOUNDS = (
    ("exclusiveMinimum", "more than"),
    ("minimum", "at least"),
    ("exclusiveMaximum", "less than"),
    ("maximum", "at most"),
)


def _union(arms: list[str]) -> str:
    return " | ".join(dict.fromkeys(arm for arm in arms if arm != "None")) + (" | None" if "None" in arms else "")


def type_of(schema: Tree, *, answer: bool, measured: frozenset[str] = frozenset()) -> str:
    """Return the Python type of a schema.

    Args:
        schema: of a property, an item or a parameter.
        answer: it is read from answers. There a closed list of words is a plain `str`, because a newer service may send
            a word this client has not heard of; in a request it is a `Literal`, because a wrong word is worth telling early.
        measured: components for which text and foreign quantities may be given as well (in constructors).

    Raises:
        GenerationError: there is no Python type for it here.
    """
    name = reference(schema)
    if name is not None:
        return f"{camel(name)} | Measured" if name in measured else camel(name)
    if "const" in schema or "enum" in schema:
        values = schema.get("enum", [schema.get("const")])
        texts = all(isinstance(value, str) for value in values)
        return ("str" if texts else "int") if answer else literal(values)
    arms = schema.get("anyOf") or schema.get("oneOf")
    if arms:
        return _union([type_of(arm, answer=answer, measured=measured) for arm in arms])
    kind = schema.get("type")
    if isinstance(kind, list):
        kinds = cast("list[str]", kind)
        return _union([type_of({**schema, "type": one}, answer=answer, measured=measured) for one in kinds])
    if kind in ("array", "object"):
        if schema.get("properties"):
            raise GenerationError("an object with properties that is not a component: give it a name")
        inner = schema.get("items" if kind == "array" else "additionalProperties", {})
        item = "object" if inner is True else type_of(inner, answer=answer, measured=measured)
        return _CONTAINERS[kind, answer].format(item)
    if kind == "string" and schema.get("format") == "decimal":
        return "Decimal"
    if kind is None and not set(schema) - {"description", "title"}:
        return "object"
    if kind not in _PLAIN:
        raise GenerationError(f"no Python type for {schema}")
    return _PLAIN[kind]


def _number(value: float) -> str:
    return f"{value:,.10g}" if abs(value) < 1e6 else f"{value:.10g}"  # noqa: PLR2004  from a million on, powers of ten


def limits_of(schema: Tree) -> str:
    """Return the bounds of a schema in words; empty where it has none worth telling."""
    told: list[str] = []
    for key, words in _BOUNDS:
        bound = schema.get(key)
        if bound is not None and abs(bound) < _HUGE:
            told.append(f"{words} {_number(bound)}")
    for low, high, things in (("minLength", "maxLength", "characters"), ("minItems", "maxItems", "items")):
        if schema.get(low) == 1:
            told.append("not empty")
        elif schema.get(low):
            told.append(f"at least {_number(schema[low])} {things}")
        if schema.get(high):
            told.append(f"at most {_number(schema[high])} {things}")
    return ", ".join(told)
