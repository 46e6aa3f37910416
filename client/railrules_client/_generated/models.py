"""Requests, answers and quantities of railrules 0.1.0. Made from the OpenAPI document; do not edit.

Requests check nothing that the service checks. In an answer, fields that this version does not know are passed over and a
closed list of words is a plain `str`, so that a newer service does not break an older client. The units of a quantity go
both ways: a type checker sees the closed list, while any text is read at run time.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, ClassVar, Final, Literal, TypeAlias

from msgspec import UNSET, Struct, UnsetType

from railrules_client._quantities import Measured, Quantity, measured
from railrules_client._showing import Answered


class Allowance(Struct, frozen=True, kw_only=True, omit_defaults=True):
    """A share added to the job's net total of an item.

    Attributes:
        item: Id of the item. At most 200 characters.
        share: Share added: 0.02 is two percent. At least 0, at most 1.
    """

    item: str
    share: float


if TYPE_CHECKING:
    AmountUnit: TypeAlias = Literal[
        "GPa", "J", "K", "MN_per_m2", "MPa", "MPa_per_degC", "N", "N_m", "N_per_K", "N_per_m", "N_per_m2", "Pa",
        "Pa_per_K", "cm", "cm2", "cm3", "cm4", "d", "deg", "degC", "degF", "delta_K", "delta_degC", "delta_degF",
        "each", "ft", "ft2", "ft2_per_gal", "ft3", "g_per_cm3", "gal", "h", "in", "in2", "in3", "in4", "in_per_degF",
        "kJ", "kN", "kN_m", "kN_per_degC", "kN_per_m", "kN_per_mm", "kg", "kg_per_m", "kg_per_m3", "kgf", "kgf_cm",
        "kgf_per_cm2", "kip", "kip_in", "km", "km_per_h", "ksi", "l", "lb", "lb_per_ft", "lb_per_ft3", "lb_per_in3",
        "lb_per_yd", "lbf", "lbf_in", "lbf_per_degF", "lbf_per_ft", "lbf_per_in", "lbf_per_in2", "long_ton", "m", "m2",
        "m2_per_l", "m2_per_m3", "m3", "m4", "m_per_K", "m_per_s", "mi", "mi_per_h", "min", "mm", "mm2", "mm3", "mm4",
        "mm_per_degC", "per_K", "per_degC", "per_degF", "per_ft", "per_m", "psi", "psi_per_degF", "rad", "s",
        "short_ton", "t", "yd", "yd3",
    ]
else:
    AmountUnit = str


class Amount(Quantity[AmountUnit], frozen=True, gc=False):
    """A count of pieces or a measured quantity, with its unit.

    Attributes:
        value: The number.
        unit: Unit; `each` for a count of pieces. See `Amount.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = (
        "GPa", "J", "K", "MN_per_m2", "MPa", "MPa_per_degC", "N", "N_m", "N_per_K", "N_per_m", "N_per_m2", "Pa",
        "Pa_per_K", "cm", "cm2", "cm3", "cm4", "d", "deg", "degC", "degF", "delta_K", "delta_degC", "delta_degF",
        "each", "ft", "ft2", "ft2_per_gal", "ft3", "g_per_cm3", "gal", "h", "in", "in2", "in3", "in4", "in_per_degF",
        "kJ", "kN", "kN_m", "kN_per_degC", "kN_per_m", "kN_per_mm", "kg", "kg_per_m", "kg_per_m3", "kgf", "kgf_cm",
        "kgf_per_cm2", "kip", "kip_in", "km", "km_per_h", "ksi", "l", "lb", "lb_per_ft", "lb_per_ft3", "lb_per_in3",
        "lb_per_yd", "lbf", "lbf_in", "lbf_per_degF", "lbf_per_ft", "lbf_per_in", "lbf_per_in2", "long_ton", "m", "m2",
        "m2_per_l", "m2_per_m3", "m3", "m4", "m_per_K", "m_per_s", "mi", "mi_per_h", "min", "mm", "mm2", "mm3", "mm4",
        "mm_per_degC", "per_K", "per_degC", "per_degF", "per_ft", "per_m", "psi", "psi_per_degF", "rad", "s",
        "short_ton", "t", "yd", "yd3",
    )


class AnchorPattern(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Which ties carry anchors. Neither field given: none does.

    Attributes:
        boxed_every: Every n-th tie is boxed: an anchor on each side, at each rail. At least 1, at most 24.
        per_rail: Anchors per rail length of jointed track.
    """

    boxed_every: int | UnsetType = UNSET
    per_rail: AnchorsPerRailLength | UnsetType = UNSET


class AnchorPatternUsed(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Which ties carry anchors. Neither field given: none does.

    Attributes:
        boxed_every: Every n-th tie is boxed: an anchor on each side, at each rail.
        per_rail: Anchors per rail length of jointed track.
    """

    boxed_every: int | UnsetType = UNSET
    per_rail: AnchorsPerRailLengthUsed | UnsetType = UNSET


class AnchorPlace(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A part of the job: anchors that come off it, and anchors that it needs.

    Attributes:
        needed: Anchors that its new track carries. At least 0, at most 1000000000.
        recovered: Anchors recovered from its old track. At least 0, at most 1000000000.
        fit_share: Share of the old anchors that is fit to be applied again. At least 0, at most 1.
        rail_base: Width of the new rail's base.
        old_rail_base: Width of the old rail's base.
    """

    needed: float
    recovered: float
    fit_share: float | UnsetType = UNSET
    rail_base: Length | UnsetType = UNSET
    old_rail_base: Length | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            needed: float,
            recovered: float,
            fit_share: float | UnsetType = UNSET,
            rail_base: Length | Measured | UnsetType = UNSET,
            old_rail_base: Length | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"rail_base": Length.of, "old_rail_base": Length.of})


class AnchorReuseAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.anchor-reuse`: Anchors applied again over a whole job.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: AnchorReuseResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class AnchorReuseRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.anchor-reuse`: Anchors applied again over a whole job.

    Attributes:
        places: Parts of the job. Not empty, at most 20,000 items.
        base_play: Difference of the rails' bases at which an anchor of one still grips the other.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    places: Sequence[AnchorPlace]
    base_play: Length | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            places: Sequence[AnchorPlace],
            base_play: Length | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"base_play": Length.of})


class AnchorReuseResult(Answered, frozen=True, kw_only=True):
    """Anchors needed, fit, applied again and new, over the whole job.

    Attributes:
        needed: Anchors that the new track carries.
        fit: Anchors recovered and fit to be applied again.
        reapplied: Old anchors applied again.
        new: New anchors.
        places: Part by part, in the order given: in proportion to need and to what is fit.
        checks: Whether the old anchors grip the base of the new rail.
    """

    needed: float
    fit: float
    reapplied: float
    new: float
    places: list[PlaceReuse]
    checks: list[Check]


class AnchorZone(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Part of a line that is anchored otherwise than the plain track.

    Attributes:
        begin: Station along the line.
        end: Station along the line.
        anchoring: Ties are boxed, or no tie may carry an anchor.
        reason: What asks for it, such as a joint or a turnout. At most 200 characters.
        boxed_every: Every n-th tie, by its own number, is boxed; left out: every tie. At least 1, at most 24.
    """

    begin: Length
    end: Length
    anchoring: Literal["boxed", "none"]
    reason: str
    boxed_every: int | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            begin: Length | Measured,
            end: Length | Measured,
            anchoring: Literal["boxed", "none"],
            reason: str,
            boxed_every: int | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"begin": Length.of, "end": Length.of})


class AnchorsAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.anchors`: Rail anchors.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        orders: The lines with allowance, rounded up to what can be ordered.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: AnchorsResult
    orders: list[Order]
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class AnchorsPerRailLength(Struct, frozen=True, kw_only=True, omit_defaults=True):
    """Anchors of jointed track, by rail length: some against the run of traffic, some against creep back.

    Attributes:
        rail_length: Length of one rail.
        forward: Anchors per rail that hold it in the main direction. At least 0, at most 200.
        back_up: Anchors per rail that hold it the other way. At least 0, at most 200.
    """

    rail_length: Length
    forward: int
    back_up: int

    if TYPE_CHECKING:

        def __init__(self, *, rail_length: Length | Measured, forward: int, back_up: int) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"rail_length": Length.of})


class AnchorsPerRailLengthUsed(Answered, frozen=True, kw_only=True):
    """Anchors of jointed track, by rail length: some against the run of traffic, some against creep back.

    Attributes:
        rail_length: Length of one rail.
        forward: Anchors per rail that hold it in the main direction.
        back_up: Anchors per rail that hold it the other way.
    """

    rail_length: Length
    forward: int
    back_up: int


class AnchorsRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.anchors`: Rail anchors.

    Attributes:
        stretch: The stretch.
        anchor_pattern: Row of the catalogue table `anchor-patterns` that supplies what is not given here. Not empty, at
            most 80 characters.
        pattern: Anchors that plain track carries.
        zones: Where it is otherwise; zones may overlap and reach past the stretch. At most 1,000 items.
        elastic_fasteners: The fastenings hold the rail lengthwise, so no anchor is applied; left out: they do not.
        old_anchors: Old anchors at hand here: those that come off, or this stretch's part of a job's. At least 0, at
            most 1000000000.
        reapplied_share: Share of the old anchors that is fit to be applied again. At least 0, at most 1.
        anchor: Row of the catalogue table `rail-anchors` that supplies what is not given here. Not empty, at most 80
            characters.
        product: Catalogue id of the anchor. At most 200 characters.
        anchor_mass: Mass of one anchor.
        per_bag: Anchors in a bag or crate. More than 0, at most 100,000.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    stretch: Stretch
    anchor_pattern: str | UnsetType = UNSET
    pattern: AnchorPattern | UnsetType = UNSET
    zones: Sequence[AnchorZone] | UnsetType = UNSET
    elastic_fasteners: bool | UnsetType = UNSET
    old_anchors: float | UnsetType = UNSET
    reapplied_share: float | UnsetType = UNSET
    anchor: str | UnsetType = UNSET
    product: str | UnsetType = UNSET
    anchor_mass: Mass | UnsetType = UNSET
    per_bag: float | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            stretch: Stretch,
            anchor_pattern: str | UnsetType = UNSET,
            pattern: AnchorPattern | UnsetType = UNSET,
            zones: Sequence[AnchorZone] | UnsetType = UNSET,
            elastic_fasteners: bool | UnsetType = UNSET,
            old_anchors: float | UnsetType = UNSET,
            reapplied_share: float | UnsetType = UNSET,
            anchor: str | UnsetType = UNSET,
            product: str | UnsetType = UNSET,
            anchor_mass: Mass | Measured | UnsetType = UNSET,
            per_bag: float | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"anchor_mass": Mass.of})


class AnchorsResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Anchors, zone by zone, new and used again.

    Attributes:
        rails: Rails renewed.
        ties: Ties that stand in the stretch.
        anchored_ties: Ties that carry anchors.
        anchors_forward: Anchors that hold the rail in the main direction.
        anchors_back_up: Anchors that hold it the other way.
        anchors: Anchors applied.
        anchors_in_zones: Of these, anchors in zones.
        anchors_per_mile: Average of the plain pattern on the renewed rails, per mile, not rounded.
        anchors_reapplied: Old anchors applied again, unrounded.
        anchors_new: New anchors, unrounded.
        bags: Bags of new anchors, unrounded.
        mass: Mass of the new anchors.
        zones: Zones as used, in order.
        notes: What to mind about this answer.
        lines: Anchors to order, and to apply again.
    """

    rails: int
    ties: int
    anchored_ties: int
    anchors_forward: int
    anchors_back_up: int
    anchors: int
    anchors_in_zones: int
    anchors_per_mile: float
    anchors_reapplied: float
    anchors_new: float
    bags: float | UnsetType = UNSET
    mass: Mass | UnsetType = UNSET
    zones: list[ZoneUsed]
    notes: list[str]
    lines: list[Line]


if TYPE_CHECKING:
    AngleUnit: TypeAlias = Literal["deg", "rad"]
else:
    AngleUnit = str


class Angle(Quantity[AngleUnit], frozen=True, gc=False):
    """A angle with its unit.

    Attributes:
        value: The number.
        unit: Unit of the angle. See `Angle.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("deg", "rad")


if TYPE_CHECKING:
    AreaUnit: TypeAlias = Literal["cm2", "ft2", "in2", "m2", "mm2"]
else:
    AreaUnit = str


class Area(Quantity[AreaUnit], frozen=True, gc=False):
    """A area with its unit.

    Attributes:
        value: The number.
        unit: Unit of the area. See `Area.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("cm2", "ft2", "in2", "m2", "mm2")


class Assumption(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """A value the request did not give: a default of the rulebook or a value of the catalogue.

    Attributes:
        origin: `rulebook ID` or `catalogue TABLE/ROW`.
        name: Id of the default, or column of the row.
        about: What it means.
        value: The value as its source prints it, with its unit.
        cite: Where it comes from.
        used_at: Where it stood in for a value; the first ten places.
        uses: In how many places it stood in.
        note: What to know of it: what was fitted, and how far.
    """

    origin: str
    name: str
    about: str
    value: str
    cite: Citation
    used_at: list[str]
    uses: int
    note: str | UnsetType = UNSET


class BendingSection(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What bending asks of a rail section, to set a second one against the first.

    Attributes:
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        second_moment: Second moment about the level axis.
        section_modulus_base: Section modulus of the base.
        section_modulus_head: Section modulus of the head.
    """

    section: str | UnsetType = UNSET
    second_moment: SecondMoment | UnsetType = UNSET
    section_modulus_base: SectionModulus | UnsetType = UNSET
    section_modulus_head: SectionModulus | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            section: str | UnsetType = UNSET,
            second_moment: SecondMoment | Measured | UnsetType = UNSET,
            section_modulus_base: SectionModulus | Measured | UnsetType = UNSET,
            section_modulus_head: SectionModulus | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "second_moment": SecondMoment.of,
                "section_modulus_base": SectionModulus.of,
                "section_modulus_head": SectionModulus.of,
            },
        )


class BlockClosure(Answered, frozen=True, kw_only=True):
    """A temporary closure from new rail to old at the end of a work block.

    Attributes:
        block_end: Station along the line.
        station: Station along the line.
        rail: Which rail. One of `left`, `right`, or a later addition.
        at_string_end: False where the block ends inside a string, which then waits unlaid or is cut.
    """

    block_end: Length
    station: Length
    rail: str
    at_string_end: bool


class BlockEnd(Struct, frozen=True, kw_only=True, omit_defaults=True):
    """Where the work of one track occupancy is to end.

    Attributes:
        station: Station along the line.
    """

    station: Length

    if TYPE_CHECKING:

        def __init__(self, *, station: Length | Measured) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"station": Length.of})


class BreakGapAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `thermal.break-gap`: Gap at a break or cut of cold rail.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: BreakGapResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class BreakGapRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `thermal.break-gap`: Gap at a break or cut of cold rail.

    Attributes:
        rail_temperature: Temperature of the rail.
        neutral_temperature: Rail neutral temperature: neither compression nor tension.
        law: Law of longitudinal restraint: constant where the rail moves, proportional to movement, or proportional up
            to the constant.
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        area: Cross-section of one rail.
        elastic_modulus: Modulus of elasticity of rail steel.
        expansion: Coefficient of linear thermal expansion of rail steel.
        resistance: Longitudinal resistance of one rail per length, as its anchoring and ballast give it.
        stiffness: Longitudinal stiffness of one rail per length, for the elastic and the bilinear law.
        gap_limit: Largest gap accepted.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    rail_temperature: Temperature
    neutral_temperature: Temperature
    law: Literal["bilinear", "elastic", "rigid-plastic"]
    section: str | UnsetType = UNSET
    area: Area | UnsetType = UNSET
    elastic_modulus: Stress | UnsetType = UNSET
    expansion: Expansion | UnsetType = UNSET
    resistance: ForcePerLength | UnsetType = UNSET
    stiffness: FoundationModulus | UnsetType = UNSET
    gap_limit: Length | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            rail_temperature: Temperature | Measured,
            neutral_temperature: Temperature | Measured,
            law: Literal["bilinear", "elastic", "rigid-plastic"],
            section: str | UnsetType = UNSET,
            area: Area | Measured | UnsetType = UNSET,
            elastic_modulus: Stress | Measured | UnsetType = UNSET,
            expansion: Expansion | Measured | UnsetType = UNSET,
            resistance: ForcePerLength | Measured | UnsetType = UNSET,
            stiffness: FoundationModulus | Measured | UnsetType = UNSET,
            gap_limit: Length | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "rail_temperature": Temperature.of,
                "neutral_temperature": Temperature.of,
                "area": Area.of,
                "elastic_modulus": Stress.of,
                "expansion": Expansion.of,
                "resistance": ForcePerLength.of,
                "stiffness": FoundationModulus.of,
                "gap_limit": Length.of,
            },
        )


class BreakGapResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """What opens at the break, and how far the rail is disturbed.

    Attributes:
        temperature_drop: Rail temperature below neutral; 0 where the rail is in compression and nothing opens.
        force: Force in one rail before the break, compression positive, so never above 0.
        slip_length: Length on each side along which the restraint is used up to its limit.
        decay_length: Length beyond it in which an elastic disturbance falls to 1/e; 0 for the rigid-plastic law.
        end_movement: Movement of each rail end.
        gap: Gap, both ends together.
        drop_at_limit: Drop below neutral at which the gap would be the largest accepted.
        resistance_at_limit: Resistance at which the gap would be the largest accepted; absent where no resistance is
            enough, or none is needed.
        checks: The gap against the largest accepted.
    """

    temperature_drop: TemperatureChange
    force: Force
    slip_length: Length
    decay_length: Length
    end_movement: Length
    gap: Length
    drop_at_limit: TemperatureChange
    resistance_at_limit: ForcePerLength | UnsetType = UNSET
    checks: list[Check]


class BucklingAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `thermal.buckling`: Buckling of hot track.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: BucklingResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class BucklingRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `thermal.buckling`: Buckling of hot track.

    Attributes:
        rail_temperature: Temperature of the rail.
        neutral_temperature: Rail neutral temperature: neither compression nor tension.
        lateral_resistance: Lateral resistance of the track per length.
        shape: Whether the track beside the defect stays (published form) or may move the other way (lower, derived
            here).
        held: Where the rails are held along the track: outside the buckle only (published form), or everywhere.
        margin_rule: Allowed rise: the lower rise less the margin; or by the difference of upper and lower rise (UIC
            720, from memory).
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        area: Cross-section of one rail.
        elastic_modulus: Modulus of elasticity of rail steel.
        expansion: Coefficient of linear thermal expansion of rail steel.
        second_moment_lateral: Second moment of one rail about its upright axis.
        second_moment: Second moment of one rail about its level axis, for buckling upwards.
        resistance: Longitudinal resistance of one rail per length, as its anchoring and ballast give it.
        stiffness: Longitudinal stiffness of one rail per length, for the elastic and the bilinear law.
        track_weight: Weight of rails, ties and fastenings per length of track, for buckling upwards.
        defect_amplitude: Line defect at its middle; 0 for none.
        defect_half_length: From the middle of the defect to where it ends.
        radius: Radius; give this or the degree.
        degree: Degree of curve, by 100-ft chord.
        margin: Margin taken off the lower rise.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    rail_temperature: Temperature
    neutral_temperature: Temperature
    lateral_resistance: ForcePerLength
    shape: Literal["one-lobe", "three-lobes"]
    held: Literal["outside", "throughout"]
    margin_rule: Literal["difference", "lower-rise"]
    section: str | UnsetType = UNSET
    area: Area | UnsetType = UNSET
    elastic_modulus: Stress | UnsetType = UNSET
    expansion: Expansion | UnsetType = UNSET
    second_moment_lateral: SecondMoment | UnsetType = UNSET
    second_moment: SecondMoment | UnsetType = UNSET
    resistance: ForcePerLength | UnsetType = UNSET
    stiffness: FoundationModulus | UnsetType = UNSET
    track_weight: ForcePerLength | UnsetType = UNSET
    defect_amplitude: Length | UnsetType = UNSET
    defect_half_length: Length | UnsetType = UNSET
    radius: Length | UnsetType = UNSET
    degree: Angle | UnsetType = UNSET
    margin: TemperatureChange | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            rail_temperature: Temperature | Measured,
            neutral_temperature: Temperature | Measured,
            lateral_resistance: ForcePerLength | Measured,
            shape: Literal["one-lobe", "three-lobes"],
            held: Literal["outside", "throughout"],
            margin_rule: Literal["difference", "lower-rise"],
            section: str | UnsetType = UNSET,
            area: Area | Measured | UnsetType = UNSET,
            elastic_modulus: Stress | Measured | UnsetType = UNSET,
            expansion: Expansion | Measured | UnsetType = UNSET,
            second_moment_lateral: SecondMoment | Measured | UnsetType = UNSET,
            second_moment: SecondMoment | Measured | UnsetType = UNSET,
            resistance: ForcePerLength | Measured | UnsetType = UNSET,
            stiffness: FoundationModulus | Measured | UnsetType = UNSET,
            track_weight: ForcePerLength | Measured | UnsetType = UNSET,
            defect_amplitude: Length | Measured | UnsetType = UNSET,
            defect_half_length: Length | Measured | UnsetType = UNSET,
            radius: Length | Measured | UnsetType = UNSET,
            degree: Angle | Measured | UnsetType = UNSET,
            margin: TemperatureChange | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "rail_temperature": Temperature.of,
                "neutral_temperature": Temperature.of,
                "lateral_resistance": ForcePerLength.of,
                "area": Area.of,
                "elastic_modulus": Stress.of,
                "expansion": Expansion.of,
                "second_moment_lateral": SecondMoment.of,
                "second_moment": SecondMoment.of,
                "resistance": ForcePerLength.of,
                "stiffness": FoundationModulus.of,
                "track_weight": ForcePerLength.of,
                "defect_amplitude": Length.of,
                "defect_half_length": Length.of,
                "radius": Length.of,
                "degree": Angle.of,
                "margin": TemperatureChange.of,
            },
        )


class BucklingResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Rises above neutral, temperatures, path, verdict.

    Attributes:
        available: Whether there is an answer. One of `not-available-for-curves`, `yes`, or a later addition.
        temperature_change: Rail temperature minus neutral temperature.
        lowest_rise: Lowest rise at which straight track can be buckled; absent for curves.
        governing_mode: Lobes of the shape that gives it.
        modes: Lowest state of every shape, straight track.
        vertical_rise: Lowest rise at which the track can stand lifted off its bed.
        path_kind: What the path with the defect says; absent without a defect. One of `no-defect`, `progressive`,
            `snap-through`, `upper-beyond-path`, or a later addition.
        lower_rise: Rise above neutral.
        upper_rise: Rise above neutral.
        lower_temperature: Rail temperature at the lower rise.
        upper_temperature: Rail temperature at the upper rise.
        allowed_rise: Rise that the margin rule allows.
        allowed_temperature: Rail temperature at that rise.
        allowed_by: Branch of the margin rule, or why there is no allowed rise.
        buckling_energy: Energy a disturbance must bring in at the rail temperature, between lower and upper rise.
        path: Equilibria in order of growing deflection, for plotting.
        checks: Rise against allowed rise.
    """

    available: str
    temperature_change: TemperatureChange
    lowest_rise: TemperatureChange | UnsetType = UNSET
    governing_mode: int | UnsetType = UNSET
    modes: list[Mode]
    vertical_rise: TemperatureChange | UnsetType = UNSET
    path_kind: str | UnsetType = UNSET
    lower_rise: TemperatureChange | UnsetType = UNSET
    upper_rise: TemperatureChange | UnsetType = UNSET
    lower_temperature: Temperature | UnsetType = UNSET
    upper_temperature: Temperature | UnsetType = UNSET
    allowed_rise: TemperatureChange | UnsetType = UNSET
    allowed_temperature: Temperature | UnsetType = UNSET
    allowed_by: str
    buckling_energy: Energy | UnsetType = UNSET
    path: list[PathPoint]
    checks: list[Check]


class BulkLine(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """A line of the answer: `line` with `answer` or `problem`, or `trailer` alone in the last one.

    Attributes:
        line: Line of the request, from 1.
        answer: Answer to the job.
        problem: Why there is none.
        trailer: In the last line, alone.
    """

    line: int | UnsetType = UNSET
    answer: TakeoffAnswer | UnsetType = UNSET
    problem: Problem | UnsetType = UNSET
    trailer: BulkTrailer | UnsetType = UNSET


class BulkTotal(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """The total of one item and product over all jobs that were answered: an exact sum, rounded once to a binary number.

    Attributes:
        item: Id of the item.
        product: Catalogue id of the product; empty where none is named.
        direction: order, recover or work.
        jobs: Jobs that have it.
        net: Sum of the jobs' net totals.
        order: Sum of what the jobs order.
        mass: Mass of that; left out where a job does not know it.
    """

    item: str
    product: str
    direction: str
    jobs: int
    net: Amount
    order: Amount
    mass: Amount | UnsetType = UNSET


class BulkTrailer(Answered, frozen=True, kw_only=True):
    """The last line: without it the answer is not complete.

    Attributes:
        lines: Lines that held something.
        answered: Jobs that were answered.
        refused: Lines that ended in a problem.
        digest: SHA-256 of every byte of the answer before this line.
        totals: Totals by item and product, sorted by both.
        versions: What answered.
    """

    lines: int
    answered: int
    refused: int
    digest: str
    totals: list[BulkTotal]
    versions: Versions


class CatalogueRow(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """A row of a catalogue table. A value that is not known is left out, never zero.

    Attributes:
        id: The name used in requests.
        title: The name for people.
        values: Numbers by property.
        texts: Words by property.
        also: Further names by which it goes.
        notes: What a user of the row should know.
        cite: Where the row as a whole comes from.
        spike_pattern: The pattern.
        anchor_pattern: The pattern.
        feature_rule: What the feature asks for.
    """

    id: str
    title: str
    values: dict[str, PrintedValue]
    texts: dict[str, list[str]]
    also: list[str]
    notes: str
    cite: Citation
    spike_pattern: SpikePatternUsed | UnsetType = UNSET
    anchor_pattern: AnchorPatternUsed | UnsetType = UNSET
    feature_rule: FeatureRuleUsed | UnsetType = UNSET


class CatalogueTable(Answered, frozen=True, kw_only=True):
    """The rows of a catalogue table that were asked for.

    Attributes:
        table: Id of the table.
        title: Its title.
        about: What its rows are.
        version: Version of the catalogue.
        rows: Rows, in the table's order.
    """

    table: str
    title: str
    about: str
    version: str
    rows: list[CatalogueRow]


class CautionNote(Answered, frozen=True, kw_only=True):
    """Something a user of the answer must know.

    Attributes:
        code: Stable identifier.
        text: The caution.
        cite: Where it stands.
    """

    code: str
    text: str
    cite: Citation


class Check(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """One thing held against a limit. A check that lacks an input says so and is not passed.

    Attributes:
        code: Stable identifier of the check.
        title: What is checked, in words.
        verdict: Outcome; `not-checked` when an input it needs is missing. One of `fails`, `not-checked`, `passes`, or a
            later addition.
        demand: What is asked of the track.
        capacity: What the track can bear, or the rule allows.
        utilisation: Demand over capacity; 1 is the limit.
        governing: Input that decides, or that is missing.
        would_pass: What would make it pass; empty when it does.
        place: Source and place of the limit, in words.
    """

    code: str
    title: str
    verdict: str
    demand: Amount | UnsetType = UNSET
    capacity: Amount | UnsetType = UNSET
    utilisation: float | UnsetType = UNSET
    governing: str
    would_pass: str
    place: str


class Citation(Answered, frozen=True, kw_only=True):
    """A place in a source and how the statement was obtained there.

    Attributes:
        source: Id of the source.
        title: Title of the document.
        where: Section, table, page or equation.
        status: Read in the document, worked out, fitted by us, remembered, or practice. One of `common-practice`,
            `computed`, `derived`, `fitted`, `from-memory`, `published`, or a later addition.
    """

    source: str
    title: str
    where: str
    status: str


class ClosingJointsAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.closing-joints`: Joints left in welded rail.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        orders: The lines with allowance, rounded up to what can be ordered.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: ClosingJointsResult
    orders: list[Order]
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class ClosingJointsRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.closing-joints`: Joints left in welded rail.

    Attributes:
        plain: Plain joints, counted on each rail. At least 0, at most 1000000.
        insulated: Insulated joints, counted on each rail. At least 0, at most 1000000.
        compromise: Compromise joints, counted on each rail. At least 0, at most 1000000.
        made_of: What a plain joint is made of; left out: its parts are not counted, and the answer says so.
        track_class: Class of track, for the check of bolts. At least 1, at most 5.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    plain: int
    insulated: int
    compromise: int
    made_of: JointSet | UnsetType = UNSET
    track_class: int | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET


class ClosingJointsResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Joints and their parts.

    Attributes:
        joints: All of them.
        bars: Bars of plain joints; left out where their parts are not counted.
        bolts: Bolts of plain joints.
        nuts: Nuts.
        washers: Spring washers.
        bonds: Bonds, at all joints that are not insulated.
        bars_mass: Mass of the bars.
        bolts_mass: Mass of the bolts.
        checks: Bolts in each rail end against the least that the regulation allows.
        notes: What to mind about this answer.
        lines: Joints and parts to order.
    """

    joints: int
    bars: float | UnsetType = UNSET
    bolts: float | UnsetType = UNSET
    nuts: float | UnsetType = UNSET
    washers: float | UnsetType = UNSET
    bonds: float | UnsetType = UNSET
    bars_mass: Mass | UnsetType = UNSET
    bolts_mass: Mass | UnsetType = UNSET
    checks: list[Check]
    notes: list[str]
    lines: list[Line]


class CombinedStress(Answered, frozen=True, kw_only=True):
    """Bending and thermal stress of one sign at one fibre.

    Attributes:
        where: Fibre and weather: base under the wheel and head ahead of it pull when cold; head under the wheel and
            base ahead of it press when hot. One of `base-cold`, `base-hot`, `head-cold`, `head-hot`, or a later
            addition.
        sense: Whether it pulls or presses. One of `compression`, `tension`, or a later addition.
        bending: Bending stress, with the speed factor.
        bending_raised: The same raised by all four shares.
        thermal: Thermal stress of the same sense; 0 where the weather gives none.
        together: Raised bending stress plus thermal stress.
        left_share: Share of yield that is left; negative beyond yield.
    """

    where: str
    sense: str
    bending: Stress
    bending_raised: Stress
    thermal: Stress
    together: Stress
    left_share: float


class Cost(Answered, frozen=True, kw_only=True):
    """The price of a total. What is recovered is a credit, shown as a positive amount.

    Attributes:
        item: Id of the item.
        title: Name of the item.
        product: Catalogue id of the product; empty where none is named.
        credit: A credit for what is recovered, not a cost.
        quantity: What is priced, in the price's unit.
        per: Unit of the price.
        price: Price of one.
        amount: Quantity times price, rounded once.
    """

    item: str
    title: str
    product: str
    credit: bool
    quantity: str
    per: str
    price: str
    amount: str

    decimal_fields: ClassVar[frozenset[str]] = frozenset({"amount", "price", "quantity"})


if TYPE_CHECKING:
    CoverageUnit: TypeAlias = Literal["ft2_per_gal", "m2_per_l", "m2_per_m3"]
else:
    CoverageUnit = str


class Coverage(Quantity[CoverageUnit], frozen=True, gc=False):
    """A coverage with its unit.

    Attributes:
        value: The number.
        unit: Unit of the coverage. See `Coverage.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("ft2_per_gal", "m2_per_l", "m2_per_m3")


class CribbingAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.cribbing`: Cribbing for anchors.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        orders: The lines with allowance, rounded up to what can be ordered.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: CribbingResult
    orders: list[Order]
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class CribbingRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.cribbing`: Cribbing for anchors.

    Attributes:
        anchors: Anchors to apply. At least 0, at most 1000000000.
        pocket_length: Length of the pocket that an anchor needs, along the rail.
        pocket_width: Width of that pocket, across the rail.
        pocket_depth: Depth of that pocket.
        full_share: Share of the pockets that are full of ballast beforehand. At least 0, at most 1.
        ballast_density: Bulk density of the ballast.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    anchors: float
    pocket_length: Length | UnsetType = UNSET
    pocket_width: Length | UnsetType = UNSET
    pocket_depth: Length | UnsetType = UNSET
    full_share: float | UnsetType = UNSET
    ballast_density: Density | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            anchors: float,
            pocket_length: Length | Measured | UnsetType = UNSET,
            pocket_width: Length | Measured | UnsetType = UNSET,
            pocket_depth: Length | Measured | UnsetType = UNSET,
            full_share: float | UnsetType = UNSET,
            ballast_density: Density | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "pocket_length": Length.of,
                "pocket_width": Length.of,
                "pocket_depth": Length.of,
                "ballast_density": Density.of,
            },
        )


class CribbingResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Ballast to move aside.

    Attributes:
        pocket: Volume of one pocket.
        volume: Ballast moved aside.
        mass: Its mass.
        lines: Ballast moved aside; nothing to order.
    """

    pocket: Volume
    volume: Volume
    mass: Mass | UnsetType = UNSET
    lines: list[Line]


class CrownArc(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One arc of the running surface, from the top outwards.

    Attributes:
        radius: Radius.
        width: Distance between the two ends of the arc, across the head; left out where it follows from tangency.
    """

    radius: Length
    width: Length | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(self, *, radius: Length | Measured, width: Length | Measured | UnsetType = UNSET) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"radius": Length.of, "width": Length.of})


class CrownArcUsed(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """One arc of the running surface, from the top outwards.

    Attributes:
        radius: Radius.
        width: Distance between the two ends of the arc, across the head; left out where it follows from tangency.
    """

    radius: Length
    width: Length | UnsetType = UNSET


if TYPE_CHECKING:
    CurvatureUnit: TypeAlias = Literal["per_ft", "per_m"]
else:
    CurvatureUnit = str


class Curvature(Quantity[CurvatureUnit], frozen=True, gc=False):
    """A curvature with its unit.

    Attributes:
        value: The number.
        unit: Unit of the curvature. See `Curvature.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("per_ft", "per_m")


class Curve(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A curve by its limits and one of radius or degree (100-ft chord).

    Attributes:
        begin: Station along the line.
        end: Station along the line.
        hand: Way it turns, looking along rising stations.
        radius: Radius.
        degree: Degree of curve, by 100-ft chord.
    """

    begin: Length
    end: Length
    hand: Literal["left", "right"]
    radius: Length | UnsetType = UNSET
    degree: Angle | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            begin: Length | Measured,
            end: Length | Measured,
            hand: Literal["left", "right"],
            radius: Length | Measured | UnsetType = UNSET,
            degree: Angle | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"begin": Length.of, "end": Length.of, "radius": Length.of, "degree": Angle.of})


class CurveLoadAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `thermal.curve-load`: Radial load and shift of curves.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: CurveLoadResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class CurveLoadRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `thermal.curve-load`: Radial load and shift of curves.

    Attributes:
        neutral_temperature: Rail neutral temperature: neither compression nor tension.
        hottest: Hottest rail.
        coldest: Coldest rail.
        tie_spacing: Distance of ties, centre to centre.
        radius: Radius; give this or the degree.
        degree: Degree of curve, by 100-ft chord.
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        area: Cross-section of one rail.
        elastic_modulus: Modulus of elasticity of rail steel.
        expansion: Coefficient of linear thermal expansion of rail steel.
        inward_shift: Even shift of the curve towards its centre since laying; outward negative.
        accepted_loss: Neutral temperature that may be lost by shifting.
        tie_resistance: Lateral resistance of one tie in its ballast.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    neutral_temperature: Temperature
    hottest: Temperature
    coldest: Temperature
    tie_spacing: Length
    radius: Length | UnsetType = UNSET
    degree: Angle | UnsetType = UNSET
    section: str | UnsetType = UNSET
    area: Area | UnsetType = UNSET
    elastic_modulus: Stress | UnsetType = UNSET
    expansion: Expansion | UnsetType = UNSET
    inward_shift: Length | UnsetType = UNSET
    accepted_loss: TemperatureChange | UnsetType = UNSET
    tie_resistance: Force | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            neutral_temperature: Temperature | Measured,
            hottest: Temperature | Measured,
            coldest: Temperature | Measured,
            tie_spacing: Length | Measured,
            radius: Length | Measured | UnsetType = UNSET,
            degree: Angle | Measured | UnsetType = UNSET,
            section: str | UnsetType = UNSET,
            area: Area | Measured | UnsetType = UNSET,
            elastic_modulus: Stress | Measured | UnsetType = UNSET,
            expansion: Expansion | Measured | UnsetType = UNSET,
            inward_shift: Length | Measured | UnsetType = UNSET,
            accepted_loss: TemperatureChange | Measured | UnsetType = UNSET,
            tie_resistance: Force | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "neutral_temperature": Temperature.of,
                "hottest": Temperature.of,
                "coldest": Temperature.of,
                "tie_spacing": Length.of,
                "radius": Length.of,
                "degree": Angle.of,
                "area": Area.of,
                "elastic_modulus": Stress.of,
                "expansion": Expansion.of,
                "inward_shift": Length.of,
                "accepted_loss": TemperatureChange.of,
                "tie_resistance": Force.of,
            },
        )


class CurveLoadResult(Answered, frozen=True, kw_only=True):
    """Radial loads, outward positive, with the neutral temperature left after the shift.

    Attributes:
        radius: Radius as used.
        neutral_lost: Neutral temperature lost by the shift; gained when negative.
        neutral_left: Neutral temperature after the shift.
        hot_load: Radial load of one rail when hottest.
        cold_load: Radial load of one rail when coldest.
        hot_load_on_tie: Radial load of both rails on one tie when hottest.
        cold_load_on_tie: Radial load of both rails on one tie when coldest.
        resistance_needed: Lateral resistance of a tie that the radial load asks for.
        shift_for_loss: Inward shift that costs the accepted loss.
        checks: Neutral temperature lost; lateral resistance of a tie.
    """

    radius: Length
    neutral_lost: TemperatureChange
    neutral_left: Temperature
    hot_load: ForcePerLength
    cold_load: ForcePerLength
    hot_load_on_tie: Force
    cold_load_on_tie: Force
    resistance_needed: Force
    shift_for_loss: Length
    checks: list[Check]


class CustomAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.custom`: Item of the caller's own.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        orders: The lines with allowance, rounded up to what can be ordered.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: CustomResult
    orders: list[Order]
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class CustomItem(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Something of the railroad's own, counted by a rule of quantity; what is left out adds nothing.

    Attributes:
        item: What it is. At most 200 characters.
        per_tie: Pieces to each tie. At least -10,000, at most 10,000.
        per_seat: Pieces to each tie at each renewed rail. At least -10,000, at most 10,000.
        per_rail: Pieces to each rail length of each renewed rail: of new track laid of single rails, else of the old
            track. At least -10,000, at most 10,000.
        per_joint: Pieces to each joint: of new track laid of single rails, else of the old track. At least -10,000, at
            most 10,000.
        pieces: Pieces to each `per_length` of track. At least -1000000, at most 1000000.
        per_length: Length of track that takes `pieces`.
        mass_each: Mass of one piece.
    """

    item: str
    per_tie: float | UnsetType = UNSET
    per_seat: float | UnsetType = UNSET
    per_rail: float | UnsetType = UNSET
    per_joint: float | UnsetType = UNSET
    pieces: float | UnsetType = UNSET
    per_length: Length | UnsetType = UNSET
    mass_each: Mass | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            item: str,
            per_tie: float | UnsetType = UNSET,
            per_seat: float | UnsetType = UNSET,
            per_rail: float | UnsetType = UNSET,
            per_joint: float | UnsetType = UNSET,
            pieces: float | UnsetType = UNSET,
            per_length: Length | Measured | UnsetType = UNSET,
            mass_each: Mass | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"per_length": Length.of, "mass_each": Mass.of})


class CustomRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.custom`: Item of the caller's own.

    Attributes:
        stretch: The stretch.
        item: The caller's name of the item. At most 200 characters.
        per_tie: Pieces to each tie. At least -10,000, at most 10,000.
        per_seat: Pieces to each tie at each renewed rail. At least -10,000, at most 10,000.
        per_rail: Pieces to each rail length of each renewed rail. At least -10,000, at most 10,000.
        per_joint: Pieces to each joint; negative where its own fastenings stand in for them. At least -10,000, at most
            10,000.
        rail_length: Length of one rail, for what goes by rail or joint.
        pieces: Pieces to each `per_length` of track. At least -1000000, at most 1000000.
        per_length: Length of track that takes `pieces`.
        mass_each: Mass of one piece.
        piece: The stretch is a piece of a longer one, to be added to the others, so that its count may come out below
            zero; left out: it is all there is.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    stretch: Stretch
    item: str
    per_tie: float | UnsetType = UNSET
    per_seat: float | UnsetType = UNSET
    per_rail: float | UnsetType = UNSET
    per_joint: float | UnsetType = UNSET
    rail_length: Length | UnsetType = UNSET
    pieces: float | UnsetType = UNSET
    per_length: Length | UnsetType = UNSET
    mass_each: Mass | UnsetType = UNSET
    piece: bool | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            stretch: Stretch,
            item: str,
            per_tie: float | UnsetType = UNSET,
            per_seat: float | UnsetType = UNSET,
            per_rail: float | UnsetType = UNSET,
            per_joint: float | UnsetType = UNSET,
            rail_length: Length | Measured | UnsetType = UNSET,
            pieces: float | UnsetType = UNSET,
            per_length: Length | Measured | UnsetType = UNSET,
            mass_each: Mass | Measured | UnsetType = UNSET,
            piece: bool | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"rail_length": Length.of, "per_length": Length.of, "mass_each": Mass.of})


class CustomResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """The item's count, unrounded, by what it goes by.

    Attributes:
        by_ties: Pieces that go by ties.
        by_seats: Pieces that go by tie seats.
        by_rails: Pieces that go by rails.
        by_joints: Pieces that go by joints.
        by_length: Pieces that go by length.
        count: All pieces, unrounded.
        mass: Their mass.
        lines: The item to order.
    """

    by_ties: float
    by_seats: float
    by_rails: float
    by_joints: float
    by_length: float
    count: float
    mass: Mass | UnsetType = UNSET
    lines: list[Line]


if TYPE_CHECKING:
    DensityUnit: TypeAlias = Literal["g_per_cm3", "kg_per_m3", "lb_per_ft3", "lb_per_in3"]
else:
    DensityUnit = str


class Density(Quantity[DensityUnit], frozen=True, gc=False):
    """A density with its unit.

    Attributes:
        value: The number.
        unit: Unit of the density. See `Density.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("g_per_cm3", "kg_per_m3", "lb_per_ft3", "lb_per_in3")


class DestressingAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `thermal.destressing`: Destressing plan by stations.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: DestressingResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class DestressingRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `thermal.destressing`: Destressing plan by stations.

    Attributes:
        begin: Station of the first fixed end.
        end: Station of the second fixed end.
        rail_temperature: Temperature of the rail.
        target_temperature: Neutral temperature wanted.
        cut: Station of the cut; without it the middle.
        mark_spacing: Distance of marks from each fixed end on.
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        area: Cross-section of one rail.
        elastic_modulus: Modulus of elasticity of rail steel.
        expansion: Coefficient of linear thermal expansion of rail steel.
        neutral_temperature: Neutral temperature there is, if known.
        weld_opening: Opening that the weld needs.
        resistance: Longitudinal resistance of one rail per length, as its anchoring and ballast give it.
        anchored_beyond: Length anchored beyond each fixed end.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    begin: Length
    end: Length
    rail_temperature: Temperature
    target_temperature: Temperature
    cut: Length | UnsetType = UNSET
    mark_spacing: Length | UnsetType = UNSET
    section: str | UnsetType = UNSET
    area: Area | UnsetType = UNSET
    elastic_modulus: Stress | UnsetType = UNSET
    expansion: Expansion | UnsetType = UNSET
    neutral_temperature: Temperature | UnsetType = UNSET
    weld_opening: Length | UnsetType = UNSET
    resistance: ForcePerLength | UnsetType = UNSET
    anchored_beyond: Length | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            begin: Length | Measured,
            end: Length | Measured,
            rail_temperature: Temperature | Measured,
            target_temperature: Temperature | Measured,
            cut: Length | Measured | UnsetType = UNSET,
            mark_spacing: Length | Measured | UnsetType = UNSET,
            section: str | UnsetType = UNSET,
            area: Area | Measured | UnsetType = UNSET,
            elastic_modulus: Stress | Measured | UnsetType = UNSET,
            expansion: Expansion | Measured | UnsetType = UNSET,
            neutral_temperature: Temperature | Measured | UnsetType = UNSET,
            weld_opening: Length | Measured | UnsetType = UNSET,
            resistance: ForcePerLength | Measured | UnsetType = UNSET,
            anchored_beyond: Length | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "begin": Length.of,
                "end": Length.of,
                "rail_temperature": Temperature.of,
                "target_temperature": Temperature.of,
                "cut": Length.of,
                "mark_spacing": Length.of,
                "area": Area.of,
                "elastic_modulus": Stress.of,
                "expansion": Expansion.of,
                "neutral_temperature": Temperature.of,
                "weld_opening": Length.of,
                "resistance": ForcePerLength.of,
                "anchored_beyond": Length.of,
            },
        )


class DestressingResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Gap, marks, force, rail to remove, steps.

    Attributes:
        length: Length that is freed.
        cut: Station of the cut as used.
        extension: Lengthening of the free rail, both sides together.
        gap: Gap to make in the free rail before pulling.
        gap_eighths: Gap to the nearest 1/8 in, in eighths of an inch.
        opening: Opening the freed rail makes by itself; negative is overlap; absent when the neutral temperature is not
            known.
        rail_to_remove: Rail to cut out, to put in when negative; absent likewise.
        pull_force: Pull at the target strain, friction not counted; negative is a push.
        holding_length: Length beyond each fixed end whose anchors take up the pull.
        marks: Marks by station, the ends at the cut included.
        steps: What to do, in order.
        checks: Rail cold enough to be pulled; length anchored beyond the ends.
        record: What to write down.
    """

    length: Length
    cut: Length
    extension: Length
    gap: Length
    gap_eighths: int
    opening: Length | UnsetType = UNSET
    rail_to_remove: Length | UnsetType = UNSET
    pull_force: Force
    holding_length: Length
    marks: list[Mark]
    steps: list[str]
    checks: list[Check]
    record: list[RecordItem]


class Document(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What stands in the title block of a sheet; what is left out is left blank there, to be filled in by hand.

    Attributes:
        project: Project. At most 80 characters.
        location: Place, line, mile posts. At most 80 characters.
        prepared: Who prepared it. At most 60 characters.
        checked: Who checked it. At most 60 characters.
        date: Date, as it is to be printed. At most 24 characters.
        paper: Paper of a PDF; left out: Letter with US units, A4 with SI.
        extent: How much of the sheet: all of it; or the checks, what is ordered and recovered, money and cautions,
            without layout, inputs and working. Left out: whole.
    """

    project: str | UnsetType = UNSET
    location: str | UnsetType = UNSET
    prepared: str | UnsetType = UNSET
    checked: str | UnsetType = UNSET
    date: str | UnsetType = UNSET
    paper: Literal["A4", "letter"] | UnsetType = UNSET
    extent: Literal["summary", "whole"] | UnsetType = UNSET


if TYPE_CHECKING:
    DurationUnit: TypeAlias = Literal["d", "h", "min", "s"]
else:
    DurationUnit = str


class Duration(Quantity[DurationUnit], frozen=True, gc=False):
    """A duration with its unit.

    Attributes:
        value: The number.
        unit: Unit of the duration. See `Duration.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("d", "h", "min", "s")


class EndMovementAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `thermal.end-movement`: Movement at the end of welded rail.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: EndMovementResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class EndMovementRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `thermal.end-movement`: Movement at the end of welded rail.

    Attributes:
        neutral_temperature: Rail neutral temperature: neither compression nor tension.
        hottest: Hottest rail.
        coldest: Coldest rail.
        law: Law of longitudinal restraint: constant where the rail moves, proportional to movement, or proportional up
            to the constant.
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        area: Cross-section of one rail.
        elastic_modulus: Modulus of elasticity of rail steel.
        expansion: Coefficient of linear thermal expansion of rail steel.
        resistance: Longitudinal resistance of one rail per length, as its anchoring and ballast give it.
        stiffness: Longitudinal stiffness of one rail per length, for the elastic and the bilinear law.
        joint_force: Force that the joint at the end holds before it slips.
        room_to_close: Room for the end to move out: the joint's gap at neutral temperature.
        room_to_open: Room for the end to draw back before the bolts bear.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    neutral_temperature: Temperature
    hottest: Temperature
    coldest: Temperature
    law: Literal["bilinear", "elastic", "rigid-plastic"]
    section: str | UnsetType = UNSET
    area: Area | UnsetType = UNSET
    elastic_modulus: Stress | UnsetType = UNSET
    expansion: Expansion | UnsetType = UNSET
    resistance: ForcePerLength | UnsetType = UNSET
    stiffness: FoundationModulus | UnsetType = UNSET
    joint_force: Force | UnsetType = UNSET
    room_to_close: Length | UnsetType = UNSET
    room_to_open: Length | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            neutral_temperature: Temperature | Measured,
            hottest: Temperature | Measured,
            coldest: Temperature | Measured,
            law: Literal["bilinear", "elastic", "rigid-plastic"],
            section: str | UnsetType = UNSET,
            area: Area | Measured | UnsetType = UNSET,
            elastic_modulus: Stress | Measured | UnsetType = UNSET,
            expansion: Expansion | Measured | UnsetType = UNSET,
            resistance: ForcePerLength | Measured | UnsetType = UNSET,
            stiffness: FoundationModulus | Measured | UnsetType = UNSET,
            joint_force: Force | Measured | UnsetType = UNSET,
            room_to_close: Length | Measured | UnsetType = UNSET,
            room_to_open: Length | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "neutral_temperature": Temperature.of,
                "hottest": Temperature.of,
                "coldest": Temperature.of,
                "area": Area.of,
                "elastic_modulus": Stress.of,
                "expansion": Expansion.of,
                "resistance": ForcePerLength.of,
                "stiffness": FoundationModulus.of,
                "joint_force": Force.of,
                "room_to_close": Length.of,
                "room_to_open": Length.of,
            },
        )


class EndMovementResult(Answered, frozen=True, kw_only=True):
    """What the end does, hot and cold, starting free of force at the neutral temperature.

    Attributes:
        hot_force: Force of the restrained rail when hottest, compression positive.
        cold_force: Force of the restrained rail when coldest, compression positive.
        hot_movement: Movement of the end outwards when hottest.
        cold_movement: Movement of the end inwards when coldest.
        travel: Both movements together.
        hot_slip_length: Length that slips when hottest.
        cold_slip_length: Length that slips when coldest.
        decay_length: Length beyond it in which an elastic disturbance falls to 1/e.
        breathing_length: Longer of the two slip lengths, with the decay length.
        checks: Movement out and in against the room there is.
    """

    hot_force: Force
    cold_force: Force
    hot_movement: Length
    cold_movement: Length
    travel: Length
    hot_slip_length: Length
    cold_slip_length: Length
    decay_length: Length
    breathing_length: Length
    checks: list[Check]


if TYPE_CHECKING:
    EnergyUnit: TypeAlias = Literal["J", "kJ", "lbf_in"]
else:
    EnergyUnit = str


class Energy(Quantity[EnergyUnit], frozen=True, gc=False):
    """A energy with its unit.

    Attributes:
        value: The number.
        unit: Unit of the energy. See `Energy.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("J", "kJ", "lbf_in")


if TYPE_CHECKING:
    ExpansionUnit: TypeAlias = Literal["per_K", "per_degC", "per_degF"]
else:
    ExpansionUnit = str


class Expansion(Quantity[ExpansionUnit], frozen=True, gc=False):
    """A expansion with its unit.

    Attributes:
        value: The number.
        unit: Unit of the expansion. See `Expansion.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("per_K", "per_degC", "per_degF")


class Fault(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """One thing wrong with a request.

    Attributes:
        pointer: JSON pointer to the value; empty for the whole body.
        detail: What is wrong.
        value: The value that was sent, as JSON, cut to 200 characters.
        minimum: Smallest allowed value, in `unit`.
        maximum: Largest allowed value, in `unit`.
        unit: Unit of minimum and maximum.
        allowed: What would do, or the nearest to it.
    """

    pointer: str
    detail: str
    value: str | UnsetType = UNSET
    minimum: float | UnsetType = UNSET
    maximum: float | UnsetType = UNSET
    unit: str | UnsetType = UNSET
    allowed: list[str] | UnsetType = UNSET


class FeatureRule(Struct, frozen=True, kw_only=True, omit_defaults=True):
    """What a kind of fixed object asks of the relay: does the new rail go through, how are its ties and approaches
    anchored.

    Attributes:
        rail_through: New rail is laid through it; if not, strings end at its limits.
        ties_through: Ties and fastenings within its limits belong to the relay.
        within: Anchoring within its limits: as the adjoining track, every tie boxed, or none.
        approach_length: Length each way that is boxed every tie.
        breaks_string: Strings end here and a weld or joint is made on each side.
    """

    rail_through: bool
    ties_through: bool
    within: Literal["as-adjoining", "boxed", "none"]
    approach_length: Length
    breaks_string: bool

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            rail_through: bool,
            ties_through: bool,
            within: Literal["as-adjoining", "boxed", "none"],
            approach_length: Length | Measured,
            breaks_string: bool,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"approach_length": Length.of})


class FeatureRuleUsed(Answered, frozen=True, kw_only=True):
    """What a kind of fixed object asks of the relay: does the new rail go through, how are its ties and approaches
    anchored.

    Attributes:
        rail_through: New rail is laid through it; if not, strings end at its limits.
        ties_through: Ties and fastenings within its limits belong to the relay.
        within: Anchoring within its limits: as the adjoining track, every tie boxed, or none. One of `as-adjoining`,
            `boxed`, `none`, or a later addition.
        approach_length: Length each way that is boxed every tie.
        breaks_string: Strings end here and a weld or joint is made on each side.
    """

    rail_through: bool
    ties_through: bool
    within: str
    approach_length: Length
    breaks_string: bool


if TYPE_CHECKING:
    ForceUnit: TypeAlias = Literal["N", "kN", "kgf", "kip", "lbf"]
else:
    ForceUnit = str


class Force(Quantity[ForceUnit], frozen=True, gc=False):
    """A force with its unit.

    Attributes:
        value: The number.
        unit: Unit of the force. See `Force.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("N", "kN", "kgf", "kip", "lbf")


if TYPE_CHECKING:
    ForcePerLengthUnit: TypeAlias = Literal["N_per_m", "kN_per_m", "lbf_per_ft", "lbf_per_in"]
else:
    ForcePerLengthUnit = str


class ForcePerLength(Quantity[ForcePerLengthUnit], frozen=True, gc=False):
    """A force per length with its unit.

    Attributes:
        value: The number.
        unit: Unit of the force per length. See `ForcePerLength.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("N_per_m", "kN_per_m", "lbf_per_ft", "lbf_per_in")


if TYPE_CHECKING:
    ForcePerTemperatureUnit: TypeAlias = Literal["N_per_K", "kN_per_degC", "lbf_per_degF"]
else:
    ForcePerTemperatureUnit = str


class ForcePerTemperature(Quantity[ForcePerTemperatureUnit], frozen=True, gc=False):
    """A force per temperature with its unit.

    Attributes:
        value: The number.
        unit: Unit of the force per temperature. See `ForcePerTemperature.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("N_per_K", "kN_per_degC", "lbf_per_degF")


if TYPE_CHECKING:
    FoundationModulusUnit: TypeAlias = Literal["MN_per_m2", "N_per_m2", "lbf_per_in2"]
else:
    FoundationModulusUnit = str


class FoundationModulus(Quantity[FoundationModulusUnit], frozen=True, gc=False):
    """A foundation modulus with its unit.

    Attributes:
        value: The number.
        unit: Unit of the foundation modulus. See `FoundationModulus.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("MN_per_m2", "N_per_m2", "lbf_per_in2")


class Goods(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """An item to haul.

    Attributes:
        item: What it is. At most 200 characters.
        product: Which of its products; left out: it has one. At most 200 characters.
        mass: Mass of all of it; left out: not known, and so said.
    """

    item: str
    product: str | UnsetType = UNSET
    mass: Mass | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            item: str,
            product: str | UnsetType = UNSET,
            mass: Mass | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"mass": Mass.of})


if TYPE_CHECKING:
    GoodsAmountUnit: TypeAlias = Literal[
        "cm", "cm2", "each", "ft", "ft2", "ft3", "gal", "in", "in2", "in3", "kg", "km", "l", "lb", "long_ton", "m",
        "m2", "m3", "mi", "mm", "mm2", "short_ton", "t", "yd", "yd3",
    ]
else:
    GoodsAmountUnit = str


class GoodsAmount(Quantity[GoodsAmountUnit], frozen=True, gc=False):
    """A count of pieces, or a length, area, volume or mass of goods.

    Attributes:
        value: The number. At least 0.
        unit: Unit; `each` for a count of pieces. See `GoodsAmount.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = (
        "cm", "cm2", "each", "ft", "ft2", "ft3", "gal", "in", "in2", "in3", "kg", "km", "l", "lb", "long_ton", "m",
        "m2", "m3", "mi", "mm", "mm2", "short_ton", "t", "yd", "yd3",
    )


class GoodsLoads(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """One item as it is hauled.

    Attributes:
        item: What it is.
        product: Which of its products.
        mass: Mass of it; left out: not known.
        loads: Loads of this item alone, by each vehicle that carries it.
    """

    item: str
    product: str | UnsetType = UNSET
    mass: Mass | UnsetType = UNSET
    loads: list[VehicleLoads]


class Hauling(Struct, frozen=True, kw_only=True, omit_defaults=True):
    """How materials are hauled in, and what is recovered hauled out; strings go by rail train besides.

    Attributes:
        vehicles: Kinds of truck and car, each in place of the others. Not empty, at most 20 items.
    """

    vehicles: Sequence[Vehicle]


class HaulingCurveAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `strength.hauling-curve`: Strings hauled round a curve.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: HaulingCurveResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class HaulingCurveRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `strength.hauling-curve`: Strings hauled round a curve.

    Attributes:
        string_length: Length of string.
        clamped_at: Where along the string it is clamped to the train.
        rack_spacing: Distance of racks along the train.
        rack_offset: Distance of the outermost string from the middle of the track.
        facing_ends: Free ends that face each other in a rack: 1 against a stop, 2 string against string. At least 1, at
            most 2.
        turnout: Row of the catalogue table `turnouts` that supplies what is not given here. Not empty, at most 80
            characters.
        radius: Radius of the sharpest curve; give this, the degree, a turnout, or a turnout number.
        degree: Its degree, by 100-ft chord.
        turnout_number: Number of the frog of the sharpest turnout, where the list of turnouts has none such; the
            sharpest closure curve that a straight switch can lead to is answered for. At least 2, at most 100.
        gauge: Gauge of track.
        heel_spread: Distance of the gage lines at the heel of the switch.
        frog_toe_spread: Distance of the gage lines at the toe of the frog.
        turn_angle: Angle that the curve turns through; without it longer than the string.
        elastic_modulus: Modulus of elasticity of rail steel.
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        base_width: Width of the rail base.
        head_width: Width of the rail head, for the stress there.
        second_moment_lateral: Second moment of the rail about its upright axis, for the moment.
        yield_strength: Yield strength of the rail steel.
        yield_share: Share of the yield strength that hauling may use; the house's own. At least 0.01, at most 1.
        end_clearance: Clearance at the ends on tangent.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    string_length: Length
    clamped_at: Literal["end", "middle"]
    rack_spacing: Length
    rack_offset: Length
    facing_ends: int
    turnout: str | UnsetType = UNSET
    radius: Length | UnsetType = UNSET
    degree: Angle | UnsetType = UNSET
    turnout_number: float | UnsetType = UNSET
    gauge: Length | UnsetType = UNSET
    heel_spread: Length | UnsetType = UNSET
    frog_toe_spread: Length | UnsetType = UNSET
    turn_angle: Angle | UnsetType = UNSET
    elastic_modulus: Stress | UnsetType = UNSET
    section: str | UnsetType = UNSET
    base_width: Length | UnsetType = UNSET
    head_width: Length | UnsetType = UNSET
    second_moment_lateral: SecondMoment | UnsetType = UNSET
    yield_strength: Stress | UnsetType = UNSET
    yield_share: float | UnsetType = UNSET
    end_clearance: Length | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            string_length: Length | Measured,
            clamped_at: Literal["end", "middle"],
            rack_spacing: Length | Measured,
            rack_offset: Length | Measured,
            facing_ends: int,
            turnout: str | UnsetType = UNSET,
            radius: Length | Measured | UnsetType = UNSET,
            degree: Angle | Measured | UnsetType = UNSET,
            turnout_number: float | UnsetType = UNSET,
            gauge: Length | Measured | UnsetType = UNSET,
            heel_spread: Length | Measured | UnsetType = UNSET,
            frog_toe_spread: Length | Measured | UnsetType = UNSET,
            turn_angle: Angle | Measured | UnsetType = UNSET,
            elastic_modulus: Stress | Measured | UnsetType = UNSET,
            section: str | UnsetType = UNSET,
            base_width: Length | Measured | UnsetType = UNSET,
            head_width: Length | Measured | UnsetType = UNSET,
            second_moment_lateral: SecondMoment | Measured | UnsetType = UNSET,
            yield_strength: Stress | Measured | UnsetType = UNSET,
            yield_share: float | UnsetType = UNSET,
            end_clearance: Length | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "string_length": Length.of,
                "rack_spacing": Length.of,
                "rack_offset": Length.of,
                "radius": Length.of,
                "degree": Angle.of,
                "gauge": Length.of,
                "heel_spread": Length.of,
                "frog_toe_spread": Length.of,
                "turn_angle": Angle.of,
                "elastic_modulus": Stress.of,
                "base_width": Length.of,
                "head_width": Length.of,
                "second_moment_lateral": SecondMoment.of,
                "yield_strength": Stress.of,
                "end_clearance": Length.of,
            },
        )


class HaulingCurveResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Stress about the upright axis, offset, shift.

    Attributes:
        radius: Radius of the track as used.
        inner_radius: Radius of the innermost string.
        base_stress: Bending stress at the edge of the base.
        head_stress: Bending stress at the side of the head.
        share_of_yield: Stress at the edge of the base over yield strength.
        moment: Bending moment about the upright axis.
        rack_versine: Offset of the string, head and base alike, from the chord between neighbouring racks.
        angle: Angle of the curve under the free part of the string.
        end_shift: Shift of the outermost string's end along the train, ahead inside, behind outside.
        shift_between: Shift of the inner against the outer string.
        clearance_used: Clearance that the facing ends take up.
        checks: Stress against the share of yield; clearance at the ends.
    """

    radius: Length
    inner_radius: Length
    base_stress: Stress
    head_stress: Stress | UnsetType = UNSET
    share_of_yield: float
    moment: Moment | UnsetType = UNSET
    rack_versine: Length
    angle: Angle
    end_shift: Length
    shift_between: Length
    clearance_used: Length
    checks: list[Check]


class Health(Answered, frozen=True, kw_only=True):
    """The service is up, and what it answers with.

    Attributes:
        status: State of the service. One of `up`, or a later addition.
        versions: What answers.
    """

    status: str
    versions: Versions


class ItemMass(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What an item weighs, where neither the catalogue nor the job says so with the item.

    Attributes:
        item: Id of the item. At most 200 characters.
        mass_each: Mass of one piece, of what is counted.
        density: Mass to a volume, of what is measured by volume.
    """

    item: str
    mass_each: Mass | UnsetType = UNSET
    density: Density | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            item: str,
            mass_each: Mass | Measured | UnsetType = UNSET,
            density: Density | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"mass_each": Mass.of, "density": Density.of})


class JobCheck(Answered, frozen=True, kw_only=True):
    """A check and the part of the job it is about.

    Attributes:
        of: Segment, or section of new rail; empty for the whole job.
        rule: Id of the rule.
        check: The check.
        needs: Where in the job to give what it lacks, as JSON pointers: any of them; empty where nothing lacks.
    """

    of: str
    rule: str
    check: Check
    needs: list[str]


class JobFeature(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A fixed object along the line; what its kind asks for comes from the catalogue, unless a rule of its own is given.

    Attributes:
        kind: Row of the catalogue table `feature-kinds` that supplies what is not given here. Not empty, at most 80
            characters.
        begin: Station along the line.
        rule: What it asks for, if not as its kind does.
        end: Station of its far end; left out: it stands at one station.
        name: Name, such as `bridge 14.2`. At most 200 characters.
    """

    kind: str
    begin: Length
    rule: FeatureRule | UnsetType = UNSET
    end: Length | UnsetType = UNSET
    name: str | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            kind: str,
            begin: Length | Measured,
            rule: FeatureRule | UnsetType = UNSET,
            end: Length | Measured | UnsetType = UNSET,
            name: str | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"begin": Length.of, "end": Length.of})


class JobLine(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """A line of the bill: what one rule says of one part of the job.

    Attributes:
        of: Segment, or section of new rail.
        rule: Id of the rule.
        item: Id of the item.
        product: Catalogue id of the product; empty where none is named.
        net: Exact amount, before allowance and rounding.
        mass: Mass of the net amount; left out where none is known.
    """

    of: str
    rule: str
    item: str
    product: str
    net: Amount
    mass: Mass | UnsetType = UNSET


class Joint(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A bolted joint as the job leaves it.

    Attributes:
        name: Name or station, for the answer. At most 200 characters.
        origin: How it came about: while installing welded rail, by a failure in service with a gap, or it was there.
        bolts_in_rail: Bolts in the rail that has fewer; left out: not known, and not checked. At least 0, at most 8.
        welded_after: Time until it is welded.
        anchored_each_way: Length with every tie anchored, on the shorter side.
        bolt_added: After a failure: one bolt more in each rail end.
        anchors_adjusted: After a failure: anchors put back or adjusted.
        rail_added_with_provision: After a failure: rail was added and later adjustment is provided for.
        torch_cut: Whether a rail end is torch-cut.
        tread_mismatch: Mismatch on the tread.
        gage_mismatch: Mismatch on the gage side.
    """

    name: str
    origin: Literal["existing", "installation", "service-failure"]
    bolts_in_rail: int | UnsetType = UNSET
    welded_after: Duration | UnsetType = UNSET
    anchored_each_way: Length | UnsetType = UNSET
    bolt_added: bool | UnsetType = UNSET
    anchors_adjusted: bool | UnsetType = UNSET
    rail_added_with_provision: bool | UnsetType = UNSET
    torch_cut: bool | UnsetType = UNSET
    tread_mismatch: Length | UnsetType = UNSET
    gage_mismatch: Length | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            name: str,
            origin: Literal["existing", "installation", "service-failure"],
            bolts_in_rail: int | UnsetType = UNSET,
            welded_after: Duration | Measured | UnsetType = UNSET,
            anchored_each_way: Length | Measured | UnsetType = UNSET,
            bolt_added: bool | UnsetType = UNSET,
            anchors_adjusted: bool | UnsetType = UNSET,
            rail_added_with_provision: bool | UnsetType = UNSET,
            torch_cut: bool | UnsetType = UNSET,
            tread_mismatch: Length | Measured | UnsetType = UNSET,
            gage_mismatch: Length | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "welded_after": Duration.of,
                "anchored_each_way": Length.of,
                "tread_mismatch": Length.of,
                "gage_mismatch": Length.of,
            },
        )


class JointGap(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The gap of bolted joints for rails of some lengths, from one rail temperature up to that of the next row.

    Attributes:
        longest: Longest rails.
        gap: Gap.
        shortest: Shortest rails; left out: however short.
        coldest: Coldest rail that it holds for, to a whole degree Fahrenheit; left out: however cold.
    """

    longest: Length
    gap: Length
    shortest: Length | UnsetType = UNSET
    coldest: Temperature | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            longest: Length | Measured,
            gap: Length | Measured,
            shortest: Length | Measured | UnsetType = UNSET,
            coldest: Temperature | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"longest": Length.of, "gap": Length.of, "shortest": Length.of, "coldest": Temperature.of})


class JointGapAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `thermal.joint-gap`: Gap at bolted joints by rail temperature.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: JointGapResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class JointGapRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `thermal.joint-gap`: Gap at bolted joints by rail temperature.

    Attributes:
        rail_length: Length of the rails.
        rail_temperature: Temperature of the rail.
        gap_table: Row of the catalogue table `joint-gap-tables` that supplies what is not given here. Not empty, at
            most 80 characters.
        table: Gaps by rail length and temperature.
        expansion: Coefficient of linear thermal expansion of rail steel.
        closing_temperature: Rail temperature at which the joints shall just close, for the computation.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    rail_length: Length
    rail_temperature: Temperature
    gap_table: str | UnsetType = UNSET
    table: JointGapTable | UnsetType = UNSET
    expansion: Expansion | UnsetType = UNSET
    closing_temperature: Temperature | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            rail_length: Length | Measured,
            rail_temperature: Temperature | Measured,
            gap_table: str | UnsetType = UNSET,
            table: JointGapTable | UnsetType = UNSET,
            expansion: Expansion | Measured | UnsetType = UNSET,
            closing_temperature: Temperature | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "rail_length": Length.of,
                "rail_temperature": Temperature.of,
                "expansion": Expansion.of,
                "closing_temperature": Temperature.of,
            },
        )


class JointGapResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """The gap by table and by computation.

    Attributes:
        table_gap: Gap by the table; absent for lengths that it does not list.
        table_row: The row used; empty likewise.
        computed_gap: Gap by thermal expansion up to the closing temperature, 0 above it.
        gap_per_degree: Change of gap per degree.
    """

    table_gap: Length | UnsetType = UNSET
    table_row: str
    computed_gap: Length
    gap_per_degree: LengthPerTemperature


class JointGapTable(Struct, frozen=True, kw_only=True, omit_defaults=True):
    """Gaps of bolted joints by rail length and rail temperature.

    Attributes:
        gaps: Warmest first for each range of lengths. Not empty, at most 200 items.
    """

    gaps: Sequence[JointGap]


class JointSet(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What a plain joint is made of.

    Attributes:
        bars_per_joint: Bars to a joint. At least 1, at most 4.
        joint_bar: Row of the catalogue table `joint-bars` that supplies what is not given here. Not empty, at most 80
            characters.
        bolts_per_joint: Bolts to a joint. At least 0, at most 16.
        nuts_per_bolt: Nuts to a bolt. At least 0, at most 4.
        washers_per_bolt: Spring washers to a bolt. At least 0, at most 4.
        bonds_per_joint: Bonds around a joint of signalled track. At least 0, at most 8.
        product: Catalogue id of the bar. At most 200 characters.
        bar_mass: Mass of one bar.
        pair_mass: Mass of a pair of bars, where that of one is not known.
        bolt: Row of the catalogue table `track-bolts` that supplies what is not given here. Not empty, at most 80
            characters.
        bolt_product: Catalogue id of the bolt. At most 200 characters.
        bolt_mass: Mass of one bolt with its nut.
    """

    bars_per_joint: int | UnsetType = UNSET
    joint_bar: str | UnsetType = UNSET
    bolts_per_joint: int | UnsetType = UNSET
    nuts_per_bolt: int | UnsetType = UNSET
    washers_per_bolt: int | UnsetType = UNSET
    bonds_per_joint: int | UnsetType = UNSET
    product: str | UnsetType = UNSET
    bar_mass: Mass | UnsetType = UNSET
    pair_mass: Mass | UnsetType = UNSET
    bolt: str | UnsetType = UNSET
    bolt_product: str | UnsetType = UNSET
    bolt_mass: Mass | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            bars_per_joint: int | UnsetType = UNSET,
            joint_bar: str | UnsetType = UNSET,
            bolts_per_joint: int | UnsetType = UNSET,
            nuts_per_bolt: int | UnsetType = UNSET,
            washers_per_bolt: int | UnsetType = UNSET,
            bonds_per_joint: int | UnsetType = UNSET,
            product: str | UnsetType = UNSET,
            bar_mass: Mass | Measured | UnsetType = UNSET,
            pair_mass: Mass | Measured | UnsetType = UNSET,
            bolt: str | UnsetType = UNSET,
            bolt_product: str | UnsetType = UNSET,
            bolt_mass: Mass | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"bar_mass": Mass.of, "pair_mass": Mass.of, "bolt_mass": Mass.of})


class JointsAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.joints`: Joints and their parts.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        orders: The lines with allowance, rounded up to what can be ordered.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: JointsResult
    orders: list[Order]
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class JointsRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.joints`: Joints and their parts.

    Attributes:
        stretch: The stretch.
        rail_length: Length of one rail.
        bars_per_joint: Bars to a joint. At least 1, at most 4.
        joint_bar: Row of the catalogue table `joint-bars` that supplies what is not given here. Not empty, at most 80
            characters.
        bolts_per_joint: Bolts to a joint. At least 0, at most 16.
        nuts_per_bolt: Nuts to a bolt. At least 0, at most 4.
        washers_per_bolt: Spring washers to a bolt. At least 0, at most 4.
        bonds_per_joint: Bonds around a joint of signalled track. At least 0, at most 8.
        product: Catalogue id of the bar. At most 200 characters.
        bar_mass: Mass of one bar.
        pair_mass: Mass of a pair of bars, where that of one is not known.
        bolt: Row of the catalogue table `track-bolts` that supplies what is not given here. Not empty, at most 80
            characters.
        bolt_product: Catalogue id of the bolt. At most 200 characters.
        bolt_mass: Mass of one bolt with its nut.
        insulated_joints: Joints that are insulated, counted on each rail; left out: none. At least 0, at most 100,000.
        section_changes: Places where the rail section changes, each a compromise joint in every renewed rail; left out:
            none. At least 0, at most 100,000.
        compromise_joints: Compromise joints at its ends, besides the joints within it, counted on each rail; left out:
            none. At least 0, at most 100,000.
        piece: The stretch is a piece of a longer one, to be added to the others: special joints in it may stand in
            place of plain ones beside it, so that its plain joints may come out below zero; left out: it is all there
            is.
        track_class: Class of track, for the check of bolts. At least 1, at most 5.
        welded: The joints stand in continuous welded rail; left out: in jointed track.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    stretch: Stretch
    rail_length: Length
    bars_per_joint: int | UnsetType = UNSET
    joint_bar: str | UnsetType = UNSET
    bolts_per_joint: int | UnsetType = UNSET
    nuts_per_bolt: int | UnsetType = UNSET
    washers_per_bolt: int | UnsetType = UNSET
    bonds_per_joint: int | UnsetType = UNSET
    product: str | UnsetType = UNSET
    bar_mass: Mass | UnsetType = UNSET
    pair_mass: Mass | UnsetType = UNSET
    bolt: str | UnsetType = UNSET
    bolt_product: str | UnsetType = UNSET
    bolt_mass: Mass | UnsetType = UNSET
    insulated_joints: int | UnsetType = UNSET
    section_changes: int | UnsetType = UNSET
    compromise_joints: int | UnsetType = UNSET
    piece: bool | UnsetType = UNSET
    track_class: int | UnsetType = UNSET
    welded: bool | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            stretch: Stretch,
            rail_length: Length | Measured,
            bars_per_joint: int | UnsetType = UNSET,
            joint_bar: str | UnsetType = UNSET,
            bolts_per_joint: int | UnsetType = UNSET,
            nuts_per_bolt: int | UnsetType = UNSET,
            washers_per_bolt: int | UnsetType = UNSET,
            bonds_per_joint: int | UnsetType = UNSET,
            product: str | UnsetType = UNSET,
            bar_mass: Mass | Measured | UnsetType = UNSET,
            pair_mass: Mass | Measured | UnsetType = UNSET,
            bolt: str | UnsetType = UNSET,
            bolt_product: str | UnsetType = UNSET,
            bolt_mass: Mass | Measured | UnsetType = UNSET,
            insulated_joints: int | UnsetType = UNSET,
            section_changes: int | UnsetType = UNSET,
            compromise_joints: int | UnsetType = UNSET,
            piece: bool | UnsetType = UNSET,
            track_class: int | UnsetType = UNSET,
            welded: bool | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"rail_length": Length.of, "bar_mass": Mass.of, "pair_mass": Mass.of, "bolt_mass": Mass.of})


class JointsResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Joints and their parts, unrounded.

    Attributes:
        joints: Joints: rails times length over rail length, unrounded.
        joints_whole: Whole joints within the stretch.
        joints_up: Joints rounded up.
        joints_insulated: Of these, insulated.
        joints_compromise: Of these, compromise joints.
        joints_plain: Of these, plain.
        bars: Bars of plain joints.
        bolts: Bolts of plain joints.
        nuts: Nuts.
        washers: Spring washers.
        bonds: Bonds, at all joints that are not insulated.
        bars_mass: Mass of the bars.
        bolts_mass: Mass of the bolts.
        check: Bolts in each rail end against the least that the regulation allows.
        lines: Joints and parts to order.
    """

    joints: float
    joints_whole: float
    joints_up: float
    joints_insulated: int
    joints_compromise: int
    joints_plain: float
    bars: float
    bolts: float
    nuts: float
    washers: float
    bonds: float
    bars_mass: Mass | UnsetType = UNSET
    bolts_mass: Mass | UnsetType = UNSET
    check: Check
    lines: list[Line]


class KeepOut(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A place where no field weld may stand, on either rail.

    Attributes:
        begin: Station along the line.
        end: Station along the line.
        reason: What stands there: a road crossing, a bridge, a turnout. At most 200 characters.
        distance: Kept clear before and beyond it.
    """

    begin: Length
    end: Length
    reason: str
    distance: Length | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            begin: Length | Measured,
            end: Length | Measured,
            reason: str,
            distance: Length | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"begin": Length.of, "end": Length.of, "distance": Length.of})


class LayingAdjustmentAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `thermal.laying-adjustment`: Adjustment of a string at laying.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: LayingAdjustmentResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class LayingAdjustmentRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `thermal.laying-adjustment`: Adjustment of a string at laying.

    Attributes:
        string_length: Length adjusted.
        rail_temperature: Temperature of the rail.
        target_temperature: Neutral temperature wanted.
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        area: Cross-section of one rail.
        elastic_modulus: Modulus of elasticity of rail steel.
        expansion: Coefficient of linear thermal expansion of rail steel.
        weld_opening: Opening that the weld or joint needs.
        friction: Drag on one unfastened rail per length while it is pulled.
        movement_made: Movement actually given to the free end; without it, none.
        range_lower: Lowest desired laying temperature.
        range_upper: Highest desired laying temperature.
        table: Table wanted by temperature and length.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    string_length: Length
    rail_temperature: Temperature
    target_temperature: Temperature
    section: str | UnsetType = UNSET
    area: Area | UnsetType = UNSET
    elastic_modulus: Stress | UnsetType = UNSET
    expansion: Expansion | UnsetType = UNSET
    weld_opening: Length | UnsetType = UNSET
    friction: ForcePerLength | UnsetType = UNSET
    movement_made: Length | UnsetType = UNSET
    range_lower: Temperature | UnsetType = UNSET
    range_upper: Temperature | UnsetType = UNSET
    table: TableWanted | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            string_length: Length | Measured,
            rail_temperature: Temperature | Measured,
            target_temperature: Temperature | Measured,
            section: str | UnsetType = UNSET,
            area: Area | Measured | UnsetType = UNSET,
            elastic_modulus: Stress | Measured | UnsetType = UNSET,
            expansion: Expansion | Measured | UnsetType = UNSET,
            weld_opening: Length | Measured | UnsetType = UNSET,
            friction: ForcePerLength | Measured | UnsetType = UNSET,
            movement_made: Length | Measured | UnsetType = UNSET,
            range_lower: Temperature | Measured | UnsetType = UNSET,
            range_upper: Temperature | Measured | UnsetType = UNSET,
            table: TableWanted | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "string_length": Length.of,
                "rail_temperature": Temperature.of,
                "target_temperature": Temperature.of,
                "area": Area.of,
                "elastic_modulus": Stress.of,
                "expansion": Expansion.of,
                "weld_opening": Length.of,
                "friction": ForcePerLength.of,
                "movement_made": Length.of,
                "range_lower": Temperature.of,
                "range_upper": Temperature.of,
            },
        )


class LayingAdjustmentResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """What the free end and the marks must do, and what it takes.

    Attributes:
        temperature_difference: Target above rail temperature; negative when the rail is hotter.
        movement: Movement of the free end, lengthening positive.
        quarter_movement: Movement a quarter of the length from the fixed end.
        half_movement: Movement at half the length.
        three_quarter_movement: Movement three quarters of the length from the fixed end.
        gap: Gap to leave between the free ends; negative when the ends must overlap before cutting.
        gap_eighths: Gap to the nearest 1/8 in, in eighths of an inch.
        strain_force: Tension that holds the rail at the target strain; negative is a push.
        friction_force: Drag of the whole length.
        pull_force: Greatest pull at the free end; absent when the rail need not be lengthened.
        means: What the rail needs: nothing, pulling or heating, cooling or cutting. One of `lengthen`, `none`,
            `shorten`, or a later addition.
        neutral_achieved: Neutral temperature after the movement made.
        follows: What must follow.
        checks: Neutral temperature achieved against the range.
        table: The table, if wanted.
        record: What to write down for the string.
    """

    temperature_difference: TemperatureChange
    movement: Length
    quarter_movement: Length
    half_movement: Length
    three_quarter_movement: Length
    gap: Length
    gap_eighths: int
    strain_force: Force
    friction_force: Force
    pull_force: Force | UnsetType = UNSET
    means: str
    neutral_achieved: Temperature
    follows: list[str]
    checks: list[Check]
    table: list[TableRow]
    record: list[RecordItem]


if TYPE_CHECKING:
    LengthUnit: TypeAlias = Literal["cm", "ft", "in", "km", "m", "mi", "mm", "yd"]
else:
    LengthUnit = str


class Length(Quantity[LengthUnit], frozen=True, gc=False):
    """A length with its unit.

    Attributes:
        value: The number.
        unit: Unit of the length. See `Length.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("cm", "ft", "in", "km", "m", "mi", "mm", "yd")


if TYPE_CHECKING:
    LengthPerTemperatureUnit: TypeAlias = Literal["in_per_degF", "m_per_K", "mm_per_degC"]
else:
    LengthPerTemperatureUnit = str


class LengthPerTemperature(Quantity[LengthPerTemperatureUnit], frozen=True, gc=False):
    """A length per temperature with its unit.

    Attributes:
        value: The number.
        unit: Unit of the length per temperature. See `LengthPerTemperature.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("in_per_degF", "m_per_K", "mm_per_degC")


class Line(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """A net amount of one item, neither allowance nor rounding in it.

    Attributes:
        item: Id of the item in `data/items.toml`.
        product: Catalogue id of the product; empty where the item needs none.
        net: Exact amount, before allowance and rounding.
        mass: Mass of the net amount; left out where none is known.
        package: What the product is packed in; empty where the item's usual package holds.
        package_size: What one package of the product holds.
    """

    item: str
    product: str
    net: Amount
    mass: Mass | UnsetType = UNSET
    package: str
    package_size: Amount | UnsetType = UNSET


class LoadsAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.loads`: Truck and car loads.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: LoadsResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class LoadsRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.loads`: Truck and car loads.

    Attributes:
        goods: What is hauled. At most 1,000 items.
        vehicles: Kinds of truck and car, each in place of the others; left out: tons only. At most 20 items.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    goods: Sequence[Goods] | UnsetType = UNSET
    vehicles: Sequence[Vehicle] | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET


class LoadsResult(Answered, frozen=True, kw_only=True):
    """Tons by item and in all, and loads of each vehicle.

    Attributes:
        mass: Mass of all items whose mass is known.
        goods: Each item, loaded alone.
        mixed: Loads of each vehicle when all it carries is loaded together.
        without_mass: Items whose mass is not known: they are in no load.
    """

    mass: Mass
    goods: list[GoodsLoads]
    mixed: list[VehicleLoads]
    without_mass: list[str]


class Mark(Answered, frozen=True, kw_only=True):
    """One mark across rail and track.

    Attributes:
        station: Station.
        from_fixed_end: Distance from the fixed end on its side of the cut.
        movement: Movement expected while pulling, along rising stations positive.
        movement_eighths: The same to the nearest 1/8 in, in eighths of an inch.
    """

    station: Length
    from_fixed_end: Length
    movement: Length
    movement_eighths: int


if TYPE_CHECKING:
    MassUnit: TypeAlias = Literal["kg", "lb", "long_ton", "short_ton", "t"]
else:
    MassUnit = str


class Mass(Quantity[MassUnit], frozen=True, gc=False):
    """A mass with its unit.

    Attributes:
        value: The number.
        unit: Unit of the mass. See `Mass.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("kg", "lb", "long_ton", "short_ton", "t")


if TYPE_CHECKING:
    MassPerLengthUnit: TypeAlias = Literal["kg_per_m", "lb_per_ft", "lb_per_yd"]
else:
    MassPerLengthUnit = str


class MassPerLength(Quantity[MassPerLengthUnit], frozen=True, gc=False):
    """A mass per length with its unit.

    Attributes:
        value: The number.
        unit: Unit of the mass per length. See `MassPerLength.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("kg_per_m", "lb_per_ft", "lb_per_yd")


class Mode(Answered, frozen=True, kw_only=True):
    """The lowest buckled state of straight track in one shape.

    Attributes:
        mode: Number of lobes.
        temperature_rise: Rise above neutral.
        length: Reference length of the shape.
        whole_length: Length of the whole buckle.
        buckled_force: Force in the buckle, both rails, compression positive.
        deflection: Largest deflection.
        moment: Largest bending moment, both rails.
        slip_length: Length that slips on each side of the buckle.
    """

    mode: int
    temperature_rise: TemperatureChange
    length: Length
    whole_length: Length
    buckled_force: Force
    deflection: Length
    moment: Moment
    slip_length: Length


if TYPE_CHECKING:
    MomentUnit: TypeAlias = Literal["N_m", "kN_m", "kgf_cm", "kip_in", "lbf_in"]
else:
    MomentUnit = str


class Moment(Quantity[MomentUnit], frozen=True, gc=False):
    """A moment with its unit.

    Attributes:
        value: The number.
        unit: Unit of the moment. See `Moment.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("N_m", "kN_m", "kgf_cm", "kip_in", "lbf_in")


class Money(Answered, frozen=True, kw_only=True):
    """Costs and credits of a job in one currency.

    Attributes:
        currency: Currency code.
        costs: Priced totals.
        cost: Sum of costs.
        credit: Sum of credits.
        balance: Costs less credits; below zero when more is recovered than spent.
        unpriced: Items to buy or recover that have no price.
    """

    currency: str
    costs: list[Cost]
    cost: str
    credit: str
    balance: str
    unpriced: list[str]

    decimal_fields: ClassVar[frozenset[str]] = frozenset({"balance", "cost", "credit"})


class NeutralTemperatureAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `thermal.neutral-temperature`: Neutral temperature after work on the rail.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: NeutralTemperatureResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class NeutralTemperatureRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `thermal.neutral-temperature`: Neutral temperature after work on the rail.

    Attributes:
        rail_temperature: Temperature of the rail.
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        area: Cross-section of one rail.
        elastic_modulus: Modulus of elasticity of rail steel.
        expansion: Coefficient of linear thermal expansion of rail steel.
        resistance: Longitudinal resistance of one rail per length, as its anchoring and ballast give it.
        neutral_temperature: Neutral temperature before, if known.
        parts: Lengths of different neutral temperature, to be averaged. At most 1,000 items.
        measured_gap: Gap that opened at a cut before any pull.
        rail_added: Length of rail put in less rail taken out; removed negative.
        disturbed_length: Length over which the change spreads; without it the slip length on both sides of a cut.
        inward_shift: Even shift of the curve towards its centre; outward negative.
        radius: Radius; give this or the degree.
        degree: Degree of curve, by 100-ft chord.
        accepted_loss: Loss of neutral temperature accepted.
        range_lower: Lowest desired laying temperature.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    rail_temperature: Temperature
    section: str | UnsetType = UNSET
    area: Area | UnsetType = UNSET
    elastic_modulus: Stress | UnsetType = UNSET
    expansion: Expansion | UnsetType = UNSET
    resistance: ForcePerLength | UnsetType = UNSET
    neutral_temperature: Temperature | UnsetType = UNSET
    parts: Sequence[Part] | UnsetType = UNSET
    measured_gap: Length | UnsetType = UNSET
    rail_added: Length | UnsetType = UNSET
    disturbed_length: Length | UnsetType = UNSET
    inward_shift: Length | UnsetType = UNSET
    radius: Length | UnsetType = UNSET
    degree: Angle | UnsetType = UNSET
    accepted_loss: TemperatureChange | UnsetType = UNSET
    range_lower: Temperature | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            rail_temperature: Temperature | Measured,
            section: str | UnsetType = UNSET,
            area: Area | Measured | UnsetType = UNSET,
            elastic_modulus: Stress | Measured | UnsetType = UNSET,
            expansion: Expansion | Measured | UnsetType = UNSET,
            resistance: ForcePerLength | Measured | UnsetType = UNSET,
            neutral_temperature: Temperature | Measured | UnsetType = UNSET,
            parts: Sequence[Part] | UnsetType = UNSET,
            measured_gap: Length | Measured | UnsetType = UNSET,
            rail_added: Length | Measured | UnsetType = UNSET,
            disturbed_length: Length | Measured | UnsetType = UNSET,
            inward_shift: Length | Measured | UnsetType = UNSET,
            radius: Length | Measured | UnsetType = UNSET,
            degree: Angle | Measured | UnsetType = UNSET,
            accepted_loss: TemperatureChange | Measured | UnsetType = UNSET,
            range_lower: Temperature | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "rail_temperature": Temperature.of,
                "area": Area.of,
                "elastic_modulus": Stress.of,
                "expansion": Expansion.of,
                "resistance": ForcePerLength.of,
                "neutral_temperature": Temperature.of,
                "measured_gap": Length.of,
                "rail_added": Length.of,
                "disturbed_length": Length.of,
                "inward_shift": Length.of,
                "radius": Length.of,
                "degree": Angle.of,
                "accepted_loss": TemperatureChange.of,
                "range_lower": Temperature.of,
            },
        )


class NeutralTemperatureResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Before, changes, after.

    Attributes:
        before: Neutral temperature before.
        before_from: How that was found. One of `gap`, `given`, `parts`, or a later addition.
        slip_length: Slip length on each side of a cut at this rail temperature.
        disturbed_length: Length over which the rail change spreads, as used; absent without one.
        change_by_rail: Average change by rail added or removed.
        change_by_shift: Change by the shift of the curve.
        after: Neutral temperature after, average over the length.
        at_cut: Neutral temperature at the cut if joined as it lay, unpulled; absent where no rail was changed.
        rail_to_restore: Rail to take out, to put in when negative, so that nothing is lost; absent likewise.
        checks: Loss against the accepted loss; rail added below the desired range.
    """

    before: Temperature
    before_from: str
    slip_length: Length
    disturbed_length: Length | UnsetType = UNSET
    change_by_rail: TemperatureChange
    change_by_shift: TemperatureChange
    after: Temperature
    at_cut: Temperature | UnsetType = UNSET
    rail_to_restore: Length | UnsetType = UNSET
    checks: list[Check]


class NewJoints(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The joints of new track that is laid of single rails.

    Attributes:
        rail_length: Length of one rail.
        bars_per_joint: Bars to a joint. At least 1, at most 4.
        joint_bar: Row of the catalogue table `joint-bars` that supplies what is not given here. Not empty, at most 80
            characters.
        bolts_per_joint: Bolts to a joint. At least 0, at most 16.
        nuts_per_bolt: Nuts to a bolt. At least 0, at most 4.
        washers_per_bolt: Spring washers to a bolt. At least 0, at most 4.
        bonds_per_joint: Bonds around a joint of signalled track. At least 0, at most 8.
        product: Catalogue id of the bar. At most 200 characters.
        bar_mass: Mass of one bar.
        pair_mass: Mass of a pair of bars, where that of one is not known.
        bolt: Row of the catalogue table `track-bolts` that supplies what is not given here. Not empty, at most 80
            characters.
        bolt_product: Catalogue id of the bolt. At most 200 characters.
        bolt_mass: Mass of one bolt with its nut.
        section_changes: Places where its rails meet those of another section, each a compromise joint in every renewed
            rail; left out: counted from the segments it touches, and from how new rail is closed to what stays. At
            least 0, at most 100,000.
    """

    rail_length: Length
    bars_per_joint: int | UnsetType = UNSET
    joint_bar: str | UnsetType = UNSET
    bolts_per_joint: int | UnsetType = UNSET
    nuts_per_bolt: int | UnsetType = UNSET
    washers_per_bolt: int | UnsetType = UNSET
    bonds_per_joint: int | UnsetType = UNSET
    product: str | UnsetType = UNSET
    bar_mass: Mass | UnsetType = UNSET
    pair_mass: Mass | UnsetType = UNSET
    bolt: str | UnsetType = UNSET
    bolt_product: str | UnsetType = UNSET
    bolt_mass: Mass | UnsetType = UNSET
    section_changes: int | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            rail_length: Length | Measured,
            bars_per_joint: int | UnsetType = UNSET,
            joint_bar: str | UnsetType = UNSET,
            bolts_per_joint: int | UnsetType = UNSET,
            nuts_per_bolt: int | UnsetType = UNSET,
            washers_per_bolt: int | UnsetType = UNSET,
            bonds_per_joint: int | UnsetType = UNSET,
            product: str | UnsetType = UNSET,
            bar_mass: Mass | Measured | UnsetType = UNSET,
            pair_mass: Mass | Measured | UnsetType = UNSET,
            bolt: str | UnsetType = UNSET,
            bolt_product: str | UnsetType = UNSET,
            bolt_mass: Mass | Measured | UnsetType = UNSET,
            section_changes: int | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"rail_length": Length.of, "bar_mass": Mass.of, "pair_mass": Mass.of, "bolt_mass": Mass.of})


class NewTrack(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The track that goes in.

    Attributes:
        plates: Tie plates are new, or those in track are used again and only the missing ones are ordered.
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        section_id: Catalogue id of the new rail section. At most 200 characters.
        area: Cross-section of one rail.
        mass_per_length: Mass of the new rail.
        second_moment_lateral: Second moment of the new rail about its upright axis, for stability.
        height: Height of the new rail.
        base_width: Width of the new rail's base.
        plate_play: Difference of base and shoulders at which plates still hold the rail.
        run_off_run: Run for each unit of rise, where a change of height is run off. At least 10, at most 100,000.
        handed_plates: Plates differ for left and right rail; left out: one kind fits both.
        plate: Row of the catalogue table `tie-plates` that supplies what is not given here. Not empty, at most 80
            characters.
        plate_id: Catalogue id of the plate. At most 200 characters.
        plate_mass: Mass of one plate.
        plate_base_least: Narrowest rail base that the plate takes.
        plate_base_most: Widest rail base that the plate takes.
        plates_per_bundle: Plates in a bundle, as the mill ships them. More than 0, at most 100,000.
        plate_length: Length of a plate along the tie, for the adzed area.
        plate_width: Width of a plate along the rail; without it and the length no adzing is counted.
        adze_margin: Adzed beyond the plate on each side.
        preservative_coats: Coats. At least 0, at most 10.
        preservative_coverage: Area that a volume covers once; stands back where a surface is named.
        preservative_surface: Surface, of which the preservative's own coverage is taken; adzed wood is rough. Left out:
            `coverage` holds.
        preservative: Row of the catalogue table `preservatives` that supplies what is not given here. Not empty, at
            most 80 characters.
        preservative_id: Catalogue id of the preservative. At most 200 characters.
        coverage_rough: Its coverage of rough wood.
        coverage_smooth: Its coverage of smooth wood.
        coverage_sprayed: Its coverage when sprayed.
        drum_volume: What a drum of it holds.
        spike_pattern: Row of the catalogue table `spike-patterns` that supplies what is not given here. Not empty, at
            most 80 characters.
        spikes: Spikes per plate of the new track.
        sharp_curve_radius: Curves below this radius are pointed out.
        spike: Row of the catalogue table `spikes` that supplies what is not given here. Not empty, at most 80
            characters.
        spike_id: Catalogue id of the spike. At most 200 characters.
        spike_mass: Mass of one spike.
        keg_mass: Mass of a keg or bag, where that of one spike is not known.
        spikes_per_keg: Spikes in a keg or bag. More than 0, at most 100,000.
        plate_spike: Row of the catalogue table `spikes` that supplies what is not given here. Not empty, at most 80
            characters.
        plate_spike_mass: Mass of one of them.
        plate_keg_mass: Mass of a keg of them, where that of one is not known.
        plate_spikes_per_keg: Of them in a keg or bag. More than 0, at most 100,000.
        hole_filling: What fills the holes.
        hole_shape: Shape of a hole: square of a cut spike, round of a screw spike or a bored one.
        hole_side: Side of a square spike hole, or diameter of a round one.
        hole_depth: Depth of a spike hole.
        compound_waste: Compound lost, as a share of what the holes take. At least 0, at most 5.
        plug: Row of the catalogue table `tie-plugs` that supplies what is not given here. Not empty, at most 80
            characters.
        plug_id: Catalogue id of the plug. At most 200 characters.
        plugs_per_bundle: Plugs in a bundle. More than 0, at most 1000000.
        pinned_every: Plates are pinned on every n-th tie, by its own number. At least 1, at most 1,000.
        pins_per_plate: Pins in each pinned plate. At least 0, at most 16.
        pin: Row of the catalogue table `plate-pins` that supplies what is not given here. Not empty, at most 80
            characters.
        pin_id: Catalogue id of the pin. At most 200 characters.
        pin_mass: Mass of one pin.
        pins_per_keg: Pins in a keg. More than 0, at most 100,000.
        anchor_pattern: Row of the catalogue table `anchor-patterns` that supplies what is not given here. Not empty, at
            most 80 characters.
        anchors: Anchors that plain track carries.
        elastic_fasteners: The fastenings hold the rail lengthwise, so no anchor is applied; left out: they do not.
        anchors_reapplied_share: Share of the old anchors that is fit to be applied again. At least 0, at most 1.
        anchor_base_play: Difference of the rails' bases at which an anchor of one still grips the other.
        anchor: Row of the catalogue table `rail-anchors` that supplies what is not given here. Not empty, at most 80
            characters.
        anchor_id: Catalogue id of the anchor. At most 200 characters.
        anchor_mass: Mass of one anchor.
        anchors_per_bag: Anchors in a bag or crate. More than 0, at most 100,000.
        bored_share: Share of the spikes in ties that stay for which a hole is bored. At least 0, at most 1.
        pocket_length: Length of the pocket that an anchor needs, along the rail.
        pocket_width: Width of that pocket, across the rail.
        pocket_depth: Depth of that pocket.
        full_share: Share of the pockets that are full of ballast beforehand. At least 0, at most 1.
        ballast_density: Bulk density of the ballast.
        joints: Joints, where the new track is laid of single rails; left out: it is laid of welded strings.
    """

    plates: Literal["new", "reused"]
    section: str | UnsetType = UNSET
    section_id: str | UnsetType = UNSET
    area: Area | UnsetType = UNSET
    mass_per_length: MassPerLength | UnsetType = UNSET
    second_moment_lateral: SecondMoment | UnsetType = UNSET
    height: Length | UnsetType = UNSET
    base_width: Length | UnsetType = UNSET
    plate_play: Length | UnsetType = UNSET
    run_off_run: float | UnsetType = UNSET
    handed_plates: bool | UnsetType = UNSET
    plate: str | UnsetType = UNSET
    plate_id: str | UnsetType = UNSET
    plate_mass: Mass | UnsetType = UNSET
    plate_base_least: Length | UnsetType = UNSET
    plate_base_most: Length | UnsetType = UNSET
    plates_per_bundle: float | UnsetType = UNSET
    plate_length: Length | UnsetType = UNSET
    plate_width: Length | UnsetType = UNSET
    adze_margin: Length | UnsetType = UNSET
    preservative_coats: int | UnsetType = UNSET
    preservative_coverage: Coverage | UnsetType = UNSET
    preservative_surface: Literal["rough", "smooth", "sprayed"] | UnsetType = UNSET
    preservative: str | UnsetType = UNSET
    preservative_id: str | UnsetType = UNSET
    coverage_rough: Coverage | UnsetType = UNSET
    coverage_smooth: Coverage | UnsetType = UNSET
    coverage_sprayed: Coverage | UnsetType = UNSET
    drum_volume: Volume | UnsetType = UNSET
    spike_pattern: str | UnsetType = UNSET
    spikes: SpikePattern | UnsetType = UNSET
    sharp_curve_radius: Length | UnsetType = UNSET
    spike: str | UnsetType = UNSET
    spike_id: str | UnsetType = UNSET
    spike_mass: Mass | UnsetType = UNSET
    keg_mass: Mass | UnsetType = UNSET
    spikes_per_keg: float | UnsetType = UNSET
    plate_spike: str | UnsetType = UNSET
    plate_spike_mass: Mass | UnsetType = UNSET
    plate_keg_mass: Mass | UnsetType = UNSET
    plate_spikes_per_keg: float | UnsetType = UNSET
    hole_filling: Literal["compound", "plugs"] | UnsetType = UNSET
    hole_shape: Literal["round", "square"] | UnsetType = UNSET
    hole_side: Length | UnsetType = UNSET
    hole_depth: Length | UnsetType = UNSET
    compound_waste: float | UnsetType = UNSET
    plug: str | UnsetType = UNSET
    plug_id: str | UnsetType = UNSET
    plugs_per_bundle: float | UnsetType = UNSET
    pinned_every: int | UnsetType = UNSET
    pins_per_plate: int | UnsetType = UNSET
    pin: str | UnsetType = UNSET
    pin_id: str | UnsetType = UNSET
    pin_mass: Mass | UnsetType = UNSET
    pins_per_keg: float | UnsetType = UNSET
    anchor_pattern: str | UnsetType = UNSET
    anchors: AnchorPattern | UnsetType = UNSET
    elastic_fasteners: bool | UnsetType = UNSET
    anchors_reapplied_share: float | UnsetType = UNSET
    anchor_base_play: Length | UnsetType = UNSET
    anchor: str | UnsetType = UNSET
    anchor_id: str | UnsetType = UNSET
    anchor_mass: Mass | UnsetType = UNSET
    anchors_per_bag: float | UnsetType = UNSET
    bored_share: float | UnsetType = UNSET
    pocket_length: Length | UnsetType = UNSET
    pocket_width: Length | UnsetType = UNSET
    pocket_depth: Length | UnsetType = UNSET
    full_share: float | UnsetType = UNSET
    ballast_density: Density | UnsetType = UNSET
    joints: NewJoints | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            plates: Literal["new", "reused"],
            section: str | UnsetType = UNSET,
            section_id: str | UnsetType = UNSET,
            area: Area | Measured | UnsetType = UNSET,
            mass_per_length: MassPerLength | Measured | UnsetType = UNSET,
            second_moment_lateral: SecondMoment | Measured | UnsetType = UNSET,
            height: Length | Measured | UnsetType = UNSET,
            base_width: Length | Measured | UnsetType = UNSET,
            plate_play: Length | Measured | UnsetType = UNSET,
            run_off_run: float | UnsetType = UNSET,
            handed_plates: bool | UnsetType = UNSET,
            plate: str | UnsetType = UNSET,
            plate_id: str | UnsetType = UNSET,
            plate_mass: Mass | Measured | UnsetType = UNSET,
            plate_base_least: Length | Measured | UnsetType = UNSET,
            plate_base_most: Length | Measured | UnsetType = UNSET,
            plates_per_bundle: float | UnsetType = UNSET,
            plate_length: Length | Measured | UnsetType = UNSET,
            plate_width: Length | Measured | UnsetType = UNSET,
            adze_margin: Length | Measured | UnsetType = UNSET,
            preservative_coats: int | UnsetType = UNSET,
            preservative_coverage: Coverage | Measured | UnsetType = UNSET,
            preservative_surface: Literal["rough", "smooth", "sprayed"] | UnsetType = UNSET,
            preservative: str | UnsetType = UNSET,
            preservative_id: str | UnsetType = UNSET,
            coverage_rough: Coverage | Measured | UnsetType = UNSET,
            coverage_smooth: Coverage | Measured | UnsetType = UNSET,
            coverage_sprayed: Coverage | Measured | UnsetType = UNSET,
            drum_volume: Volume | Measured | UnsetType = UNSET,
            spike_pattern: str | UnsetType = UNSET,
            spikes: SpikePattern | UnsetType = UNSET,
            sharp_curve_radius: Length | Measured | UnsetType = UNSET,
            spike: str | UnsetType = UNSET,
            spike_id: str | UnsetType = UNSET,
            spike_mass: Mass | Measured | UnsetType = UNSET,
            keg_mass: Mass | Measured | UnsetType = UNSET,
            spikes_per_keg: float | UnsetType = UNSET,
            plate_spike: str | UnsetType = UNSET,
            plate_spike_mass: Mass | Measured | UnsetType = UNSET,
            plate_keg_mass: Mass | Measured | UnsetType = UNSET,
            plate_spikes_per_keg: float | UnsetType = UNSET,
            hole_filling: Literal["compound", "plugs"] | UnsetType = UNSET,
            hole_shape: Literal["round", "square"] | UnsetType = UNSET,
            hole_side: Length | Measured | UnsetType = UNSET,
            hole_depth: Length | Measured | UnsetType = UNSET,
            compound_waste: float | UnsetType = UNSET,
            plug: str | UnsetType = UNSET,
            plug_id: str | UnsetType = UNSET,
            plugs_per_bundle: float | UnsetType = UNSET,
            pinned_every: int | UnsetType = UNSET,
            pins_per_plate: int | UnsetType = UNSET,
            pin: str | UnsetType = UNSET,
            pin_id: str | UnsetType = UNSET,
            pin_mass: Mass | Measured | UnsetType = UNSET,
            pins_per_keg: float | UnsetType = UNSET,
            anchor_pattern: str | UnsetType = UNSET,
            anchors: AnchorPattern | UnsetType = UNSET,
            elastic_fasteners: bool | UnsetType = UNSET,
            anchors_reapplied_share: float | UnsetType = UNSET,
            anchor_base_play: Length | Measured | UnsetType = UNSET,
            anchor: str | UnsetType = UNSET,
            anchor_id: str | UnsetType = UNSET,
            anchor_mass: Mass | Measured | UnsetType = UNSET,
            anchors_per_bag: float | UnsetType = UNSET,
            bored_share: float | UnsetType = UNSET,
            pocket_length: Length | Measured | UnsetType = UNSET,
            pocket_width: Length | Measured | UnsetType = UNSET,
            pocket_depth: Length | Measured | UnsetType = UNSET,
            full_share: float | UnsetType = UNSET,
            ballast_density: Density | Measured | UnsetType = UNSET,
            joints: NewJoints | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "area": Area.of,
                "mass_per_length": MassPerLength.of,
                "second_moment_lateral": SecondMoment.of,
                "height": Length.of,
                "base_width": Length.of,
                "plate_play": Length.of,
                "plate_mass": Mass.of,
                "plate_base_least": Length.of,
                "plate_base_most": Length.of,
                "plate_length": Length.of,
                "plate_width": Length.of,
                "adze_margin": Length.of,
                "preservative_coverage": Coverage.of,
                "coverage_rough": Coverage.of,
                "coverage_smooth": Coverage.of,
                "coverage_sprayed": Coverage.of,
                "drum_volume": Volume.of,
                "sharp_curve_radius": Length.of,
                "spike_mass": Mass.of,
                "keg_mass": Mass.of,
                "plate_spike_mass": Mass.of,
                "plate_keg_mass": Mass.of,
                "hole_side": Length.of,
                "hole_depth": Length.of,
                "pin_mass": Mass.of,
                "anchor_base_play": Length.of,
                "anchor_mass": Mass.of,
                "pocket_length": Length.of,
                "pocket_width": Length.of,
                "pocket_depth": Length.of,
                "ballast_density": Density.of,
            },
        )


class Offcut(Answered, frozen=True, kw_only=True):
    """What is left of a string that was cut.

    Attributes:
        string: Number of the string.
        length: Rail left.
    """

    string: int
    length: Length


class OldTrack(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The track that comes out.

    Attributes:
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        section_id: Catalogue id of the old rail section. At most 200 characters.
        mass_per_length: Mass of the old rail when new.
        height: Height of the old rail.
        base_width: Width of the old rail's base.
        rail_length: Length of one old rail; left out: the old track has no joints.
        bars_per_joint: Bars to a joint. At least 1, at most 4.
        joint_bar: Row of the catalogue table `joint-bars` that supplies what is not given here. Not empty, at most 80
            characters.
        bolts_per_joint: Bolts to a joint. At least 0, at most 16.
        bar_mass: Mass of one joint bar.
        pair_mass: Mass of a pair of bars, where that of one is not known.
        old_bolt: Row of the catalogue table `track-bolts` that supplies what is not given here. Not empty, at most 80
            characters.
        bolt_mass: Mass of one old bolt with its nut.
        spikes_per_plate: Spikes pulled at each tie plate of the old track, on average. At least 0, at most 16.
        spike: Row of the catalogue table `spikes` that supplies what is not given here. Not empty, at most 80
            characters.
        spike_mass: Mass of one old spike.
        keg_mass: Mass of a keg of the old spike, where that of one is not known.
        spikes_per_keg: Spikes in that keg. More than 0, at most 100,000.
        plated_share: Share of the old tie seats that have a plate. At least 0, at most 1.
        broken_share: Share of the old spikes that break and leave a stub. At least 0, at most 1.
        plate: Row of the catalogue table `tie-plates` that supplies what is not given here. Not empty, at most 80
            characters.
        plate_mass: Mass of one old tie plate.
        plate_base_least: Narrowest rail base that the plate takes.
        plate_base_most: Widest rail base that the plate takes.
        anchor_pattern: Row of the catalogue table `anchor-patterns` that supplies what is not given here. Not empty, at
            most 80 characters.
        anchors: Anchors of the old track; left out: none.
        anchor: Row of the catalogue table `rail-anchors` that supplies what is not given here. Not empty, at most 80
            characters.
        anchor_mass: Mass of one old anchor.
        worn_share: Share of that mass worn away. At least 0, at most 0.9.
        relay_share: Share of the rail fit to be laid again. At least 0, at most 1.
        reroll_share: Share fit to be rolled anew. At least 0, at most 1.
        scrap_share: Share that is scrap; left out: the rest. At least 0, at most 1.
        relay_wear: Most of the rail's mass worn away at which it is fit to be laid again, for its class by wear. At
            least 0, at most 0.9.
        reroll_wear: The same for rail to be rolled anew; what is worn more is scrap. At least 0, at most 0.9.
        recovered_share: Share of the bars, bolts, plates, spikes and anchors that is recovered. At least 0, at most 1.
    """

    section: str | UnsetType = UNSET
    section_id: str | UnsetType = UNSET
    mass_per_length: MassPerLength | UnsetType = UNSET
    height: Length | UnsetType = UNSET
    base_width: Length | UnsetType = UNSET
    rail_length: Length | UnsetType = UNSET
    bars_per_joint: int | UnsetType = UNSET
    joint_bar: str | UnsetType = UNSET
    bolts_per_joint: int | UnsetType = UNSET
    bar_mass: Mass | UnsetType = UNSET
    pair_mass: Mass | UnsetType = UNSET
    old_bolt: str | UnsetType = UNSET
    bolt_mass: Mass | UnsetType = UNSET
    spikes_per_plate: float | UnsetType = UNSET
    spike: str | UnsetType = UNSET
    spike_mass: Mass | UnsetType = UNSET
    keg_mass: Mass | UnsetType = UNSET
    spikes_per_keg: float | UnsetType = UNSET
    plated_share: float | UnsetType = UNSET
    broken_share: float | UnsetType = UNSET
    plate: str | UnsetType = UNSET
    plate_mass: Mass | UnsetType = UNSET
    plate_base_least: Length | UnsetType = UNSET
    plate_base_most: Length | UnsetType = UNSET
    anchor_pattern: str | UnsetType = UNSET
    anchors: AnchorPattern | UnsetType = UNSET
    anchor: str | UnsetType = UNSET
    anchor_mass: Mass | UnsetType = UNSET
    worn_share: float | UnsetType = UNSET
    relay_share: float | UnsetType = UNSET
    reroll_share: float | UnsetType = UNSET
    scrap_share: float | UnsetType = UNSET
    relay_wear: float | UnsetType = UNSET
    reroll_wear: float | UnsetType = UNSET
    recovered_share: float | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            section: str | UnsetType = UNSET,
            section_id: str | UnsetType = UNSET,
            mass_per_length: MassPerLength | Measured | UnsetType = UNSET,
            height: Length | Measured | UnsetType = UNSET,
            base_width: Length | Measured | UnsetType = UNSET,
            rail_length: Length | Measured | UnsetType = UNSET,
            bars_per_joint: int | UnsetType = UNSET,
            joint_bar: str | UnsetType = UNSET,
            bolts_per_joint: int | UnsetType = UNSET,
            bar_mass: Mass | Measured | UnsetType = UNSET,
            pair_mass: Mass | Measured | UnsetType = UNSET,
            old_bolt: str | UnsetType = UNSET,
            bolt_mass: Mass | Measured | UnsetType = UNSET,
            spikes_per_plate: float | UnsetType = UNSET,
            spike: str | UnsetType = UNSET,
            spike_mass: Mass | Measured | UnsetType = UNSET,
            keg_mass: Mass | Measured | UnsetType = UNSET,
            spikes_per_keg: float | UnsetType = UNSET,
            plated_share: float | UnsetType = UNSET,
            broken_share: float | UnsetType = UNSET,
            plate: str | UnsetType = UNSET,
            plate_mass: Mass | Measured | UnsetType = UNSET,
            plate_base_least: Length | Measured | UnsetType = UNSET,
            plate_base_most: Length | Measured | UnsetType = UNSET,
            anchor_pattern: str | UnsetType = UNSET,
            anchors: AnchorPattern | UnsetType = UNSET,
            anchor: str | UnsetType = UNSET,
            anchor_mass: Mass | Measured | UnsetType = UNSET,
            worn_share: float | UnsetType = UNSET,
            relay_share: float | UnsetType = UNSET,
            reroll_share: float | UnsetType = UNSET,
            scrap_share: float | UnsetType = UNSET,
            relay_wear: float | UnsetType = UNSET,
            reroll_wear: float | UnsetType = UNSET,
            recovered_share: float | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "mass_per_length": MassPerLength.of,
                "height": Length.of,
                "base_width": Length.of,
                "rail_length": Length.of,
                "bar_mass": Mass.of,
                "pair_mass": Mass.of,
                "bolt_mass": Mass.of,
                "spike_mass": Mass.of,
                "keg_mass": Mass.of,
                "plate_mass": Mass.of,
                "plate_base_least": Length.of,
                "plate_base_most": Length.of,
                "anchor_mass": Mass.of,
            },
        )


class Operation(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """One operation of the gang.

    Attributes:
        operation: The operation. One of `adze-seats`, `apply-anchors`, `bore-holes`, `drive-spikes`, `drive-stubs`,
            `level-cribs`, `plug-holes`, `pull-spikes`, `remove-anchors`, `remove-plates`, `roll-out-rail`,
            `set-plates`, `set-rail`, `treat-seats`, `unbolt-joints`, or a later addition.
        title: What is done.
        amount: How much of it, unrounded.
        per_tie: Average for each tie that stands in the track.
        per_mile: Average for each mile of the track.
        crews: Crews or machines at work on it side by side.
        crew_time: Time of all its crews together, at the given rate.
        time: Time it takes, its crews side by side.
        days: Working days, unrounded.
        occupancies: Track occupancies, rounded up.
    """

    operation: str
    title: str
    amount: Amount
    per_tie: Amount
    per_mile: Amount
    crews: int | UnsetType = UNSET
    crew_time: Duration | UnsetType = UNSET
    time: Duration | UnsetType = UNSET
    days: float | UnsetType = UNSET
    occupancies: float | UnsetType = UNSET


class OperationAmount(Struct, frozen=True, kw_only=True, omit_defaults=True):
    """How much there is of one operation.

    Attributes:
        operation: The operation.
        amount: How much of it: pieces, or a length of rail for operations on rail.
    """

    operation: Literal[
        "adze-seats", "apply-anchors", "bore-holes", "drive-spikes", "drive-stubs", "level-cribs", "plug-holes",
        "pull-spikes", "remove-anchors", "remove-plates", "roll-out-rail", "set-plates", "set-rail", "treat-seats",
        "unbolt-joints",
    ]
    amount: GoodsAmount

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            operation: Literal[
                "adze-seats", "apply-anchors", "bore-holes", "drive-spikes", "drive-stubs", "level-cribs", "plug-holes",
                "pull-spikes", "remove-anchors", "remove-plates", "roll-out-rail", "set-plates", "set-rail",
                "treat-seats", "unbolt-joints",
            ],
            amount: GoodsAmount | Measured,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"amount": GoodsAmount.of})


class Order(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """The total of one item and product: exact net, allowance, rounded order, packages.

    Attributes:
        item: Id of the item.
        title: Name of the item.
        product: Catalogue id of the product; empty where none is named.
        direction: Bought, recovered from the old track, or work done. One of `order`, `recover`, `work`, or a later
            addition.
        net: Exact total, before allowance and rounding.
        allowance: Share added to the net total.
        order: Net with allowance, rounded up once to what can be ordered.
        package: What it comes in.
        packages: Whole packages that hold the order.
        net_mass: Mass of the net total.
        order_mass: Mass of the order.
    """

    item: str
    title: str
    product: str
    direction: str
    net: Amount
    allowance: float
    order: Amount
    package: str | UnsetType = UNSET
    packages: int | UnsetType = UNSET
    net_mass: Mass | UnsetType = UNSET
    order_mass: Mass | UnsetType = UNSET


class OrderAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.order`: From the job's total to the order.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: OrderResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class OrderRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.order`: From the job's total to the order.

    Attributes:
        net: Exact total of the item over the whole job.
        net_mass: Mass of that total.
        mass_each: Mass of one piece, in place of the mass of the total.
        allowance: Allowance for loss, as a share of the total; left out: none. At least 0, at most 10.
        extra: Allowance as an amount, added besides.
        step: Smallest amount sold; left out: one piece of a count, any amount of what is measured.
        package_size: What one package holds: pieces, or the item's own kind of quantity, or a mass.
        whole_packages: Only full packages are sold, so the order fills the last one; left out: loose pieces are sold as
            well.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    net: GoodsAmount
    net_mass: Mass | UnsetType = UNSET
    mass_each: Mass | UnsetType = UNSET
    allowance: float | UnsetType = UNSET
    extra: GoodsAmount | UnsetType = UNSET
    step: GoodsAmount | UnsetType = UNSET
    package_size: GoodsAmount | UnsetType = UNSET
    whole_packages: bool | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            net: GoodsAmount | Measured,
            net_mass: Mass | Measured | UnsetType = UNSET,
            mass_each: Mass | Measured | UnsetType = UNSET,
            allowance: float | UnsetType = UNSET,
            extra: GoodsAmount | Measured | UnsetType = UNSET,
            step: GoodsAmount | Measured | UnsetType = UNSET,
            package_size: GoodsAmount | Measured | UnsetType = UNSET,
            whole_packages: bool | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "net": GoodsAmount.of,
                "net_mass": Mass.of,
                "mass_each": Mass.of,
                "extra": GoodsAmount.of,
                "step": GoodsAmount.of,
                "package_size": GoodsAmount.of,
            },
        )


class OrderResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """What to order.

    Attributes:
        with_allowance: Total with allowance, not rounded.
        order: What to order, rounded up once.
        packages_exact: Packages, not rounded.
        packages: Packages, rounded up.
        mass: Mass of the order.
    """

    with_allowance: Amount
    order: Amount
    packages_exact: float | UnsetType = UNSET
    packages: float | UnsetType = UNSET
    mass: Mass | UnsetType = UNSET


class OtherSection(Answered, frozen=True, kw_only=True):
    """The second section under the same wheels, and its figures over those of the first.

    Attributes:
        deflection: Largest deflection.
        base_stress: Largest tension in the base.
        head_stress: Compression in the head at the same place.
        seat_load: Largest rail-seat load.
        deflection_ratio: Deflection over that of the first.
        base_stress_ratio: Base stress over that of the first.
        seat_load_ratio: Rail-seat load over that of the first.
    """

    deflection: Length
    base_stress: Stress
    head_stress: Stress
    seat_load: Force
    deflection_ratio: float
    base_stress_ratio: float
    seat_load_ratio: float


class OutlinePoint(Answered, frozen=True, kw_only=True):
    """A point of the outline, in the unit of the outline.

    Attributes:
        x: To the right of the middle of the base.
        y: Above the bottom of the base.
    """

    x: float
    y: float


class Packaging(Struct, frozen=True, kw_only=True, omit_defaults=True):
    """How an item is packed, where it is not as the catalogue says. For counted items only.

    Attributes:
        item: Id of the item. At most 200 characters.
        package: What it comes in, such as `keg`. At most 200 characters.
        pieces: Pieces in one. More than 0, at most 1000000.
    """

    item: str
    package: str
    pieces: float


class Part(Struct, frozen=True, kw_only=True, omit_defaults=True):
    """A length of rail with one neutral temperature.

    Attributes:
        length: Length.
        neutral_temperature: Its neutral temperature.
    """

    length: Length
    neutral_temperature: Temperature

    if TYPE_CHECKING:

        def __init__(self, *, length: Length | Measured, neutral_temperature: Temperature | Measured) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"length": Length.of, "neutral_temperature": Temperature.of})


class PathPoint(Answered, frozen=True, kw_only=True):
    """One equilibrium of track with a line defect.

    Attributes:
        deflection: Movement at the middle, the defect not counted.
        temperature_rise: Rise above neutral.
        buckled_force: Force at the middle of the buckle, both rails, compression positive.
        half_length: Half of the buckle's length.
        lobes: Lobes of the buckle.
        energy: Energy above that of the unbuckled track at this rise.
    """

    deflection: Length
    temperature_rise: TemperatureChange
    buckled_force: Force
    half_length: Length
    lobes: int
    energy: Energy


class PlaceReuse(Answered, frozen=True, kw_only=True):
    """What a part of the job takes and gives.

    Attributes:
        applied: Old anchors applied again here, from wherever they come.
        given: Anchors that come off here and go back in, wherever that is.
    """

    applied: float
    given: float


class PlacedPiece(Answered, frozen=True, kw_only=True):
    """A string or a part of one as it lies.

    Attributes:
        string: Number of the string, in the order they come off the train.
        rail: Which rail. One of `left`, `right`, or a later addition.
        begin: Station along the line.
        end: Station along the line.
        length: Rail in the piece.
        cut_begin: Where the piece begins in the string.
        cut_end: Where it ends in the string.
        whole: Whether the string lies uncut.
    """

    string: int
    rail: str
    begin: Length
    end: Length
    length: Length
    cut_begin: Length
    cut_end: Length
    whole: bool


class PlacedWeld(Answered, frozen=True, kw_only=True):
    """A field weld by the station of its middle.

    Attributes:
        station: Station along the line.
        rail: Which rail. One of `left`, `right`, or a later addition.
        kind: Between pieces, or closing a run. One of `compromise-weld`, `junction`, `weld`, or a later addition.
    """

    station: Length
    rail: str
    kind: str


class PlatePinsAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.plate-pins`: Plate pins.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        orders: The lines with allowance, rounded up to what can be ordered.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: PlatePinsResult
    orders: list[Order]
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class PlatePinsRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.plate-pins`: Plate pins.

    Attributes:
        stretch: The stretch.
        tie_kind: What the ties are made of.
        every: Plates are pinned on every n-th tie, by its own number. At least 1, at most 1,000.
        per_plate: Pins in each pinned plate. At least 0, at most 16.
        pin: Row of the catalogue table `plate-pins` that supplies what is not given here. Not empty, at most 80
            characters.
        product: Catalogue id of the pin. At most 200 characters.
        pin_mass: Mass of one pin.
        per_keg: Pins in a keg. More than 0, at most 100,000.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    stretch: Stretch
    tie_kind: Literal["concrete", "steel", "wood"] | UnsetType = UNSET
    every: int | UnsetType = UNSET
    per_plate: int | UnsetType = UNSET
    pin: str | UnsetType = UNSET
    product: str | UnsetType = UNSET
    pin_mass: Mass | UnsetType = UNSET
    per_keg: float | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            stretch: Stretch,
            tie_kind: Literal["concrete", "steel", "wood"] | UnsetType = UNSET,
            every: int | UnsetType = UNSET,
            per_plate: int | UnsetType = UNSET,
            pin: str | UnsetType = UNSET,
            product: str | UnsetType = UNSET,
            pin_mass: Mass | Measured | UnsetType = UNSET,
            per_keg: float | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"pin_mass": Mass.of})


class PlatePinsResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Pins and where they go.

    Attributes:
        rails: Rails renewed.
        ties_pinned: Ties whose plates are pinned.
        plates_pinned: Plates that are pinned.
        pins: Pins.
        kegs: Kegs, unrounded; left out where what one holds is not known.
        mass: Mass of the pins.
        note: Why none is counted, where none is.
        lines: Pins to order.
    """

    rails: int
    ties_pinned: int
    plates_pinned: int
    pins: int
    kegs: float | UnsetType = UNSET
    mass: Mass | UnsetType = UNSET
    note: str | UnsetType = UNSET
    lines: list[Line]


class PreservativeAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.preservative`: Preservative for adzed tie seats.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        orders: The lines with allowance, rounded up to what can be ordered.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: PreservativeResult
    orders: list[Order]
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class PreservativeRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.preservative`: Preservative for adzed tie seats.

    Attributes:
        stretch: The stretch.
        tie_kind: What the ties are made of.
        renewed_share: Share of the ties that is renewed. At least 0, at most 1.
        plate: Row of the catalogue table `tie-plates` that supplies what is not given here. Not empty, at most 80
            characters.
        plate_length: Length of a plate, along the tie.
        plate_width: Width of a plate, along the rail.
        adze_margin: Adzed beyond the plate on each side.
        coats: Coats. At least 0, at most 10.
        coverage: Area that a volume covers once; stands back where a surface is named.
        surface: Surface, of which the preservative's own coverage is taken; adzed wood is rough. Left out: `coverage`
            holds.
        preservative: Row of the catalogue table `preservatives` that supplies what is not given here. Not empty, at
            most 80 characters.
        product: Catalogue id of the preservative. At most 200 characters.
        coverage_rough: Its coverage of rough wood.
        coverage_smooth: Its coverage of smooth wood.
        coverage_sprayed: Its coverage when sprayed.
        drum_volume: What a drum of it holds.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    stretch: Stretch
    tie_kind: Literal["concrete", "steel", "wood"] | UnsetType = UNSET
    renewed_share: float | UnsetType = UNSET
    plate: str | UnsetType = UNSET
    plate_length: Length | UnsetType = UNSET
    plate_width: Length | UnsetType = UNSET
    adze_margin: Length | UnsetType = UNSET
    coats: int | UnsetType = UNSET
    coverage: Coverage | UnsetType = UNSET
    surface: Literal["rough", "smooth", "sprayed"] | UnsetType = UNSET
    preservative: str | UnsetType = UNSET
    product: str | UnsetType = UNSET
    coverage_rough: Coverage | UnsetType = UNSET
    coverage_smooth: Coverage | UnsetType = UNSET
    coverage_sprayed: Coverage | UnsetType = UNSET
    drum_volume: Volume | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            stretch: Stretch,
            tie_kind: Literal["concrete", "steel", "wood"] | UnsetType = UNSET,
            renewed_share: float | UnsetType = UNSET,
            plate: str | UnsetType = UNSET,
            plate_length: Length | Measured | UnsetType = UNSET,
            plate_width: Length | Measured | UnsetType = UNSET,
            adze_margin: Length | Measured | UnsetType = UNSET,
            coats: int | UnsetType = UNSET,
            coverage: Coverage | Measured | UnsetType = UNSET,
            surface: Literal["rough", "smooth", "sprayed"] | UnsetType = UNSET,
            preservative: str | UnsetType = UNSET,
            product: str | UnsetType = UNSET,
            coverage_rough: Coverage | Measured | UnsetType = UNSET,
            coverage_smooth: Coverage | Measured | UnsetType = UNSET,
            coverage_sprayed: Coverage | Measured | UnsetType = UNSET,
            drum_volume: Volume | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "plate_length": Length.of,
                "plate_width": Length.of,
                "adze_margin": Length.of,
                "coverage": Coverage.of,
                "coverage_rough": Coverage.of,
                "coverage_smooth": Coverage.of,
                "coverage_sprayed": Coverage.of,
                "drum_volume": Volume.of,
            },
        )


class PreservativeResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Bared wood and what it takes, unrounded.

    Attributes:
        seats: Tie seats adzed: ties that stay, at renewed rails, on wood ties.
        area_per_seat: Bared area of one seat.
        area: Bared area of all seats.
        coverage_used: Area that a volume covers once, as used.
        volume: Preservative.
        drums: Drums of it, unrounded.
        note: Why none is counted, where none is.
        lines: Preservative to order, and seats to adze.
    """

    seats: float
    area_per_seat: Area
    area: Area
    coverage_used: Coverage
    volume: Volume
    drums: float | UnsetType = UNSET
    note: str | UnsetType = UNSET
    lines: list[Line]


class Price(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The price of an item: of one piece, one package, or one unit of length, volume or mass.

    Attributes:
        item: Id of the item. At most 200 characters.
        price: Price, as a decimal in quotes. At most 20 characters.
        per: What it buys.
        product: Catalogue id of the product; left out: any. At most 200 characters.
    """

    item: str
    price: str
    per: Literal["each", "ft", "gal", "kg", "km", "l", "lb", "long_ton", "m", "mi", "package", "short_ton", "t"]
    product: str | UnsetType = UNSET


class Prices(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Prices in one currency.

    Attributes:
        currency: Currency code, such as USD. At most 200 characters.
        decimals: Decimals to which each line is rounded. At least 0, at most 6.
        items: Prices. At most 500 items.
    """

    currency: str
    decimals: int
    items: Sequence[Price] | UnsetType = UNSET


class PrintedComparison(Answered, frozen=True, kw_only=True):
    """A printed value beside the computed one.

    Attributes:
        property: The property.
        printed: As printed.
        computed: From the outline.
        difference: Computed less printed, over printed: 0.01 is one percent.
        agrees: The difference lies within the agreement asked for.
    """

    property: str
    printed: Amount
    computed: Amount
    difference: float
    agrees: bool


class PrintedValue(Answered, frozen=True, kw_only=True):
    """A value of a catalogue row: as its source prints it, in the units asked for, and where it comes from.

    Attributes:
        printed: The value with its unit, as printed.
        value: The same in the units asked for.
        cite: Where it comes from.
    """

    printed: str
    value: Amount
    cite: Citation


class Problem(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """A problem as RFC 9457 describes it.

    Attributes:
        type: Kind of problem, a URI reference.
        title: Kind of problem in words.
        status: HTTP status code.
        detail: What happened this time.
        errors: Everything found wrong with the request.
    """

    type: str
    title: str
    status: int
    detail: str
    errors: list[Fault] | UnsetType = UNSET


class Production(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The user's own production: rates by operation, the working day, track occupancies.

    Attributes:
        rates: Production rates, at most one an operation. At most 15 items.
        working_day: Time worked in a day.
        occupancy: Length of one track occupancy.
        occupancy_lost: Of it, lost to setting up and clearing; left out: nothing.
    """

    rates: Sequence[ProductionRate] | UnsetType = UNSET
    working_day: Duration | UnsetType = UNSET
    occupancy: Duration | UnsetType = UNSET
    occupancy_lost: Duration | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            rates: Sequence[ProductionRate] | UnsetType = UNSET,
            working_day: Duration | Measured | UnsetType = UNSET,
            occupancy: Duration | Measured | UnsetType = UNSET,
            occupancy_lost: Duration | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"working_day": Duration.of, "occupancy": Duration.of, "occupancy_lost": Duration.of})


class ProductionRate(Struct, frozen=True, kw_only=True, omit_defaults=True):
    """What one crew or machine does of one operation in a time.

    Attributes:
        operation: The operation.
        done: What is done: pieces, or a length of rail for operations on rail.
        time: Time it takes.
        crews: Crews or machines at work on it side by side. At least 1, at most 100.
    """

    operation: Literal[
        "adze-seats", "apply-anchors", "bore-holes", "drive-spikes", "drive-stubs", "level-cribs", "plug-holes",
        "pull-spikes", "remove-anchors", "remove-plates", "roll-out-rail", "set-plates", "set-rail", "treat-seats",
        "unbolt-joints",
    ]
    done: GoodsAmount
    time: Duration
    crews: int

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            operation: Literal[
                "adze-seats", "apply-anchors", "bore-holes", "drive-spikes", "drive-stubs", "level-cribs", "plug-holes",
                "pull-spikes", "remove-anchors", "remove-plates", "roll-out-rail", "set-plates", "set-rail",
                "treat-seats", "unbolt-joints",
            ],
            done: GoodsAmount | Measured,
            time: Duration | Measured,
            crews: int,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"done": GoodsAmount.of, "time": Duration.of})


class ProfileOrigin(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Where a group of measures comes from.

    Attributes:
        group: Group of measures. One of `base`, `head`, `overall`, `web`, or a later addition.
        cite: Where it comes from.
        note: What was fitted or inferred.
    """

    group: str
    cite: Citation
    note: str | UnsetType = UNSET


class ProfileParameters(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A rail section as its drawing dimensions it; symmetrical about the vertical axis.

    Attributes:
        height: Bottom of the base to the top of the head.
        base_width: Width over the base.
        head_width: Width of the head, see `head_width_depth`.
        web_thickness: Thickness at the web's thinnest place.
        head_depth: Top of the head down to where the two head fishing planes meet on the vertical axis.
        base_depth: Bottom of the base up to where the two base fishing planes meet on the vertical axis.
        crown: Arcs of the running surface from the top outwards; the last is the gage corner, tangent to the head side.
            At least 2 items, at most 8 items.
        head_side_angle: Lean of the head side from the vertical, the head being narrower above.
        lower_corner_radius: Rounding between head side and underside.
        head_fishing_angle: Slope of the head's underside from the horizontal.
        base_fishing_angle: Slope of the upper face of the base from the horizontal, next to the web.
        upper_web: Arcs from the web up to the head. Not empty, at most 8 items.
        lower_web: Arcs from the web down to the base. Not empty, at most 8 items.
        base_upper_edge_radius: Rounding of the upper edge of the base.
        base_lower_edge_radius: Rounding of the lower edge of the base.
        head_width_depth: Depth below the top at which `head_width` is measured; left out when it is measured where head
            side and fishing plane would meet. It places the head side when the last but one crown arc has no width;
            when every arc before the corner has one, the crown places the head side and the head width is nominal.
        base_outer_angle: Slope of the outer part of the upper face of the base; left out for a single slope.
        base_edge_thickness: Height at which the outer slope would meet the edge of the base; left out for a single
            slope.
        base_slope_radius: Rounding between the two slopes; left out for a single slope.
    """

    height: Length
    base_width: Length
    head_width: Length
    web_thickness: Length
    head_depth: Length
    base_depth: Length
    crown: Sequence[CrownArc]
    head_side_angle: Angle
    lower_corner_radius: Length
    head_fishing_angle: Angle
    base_fishing_angle: Angle
    upper_web: Sequence[WebArc]
    lower_web: Sequence[WebArc]
    base_upper_edge_radius: Length
    base_lower_edge_radius: Length
    head_width_depth: Length | UnsetType = UNSET
    base_outer_angle: Angle | UnsetType = UNSET
    base_edge_thickness: Length | UnsetType = UNSET
    base_slope_radius: Length | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            height: Length | Measured,
            base_width: Length | Measured,
            head_width: Length | Measured,
            web_thickness: Length | Measured,
            head_depth: Length | Measured,
            base_depth: Length | Measured,
            crown: Sequence[CrownArc],
            head_side_angle: Angle | Measured,
            lower_corner_radius: Length | Measured,
            head_fishing_angle: Angle | Measured,
            base_fishing_angle: Angle | Measured,
            upper_web: Sequence[WebArc],
            lower_web: Sequence[WebArc],
            base_upper_edge_radius: Length | Measured,
            base_lower_edge_radius: Length | Measured,
            head_width_depth: Length | Measured | UnsetType = UNSET,
            base_outer_angle: Angle | Measured | UnsetType = UNSET,
            base_edge_thickness: Length | Measured | UnsetType = UNSET,
            base_slope_radius: Length | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "height": Length.of,
                "base_width": Length.of,
                "head_width": Length.of,
                "web_thickness": Length.of,
                "head_depth": Length.of,
                "base_depth": Length.of,
                "head_side_angle": Angle.of,
                "lower_corner_radius": Length.of,
                "head_fishing_angle": Angle.of,
                "base_fishing_angle": Angle.of,
                "base_upper_edge_radius": Length.of,
                "base_lower_edge_radius": Length.of,
                "head_width_depth": Length.of,
                "base_outer_angle": Angle.of,
                "base_edge_thickness": Length.of,
                "base_slope_radius": Length.of,
            },
        )


class ProfileParametersUsed(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """A rail section as its drawing dimensions it; symmetrical about the vertical axis.

    Attributes:
        height: Bottom of the base to the top of the head.
        base_width: Width over the base.
        head_width: Width of the head, see `head_width_depth`.
        web_thickness: Thickness at the web's thinnest place.
        head_depth: Top of the head down to where the two head fishing planes meet on the vertical axis.
        base_depth: Bottom of the base up to where the two base fishing planes meet on the vertical axis.
        crown: Arcs of the running surface from the top outwards; the last is the gage corner, tangent to the head side.
        head_side_angle: Lean of the head side from the vertical, the head being narrower above.
        head_width_depth: Depth below the top at which `head_width` is measured; left out when it is measured where head
            side and fishing plane would meet. It places the head side when the last but one crown arc has no width;
            when every arc before the corner has one, the crown places the head side and the head width is nominal.
        lower_corner_radius: Rounding between head side and underside.
        head_fishing_angle: Slope of the head's underside from the horizontal.
        base_fishing_angle: Slope of the upper face of the base from the horizontal, next to the web.
        upper_web: Arcs from the web up to the head.
        lower_web: Arcs from the web down to the base.
        base_outer_angle: Slope of the outer part of the upper face of the base; left out for a single slope.
        base_edge_thickness: Height at which the outer slope would meet the edge of the base; left out for a single
            slope.
        base_slope_radius: Rounding between the two slopes; left out for a single slope.
        base_upper_edge_radius: Rounding of the upper edge of the base.
        base_lower_edge_radius: Rounding of the lower edge of the base.
    """

    height: Length
    base_width: Length
    head_width: Length
    web_thickness: Length
    head_depth: Length
    base_depth: Length
    crown: list[CrownArcUsed]
    head_side_angle: Angle
    head_width_depth: Length | UnsetType = UNSET
    lower_corner_radius: Length
    head_fishing_angle: Angle
    base_fishing_angle: Angle
    upper_web: list[WebArcUsed]
    lower_web: list[WebArcUsed]
    base_outer_angle: Angle | UnsetType = UNSET
    base_edge_thickness: Length | UnsetType = UNSET
    base_slope_radius: Length | UnsetType = UNSET
    base_upper_edge_radius: Length
    base_lower_edge_radius: Length


class Progress(Answered, frozen=True, kw_only=True):
    """How far the work has come. A stage's steps are of one kind; nothing is said of how long the next of them takes.

    Attributes:
        stage: What is being worked: the rules of each segment; the layout of strings, stretch by stretch, once for each
            rail and track; the buckling of each segment's track; the bill added up; the answer written down; the
            formulas with their numbers. One of `answer`, `bill`, `explanation`, `rail`, `segments`, `stability`, or a
            later addition.
        done: Steps of the stage that are done.
        of: Steps that it has.
    """

    stage: str
    done: int
    of: int


class Provisions(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What checks of the job rest on besides its track; what is left out is not checked, and the answer says where to give
    it.

    Attributes:
        plan_in_force: Whether a welded rail plan is filed and in force.
        record_kept: How long laying temperature, place and date are kept on record.
        later_adjustment: Whether later adjustment of rail laid cold is provided for.
        anchored_at_turnouts: Whether rail anchors stand through and on each side of every turnout and track crossing.
        torch_cut: Whether any rail end at a joint is left torch-cut.
        joints_welded_after: Time until the bolted joints left in welded rail are welded.
        special_bolts_in_rail: Bolts in each rail of insulated and compromise joints, which come complete. At least 0,
            at most 8.
        room_to_close: Room for an end of welded rail to move out: the gap of its joint at neutral temperature.
        room_to_open: Room for an end of welded rail to draw back before the bolts bear.
    """

    plan_in_force: bool | UnsetType = UNSET
    record_kept: Duration | UnsetType = UNSET
    later_adjustment: bool | UnsetType = UNSET
    anchored_at_turnouts: bool | UnsetType = UNSET
    torch_cut: bool | UnsetType = UNSET
    joints_welded_after: Duration | UnsetType = UNSET
    special_bolts_in_rail: int | UnsetType = UNSET
    room_to_close: Length | UnsetType = UNSET
    room_to_open: Length | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            plan_in_force: bool | UnsetType = UNSET,
            record_kept: Duration | Measured | UnsetType = UNSET,
            later_adjustment: bool | UnsetType = UNSET,
            anchored_at_turnouts: bool | UnsetType = UNSET,
            torch_cut: bool | UnsetType = UNSET,
            joints_welded_after: Duration | Measured | UnsetType = UNSET,
            special_bolts_in_rail: int | UnsetType = UNSET,
            room_to_close: Length | Measured | UnsetType = UNSET,
            room_to_open: Length | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "record_kept": Duration.of,
                "joints_welded_after": Duration.of,
                "room_to_close": Length.of,
                "room_to_open": Length.of,
            },
        )


class RailMassAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.rail-mass`: Mass of rail.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        orders: The lines with allowance, rounded up to what can be ordered.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: RailMassResult
    orders: list[Order]
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class RailMassRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.rail-mass`: Mass of rail.

    Attributes:
        length: Length of each line of rail.
        rail_lines: Lines of rail: 1, or 2 for both rails of a track. At least 1, at most 2.
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        mass_per_length: Mass of the rail per length.
        stock_length: Length of one stock rail, where its mass is asked for.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    length: Length
    rail_lines: int
    section: str | UnsetType = UNSET
    mass_per_length: MassPerLength | UnsetType = UNSET
    stock_length: Length | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            length: Length | Measured,
            rail_lines: int,
            section: str | UnsetType = UNSET,
            mass_per_length: MassPerLength | Measured | UnsetType = UNSET,
            stock_length: Length | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"length": Length.of, "mass_per_length": MassPerLength.of, "stock_length": Length.of})


class RailMassResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Mass of the rail, and per mile in every ton.

    Attributes:
        mass: Mass of the rail.
        rail_length: Length of all lines of rail.
        track_miles: Miles of track, two lines of rail each, that the rail makes.
        pounds_per_yard: Section in pounds per yard.
        short_tons_per_rail_mile: Tons of 2,000 lb in a mile of one rail.
        long_tons_per_rail_mile: Tons of 2,240 lb in a mile of one rail.
        metric_tons_per_rail_mile: Tonnes in a mile of one rail.
        short_tons_per_track_mile: Tons of 2,000 lb in a mile of track.
        long_tons_per_track_mile: Tons of 2,240 lb in a mile of track.
        metric_tons_per_track_mile: Tonnes in a mile of track.
        stock_rail_mass: Mass of one stock rail; left out where its length is.
        lines: The rail.
    """

    mass: Mass
    rail_length: Length
    track_miles: float
    pounds_per_yard: float
    short_tons_per_rail_mile: float
    long_tons_per_rail_mile: float
    metric_tons_per_rail_mile: float
    short_tons_per_track_mile: float
    long_tons_per_track_mile: float
    metric_tons_per_track_mile: float
    stock_rail_mass: Mass | UnsetType = UNSET
    lines: list[Line]


class RailPlan(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """The new rail of one section on one track: made, laid, hauled.

    Attributes:
        of: Section, and track where the job has several.
        supply: What is made, laid and left over.
        joints: Joints left in it, where there are any.
        layout: Every piece and field weld by station.
        trains: Train loads.
        way: Strings at the sharpest place of their way, where the job tells of it.
    """

    of: str
    supply: RailSupplyResult
    joints: ClosingJointsResult | UnsetType = UNSET
    layout: StringLayoutResult
    trains: TrainLoadsResult
    way: HaulingCurveResult | UnsetType = UNSET


class RailRun(Struct, frozen=True, kw_only=True, omit_defaults=True):
    """One rail renewed without a break; its ends are the middles of the welds or joints that close it.

    Attributes:
        rail: Which rail, looking along rising stations.
        begin: Station along the line.
        end: Station along the line.
        begin_closing: How the run is closed at its begin; `continues` where it goes on in a touching run,
            `counted-elsewhere` where the weld is counted with rail of another section.
        end_closing: How the run is closed at its end; `continues` where it goes on in a touching run.
    """

    rail: Literal["left", "right"]
    begin: Length
    end: Length
    begin_closing: Literal[
        "compromise-joint", "compromise-weld", "continues", "counted-elsewhere", "insulated-joint", "joint", "weld",
    ]
    end_closing: Literal[
        "compromise-joint", "compromise-weld", "continues", "counted-elsewhere", "insulated-joint", "joint", "weld",
    ]

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            rail: Literal["left", "right"],
            begin: Length | Measured,
            end: Length | Measured,
            begin_closing: Literal[
                "compromise-joint", "compromise-weld", "continues", "counted-elsewhere", "insulated-joint", "joint",
                "weld",
            ],
            end_closing: Literal[
                "compromise-joint", "compromise-weld", "continues", "counted-elsewhere", "insulated-joint", "joint",
                "weld",
            ],
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"begin": Length.of, "end": Length.of})


class RailSupplyAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.rail-supply`: Stock rails, strings, welds and closures.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        orders: The lines with allowance, rounded up to what can be ordered.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: RailSupplyResult
    orders: list[Order]
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class RailSupplyRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.rail-supply`: Stock rails, strings, welds and closures.

    Attributes:
        string: The string.
        runs: Runs of rail renewed, in any order; runs of one rail do not overlap. At most 1,000 items.
        curves: Curves, in order; there the rails are longer or shorter than the centreline. At most 1,000 items.
        rail_centres: Distance of the middles of the two rails.
        keep_outs: Where no field weld may stand. At most 1,000 items.
        field_weld: How welds are made in the field.
        thermite_gap: Gap that a thermite weld fills.
        field_consumption: Rail a flash-butt weld in the field uses up.
        minimum_piece: Shortest piece of rail that may be laid.
        stagger: Least distance of a weld from the welds and ends of the other rail.
        saw_cut: Rail a saw cut takes.
        leftover_reach: Farthest ahead of its cut that what is left of a string may be laid; left out: as far as its
            train goes.
        train_strings: Strings that one train brings: what is left of a cut one does not outlast its train; left out:
            one brings them all. At least 1, at most 100,000.
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        mass_per_length: Mass of the rail per length.
        spare_share: Stock rails kept as spare, over those laid. At least 0, at most 1.
        rail_reject_share: Share of the stock rails that the plant rejects. At least 0, at most 0.5.
        weld_reject_share: Share of the plant welds that are cut out again. At least 0, at most 0.5.
        weld_reject_cut: Rail lost with a weld cut out.
        test_weld_share: Test welds for each weld in a string. At least 0, at most 1.
        test_weld_rail: Rail used up by a test weld.
        old_rail_length: Length of the old rails, where they are jointed.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    string: WeldedString
    runs: Sequence[RailRun] | UnsetType = UNSET
    curves: Sequence[Curve] | UnsetType = UNSET
    rail_centres: Length | UnsetType = UNSET
    keep_outs: Sequence[KeepOut] | UnsetType = UNSET
    field_weld: Literal["flash-butt", "thermite"] | UnsetType = UNSET
    thermite_gap: Length | UnsetType = UNSET
    field_consumption: Length | UnsetType = UNSET
    minimum_piece: Length | UnsetType = UNSET
    stagger: Length | UnsetType = UNSET
    saw_cut: Length | UnsetType = UNSET
    leftover_reach: Length | UnsetType = UNSET
    train_strings: int | UnsetType = UNSET
    section: str | UnsetType = UNSET
    mass_per_length: MassPerLength | UnsetType = UNSET
    spare_share: float | UnsetType = UNSET
    rail_reject_share: float | UnsetType = UNSET
    weld_reject_share: float | UnsetType = UNSET
    weld_reject_cut: Length | UnsetType = UNSET
    test_weld_share: float | UnsetType = UNSET
    test_weld_rail: Length | UnsetType = UNSET
    old_rail_length: Length | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            string: WeldedString,
            runs: Sequence[RailRun] | UnsetType = UNSET,
            curves: Sequence[Curve] | UnsetType = UNSET,
            rail_centres: Length | Measured | UnsetType = UNSET,
            keep_outs: Sequence[KeepOut] | UnsetType = UNSET,
            field_weld: Literal["flash-butt", "thermite"] | UnsetType = UNSET,
            thermite_gap: Length | Measured | UnsetType = UNSET,
            field_consumption: Length | Measured | UnsetType = UNSET,
            minimum_piece: Length | Measured | UnsetType = UNSET,
            stagger: Length | Measured | UnsetType = UNSET,
            saw_cut: Length | Measured | UnsetType = UNSET,
            leftover_reach: Length | Measured | UnsetType = UNSET,
            train_strings: int | UnsetType = UNSET,
            section: str | UnsetType = UNSET,
            mass_per_length: MassPerLength | Measured | UnsetType = UNSET,
            spare_share: float | UnsetType = UNSET,
            rail_reject_share: float | UnsetType = UNSET,
            weld_reject_share: float | UnsetType = UNSET,
            weld_reject_cut: Length | Measured | UnsetType = UNSET,
            test_weld_share: float | UnsetType = UNSET,
            test_weld_rail: Length | Measured | UnsetType = UNSET,
            old_rail_length: Length | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "rail_centres": Length.of,
                "thermite_gap": Length.of,
                "field_consumption": Length.of,
                "minimum_piece": Length.of,
                "stagger": Length.of,
                "saw_cut": Length.of,
                "leftover_reach": Length.of,
                "mass_per_length": MassPerLength.of,
                "weld_reject_cut": Length.of,
                "test_weld_rail": Length.of,
                "old_rail_length": Length.of,
            },
        )


class RailSupplyResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """What is made, laid and left over.

    Attributes:
        string_length: Length of a string as made.
        string_length_laid: What can be laid of it: less drilled ends, at the rail temperature.
        stock_rails_per_string: Stock rails in a string.
        plant_welds_per_string: Plant welds in a string.
        strings_per_track_mile: Strings in a mile of track: two rails over the string as made.
        run_length: Length of the runs along the rails.
        rail_length: Rail in the track: runs, less weld gaps.
        rail_mass: Mass of the rail in the track.
        strings_exact: Rail in the track over what a string gives, not rounded.
        strings: Strings that the layout uses.
        plant_welds: Welds in those strings.
        plant_welds_made: With those made again for rejected ones, unrounded.
        test_welds: Test welds, unrounded.
        stock_rails_in_strings: Stock rails in those strings.
        stock_length_average: Average length of a stock rail.
        stock_rails_lost: Stock rails used up by test welds and rejected welds, unrounded.
        stock_rails: Stock rails needed, with spare, losses and rejected rails, unrounded.
        drilled_ends: String ends drilled.
        junctions: Field welds between pieces within runs.
        tie_ins: Field welds that close runs to rail of the same section.
        compromise_welds: Field welds that close runs to another section.
        field_welds: All field welds.
        closing_joints: Plain joints that close runs.
        closing_insulated_joints: Insulated joints that close runs.
        closing_compromise_joints: Compromise joints that close runs.
        joints_replaced: Old joints in the runs, unrounded.
        cut_pieces: Pieces laid that are not whole strings.
        closures: Those of them that close a run.
        cuts: Saw cuts through strings.
        offcut_length: Rail left over of the strings that are cut.
        welds_are_fewest: Whether no layout at all has fewer field welds; false: not shown.
        strings_are_fewest: Whether these pieces cannot come out of fewer strings; false: not shown.
        lines: What to make, weld and haul.
    """

    string_length: Length
    string_length_laid: Length
    stock_rails_per_string: int
    plant_welds_per_string: int
    strings_per_track_mile: float
    run_length: Length
    rail_length: Length
    rail_mass: Mass
    strings_exact: float
    strings: int
    plant_welds: int
    plant_welds_made: float
    test_welds: float
    stock_rails_in_strings: int
    stock_length_average: Length
    stock_rails_lost: float
    stock_rails: float
    drilled_ends: int
    junctions: int
    tie_ins: int
    compromise_welds: int
    field_welds: int
    closing_joints: int
    closing_insulated_joints: int
    closing_compromise_joints: int
    joints_replaced: float | UnsetType = UNSET
    cut_pieces: int
    closures: int
    cuts: int
    offcut_length: Length
    welds_are_fewest: bool
    strings_are_fewest: bool
    lines: list[Line]


class RecordItem(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """One field of the record.

    Attributes:
        name: What to write down.
        value: The value, where the calculation knows it; to be replaced by what was measured.
        place: Who asks for it.
    """

    name: str
    value: Amount | UnsetType = UNSET
    place: str


class RestraintAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `thermal.restraint`: Longitudinal restraint by anchors and ballast.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: RestraintResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class RestraintRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `thermal.restraint`: Longitudinal restraint by anchors and ballast.

    Attributes:
        rail_temperature: Temperature of the rail.
        neutral_temperature: Rail neutral temperature: neither compression nor tension.
        tie_spacing: Distance of ties, centre to centre.
        anchors_acting: Anchors of one rail that act against one direction at an anchored tie; boxed: 1. At least 1, at
            most 4.
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        area: Cross-section of one rail.
        elastic_modulus: Modulus of elasticity of rail steel.
        expansion: Coefficient of linear thermal expansion of rail steel.
        anchor_slip: Force at which an anchor slips on the rail.
        ballast_resistance: Resistance of the ballast to one rail per length, every tie anchored.
        zones: Zones next to ends, joints, turnouts and bridges. At most 1,000 items.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    rail_temperature: Temperature
    neutral_temperature: Temperature
    tie_spacing: Length
    anchors_acting: int
    section: str | UnsetType = UNSET
    area: Area | UnsetType = UNSET
    elastic_modulus: Stress | UnsetType = UNSET
    expansion: Expansion | UnsetType = UNSET
    anchor_slip: Force | UnsetType = UNSET
    ballast_resistance: ForcePerLength | UnsetType = UNSET
    zones: Sequence[Zone] | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            rail_temperature: Temperature | Measured,
            neutral_temperature: Temperature | Measured,
            tie_spacing: Length | Measured,
            anchors_acting: int,
            section: str | UnsetType = UNSET,
            area: Area | Measured | UnsetType = UNSET,
            elastic_modulus: Stress | Measured | UnsetType = UNSET,
            expansion: Expansion | Measured | UnsetType = UNSET,
            anchor_slip: Force | Measured | UnsetType = UNSET,
            ballast_resistance: ForcePerLength | Measured | UnsetType = UNSET,
            zones: Sequence[Zone] | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "rail_temperature": Temperature.of,
                "neutral_temperature": Temperature.of,
                "tie_spacing": Length.of,
                "area": Area.of,
                "elastic_modulus": Stress.of,
                "expansion": Expansion.of,
                "anchor_slip": Force.of,
                "ballast_resistance": ForcePerLength.of,
            },
        )


class RestraintResult(Answered, frozen=True, kw_only=True):
    """The force and what each zone does about it.

    Attributes:
        temperature_change: Rail temperature minus neutral temperature.
        force: Axial force in one rail, compression positive.
        zones: What each zone holds, in the order given.
        checks: Whether each zone holds the whole force, in the order given.
    """

    temperature_change: TemperatureChange
    force: Force
    zones: list[ZoneHold]
    checks: list[Check]


class RuleField(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """An input or output of a rule.

    Attributes:
        name: Its name.
        about: What it means.
        shape: quantity, number, count, flag, word, text, record or a list of these.
        kind: Kind of quantity.
        symbol: Its letter in the formulas.
        si_unit: Coherent SI unit of the limits.
        above: Exclusive lower limit.
        at_least: Lower limit.
        at_most: Upper limit.
        default: Rulebook entry that stands in for it.
        taken_from: Catalogue table and property that can supply it.
        record: Schema of a nested record.
    """

    name: str
    about: str
    shape: str
    kind: str | UnsetType = UNSET
    symbol: str | UnsetType = UNSET
    si_unit: str | UnsetType = UNSET
    above: float | UnsetType = UNSET
    at_least: float | UnsetType = UNSET
    at_most: float | UnsetType = UNSET
    default: str | UnsetType = UNSET
    taken_from: str | UnsetType = UNSET
    record: str | UnsetType = UNSET


class RuleFormula(Answered, frozen=True, kw_only=True):
    """An equation of a rule.

    Attributes:
        gives: Output that it gives.
        text: Right-hand side in the fields' symbols.
        exact: It can be evaluated as it stands; otherwise it is told in words.
        when: Input and word that it holds for; empty where it always holds.
    """

    gives: str
    text: str
    exact: bool
    when: str


class RuleList(Answered, frozen=True, kw_only=True):
    """The registry of rules.

    Attributes:
        version: Version of the catalogue that the sources stand in.
        rules: Every rule.
    """

    version: str
    rules: list[RuleRecord]


class RuleRecord(Answered, frozen=True, kw_only=True):
    """A rule as the registry has it.

    Attributes:
        id: Stable id.
        title: What it answers.
        summary: What is computed, and on which assumptions.
        resource: Path that answers it.
        formulas: Equations, in order.
        inputs: What it needs.
        outputs: What it answers.
        cautions: What a user must know.
        cites: Where it comes from.
        since: Service version that introduced it.
    """

    id: str
    title: str
    summary: str
    resource: str
    formulas: list[RuleFormula]
    inputs: list[RuleField]
    outputs: list[RuleField]
    cautions: list[CautionNote]
    cites: list[Citation]
    since: str


class RulebookChoice(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The rulebook a request is answered with.

    Attributes:
        id: A rulebook of the service; left out: the house's own. Not empty, at most 80 characters.
        entries: Defaults replaced for this request. At most 200 items.
    """

    id: str | UnsetType = UNSET
    entries: Sequence[RulebookEntry] | UnsetType = UNSET


class RulebookDefault(Answered, frozen=True, kw_only=True):
    """A default of a rulebook.

    Attributes:
        id: Id.
        about: What it stands in for.
        value: The value with its unit, as printed.
        rulebook: Rulebook that set it.
        cite: Where it comes from.
    """

    id: str
    about: str
    value: str
    rulebook: str
    cite: Citation


class RulebookEntry(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One default replaced for this request: a number with its unit, or a word.

    Attributes:
        id: Id of the default, as `GET /v1/rulebooks` lists them. Not empty, at most 80 characters.
        value: The number; left out for a word.
        unit: Its unit; left out for a pure number or a word. At most 40 characters.
        word: The word or catalogue id. Not empty, at most 80 characters.
    """

    id: str
    value: float | UnsetType = UNSET
    unit: str | UnsetType = UNSET
    word: str | UnsetType = UNSET


class RulebookList(Answered, frozen=True, kw_only=True):
    """The rulebooks of this service.

    Attributes:
        house: Rulebook in force when a request names none.
        rulebooks: Rulebooks.
    """

    house: str
    rulebooks: list[RulebookRecord]


class RulebookRecord(Answered, frozen=True, kw_only=True):
    """A rulebook: defaults under one name.

    Attributes:
        id: Id.
        edition: Edition.
        title: Title.
        defaults: Its entries, its own and inherited ones.
    """

    id: str
    edition: str
    title: str
    defaults: list[RulebookDefault]


class SafetyPlan(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Thermal answers for one section of new rail.

    Attributes:
        of: Section, and track where the job has several.
        target: Neutral temperature wanted, as used.
        hot: Hottest rail, neutral temperature drifted.
        cold: Coldest rail, neutral temperature as wanted.
        break_gap: If the rail breaks at its coldest.
        laying: Adjustment of a whole string while laying.
        restraint: What the anchored approaches hold, at the coldest or hottest rail, whichever asks more.
        end: Movement and breathing length where its welded rail ends, neutral temperature as wanted.
        end_drifted: The same with the neutral temperature drifted, for the hottest rail.
    """

    of: str
    target: Temperature
    hot: ThermalForceResult
    cold: ThermalForceResult
    break_gap: BreakGapResult
    laying: LayingAdjustmentResult | UnsetType = UNSET
    restraint: RestraintResult | UnsetType = UNSET
    end: EndMovementResult | UnsetType = UNSET
    end_drifted: EndMovementResult | UnsetType = UNSET


class SalvageAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.salvage`: Salvage.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        orders: The lines with allowance, rounded up to what can be ordered.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: SalvageResult
    orders: list[Order]
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class SalvageRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.salvage`: Salvage.

    Attributes:
        stretch: The stretch.
        tie_kind: What the ties are made of.
        renewed_share: Share of the ties that is renewed. At least 0, at most 1.
        old_section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most
            80 characters.
        old_mass_per_length: Mass of the old rail when new.
        worn_share: Share of that mass worn away. At least 0, at most 0.9.
        relay_share: Share of the rail fit to be laid again. At least 0, at most 1.
        reroll_share: Share fit to be rolled anew. At least 0, at most 1.
        scrap_share: Share that is scrap; left out: the rest. At least 0, at most 1.
        relay_wear: Most of the rail's mass worn away at which it is fit to be laid again, for its class by wear. At
            least 0, at most 0.9.
        reroll_wear: The same for rail to be rolled anew; what is worn more is scrap. At least 0, at most 0.9.
        old_rail_length: Length of one old rail; left out: the old track has no joints.
        bars_per_joint: Bars to a joint. At least 1, at most 4.
        old_joint_bar: Row of the catalogue table `joint-bars` that supplies what is not given here. Not empty, at most
            80 characters.
        bolts_per_joint: Bolts to an old joint. At least 0, at most 16.
        bar_mass: Mass of one old bar.
        pair_mass: Mass of a pair of old bars, where that of one is not known.
        old_bolt: Row of the catalogue table `track-bolts` that supplies what is not given here. Not empty, at most 80
            characters.
        bolt_mass: Mass of one old bolt with its nut.
        plated_share: Share of the old tie seats that have a plate. At least 0, at most 1.
        old_plate: Row of the catalogue table `tie-plates` that supplies what is not given here. Not empty, at most 80
            characters.
        plate_mass: Mass of one old plate.
        old_spikes_per_plate: Spikes pulled at each tie plate of the old track, on average. At least 0, at most 16.
        old_spike: Row of the catalogue table `spikes` that supplies what is not given here. Not empty, at most 80
            characters.
        spike_mass: Mass of one old spike.
        keg_mass: Mass of a keg of the old spike, where that of one is not known.
        per_keg: Spikes in that keg. More than 0, at most 100,000.
        old_anchor_pattern: Row of the catalogue table `anchor-patterns` that supplies what is not given here. Not
            empty, at most 80 characters.
        old_anchors: Anchors of the old track; left out: none.
        old_anchor: Row of the catalogue table `rail-anchors` that supplies what is not given here. Not empty, at most
            80 characters.
        anchor_mass: Mass of one old anchor.
        recovered_share: Share of the bars, bolts, plates, spikes and anchors that is recovered. At least 0, at most 1.
        anchors_reapplied: Anchors recovered here that are applied again, wherever; left out: none is. At least 0, at
            most 1000000000.
        plates_reused: The old plates are used again and leave no salvage; left out: not so.
        car_capacity: Load of one car.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    stretch: Stretch
    tie_kind: Literal["concrete", "steel", "wood"] | UnsetType = UNSET
    renewed_share: float | UnsetType = UNSET
    old_section: str | UnsetType = UNSET
    old_mass_per_length: MassPerLength | UnsetType = UNSET
    worn_share: float | UnsetType = UNSET
    relay_share: float | UnsetType = UNSET
    reroll_share: float | UnsetType = UNSET
    scrap_share: float | UnsetType = UNSET
    relay_wear: float | UnsetType = UNSET
    reroll_wear: float | UnsetType = UNSET
    old_rail_length: Length | UnsetType = UNSET
    bars_per_joint: int | UnsetType = UNSET
    old_joint_bar: str | UnsetType = UNSET
    bolts_per_joint: int | UnsetType = UNSET
    bar_mass: Mass | UnsetType = UNSET
    pair_mass: Mass | UnsetType = UNSET
    old_bolt: str | UnsetType = UNSET
    bolt_mass: Mass | UnsetType = UNSET
    plated_share: float | UnsetType = UNSET
    old_plate: str | UnsetType = UNSET
    plate_mass: Mass | UnsetType = UNSET
    old_spikes_per_plate: float | UnsetType = UNSET
    old_spike: str | UnsetType = UNSET
    spike_mass: Mass | UnsetType = UNSET
    keg_mass: Mass | UnsetType = UNSET
    per_keg: float | UnsetType = UNSET
    old_anchor_pattern: str | UnsetType = UNSET
    old_anchors: AnchorPattern | UnsetType = UNSET
    old_anchor: str | UnsetType = UNSET
    anchor_mass: Mass | UnsetType = UNSET
    recovered_share: float | UnsetType = UNSET
    anchors_reapplied: float | UnsetType = UNSET
    plates_reused: bool | UnsetType = UNSET
    car_capacity: Mass | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            stretch: Stretch,
            tie_kind: Literal["concrete", "steel", "wood"] | UnsetType = UNSET,
            renewed_share: float | UnsetType = UNSET,
            old_section: str | UnsetType = UNSET,
            old_mass_per_length: MassPerLength | Measured | UnsetType = UNSET,
            worn_share: float | UnsetType = UNSET,
            relay_share: float | UnsetType = UNSET,
            reroll_share: float | UnsetType = UNSET,
            scrap_share: float | UnsetType = UNSET,
            relay_wear: float | UnsetType = UNSET,
            reroll_wear: float | UnsetType = UNSET,
            old_rail_length: Length | Measured | UnsetType = UNSET,
            bars_per_joint: int | UnsetType = UNSET,
            old_joint_bar: str | UnsetType = UNSET,
            bolts_per_joint: int | UnsetType = UNSET,
            bar_mass: Mass | Measured | UnsetType = UNSET,
            pair_mass: Mass | Measured | UnsetType = UNSET,
            old_bolt: str | UnsetType = UNSET,
            bolt_mass: Mass | Measured | UnsetType = UNSET,
            plated_share: float | UnsetType = UNSET,
            old_plate: str | UnsetType = UNSET,
            plate_mass: Mass | Measured | UnsetType = UNSET,
            old_spikes_per_plate: float | UnsetType = UNSET,
            old_spike: str | UnsetType = UNSET,
            spike_mass: Mass | Measured | UnsetType = UNSET,
            keg_mass: Mass | Measured | UnsetType = UNSET,
            per_keg: float | UnsetType = UNSET,
            old_anchor_pattern: str | UnsetType = UNSET,
            old_anchors: AnchorPattern | UnsetType = UNSET,
            old_anchor: str | UnsetType = UNSET,
            anchor_mass: Mass | Measured | UnsetType = UNSET,
            recovered_share: float | UnsetType = UNSET,
            anchors_reapplied: float | UnsetType = UNSET,
            plates_reused: bool | UnsetType = UNSET,
            car_capacity: Mass | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "old_mass_per_length": MassPerLength.of,
                "old_rail_length": Length.of,
                "bar_mass": Mass.of,
                "pair_mass": Mass.of,
                "bolt_mass": Mass.of,
                "plate_mass": Mass.of,
                "spike_mass": Mass.of,
                "keg_mass": Mass.of,
                "anchor_mass": Mass.of,
                "car_capacity": Mass.of,
            },
        )


class SalvageResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """What comes out, unrounded.

    Attributes:
        rail_length: Old rail that comes out, all renewed rails.
        rail_mass: Its mass as worn.
        relay_mass: Of this, fit to be laid again.
        reroll_mass: Of this, fit to be rolled anew.
        scrap_mass: Of this, scrap.
        joints: Old joints.
        other_mass: Mass of all other steel whose piece has a known mass.
        cars: Car loads of rail and other steel, unrounded.
        without_mass: Items that come out and whose mass is not known.
        lines: What comes out.
    """

    rail_length: Length
    rail_mass: Mass
    relay_mass: Mass
    reroll_mass: Mass
    scrap_mass: Mass
    joints: float
    other_mass: Mass
    cars: float | UnsetType = UNSET
    without_mass: list[str]
    lines: list[Line]


if TYPE_CHECKING:
    SecondMomentUnit: TypeAlias = Literal["cm4", "in4", "m4", "mm4"]
else:
    SecondMomentUnit = str


class SecondMoment(Quantity[SecondMomentUnit], frozen=True, gc=False):
    """A second moment with its unit.

    Attributes:
        value: The number.
        unit: Unit of the second moment. See `SecondMoment.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("cm4", "in4", "m4", "mm4")


class SectionCompatibilityAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `sections.compatibility`: Compatibility of an old and a new rail section.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: SectionCompatibilityResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class SectionCompatibilityRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `sections.compatibility`: Compatibility of an old and a new rail section.

    Attributes:
        old_section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most
            80 characters.
        old_height: Height of the old rail.
        new_section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most
            80 characters.
        new_height: Height of the new rail.
        old_base_width: Width of the old rail's base.
        new_base_width: Width of the new rail's base.
        old_head_width: Width of the old rail's head.
        new_head_width: Width of the new rail's head.
        old_fishing_height: Fishing height of the old rail.
        new_fishing_height: Fishing height of the new rail.
        old_head_fishing_angle: Slope under the old rail's head.
        new_head_fishing_angle: Slope under the new rail's head.
        old_base_fishing_angle: Slope of the old rail's base.
        new_base_fishing_angle: Slope of the new rail's base.
        old_hole_height: Height of the old rail's bolt holes.
        new_hole_height: Height of the new rail's bolt holes.
        old_hole_diameter: Diameter of the old rail's bolt holes.
        new_hole_diameter: Diameter of the new rail's bolt holes.
        old_hole_first: Old rail's end to its first bolt hole.
        new_hole_first: New rail's end to its first bolt hole.
        old_hole_second: First to second bolt hole of the old rail.
        new_hole_second: First to second bolt hole of the new rail.
        old_hole_third: Second to third bolt hole of the old rail.
        new_hole_third: Second to third bolt hole of the new rail.
        old_plate: Row of the catalogue table `tie-plates` that supplies what is not given here. Not empty, at most 80
            characters.
        old_plate_base_least: Narrowest rail base that the old plates take.
        old_plate_base_most: Widest rail base that the old plates take.
        plates: Plates of the new track: new, or those in track again; left out: not settled.
        plate_play: Difference of base and shoulders at which plates still hold the rail.
        run_off_run: Run for each unit of rise, where a change of height is run off. At least 10, at most 100,000.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    old_section: str | UnsetType = UNSET
    old_height: Length | UnsetType = UNSET
    new_section: str | UnsetType = UNSET
    new_height: Length | UnsetType = UNSET
    old_base_width: Length | UnsetType = UNSET
    new_base_width: Length | UnsetType = UNSET
    old_head_width: Length | UnsetType = UNSET
    new_head_width: Length | UnsetType = UNSET
    old_fishing_height: Length | UnsetType = UNSET
    new_fishing_height: Length | UnsetType = UNSET
    old_head_fishing_angle: Angle | UnsetType = UNSET
    new_head_fishing_angle: Angle | UnsetType = UNSET
    old_base_fishing_angle: Angle | UnsetType = UNSET
    new_base_fishing_angle: Angle | UnsetType = UNSET
    old_hole_height: Length | UnsetType = UNSET
    new_hole_height: Length | UnsetType = UNSET
    old_hole_diameter: Length | UnsetType = UNSET
    new_hole_diameter: Length | UnsetType = UNSET
    old_hole_first: Length | UnsetType = UNSET
    new_hole_first: Length | UnsetType = UNSET
    old_hole_second: Length | UnsetType = UNSET
    new_hole_second: Length | UnsetType = UNSET
    old_hole_third: Length | UnsetType = UNSET
    new_hole_third: Length | UnsetType = UNSET
    old_plate: str | UnsetType = UNSET
    old_plate_base_least: Length | UnsetType = UNSET
    old_plate_base_most: Length | UnsetType = UNSET
    plates: Literal["new", "reused"] | UnsetType = UNSET
    plate_play: Length | UnsetType = UNSET
    run_off_run: float | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            old_section: str | UnsetType = UNSET,
            old_height: Length | Measured | UnsetType = UNSET,
            new_section: str | UnsetType = UNSET,
            new_height: Length | Measured | UnsetType = UNSET,
            old_base_width: Length | Measured | UnsetType = UNSET,
            new_base_width: Length | Measured | UnsetType = UNSET,
            old_head_width: Length | Measured | UnsetType = UNSET,
            new_head_width: Length | Measured | UnsetType = UNSET,
            old_fishing_height: Length | Measured | UnsetType = UNSET,
            new_fishing_height: Length | Measured | UnsetType = UNSET,
            old_head_fishing_angle: Angle | Measured | UnsetType = UNSET,
            new_head_fishing_angle: Angle | Measured | UnsetType = UNSET,
            old_base_fishing_angle: Angle | Measured | UnsetType = UNSET,
            new_base_fishing_angle: Angle | Measured | UnsetType = UNSET,
            old_hole_height: Length | Measured | UnsetType = UNSET,
            new_hole_height: Length | Measured | UnsetType = UNSET,
            old_hole_diameter: Length | Measured | UnsetType = UNSET,
            new_hole_diameter: Length | Measured | UnsetType = UNSET,
            old_hole_first: Length | Measured | UnsetType = UNSET,
            new_hole_first: Length | Measured | UnsetType = UNSET,
            old_hole_second: Length | Measured | UnsetType = UNSET,
            new_hole_second: Length | Measured | UnsetType = UNSET,
            old_hole_third: Length | Measured | UnsetType = UNSET,
            new_hole_third: Length | Measured | UnsetType = UNSET,
            old_plate: str | UnsetType = UNSET,
            old_plate_base_least: Length | Measured | UnsetType = UNSET,
            old_plate_base_most: Length | Measured | UnsetType = UNSET,
            plates: Literal["new", "reused"] | UnsetType = UNSET,
            plate_play: Length | Measured | UnsetType = UNSET,
            run_off_run: float | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "old_height": Length.of,
                "new_height": Length.of,
                "old_base_width": Length.of,
                "new_base_width": Length.of,
                "old_head_width": Length.of,
                "new_head_width": Length.of,
                "old_fishing_height": Length.of,
                "new_fishing_height": Length.of,
                "old_head_fishing_angle": Angle.of,
                "new_head_fishing_angle": Angle.of,
                "old_base_fishing_angle": Angle.of,
                "new_base_fishing_angle": Angle.of,
                "old_hole_height": Length.of,
                "new_hole_height": Length.of,
                "old_hole_diameter": Length.of,
                "new_hole_diameter": Length.of,
                "old_hole_first": Length.of,
                "new_hole_first": Length.of,
                "old_hole_second": Length.of,
                "new_hole_second": Length.of,
                "old_hole_third": Length.of,
                "new_hole_third": Length.of,
                "old_plate_base_least": Length.of,
                "old_plate_base_most": Length.of,
                "plate_play": Length.of,
            },
        )


class SectionCompatibilityResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """What serves, what does not, and why; what is not known is left out. Differences are new less old.

    Attributes:
        base_width_difference: Of the base widths.
        height_difference: Of the heights: rise of the running surface on equal plates.
        head_width_difference: Of the head widths.
        fishing_height_difference: Of the fishing heights.
        old_plates_serve: The new rail's base lies between the shoulders of the old plates, and is held.
        plate_plan: What follows for the plates; by choice: the old ones would serve and new ones are wanted. One of
            `keep-old-plates`, `new-plates`, `new-plates-by-choice`, or a later addition.
        run_off_length: Length over which the difference of height is run off.
        same_joint_bars: The same joint bars fit both; left out where that is not known.
        same_drilling: Both are drilled alike; left out where that is not known.
        compromise_joint: A bolted joint between them is a compromise joint, or a transition rail goes between; left out
            where not known.
        not_known: Measures that a verdict on the joint bars lacks.
        notes: The reasons, in words.
        checks: Do the plates in track take the new rail? Asked where they are used again.
    """

    base_width_difference: Length
    height_difference: Length
    head_width_difference: Length | UnsetType = UNSET
    fishing_height_difference: Length | UnsetType = UNSET
    old_plates_serve: bool
    plate_plan: str
    run_off_length: Length
    same_joint_bars: bool | UnsetType = UNSET
    same_drilling: bool | UnsetType = UNSET
    compromise_joint: bool | UnsetType = UNSET
    not_known: list[str]
    notes: list[str]
    checks: list[Check]


class SectionFigures(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Properties of one section about its own centroid.

    Attributes:
        area: Cross-section.
        area_head: Part above the fishing planes of the head.
        area_web: Part between the fishing planes, fillets with it.
        area_base: Part below the fishing planes of the base.
        height: Lowest to highest point.
        width: Leftmost to rightmost point.
        neutral_axis: Height of the centroid above the bottom of the base.
        centroid_offset: Centroid to the right of the drawing's vertical axis; 0 for a new rail.
        second_moment: Second moment of area about the horizontal axis.
        second_moment_lateral: Second moment of area about the vertical axis.
        product_of_inertia: Product of inertia; 0 for a new rail.
        section_modulus_head: Section modulus at the highest point.
        section_modulus_base: Section modulus at the lowest point.
        section_modulus_lateral_head: Lateral section modulus at the outermost point of the head.
        section_modulus_lateral_base: Lateral section modulus at the edge of the base.
        perimeter: Length of the outline.
        mass_per_length: Mass per length.
        force_per_degree: Thermal force of restrained rail per degree.
        torsion: Resistance to twisting, where it was asked for.
    """

    area: Area
    area_head: Area | UnsetType = UNSET
    area_web: Area | UnsetType = UNSET
    area_base: Area | UnsetType = UNSET
    height: Length
    width: Length
    neutral_axis: Length
    centroid_offset: Length
    second_moment: SecondMoment
    second_moment_lateral: SecondMoment
    product_of_inertia: SecondMoment
    section_modulus_head: SectionModulus
    section_modulus_base: SectionModulus
    section_modulus_lateral_head: SectionModulus | UnsetType = UNSET
    section_modulus_lateral_base: SectionModulus
    perimeter: Length
    mass_per_length: MassPerLength
    force_per_degree: ForcePerTemperature
    torsion: Torsion | UnsetType = UNSET


if TYPE_CHECKING:
    SectionModulusUnit: TypeAlias = Literal["cm3", "in3", "m3", "mm3"]
else:
    SectionModulusUnit = str


class SectionModulus(Quantity[SectionModulusUnit], frozen=True, gc=False):
    """A section modulus with its unit.

    Attributes:
        value: The number.
        unit: Unit of the section modulus. See `SectionModulus.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("cm3", "in3", "m3", "mm3")


class SectionPoint(Struct, frozen=True, kw_only=True, omit_defaults=True):
    """A point of a section, seen along the track.

    Attributes:
        x: To the right of the middle of the base.
        y: Above the bottom of the base.
    """

    x: Length
    y: Length

    if TYPE_CHECKING:

        def __init__(self, *, x: Length | Measured, y: Length | Measured) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"x": Length.of, "y": Length.of})


class SectionProfile(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """A section's outline as points counter-clockwise, the first not repeated, and the measures it was built from.

    Attributes:
        id: Id of the section.
        title: Its name.
        version: Version of the catalogue.
        unit: Unit of the points. One of `in`, `mm`, or a later addition.
        chord_error: Greatest distance between the true arcs and the lines through the points.
        points: The new section.
        measures: Measures of the drawing.
        density: Density on which the standard's own masses stand.
        density_cite: Where the density comes from.
        origins: Where each group of measures comes from.
        note: Remark on the section.
        worn: The worn section, where wear is asked for.
    """

    id: str
    title: str
    version: str
    unit: str
    chord_error: Length
    points: list[OutlinePoint]
    measures: ProfileParametersUsed
    density: Density
    density_cite: Citation
    origins: list[ProfileOrigin]
    note: str | UnsetType = UNSET
    worn: list[OutlinePoint] | UnsetType = UNSET


class SectionPropertiesAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `sections.properties`: Properties of a rail section, new or worn.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: SectionPropertiesResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class SectionPropertiesRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `sections.properties`: Properties of a rail section, new or worn.

    Attributes:
        section: Row of the catalogue table `rail-profiles` that supplies what is not given here. Not empty, at most 80
            characters.
        profile: Measures of the new section; left out: the outline alone.
        outline: Measured points of the whole section, counter-clockwise, the first not repeated: the section as it is
            now, or a section that has no drawing. At most 2,000 items.
        vertical_wear: Depth of vertical head wear.
        face_wear: Wear of the faces of the head, at most one a side. At most 2 items.
        measured_head: Measured points over the worn head, from right to left, in place of amounts of wear. At most
            2,000 items.
        measuring_tolerance: Accuracy of measured points.
        density: Density of the steel, that of the section's own standard.
        elastic_modulus: Modulus of elasticity of rail steel.
        expansion: Coefficient of linear thermal expansion of rail steel.
        torsion: Compute torsion constant and shear centre too, which takes a few tenths of a second.
        agreement: Share by which computed and printed values may differ before a note says so. At least 0, at most 0.1.
        printed_mass_per_length: Printed, to compare with: mass per length.
        printed_area: Printed, to compare with: cross-section.
        printed_area_head: Printed, to compare with: area of the head.
        printed_area_web: Printed, to compare with: area of the web.
        printed_area_base: Printed, to compare with: area of the base.
        printed_neutral_axis: Printed, to compare with: height of the neutral axis.
        printed_second_moment: Printed, to compare with: second moment.
        printed_section_modulus_head: Printed, to compare with: section modulus, head.
        printed_section_modulus_base: Printed, to compare with: section modulus, base.
        printed_second_moment_lateral: Printed, to compare with: lateral second moment.
        printed_section_modulus_lateral_head: Printed, to compare with: lateral section modulus, head.
        printed_section_modulus_lateral_base: Printed, to compare with: lateral section modulus, base.
        printed_torsion_constant: Printed, to compare with: torsion constant.
        printed_shear_centre: Printed, to compare with: height of the shear centre.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    section: str | UnsetType = UNSET
    profile: ProfileParameters | UnsetType = UNSET
    outline: Sequence[SectionPoint] | UnsetType = UNSET
    vertical_wear: Length | UnsetType = UNSET
    face_wear: Sequence[WornFace] | UnsetType = UNSET
    measured_head: Sequence[SectionPoint] | UnsetType = UNSET
    measuring_tolerance: Length | UnsetType = UNSET
    density: Density | UnsetType = UNSET
    elastic_modulus: Stress | UnsetType = UNSET
    expansion: Expansion | UnsetType = UNSET
    torsion: bool | UnsetType = UNSET
    agreement: float | UnsetType = UNSET
    printed_mass_per_length: MassPerLength | UnsetType = UNSET
    printed_area: Area | UnsetType = UNSET
    printed_area_head: Area | UnsetType = UNSET
    printed_area_web: Area | UnsetType = UNSET
    printed_area_base: Area | UnsetType = UNSET
    printed_neutral_axis: Length | UnsetType = UNSET
    printed_second_moment: SecondMoment | UnsetType = UNSET
    printed_section_modulus_head: SectionModulus | UnsetType = UNSET
    printed_section_modulus_base: SectionModulus | UnsetType = UNSET
    printed_second_moment_lateral: SecondMoment | UnsetType = UNSET
    printed_section_modulus_lateral_head: SectionModulus | UnsetType = UNSET
    printed_section_modulus_lateral_base: SectionModulus | UnsetType = UNSET
    printed_torsion_constant: SecondMoment | UnsetType = UNSET
    printed_shear_centre: Length | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            section: str | UnsetType = UNSET,
            profile: ProfileParameters | UnsetType = UNSET,
            outline: Sequence[SectionPoint] | UnsetType = UNSET,
            vertical_wear: Length | Measured | UnsetType = UNSET,
            face_wear: Sequence[WornFace] | UnsetType = UNSET,
            measured_head: Sequence[SectionPoint] | UnsetType = UNSET,
            measuring_tolerance: Length | Measured | UnsetType = UNSET,
            density: Density | Measured | UnsetType = UNSET,
            elastic_modulus: Stress | Measured | UnsetType = UNSET,
            expansion: Expansion | Measured | UnsetType = UNSET,
            torsion: bool | UnsetType = UNSET,
            agreement: float | UnsetType = UNSET,
            printed_mass_per_length: MassPerLength | Measured | UnsetType = UNSET,
            printed_area: Area | Measured | UnsetType = UNSET,
            printed_area_head: Area | Measured | UnsetType = UNSET,
            printed_area_web: Area | Measured | UnsetType = UNSET,
            printed_area_base: Area | Measured | UnsetType = UNSET,
            printed_neutral_axis: Length | Measured | UnsetType = UNSET,
            printed_second_moment: SecondMoment | Measured | UnsetType = UNSET,
            printed_section_modulus_head: SectionModulus | Measured | UnsetType = UNSET,
            printed_section_modulus_base: SectionModulus | Measured | UnsetType = UNSET,
            printed_second_moment_lateral: SecondMoment | Measured | UnsetType = UNSET,
            printed_section_modulus_lateral_head: SectionModulus | Measured | UnsetType = UNSET,
            printed_section_modulus_lateral_base: SectionModulus | Measured | UnsetType = UNSET,
            printed_torsion_constant: SecondMoment | Measured | UnsetType = UNSET,
            printed_shear_centre: Length | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "vertical_wear": Length.of,
                "measuring_tolerance": Length.of,
                "density": Density.of,
                "elastic_modulus": Stress.of,
                "expansion": Expansion.of,
                "printed_mass_per_length": MassPerLength.of,
                "printed_area": Area.of,
                "printed_area_head": Area.of,
                "printed_area_web": Area.of,
                "printed_area_base": Area.of,
                "printed_neutral_axis": Length.of,
                "printed_second_moment": SecondMoment.of,
                "printed_section_modulus_head": SectionModulus.of,
                "printed_section_modulus_base": SectionModulus.of,
                "printed_second_moment_lateral": SecondMoment.of,
                "printed_section_modulus_lateral_head": SectionModulus.of,
                "printed_section_modulus_lateral_base": SectionModulus.of,
                "printed_torsion_constant": SecondMoment.of,
                "printed_shear_centre": Length.of,
            },
        )


class SectionPropertiesResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """The section as it is now, the new one beside it where it is worn, and the printed values.

    Attributes:
        section: The section as it is now.
        new: The new section; left out where nothing is worn.
        loss: What wear has taken; left out where nothing is worn.
        comparison: The new section against printed values, as far as they are known.
        notes: Where geometry and print disagree, and what else to know.
    """

    section: SectionFigures
    new: SectionFigures | UnsetType = UNSET
    loss: WearLoss | UnsetType = UNSET
    comparison: list[PrintedComparison]
    notes: list[str]


class SectionShape(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A section by its drawing or its points, and what wear has taken.

    Attributes:
        section: Row of the catalogue table `rail-profiles` that supplies what is not given here. Not empty, at most 80
            characters.
        profile: Measures of the new section; left out: the outline alone.
        outline: Measured points of the whole section, counter-clockwise, the first not repeated: the section as it is
            now, or a section that has no drawing. At most 2,000 items.
        vertical_wear: Depth of vertical head wear.
        face_wear: Wear of the faces of the head, at most one a side. At most 2 items.
        measured_head: Measured points over the worn head, from right to left, in place of amounts of wear. At most
            2,000 items.
        measuring_tolerance: Accuracy of measured points.
    """

    section: str | UnsetType = UNSET
    profile: ProfileParameters | UnsetType = UNSET
    outline: Sequence[SectionPoint] | UnsetType = UNSET
    vertical_wear: Length | UnsetType = UNSET
    face_wear: Sequence[WornFace] | UnsetType = UNSET
    measured_head: Sequence[SectionPoint] | UnsetType = UNSET
    measuring_tolerance: Length | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            section: str | UnsetType = UNSET,
            profile: ProfileParameters | UnsetType = UNSET,
            outline: Sequence[SectionPoint] | UnsetType = UNSET,
            vertical_wear: Length | Measured | UnsetType = UNSET,
            face_wear: Sequence[WornFace] | UnsetType = UNSET,
            measured_head: Sequence[SectionPoint] | UnsetType = UNSET,
            measuring_tolerance: Length | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"vertical_wear": Length.of, "measuring_tolerance": Length.of})


class Segment(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A part of the job in which everything but curves and features is the same.

    Attributes:
        name: Name of the segment, unique in the job. At most 200 characters.
        begin: Station along the line.
        end: Station along the line.
        rails: Rails renewed; high or low only where all of the segment lies in curves of one hand.
        ties: Where the ties stand.
        old: The track that comes out.
        new: The track that goes in.
        track: Track it belongs to, such as `main 1`; left out: the job has one track. At most 200 characters.
        tie_kind: What the ties are made of.
        renewed_share: Share of the ties that is renewed. At least 0, at most 1.
        track_class: Class of track, for the checks of sound ties and of joints. At least 1, at most 5.
        sound_ties: Fewest sound ties in any 39 ft that are straight or curve by no more than 2 degrees; left out: not
            counted yet. At least 0, at most 200.
        sound_ties_in_curves: Fewest sound ties in any 39 ft of sharper curves; left out: not counted yet. At least 0,
            at most 200.
        lateral_resistance: Lateral resistance of the track per length, where it is not that of the job's stability.
        curves: Curves, in order, not overlapping; the rest is tangent. At most 1,000 items.
        left_out: Further parts that the work skips. At most 1,000 items.
        features: Fixed objects in the segment. At most 1,000 items.
        begin_closing: How a rail that begins here is closed to the rail before; left out: the supply's `tie_in`.
        end_closing: How a rail that ends here is closed to the rail beyond; left out: the supply's `tie_in`.
        custom: Further items by rule of quantity. At most 50 items.
    """

    name: str
    begin: Length
    end: Length
    rails: Literal["both", "high", "left", "low", "right"]
    ties: TieSetting
    old: OldTrack
    new: NewTrack
    track: str | UnsetType = UNSET
    tie_kind: Literal["concrete", "steel", "wood"] | UnsetType = UNSET
    renewed_share: float | UnsetType = UNSET
    track_class: int | UnsetType = UNSET
    sound_ties: int | UnsetType = UNSET
    sound_ties_in_curves: int | UnsetType = UNSET
    lateral_resistance: ForcePerLength | UnsetType = UNSET
    curves: Sequence[Curve] | UnsetType = UNSET
    left_out: Sequence[Span] | UnsetType = UNSET
    features: Sequence[JobFeature] | UnsetType = UNSET
    begin_closing: Literal["compromise-joint", "compromise-weld", "joint", "weld"] | UnsetType = UNSET
    end_closing: Literal["compromise-joint", "compromise-weld", "joint", "weld"] | UnsetType = UNSET
    custom: Sequence[CustomItem] | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            name: str,
            begin: Length | Measured,
            end: Length | Measured,
            rails: Literal["both", "high", "left", "low", "right"],
            ties: TieSetting,
            old: OldTrack,
            new: NewTrack,
            track: str | UnsetType = UNSET,
            tie_kind: Literal["concrete", "steel", "wood"] | UnsetType = UNSET,
            renewed_share: float | UnsetType = UNSET,
            track_class: int | UnsetType = UNSET,
            sound_ties: int | UnsetType = UNSET,
            sound_ties_in_curves: int | UnsetType = UNSET,
            lateral_resistance: ForcePerLength | Measured | UnsetType = UNSET,
            curves: Sequence[Curve] | UnsetType = UNSET,
            left_out: Sequence[Span] | UnsetType = UNSET,
            features: Sequence[JobFeature] | UnsetType = UNSET,
            begin_closing: Literal["compromise-joint", "compromise-weld", "joint", "weld"] | UnsetType = UNSET,
            end_closing: Literal["compromise-joint", "compromise-weld", "joint", "weld"] | UnsetType = UNSET,
            custom: Sequence[CustomItem] | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"begin": Length.of, "end": Length.of, "lateral_resistance": ForcePerLength.of})


class SegmentSummary(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """A segment at a glance.

    Attributes:
        name: Name.
        track: Track.
        begin: Station along the line.
        end: Station along the line.
        length: Length.
        ties: Ties in the work.
        spacing: Tie spacing as used.
        anchors: Anchors applied.
        zones: Anchor zones as used, overlapping ones merged.
        notes: What the rules have to say about it.
    """

    name: str
    track: str | UnsetType = UNSET
    begin: Length
    end: Length
    length: Length
    ties: int
    spacing: Length
    anchors: int
    zones: list[ZoneUsed]
    notes: list[str]


class SoundTiesAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.sound-ties`: Sound ties in 39 ft.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: SoundTiesResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class SoundTiesRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.sound-ties`: Sound ties in 39 ft.

    Attributes:
        track_class: Class of track. At least 1, at most 5.
        degree: Degree of curve, by 100-ft chord; left out: tangent.
        in_turnout: The 39 ft lie in a turnout; left out: they do not.
        sound_ties: Sound ties in the 39 ft; left out: not counted yet. At least 0, at most 200.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    track_class: int
    degree: Angle | UnsetType = UNSET
    in_turnout: bool | UnsetType = UNSET
    sound_ties: int | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            track_class: int,
            degree: Angle | Measured | UnsetType = UNSET,
            in_turnout: bool | UnsetType = UNSET,
            sound_ties: int | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"degree": Angle.of})


class SoundTiesResult(Answered, frozen=True, kw_only=True):
    """The least number and the verdict.

    Attributes:
        least: Least number of sound ties in 39 ft.
        check: Sound ties against the least number.
    """

    least: int
    check: Check


class SourceList(Answered, frozen=True, kw_only=True):
    """Every cited document.

    Attributes:
        version: Version of the catalogue.
        sources: Documents.
    """

    version: str
    sources: list[SourceRecord]


class SourceRecord(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """A cited document.

    Attributes:
        id: Id.
        title: Title.
        publisher: Publisher.
        kind: regulation, government, standard, handbook, ...
        year: Year.
        address: Where a copy was read.
        note: What to mind about it.
    """

    id: str
    title: str
    publisher: str
    kind: str
    year: int | UnsetType = UNSET
    address: str | UnsetType = UNSET
    note: str | UnsetType = UNSET


class Span(Struct, frozen=True, kw_only=True, omit_defaults=True):
    """Part of a line, begin included, end not.

    Attributes:
        begin: Station along the line.
        end: Station along the line.
    """

    begin: Length
    end: Length

    if TYPE_CHECKING:

        def __init__(self, *, begin: Length | Measured, end: Length | Measured) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"begin": Length.of, "end": Length.of})


if TYPE_CHECKING:
    SpeedUnit: TypeAlias = Literal["km_per_h", "m_per_s", "mi_per_h"]
else:
    SpeedUnit = str


class Speed(Quantity[SpeedUnit], frozen=True, gc=False):
    """A speed with its unit.

    Attributes:
        value: The number.
        unit: Unit of the speed. See `Speed.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("km_per_h", "m_per_s", "mi_per_h")


class SpikeBand(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Spikes in each plate on curves of a given radius or wider, on track of some classes or of all.

    Attributes:
        rail_spikes: Spikes per plate that hold the rail base. At least 0, at most 8.
        plate_spikes: Spikes per plate that hold the plate only. At least 0, at most 8.
        at_least_radius: Smallest radius of the band; left out: however sharp.
        class_from: Lowest class of track that it holds for; left out: the lowest there is. At least 1, at most 9.
        class_to: Highest class of track that it holds for; left out: the highest there is. At least 1, at most 9.
        gage_spikes: Of both, spikes per plate on the gage side; left out: the sides are not told apart. At least 0, at
            most 16.
    """

    rail_spikes: int
    plate_spikes: int
    at_least_radius: Length | UnsetType = UNSET
    class_from: int | UnsetType = UNSET
    class_to: int | UnsetType = UNSET
    gage_spikes: int | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            rail_spikes: int,
            plate_spikes: int,
            at_least_radius: Length | Measured | UnsetType = UNSET,
            class_from: int | UnsetType = UNSET,
            class_to: int | UnsetType = UNSET,
            gage_spikes: int | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"at_least_radius": Length.of})


class SpikeBandUsed(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Spikes in each plate on curves of a given radius or wider, on track of some classes or of all.

    Attributes:
        at_least_radius: Smallest radius of the band; left out: however sharp.
        class_from: Lowest class of track that it holds for; left out: the lowest there is.
        class_to: Highest class of track that it holds for; left out: the highest there is.
        rail_spikes: Spikes per plate that hold the rail base.
        plate_spikes: Spikes per plate that hold the plate only.
        gage_spikes: Of both, spikes per plate on the gage side; left out: the sides are not told apart.
    """

    at_least_radius: Length | UnsetType = UNSET
    class_from: int | UnsetType = UNSET
    class_to: int | UnsetType = UNSET
    rail_spikes: int
    plate_spikes: int
    gage_spikes: int | UnsetType = UNSET


class SpikePattern(Struct, frozen=True, kw_only=True, omit_defaults=True):
    """Spikes per plate by curvature, widest radius first, and by class of track; tangent takes the first band of its
    class.

    Attributes:
        bands: Bands from wide to sharp; of each class of track the last must have no radius. Not empty, at most 20
            items.
        extra_at_joint_ties: Further spikes on each joint tie of jointed track, both rails together. At least 0, at most
            16.
    """

    bands: Sequence[SpikeBand]
    extra_at_joint_ties: int


class SpikePatternUsed(Answered, frozen=True, kw_only=True):
    """Spikes per plate by curvature, widest radius first, and by class of track; tangent takes the first band of its
    class.

    Attributes:
        bands: Bands from wide to sharp; of each class of track the last must have no radius.
        extra_at_joint_ties: Further spikes on each joint tie of jointed track, both rails together.
    """

    bands: list[SpikeBandUsed]
    extra_at_joint_ties: int


class SpikesAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.spikes`: Spikes.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        orders: The lines with allowance, rounded up to what can be ordered.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: SpikesResult
    orders: list[Order]
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class SpikesInBand(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """What one band of the pattern comes to.

    Attributes:
        at_least_radius: Smallest radius of the band.
        class_from: Lowest class of track that it holds for.
        class_to: Highest class of track that it holds for.
        ties: Ties in the band.
        rail_spikes: Spikes that hold the rail.
        plate_spikes: Spikes that hold the plate only.
        gage_spikes: Of both, spikes on the gage side; left out where the pattern does not say.
        field_spikes: Of both, spikes on the field side; left out where the pattern does not say.
    """

    at_least_radius: Length | UnsetType = UNSET
    class_from: int | UnsetType = UNSET
    class_to: int | UnsetType = UNSET
    ties: int
    rail_spikes: int
    plate_spikes: int
    gage_spikes: int | UnsetType = UNSET
    field_spikes: int | UnsetType = UNSET


class SpikesRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.spikes`: Spikes.

    Attributes:
        stretch: The stretch.
        tie_kind: What the ties are made of.
        spike_pattern: Row of the catalogue table `spike-patterns` that supplies what is not given here. Not empty, at
            most 80 characters.
        pattern: Spikes per plate of the new track.
        track_class: Class of track, where the spike pattern goes by it; left out: it does not. At least 1, at most 9.
        joint_rail_length: Length of one rail where the new track is jointed; left out: it has no joints.
        sharp_curve_radius: Curves below this radius are pointed out.
        spike: Row of the catalogue table `spikes` that supplies what is not given here. Not empty, at most 80
            characters.
        product: Catalogue id of the spike. At most 200 characters.
        spike_mass: Mass of one spike.
        keg_mass: Mass of a keg or bag, where that of one spike is not known.
        per_keg: Spikes in a keg or bag. More than 0, at most 100,000.
        plate_spike: Row of the catalogue table `spikes` that supplies what is not given here. Not empty, at most 80
            characters.
        plate_spike_mass: Mass of one of them.
        plate_keg_mass: Mass of a keg of them, where that of one is not known.
        plate_spikes_per_keg: Of them in a keg or bag. More than 0, at most 100,000.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    stretch: Stretch
    tie_kind: Literal["concrete", "steel", "wood"] | UnsetType = UNSET
    spike_pattern: str | UnsetType = UNSET
    pattern: SpikePattern | UnsetType = UNSET
    track_class: int | UnsetType = UNSET
    joint_rail_length: Length | UnsetType = UNSET
    sharp_curve_radius: Length | UnsetType = UNSET
    spike: str | UnsetType = UNSET
    product: str | UnsetType = UNSET
    spike_mass: Mass | UnsetType = UNSET
    keg_mass: Mass | UnsetType = UNSET
    per_keg: float | UnsetType = UNSET
    plate_spike: str | UnsetType = UNSET
    plate_spike_mass: Mass | UnsetType = UNSET
    plate_keg_mass: Mass | UnsetType = UNSET
    plate_spikes_per_keg: float | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            stretch: Stretch,
            tie_kind: Literal["concrete", "steel", "wood"] | UnsetType = UNSET,
            spike_pattern: str | UnsetType = UNSET,
            pattern: SpikePattern | UnsetType = UNSET,
            track_class: int | UnsetType = UNSET,
            joint_rail_length: Length | Measured | UnsetType = UNSET,
            sharp_curve_radius: Length | Measured | UnsetType = UNSET,
            spike: str | UnsetType = UNSET,
            product: str | UnsetType = UNSET,
            spike_mass: Mass | Measured | UnsetType = UNSET,
            keg_mass: Mass | Measured | UnsetType = UNSET,
            per_keg: float | UnsetType = UNSET,
            plate_spike: str | UnsetType = UNSET,
            plate_spike_mass: Mass | Measured | UnsetType = UNSET,
            plate_keg_mass: Mass | Measured | UnsetType = UNSET,
            plate_spikes_per_keg: float | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "joint_rail_length": Length.of,
                "sharp_curve_radius": Length.of,
                "spike_mass": Mass.of,
                "keg_mass": Mass.of,
                "plate_spike_mass": Mass.of,
                "plate_keg_mass": Mass.of,
            },
        )


class SpikesResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Spikes to drive, unrounded where joints are an average.

    Attributes:
        rail_spikes: Spikes that hold the rail.
        plate_spikes: Spikes that hold the plate only.
        gage_spikes: Of both, spikes on the gage side; left out where a band with ties does not say.
        field_spikes: Of both, spikes on the field side; left out where a band with ties does not say.
        joints: Joints of jointed track, each at a tie of its own, unrounded.
        joint_spikes: Further spikes at joint ties, unrounded.
        spikes: All spikes, unrounded.
        mass: Mass of all spikes.
        kegs: Kegs or bags of the spike, unrounded; without those of another that holds the plate.
        bands: Count by band of the pattern.
        sharp_curve_ties: Ties in curves sharper than the limit for the usual pattern.
        notes: What to mind about this answer.
        lines: Spikes to order.
    """

    rail_spikes: int
    plate_spikes: int
    gage_spikes: int | UnsetType = UNSET
    field_spikes: int | UnsetType = UNSET
    joints: float
    joint_spikes: float
    spikes: float
    mass: Mass | UnsetType = UNSET
    kegs: float | UnsetType = UNSET
    bands: list[SpikesInBand]
    sharp_curve_ties: int
    notes: list[str]
    lines: list[Line]


class Stability(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What holds the hot track sideways, and how crooked it lies.

    Attributes:
        lateral_resistance: Lateral resistance of the track per length.
        stiffness: Longitudinal stiffness of one rail per length.
        defect_amplitude: Line defect at its middle; 0 for none, which leaves curves without an answer.
        defect_half_length: From the middle of the defect to where it ends.
        shape: How the track beside the defect may move, see the rule.
        held: Where the rails are held along the track, see the rule.
        margin_rule: Rule of the allowed rise, see the rule.
        margin: Margin taken off the lower rise.
    """

    lateral_resistance: ForcePerLength
    stiffness: FoundationModulus | UnsetType = UNSET
    defect_amplitude: Length | UnsetType = UNSET
    defect_half_length: Length | UnsetType = UNSET
    shape: Literal["one-lobe", "three-lobes"] | UnsetType = UNSET
    held: Literal["outside", "throughout"] | UnsetType = UNSET
    margin_rule: Literal["difference", "lower-rise"] | UnsetType = UNSET
    margin: TemperatureChange | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            lateral_resistance: ForcePerLength | Measured,
            stiffness: FoundationModulus | Measured | UnsetType = UNSET,
            defect_amplitude: Length | Measured | UnsetType = UNSET,
            defect_half_length: Length | Measured | UnsetType = UNSET,
            shape: Literal["one-lobe", "three-lobes"] | UnsetType = UNSET,
            held: Literal["outside", "throughout"] | UnsetType = UNSET,
            margin_rule: Literal["difference", "lower-rise"] | UnsetType = UNSET,
            margin: TemperatureChange | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "lateral_resistance": ForcePerLength.of,
                "stiffness": FoundationModulus.of,
                "defect_amplitude": Length.of,
                "defect_half_length": Length.of,
                "margin": TemperatureChange.of,
            },
        )


class Step(Answered, frozen=True, kw_only=True):
    """One formula of one rule, with its numbers in coherent SI.

    Attributes:
        rule: Id of the rule.
        of: Part of the job it was worked for; empty for a single question.
        field: Field of the result it gives.
        formula: The formula in symbols.
        substituted: The formula with its numbers in coherent SI.
        result: What it gives, in coherent SI.
    """

    rule: str
    of: str
    field: str
    formula: str
    substituted: str
    result: str


class StockLength(Struct, frozen=True, kw_only=True, omit_defaults=True):
    """Stock rails of one length in a string.

    Attributes:
        length: Length of the rail as it comes from the mill.
        count: Rails of this length in one string. At least 1, at most 1,000.
    """

    length: Length
    count: int

    if TYPE_CHECKING:

        def __init__(self, *, length: Length | Measured, count: int) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"length": Length.of})


if TYPE_CHECKING:
    StressUnit: TypeAlias = Literal["GPa", "MPa", "Pa", "kgf_per_cm2", "ksi", "psi"]
else:
    StressUnit = str


class Stress(Quantity[StressUnit], frozen=True, gc=False):
    """A stress with its unit.

    Attributes:
        value: The number.
        unit: Unit of the stress. See `Stress.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("GPa", "MPa", "Pa", "kgf_per_cm2", "ksi", "psi")


if TYPE_CHECKING:
    StressPerTemperatureUnit: TypeAlias = Literal["MPa_per_degC", "Pa_per_K", "psi_per_degF"]
else:
    StressPerTemperatureUnit = str


class StressPerTemperature(Quantity[StressPerTemperatureUnit], frozen=True, gc=False):
    """A stress per temperature with its unit.

    Attributes:
        value: The number.
        unit: Unit of the stress per temperature. See `StressPerTemperature.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("MPa_per_degC", "Pa_per_K", "psi_per_degF")


class Stretch(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A stretch of track that is relaid.

    Attributes:
        begin: Station along the line.
        end: Station along the line.
        rails: Rails renewed; high or low only where all of the stretch lies in curves of one hand.
        ties: Where the ties stand.
        curves: Curves, in order, not overlapping; the rest is tangent. At most 1,000 items.
        left_out: Parts that the work skips, such as a turnout kept in place. At most 1,000 items.
    """

    begin: Length
    end: Length
    rails: Literal["both", "high", "left", "low", "right"]
    ties: TieSetting
    curves: Sequence[Curve] | UnsetType = UNSET
    left_out: Sequence[Span] | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            begin: Length | Measured,
            end: Length | Measured,
            rails: Literal["both", "high", "left", "low", "right"],
            ties: TieSetting,
            curves: Sequence[Curve] | UnsetType = UNSET,
            left_out: Sequence[Span] | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"begin": Length.of, "end": Length.of})


class StringLayoutAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.string-layout`: Where every string and field weld lies.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        orders: The lines with allowance, rounded up to what can be ordered.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: StringLayoutResult
    orders: list[Order]
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class StringLayoutRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.string-layout`: Where every string and field weld lies.

    Attributes:
        string: The string.
        runs: Runs of rail renewed, in any order; runs of one rail do not overlap. At most 1,000 items.
        curves: Curves, in order; there the rails are longer or shorter than the centreline. At most 1,000 items.
        rail_centres: Distance of the middles of the two rails.
        keep_outs: Where no field weld may stand. At most 1,000 items.
        field_weld: How welds are made in the field.
        thermite_gap: Gap that a thermite weld fills.
        field_consumption: Rail a flash-butt weld in the field uses up.
        minimum_piece: Shortest piece of rail that may be laid.
        stagger: Least distance of a weld from the welds and ends of the other rail.
        saw_cut: Rail a saw cut takes.
        leftover_reach: Farthest ahead of its cut that what is left of a string may be laid; left out: as far as its
            train goes.
        train_strings: Strings that one train brings: what is left of a cut one does not outlast its train; left out:
            one brings them all. At least 1, at most 100,000.
        block_ends: Ends of the work blocks, in order; or give their length. At most 1,000 items.
        block_length: Length of a work block, from the lowest station of the runs.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    string: WeldedString
    runs: Sequence[RailRun] | UnsetType = UNSET
    curves: Sequence[Curve] | UnsetType = UNSET
    rail_centres: Length | UnsetType = UNSET
    keep_outs: Sequence[KeepOut] | UnsetType = UNSET
    field_weld: Literal["flash-butt", "thermite"] | UnsetType = UNSET
    thermite_gap: Length | UnsetType = UNSET
    field_consumption: Length | UnsetType = UNSET
    minimum_piece: Length | UnsetType = UNSET
    stagger: Length | UnsetType = UNSET
    saw_cut: Length | UnsetType = UNSET
    leftover_reach: Length | UnsetType = UNSET
    train_strings: int | UnsetType = UNSET
    block_ends: Sequence[BlockEnd] | UnsetType = UNSET
    block_length: Length | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            string: WeldedString,
            runs: Sequence[RailRun] | UnsetType = UNSET,
            curves: Sequence[Curve] | UnsetType = UNSET,
            rail_centres: Length | Measured | UnsetType = UNSET,
            keep_outs: Sequence[KeepOut] | UnsetType = UNSET,
            field_weld: Literal["flash-butt", "thermite"] | UnsetType = UNSET,
            thermite_gap: Length | Measured | UnsetType = UNSET,
            field_consumption: Length | Measured | UnsetType = UNSET,
            minimum_piece: Length | Measured | UnsetType = UNSET,
            stagger: Length | Measured | UnsetType = UNSET,
            saw_cut: Length | Measured | UnsetType = UNSET,
            leftover_reach: Length | Measured | UnsetType = UNSET,
            train_strings: int | UnsetType = UNSET,
            block_ends: Sequence[BlockEnd] | UnsetType = UNSET,
            block_length: Length | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "rail_centres": Length.of,
                "thermite_gap": Length.of,
                "field_consumption": Length.of,
                "minimum_piece": Length.of,
                "stagger": Length.of,
                "saw_cut": Length.of,
                "leftover_reach": Length.of,
                "block_length": Length.of,
            },
        )


class StringLayoutResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Every piece, weld, offcut and closure.

    Attributes:
        string_length: Length of a string as made.
        string_length_laid: What can be laid of it: less drilled ends, at the rail temperature.
        strings: Strings used.
        pieces: By string number; the parts of a string in order of station.
        welds: Field welds in order of station.
        junctions: Field welds between pieces.
        closing_welds: Field welds that close runs.
        field_welds: All field welds.
        cut_pieces: Pieces that are not whole strings.
        cuts: Saw cuts.
        offcuts: What is left of strings that were cut.
        offcut_length: Rail left over.
        carried_farthest: Farthest ahead of its cut that what is left of a string is laid; left out where none is.
        least_stagger: Least distance of a weld between pieces from a weld of the other rail; left out with one rail.
        block_closures: Temporary closures, block by block.
        welds_are_fewest: Whether no layout at all has fewer field welds; false: not shown.
        strings_are_fewest: Whether these pieces cannot come out of fewer strings; false: not shown.
        lines: Temporary closures; the rest stands in quantities.rail-supply.
    """

    string_length: Length
    string_length_laid: Length
    strings: int
    pieces: list[PlacedPiece]
    welds: list[PlacedWeld]
    junctions: int
    closing_welds: int
    field_welds: int
    cut_pieces: int
    cuts: int
    offcuts: list[Offcut]
    offcut_length: Length
    carried_farthest: Length | UnsetType = UNSET
    least_stagger: Length | UnsetType = UNSET
    block_closures: list[BlockClosure]
    welds_are_fewest: bool
    strings_are_fewest: bool
    lines: list[Line]


class StringLength(Struct, frozen=True, kw_only=True, omit_defaults=True):
    """One column of the table.

    Attributes:
        length: Length of string.
    """

    length: Length

    if TYPE_CHECKING:

        def __init__(self, *, length: Length | Measured) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"length": Length.of})


class StringWay(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The sharpest place on the way of the rail train, and the racks on which it carries the strings.

    Attributes:
        clamped_at: Where along the string it is clamped to the train.
        rack_spacing: Distance of racks along the train.
        rack_offset: Distance of the outermost string from the middle of the track.
        facing_ends: Free ends that face each other in a rack: 1 against a stop, 2 string against string. At least 1, at
            most 2.
        turnout: Row of the catalogue table `turnouts` that supplies what is not given here. Not empty, at most 80
            characters.
        radius: Radius of the sharpest curve; give this, the degree, a turnout, or a turnout number.
        degree: Its degree, by 100-ft chord.
        turnout_number: Number of the frog of the sharpest turnout, where the list of turnouts has none such; the
            sharpest closure curve that a straight switch can lead to is answered for. At least 2, at most 100.
        gauge: Gauge of track.
        heel_spread: Distance of the gage lines at the heel of the switch.
        frog_toe_spread: Distance of the gage lines at the toe of the frog.
        turn_angle: Angle that the curve turns through; without it longer than the string.
        end_clearance: Clearance at the ends on tangent.
        yield_strength: Yield strength of the rail steel.
        yield_share: Share of the yield strength that hauling may use; the house's own. At least 0.01, at most 1.
    """

    clamped_at: Literal["end", "middle"]
    rack_spacing: Length
    rack_offset: Length
    facing_ends: int
    turnout: str | UnsetType = UNSET
    radius: Length | UnsetType = UNSET
    degree: Angle | UnsetType = UNSET
    turnout_number: float | UnsetType = UNSET
    gauge: Length | UnsetType = UNSET
    heel_spread: Length | UnsetType = UNSET
    frog_toe_spread: Length | UnsetType = UNSET
    turn_angle: Angle | UnsetType = UNSET
    end_clearance: Length | UnsetType = UNSET
    yield_strength: Stress | UnsetType = UNSET
    yield_share: float | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            clamped_at: Literal["end", "middle"],
            rack_spacing: Length | Measured,
            rack_offset: Length | Measured,
            facing_ends: int,
            turnout: str | UnsetType = UNSET,
            radius: Length | Measured | UnsetType = UNSET,
            degree: Angle | Measured | UnsetType = UNSET,
            turnout_number: float | UnsetType = UNSET,
            gauge: Length | Measured | UnsetType = UNSET,
            heel_spread: Length | Measured | UnsetType = UNSET,
            frog_toe_spread: Length | Measured | UnsetType = UNSET,
            turn_angle: Angle | Measured | UnsetType = UNSET,
            end_clearance: Length | Measured | UnsetType = UNSET,
            yield_strength: Stress | Measured | UnsetType = UNSET,
            yield_share: float | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "rack_spacing": Length.of,
                "rack_offset": Length.of,
                "radius": Length.of,
                "degree": Angle.of,
                "gauge": Length.of,
                "heel_spread": Length.of,
                "frog_toe_spread": Length.of,
                "turn_angle": Angle.of,
                "end_clearance": Length.of,
                "yield_strength": Stress.of,
            },
        )


class Supply(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """How the new rail is made, hauled and joined.

    Attributes:
        string: The welded string.
        tie_in: How new rail is closed to the rail that stays, at the ends of the job and of each rail renewed alone.
        fixed_tie_in: How new rail is closed to fixed objects that keep their own rail, such as turnouts.
        rail_centres: Distance of the middles of the two rails.
        field_weld: How welds are made in the field.
        thermite_gap: Gap that a thermite weld fills.
        field_consumption: Rail a flash-butt weld in the field uses up.
        minimum_piece: Shortest piece of rail that may be laid.
        stagger: Least distance of a weld from the welds and ends of the other rail.
        saw_cut: Rail a saw cut takes.
        leftover_reach: Farthest ahead of its cut that what is left of a string may be laid; left out: as far as its
            train goes.
        keep_out_distance: Kept clear of field welds before and beyond crossings and bridges.
        work_block: Length of track relaid in one occupancy; left out: no temporary closures are counted.
        joints: What a plain joint left in welded rail is made of; left out: such joints are counted and their parts are
            not.
        spare_share: Stock rails kept as spare, over those laid. At least 0, at most 1.
        rail_reject_share: Share of the stock rails that the plant rejects. At least 0, at most 0.5.
        weld_reject_share: Share of the plant welds that are cut out again. At least 0, at most 0.5.
        weld_reject_cut: Rail lost with a weld cut out.
        test_weld_share: Test welds for each weld in a string. At least 0, at most 1.
        test_weld_rail: Rail used up by a test weld.
        rack_strings: Strings that the racks of a train hold. At least 1, at most 1,000.
        train_mass_limit: Rail that a train may carry; left out: no limit.
        car_mass_limit: Rail that one car may carry; left out: no limit.
        car_spacing: Length of one car over couplers.
        extra_cars: Cars that carry no rail: threader, power, buffer. At least 0, at most 100.
        unloaded_at_once: Strings unloaded side by side. At least 1, at most 2.
        way: Sharpest place on the way of the strings; left out: their bending on the way is not checked.
    """

    string: WeldedString
    tie_in: Literal["compromise-joint", "compromise-weld", "joint", "weld"]
    fixed_tie_in: Literal["compromise-joint", "compromise-weld", "joint", "weld"]
    rail_centres: Length | UnsetType = UNSET
    field_weld: Literal["flash-butt", "thermite"] | UnsetType = UNSET
    thermite_gap: Length | UnsetType = UNSET
    field_consumption: Length | UnsetType = UNSET
    minimum_piece: Length | UnsetType = UNSET
    stagger: Length | UnsetType = UNSET
    saw_cut: Length | UnsetType = UNSET
    leftover_reach: Length | UnsetType = UNSET
    keep_out_distance: Length | UnsetType = UNSET
    work_block: Length | UnsetType = UNSET
    joints: JointSet | UnsetType = UNSET
    spare_share: float | UnsetType = UNSET
    rail_reject_share: float | UnsetType = UNSET
    weld_reject_share: float | UnsetType = UNSET
    weld_reject_cut: Length | UnsetType = UNSET
    test_weld_share: float | UnsetType = UNSET
    test_weld_rail: Length | UnsetType = UNSET
    rack_strings: int | UnsetType = UNSET
    train_mass_limit: Mass | UnsetType = UNSET
    car_mass_limit: Mass | UnsetType = UNSET
    car_spacing: Length | UnsetType = UNSET
    extra_cars: int | UnsetType = UNSET
    unloaded_at_once: int | UnsetType = UNSET
    way: StringWay | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            string: WeldedString,
            tie_in: Literal["compromise-joint", "compromise-weld", "joint", "weld"],
            fixed_tie_in: Literal["compromise-joint", "compromise-weld", "joint", "weld"],
            rail_centres: Length | Measured | UnsetType = UNSET,
            field_weld: Literal["flash-butt", "thermite"] | UnsetType = UNSET,
            thermite_gap: Length | Measured | UnsetType = UNSET,
            field_consumption: Length | Measured | UnsetType = UNSET,
            minimum_piece: Length | Measured | UnsetType = UNSET,
            stagger: Length | Measured | UnsetType = UNSET,
            saw_cut: Length | Measured | UnsetType = UNSET,
            leftover_reach: Length | Measured | UnsetType = UNSET,
            keep_out_distance: Length | Measured | UnsetType = UNSET,
            work_block: Length | Measured | UnsetType = UNSET,
            joints: JointSet | UnsetType = UNSET,
            spare_share: float | UnsetType = UNSET,
            rail_reject_share: float | UnsetType = UNSET,
            weld_reject_share: float | UnsetType = UNSET,
            weld_reject_cut: Length | Measured | UnsetType = UNSET,
            test_weld_share: float | UnsetType = UNSET,
            test_weld_rail: Length | Measured | UnsetType = UNSET,
            rack_strings: int | UnsetType = UNSET,
            train_mass_limit: Mass | Measured | UnsetType = UNSET,
            car_mass_limit: Mass | Measured | UnsetType = UNSET,
            car_spacing: Length | Measured | UnsetType = UNSET,
            extra_cars: int | UnsetType = UNSET,
            unloaded_at_once: int | UnsetType = UNSET,
            way: StringWay | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "rail_centres": Length.of,
                "thermite_gap": Length.of,
                "field_consumption": Length.of,
                "minimum_piece": Length.of,
                "stagger": Length.of,
                "saw_cut": Length.of,
                "leftover_reach": Length.of,
                "keep_out_distance": Length.of,
                "work_block": Length.of,
                "weld_reject_cut": Length.of,
                "test_weld_rail": Length.of,
                "train_mass_limit": Mass.of,
                "car_mass_limit": Mass.of,
                "car_spacing": Length.of,
            },
        )


class TableRow(Answered, frozen=True, kw_only=True):
    """Adjustment of one string length at one rail temperature.

    Attributes:
        rail_temperature: Rail temperature.
        length: Length of string.
        movement: Movement of the free end, lengthening positive.
        movement_eighths: The same to the nearest 1/8 in, in eighths of an inch.
        gap: Gap to leave, opening for the weld included.
        gap_eighths: The same to the nearest 1/8 in, in eighths of an inch.
    """

    rail_temperature: Temperature
    length: Length
    movement: Length
    movement_eighths: int
    gap: Length
    gap_eighths: int


class TableWanted(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Which temperatures and string lengths the table shall show.

    Attributes:
        coldest: Temperature of the rail.
        hottest: Temperature of the rail.
        step: Step of temperature.
        lengths: String lengths. At most 50 items.
    """

    coldest: Temperature
    hottest: Temperature
    step: TemperatureChange
    lengths: Sequence[StringLength] | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            coldest: Temperature | Measured,
            hottest: Temperature | Measured,
            step: TemperatureChange | Measured,
            lengths: Sequence[StringLength] | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"coldest": Temperature.of, "hottest": Temperature.of, "step": TemperatureChange.of})


class TakeoffAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `takeoffs`: Takeoff of a relay job.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: TakeoffResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class TakeoffLine(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """A line of an answer that tells how far it is: `progress` a few times a second while the job is worked, and in the
    last line the `answer`, or the `problem` that a rule found. Without such a last line it was cut.

    Attributes:
        progress: How far the work has come.
        answer: The answer, in the last line.
        problem: Why there is none, in the last line.
    """

    progress: Progress | UnsetType = UNSET
    answer: TakeoffAnswer | UnsetType = UNSET
    problem: Problem | UnsetType = UNSET


class TakeoffRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `takeoffs`: Takeoff of a relay job.

    Attributes:
        name: Name of the job. At most 200 characters.
        segments: Segments, in any order. Not empty, at most 20,000 items.
        supply: How the new rail is made, hauled and joined.
        temperatures: Rail temperatures that the checks rest on.
        stability: What holds the hot track sideways; left out: buckling is not checked, and no restriction temperature
            is told.
        provisions: What the job provides for and no count can tell; what is left out is not checked.
        allowances: Allowances, where not as the catalogue says. At most 200 items.
        packaging: Packages, where not as the catalogue says. At most 200 items.
        masses: Masses of items whose mass is not known otherwise, for tons and loads. At most 200 items.
        production: The user's own production; left out: work is counted and not timed.
        hauling: Trucks and cars; left out: tons by item, and no loads.
        prices: Prices; left out: the answer has no money in it.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    name: str
    segments: Sequence[Segment]
    supply: Supply
    temperatures: Temperatures
    stability: Stability | UnsetType = UNSET
    provisions: Provisions | UnsetType = UNSET
    allowances: Sequence[Allowance] | UnsetType = UNSET
    packaging: Sequence[Packaging] | UnsetType = UNSET
    masses: Sequence[ItemMass] | UnsetType = UNSET
    production: Production | UnsetType = UNSET
    hauling: Hauling | UnsetType = UNSET
    prices: Prices | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET


class TakeoffResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """The whole job, answered.

    Attributes:
        name: Name of the job.
        orders: Totals by item and product, with allowance, rounded once.
        lines: The bill, line by line.
        segments: Segments in the order given.
        rail: New rail by section and track.
        range: Desired laying temperature range.
        safety: Thermal answers by section.
        stability: Buckling of hot track by segment and curve, where the job asks for it.
        checks: Every check, failed ones first, then those that lack an input.
        work: Work of the whole job in trade order, timed where rates are given.
        hauled_in: What is ordered, by item: tons, and loads where vehicles are given.
        hauled_out: What is recovered, by item: tons, and loads where vehicles are given.
        mass_in: Mass of what is ordered, as far as it is known.
        mass_out: Mass of what is recovered, as far as it is known.
        without_mass: Items ordered or recovered whose mass is not known.
        money: Costs and credits, where prices are given.
    """

    name: str
    orders: list[Order]
    lines: list[JobLine]
    segments: list[SegmentSummary]
    rail: list[RailPlan]
    range: TemperatureRangeResult
    safety: list[SafetyPlan]
    stability: list[TrackStability]
    checks: list[JobCheck]
    work: WorkPlanResult
    hauled_in: LoadsResult
    hauled_out: LoadsResult
    mass_in: Mass
    mass_out: Mass
    without_mass: list[str]
    money: Money | UnsetType = UNSET


if TYPE_CHECKING:
    TemperatureUnit: TypeAlias = Literal["K", "degC", "degF"]
else:
    TemperatureUnit = str


class Temperature(Quantity[TemperatureUnit], frozen=True, gc=False):
    """A temperature with its unit.

    Attributes:
        value: The number.
        unit: Unit of the temperature. See `Temperature.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("K", "degC", "degF")


if TYPE_CHECKING:
    TemperatureChangeUnit: TypeAlias = Literal["delta_K", "delta_degC", "delta_degF"]
else:
    TemperatureChangeUnit = str


class TemperatureChange(Quantity[TemperatureChangeUnit], frozen=True, gc=False):
    """A temperature change with its unit.

    Attributes:
        value: The number.
        unit: Unit of the temperature change. See `TemperatureChange.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("delta_K", "delta_degC", "delta_degF")


class TemperatureRangeAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `thermal.temperature-range`: Desired laying temperature range and restriction temperature.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: TemperatureRangeResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class TemperatureRangeRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `thermal.temperature-range`: Desired laying temperature range and restriction temperature.

    Attributes:
        rule: Range rule: (2H+L)/3 + 10 to 25 °F; (H+L)/2 + 5 °C; or a house's own weight and offsets.
        hottest_rail: Hottest rail; give this or hottest air.
        coldest_rail: Coldest rail; give this or coldest air.
        hottest_air: Hottest air.
        coldest_air: Coldest air.
        rail_from_air: How hottest air gives hottest rail: a rise added, or 1.5 times the Celsius reading. Coldest rail
            is coldest air.
        rail_above_air: Rise of the hottest rail above the hottest air, for `plus`.
        house_weight: House rule: weight of the hottest temperature, the rest on the coldest. At least 0, at most 1.
        house_lower: House rule: added to the weighted temperature.
        house_upper: House rule: added to the weighted temperature.
        laid_at: Neutral temperature as laid; without it the lower end of the range.
        drift: Neutral temperature assumed lost in service.
        allowed_rise: Rise above neutral that the track in its condition may be given; without it no restriction
            temperature.
        margin: Margin kept below the allowed rise.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    rule: Literal["house", "mean-plus", "two-thirds"]
    hottest_rail: Temperature | UnsetType = UNSET
    coldest_rail: Temperature | UnsetType = UNSET
    hottest_air: Temperature | UnsetType = UNSET
    coldest_air: Temperature | UnsetType = UNSET
    rail_from_air: Literal["plus", "ratio"] | UnsetType = UNSET
    rail_above_air: TemperatureChange | UnsetType = UNSET
    house_weight: float | UnsetType = UNSET
    house_lower: TemperatureChange | UnsetType = UNSET
    house_upper: TemperatureChange | UnsetType = UNSET
    laid_at: Temperature | UnsetType = UNSET
    drift: TemperatureChange | UnsetType = UNSET
    allowed_rise: TemperatureChange | UnsetType = UNSET
    margin: TemperatureChange | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            rule: Literal["house", "mean-plus", "two-thirds"],
            hottest_rail: Temperature | Measured | UnsetType = UNSET,
            coldest_rail: Temperature | Measured | UnsetType = UNSET,
            hottest_air: Temperature | Measured | UnsetType = UNSET,
            coldest_air: Temperature | Measured | UnsetType = UNSET,
            rail_from_air: Literal["plus", "ratio"] | UnsetType = UNSET,
            rail_above_air: TemperatureChange | Measured | UnsetType = UNSET,
            house_weight: float | UnsetType = UNSET,
            house_lower: TemperatureChange | Measured | UnsetType = UNSET,
            house_upper: TemperatureChange | Measured | UnsetType = UNSET,
            laid_at: Temperature | Measured | UnsetType = UNSET,
            drift: TemperatureChange | Measured | UnsetType = UNSET,
            allowed_rise: TemperatureChange | Measured | UnsetType = UNSET,
            margin: TemperatureChange | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "hottest_rail": Temperature.of,
                "coldest_rail": Temperature.of,
                "hottest_air": Temperature.of,
                "coldest_air": Temperature.of,
                "rail_above_air": TemperatureChange.of,
                "house_lower": TemperatureChange.of,
                "house_upper": TemperatureChange.of,
                "laid_at": Temperature.of,
                "drift": TemperatureChange.of,
                "allowed_rise": TemperatureChange.of,
                "margin": TemperatureChange.of,
            },
        )


class TemperatureRangeResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """The range, and what the extremes mean for rail laid in it.

    Attributes:
        hottest: Hottest rail temperature as used.
        coldest: Coldest rail temperature as used.
        weight: Weight of the hottest temperature as used.
        lower_offset: Lower offset as used.
        upper_offset: Upper offset as used.
        lower: Lowest desired laying temperature.
        upper: Highest desired laying temperature.
        middle: Middle of the range.
        neutral_laid: Neutral temperature as laid, as used.
        neutral_drifted: Neutral temperature after the drift.
        greatest_rise: Hottest rail above the drifted neutral temperature.
        greatest_fall: Higher of the neutral temperature as laid and the upper end of the range, above the coldest rail.
        restriction: Rail temperature above which speed is restricted.
        checks: Laid in the range; hottest rail against the restriction temperature.
    """

    hottest: Temperature
    coldest: Temperature
    weight: float
    lower_offset: TemperatureChange
    upper_offset: TemperatureChange
    lower: Temperature
    upper: Temperature
    middle: Temperature
    neutral_laid: Temperature
    neutral_drifted: Temperature
    greatest_rise: TemperatureChange
    greatest_fall: TemperatureChange
    restriction: Temperature | UnsetType = UNSET
    checks: list[Check]


class Temperatures(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Rail temperatures of the place and of the work, and how the rail is held.

    Attributes:
        hottest_rail: Rail temperature.
        coldest_rail: Rail temperature.
        range_rule: Rule of the desired laying range: (2H+L)/3 + 10 to 25 °F, or (H+L)/2 + 5 °C.
        target: Neutral temperature wanted; left out: the middle of the desired range.
        laying_rail: Rail temperature expected while laying, for the adjustment; left out: none is worked out.
        drift: Neutral temperature assumed lost in service.
        elastic_modulus: Modulus of elasticity of rail steel.
        expansion: Coefficient of linear thermal expansion of rail steel.
        resistance: Longitudinal resistance of one rail per length, every tie anchored.
        anchor_slip: Force at which an anchor slips on the rail.
        joint_slip: Force that a joint at an end of welded rail holds before it slips.
        pulling_friction: Drag on one unfastened rail per length while it is pulled.
        break_gap_limit: Largest gap accepted at a break.
    """

    hottest_rail: Temperature
    coldest_rail: Temperature
    range_rule: Literal["mean-plus", "two-thirds"] | UnsetType = UNSET
    target: Temperature | UnsetType = UNSET
    laying_rail: Temperature | UnsetType = UNSET
    drift: TemperatureChange | UnsetType = UNSET
    elastic_modulus: Stress | UnsetType = UNSET
    expansion: Expansion | UnsetType = UNSET
    resistance: ForcePerLength | UnsetType = UNSET
    anchor_slip: Force | UnsetType = UNSET
    joint_slip: Force | UnsetType = UNSET
    pulling_friction: ForcePerLength | UnsetType = UNSET
    break_gap_limit: Length | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            hottest_rail: Temperature | Measured,
            coldest_rail: Temperature | Measured,
            range_rule: Literal["mean-plus", "two-thirds"] | UnsetType = UNSET,
            target: Temperature | Measured | UnsetType = UNSET,
            laying_rail: Temperature | Measured | UnsetType = UNSET,
            drift: TemperatureChange | Measured | UnsetType = UNSET,
            elastic_modulus: Stress | Measured | UnsetType = UNSET,
            expansion: Expansion | Measured | UnsetType = UNSET,
            resistance: ForcePerLength | Measured | UnsetType = UNSET,
            anchor_slip: Force | Measured | UnsetType = UNSET,
            joint_slip: Force | Measured | UnsetType = UNSET,
            pulling_friction: ForcePerLength | Measured | UnsetType = UNSET,
            break_gap_limit: Length | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "hottest_rail": Temperature.of,
                "coldest_rail": Temperature.of,
                "target": Temperature.of,
                "laying_rail": Temperature.of,
                "drift": TemperatureChange.of,
                "elastic_modulus": Stress.of,
                "expansion": Expansion.of,
                "resistance": ForcePerLength.of,
                "anchor_slip": Force.of,
                "joint_slip": Force.of,
                "pulling_friction": ForcePerLength.of,
                "break_gap_limit": Length.of,
            },
        )


class ThermalExtremes(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """How cold and hot restrained rail gets.

    Attributes:
        hottest: Hottest rail.
        coldest: Coldest rail.
        neutral_temperature: Rail neutral temperature: neither compression nor tension.
        expansion: Coefficient of linear thermal expansion of rail steel.
    """

    hottest: Temperature
    coldest: Temperature
    neutral_temperature: Temperature
    expansion: Expansion | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            hottest: Temperature | Measured,
            coldest: Temperature | Measured,
            neutral_temperature: Temperature | Measured,
            expansion: Expansion | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "hottest": Temperature.of,
                "coldest": Temperature.of,
                "neutral_temperature": Temperature.of,
                "expansion": Expansion.of,
            },
        )


class ThermalForceAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `thermal.force`: Thermal force in fully restrained rail.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: ThermalForceResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class ThermalForceRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `thermal.force`: Thermal force in fully restrained rail.

    Attributes:
        rail_temperature: Temperature of the rail.
        neutral_temperature: Rail neutral temperature: neither compression nor tension.
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        area: Cross-section of one rail.
        elastic_modulus: Modulus of elasticity of rail steel.
        expansion: Coefficient of linear thermal expansion of rail steel.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    rail_temperature: Temperature
    neutral_temperature: Temperature
    section: str | UnsetType = UNSET
    area: Area | UnsetType = UNSET
    elastic_modulus: Stress | UnsetType = UNSET
    expansion: Expansion | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            rail_temperature: Temperature | Measured,
            neutral_temperature: Temperature | Measured,
            section: str | UnsetType = UNSET,
            area: Area | Measured | UnsetType = UNSET,
            elastic_modulus: Stress | Measured | UnsetType = UNSET,
            expansion: Expansion | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "rail_temperature": Temperature.of,
                "neutral_temperature": Temperature.of,
                "area": Area.of,
                "elastic_modulus": Stress.of,
                "expansion": Expansion.of,
            },
        )


class ThermalForceResult(Answered, frozen=True, kw_only=True):
    """Force and stress of one fully restrained rail, compression positive.

    Attributes:
        temperature_change: Rail temperature minus neutral temperature.
        stress: Axial stress, compression positive.
        force: Axial force in one rail, compression positive.
        track_force: Axial force in both rails.
        force_per_degree: Force in one rail per degree.
        stress_per_degree: Stress per degree.
    """

    temperature_change: TemperatureChange
    stress: Stress
    force: Force
    track_force: Force
    force_per_degree: ForcePerTemperature
    stress_per_degree: StressPerTemperature


class TiePlatesAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.tie-plates`: Tie plates.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        orders: The lines with allowance, rounded up to what can be ordered.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: TiePlatesResult
    orders: list[Order]
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class TiePlatesRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.tie-plates`: Tie plates.

    Attributes:
        stretch: The stretch.
        tie_kind: What the ties are made of.
        reused: The plates in track are used again, and new ones replace those that are missing; left out: all are new.
        plated_share: Share of the old tie seats that have a plate. At least 0, at most 1.
        recovered_share: Share of the bars, bolts, plates, spikes and anchors that is recovered. At least 0, at most 1.
        handed: Plates differ for left and right rail; left out: one kind fits both.
        plate: Row of the catalogue table `tie-plates` that supplies what is not given here. Not empty, at most 80
            characters.
        product: Catalogue id of the plate. At most 200 characters.
        plate_mass: Mass of one plate.
        plate_rail_base_least: Narrowest rail base that the plate takes.
        plate_rail_base: Widest rail base that the plate takes.
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        rail_base: Width of the new rail's base.
        per_bundle: Plates in a bundle, as the mill ships them. More than 0, at most 100,000.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    stretch: Stretch
    tie_kind: Literal["concrete", "steel", "wood"] | UnsetType = UNSET
    reused: bool | UnsetType = UNSET
    plated_share: float | UnsetType = UNSET
    recovered_share: float | UnsetType = UNSET
    handed: bool | UnsetType = UNSET
    plate: str | UnsetType = UNSET
    product: str | UnsetType = UNSET
    plate_mass: Mass | UnsetType = UNSET
    plate_rail_base_least: Length | UnsetType = UNSET
    plate_rail_base: Length | UnsetType = UNSET
    section: str | UnsetType = UNSET
    rail_base: Length | UnsetType = UNSET
    per_bundle: float | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            stretch: Stretch,
            tie_kind: Literal["concrete", "steel", "wood"] | UnsetType = UNSET,
            reused: bool | UnsetType = UNSET,
            plated_share: float | UnsetType = UNSET,
            recovered_share: float | UnsetType = UNSET,
            handed: bool | UnsetType = UNSET,
            plate: str | UnsetType = UNSET,
            product: str | UnsetType = UNSET,
            plate_mass: Mass | Measured | UnsetType = UNSET,
            plate_rail_base_least: Length | Measured | UnsetType = UNSET,
            plate_rail_base: Length | Measured | UnsetType = UNSET,
            section: str | UnsetType = UNSET,
            rail_base: Length | Measured | UnsetType = UNSET,
            per_bundle: float | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "plate_mass": Mass.of,
                "plate_rail_base_least": Length.of,
                "plate_rail_base": Length.of,
                "rail_base": Length.of,
            },
        )


class TiePlatesResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Plates needed, by hand and by weight.

    Attributes:
        seats: Tie seats that take a plate: wood ties times renewed rails.
        plates: Plates that lie in the new track.
        plates_new: Plates to order, unrounded: all, or what the old track lacks and what is lost where its plates are
            used again.
        plates_left: Plates that lie under the left rail.
        plates_right: Plates that lie under the right rail.
        bundles: Bundles of new plates of both hands, unrounded.
        mass: Mass of the plates that lie in track.
        checks: Whether the plate takes the base of the rail.
        note: Why none is counted, where none is.
        notes: What to mind where plates are used again and some are missing.
        lines: Plates to order.
    """

    seats: int
    plates: int
    plates_new: float
    plates_left: int
    plates_right: int
    bundles: float | UnsetType = UNSET
    mass: Mass | UnsetType = UNSET
    checks: list[Check]
    note: str | UnsetType = UNSET
    notes: list[str]
    lines: list[Line]


class TiePlugsAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.tie-plugs`: Tie plugs or compound.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        orders: The lines with allowance, rounded up to what can be ordered.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: TiePlugsResult
    orders: list[Order]
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class TiePlugsRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.tie-plugs`: Tie plugs or compound.

    Attributes:
        stretch: The stretch.
        tie_kind: What the ties are made of.
        renewed_share: Share of the ties that is renewed. At least 0, at most 1.
        old_spikes_per_plate: Spikes pulled at each tie plate of the old track, on average. At least 0, at most 16.
        filling: What fills the holes.
        hole_shape: Shape of a hole: square of a cut spike, round of a screw spike or a bored one.
        hole_side: Side of a square spike hole, or diameter of a round one.
        hole_depth: Depth of a spike hole.
        compound_waste: Compound lost, as a share of what the holes take. At least 0, at most 5.
        plug: Row of the catalogue table `tie-plugs` that supplies what is not given here. Not empty, at most 80
            characters.
        product: Catalogue id of the plug. At most 200 characters.
        per_bundle: Plugs in a bundle. More than 0, at most 1000000.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    stretch: Stretch
    tie_kind: Literal["concrete", "steel", "wood"] | UnsetType = UNSET
    renewed_share: float | UnsetType = UNSET
    old_spikes_per_plate: float | UnsetType = UNSET
    filling: Literal["compound", "plugs"] | UnsetType = UNSET
    hole_shape: Literal["round", "square"] | UnsetType = UNSET
    hole_side: Length | UnsetType = UNSET
    hole_depth: Length | UnsetType = UNSET
    compound_waste: float | UnsetType = UNSET
    plug: str | UnsetType = UNSET
    product: str | UnsetType = UNSET
    per_bundle: float | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            stretch: Stretch,
            tie_kind: Literal["concrete", "steel", "wood"] | UnsetType = UNSET,
            renewed_share: float | UnsetType = UNSET,
            old_spikes_per_plate: float | UnsetType = UNSET,
            filling: Literal["compound", "plugs"] | UnsetType = UNSET,
            hole_shape: Literal["round", "square"] | UnsetType = UNSET,
            hole_side: Length | Measured | UnsetType = UNSET,
            hole_depth: Length | Measured | UnsetType = UNSET,
            compound_waste: float | UnsetType = UNSET,
            plug: str | UnsetType = UNSET,
            product: str | UnsetType = UNSET,
            per_bundle: float | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"hole_side": Length.of, "hole_depth": Length.of})


class TiePlugsResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Holes to fill and what fills them, unrounded.

    Attributes:
        seats: Tie seats that stay, at renewed rails, on wood ties.
        holes: Old spike holes to fill.
        plugs: Plugs, if plugs fill them.
        bundles: Bundles of plugs, unrounded.
        hole_volume: Volume of one hole.
        compound: Compound, if compound fills them.
        note: Why none is counted, where none is.
        lines: Plugs or compound to order.
    """

    seats: float
    holes: float
    plugs: float
    bundles: float | UnsetType = UNSET
    hole_volume: Volume
    compound: Volume
    note: str | UnsetType = UNSET
    lines: list[Line]


class TieSetting(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Where ties stand: one of a spacing, or a count per length (24 per 39 ft, 3,250 per mile).

    Attributes:
        spacing: Distance of ties, centre to centre.
        count: Ties in `per_length`. More than 0, at most 1000000.
        per_length: Length that holds `count` ties.
        origin: Station of tie number 0.
    """

    spacing: Length | UnsetType = UNSET
    count: float | UnsetType = UNSET
    per_length: Length | UnsetType = UNSET
    origin: Length | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            spacing: Length | Measured | UnsetType = UNSET,
            count: float | UnsetType = UNSET,
            per_length: Length | Measured | UnsetType = UNSET,
            origin: Length | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"spacing": Length.of, "per_length": Length.of, "origin": Length.of})


class TiesAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.ties`: Ties standing, kept and renewed.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        orders: The lines with allowance, rounded up to what can be ordered.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: TiesResult
    orders: list[Order]
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class TiesRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.ties`: Ties standing, kept and renewed.

    Attributes:
        stretch: The stretch.
        renewed_share: Share of the ties that is renewed. At least 0, at most 1.
        tie_kind: What the ties are made of, for the check of their spacing; left out: wood.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    stretch: Stretch
    renewed_share: float | UnsetType = UNSET
    tie_kind: Literal["concrete", "steel", "wood"] | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET


class TiesResult(Answered, frozen=True, kw_only=True):
    """Ties that stand, stay and are renewed.

    Attributes:
        ties: Ties that stand in the stretch.
        ties_on_curves: Ties that stand in curves.
        ties_renewed: Ties renewed, unrounded.
        ties_kept: Ties that stay, unrounded.
        spacing: Spacing as used.
        ties_per_mile: Average per mile, not rounded: 63,360 in over the spacing.
        checks: Spacing against the limits of a manual for wood ties; none on other ties.
        lines: Ties to order.
    """

    ties: int
    ties_on_curves: int
    ties_renewed: float
    ties_kept: float
    spacing: Length
    ties_per_mile: float
    checks: list[Check]
    lines: list[Line]


class Torsion(Answered, frozen=True, kw_only=True):
    """Resistance to twisting.

    Attributes:
        torsion_constant: Torsion constant.
        shear_centre: Height of the shear centre above the bottom of the base.
        shear_centre_offset: Shear centre to the right of the drawing's vertical axis; 0 for a new rail.
        relative_error: Distance of the two solutions from which the constant is extrapolated, over it; an estimate, and
            no bound.
    """

    torsion_constant: SecondMoment
    shear_centre: Length
    shear_centre_offset: Length
    relative_error: float


class TrackJointsAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `regulation.track-joints`: Joints, bolts and anchors by 49 CFR Part 213.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: TrackJointsResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class TrackJointsRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `regulation.track-joints`: Joints, bolts and anchors by 49 CFR Part 213.

    Attributes:
        rail_length: Length of the rail as welded.
        track_class: Class of track, 1 to 5; higher classes have rules of their own. Left out: what hangs on it is not
            checked. At least 1, at most 5.
        laid_as_welded_rail: Whether it was installed as continuous welded rail, which it then remains.
        joints: Bolted joints left by the job. At most 1,000 items.
        anchored_at_turnouts: Whether rail anchors stand through and on each side of every turnout and track crossing.
        laid_at: Rail temperature at which rail was added.
        range_lower: Lowest desired laying temperature.
        later_adjustment: Whether later adjustment of rail laid cold is provided for.
        plan_in_force: Whether a welded rail plan is filed and in force.
        record_kept: How long laying temperature, place and date are kept on record.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    rail_length: Length
    track_class: int | UnsetType = UNSET
    laid_as_welded_rail: bool | UnsetType = UNSET
    joints: Sequence[Joint] | UnsetType = UNSET
    anchored_at_turnouts: bool | UnsetType = UNSET
    laid_at: Temperature | UnsetType = UNSET
    range_lower: Temperature | UnsetType = UNSET
    later_adjustment: bool | UnsetType = UNSET
    plan_in_force: bool | UnsetType = UNSET
    record_kept: Duration | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            rail_length: Length | Measured,
            track_class: int | UnsetType = UNSET,
            laid_as_welded_rail: bool | UnsetType = UNSET,
            joints: Sequence[Joint] | UnsetType = UNSET,
            anchored_at_turnouts: bool | UnsetType = UNSET,
            laid_at: Temperature | Measured | UnsetType = UNSET,
            range_lower: Temperature | Measured | UnsetType = UNSET,
            later_adjustment: bool | UnsetType = UNSET,
            plan_in_force: bool | UnsetType = UNSET,
            record_kept: Duration | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "rail_length": Length.of,
                "laid_at": Temperature.of,
                "range_lower": Temperature.of,
                "record_kept": Duration.of,
            },
        )


class TrackJointsResult(Answered, frozen=True, kw_only=True):
    """The checks, section by section.

    Attributes:
        continuous_welded_rail: Whether the rules for continuous welded rail hold.
        failed: Checks that fail.
        not_checked: Checks that lack an input.
        checks: The checks.
    """

    continuous_welded_rail: bool
    failed: int
    not_checked: int
    checks: list[Check]


class TrackStability(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """The straight track, or the curves of one radius, of a segment when the rail is at its hottest.

    Attributes:
        of: Segment.
        radius: Radius of the curves; left out: straight track.
        radius_used: Radius answered for, where a job has so many that a curve is given the next sharper one.
        length: Length of such track in the segment.
        lower_rise: Lowest rise above neutral at which it can stand buckled.
        upper_rise: Rise at which it snaps by itself, with the line defect.
        allowed_rise: Rise that the margin rule allows.
        allowed_temperature: Rail temperature at that rise.
        allowed_by: Branch of the margin rule, or why there is no allowed rise.
        verdict: Hottest rail, neutral temperature drifted, against the allowed rise. One of `fails`, `not-checked`,
            `passes`, or a later addition.
    """

    of: str
    radius: Length | UnsetType = UNSET
    radius_used: Length | UnsetType = UNSET
    length: Length
    lower_rise: TemperatureChange | UnsetType = UNSET
    upper_rise: TemperatureChange | UnsetType = UNSET
    allowed_rise: TemperatureChange | UnsetType = UNSET
    allowed_temperature: Temperature | UnsetType = UNSET
    allowed_by: str
    verdict: str


class TrainLoad(Answered, frozen=True, kw_only=True):
    """One train.

    Attributes:
        train: Number of the train.
        first_string: First string off it.
        last_string: Last string off it.
        strings: Strings on it.
        unloadings: Times that strings are drawn off, side by side.
        mass: Rail on it.
    """

    train: int
    first_string: int
    last_string: int
    strings: int
    unloadings: int
    mass: Mass


class TrainLoadsAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.train-loads`: Rail trains and what each brings.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        orders: The lines with allowance, rounded up to what can be ordered.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: TrainLoadsResult
    orders: list[Order]
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class TrainLoadsRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.train-loads`: Rail trains and what each brings.

    Attributes:
        strings: Strings to haul. At least 1, at most 100,000.
        string_length: Length of a string as made.
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        mass_per_length: Mass of the rail per length.
        rack_strings: Strings that the racks of a train hold. At least 1, at most 1,000.
        train_mass_limit: Rail that a train may carry; left out: no limit.
        car_mass_limit: Rail that one car may carry; left out: no limit.
        car_spacing: Length of one car over couplers.
        extra_cars: Cars that carry no rail: threader, power, buffer. At least 0, at most 100.
        unloaded_at_once: Strings unloaded side by side. At least 1, at most 2.
        expansion: Coefficient of linear thermal expansion.
        temperature_change: Change of rail temperature on the way.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    strings: int
    string_length: Length
    section: str | UnsetType = UNSET
    mass_per_length: MassPerLength | UnsetType = UNSET
    rack_strings: int | UnsetType = UNSET
    train_mass_limit: Mass | UnsetType = UNSET
    car_mass_limit: Mass | UnsetType = UNSET
    car_spacing: Length | UnsetType = UNSET
    extra_cars: int | UnsetType = UNSET
    unloaded_at_once: int | UnsetType = UNSET
    expansion: Expansion | UnsetType = UNSET
    temperature_change: TemperatureChange | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            strings: int,
            string_length: Length | Measured,
            section: str | UnsetType = UNSET,
            mass_per_length: MassPerLength | Measured | UnsetType = UNSET,
            rack_strings: int | UnsetType = UNSET,
            train_mass_limit: Mass | Measured | UnsetType = UNSET,
            car_mass_limit: Mass | Measured | UnsetType = UNSET,
            car_spacing: Length | Measured | UnsetType = UNSET,
            extra_cars: int | UnsetType = UNSET,
            unloaded_at_once: int | UnsetType = UNSET,
            expansion: Expansion | Measured | UnsetType = UNSET,
            temperature_change: TemperatureChange | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "string_length": Length.of,
                "mass_per_length": MassPerLength.of,
                "train_mass_limit": Mass.of,
                "car_mass_limit": Mass.of,
                "car_spacing": Length.of,
                "expansion": Expansion.of,
                "temperature_change": TemperatureChange.of,
            },
        )


class TrainLoadsResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Capacity, cars and trains.

    Attributes:
        string_mass: Mass of one string.
        rail_cars: Cars that a string lies on.
        cars_per_train: With those that carry no rail.
        strings_by_train_mass: Strings within the mass of a train; left out without a limit.
        strings_by_car_mass: Strings within the mass of a car; left out without a limit.
        governing: What limits the load. One of `car-mass`, `rack`, `train-mass`, or a later addition.
        strings_per_train: Strings on a full train, a multiple of those unloaded side by side.
        trains: Trains.
        partial_trains: Trains that are not full: 0 or 1.
        mass: All the rail.
        car_mass: Rail on each car of a full train.
        anchored_at: Where a string is clamped, from its end: the middle.
        end_movement: What each end moves on its rack; left out without a temperature change.
        loads: The trains in order; strings come off in the order of their numbers.
        lines: Trains, and cars of all of them.
    """

    string_mass: Mass
    rail_cars: int
    cars_per_train: int
    strings_by_train_mass: int | UnsetType = UNSET
    strings_by_car_mass: int | UnsetType = UNSET
    governing: str
    strings_per_train: int
    trains: int
    partial_trains: int
    mass: Mass
    car_mass: Mass
    anchored_at: Length
    end_movement: Length | UnsetType = UNSET
    loads: list[TrainLoad]
    lines: list[Line]


class TurnoutRadiusAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `strength.turnout-radius`: Radius of a turnout by its number.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: TurnoutRadiusResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class TurnoutRadiusRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `strength.turnout-radius`: Radius of a turnout by its number.

    Attributes:
        turnout_number: Number of the frog. At least 2, at most 100.
        gauge: Gauge of track.
        heel_spread: Distance of the gage lines at the heel of the switch.
        frog_toe_spread: Distance of the gage lines at the toe of the frog.
        switch_point_length: Length of the straight switch point; left out: the switch is taken not to turn at all,
            which is the sharpest case.
        point_thickness: Thickness of the switch point at its tip.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    turnout_number: float
    gauge: Length | UnsetType = UNSET
    heel_spread: Length | UnsetType = UNSET
    frog_toe_spread: Length | UnsetType = UNSET
    switch_point_length: Length | UnsetType = UNSET
    point_thickness: Length | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            turnout_number: float,
            gauge: Length | Measured | UnsetType = UNSET,
            heel_spread: Length | Measured | UnsetType = UNSET,
            frog_toe_spread: Length | Measured | UnsetType = UNSET,
            switch_point_length: Length | Measured | UnsetType = UNSET,
            point_thickness: Length | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "gauge": Length.of,
                "heel_spread": Length.of,
                "frog_toe_spread": Length.of,
                "switch_point_length": Length.of,
                "point_thickness": Length.of,
            },
        )


class TurnoutRadiusResult(Answered, frozen=True, kw_only=True):
    """The radius to go by, and those it is held against.

    Attributes:
        frog_angle: Angle of the frog.
        switch_sine: Sine of the angle of the switch; 0 where its length is left out.
        closure_rail_radius: Radius of the curved closure rail between switch and frog.
        radius: Radius to go by: that of the closure curve, middle of the track.
        lead_radius: Radius of a turnout that curves all the way from stock rail to frog, middle of the track: wider
            than a turnout with straight switch and frog has, so not on the safe side for one.
    """

    frog_angle: Angle
    switch_sine: float
    closure_rail_radius: Length
    radius: Length
    lead_radius: Length


class UnderWheel(Answered, frozen=True, kw_only=True):
    """What is found under one wheel.

    Attributes:
        position: Position along the rail.
        deflection: Deflection.
        moment: Moment, base in tension positive.
    """

    position: Length
    deflection: Length
    moment: Moment


class Vehicle(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A kind of truck or car.

    Attributes:
        name: What it is called, such as `truck` or `gondola`. At most 200 characters.
        capacity: What one carries.
        items: Items that it carries; left out: all of them. At most 200 items.
    """

    name: str
    capacity: Mass
    items: Sequence[str] | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            name: str,
            capacity: Mass | Measured,
            items: Sequence[str] | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"capacity": Mass.of})


class VehicleLoads(Answered, frozen=True, kw_only=True):
    """The loads of one kind of vehicle.

    Attributes:
        vehicle: Kind of vehicle.
        exact: Mass over what one carries, not rounded.
        loads: Loads, rounded up.
    """

    vehicle: str
    exact: float
    loads: int


class Versions(Answered, frozen=True, kw_only=True):
    """What answered: the same request with the same versions gives the same bytes.

    Attributes:
        service: Version of the service.
        catalogue: Version and digest of the catalogue.
        rulebook: Rulebook in force, with its edition.
    """

    service: str
    catalogue: str
    rulebook: str


class VerticalBendingAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `strength.vertical-bending`: Bending of rail under wheels.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: VerticalBendingResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class VerticalBendingRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `strength.vertical-bending`: Bending of rail under wheels.

    Attributes:
        speed_rule: Speed factor: none; 1 + 33 V / (100 D), mph and in; 1 + V / 100, km/h; or given.
        tie_spacing: Distance of ties, centre to centre.
        elastic_modulus: Modulus of elasticity of rail steel.
        section: Row of the catalogue table `rail-sections` that supplies what is not given here. Not empty, at most 80
            characters.
        second_moment: Second moment of the rail about its level axis.
        section_modulus_base: Section modulus of the base.
        section_modulus_head: Section modulus of the head.
        track_modulus: Track modulus of one rail; give this or the condition.
        condition: Condition of the track, for a modulus of 1,000, 2,000 or 3,000 psi (the first two from memory).
        wheels: Wheels on the rail. At most 50 items.
        speed: Speed.
        wheel_diameter: Diameter of wheel.
        speed_factor: Speed factor, given. At least 1, at most 10.
        tie_section: Wood tie, depth and width in inches, for tie bending and ballast pressure.
        tie_bending_limit: Bending stress allowed in a wood tie.
        ballast_pressure_limit: Pressure allowed on the ballast.
        yield_strength: Stress at which the rail steel yields.
        thermal_stress: Thermal tension set aside; 0 for jointed rail.
        lateral_share: Share for bending sideways. At least 0, at most 2.
        condition_share: Share for track condition. At least 0, at most 2.
        wear_share: Share for wear and corrosion. At least 0, at most 2.
        unbalance_share: Share for unbalanced elevation. At least 0, at most 2.
        other: A second section to set against the first.
        worn: The rail as it is now, by its wear: its outline then gives second moment and moduli in place of those
            given.
        thermal: Rail temperatures, for the stresses that act together with bending; left out: not checked.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    speed_rule: Literal["given", "hundredth", "none", "speed-over-diameter"]
    tie_spacing: Length
    elastic_modulus: Stress | UnsetType = UNSET
    section: str | UnsetType = UNSET
    second_moment: SecondMoment | UnsetType = UNSET
    section_modulus_base: SectionModulus | UnsetType = UNSET
    section_modulus_head: SectionModulus | UnsetType = UNSET
    track_modulus: FoundationModulus | UnsetType = UNSET
    condition: Literal["average", "good", "poor"] | UnsetType = UNSET
    wheels: Sequence[Wheel] | UnsetType = UNSET
    speed: Speed | UnsetType = UNSET
    wheel_diameter: Length | UnsetType = UNSET
    speed_factor: float | UnsetType = UNSET
    tie_section: Literal["6x8", "7x9"] | UnsetType = UNSET
    tie_bending_limit: Stress | UnsetType = UNSET
    ballast_pressure_limit: Stress | UnsetType = UNSET
    yield_strength: Stress | UnsetType = UNSET
    thermal_stress: Stress | UnsetType = UNSET
    lateral_share: float | UnsetType = UNSET
    condition_share: float | UnsetType = UNSET
    wear_share: float | UnsetType = UNSET
    unbalance_share: float | UnsetType = UNSET
    other: BendingSection | UnsetType = UNSET
    worn: SectionShape | UnsetType = UNSET
    thermal: ThermalExtremes | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            speed_rule: Literal["given", "hundredth", "none", "speed-over-diameter"],
            tie_spacing: Length | Measured,
            elastic_modulus: Stress | Measured | UnsetType = UNSET,
            section: str | UnsetType = UNSET,
            second_moment: SecondMoment | Measured | UnsetType = UNSET,
            section_modulus_base: SectionModulus | Measured | UnsetType = UNSET,
            section_modulus_head: SectionModulus | Measured | UnsetType = UNSET,
            track_modulus: FoundationModulus | Measured | UnsetType = UNSET,
            condition: Literal["average", "good", "poor"] | UnsetType = UNSET,
            wheels: Sequence[Wheel] | UnsetType = UNSET,
            speed: Speed | Measured | UnsetType = UNSET,
            wheel_diameter: Length | Measured | UnsetType = UNSET,
            speed_factor: float | UnsetType = UNSET,
            tie_section: Literal["6x8", "7x9"] | UnsetType = UNSET,
            tie_bending_limit: Stress | Measured | UnsetType = UNSET,
            ballast_pressure_limit: Stress | Measured | UnsetType = UNSET,
            yield_strength: Stress | Measured | UnsetType = UNSET,
            thermal_stress: Stress | Measured | UnsetType = UNSET,
            lateral_share: float | UnsetType = UNSET,
            condition_share: float | UnsetType = UNSET,
            wear_share: float | UnsetType = UNSET,
            unbalance_share: float | UnsetType = UNSET,
            other: BendingSection | UnsetType = UNSET,
            worn: SectionShape | UnsetType = UNSET,
            thermal: ThermalExtremes | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "tie_spacing": Length.of,
                "elastic_modulus": Stress.of,
                "second_moment": SecondMoment.of,
                "section_modulus_base": SectionModulus.of,
                "section_modulus_head": SectionModulus.of,
                "track_modulus": FoundationModulus.of,
                "speed": Speed.of,
                "wheel_diameter": Length.of,
                "tie_bending_limit": Stress.of,
                "ballast_pressure_limit": Stress.of,
                "yield_strength": Stress.of,
                "thermal_stress": Stress.of,
            },
        )


class VerticalBendingResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Largest values with the speed factor in them, and the allowable stress.

    Attributes:
        section_from: Where second moment and moduli as used come from. One of `as-given`, `worn-outline`, or a later
            addition.
        second_moment_used: Second moment as used.
        modulus_base_used: Section modulus of the base as used.
        modulus_head_used: Section modulus of the head as used.
        track_modulus: Track modulus as used.
        speed_factor: Speed factor as used.
        wave_number: b = (u / (4 E I))^(1/4).
        first_zero: Distance from a single wheel at which the moment vanishes.
        deflection: Largest deflection.
        uplift: Largest lift above the place at rest, if the bed could pull.
        moment: Largest moment, base in tension.
        reverse_moment: Largest moment, head in tension.
        static_base_stress: Tension in the base without speed factor.
        base_stress: Largest tension in the base.
        head_stress: Compression in the head at the same place.
        seat_load: Largest rail-seat load.
        tie_stress: Bending stress of the tie.
        ballast_pressure: Pressure on the ballast under the tie.
        allowable_stress: Tension in the base that is allowed.
        wheels: Deflection and moment under each wheel, in the order given.
        other: The second section.
        combined: Bending and thermal stress together, where temperatures are given.
        checks: Base stress, tie bending, ballast pressure, bending and thermal stress together.
    """

    section_from: str
    second_moment_used: SecondMoment
    modulus_base_used: SectionModulus
    modulus_head_used: SectionModulus
    track_modulus: FoundationModulus
    speed_factor: float
    wave_number: Curvature
    first_zero: Length
    deflection: Length
    uplift: Length
    moment: Moment
    reverse_moment: Moment
    static_base_stress: Stress
    base_stress: Stress
    head_stress: Stress
    seat_load: Force
    tie_stress: Stress | UnsetType = UNSET
    ballast_pressure: Stress | UnsetType = UNSET
    allowable_stress: Stress
    wheels: list[UnderWheel]
    other: OtherSection | UnsetType = UNSET
    combined: list[CombinedStress]
    checks: list[Check]


if TYPE_CHECKING:
    VolumeUnit: TypeAlias = Literal["ft3", "gal", "in3", "l", "m3", "yd3"]
else:
    VolumeUnit = str


class Volume(Quantity[VolumeUnit], frozen=True, gc=False):
    """A volume with its unit.

    Attributes:
        value: The number.
        unit: Unit of the volume. See `Volume.codes`.
    """

    codes: ClassVar[tuple[str, ...]] = ("ft3", "gal", "in3", "l", "m3", "yd3")


class WearLoss(Answered, frozen=True, kw_only=True):
    """What wear has taken, and the shares that are left.

    Attributes:
        area_lost: New less worn area.
        head_area_lost_share: The same over the area of the new head.
        mass_lost_per_length: Mass lost per length.
        height_lost: New less worn height.
        area_left_share: Worn over new area.
        second_moment_left_share: Worn over new second moment about the horizontal axis.
        second_moment_lateral_left_share: Worn over new second moment about the vertical axis.
        section_modulus_head_left_share: Worn over new section modulus at the top of the head.
        section_modulus_base_left_share: Worn over new section modulus at the bottom of the base.
    """

    area_lost: Area
    head_area_lost_share: float
    mass_lost_per_length: MassPerLength
    height_lost: Length
    area_left_share: float
    second_moment_left_share: float
    second_moment_lateral_left_share: float
    section_modulus_head_left_share: float
    section_modulus_base_left_share: float


class WebArc(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One arc of a web face, from the web's thinnest place outwards to the fishing plane.

    Attributes:
        radius: Radius.
        centre_height: Height of its centre above the bottom of the base; left out for the last one, the fillet that
            touches the fishing plane, because tangency settles it.
    """

    radius: Length
    centre_height: Length | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            radius: Length | Measured,
            centre_height: Length | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"radius": Length.of, "centre_height": Length.of})


class WebArcUsed(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """One arc of a web face, from the web's thinnest place outwards to the fishing plane.

    Attributes:
        radius: Radius.
        centre_height: Height of its centre above the bottom of the base; left out for the last one, the fillet that
            touches the fishing plane, because tangency settles it.
    """

    radius: Length
    centre_height: Length | UnsetType = UNSET


class WeldedString(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """How a string is made at the plant, and what of it can be laid.

    Attributes:
        stock: Stock rails of one string, in one length or several. At most 20 items.
        process: How the plant welds.
        flash_butt_consumption: Rail a flash-butt weld uses up, both ends together.
        gas_pressure_consumption: Rail a gas-pressure weld uses up: its upset.
        end_trim: Cut off each end of the finished string.
        drilled_ends: Ends of each string drilled for temporary joints. At least 0, at most 2.
        drilled_end_cut: Cut off a drilled end before it is welded.
        made_temperature: Rail temperature; give both temperatures or neither.
        rail_temperature: Rail temperature; give both temperatures or neither.
        expansion: Coefficient of linear thermal expansion.
    """

    stock: Sequence[StockLength] | UnsetType = UNSET
    process: Literal["flash-butt", "gas-pressure"] | UnsetType = UNSET
    flash_butt_consumption: Length | UnsetType = UNSET
    gas_pressure_consumption: Length | UnsetType = UNSET
    end_trim: Length | UnsetType = UNSET
    drilled_ends: int | UnsetType = UNSET
    drilled_end_cut: Length | UnsetType = UNSET
    made_temperature: Temperature | UnsetType = UNSET
    rail_temperature: Temperature | UnsetType = UNSET
    expansion: Expansion | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            stock: Sequence[StockLength] | UnsetType = UNSET,
            process: Literal["flash-butt", "gas-pressure"] | UnsetType = UNSET,
            flash_butt_consumption: Length | Measured | UnsetType = UNSET,
            gas_pressure_consumption: Length | Measured | UnsetType = UNSET,
            end_trim: Length | Measured | UnsetType = UNSET,
            drilled_ends: int | UnsetType = UNSET,
            drilled_end_cut: Length | Measured | UnsetType = UNSET,
            made_temperature: Temperature | Measured | UnsetType = UNSET,
            rail_temperature: Temperature | Measured | UnsetType = UNSET,
            expansion: Expansion | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "flash_butt_consumption": Length.of,
                "gas_pressure_consumption": Length.of,
                "end_trim": Length.of,
                "drilled_end_cut": Length.of,
                "made_temperature": Temperature.of,
                "rail_temperature": Temperature.of,
                "expansion": Expansion.of,
            },
        )


class Wheel(Struct, frozen=True, kw_only=True, omit_defaults=True):
    """One wheel on the rail.

    Attributes:
        position: Position along the rail.
        load: Static load on the rail.
    """

    position: Length
    load: Force

    if TYPE_CHECKING:

        def __init__(self, *, position: Length | Measured, load: Force | Measured) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"position": Length.of, "load": Force.of})


class WorkAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.work-per-tie`: Work per tie and per mile.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        orders: The lines with allowance, rounded up to what can be ordered.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: WorkResult
    orders: list[Order]
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class WorkPlanAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `quantities.work-plan`: Work plan of a rail gang.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: WorkPlanResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class WorkPlanRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.work-plan`: Work plan of a rail gang.

    Attributes:
        ties: Ties that stand in it. At least 0, at most 1000000000.
        length: Length of track worked on.
        rates: Production rates, at most one an operation. At most 15 items.
        working_day: Time worked in a day.
        occupancy: Length of one track occupancy.
        occupancy_lost: Of it, lost to setting up and clearing; left out: nothing.
        amounts: Operations and how much there is of each; each at most once. At most 15 items.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    ties: int
    length: Length
    rates: Sequence[ProductionRate] | UnsetType = UNSET
    working_day: Duration | UnsetType = UNSET
    occupancy: Duration | UnsetType = UNSET
    occupancy_lost: Duration | UnsetType = UNSET
    amounts: Sequence[OperationAmount] | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            ties: int,
            length: Length | Measured,
            rates: Sequence[ProductionRate] | UnsetType = UNSET,
            working_day: Duration | Measured | UnsetType = UNSET,
            occupancy: Duration | Measured | UnsetType = UNSET,
            occupancy_lost: Duration | Measured | UnsetType = UNSET,
            amounts: Sequence[OperationAmount] | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "length": Length.of,
                "working_day": Duration.of,
                "occupancy": Duration.of,
                "occupancy_lost": Duration.of,
            },
        )


class WorkPlanResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Operations in trade order, and which of them sets the pace.

    Attributes:
        ties: Ties that stand in the track.
        operations: Operations in trade order.
        crew_time: Time of all crews of operations with a rate together.
        governing: Operation that takes longest and sets the gang's pace, of those with a rate.
        time: Time of the gang at that pace.
        days: Working days at that pace, unrounded.
        occupancies: Track occupancies at that pace, rounded up.
        without_rate: Operations that have work and no rate: any of them may be slower.
    """

    ties: int
    operations: list[Operation]
    crew_time: Duration | UnsetType = UNSET
    governing: str | UnsetType = UNSET
    time: Duration | UnsetType = UNSET
    days: float | UnsetType = UNSET
    occupancies: float | UnsetType = UNSET
    without_rate: list[str]


class WorkRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `quantities.work-per-tie`: Work per tie and per mile.

    Attributes:
        stretch: The stretch.
        rates: Production rates, at most one an operation. At most 15 items.
        working_day: Time worked in a day.
        occupancy: Length of one track occupancy.
        occupancy_lost: Of it, lost to setting up and clearing; left out: nothing.
        tie_kind: What the ties are made of.
        renewed_share: Share of the ties that is renewed. At least 0, at most 1.
        old_spikes_per_plate: Spikes pulled at each tie plate of the old track, on average. At least 0, at most 16.
        plated_share: Share of the old tie seats that have a plate. At least 0, at most 1.
        broken_share: Share of the old spikes that break and leave a stub. At least 0, at most 1.
        old_anchor_pattern: Row of the catalogue table `anchor-patterns` that supplies what is not given here. Not
            empty, at most 80 characters.
        old_anchors: Anchors of the old track; left out: none.
        old_rail_length: Length of one rail where the new track is jointed; left out: it has no joints.
        spike_pattern: Row of the catalogue table `spike-patterns` that supplies what is not given here. Not empty, at
            most 80 characters.
        pattern: Spikes per plate of the new track.
        track_class: Class of track, where the spike pattern goes by it; left out: it does not. At least 1, at most 9.
        joint_rail_length: Length of one rail where the new track is jointed; left out: it has no joints.
        bored_share: Share of the spikes in ties that stay for which a hole is bored. At least 0, at most 1.
        anchor_pattern: Row of the catalogue table `anchor-patterns` that supplies what is not given here. Not empty, at
            most 80 characters.
        anchors: Anchors that plain track carries.
        zones: Where anchoring is otherwise. At most 1,000 items.
        elastic_fasteners: The fastenings hold the rail lengthwise; left out: they do not.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    stretch: Stretch
    rates: Sequence[ProductionRate] | UnsetType = UNSET
    working_day: Duration | UnsetType = UNSET
    occupancy: Duration | UnsetType = UNSET
    occupancy_lost: Duration | UnsetType = UNSET
    tie_kind: Literal["concrete", "steel", "wood"] | UnsetType = UNSET
    renewed_share: float | UnsetType = UNSET
    old_spikes_per_plate: float | UnsetType = UNSET
    plated_share: float | UnsetType = UNSET
    broken_share: float | UnsetType = UNSET
    old_anchor_pattern: str | UnsetType = UNSET
    old_anchors: AnchorPattern | UnsetType = UNSET
    old_rail_length: Length | UnsetType = UNSET
    spike_pattern: str | UnsetType = UNSET
    pattern: SpikePattern | UnsetType = UNSET
    track_class: int | UnsetType = UNSET
    joint_rail_length: Length | UnsetType = UNSET
    bored_share: float | UnsetType = UNSET
    anchor_pattern: str | UnsetType = UNSET
    anchors: AnchorPattern | UnsetType = UNSET
    zones: Sequence[AnchorZone] | UnsetType = UNSET
    elastic_fasteners: bool | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            stretch: Stretch,
            rates: Sequence[ProductionRate] | UnsetType = UNSET,
            working_day: Duration | Measured | UnsetType = UNSET,
            occupancy: Duration | Measured | UnsetType = UNSET,
            occupancy_lost: Duration | Measured | UnsetType = UNSET,
            tie_kind: Literal["concrete", "steel", "wood"] | UnsetType = UNSET,
            renewed_share: float | UnsetType = UNSET,
            old_spikes_per_plate: float | UnsetType = UNSET,
            plated_share: float | UnsetType = UNSET,
            broken_share: float | UnsetType = UNSET,
            old_anchor_pattern: str | UnsetType = UNSET,
            old_anchors: AnchorPattern | UnsetType = UNSET,
            old_rail_length: Length | Measured | UnsetType = UNSET,
            spike_pattern: str | UnsetType = UNSET,
            pattern: SpikePattern | UnsetType = UNSET,
            track_class: int | UnsetType = UNSET,
            joint_rail_length: Length | Measured | UnsetType = UNSET,
            bored_share: float | UnsetType = UNSET,
            anchor_pattern: str | UnsetType = UNSET,
            anchors: AnchorPattern | UnsetType = UNSET,
            zones: Sequence[AnchorZone] | UnsetType = UNSET,
            elastic_fasteners: bool | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "working_day": Duration.of,
                "occupancy": Duration.of,
                "occupancy_lost": Duration.of,
                "old_rail_length": Length.of,
                "joint_rail_length": Length.of,
            },
        )


class WorkResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Operations on a stretch in trade order, and which of them sets the pace.

    Attributes:
        ties: Ties that stand in the track.
        operations: Operations in trade order.
        crew_time: Time of all crews of operations with a rate together.
        governing: Operation that takes longest and sets the gang's pace, of those with a rate.
        time: Time of the gang at that pace.
        days: Working days at that pace, unrounded.
        occupancies: Track occupancies at that pace, rounded up.
        without_rate: Operations that have work and no rate: any of them may be slower.
        lines: Nothing to order; empty.
    """

    ties: int
    operations: list[Operation]
    crew_time: Duration | UnsetType = UNSET
    governing: str | UnsetType = UNSET
    time: Duration | UnsetType = UNSET
    days: float | UnsetType = UNSET
    occupancies: float | UnsetType = UNSET
    without_rate: list[str]
    lines: list[Line]


class WornFace(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Wear of one face of the head, measured on the new section.

    Attributes:
        side: The worn side, as drawn.
        amount: Horizontal loss at the gage line; 0 for none.
        angle: Lean of the worn face from the vertical, towards the middle of the head going up.
        gage_depth: Depth of the gage line below the top of the new rail.
    """

    side: Literal["left", "right"]
    amount: Length
    angle: Angle
    gage_depth: Length | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            side: Literal["left", "right"],
            amount: Length | Measured,
            angle: Angle | Measured,
            gage_depth: Length | Measured | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"amount": Length.of, "angle": Angle.of, "gage_depth": Length.of})


class WornRailAnswer(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Answer of the rule `thermal.worn-rail`: Thermal force in worn rail.

    Attributes:
        rule: Id of the rule that answered.
        title: What it answers.
        result: The answer.
        assumptions: Defaults and catalogue values used.
        cautions: What a user of the answer must know.
        sources: Where the rule comes from.
        versions: What answered.
        explanation: Formulas with their numbers.
    """

    rule: str
    title: str
    result: WornRailResult
    assumptions: list[Assumption]
    cautions: list[CautionNote]
    sources: list[Citation]
    versions: Versions
    explanation: list[Step] | UnsetType = UNSET


class WornRailRequest(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Question to the rule `thermal.worn-rail`: Thermal force in worn rail.

    Attributes:
        rail_temperature: Temperature of the rail.
        neutral_temperature: Rail neutral temperature: neither compression nor tension.
        section: Row of the catalogue table `rail-profiles` that supplies what is not given here. Not empty, at most 80
            characters.
        profile: Measures of the new section; left out: the outline alone.
        outline: Measured points of the whole section, counter-clockwise, the first not repeated: the section as it is
            now, or a section that has no drawing. At most 2,000 items.
        vertical_wear: Depth of vertical head wear.
        face_wear: Wear of the faces of the head, at most one a side. At most 2 items.
        measured_head: Measured points over the worn head, from right to left, in place of amounts of wear. At most
            2,000 items.
        measuring_tolerance: Accuracy of measured points.
        elastic_modulus: Modulus of elasticity of rail steel.
        expansion: Coefficient of linear thermal expansion of rail steel.
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
        document: Title block of a sheet.
    """

    rail_temperature: Temperature
    neutral_temperature: Temperature
    section: str | UnsetType = UNSET
    profile: ProfileParameters | UnsetType = UNSET
    outline: Sequence[SectionPoint] | UnsetType = UNSET
    vertical_wear: Length | UnsetType = UNSET
    face_wear: Sequence[WornFace] | UnsetType = UNSET
    measured_head: Sequence[SectionPoint] | UnsetType = UNSET
    measuring_tolerance: Length | UnsetType = UNSET
    elastic_modulus: Stress | UnsetType = UNSET
    expansion: Expansion | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET
    document: Document | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            rail_temperature: Temperature | Measured,
            neutral_temperature: Temperature | Measured,
            section: str | UnsetType = UNSET,
            profile: ProfileParameters | UnsetType = UNSET,
            outline: Sequence[SectionPoint] | UnsetType = UNSET,
            vertical_wear: Length | Measured | UnsetType = UNSET,
            face_wear: Sequence[WornFace] | UnsetType = UNSET,
            measured_head: Sequence[SectionPoint] | UnsetType = UNSET,
            measuring_tolerance: Length | Measured | UnsetType = UNSET,
            elastic_modulus: Stress | Measured | UnsetType = UNSET,
            expansion: Expansion | Measured | UnsetType = UNSET,
            units: Literal["si", "us"] | UnsetType = UNSET,
            explain: bool | UnsetType = UNSET,
            rulebook: RulebookChoice | UnsetType = UNSET,
            document: Document | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(
            self,
            {
                "rail_temperature": Temperature.of,
                "neutral_temperature": Temperature.of,
                "vertical_wear": Length.of,
                "measuring_tolerance": Length.of,
                "elastic_modulus": Stress.of,
                "expansion": Expansion.of,
            },
        )


class WornRailResult(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Force and stress of one restrained rail as it is now, and of the new one beside it; compression positive.

    Attributes:
        section_from: What the section as it is now was made from. One of `measured-head`, `measured-outline`,
            `new-section`, `new-section-less-wear`, or a later addition.
        area: Cross-section as it is now.
        area_new: Cross-section of the new rail, from its drawing; left out where only points are given.
        area_left_share: Worn over new area: so much of the new rail's thermal force is left.
        second_moment: Second moment about the horizontal axis, as it is now.
        second_moment_lateral: Second moment about the vertical axis, as it is now, for buckling sideways.
        temperature_change: Rail temperature minus neutral temperature.
        stress_per_degree: Stress per degree; wear does not change it.
        stress: Axial stress, compression positive.
        force_per_degree: Force in one rail per degree, as it is now.
        force_per_degree_new: Force in one new rail per degree.
        force: Axial force in one rail as it is now, compression positive.
        force_new: Axial force in one new rail at the same temperatures.
        track_force: Axial force in both rails, worn alike.
    """

    section_from: str
    area: Area
    area_new: Area | UnsetType = UNSET
    area_left_share: float | UnsetType = UNSET
    second_moment: SecondMoment
    second_moment_lateral: SecondMoment
    temperature_change: TemperatureChange
    stress_per_degree: StressPerTemperature
    stress: Stress
    force_per_degree: ForcePerTemperature
    force_per_degree_new: ForcePerTemperature | UnsetType = UNSET
    force: Force
    force_new: Force | UnsetType = UNSET
    track_force: Force


class Zone(Struct, frozen=True, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A length of track in which one rail is anchored by one pattern.

    Attributes:
        name: What the zone is for. At most 200 characters.
        length: Length, to one side.
        every: Every n-th tie is anchored: 1 every tie, 2 every second. At least 1, at most 20.
        ballast_share: Share of the ballast's resistance that the pattern engages; known for 1 and 2. At least 0.01, at
            most 1.
    """

    name: str
    length: Length
    every: int
    ballast_share: float | UnsetType = UNSET

    if TYPE_CHECKING:

        def __init__(
            self,
            *,
            name: str,
            length: Length | Measured,
            every: int,
            ballast_share: float | UnsetType = UNSET,
        ) -> None: ...

    def __post_init__(self) -> None:
        measured(self, {"length": Length.of})


class ZoneHold(Answered, frozen=True, kw_only=True):
    """What one zone holds.

    Attributes:
        name: What the zone is for.
        anchors_hold: What the anchors hold per length, one rail.
        ballast_holds: What the ballast holds per length, one rail.
        governing: Which of the two gives way first. One of `anchors`, `ballast`, or a later addition.
        resistance: The smaller of the two.
        held: Force that the zone holds.
        held_change: Temperature change that the zone alone fully restrains.
        short: Force that is left to the track beyond; 0 when the zone suffices.
        length_needed: Length that this pattern needs to hold the whole force.
        ties_needed: Anchored ties in that length, rounded up.
    """

    name: str
    anchors_hold: ForcePerLength
    ballast_holds: ForcePerLength
    governing: str
    resistance: ForcePerLength
    held: Force
    held_change: TemperatureChange
    short: Force
    length_needed: Length
    ties_needed: int


class ZoneUsed(Answered, frozen=True, kw_only=True, repr_omit_defaults=True):
    """A zone as used: overlapping and touching zones of equal anchoring merged, cut to the stretch.

    Attributes:
        begin: Station along the line.
        end: Station along the line.
        anchoring: How its ties are anchored. One of `boxed`, `none`, `per-rail-length`, or a later addition.
        boxed_every: Every n-th tie is boxed.
        ties: Ties in it.
        anchored_ties: Ties that carry anchors.
        anchors: Anchors, all renewed rails.
        reasons: What asks for it.
    """

    begin: Length
    end: Length
    anchoring: str
    boxed_every: int | UnsetType = UNSET
    ties: int
    anchored_ties: int
    anchors: int
    reasons: list[str]


QUANTITIES: Final = (
    Amount, Angle, Area, Coverage, Curvature, Density, Duration, Energy, Expansion, Force, ForcePerLength,
    ForcePerTemperature, FoundationModulus, GoodsAmount, Length, LengthPerTemperature, Mass, MassPerLength, Moment,
    SecondMoment, SectionModulus, Speed, Stress, StressPerTemperature, Temperature, TemperatureChange, Volume,
)
"""Every kind of quantity."""

__all__ = [
    "Allowance",
    "Amount",
    "AmountUnit",
    "AnchorPattern",
    "AnchorPatternUsed",
    "AnchorPlace",
    "AnchorReuseAnswer",
    "AnchorReuseRequest",
    "AnchorReuseResult",
    "AnchorZone",
    "AnchorsAnswer",
    "AnchorsPerRailLength",
    "AnchorsPerRailLengthUsed",
    "AnchorsRequest",
    "AnchorsResult",
    "Angle",
    "AngleUnit",
    "Area",
    "AreaUnit",
    "Assumption",
    "BendingSection",
    "BlockClosure",
    "BlockEnd",
    "BreakGapAnswer",
    "BreakGapRequest",
    "BreakGapResult",
    "BucklingAnswer",
    "BucklingRequest",
    "BucklingResult",
    "BulkLine",
    "BulkTotal",
    "BulkTrailer",
    "CatalogueRow",
    "CatalogueTable",
    "CautionNote",
    "Check",
    "Citation",
    "ClosingJointsAnswer",
    "ClosingJointsRequest",
    "ClosingJointsResult",
    "CombinedStress",
    "Cost",
    "Coverage",
    "CoverageUnit",
    "CribbingAnswer",
    "CribbingRequest",
    "CribbingResult",
    "CrownArc",
    "CrownArcUsed",
    "Curvature",
    "CurvatureUnit",
    "Curve",
    "CurveLoadAnswer",
    "CurveLoadRequest",
    "CurveLoadResult",
    "CustomAnswer",
    "CustomItem",
    "CustomRequest",
    "CustomResult",
    "Density",
    "DensityUnit",
    "DestressingAnswer",
    "DestressingRequest",
    "DestressingResult",
    "Document",
    "Duration",
    "DurationUnit",
    "EndMovementAnswer",
    "EndMovementRequest",
    "EndMovementResult",
    "Energy",
    "EnergyUnit",
    "Expansion",
    "ExpansionUnit",
    "Fault",
    "FeatureRule",
    "FeatureRuleUsed",
    "Force",
    "ForcePerLength",
    "ForcePerLengthUnit",
    "ForcePerTemperature",
    "ForcePerTemperatureUnit",
    "ForceUnit",
    "FoundationModulus",
    "FoundationModulusUnit",
    "Goods",
    "GoodsAmount",
    "GoodsAmountUnit",
    "GoodsLoads",
    "Hauling",
    "HaulingCurveAnswer",
    "HaulingCurveRequest",
    "HaulingCurveResult",
    "Health",
    "ItemMass",
    "JobCheck",
    "JobFeature",
    "JobLine",
    "Joint",
    "JointGap",
    "JointGapAnswer",
    "JointGapRequest",
    "JointGapResult",
    "JointGapTable",
    "JointSet",
    "JointsAnswer",
    "JointsRequest",
    "JointsResult",
    "KeepOut",
    "LayingAdjustmentAnswer",
    "LayingAdjustmentRequest",
    "LayingAdjustmentResult",
    "Length",
    "LengthPerTemperature",
    "LengthPerTemperatureUnit",
    "LengthUnit",
    "Line",
    "LoadsAnswer",
    "LoadsRequest",
    "LoadsResult",
    "Mark",
    "Mass",
    "MassPerLength",
    "MassPerLengthUnit",
    "MassUnit",
    "Mode",
    "Moment",
    "MomentUnit",
    "Money",
    "NeutralTemperatureAnswer",
    "NeutralTemperatureRequest",
    "NeutralTemperatureResult",
    "NewJoints",
    "NewTrack",
    "Offcut",
    "OldTrack",
    "Operation",
    "OperationAmount",
    "Order",
    "OrderAnswer",
    "OrderRequest",
    "OrderResult",
    "OtherSection",
    "OutlinePoint",
    "Packaging",
    "Part",
    "PathPoint",
    "PlaceReuse",
    "PlacedPiece",
    "PlacedWeld",
    "PlatePinsAnswer",
    "PlatePinsRequest",
    "PlatePinsResult",
    "PreservativeAnswer",
    "PreservativeRequest",
    "PreservativeResult",
    "Price",
    "Prices",
    "PrintedComparison",
    "PrintedValue",
    "Problem",
    "Production",
    "ProductionRate",
    "ProfileOrigin",
    "ProfileParameters",
    "ProfileParametersUsed",
    "Progress",
    "Provisions",
    "QUANTITIES",
    "RailMassAnswer",
    "RailMassRequest",
    "RailMassResult",
    "RailPlan",
    "RailRun",
    "RailSupplyAnswer",
    "RailSupplyRequest",
    "RailSupplyResult",
    "RecordItem",
    "RestraintAnswer",
    "RestraintRequest",
    "RestraintResult",
    "RuleField",
    "RuleFormula",
    "RuleList",
    "RuleRecord",
    "RulebookChoice",
    "RulebookDefault",
    "RulebookEntry",
    "RulebookList",
    "RulebookRecord",
    "SafetyPlan",
    "SalvageAnswer",
    "SalvageRequest",
    "SalvageResult",
    "SecondMoment",
    "SecondMomentUnit",
    "SectionCompatibilityAnswer",
    "SectionCompatibilityRequest",
    "SectionCompatibilityResult",
    "SectionFigures",
    "SectionModulus",
    "SectionModulusUnit",
    "SectionPoint",
    "SectionProfile",
    "SectionPropertiesAnswer",
    "SectionPropertiesRequest",
    "SectionPropertiesResult",
    "SectionShape",
    "Segment",
    "SegmentSummary",
    "SoundTiesAnswer",
    "SoundTiesRequest",
    "SoundTiesResult",
    "SourceList",
    "SourceRecord",
    "Span",
    "Speed",
    "SpeedUnit",
    "SpikeBand",
    "SpikeBandUsed",
    "SpikePattern",
    "SpikePatternUsed",
    "SpikesAnswer",
    "SpikesInBand",
    "SpikesRequest",
    "SpikesResult",
    "Stability",
    "Step",
    "StockLength",
    "Stress",
    "StressPerTemperature",
    "StressPerTemperatureUnit",
    "StressUnit",
    "Stretch",
    "StringLayoutAnswer",
    "StringLayoutRequest",
    "StringLayoutResult",
    "StringLength",
    "StringWay",
    "Supply",
    "TableRow",
    "TableWanted",
    "TakeoffAnswer",
    "TakeoffLine",
    "TakeoffRequest",
    "TakeoffResult",
    "Temperature",
    "TemperatureChange",
    "TemperatureChangeUnit",
    "TemperatureRangeAnswer",
    "TemperatureRangeRequest",
    "TemperatureRangeResult",
    "TemperatureUnit",
    "Temperatures",
    "ThermalExtremes",
    "ThermalForceAnswer",
    "ThermalForceRequest",
    "ThermalForceResult",
    "TiePlatesAnswer",
    "TiePlatesRequest",
    "TiePlatesResult",
    "TiePlugsAnswer",
    "TiePlugsRequest",
    "TiePlugsResult",
    "TieSetting",
    "TiesAnswer",
    "TiesRequest",
    "TiesResult",
    "Torsion",
    "TrackJointsAnswer",
    "TrackJointsRequest",
    "TrackJointsResult",
    "TrackStability",
    "TrainLoad",
    "TrainLoadsAnswer",
    "TrainLoadsRequest",
    "TrainLoadsResult",
    "TurnoutRadiusAnswer",
    "TurnoutRadiusRequest",
    "TurnoutRadiusResult",
    "UnderWheel",
    "Vehicle",
    "VehicleLoads",
    "Versions",
    "VerticalBendingAnswer",
    "VerticalBendingRequest",
    "VerticalBendingResult",
    "Volume",
    "VolumeUnit",
    "WearLoss",
    "WebArc",
    "WebArcUsed",
    "WeldedString",
    "Wheel",
    "WorkAnswer",
    "WorkPlanAnswer",
    "WorkPlanRequest",
    "WorkPlanResult",
    "WorkRequest",
    "WorkResult",
    "WornFace",
    "WornRailAnswer",
    "WornRailRequest",
    "WornRailResult",
    "Zone",
    "ZoneHold",
    "ZoneUsed",
]
