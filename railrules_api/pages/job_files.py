"""Job files that somebody puts into the front page: TOML, CSV and workbooks, read as the client reads them.

What may stand in such files is said in one place, the client's package `railrules_client.jobs`. It rests on the document of this
service and not the other way round; where it is installed beside the service, the page takes these files, and elsewhere JSON.
"""

from __future__ import annotations

import importlib
from functools import cache
from typing import TYPE_CHECKING, Annotated, Any, Final

import msgspec
from msgspec import UNSET, Meta, UnsetType

from railrules_api.api.decoding import decode
from railrules_api.api.envelope import Fault
from railrules_api.api.operations import Asked, Operation, Reply
from railrules_api.api.problems import ProblemError

if TYPE_CHECKING:
    from railrules_api.api.service import Service

PATH: Final = "/job"
SPOKEN: Final = (".toml", ".json")
MOST_FILES: Final = 8
_MOST_POINTERS: Final = 200


class JobFile(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """A file as it was dropped on the page."""

    name: Annotated[str, Meta(min_length=1, max_length=200, pattern=r"^[^/\\\x00-\x1f\x7f]+$", description="Its name.")]
    content: Annotated[bytes, Meta(description="Its bytes, in base64.")]


class JobFiles(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """The files of one job: a TOML or JSON file, spreadsheets, or both together."""

    files: Annotated[list[JobFile], Meta(min_length=1, max_length=MOST_FILES, description="The files.")]
    pointers: (
        Annotated[list[Annotated[str, Meta(max_length=500)]], Meta(max_length=_MOST_POINTERS, description="What is to be found.")]
        | UnsetType
    ) = UNSET


@cache
def available() -> bool:
    """Tell whether the package that reads job files is installed."""
    try:
        importlib.import_module("railrules_client.jobs")
    except ModuleNotFoundError:
        return False
    return True


def read(_service: Service, asked: Asked) -> Reply:
    """Return the request that the files of a job say, or where in them what it refuses stands.

    Raises:
        ProblemError: the body is no such list (400, 422), the files cannot be read (422), or nothing here reads them (404).
    """
    if not available():
        raise ProblemError(404, "this service reads jobs as JSON only: the package railrules_client is not installed beside it")
    sent: JobFiles = decode(asked.body, JobFiles)
    jobs: Any = importlib.import_module("railrules_client.jobs")
    # a file with the job's own fields comes first, in whatever order they were dropped
    files = sorted(sent.files, key=lambda file: not file.name.lower().endswith(SPOKEN))
    try:
        job = jobs.read(*(jobs.File(file.name, file.content) for file in files))
        body = msgspec.json.encode(job.request)
    except jobs.JobFileError as error:
        raise _refused(str(error)) from error
    except RecursionError as error:
        raise _refused(f"{files[0].name}: nested too deeply") from error
    if sent.pointers is UNSET:
        return Reply(body)
    return Reply(msgspec.json.encode({pointer: job.where(pointer) for pointer in sent.pointers}))


def _refused(text: str) -> ProblemError:
    """Return the problem of files that cannot be read: a fault a line, with file, row and column in its words."""
    lines = text.splitlines() or [text]
    return ProblemError(422, lines[0], tuple(Fault(pointer="", detail=line[:1000]) for line in lines))


OPERATION: Final = Operation(
    method="POST", path=PATH, id="pageJob", tag="pages", summary="pageJob", description="For the front page.", answer=None,
    handler=read, request=JobFiles, slow=True,
)  # fmt: skip
