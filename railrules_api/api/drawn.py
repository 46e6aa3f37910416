"""Answers as drawings: the same bound request and result that the other forms are made of, drawn."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from railrules_api.api.operations import Parameter, Reply
from railrules_api.api.problems import ProblemError
from railrules_api.api.replying import bind, worked
from railrules_api.domain.errors import RefusedError
from railrules_api.drawing import registry
from railrules_api.drawing.registry import DRAWINGS, JOB_DRAWINGS
from railrules_api.drawing.sheet import STYLE_HASH
from railrules_api.rules.takeoff import takeoff

if TYPE_CHECKING:
    from railrules_api.api.calculations import Calculation
    from railrules_api.api.operations import Asked
    from railrules_api.api.service import Service

MEDIA_TYPE: Final = registry.MEDIA_TYPE
HEADERS: Final = {
    "Content-Security-Policy": f"default-src 'none'; style-src '{STYLE_HASH}'; frame-ancestors 'none'",
    "Content-Disposition": 'inline; filename="railrules.svg"',
}
"""The drawing carries its own style, so the policy names that style and nothing else."""

MOST_SHEETS: Final = 20_000
PARAMETERS: Final = (
    Parameter(
        "drawing", "query", "Which drawing of the job, where `image/svg+xml` is accepted; the track chart when left out.",
        {"type": "string", "enum": list(JOB_DRAWINGS)},
    ),
    Parameter(
        "sheet", "query",
        "Sheet of the drawing, from 1: a few miles of the track chart, or a segment's tie panel. The root of the drawing tells "
        "how many there are.",
        {"type": "integer", "minimum": 1, "maximum": MOST_SHEETS},
    ),
)  # fmt: skip


def is_drawn(resource: Calculation) -> bool:
    """Tell whether a resource's answers come as drawings too."""
    return resource.rule.id in DRAWINGS or resource.rule is takeoff.RULE


def sheet_of(asked: Asked) -> int:
    """Return the sheet that is asked for; it is looked at whatever form the answer has, as the document says what it may be.

    Raises:
        ProblemError: 400, it is no number of a sheet.
    """
    text = asked.query.get("sheet", "1")
    if not text.isascii() or not text.isdigit() or not 1 <= int(text[:9]) <= MOST_SHEETS:
        raise ProblemError(400, f"sheet={text!r}: a whole number from 1 to {MOST_SHEETS} is wanted"[:300])
    return int(text)


def draw(resource: Calculation, asked: Asked, service: Service) -> Reply:
    """Answer a request with a drawing.

    Raises:
        ProblemError: the request is malformed or refused, or the drawing has no such sheet.
    """
    sheet = sheet_of(asked)
    bound = bind(resource, asked.body, service)
    found, _ = worked(resource, bound, service)
    if resource.rule is takeoff.RULE:
        draw_job = JOB_DRAWINGS[asked.query.get("drawing", next(iter(JOB_DRAWINGS)))]
        try:
            text = draw_job(bound.given, found, bound.system, sheet)
        except RefusedError as error:
            refusal = error.refusals[0]
            raise ProblemError(404, f"sheet={sheet}: {refusal.reason}; it has {refusal.maximum:.0f}") from error
    else:
        text = DRAWINGS[resource.rule.id](bound.given, found, bound.system)
    return Reply(text.encode(), media_type=MEDIA_TYPE, headers=HEADERS)
