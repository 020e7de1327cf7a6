"""The Office moves a deposit in one step; another customer's order is asked about first."""

from dataclasses import replace
from datetime import date

import pytest
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office.bills_page import BillsPage
from desktop.office.deposit_moving import MoveDialog
from shared.shop.lots import NewLot
from shared.shop.orders import Order
from shared.shop.people import SignedOn
from tests.db.examples import booked, order_of
from tests.desktop.audit import unnamed
from tests.desktop.office.ready_orders import handed_over


def settle(qtbot: QtBot, bench: Bench) -> None:
    qtbot.waitUntil(lambda: not bench.work.busy())


@pytest.fixture
def two(store: Store, signed: SignedOn) -> tuple[Order, Order]:
    """Anna's half with $50 paid down, and her next hog."""
    first = handed_over(store, signed)
    with store.work(signed.person, signed.station) as work:
        lot = work.lots.get(first.lot_id)
        assert lot is not None
        shares = tuple(replace(one, deposit_asked=0) for one in lot.shares)
        new = booked(work, NewLot("pork", 1, date(2026, 4, 6), lot.producer_id, shares))
        second = order_of(work, new)
        work.commit()
    return first, second


def opened(qtbot: QtBot, bench: Bench, order: Order) -> tuple[BillsPage, MoveDialog]:
    page = BillsPage(bench)
    qtbot.addWidget(page)
    page.show()
    page.choose(order.id)
    settle(qtbot, bench)
    assert page.side.move_deposit.isEnabled()
    page.side.move_deposit.click()
    assert page.moving.dialog is not None
    return page, page.moving.dialog


def test_it_goes_to_the_customers_next_order_and_both_tell_it(
    qtbot: QtBot, bench: Bench, store: Store, two: tuple[Order, Order]
) -> None:
    first, second = two
    page, dialog = opened(qtbot, bench, first)
    assert unnamed(dialog) == []
    assert dialog.amount.value() == 5_000
    assert dialog.to.value() == second.id
    said: list[str] = []
    page.said.connect(said.append)
    dialog.try_it()
    settle(qtbot, bench)
    assert not dialog.isVisible()
    assert said == [f"$50.00 moved from order {first.number} to order {second.number}, Anna Berg."]
    with store.read() as work:
        off, on = work.payments.of_order(first.id)[-1], work.payments.of_order(second.id)[-1]
        assert (off.note, on.note) == (f"to order {second.number}", f"from order {first.number}")
        assert work.payments.balance(second.id).due == -5_000
    assert not page.side.move_deposit.isEnabled()


def test_another_customers_order_is_asked_about_first(
    qtbot: QtBot, bench: Bench, store: Store, two: tuple[Order, Order]
) -> None:
    first, _second = two
    page, dialog = opened(qtbot, bench, first)
    bert = first.number + 1
    dialog.number.set_text(str(bert))
    dialog.try_it()
    assert dialog.isVisible()
    assert f"Order {bert} is Bert Iversen's: what Anna Berg paid" in dialog.refusal.text()
    dialog.try_it()
    settle(qtbot, bench)
    with store.read() as work:
        assert work.payments.balance(first.id).deposits == 5_000
        assert work.payments.balance(first.id).due == 0
        assert work.payments.held(first.id + 1) == 5_000
    assert page.billing is not None


def test_a_number_there_is_not_and_more_than_is_held_are_said_where_they_are_typed(
    qtbot: QtBot, bench: Bench, two: tuple[Order, Order]
) -> None:
    _page, dialog = opened(qtbot, bench, two[0])
    dialog.number.set_text("999")
    dialog.try_it()
    assert dialog.number.complaint.text() == "There is no order 999."
    dialog.number.set_text(str(two[0].number))
    dialog.try_it()
    assert dialog.number.complaint.text() == "It is held on that order already."
    dialog.number.set_value(None)
    dialog.amount.set_value(5_001)
    dialog.try_it()
    assert dialog.refusal.text() == "$50.00 is owed to the customer; $50.01 is more."
