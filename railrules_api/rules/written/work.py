"""Operations of a gang, loads, orders and the totals of a job, written out."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from railrules_api.domain.amounts import Amount
from railrules_api.domain.anchoring import anchored_runs
from railrules_api.domain.kinds import Kind
from railrules_api.rules.quantities.work import counts
from railrules_api.rules.quantities.work_plan import TITLES
from railrules_api.rules.written.fastenings import joints_along, kept, ties_in
from railrules_api.rules.written.terms import Written, added, count, rails_of, read, ties_standing, weighted, worked

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator

    from railrules_api.rules.quantities import loads, order
    from railrules_api.rules.quantities.work import WorkInput, WorkResult
    from railrules_api.rules.quantities.work_plan import Production, WorkPlanInput, WorkPlanResult
    from railrules_api.rules.takeoff.job import Job
    from railrules_api.rules.takeoff.result import TakeoffResult
    from railrules_api.rules.written.terms import Numbers, Way


def _duration(value: float) -> Amount:
    return Amount(value, Kind.DURATION)


def _mass(value: float) -> Amount:
    return Amount(value, Kind.MASS, ("short_ton", "t"))


# ---------------------------------------------------------------- operations


def _times(given: Production, found: WorkPlanResult) -> Iterator[Written]:
    """Write the time of each operation that has a rate: amount over what is done, times its time, over its crews."""
    rates = {rate.operation: rate for rate in given.rates}
    for operation in found.operations:
        rate = rates.get(operation.operation)
        if rate is not None and operation.time is not None:
            numbers = {"a": operation.amount, "q": rate.done, "t": _duration(rate.time), "c": count(rate.crews)}
            yield Written("a * t / q / c", numbers, _duration(operation.time), f"{operation.title}: time")


def _amounts(given: WorkInput, found: WorkResult) -> Iterator[Written]:
    """Write how much of each operation a stretch asks for."""
    amounts = counts(given)
    n, rails = count(ties_in(given.stretch)), rails_of(given.stretch)
    along, of_length = worked(given.stretch)
    stays, of_kept = kept(given.stretch, given.renewed_share)
    seats: Numbers = {"n": n, "r": rails}
    old = count(given.old_spikes_per_plate)
    whole, standing = ties_standing(given.stretch)
    spikes: Numbers = {"k": amounts["drive-spikes"], "q": count(given.renewed_share), "p": count(given.bored_share)}
    texts: dict[str, tuple[str, Numbers]] = {
        "pull-spikes": ("n * r * k", {**seats, "k": old}),
        "roll-out-rail": (along, of_length),
        "remove-plates": ("n * r * p", {**seats, "p": count(given.plated_share)}),
        "level-cribs": (whole, standing),
        "plug-holes": (f"{stays} * k", {**of_kept, "k": old}),
        "drive-stubs": (f"{stays} * k * p", {**of_kept, "k": old, "p": count(given.broken_share)}),
        "adze-seats": (stays, of_kept),
        "treat-seats": (stays, of_kept),
        "set-plates": ("n * r", seats),
        "set-rail": (along, of_length),
        "bore-holes": ("k * (1 - q) * p", spikes),
    }
    anywhere = {"roll-out-rail", "level-cribs", "set-rail"}
    for task, amount in amounts.items():
        of = TITLES[task]
        if task == "unbolt-joints":
            written = joints_along(given.stretch, given.old_rail_length, amount.value)
            yield Written(written.text, written.numbers, amount, of, written.note)
        elif task in ("remove-anchors", "apply-anchors"):
            yield _anchors(given, of, amount, new=task == "apply-anchors")
        elif task == "drive-spikes":
            yield read(amount, "counted as in quantities.spikes", of)
        elif given.tie_kind == "wood" or task in anywhere:
            yield Written(*texts[task], amount, of)
        else:
            yield read(amount, f"none on {given.tie_kind} ties", of)
    yield from _times(given, found)


def _anchors(given: WorkInput, of: str, amount: Amount, *, new: bool) -> Written:
    if new:
        runs = anchored_runs(
            given.stretch, given.anchors, given.zones, forbidden=bool(given.elastic_fasteners), pattern_field="anchors"
        )
    elif given.old_anchors is None:
        return read(amount, "the old track has none", of)
    else:
        runs = anchored_runs(given.stretch, given.old_anchors, pattern_field="old_anchors")
    if not runs:
        return read(amount, "no tie stands here", of)
    rails = rails_of(given.stretch)
    return Written(*weighted([(rails, count(run.held.anchors)) for run in runs], "rh"), amount, of)


def _longest(given: Production, found: WorkPlanResult) -> Iterator[Written]:
    del given
    if found.time is not None and found.governing is not None:
        times = sorted({operation.time for operation in found.operations if operation.time is not None}, reverse=True)
        numbers = {f"t_{place}": _duration(time) for place, time in enumerate(times[:2], 1)}
        text = "max(t_1, t_2)" if len(numbers) > 1 else "t_1"
        note = f"of {found.governing.replace('-', ' ')}{'; the next longest beside it' if len(numbers) > 1 else ''}"
        yield Written(text, numbers, _duration(found.time), note=note)


def _days(given: Production, found: WorkPlanResult) -> Iterator[Written]:
    if found.time is not None and found.days is not None:
        yield Written("t / d", {"t": _duration(found.time), "d": _duration(given.working_day)}, count(found.days))


def _occupancies(given: Production, found: WorkPlanResult) -> Iterator[Written]:
    if found.time is not None and found.occupancies is not None and given.occupancy is not None:
        numbers = {"t": _duration(found.time), "o": _duration(given.occupancy), "l": _duration(given.occupancy_lost or 0.0)}
        yield Written("ceil(t / (o - l))", numbers, count(found.occupancies))


def _plan(given: WorkPlanInput, found: WorkPlanResult) -> Iterator[Written]:
    for operation in found.operations:
        if given.ties:
            numbers = {"a": operation.amount, "n": count(given.ties)}
            yield Written("a / n", numbers, operation.per_tie, f"{operation.title}: for each tie")
    yield from _times(given, found)


# ---------------------------------------------------------------- loads and orders


def _hauled(given: loads.LoadsInput, found: loads.LoadsResult) -> Iterator[Written]:
    known = [_mass(entry.mass) for entry in given.goods if entry.mass is not None]
    if known:
        yield Written(*added(known, "m"), _mass(found.mass))


def _alone(given: loads.LoadsInput, found: loads.LoadsResult) -> Iterator[Written]:
    capacities = {vehicle.name: _mass(vehicle.capacity) for vehicle in given.vehicles}
    for goods in found.goods:
        for load in goods.loads:
            assert goods.mass is not None  # what has no mass is in no load
            numbers = {"m": _mass(goods.mass), "c": capacities[load.vehicle]}
            of = f"{' '.join(filter(None, (goods.item.replace('-', ' '), goods.product)))}, {load.vehicle}"
            yield Written("ceil(m / c)", numbers, count(load.loads), of)


def _together(given: loads.LoadsInput, found: loads.LoadsResult) -> Iterator[Written]:
    for vehicle, load in zip(given.vehicles, found.mixed, strict=True):
        carried = [
            _mass(entry.mass)
            for entry in given.goods
            if entry.mass is not None and (not vehicle.items or entry.item in vehicle.items)
        ]
        if carried:
            mass = _mass(math.fsum(part.value for part in carried))
            yield Written(*added(carried, "m"), mass, f"{vehicle.name}: mass")
            yield Written("ceil(m / c)", {"m": mass, "c": _mass(vehicle.capacity)}, count(load.loads), vehicle.name)


def _with_allowance(given: order.OrderInput, found: order.OrderResult) -> Iterator[Written]:
    numbers = {"n": given.net, "p": count(given.allowance or 0.0)}
    if given.extra is None:
        yield Written("n * (1 + p)", numbers, found.with_allowance)
    else:
        yield Written("n * (1 + p) + x", {**numbers, "x": given.extra}, found.with_allowance)


def _step_of(given: order.OrderInput) -> Amount | None:
    return given.step if given.step is not None else Amount(1.0) if given.net.kind is None else None


def _loose(given: order.OrderInput, found: order.OrderResult) -> Written:
    """Write the order before any package is filled."""
    step, total = _step_of(given), found.with_allowance
    if step is None:
        return Written("t", {"t": total}, total, note="any amount is sold")
    ratio = total.value / step.value
    nearest = round(ratio)
    steps = nearest if math.isclose(ratio, nearest, rel_tol=1e-9, abs_tol=1e-9) else math.ceil(ratio)
    return Written("ceil(t / q) * q", {"t": total, "q": step}, Amount(steps * step.value, total.kind))


def _ordered(given: order.OrderInput, found: order.OrderResult) -> Iterator[Written]:
    size = given.package_size
    if given.whole_packages and size is not None and size.kind == given.net.kind and found.packages is not None:
        yield Written("p * s", {"p": count(found.packages), "s": size}, found.order, note="only full packages are sold")
    else:
        written = _loose(given, found)
        yield Written(written.text, written.numbers, found.order, note=written.note)


def _packages(given: order.OrderInput, found: order.OrderResult) -> Iterator[Written]:
    size = given.package_size
    if size is None or found.packages is None:
        return
    held = _loose(given, found).result
    if size.kind != given.net.kind:
        held = Amount((found.packages_exact or 0.0) * size.value, size.kind)
    yield Written("ceil(o / s)", {"o": held, "s": size}, count(found.packages))


def _order_mass(given: order.OrderInput, found: order.OrderResult) -> Iterator[Written]:
    if found.mass is None:
        return
    size, result = given.package_size, Amount(found.mass, Kind.MASS)
    if given.whole_packages and size is not None and size.kind != given.net.kind and found.packages is not None:
        yield Written("p * s", {"p": count(found.packages), "s": size}, result, note="full packages")
    elif given.net.kind is Kind.MASS:
        yield Written("o", {"o": found.order}, result, note="it is sold by mass")
    elif given.mass_each is not None:
        yield Written("o * m_1", {"o": found.order, "m_1": Amount(given.mass_each, Kind.MASS)}, result)
    else:
        assert given.net_mass is not None  # else no mass is known
        yield Written("o * m / n", {"o": found.order, "m": Amount(given.net_mass, Kind.MASS), "n": given.net}, result)


# ---------------------------------------------------------------- a job's totals


def _moved(found: TakeoffResult, direction: str, result: float) -> Iterator[Written]:
    masses = [
        order.order_mass if direction == "order" else order.net_mass for order in found.orders if order.direction == direction
    ]
    known = [_mass(mass) for mass in masses if mass]
    if known:
        yield Written(*added(known, "m"), _mass(result))


def _mass_in(given: Job, found: TakeoffResult) -> Iterator[Written]:
    del given
    yield from _moved(found, "order", found.mass_in)


def _mass_out(given: Job, found: TakeoffResult) -> Iterator[Written]:
    del given
    yield from _moved(found, "recover", found.mass_out)


_GANG: Final[dict[str, Callable[..., Iterable[Written]]]] = {"time": _longest, "days": _days, "occupancies": _occupancies}

WAYS: Final[dict[tuple[str, str], Way]] = {
    ("quantities.work-per-tie", "operations"): _amounts,
    ("quantities.work-plan", "operations"): _plan,
    **{(rule, name): way for rule in ("quantities.work-per-tie", "quantities.work-plan") for name, way in _GANG.items()},
    ("quantities.loads", "mass"): _hauled,
    ("quantities.loads", "goods"): _alone,
    ("quantities.loads", "mixed"): _together,
    ("quantities.order", "with_allowance"): _with_allowance,
    ("quantities.order", "order"): _ordered,
    ("quantities.order", "packages"): _packages,
    ("quantities.order", "mass"): _order_mass,
    ("takeoffs", "mass_in"): _mass_in,
    ("takeoffs", "mass_out"): _mass_out,
}
