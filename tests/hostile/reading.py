"""The corpus, read: each entry as one HTTP request, or as the bytes of a connection."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

_HEAD, _TAIL = (
    b'{"section":"136RE","neutral_temperature":{"value":95,"unit":"degF"},"rail_temperature":{"value":',
    b',"unit":"degF"}}',
)


@dataclass(frozen=True)
class Hostile:
    """An entry: what is sent, and the status it is answered with."""

    name: str
    status: int
    method: str
    path: str
    headers: dict[str, str]
    body: bytes
    raw: bytes
    first: bool


def _bytes(parts: list[Any]) -> bytes:
    found = bytearray()
    for part in parts:
        text, times = (part, 1) if isinstance(part, str) else part
        piece = bytes.fromhex(text.removeprefix("hex:")) if text.startswith("hex:") else text.encode()
        found += piece * times
    return bytes(found)


def _entry(entry: dict[str, Any]) -> Hostile:
    body = _bytes(entry.get("body", []))
    if "number" in entry:
        body = _HEAD + _bytes(entry["number"]) + _TAIL
    sends_body = "body" in entry or "number" in entry
    path = _bytes(entry["path_parts"]).decode() if "path_parts" in entry else entry.get("path", "/v1/thermal/force")
    headers = entry.get("headers", {"Content-Type": "application/json"} if sends_body else {})
    return Hostile(
        name=entry["name"],
        status=entry["status"],
        method=entry.get("method", "POST"),
        path=path,
        headers={name: value for name, value in headers.items() if value},
        body=body,
        raw=_bytes(entry.get("raw", [])),
        first=entry.get("first", False),
    )


@cache
def _entries() -> tuple[dict[str, Any], ...]:
    text = (Path(__file__).parent / "corpus.toml").read_text(encoding="utf-8")
    return tuple(tomllib.loads(text)["request"])


def names(*, raw: bool) -> list[str]:
    """Return the names of the entries for a socket only, or of the others."""
    return [entry["name"] for entry in _entries() if ("raw" in entry) is raw]


def entry_of(name: str) -> Hostile:
    """Return an entry; its bytes are made anew, so that a corpus of hundreds of megabytes is never in memory at once."""
    return _entry(next(entry for entry in _entries() if entry["name"] == name))


def raw_of(entry: Hostile) -> bytes:
    """Return an entry as the bytes of a connection."""
    if entry.raw:
        return entry.raw
    lines = [f"{entry.method} {entry.path} HTTP/1.1", "Host: service.example", "Connection: close"]
    lines += [f"{name}: {value}" for name, value in entry.headers.items()]
    if entry.method == "POST":
        lines.append(f"Content-Length: {len(entry.body)}")
    return "\r\n".join([*lines, "", ""]).encode() + entry.body
