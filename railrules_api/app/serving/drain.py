"""The way down: readiness falls first, requests are served on and told to close, then no more are taken."""

from __future__ import annotations

import time


class Drain:
    """Whether a worker is about to stop, and since when."""

    def __init__(self, seconds: float) -> None:
        """Prepare a drain of so many seconds."""
        self.seconds = seconds
        self._since: float | None = None

    @property
    def begun(self) -> bool:
        """Whether it has begun."""
        return self._since is not None

    @property
    def over(self) -> bool:
        """Whether connections need no longer be taken."""
        return self._since is not None and time.monotonic() - self._since >= self.seconds

    def begin(self) -> None:
        """Begin; a second time hurries it to its end."""
        if self._since is None:
            self._since = time.monotonic()
        else:
            self._since = -self.seconds
