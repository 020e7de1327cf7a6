"""A kept bill comes back as it was issued, and its text never varies."""

import json
from dataclasses import replace
from fractions import Fraction

from shared.billing.bill import make_bill
from shared.billing.lot import Credit, with_extras
from shared.billing.problems import BillingProblem
from shared.billing.rates import Charge
from shared.billing.snapshot import from_snapshot, snapshot
from tests.shared.billing.lots import QUARTERS, good, hung, lot_of, paid, smoked


def test_a_bill_comes_back_whole() -> None:
    lot = lot_of(
        hung("300.5", "298", tag="Jørgen's <1>"),
        QUARTERS,
        Charge("kill", "per_head", Fraction(10_000), tax_rate=Fraction(6, 100)),
        Charge("cut_and_wrap", "per_lb_hot", Fraction(143, 2)),
        Charge("smoke", "per_lb_finished", Fraction(125)),
        made=[(smoked("3.5", complete=False),)] * 4,
    )
    lot = with_extras(lot, 1, credits_given=[Credit("Łucja’s <bag> torn", 125)])
    bill = good(make_bill(lot, 1, payments=[paid("deposit", 5_000)]))
    text = snapshot(bill)
    assert from_snapshot(text) == bill
    assert snapshot(replace(bill)) == text
    assert "Łucja’s <bag> torn" in text
    assert json.loads(text)["bill"] == 1


def test_a_card_is_no_bill() -> None:
    assert from_snapshot('{"rate_card":1,"value":{}}') == BillingProblem("damaged", {"at": ""})
    assert from_snapshot("") == BillingProblem("damaged", {"at": ""})
    assert from_snapshot('{"bill":2,"value":{}}') == BillingProblem(
        "too_new", {"found": "2", "known": "1"}
    )
