"""The contract in TypeScript: what two makers of clients write compiles strictly, and the examples say what Python says.

`python -m tests.typescript.check`; needs Node and what `package-lock.json` pins.
"""

from __future__ import annotations

import html
import json
import os
import re
import subprocess
import sys
from pathlib import Path

from railrules_client import Client, jobs

from tests.contract.serving import running_service
from tests.support.demo import DEMO

HERE = Path(__file__).parent
DOCUMENT = HERE.parents[1] / "openapi" / "openapi.json"
BUILD = HERE / "build"


def run(*words: str, **environment: str) -> str:
    """Run a command of the folder; tell what it said and stop where it fails."""
    found = subprocess.run(
        words, cwd=HERE, capture_output=True, text=True, check=False, env={**os.environ, "NO_COLOR": "1", **environment}
    )
    if found.returncode:
        sys.exit(f"{' '.join(words)} ended with {found.returncode}\n{found.stdout}{found.stderr}")
    return found.stdout


def tool(name: str, *words: str) -> str:
    return run(str(HERE / "node_modules" / ".bin" / name), *words)


def shown() -> list[str]:
    """Return the scripts that the handbook shows."""
    page = (HERE.parents[1] / "railrules_api" / "pages" / "text" / "calling.html").read_text(encoding="utf-8")
    section = page.split("<h2>TypeScript</h2>")[1].split("<h2>")[0]
    return [html.unescape(block) for block in re.findall(r"<pre[^>]*><code>(.*?)</code></pre>", section, re.DOTALL)]


def made(address: str) -> None:
    """Let both makers write their clients, and compile them with the examples and with what the handbook shows."""
    BUILD.mkdir(exist_ok=True)
    for number, script in enumerate(shown()):
        code = script.replace("http://127.0.0.1:8000", address)
        (BUILD / f"shown_{number}.ts").write_text(f"{code}\nexport {{}};\n", encoding="utf-8")
    tool("openapi-typescript", str(DOCUMENT), "-o", str(BUILD / "schema.ts"))
    tool("openapi-ts", "-i", str(DOCUMENT), "-o", str(BUILD / "hey"), "--no-log-file")
    tool("tsc", "-p", str(HERE))


def differences(address: str) -> list[str]:
    """Run the examples against a service; return where they say something else than the Python client is told."""
    said = run("node", "build/js/takeoff.js", RAILRULES_URL=address).splitlines()
    section, force = run("node", "build/js/section.js", RAILRULES_URL=address).splitlines()
    with Client(address) as client:
        answer = client.takeoffs.create(job())
        cold = client.thermal.force(
            {
                "section": "136RE",
                "rail_temperature": {"value": 25, "unit": "degF"},
                "neutral_temperature": {"value": 95, "unit": "degF"},
            }
        )
        demo = client.takeoffs.create(jobs.read(DEMO).request)
        named = client.thermal.force(
            {
                "section": "115RE",
                "rail_temperature": {"value": 126, "unit": "degF"},
                "neutral_temperature": {"value": 100, "unit": "degF"},
            }
        )
    orders = [order for order in answer.result.orders if order.direction == "order"]
    wanted = [f"{order.title}: {order.order.value:.17g} {order.order.unit}" for order in orders]
    wanted += [f"{item.check.verdict}: {item.check.title}" for item in answer.result.checks]
    wanted.append("refused /temperatures/hottest_rail: outside the allowed range")
    pairs = [*zip(map(_plain, said), map(_plain, wanted), strict=True), (section, "136 RE 13.32 in²")]
    pairs.append((_plain(force), _plain(f"{cold.result.force.value:.17g} {cold.result.force.unit}")))
    by_hand, by_types = (run("node", f"build/js/build/shown_{number}.js").splitlines() for number in range(len(shown())))
    force_told = named.result.force
    pairs += [(_plain(by_hand[0]), _plain(f"{force_told.value:.17g} {force_told.unit} {named.sources[0].title}"))]
    told = [f"{order.title} {order.order.value:.17g} {order.order.unit}" for order in demo.result.orders]
    told += [f"{item.check.verdict} {item.check.title}" for item in demo.result.checks]
    pairs += zip(map(_plain, by_types), map(_plain, told), strict=True)
    return [f"said {one!r}, wanted {other!r}" for one, other in pairs if one != other]


def _plain(line: str) -> str:
    """Write the numbers of a line in one way, whatever the language."""
    return re.sub(r"-?\d+\.\d+(?:e[-+]?\d+)?", lambda found: repr(float(found[0])), line)


def job() -> dict[str, object]:
    """Return the example's job as the example sends it."""
    code = (HERE / "takeoff.ts").read_text(encoding="utf-8")
    literal = code.split("const job: Job = ")[1].split(";\n")[0]
    script = f"console.log(JSON.stringify({literal}))"
    found: dict[str, object] = json.loads(run("node", "-e", script))
    return found


def main() -> int:
    """Make, compile, run, compare."""
    with running_service() as address:
        made(address)
        found = differences(address)
    sys.stdout.write("\n".join(found or ["two clients in TypeScript compile strictly and say what Python is told"]) + "\n")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
