"""Records that are made by the thousand: frozen dataclasses whose making costs less.

A frozen dataclass sets each of its fields by a call that goes round its own refusal to be changed; half of what a takeoff took
was spent on that. A `lean` record is made as an open twin with the same slots, whose fields are set plainly, and becomes what
it is as the last step of being made. It is as frozen as any other.
"""

from __future__ import annotations

from dataclasses import MISSING, fields
from typing import Any, TypeVar

Record = TypeVar("Record")


def lean(record: type[Record]) -> type[Record]:
    """Give a frozen dataclass with slots an `__init__` that costs less, and does the same.

    Raises:
        TypeError: it is not frozen, has no slots, makes defaults or does something after it is made.
    """
    described: Any = record
    parameters = getattr(described, "__dataclass_params__", None)
    own = vars(record).get("__slots__")
    if parameters is None or not parameters.frozen or own is None or hasattr(record, "__post_init__"):
        raise TypeError(f"{record.__name__} is no plain frozen dataclass with slots")
    twin = type(record.__name__, record.__bases__, {"__slots__": own, "__setattr__": object.__setattr__})
    names: dict[str, Any] = {"become": object.__setattr__, "Twin": twin, "Record": record}
    positional: list[str] = []
    named: list[str] = []
    for item in fields(described):
        if item.default_factory is not MISSING or not item.init:
            raise TypeError(f"{record.__name__}.{item.name} is not plainly given")
        text = item.name
        if item.default is not MISSING:
            names[f"default_{item.name}"] = item.default
            text = f"{item.name}=default_{item.name}"
        (named if item.kw_only else positional).append(text)
    head = ", ".join(["self", *positional, *(["*", *named] if named else [])])
    body = [f"    self.{item.name} = {item.name}" for item in fields(described)]
    lines = [f"def __init__({head}):", "    become(self, '__class__', Twin)", *body, "    self.__class__ = Record"]
    exec("\n".join(lines), names)  # noqa: S102  made of the names of fields, nothing else
    made = names["__init__"]
    made.__qualname__ = f"{record.__qualname__}.__init__"
    made.__annotations__ = dict(described.__init__.__annotations__)
    described.__init__ = made
    return record
