"""Boxes, and what left the shop with whom."""

import pytest
from sqlalchemy import text
from sqlalchemy.exc import DBAPIError

from db.unit_of_work import Work
from shared.shop.hand_overs import Boxed, HandOver
from shared.shop.orders import Order
from shared.shop.problems import Refused
from tests.db.examples import line, lot_of_halves, order_of, package


def packed(work: Work) -> tuple[Order, list[int]]:
    """An order with three packages, the last of them void."""
    lot = lot_of_halves(work)
    order = order_of(work, lot)
    made = line(work, order)
    found = [package(work, order, made).id for _ in range(3)]
    work.packages.void(found[2], "torn bag")
    return order, found


def test_a_package_lies_where_it_was_put_last(work: Work) -> None:
    order, (first, second, _void) = packed(work)
    work.hand_overs.put([first, second], "1", "freezer 2")
    work.hand_overs.put([second], "2", "locker 7")
    assert work.hand_overs.places(order.id) == {
        first: Boxed("1", "freezer 2"),
        second: Boxed("2", "locker 7"),
    }


def test_some_leave_first_and_the_rest_later(work: Work) -> None:
    order, (first, second, void) = packed(work)
    assert work.hand_overs.left(order.id) == {first, second}
    given = work.hand_overs.give(order.id, [first], "her brother")
    assert isinstance(given, HandOver)
    assert (given.fetched_by, given.packages) == ("her brother", {first})
    assert work.hand_overs.left(order.id) == {second}
    assert work.hand_overs.give(order.id, [first]) == Refused("not_here")
    assert work.hand_overs.give(order.id, [void]) == Refused("not_here")
    assert work.hand_overs.give(order.id, []) == Refused("nothing")
    again = work.hand_overs.give(order.id, [second], reason="unpaid, agreed by phone")
    assert isinstance(again, HandOver)
    assert work.hand_overs.left(order.id) == frozenset()
    assert [one.packages for one in work.hand_overs.of_order(order.id)] == [{first}, {second}]


@pytest.mark.parametrize("table", ["package_places", "hand_overs", "handed_packages"])
def test_what_left_is_never_rewritten(work: Work, table: str) -> None:
    order, (first, _second, _void) = packed(work)
    work.hand_overs.put([first], "1", "freezer 2")
    work.hand_overs.give(order.id, [first])
    with pytest.raises(DBAPIError, match="rows are locked"):
        work._connection.execute(text(f"DELETE FROM {table}"))  # pyright: ignore
