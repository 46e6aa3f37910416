"""A small store of catalogue answers, asked for again only when they have changed."""

from __future__ import annotations

import threading
from collections import OrderedDict
from http import HTTPStatus
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import httpx

LARGEST_BYTES = 8 * 1024 * 1024
"""All entries together; the catalogue is far smaller."""
_KEPT = "railrules_kept"


class AnswerCache:
    """Answers by address, each with its validator (ETag). Safe to share between threads."""

    def __init__(self, entries: int) -> None:
        """Keep at most so many answers, the last used ones."""
        self._entries = entries
        self._kept: OrderedDict[tuple[str, str], tuple[str, httpx.Response]] = OrderedDict()
        self._bytes = 0
        self._lock = threading.Lock()

    @staticmethod
    def _key(request: httpx.Request) -> tuple[str, str]:
        return str(request.url), request.headers.get("accept", "")

    def prepare(self, request: httpx.Request) -> None:
        """Ask only for what has changed."""
        with self._lock:
            kept = self._kept.get(self._key(request))
        if request.method == "GET" and kept is not None:
            request.headers["If-None-Match"] = kept[0]
            # goes with the request, so that it is still there when another thread has crowded it out
            request.extensions[_KEPT] = kept[1]

    def settle(self, request: httpx.Request, response: httpx.Response) -> httpx.Response:
        """Keep an answer that has a validator; put the kept one in the place of "not changed"."""
        key = self._key(request)
        kept: httpx.Response | None = request.extensions.get(_KEPT)
        if response.status_code == HTTPStatus.NOT_MODIFIED and kept is not None:
            with self._lock:
                if key in self._kept:
                    self._kept.move_to_end(key)
            return kept
        etag = response.headers.get("etag", "")
        if request.method == "GET" and response.status_code == HTTPStatus.OK and etag:
            with self._lock:
                before = self._kept.pop(key, None)
                self._bytes += len(response.content) - (0 if before is None else len(before[1].content))
                self._kept[key] = etag, response
                while self._kept and (len(self._kept) > self._entries or self._bytes > LARGEST_BYTES):
                    _, (_, dropped) = self._kept.popitem(last=False)
                    self._bytes -= len(dropped.content)
        return response
