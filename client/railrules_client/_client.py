"""The client: every resource of the service, for waiting (`Client`) and for awaiting (`AsyncClient`)."""

from __future__ import annotations

import os
import platform
import re
from typing import TYPE_CHECKING, Self

import httpx

from railrules_client._caching import AnswerCache
from railrules_client._generated.operations import AsyncResources, Resources
from railrules_client._sending import AsyncSender, SyncSender, timeout_of
from railrules_client._version import __version__

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence
    from pathlib import Path
    from types import TracebackType

    from railrules_client._observing import Hook

URL_VARIABLE = "RAILRULES_URL"
KEY_VARIABLE = "RAILRULES_API_KEY"
DEFAULT_URL = "http://127.0.0.1:8000"
DEFAULT_TIMEOUT = 60.0
DEFAULT_RETRIES = 2
DEFAULT_CACHE = 64
_APPLICATION = re.compile(r"[A-Za-z0-9][A-Za-z0-9 ._/-]{0,39}")


def _address(base_url: str | None) -> str:
    return base_url or os.environ.get(URL_VARIABLE, "").strip() or DEFAULT_URL


def _headers(api_key: str | None, application: str, headers: Mapping[str, str] | None) -> dict[str, str]:
    if application and not _APPLICATION.fullmatch(application):
        raise ValueError(f"application={application!r}: at most 40 letters, digits, spaces and ._/- are wanted")
    own = f"railrules-client/{__version__} (python {platform.python_version()}; httpx {httpx.__version__})"
    found = {"User-Agent": f"{application} {own}".strip()}
    key = os.environ.get(KEY_VARIABLE, "").strip() if api_key is None else api_key
    if key:
        found["Authorization"] = f"Bearer {key}"
    return {**found, **(headers or {})}


class Client(Resources):
    """The service, resource by resource: `client.rail_sections.get("136RE")`, `client.thermal.force(request)`.

    Calls raise errors of one family, `RailrulesError`: `ProblemError` and its kinds where the service answered with a
    problem, `ConnectionFailedError` and `TimedOutError` where it did not answer. Calls that failed in passing are repeated,
    for every operation is pure. Safe to share between threads. Close it, or use it in a `with` statement.
    """

    def __init__(  # noqa: PLR0913  settings, given by name
        self,
        base_url: str | None = None,
        *,
        api_key: str | None = None,
        application: str = "",
        timeout: float | None = DEFAULT_TIMEOUT,
        retries: int = DEFAULT_RETRIES,
        headers: Mapping[str, str] | None = None,
        cache_entries: int = DEFAULT_CACHE,
        hooks: Sequence[Hook] = (),
        transport: httpx.BaseTransport | None = None,
    ) -> None:
        """Make a client; nothing is sent before the first call.

        Args:
            base_url: address of the service; the environment variable RAILRULES_URL, else this machine, when left out.
            api_key: sent as a bearer token; the environment variable RAILRULES_API_KEY when left out, "" for none.
            application: name of the calling program, for the service's log.
            timeout: seconds to wait for each part of an answer; None waits for ever. Connecting is given up after 5 seconds.
            retries: how often a call that failed in passing is repeated.
            headers: further headers of every request.
            cache_entries: how many catalogue answers are kept to be asked for only when changed; 0 keeps none.
            hooks: told of every attempt, in this order before and in reverse after.
            transport: carries the requests instead of sockets, for tests.

        Raises:
            ValueError: the application's name or the address cannot be used.
        """
        self.http: httpx.Client = httpx.Client(
            base_url=_address(base_url),
            headers=_headers(api_key, application, headers),
            timeout=timeout_of(timeout),
            transport=transport,
        )
        cache = AnswerCache(cache_entries) if cache_entries > 0 else None
        super().__init__(SyncSender(self.http, retries=retries, cache=cache, hooks=hooks))

    @classmethod
    def in_process(
        cls,
        *,
        rulebooks: Sequence[Path] = (),
        cache_entries: int = DEFAULT_CACHE,
        hooks: Sequence[Hook] = (),
    ) -> Self:
        """Make a client that runs the service inside this process: no server, no socket, the same bytes.

        Works in notebooks too. Calls from several threads take turns.

        Args:
            rulebooks: files of the house's own defaults.
            cache_entries: as for a client with an address.
            hooks: as for a client with an address.

        Raises:
            InProcessError: the service's package is not installed.
        """
        # loaded here because most clients have an address and need none of it
        from railrules_client._in_process import BASE_URL, PLAIN, InProcessTransport, application_of  # noqa: PLC0415

        transport = InProcessTransport(application_of(rulebooks))
        return cls(BASE_URL, api_key="", retries=0, headers=PLAIN, cache_entries=cache_entries, hooks=hooks, transport=transport)

    def close(self) -> None:
        """Close the connections, or stop the service in this process."""
        self.http.close()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None) -> None:
        self.close()


class AsyncClient(AsyncResources):
    """The service, resource by resource, awaited: `await client.rail_sections.get("136RE")`.

    Like `Client` in all but that. Close it, or use it in an `async with` statement.
    """

    def __init__(  # noqa: PLR0913  settings, given by name
        self,
        base_url: str | None = None,
        *,
        api_key: str | None = None,
        application: str = "",
        timeout: float | None = DEFAULT_TIMEOUT,
        retries: int = DEFAULT_RETRIES,
        headers: Mapping[str, str] | None = None,
        cache_entries: int = DEFAULT_CACHE,
        hooks: Sequence[Hook] = (),
        transport: httpx.AsyncBaseTransport | None = None,
    ) -> None:
        """Make a client; nothing is sent before the first call.

        Args:
            base_url: address of the service; the environment variable RAILRULES_URL, else this machine, when left out.
            api_key: sent as a bearer token; the environment variable RAILRULES_API_KEY when left out, "" for none.
            application: name of the calling program, for the service's log.
            timeout: seconds to wait for each part of an answer; None waits for ever. Connecting is given up after 5 seconds.
            retries: how often a call that failed in passing is repeated.
            headers: further headers of every request.
            cache_entries: how many catalogue answers are kept to be asked for only when changed; 0 keeps none.
            hooks: told of every attempt, in this order before and in reverse after.
            transport: carries the requests instead of sockets, for tests.

        Raises:
            ValueError: the application's name or the address cannot be used.
        """
        self.http: httpx.AsyncClient = httpx.AsyncClient(
            base_url=_address(base_url),
            headers=_headers(api_key, application, headers),
            timeout=timeout_of(timeout),
            transport=transport,
        )
        cache = AnswerCache(cache_entries) if cache_entries > 0 else None
        super().__init__(AsyncSender(self.http, retries=retries, cache=cache, hooks=hooks))

    @classmethod
    def in_process(
        cls,
        *,
        rulebooks: Sequence[Path] = (),
        cache_entries: int = DEFAULT_CACHE,
        hooks: Sequence[Hook] = (),
    ) -> Self:
        """Make a client that runs the service on the caller's own event loop: no server, no socket, the same bytes.

        Args:
            rulebooks: files of the house's own defaults.
            cache_entries: as for a client with an address.
            hooks: as for a client with an address.

        Raises:
            InProcessError: the service's package is not installed.
        """
        # loaded here because most clients have an address and need none of it
        from railrules_client._in_process import BASE_URL, PLAIN, AsyncInProcessTransport, application_of  # noqa: PLC0415

        transport = AsyncInProcessTransport(application_of(rulebooks))
        return cls(BASE_URL, api_key="", retries=0, headers=PLAIN, cache_entries=cache_entries, hooks=hooks, transport=transport)

    async def aclose(self) -> None:
        """Close the connections, or stop the service in this process."""
        await self.http.aclose()

    async def __aenter__(self) -> Self:
        return self

    async def __aexit__(self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None) -> None:
        await self.aclose()
