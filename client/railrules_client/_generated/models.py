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


class AnchorPattern(Struct, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Which ties carry anchors. Neither field given: none does.

    Attributes:
        boxed_every: Every n-th tie is boxed: an anchor on each side, at each rail.
        per_rail: Anchors per rail length of jointed track.
    """

    boxed_every: int | UnsetType = UNSET
    per_rail: AnchorsPerRailLength | UnsetType = UNSET


class AnchorsPerRailLength(Struct, frozen=True, kw_only=True):
    """Anchors of jointed track, by rail length: some against the run of traffic, some against creep back.

    Attributes:
        rail_length: Length of one rail.
        forward: Anchors per rail that hold it in the main direction.
        back_up: Anchors per rail that hold it the other way.
    """

    rail_length: Length
    forward: int
    back_up: int


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


class Assumption(Struct, frozen=True, kw_only=True):
    """A value the request did not give: a default of the rulebook or a value of the catalogue.

    Attributes:
        origin: `rulebook ID` or `catalogue TABLE/ROW`.
        name: Id of the default, or column of the row.
        about: What it means.
        value: The value as its source prints it, with its unit.
        cite: Where it comes from.
        used_at: Where it stood in for a value; the first ten places.
        uses: In how many places it stood in.
    """

    origin: str
    name: str
    about: str
    value: str
    cite: Citation
    used_at: list[str]
    uses: int


class CatalogueRow(Struct, frozen=True, kw_only=True, repr_omit_defaults=True):
    """A row of a catalogue table. A value that is not known is left out, never zero.

    Attributes:
        id: The name used in requests.
        title: The name for people.
        values: Numbers by property.
        texts: Words by property.
        also: Further names by which it goes.
        notes: What a user of the row should know.
        spike_pattern: The pattern.
        anchor_pattern: The pattern.
        feature_rule: What the feature asks for.
        cite: Where the row as a whole comes from.
    """

    id: str
    title: str
    values: dict[str, PrintedValue]
    texts: dict[str, list[str]]
    also: list[str]
    notes: str
    spike_pattern: SpikePattern | UnsetType = UNSET
    anchor_pattern: AnchorPattern | UnsetType = UNSET
    feature_rule: FeatureRule | UnsetType = UNSET
    cite: Citation | UnsetType = UNSET


class CatalogueTable(Struct, frozen=True, kw_only=True):
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


class CautionNote(Struct, frozen=True, kw_only=True):
    """Something a user of the answer must know.

    Attributes:
        code: Stable identifier.
        text: The caution.
        cite: Where it stands.
    """

    code: str
    text: str
    cite: Citation


class Citation(Struct, frozen=True, kw_only=True):
    """A place in a source and how the statement was obtained there.

    Attributes:
        source: Id of the source.
        title: Title of the document.
        where: Section, table, page or equation.
        status: Read in the document, worked out, remembered, or practice. One of `common-practice`, `computed`,
            `derived`, `from-memory`, `published`, or a later addition.
    """

    source: str
    title: str
    where: str
    status: str


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


class Fault(Struct, frozen=True, kw_only=True, repr_omit_defaults=True):
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


class FeatureRule(Struct, frozen=True, kw_only=True):
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


class Health(Struct, frozen=True, kw_only=True):
    """The service is up, and what it answers with.

    Attributes:
        status: (not described)
        versions: (not described)
    """

    status: str
    versions: Versions


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


class Line(Struct, frozen=True, kw_only=True, repr_omit_defaults=True):
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


class Order(Struct, frozen=True, kw_only=True, repr_omit_defaults=True):
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


class PrintedValue(Struct, frozen=True, kw_only=True):
    """A value of a catalogue row: as its source prints it, in the units asked for, and where it comes from.

    Attributes:
        printed: The value with its unit, as printed.
        value: The same in the units asked for.
        cite: Where it comes from.
    """

    printed: str
    value: Amount
    cite: Citation


class Problem(Struct, frozen=True, kw_only=True, repr_omit_defaults=True):
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


class RuleField(Struct, frozen=True, kw_only=True, repr_omit_defaults=True):
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


class RuleFormula(Struct, frozen=True, kw_only=True):
    """An equation of a rule.

    Attributes:
        gives: Output that it gives.
        text: Right-hand side in the fields' symbols.
        exact: It can be evaluated as it stands; otherwise it is told in words.
    """

    gives: str
    text: str
    exact: bool


class RuleList(Struct, frozen=True, kw_only=True):
    """The registry of rules.

    Attributes:
        version: Version of the catalogue that the sources stand in.
        rules: Every rule.
    """

    version: str
    rules: list[RuleRecord]


class RuleRecord(Struct, frozen=True, kw_only=True):
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


class RulebookDefault(Struct, frozen=True, kw_only=True):
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


class RulebookList(Struct, frozen=True, kw_only=True):
    """The rulebooks of this service.

    Attributes:
        house: Rulebook in force when a request names none.
        rulebooks: Rulebooks.
    """

    house: str
    rulebooks: list[RulebookRecord]


class RulebookRecord(Struct, frozen=True, kw_only=True):
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


class SourceList(Struct, frozen=True, kw_only=True):
    """Every cited document.

    Attributes:
        version: Version of the catalogue.
        sources: Documents.
    """

    version: str
    sources: list[SourceRecord]


class SourceRecord(Struct, frozen=True, kw_only=True, repr_omit_defaults=True):
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


class SpikeBand(Struct, frozen=True, kw_only=True, repr_omit_defaults=True):
    """Spikes in each plate on curves of a given radius or wider.

    Attributes:
        at_least_radius: Smallest radius of the band; left out: however sharp.
        rail_spikes: Spikes per plate that hold the rail base.
        plate_spikes: Spikes per plate that hold the plate only.
    """

    at_least_radius: Length | UnsetType = UNSET
    rail_spikes: int
    plate_spikes: int


class SpikePattern(Struct, frozen=True, kw_only=True):
    """Spikes per plate by curvature, widest radius first; tangent track takes the first band.

    Attributes:
        bands: Bands from wide to sharp; the last must have no radius.
        extra_at_joint_ties: Further spikes on each joint tie of jointed track, both rails together.
    """

    bands: list[SpikeBand]
    extra_at_joint_ties: int


class Step(Struct, frozen=True, kw_only=True):
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


class ThermalForceAnswer(Struct, frozen=True, kw_only=True, repr_omit_defaults=True):
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


class ThermalForceResult(Struct, frozen=True, kw_only=True):
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


class TiesAnswer(Struct, frozen=True, kw_only=True, repr_omit_defaults=True):
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
        units: Units of the answer; `us` when left out.
        explain: Add each formula with its numbers.
        rulebook: Rulebook to answer with.
    """

    stretch: Stretch
    renewed_share: float | UnsetType = UNSET
    units: Literal["si", "us"] | UnsetType = UNSET
    explain: bool | UnsetType = UNSET
    rulebook: RulebookChoice | UnsetType = UNSET


class TiesResult(Struct, frozen=True, kw_only=True):
    """Ties that stand, stay and are renewed.

    Attributes:
        ties: Ties that stand in the stretch.
        ties_on_curves: Ties that stand in curves.
        ties_renewed: Ties renewed, unrounded.
        ties_kept: Ties that stay, unrounded.
        spacing: Spacing as used.
        ties_per_mile: Average per mile, not rounded: 63,360 in over the spacing.
        lines: Ties to order.
    """

    ties: int
    ties_on_curves: int
    ties_renewed: float
    ties_kept: float
    spacing: Length
    ties_per_mile: float
    lines: list[Line]


class Versions(Struct, frozen=True, kw_only=True):
    """What answered: the same request with the same versions gives the same bytes.

    Attributes:
        service: Version of the service.
        catalogue: Version and digest of the catalogue.
        rulebook: Rulebook in force, with its edition.
    """

    service: str
    catalogue: str
    rulebook: str


QUANTITIES: Final = (
    Amount, Angle, Area, Expansion, Force, ForcePerTemperature, Length, Mass, Stress, StressPerTemperature, Temperature,
    TemperatureChange,
)
"""Every kind of quantity."""

__all__ = [
    "Amount",
    "AmountUnit",
    "AnchorPattern",
    "AnchorsPerRailLength",
    "Angle",
    "AngleUnit",
    "Area",
    "AreaUnit",
    "Assumption",
    "CatalogueRow",
    "CatalogueTable",
    "CautionNote",
    "Citation",
    "Curve",
    "Expansion",
    "ExpansionUnit",
    "Fault",
    "FeatureRule",
    "Force",
    "ForcePerTemperature",
    "ForcePerTemperatureUnit",
    "ForceUnit",
    "Health",
    "Length",
    "LengthUnit",
    "Line",
    "Mass",
    "MassUnit",
    "Order",
    "PrintedValue",
    "Problem",
    "QUANTITIES",
    "RuleField",
    "RuleFormula",
    "RuleList",
    "RuleRecord",
    "RulebookChoice",
    "RulebookDefault",
    "RulebookEntry",
    "RulebookList",
    "RulebookRecord",
    "SourceList",
    "SourceRecord",
    "Span",
    "SpikeBand",
    "SpikePattern",
    "Step",
    "Stress",
    "StressPerTemperature",
    "StressPerTemperatureUnit",
    "StressUnit",
    "Stretch",
    "Temperature",
    "TemperatureChange",
    "TemperatureChangeUnit",
    "TemperatureUnit",
    "ThermalForceAnswer",
    "ThermalForceRequest",
    "ThermalForceResult",
    "TieSetting",
    "TiesAnswer",
    "TiesRequest",
    "TiesResult",
    "Versions",
]
