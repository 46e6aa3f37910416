"""Reading the data files, and the one way in which they are refused: file, row, reason."""

from __future__ import annotations

import csv
import hashlib
import io
import math
import re
import tomllib
from contextlib import contextmanager
from fractions import Fraction
from typing import TYPE_CHECKING, Self, get_args

from railrules_api.catalogue.model import Provenance, Status
from railrules_api.units import UNITS, kinds_of

if TYPE_CHECKING:
    from collections.abc import Container, Iterator, Mapping, Sequence
    from importlib.resources.abc import Traversable
    from pathlib import Path

    from railrules_api.domain.kinds import Kind

STATUSES: tuple[str, ...] = get_args(Status)
_ID = re.compile(r"[A-Za-z0-9](?:[A-Za-z0-9.-]*[A-Za-z0-9])?")
_CELL = re.compile(r"(?P<number>[^A-Za-z]*\d(?:[eE][-+]?\d+)?)(?: (?P<unit>[A-Za-z]\w*))?")
_MIXED = re.compile(r"(?:(?P<whole>\d+) )?(?P<part>\d+/[1-9]\d*)")


class CatalogueError(ValueError):
    """A data file that the service will not start with."""

    def __init__(self, file: str, row: str, reason: str) -> None:
        """Keep the three parts; the message joins them."""
        self.file = file
        self.row = row
        self.reason = reason
        super().__init__(f"{file}: {row}: {reason}" if row else f"{file}: {reason}")


class BadEntryError(ValueError):
    """Something wrong with an entry, told without file and row; `about` adds them."""


@contextmanager
def about(file: str, row: str) -> Iterator[None]:
    """Run a block that reads one row: what it finds wrong is told with file and row.

    Raises:
        CatalogueError: the block found something wrong.
    """
    try:
        yield
    except BadEntryError as error:
        raise CatalogueError(file, row, str(error)) from error


class PrintedFloat(float):
    """A number of a TOML file that remembers its digits."""

    text: str

    def __new__(cls, text: str) -> Self:
        """Keep the text beside the number."""
        number = super().__new__(cls, text)
        number.text = text
        return number


def parse_toml(content: bytes, name: str) -> dict[str, object]:
    """Return a TOML document; its floats remember how they are written.

    Raises:
        CatalogueError: it is not TOML, or not UTF-8.
    """
    try:
        return tomllib.loads(content.decode(), parse_float=PrintedFloat)
    except (UnicodeDecodeError, tomllib.TOMLDecodeError) as error:
        raise CatalogueError(name, "", str(error)) from error


class Folder:
    """The data folder: reads each file once and remembers its bytes for the digest."""

    def __init__(self, directory: Traversable | Path) -> None:
        """Read nothing yet."""
        self._directory = directory
        self._read: dict[str, bytes] = {}

    def content(self, name: str) -> bytes:
        """Return a file's bytes.

        Raises:
            CatalogueError: the file cannot be read.
        """
        if name not in self._read:
            try:
                self._read[name] = (self._directory / name).read_bytes()
            except OSError as error:
                raise CatalogueError(name, "", "cannot be read") from error
        return self._read[name]

    def toml(self, name: str) -> dict[str, object]:
        """Return a TOML document."""
        return parse_toml(self.content(name), name)

    def csv(self, name: str) -> list[dict[str, str]]:
        """Return the rows of a CSV file by column name.

        Raises:
            CatalogueError: a row has more or fewer cells than the head, or the file is not UTF-8.
        """
        try:
            lines = list(csv.reader(io.StringIO(self.content(name).decode(), newline="")))
        except UnicodeDecodeError as error:
            raise CatalogueError(name, "", str(error)) from error
        head = lines[0] if lines else []
        if len(set(head)) != len(head):
            raise CatalogueError(name, "", "a column stands twice in the head")
        for cells in lines[1:]:
            if len(cells) != len(head):
                raise CatalogueError(name, cells[0] if cells else "", f"{len(cells)} cells under {len(head)} columns")
        return [dict(zip(head, cells, strict=True)) for cells in lines[1:]]

    def digest(self) -> str:
        """Return a short digest of all that was read, whatever the order of reading."""
        whole = hashlib.sha256()
        for name in sorted(self._read):
            whole.update(name.encode() + b"\0" + self._read[name] + b"\0")
        return whole.hexdigest()[:8]


def refuse_unknown(entry: Mapping[str, object], known: Container[str]) -> None:
    """Refuse keys that nobody would read.

    Raises:
        BadEntryError: there is one.
    """
    unknown = [key for key in entry if key not in known]
    if unknown:
        msg = f"unknown column {', '.join(map(repr, unknown))}"
        raise BadEntryError(msg)


def text_of(entry: Mapping[str, object], key: str, *, required: bool = True) -> str:
    """Return a text without spaces around it; empty when it may be left out and is.

    Raises:
        BadEntryError: it is missing, empty or not a text.
    """
    value = entry.get(key, "")
    if not isinstance(value, str):
        msg = f"{key} must be a text"
        raise BadEntryError(msg)
    if required and not value.strip():
        msg = f"{key} is missing or empty"
        raise BadEntryError(msg)
    return value.strip()


def texts_of(entry: Mapping[str, object], key: str) -> tuple[str, ...]:
    """Return a list of texts; in a CSV cell they stand between semicolons.

    Raises:
        BadEntryError: it is not a list of texts.
    """
    value = entry.get(key, "")
    if isinstance(value, str):
        return tuple(part.strip() for part in value.split(";") if part.strip())
    if not isinstance(value, list) or not all(isinstance(part, str) and part.strip() for part in value):
        msg = f"{key} must be a list of texts"
        raise BadEntryError(msg)
    return tuple(value)


def word_of(entry: Mapping[str, object], key: str, words: Sequence[str]) -> str:
    """Return a text that must be one of a few words.

    Raises:
        BadEntryError: it is another.
    """
    word = text_of(entry, key)
    if word not in words:
        msg = f"{key} is {word!r}, must be one of {', '.join(words)}"
        raise BadEntryError(msg)
    return word


def id_of(entry: Mapping[str, object]) -> str:
    """Return the entry's id, which must be fit for an address as it stands.

    Raises:
        BadEntryError: it is missing, or holds anything but letters, digits, points and hyphens.
    """
    name = text_of(entry, "id")
    if not _ID.fullmatch(name):
        msg = f"id {name!r} must be letters, digits, points and hyphens"
        raise BadEntryError(msg)
    return name


def entries_of(document: Mapping[str, object], key: str, file: str) -> list[dict[str, object]]:
    """Return the blocks `[[key]]` of a document, none when there are none.

    Raises:
        CatalogueError: the key is not a list of blocks.
    """
    blocks = document.get(key, [])
    if not isinstance(blocks, list) or not all(isinstance(block, dict) for block in blocks):
        raise CatalogueError(file, "", f"{key} must be blocks [[{key}]]")
    return blocks


def provenance_of(entry: Mapping[str, object], sources: Container[str]) -> Provenance:
    """Return source, place and status of an entry.

    Raises:
        BadEntryError: the source is unknown, the place empty, the status not one of ours.
    """
    source = text_of(entry, "source")
    also = texts_of(entry, "also_in")
    for name in (source, *also):
        if name not in sources:
            msg = f"source {name!r} is not in sources.toml"
            raise BadEntryError(msg)
    status = word_of(entry, "status", STATUSES)
    return Provenance(source=source, where=text_of(entry, "where"), status=status, also=also)  # type: ignore[arg-type]


def number_of(raw: object) -> tuple[float, str]:
    """Return a number and its digits: decimal, or a fraction as rulers have it (`5 1/2`).

    Raises:
        BadEntryError: it is not a number, or not finite.
    """
    if isinstance(raw, bool) or not isinstance(raw, int | float | str):
        msg = f"{raw!r} is not a number"
        raise BadEntryError(msg)
    text = raw.text if isinstance(raw, PrintedFloat) else str(raw)
    mixed = _MIXED.fullmatch(text)
    try:
        number = float(int(mixed["whole"] or 0) + Fraction(mixed["part"])) if mixed else float(text)
    except ValueError as error:
        msg = f"{text!r} is not a number"
        raise BadEntryError(msg) from error
    if not math.isfinite(number):
        msg = f"{text!r} is not a finite number"
        raise BadEntryError(msg)
    return number, text


def cell_of(cell: str, unit: str) -> tuple[str, str]:
    """Return the digits and the unit of a CSV cell, which may name a unit of its own: `86.80 kg_per_m`."""
    split = _CELL.fullmatch(cell)
    return (split["number"].strip(), split["unit"] or unit) if split else (cell, unit)


def to_si(number: float, unit: str, kind: Kind) -> float:
    """Return a number in SI.

    Raises:
        BadEntryError: the unit is unknown or measures something else.
    """
    known = UNITS[kind].get(unit)
    if known is None:
        others = ", ".join(kinds_of(unit))
        found = f"measures {others}" if others else "is unknown" if unit else "is missing"
        msg = f"unit {unit!r} {found}, wanted {kind}: one of {', '.join(UNITS[kind])}"
        raise BadEntryError(msg)
    return known.to_si(number)
