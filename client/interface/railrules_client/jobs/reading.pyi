from _typeshed import Incomplete
from collections.abc import Mapping
from dataclasses import dataclass, field
from os import PathLike
from railrules_client._errors import ProblemError as ProblemError, told as told
from railrules_client._generated.models import Segment as Segment, TakeoffRequest as TakeoffRequest
from railrules_client.jobs.cells import CellError as CellError, Signs as Signs
from railrules_client.jobs.files import JobFileError as JobFileError, Tree as Tree, like as like, tree_of as tree_of, with_quantities as with_quantities
from railrules_client.jobs.headings import Steps as Steps, column_of as column_of
from railrules_client.jobs.segments import Errors as Errors, LISTS as LISTS, TABLE as TABLE, entries_of as entries_of, listed as listed, put as put, signs_of as signs_of
from railrules_client.jobs.shapes import slots_of as slots_of
from railrules_client.jobs.sources import File as File, Source as Source
from railrules_client.jobs.spreadsheets import Grid as Grid, SpreadsheetError as SpreadsheetError, grids as grids, place as place
from typing import Final

JOB: Final[str]
SHARED: Final[str]
ENTRIES: Final[Incomplete]
NAMES: Final[Incomplete]

@dataclass(frozen=True, slots=True)
class Job:
    request: dict[str, object]
    places: Mapping[Steps, str] = field(default_factory=dict['Steps', str], repr=False)
    def where(self, pointer: str) -> str: ...
    def changed(self, changes: Mapping[str, str]) -> Job: ...
    def told(self, error: ProblemError) -> str: ...

def read(job: str | PathLike[str] | File, *tables: str | PathLike[str] | File, **fields: object) -> Job: ...
