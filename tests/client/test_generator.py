"""The generator: the same bytes every time, drift told, every form of schema, and what it does not know refused."""

from __future__ import annotations

import copy
import importlib.util
import json
import subprocess
import sys
from decimal import Decimal
from pathlib import Path
from typing import TYPE_CHECKING, Any

import msgspec
import pytest
from generator import generate
from generator.reading import GenerationError, camel, snake

from tests.client.conftest import DOCUMENT, ROOT
from tests.client.small_document import DOCUMENT as SMALL

if TYPE_CHECKING:
    from types import ModuleType

SCRIPT = ROOT / "client" / "generator" / "generate.py"


def run(*arguments: str, seed: str = "0") -> subprocess.CompletedProcess[str]:
    environment = {"PYTHONHASHSEED": seed, "PATH": "/usr/bin:/bin"}
    return subprocess.run(
        [sys.executable, "-I", str(SCRIPT), *arguments], capture_output=True, text=True, check=False, env=environment, cwd="/"
    )


@pytest.fixture(scope="module")
def small(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("small")
    (folder / "document.json").write_text(json.dumps(SMALL))
    assert generate.main(["--document", str(folder / "document.json"), "--out", str(folder / "made")]) == 0
    return folder / "made"


def load(path: Path) -> ModuleType:
    spec = importlib.util.spec_from_file_location(f"small_{path.stem}", path)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = module
    spec.loader.exec_module(module)
    return module


def test_the_committed_client_is_what_the_document_makes() -> None:
    found = run("--check")
    assert (found.returncode, found.stdout, found.stderr) == (0, "", "")


def test_the_same_bytes_whatever_the_hash_seed(tmp_path: Path) -> None:
    for seed in ("1", "2"):
        assert run("--document", str(DOCUMENT), "--out", str(tmp_path / seed), seed=seed).returncode == 0
    for path in (tmp_path / "1").iterdir():
        assert path.read_bytes() == (tmp_path / "2" / path.name).read_bytes()


def test_drift_is_shown_and_told_by_the_exit_status(tmp_path: Path) -> None:
    tree = json.loads(DOCUMENT.read_text(encoding="utf-8"))
    tree["components"]["schemas"]["Length"]["description"] = "Something quite different."
    (tmp_path / "document.json").write_text(json.dumps(tree))
    found = run("--check", "--document", str(tmp_path / "document.json"))
    assert found.returncode == 1
    assert '+    """Something quite different.' in found.stdout
    assert "run make client" in found.stdout


def test_files_that_are_no_longer_made_are_removed(small: Path) -> None:
    (small / "stray.py").write_text("left = over\n")
    document = str(small.parent / "document.json")
    assert generate.main(["--check", "--document", document, "--out", str(small)]) == 1
    assert generate.main(["--document", document, "--out", str(small)]) == 0
    assert not (small / "stray.py").exists()
    assert generate.main(["--check", "--document", document, "--out", str(small)]) == 0


def test_lines_stay_readable() -> None:
    for text in generate.files(DOCUMENT.read_text(encoding="utf-8")).values():
        assert [line for line in text.splitlines() if len(line) > 130 or line != line.rstrip() or "\t" in line] == []


def test_every_form_of_schema(small: Path) -> None:
    made = load(small / "models.py")
    job = made.ShapeJob(
        parts=(made.Bar(length="3 ft"), made.Ring(turns=2)), from_="1 m", cuts=["1 ft", made.Length(2, "m")],
        price=Decimal("1.10"), prices={"bar": 2}, grade="a", other="4 m", note=None, anything=[1],
    )  # fmt: skip
    assert json.loads(msgspec.json.encode(job)) == {
        "parts": [{"kind": "bar", "length": {"value": 3.0, "unit": "ft"}}, {"kind": "ring", "turns": 2}],
        "from": {"value": 1.0, "unit": "m"},
        "cuts": [{"value": 1.0, "unit": "ft"}, {"value": 2, "unit": "m"}],
        "price": "1.10", "prices": {"bar": 2}, "grade": "a", "other": {"value": 4.0, "unit": "m"}, "note": None, "anything": [1],
    }  # fmt: skip
    assert msgspec.json.decode(msgspec.json.encode(job), type=made.ShapeJob) == msgspec.structs.replace(
        job, parts=list(job.parts)
    )
    answer = msgspec.json.decode(
        b'{"total":{"value":1,"unit":"league"},"word":"maybe","parts":{"a":["b"]},"class":"z","new":1}', type=made.Result
    )
    assert (answer.word, answer.parts, answer.class_, answer.total.unit, answer.checked) == (
        "maybe",
        {"a": ["b"]},
        "z",
        "league",
        msgspec.UNSET,
    )
    assert not hasattr(made, "Unused")
    assert made.ShapeJob.__doc__.startswith('A job with a \\ and """ in it.')


def test_every_form_of_operation(small: Path) -> None:
    text = (small / "operations.py").read_text().replace("railrules_client._generated.models", "small_models")
    (small / "operations_here.py").write_text(text)
    load(small / "models.py")
    made = load(small / "operations_here.py")
    (small / "operations_here.py").unlink()
    calls: list[Any] = []

    class Caller:
        def call(self, operation: Any, _options: Any, **given: Any) -> None:
            calls.append((operation.method, operation.path, operation.accept, operation.answer.__name__, given))

    resources = made.Resources(Caller())
    resources.jobs.create({"a": 1}, units="si")
    resources.jobs.create_csv({})
    resources.jobs.create_pdf({})
    resources.jobs.bulk(b"{}\n")
    resources.shape_rows.get("x")
    resources.shape_rows.drawing("x")
    resources.service.metrics()
    assert calls == [
        ("POST", "/v1/jobs", "application/json", "Result", {"query": {"units": "si"}, "body": {"a": 1}}),
        ("POST", "/v1/jobs", "text/csv", "str", {"query": {"units": None}, "body": {}}),
        ("POST", "/v1/jobs", "application/pdf", "bytes", {"query": {"units": None}, "body": {}}),
        ("POST", "/v1/jobs/bulk", "application/x-ndjson", "bytes", {"body": b"{}\n"}),
        ("GET", "/v1/shape-rows/{id}", "application/json", "Result", {"path": {"id": "x"}}),
        ("GET", "/v1/shape-rows/{id}/drawing", "image/svg+xml", "str", {"path": {"id": "x"}}),
        ("GET", "/metrics", "text/plain", "str", {}),
    ]
    assert "Jobs of shapes." in made.JobsResource.__doc__
    told = made.JobsResource.create.__doc__
    assert "RefusedError: It failed (422)." in told
    assert "ProblemError: It failed (501)." in told
    assert "405" not in told


@pytest.mark.parametrize(
    "schema",
    [
        {"not": {}},
        {"type": "object", "properties": {"a": {"type": "string"}}},
        {"$ref": "#/components/schemas/Nowhere"},
        {"$ref": "other.json#/x"},
    ],
    ids=["not", "nested object without a name", "unknown reference", "reference elsewhere"],
)
def test_what_it_does_not_know_it_refuses(schema: dict[str, Any]) -> None:
    tree = copy.deepcopy(SMALL)
    tree["components"]["schemas"]["Result"]["properties"]["odd"] = schema
    with pytest.raises(GenerationError):
        generate.files(json.dumps(tree))


def test_two_operations_by_one_name_are_refused() -> None:
    tree = copy.deepcopy(SMALL)
    tree["paths"]["/v2/jobs"] = tree["paths"]["/v1/jobs"]
    with pytest.raises(GenerationError, match="two operations by one name"):
        generate.files(json.dumps(tree))


def test_a_parameter_named_like_an_option_is_refused() -> None:
    tree = copy.deepcopy(SMALL)
    tree["paths"]["/v1/jobs"]["post"]["parameters"][0]["name"] = "timeout"
    with pytest.raises(GenerationError, match="timeout"):
        generate.files(json.dumps(tree))


def test_a_document_that_cannot_be_read_is_told(tmp_path: Path) -> None:
    assert run("--document", str(tmp_path / "none.json")).returncode == 2
    (tmp_path / "none.json").write_text("{")
    found = run("--document", str(tmp_path / "none.json"))
    assert (found.returncode, found.stdout) == (2, "")
    assert "JSONDecodeError" in found.stderr


def test_names() -> None:
    assert (snake("rail-sections"), snake("ThermalForceRequest"), camel("rail-sections")) == (
        "rail_sections", "thermal_force_request", "RailSections",
    )  # fmt: skip
