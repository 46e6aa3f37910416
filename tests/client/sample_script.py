"""A user's script, checked by the type checkers and run by the tests."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from pathlib import Path
from typing import assert_type

import pandas as pd
import polars as pl
from msgspec import UNSET, UnsetType
from railrules_client import (
    AsyncClient,
    Client,
    Quantity,
    RefusedError,
    comparing,
    fahrenheit,
    inches,
    jobs,
    models,
    quantity,
    tables,
)


def hot_force(client: Client) -> float:
    """Return the force of a hot rail in kips."""
    request = models.ThermalForceRequest(
        rail_temperature="130 degF", neutral_temperature=fahrenheit(95), section="136RE", units="us"
    )
    assert_type(request.rail_temperature, models.Temperature)
    assert_type(request.area, models.Area | UnsetType)
    answer = client.thermal.force(request, timeout=30)
    assert_type(answer, models.ThermalForceAnswer)
    if answer.explanation is not UNSET:
        assert_type(answer.explanation, list[models.Step])
    force = answer.result.force.to("kip")
    assert_type(force, models.Force)
    return force.magnitude


def ties_in_a_mile(client: Client) -> float:
    """Return the ties of a mile."""
    stretch = models.Stretch(
        begin="0 ft", end="1 mi", rails="both", ties=models.TieSetting(spacing=inches(19.5)),
        curves=[models.Curve(begin="1000 ft", end="1500 ft", hand="left", degree="2 deg")],
    )  # fmt: skip
    return client.quantities.ties(models.TiesRequest(stretch=stretch)).result.ties


def why(client: Client) -> list[str]:
    """Return what the service says of a bad request."""
    try:
        client.thermal.force({"section": "136RE"})
    except RefusedError as error:
        assert_type(error.faults, tuple[models.Fault, ...])
        return [fault.pointer for fault in error.faults]
    return []


async def heaviest() -> str:
    """Return the heaviest section."""
    async with AsyncClient.in_process() as client:
        table = await client.sections.list(units="us", mass_from=120.0)
        assert_type(table.rows, list[models.CatalogueRow])
        return max(table.rows, key=lambda row: row.values["mass_per_length"].value.to("lb_per_yd").magnitude).id  # noqa: PD011


def as_frames(client: Client, job: Mapping[str, object]) -> tuple[int, int, int]:
    """Return the rows of a takeoff in three libraries."""
    answer = client.takeoffs.create(job)
    assert_type(answer, models.TakeoffAnswer)
    assert_type(answer.to_tables(), dict[str, tables.Table])
    assert_type(answer.to_pandas(), pd.DataFrame)
    assert_type(answer.to_polars("checks"), pl.DataFrame)
    return len(answer.to_pandas()), answer.to_polars().height, len(tables.of(answer.result.orders))


def what_changes(client: Client, path: Path) -> list[str]:
    """Return the checks that the other rail costs."""
    job = jobs.read(path)
    other = job.changed({"segments.*.new.section": "136RE"})
    found = client.takeoffs.compare(job.request, other.request)
    assert_type(found, comparing.Comparison)
    assert_type(found.orders, tables.Table)
    return [str(row["title"]) for row in found.newly_failing]


def many(client: Client, given: Iterable[Mapping[str, object]]) -> tuple[int, int]:
    """Return how many jobs were answered and how many refused."""
    answered = 0
    with client.takeoffs.stream(given, connections=2) as run:
        for done in run:
            assert_type(done.answer, models.TakeoffAnswer | None)
            answered += done.answer is not None
    return answered, run.refused


async def many_awaited(given: Iterable[Mapping[str, object]]) -> int:
    """Return how many jobs were answered."""
    async with AsyncClient.in_process() as client, client.takeoffs.stream(given) as run:
        return len([done.number async for done in run])


def own_words() -> Quantity[str]:
    """Return a quantity of whatever kind."""
    return quantity("2-1/4 in")
