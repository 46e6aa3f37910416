"""Progress of long work: a bar, a function of the caller's, or nothing."""

from __future__ import annotations

import importlib
from typing import TYPE_CHECKING, Protocol, cast

if TYPE_CHECKING:
    from collections.abc import Callable

    from railrules_client._generated import models


class _Bar(Protocol):
    def update(self, n: int) -> object: ...
    def close(self) -> object: ...


def _bar(**settings: object) -> _Bar:
    return cast("Callable[..., _Bar]", importlib.import_module("tqdm.auto").tqdm)(dynamic_ncols=True, **settings)


class Stages:
    """A bar for each stage of one long answer, a function that is told of them, or nothing."""

    def __init__(self, wanted: bool | Callable[[models.Progress], object]) -> None:  # noqa: FBT001  a choice of three
        """Begin.

        Raises:
            ImportError: a bar is wanted and the extra `progress` (tqdm) is not installed.
        """
        self._told = None if isinstance(wanted, bool) else wanted
        self._wanted = wanted is True
        self._bar: _Bar | None = None
        self._at = ("", 0, 0)
        if self._wanted:
            importlib.import_module("tqdm.auto")

    def tell(self, progress: models.Progress) -> None:
        """Tell how far the work has come."""
        if self._told is not None:
            self._told(progress)
        if not self._wanted:
            return
        stage, done, of = self._at
        if self._bar is None or (progress.stage, progress.of) != (stage, of) or progress.done < done:
            self.close()
            self._bar, done = _bar(total=progress.of, desc=progress.stage, unit="", leave=False), 0
        self._bar.update(progress.done - done)
        self._at = (progress.stage, progress.done, progress.of)

    def close(self) -> None:
        """End."""
        if self._bar is not None:
            self._bar.close()
            self._bar = None


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
            total = len(cast("list[object]", jobs)) if hasattr(jobs, "__len__") else None
            self._bar = _bar(total=total, unit="job")

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
