"""Credit notes: nothing is given back twice, and never more than was billed."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from shared.billing.bill import Bill, make_bill
from shared.billing.credit_note import CreditNote, credit_from_text, credit_note, credit_text
from shared.billing.problems import BillingProblem
from shared.billing.rates import Charge
from tests.shared.billing.lots import WHOLE, good, hung, lot_of


def bill() -> Bill:
    """$50.25 with 6 % tax ($3.02, since 3.015 is rounded up) and $140.00 without."""
    kill = Charge("kill", "per_head", Fraction(5_025), tax_rate=Fraction(6, 100))
    cut = Charge("cut_and_wrap", "per_lb_hot", Fraction(70))
    return good(make_bill(lot_of(hung("100", "100"), (WHOLE,), kill, cut), 1))


def note(found: CreditNote | BillingProblem) -> CreditNote:
    assert isinstance(found, CreditNote), found
    return found


def test_a_whole_bill_is_credited_with_its_tax() -> None:
    whole = note(credit_note(bill(), 41, " wrong owner "))
    assert (whole.bill_number, whole.reason, whole.total_cents) == (41, "wrong owner", 19_327)
    assert whole.total_cents == bill().total_cents
    assert credit_from_text(credit_text(whole)) == whole


def test_one_line_or_a_part_of_it() -> None:
    line = note(credit_note(bill(), 41, "kill twice", keys=["kill:1"]))
    assert [(one.amount_cents, one.tax_cents) for one in line.lines] == [(5_025, 302)]
    part = note(credit_note(bill(), 41, "late", cents={"kill:1": 1_000}))
    assert [(one.amount_cents, one.tax_cents) for one in part.lines] == [(1_000, 60)]


def test_what_is_left_after_earlier_notes_is_all_there_is() -> None:
    first = note(credit_note(bill(), 41, "late", cents={"kill:1": 1_000}))
    rest = note(credit_note(bill(), 41, "wrong", earlier=[first]))
    assert first.total_cents + rest.total_cents == bill().total_cents
    assert credit_note(bill(), 41, "again", earlier=[first, rest]) == BillingProblem(
        "nothing_to_credit"
    )
    assert credit_note(bill(), 41, "more", cents={"kill:1": 4_026}, earlier=[first]) == (
        BillingProblem("more_than_billed", {"line": "kill:1", "left": "$40.25", "asked": "$40.26"})
    )


def test_what_cant_be_credited_is_said() -> None:
    assert credit_note(bill(), 41, "") == BillingProblem("reason_missing")
    assert credit_note(bill(), 41, "x", keys=["smoke:0"]) == BillingProblem(
        "no_such_line", {"line": "smoke:0"}
    )
    assert credit_note(bill(), 41, "x", cents={"kill:1": 0}) == BillingProblem(
        "not_positive", {"line": "kill:1"}
    )


@given(st.lists(st.integers(1, 3_000), max_size=6))
def test_no_run_of_credits_gives_back_more_than_was_billed(parts: list[int]) -> None:
    given_back: list[CreditNote] = []
    for cents in parts:
        found = credit_note(bill(), 41, "x", cents={"kill:1": cents}, earlier=given_back)
        if isinstance(found, CreditNote):
            given_back.append(found)
    last = credit_note(bill(), 41, "all", earlier=given_back)
    if isinstance(last, CreditNote):
        given_back.append(last)
    assert sum(one.total_cents for one in given_back) == bill().total_cents
