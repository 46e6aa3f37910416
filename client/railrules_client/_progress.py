"""Progress of long work: a bar, a function of the caller's, or nothing."""

from __future__ import annotations

import importlib
from typing import TYPE_CHECKING, Protocol, cast

if TYPE_CHECKING:
    from collections.abc import Callable


class _Bar(Protocol):
    def update(self, n: int) -> object: ...
    def close(self) -> object: ...


class Progress:
    """A bar, a function that is told how many jobs are done more, or nothing."""

    def __init__(self, wanted: bool | Callable[[int], object], jobs: object) -> None:  # noqa: FBT001  a choice of three
        """Begin.

        Raises:
            ImportError: a bar is wanted and the extra `progress` (tqdm) is not installed.
        """
        self._bar: _Bar | None = None
        self._told = None if isinstance(wanted, bool) else wanted
        if wanted is True:
            bar = cast("Callable[..., _Bar]", importlib.import_module("tqdm.auto").tqdm)
            total = len(cast("list[object]", jobs)) if hasattr(jobs, "__len__") else None
            self._bar = bar(total=total, unit="job", dynamic_ncols=True)

    def done(self, jobs: int) -> None:
        """Tell that some jobs more are done."""
        if self._bar is not None:
            self._bar.update(jobs)
        if self._told is not None:
            self._told(jobs)

    def close(self) -> None:
        """End."""
        if self._bar is not None:
            self._bar.close()
