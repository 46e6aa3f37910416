"""What the OpenAPI document says in words: the description of the whole, of the headers, and what a problem looks like."""

from __future__ import annotations

from typing import Any, Final

from railrules_api.api.envelope import Fault
from railrules_api.api.idempotency import SCHEMA
from railrules_api.api.wire import PLAIN_TEXT

DESCRIPTION: Final = (
    "Quantities, train loads, salvage and cost of relaying jointed track with continuous welded rail, and the checks that show "
    "the new rail is safe: every figure from a named rule with a named source. A physical quantity is `{value, unit}`; counts "
    "are plain numbers. Calculations are pure: the same request and versions give the same bytes, and repeating one is safe, "
    "with the header Idempotency-Key or without it. "
    "Each also answers the method QUERY (RFC 10008) with the same body and the same answer, which this version of OpenAPI cannot "
    "describe. Answers do not replace the railroad's own standards, local codes or licensed practice."
)
PROBLEMS: dict[int, tuple[str, tuple[Fault, ...]]] = {  # status -> an example of what the service says
    400: (
        "the body is not JSON: JSON is malformed: unexpected character (byte 12)",
        (Fault("", "the body is not JSON: JSON is malformed: unexpected character (byte 12)"),),
    ),
    401: ("send a key of this service as Authorization: Bearer KEY", ()),
    403: ("the key does not open this resource", ()),
    404: ("rail sections has no row '136-RE'; near: 136RE, 136RE-10", ()),
    405: ("this resource does not know the method; the Allow header lists those it does", ()),
    406: ("answers come as application/json", ()),
    408: ("the request did not arrive in time", ()),
    414: ("the address of the request is longer than the service reads", ()),
    431: ("the header of the request is larger than the service reads", ()),
    413: ("the request body is larger than the service reads", ()),
    415: ("send application/json, not text/plain", ()),
    422: (
        "/rail_temperature: outside the allowed range",
        (
            Fault(
                "/rail_temperature",
                "outside the allowed range",
                value='{"value":400,"unit":"degF"}',
                minimum=-148.0,
                maximum=212.0,
                unit="degF",
            ),
        ),
    ),
    429: ("the requests of this key are used up for now; Retry-After says when to come again", ()),
    500: ("the service failed on this request; the fault is ours", ()),
    503: ("the service has more work than it can do; Retry-After says when to come again", ()),
}
LIMITS: dict[int, str] = {  # status -> which limits it tells of, as they are unless the operator says otherwise
    408: "A header must arrive within 15 s and a body within 45 s.",
    413: "A body is read up to 16,777,216 bytes and 1,000,000 values.",
    414: "A request target is read up to 8,192 bytes.",
    429: "A key opens 600 requests in 60 s.",
    431: "A header is read up to 32,768 bytes and 100 fields.",
    503: (
        "A worker keeps 1,000 connections; 64 requests wait for their turn, or 8 of those with large bodies or slow forms, each "
        "for 2 s; an answer that is worked apart has 20 s; 4 streams are answered at once. A service that stops is not ready."
    ),
}
HEADERS: dict[str, tuple[str, dict[str, Any], Any]] = {  # name -> (about, schema, example)
    "Cache-Control": (
        "How long the answer may be kept.",
        {"type": "string", "maxLength": 200, "pattern": r"^[a-z0-9=, -]*$"},
        "no-store",
    ),
    "ETag": (
        "Strong validator of this form of the answer; another content coding has another one.",
        {"type": "string", "maxLength": 100, "pattern": r'^"[\x21\x23-\x7e]*"$'},
        '"5f0c1a7e9d3b4c2a8e6f1b0d"',
    ),
    "Vary": (
        "Request headers that decide the form of the answer.",
        {"type": "string", "maxLength": 200, "pattern": r"^[A-Za-z, -]*$"},
        "Accept, Accept-Encoding",
    ),
    "Idempotency-Key": (
        "The key that the request came with; left out where it came with none.",
        SCHEMA,
        '"8e03978e-40d5-43e8-bc93-6894a57f9324"',
    ),
    "X-Request-Id": (
        "The request's id: the caller's own when it sent a usable one, else a new one.",
        {"type": "string", "minLength": 1, "maxLength": 64, "pattern": r"^[A-Za-z0-9._-]+$"},
        "0f3c9a52c1d94b1e8a77d0c2b6e4f518",
    ),
    "traceparent": (
        "W3C trace context: the caller's trace with this service's span, or a new trace.",
        {"type": "string", "minLength": 55, "maxLength": 55, "pattern": r"^00-[0-9a-f]{32}-[0-9a-f]{16}-[0-9a-f]{2}$"},
        "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01",
    ),
    "Allow": (
        "Methods that the resource knows.",
        {"type": "string", "maxLength": 100, "pattern": r"^[A-Z, ]*$"},
        "GET, HEAD, OPTIONS",
    ),
    "WWW-Authenticate": (
        "How to show a key.",
        {"type": "string", "maxLength": 200, "pattern": PLAIN_TEXT},
        'Bearer realm="railrules"',
    ),
    "Retry-After": (
        "Seconds to wait before the next attempt.",
        {"type": "integer", "format": "int32", "minimum": 0, "maximum": 86400},
        1,
    ),
    "RateLimit": (
        "What is left of the quota; sent while the operator has limits on.",
        {"type": "string", "maxLength": 200, "pattern": PLAIN_TEXT},
        '"default";r=50;t=30',
    ),
    "RateLimit-Policy": (
        "The quota itself: requests in a window of seconds; sent while the operator has limits on.",
        {"type": "string", "maxLength": 200, "pattern": PLAIN_TEXT},
        '"default";q=600;w=60',
    ),
    "Deprecation": (
        "Since when the operation is deprecated (RFC 9745): seconds since 1970 after an @.",
        {"type": "string", "maxLength": 20, "pattern": r"^@[0-9]+$"},
        "@1798761600",
    ),
    "Sunset": (
        "When the operation will be gone (RFC 8594).",
        {"type": "string", "maxLength": 40, "pattern": r"^[A-Z][a-z]{2}, [0-9]{2} [A-Z][a-z]{2} [0-9]{4} [0-9:]{8} GMT$"},
        "Fri, 31 Dec 2027 00:00:00 GMT",
    ),
}
LARGEST_FORM: Final = 100_000_000
# media type -> (about, pattern, example) of the forms that are not JSON; no pattern: bytes
FORMS: dict[str, tuple[str, str, str]] = {
    # RFC 4180: lines end in CR LF, so the rule against control characters does not hold here
    "text/csv": (
        "Rows with a line of headings, for spreadsheets.",
        r"^[^\x00-\x08\x0b\x0c\x0e-\x1f\x7f]*$",
        "record,of,rule,item\r\ntotal,,,new-rail\r\n",
    ),
    "image/svg+xml": (
        "A drawing, to scale.",
        r"^<[^\x00-\x08\x0b\x0c\x0e-\x1f\x7f]*$",
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 210 297"></svg>',
    ),
    "image/vnd.dxf": ("Lines and arcs for drawing programs.", r"^[^\x00-\x08\x0b\x0c\x0e-\x1f\x7f]*$", "0\r\nEOF\r\n"),
    "text/html": (
        "A page to read and print.",
        r"^<[^\x00-\x08\x0b\x0c\x0e-\x1f\x7f]*$",
        "<!doctype html><title>railrules</title>",
    ),
    "application/pdf": ("A page to print.", "", ""),
    "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet": ("A workbook.", "", ""),
}
