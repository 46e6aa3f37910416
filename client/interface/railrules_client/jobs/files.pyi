from _typeshed import Incomplete
from msgspec import Struct
from pathlib import Path
from railrules_client._units import parse as parse
from railrules_client.jobs.shapes import Slot as Slot, slots_of as slots_of
from typing import TypeAlias

Tree: TypeAlias
PLACED: Incomplete

class JobFileError(ValueError): ...

def tree_of(path: Path) -> Tree: ...
def like(segments: list[object], path: Path) -> list[object]: ...
def with_quantities(tree: object, record: type[Struct]) -> object: ...
