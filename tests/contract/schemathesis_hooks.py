"""What Schemathesis has to be told.

QUERY stands in `Allow`, as the service answers it, and not in the document, as OpenAPI 3.1 has no word for it. A stream of lines
is one line of JSON here. It holds no header field with quotes in it for possible, which a string of structured fields has.
"""

from __future__ import annotations

import json
from typing import Any

import schemathesis
from hypothesis import strategies

from railrules_api.api.idempotency import PATTERN

schemathesis.openapi.format("sf-string", strategies.from_regex(PATTERN, fullmatch=True))


@schemathesis.serializer("application/x-ndjson")
def line(ctx: Any, value: Any) -> bytes:  # noqa: ARG001  the serializer's signature
    """Write a value as one line."""
    return value if isinstance(value, bytes) else json.dumps(value).encode() + b"\n"


@schemathesis.deserializer("application/x-ndjson")
def first_line(ctx: Any, response: Any) -> Any:  # noqa: ARG001  the deserializer's signature
    """Read the first line of an answer."""
    return json.loads(response.content.partition(b"\n")[0])


@schemathesis.hook
def after_call(context: Any, case: Any, response: Any) -> None:  # noqa: ARG001  the hook's signature
    """Hide QUERY from the check of `Allow`; `test_http.py` checks that it is there."""
    values = response.headers.get("allow")
    if values:
        response.headers["allow"] = [", ".join(method for method in value.split(", ") if method != "QUERY") for value in values]
