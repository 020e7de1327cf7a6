"""Whose share was killed on a day, and what its owner was told."""

from datetime import timedelta

import pytest
from sqlalchemy import text
from sqlalchemy.exc import DBAPIError

from db.unit_of_work import Work
from shared.shop.problems import Refused
from tests.db.examples import KILL_DAY, lot_of_halves, order_of


def test_a_day_has_the_lots_killed_on_it_and_those_still_to_be(work: Work) -> None:
    lot = lot_of_halves(work)
    assert work.weights_told.lots_of_day(KILL_DAY) == (lot.id,)
    assert work.weights_told.lots_of_day(KILL_DAY + timedelta(days=1)) == ()
    work.lots.cancel(lot.id, "sold live", version=lot.version)
    assert work.weights_told.lots_of_day(KILL_DAY) == ()


def test_what_was_told_is_kept_with_who_and_when(work: Work) -> None:
    order = order_of(work, lot_of_halves(work), 1)
    assert work.weights_told.tell(999, "mail", 5) == Refused("no_such_order")
    assert work.weights_told.tell(order.id, "mail", None) is None
    assert work.weights_told.tell(order.id, "spoken", 42, "  his wife ") is None
    last = work.weights_told.last([order.id])[order.id]
    assert (last.how, last.hanging_ng, last.note) == ("spoken", 42, "his wife")
    assert (last.person, last.at) == ("Test", work._desk.now)
    with pytest.raises(DBAPIError, match="rows are locked"):
        work._desk.connection.execute(text("DELETE FROM weights_told"))
