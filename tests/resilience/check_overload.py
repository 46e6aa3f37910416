"""At twice its capacity the service answers nearly as much as at its peak and refuses the rest at once: `make resilience`."""

from __future__ import annotations

import asyncio
import json
from typing import TYPE_CHECKING

from railrules_api.api.examples import requests
from tests.hostile.serving import serving
from tests.resilience.callers import Tally, hammer, offer, percentile, request, tell

if TYPE_CHECKING:
    from pathlib import Path

SECONDS = 2.0
TURNS = 6


def milliseconds(values: list[float], share: float) -> str:
    return f"{1000 * percentile(values, share):.0f} ms"


def test_twice_the_capacity(tmp_path: Path) -> None:
    sent = request("/v1/takeoffs", json.dumps(requests()["createTakeoff"]).encode())
    settings = {"workers": 1, "access_log": 0, "drain_seconds": 0, "light_waiting": 32, "thread_above_bytes": 100_000}
    with serving(tmp_path, **settings) as server:
        asyncio.run(hammer(server.port, 8, 2.0, Tally(), sent))
        before = server.peak_memory()
        peak, over = Tally(), Tally()
        missed, used_at_peak, used_over = 0, 0.0, 0.0
        # in turns, as what else the machine does changes from second to second
        for _ in range(TURNS):
            had, begun = peak.good, server.processor_time()
            asyncio.run(hammer(server.port, 16, SECONDS, peak, sent))
            turned = server.processor_time()
            missed += asyncio.run(offer(server.port, 2 * (peak.good - had) / SECONDS, SECONDS, over, sent))
            used_at_peak += turned - begun
            used_over += server.processor_time() - turned
        after = server.peak_memory()
        share = over.good / peak.good
        # of the worker's own processor time, so that it tells the service's doing whoever else uses the machine
        worth = (over.good / used_over) / (peak.good / used_at_peak)
        tell(
            f"peak {peak.good / SECONDS / TURNS:.0f}/s; offered twice that: {100 * share:.0f} % of it answered, "
            f"{100 * worth:.0f} % for the same processor time, "
            f"{len(over.shed)} shed; good p50 {milliseconds(over.taken, 0.5)}, p99 {milliseconds(over.taken, 0.99)}; "
            f"shed p50 {milliseconds(over.shed, 0.5)}, "
            f"p99 {milliseconds(over.shed, 0.99)}; "
            f"{over.lost} lost, {missed} not sent; memory +{(after - before) / 1e6:.1f} MB"
        )
        assert (over.wrong, over.lost, over.other, over.without_retry) == (0, 0, [], 0)
        assert over.shed
        assert worth >= 0.9
        assert after - before < 50_000_000
        assert server.metric('railrules_events_total{event="shed_queue_full_or_late"}') >= len(over.shed)
