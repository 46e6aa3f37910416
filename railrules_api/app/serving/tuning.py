"""How the interpreter shares its time between a long takeoff in a thread and the short requests beside it.

Measured by `make bench`, "a busy neighbour": with the interpreter's own settings a catalogue answer beside takeoffs of many
segments comes ten times later than in quiet at the median, and some hundred milliseconds later at worst.
"""

from __future__ import annotations

import gc
import sys
from typing import Final

SWITCH_SECONDS: Final = 0.0005
"""How long a thread keeps the interpreter when another waits for it; 5 ms unless told."""
COLLECT: Final = (5_000, 20, 1_000)
"""Collections of the garbage collector. Answers are trees without cycles and go as soon as they are sent, so whole collections,
which hold everybody up while they look through the living, are made rare."""


def tune() -> None:
    """Settle the interpreter for serving; call it when the application is made, before workers are forked."""
    sys.setswitchinterval(SWITCH_SECONDS)
    gc.collect()
    gc.freeze()  # the catalogue and the code live as long as the process: never looked through again, shared by all workers
    gc.set_threshold(*COLLECT)
