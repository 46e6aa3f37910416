"""What the client needs to know of an OpenAPI 3.1 document, and nothing else of it."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, TypeAlias, cast

if TYPE_CHECKING:
    from collections.abc import Iterator

Tree: TypeAlias = dict[str, Any]
"""A JSON object."""
_COMPONENT = "#/components/schemas/"
_JSON = "application/json"
_LINES = "application/x-ndjson"
_SUFFIXES = {
    "text/csv": "csv",
    "text/html": "html",
    "text/plain": "text",
    "image/svg+xml": "svg",
    "image/vnd.dxf": "dxf",
    "application/pdf": "pdf",
    "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet": "xlsx",
    _LINES: "lines",
}
_ANSWERED_ELSEWHERE = (304,)  # the client's own cache asks for it and answers it


class GenerationError(Exception):
    """The document says something for which the generator has no Python; better told than guessed."""


def snake(words: str) -> str:
    """Return `rail_sections` for `rail-sections`, `RailSections` or `rail.sections`."""
    parted = re.sub(r"(?<=[a-z0-9])(?=[A-Z])", "_", words)
    return re.sub(r"[^A-Za-z0-9]+", "_", parted).strip("_").lower()


def camel(words: str) -> str:
    """Return `RailSections` for `rail-sections` or `rail_sections`."""
    return "".join(word[:1].upper() + word[1:] for word in re.split(r"[^A-Za-z0-9]+", words))


def reference(schema: Tree) -> str | None:
    """Return the name of the component a schema refers to."""
    target = schema.get("$ref")
    if target is None and len(schema.get("allOf", ())) == 1:
        target = schema["allOf"][0].get("$ref")
    if target is None:
        return None
    if not target.startswith(_COMPONENT):
        raise GenerationError(f"reference outside the component schemas: {target}")
    return str(target.removeprefix(_COMPONENT))


def is_quantity(schema: Tree) -> bool:
    """Return whether a schema is a physical quantity: a number with one of a closed list of units."""
    parts = schema.get("properties", {})
    return (
        set(parts) == {"value", "unit"}
        and set(schema.get("required", ())) == {"value", "unit"}
        and parts["value"].get("type") == "number"
        and "enum" in parts["unit"]
    )


def is_decimal(schema: Tree) -> bool:
    """Return whether a schema is a number that travels as decimal text: its pattern takes such, and no words."""
    pattern = schema.get("pattern")
    if schema.get("type") != "string" or pattern is None:
        return False
    return all(re.search(pattern, text) for text in ("12", "12.5")) and not any(re.search(pattern, text) for text in ("", "a12"))


@dataclass(frozen=True, slots=True)
class Parameter:
    """A path or query parameter."""

    name: str
    place: str
    required: bool
    about: str
    schema: Tree


@dataclass(frozen=True, slots=True)
class Answer:
    """One form in which an operation answers: a component, text or bytes."""

    media_type: str
    component: str | None

    @property
    def text(self) -> bool:
        """Whether it is text without a schema of ours."""
        return self.media_type.startswith("text/") or self.media_type.endswith("+xml")

    @property
    def suffix(self) -> str:
        """What a method that asks for this form is called after."""
        return _SUFFIXES.get(self.media_type, snake(self.media_type.rpartition("/")[2]))


@dataclass(frozen=True, slots=True)
class Operation:
    """One method of one resource, named as the client names it."""

    id: str
    method: str
    path: str
    group: str
    name: str
    tag: str
    summary: str
    description: str
    parameters: tuple[Parameter, ...]
    request: str | None
    request_media_type: str | None
    answers: tuple[Answer, ...]
    problems: tuple[tuple[int, str], ...]

    @property
    def streamed(self) -> bool:
        """Whether it goes line by line both ways: such a one is called by hand-written code."""
        return self.request_media_type == _LINES

    @property
    def lines(self) -> Answer | None:
        """The form that tells how far the answer is, line by line; None where there is none."""
        return None if self.streamed else next((answer for answer in self.answers if answer.media_type == _LINES), None)


@dataclass(frozen=True, slots=True)
class Document:
    """A document, read."""

    title: str
    version: str
    schemas: dict[str, Tree]
    tags: dict[str, str]
    operations: tuple[Operation, ...]
    sent: frozenset[str]
    received: frozenset[str]


def _named(path: str, method: str, verb: str) -> tuple[str, str]:
    """Return the resource and the method under which the client offers a path.

    Below a resource the path names the method (`quantities.ties`); the resource itself is listed, got by its id, or
    else acted on by the verb of its operationId (`takeoffs.create`).
    """
    parts = [part for part in path.split("/") if part]
    versioned = bool(parts) and re.fullmatch(r"v\d+", parts[0]) is not None
    if versioned:
        parts = parts[1:]
    words = [snake(part) for part in parts if not part.startswith("{")]
    if len(words) > 1:
        return words[0], "_".join(words[1:])
    if not versioned:
        return "service", words[0]
    if parts[-1].startswith("{"):
        return words[0], "get" if method == "get" else verb
    return words[0], "list" if method == "get" else verb


def _component_of(schema: Tree) -> str | None:
    """Return the component that a form is of, or each of its lines."""
    return reference(schema) or reference(schema.get("contentSchema", {}))


def _answers(operation: Tree) -> tuple[Answer, ...]:
    content: Tree = operation["responses"]["200"].get("content", {})
    forms = [Answer(media_type, _component_of(form.get("schema", {}))) for media_type, form in content.items()]
    # JSON goes by the plain name; the other forms by a suffix
    return tuple(sorted(forms, key=lambda form: form.media_type != _JSON))


def _problems(operation: Tree, shared: Tree) -> tuple[tuple[int, str], ...]:
    found: list[tuple[int, str]] = []
    for status, response in operation["responses"].items():
        target = str(response.get("$ref", "")).rpartition("/")[2]
        described = shared[target] if target else response
        if status.isdigit() and int(status) not in {200, *_ANSWERED_ELSEWHERE}:
            found.append((int(status), described["description"].rstrip(".")))
    return tuple(sorted(found))


def _operation(path: str, method: str, operation: Tree, shared: Tree) -> Operation:
    group, name = _named(path, method, snake(operation["operationId"]).partition("_")[0])
    body: Tree = operation.get("requestBody", {}).get("content", {})
    sent_as = None if not body else _JSON if _JSON in body else next(iter(body))
    return Operation(
        id=operation["operationId"],
        method=method.upper(),
        path=path,
        group=group,
        name=name,
        tag=operation.get("tags", [group])[0],
        summary=operation["summary"].rstrip("."),
        description=operation.get("description", "").strip(),
        parameters=tuple(
            Parameter(item["name"], item["in"], item.get("required", False), item.get("description", ""), item["schema"])
            for item in operation.get("parameters", ())
            if item.get("in") in ("path", "query")  # header fields are shared, and the hand-written half sends them
        ),
        request=reference(body[sent_as]["schema"]) if sent_as == _JSON else None,
        request_media_type=sent_as,
        answers=_answers(operation),
        problems=_problems(operation, shared),
    )


def objects(tree: object) -> Iterator[Tree]:
    """Return every JSON object in a tree, the outer ones first."""
    if isinstance(tree, dict):
        known = cast("Tree", tree)
        yield known
        for value in known.values():
            yield from objects(value)
    elif isinstance(tree, list):
        for item in cast("list[object]", tree):
            yield from objects(item)


def _references(tree: object) -> set[str]:
    return {str(reference(part)) for part in objects(tree) if isinstance(part.get("$ref"), str)}


def _reached(roots: set[str], schemas: dict[str, Tree]) -> frozenset[str]:
    found: set[str] = set()
    ahead = set(roots)
    while ahead:
        name = ahead.pop()
        if name not in found:
            if name not in schemas:
                raise GenerationError(f"reference to a schema that is not there: {name}")
            found.add(name)
            ahead |= _references(schemas[name])
    return frozenset(found)


def read(tree: Tree) -> Document:
    """Read a document.

    Raises:
        GenerationError: it says something that the generator does not know.
    """
    schemas: dict[str, Tree] = tree["components"]["schemas"]
    responses: Tree = tree["components"].get("responses", {})
    operations = tuple(
        _operation(path, method, operation, responses)
        for path, methods in tree["paths"].items()
        for method, operation in methods.items()
        if method in ("get", "post", "put", "patch", "delete")
    )
    names = [(operation.group, operation.name) for operation in operations]
    twice = {name for name in names if names.count(name) > 1}
    if twice:
        raise GenerationError(f"two operations by one name: {sorted(twice)}")
    sent = {operation.request for operation in operations if operation.request}
    received = {answer.component for operation in operations for answer in operation.answers if answer.component}
    received |= {name for response in responses.values() for name in _references(response.get("content", {}))}
    return Document(
        title=tree["info"]["title"],
        version=tree["info"]["version"],
        schemas=dict(sorted(schemas.items())),
        tags={tag["name"]: tag.get("description", "") for tag in tree.get("tags", ())},
        operations=operations,
        sent=_reached(sent, schemas),
        received=_reached(received, schemas),
    )
