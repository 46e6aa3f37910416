"""Content coding of answers: gzip where the caller takes it, chosen here so that `Vary`, `ETag` and `q=0` are right."""

from __future__ import annotations

import gzip
import threading
from collections import OrderedDict

from railrules_api.api.headers import qualities

KEPT_FROM = 1024
"""Answers with a validator come again and are kept squeezed, so it pays from this size on."""
ONCE_FROM = 16 * 1024
"""Answers that are worked once are squeezed from this size on: below, the time spent is more than the line saves."""
THREAD_FROM = 200_000
"""Bodies of more bytes than this are squeezed in a thread, so that others are served meanwhile."""
_KEPT = 256
_LEVEL_KEPT, _LEVEL_ONCE = 6, 1


def takes_gzip(header: str) -> bool:
    """Tell whether an Accept-Encoding header likes gzip at least as well as no coding.

    >>> takes_gzip("gzip, br"), takes_gzip("gzip;q=0"), takes_gzip("*"), takes_gzip("identity, gzip;q=0.5"), takes_gzip("")
    (True, False, True, False, False)
    """
    given = qualities(header)
    quality = given.get("gzip", given.get("x-gzip", given.get("*", 0.0)))
    return quality > 0.0 and quality >= given.get("identity", 0.0)


def coded_etag(etag: str) -> str:
    """Return the validator of the gzip form: two forms that differ in their bytes have two strong validators."""
    return f'{etag[:-1]}-gz"' if etag else ""


class Squeezer:
    """Gzip bodies, and those of the catalogue that were asked for last, by their validators."""

    def __init__(self) -> None:
        """Start with none."""
        self._kept: OrderedDict[str, bytes] = OrderedDict()
        self._lock = threading.Lock()

    def squeezed(self, body: bytes, etag: str) -> bytes:
        """Return the gzip form of a body; the same bytes every time."""
        if not etag:
            return gzip.compress(body, _LEVEL_ONCE, mtime=0)
        with self._lock:
            found = self._kept.get(etag)
            if found is not None:
                self._kept.move_to_end(etag)
                return found
        found = gzip.compress(body, _LEVEL_KEPT, mtime=0)
        with self._lock:
            self._kept[etag] = found
            if len(self._kept) > _KEPT:
                self._kept.popitem(last=False)
        return found
