"""Whose turn it is: a bounded queue before the work, so that overload is refused at once and what is taken is answered.

Answers are worked on the event loop, one after another; requests that came meanwhile are tasks of the loop. A turn is given
back only on the loop's next round. So a round works one answer and then looks at the network again, and the number of
requests that wait here is the true backlog, on which they can be refused.
"""

from __future__ import annotations

import asyncio
from collections import deque


class OverloadedError(Exception):
    """There is more work than the service takes on."""


class Lane:
    """A number of turns and a queue for them, first come first served."""

    def __init__(self, turns: int, places: int, patience: float) -> None:
        """Open a lane.

        Args:
            turns: how many may work at once.
            places: how many may wait.
            patience: how long one may wait [s].
        """
        self.free = turns
        self.places = places
        self.patience = patience
        self._waiting: deque[asyncio.Future[None]] = deque()

    @property
    def waiting(self) -> int:
        """How many wait."""
        return len(self._waiting)

    async def enter(self) -> None:
        """Wait for a turn; `leave` must follow.

        Raises:
            OverloadedError: the queue is full, or the turn did not come in time.
        """
        if self.free > 0:
            self.free -= 1
            return
        if len(self._waiting) >= self.places:
            raise OverloadedError
        loop = asyncio.get_running_loop()
        turn: asyncio.Future[None] = loop.create_future()
        timer = loop.call_later(self.patience, self._expire, turn)
        self._waiting.append(turn)
        try:
            await turn
        except asyncio.CancelledError:
            if turn.done() and not turn.cancelled() and turn.exception() is None:
                self.leave()  # the turn had just been given
            raise
        finally:
            timer.cancel()

    def leave(self) -> None:
        """Give the turn back, from the loop's next round on."""
        asyncio.get_running_loop().call_soon(self._next)

    def _next(self) -> None:
        while self._waiting:
            turn = self._waiting.popleft()
            if not turn.done():
                turn.set_result(None)
                return
        self.free += 1

    def _expire(self, turn: asyncio.Future[None]) -> None:
        if not turn.done():
            self._waiting.remove(turn)
            turn.set_exception(OverloadedError())
