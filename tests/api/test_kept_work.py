"""What is kept from one use to the next changes no answer."""

from __future__ import annotations

import json
from typing import Any

import pytest

from railrules_api.api import kept
from railrules_api.api.operations import Asked, Reply
from railrules_api.api.problems import ProblemError
from railrules_api.api.replying import answer
from railrules_api.api.resources import calculation_of
from railrules_api.api.service import Service
from railrules_api.app import sample


def told(service: Service, job: dict[str, Any]) -> bytes:
    try:
        return answer(calculation_of("takeoffs"), json.dumps(job).encode(), service)
    except ProblemError as problem:
        return problem.body()


def variants(seed: int) -> list[dict[str, Any]]:
    """Return a job as it is; leaving more to the rulebook; with a wrong value in a part that all segments share; with -0.0."""
    job = sample.job(8, seed)
    bare = json.loads(json.dumps(job))
    wrong = json.loads(json.dumps(job))
    zero = json.loads(json.dumps(job))
    for number, segment in enumerate(bare["segments"]):
        segment.pop("tie_kind")
        segment["new"].pop("anchor_pattern")
        segment["new"].pop("spike_pattern", None)
        segment["new"]["spikes" if number == 2 else "plates"] = (
            {"bands": [{"rail_spikes": 2, "plate_spikes": 1}], "extra_at_joint_ties": 0} if number == 2 else "new"
        )
    for segment in wrong["segments"]:
        segment["old"]["worn_share"] = 3.0 if seed % 2 else 0.5
        segment["old"]["section"] = "136-RE"
    for number, segment in enumerate(zero["segments"]):
        segment["old"]["worn_share"] = -0.0 if number % 2 else 0.0
    return [job, bare, wrong, zero]


@pytest.mark.parametrize("seed", range(8))
def test_equal_parts_bound_once_give_the_same_answer(service: Service, seed: int, monkeypatch: pytest.MonkeyPatch) -> None:
    jobs = variants(seed)
    kept_once = [told(service, job) for job in jobs]
    monkeypatch.setattr("railrules_api.api.binding._MOST_KEPT", 0)
    assert [told(service, job) for job in jobs] == kept_once


def test_uses_are_counted_and_the_first_ten_told(service: Service) -> None:
    job = sample.job(30, 1)
    found = json.loads(told(service, job))["assumptions"]
    use = next(entry for entry in found if entry["name"] == "keep-out-distance" or entry["uses"] == 1)
    assert len(use["used_at"]) == use["uses"]
    often = [entry for entry in found if entry["uses"] == 30]
    assert often
    for entry in often:
        assert [place.split("/")[2] for place in entry["used_at"]] == [str(number) for number in range(10)]


def test_a_catalogue_answer_is_worked_once_and_what_is_kept_is_bounded(service: Service, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(kept, "MOST", 100)
    worked: list[str] = []

    def handler(_service: Service, asked: Asked) -> Reply:
        worked.append(asked.path["id"])
        if asked.path["id"] == "none":
            raise ProblemError(404, "there is none")
        return Reply(asked.path["id"].encode() * 30, etag='"a"' if asked.path["id"] != "x" else "")

    ask = kept.kept(handler)

    def get(name: str, accept: str = "application/json", **query: str) -> bytes:
        return ask(service, Asked({"id": name}, query, b"", accept)).body

    assert [get("a"), get("a"), get("b"), get("a")] == [b"a" * 30, b"a" * 30, b"b" * 30, b"a" * 30]
    assert worked == ["a", "b"]
    get("a", units="si")
    for _ in range(2):
        get("a", accept="text/csv")
    assert worked == ["a", "b", "a", "a", "a"]
    get("c")
    get("b")
    assert worked[-2:] == ["c", "b"], "the one asked for longest ago has made room"
    for name in ("x", "x", "long" * 10, "long" * 10):
        get(name)
    assert worked.count("x") == worked.count("long" * 10) == 2
    for _ in range(2):
        with pytest.raises(ProblemError):
            get("none")
    assert worked.count("none") == 2
