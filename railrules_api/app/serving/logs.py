"""Logs as one JSON object a line on standard output. What a caller sends as body, query or key never comes into them."""

from __future__ import annotations

import contextlib
import logging
import os
import sys
import time
import traceback

import msgspec

_LEVELS = {"WARNING": "warn", "CRITICAL": "fatal"}


def line(event: str, *, level: str = "info", **fields: object) -> None:
    """Write one line. A reader that has gone away, or a full disk behind it, does not stop the service."""
    entry = {"time": round(time.time(), 6), "level": level, "event": event, "process": os.getpid(), **fields}
    with contextlib.suppress(OSError, ValueError):
        # one write call, so that the lines of several workers do not mix
        os.write(sys.__stdout__.fileno() if sys.__stdout__ else 1, msgspec.json.encode(entry) + b"\n")


class _Handler(logging.Handler):
    def emit(self, record: logging.LogRecord) -> None:
        """Write a record of the standard library's logging."""
        fields: dict[str, object] = {"logger": record.name}
        if record.exc_info and record.exc_info[1] is not None:
            # the frames tell where; the message of an exception may hold what a caller sent
            error = record.exc_info[1]
            fields["error"] = type(error).__name__
            fields["at"] = [f"{frame.name}:{frame.lineno}" for frame in traceback.extract_tb(error.__traceback__)[-12:]]
        line(record.getMessage()[:500], level=_LEVELS.get(record.levelname, record.levelname.lower()), **fields)


def install() -> None:
    """Send what libraries log through `line`; what they say below a warning is left out."""
    root = logging.getLogger()
    root.handlers[:] = [_Handler()]
    root.setLevel(logging.WARNING)
    for name in ("uvicorn", "uvicorn.error", "uvicorn.access", "asyncio", "litestar"):
        logger = logging.getLogger(name)
        logger.handlers.clear()
        logger.propagate = True
        # a malformed request is counted and answered; it is no warning of ours
        logger.setLevel(logging.ERROR if name.startswith("uvicorn") else logging.WARNING)
