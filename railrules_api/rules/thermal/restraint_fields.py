"""The fields by which the thermal rules speak of longitudinal restraint, and their way into the domain."""

from __future__ import annotations

from typing import Annotated

from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.slip import Law, Restraint

RestraintLaw = Annotated[
    Law,
    Field(
        "Law of longitudinal restraint: constant where the rail moves, proportional to movement, or proportional up to the "
        "constant."
    ),
]
Resistance = Annotated[
    float,
    Field(
        "Longitudinal resistance of one rail per length, as its anchoring and ballast give it.",
        kind=Kind.FORCE_PER_LENGTH,
        symbol="r",
        at_least=1.0,
        at_most=1e7,
        default="longitudinal-resistance",
    ),
]
Stiffness = Annotated[
    float | None,
    Field(
        "Longitudinal stiffness of one rail per length, for the elastic and the bilinear law.",
        kind=Kind.FOUNDATION_MODULUS,
        symbol="k",
        at_least=100.0,
        at_most=1e11,
    ),
]


def restraint(law: Law, resistance: float, stiffness: float | None) -> Restraint:
    """Put the law and its constants together.

    Args:
        law: law of restraint.
        resistance: r [N/m].
        stiffness: k [N/m per m]; None where the caller gave none.

    Raises:
        RefusedError: the law needs a stiffness and there is none.
    """
    if law == "rigid-plastic":
        return Restraint(law, resistance, 0.0)
    if stiffness is None:
        raise refuse("stiffness", reason=f"the {law} law needs a longitudinal stiffness")
    return Restraint(law, resistance, stiffness)
