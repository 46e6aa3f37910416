"""The calculation sheet as PDF: the page of `html`, set on paper. Needs the extra `pdf` and the system's Pango."""

from __future__ import annotations

import gc
import re
from contextlib import contextmanager
from threading import Lock
from typing import TYPE_CHECKING, Any, Final, NoReturn

from railrules_api.sheets.html import page, style

if TYPE_CHECKING:
    from collections.abc import Iterator

    from railrules_api.sheets.model import Sheet

_SIZES = {"letter": "8.5in 11in", "A4": "210mm 297mm"}
_ONE_AT_A_TIME = Lock()
"""Setting a long job takes much memory and its library keeps font tables of its own: one sheet after the other."""


class NoPdfError(RuntimeError):
    """The library that sets pages, or the system library it needs, is not installed."""


def _refuse(_url: str, *_more: Any, **_other: Any) -> NoReturn:  # noqa: ANN401  the library's signature
    raise ValueError("a sheet fetches nothing")


_ROOM: Final = "\N{FOUR-PER-EM SPACE}"
_PLAIN: Final = (
    # a sign in front of what it changes, brackets, and commas; a sign between two things has some room on both sides
    (re.compile(r"(<(?:mrow|math)[^>]*>)<mo>(\N{MINUS SIGN})</mo>"), r"\1\2"),
    (re.compile(r"<mo>([()|\u2308-\u230b])</mo>"), r"\1"),
    (re.compile(r"<mo>,</mo>"), ", "),
    (re.compile(r'((?<!<wbr>)<math[^>]*>)<mo form="infix">([^<])</mo>'), rf"\1\2{_ROOM}"),
    (re.compile(r'<mo(?: form="infix")?>([^<])</mo>'), rf"{_ROOM}\1{_ROOM}"),
    (re.compile(r"<mtext>([^<]*)</mtext>"), r"\1"),
    # a subscript needs its box
    (re.compile(r'<(mn|mi mathvariant="normal")>([^<]*)</m[ni]>(?!</msu)'), r"\2"),
    (re.compile(r'<mrow class="n">([^<]*)</mrow>'), r"\1"),
    (re.compile(r'(<td class="number result">)<math[^>]*>([^<]*)</math>'), r"\1\2"),
    (re.compile(r"<wbr>"), "\N{ZERO WIDTH SPACE}"),
)
"""What of a formula is a mere box to a setter that knows no MathML, and the text that stands for it."""


def plain(page_text: str) -> str:
    r"""Return a page whose formulas have no more boxes than their look needs: each costs as much time as a cell.

    >>> plain('<math><mrow><mi>a</mi><mo>+</mo><mrow class="n"><mn>5.2</mn><mtext> in</mtext></mrow></mrow></math>').split("+")
    ['<math><mrow><mi>a</mi>\u2005', '\u20055.2 in</mrow></math>']
    """
    for mark, text in _PLAIN:
        page_text = mark.sub(text, page_text)
    return page_text


@contextmanager
def _uncollected() -> Iterator[None]:
    """Put off the collection of cycles: going through the growing tree of boxes again and again took a third of the time."""
    was = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was:
            gc.enable()


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
    with _ONE_AT_A_TIME, _uncollected():
        body: bytes = HTML(string=plain(page(sheet, dress)), url_fetcher=_refuse).write_pdf(
            pdf_identifier=sheet.digest[:32].encode(), pdf_tags=True
        )
    return body
