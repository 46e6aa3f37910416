"""Settings of the server: each with its default, unit and limits; read from the environment, none silent."""

from __future__ import annotations

import dataclasses
import os
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from railrules_api.api.service import Settings, setting

if TYPE_CHECKING:
    from collections.abc import Mapping

PREFIX = "RAILRULES_"


class SettingsError(ValueError):
    """A setting that is not one, or has a value outside its limits."""


def _workers() -> int:
    """Return how many processors this process may use, at least two: one worker more than none is there when one dies."""
    return max(2, len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count() or 2)


@dataclass(frozen=True, slots=True, kw_only=True)
class ServerSettings(Settings):
    """Limits of the server process, on top of those of the HTTP edge."""

    workers: int = dataclasses.field(
        default_factory=_workers,
        metadata={"about": "worker processes; one for each processor, at least two", "unit": "", "least": 1, "most": 256},
    )
    backlog: int = setting(512, "connections the kernel keeps waiting to be accepted", least=1, most=65_535)
    max_connections: int = setting(1000, "open connections of one worker; the next is answered 503 and closed", least=1)
    max_url_bytes: int = setting(8192, "longest request target; a longer one is answered 414", unit="bytes", least=256)
    max_header_bytes: int = setting(32_768, "largest request header; a larger one is answered 431", unit="bytes", least=1024)
    max_header_fields: int = setting(100, "most header fields of a request; more are answered 431", least=10)
    header_seconds: float = setting(15.0, "time for a request's header to arrive; later 408", unit="s", least=0.05, most=30)
    body_seconds: float = setting(45.0, "time for a request's body to arrive; later 408", unit="s", least=0.05, most=60)
    send_seconds: float = setting(60.0, "time in which the caller must take what is sent to it", unit="s", least=0.05, most=600)
    idle_seconds: int = setting(30, "how long a connection may stay open between requests", unit="s", least=1, most=600)
    linger_seconds: float = setting(
        1.0, "how long the rest of a refused body is read and thrown away, so that the refusal arrives", unit="s", most=10
    )
    light_waiting: int = setting(64, "requests of one worker that may wait for their turn; more are answered 503", least=1)
    heavy_at_once: int = setting(2, "requests with large bodies that one worker works at once, in threads", least=1, most=32)
    heavy_waiting: int = setting(8, "requests with large bodies that may wait for their turn; more are answered 503", least=1)
    streams_at_once: int = setting(4, "bulk streams that one worker answers at once; more are answered 503", least=1, most=100)
    stream_bytes_per_second: float = setting(
        1000.0, "slowest a bulk stream may come, after body_seconds of waiting for it", unit="bytes/s", least=1
    )
    waiting_seconds: float = setting(2.0, "how long a request may wait for its turn; later 503", unit="s", least=0.01, most=60)
    work_seconds: float = setting(20.0, "time for one answer worked in a thread; later 503", unit="s", least=0.05, most=300)
    silence_seconds: float = setting(
        30.0, "a worker whose event loop stands still for so long is replaced", unit="s", least=1, most=600
    )
    drain_seconds: float = setting(
        3.0, "after SIGTERM: how long readiness is down while requests are still served", unit="s", most=120
    )
    grace_seconds: float = setting(25.0, "after the drain: time for requests in flight to end", unit="s", least=0.1, most=600)
    retry_seconds: int = setting(1, "what Retry-After says when work is refused for overload", unit="s", least=1, most=3600)
    trace: bool = setting(
        default=False, about="spans of OpenTelemetry, one for each request; needs railrules[tracing] and an SDK", most=1
    )
    access_log: bool = setting(default=True, about="one line of JSON on standard output for each request", most=1)


def _read(name: str, text: str, field: dataclasses.Field[object], default: object) -> object:
    about = field.metadata
    if isinstance(default, bool):
        if text not in ("0", "1"):
            raise SettingsError(f"{name}={text!r}: 0 or 1 is wanted")
        return text == "1"
    try:
        value = int(text) if isinstance(default, int) else float(text)
    except ValueError:
        raise SettingsError(f"{name}={text!r}: a number is wanted") from None
    if not about["least"] <= value <= about["most"]:
        raise SettingsError(f"{name}={text}: from {about['least']:g} to {about['most']:g} {about['unit']} is wanted".rstrip())
    return value


def from_environment(environment: Mapping[str, str]) -> ServerSettings:
    """Read the settings from variables such as RAILRULES_BODY_SECONDS.

    Raises:
        SettingsError: a variable of that prefix names no setting, or its value does not do.
    """
    usual = ServerSettings()
    fields = {PREFIX + field.name.upper(): field for field in dataclasses.fields(ServerSettings)}
    unknown = sorted(name for name in environment if name.startswith(PREFIX) and name not in fields)
    if unknown:
        raise SettingsError(f"{', '.join(unknown)}: no such setting; `railrules-server serve --settings` lists them")
    given: dict[str, Any] = {
        field.name: _read(name, environment[name], field, getattr(usual, field.name))
        for name, field in fields.items()
        if name in environment
    }
    return dataclasses.replace(usual, **given)


def rows(settings: ServerSettings) -> list[tuple[str, str, str, str]]:
    """Return every setting with its value, unit and meaning, for people."""
    return [
        (
            PREFIX + field.name.upper(),
            f"{int(value)}" if isinstance(value := getattr(settings, field.name), int) else f"{value:g}",
            field.metadata["unit"],
            field.metadata["about"],
        )
        for field in dataclasses.fields(settings)
    ]
