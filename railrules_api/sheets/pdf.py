"""The calculation sheet as PDF: the page of `html`, set on paper. Needs the extra `pdf` and the system's Pango."""

from __future__ import annotations

from threading import Lock
from typing import TYPE_CHECKING, Any, NoReturn

from railrules_api.sheets.html import page, style

if TYPE_CHECKING:
    from railrules_api.sheets.model import Sheet

_SIZES = {"letter": "8.5in 11in", "A4": "210mm 297mm"}
_ONE_AT_A_TIME = Lock()
"""Setting a long job takes much memory and its library keeps font tables of its own: one sheet after the other."""


class NoPdfError(RuntimeError):
    """The library that sets pages, or the system library it needs, is not installed."""


def _refuse(_url: str, *_more: Any, **_other: Any) -> NoReturn:  # noqa: ANN401  the library's signature
    raise ValueError("a sheet fetches nothing")


def encode(sheet: Sheet) -> bytes:
    """Return the sheet as PDF: the same sheet gives the same bytes.

    Raises:
        NoPdfError: PDF cannot be made here.
    """
    try:
        from weasyprint import HTML  # noqa: PLC0415  an extra
    except (ImportError, OSError) as error:
        raise NoPdfError(str(error)) from error
    dress = f"{style('paper')}@page {{ size: {_SIZES[sheet.block.paper]}; }}"
    with _ONE_AT_A_TIME:
        body: bytes = HTML(string=page(sheet, dress), url_fetcher=_refuse).write_pdf(
            pdf_identifier=sheet.digest[:32].encode(), pdf_tags=True
        )
    return body
