"""The OpenAPI document: valid, complete, bounded, the same every time, and true."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import jsonschema_rs
import msgspec
import pytest
from litestar import Litestar
from litestar.testing import TestClient
from openapi_spec_validator import OpenAPIV31SpecValidator

from railrules_api.api import document as documents
from railrules_api.api.problems import TITLES
from railrules_api.api.resources import operations

ROOT = Path(__file__).parents[2]
METHODS = ("get", "post")


def nodes(tree: Any) -> Iterator[dict[str, Any]]:
    if isinstance(tree, dict):
        yield tree
        for value in tree.values():
            yield from nodes(value)
    elif isinstance(tree, list):
        for item in tree:
            yield from nodes(item)


def described(document: dict[str, Any]) -> Iterator[tuple[str, str, dict[str, Any]]]:
    for path, item in document["paths"].items():
        for method in METHODS:
            if method in item:
                yield path, method, item[method]


def resolved(document: dict[str, Any], node: dict[str, Any]) -> dict[str, Any]:
    while "$ref" in node:
        at: Any = document
        for step in node["$ref"].removeprefix("#/").split("/"):
            at = at[step.replace("~1", "/").replace("~0", "~")]
        node = at
    return node


def test_it_is_valid(document: dict[str, Any]) -> None:
    assert document["openapi"].startswith("3.1")
    assert not list(OpenAPIV31SpecValidator(document).iter_errors())


def test_it_is_the_same_every_time() -> None:
    command = [sys.executable, "-m", "railrules_api", "spec"]
    made = {
        subprocess.run(command, cwd=ROOT, env={**os.environ, "PYTHONHASHSEED": seed}, capture_output=True, check=True).stdout
        for seed in ("0", "1", "2")
    }
    assert len(made) == 1


def test_every_reference_leads_somewhere_and_every_component_is_used(document: dict[str, Any]) -> None:
    used = {node["$ref"] for node in nodes(document) if isinstance(node.get("$ref"), str)}
    for reference in used:
        resolved(document, {"$ref": reference})
    for group in ("schemas", "responses", "headers"):
        assert {f"#/components/{group}/{name}" for name in document["components"][group]} <= used


def test_every_number_string_and_list_has_its_bounds(document: dict[str, Any]) -> None:
    assert not documents.unbounded(document)
    for node in nodes(document["components"]["schemas"]):
        if node.get("type") in ("number", "integer"):
            assert node["format"] in ("double", "int32", "int64")
        if node.get("type") == "string":
            assert {"pattern", "enum", "const", "format"} & node.keys(), node


def test_every_operation_says_all_there_is_to_say(document: dict[str, Any]) -> None:
    seen: set[str] = set()
    for path, method, operation in described(document):
        assert operation["operationId"] not in seen
        seen.add(operation["operationId"])
        assert operation["summary"]
        assert operation["description"]
        assert len(operation["tags"]) == 1
        assert operation["tags"][0] in {tag["name"] for tag in document["tags"]}
        statuses = operation["responses"].keys()
        # which statuses an operation states, `test_statuses.py` holds against what it does
        assert {"200", "400", "405", "406", "500", "503", "default"} <= statuses, path
        if method == "post":
            assert all(media["examples"]["worked"]["value"] for media in operation["requestBody"]["content"].values())
        else:
            assert ("304" in statuses) is not path.startswith("/health/")
        for form, media in operation["responses"]["200"]["content"].items():
            if form.endswith("json"):
                assert media["examples"]["worked"]["value"]
        for parameter in (resolved(document, item) for item in operation.get("parameters", ())):
            assert parameter["description"]
            if parameter["in"] == "path":
                assert parameter["example"]
        for status, answer in operation["responses"].items():
            if status[0] in "45d":
                content = resolved(document, answer)["content"]
                assert list(content) == ["application/problem+json"]
                assert content["application/problem+json"]["examples"]


def test_the_examples_in_it_are_of_their_schemas(document: dict[str, Any]) -> None:
    """Answers are cut short for reading, which no schema forbids."""
    for node in nodes(document):
        for media in node["content"].values() if isinstance(node.get("content"), dict) else ():
            schema = {**media["schema"], "components": document["components"]}
            values = [item["value"] for item in media.get("examples", {}).values()]
            values += [media["example"]] if "example" in media else []
            validator = jsonschema_rs.Draft202012Validator(schema, validate_formats=True)
            for value in values:
                errors = [error.message[:200] for error in validator.iter_errors(value)]
                assert not errors, (media["schema"], errors)


def test_the_examples_of_problems_are_what_the_service_calls_them(document: dict[str, Any]) -> None:
    for name, response in document["components"]["responses"].items():
        for media in response.get("content", {}).values():
            example = media["examples"]["told"]["value"]
            slug, title = TITLES[example["status"]]
            assert example["title"] == title
            assert example["type"] == f"/problems/{slug}"
            assert name in ("Other", documents._response_name(example["status"]))  # noqa: SLF001


def test_links_name_operations_that_are_there(document: dict[str, Any]) -> None:
    ids = {operation["operationId"]: operation for _, _, operation in described(document)}
    found = 0
    for _, _, operation in described(document):
        for link in operation["responses"]["200"].get("links", {}).values():
            found += 1
            target = ids[link["operationId"]]
            assert set(link["parameters"]) == {item["name"] for item in target["parameters"] if item.get("in") == "path"}
            pointer = next(iter(link["parameters"].values())).removeprefix("$response.body#/")
            value: Any = operation["responses"]["200"]["content"]["application/json"]["examples"]["worked"]["value"]
            for step in pointer.split("/"):
                value = value[int(step)] if step.isdigit() else value[step]
            assert isinstance(value, str)
    assert found >= 10


@pytest.mark.parametrize("operation", [item for item in operations() if item.request is None], ids=lambda item: item.id)
def test_the_whole_catalogue_is_as_the_document_says(
    operation: Any, http: TestClient[Litestar], document: dict[str, Any], service: Any
) -> None:
    """The examples show a row or two; here is every row, every rule and every source."""
    ids = [""]
    if "{id}" in operation.path:
        table = operation.path.split("/")[2]
        ids = list(service.catalogue.tables[table].rows) if table != "rules" else [rule["id"] for rule in rules(http)]
        if operation.path.endswith("/profile"):
            ids = ids[:3]
    validator = jsonschema_rs.Draft202012Validator(
        {"$ref": f"#/components/schemas/{operation.answer.__name__}", "components": document["components"]}
    )
    unnamed = [item.name for item in operation.parameters if item.place == "query"]
    for one in ids:
        for units in ("", "us", "si"):
            query = {"units": units} if units and "units" in unnamed else {}
            answer = http.get(operation.path.replace("{id}", one), params=query, headers={"accept": "application/json"})
            if answer.status_code == 404 and operation.path.endswith("/profile"):
                continue
            assert answer.status_code == 200, answer.text
            errors = [f"{list(error.instance_path)}: {error.message[:200]}" for error in validator.iter_errors(answer.json())]
            assert not errors, errors[:3]


def rules(http: TestClient[Litestar]) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = http.get("/v1/rules").json()["rules"]
    return found


def test_two_schemas_of_one_name_are_refused() -> None:
    one, other = (msgspec.defstruct("Namesake", [("value", int)], module=f"m{number}") for number in range(2))
    both = msgspec.defstruct("Both", [("one", one), ("other", list[other])])  # type: ignore[valid-type]
    with pytest.raises(ValueError, match="Namesake"):
        documents.refuse_namesakes([both])


def test_what_has_no_bounds_is_found() -> None:
    loose = {"type": "object", "properties": {"a": {"type": "string"}, "b": {"type": "array", "maxItems": 3, "items": {}}}}
    assert len(documents.unbounded(loose)) == 1
    assert documents.unbounded({"type": "number", "minimum": 0})


def test_a_deprecated_operation_says_so_in_the_document_and_in_its_answers(monkeypatch: pytest.MonkeyPatch, service: Any) -> None:
    from dataclasses import replace  # noqa: PLC0415

    from railrules_api.api import app as apps  # noqa: PLC0415
    from railrules_api.api.lifecycle import Lifecycle  # noqa: PLC0415

    ending = Lifecycle(
        deprecated=datetime(2027, 1, 1, tzinfo=UTC), sunset=datetime(2027, 12, 31, tzinfo=UTC), successor="/v2/rules"
    )
    table = tuple(replace(item, lifecycle=ending) if item.id == "listRules" else item for item in operations())
    monkeypatch.setattr(documents, "operations", lambda: table)
    monkeypatch.setattr(apps, "operations", lambda: table)
    made = documents.build(service)
    marked = [operation["operationId"] for _, _, operation in described(made) if operation.get("deprecated")]
    assert marked == ["listRules"]
    assert {"Deprecation", "Sunset"} <= made["paths"]["/v1/rules"]["get"]["responses"]["200"]["headers"].keys()
    assert not list(OpenAPIV31SpecValidator(made).iter_errors())
    with TestClient(apps.create_app(service)) as client:
        told = client.get("/v1/rules").headers
        assert told["deprecation"] == "@1798761600"
        assert told["sunset"] == "Fri, 31 Dec 2027 00:00:00 GMT"
        assert told["link"] == '</v2/rules>; rel="successor-version"'
        assert "deprecation" not in client.get("/v1/sources").headers
