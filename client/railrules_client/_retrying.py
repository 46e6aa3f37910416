"""When a call is repeated and how long to wait before. Every operation is pure, so that repeating one is safe."""

from __future__ import annotations

import random
from datetime import UTC, datetime
from email.utils import parsedate_to_datetime

import httpx

FIRST_WAIT = 0.5
"""Seconds before the first repetition, doubled each time."""
LONGEST_WAIT = 8.0
LONGEST_ASKED = 60.0
"""A service that asks for a longer wait than this gets no repetition: the caller should decide."""
PASSING = frozenset({429, 502, 503, 504})
"""Statuses that say nothing about the request: too many just now, or a copy that is starting or going."""


def backoff(attempt: int) -> float:
    """Return seconds to wait after an attempt (0 is the first): doubling, half of it by chance so that callers spread."""
    return float(min(LONGEST_WAIT, FIRST_WAIT * 2.0**attempt) * random.uniform(0.5, 1.0))  # noqa: S311  not a secret


def asked_wait(response: httpx.Response) -> float | None:
    """Return the seconds a `Retry-After` asks for, in either of its forms; None where there is none."""
    text = response.headers.get("retry-after", "").strip()
    if not text:
        return None
    if text.isdecimal():
        return float(text)
    try:
        moment = parsedate_to_datetime(text)
    except ValueError:
        return None
    if moment.tzinfo is None:
        moment = moment.replace(tzinfo=UTC)
    return max(0.0, (moment - datetime.now(UTC)).total_seconds())


def wait_after(outcome: httpx.Response | httpx.RequestError, attempt: int, retries: int) -> float | None:
    """Return the seconds to wait before the next attempt; None when this outcome is the last."""
    if attempt >= retries:
        return None
    if isinstance(outcome, httpx.Response):
        if outcome.status_code not in PASSING:
            return None
        asked = asked_wait(outcome)
        if asked is None:
            return backoff(attempt)
        return asked if asked <= LONGEST_ASKED else None
    # an answer that took too long would take as long again, and the caller has said how long he waits
    lasting = (httpx.ReadTimeout, httpx.WriteTimeout, httpx.UnsupportedProtocol)
    if not isinstance(outcome, httpx.TransportError) or isinstance(outcome, lasting):
        return None
    return backoff(attempt)
