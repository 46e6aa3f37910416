"""Source of `models.py`: one struct a schema."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, cast

from generator.reading import GenerationError, camel, is_decimal, is_quantity, objects, reference
from generator.writing import broken, call, docstring, limits_of, literal_lines, safe_name, sentence, tuple_lines, type_of

if TYPE_CHECKING:
    from generator.reading import Document, Tree

_TAB = "    "
_HEAD = '''"""Requests, answers and quantities of {title} {version}. Made from the OpenAPI document; do not edit.

Requests check nothing that the service checks. In an answer, fields that this version does not know are passed over and a
closed list of words is a plain `str`, so that a newer service does not break an older client. The units of a quantity go
both ways: a type checker sees the closed list, while any text is read at run time.
"""

from __future__ import annotations
'''


def _about(schema: Tree, *, answer: bool) -> str:
    """Return what a field means, with its bounds in a request and its words in an answer."""
    told = sentence(schema.get("description", ""))
    limits = "" if answer else limits_of(schema)
    if limits:
        told += f" {sentence(limits[0].upper() + limits[1:])}"
    if answer and "enum" in schema:
        told += f" One of {', '.join(f'`{value}`' for value in schema['enum'])}, or a later addition."
    return told.strip() or "(not described)"


def _quantity(name: str, schema: Tree) -> list[str]:
    codes: list[str] = schema["properties"]["unit"]["enum"]
    sections = [
        (
            "Attributes",
            [
                ("value", _about(schema["properties"]["value"], answer=False)),
                ("unit", f"{sentence(schema['properties']['unit'].get('description', 'Its unit'))} See `{name}.codes`."),
            ],
        )
    ]
    return [
        "if TYPE_CHECKING:",
        *literal_lines(_TAB, f"{name}Unit: TypeAlias", codes),
        "else:",
        f"{_TAB}{name}Unit = str",
        "",
        "",
        f"class {name}(Quantity[{name}Unit], frozen=True, gc=False):",
        *docstring(_TAB, schema.get("description", name), sections),
        "",
        *tuple_lines(_TAB, "codes: ClassVar[tuple[str, ...]]", [f'"{code}"' for code in codes]),
    ]


def _field(name: str, kind: str, *, required: bool) -> str:
    python = safe_name(name)
    renamed = f'name="{name}"' if python != name else ""
    if required:
        default = f" = field({renamed})" if renamed else ""
        return f"{_TAB}{python}: {kind}{default}"
    default = f"field(default=UNSET, {renamed})" if renamed else "UNSET"
    return f"{_TAB}{python}: {kind} | UnsetType = {default}"


def _constructor(fields: list[tuple[str, str, bool]]) -> list[str]:
    """Return what a type checker sees of the constructor: quantities can be given in several ways, and are read in one."""
    ordered = [item for item in fields if item[2]] + [item for item in fields if not item[2]]
    arguments = ["self", "*"]
    for name, kind, required in ordered:
        arguments.append(f"{name}: {kind}" if required else f"{name}: {kind} | UnsetType = UNSET")
    return [f"{_TAB}if TYPE_CHECKING:", "", *call(_TAB * 2, "def __init__", arguments, " -> None: ...")]


def _struct(name: str, schema: Tree, document: Document, tag: tuple[str, str] | None) -> list[str]:
    component = next(key for key in document.schemas if camel(key) == name)
    answer = component not in document.sent
    quantities = frozenset(key for key, value in document.schemas.items() if is_quantity(value))
    properties: Tree = {key: value for key, value in schema["properties"].items() if tag is None or key != tag[0]}
    required = set(schema.get("required", ()))
    options = ["frozen=True", "kw_only=True"]
    if not answer:
        options.append("omit_defaults=True")
    if set(properties) - required:
        options.append("repr_omit_defaults=True")
    if tag is not None:
        options += [f'tag_field="{tag[0]}"', f'tag="{tag[1]}"']
    entries = [(safe_name(key), _about(value, answer=answer)) for key, value in properties.items()]
    lines = [
        *call("", f"class {name}", ["Answered" if answer else "Struct", *options], ":"),
        *docstring(_TAB, schema.get("description", name), [("Attributes", entries)]),
        "",
        *(_field(key, type_of(value, answer=answer), required=key in required) for key, value in properties.items()),
    ]
    exact = sorted(safe_name(key) for key, value in properties.items() if is_decimal(value))
    if answer and exact:
        listed = ", ".join(f'"{key}"' for key in exact)
        lines += ["", f"{_TAB}decimal_fields: ClassVar[frozenset[str]] = frozenset({{{listed}}})"]
    if not properties:
        lines.pop()
    given = {key: _measured_in(value, quantities) for key, value in properties.items()}
    makers = {safe_name(key): kind for key, kind in given.items() if kind}
    if not answer and makers:
        signature = [
            (safe_name(key), type_of(value, answer=False, measured=quantities), key in required)
            for key, value in properties.items()
        ]
        made = ", ".join(f'"{key}": {kind}.of' for key, kind in makers.items())
        body = [f"{_TAB * 2}measured(self, {{{made}}})"]
        if len(body[0]) > 120:  # noqa: PLR2004  the page's width
            body = [f"{_TAB * 2}measured(", f"{_TAB * 3}self,", f"{_TAB * 3}{{"]
            body += [f'{_TAB * 4}"{key}": {kind}.of,' for key, kind in makers.items()]
            body += [f"{_TAB * 3}}},", f"{_TAB * 2})"]
        lines += ["", *_constructor(signature), "", f"{_TAB}def __post_init__(self) -> None:", *body]
    return lines


def _measured_in(schema: Tree, quantities: frozenset[str]) -> str | None:
    """Return the quantity that a property holds, alone or in a list."""
    name = reference(schema) or reference(schema.get("items", {}) if schema.get("type") == "array" else {})
    return camel(name) if name in quantities else None


def _tags(document: Document) -> dict[str, tuple[str, str]]:
    """Return the discriminating property and value of each arm of a discriminated union."""
    found: dict[str, tuple[str, str]] = {}
    for part in objects(document.schemas):
        choice = part.get("discriminator")
        if isinstance(choice, dict) and "mapping" in choice:
            told = cast("Tree", choice)
            for value, target in told["mapping"].items():
                found[str(reference({"$ref": target}))] = (str(told["propertyName"]), str(value))
    return found


def source(document: Document) -> str:
    """Return the text of `models.py`.

    Raises:
        GenerationError: a schema is of a form the generator does not know.
    """
    names = {key: camel(key) for key in document.schemas if key in document.sent | document.received}
    if len(set(names.values())) < len(names):
        raise GenerationError("two schemas have the same name in Python")
    tags = _tags(document)
    parts: list[list[str]] = []
    aliases: list[list[str]] = []
    quantities: list[str] = []
    exported: list[str] = []
    for key, name in names.items():
        schema = document.schemas[key]
        exported.append(name)
        try:
            if is_quantity(schema):
                quantities.append(name)
                exported.append(f"{name}Unit")
                parts.append(_quantity(name, schema))
            elif "properties" in schema or (schema.get("type") == "object" and "additionalProperties" not in schema):
                parts.append(_struct(name, {"properties": {}, **schema}, document, tags.get(key)))
            else:
                # after the structs, because its right side is evaluated at once
                aliases.append([f"{name}: TypeAlias = {type_of(schema, answer=key in document.received)}"])
        except GenerationError as error:
            raise GenerationError(f"{key}: {error}") from error
    body = "\n\n\n".join("\n".join(piece for line in part for piece in broken(line)) for part in [*parts, *aliases])
    tail = "\n".join(
        [
            *tuple_lines("", "QUANTITIES: Final", quantities),
            '"""Every kind of quantity."""',
            "",
            "__all__ = [",
            *(f'{_TAB}"{name}",' for name in sorted([*exported, "QUANTITIES"])),
            "]",
        ]
    )
    types = " ".join(
        type_of(value, answer=key not in document.sent)
        for key in names
        for value in (document.schemas[key].get("properties", {}) or {"": document.schemas[key]}).values()
        if not is_quantity(document.schemas[key])
    )
    imports = _imports(f"{types} {'Literal' if quantities else ''}", body)
    return f"{_HEAD.format(title=document.title, version=document.version)}\n{imports}\n\n\n{body}\n\n\n{tail}\n"


def _imports(types: str, body: str) -> str:
    """Return the imports of the module: structs resolve the types of their fields from it at run time."""

    def used(*names: str) -> list[str]:
        return [name for name in names if re.search(rf"\b{name}\b", types)]

    typing = ["TYPE_CHECKING", "ClassVar", "Final", *used("Literal"), "TypeAlias"]
    own = ["Measured", "Quantity", "measured"] if "measured(self" in body else ["Quantity"]
    lines = [
        *(f"from collections.abc import {', '.join(found)}" for found in [used("Mapping", "Sequence")] if found),
        *(f"from decimal import {name}" for name in used("Decimal")),
        f"from typing import {', '.join(typing)}",
        "",
        f"from msgspec import {', '.join(['UNSET', 'Struct', 'UnsetType', *(['field'] if ' = field(' in body else [])])}",
        "",
        f"from railrules_client._quantities import {', '.join(own)}",
        *(["from railrules_client._showing import Answered"] if "(Answered" in body else []),
    ]
    return "\n".join(lines)
