"""Every way a request can fail, as one RFC 9457 problem."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from functools import cache
from typing import TYPE_CHECKING, Any

import msgspec
from msgspec import UNSET

from railrules_api.api.envelope import Fault, Problem
from railrules_api.units import UNITS, kinds_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from railrules_api.domain.errors import Path, Refusal

MEDIA_TYPE = "application/problem+json"
TITLES: Mapping[int, tuple[str, str]] = {  # status -> (slug, title); HTTPStatus phrases differ between Python versions
    400: ("malformed", "The request is malformed"),
    401: ("unauthorized", "The request has no key that the service knows"),
    403: ("forbidden", "The key does not open this resource"),
    404: ("not-found", "There is no such resource"),
    405: ("method-not-allowed", "The resource does not know this method"),
    406: ("not-acceptable", "The resource has no form that was asked for"),
    408: ("too-slow", "The request did not arrive in time"),
    413: ("too-large", "The request body is too large"),
    414: ("address-too-long", "The address of the request is too long"),
    415: ("unsupported-media-type", "The request body is of a type the resource does not read"),
    422: ("refused", "The request is understood but its values are refused"),
    429: ("too-many-requests", "Too many requests"),
    431: ("headers-too-large", "The header of the request is too large"),
    500: ("internal", "The service failed"),
    503: ("unavailable", "The service cannot take the request now"),
}
IDEMPOTENCY: Mapping[int, str] = {400: "idempotency-key-malformed", 422: "idempotency-key-of-another-request"}
FURTHER: Mapping[str, tuple[int, str]] = {  # slug -> (status, title) of kinds that share a status with a wider one
    IDEMPOTENCY[400]: (400, "The Idempotency-Key is not of the form"),
    IDEMPOTENCY[422]: (422, "The Idempotency-Key belongs to another request"),
}
_MOST_FAULTS = 1000
_LONGEST_VALUE = 200
_LONGEST_DETAIL = 1000
_CONTROL = re.compile(r"[\x00-\x1f\x7f]")


@dataclass(eq=False)
class ProblemError(Exception):
    """A request that ends in a problem."""

    status: int
    detail: str
    faults: tuple[Fault, ...] = ()
    headers: dict[str, str] = field(default_factory=dict)
    kind: str = ""

    def body(self) -> bytes:
        """Return the encoded problem."""
        return problem_body(self.status, self.detail, self.faults, self.kind)


def problem_body(status: int, detail: str, faults: Iterable[Fault] = (), kind: str = "") -> bytes:
    """Encode a problem, of one of the further kinds or of the one of its status."""
    slug, title = (kind, FURTHER[kind][1]) if kind else TITLES.get(status, ("error", "The request failed"))
    listed = [_plain_fault(fault) for fault in list(faults)[:_MOST_FAULTS]]
    return msgspec.json.encode(Problem(f"/problems/{slug}", title, status, _plain(detail), listed or UNSET))


def _plain(text: str) -> str:
    """Write control characters as JSON would: what a caller sent comes back in logs and on terminals."""
    return text if text.isprintable() else _CONTROL.sub(lambda found: f"\\u{ord(found.group()):04x}", text)


def _plain_fault(fault: Fault) -> Fault:
    value = fault.value
    if fault.detail.isprintable() and (value is UNSET or value.isprintable()):
        return fault
    value = value if value is UNSET else _plain(value)[:_LONGEST_VALUE]
    return msgspec.structs.replace(fault, detail=_plain(fault.detail)[:_LONGEST_DETAIL], value=value)


def pointer(path: Path) -> str:
    """Return the JSON pointer (RFC 6901) of a path."""
    return "".join("/" + str(step).replace("~", "~0").replace("/", "~1") for step in path)[:500]


def shown(value: object) -> str:
    """Return a value as JSON, cut to what a problem may carry."""
    try:
        text = msgspec.json.encode(value).decode()
    except (TypeError, ValueError, OverflowError, RecursionError):
        text = repr(type(value).__name__)
    return text if len(text) <= _LONGEST_VALUE else text[: _LONGEST_VALUE - 1] + "…"


# ---------------------------------------------------------------- refusals of rules and of the binding


def _sent_at(struct: object, path: Path) -> object:
    """Follow a path through a request struct; None when it leaves what was sent."""
    for step in path:
        if isinstance(step, int):
            if not isinstance(struct, (list, tuple)) or step >= len(struct):
                return None
            struct = struct[step]
        else:
            struct = getattr(struct, step, UNSET)
        if struct is UNSET:
            return None
    return struct


def fault_of(refusal: Refusal, request: msgspec.Struct) -> Fault:
    """Tell a refusal in the caller's own terms: his value, and the range in his unit."""
    sent = _sent_at(request, refusal.path)
    code = getattr(sent, "unit", None)
    minimum, maximum = refusal.minimum, refusal.maximum
    unit: Any = UNSET
    if isinstance(sent, msgspec.Struct) and isinstance(code, str):
        kinds = [kind for kind in kinds_of(code) if type(sent).__name__.lower() == kind.value.replace("_", "")]
        if kinds:
            known = UNITS[kinds[0]][code]
            minimum = None if minimum is None else known.from_si(minimum)
            maximum = None if maximum is None else known.from_si(maximum)
            unit = code if minimum is not None or maximum is not None else UNSET
    value: Any = UNSET
    if sent is not None:
        value = shown(sent)
    elif refusal.value is not None:
        value = shown(refusal.value)
    return Fault(
        pointer=pointer(refusal.path),
        detail=refusal.reason,
        value=value,
        minimum=UNSET if minimum is None else minimum,
        maximum=UNSET if maximum is None else maximum,
        unit=unit,
        allowed=list(refusal.allowed)[:200] or UNSET,
    )


def refused(refusals: Iterable[Refusal], request: msgspec.Struct) -> ProblemError:
    """Return the problem for values a rule will not work with."""
    faults = tuple(fault_of(refusal, request) for refusal in refusals)
    first = faults[0]
    more = f" (and {len(faults) - 1} more)" if len(faults) > 1 else ""
    return ProblemError(422, f"{first.pointer or 'the request'}: {first.detail}{more}", faults)


# ---------------------------------------------------------------- what the strict decoder says

_STEP = re.compile(r"\.([A-Za-z_][A-Za-z0-9_-]*)|\[(\d+)\]|\[(?:\.\.\.|'[^']*')\]")
_NAMED = re.compile(r"(missing required|unknown) field `([^`]*)`")
_BOUND = re.compile(r"(>=|<=|>|<) (-?[0-9.eE+]+)")


def _decoder_path(message: str) -> tuple[str, Path]:
    text, _, place = message.rpartition(" - at `$")
    if not text:
        return message, ()
    steps: list[str | int] = []
    for name, number in (match.group(1, 2) for match in _STEP.finditer(place)):
        if name is not None:
            steps.append(name)
        elif number is not None:
            steps.append(int(number))
    return text, tuple(steps)


def _raw_at(body: bytes, path: Path) -> object:
    """Return what the body holds at a path; UNSET when it cannot be told."""
    try:
        value: Any = msgspec.json.decode(body)
        for step in path:
            value = value[step]
    except (msgspec.DecodeError, UnicodeDecodeError, RecursionError, KeyError, IndexError, TypeError):
        return UNSET
    return value


@cache
def _type_info(model: type) -> msgspec.inspect.Type:
    # taking a schema apart costs more than most answers, and rubbish must not be the dearest request there is
    return msgspec.inspect.type_info(model)


def _allowed_at(model: type, path: Path) -> tuple[str, ...]:
    """Return the closed list of words at a path of a request type, empty where there is none."""
    info: Any = _type_info(model)
    for step in (*path, None):
        while True:
            if isinstance(info, msgspec.inspect.Metadata):
                info = info.type
            elif isinstance(info, msgspec.inspect.UnionType):
                info = info.types[0]
            else:
                break
        if step is None:
            break
        if isinstance(info, msgspec.inspect.StructType) and isinstance(step, str):
            found = [item.type for item in info.fields if item.encode_name == step]
            if not found:
                return ()
            info = found[0]
        elif isinstance(info, msgspec.inspect.ListType):
            info = info.item_type
        else:
            return ()
    if isinstance(info, msgspec.inspect.LiteralType):
        return tuple(str(value) for value in info.values)
    if isinstance(info, msgspec.inspect.StructType):
        return tuple(item.encode_name for item in info.fields)
    return ()


def schema_refusal(error: msgspec.ValidationError, body: bytes, model: type) -> ProblemError:
    """Return the problem for a body that is JSON but not of the resource's schema."""
    text, path = _decoder_path(str(error))
    allowed = _allowed_at(model, path)
    named = _NAMED.search(text)
    value = _raw_at(body, path)
    if named is not None:
        path = (*path, named.group(2))
        value = _raw_at(body, path)
        if named.group(1) != "unknown":
            allowed = ()
    detail = text
    if path and path[-1] == "unit" and isinstance(value, str):
        others = ", ".join(kind.value.replace("_", " ") for kind in kinds_of(value))
        wanted = f"{value} is a unit of {others}; another kind of quantity is wanted here" if others else "no such unit"
        detail = wanted
    minimum: Any = UNSET
    maximum: Any = UNSET
    for sign, bound in _BOUND.findall(text):
        if sign.startswith(">"):
            minimum = float(bound)
        else:
            maximum = float(bound)
    fault = Fault(
        pointer=pointer(path),
        detail=detail[:1000],
        value=UNSET if value is UNSET else shown(value),
        minimum=minimum,
        maximum=maximum,
        allowed=list(allowed)[:200] or UNSET,
    )
    return ProblemError(422, f"{fault.pointer or 'the body'}: {detail}"[:2000], (fault,))


def malformed(detail: str) -> ProblemError:
    """Return the problem for a body that is not JSON."""
    return ProblemError(400, detail, (Fault("", detail),))
