"""A card tried on lots of last month: both bills, side by side."""

from dataclasses import replace
from datetime import date
from fractions import Fraction

from shared.billing.bill import Bill
from shared.billing.lot import Division
from shared.billing.problems import BillingProblem
from shared.billing.rates import Charge, RateCard
from shared.billing.trial import TriedLot, try_card
from tests.shared.billing.lots import HALVES, card, hung, lot_of

DAY = date(2026, 2, 10)
OLD = Charge("cut_and_wrap", "per_lb_hot", Fraction(70))
NEW = RateCard("2027", "New", date(2027, 1, 1), charges=(replace(OLD, rate=Fraction(75)),), id=0)


def beef(number: int = 1) -> TriedLot:
    return TriedLot(number, DAY, "custom", lot_of(hung("100", "200"), HALVES, OLD))


def test_the_worked_number() -> None:
    found = try_card(NEW, [card(OLD)], [beef()])
    assert [(one.owner, one.difference) for one in found.bills] == [
        ("Owner 1", 500),
        ("Owner 2", 1_000),
    ]
    first = found.bills[0]
    assert isinstance(first.old, Bill)
    assert isinstance(first.new, Bill)
    assert (first.old.total_cents, first.new.total_cents) == (7_000, 7_500)
    assert (found.old_cents, found.new_cents) == (21_000, 22_500)


def test_a_share_the_card_isnt_for_is_left_out() -> None:
    lamb_only = replace(NEW, species=("lamb",))
    assert try_card(lamb_only, [card(OLD)], [beef()]).bills == ()
    friends = replace(NEW, group="friends")
    lot = replace(beef(), groups={2: "friends"})
    assert [one.share for one in try_card(friends, [card(OLD)], [lot]).bills] == [2]
    particular = card(OLD, code="friends", group="friends")
    assert [one.share for one in try_card(NEW, [particular], [lot]).bills] == [1]


def test_what_was_kept_doesnt_hold_the_old_amount() -> None:
    lot = beef()
    billed = replace(lot.billed, kept=(Division("cut_and_wrap:1", 1, 7_000),))
    found = try_card(NEW, [card(OLD)], [replace(lot, billed=billed)])
    assert found.bills[0].difference == 500


def test_a_bill_that_cant_be_made_is_said_and_left_out_of_the_sums() -> None:
    lot = beef()
    twice = replace(lot.billed, shares=(*lot.billed.shares, lot.billed.shares[0]))
    found = try_card(NEW, [], [replace(lot, billed=twice), beef(2)])
    assert isinstance(found.bills[0].old, BillingProblem)
    assert found.bills[0].difference is None
    assert (found.old_cents, found.new_cents) == (21_000, 22_500)
