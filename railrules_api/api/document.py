"""The OpenAPI document, made from the table of operations and the wire schemas; committed as `openapi/openapi.json`."""

from __future__ import annotations

import json
from typing import TYPE_CHECKING, Any

import msgspec

from railrules_api import __version__
from railrules_api.api.envelope import Problem
from railrules_api.api.examples import requests, worked_answer
from railrules_api.api.problems import MEDIA_TYPE, TITLES
from railrules_api.api.resources import TAGS, operations

if TYPE_CHECKING:
    from railrules_api.api.operations import Operation, Parameter
    from railrules_api.api.service import Service

_REF = "#/components/schemas/{name}"
_SHARED = (404, 405, 406, 500)
_WITH_BODY = (400, 413, 415, 422)

DESCRIPTION = (
    "Quantities, train loads, salvage and cost of relaying jointed track with continuous welded rail, and the checks that show "
    "the new rail is safe: every figure from a named rule with a named source. A physical quantity is `{value, unit}`; counts "
    "are plain numbers. Calculations are pure: the same request and versions give the same bytes, and repeating one is safe. "
    "Answers do not replace the railroad's own standards, local codes or licensed practice."
)


def _tidy(schema: dict[str, Any]) -> None:
    """Give enumerations their type, which msgspec leaves out, all through a schema."""
    if "enum" in schema:
        schema.setdefault("type", "integer" if all(isinstance(value, int) for value in schema["enum"]) else "string")
    for value in list(schema.values()):
        if isinstance(value, dict):
            _tidy(value)
        elif isinstance(value, list):
            for item in value:
                if isinstance(item, dict):
                    _tidy(item)


def _schemas(table: tuple[Operation, ...]) -> tuple[dict[str, Any], dict[str, str]]:
    """Return the component schemas and the name of each operation's own types."""
    models: list[type] = [Problem]
    for operation in table:
        models += [model for model in (operation.request, operation.answer, *operation.schemas) if model is not None]
    models = list(dict.fromkeys(models))
    refs, components = msgspec.json.schema_components(models, ref_template=_REF)
    for component in components.values():
        _tidy(component)
    names = {model.__name__: ref["$ref"] for model, ref in zip(models, refs, strict=True)}
    return dict(sorted(components.items())), names


def _parameter(parameter: Parameter) -> dict[str, Any]:
    described: dict[str, Any] = {
        "name": parameter.name,
        "in": parameter.place,
        "required": parameter.place == "path",
        "description": parameter.about,
        "schema": parameter.schema,
    }
    if parameter.example is not None:
        described["example"] = parameter.example
    return described


def _answers(operation: Operation, names: dict[str, str], example: Any) -> dict[str, Any]:  # noqa: ANN401  a JSON tree
    content: dict[str, Any] = {}
    for media_type in operation.media_types:
        if operation.answer is not None and media_type.endswith("json"):
            content[media_type] = {"schema": {"$ref": names[operation.answer.__name__]}}
            if example is not None:
                content[media_type]["examples"] = {"worked": {"summary": "A request that runs", "value": example}}
        elif media_type.endswith("json"):
            content[media_type] = {"schema": {"type": "object"}}
        else:
            content[media_type] = {"schema": {"type": "string"}}
    headers: dict[str, Any] = {"Cache-Control": {"$ref": "#/components/headers/CacheControl"}}
    statuses = {*_SHARED, *operation.statuses}
    if operation.request is not None:
        statuses |= {*_WITH_BODY}
    answers: dict[str, Any] = {"200": {"description": "The answer.", "headers": headers, "content": content}}
    if operation.method == "GET":
        headers["ETag"] = {"$ref": "#/components/headers/ETag"}
        answers["304"] = {"description": "Not changed since the validator in If-None-Match."}
    for status in sorted(statuses):
        answers[str(status)] = {"$ref": f"#/components/responses/{_response_name(status)}"}
    return answers


def _response_name(status: int) -> str:
    return "".join(word.title() for word in TITLES[status][0].split("-"))


def _operation(operation: Operation, names: dict[str, str], example_answer: Any) -> dict[str, Any]:  # noqa: ANN401
    described: dict[str, Any] = {
        "operationId": operation.id,
        "tags": [operation.tag],
        "summary": operation.summary,
        "description": operation.description,
    }
    if operation.parameters:
        described["parameters"] = [_parameter(parameter) for parameter in operation.parameters]
    if operation.request is not None:
        content: dict[str, Any] = {"schema": {"$ref": names[operation.request.__name__]}}
        if operation.id in requests():
            content["examples"] = {"worked": {"summary": "A request that runs", "value": requests()[operation.id]}}
        described["requestBody"] = {"required": True, "content": {"application/json": content}}
    described["responses"] = _answers(operation, names, example_answer)
    return described


def build(service: Service) -> dict[str, Any]:
    """Return the document as a JSON tree."""
    table = operations()
    components, names = _schemas(table)
    paths: dict[str, dict[str, Any]] = {}
    for operation in table:
        answer = worked_answer(service, operation)
        paths.setdefault(operation.path, {})[operation.method.lower()] = _operation(operation, names, answer)
    problem = {MEDIA_TYPE: {"schema": {"$ref": names["Problem"]}}}
    return {
        "openapi": "3.1.0",
        "info": {
            "title": "railrules",
            "version": __version__,
            "summary": "Rail relay quantities and welded rail checks from named rules with named sources.",
            "description": DESCRIPTION,
            "license": {"name": "Apache-2.0", "identifier": "Apache-2.0"},
            "contact": {"name": "railrules maintainers", "url": "https://example.org/railrules"},
        },
        "servers": [{"url": "/", "description": "The service that serves this document."}],
        "security": [],
        "tags": [{"name": name, "description": about} for name, about in TAGS.items()],
        "paths": paths,
        "components": {
            "schemas": components,
            "responses": {
                _response_name(status): {"description": TITLES[status][1] + ".", "content": problem} for status in sorted(TITLES)
            },
            "headers": {
                "CacheControl": {
                    "description": "How long the answer may be kept.",
                    "schema": {"type": "string", "maxLength": 200},
                },
                "ETag": {
                    "description": "Strong validator of the answer.",
                    "schema": {"type": "string", "maxLength": 100},
                },
            },
        },
    }


def text(service: Service) -> str:
    """Return the document as it is committed: two-space JSON with a final newline."""
    return json.dumps(build(service), indent=2, ensure_ascii=False) + "\n"
