"""The ways in which a computation refuses its input.

Every refusal names the field by its path from the root of the input, so that the edge can turn it into a JSON pointer
without knowing what the rule does.
"""

from __future__ import annotations

from dataclasses import dataclass

Path = tuple[str | int, ...]
"""Where a value stands in a nested input: field names and list positions from the root."""


@dataclass(frozen=True, slots=True)
class Refusal:
    """One thing wrong with an input.

    Attributes:
        path: where the value stands, from the root of the input.
        reason: what is wrong, in one sentence without the value.
        value: the offending value, in SI for a physical quantity; None when the field is missing.
        minimum: smallest allowed value in SI, None when there is none.
        maximum: largest allowed value in SI, None when there is none.
        allowed: the words that would have been accepted, or the nearest of them.
    """

    path: Path
    reason: str
    value: object = None
    minimum: float | None = None
    maximum: float | None = None
    allowed: tuple[str, ...] = ()


class RefusedError(ValueError):
    """An input that a rule will not work with; carries every refusal found, never an empty list."""

    def __init__(self, *refusals: Refusal) -> None:
        """Keep the refusals; the message joins their reasons."""
        if not refusals:
            msg = "a refusal needs a reason"
            raise TypeError(msg)
        self.refusals = refusals
        super().__init__("; ".join(f"{'/'.join(map(str, r.path)) or 'input'}: {r.reason}" for r in refusals))

    def below(self, *prefix: str | int) -> RefusedError:
        """Return the same refusals as seen from further out: `prefix` is put before every path."""
        return RefusedError(
            *(Refusal((*prefix, *r.path), r.reason, r.value, r.minimum, r.maximum, r.allowed) for r in self.refusals)
        )


def refuse(
    *path: str | int,
    reason: str,
    value: object = None,
    minimum: float | None = None,
    maximum: float | None = None,
    allowed: tuple[str, ...] = (),
) -> RefusedError:
    """Build the error for a single refusal; the caller raises it."""
    return RefusedError(Refusal(path, reason, value, minimum, maximum, allowed))


class below:  # noqa: N801  reads as the statement it is: `with below("segments", 3):`
    """Run a block whose refusals are about a nested part of the input: put `prefix` before their paths.

    A takeoff enters thousands of them, so it is as little as can be.
    """

    __slots__ = ("prefix",)

    def __init__(self, *prefix: str | int) -> None:
        """Keep the path of the part."""
        self.prefix = prefix

    def __enter__(self) -> None:
        """Nothing is to be done until a refusal comes."""

    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None, trace: object) -> None:
        """Put the prefix before a refusal's paths."""
        if isinstance(error, RefusedError):
            raise error.below(*self.prefix) from error
