"""Lines of a shop that counts: one weighed all the same, and one weighed once together."""

from fractions import Fraction

import pytest
from sqlalchemy import text
from sqlalchemy.exc import DBAPIError

from db.unit_of_work import Work
from shared.billing.quantities import made_lines
from shared.carcass.anatomy import catalogue
from shared.shop.counted import CountedWeight, weight_together
from shared.shop.problems import Refused
from shared.units import Weight
from tests.db.examples import at_the_block, package
from tests.db.repositories.test_counted import by_count, hams, kept


def weighed(work: Work, order_id: int, line: int, pounds: str) -> CountedWeight:
    with at_the_block(work, order_id):
        made = work.counted_lines.weigh(
            order_id, line, Weight.from_pounds(pounds), Weight.from_pounds("0.5")
        )
    assert isinstance(made, CountedWeight), made
    return made


def test_the_choice_to_weigh_a_line_is_kept_and_taken_back(work: Work) -> None:
    by_count(work)
    order, new = hams(work)
    assert work.counted_lines.weighed(order.id) == frozenset()
    for _ in range(2):
        assert work.counted_lines.choose(order.id, new.line, weighed=True) is None
        assert work.counted_lines.weighed(order.id) == {new.line}
    assert work.counted_lines.choose(order.id, new.line, weighed=False) is None
    assert work.counted_lines.weighed(order.id) == frozenset()
    refused = work.counted_lines.choose(order.id, 99, weighed=True)
    assert refused == Refused("not_on_order", {"line": "99"})


def test_a_line_weighs_together_what_was_counted_of_it(work: Work) -> None:
    by_count(work)
    order, new = hams(work)
    first = kept(work, new)
    weighed(work, order.id, new.line, "210")
    made = weighed(work, order.id, new.line, "201.5")
    assert (made.packages, made.net.text(), made.share) == (12, "201.5 lb", order.share)
    assert work.counted_lines.weights(order.id) == (made,)
    assert work.counted_lines.weights_of_lot(order.lot_id) == (made,)
    assert weight_together(new.line, 12, (made,)) == made
    kept(work, new)  # twelve more: the weight is not of all of them
    assert weight_together(new.line, 24, (made,)) is None
    work.counted.void(first.id, "counted twice")
    again = weighed(work, order.id, new.line, "198")
    assert again.packages == 12
    for sql in ("UPDATE counted_weights SET net_count = 1", "DELETE FROM counted_weights"):
        with pytest.raises(DBAPIError, match="rows are locked"):
            work._connection.execute(text(sql))  # pyright: ignore


def test_what_can_not_be_weighed_together_says_why(work: Work) -> None:
    by_count(work)
    order, new = hams(work)
    ten = Weight(10, "lb")
    with at_the_block(work, order.id):
        none = work.counted_lines.weigh(order.id, new.line, ten)
        assert none == Refused("none_counted")
        nothing = work.counted_lines.weigh(order.id, new.line, Weight(0, "lb"))
        assert nothing == Refused("not_positive")
    shut = work.counted_lines.weigh(order.id, new.line, ten)
    assert isinstance(shut, Refused)
    assert shut.code == "not_open"
    made = kept(work, new)
    work.hand_overs.give(order.id, (), counted_ids=[made.id])
    with at_the_block(work, order.id):
        gone = work.counted_lines.weigh(order.id, new.line, ten)
    assert gone == Refused("handed_over")


def test_finished_pounds_are_the_weighed_packages_and_the_counted_together(work: Work) -> None:
    by_count(work)
    order, new = hams(work)
    choice = next(one for one in work.lots.question(order.lot_id).choices if one.line == new.line)
    single = package(work, order, choice, "16.25")
    counted = kept(work, new)
    together = weighed(work, order.id, new.line, "201.5")

    def made(weights: tuple[CountedWeight, ...]) -> tuple[Fraction, int, bool]:
        (row,) = made_lines(
            [choice],
            catalogue("pork"),
            [single],
            complete=True,
            counted=[counted],
            weights=weights,
        )
        return row.finished, row.packages, row.not_weighed

    assert made((together,)) == (Fraction("217.75"), 13, False)
    assert made(()) == (Fraction("16.25"), 13, True)
