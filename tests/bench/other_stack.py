"""The takeoff with another stack: the same schemas as pydantic models, the same rules, served by FastAPI."""

from __future__ import annotations

from functools import cache
from typing import Annotated, Any, Literal

import msgspec
from fastapi import FastAPI
from msgspec import UNSET
from pydantic import BaseModel, ConfigDict, Field, create_model

from railrules_api.api.binding import Binding, Bound, binder_of
from railrules_api.api.replying import answer_struct
from railrules_api.api.resources import calculation_of
from railrules_api.api.service import start
from railrules_api.units import System


class _Strict(BaseModel):
    model_config = ConfigDict(extra="forbid", strict=True, arbitrary_types_allowed=True)


class _Open(BaseModel):
    model_config = ConfigDict(strict=False)


def _form(info: Any, base: type[BaseModel]) -> Any:
    inspect = msgspec.inspect
    if isinstance(info, inspect.Metadata):
        return _form(info.type, base)
    if isinstance(info, inspect.StructType):
        return model_of(info.cls, base)
    if isinstance(info, inspect.ListType):
        return list[_form(info.item_type, base)]  # type: ignore[misc]
    if isinstance(info, inspect.LiteralType):
        return Literal[tuple(info.values)]
    if isinstance(info, inspect.FloatType):
        return Annotated[float, Field(ge=info.ge, gt=info.gt, le=info.le)]
    if isinstance(info, inspect.IntType):
        return Annotated[int, Field(ge=info.ge, gt=info.gt, le=info.le)]
    if isinstance(info, inspect.StrType):
        return Annotated[str, Field(min_length=info.min_length, max_length=info.max_length)]
    return bool


@cache
def model_of(struct: type, base: type[BaseModel]) -> type[BaseModel]:
    """Return the pydantic model of a struct; the base says how strict it is."""
    fields: dict[str, Any] = {}
    for item in msgspec.inspect.type_info(struct).fields:  # type: ignore[attr-defined]
        kinds = item.type.types if isinstance(item.type, msgspec.inspect.UnionType) else (item.type,)
        form = _form(kinds[0], base)
        if item.required:
            fields[item.name] = (form, ...)
        else:
            # requests: the sentinel of the binder; answers: left out where it is not set
            fields[item.name] = (form, UNSET) if base is _Strict else (form | None, None)
    return create_model(f"{struct.__name__}{base.__name__}", __base__=base, **fields)


def app() -> FastAPI:
    """Return the application."""
    resource, service = calculation_of("takeoffs"), start()
    asked: Any = model_of(resource.request, _Strict)
    told: Any = model_of(resource.answer, _Open)
    bind = binder_of(resource.rule.input)
    served = FastAPI(openapi_url=None)

    def takeoff(body: Any) -> Any:
        binding = Binding(service.catalogue, service.house)
        given = bind(body, binding, ())
        assert not binding.refusals
        system: System = "us" if body.units is UNSET else body.units
        return msgspec.to_builtins(answer_struct(resource, Bound(body, given, system, False, service.house, binding), service))

    takeoff.__annotations__["body"] = asked
    served.post("/v1/takeoffs", response_model=told, response_model_exclude_unset=True)(takeoff)
    return served
