"""The invented networks: made again from their seed, and taken as they are."""

from __future__ import annotations

import json

import pytest

from railrules_api.api.replying import answer
from railrules_api.api.resources import calculation_of
from railrules_api.api.service import Service
from railrules_api.app import sample
from railrules_api.app.command_line import main


@pytest.mark.parametrize(("segments", "seed"), [(1, 1), (7, 2), (40, 3), (95, 4)])
def test_a_job_has_the_segments_asked_for_and_is_answered(service: Service, segments: int, seed: int) -> None:
    job = sample.job(segments, seed)
    assert job == sample.job(segments, seed)
    assert job != sample.job(segments, seed + 1)
    assert len({part["name"] for part in job["segments"]}) == segments
    found = json.loads(answer(calculation_of("takeoffs"), json.dumps(job).encode(), service))
    assert len(found["result"]["segments"]) == segments


def test_many_seeds_are_answered(service: Service) -> None:
    for seed in range(60):
        answer(calculation_of("takeoffs"), json.dumps(sample.job(5, seed)).encode(), service)


def test_a_network_has_the_segments_asked_for() -> None:
    jobs = list(sample.network(500, 9))
    assert sum(len(job["segments"]) for job in jobs) == 500
    assert max(len(job["segments"]) for job in jobs) <= sample.LONGEST_LINE
    assert jobs == list(sample.network(500, 9))


def test_the_command_prints_a_job_or_a_line_for_each(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["sample", "--segments", "6", "--seed", "4"]) == 0
    assert json.loads(capsys.readouterr().out) == sample.job(6, 4)
    assert main(["sample", "--segments", "60", "--seed", "4", "--lines"]) == 0
    assert [json.loads(line) for line in capsys.readouterr().out.splitlines()] == list(sample.network(60, 4))
    assert main(["sample", "--segments", "20001"]) == 2
    with pytest.raises(SystemExit):
        main(["sample", "--segments", "0"])
