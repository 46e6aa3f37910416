"""Loading: the data folder into one frozen catalogue, and a house's rulebook on top of it."""

from __future__ import annotations

import hashlib
from importlib.resources import files
from types import MappingProxyType
from typing import TYPE_CHECKING, get_args

from railrules_api.catalogue.catalogue import Catalogue
from railrules_api.catalogue.coherence import check_pattern, check_sections
from railrules_api.catalogue.defaults import entries, handbook_entry, house_provenance, overriding
from railrules_api.catalogue.items import allowance_entry, item_of
from railrules_api.catalogue.model import Item, Row, Source, SourceKind, Table, plain
from railrules_api.catalogue.outlines import FITTINGS, PROFILES, fittings_table, profile_table, rail_profiles
from railrules_api.catalogue.reading import (
    BadEntryError,
    CatalogueError,
    Folder,
    about,
    entries_of,
    id_of,
    parse_toml,
    refuse_unknown,
    text_of,
    word_of,
)
from railrules_api.catalogue.records import table_of
from railrules_api.catalogue.rows import CsvReader, toml_row
from railrules_api.catalogue.rulebook import Default, Rulebook
from railrules_api.catalogue.tables import PATTERNS, PLANS, RAIL_SECTIONS

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping
    from pathlib import Path

    from railrules_api.catalogue.tables import Plan

_SOURCES, _ITEMS, _DEFAULTS, _EDITION = "sources.toml", "items.toml", "defaults.toml", "edition.toml"
_YEARS = range(1700, 2101)


def _source(entry: Mapping[str, object]) -> Source:
    refuse_unknown(entry, {"id", "title", "publisher", "year", "kind", "address", "note"})
    year = entry.get("year")
    if year is not None and (isinstance(year, bool) or not isinstance(year, int) or year not in _YEARS):
        msg = f"year is {year!r}, must be a year or left out"
        raise BadEntryError(msg)
    kind = word_of(entry, "kind", get_args(SourceKind))
    return Source(
        id=id_of(entry),
        title=text_of(entry, "title"),
        publisher=text_of(entry, "publisher"),
        kind=kind,  # type: ignore[arg-type]
        year=year,
        address=text_of(entry, "address", required=False),
        note=text_of(entry, "note", required=False),
    )


def _label(entry: Mapping[str, object], position: int) -> str:
    """Name an entry in a refusal: by its id where it has one, else by its number in the file."""
    name = entry.get("id")
    return name if isinstance(name, str) and name.strip() else f"row {position}"


def _sources(folder: Folder) -> Mapping[str, Source]:
    found: dict[str, Source] = {}
    for position, entry in enumerate(entries_of(folder.toml(_SOURCES), "source", _SOURCES), 1):
        with about(_SOURCES, _label(entry, position)):
            source = _source(entry)
            _refuse_second(source.id, found)
        found[source.id] = source
    return MappingProxyType(found)


def _refuse_second(name: str, found: Mapping[str, object]) -> None:
    if name in found:
        msg = "id stands twice"
        raise BadEntryError(msg)


def _collect(labelled: Iterable[tuple[str, Row]], file: str, known: Mapping[str, Row]) -> Mapping[str, Row]:
    """Gather rows by id; no id or further name may be taken for another, with case and spaces aside."""
    found: dict[str, Row] = {}
    names = {plain(name): row.id for row in known.values() for name in (row.id, *row.also)}
    for label, row in labelled:
        with about(file, label):
            _refuse_second(row.id, found)
            check_pattern(row.record)
            for name in (row.id, *row.also):
                if names.setdefault(plain(name), row.id) != row.id or (name == row.id and row.id in known):
                    msg = f"{name!r} would be taken for {names[plain(name)]}"
                    raise BadEntryError(msg)
        found[row.id] = row
    return MappingProxyType(found)


def _toml_rows(
    blocks: Iterable[Mapping[str, object]], plan: Plan, file: str, sources: Mapping[str, Source]
) -> Iterable[tuple[str, Row]]:
    for position, entry in enumerate(blocks, 1):
        label = _label(entry, position)
        with about(file, label):
            yield label, toml_row(entry, plan, sources)


def _csv_rows(lines: Iterable[Mapping[str, str]], reader: CsvReader, file: str) -> Iterable[tuple[str, Row]]:
    for position, entry in enumerate(lines, 1):
        label = _label(entry, position)
        with about(file, label):
            yield label, reader.row(entry)


def _table(folder: Folder, plan: Plan, sources: Mapping[str, Source]) -> Table:
    tabular = plan.file.endswith(".csv")
    head_file = plan.file.removesuffix(".csv") + ".toml" if tabular else plan.file
    head = folder.toml(head_file)
    with about(head_file, ""):
        title, meaning = text_of(head, "title"), text_of(head, "about")
        if tabular:
            rows = _csv_rows(folder.csv(plan.file), CsvReader(head, plan, sources), plan.file)
        else:
            refuse_unknown(head, {"title", "about", "row"})
            rows = _toml_rows(entries_of(head, "row", plan.file), plan, plan.file, sources)
    found = _collect(rows, plan.file, {})
    if plan is RAIL_SECTIONS:
        check_sections(found, head, plan.file, head_file)
    columns = MappingProxyType({column.name: column for column in plan.columns})
    return Table(id=plan.id, title=title, about=meaning, columns=columns, rows=found, record=plan.record)


def _items(folder: Folder, tables: Mapping[str, Table], sources: Mapping[str, Source]) -> Mapping[str, Item]:
    found: dict[str, Item] = {}
    for position, entry in enumerate(entries_of(folder.toml(_ITEMS), "item", _ITEMS), 1):
        with about(_ITEMS, _label(entry, position)):
            item = item_of(entry, tables, sources)
            _refuse_second(item.id, found)
        found[item.id] = item
    return MappingProxyType(found)


def _handbook(folder: Folder, tables: Mapping[str, Table], items: Mapping[str, Item], sources: Mapping[str, Source]) -> Rulebook:
    document = folder.toml(_DEFAULTS)
    with about(_DEFAULTS, "rulebook"):
        refuse_unknown(document, {"rulebook", "default"})
        head = table_of(document.get("rulebook"), "rulebook")
        name, edition, title = id_of(head), text_of(head, "edition"), text_of(head, "title")
    found: dict[str, Default] = {}
    for position, entry in enumerate(entries_of(document, "default", _DEFAULTS), 1):
        with about(_DEFAULTS, _label(entry, position)):
            default = handbook_entry(entry, tables, sources, name)
            _refuse_second(default.id, found)
        found[default.id] = default
    for item in items.values():
        default = allowance_entry(item, name)
        with about(_ITEMS, item.id):
            _refuse_second(default.id, found)
        found[default.id] = default
    digest = hashlib.sha256(folder.content(_DEFAULTS)).hexdigest()[:8]
    return Rulebook(
        id=name,
        edition=edition,
        title=title,
        digest=digest,
        defaults=MappingProxyType(found),
        rows=MappingProxyType({}),
    )


def load(directory: Path | None = None) -> Catalogue:
    """Read and check everything in the data folder.

    Args:
        directory: another folder in place of the package's own.

    Raises:
        CatalogueError: a file, row or value is bad; the message names it and the reason.
    """
    folder = Folder(directory or files("railrules_api") / "data")
    edition = folder.toml(_EDITION)
    with about(_EDITION, ""):
        refuse_unknown(edition, {"edition"})
        name = text_of(edition, "edition")
    sources = _sources(folder)
    read = {plan.id: _table(folder, plan, sources) for plan in PLANS}
    sections = read[RAIL_SECTIONS.id].rows
    profiles = rail_profiles(folder, sections, sources)
    tables = MappingProxyType({**read, PROFILES: profile_table(profiles, sections), FITTINGS: fittings_table(profiles, sections)})
    items = _items(folder, tables, sources)
    handbook = _handbook(folder, tables, items, sources)
    return Catalogue(
        version=f"{name}+{folder.digest()}",
        sources=sources,
        tables=tables,
        items=items,
        rulebook=handbook,
        profiles=profiles,
    )


def load_rulebook(path: Path, base: Catalogue) -> Rulebook:
    """Read a house's rulebook: patterns of its own, and defaults in place of those of the built-in one.

    Raises:
        CatalogueError: an entry is unknown, of another kind than the one it replaces, or outside its limits.
    """
    file = path.name
    try:
        content = path.read_bytes()
    except OSError as error:
        raise CatalogueError(file, "", "cannot be read") from error
    document = parse_toml(content, file)
    with about(file, "rulebook"):
        refuse_unknown(document, {"rulebook", "default", *PATTERNS})
        head = table_of(document.get("rulebook"), "rulebook")
        refuse_unknown(head, {"id", "edition", "title"})
        name, edition, title = id_of(head), text_of(head, "edition"), text_of(head, "title")
        if name == base.rulebook.id:
            msg = f"id {name!r} is that of the built-in rulebook"
            raise BadEntryError(msg)
    own: dict[str, Mapping[str, Row]] = {}
    for table, plan in PATTERNS.items():
        blocks = [house_provenance(block) for block in entries_of(document, table, file)]
        rows = _collect(_toml_rows(blocks, plan, file, base.sources), file, base.tables[table].rows)
        if rows:
            own[table] = rows
    defaults = entries(base.rulebook.defaults, own)
    seen: set[str] = set()
    for position, entry in enumerate(entries_of(document, "default", file), 1):
        with about(file, _label(entry, position)):
            default = overriding(entry, defaults, base.sources, name)
            _refuse_second(default.id, dict.fromkeys(seen))
        seen.add(default.id)
        defaults[default.id] = default
    return Rulebook(
        id=name,
        edition=edition,
        title=title,
        digest=hashlib.sha256(content).hexdigest()[:8],
        defaults=MappingProxyType(defaults),
        rows=MappingProxyType(own),
    )
