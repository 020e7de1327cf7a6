"""Published worked examples, run as the two papers they really are.

A plant's bill carries the plant's services; the farmer's price for the animal is the producer's
statement to his buyers. Each example is worked through both papers as they apply. Where the
page's own arithmetic fails, the test says what it prints and what is right.
"""

from fractions import Fraction

import pytest

from shared.billing.bill import make_bill
from shared.billing.rates import Charge
from shared.billing.statement import Price, statement, take_home
from shared.carcass.carcass import Carcass, Holding, SideWeights
from shared.carcass.weights import dressing
from shared.units import NG_PER_LB
from tests.shared.billing.lots import (
    HALVES,
    SPLIT_QUARTERS,
    WHOLE,
    fine,
    good,
    hung,
    lot_of,
    pounds,
)


def both_papers(
    animal: Carcass,
    holdings: tuple[tuple[Holding, ...], ...],
    charges: tuple[Charge, ...],
    price: Price,
) -> list[tuple[int, int]]:
    """For each share the cents of the producer's statement and of the plant's bill."""
    lot = lot_of(animal, holdings, *charges)
    return [
        (
            fine(statement(lot, share.number, price)).total_cents,
            good(make_bill(lot, share.number)).total_cents,
        )
        for share in lot.shares
    ]


def test_e1_michigan_state_worksheet_to_the_cent() -> None:
    """Michigan State Univ. Extension, grain-fed freezer beef pricing worksheet, 1 April 2024.

    1,300 lb × 63 % = 819 lb at $3.00; harvest $100; processing $0.70 a lb; 68 % packaged.
    """
    live = pounds("1300")
    assert dressing(live.nanograms, 819 * NG_PER_LB) == Fraction(63, 100)
    lot = lot_of(
        hung("409.5", "409.5"),
        (WHOLE,),
        Charge("kill", "per_head", Fraction(10_000)),
        Charge("cut_and_wrap", "per_lb_hot", Fraction(70)),
    )
    bill = good(make_bill(lot, 1))
    assert [(line.code, line.quantity, line.unit, line.amount_cents) for line in bill.lines] == [
        ("kill", Fraction(1), "head", 10_000),
        ("cut_and_wrap", Fraction(819), "lb", 57_330),
    ]
    paper = fine(statement(lot, 1, Price("per_lb_hot", Fraction(300))))
    assert [(line.quantity, line.amount_cents) for line in paper.lines] == [(819, 245_700)]
    total = bill.total_cents + paper.total_cents
    assert total == 313_030
    packaged = bill.hanging.pounds
    assert packaged is not None
    home = take_home(total, packaged * Fraction(68, 100), Fraction(720))
    assert home.pounds == Fraction("556.92")
    assert (home.per_lb_cents, home.under_percent) == (562, 22)


def test_e2_quarter_beef_of_500_pounds() -> None:
    """soggybottom.org: printed $597.25 and $8.85 a lb; its own figures give $596.25 and $8.83."""
    charges = (
        Charge("kill", "per_head", Fraction(8_500)),
        Charge("cut_and_wrap", "per_lb_hot", Fraction(60)),
    )
    papers = both_papers(
        hung("250", "250"), SPLIT_QUARTERS, charges, Price("per_lb_hot", Fraction(400))
    )
    assert papers == [(50_000, 9_625)] * 4
    assert take_home(59_625, Fraction("67.5")).per_lb_cents == 883


def test_e3_quarter_of_a_582_pound_beef() -> None:
    """Page not retained: $436.50 + $96.28 = $532.78; it prints $5.32 a lb on 100 lb, truncated.

    The $96.28 is taken as $0.55 a lb and a quarter of $65, as the reference infers. The first
    two quarters carry the half cents, and the four add up to $385.10 exactly.
    """
    charges = (
        Charge("cut_and_wrap", "per_lb_hot", Fraction(55)),
        Charge("kill", "per_head", Fraction(6_500)),
    )
    papers = both_papers(
        hung("291", "291"), SPLIT_QUARTERS, charges, Price("per_lb_hot", Fraction(300))
    )
    assert papers[0] == (43_650, 9_628)
    assert sum(plant for _, plant in papers) == 32_010 + 6_500
    assert take_home(53_278, Fraction(100)).per_lb_cents == 533


def test_e4_half_beef_of_325_pounds() -> None:
    """cbarc.store: it prints 487.00 for 325 × $1.50 and so $2,862.00; right is $2,862.50."""
    charges = (
        Charge("cut_and_wrap", "per_lb_hot", Fraction(150)),
        Charge("kill", "flat", Fraction(10_000)),
    )
    papers = both_papers(hung("325", "325"), HALVES, charges, Price("per_lb_hot", Fraction(700)))
    assert papers == [(227_500, 58_750)] * 2
    assert sum(papers[0]) == 286_250


@pytest.mark.parametrize(
    ("sides", "holdings", "fee", "home", "total", "per_lb"),
    [
        (("300", "300"), (WHOLE,), 55_500, 400, 295_500, 739),
        (("300", "300"), HALVES, 27_500, 200, 177_500, 888),
    ],
)
def test_e5_whole_and_half_beef_with_a_flat_fee(
    sides: tuple[str, str],
    holdings: tuple[tuple[Holding, ...], ...],
    fee: int,
    home: int,
    total: int,
    per_lb: int,
) -> None:
    """cffarms.org: 600 lb × $4 + $555, 300 lb × $5 + $275; it prints 8.87 for 8.875, truncated."""
    price = Price("per_lb_hot", Fraction(400 if fee == 55_500 else 500))
    charges = (Charge("cut_and_wrap", "flat", Fraction(fee)),)
    papers = both_papers(hung(*sides), holdings, charges, price)
    assert sum(papers[0]) == total
    assert take_home(total, Fraction(home)).per_lb_cents == per_lb


def test_e6_quarter_of_750_pounds_and_four_of_them() -> None:
    """lafountainsbeef.com prints whole dollars ($647 + $154 = $800).

    Share 1 of 4 pays $646.88 and $153.88, $800.76; the four together pay the whole animal's
    $2,587.50 and $615.50, with no cent over.
    """
    charges = (
        Charge("cut_and_wrap", "per_lb_hot", Fraction(65)),
        Charge("kill", "flat", Fraction(3_200)),
    )
    papers = both_papers(
        hung("375", "375"), SPLIT_QUARTERS, charges, Price("per_lb_hot", Fraction(345))
    )
    assert papers[0] == (64_688, 15_388)
    assert sum(papers[0]) == 80_076
    assert sum(meat for meat, _ in papers) == 258_750
    assert sum(plant for _, plant in papers) == 48_750 + 4 * 3_200


@pytest.mark.parametrize("farmers", ["pounds", "head"])
def test_e7_hog_of_175_pounds(farmers: str) -> None:
    """autumn-photography.com: 250 × 70 % = 175 lb × $1.50 + $100 = $362.50.

    The reference doesn't say which of the two is the farmer's; either way round it is both
    papers together that make the figure.
    """
    live = pounds("250")
    assert dressing(live.nanograms, 175 * NG_PER_LB) == Fraction(70, 100)
    if farmers == "pounds":
        charges = (Charge("kill", "per_head", Fraction(10_000)),)
        price = Price("per_lb_hot", Fraction(150))
    else:
        charges = (Charge("cut_and_wrap", "per_lb_hot", Fraction(150)),)
        price = Price("per_head", Fraction(10_000))
    papers = both_papers(hung("87.5", "87.5"), (WHOLE,), charges, price)
    assert sorted(papers[0]) == [10_000, 26_250]
    assert sum(papers[0]) == 36_250


def test_e8_lamb_whole_and_half() -> None:
    """pbnfarm.com: 45 lb × $4 + $125 = $305.00; a half is $152.50, of it $62.50 for the plant.

    The lamb hangs unsplit, so a half is half of one weight.
    """
    lamb = Carcass("lamb", tag="7", hot_whole=pounds("45"))
    charges = (Charge("kill", "per_head", Fraction(12_500)),)
    price = Price("per_lb_hot", Fraction(400))
    assert both_papers(lamb, (WHOLE,), charges, price) == [(18_000, 12_500)]
    assert both_papers(lamb, HALVES, charges, price) == [(9_000, 6_250)] * 2


def test_e9_lamb_whole_and_half() -> None:
    """cedarvalleysustainable.com: 60 lb × $11 + $100 = $760; half of it and $50 is $380."""
    lamb = Carcass("lamb", tag="8", hot_whole=pounds("60"))
    charges = (Charge("kill", "per_head", Fraction(10_000)),)
    price = Price("per_lb_hot", Fraction(1_100))
    assert [sum(one) for one in both_papers(lamb, (WHOLE,), charges, price)] == [76_000]
    assert [sum(one) for one in both_papers(lamb, HALVES, charges, price)] == [38_000] * 2


def test_e10_quarter_of_150_pounds() -> None:
    """lonesomedovecattle.com: 150 lb × $3.50 = $525.00; $5.25 a lb on 100 lb.

    One price with the cutting in it: the farmer pays the plant, whose bill to the buyer is empty.
    """
    charges = (Charge("cut_and_wrap", "per_lb_hot", Fraction(70), falls_to="producer"),)
    papers = both_papers(
        hung("300", "300"), SPLIT_QUARTERS, charges, Price("per_lb_hot", Fraction(350))
    )
    assert papers == [(52_500, 0)] * 4
    assert take_home(52_500, Fraction(100)).per_lb_cents == 525


def test_e11_whole_and_half_beef_of_687_and_a_half() -> None:
    """boxhfarm.ca 2021: 1,250 lb × 55 % = 687.5 lb at $4.65 = $3,196.88; half $1,598.44.

    60 % of it packaged makes about $7.75 a lb. The price includes the plant's work.
    """
    live = pounds("1250")
    hot = Fraction("687.5")
    assert dressing(live.nanograms, int(hot * NG_PER_LB)) == Fraction(55, 100)
    charges = (Charge("cut_and_wrap", "per_lb_hot", Fraction(70), falls_to="producer"),)
    price = Price("per_lb_hot", Fraction(465))
    beef = hung("343.75", "343.75")
    assert both_papers(beef, (WHOLE,), charges, price) == [(319_688, 0)]
    assert both_papers(beef, HALVES, charges, price) == [(159_844, 0)] * 2
    assert take_home(319_688, hot * Fraction(60, 100)).per_lb_cents == 775


def test_quarters_by_table_are_billed_by_their_own_weight() -> None:
    """Purdue (Lemenager): the forequarter is about 55 % of a side. 375 lb: 206.25 and 168.75."""
    beef = Carcass("beef", tag="9", hot=(SideWeights(pounds("375")), SideWeights(pounds("375"))))
    holdings = ((Holding(0, 1, "fore"),), (Holding(0, 1, "hind"),), (Holding(0, 2),))
    lot = lot_of(beef, holdings, Charge("cut_and_wrap", "per_lb_hot", Fraction(65)))
    bills = [good(make_bill(lot, number)) for number in (1, 2, 3)]
    assert [bill.hanging.pounds for bill in bills] == [
        Fraction("206.25"),
        Fraction("168.75"),
        Fraction(375),
    ]
    assert [bill.total_cents for bill in bills] == [13_406, 10_969, 24_375]
    assert [bill.hanging.by_table for bill in bills] == [True, True, False]
    assert [line.by_table for bill in bills for line in bill.lines] == [True, True, False]


def test_e12_yields_of_a_1250_pound_steer() -> None:
    """Page not named: 1,250 lb × 65 % = 812 lb, half 406, quarter 203; it truncates.

    Right are 812.5, 406.25 and 203.125 lb; the bill and the statement carry them whole.
    """
    live = pounds("1250")
    hot = Fraction("812.5")
    assert dressing(live.nanograms, int(hot * NG_PER_LB)) == Fraction(65, 100)
    beef = hung("406.25", "406.25")
    wrap = Charge("cut_and_wrap", "per_lb_hot", Fraction(100))
    for holdings, each in ((HALVES, Fraction("406.25")), (SPLIT_QUARTERS, Fraction("203.125"))):
        lot = lot_of(beef, holdings, wrap)
        bills = [good(make_bill(lot, share.number)) for share in lot.shares]
        assert {bill.hanging.pounds for bill in bills} == {each}
        assert sum(bill.total_cents for bill in bills) == 81_250
        papers = [
            fine(statement(lot, share.number, Price("per_lb_hot", Fraction(100))))
            for share in lot.shares
        ]
        assert {paper.hanging.pounds for paper in papers} == {each}
        assert sum(paper.total_cents for paper in papers) == 81_250
