"""When packages went into a freezer, and whose order is fetched fresh."""

from dataclasses import replace
from datetime import timedelta

import pytest
from sqlalchemy import text
from sqlalchemy.exc import DBAPIError

from db.unit_of_work import Work
from shared.shop.counted import CountedPackages, NewCount
from shared.shop.freezing import FreezerRules, InFreezer
from shared.shop.problems import Refused, StaleEdit
from tests.db.examples import at_the_block
from tests.db.repositories.test_counted import by_count
from tests.db.repositories.test_hand_overs import packed


def test_the_last_word_on_a_package_holds(work: Work) -> None:
    order, (first, second, _void) = packed(work)
    before = work._desk.now - timedelta(hours=5)
    assert work.freezing.of_order(order.id) == {}
    work.freezing.put([first, second], before)
    work.freezing.put([second], None)
    who = (work._desk.person.name, work._desk.now)
    told = {first: InFreezer(before, *who), second: InFreezer(None, *who)}
    assert work.freezing.of_order(order.id) == told
    later = work._desk.now + timedelta(minutes=1)
    assert work.freezing.put([first], later) == Refused("later")


def test_counts_in_no_box_are_said_to_be_frozen_by_somebody_at_a_moment(work: Work) -> None:
    order, _ = packed(work)
    by_count(work)
    found = work.orders.get(order.id)
    assert found is not None
    choice = found.choices[0]
    with at_the_block(work, order.id):
        made = work.counted.add(NewCount(order.id, choice.line, choice.cut, "Chops", 12))
    assert isinstance(made, CountedPackages)
    assert work.freezing.counts_of_order(order.id) == {}
    before = work._desk.now - timedelta(hours=24)
    work.freezing.put_counts([made.id], None)
    work.freezing.put_counts([made.id], before)
    told = InFreezer(before, work._desk.person.name, work._desk.now)
    assert work.freezing.counts_of_order(order.id) == {made.id: told}
    assert work.freezing.of_order(order.id) == {}
    later = work._desk.now + timedelta(minutes=1)
    assert work.freezing.put_counts([made.id], later) == Refused("later")
    with pytest.raises(DBAPIError, match="rows are locked"):
        work._desk.connection.execute(text("DELETE FROM counted_freezings"))


def test_fresh_holds_until_it_is_frozen_after_all(work: Work) -> None:
    order, _ = packed(work)
    assert not work.freezing.agreed_fresh(order.id)
    work.freezing.agree(order.id, fresh=True)
    assert work.freezing.agreed_fresh(order.id)
    work.freezing.agree(order.id, fresh=False)
    assert not work.freezing.agreed_fresh(order.id)


def test_the_hours_are_the_shop_s(work: Work) -> None:
    rules = work.freezing.rules()
    assert (rules.hours, rules.counted_from) == (24, "label")
    assert work.freezing.save_rules(replace(rules, hours=241)) == Refused("hours")
    saved = work.freezing.save_rules(replace(rules, hours=36, counted_from="place"))
    assert isinstance(saved, FreezerRules)
    assert (saved.hours, saved.counted_from) == (36, "place")
    assert isinstance(work.freezing.save_rules(rules), StaleEdit)


@pytest.mark.parametrize("table", ["freezings", "fresh_pick_ups"])
def test_what_was_said_is_never_rewritten(work: Work, table: str) -> None:
    order, (first, _second, _void) = packed(work)
    work.freezing.put([first], None)
    work.freezing.agree(order.id, fresh=True)
    with pytest.raises(DBAPIError, match="rows are locked"):
        work._desk.connection.execute(text(f"DELETE FROM {table}"))
