"""The bills of all that is ready: read, looked over, issued and printed in one go."""

from io import BytesIO

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office import day_bills_dialog
from desktop.office.bills_page import BillsPage
from desktop.office.day_bills import ReadDay, issue_day, read_day
from desktop.office.progress import Steps
from desktop.office.to_bill import orders_to_bill
from shared.shop.people import SignedOn
from tests.desktop.audit import unnamed
from tests.desktop.office.ready_orders import StopsAfter, handed_over


def opened(qtbot: QtBot, bench: Bench) -> BillsPage:
    page = BillsPage(bench)
    qtbot.addWidget(page)
    page.resize(1366, 620)
    page.show()
    page.refresh()
    qtbot.waitUntil(lambda: not bench.work.busy())
    QTest.keyClick(page.orders, Qt.Key.Key_F7)
    qtbot.waitUntil(lambda: not bench.work.busy())
    return page


def test_all_are_issued_and_come_as_one_pdf(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    handed_over(store, signed)
    page = opened(qtbot, bench)
    dialog = page.bar.dialog
    assert unnamed(dialog) == []
    assert [one.total_cents for one in dialog.table.rows.rows()] == [10249, 10442]
    assert "To issue: 2, $206.91." in dialog.sum.text()
    QTest.keyClick(dialog.table, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: not bench.work.busy())
    assert dialog.sum.text().endswith("Issued: 2, $206.91.")
    preview = page.papers.preview
    assert preview is not None
    assert len(BytesIO(preview.pdf).getvalue()) > 1000
    assert len(PdfReader(BytesIO(preview.pdf)).pages) == 2
    preview.accept()
    with store.read() as work:
        assert [row.total_cents for row in work.bills.list()] == [10249, 10442]


def test_one_left_out_is_not_issued(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order = handed_over(store, signed)
    page = opened(qtbot, bench)
    dialog = page.bar.dialog
    dialog.table.choose(1)
    QTest.keyClick(dialog.table, Qt.Key.Key_Space)
    dialog.issue_all()
    qtbot.waitUntil(lambda: not bench.work.busy())
    with store.read() as work:
        assert [row.order_id for row in work.bills.list()] == [order.id]
    assert page.papers.preview is not None
    page.papers.preview.accept()


def test_what_was_changed_since_it_was_checked_is_left(
    bench: Bench, store: Store, signed: SignedOn
) -> None:
    handed_over(store, signed)
    checked = read_day(store, Steps()).bills
    with store.work(signed.person, signed.station) as work:
        (card,) = work.rates.all()
        work.rates.retire(card.id, "raised")
        work.commit()
    found = issue_day(bench, checked, Steps())
    assert [one.issued for one in found] == [None, None]
    assert all(one.problem is not None and one.problem.code == "changed" for one in found)


def test_stopped_the_rest_is_not_issued(bench: Bench, store: Store, signed: SignedOn) -> None:
    handed_over(store, signed)
    checked = read_day(store, Steps()).bills
    found = issue_day(bench, checked, StopsAfter())
    assert len(found) == 1
    with store.read() as work:
        assert len(work.bills.list()) == 1


def test_stopped_while_reading_it_says_how_many_orders_were_looked_at(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    signed: SignedOn,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    handed_over(store, signed)
    page = opened(qtbot, bench)
    assert page.bar.dialog.more.isHidden()
    page.bar.dialog.reject()

    def stopped(store: Store, _steps: Steps) -> ReadDay:
        return read_day(store, StopsAfter())

    monkeypatch.setattr(day_bills_dialog, "read_day", stopped)
    page.bar.bill_all()
    qtbot.waitUntil(lambda: not bench.work.busy())
    assert len(page.bar.dialog.table.rows.rows()) == 1
    assert page.bar.dialog.more.isVisible()
    assert page.bar.dialog.more.text().startswith("Stopped: 1 of 2 orders were looked at")


def test_orders_without_a_bill_come_first(bench: Bench, store: Store, signed: SignedOn) -> None:
    """The first is billed and not closed; with room for one, the other is listed."""
    handed_over(store, signed)
    first = read_day(store, Steps()).bills[:1]
    issue_day(bench, first, Steps())
    with store.read() as work:
        assert work.bills.to_bill(("handed_over",)) == (2, 1)
        assert work.bills.to_bill(("open",)) == ()
        assert work.bills.to_check(("handed_over",)) == (2, 1)
    found = orders_to_bill(store, ("ready", "handed_over"), most=1)
    assert ([one.id for one in found.rows], found.count) == ([2], 2)
    (left,) = read_day(store, Steps()).bills
    assert left.billing.order.id == 2


def test_where_nothing_is_to_be_billed_it_says_so(qtbot: QtBot, bench: Bench) -> None:
    page = opened(qtbot, bench)
    assert "Nothing is to be billed" in page.bar.dialog.said.text()
