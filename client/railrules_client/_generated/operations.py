"""Resources of railrules 0.1.0, named as the trade names them. Made from the OpenAPI document; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, Literal, Unpack

from railrules_client._calls import Operation
from railrules_client._generated.models import (
    CatalogueRow,
    CatalogueTable,
    Health,
    RuleList,
    RuleRecord,
    RulebookList,
    SourceList,
    ThermalForceAnswer,
    TiesAnswer,
)

if TYPE_CHECKING:
    from collections.abc import Mapping

    from railrules_client._calls import AsyncCaller, Caller, CallOptions
    from railrules_client._generated.models import ThermalForceRequest, TiesRequest

_LIST_RAIL_SECTIONS: Final = Operation(
    "listRailSections",
    "GET",
    "/v1/rail-sections",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_RAIL_SECTION: Final = Operation(
    "getRailSection",
    "GET",
    "/v1/rail-sections/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_JOINT_BARS: Final = Operation(
    "listJointBars",
    "GET",
    "/v1/joint-bars",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_JOINT_BAR: Final = Operation(
    "getJointBar",
    "GET",
    "/v1/joint-bars/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_TIE_PLATES: Final = Operation(
    "listTiePlates",
    "GET",
    "/v1/tie-plates",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_TIE_PLATE: Final = Operation(
    "getTiePlate",
    "GET",
    "/v1/tie-plates/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_SPIKES: Final = Operation("listSpikes", "GET", "/v1/spikes", accept="application/json", answer=CatalogueTable)
_GET_SPIKE: Final = Operation("getSpike", "GET", "/v1/spikes/{id}", accept="application/json", answer=CatalogueRow)
_LIST_TIE_PLUGS: Final = Operation(
    "listTiePlugs",
    "GET",
    "/v1/tie-plugs",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_TIE_PLUG: Final = Operation(
    "getTiePlug",
    "GET",
    "/v1/tie-plugs/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_RAIL_ANCHORS: Final = Operation(
    "listRailAnchors",
    "GET",
    "/v1/rail-anchors",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_RAIL_ANCHOR: Final = Operation(
    "getRailAnchor",
    "GET",
    "/v1/rail-anchors/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_PLATE_PINS: Final = Operation(
    "listPlatePins",
    "GET",
    "/v1/plate-pins",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_PLATE_PIN: Final = Operation(
    "getPlatePin",
    "GET",
    "/v1/plate-pins/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_TRACK_BOLTS: Final = Operation(
    "listTrackBolts",
    "GET",
    "/v1/track-bolts",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_TRACK_BOLT: Final = Operation(
    "getTrackBolt",
    "GET",
    "/v1/track-bolts/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_PRESERVATIVES: Final = Operation(
    "listPreservatives",
    "GET",
    "/v1/preservatives",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_PRESERVATIVE: Final = Operation(
    "getPreservative",
    "GET",
    "/v1/preservatives/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_SPIKE_PATTERNS: Final = Operation(
    "listSpikePatterns",
    "GET",
    "/v1/spike-patterns",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_SPIKE_PATTERN: Final = Operation(
    "getSpikePattern",
    "GET",
    "/v1/spike-patterns/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_ANCHOR_PATTERNS: Final = Operation(
    "listAnchorPatterns",
    "GET",
    "/v1/anchor-patterns",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_ANCHOR_PATTERN: Final = Operation(
    "getAnchorPattern",
    "GET",
    "/v1/anchor-patterns/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_FEATURE_KINDS: Final = Operation(
    "listFeatureKinds",
    "GET",
    "/v1/feature-kinds",
    accept="application/json",
    answer=CatalogueTable,
)
_GET_KIND_OF_FEATURE: Final = Operation(
    "getKindOfFeature",
    "GET",
    "/v1/feature-kinds/{id}",
    accept="application/json",
    answer=CatalogueRow,
)
_LIST_RULES: Final = Operation("listRules", "GET", "/v1/rules", accept="application/json", answer=RuleList)
_GET_RULE: Final = Operation("getRule", "GET", "/v1/rules/{id}", accept="application/json", answer=RuleRecord)
_LIST_SOURCES: Final = Operation("listSources", "GET", "/v1/sources", accept="application/json", answer=SourceList)
_LIST_RULEBOOKS: Final = Operation(
    "listRulebooks",
    "GET",
    "/v1/rulebooks",
    accept="application/json",
    answer=RulebookList,
)
_CALCULATE_TIES: Final = Operation(
    "calculateTies",
    "POST",
    "/v1/quantities/ties",
    accept="application/json",
    answer=TiesAnswer,
    content_type="application/json",
)
_CALCULATE_FORCE: Final = Operation(
    "calculateForce",
    "POST",
    "/v1/thermal/force",
    accept="application/json",
    answer=ThermalForceAnswer,
    content_type="application/json",
)
_HEALTH_LIVE: Final = Operation("healthLive", "GET", "/health/live", accept="application/json", answer=Health)
_HEALTH_READY: Final = Operation("healthReady", "GET", "/health/ready", accept="application/json", answer=Health)


class AnchorPatternsResource:
    """`client.anchor_patterns`. List anchor patterns; get one anchor pattern."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List anchor patterns.

        Every row of the table of anchor patterns, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_LIST_ANCHOR_PATTERNS, options, query={"units": units})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one anchor pattern.

        One anchor pattern with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_GET_ANCHOR_PATTERN, options, path={"id": id}, query={"units": units})


class FeatureKindsResource:
    """`client.feature_kinds`. List kinds of feature; get one kind of feature."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List kinds of feature.

        Every row of the table of kinds of feature, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_LIST_FEATURE_KINDS, options, query={"units": units})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one kind of feature.

        One kind of feature with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_GET_KIND_OF_FEATURE, options, path={"id": id}, query={"units": units})


class HealthResource:
    """`client.health`. The process runs; requests can be answered."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def live(self, **options: Unpack[CallOptions]) -> Health:
        """The process runs.

        Answers 200 while it is so.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The service is up, and what it answers with.

        Raises:
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_HEALTH_LIVE, options)

    def ready(self, **options: Unpack[CallOptions]) -> Health:
        """Requests can be answered.

        Answers 200 while it is so.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The service is up, and what it answers with.

        Raises:
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_HEALTH_READY, options)


class JointBarsResource:
    """`client.joint_bars`. List joint bars; get one joint bar."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List joint bars.

        Every row of the table of joint bars, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_LIST_JOINT_BARS, options, query={"units": units})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one joint bar.

        One joint bar with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_GET_JOINT_BAR, options, path={"id": id}, query={"units": units})


class PlatePinsResource:
    """`client.plate_pins`. List plate pins; get one plate pin."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List plate pins.

        Every row of the table of plate pins, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_LIST_PLATE_PINS, options, query={"units": units})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one plate pin.

        One plate pin with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_GET_PLATE_PIN, options, path={"id": id}, query={"units": units})


class PreservativesResource:
    """`client.preservatives`. List preservatives; get one preservative."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List preservatives.

        Every row of the table of preservatives, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_LIST_PRESERVATIVES, options, query={"units": units})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one preservative.

        One preservative with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_GET_PRESERVATIVE, options, path={"id": id}, query={"units": units})


class QuantitiesResource:
    """`client.quantities`. What a relay takes, leaves and hauls: one resource a rule."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def ties(self, request: TiesRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> TiesAnswer:
        """Ties standing, kept and renewed.

        Ties stand at origin + k * spacing; a stretch owns those with begin <= x < end, so counts add up however the
        line is cut. The average per mile is a separate figure and is not rounded.

        Args:
            request: see `TiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            Answer of the rule `quantities.ties`: Ties standing, kept and renewed.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            TooLargeError: The request body is too large (413).
            RefusedError: The request is understood but its values are refused (422).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_CALCULATE_TIES, options, body=request)


class RailAnchorsResource:
    """`client.rail_anchors`. List rail anchors; get one rail anchor."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List rail anchors.

        Every row of the table of rail anchors, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_LIST_RAIL_ANCHORS, options, query={"units": units})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one rail anchor.

        One rail anchor with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_GET_RAIL_ANCHOR, options, path={"id": id}, query={"units": units})


class RailSectionsResource:
    """`client.rail_sections`. List rail sections; get one rail section."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(
        self,
        *,
        standard: str | None = None,
        mass_from: float | None = None,
        mass_to: float | None = None,
        base_from: float | None = None,
        base_to: float | None = None,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List rail sections.

        Every row of the table of rail sections, each value as its source prints it and with its place.

        Args:
            standard: Part of the name of the standard, in any case.
            mass_from: Smallest mass per length: lb/yd, or kg/m with units=si.
            mass_to: Largest mass per length: lb/yd, or kg/m with units=si.
            base_from: Smallest base width: in, or mm with units=si.
            base_to: Largest base width: in, or mm with units=si.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(
            _LIST_RAIL_SECTIONS,
            options,
            query={
                "standard": standard,
                "mass_from": mass_from,
                "mass_to": mass_to,
                "base_from": base_from,
                "base_to": base_to,
                "units": units,
            },
        )

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one rail section.

        One rail section with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_GET_RAIL_SECTION, options, path={"id": id}, query={"units": units})


class RulebooksResource:
    """`client.rulebooks`. List the rulebooks."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(self, **options: Unpack[CallOptions]) -> RulebookList:
        """List the rulebooks.

        The defaults that stand in where a request leaves something out, with their sources.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rulebooks of this service.

        Raises:
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_LIST_RULEBOOKS, options)


class RulesResource:
    """`client.rules`. List the rules; get one rule."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(self, **options: Unpack[CallOptions]) -> RuleList:
        """List the rules.

        The registry: formulas, inputs with units and limits, cautions and sources of every rule.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The registry of rules.

        Raises:
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_LIST_RULES, options)

    def get(self, id: str, /, **options: Unpack[CallOptions]) -> RuleRecord:
        """Get one rule.

        One record of the registry.

        Args:
            id: Id of the rule.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A rule as the registry has it.

        Raises:
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_GET_RULE, options, path={"id": id})


class SourcesResource:
    """`client.sources`. List the sources."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(self, **options: Unpack[CallOptions]) -> SourceList:
        """List the sources.

        Every document that a value or a rule cites.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            Every cited document.

        Raises:
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_LIST_SOURCES, options)


class SpikePatternsResource:
    """`client.spike_patterns`. List spike patterns; get one spike pattern."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List spike patterns.

        Every row of the table of spike patterns, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_LIST_SPIKE_PATTERNS, options, query={"units": units})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one spike pattern.

        One spike pattern with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_GET_SPIKE_PATTERN, options, path={"id": id}, query={"units": units})


class SpikesResource:
    """`client.spikes`. List spikes; get one spike."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List spikes.

        Every row of the table of spikes, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_LIST_SPIKES, options, query={"units": units})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one spike.

        One spike with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_GET_SPIKE, options, path={"id": id}, query={"units": units})


class ThermalResource:
    """`client.thermal`. Force, laying, breaks, restraint and stability of welded rail."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def force(
        self,
        request: ThermalForceRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> ThermalForceAnswer:
        """Thermal force in fully restrained rail.

        Axial force and stress of rail that cannot move, from the difference between its temperature and its neutral
        temperature. Independent of length; holds away from ends, joints and cuts, where nothing moves.

        Args:
            request: see `ThermalForceRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            Answer of the rule `thermal.force`: Thermal force in fully restrained rail.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            TooLargeError: The request body is too large (413).
            RefusedError: The request is understood but its values are refused (422).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_CALCULATE_FORCE, options, body=request)


class TiePlatesResource:
    """`client.tie_plates`. List tie plates; get one tie plate."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List tie plates.

        Every row of the table of tie plates, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_LIST_TIE_PLATES, options, query={"units": units})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one tie plate.

        One tie plate with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_GET_TIE_PLATE, options, path={"id": id}, query={"units": units})


class TiePlugsResource:
    """`client.tie_plugs`. List tie plugs; get one tie plug."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List tie plugs.

        Every row of the table of tie plugs, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_LIST_TIE_PLUGS, options, query={"units": units})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one tie plug.

        One tie plug with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_GET_TIE_PLUG, options, path={"id": id}, query={"units": units})


class TrackBoltsResource:
    """`client.track_bolts`. List track bolts; get one track bolt."""

    def __init__(self, caller: Caller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List track bolts.

        Every row of the table of track bolts, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_LIST_TRACK_BOLTS, options, query={"units": units})

    def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one track bolt.

        One track bolt with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return self._caller.call(_GET_TRACK_BOLT, options, path={"id": id}, query={"units": units})


class Resources:
    """Every resource of the service."""

    def __init__(self, caller: Caller) -> None:
        """Reach the resources through a caller."""
        self.anchor_patterns: AnchorPatternsResource = AnchorPatternsResource(caller)
        self.feature_kinds: FeatureKindsResource = FeatureKindsResource(caller)
        self.health: HealthResource = HealthResource(caller)
        self.joint_bars: JointBarsResource = JointBarsResource(caller)
        self.plate_pins: PlatePinsResource = PlatePinsResource(caller)
        self.preservatives: PreservativesResource = PreservativesResource(caller)
        self.quantities: QuantitiesResource = QuantitiesResource(caller)
        self.rail_anchors: RailAnchorsResource = RailAnchorsResource(caller)
        self.rail_sections: RailSectionsResource = RailSectionsResource(caller)
        self.rulebooks: RulebooksResource = RulebooksResource(caller)
        self.rules: RulesResource = RulesResource(caller)
        self.sources: SourcesResource = SourcesResource(caller)
        self.spike_patterns: SpikePatternsResource = SpikePatternsResource(caller)
        self.spikes: SpikesResource = SpikesResource(caller)
        self.thermal: ThermalResource = ThermalResource(caller)
        self.tie_plates: TiePlatesResource = TiePlatesResource(caller)
        self.tie_plugs: TiePlugsResource = TiePlugsResource(caller)
        self.track_bolts: TrackBoltsResource = TrackBoltsResource(caller)


class AsyncAnchorPatternsResource:
    """`client.anchor_patterns`. List anchor patterns; get one anchor pattern."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List anchor patterns.

        Every row of the table of anchor patterns, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_LIST_ANCHOR_PATTERNS, options, query={"units": units})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one anchor pattern.

        One anchor pattern with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_GET_ANCHOR_PATTERN, options, path={"id": id}, query={"units": units})


class AsyncFeatureKindsResource:
    """`client.feature_kinds`. List kinds of feature; get one kind of feature."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List kinds of feature.

        Every row of the table of kinds of feature, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_LIST_FEATURE_KINDS, options, query={"units": units})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one kind of feature.

        One kind of feature with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_GET_KIND_OF_FEATURE, options, path={"id": id}, query={"units": units})


class AsyncHealthResource:
    """`client.health`. The process runs; requests can be answered."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def live(self, **options: Unpack[CallOptions]) -> Health:
        """The process runs.

        Answers 200 while it is so.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The service is up, and what it answers with.

        Raises:
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_HEALTH_LIVE, options)

    async def ready(self, **options: Unpack[CallOptions]) -> Health:
        """Requests can be answered.

        Answers 200 while it is so.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The service is up, and what it answers with.

        Raises:
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_HEALTH_READY, options)


class AsyncJointBarsResource:
    """`client.joint_bars`. List joint bars; get one joint bar."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List joint bars.

        Every row of the table of joint bars, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_LIST_JOINT_BARS, options, query={"units": units})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one joint bar.

        One joint bar with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_GET_JOINT_BAR, options, path={"id": id}, query={"units": units})


class AsyncPlatePinsResource:
    """`client.plate_pins`. List plate pins; get one plate pin."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List plate pins.

        Every row of the table of plate pins, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_LIST_PLATE_PINS, options, query={"units": units})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one plate pin.

        One plate pin with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_GET_PLATE_PIN, options, path={"id": id}, query={"units": units})


class AsyncPreservativesResource:
    """`client.preservatives`. List preservatives; get one preservative."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List preservatives.

        Every row of the table of preservatives, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_LIST_PRESERVATIVES, options, query={"units": units})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one preservative.

        One preservative with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_GET_PRESERVATIVE, options, path={"id": id}, query={"units": units})


class AsyncQuantitiesResource:
    """`client.quantities`. What a relay takes, leaves and hauls: one resource a rule."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def ties(self, request: TiesRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> TiesAnswer:
        """Ties standing, kept and renewed.

        Ties stand at origin + k * spacing; a stretch owns those with begin <= x < end, so counts add up however the
        line is cut. The average per mile is a separate figure and is not rounded.

        Args:
            request: see `TiesRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            Answer of the rule `quantities.ties`: Ties standing, kept and renewed.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            TooLargeError: The request body is too large (413).
            RefusedError: The request is understood but its values are refused (422).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_CALCULATE_TIES, options, body=request)


class AsyncRailAnchorsResource:
    """`client.rail_anchors`. List rail anchors; get one rail anchor."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List rail anchors.

        Every row of the table of rail anchors, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_LIST_RAIL_ANCHORS, options, query={"units": units})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one rail anchor.

        One rail anchor with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_GET_RAIL_ANCHOR, options, path={"id": id}, query={"units": units})


class AsyncRailSectionsResource:
    """`client.rail_sections`. List rail sections; get one rail section."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(
        self,
        *,
        standard: str | None = None,
        mass_from: float | None = None,
        mass_to: float | None = None,
        base_from: float | None = None,
        base_to: float | None = None,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueTable:
        """List rail sections.

        Every row of the table of rail sections, each value as its source prints it and with its place.

        Args:
            standard: Part of the name of the standard, in any case.
            mass_from: Smallest mass per length: lb/yd, or kg/m with units=si.
            mass_to: Largest mass per length: lb/yd, or kg/m with units=si.
            base_from: Smallest base width: in, or mm with units=si.
            base_to: Largest base width: in, or mm with units=si.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(
            _LIST_RAIL_SECTIONS,
            options,
            query={
                "standard": standard,
                "mass_from": mass_from,
                "mass_to": mass_to,
                "base_from": base_from,
                "base_to": base_to,
                "units": units,
            },
        )

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one rail section.

        One rail section with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_GET_RAIL_SECTION, options, path={"id": id}, query={"units": units})


class AsyncRulebooksResource:
    """`client.rulebooks`. List the rulebooks."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(self, **options: Unpack[CallOptions]) -> RulebookList:
        """List the rulebooks.

        The defaults that stand in where a request leaves something out, with their sources.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rulebooks of this service.

        Raises:
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_LIST_RULEBOOKS, options)


class AsyncRulesResource:
    """`client.rules`. List the rules; get one rule."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(self, **options: Unpack[CallOptions]) -> RuleList:
        """List the rules.

        The registry: formulas, inputs with units and limits, cautions and sources of every rule.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The registry of rules.

        Raises:
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_LIST_RULES, options)

    async def get(self, id: str, /, **options: Unpack[CallOptions]) -> RuleRecord:
        """Get one rule.

        One record of the registry.

        Args:
            id: Id of the rule.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A rule as the registry has it.

        Raises:
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_GET_RULE, options, path={"id": id})


class AsyncSourcesResource:
    """`client.sources`. List the sources."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(self, **options: Unpack[CallOptions]) -> SourceList:
        """List the sources.

        Every document that a value or a rule cites.

        Args:
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            Every cited document.

        Raises:
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_LIST_SOURCES, options)


class AsyncSpikePatternsResource:
    """`client.spike_patterns`. List spike patterns; get one spike pattern."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List spike patterns.

        Every row of the table of spike patterns, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_LIST_SPIKE_PATTERNS, options, query={"units": units})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one spike pattern.

        One spike pattern with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_GET_SPIKE_PATTERN, options, path={"id": id}, query={"units": units})


class AsyncSpikesResource:
    """`client.spikes`. List spikes; get one spike."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List spikes.

        Every row of the table of spikes, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_LIST_SPIKES, options, query={"units": units})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one spike.

        One spike with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_GET_SPIKE, options, path={"id": id}, query={"units": units})


class AsyncThermalResource:
    """`client.thermal`. Force, laying, breaks, restraint and stability of welded rail."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def force(
        self,
        request: ThermalForceRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> ThermalForceAnswer:
        """Thermal force in fully restrained rail.

        Axial force and stress of rail that cannot move, from the difference between its temperature and its neutral
        temperature. Independent of length; holds away from ends, joints and cuts, where nothing moves.

        Args:
            request: see `ThermalForceRequest`; a mapping is sent as it stands.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            Answer of the rule `thermal.force`: Thermal force in fully restrained rail.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            TooLargeError: The request body is too large (413).
            RefusedError: The request is understood but its values are refused (422).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_CALCULATE_FORCE, options, body=request)


class AsyncTiePlatesResource:
    """`client.tie_plates`. List tie plates; get one tie plate."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List tie plates.

        Every row of the table of tie plates, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_LIST_TIE_PLATES, options, query={"units": units})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one tie plate.

        One tie plate with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_GET_TIE_PLATE, options, path={"id": id}, query={"units": units})


class AsyncTiePlugsResource:
    """`client.tie_plugs`. List tie plugs; get one tie plug."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List tie plugs.

        Every row of the table of tie plugs, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_LIST_TIE_PLUGS, options, query={"units": units})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one tie plug.

        One tie plug with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_GET_TIE_PLUG, options, path={"id": id}, query={"units": units})


class AsyncTrackBoltsResource:
    """`client.track_bolts`. List track bolts; get one track bolt."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the operations through a caller."""
        self._caller = caller

    async def list(self, *, units: Literal["us", "si"] | None = None, **options: Unpack[CallOptions]) -> CatalogueTable:
        """List track bolts.

        Every row of the table of track bolts, each value as its source prints it and with its place.

        Args:
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            The rows of a catalogue table that were asked for.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_LIST_TRACK_BOLTS, options, query={"units": units})

    async def get(
        self,
        id: str,
        /,
        *,
        units: Literal["us", "si"] | None = None,
        **options: Unpack[CallOptions],
    ) -> CatalogueRow:
        """Get one track bolt.

        One track bolt with each value's own provenance. An unknown id is answered with near matches.

        Args:
            id: Id of the row.
            units: Units of the numbers; the source's own when left out.
            **options: settings of this call alone: timeout, retries, headers, request_id, on_response.

        Returns:
            A row of a catalogue table. A value that is not known is left out, never zero.

        Raises:
            BadRequestError: The request is malformed (400).
            NotFoundError: There is no such resource (404).
            ServiceFailedError: The service failed (500).
        """
        return await self._caller.call(_GET_TRACK_BOLT, options, path={"id": id}, query={"units": units})


class AsyncResources:
    """Every resource of the service."""

    def __init__(self, caller: AsyncCaller) -> None:
        """Reach the resources through a caller."""
        self.anchor_patterns: AsyncAnchorPatternsResource = AsyncAnchorPatternsResource(caller)
        self.feature_kinds: AsyncFeatureKindsResource = AsyncFeatureKindsResource(caller)
        self.health: AsyncHealthResource = AsyncHealthResource(caller)
        self.joint_bars: AsyncJointBarsResource = AsyncJointBarsResource(caller)
        self.plate_pins: AsyncPlatePinsResource = AsyncPlatePinsResource(caller)
        self.preservatives: AsyncPreservativesResource = AsyncPreservativesResource(caller)
        self.quantities: AsyncQuantitiesResource = AsyncQuantitiesResource(caller)
        self.rail_anchors: AsyncRailAnchorsResource = AsyncRailAnchorsResource(caller)
        self.rail_sections: AsyncRailSectionsResource = AsyncRailSectionsResource(caller)
        self.rulebooks: AsyncRulebooksResource = AsyncRulebooksResource(caller)
        self.rules: AsyncRulesResource = AsyncRulesResource(caller)
        self.sources: AsyncSourcesResource = AsyncSourcesResource(caller)
        self.spike_patterns: AsyncSpikePatternsResource = AsyncSpikePatternsResource(caller)
        self.spikes: AsyncSpikesResource = AsyncSpikesResource(caller)
        self.thermal: AsyncThermalResource = AsyncThermalResource(caller)
        self.tie_plates: AsyncTiePlatesResource = AsyncTiePlatesResource(caller)
        self.tie_plugs: AsyncTiePlugsResource = AsyncTiePlugsResource(caller)
        self.track_bolts: AsyncTrackBoltsResource = AsyncTrackBoltsResource(caller)


__all__ = [
    "AnchorPatternsResource",
    "AsyncAnchorPatternsResource",
    "AsyncFeatureKindsResource",
    "AsyncHealthResource",
    "AsyncJointBarsResource",
    "AsyncPlatePinsResource",
    "AsyncPreservativesResource",
    "AsyncQuantitiesResource",
    "AsyncRailAnchorsResource",
    "AsyncRailSectionsResource",
    "AsyncResources",
    "AsyncRulebooksResource",
    "AsyncRulesResource",
    "AsyncSourcesResource",
    "AsyncSpikePatternsResource",
    "AsyncSpikesResource",
    "AsyncThermalResource",
    "AsyncTiePlatesResource",
    "AsyncTiePlugsResource",
    "AsyncTrackBoltsResource",
    "FeatureKindsResource",
    "HealthResource",
    "JointBarsResource",
    "PlatePinsResource",
    "PreservativesResource",
    "QuantitiesResource",
    "RailAnchorsResource",
    "RailSectionsResource",
    "Resources",
    "RulebooksResource",
    "RulesResource",
    "SourcesResource",
    "SpikePatternsResource",
    "SpikesResource",
    "ThermalResource",
    "TiePlatesResource",
    "TiePlugsResource",
    "TrackBoltsResource",
]
