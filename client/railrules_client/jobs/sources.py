"""Where a job's files come from: paths, or bytes that are in memory already."""

from __future__ import annotations

from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from os import PathLike


@dataclass(frozen=True, slots=True)
class File:
    """A file that is in memory, such as one that somebody sent.

    Attributes:
        name: its name, whose ending tells its form.
        content: its bytes.
    """

    name: str
    content: bytes = field(repr=False)


class Source:
    """A file to be read, wherever it is."""

    def __init__(self, given: str | PathLike[str] | File) -> None:
        """Take a path or a file in memory."""
        self._path = None if isinstance(given, File) else Path(given)
        self._content = given.content if isinstance(given, File) else b""
        self._called = given.name if isinstance(given, File) else str(self._path)

    def __str__(self) -> str:
        """Return what it is called in messages."""
        return self._called

    @property
    def name(self) -> str:
        """Its name without its folder."""
        return Path(self._called).name

    @property
    def stem(self) -> str:
        """Its name without its ending."""
        return Path(self._called).stem

    @property
    def suffix(self) -> str:
        """The ending of its name, in lower case."""
        return Path(self._called).suffix.lower()

    def size(self) -> int:
        """Return how many bytes it has.

        Raises:
            OSError: it is not there.
        """
        return len(self._content) if self._path is None else self._path.stat().st_size

    def read(self) -> bytes:
        """Return its bytes.

        Raises:
            OSError: it cannot be read.
        """
        return self._content if self._path is None else self._path.read_bytes()
