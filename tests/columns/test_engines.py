"""The same map over Arrow record batches in every engine: the totals of the in-process sum, to the bit."""

from __future__ import annotations

import importlib
import json
from typing import Any

import pytest

from railrules_api.api.bulk_run import Run
from railrules_api.api.replying import answer
from railrules_api.api.resources import calculation_of
from railrules_api.api.service import Service
from railrules_api.app import sample
from railrules_api.columns import schema, summed, takeoff_totals

arrow: Any = importlib.import_module("pyarrow")


@pytest.fixture(scope="module")
def jobs() -> list[str]:
    return [json.dumps(job) for job in sample.network(120, 11)] + ["{}"]


@pytest.fixture(scope="module")
def network(jobs: list[str]) -> Any:
    return arrow.table({"job": jobs})


@pytest.fixture(scope="module")
def expected(network: Any) -> dict[Any, Any]:
    found = summed([takeoff_totals(batch) for batch in network.to_batches()])
    assert len(found) > 20
    return found


def test_the_totals_are_those_of_the_takeoffs(service: Service, jobs: list[str], expected: dict[Any, Any]) -> None:
    resource = calculation_of("takeoffs")
    run = Run(resource, service, system="si", totals_only=True)
    run.work(enumerate((job.encode() for job in jobs), start=1))
    trailer = json.loads(run.trailer())["trailer"]
    assert trailer["refused"] == 1
    told = {(total["item"], total["product"]): total for total in trailer["totals"]}
    for (item, product, _, kind), (count, net, order, _) in expected.items():
        if item:
            assert told[item, product]["jobs"] == count
            if kind in ("", "length", "mass"):
                assert told[item, product]["net"]["value"] == net
                assert told[item, product]["order"]["value"] == order
    assert expected["", "", "", ""][0] == 1
    with pytest.raises(Exception, match="missing required"):
        answer(resource, b"{}", service)


@pytest.mark.parametrize("rows", [1, 2, 3])
def test_the_sum_hangs_on_no_cut_and_no_order(network: Any, expected: dict[Any, Any], rows: int) -> None:
    batches = network.to_batches(max_chunksize=rows)
    assert summed([takeoff_totals(batch) for batch in reversed(batches)]) == expected


def test_polars(network: Any, expected: dict[Any, Any]) -> None:
    polars: Any = importlib.import_module("polars")
    empty = polars.from_arrow(schema().empty_table())
    frame = (
        polars.from_arrow(network)
        .lazy()
        .map_batches(lambda part: polars.from_arrow(takeoff_totals(part.to_arrow().combine_chunks())), schema=empty.schema)
        .collect()
    )
    assert summed(frame.to_arrow().to_batches()) == expected


def test_duckdb(network: Any, expected: dict[Any, Any]) -> None:
    duckdb: Any = importlib.import_module("duckdb")
    # a connection has one open result at a time: one reads while the other takes in what is made of it
    with duckdb.connect() as source, duckdb.connect() as sink:
        reader = source.from_arrow(network).to_arrow_reader(2)
        totals = arrow.RecordBatchReader.from_batches(schema(), (takeoff_totals(batch) for batch in reader))
        kept = sink.from_arrow(totals).to_arrow_table()
    assert summed(kept.to_batches()) == expected


def test_dask(network: Any, expected: dict[Any, Any]) -> None:
    dask: Any = importlib.import_module("dask")
    parts = [dask.delayed(takeoff_totals)(batch) for batch in network.to_batches(max_chunksize=2)]
    found = dask.compute(*parts, scheduler="processes", num_workers=2)
    assert summed(found) == expected
