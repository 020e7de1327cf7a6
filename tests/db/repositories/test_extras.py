"""What is also on an order's next bill: kept in the store, the last word holds."""

from fractions import Fraction

import pytest
from sqlalchemy import text
from sqlalchemy.exc import DBAPIError

from db.unit_of_work import Work
from shared.billing.extras import Extras, SaidExtras
from shared.billing.lot import Asked, Credit
from shared.shop.problems import StaleEdit
from tests.db.examples import lot_of_halves, order_of

STORAGE = Extras((Asked("storage", Fraction(7, 2)),), (Credit("Waited an hour — ½", 1250),))


def test_the_last_word_holds_with_who_said_it(work: Work) -> None:
    lot = lot_of_halves(work)
    order, other = order_of(work, lot, 1), order_of(work, lot, 2)
    assert work.extras.of(order.id) == SaidExtras()
    first = work.extras.say(order.id, STORAGE, 0)
    assert isinstance(first, SaidExtras)
    assert (first.extras, first.by, first.at) == (STORAGE, work.person.name, work.now)
    assert work.extras.of_lot(lot.id) == {order.id: first}
    assert work.extras.of(other.id) == SaidExtras()
    last = work.extras.say(order.id, Extras(), first.id)
    assert isinstance(last, SaidExtras)
    assert last.extras == Extras()
    assert work.extras.of_lot(lot.id) == {order.id: last}


def test_two_who_say_at_once_dont_lose_each_others_word(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    first = work.extras.say(order.id, STORAGE, 0)
    assert isinstance(first, SaidExtras)
    refused = work.extras.say(order.id, Extras((Asked("delivery"),)), 0)
    assert isinstance(refused, StaleEdit)
    assert (refused.by, refused.found) == (work.person.name, first.id)
    assert work.extras.of(order.id) == first


def test_saying_the_same_again_writes_nothing(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    first = work.extras.say(order.id, STORAGE, 0)
    assert isinstance(first, SaidExtras)
    assert work.extras.say(order.id, STORAGE, first.id) == first


def test_what_was_said_is_never_changed(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    work.extras.say(order.id, STORAGE, 0)
    with pytest.raises(DBAPIError, match="locked"):
        work._connection.execute(text("UPDATE order_extras SET said = '{}'"))  # pyright: ignore
