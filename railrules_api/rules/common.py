"""Fields and cautions that many rules share: said once here, so that one name always means one thing."""

from __future__ import annotations

from typing import Annotated

from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.rules.model import Caution, Cite

Area = Annotated[
    float,
    Field(
        "Cross-section of one rail.",
        kind=Kind.AREA,
        symbol="A",
        at_least=1e-5,
        at_most=0.05,
        taken=Taken("section", "rail-sections", "area"),
    ),
]
ElasticModulus = Annotated[
    float,
    Field(
        "Modulus of elasticity of rail steel.",
        kind=Kind.STRESS,
        symbol="E",
        at_least=1e9,
        at_most=1e12,
        default="elastic-modulus",
    ),
]
Expansion = Annotated[
    float,
    Field(
        "Coefficient of linear thermal expansion of rail steel.",
        kind=Kind.EXPANSION,
        symbol="alpha",
        at_least=1e-7,
        at_most=1e-4,
        default="thermal-expansion",
    ),
]
RailTemperature = Annotated[
    float,
    Field("Temperature of the rail.", kind=Kind.TEMPERATURE, symbol="T", at_least=173.15, at_most=373.15),
]
NeutralTemperature = Annotated[
    float,
    Field(
        "Rail neutral temperature: neither compression nor tension.",
        kind=Kind.TEMPERATURE,
        symbol="T_N",
        at_least=173.15,
        at_most=373.15,
    ),
]

OWN_STANDARDS = Caution(
    code="own-standards-decide",
    text=(
        "Calculated from the inputs given. It does not replace the railroad's own standards, its continuous welded rail plan "
        "(49 CFR 213.118 and 213.119) or the decision of a person qualified under 49 CFR 213.7."
    ),
    cite=Cite("cfr-49-213", "213.7, 213.118, 213.119", "published"),
)
NEUTRAL_TEMPERATURE_DRIFTS = Caution(
    code="neutral-temperature-drifts",
    text=(
        "Neutral temperature drifts after laying; losses of 30 to 40 °F below the laying temperature are reported and can lead "
        "directly to buckling. Measure rail temperature with a rail thermometer, and neutral temperature where it matters."
    ),
    cite=Cite("fra-compliance-manual-2021", "Volume II, chapter 1, p. 97", "published"),
)
