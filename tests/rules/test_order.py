from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from railrules_api.domain.amounts import Amount
from railrules_api.domain.kinds import Kind
from railrules_api.rules.ordering import AllowanceTerms, ItemTerms, order_lines
from railrules_api.rules.quantities import order as rule
from railrules_api.rules.quantities.lines import Line
from railrules_api.rules.quantities.order import OrderInput, OrderResult
from tests.rules.stretches import POUND, refused_at


def ordered(net: float, kind: Kind | None = None, **rest: Any) -> OrderResult:
    return rule.evaluate(OrderInput(net=Amount(net, kind), **rest))


def test_trautwine_spikes_from_ties_to_kegs() -> None:
    result = ordered(9328.0 + 88.0, extra=Amount(584.0), mass_each=0.5 * POUND, package_size=Amount(150 * POUND, Kind.MASS))
    assert result.order == Amount(10_000.0)
    assert result.mass == pytest.approx(5000 * POUND)
    assert result.packages_exact == pytest.approx(100 / 3)
    assert result.packages == 34
    full = ordered(
        9416.0, extra=Amount(584.0), mass_each=0.5 * POUND, package_size=Amount(150 * POUND, Kind.MASS), whole_packages=True
    )
    assert full.mass == pytest.approx(34 * 150 * POUND)


@pytest.mark.parametrize(("net", "order"), [(2978.46, 2979), (3249.23, 3250), (2880.0000000001, 2880), (0.0, 0)])
def test_counts_are_rounded_up_once(net: float, order: float) -> None:
    assert ordered(net).order.value == order


def test_allowance_is_added_before_the_rounding() -> None:
    assert ordered(100.4, allowance=0.05).order.value == 106
    assert ordered(100.0, allowance=0.05).order.value == 105


def test_measured_amounts_are_not_rounded_without_a_step() -> None:
    assert ordered(1.234, Kind.VOLUME).order.value == 1.234
    assert ordered(1.234, Kind.VOLUME, step=Amount(0.5, Kind.VOLUME)).order.value == 1.5
    assert ordered(12.0, Kind.LENGTH, net_mass=600.0, allowance=0.5).mass == pytest.approx(900.0)
    assert ordered(7.0, Kind.MASS).mass == 7.0


def test_whole_packages_fill_the_last_one() -> None:
    result = ordered(13_001.0, package_size=Amount(500.0), whole_packages=True, mass_each=0.1)
    assert (result.order.value, result.packages) == (13_500.0, 27.0)
    assert result.mass == pytest.approx(1350.0)
    assert ordered(0.0, package_size=Amount(10.0, Kind.MASS), net_mass=0.0).packages == 0


def test_refusals_name_their_field() -> None:
    assert refused_at(lambda: ordered(-1.0)) == ("net", "value")
    assert refused_at(lambda: ordered(1.0, step=Amount(1.0, Kind.MASS))) == ("step",)
    assert refused_at(lambda: ordered(1.0, Kind.LENGTH, step=Amount(1.0))) == ("step",)
    assert refused_at(lambda: ordered(1.0, step=Amount(0.0))) == ("step", "value")
    assert refused_at(lambda: ordered(1.0, extra=Amount(-1.0))) == ("extra", "value")
    assert refused_at(lambda: ordered(1.0, package_size=Amount(1.0, Kind.MASS))) == ("package_size",)
    assert refused_at(lambda: ordered(1.0, mass_each=1.0, net_mass=1.0)) == ("mass_each",)
    assert refused_at(lambda: ordered(1.0, Kind.LENGTH, mass_each=1.0)) == ("mass_each",)


@settings(max_examples=200, deadline=None)
@given(st.floats(0, 1e6), st.floats(0, 0.5), st.integers(1, 1000))
def test_packages_counted_from_the_order_are_those_of_the_total(net: float, allowance: float, size: int) -> None:
    """Rounding to pieces and then to packages never costs a package more than rounding to packages at once."""
    result = ordered(net, allowance=allowance, package_size=Amount(float(size)))
    assert result.packages is not None
    assert result.with_allowance.value <= result.order.value * (1 + 1e-9) + 1e-9
    assert result.order.value < result.with_allowance.value + 1
    assert (result.packages - 1) * size < result.with_allowance.value * (1 + 1e-9) or result.packages == 0


def test_packages_of_the_job_go_before_those_of_product_and_catalogue() -> None:
    """A job's own keg of 200 against one of 350 of the product and 500 of the catalogue: 1,001 spikes fill 6, not 3 or 3."""
    terms = ItemTerms(
        item="spikes", title="Spikes", direction="order", order_step=1.0, package="keg", package_size=500.0, allowance=0.0
    )
    line = Line(item="spikes", product="", net=Amount(1001.0), package="box", package_size=Amount(350.0))
    (own,) = order_lines([line], {"spikes": terms}, AllowanceTerms(packages={"spikes": ("bag", 200.0)}))
    assert (own.package, own.packages, own.order.value) == ("bag", 6, 1001.0)
    (product,) = order_lines([line], {"spikes": terms}, AllowanceTerms())
    assert (product.package, product.packages) == ("box", 3)
