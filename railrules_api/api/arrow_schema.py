"""The first message of an Arrow stream, read here: the library follows a mangled one outside its memory, and the process ends."""

from __future__ import annotations

import struct
from typing import Final

_BINARY, _TEXT, _LARGE_BINARY, _LARGE_TEXT = 4, 5, 19, 20
KINDS: Final = {_TEXT: "string", _LARGE_TEXT: "large_string", _BINARY: "binary", _LARGE_BINARY: "large_binary"}
_SCHEMA: Final = 1
_HEADER_TYPE, _HEADER, _ENDIANNESS, _FIELDS, _NAME, _KIND, _DICTIONARY = 6, 8, 4, 6, 4, 8, 12


def _number(form: str, data: bytes, place: int) -> int:
    if place < 0:
        raise ValueError("a place before the message")
    found: int = struct.unpack_from(form, data, place)[0]
    return found


def _slot(data: bytes, table: int, field: int) -> int | None:
    """Return the place of a table's field; None where it is left out."""
    words = table - _number("<i", data, table)
    if field >= _number("<H", data, words):
        return None
    offset = _number("<H", data, words + field)
    return table + offset if offset else None


def _pointed(data: bytes, place: int | None) -> int:
    if place is None:
        raise ValueError("something is left out of the schema")
    return place + _number("<I", data, place)


def only_column(metadata: bytes) -> tuple[str, str]:
    """Return name and type of the one column that a schema's message tells of, the type empty where it is none of `KINDS`.

    Raises:
        ValueError: the message is no schema of one column, in the byte order of this kind of machine.
        struct.error: it points outside itself.
    """
    message = _number("<I", metadata, 0)
    kind = _slot(metadata, message, _HEADER_TYPE)
    if kind is None or _number("<B", metadata, kind) != _SCHEMA:
        raise ValueError("the first message is no schema")
    schema = _pointed(metadata, _slot(metadata, message, _HEADER))
    endianness = _slot(metadata, schema, _ENDIANNESS)
    fields = _pointed(metadata, _slot(metadata, schema, _FIELDS))
    if (endianness is not None and _number("<h", metadata, endianness)) or _number("<I", metadata, fields) != 1:
        raise ValueError("one column is wanted, lowest byte first")
    field = _pointed(metadata, fields + 4)
    name = _pointed(metadata, _slot(metadata, field, _NAME))
    size = _number("<I", metadata, name)
    known = _slot(metadata, field, _KIND)
    coded = _slot(metadata, field, _DICTIONARY) is not None
    told = metadata[name + 4 : name + 4 + size].decode()
    return told, "" if coded or known is None else KINDS.get(_number("<B", metadata, known), "")
