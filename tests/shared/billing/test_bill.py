"""Bills: every line's rule, what waits, who pays, tax, deposits and the balance."""

from dataclasses import replace
from fractions import Fraction

from shared.billing.bill import make_bill, make_producer_bill
from shared.billing.division import divide
from shared.billing.lot import Asked, Credit, Division, with_extras
from shared.billing.problems import BillingProblem
from shared.billing.rates import AppliesTo, Charge, Step
from shared.billing.stakes import PRODUCER
from shared.carcass.carcass import Carcass, Holding, SideWeights
from tests.shared.billing.lots import (
    HALVES,
    QUARTERS,
    WHOLE,
    card,
    good,
    hung,
    lot_of,
    paid,
    pounds,
    smoked,
)

KILL = Charge("kill", "per_head", Fraction(10_000))
CUT = Charge("cut_and_wrap", "per_lb_hot", Fraction(70))
SMOKE = Charge(
    "cure_and_smoke", "per_lb_finished", Fraction(125), applies_to=AppliesTo(finishes=("smoked",))
)


def test_a_bill_says_what_each_line_stands_on() -> None:
    lot = lot_of(hung("100", "98"), HALVES, KILL, CUT, SMOKE, made=[(smoked("9.5"),), ()])
    bill = good(make_bill(lot, 1))
    assert [
        (line.key, line.basis, line.quantity, line.unit, line.rate, line.rule, line.amount_cents)
        for line in bill.lines
    ] == [
        ("kill:1", "per_head", Fraction(1, 2), "head", 10_000, "shared", 5_000),
        ("cut_and_wrap:1", "per_lb_hot", Fraction(100), "lb", 70, "shared", 7_000),
        ("cure_and_smoke:0", "per_lb_finished", Fraction("9.5"), "lb", 125, "", 1_188),
    ]
    assert (bill.lines[1].whole_quantity, bill.lines[1].whole_cents) == (198, 13_860)
    assert (bill.animals, bill.total_cents) == (("114",), 13_188)
    assert [line.key for line in good(make_bill(lot, 2)).lines] == ["kill:1", "cut_and_wrap:1"]


def test_deposits_payments_and_refunds_leave_the_balance() -> None:
    payments = [paid("deposit", 5_000), paid("payment", 6_000, "card"), paid("refund", 500)]
    bill = good(make_bill(lot_of(hung("100", "98"), HALVES, KILL, CUT), 1, payments=payments))
    assert (bill.total_cents, bill.deposits_cents, bill.paid_cents) == (12_000, 5_000, 5_500)
    assert bill.due_cents == 1_500
    assert bill.paid[1].means == "card"


def test_tax_is_rounded_line_by_line() -> None:
    """6 % of $50.25 is $3.015, so $3.02; the line without tax bears none."""
    taxed = replace(KILL, rate=Fraction(5_025), tax_rate=Fraction(6, 100))
    bill = good(make_bill(lot_of(hung("1", "1"), (WHOLE,), taxed, CUT), 1))
    assert [line.tax_cents for line in bill.lines] == [302, 0]
    assert (bill.charges_cents, bill.tax_cents, bill.total_cents) == (5_165, 302, 5_467)


def test_what_isnt_made_yet_waits_and_is_billed_later() -> None:
    waiting = lot_of(
        hung("100", "98"), (WHOLE,), KILL, SMOKE, made=[(smoked("4", complete=False),)]
    )
    first = good(make_bill(waiting, 1))
    assert [(line.key, line.waits_for) for line in first.waiting] == [
        ("cure_and_smoke:0", "packages")
    ]
    assert first.total_cents == 10_000
    assert [(one.code, one.key) for one in first.cautions] == [("waiting", "cure_and_smoke:0")]
    done = lot_of(hung("100", "98"), (WHOLE,), KILL, SMOKE, made=[(smoked("9.5"),)])
    second = good(make_bill(done, 1, already={"kill:1"}))
    assert [line.key for line in second.lines] == ["cure_and_smoke:0"]


def test_pounds_going_in_are_waited_for_until_weighed_in() -> None:
    going_in = Charge("sausage", "per_lb_in", Fraction(150))
    dry = good(make_bill(lot_of(hung("1", "1"), (WHOLE,), going_in, made=[(smoked("8"),)]), 1))
    assert [line.waits_for for line in dry.waiting] == ["pounds_in"]
    made = [(smoked("8", into="10.5"),)]
    bill = good(make_bill(lot_of(hung("1", "1"), (WHOLE,), going_in, made=made), 1))
    assert (bill.lines[0].quantity, bill.total_cents) == (Fraction("10.5"), 1_575)


def test_packages_are_counted() -> None:
    wrap = Charge("package", "per_package", Fraction(35))
    made = [(smoked("8", packages=11),)]
    bill = good(make_bill(lot_of(hung("1", "1"), (WHOLE,), wrap, made=made), 1))
    assert (bill.lines[0].quantity, bill.lines[0].unit, bill.total_cents) == (11, "package", 385)


def test_packages_wrapped_by_count_are_charged_by_the_package_and_wait_by_the_pound() -> None:
    wrap = Charge("package", "per_package", Fraction(35))
    smoke = Charge("smoke", "per_lb_finished", Fraction(105))
    made = [(replace(smoked("8", packages=11), counted=4),)]
    bill = good(make_bill(lot_of(hung("1", "1"), (WHOLE,), wrap, smoke, made=made), 1))
    assert [(line.kind, line.quantity, line.waits_for) for line in bill.lines] == [
        ("charge", 11, ""),
        ("waiting", None, "not_weighed"),
    ]
    assert bill.total_cents == 385


def test_a_charge_falls_to_the_producer_or_the_owner() -> None:
    """The farmer pays the kill, the families the rest; his bill has all of it once."""
    kill = replace(KILL, rate=Fraction(10_001), falls_to="producer")
    lot = lot_of(hung("100", "98"), HALVES, kill, CUT)
    assert [good(make_bill(lot, number)).total_cents for number in (1, 2)] == [7_000, 6_860]
    bill = good(make_producer_bill(lot))
    assert [(line.key, line.quantity, line.amount_cents) for line in bill.lines] == [
        ("kill:1", 1, 10_001)
    ]
    assert (bill.owner, bill.share, bill.animals) == ("Producer", 0, ("114",))


def test_a_producer_who_keeps_a_half_has_both_on_one_bill() -> None:
    kill = replace(KILL, falls_to="producer")
    lot = replace(lot_of(hung("100", "98"), HALVES, kill, CUT), producer_share=2)
    bill = good(make_bill(lot, 2))
    assert [(line.key, line.amount_cents) for line in bill.lines] == [
        ("kill:1", 10_000),
        ("cut_and_wrap:1", 6_860),
    ]


def test_the_producers_card_decides_and_nothing_is_billed_twice() -> None:
    families = card(KILL, CUT)
    farmers = card(replace(KILL, falls_to="producer"))
    lot = replace(lot_of(hung("1", "1"), HALVES, *families.charges), producer_card=farmers)
    assert [line.code for line in good(make_bill(lot, 1)).lines] == ["cut_and_wrap"]
    assert good(make_producer_bill(lot)).total_cents == 10_000


def test_a_charge_left_to_a_producer_whose_card_lacks_it_is_said() -> None:
    lot = lot_of(hung("1", "1"), HALVES, replace(KILL, falls_to="producer"))
    lot = replace(lot, producer_card=card(CUT))
    assert make_bill(lot, 2) == BillingProblem(
        "producer_card_lacks", {"charge": "kill", "share": "1"}
    )


def test_delivery_and_storage_are_billed_where_they_are_asked() -> None:
    """Plant list: delivery $25 to 10 miles and $0.75 a mile beyond, as two charges of a card."""
    delivery = (
        Charge("delivery", "flat", Fraction(2_500), asked=True),
        Charge(
            "delivery_miles",
            "per_mile",
            Fraction(0),
            steps=(Step(Fraction(10), Fraction(75)),),
            asked=True,
        ),
    )
    lot = lot_of(hung("1", "1"), HALVES, *delivery)
    assert good(make_bill(lot, 1)).lines == ()
    far = with_extras(lot, 1, asked=[Asked("delivery"), Asked("delivery_miles", Fraction(14))])
    bill = good(make_bill(far, 1))
    assert [(line.amount_cents, line.rule) for line in bill.lines] == [(2_500, ""), (300, "steps")]
    assert good(make_bill(far, 2)).lines == ()


def test_fifty_dollars_smoking_a_pig_falls_on_those_who_smoke() -> None:
    """Plant list: pig $75 kill, $0.57 a lb, $50 smoking per pig; one half smokes: $25."""
    fee = Charge("smoke", "per_head", Fraction(5_000), applies_to=AppliesTo(finishes=("smoked",)))
    lot = lot_of(hung("90", "90"), HALVES, fee, made=[(smoked("0", complete=False),), ()])
    assert [good(make_bill(lot, number)).total_cents for number in (1, 2)] == [2_500, 0]


def test_thirty_months_and_over_is_a_charge_of_the_card() -> None:
    handling = Charge(
        "over_30_months",
        "per_head",
        Fraction(4_000),
        applies_to=AppliesTo(ages=("30_and_over", "unknown")),
    )
    old, young = (
        replace(hung("300", "300"), age="30_and_over"),
        replace(hung("300", "300"), age="under_30"),
    )
    assert good(make_bill(lot_of(old, (WHOLE,), handling), 1)).total_cents == 4_000
    assert good(make_bill(lot_of(young, (WHOLE,), handling), 1)).lines == ()


def test_credits_come_off_with_their_reason_and_a_hide_with_its_price() -> None:
    hide = Charge("hide_credit", "per_head", Fraction(1_201), credit=True)
    lot = with_extras(
        lot_of(hung("100", "100"), HALVES, CUT, hide),
        1,
        credits_given=[Credit("Steaks cut at 1 in, asked ¾ in", 500)],
    )
    bill = good(make_bill(lot, 1))
    assert [(line.kind, line.amount_cents, line.reason) for line in bill.lines] == [
        ("charge", 7_000, ""),
        ("charge", -601, ""),
        ("credit", -500, "Steaks cut at 1 in, asked ¾ in"),
    ]
    assert good(make_bill(lot, 2)).lines[1].amount_cents == -600


def test_credits_above_the_charges_are_told() -> None:
    lot = with_extras(lot_of(hung("1", "1"), HALVES, CUT), 1, credits_given=[Credit("ours", 500)])
    assert [one.code for one in good(make_bill(lot, 1)).cautions] == ["below_nothing"]


def test_an_animal_killed_but_not_cut_isnt_charged_by_the_pound() -> None:
    lot = replace(lot_of(hung("100", "98"), (WHOLE,), KILL, CUT), endings={0: "not_cut"})
    assert [line.code for line in good(make_bill(lot, 1)).lines] == ["kill"]


def test_the_bill_says_which_weight_it_stands_on() -> None:
    chilled = Charge("cut_and_wrap", "per_lb_chilled", Fraction(70))
    less = Charge("cut_and_wrap", "per_lb_hot_less_shrink", Fraction(70), shrink=Fraction(3, 100))
    cold = good(make_bill(lot_of(hung("100", "100"), (WHOLE,), chilled), 1))
    assert (cold.hanging.kind, cold.lines[0].waits_for) == ("chilled", "chilled")
    warm = good(make_bill(lot_of(hung("100", "100"), (WHOLE,), less), 1))
    assert (warm.hanging.kind, warm.hanging.pounds) == ("hot", 200)
    assert (warm.lines[0].quantity, warm.lines[0].shrink) == (194, Fraction(3, 100))
    assert warm.total_cents == 13_580


def test_half_of_an_unsplit_carcass_is_said() -> None:
    lamb = Carcass("lamb", tag="7", hot_whole=pounds("45.3"))
    bill = good(make_bill(lot_of(lamb, HALVES, CUT), 2))
    assert bill.hanging.pounds == Fraction("22.65")
    assert [one.code for one in bill.cautions] == ["half_of_whole"]


def test_a_share_that_isnt_there_is_said() -> None:
    found = make_bill(lot_of(hung("1", "1"), HALVES, CUT), 3)
    assert found == BillingProblem("no_such_share", {"share": "3"})


def test_the_producer_pays_made_flat_and_asked_charges_once_for_all() -> None:
    """3.33 lb and 3.33 lb at $1.05: $6.99 on the total, not two times $3.50."""
    smoke = Charge("smoke", "per_lb_finished", Fraction(105), falls_to="producer")
    papers = Charge("papers", "flat", Fraction(500), falls_to="producer")
    trip = Charge("delivery_miles", "per_mile", Fraction(75), falls_to="producer", asked=True)
    made = [(smoked("3.33"),), (smoked("3.33"),)]
    lot = lot_of(hung("1", "1"), HALVES, smoke, papers, trip, made=made)
    lot = with_extras(lot, 1, asked=[Asked("delivery_miles", Fraction(4))])
    lot = with_extras(lot, 2, asked=[Asked("delivery_miles", Fraction(6))])
    bill = good(make_producer_bill(lot))
    assert [(line.key, line.quantity, line.amount_cents) for line in bill.lines] == [
        ("smoke:0", Fraction("6.66"), 699),
        ("papers:0", 1, 500),
        ("delivery_miles:0", 10, 750),
    ]
    assert good(make_bill(lot, 1)).lines == ()


def test_the_producer_waits_while_any_owners_goods_are_unmade() -> None:
    smoke = Charge("smoke", "per_lb_finished", Fraction(105), falls_to="producer")
    made = [(smoked("3.33"),), (smoked("0", complete=False),)]
    bill = good(make_producer_bill(lot_of(hung("1", "1"), HALVES, smoke, made=made)))
    assert [(line.kind, line.waits_for) for line in bill.lines] == [("waiting", "packages")]


def test_what_the_producer_paid_is_kept_too() -> None:
    kill = replace(KILL, falls_to="producer")
    lot = lot_of(hung("1", "1"), HALVES, kill)
    kept = divide(lot)
    assert kept == (Division("kill:1", PRODUCER, 10_000),)
    dearer = replace(KILL, rate=Fraction(11_000), falls_to="producer")
    again = replace(lot_of(hung("1", "1"), HALVES, dearer), kept=kept)
    bill = good(make_producer_bill(again))
    assert (bill.total_cents, bill.cautions[0].code) == (10_000, "kept_differs")
    assert (bill.cautions[0].was, bill.cautions[0].now) == (10_000, 11_000)


def test_days_nobody_asked_for_cost_nothing() -> None:
    storage = Charge("storage", "per_day", Fraction(500))
    lot = lot_of(hung("1", "1"), HALVES, storage)
    assert good(make_bill(lot, 1)).lines == ()
    stayed = with_extras(lot, 1, asked=[Asked("storage", Fraction(3))])
    assert good(make_bill(stayed, 1)).total_cents == 1_500


def test_a_flat_charge_may_hang_on_an_order_line() -> None:
    fee = Charge("smoke", "flat", Fraction(900), applies_to=AppliesTo(cuts=("belly",)))
    lot = lot_of(hung("1", "1"), HALVES, fee, made=[(smoked("3"),), ()])
    assert [good(make_bill(lot, number)).total_cents for number in (1, 2)] == [900, 0]


def test_a_credit_is_given_on_one_bill_only() -> None:
    lot = with_extras(lot_of(hung("1", "1"), HALVES, KILL), 1, credits_given=[Credit("ours", 500)])
    assert good(make_bill(lot, 1, already={"credit:1"})).total_cents == 5_000


def test_an_owner_of_the_second_animal_has_only_that_on_his_bill() -> None:
    lot = lot_of(
        [hung("100", "100", "a"), hung("90", "90", "b")],
        (WHOLE, (Holding(1, 1), Holding(1, 2))),
        CUT,
        made=[(smoked("1"),), (smoked("1"),)],
    )
    bill = good(make_bill(lot, 2))
    assert (bill.animals, [line.tag for line in bill.lines]) == (("b",), ["b"])
    assert bill.total_cents == 12_600


def test_an_empty_lot_has_no_producers_bill() -> None:
    empty = replace(lot_of(hung("1", "1"), HALVES), shares=())
    assert make_producer_bill(empty) == BillingProblem("no_such_share", {"share": "0"})
    assert divide(empty) == ()


def test_a_cautious_bill_of_quarters_says_by_table() -> None:
    bill = good(make_bill(lot_of(hung("100", "100"), QUARTERS, CUT), 1))
    assert [(one.code, one.key) for one in bill.cautions] == [("by_table", "")]


def test_a_side_that_was_weighed_two_ways_bills_nobody() -> None:
    sides = SideWeights(pounds("300"), pounds("171.5"), pounds("128"))
    beef = Carcass("beef", tag="9", hot=(sides, SideWeights(pounds("300"))))
    lot = lot_of(beef, HALVES, CUT)
    assert make_bill(lot, 2) == BillingProblem("quarters_differ", {"tag": "9", "side": "1"})
