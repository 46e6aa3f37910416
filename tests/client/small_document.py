"""A small document that holds every form the generator knows."""

from __future__ import annotations

from typing import Any

PROBLEM = {"type": "object", "properties": {"status": {"type": "integer"}}, "required": ["status"]}
BAR, RING = ({"$ref": f"#/components/schemas/{name}"} for name in ("Bar", "Ring"))
PART = {"anyOf": [BAR, RING], "discriminator": {"propertyName": "kind", "mapping": {"bar": BAR["$ref"], "ring": RING["$ref"]}}}
SCHEMAS: dict[str, Any] = {
    "Problem": PROBLEM,
    "Length": {
        "type": "object", "description": "A length.", "required": ["value", "unit"],
        "properties": {"value": {"type": "number"}, "unit": {"type": "string", "enum": ["ft", "m"]}},
    },
    "ShapeJob": {
        "type": "object", "description": 'A job with a \\ and """ in it.', "required": ["parts", "from"],
        "properties": {
            "parts": {"type": "array", "items": PART},
            "from": {"$ref": "#/components/schemas/Length", "description": "A Python keyword."},
            "cuts": {"type": "array", "items": {"$ref": "#/components/schemas/Length"}, "maxItems": 5, "minItems": 1},
            "price": {"type": "string", "format": "decimal"},
            "note": {"type": ["string", "null"]},
            "prices": {"type": "object", "additionalProperties": {"type": "number", "exclusiveMinimum": 0, "maximum": 2.5}},
            "grade": {"type": "string", "enum": ["a", "b"]},
            "other": {"allOf": [{"$ref": "#/components/schemas/Length"}], "description": "By way of allOf."},
            "anything": {},
        },
    },
    "Bar": {
        "type": "object", "required": ["kind", "length"],
        "properties": {"kind": {"enum": ["bar"]}, "length": {"$ref": "#/components/schemas/Length"}},
    },
    "Ring": {
        "type": "object", "required": ["kind", "turns"],
        "properties": {"kind": {"enum": ["ring"]}, "turns": {"type": "integer"}},
    },
    "Result": {
        "type": "object", "required": ["total", "word", "parts"],
        "properties": {
            "total": {"$ref": "#/components/schemas/Length"}, "word": {"$ref": "#/components/schemas/Word"},
            "parts": {"type": "object", "additionalProperties": {"type": "array", "items": {"type": "string"}}},
            "checked": {"type": "boolean", "description": "Whether."},
            "class": {"type": "string", "enum": ["x", "y"], "description": "Its class"},
        },
    },
    "Word": {"type": "string", "enum": ["yes", "no"]},
    "Unused": {"type": "object", "properties": {"odd": {"not": {}}}},
}  # fmt: skip


def _answers(**content: Any) -> dict[str, Any]:
    failed = {
        "description": "It failed.",
        "content": {"application/problem+json": {"schema": {"$ref": "#/components/schemas/Problem"}}},
    }
    return {
        "200": {"description": "", "content": content},
        "304": {"description": ""},
        "422": failed,
        "405": failed,
        "501": failed,
    }


JSON = {"schema": {"$ref": "#/components/schemas/Result"}}
TEXT = {"schema": {"type": "string"}}
DOCUMENT: dict[str, Any] = {
    "openapi": "3.1.0",
    "info": {"title": "shapes", "version": "1.2.3"},
    "tags": [{"name": "jobs", "description": "Jobs of shapes."}],
    "paths": {
        "/v1/jobs": {
            "post": {
                "operationId": "createJob", "tags": ["jobs"], "summary": "Work a job", "description": "All of it.",
                "parameters": [{"name": "units", "in": "query", "schema": {"enum": ["us", "si"]}, "description": "Units."}],
                "requestBody": {"content": {"application/json": {"schema": {"$ref": "#/components/schemas/ShapeJob"}}}},
                "responses": _answers(**{"text/csv": TEXT, "application/json": JSON, "application/pdf": {}}),
            },
        },
        "/v1/shape-rows/{id}": {
            "get": {
                "operationId": "getRow", "tags": ["rows"], "summary": "Get a row",
                "parameters": [{"name": "id", "in": "path", "required": True, "schema": {"type": "string"}}],
                "responses": _answers(**{"application/json": JSON}),
            },
        },
        "/v1/shape-rows/{id}/drawing": {
            "get": {
                "operationId": "drawRow", "tags": ["rows"], "summary": "Draw a row",
                "parameters": [{"name": "id", "in": "path", "required": True, "schema": {"type": "string"}}],
                "responses": _answers(**{"image/svg+xml": TEXT}),
            },
        },
        "/v1/jobs/bulk": {
            "post": {
                "operationId": "bulkJobs", "tags": ["jobs"], "summary": "Work many",
                "requestBody": {"content": {"application/x-ndjson": {"schema": {"type": "string"}}}},
                "responses": _answers(**{"application/x-ndjson": TEXT}),
            },
        },
        "/metrics": {"get": {"operationId": "metrics", "summary": "Measure", "responses": _answers(**{"text/plain": TEXT})}},
    },
    "components": {"schemas": SCHEMAS},
}  # fmt: skip
