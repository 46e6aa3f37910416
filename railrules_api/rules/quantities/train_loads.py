"""Train loads: how many strings a rail train takes, how many cars they lie on, and which train brings which."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Literal, NamedTuple

from railrules_api.domain.amounts import SMALL, Amount
from railrules_api.domain.counting import RELATIVE_SLACK, round_up
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.rules.model import Caution, Cite, Formula, Rule
from railrules_api.rules.quantities.lines import Line

MOST_TRAINS = 1000
Limit = Literal["rack", "train-mass", "car-mass"]


RackStrings = Annotated[
    int, Field("Strings that the racks of a train hold.", at_least=1, at_most=1000, default="train-rack-strings")
]
TrainMassLimit = Annotated[
    float | None, Field("Rail that a train may carry; left out: no limit.", kind=Kind.MASS, above=0.0, at_most=1e9)
]
CarMassLimit = Annotated[
    float | None, Field("Rail that one car may carry; left out: no limit.", kind=Kind.MASS, above=0.0, at_most=1e6)
]
CarSpacing = Annotated[
    float,
    Field(
        "Length of one car over couplers.",
        kind=Kind.LENGTH,
        symbol="c",
        at_least=3.0,
        at_most=50.0,
        default="rail-car-length",
    ),
]
ExtraCars = Annotated[
    int,
    Field(
        "Cars that carry no rail: threader, power, buffer.",
        symbol="n_e",
        at_least=0,
        at_most=100,
        default="rail-train-extra-cars",
    ),
]
UnloadedAtOnce = Annotated[
    int, Field("Strings unloaded side by side.", symbol="u", at_least=1, at_most=2, default="strings-unloaded-at-once")
]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class TrainLoadsInput:
    """The strings and the train."""

    strings: Annotated[int, Field("Strings to haul.", symbol="N", at_least=1, at_most=100_000)]
    string_length: Annotated[
        float, Field("Length of a string as made.", kind=Kind.LENGTH, symbol="S", at_least=10.0, at_most=2000.0)
    ]
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
    rack_strings: RackStrings
    train_mass_limit: TrainMassLimit = None
    car_mass_limit: CarMassLimit = None
    car_spacing: CarSpacing
    extra_cars: ExtraCars
    unloaded_at_once: UnloadedAtOnce
    expansion: Annotated[
        float,
        Field(
            "Coefficient of linear thermal expansion.",
            kind=Kind.EXPANSION,
            symbol="alpha",
            above=0.0,
            at_most=1e-4,
            default="thermal-expansion",
        ),
    ]
    temperature_change: Annotated[
        float | None,
        Field("Change of rail temperature on the way.", kind=Kind.TEMPERATURE_CHANGE, at_least=-150.0, at_most=150.0),
    ] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class TrainLoad:
    """One train."""

    train: Annotated[int, Field("Number of the train.")]
    first_string: Annotated[int, Field("First string off it.")]
    last_string: Annotated[int, Field("Last string off it.")]
    strings: Annotated[int, Field("Strings on it.")]
    unloadings: Annotated[int, Field("Times that strings are drawn off, side by side.")]
    mass: Annotated[float, Field("Rail on it.", kind=Kind.MASS, answer=("short_ton", "t"))]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class TrainLoadsResult:
    """Capacity, cars and trains."""

    string_mass: Annotated[float, Field("Mass of one string.", kind=Kind.MASS, symbol="M_s", answer=("lb", "kg"))]
    rail_cars: Annotated[int, Field("Cars that a string lies on.", symbol="n_c")]
    cars_per_train: Annotated[int, Field("With those that carry no rail.", symbol="n_t")]
    strings_by_train_mass: Annotated[int | None, Field("Strings within the mass of a train; left out without a limit.")] = None
    strings_by_car_mass: Annotated[int | None, Field("Strings within the mass of a car; left out without a limit.")] = None
    governing: Annotated[Limit, Field("What limits the load.")]
    strings_per_train: Annotated[int, Field("Strings on a full train, a multiple of those unloaded side by side.", symbol="n")]
    trains: Annotated[int, Field("Trains.")]
    partial_trains: Annotated[int, Field("Trains that are not full: 0 or 1.")]
    mass: Annotated[float, Field("All the rail.", kind=Kind.MASS, answer=("short_ton", "t"))]
    car_mass: Annotated[float, Field("Rail on each car of a full train.", kind=Kind.MASS, answer=("short_ton", "t"))]
    anchored_at: Annotated[float, Field("Where a string is clamped, from its end: the middle.", kind=Kind.LENGTH, symbol="a")]
    end_movement: Annotated[
        float | None,
        Field("What each end moves on its rack; left out without a temperature change.", kind=Kind.LENGTH, answer=SMALL),
    ] = None
    loads: Annotated[tuple[TrainLoad, ...], Field("The trains in order; strings come off in the order of their numbers.")]
    lines: Annotated[tuple[Line, ...], Field("Trains, and cars of all of them.")]


def _held(limit: float, each: float) -> int:
    """Return how many whole strings a limit holds; float noise below a whole number does not cost one."""
    ratio = limit / each
    return int(ratio * (1.0 + RELATIVE_SLACK))


class Capacity(NamedTuple):
    """What a full train takes.

    Attributes:
        strings: on it, a multiple of those unloaded side by side.
        by_train_mass: strings within the mass of a train; None without a limit.
        by_car_mass: strings within the mass of a car; None without a limit.
        governing: what limits the load.
        cars: that a string lies on.
    """

    strings: int
    by_train_mass: int | None
    by_car_mass: int | None
    governing: Limit
    cars: int


def capacity(given: TrainLoadsInput) -> Capacity:
    """Return what a full train takes, however many strings there are to haul.

    Raises:
        RefusedError: a train cannot take as many strings as are unloaded side by side.
    """
    each = given.string_length * given.mass_per_length
    cars = int(round_up(given.string_length / given.car_spacing))
    by_train = None if given.train_mass_limit is None else _held(given.train_mass_limit, each)
    by_car = None if given.car_mass_limit is None else _held(given.car_mass_limit * cars, each)
    limits: list[tuple[int, Limit, str, float]] = [(given.rack_strings, "rack", "rack_strings", float(given.rack_strings))]
    if by_train is not None and given.train_mass_limit is not None:
        limits.append((by_train, "train-mass", "train_mass_limit", given.train_mass_limit))
    if by_car is not None and given.car_mass_limit is not None:
        limits.append((by_car, "car-mass", "car_mass_limit", given.car_mass_limit))
    held, governing, field, value = min(limits)
    strings = held - held % given.unloaded_at_once
    if strings == 0:
        raise refuse(field, reason="a train cannot take as many strings as are unloaded side by side", value=value)
    return Capacity(strings, by_train, by_car, governing, cars)


def evaluate(given: TrainLoadsInput) -> TrainLoadsResult:
    """Load the strings on trains in the order of their numbers.

    Raises:
        RefusedError: a train cannot take as many strings as are unloaded side by side, or too many trains are needed.
    """
    each = given.string_length * given.mass_per_length
    full = capacity(given)
    cars = full.cars
    trains = -(-given.strings // full.strings)
    if trains > MOST_TRAINS:
        raise refuse(
            "strings", reason="too many trains for one answer", value=given.strings, maximum=float(MOST_TRAINS * full.strings)
        )
    loads: list[TrainLoad] = []
    for train in range(trains):
        first = train * full.strings + 1
        last = min(first + full.strings - 1, given.strings)
        count = last - first + 1
        unloadings = -(-count // given.unloaded_at_once)
        loads.append(
            TrainLoad(
                train=train + 1,
                first_string=first,
                last_string=last,
                strings=count,
                unloadings=unloadings,
                mass=count * each,
            )
        )
    change = given.temperature_change
    return TrainLoadsResult(
        string_mass=each,
        rail_cars=cars,
        cars_per_train=cars + given.extra_cars,
        strings_by_train_mass=full.by_train_mass,
        strings_by_car_mass=full.by_car_mass,
        governing=full.governing,
        strings_per_train=full.strings,
        trains=trains,
        partial_trains=int(given.strings % full.strings != 0),
        mass=given.strings * each,
        car_mass=full.strings * each / cars,
        anchored_at=given.string_length / 2,
        end_movement=None if change is None else given.expansion * change * given.string_length / 2,
        loads=tuple(loads),
        lines=(
            Line(item="rail-trains", product="", net=Amount(float(trains))),
            Line(item="string-cars", product="", net=Amount(float(trains * (cars + given.extra_cars)))),
        ),
    )


RULE = Rule(
    id="quantities.train-loads",
    title="Rail trains and what each brings",
    summary=(
        "A train takes as many strings as its racks hold and as its mass allows, rounded down to a multiple of those unloaded "
        "side by side, so that no pair is parted. Strings lie over as many cars as their length spans, each carrying an equal "
        "share, clamped at the middle so that both ends move alike. Strings are loaded to come off in the order of their "
        "numbers; what is left of a cut string stays in its rack until it is laid further ahead."
    ),
    formulas=(
        Formula("string_mass", "S * m"),
        Formula("rail_cars", "ceil(S / c)"),
        Formula("cars_per_train", "n_c + n_e"),
        Formula(
            "strings_per_train", "least of rack, train mass / M_s and car mass * n_c / M_s, in whole multiples of u", exact=False
        ),
        Formula("trains", "ceil(N / n)"),
        Formula("mass", "N * M_s"),
        Formula("car_mass", "n * M_s / n_c"),
        Formula("anchored_at", "S / 2"),
        Formula("end_movement", "alpha * temperature change * S / 2", exact=False),
    ),
    cites=(
        Cite("common-practice", "strings on racks over many cars, clamped at the middle, drawn off in pairs", "common-practice"),
        Cite("strength-of-materials", "free thermal expansion from a fixed middle", "derived"),
    ),
    input=TrainLoadsInput,
    output=TrainLoadsResult,
    evaluate=evaluate,
    cautions=(
        Caution(
            code="train-capacity-unpublished",
            text="No published figure was found for what a rail train holds: put your own train's racks, cars and tonnage in.",
            cite=Cite("common-practice", "capacity of rail trains", "common-practice"),
        ),
    ),
)
