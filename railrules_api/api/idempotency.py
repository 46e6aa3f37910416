"""The request header `Idempotency-Key` (draft-ietf-httpapi-idempotency-key-header), kept without keeping anything.

Calculations are pure: the same request gives the same bytes from whatever worker or copy of the service, so a repetition is
answered as the first was, at any time, and two at once do no harm. What remains of the draft is to refuse a key that comes with
another request. Any number of copies cannot do that from memory; they can where the key is made of the body itself: a key of
the form `sha-256:` and the digest in hexadecimal is held against the body that it comes with. Any other key is only sent back.
"""

from __future__ import annotations

import hashlib
import re
from typing import TYPE_CHECKING, Final

from railrules_api.api.operations import Parameter
from railrules_api.api.problems import IDEMPOTENCY, ProblemError

if TYPE_CHECKING:
    from collections.abc import Sequence

HEADER: Final = "Idempotency-Key"
PATTERN: Final = r'^"([A-Za-z0-9._~-]{1,128}|sha-256:[0-9a-f]{64})"$'
_FORM = re.compile(PATTERN.removesuffix("$") + r"\Z")
_OF_THE_BODY: Final = '"sha-256:'
SCHEMA: Final = {"type": "string", "format": "sf-string", "minLength": 3, "maxLength": 130, "pattern": PATTERN}
PARAMETER: Final = Parameter(
    HEADER,
    "header",
    "Names the request, so that it can be sent again when no answer came: a string between quotes, sent back with the answer. "
    "Nothing is kept under it, and it never expires: the same request and versions give the same bytes, from any copy of the "
    'service. A key `"sha-256:` and the SHA-256 of the body in hexadecimal `"` is held against the body, and a body that is '
    "not its own is refused with 422. Another key (a UUID, say) is not compared with anything.",
    SCHEMA,
    '"8e03978e-40d5-43e8-bc93-6894a57f9324"',
)


def told(sent: Sequence[str], body: bytes) -> dict[str, str]:
    """Return the header fields that an answer carries, from what was sent of the key.

    Args:
        sent: every value of the header.
        body: as it came.

    Raises:
        ProblemError: it is not one key of the form (400), or the body is not the one that the key is made of (422).

    >>> told(['"a-1"'], b"{}")
    {'Idempotency-Key': '"a-1"'}
    """
    if not sent:
        return {}
    key = sent[0]
    if len(sent) > 1 or not _FORM.match(key):
        detail = f'{HEADER}: one string between quotes is wanted, of 1 to 128 of A-Z a-z 0-9 . _ ~ - or "sha-256:..." of the body'
        raise ProblemError(400, detail, kind=IDEMPOTENCY[400])
    if key.startswith(_OF_THE_BODY):
        digest = hashlib.sha256(body).hexdigest()
        if key != f'{_OF_THE_BODY}{digest}"':
            detail = f"{HEADER}: the key is that of another body; the SHA-256 of this one is {digest}"
            raise ProblemError(422, detail, kind=IDEMPOTENCY[422])
    return {HEADER: key}
