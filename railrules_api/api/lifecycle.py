"""How an operation tells that it is on its way out: `Deprecation` (RFC 9745), `Sunset` (RFC 8594) and links (RFC 8288).

The table of operations says it once; the answers' headers and `deprecated: true` in the document both follow from it.
"""

from __future__ import annotations

from dataclasses import dataclass
from email.utils import format_datetime
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from datetime import datetime


@dataclass(frozen=True, slots=True, kw_only=True)
class Lifecycle:
    """The end of an operation's life.

    Attributes:
        deprecated: since when it should not be used for new work; UTC.
        sunset: when it will be gone, never before it is deprecated; UTC.
        successor: path of the operation to use in its place; empty for none.
        about: address of a page that tells more; empty for none.
    """

    deprecated: datetime
    sunset: datetime | None = None
    successor: str = ""
    about: str = ""

    def __post_init__(self) -> None:
        """Refuse dates that nobody could keep to.

        Raises:
            ValueError: a date has no zone, or the sunset is before the deprecation.
        """
        for date in (self.deprecated, self.sunset):
            if date is not None and (date.tzinfo is None or date.utcoffset()):
                raise ValueError(f"{date} is not in UTC")
        if self.sunset is not None and self.sunset < self.deprecated:
            raise ValueError("the sunset is before the deprecation")

    def headers(self) -> dict[str, str]:
        """Return the header fields that every answer of the operation carries."""
        found = {"Deprecation": f"@{int(self.deprecated.timestamp())}"}
        if self.sunset is not None:
            found["Sunset"] = format_datetime(self.sunset, usegmt=True)
        links = [f'<{self.successor}>; rel="successor-version"'] if self.successor else []
        if self.about:
            links.append(f'<{self.about}>; rel="deprecation"; type="text/html"')
            if self.sunset is not None:
                links.append(f'<{self.about}>; rel="sunset"; type="text/html"')
        if links:
            found["Link"] = ", ".join(links)
        return found
