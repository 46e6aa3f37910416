"""Catalogue answers that were asked for last, kept whole: the catalogue does not change while the service runs."""

from __future__ import annotations

import threading
from collections import OrderedDict
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from collections.abc import Callable

    from railrules_api.api.operations import Asked, Reply
    from railrules_api.api.service import Service

FORM: Final = "application/json"
"""The form that is asked for all the time; drawings and the like are worked when they are wanted."""
MOST: Final = 4 * 2**20
"""Bytes kept for one operation: more than any table and its rows take, so that only made-up queries push each other out."""


def kept(handler: Callable[[Service, Asked], Reply]) -> Callable[[Service, Asked], Reply]:
    """Return a handler that gives the same reply to the same question, where the reply has a validator; for one service."""
    known: OrderedDict[tuple[object, ...], Reply] = OrderedDict()
    size = 0
    lock = threading.Lock()

    def handle(service: Service, asked: Asked) -> Reply:
        nonlocal size
        if asked.accept != FORM:
            return handler(service, asked)
        key = (*asked.path.values(), None, *asked.query.items())
        with lock:
            found = known.get(key)
            if found is not None:
                known.move_to_end(key)
                return found
        reply = handler(service, asked)
        if reply.etag and len(reply.body) <= MOST:
            with lock:
                # two threads may have worked the same reply at once
                size += len(reply.body) - (len(known[key].body) if key in known else 0)
                known[key] = reply
                while size > MOST:
                    size -= len(known.popitem(last=False)[1].body)
        return reply

    return handle
