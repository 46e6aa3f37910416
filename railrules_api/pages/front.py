"""The front page: a job goes in, its answer comes out as tables, drawings and files."""

from __future__ import annotations

import json
from html import escape
from string import Template
from typing import TYPE_CHECKING, Final

from railrules_api.api.resources import operations
from railrules_api.api.sheet_form import HTML, PDF, XLSX
from railrules_api.pages import job_files
from railrules_api.pages.assets import read
from railrules_api.pages.layout import page
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from railrules_api.api.service import Service

FORMS: Final = {  # media type -> (name of the file for people, its ending)
    HTML: ("Calculation sheet (HTML)", "html"),
    PDF: ("Calculation sheet (PDF)", "pdf"),
    XLSX: ("Workbook", "xlsx"),
    "text/csv": ("Bill as CSV", "csv"),
    "application/json": ("Answer as JSON", "json"),
}


_WITH_FILES: Final = (
    "paste it, drop files here, or begin with the demo; Ctrl+Enter answers it. Segments may come in spreadsheets (CSV, XLSX) "
    "beside what stands here, or a whole job in a workbook"
)
_JSON_ALONE: Final = (
    "paste it, drop a file here, or begin with the demo; Ctrl+Enter answers it. Jobs kept as TOML, CSV or workbook: "
    "<code>railrules job FILE</code> prints them as JSON"
)


def forms() -> list[tuple[str, str, str]]:
    """Return the forms that a takeoff can be saved in: media type, name, ending; only those the service offers."""
    offered = next(operation.media_types for operation in operations() if operation.id == "createTakeoff")
    return [(media_type, *FORMS[media_type]) for media_type in FORMS if media_type in offered]


def front(_service: Service) -> bytes:
    """Return the page."""
    labels = {code: unit.label for units in UNITS.values() for code, unit in units.items()}
    brief = f'<button type="button" data-accept="{PDF}" data-ending="pdf" data-extent="summary">Summary (PDF)</button>'
    saves = "".join(
        f'<button type="button" data-accept="{media_type}" data-ending="{ending}">{escape(name)}</button>'
        + (brief if media_type == PDF else "")
        for media_type, name, ending in forms()
    )
    files = job_files.available()
    body = Template(read("text/front.html").decode()).substitute(
        saves=saves,
        forms="TOML or JSON" if files else "JSON",
        hint=_WITH_FILES if files else _JSON_ALONE,
        accept=",".join((".json", ".toml", ".csv", ".tsv", ".xlsx") if files else (".json",)),
    )
    whole = page(
        "railrules: a relay job, answered", body, here="/", scripts=("front-answer.js", "front-files.js", "front.js"), text=False
    )
    # the script reads the names of units here rather than carry a list of its own
    takes = f' data-files="{job_files.PATH}"' if files else ""
    told = f'<main id="main" data-labels="{escape(json.dumps(labels, ensure_ascii=False))}"{takes}>'.encode()
    return whole.replace(b'<main id="main">', told, 1)
