from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from typing import TypeAlias

Dimension: TypeAlias = tuple[int, int, int, int, int]

class UnknownUnitError(ValueError): ...

@dataclass(frozen=True, slots=True)
class Unit:
    code: str
    factor: Fraction
    zero: Fraction
    dimension: Dimension
    absolute: bool
    definition: str

@cache
def unit_of(code: str) -> Unit: ...
def convert(value: float, source: str, target: str) -> float: ...
def code_of(written: str) -> str: ...
def parse(text: str) -> tuple[float, str]: ...
@cache
def label_of(code: str) -> str: ...
