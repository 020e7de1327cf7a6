"""Calls are logged with who and when; whoever must be rung is told with why and since when."""

from dataclasses import replace
from datetime import date, timedelta

import pytest
from sqlalchemy import text
from sqlalchemy.exc import IntegrityError

from db.unit_of_work import Work
from shared.shop.calls import Call, CallRules
from shared.shop.problems import Refused, StaleEdit
from tests.db.examples import KILL_DAY, lot_of_halves, order_of


def test_an_open_order_is_rung_about_from_three_days_before_it_is_due(work: Work) -> None:
    lot = lot_of_halves(work)
    assert work.calls.to_ring(KILL_DAY - timedelta(days=1)) == ()
    anna, bert = work.calls.to_ring(KILL_DAY)
    assert [(one.order.owner, one.due, one.about) for one in (anna, bert)] == [
        ("Anna Berg", KILL_DAY + timedelta(days=3), ("no_cut_sheet",)),
        ("Bert Iversen", KILL_DAY + timedelta(days=3), ("no_cut_sheet",)),
    ]
    order = order_of(work, lot, 2)
    work.orders.save_note(order.id, "", date(2026, 12, 1), version=order.version)
    assert [one.order.owner for one in work.calls.to_ring(KILL_DAY)] == ["Anna Berg"]


def test_a_call_is_kept_and_told_and_never_changed(work: Work) -> None:
    order = order_of(work, lot_of_halves(work), 1)
    call = work.calls.log(order.id, "message", "  left it with his wife ")
    assert isinstance(call, Call)
    assert (call.note, call.person, call.station) == ("left it with his wife", "Test", "Bench")
    work.calls.log(order.id, "no_answer")
    first = next(one for one in work.calls.to_ring(KILL_DAY) if one.order.id == order.id)
    assert (first.calls, first.last and first.last.outcome) == (2, "no_answer")
    assert work.calls.log(999, "spoke") == Refused("no_such_order")
    with pytest.raises(IntegrityError, match="rows are locked"):
        work._desk.connection.execute(text("UPDATE calls SET note = ''"))


def test_the_rules_are_the_shop_s(work: Work) -> None:
    lot_of_halves(work)
    rules = work.calls.rules()
    assert (rules.due_days, rules.without_answer) == (3, "ring")
    saved = work.calls.save_rules(replace(rules, due_days=7, without_answer="usual"))
    assert isinstance(saved, CallRules)
    assert work.calls.to_ring(KILL_DAY) == ()
    assert isinstance(work.calls.save_rules(rules), StaleEdit)
    assert work.calls.save_rules(replace(saved, due_days=-1)) == Refused("days")
