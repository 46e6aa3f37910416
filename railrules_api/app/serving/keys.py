"""API keys: kept as hashes in a file, compared in constant time, each with its own quota.

A key is `rr_NAME_SECRET`. The name finds the entry; of the secret only the SHA-256 digest of the whole key is kept, which is
enough for 256 random bits (a slow hash protects words that people choose).
"""

from __future__ import annotations

import hashlib
import hmac
import re
import secrets
import time
import tomllib
from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Mapping
    from pathlib import Path

    from railrules_api.app.serving.board import Part

WINDOW = 60
"""Length of a quota's window [s]."""
USUAL_QUOTA = 600
MOST_KEYS = 1000
_NAME = re.compile(r"[a-z0-9][a-z0-9-]{0,39}")
_DIGEST = re.compile(r"[0-9a-f]{64}")
_FIELDS = {"sha256", "quota", "open"}
_NOBODY = "0" * 64


class KeysError(ValueError):
    """A file of keys that cannot be used; the message names the entry, never a digest."""


@dataclass(frozen=True, slots=True)
class Key:
    """An entry of the file.

    Attributes:
        name: who it is, as logs show it.
        digest: SHA-256 of the key in hexadecimal.
        quota: requests in one window.
        open: whether it may be used.
        place: position on the board.
    """

    name: str
    digest: str
    quota: int
    open: bool
    place: int


@dataclass(frozen=True, slots=True)
class Quota:
    """What is left of a key's quota.

    Attributes:
        limit: requests in one window.
        left: requests left; negative when more came than are allowed.
        seconds: until the window ends.
    """

    limit: int
    left: int
    seconds: int


def made(name: str) -> tuple[str, str]:
    """Make a key; return it and the entry for the file. The key itself is kept nowhere.

    Raises:
        KeysError: the name is not one.
    """
    if not _NAME.fullmatch(name):
        raise KeysError(f"{name!r}: a name of a-z, 0-9 and - is wanted")
    key = f"rr_{name}_{secrets.token_urlsafe(32)}"
    return key, f'[{name}]\nsha256 = "{digest_of(key)}"\nquota = {USUAL_QUOTA}  # requests a minute\nopen = true\n'


def digest_of(key: str) -> str:
    """Return the digest of a key."""
    return hashlib.sha256(key.encode()).hexdigest()


def load(path: Path) -> Mapping[str, Key]:
    """Read a file of keys: one TOML table a key, `[name]` with `sha256`, `quota` and `open`.

    Raises:
        KeysError: it cannot be read, or an entry is wrong.
    """
    try:
        tree = tomllib.loads(path.read_text(encoding="utf-8"))
    except (OSError, UnicodeDecodeError, tomllib.TOMLDecodeError) as error:
        raise KeysError(f"{path}: {error}") from error
    found: dict[str, Key] = {}
    for place, (name, entry) in enumerate(tree.items()):
        if not _NAME.fullmatch(name) or not isinstance(entry, dict) or not {"sha256"} <= entry.keys() <= _FIELDS:
            raise KeysError(f"{path}: [{name}]: a table with sha256 and, if wanted, quota and open is wanted")
        digest, quota, allowed = entry["sha256"], entry.get("quota", USUAL_QUOTA), entry.get("open", True)
        if not isinstance(digest, str) or not _DIGEST.fullmatch(digest):
            raise KeysError(f"{path}: [{name}] sha256: 64 hexadecimal digits are wanted")
        if type(quota) is not int or not 1 <= quota <= 10**9 or type(allowed) is not bool:
            raise KeysError(f"{path}: [{name}]: quota is a number from 1, open is true or false")
        found[name] = Key(name, digest, quota, allowed, place)
    if not 1 <= len(found) <= MOST_KEYS:
        raise KeysError(f"{path}: 1 to {MOST_KEYS} keys are wanted, not {len(found)}")
    return found


def recognised(authorization: bytes, keys: Mapping[str, Key]) -> Key | None:
    """Return whose key an Authorization header holds; None when it holds none of ours.

    The work is the same for a name that is not there, so that its being there cannot be timed.
    """
    scheme, _, sent = authorization.partition(b" ")
    try:
        text = sent.strip().decode("ascii") if scheme.lower() == b"bearer" else ""
    except UnicodeDecodeError:
        text = ""
    parts = text.split("_", 2)
    entry = keys.get(parts[1]) if len(parts) == 3 else None  # noqa: PLR2004  rr, name, secret
    same = hmac.compare_digest(digest_of(text), entry.digest if entry else _NOBODY)
    return entry if same else None


def spend(key: Key, part: Part) -> Quota:
    """Count a request against a key's quota and return what is left."""
    now = time.time()
    window = float(now // WINDOW)
    used = part.use(key.place, window)
    return Quota(key.quota, int(key.quota - used), max(1, int((window + 1) * WINDOW - now) + 1))
