"""Joints, strings, layouts, trains and old rail, written out."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING, Final

from railrules_api.domain.amounts import Amount
from railrules_api.domain.kinds import Kind
from railrules_api.domain.runs import WELDED, joined_runs
from railrules_api.domain.strings import Along
from railrules_api.rules.written.fastenings import joints_along
from railrules_api.rules.written.terms import Written, added, count, length, rails_of, small, weighted, worked

if TYPE_CHECKING:
    from collections.abc import Iterator

    from railrules_api.domain.strings import Laying
    from railrules_api.rules.quantities import joints, rail_supply, salvage, string_layout, train_loads
    from railrules_api.rules.written.terms import Numbers, Way


def _joints(given: joints.JointsInput, found: joints.JointsResult) -> Iterator[Written]:
    yield joints_along(given.stretch, given.rail_length, found.joints)


def _plain(given: joints.JointsInput, found: joints.JointsResult) -> Iterator[Written]:
    numbers = {
        "j": count(found.joints), "j_i": count(found.joints_insulated),
        "k": count(given.section_changes or 0), "r": rails_of(given.stretch),
    }  # fmt: skip
    yield Written("max(0, j - j_i - k * r)", numbers, count(found.joints_plain))


def _bonds(given: joints.JointsInput, found: joints.JointsResult) -> Iterator[Written]:
    numbers = {
        "j": count(found.joints), "j_i": count(found.joints_insulated),
        "j_e": count(given.compromise_joints or 0), "k_b": count(given.bonds_per_joint),
    }  # fmt: skip
    yield Written("(max(0, j - j_i) + j_e) * k_b", numbers, count(found.bonds))


# ---------------------------------------------------------------- strings


def _string(given: rail_supply.RailSupplyInput, found: rail_supply.RailSupplyResult) -> Iterator[Written]:
    string = given.string
    consumption = string.flash_butt_consumption if string.process == "flash-butt" else string.gas_pressure_consumption
    text, numbers = weighted([(count(part.count), length(part.length)) for part in string.stock], "nl")
    numbers |= {"n_p": count(found.plant_welds_per_string), "c_w": small(consumption), "e": small(string.end_trim)}
    yield Written(f"{text} - n_p * c_w - 2 * e", numbers, length(found.string_length), note=string.process)


def _laid(given: rail_supply.RailSupplyInput, found: rail_supply.RailSupplyResult) -> Iterator[Written]:
    string = given.string
    numbers = {"S": length(found.string_length), "d": count(string.drilled_ends), "c": small(string.drilled_end_cut)}
    result = length(found.string_length_laid)
    if string.rail_temperature is None or string.made_temperature is None:
        yield Written("S - d * c", numbers, result, note="at the temperature at which it was made")
        return
    numbers |= {
        "alpha": Amount(string.expansion, Kind.EXPANSION),
        "T": Amount(string.rail_temperature, Kind.TEMPERATURE), "T_m": Amount(string.made_temperature, Kind.TEMPERATURE),
    }  # fmt: skip
    yield Written("(S - d * c) * (1 + alpha * (T - T_m))", numbers, result)


def _reach(given: Laying, junctions: int, steel: float) -> Written:
    """Write the rail that runs take: their length along the rails, and what each weld gains or loses; at a run's end, half."""
    runs = joined_runs(given.runs)
    along = {rail: Along(rail, given.curves, given.rail_centres) for rail in {run.rail for run in runs}}
    reach = math.fsum(along[run.rail].length(run.end) - along[run.rail].length(run.begin) for run in runs)
    ends = sum(closing in WELDED for run in runs for closing in run.closings)
    flash = given.field_weld == "flash-butt"
    numbers = {
        "L": length(reach), "n_j": count(junctions), "n_e": count(ends),
        "c": small(given.field_consumption if flash else given.thermite_gap),
    }  # fmt: skip
    note = "welds use rail up" if flash else "weld metal fills the gaps"
    return Written(f"L {'+' if flash else '-'} (n_j + n_e / 2) * c", numbers, length(steel), note=note)


def _rail_length(given: rail_supply.RailSupplyInput, found: rail_supply.RailSupplyResult) -> Iterator[Written]:
    yield _reach(given, found.junctions, found.rail_length)


def _pieces(given: string_layout.StringLayoutInput, found: string_layout.StringLayoutResult) -> Iterator[Written]:
    steel = length(math.fsum(piece.length for piece in found.pieces))
    yield Written(*added(length(piece.length) for piece in found.pieces), steel, "rail in all pieces")
    yield replace(_reach(given, found.junctions, steel.value), of="rail that the runs take")


# ---------------------------------------------------------------- trains


def _per_train(given: train_loads.TrainLoadsInput, found: train_loads.TrainLoadsResult) -> Iterator[Written]:
    mass = Amount(found.string_mass, Kind.MASS, ("lb", "kg"))
    limits = ["k"]
    numbers: Numbers = {"k": count(given.rack_strings), "u": count(given.unloaded_at_once), "M_s": mass}
    if given.train_mass_limit is not None:
        limits.append("floor(B / M_s)")
        numbers["B"] = Amount(given.train_mass_limit, Kind.MASS)
    if given.car_mass_limit is not None:
        limits.append("floor(C * n_c / M_s)")
        numbers |= {"C": Amount(given.car_mass_limit, Kind.MASS), "n_c": count(found.rail_cars)}
    if len(limits) == 1:
        del numbers["M_s"]
    least = f"min({', '.join(limits)})" if len(limits) > 1 else "k"
    yield Written(f"floor({least} / u) * u", numbers, count(found.strings_per_train), note=f"governed by {found.governing}")


def _end_movement(given: train_loads.TrainLoadsInput, found: train_loads.TrainLoadsResult) -> Iterator[Written]:
    if found.end_movement is not None and given.temperature_change is not None:
        numbers = {
            "alpha": Amount(given.expansion, Kind.EXPANSION),
            "dT": Amount(given.temperature_change, Kind.TEMPERATURE_CHANGE), "S": length(given.string_length),
        }  # fmt: skip
        yield Written("alpha * dT * S / 2", numbers, small(found.end_movement))


# ---------------------------------------------------------------- old rail


def _old_length(given: salvage.SalvageInput, found: salvage.SalvageResult) -> Iterator[Written]:
    yield Written(*worked(given.stretch), length(found.rail_length))


def _class_of_rail(given: salvage.SalvageInput, found: salvage.SalvageResult, which: str) -> Iterator[Written]:
    part = getattr(found, f"{which}_mass")
    mass, result = Amount(found.rail_mass, Kind.MASS, ("short_ton", "t")), Amount(part, Kind.MASS, ("short_ton", "t"))
    if given.relay_wear is None and given.reroll_wear is None:
        yield Written("M * p", {"M": mass, "p": count(getattr(given, f"{which}_share"))}, result)
    else:
        share = 1.0 if part else 0.0
        yield Written("M * p", {"M": mass, "p": count(share)}, result, note=f"the share worn, {given.worn_share:g}, decides")


WAYS: Final[dict[tuple[str, str], Way]] = {
    ("quantities.joints", "joints"): _joints,
    ("quantities.joints", "joints_plain"): _plain,
    ("quantities.joints", "bonds"): _bonds,
    ("quantities.rail-supply", "string_length"): _string,
    ("quantities.rail-supply", "string_length_laid"): _laid,
    ("quantities.rail-supply", "rail_length"): _rail_length,
    ("quantities.string-layout", "pieces"): _pieces,
    ("quantities.train-loads", "strings_per_train"): _per_train,
    ("quantities.train-loads", "end_movement"): _end_movement,
    ("quantities.salvage", "rail_length"): _old_length,
    ("quantities.salvage", "relay_mass"): lambda given, found: _class_of_rail(given, found, "relay"),
    ("quantities.salvage", "reroll_mass"): lambda given, found: _class_of_rail(given, found, "reroll"),
}
