"""What the OpenAPI document says in words: the description of the whole, of the headers, and what a problem looks like."""

from __future__ import annotations

from typing import Any, Final

from railrules_api.api.envelope import Fault

DESCRIPTION: Final = (
    "Quantities, train loads, salvage and cost of relaying jointed track with continuous welded rail, and the checks that show "
    "the new rail is safe: every figure from a named rule with a named source. A physical quantity is `{value, unit}`; counts "
    "are plain numbers. Calculations are pure: the same request and versions give the same bytes, and repeating one is safe. "
    "Each also answers the method QUERY (RFC 10008) with the same body and the same answer, which this version of OpenAPI cannot "
    "describe. Answers do not replace the railroad's own standards, local codes or licensed practice."
)
PROBLEMS: dict[int, tuple[str, tuple[Fault, ...]]] = {  # status -> an example of what the service says
    400: (
        "the body is not JSON: JSON is malformed: unexpected character (byte 12)",
        (Fault("", "the body is not JSON: JSON is malformed: unexpected character (byte 12)"),),
    ),
    404: ("rail sections has no row '136-RE'; near: 136RE, 136RE-10", ()),
    405: ("this resource does not know the method; the Allow header lists those it does", ()),
    406: ("answers come as application/json", ()),
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
    500: ("the service failed on this request; the fault is ours", ()),
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
FORMS: Final = {  # media type -> (pattern of the text, example); forms that are not here are binary
    # RFC 4180: lines end in CR LF, so the rule against control characters does not hold here
    "text/csv": (r"^[^\x00-\x09\x0b\x0c\x0e-\x1f\x7f]*$", "record,of,rule,item\r\ntotal,,,new-rail\r\n"),
    "image/svg+xml": (r"^[^\x00-\x08\x0b\x0c\x0e-\x1f\x7f]*$", '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"/>'),
    "image/vnd.dxf": (r"^[^\x00-\x08\x0b\x0c\x0e-\x1f\x7f]*$", "  0\nEOF\n"),
}
