import httpx
from collections.abc import Mapping, Sequence
from pathlib import Path
from railrules_client._caching import AnswerCache as AnswerCache
from railrules_client._generated.operations import AsyncResources as AsyncResources, Resources as Resources
from railrules_client._observing import Hook as Hook
from railrules_client._sending import AsyncSender as AsyncSender, SyncSender as SyncSender, timeout_of as timeout_of
from railrules_client._version import __version__ as __version__
from types import TracebackType
from typing import Self

URL_VARIABLE: str
KEY_VARIABLE: str
DEFAULT_URL: str
DEFAULT_TIMEOUT: float
DEFAULT_RETRIES: int
DEFAULT_CACHE: int

class Client(Resources):
    http: httpx.Client
    def __init__(self, base_url: str | None = None, *, api_key: str | None = None, application: str = '', timeout: float | None = ..., retries: int = ..., headers: Mapping[str, str] | None = None, cache_entries: int = ..., hooks: Sequence[Hook] = (), transport: httpx.BaseTransport | None = None) -> None: ...
    @classmethod
    def in_process(cls, *, rulebooks: Sequence[Path] = (), cache_entries: int = ..., hooks: Sequence[Hook] = ()) -> Self: ...
    def close(self) -> None: ...
    def __enter__(self) -> Self: ...
    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None) -> None: ...

class AsyncClient(AsyncResources):
    http: httpx.AsyncClient
    def __init__(self, base_url: str | None = None, *, api_key: str | None = None, application: str = '', timeout: float | None = ..., retries: int = ..., headers: Mapping[str, str] | None = None, cache_entries: int = ..., hooks: Sequence[Hook] = (), transport: httpx.AsyncBaseTransport | None = None) -> None: ...
    @classmethod
    def in_process(cls, *, rulebooks: Sequence[Path] = (), cache_entries: int = ..., hooks: Sequence[Hook] = ()) -> Self: ...
    async def aclose(self) -> None: ...
    async def __aenter__(self) -> Self: ...
    async def __aexit__(self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None) -> None: ...
