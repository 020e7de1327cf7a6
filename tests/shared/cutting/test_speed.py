"""The planner is quick enough: CPU time, the best of several, against twice what is claimed.

The whole of the claims is measured by `python -m tests.bench plan`.
"""

import sys

import pytest

from shared.carcass import anatomy
from shared.cutting.plan import Planner, plan
from tests.bench.crowded import crowded, question_of, slow_orders
from tests.bench.full_orders import full_order
from tests.bench.plan import after_one_change, changed, cpu_ms, percentile
from tests.oracle.blocks import SPECIES

pytestmark = [
    pytest.mark.timed,
    pytest.mark.skipif(sys.gettrace() is not None, reason="under coverage the figures are false"),
]
QUARTERS = [question_of(full_order(f"speed {number}", "quarters")) for number in range(12)]
# Beef s1 once took 1,500 ms, beef 33 14 s, deer s5 700 and lamb s5 440; the claim is 20 ms. Pork
# s12, once 2,900 ms, still takes 30: pieces that take two lanes crowded between such as take one.
# Goat p1, of which nobody saw the end, takes 30, goat a3 175: two rows over 15 places, of which the
# last kerfs join those of one strip. Twice that; the others keep to twice the claim.
STILL_SLOW = {"goat_a3_142": 400, "goat_p1_2681": 70, "pork_s12_26": 70}


def test_percentiles_by_hand() -> None:
    hundred = [float(one) for one in range(1, 101)]
    assert (percentile(hundred, 0.5), percentile(hundred, 0.99)) == (50, 99)
    assert percentile([7.0], 0.99) == 7


def test_a_beef_of_four_quarters_is_planned_at_once() -> None:
    # The claim: 10 ms at the 99th percentile from scratch, 5 ms after one change.
    catalogue = anatomy.catalogue("beef")
    assert sum(len(one.choices) for one in QUARTERS) / len(QUARTERS) > 45
    assert max(cpu_ms(lambda q=one: plan(q, catalogue), 5) for one in QUARTERS) < 20
    assert max(after_one_change(one) for one in QUARTERS) < 10


def test_what_is_remembered_changes_no_answer() -> None:
    catalogue = anatomy.catalogue("beef")
    for form in ("quarters", "split halves", "quarters of every side"):
        for number in range(4):
            question = question_of(full_order(f"same {number}", form))
            planner, other = Planner(catalogue), changed(question)
            first = planner.answer(question)
            assert planner.answer(other) == plan(other, catalogue)
            assert planner.answer(question) == first == plan(question, catalogue)


@pytest.mark.parametrize(
    ("name", "order"), list(slow_orders()), ids=lambda one: one if isinstance(one, str) else ""
)
def test_orders_that_once_were_slow(name: str, order: dict[str, object]) -> None:
    catalogue, question = anatomy.catalogue(str(order["species"])), question_of(order)
    assert cpu_ms(lambda: plan(question, catalogue), 3) < STILL_SLOW.get(name, 40)


@pytest.mark.parametrize("peaceful", [True, False])
def test_twenty_choices_on_a_strip(peaceful: bool) -> None:
    # The claim: none over 20 ms; of 6,000 lots measured by hand the longest took 17.5.
    planners = {name: Planner(anatomy.catalogue(name)) for name in SPECIES}
    for number in range(40):
        order = crowded(f"strip {number}", peaceful, planners, strip=True)
        catalogue, question = anatomy.catalogue(order["species"]), question_of(order)
        assert {one["side"] for mine in order["shares"] for one in mine["holdings"]} < {1, 2}
        assert cpu_ms(lambda q=question, c=catalogue: plan(q, c), 3) < 40
