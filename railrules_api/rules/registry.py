"""The registry: every rule, one line each. No import magic, no decorators with side effects."""

from __future__ import annotations

from types import MappingProxyType
from typing import TYPE_CHECKING, Any

from railrules_api.rules.quantities import ties
from railrules_api.rules.thermal import restrained_force

if TYPE_CHECKING:
    from collections.abc import Mapping

    from railrules_api.rules.model import Rule

ALL: tuple[Rule[Any, Any], ...] = (
    ties.RULE,
    restrained_force.RULE,
)
BY_ID: Mapping[str, Rule[Any, Any]] = MappingProxyType({rule.id: rule for rule in ALL})
