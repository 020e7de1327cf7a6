"""A lot put together from the order, its plan and its packages: the bill and the quote."""

from datetime import UTC, datetime
from fractions import Fraction

import pytest

from shared.billing.bill import make_bill
from shared.billing.division import divide
from shared.billing.lot import BilledLot, Division, billed_lot
from shared.billing.problems import BillingProblem
from shared.billing.rates import AppliesTo, Charge
from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass, Share
from shared.cutting.answer import Answer, PlanLine, Taken
from shared.cutting.forecast import Forecast, forecast
from shared.cutting.order import Amount, Choice, Question
from shared.shop.packages import PackageMade
from shared.units import NG_PER_LB, pounds_text
from tests.shared.billing.lots import HALVES, card, good, pounds

PORK = catalogue("pork")
CURED = next(
    (cut, code)
    for cut in PORK.cuts.values()
    for code in cut.finishes
    if PORK.finishes[code].cured and cut.kind != "pool"
)
RATES = card(
    Charge("kill", "per_head", Fraction(7_500)),
    Charge("cut_and_wrap", "per_lb_hot", Fraction(57)),
    Charge(
        "cure_and_smoke",
        "per_lb_finished",
        Fraction(105),
        applies_to=AppliesTo(finishes=(CURED[1],)),
    ),
)


def question() -> Question:
    hog = Carcass("pork", tag="31", skin="scalded", booked=pounds("200"))
    shares = (Share(1, "Ada", HALVES[0]), Share(2, "Ben", HALVES[1]))
    choice = Choice(1, 1, CURED[0].code, Amount("pieces", 1), finishes=(CURED[1],))
    nothing = Choice(2, 1, CURED[0].code, Amount("rest"))
    return Question((hog,), shares, (choice, nothing))


def foreseen() -> Forecast:
    made = PlanLine(
        1, 1, CURED[0].code, CURED[0].ways[0].code, 0, 1, 1, (Taken("x", Fraction(1)),),
        20 * NG_PER_LB,
    )  # fmt: skip
    return forecast(question(), Answer("sure", (made,), (), ()), PORK)


def lot(found: BilledLot | BillingProblem) -> BilledLot:
    assert isinstance(found, BilledLot), found
    return found


def test_a_quote_is_the_bill_on_the_plan_and_says_so() -> None:
    cards = {1: RATES, 2: RATES}
    quoted = lot(billed_lot(question(), PORK, cards, forecast=foreseen()))
    bill = good(make_bill(quoted, 1))
    line = foreseen().line(1)
    assert line is not None
    assert bill.estimate
    assert [(one.code, one.quantity) for one in bill.lines] == [
        ("kill", Fraction(1, 2)),
        ("cut_and_wrap", Fraction(100)),
        ("cure_and_smoke", Fraction(line.finished.mid, NG_PER_LB)),
    ]


def test_an_estimate_is_never_kept_as_a_division() -> None:
    """By head there is nothing to estimate; by the pound it all is."""
    quoted = lot(billed_lot(question(), PORK, {1: RATES, 2: RATES}, forecast=foreseen()))
    assert divide(quoted) == (Division("kill:1", 1, 3_750), Division("kill:1", 2, 3_750))


@pytest.mark.parametrize("complete", [True, False])
def test_a_bill_on_what_was_made(complete: bool) -> None:
    package = PackageMade(
        1, 1, 1, 1, 1, 1, CURED[0].code, "Ham", "Ada", pounds("12.35"), None, 1, (CURED[1],), "",
        datetime(2024, 4, 20, tzinfo=UTC), "Test", "Bench",
    )  # fmt: skip
    cards = {1: RATES, 2: RATES}
    done = (1, 2) if complete else ()
    found = lot(billed_lot(question(), PORK, cards, packages=[package], complete=done))
    bill = good(make_bill(found, 1))
    line = bill.line("cure_and_smoke:0")
    assert line is not None
    assert (line.kind, line.amount_cents) == (("charge", 1_297) if complete else ("waiting", 0))
    weights = bill.line("cut_and_wrap:1")
    assert weights is not None
    assert weights.waits_for == "hot"
    assert not bill.estimate
    assert pounds_text(package.net.nanograms, 2) == "12.35\u00a0lb"


def test_a_share_without_a_card_is_named() -> None:
    assert billed_lot(question(), PORK, {1: RATES}) == BillingProblem(
        "no_card", {"share": "2", "owner": "Ben"}
    )
