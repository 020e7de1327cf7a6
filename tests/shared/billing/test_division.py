"""Divided charges: shares add up to the animal for any weights, fractions and rates."""

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shared.billing.bill import make_bill
from shared.billing.division import divide, exact_amount, new_divisions, portions
from shared.billing.lot import BilledLot, Division
from shared.billing.problems import BillingProblem
from shared.billing.rates import AppliesTo, Basis, Charge, Step
from shared.carcass.carcass import Carcass, Holding, SideWeights
from shared.money import amount_of, round_half_up
from shared.units import Weight
from tests.shared.billing.lots import (
    HALVES,
    QUARTERS,
    SPLIT_QUARTERS,
    WHOLE,
    good,
    hung,
    lot_of,
    smoked,
)

RATES = st.builds(Fraction, st.integers(0, 2_000_000), st.sampled_from([1, 2, 8, 100, 1_000]))
SIDES = st.builds(Weight, st.integers(1, 500_000), st.just("lb"), st.sampled_from([0, -1, -2, -3]))
WAYS = st.sampled_from(
    [
        (WHOLE,),
        HALVES,
        QUARTERS,
        SPLIT_QUARTERS,
        (*QUARTERS[:2], HALVES[1]),
        (HALVES[0], *SPLIT_QUARTERS[2:]),
        ((*QUARTERS[0], *QUARTERS[3]), (*QUARTERS[1], *QUARTERS[2])),
    ]
)
CHARGED: list[Basis] = ["per_head", "per_lb_hot", "per_lb_hot_less_shrink"]


@st.composite
def thirds(draw: st.DrawFn) -> tuple[tuple[Holding, ...], ...]:
    """Both sides cut together and shared in any fractions that add up to the animal."""
    parts = draw(st.lists(st.integers(1, 20), min_size=1, max_size=6))
    fractions = [Fraction(part, sum(parts)) for part in parts]
    return tuple((Holding(0, 1, "", one), Holding(0, 2, "", one)) for one in fractions)


@given(SIDES, SIDES, st.one_of(WAYS, thirds()), RATES, st.sampled_from(CHARGED))
def test_the_shares_of_an_animal_add_up_to_it(
    first: Weight,
    second: Weight,
    holdings: tuple[tuple[Holding, ...], ...],
    rate: Fraction,
    basis: Basis,
) -> None:
    """Each within a cent of his own rate × quantity, together the animal's amount exactly."""
    beef = Carcass("beef", hot=(SideWeights(first), SideWeights(second)))
    shrink = Fraction(3, 100) if basis == "per_lb_hot_less_shrink" else Fraction(0)
    lot = lot_of(beef, holdings, Charge("fee", basis, rate, shrink=shrink))
    animal = (first.pounds + second.pounds) * (1 - shrink)
    whole = amount_of(rate, 1 if basis == "per_head" else animal)
    bills = [good(make_bill(lot, share.number)) for share in lot.shares]
    assert sum(bill.total_cents for bill in bills) == whole
    for bill in bills:
        line = bill.lines[0]
        assert line.quantity is not None
        assert abs(line.amount_cents - rate * line.quantity) <= Fraction(3, 2)
        assert line.whole_cents in (None, whole)


@given(
    st.lists(st.fractions(0, 40, max_denominator=100), min_size=4, max_size=4).filter(any), RATES
)
def test_what_is_made_adds_up_too_once_all_of_it_is_made(
    finished: list[Fraction], rate: Fraction
) -> None:
    made = [(smoked(str(one)),) for one in finished]
    charge = Charge("smoke", "per_lb_finished", rate)
    lot = lot_of(hung("100", "100"), SPLIT_QUARTERS, charge, made=made)
    bills = [good(make_bill(lot, number)) for number in (1, 2, 3, 4)]
    assert sum(bill.total_cents for bill in bills) == amount_of(rate, sum(finished))


@given(SIDES, SIDES, WAYS, RATES, st.integers(0, 100_000), st.lists(RATES, min_size=2, max_size=2))
def test_minimums_and_steps_keep_the_sum(
    first: Weight,
    second: Weight,
    holdings: tuple[tuple[Holding, ...], ...],
    rate: Fraction,
    minimum: int,
    beyond: list[Fraction],
) -> None:
    beef = Carcass("beef", hot=(SideWeights(first), SideWeights(second)))
    steps = (Step(Fraction(100), beyond[0]), Step(Fraction(250), beyond[1]))
    lot = lot_of(beef, holdings, Charge("fee", "per_lb_hot", rate, minimum=minimum, steps=steps))
    animal = first.pounds + second.pounds
    exact = (
        rate * min(animal, 100)
        + beyond[0] * (min(animal, 250) - min(animal, 100))
        + beyond[1] * (animal - min(animal, 250))
    )
    bills = [good(make_bill(lot, share.number)) for share in lot.shares]
    assert sum(bill.total_cents for bill in bills) == max(minimum, round_half_up(exact))


def test_the_odd_cent_goes_to_the_lower_share_number() -> None:
    lot = lot_of(hung("100", "100"), HALVES, Charge("kill", "per_head", Fraction(5_001)))
    assert divide(lot) == (Division("kill:1", 1, 2_501), Division("kill:1", 2, 2_500))


def test_a_quarter_is_a_quarter_by_head_whether_fore_or_hind() -> None:
    """Settled for the shop: $100.02 on four quarters; the two odd cents to shares 1 and 2."""
    lot = lot_of(hung("100", "120"), QUARTERS, Charge("kill", "per_head", Fraction(10_002)))
    found = divide(lot)
    assert not isinstance(found, BillingProblem)
    assert [one.cents for one in found] == [2_501, 2_501, 2_500, 2_500]


def test_owners_on_different_rates_are_sets_of_their_own() -> None:
    """Share 1 has friends' rates: half a head at $80 beside half a head at $100."""
    lot = lot_of(hung("100", "100"), HALVES, Charge("kill", "per_head", Fraction(10_001)))
    friend = replace(lot.shares[0].card, charges=(Charge("kill", "per_head", Fraction(8_001)),))
    lot = replace(lot, shares=(replace(lot.shares[0], card=friend), lot.shares[1]))
    found = divide(lot)
    assert not isinstance(found, BillingProblem)
    assert [one.cents for one in found] == [4_001, 5_001]


def test_everybody_on_the_animal_waits_for_its_last_weight() -> None:
    lot = lot_of(hung("100", None), HALVES, Charge("cut_and_wrap", "per_lb_hot", Fraction(65)))
    bill = good(make_bill(lot, 1))
    assert divide(lot) == ()
    assert [(line.kind, line.waits_for, line.amount_cents) for line in bill.lines] == [
        ("waiting", "hot", 0)
    ]


def test_a_kept_division_stands_when_a_weight_is_corrected_later() -> None:
    charge = Charge("cut_and_wrap", "per_lb_hot", Fraction(65))
    before = lot_of(hung("100", "100"), HALVES, charge)
    kept = divide(before)
    assert not isinstance(kept, BillingProblem)
    after = replace(before, animals=(hung("110", "100"),), kept=kept)
    bill = good(make_bill(after, 1))
    assert (bill.total_cents, bill.lines[0].rule) == (6_500, "kept")
    assert [(one.code, one.key, one.was, one.now) for one in bill.cautions] == [
        ("kept_differs", "cut_and_wrap:1", 6_500, 7_150)
    ]
    unchanged = good(make_bill(replace(before, kept=kept), 1))
    assert (unchanged.lines[0].rule, unchanged.cautions) == ("shared", ())


def test_only_what_is_new_is_handed_to_the_store_again() -> None:
    kill, smoke = (
        Charge("kill", "per_head", Fraction(5_001)),
        Charge("smoke", "per_lb_finished", Fraction(105)),
    )
    made = [
        (smoked("3.33"),),
        (smoked("0", packages=0, complete=False),),
    ]
    early = lot_of(hung("100", "100"), HALVES, kill, smoke, made=made)
    first = new_divisions(early)
    assert first == (
        Division("kill:1", 1, 2_501),
        Division("kill:1", 2, 2_500),
        Division("smoke:0", 1, 350),
    )
    waiting = good(make_bill(early, 2)).line("smoke:0")
    assert waiting is not None
    assert waiting.waits_for == "packages"
    late = lot_of(hung("100", "100"), HALVES, kill, smoke, made=[made[0], (smoked("3.33"),)])
    # 6.66 lb at $1.05 are $6.993, $6.99 for both: $3.50 are billed, $3.49 are left.
    assert new_divisions(replace(late, kept=first)) == (Division("smoke:0", 2, 349),)
    assert good(make_bill(replace(late, kept=first), 1)).cautions == ()


def test_a_share_that_came_after_the_first_bill_pays_for_itself() -> None:
    lot = lot_of(hung("100", "100"), HALVES, Charge("kill", "per_head", Fraction(5_001)))
    found = portions(replace(lot, kept=(Division("kill:1", 1, 2_400),)))
    assert not isinstance(found, BillingProblem)
    assert [(one.share, one.cents, one.rule) for one in found] == [
        (1, 2_400, "kept"),
        (2, 2_501, ""),
    ]


@pytest.mark.parametrize(
    ("hot", "amounts"),
    [("40", [2_330, 2_329]), ("100", [9_700, 9_700])],
)
def test_a_published_minimum_is_the_animals(hot: str, amounts: list[int]) -> None:
    """A published small-stock price list of a plant: $0.97 a lb, minimum $46.59.

    Two halves of 20 lb share the minimum: $23.30 and $23.29.
    """
    side = str(Fraction(hot) / 2) if hot == "40" else hot
    slaughter = Charge("kill", "per_lb_hot", Fraction(97), minimum=4_659)
    found = divide(lot_of(hung(side, side), HALVES, slaughter))
    assert not isinstance(found, BillingProblem)
    assert [one.cents for one in found] == amounts


def test_a_minimum_may_be_each_shares() -> None:
    fee = Charge("kill", "per_lb_hot", Fraction(97), minimum=4_659, per_share_minimum=True)
    bill = good(make_bill(lot_of(hung("20", "60"), HALVES, fee), 1))
    assert (bill.lines[0].amount_cents, bill.lines[0].rule) == (4_659, "minimum")
    assert good(make_bill(lot_of(hung("20", "60"), HALVES, fee), 2)).total_cents == 5_820


def test_half_an_animal_alone_on_its_rate_owes_half_the_minimum() -> None:
    lot = lot_of(hung("20", "20"), HALVES[:1], Charge("k", "per_lb_hot", Fraction(1), minimum=101))
    assert divide(replace(lot, animals=(hung("20", None),))) == (Division("k:1", 1, 51),)


def test_steps_count_what_lies_above_them() -> None:
    """Plant list: storage $5 a day after 5 days. Seven days are $10."""
    storage = Charge("storage", "per_day", Fraction(0), steps=(Step(Fraction(5), Fraction(500)),))
    assert [exact_amount(storage, Fraction(days)) for days in (4, 5, 7)] == [0, 0, 1_000]


def test_two_animals_are_divided_one_by_one() -> None:
    holdings = ((Holding(0, 1), Holding(1, 1)), (Holding(0, 2), Holding(1, 2)))
    lot = lot_of([hung("1", "1"), hung("1", "1")], holdings, Charge("k", "per_head", Fraction(1)))
    assert divide(lot) == tuple(
        Division(f"k:{animal}", share, cents)
        for animal in (1, 2)
        for share, cents in ((1, 1), (2, 0))
    )


def test_strangers_in_one_lot_never_share_what_they_made() -> None:
    """Two hogs of two owners: each rounds for himself, nobody carries another's half cent."""
    holdings = ((Holding(0, 1), Holding(0, 2)), (Holding(1, 1), Holding(1, 2)))
    made = [(smoked("0.5"),), (smoked("0.5"),)]
    lot = lot_of(
        [hung("1", "1")] * 2, holdings, Charge("s", "per_lb_finished", Fraction(1)), made=made
    )
    assert divide(lot) == (Division("s:0", 1, 1), Division("s:0", 2, 1))


def test_an_animal_sold_twice_is_said() -> None:
    lot = lot_of(hung("1", "1"), (WHOLE, HALVES[0]), Charge("k", "per_head", Fraction(1)))
    assert divide(lot) == BillingProblem("shares_over", {"animal": "1", "side": "1"})
    twice = lot_of(hung("1", "1"), (HALVES[0], HALVES[0]), Charge("k", "per_head", Fraction(1)))
    assert new_divisions(twice) == make_bill(twice, 2) == divide(lot)


def test_a_fore_share_that_is_no_part_of_a_side_is_said() -> None:
    lot: BilledLot = lot_of(hung("1", "1"), HALVES)
    found = divide(replace(lot, fore_share=Fraction(55)))
    assert found == BillingProblem("fore_share_absurd", {"fore_share": "55"})


def test_a_heavier_animal_is_waited_for_before_its_class_is_known() -> None:
    from_300 = AppliesTo(hot_from=Fraction(300))
    heavy = Charge("kill", "per_head", Fraction(9_000), applies_to=from_300)
    sides = (("200", None), ("149", "150"), ("150", "150"))
    bills = [good(make_bill(lot_of(hung(*one), (WHOLE,), heavy), 1)) for one in sides]
    assert [[(line.waits_for, line.amount_cents) for line in bill.lines] for bill in bills] == [
        [("hot", 0)],
        [],
        [("", 9_000)],
    ]
