"""Which operation a path belongs to, and which answers are worked in a thread: what the gate asks before the application is."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import TYPE_CHECKING

from railrules_api.api import discovery
from railrules_api.api.headers import accepted
from railrules_api.api.resources import operations
from railrules_api.pages.routes import pages

if TYPE_CHECKING:
    from collections.abc import Iterable

    from railrules_api.api.operations import Operation

UNMATCHED = "unmatched"


class Routes:
    """The table of operations, asked by path."""

    def __init__(self, table: Iterable[Operation]) -> None:
        """Read the table.

        Args:
            table: every operation that the service answers.
        """
        table = tuple(table)
        self.templates = tuple(dict.fromkeys(operation.path for operation in table))
        plain = [path for path in self.templates if "{" not in path]
        self._open = [path for path in self.templates if "{" in path]
        self._plain = frozenset(plain)
        groups = (f"({re.sub(r'{[^{}]+}', '[^/]+', path)})" for path in self._open)
        self._pattern = re.compile("|".join(groups) or r"(?!)")
        self._always = frozenset(operation.path for operation in table if operation.slow)
        self._probes = frozenset(operation.path for operation in table if operation.probe)
        forms = {operation.path: operation for operation in table if operation.slow_forms}

        @lru_cache(maxsize=256)
        def slow_form(route: str, accept: str) -> bool:
            operation = forms.get(route)
            return operation is not None and accepted(accept or "*/*", operation.media_types) in operation.slow_forms

        self._slow_form = slow_form

    def template(self, path: str) -> str:
        """Return the template that a path is of; where there is none, `unmatched`: what callers make up is no label."""
        path = path.rstrip("/") or "/"
        if path in self._plain:
            return path
        found = self._pattern.fullmatch(path)
        return self._open[found.lastindex - 1] if found and found.lastindex else UNMATCHED

    def is_slow(self, template: str, accept: str) -> bool:
        """Tell from a template and an Accept header whether the answer is worked in a thread whatever the body."""
        return template in self._always or self._slow_form(template, accept)

    def is_probe(self, template: str) -> bool:
        """Tell whether a template is answered without a key, whatever the load."""
        return template in self._probes


def every_route() -> Routes:
    """Return the routes of the service: the API, what tells of it, and the pages for people."""
    return Routes((*operations(), *discovery.operations(), *pages()))
