from _typeshed import Incomplete
from msgspec import Struct
from railrules_client._units import parse as parse
from railrules_client.jobs.shapes import Slot as Slot, slots_of as slots_of
from railrules_client.jobs.sources import Source as Source
from typing import TypeAlias

Tree: TypeAlias
PLACED: Incomplete

class JobFileError(ValueError): ...

def tree_of(path: Source) -> Tree: ...
def like(segments: list[object], path: Source) -> list[object]: ...
def with_quantities(tree: object, record: type[Struct]) -> object: ...
