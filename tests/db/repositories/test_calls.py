"""Calls are logged with who and when; whoever must be rung is told with why and since when."""

from dataclasses import replace
from datetime import date, timedelta

import pytest
from sqlalchemy import text
from sqlalchemy.exc import IntegrityError

from db.unit_of_work import Work
from shared.shop.calendar import Plan
from shared.shop.calls import Call, CallRules, Offered
from shared.shop.problems import Refused, StaleEdit
from tests.db.examples import KILL_DAY, customer, lot_of_halves, order_of


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


def test_what_was_offered_is_kept_with_the_call_and_never_changed(work: Work) -> None:
    order = order_of(work, lot_of_halves(work), 2)
    ways = (Offered("Roasts in place of the ham", 1240), Offered("Leave the ham out"))
    call = work.calls.log(order.id, "spoke", told_to=" Bert Iversen ", offered=ways)
    assert isinstance(call, Call)
    assert (call.told_to, call.offered) == ("Bert Iversen", ways)
    work.calls.log(order.id, "no_answer")
    assert [one.offered for one in work.calls.of_order(order.id)] == [ways, ()]
    for said in ("UPDATE call_offers SET cents = 0", "DELETE FROM call_offers"):
        with pytest.raises(IntegrityError, match="rows are locked"):
            work._desk.connection.execute(text(said))


def test_the_rules_are_the_shop_s(work: Work) -> None:
    lot_of_halves(work)
    rules = work.calls.rules()
    assert (rules.due_days, rules.without_answer) == (3, "ring")
    saved = work.calls.save_rules(replace(rules, due_days=7, without_answer="usual"))
    assert isinstance(saved, CallRules)
    assert work.calls.to_ring(KILL_DAY) == ()
    assert isinstance(work.calls.save_rules(rules), StaleEdit)
    assert work.calls.save_rules(replace(saved, due_days=-1)) == Refused("days")


def test_what_cannot_be_is_refused_and_what_was_saved_is_kept_with_who_and_when(
    work: Work,
) -> None:
    rules = work.calls.rules()
    assert (rules.counted_from, rules.remind_days, rules.most_calls) == ("kill", 3, 3)
    assert work.calls.save_rules(replace(rules, remind_days=61)) == Refused("remind")
    assert work.calls.save_rules(replace(rules, most_calls=0)) == Refused("calls")
    saved = work.calls.save_rules(replace(rules, remind_days=1, most_calls=2))
    assert isinstance(saved, CallRules)
    rows = work._desk.connection.execute(
        text("SELECT what, data FROM changes WHERE subject = 'call_rules'")
    ).all()
    assert [row[0] for row in rows] == ["saved"]
    assert '"most_calls": 2' in rows[0][1]


def test_reminders_start_and_end_as_the_rules_say(work: Work) -> None:
    lot = lot_of_halves(work)  # pork, 1 day from the kill to the block
    rules = work.calls.rules()
    saved = work.calls.save_rules(
        replace(
            rules, counted_from="block", due_days=0, remind_days=0, most_calls=2,
            without_answer="usual",
        )
    )  # fmt: skip
    assert isinstance(saved, CallRules)
    due = KILL_DAY + timedelta(days=1)
    assert work.calls.to_ring(KILL_DAY) == ()
    assert [one.due for one in work.calls.to_ring(due)] == [due, due]
    order = order_of(work, lot, 1)
    for outcome in ("spoke", "message", "no_answer"):
        work.calls.log(order.id, outcome)
    mine = {one.order.id: one for one in work.calls.to_ring(due + timedelta(days=1))}[order.id]
    assert (mine.calls, mine.silent, mine.in_the_end) == (3, 2, "usual")
    still = {one.order.id: one for one in work.calls.to_ring(due)}[order.id]
    assert still.in_the_end == "", "the day itself isn't past"
    work.calls.log(order.id, "spoke")
    after = {one.order.id: one for one in work.calls.to_ring(due + timedelta(days=1))}[order.id]
    assert (after.silent, after.in_the_end) == (0, "")


def test_a_free_place_is_told_to_who_waits_until_he_was_spoken_to(work: Work) -> None:
    who = customer(work, "Cora Lind")
    assert work.calls.places_free(KILL_DAY) == ()
    waiting = work.waiting.add(who.id, "pork", 2, KILL_DAY)
    assert isinstance(waiting, int)
    assert work.calls.places_free(KILL_DAY) == (), "a shop without a calendar has no full days"
    work.calendar.save_plan(Plan(week={KILL_DAY.weekday(): {"pork": 2}}))
    lot = lot_of_halves(work)
    (free,) = work.calls.places_free(KILL_DAY)
    assert (free.waiting.customer, free.day) == ("Cora Lind", KILL_DAY + timedelta(days=7))
    work.lots.cancel(lot.id, "sold live", version=lot.version)
    (free,) = work.calls.places_free(KILL_DAY)
    assert free.day == KILL_DAY
    assert work.waiting.rang(waiting, "message", "his son", version=free.waiting.version) is None
    (free,) = work.calls.places_free(KILL_DAY)
    assert work.waiting.rang(waiting, "spoke", version=free.waiting.version) is None
    assert work.calls.places_free(KILL_DAY) == ()
    assert isinstance(work.waiting.rang(waiting, "spoke", version=1), StaleEdit)
