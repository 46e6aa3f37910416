"""Fixed objects along the line and the anchor zones that they ask for."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Annotated

from railrules_api.domain.anchoring import AnchorZone
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.track import Station

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from railrules_api.domain.patterns import FeatureRule


@dataclass(frozen=True, slots=True, kw_only=True)
class Feature:
    """A fixed object: a turnout, crossing, bridge, joint, or end of welded rail."""

    kind: Annotated[str, Field("Kind of object, by the id of its feature rule.")]
    begin: Station
    end: Annotated[
        float | None,
        Field("Station of its far end; left out: it stands at one station.", kind=Kind.LENGTH, at_least=-1e8, at_most=1e8),
    ] = None
    name: Annotated[str | None, Field("Name for the answer, such as `bridge 14.2`.")] = None


def zones_for_features(features: Iterable[Feature], rules: Mapping[str, FeatureRule]) -> tuple[AnchorZone, ...]:
    """Return the anchor zones that features ask for: one before, one within, one after, as far as their rules want them.

    The zones may overlap each other and reach past any stretch; `anchored_runs` merges them and keeps what lies in it.
    At 195 ft each way and ties at 19.5 in, a joint gets 120 ties on either side.

    Args:
        features: the objects.
        rules: what each kind asks for, by id.

    Raises:
        RefusedError: a kind without a rule, or an end that does not lie beyond its begin; paths begin with `features`.
    """
    zones: list[AnchorZone] = []
    for position, feature in enumerate(features):
        rule = rules.get(feature.kind)
        if rule is None:
            reason = "no rule for this kind of feature"
            raise refuse("features", position, "kind", reason=reason, value=feature.kind, allowed=tuple(sorted(rules)))
        if feature.end is not None and feature.end <= feature.begin:
            reason = "end must lie beyond begin"
            raise refuse("features", position, "end", reason=reason, value=feature.end, minimum=feature.begin)
        end = feature.begin if feature.end is None else feature.end
        called = feature.name or feature.kind
        if rule.approach_length > 0.0:
            zones.append(
                AnchorZone(
                    begin=feature.begin - rule.approach_length,
                    end=feature.begin,
                    anchoring="boxed",
                    reason=f"approach to {called}",
                )
            )
            zones.append(AnchorZone(begin=end, end=end + rule.approach_length, anchoring="boxed", reason=f"approach to {called}"))
        if rule.within != "as-adjoining" and end > feature.begin:
            zones.append(AnchorZone(begin=feature.begin, end=end, anchoring=rule.within, reason=called))
    return tuple(zones)
