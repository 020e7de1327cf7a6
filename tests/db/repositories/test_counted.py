"""Packages wrapped by count: no weight, no label number, void with a reason, gone once."""

from dataclasses import replace

import pytest
from sqlalchemy import text
from sqlalchemy.exc import DBAPIError

from db.unit_of_work import Work
from shared.shop.counted import MOST_COUNTED, CountedPackages, NewCount
from shared.shop.details import ShopDetails
from shared.shop.hand_overs import HandOver
from shared.shop.orders import Order
from shared.shop.problems import Refused
from tests.db.examples import at_the_block, line, lot_of_halves, order_of, package


def by_count(work: Work) -> None:
    """The shop stamps paper."""
    saved = work.shop.save(replace(work.shop.details(), wrapped="counted"))
    assert isinstance(saved, ShopDetails)
    assert saved.wrapped == "counted"


def hams(work: Work) -> tuple[Order, NewCount]:
    order = order_of(work, lot_of_halves(work))
    ham = line(work, order)
    return order, NewCount(order.id, ham.line, ham.cut, "Whole ham", 12)


def added(work: Work, new: NewCount) -> CountedPackages | Refused:
    with at_the_block(work, new.order_id):
        return work.counted.add(new)


def kept(work: Work, new: NewCount) -> CountedPackages:
    made = added(work, new)
    assert isinstance(made, CountedPackages), made
    return made


def test_a_count_is_kept_with_its_owner_and_takes_no_label_number(work: Work) -> None:
    by_count(work)
    order, new = hams(work)
    first = package(work, order, line(work, order)).label_number
    made = kept(work, new)
    assert (made.packages, made.product, made.share) == (12, "Whole ham", order.share)
    assert made.owner == order.owner
    assert package(work, order, line(work, order)).label_number == first + 1
    assert work.counted.of_order(order.id) == work.counted.of_lot(order.lot_id) == (made,)


def test_a_shop_that_weighs_and_inspected_goods_are_not_counted(work: Work) -> None:
    order, new = hams(work)
    assert added(work, new) == Refused("not_by_count", {"regime": "custom"})
    by_count(work)
    work._connection.execute(  # pyright: ignore
        text("UPDATE lots SET regime = 'inspected' WHERE id = :lot"), {"lot": order.lot_id}
    )
    assert added(work, new) == Refused("not_by_count", {"regime": "inspected"})


@pytest.mark.parametrize(
    ("packages", "code"), [(0, "none"), (-3, "none"), (MOST_COUNTED + 1, "too_many")]
)
def test_a_count_is_from_one_to_the_most(work: Work, packages: int, code: str) -> None:
    by_count(work)
    _, new = hams(work)
    found = work.counted.add(replace(new, packages=packages))
    assert isinstance(found, Refused)
    assert found.code == code


def test_a_line_that_is_not_on_the_order_is_refused(work: Work) -> None:
    by_count(work)
    _, new = hams(work)
    assert added(work, replace(new, line=99)) == Refused("not_on_order", {"line": "99"})


def test_no_count_is_kept_of_an_order_that_is_not_at_the_block(work: Work) -> None:
    by_count(work)
    order, new = hams(work)
    assert work.counted.add(new) == Refused("not_open", {"state": "open"})
    assert work.counted.of_order(order.id) == ()


def test_a_wrong_count_is_void_once_and_with_a_reason(work: Work) -> None:
    by_count(work)
    order, new = hams(work)
    made = kept(work, new)
    assert work.counted.void(made.id, " ") == Refused("reason_missing")
    gone = work.counted.void(made.id, "ten, not twelve")
    assert isinstance(gone, CountedPackages)
    assert (gone.void, gone.voided_by) == ("ten, not twelve", made.person)
    assert work.counted.void(made.id, "again") == Refused("already_void")
    assert work.counted.of_order(order.id, void=False) == ()
    assert work.counted.of_order(order.id) == (gone,)


def test_counts_leave_once_with_the_packages(work: Work) -> None:
    by_count(work)
    order, new = hams(work)
    first, later = kept(work, new), kept(work, replace(new, packages=3))
    weighed = package(work, order, line(work, order))
    given = work.hand_overs.give(order.id, [weighed.id], counted_ids=[first.id])
    assert isinstance(given, HandOver)
    assert (given.packages, given.counted) == ({weighed.id}, {first.id})
    assert work.counted.left(order.id) == (later,)
    assert work.hand_overs.give(order.id, [], counted_ids=[first.id]) == Refused("not_here")
    assert work.counted.void(first.id, "miscounted") == Refused("handed_over")
    assert isinstance(work.hand_overs.give(order.id, [], counted_ids=[later.id]), HandOver)
    assert work.counted.left(order.id) == ()


@pytest.mark.parametrize(
    "statement",
    [
        "UPDATE counted_packages SET packages = 1",
        "UPDATE counted_packages SET owner = 'x'",
        "DELETE FROM counted_packages",
        "DELETE FROM handed_counts",
        "UPDATE handed_counts SET hand_over_id = 9",
    ],
)
def test_what_was_counted_never_changes(work: Work, statement: str) -> None:
    by_count(work)
    order, new = hams(work)
    work.hand_overs.give(order.id, [], counted_ids=[kept(work, new).id])
    with pytest.raises(DBAPIError, match="rows are locked"):
        work._connection.execute(text(statement))  # pyright: ignore
