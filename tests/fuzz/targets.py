"""Every fuzz target by name: what takes one input, and where the search begins."""

from __future__ import annotations

from typing import TYPE_CHECKING

from tests.fuzz import columns, edges, target

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

TARGETS: dict[str, tuple[Callable[[bytes], None], Callable[[], Iterator[bytes]]]] = {
    "body": (target.one_input, target.seeds),
    "header": (edges.one_header, edges.header_seeds),
    "stream": (edges.one_stream, edges.stream_seeds),
    "arrow": (columns.one_arrow, columns.arrow_seeds),
    "connection": (edges.one_connection, edges.connection_seeds),
}
