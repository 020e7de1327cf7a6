"""A weight corrected after billing: listed, credited, and billed again at the new weight."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office import bills_bar
from desktop.office.bills_page import BillsPage
from desktop.office.day_bills import issue_day, read_day
from desktop.office.progress import Steps
from desktop.office.scale_check import Checked, disagreements
from shared.shop.animals import Weighing
from shared.shop.orders import Order
from shared.shop.people import SignedOn
from shared.units import Weight
from tests.desktop.office.ready_orders import StopsAfter, handed_over


def billed_and_corrected(bench: Bench, store: Store, signed: SignedOn) -> None:
    order = handed_over(store, signed)
    assert disagreements(store, Steps()).orders == 0
    issue_day(bench, read_day(store, Steps()).bills, Steps())
    checked = disagreements(store, Steps())
    assert (checked.found, checked.looked_at, checked.orders) == ((), 2, 2)
    correct_weight(store, signed, order)


def correct_weight(store: Store, signed: SignedOn, order: Order) -> None:
    """Side 1 weighed 95.5 lb, not 93.5."""
    with store.work(signed.person, signed.station) as work:
        lot = work.lots.get(order.lot_id)
        assert lot is not None
        first = next(one for one in work.weighings.of_animal(lot.animals[0].id) if one.side == 1)
        made = work.weighings.correct(first.id, Weight.from_pounds("95.5"), "read wrongly")
        assert isinstance(made, Weighing)
        work.commit()


def test_the_line_that_differs_is_listed(bench: Bench, store: Store, signed: SignedOn) -> None:
    """Worked by hand: 191.75 lb at $0.70 is $134.225, $134.23; 95.5 lb of it are $66.85."""
    billed_and_corrected(bench, store, signed)
    found = disagreements(store, Steps()).found
    assert [(one.line.key, one.billed_cents, one.now_cents) for one in found] == [
        ("cut_and_wrap:1", 6545, 6685)
    ]
    assert found[0].more_cents == 140


def test_a_weight_corrected_after_the_bill_is_said_at_the_order(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    page = BillsPage(bench)
    qtbot.addWidget(page)
    page.show()
    order = handed_over(store, signed)
    issue_day(bench, read_day(store, Steps()).bills, Steps())
    for corrected in (False, True):
        if corrected:
            correct_weight(store, signed, order)
        page.choose(order.id)
        qtbot.waitUntil(lambda: not bench.work.busy())
        assert page.side.notes.text().startswith("A weight or rate was changed") is corrected


def test_credited_and_billed_again_it_agrees(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    billed_and_corrected(bench, store, signed)
    page = BillsPage(bench)
    qtbot.addWidget(page)
    page.show()
    page.refresh()
    page.orders.setFocus()
    qtbot.waitUntil(lambda: not bench.work.busy())
    QTest.keyClick(page.orders, Qt.Key.Key_F12)
    qtbot.waitUntil(lambda: not bench.work.busy())
    page.bar.scale_dialog.try_it()
    qtbot.waitUntil(lambda: not bench.work.busy())
    assert not page.bar.scale_dialog.isVisible()
    with store.read() as work:
        rows = work.bills.list(sort="number")
        orders = work.orders.list()
    bills = sorted(one.total_cents for one in rows if one.credits is None)
    assert bills == [10249, 10389, 10442]
    assert [one.total_cents for one in rows if one.credits is not None] == [10249]
    assert [one.due_cents for one in orders] == [10389 - 5000, 10442]
    assert disagreements(store, Steps()).found == ()
    said: list[str] = []
    page.said.connect(said.append)
    page.bar.check_scale()
    qtbot.waitUntil(lambda: not bench.work.busy())
    assert said == ["All bills of open orders agree with the scale."]


def test_stopped_it_says_how_many_orders_were_checked(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    signed: SignedOn,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    billed_and_corrected(bench, store, signed)

    def stopped(store: Store, _steps: Steps) -> Checked:
        return disagreements(store, StopsAfter())

    monkeypatch.setattr(bills_bar, "disagreements", stopped)
    page = BillsPage(bench)
    qtbot.addWidget(page)
    page.show()
    page.bar.check_scale()
    qtbot.waitUntil(lambda: not bench.work.busy())
    dialog = page.bar.scale_dialog
    assert "stopped: 1 of 2 orders were looked at." in dialog.lead.text()
    dialog.try_it()
    qtbot.waitUntil(lambda: not bench.work.busy())
    with qtbot.waitSignal(page.bar.said) as heard:
        page.bar.check_scale()
    assert heard.args == [
        "Stopped: the bills of 1 of 2 open orders agree with the scale. "
        "The others were not checked."
    ]
