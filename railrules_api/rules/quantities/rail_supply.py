"""Rail supply: stock rails, plant welds, strings, field welds, closures and what is left over."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from railrules_api.domain.amounts import Amount
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.laying import Layout, lay
from railrules_api.domain.records import lean
from railrules_api.domain.strings import Laying
from railrules_api.rules.common import OWN_STANDARDS
from railrules_api.rules.model import Caution, Cite, Formula, Rule
from railrules_api.rules.quantities.given import METRES_PER_MILE
from railrules_api.rules.quantities.lines import Line

SpareShare = Annotated[
    float,
    Field("Stock rails kept as spare, over those laid.", symbol="q_s", at_least=0.0, at_most=1.0, default="spare-rail-share"),
]
RailRejectShare = Annotated[
    float,
    Field(
        "Share of the stock rails that the plant rejects.",
        symbol="q_r",
        at_least=0.0,
        at_most=0.5,
        default="rail-reject-share",
    ),
]
WeldRejectShare = Annotated[
    float,
    Field(
        "Share of the plant welds that are cut out again.",
        symbol="q_w",
        at_least=0.0,
        at_most=0.5,
        default="weld-reject-share",
    ),
]
WeldRejectCut = Annotated[
    float,
    Field(
        "Rail lost with a weld cut out.",
        kind=Kind.LENGTH,
        symbol="c_r",
        at_least=0.0,
        at_most=10.0,
        default="weld-reject-cut",
    ),
]
TestWeldShare = Annotated[
    float,
    Field("Test welds for each weld in a string.", symbol="q_t", at_least=0.0, at_most=1.0, default="test-weld-share"),
]
TestWeldRail = Annotated[
    float,
    Field("Rail used up by a test weld.", kind=Kind.LENGTH, symbol="l_t", at_least=0.0, at_most=20.0, default="test-weld-rail"),
]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class RailSupplyInput(Laying):
    """The runs and strings of a layout, the section, and what the plant loses."""

    mass_per_length: Annotated[
        float,
        Field(
            "Mass of the rail per length.",
            kind=Kind.MASS_PER_LENGTH,
            symbol="m",
            above=0.0,
            at_most=500.0,
            taken=Taken("section", "rail-sections", "mass_per_length"),
        ),
    ]
    spare_share: SpareShare
    rail_reject_share: RailRejectShare
    weld_reject_share: WeldRejectShare
    weld_reject_cut: WeldRejectCut
    test_weld_share: TestWeldShare
    test_weld_rail: TestWeldRail
    old_rail_length: Annotated[
        float | None,
        Field("Length of the old rails, where they are jointed.", kind=Kind.LENGTH, symbol="l_old", at_least=1.0, at_most=1000.0),
    ] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class RailSupplyResult:
    """What is made, laid and left over."""

    string_length: Annotated[float, Field("Length of a string as made.", kind=Kind.LENGTH, symbol="S")]
    string_length_laid: Annotated[
        float,
        Field("What can be laid of it: less drilled ends, at the rail temperature.", kind=Kind.LENGTH, symbol="S_l"),
    ]
    stock_rails_per_string: Annotated[int, Field("Stock rails in a string.", symbol="n")]
    plant_welds_per_string: Annotated[int, Field("Plant welds in a string.", symbol="n_p")]
    strings_per_track_mile: Annotated[float, Field("Strings in a mile of track: two rails over the string as made.")]
    run_length: Annotated[float, Field("Length of the runs along the rails.", kind=Kind.LENGTH, symbol="L")]
    rail_length: Annotated[float, Field("Rail in the track: runs, less weld gaps.", kind=Kind.LENGTH, symbol="L_r")]
    rail_mass: Annotated[float, Field("Mass of the rail in the track.", kind=Kind.MASS, answer=("short_ton", "t"))]
    strings_exact: Annotated[float, Field("Rail in the track over what a string gives, not rounded.", symbol="N_x")]
    strings: Annotated[int, Field("Strings that the layout uses.", symbol="N")]
    plant_welds: Annotated[int, Field("Welds in those strings.", symbol="w")]
    plant_welds_made: Annotated[float, Field("With those made again for rejected ones, unrounded.", symbol="w_m")]
    test_welds: Annotated[float, Field("Test welds, unrounded.", symbol="w_t")]
    stock_rails_in_strings: Annotated[int, Field("Stock rails in those strings.", symbol="n_s")]
    stock_length_average: Annotated[float, Field("Average length of a stock rail.", kind=Kind.LENGTH, symbol="l_m")]
    stock_rails_lost: Annotated[float, Field("Stock rails used up by test welds and rejected welds, unrounded.", symbol="n_x")]
    stock_rails: Annotated[float, Field("Stock rails needed, with spare, losses and rejected rails, unrounded.", symbol="n_t")]
    drilled_ends: Annotated[int, Field("String ends drilled.")]
    junctions: Annotated[int, Field("Field welds between pieces within runs.", symbol="n_j")]
    tie_ins: Annotated[int, Field("Field welds that close runs to rail of the same section.", symbol="n_i")]
    compromise_welds: Annotated[int, Field("Field welds that close runs to another section.", symbol="n_c")]
    field_welds: Annotated[int, Field("All field welds.", symbol="n_f")]
    closing_joints: Annotated[int, Field("Plain joints that close runs.")]
    closing_insulated_joints: Annotated[int, Field("Insulated joints that close runs.")]
    closing_compromise_joints: Annotated[int, Field("Compromise joints that close runs.")]
    joints_replaced: Annotated[float | None, Field("Old joints in the runs, unrounded.")] = None
    cut_pieces: Annotated[int, Field("Pieces laid that are not whole strings.")]
    closures: Annotated[int, Field("Those of them that close a run.")]
    cuts: Annotated[int, Field("Saw cuts through strings.")]
    offcut_length: Annotated[float, Field("Rail left over of the strings that are cut.", kind=Kind.LENGTH)]
    welds_are_fewest: Annotated[bool, Field("Whether no layout at all has fewer field welds; false: not shown.")]
    strings_are_fewest: Annotated[bool, Field("Whether these pieces cannot come out of fewer strings; false: not shown.")]
    lines: Annotated[tuple[Line, ...], Field("What to make, weld and haul.")]


def _lines(given: RailSupplyInput, layout: Layout, counts: dict[str, float]) -> tuple[Line, ...]:
    each = given.mass_per_length / layout.length.stretch
    offcuts = sum(length for _, length in layout.offcuts)
    kits = given.field_weld == "thermite"
    pieces = {
        "stock-rails": counts["stock-rails"],
        "plant-welds": counts["plant-welds"],
        "strings": float(layout.strings),
        "field-welds": counts["standard"] + counts["compromise"],
        "thermite-kits": counts["standard"] if kits else 0.0,
        "compromise-weld-kits": counts["compromise"] if kits else 0.0,
        "closures": counts["closures"],
    }
    return (
        Line(item="new-rail", product="", net=Amount(layout.steel, Kind.LENGTH), mass=layout.steel * each),
        *(Line(item=item, product="", net=Amount(count)) for item, count in pieces.items() if count),
        *((Line(item="rail-offcuts", product="", net=Amount(offcuts, Kind.LENGTH), mass=offcuts * each),) if offcuts else ()),
    )


def evaluate(given: RailSupplyInput) -> RailSupplyResult:
    """Lay the runs out of strings and count what that takes.

    Raises:
        RefusedError: the input contradicts itself, or a run cannot be laid.
    """
    return counted(given, lay(given))


def counted(given: RailSupplyInput, layout: Layout) -> RailSupplyResult:
    """Count what a layout takes; `layout` is what `lay` says of the input."""
    length = layout.length
    strings = layout.strings
    plant_welds = strings * length.plant_welds
    made = plant_welds / (1.0 - given.weld_reject_share)
    tests = plant_welds * given.test_weld_share
    average = length.stock / length.stock_rails
    lost = ((made - plant_welds) * given.weld_reject_cut + tests * given.test_weld_rail) / average
    in_strings = strings * length.stock_rails
    stock_rails = (in_strings * (1.0 + given.spare_share) + lost) / (1.0 - given.rail_reject_share)
    tie_ins = sum(weld.kind == "weld" for weld in layout.welds)
    compromise = sum(weld.kind == "compromise-weld" for weld in layout.welds)
    closures = sum(piece.closes for piece in layout.pieces)
    junctions = layout.junctions
    counts = {
        "stock-rails": stock_rails,
        "plant-welds": made,
        "standard": float(junctions + tie_ins),
        "compromise": float(compromise),
        "closures": float(closures),
    }
    return RailSupplyResult(
        string_length=length.made,
        string_length_laid=length.laid,
        stock_rails_per_string=length.stock_rails,
        plant_welds_per_string=length.plant_welds,
        strings_per_track_mile=2 * METRES_PER_MILE / length.made,
        run_length=layout.run_length,
        rail_length=layout.steel,
        rail_mass=layout.steel * given.mass_per_length / length.stretch,
        strings_exact=layout.steel / length.laid,
        strings=strings,
        plant_welds=plant_welds,
        plant_welds_made=made,
        test_welds=tests,
        stock_rails_in_strings=in_strings,
        stock_length_average=average,
        stock_rails_lost=lost,
        stock_rails=stock_rails,
        drilled_ends=strings * given.string.drilled_ends,
        junctions=junctions,
        tie_ins=tie_ins,
        compromise_welds=compromise,
        field_welds=junctions + tie_ins + compromise,
        closing_joints=layout.joints.get("joint", 0),
        closing_insulated_joints=layout.joints.get("insulated-joint", 0),
        closing_compromise_joints=layout.joints.get("compromise-joint", 0),
        joints_replaced=None if given.old_rail_length is None else layout.run_length / given.old_rail_length,
        cut_pieces=sum(not piece.whole for piece in layout.pieces),
        closures=closures,
        cuts=layout.cuts,
        offcut_length=sum(length for _, length in layout.offcuts),
        welds_are_fewest=junctions == layout.weld_bound,
        strings_are_fewest=strings == layout.string_bound,
        lines=_lines(given, layout, counts),
    )


RULE = Rule(
    id="quantities.rail-supply",
    title="Stock rails, strings, welds and closures",
    summary=(
        "A string is its stock rails less what n - 1 plant welds use up and both end trims. The runs are laid out of strings as "
        "in quantities.string-layout, with the fewest field welds, then the fewest cut pieces, and the strings, welds, closures "
        "and offcuts of that layout are counted. A thermite weld fills its gap with weld metal, so the rail needed is shorter "
        "than the runs by the gaps. A place where two runs meet counts once."
    ),
    formulas=(
        Formula("string_length", "sum of stock lengths - n_p * consumption - 2 * end trim", exact=False),
        Formula("string_length_laid", "(S - drilled ends * cut) * (1 + alpha (T - T_made))", exact=False),
        Formula("plant_welds_per_string", "n - 1"),
        Formula("strings_per_track_mile", "2 * 1609.344 / S"),
        Formula("rail_length", "L - gaps, or + consumption, of the field welds; half at a run's end", exact=False),
        Formula("strings_exact", "L_r / S_l"),
        Formula("plant_welds", "N * n_p"),
        Formula("plant_welds_made", "w / (1 - q_w)"),
        Formula("test_welds", "w * q_t"),
        Formula("stock_rails_in_strings", "N * n"),
        Formula("stock_rails_lost", "((w_m - w) * c_r + w_t * l_t) / l_m"),
        Formula("stock_rails", "(n_s * (1 + q_s) + n_x) / (1 - q_r)"),
        Formula("field_welds", "n_j + n_i + n_c"),
    ),
    cites=(
        Cite("common-practice", "37 rails of 39 ft, 3/8 in lost at each end welded, make nominally 1,440 ft", "common-practice"),
        Cite("fra-ord-76-243", "abstract: 39-ft rails welded into 1,440-ft lengths", "published"),
        Cite("welding-northeast", "thermite welding: rail ends about one inch apart", "published"),
        Cite("ufgs-05652n", "3.1.2: one kit to a joint; bolt holes cut off", "published"),
        Cite("counting-rules", "welded strings; places shared by two runs count once", "common-practice"),
    ),
    input=RailSupplyInput,
    output=RailSupplyResult,
    evaluate=evaluate,
    cautions=(
        Caution(
            code="lengths-at-one-temperature",
            text=(
                "Pieces are measured at the temperature at which the rail is laid. Adjusting the neutral temperature afterwards "
                "adds or takes out rail, which is not counted here."
            ),
            cite=Cite("strength-of-materials", "free thermal expansion", "derived"),
        ),
        OWN_STANDARDS,
    ),
)
