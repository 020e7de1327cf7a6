"""Storage and what else is billed on later bills of an order."""

from dataclasses import replace
from datetime import date
from fractions import Fraction

from shared.billing.bill import Bill, make_bill
from shared.billing.extras import (
    BilledExtra,
    Extras,
    Storing,
    first_day_that_costs,
    free_days,
    left_over,
    storing,
    told_again,
)
from shared.billing.lot import Asked, Credit, with_extras
from shared.billing.rates import Charge, RateCard, Step
from tests.shared.billing.lots import HALVES, card, good, hung, lot_of

STORAGE = Charge(
    "storage", "per_day", Fraction(0), asked=True, steps=(Step(Fraction(5), Fraction(500)),)
)
DELIVERY = Charge("delivery", "flat", Fraction(2_500), asked=True)
KILL = Charge("kill", "per_head", Fraction(5_001))
CARD: RateCard = card(STORAGE, DELIVERY)
FIRST = date(2026, 5, 1)


def of_bill(bill: Bill, number: int, day: date) -> list[BilledExtra]:
    return [
        BilledExtra(1, line.key, line.code, line.quantity or Fraction(0), number, day)
        for line in bill.lines
    ]


def test_storage_billed_three_times_costs_what_all_its_days_cost() -> None:
    """Free for five days, then $5: 3 days are free, 5 more are $15, 2 more $10; 10 at once $25."""
    lot = lot_of(hung("100", "100"), HALVES, STORAGE, KILL)
    before: list[BilledExtra] = []
    amounts, keys = [], []
    for number, days in enumerate((3, 5, 2), start=1):
        told = told_again(Extras((Asked("storage", Fraction(days)),)), before, CARD)
        bill = good(
            make_bill(with_extras(lot, 1, asked=told.asked), 1, already=[x.key for x in before])
        )
        line = next(one for one in bill.lines if one.code == "storage")
        assert line.quantity == days
        amounts.append(line.amount_cents)
        keys.append(line.key)
        before += of_bill(bill, number, FIRST)
    assert amounts == [0, 1_500, 1_000]
    assert keys == ["storage:0", "storage:0:2", "storage:0:3"]
    at_once = with_extras(lot, 1, asked=[Asked("storage", Fraction(10))])
    assert good(make_bill(at_once, 1)).lines[0].amount_cents == sum(amounts)


def test_a_minimum_is_charged_once() -> None:
    """$2 a day, at least $10: 3 days are $10, and 4 more make 7 days, $14: $4."""
    least = replace(STORAGE, rate=Fraction(200), steps=(), minimum=1_000)
    lot = lot_of(hung("100", "100"), HALVES, least)
    again = with_extras(lot, 1, asked=[Asked("storage", Fraction(4), before=Fraction(3), rounds=1)])
    assert good(make_bill(again, 1)).total_cents == 400


def test_a_second_delivery_costs_as_much_as_the_first() -> None:
    lot = lot_of(hung("100", "100"), HALVES, DELIVERY)
    first = BilledExtra(1, "delivery:0", "delivery", Fraction(1), 1, FIRST)
    told = told_again(Extras((Asked("delivery"),)), [first], CARD)
    bill = good(make_bill(with_extras(lot, 1, asked=told.asked), 1, already=["delivery:0"]))
    assert [(line.key, line.amount_cents) for line in bill.lines] == [("delivery:0:2", 2_500)]


def test_what_is_taken_off_later_comes_off_too() -> None:
    """Something taken off the first bill must not swallow what is taken off the second."""
    first = BilledExtra(1, "credit:1", "credit", Fraction(0), 1, FIRST)
    told = told_again(Extras((), (Credit("our mistake", 700),)), [first], CARD)
    lot = with_extras(lot_of(hung("100", "100"), HALVES, KILL), 1, credits_given=told.credits)
    bill = good(make_bill(lot, 1, already=["credit:1"]))
    assert [(one.key, one.amount_cents) for one in bill.lines if one.kind == "credit"] == [
        ("credit:2", -700)
    ]


def test_the_days_are_counted_from_ready_then_from_the_last_bill() -> None:
    today = date(2026, 5, 14)
    assert storing(None, today, []) is None
    assert storing(FIRST, today, []) == Storing(FIRST, today)
    assert Storing(FIRST, today).days == 13
    billed = BilledExtra(1, "storage:0", "storage", Fraction(8), 12, date(2026, 5, 9))
    told = storing(FIRST, today, [billed])
    assert told == Storing(date(2026, 5, 9), today, Fraction(8), 12)
    assert told is not None
    assert told.days == 5


def test_free_days_are_told_from_the_cards_first_step() -> None:
    assert free_days(CARD) == 5
    assert free_days(card(replace(STORAGE, rate=Fraction(100)))) == 0
    assert first_day_that_costs(Storing(FIRST, FIRST), CARD) == date(2026, 5, 7)
    assert first_day_that_costs(Storing(FIRST, FIRST, Fraction(8), 1), CARD) == date(2026, 5, 2)


def test_what_falls_to_the_producer_waits_for_his_bill() -> None:
    said = Extras((Asked("storage", Fraction(3)), Asked("delivery")), (Credit("ours", 100),))
    lot = lot_of(hung("100", "100"), HALVES, DELIVERY)
    bill = good(make_bill(with_extras(lot, 1, asked=said.asked), 1))
    assert left_over(said, bill, (), own=True) == Extras((Asked("storage", Fraction(3)),))
    assert left_over(said, bill, (), own=False) == said
    assert left_over(said, bill, ("delivery",), own=False).asked == said.asked[:1]
