"""One network through every engine: `python -m tests.columns.engines SEGMENTS`, by `make engines`.

Writes a generated national network as Parquet, takes it off in this process, and then by Dask, Polars, DuckDB, Ray and Spark,
each in a few lines over `railrules_api.columns.takeoff_totals`. All have to come to the sum of this process, to the bit; prints
what each took. Ray and Spark live in an environment of their own and are no dependency of ours.
"""

from __future__ import annotations

import argparse
import importlib
import json
import os
import sys
import time
from itertools import islice
from pathlib import Path
from typing import TYPE_CHECKING, Any

from railrules_api.app import sample
from railrules_api.columns import schema, summed, takeoff_totals

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

arrow: Any = importlib.import_module("pyarrow")  # none of these libraries brings types
parquet: Any = importlib.import_module("pyarrow.parquet")
WORKERS = 2
JOBS_A_BATCH = 16
Totals = dict[Any, Any]


def write(segments: int, path: Path) -> int:
    """Write a network, job after job; return how many jobs it has."""
    jobs = (json.dumps(job) for job in sample.network(segments, 29))
    columns = arrow.schema([("job", arrow.string())])
    count = 0
    with parquet.ParquetWriter(path, columns) as writer:
        while batch := list(islice(jobs, JOBS_A_BATCH)):
            writer.write_batch(arrow.record_batch({"job": batch}, schema=columns))
            count += len(batch)
    return count


def in_process(path: Path) -> Totals:
    """Take the network off here, batch by batch."""
    return summed(takeoff_totals(batch) for batch in parquet.ParquetFile(path).iter_batches(JOBS_A_BATCH))


def by_dask(path: Path) -> Totals:
    """Map over row groups in several processes."""
    dask: Any = importlib.import_module("dask")
    groups = parquet.ParquetFile(path).num_row_groups
    parts = [dask.delayed(_group)(str(path), group) for group in range(groups)]
    return summed(dask.compute(*parts, scheduler="processes", num_workers=WORKERS))


def _group(path: str, group: int) -> Any:
    return takeoff_totals(parquet.ParquetFile(path).read_row_group(group).combine_chunks())


def by_polars(path: Path) -> Totals:
    """Map over a lazy frame."""
    polars: Any = importlib.import_module("polars")
    empty: Any = polars.from_arrow(schema().empty_table())

    def totals(part: Any) -> Any:
        return polars.from_arrow(takeoff_totals(part.to_arrow().combine_chunks()))

    frame = polars.scan_parquet(path).map_batches(totals, schema=empty.schema).collect()
    return summed(frame.to_arrow().to_batches())


def by_duckdb(path: Path) -> Totals:
    """Read a query's result as record batches, and put the totals where the next query finds them."""
    duckdb: Any = importlib.import_module("duckdb")
    with duckdb.connect() as source, duckdb.connect() as sink:
        reader = source.sql(f"select job from read_parquet('{path}')").to_arrow_reader(JOBS_A_BATCH)
        totals = arrow.RecordBatchReader.from_batches(schema(), (takeoff_totals(batch) for batch in reader))
        return summed(sink.from_arrow(totals).to_arrow_table().to_batches())


def by_ray(path: Path) -> Totals:
    """Map over the blocks of a data set."""
    ray: Any = importlib.import_module("ray")
    ray.init(num_cpus=WORKERS, include_dashboard=False, log_to_driver=False, logging_level="error")
    try:
        data = ray.data.read_parquet(str(path)).repartition(4 * WORKERS)
        mapped = data.map_batches(_table_totals, batch_format="pyarrow", batch_size=JOBS_A_BATCH)
        return summed(batch for batch in mapped.iter_batches(batch_format="pyarrow"))
    finally:
        ray.shutdown()


def _table_totals(table: Any) -> Any:
    return arrow.Table.from_batches([takeoff_totals(table.combine_chunks())])


def by_spark(path: Path) -> Totals:
    """Map over partitions in Arrow."""
    sql: Any = importlib.import_module("pyspark.sql")
    os.environ["PYSPARK_PYTHON"] = sys.executable  # else its workers take the first Python there is
    os.environ["SPARK_LOCAL_IP"] = "127.0.0.1"  # else it talks over whatever network the machine has
    kinds = {"int64": "bigint", "string": "string", "double": "double"}
    columns = ", ".join(f"`{field.name}` {kinds[str(field.type)]}" for field in schema())
    session = (
        sql.SparkSession.builder.master(f"local[{WORKERS}]")
        .config("spark.ui.enabled", "false")
        .config("spark.sql.execution.arrow.maxRecordsPerBatch", JOBS_A_BATCH)
        .getOrCreate()
    )
    try:
        session.sparkContext.setLogLevel("ERROR")
        frame = session.read.parquet(str(path)).repartition(4 * WORKERS).mapInArrow(_spark_totals, columns)
        return summed(frame.toArrow().to_batches())
    finally:
        session.stop()


def _spark_totals(batches: Iterator[Any]) -> Iterator[Any]:
    for batch in batches:
        yield takeoff_totals(batch)


ENGINES: dict[str, Callable[[Path], Totals]] = {
    "Dask": by_dask,
    "Polars": by_polars,
    "DuckDB": by_duckdb,
    "Ray": by_ray,
    "Spark": by_spark,
}


def main(arguments: list[str]) -> int:
    """Run them all; the exit code tells whether they agree."""
    parser = argparse.ArgumentParser(prog="python -m tests.columns.engines")
    parser.add_argument("segments", type=int)
    parser.add_argument("--folder", type=Path, default=Path("build"))
    chosen = parser.parse_args(arguments)
    chosen.folder.mkdir(exist_ok=True)
    path: Path = chosen.folder.absolute() / f"network-{chosen.segments}.parquet"
    jobs = write(chosen.segments, path)
    print(f"{chosen.segments:,} segments in {jobs:,} jobs, {path.stat().st_size / 1e6:,.1f} MB", flush=True)
    began = time.perf_counter()
    expected = in_process(path)
    print(f"{'in process':12}{time.perf_counter() - began:>10.1f} s   {len(expected)} totals", flush=True)
    agreed = True
    for name, run in ENGINES.items():
        began = time.perf_counter()
        same = run(path) == expected
        agreed &= same
        print(f"{name:12}{time.perf_counter() - began:>10.1f} s   {'equal to the bit' if same else 'DIFFERENT'}", flush=True)
    return 0 if agreed else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
