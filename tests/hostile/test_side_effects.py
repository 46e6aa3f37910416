"""Answering opens no connection, writes no file and starts no process; and what is deployed fits what is served."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path
from typing import Any

import yaml  # type: ignore[import-untyped, unused-ignore]

from railrules_api.app.serving.settings import PREFIX, from_environment
from tests.hostile.serving import GUARD, ROOT

_SCRIPT = """
import asyncio, json, sys
from railrules_api.api.examples import requests
from railrules_api.api.resources import operations
from railrules_api.app.serving.server import application
from railrules_api.app.serving.settings import ServerSettings
from railrules_api.app.serving.board import Board
from railrules_api.app.serving.drain import Drain
from railrules_api.app.serving.routes import every_route
from railrules_api.app.serving.worker import guarded
from tests.hostile.asgi import ask

settings, routes = ServerSettings(access_log=False), every_route()
gate = guarded(application((), settings), settings, Board(1, routes.templates).part(0), Drain(1), {}, routes)
wrong = []
WATCHED = {"socket.connect", "socket.getaddrinfo", "subprocess.Popen", "os.system", "os.exec"}
WATCHED |= {"os.mkdir", "os.remove", "os.rename"}

def watch(event, arguments):
    if event == "open" and isinstance(arguments[1], str) and set(arguments[1]) & set("wax+"):
        wrong.append((event, str(arguments[0])))
    elif event in WATCHED:
        wrong.append((event, str(arguments[:1])))

async def main():
    await asyncio.to_thread(int)  # the loop's own doings come before the watch
    sys.addaudithook(watch)
    answered = 0
    for operation in operations():
        if operation.request is None and "{" not in operation.path:
            told = await ask(gate, operation.path, method="GET", headers={"accept": "*/*"})
        elif operation.id in requests() and operation.request is not None:
            body = json.dumps(requests()[operation.id]).encode()
            kind = getattr(operation, "request_media_type", "application/json")
            told = await ask(gate, operation.path, headers={"content-type": kind, "accept": "*/*"}, chunks=(body,))
        else:
            continue
        answered += told.status == 200
    return answered

answered = asyncio.run(main())
print(json.dumps([answered, sorted(set(map(tuple, wrong)))]))
"""


def test_answering_does_nothing_else() -> None:
    ran = subprocess.run([sys.executable, "-c", _SCRIPT], cwd=ROOT, capture_output=True, timeout=4 * GUARD, check=False)
    assert ran.returncode == 0, ran.stderr.decode()[-2000:]
    answered, wrong = json.loads(ran.stdout.splitlines()[-1])
    assert answered > 30
    assert wrong == []


def manifest(name: str) -> Any:
    return yaml.safe_load((ROOT / "railrules_api/data/kubernetes" / name).read_text())


def test_the_deployment_sets_what_is_a_setting_and_waits_long_enough() -> None:
    pod = manifest("deployment.yaml")["spec"]["template"]["spec"]
    [container] = pod["containers"]
    settings = from_environment({entry["name"]: entry["value"] for entry in container["env"]})
    assert {entry["name"] for entry in container["env"]} >= {PREFIX + "WORKERS", PREFIX + "DRAIN_SECONDS"}
    assert pod["terminationGracePeriodSeconds"] > settings.drain_seconds + settings.grace_seconds + 2
    assert {port["containerPort"] for port in container["ports"]} == {8000, 8001}
    assert str(settings.workers) == container["resources"]["limits"]["cpu"]
    assert {container[probe]["httpGet"]["port"] for probe in ("startupProbe", "readinessProbe", "livenessProbe")} == {
        "management"
    }


def test_every_manifest_is_in_the_kustomization() -> None:
    folder = Path(ROOT / "railrules_api/data/kubernetes")
    assert sorted(manifest("kustomization.yaml")["resources"]) == sorted(
        path.name for path in folder.glob("*.yaml") if path.name != "kustomization.yaml"
    )


def test_manifests_and_image_run_as_the_same_user() -> None:
    text = (ROOT / "Dockerfile").read_text()
    pod = manifest("deployment.yaml")["spec"]["template"]["spec"]
    assert f"USER {pod['securityContext']['runAsUser']}:{pod['securityContext']['runAsGroup']}" in text
