"""Strict reading of request bodies: typed at once, no lax conversions, no duplicate keys."""

from __future__ import annotations

import json
import re
from functools import cache
from typing import TYPE_CHECKING, Any

import msgspec

from railrules_api.api.envelope import Fault
from railrules_api.api.problems import ProblemError, malformed, pointer, schema_refusal

if TYPE_CHECKING:
    from railrules_api.domain.errors import Path

# Every object key of valid JSON ends in a quote, white space and a colon; a string value may hold the same characters,
# so the count of matches is never below the count of keys.
_KEY_END = re.compile(rb'"\s*:')


@cache
def _decoder(model: type) -> msgspec.json.Decoder[Any]:
    return msgspec.json.Decoder(model, strict=True)


def _whole_floats_to_ints(value: Any) -> Any:  # noqa: ANN401  a JSON tree
    """Turn 4.0 into 4 everywhere: JSON Schema calls both an integer, the strict decoder only the second."""
    if isinstance(value, float) and value.is_integer():
        return int(value)
    if isinstance(value, list):
        return [_whole_floats_to_ints(item) for item in value]
    if isinstance(value, dict):
        return {key: _whole_floats_to_ints(item) for key, item in value.items()}
    return value


def decode(body: bytes, model: type[msgspec.Struct]) -> Any:  # noqa: ANN401  an instance of `model`, made at run time
    """Decode a body as a request struct.

    Raises:
        ProblemError: 400 when it is not JSON, 422 when it is not of the schema.
    """
    if not body:
        raise malformed("the body is empty; send a JSON object")
    try:
        try:
            return _decoder(model).decode(body)
        except msgspec.ValidationError as error:
            if "Expected `int`, got `float`" not in str(error):
                raise
            # what stands behind the float has not been read yet, so all can still go wrong that could before
            return msgspec.convert(_whole_floats_to_ints(msgspec.json.decode(body)), model, strict=True)
    except msgspec.ValidationError as error:
        raise schema_refusal(error, body, model) from error
    except msgspec.DecodeError as error:
        raise malformed(f"the body is not JSON: {error}") from error
    except UnicodeDecodeError as error:
        raise malformed(f"the body is not UTF-8: byte {error.start} is {error.object[error.start]:#04x}") from error
    except RecursionError as error:
        raise malformed("the body is nested too deeply") from error


class _DuplicateError(Exception):
    """A name that stands twice in one object."""


def refuse_duplicates(body: bytes, keys: int) -> None:
    """Refuse a body in which an object has the same key twice.

    The decoder keeps the last of two values without a word. `keys` is how many members the decoded request has; only when
    the raw body may hold more is it looked through.

    Raises:
        ProblemError: 400 naming the key.
    """
    if len(_KEY_END.findall(body)) == keys:
        return

    def pairs(items: list[tuple[str, Any]]) -> dict[str, Any]:
        found: dict[str, Any] = {}
        for key, value in items:
            if key in found:
                raise _DuplicateError(key)
            found[key] = value
        return found

    try:
        json.loads(body, object_pairs_hook=pairs)
    except _DuplicateError as error:
        key = str(error.args[0])
        path: Path = (key,)
        detail = f"the key {key!r} stands twice in one object"[:300]
        raise ProblemError(400, detail, (Fault(pointer(path), detail),)) from None
