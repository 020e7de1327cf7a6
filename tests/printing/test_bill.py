"""The bill's paper says what the bill says, to the cent, on one page and on both paper sizes."""

from dataclasses import replace
from datetime import date
from fractions import Fraction

import pytest

from printing.bill import bill as print_bill
from printing.bill import quantity_text
from printing.words import Words
from shared.billing.bill import Bill, BillLine, make_bill
from shared.billing.late import late_bill, late_interest
from shared.billing.lot import Asked, BilledLot, Credit, with_extras
from shared.billing.rates import Charge, LateTerms
from shared.shop.details import ShopDetails
from tests.printing.pages import (
    MADE,
    NAME,
    SHOP,
    SHOP_A4,
    SIZES,
    SPANISH,
    WORDS,
    amounts,
    pages,
    places,
    size,
    text,
)
from tests.shared.billing.lots import (
    HALVES,
    QUARTERS,
    WHOLE,
    good,
    hung,
    lot_of,
    paid,
    smoked,
)

# Michigan State Univ. Extension, pricing worksheet of 1 Apr 2024 (grain-fed freezer beef):
# harvest $100 and 819 lb hanging at $0.70 are $673.30; the carcass itself stands elsewhere.
KILL = Charge("kill", "per_head", Fraction(10000))
CUT = Charge("cut_and_wrap", "per_lb_hot", Fraction(70))
SMOKE = Charge("smoke", "per_lb_finished", Fraction(95), tax_rate=Fraction(6, 100))


def paper_of(bill: Bill, number: int = 17, shop: ShopDetails = SHOP, words: Words = WORDS) -> bytes:
    return print_bill(
        bill,
        number=number,
        shop=shop,
        customer=(NAME, "4 Elm Road", "Oakfield"),
        made=MADE,
        words=words,
        order_number=1042,
        lot_number=9,
    )


def owned(lot: BilledLot, share: int = 1) -> Bill:
    return replace(good(make_bill(lot, share)), owner=NAME)


@pytest.fixture
def published() -> Bill:
    lot = lot_of(hung("409.5", "409.5"), (WHOLE,), KILL, CUT)
    return replace(good(make_bill(lot, 1, payments=(paid("deposit", 10000, "check"),))), owner=NAME)


def test_the_published_example_prints_its_figures(published: Bill) -> None:
    said = text(paper_of(published))
    for figure in ("819 lb", "$0.70", "$573.30", "$100.00", "$673.30", "1 head"):
        assert figure in said
    assert "Bill 17" in said
    assert "per lb hot" in said
    assert "Hanging, hot" in said
    assert "March 9, 2026" in said
    assert "Order\n1042" in said


def test_every_sum_is_the_bills(published: Bill) -> None:
    assert published.due_cents == 57330
    found = amounts(paper_of(published))
    rates = [10000, 70]
    lines = [line.amount_cents for line in published.lines]
    sums = [published.total_cents, -published.deposits_cents, published.due_cents]
    assert sorted(found) == sorted(rates + lines + sums)


def test_the_producers_price_is_nowhere(published: Bill) -> None:
    found = amounts(paper_of(published))
    assert 245700 not in found
    assert 300 not in found
    assert "between you and the producer" in text(paper_of(published)).replace("\n", " ")


@pytest.mark.parametrize("shop", [SHOP, SHOP_A4], ids=["letter", "a4"])
def test_one_page_of_the_shops_paper_with_nothing_outside_it(
    published: Bill, shop: ShopDetails
) -> None:
    pdf = paper_of(published, shop=shop)
    assert len(pages(pdf)) == 1
    assert size(pdf) == SIZES[shop.paper]
    for x, y, wide, high in places(pdf):
        assert 30 <= x <= wide - 30
        assert 20 <= y <= high - 30


def test_names_are_printed_as_written(published: Bill) -> None:
    assert text(paper_of(published)).replace("\n", " ").count(NAME) == 2


def test_the_same_bill_gives_the_same_bytes(published: Bill) -> None:
    assert paper_of(published) == paper_of(published)
    assert paper_of(published) != paper_of(published, number=18)


def test_quarters_say_by_table_and_their_part_of_the_whole() -> None:
    lot = lot_of(hung("409.5", "409.5"), QUARTERS, KILL, CUT)
    said = text(paper_of(owned(lot)))
    assert "225.225 lb, by table" in said  # 409.5 × 55 %
    assert "pounds by table" in said
    assert "¼ head" in said
    assert "your part of $573.30" in said.replace("\n", " ")
    assert "By table: the quarter was not weighed by itself" in said


def test_a_weighed_side_does_not_say_by_table() -> None:
    lot = lot_of(hung("409.5", "400"), HALVES, KILL, CUT)
    assert "by table" not in text(paper_of(owned(lot)))


def test_a_waiting_line_says_what_it_waits_for() -> None:
    lot = lot_of(
        hung(None, None), (WHOLE,), KILL, CUT, SMOKE, made=((smoked("3", complete=False),),)
    )
    said = text(paper_of(owned(lot)))
    assert "waits for the hot weight" in said
    assert "waits for the packages" in said
    assert "not weighed yet" in said
    assert "Balance due so far" in said


def test_chilled_pounds_are_called_chilled() -> None:
    lot = lot_of(
        hung("409.5", "409.5"), (WHOLE,), Charge("cut_and_wrap", "per_lb_chilled", Fraction(70))
    )
    said = text(paper_of(owned(lot)))
    assert "per lb chilled" in said
    assert "Hanging, chilled" in said


def test_tax_minimum_and_credit_agree_with_the_bill() -> None:
    least = Charge("disposal", "per_lb_hot", Fraction(1), minimum=2500)
    lot = lot_of(hung("409.5", "409.5"), (WHOLE,), KILL, SMOKE, least, made=((smoked("20.2"),),))
    lot = with_extras(lot, 1, credits_given=(Credit("a package was torn", 1234),))
    bill = owned(lot)
    pdf = paper_of(bill)
    said = text(pdf)
    found = amounts(pdf)
    assert bill.tax_cents == 115  # 20.2 lb × $0.95 = $19.19, 6 % of it $1.1514
    for cents in (bill.tax_cents, bill.charges_cents, bill.total_cents, -1234, 2500, 1919):
        assert cents in found
    assert "the minimum" in said
    assert "a package was torn" in said


def test_a_draft_and_an_estimate_say_so(published: Bill) -> None:
    draft = text(paper_of(published, number=0))
    assert "Bill, draft" in draft
    assert "not issued yet" in draft
    quote = text(paper_of(replace(published, estimate=True), number=0))
    assert "The price is an estimate" in quote
    weighed = next(one for one in published.lines if one.unit == "lb")
    exact = replace(weighed, quantity=Fraction("29.5698"))
    words = Words(strict=True)
    assert quantity_text(exact, words) == "29.5698\u00a0lb"
    assert quantity_text(exact, words, estimate=True) == "about 30\u00a0lb"
    small = replace(exact, quantity=Fraction("9.96"))
    assert quantity_text(small, words, estimate=True) == "about 10\u00a0lb"
    assert "Expected balance" in quote


def test_a_long_bill_gets_smaller_first_and_then_a_second_page(published: Bill) -> None:
    def longer(count: int) -> Bill:
        line: BillLine = published.lines[0]
        lines = tuple(replace(line, key=f"kill:{n}", tag=str(n)) for n in range(count))
        return replace(published, lines=lines, animals=("114",))

    assert len(pages(paper_of(longer(22)))) == 1
    two = pages(paper_of(longer(70)))
    assert len(two) > 1
    assert all("Bill 17" in page and "114" in page for page in two)
    assert f"Page 2 of {len(two)}" in two[1]
    assert "".join(two).count("per head") == 70


def test_the_shops_own_charge_name_wins(published: Bill) -> None:
    lot = lot_of(
        hung("409.5", "409.5"),
        (WHOLE,),
        Charge("delivery", "per_mile", Fraction(125), "To your door", asked=True),
    )
    lot = with_extras(lot, 1, asked=(Asked("delivery", Fraction(40)),))
    said = text(paper_of(owned(lot)))
    assert "To your door" in said
    assert "40 miles" in said
    assert "$50.00" in said


def test_in_spanish(published: Bill) -> None:
    said = text(paper_of(published, words=SPANISH))
    assert "Cuenta 17" in said
    assert "9 de marzo de 2026" in said
    assert "Saldo por pagar" in said
    assert "$573.30" in said


@pytest.mark.parametrize(("words", "said"), [(WORDS, "at least $606.00"), (SPANISH, "$606.00")])
def test_a_quote_says_its_range_and_a_late_bill_its_days(
    published: Bill, words: Words, said: str
) -> None:
    """$673.30 within a tenth of the hanging weight, and interest on it of 30 days."""
    pdf = print_bill(
        replace(published, estimate=True),
        number=0,
        shop=SHOP,
        customer=(NAME,),
        made=MADE,
        words=words,
        quoted=(60_600, 74_060),
    )
    assert said in text(pdf)
    assert "$740.60" in text(pdf)
    assert len(pages(pdf)) == 1
    line = late_interest(67_330, date(2026, 3, 1), date(2026, 4, 30), LateTerms(30, Fraction(1, 8)))
    assert line is not None
    late = text(paper_of(late_bill(published, line), words=words))
    assert "30 d" in late  # días, days
    days = "March 31, 2026 to April 30, 2026" if words is WORDS else "31 de marzo de 2026 al 30"
    assert days in late.replace("\n", " ")
    assert "late_interest" not in late
    assert "$673.30" in late
    assert "12.5 %" in late


def test_a_quote_without_a_range_says_its_sum_once(published: Bill) -> None:
    """Where all is weighed and nothing is made by the pound, least and most are the same."""
    quote = replace(published, estimate=True)
    total = quote.total_cents
    said = [
        text(
            print_bill(
                quote,
                number=0,
                shop=SHOP,
                customer=(NAME,),
                made=MADE,
                words=WORDS,
                quoted=(least, total),
            )
        )
        for least in (total, total - 1)
    ]
    assert ["at most" in one for one in said] == [False, True]
