"""A relay from plant to anchors, told with the numbers that the service gives to the demo job today."""

from __future__ import annotations

from html import escape
from string import Template
from typing import TYPE_CHECKING, Any

from railrules_api.api.replying import bind, worked
from railrules_api.api.resources import calculation_of
from railrules_api.domain.kinds import Kind
from railrules_api.drawing import track_chart
from railrules_api.drawing.sheet import shown
from railrules_api.pages.assets import read
from railrules_api.pages.layout import page, table
from railrules_api.sheets.sheet import VERDICTS

if TYPE_CHECKING:
    from railrules_api.api.service import Service
    from railrules_api.domain.amounts import Amount
    from railrules_api.rules.takeoff.job import Job
    from railrules_api.rules.takeoff.result import TakeoffResult

_UNITS = {
    Kind.LENGTH: "ft", Kind.MASS: "short_ton", Kind.VOLUME: "gal", Kind.FORCE: "lbf", Kind.TEMPERATURE: "degF",
    Kind.TEMPERATURE_CHANGE: "delta_degF",
}  # fmt: skip


def demo(service: Service) -> tuple[Job, TakeoffResult]:
    """Return the demo job and its answer."""
    resource = calculation_of("takeoffs")
    bound = bind(resource, read("static/demo-job.json"), service)
    found, _ = worked(resource, bound, service)
    return bound.given, found


def chart(service: Service, sheet: int) -> str | None:
    """Return a sheet of the demo's track chart; None where there is no such sheet."""
    job, result = demo(service)
    if not 1 <= sheet <= len(track_chart.sheets_of(job, "us")):
        return None
    return track_chart.draw(job, result, "us", sheet)


def _amount(amount: Amount | None) -> str:
    if amount is None:
        return ""
    if amount.kind is None:
        return f"{amount.value:,.2f}".removesuffix(".00")
    return shown(amount.value, amount.kind, _UNITS[amount.kind], 2) if amount.kind in _UNITS else f"{amount.value:g} (SI)"


def worked_relay(service: Service) -> bytes:
    """Return the page: its words are a packaged text, its numbers the answer's."""
    job, result = demo(service)
    plan, safety = result.rail[0], result.safety[0]
    made, laid, hauled = plan.supply, plan.layout, plan.trains
    orders = {order.item: order for order in result.orders}
    fewest = "No layout has fewer field welds." if laid.welds_are_fewest else "That no layout has fewer field welds is not shown."
    values = {
        "name": escape(job.name),
        "segment_count": len(result.segments),
        "length": shown(sum(segment.length for segment in result.segments), Kind.LENGTH, "mi", 2),
        "section": escape(plan.of),
        "segments": _segments(result),
        "stock_rails": made.stock_rails_per_string,
        "welds_each": made.plant_welds_per_string,
        "string_length": shown(made.string_length, Kind.LENGTH, "ft", 2),
        "strings": made.strings,
        "plant_welds": f"{made.plant_welds:,}",
        "field_welds": laid.field_welds,
        "junctions": laid.junctions,
        "closing_welds": laid.closing_welds,
        "cut_pieces": laid.cut_pieces,
        "cuts": laid.cuts,
        "offcuts": shown(laid.offcut_length, Kind.LENGTH, "ft", 1),
        "fewest": fewest,
        "sheets": _sheet_links(job),
        "train_strings": hauled.strings_per_train,
        "train_cars": hauled.cars_per_train,
        "trains": hauled.trains,
        "orders": _orders(orders, ("cross-ties", "tie-plates", "spikes", "tie-plugs", "plate-pins", "preservative")),
        "zones": _zones(result),
        "anchors": _orders(orders, ("anchors",)),
        "target": shown(safety.target, Kind.TEMPERATURE, "degF", 0),
        "hot": shown(safety.hot.force, Kind.FORCE, "lbf", 0),
        "cold": shown(abs(safety.cold.force), Kind.FORCE, "lbf", 0),
        "gap": shown(safety.break_gap.gap, Kind.LENGTH, "in", 2),
        "checks": _checks(result),
    }
    body = Template(read("text/worked.html").decode()).substitute(values)
    return page("A worked relay · handbook", body, here="/handbook", text=False)


def _sheet_links(job: Job) -> str:
    links = [
        f'<a href="/handbook/worked-relay/{number}">sheet {number}</a>'
        for number in range(1, len(track_chart.sheets_of(job, "us")) + 1)
    ]
    return "The track chart: " + ", ".join(links) + "."


def _segments(result: TakeoffResult) -> str:
    rows = [
        (
            escape(segment.name), shown(segment.begin, Kind.LENGTH, "mi", 2), shown(segment.end, Kind.LENGTH, "mi", 2),
            f"{segment.ties:,}", f"{segment.anchors:,}",
        )
        for segment in result.segments
    ]  # fmt: skip
    return table("Segments", ("segment", "from", "to", "ties", "anchors"), rows, right=(1, 2, 3, 4))


def _orders(orders: dict[str, Any], items: tuple[str, ...]) -> str:
    rows = []
    for item in items:
        order = orders.get(item)
        if order is not None:
            packages = "" if order.packages is None else f"{order.packages:,.0f} {order.package}s"
            share = f"{order.allowance * 100:g} %" if order.allowance else ""
            rows.append((escape(order.title), _amount(order.net), share, _amount(order.order), packages))
    return table("To order", ("item", "net", "allowance", "order", "packages"), rows, right=(1, 2, 3, 4))


def _zones(result: TakeoffResult) -> str:
    rows = [
        (escape(", ".join(zone.reasons)), shown(zone.begin, Kind.LENGTH, "mi", 3), shown(zone.end, Kind.LENGTH, "mi", 3),
         f"{zone.ties:,}", f"{zone.anchors:,}")
        for segment in result.segments
        for zone in segment.zones
    ]  # fmt: skip
    return table("Anchor zones as used", ("what asks for it", "from", "to", "ties", "anchors"), rows, right=(1, 2, 3, 4))


def _checks(result: TakeoffResult) -> str:
    rows = []
    for item in result.checks:
        check = item.check
        used = "" if check.utilisation is None else f"{check.utilisation * 100:.0f} %"
        verdict = f'<span class="verdict {check.verdict}">{" ".join(VERDICTS[check.verdict])}</span>'
        rows.append(
            (verdict, escape(check.title), _amount(check.demand), _amount(check.capacity), used, escape(check.would_pass) or "—")
        )
    heads = ("verdict", "check", "asked", "can bear", "used", "what would make it pass")
    return table("Checks, failed ones first", heads, rows, right=(2, 3, 4))
