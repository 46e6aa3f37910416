"""The server's HTTP protocol with what it lacks: deadlines for headers and for slow readers, limits before anything is kept."""

from __future__ import annotations

import asyncio
from typing import TYPE_CHECKING, Any

import uvicorn
from uvicorn.protocols.http.httptools_impl import HttpToolsProtocol

from railrules_api.app.serving.refusals import raw_refusal

if TYPE_CHECKING:
    from railrules_api.app.serving.board import Part
    from railrules_api.app.serving.settings import ServerSettings

_LINGER_SECONDS = 0.25
"""After a refusal: how long what still comes is thrown away."""
_QUIET_SECONDS = 1.0
"""When the server stops: how long an open connection is waited for to send a request that may be on its way."""


class GuardedConfig(uvicorn.Config):
    """The server's configuration, with what the protocol needs of ours."""

    def __init__(self, app: Any, settings: ServerSettings, part: Part, **flags: Any) -> None:  # noqa: ANN401  uvicorn's own
        """Keep our settings beside the server's flags."""
        super().__init__(app, http=GuardedProtocol, **flags)
        self.settings = settings
        self.part = part


class _FaultError(Exception):
    """A request header that is refused while it is still being read."""


class GuardedProtocol(HttpToolsProtocol):
    """One connection."""

    config: GuardedConfig

    def __init__(self, *arguments: Any, **named: Any) -> None:  # noqa: ANN401  uvicorn's own
        """Start with no request in hand."""
        super().__init__(*arguments, **named)
        self._settings: ServerSettings = self.config.settings
        self._part: Part = self.config.part
        self._timer: asyncio.TimerHandle | None = None
        self._send_timer: asyncio.TimerHandle | None = None
        self._in_header = True
        self._header_bytes = 0
        self._field_bytes = 0
        self._fault: tuple[int, str, str] | None = None
        self._broken = False

    # ---------------------------------------------------------------- deadlines

    def connection_made(self, transport: Any) -> None:  # noqa: ANN401  the class above narrows what the one above it has
        """Take a connection, or tell that there are too many."""
        super().connection_made(transport)
        if len(self.connections) > self._settings.max_connections:
            self._broken = True
            self._part.count("shed_connections")
            told = [(b"retry-after", str(self._settings.retry_seconds).encode())]
            transport.write(raw_refusal(503, "the service has as many connections open as it keeps", told))
            self._timer = self.loop.call_later(_LINGER_SECONDS, self._close)
            return
        self._timer = self.loop.call_later(self._settings.header_seconds, self._header_late)

    def connection_lost(self, exc: Exception | None) -> None:
        """Forget a connection."""
        self._clear_timer()
        if self._send_timer is not None:
            self._send_timer.cancel()
        super().connection_lost(exc)

    def _clear_timer(self) -> None:
        if self._timer is not None:
            self._timer.cancel()
            self._timer = None

    def _header_late(self) -> None:
        self._timer = None
        if self.transport.is_closing():
            return
        if self._header_bytes:
            self._refuse(408, f"the request header did not arrive within {self._settings.header_seconds:g} s", "cut_header")
        else:
            self._close()

    def _close(self) -> None:
        """Close, and do not wait for ever for the caller to take what is still to be sent."""
        self._timer = None
        self.transport.close()
        if self._send_timer is None:
            self._send_timer = self.loop.call_later(self._settings.send_seconds, self.transport.abort)

    def timeout_keep_alive_handler(self) -> None:
        """Close a connection that has been idle."""
        if not self.transport.is_closing():
            self._close()

    def pause_writing(self) -> None:
        """Give the caller time to take what is sent to it."""
        super().pause_writing()
        if self._send_timer is None:
            self._send_timer = self.loop.call_later(self._settings.send_seconds, self._send_late)

    def resume_writing(self) -> None:
        """Go on when the caller has taken it."""
        super().resume_writing()
        if self._send_timer is not None:
            self._send_timer.cancel()
            self._send_timer = None

    def _send_late(self) -> None:
        self._part.count("cut_send")
        self.transport.abort()

    # ---------------------------------------------------------------- reading

    def data_received(self, data: bytes) -> None:
        """Read on; a header that grows beyond its limit is refused before it is complete."""
        if self._broken or self.transport.is_closing():
            return
        if self._in_header:
            self._header_bytes += len(data)
            if self._timer is None:
                # the first bytes after an answer, be they only empty lines
                self._timer = self.loop.call_later(self._settings.header_seconds, self._header_late)
        super().data_received(data)
        if self._in_header and self._header_bytes > self._settings.max_header_bytes and not self.transport.is_closing():
            self._refuse(431, f"the request header is larger than {self._settings.max_header_bytes} bytes", "refused_too_large")

    def on_url(self, url: bytes) -> None:
        """Take a part of the request target."""
        super().on_url(url)
        if len(self.url) > self._settings.max_url_bytes:
            self._blame(414, f"the request target is longer than {self._settings.max_url_bytes} bytes", "refused_too_large")

    def on_header(self, name: bytes, value: bytes) -> None:
        """Take a header field."""
        super().on_header(name, value)
        self._field_bytes += len(name) + len(value) + 4
        settings = self._settings
        if len(self.headers) > settings.max_header_fields:
            self._blame(431, f"the request has more than {settings.max_header_fields} header fields", "refused_too_large")
        if self._field_bytes > settings.max_header_bytes:
            self._blame(431, f"the request header is larger than {settings.max_header_bytes} bytes", "refused_too_large")

    def on_headers_complete(self) -> None:
        """Check what a request must be before the application sees it, then start it."""
        self._check_framing()
        self._clear_timer()
        self._in_header = False
        super().on_headers_complete()
        if self.parser.should_upgrade():
            # we speak nothing else, but the parser believes so and reads no further request
            self.cycle.keep_alive = False

    def on_message_complete(self) -> None:
        """Be ready for the next request."""
        super().on_message_complete()
        self._in_header = True
        self._header_bytes = self._field_bytes = 0

    def _check_framing(self) -> None:
        hosts = lengths = codings = 0
        for name, value in self.headers:
            hosts += name == b"host"
            lengths += name == b"content-length"
            if name == b"transfer-encoding":
                codings += 1
                if value.strip().lower() != b"chunked":
                    self._blame(400, "the only transfer coding that is read is chunked", "refused_malformed")
        if self.parser.get_http_version() not in ("1.0", "1.1"):
            self._blame(400, "the request is of no version of HTTP that is spoken here", "refused_malformed")
        if self.parser.should_upgrade() and (lengths or codings):
            self._blame(400, "a request to speak another protocol cannot have a body here", "refused_malformed")
        if lengths > 1 or codings > 1 or (lengths and codings):
            self._blame(400, "the request tells its length twice", "refused_malformed")
        if hosts > 1 or (hosts == 0 and self.parser.get_http_version() == "1.1"):
            self._blame(400, "the request has not exactly one Host", "refused_malformed")

    # ---------------------------------------------------------------- refusing

    def _blame(self, status: int, detail: str, event: str) -> None:
        """Stop the parser, which runs this as a callback; what it makes of the exception comes back as `send_400_response`.

        Raises:
            _FaultError: always.
        """
        self._fault = (status, detail, event)
        raise _FaultError

    def send_400_response(self, msg: str) -> None:  # noqa: ARG002  the server's own words, in place of which we say ours
        """Answer a request that cannot be read."""
        status, detail, event = self._fault or (400, "the request is not HTTP as RFC 9112 has it", "refused_malformed")
        self._refuse(status, detail, event)

    def _refuse(self, status: int, detail: str, event: str) -> None:
        """Answer a request that never became one, and close once the answer has had time to arrive."""
        if self._broken:
            return
        self._broken = True
        self._clear_timer()
        self._part.count(event)
        cycle: Any = self.cycle  # None at first, whatever it is declared as
        if cycle is not None and not cycle.response_complete:
            if not cycle.more_body:
                # a whole request before this one is still being answered: that answer is the last one here
                cycle.keep_alive = False
                return
            if cycle.response_started or self.pipeline:
                self._close()
                return
        self.transport.write(raw_refusal(status, detail))
        # closing on bytes that were not read would reset the connection and take the answer with it
        self._timer = self.loop.call_later(_LINGER_SECONDS, self._close)

    def shutdown(self) -> None:
        """Let the server stop: a request in hand is answered, one that may be on its way is waited for a moment."""
        cycle: Any = self.cycle
        if cycle is not None and not cycle.response_complete:
            cycle.keep_alive = False
        else:
            self._clear_timer()
            self._unset_keepalive_if_required()
            self._timer = self.loop.call_later(min(_QUIET_SECONDS, self._settings.grace_seconds / 2), self._quiet)

    def _quiet(self) -> None:
        self._timer = None
        if self._in_header and not self.transport.is_closing():
            self._close()
