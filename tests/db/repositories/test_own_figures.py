"""Own figures from the store: what wrapped carcasses gave beside what was foretold."""

from dataclasses import replace
from datetime import date
from fractions import Fraction

from db.unit_of_work import Work
from shared.cutting.order import Amount, Choice, Package
from shared.shop.counted import CountedPackages, NewCount
from shared.units import NG_PER_LB, Weight
from tests.db import examples
from tests.db.repositories.test_counted import by_count

BACON = Choice(0, 0, "bacon", Amount("all"), package=Package(weight=Weight(1, "lb")))


def wrapped(work: Work, at: int, pounds: str, expected: int, *, ready: bool = True) -> None:
    """A hog of one owner whose bacon was foretold and weighed."""
    lot = examples.lot_of_one(work, f"Owner {at}", date(2026, 3, 1 + at))
    order = examples.order_of(work, lot)
    line = examples.line(work, order, BACON)
    examples.settled(work, order.id)
    animal = work.animals.of_lot(lot.id)[0]
    work.orders.release(lot.id, [order.id], snapshot="{}", pdf=b"%PDF-")
    told = (order.id, line.line, "bacon", expected * NG_PER_LB, 180 * NG_PER_LB)
    work.yields.expect(animal.id, [told])
    for state in ("cut", "ready") if ready else ("cut",):
        order = examples.order_of(work, lot)
        work.orders.move(order.id, state, version=order.version)
    examples.package(work, order, line, pounds)


def test_only_wrapped_orders_count_and_void_packages_do_not(work: Work) -> None:
    wrapped(work, 1, "11", 10)
    wrapped(work, 2, "30", 10, ready=False)
    order = work.orders.of_lot(1)[0]
    again = examples.package(work, order, order.choices[0], "4")
    work.packages.void(again.id, "torn")
    (made,) = work.yields.made("pork")
    assert (made.code, made.expected_ng, made.made_ng) == ("bacon", 10 * NG_PER_LB, 11 * NG_PER_LB)
    assert made.carcass_ng == 180 * NG_PER_LB
    assert made.ratio == Fraction(11, 10)
    assert work.yields.made("beef") == ()


def test_twelve_carcasses_at_112_per_cent_differ_and_are_used_when_switched_on(work: Work) -> None:
    """Twelve at 1.12 of the table: (4 x 1 + 12 x 1.12) / 16 = 1.09; all of one sign, 2 of 4096."""
    for at in range(12):
        wrapped(work, at, "11.2", 10)
    figure = work.yields.figures("pork")["bacon"]
    assert figure.factor == Fraction(109, 100)
    assert figure.chance == Fraction(2, 4096)
    assert work.yields.used("pork") == {}
    work.block.save_rules(replace(work.block.rules(), own_figures=True))
    assert set(work.yields.used("pork")) == {"bacon"}


def test_three_carcasses_say_nothing_yet(work: Work) -> None:
    for at in range(3):
        wrapped(work, at, "12", 10)
    work.block.save_rules(replace(work.block.rules(), own_figures=True))
    assert not work.yields.figures("pork")["bacon"].differs
    assert work.yields.used("pork") == {}


def test_what_scales_round_away_is_not_told_as_a_difference(work: Work) -> None:
    for at in range(12):
        wrapped(work, at, "9.99", 10)
    figure = work.yields.figures("pork")["bacon"]
    assert figure.differs
    assert not figure.matters
    work.block.save_rules(replace(work.block.rules(), own_figures=True))
    assert work.yields.used("pork") == {}


def test_a_cut_wrapped_by_count_says_nothing(work: Work) -> None:
    """11 lb weighed and 3 packages counted of one line: the made weight isn't known."""
    by_count(work)
    wrapped(work, 1, "11", 10)
    order = work.orders.of_lot(1)[0]
    line = order.choices[0]
    assert work.yields.made("pork")
    with examples.at_the_block(work, order.id):
        count = work.counted.add(NewCount(order.id, line.line, line.cut, "Bacon", 3))
    assert isinstance(count, CountedPackages)
    assert work.yields.made("pork") == ()
    work.counted.void(count.id, "they were weighed")
    assert len(work.yields.made("pork")) == 1
