"""The OpenAPI document, made from the table of operations and the wire schemas; committed as `openapi/openapi.json`."""

from __future__ import annotations

import json
import re
from typing import TYPE_CHECKING, Any

import msgspec

from railrules_api import __version__
from railrules_api.api.document_words import DESCRIPTION, FORMS, HEADERS, LARGEST_FORM, LIMITS, PROBLEMS
from railrules_api.api.envelope import Problem
from railrules_api.api.examples import example_id, example_request, worked_answer
from railrules_api.api.problems import MEDIA_TYPE, TITLES, problem_body
from railrules_api.api.resources import TAGS, operations
from railrules_api.api.wire import LARGEST, PLAIN_TEXT

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from railrules_api.api.operations import Operation, Parameter
    from railrules_api.api.service import Service

_JSON = "application/json"
_REF = "#/components/schemas/{name}"
_SHARED = (400, 405, 406, 408, 414, 431, 500, 503)
_WITH_KEYS = (401, 403, 429)
_WITH_BODY = (413, 415, 422)
_WITH_STREAM = (415,)
_BEFORE_A_REQUEST = (414, 431)
_BEFORE_A_KEY = (401,)
_SMALL = 2**31
_COMPONENT_NAME = re.compile(r"^[A-Z][A-Za-z0-9]*$")

_ON_ALL = ("X-Request-Id", "traceparent")
_ON_KEYED = ("RateLimit", "RateLimit-Policy")


# ---------------------------------------------------------------- schemas


def _nodes(schema: Any) -> Iterator[dict[str, Any]]:  # noqa: ANN401  a JSON tree
    if isinstance(schema, dict):
        yield schema
        for value in schema.values():
            yield from _nodes(value)
    elif isinstance(schema, list):
        for item in schema:
            yield from _nodes(item)


def _lowest(schema: dict[str, Any]) -> float:
    value: float = schema.get("minimum", schema.get("exclusiveMinimum", -(2**53)))
    return value


def _highest(schema: dict[str, Any]) -> float:
    value: float = schema.get("maximum", schema.get("exclusiveMaximum", 2**53))
    return value


def _tidy(schema: dict[str, Any]) -> None:
    """Say what msgspec leaves out, all through a schema: types of enumerations, formats and bounds that hold everywhere."""
    for node in _nodes(schema):
        if "enum" in node and isinstance(node["enum"], list):
            node.setdefault("type", "integer" if all(isinstance(value, int) for value in node["enum"]) else "string")
        elif node.get("type") == "number":
            if not {"minimum", "exclusiveMinimum"} & node.keys():
                node["minimum"] = -LARGEST
            if not {"maximum", "exclusiveMaximum"} & node.keys():
                node["maximum"] = LARGEST
            node.setdefault("format", "double")
        elif node.get("type") == "integer":
            small = _lowest(node) >= -_SMALL and _highest(node) < _SMALL
            node.setdefault("format", "int32" if small else "int64")
        elif node.get("type") == "string" and not {"pattern", "format", "const"} & node.keys():
            # nothing we say holds control characters; the tests hold the catalogue to it
            node["pattern"] = PLAIN_TEXT


_BOUNDS = {
    "number": (("minimum", "exclusiveMinimum"), ("maximum", "exclusiveMaximum")),
    "integer": (("minimum", "exclusiveMinimum"), ("maximum", "exclusiveMaximum")),
    "string": (("maxLength", "enum", "const"),),
    "array": (("maxItems",),),
}


def unbounded(document: Any) -> list[str]:  # noqa: ANN401  a JSON tree
    """Return every schema of a document that leaves a number, string or list without its bounds."""
    found: list[str] = []
    for node in _nodes(document):
        kind = node.get("type")
        if not isinstance(kind, str) or kind not in _BOUNDS:
            continue
        found += [
            f"{json.dumps(node)[:200]} lacks {' or '.join(names)}" for names in _BOUNDS[kind] if not set(names) & node.keys()
        ]
    return found


def _structs(models: Iterable[Any], found: dict[type, None]) -> None:
    """Collect every struct type that the models lead to."""
    for info in msgspec.inspect.multi_type_info(models):
        stack: list[Any] = [info]
        while stack:
            item = stack.pop()
            if isinstance(item, msgspec.inspect.StructType):
                if item.cls in found:
                    continue
                found[item.cls] = None
                stack += [field.type for field in item.fields]
            elif isinstance(item, msgspec.inspect.Metadata):
                stack.append(item.type)
            elif isinstance(item, msgspec.inspect.UnionType):
                stack += item.types
            elif isinstance(item, msgspec.inspect.ListType):
                stack.append(item.item_type)
            elif isinstance(item, msgspec.inspect.DictType):
                stack.append(item.value_type)


def refuse_namesakes(models: Iterable[Any]) -> None:
    """Refuse two struct types of one name: msgspec would let one take the other's place in the document, or rename both.

    Raises:
        ValueError: two types share a name, or a name does not fit the document.
    """
    found: dict[type, None] = {}
    _structs(models, found)
    named: dict[str, type] = {}
    for struct in found:
        if named.setdefault(struct.__name__, struct) is not struct or not _COMPONENT_NAME.match(struct.__name__):
            raise ValueError(f"two schemas of the name {struct.__name__}, or a name that is not in camel case")


def _schemas(table: tuple[Operation, ...]) -> tuple[dict[str, Any], dict[str, str]]:
    """Return the component schemas and the name of each operation's own types."""
    models: list[type] = [Problem]
    for operation in table:
        lines = None if operation.lines is None else operation.lines.line
        models += [model for model in (operation.request, operation.answer, lines, *operation.schemas) if model is not None]
    models = list(dict.fromkeys(models))
    refuse_namesakes(models)
    refs, components = msgspec.json.schema_components(models, ref_template=_REF)
    for component in components.values():
        _tidy(component)
    names = {model.__name__: ref["$ref"] for model, ref in zip(models, refs, strict=True)}
    return dict(sorted(components.items())), names


# ---------------------------------------------------------------- operations


def _parameter(parameter: Parameter, example: Any) -> dict[str, Any]:  # noqa: ANN401  a JSON value
    if parameter.place == "header":
        return {"$ref": f"#/components/parameters/{_component(parameter.name)}"}
    return _described(parameter, example)


def _described(parameter: Parameter, example: Any) -> dict[str, Any]:  # noqa: ANN401  a JSON value
    schema = dict(parameter.schema)
    _tidy(schema)
    described: dict[str, Any] = {
        "name": parameter.name,
        "in": parameter.place,
        "required": parameter.place == "path",
        "description": parameter.about,
        "schema": schema,
    }
    if example is not None:
        described["example"] = example
    return described


def _component(header: str) -> str:
    return "".join(word[:1].upper() + word[1:] for word in header.split("-"))


def _header_refs(*names: str) -> dict[str, Any]:
    return {name: {"$ref": f"#/components/headers/{_component(name)}"} for name in names}


def _content(operation: Operation, names: dict[str, str], example: Any) -> dict[str, Any]:  # noqa: ANN401  a JSON tree
    content: dict[str, Any] = {}
    for media_type in operation.media_types:
        if operation.lines is not None and media_type == operation.lines.media_type:
            lines = {
                "type": "string",
                "maxLength": LARGEST_FORM,
                "pattern": r"^(\{.*\}\n)+$",
                "description": "Lines of JSON, each of the schema of the content.",
                "contentMediaType": media_type,
                "contentSchema": {"$ref": names[operation.lines.line.__name__]},
            }
            content[media_type] = {
                "schema": lines,
                "examples": {"worked": {"summary": "Progress, and how it ended", "value": operation.lines.example}},
            }
        elif operation.answer is not None and media_type.endswith("json"):
            content[media_type] = {"schema": {"$ref": names[operation.answer.__name__]}}
            if example is not None:
                content[media_type]["examples"] = {"worked": {"summary": "A request that runs", "value": example}}
        elif media_type in FORMS:
            about, pattern, shown = FORMS[media_type]
            schema = {"type": "string", "maxLength": LARGEST_FORM, "description": about}
            if pattern:
                content[media_type] = {"schema": {**schema, "pattern": pattern}, "example": shown}
            else:
                content[media_type] = {"schema": {**schema, "format": "binary"}}
        else:
            raise ValueError(f"{operation.id}: nothing is said about the form {media_type}")
    return content


def statuses_of(operation: Operation) -> set[int]:
    """Return every problem status that an operation can be answered with."""
    with_body = () if operation.request is None else _WITH_BODY if operation.request_media_type == _JSON else _WITH_STREAM
    return {*_SHARED, *operation.statuses, *with_body, *(() if operation.probe else _WITH_KEYS)}


def _answers(operation: Operation, names: dict[str, str], example: Any) -> dict[str, Any]:  # noqa: ANN401  a JSON tree
    validated = operation.method == "GET" and not operation.probe
    own = ["Cache-Control", "Vary"]
    if operation.lifecycle is not None:
        own += ["Deprecation", *(["Sunset"] if operation.lifecycle.sunset else [])]
    if validated:
        own.append("ETag")
    own += [item.name for item in operation.parameters if item.place == "header"]
    headers = _header_refs(*own, *_ON_ALL, *(() if operation.probe else _ON_KEYED))
    answers: dict[str, Any] = {
        "200": {"description": "The answer.", "headers": headers, "content": _content(operation, names, example)}
    }
    if operation.links:
        answers["200"]["links"] = operation.links
    if validated:
        answers["304"] = {"$ref": "#/components/responses/NotModified"}
    for status in sorted(statuses_of(operation)):
        answers[str(status)] = {"$ref": f"#/components/responses/{_response_name(status)}"}
    answers["default"] = {"$ref": "#/components/responses/Other"}
    return answers


def _response_name(status: int) -> str:
    return "".join(word.title() for word in TITLES[status][0].split("-"))


def _operation(operation: Operation, names: dict[str, str], service: Service) -> dict[str, Any]:
    described: dict[str, Any] = {
        "operationId": operation.id,
        "tags": [operation.tag],
        "summary": operation.summary,
        "description": operation.description,
    }
    if operation.lifecycle is not None:
        described["deprecated"] = True
    if operation.probe:
        described["security"] = []
    if operation.parameters:
        described["parameters"] = [
            _parameter(item, example_id(service, operation) if item.place == "path" else item.example)
            for item in operation.parameters
        ]
    if operation.request is not None:
        content: dict[str, Any] = {"schema": {"$ref": names[operation.request.__name__]}}
        example = example_request(operation)
        if example is not None:
            content["examples"] = {"worked": {"summary": "A request that runs", "value": example}}
        described["requestBody"] = {
            "required": True,
            "description": "The question; what it leaves out is taken from rulebook or catalogue and told in the answer.",
            "content": {operation.request_media_type: content},
        }
    described["responses"] = _answers(operation, names, worked_answer(service, operation))
    return described


# ---------------------------------------------------------------- the whole


def _problem_response(status: int, names: dict[str, str]) -> dict[str, Any]:
    detail, faults = PROBLEMS[status]
    own = {401: ["WWW-Authenticate"], 405: ["Allow"], 429: ["Retry-After"], 503: ["Retry-After"]}.get(status, [])
    only = " Only where the operator asks for keys." if status in _WITH_KEYS else ""
    limits = f" Unless the operator says otherwise: {LIMITS[status]}" if status in LIMITS else ""
    # refused before there is a request to have an id, or before it is known whose quota it counts against
    ids = () if status in _BEFORE_A_REQUEST else _ON_ALL if status in _BEFORE_A_KEY else (*_ON_ALL, *_ON_KEYED)
    return {
        "description": f"{TITLES[status][1]}.{only}{limits}",
        "headers": _header_refs("Cache-Control", *own, *ids),
        "content": {
            MEDIA_TYPE: {
                "schema": {"$ref": names["Problem"]},
                "examples": {
                    "told": {
                        "summary": "What the service says",
                        "value": msgspec.json.decode(problem_body(status, detail, faults)),
                    }
                },
            }
        },
    }


def _responses(names: dict[str, str], statuses: Iterable[int]) -> dict[str, Any]:
    other = _problem_response(500, names)
    other["description"] = "Any other failure; a status of 4xx is the caller's to mend, 5xx the service's."
    return {
        **{_response_name(status): _problem_response(status, names) for status in sorted(statuses)},
        "NotModified": {
            "description": "Not changed since the validator in If-None-Match.",
            "headers": _header_refs("Cache-Control", "ETag", "Vary", "X-Request-Id", "traceparent"),
        },
        "Other": other,
    }


def build(service: Service) -> dict[str, Any]:
    """Return the document as a JSON tree.

    Raises:
        ValueError: something in it has no bounds, or two schemas share a name.
    """
    table = operations()
    components, names = _schemas(table)
    paths: dict[str, dict[str, Any]] = {}
    for operation in table:
        paths.setdefault(operation.path, {})[operation.method.lower()] = _operation(operation, names, service)
    statuses = {status for operation in table for status in statuses_of(operation)}
    unused = set() if any(operation.lifecycle for operation in table) else {"Deprecation", "Sunset"}
    document: dict[str, Any] = {
        "openapi": "3.1.0",
        "info": {
            "title": "railrules",
            "version": __version__,
            "summary": "Rail relay quantities and welded rail checks from named rules with named sources.",
            "description": DESCRIPTION,
            "license": {"name": "Apache-2.0", "url": "https://www.apache.org/licenses/LICENSE-2.0"},
            "contact": {
                "name": "railrules maintainers",
                "url": "https://example.org/railrules",
                "email": "railrules@example.org",
            },
            "x-api-id": "5c1f2f0e-6f0a-4c43-9a0e-0c8b7d2a4e11",
            "x-audience": "external-public",
        },
        "servers": [
            {
                "url": "/",
                "description": "The service that serves this document: local, staging or production alike.",
                "x-internal": False,
            }
        ],
        # keys are the operator's choice: the empty requirement says that a service without them answers everybody
        "security": [{}, {"ApiKey": []}],
        "tags": [{"name": name, "description": about} for name, about in sorted(TAGS.items())],
        "paths": paths,
        "components": {
            "schemas": components,
            "parameters": {
                _component(item.name): _described(item, item.example)
                for operation in table
                for item in operation.parameters
                if item.place == "header"
            },
            "responses": _responses(names, statuses),
            "headers": {
                _component(name): {"description": about, "schema": schema, "example": example}
                for name, (about, schema, example) in HEADERS.items()
                if name not in unused
            },
            "securitySchemes": {
                "ApiKey": {
                    "type": "http",
                    "scheme": "bearer",
                    "description": "The key that the operator of the service gave out, where it asks for keys.",
                }
            },
        },
    }
    loose = unbounded({"schemas": components, "paths": paths})
    if loose:
        raise ValueError("no bounds: " + "; ".join(loose[:5]))
    return document


def text(service: Service) -> str:
    """Return the document as it is committed: two-space JSON with a final newline."""
    return json.dumps(build(service), indent=2, ensure_ascii=False) + "\n"
