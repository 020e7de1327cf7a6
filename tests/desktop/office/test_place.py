"""The Office: a half hog's bill to the cent, paid and closed; rates, shop and credits."""

from fractions import Fraction
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office import issuing
from desktop.office.place import OfficePlace
from shared.billing.bill import BillLine
from shared.shop.money import IssuedBill
from shared.shop.people import SignedOn
from tests.desktop.audit import unnamed
from tests.desktop.office.ready_orders import handed_over
from tests.desktop.typing_in import type_into

if TYPE_CHECKING:
    from shared.shop.orders import Order


def opened(qtbot: QtBot, bench: Bench) -> OfficePlace:
    place = OfficePlace(bench)
    qtbot.addWidget(place)
    place.resize(1366, 620)
    place.show()
    place.refresh()
    settle(qtbot, bench)
    return place


def settle(qtbot: QtBot, bench: Bench) -> None:
    qtbot.waitUntil(lambda: not bench.work.busy())


def issued(qtbot: QtBot, bench: Bench) -> OfficePlace:
    place = opened(qtbot, bench)
    place.bills.issue()
    settle(qtbot, bench)
    return place


def charged(place: OfficePlace) -> list[BillLine]:
    """The bill's lines as shown, the tax rows below them left out."""
    return [row for row in place.bills.lines.rows.rows() if isinstance(row, BillLine)]


def test_a_long_name_stands_whole_in_the_panel_and_makes_it_no_wider(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order = handed_over(store, signed)
    place = opened(qtbot, bench)
    wide, heading = place.bills.side.width(), place.bills.side.heading
    assert order.owner in heading.text()
    heading.setText("Order 5, Wilhelmina Featherstonehaugh-Abercrombie Knox")
    qtbot.wait(50)
    assert place.bills.side.width() == wide
    assert heading.height() >= heading.heightForWidth(heading.width())


def test_the_bill_of_a_half_hog_is_right_to_the_cent(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    # Worked by hand. Kill $60.00, a half each: $30.00. Cut and wrap 189.75 lb at $0.70 is
    # $132.825, so $132.83 for the animal, of which 93.5/189.75 is $65.45 (65.4525 by the part).
    # Bacon 7.41 lb at $0.95: both halves' 14.82 lb are $14.079, so $14.08, and half is $7.04.
    # $30.00 + $65.45 + $7.04 = $102.49, less $50.00 paid down leaves $52.49.
    handed_over(store, signed)
    place = opened(qtbot, bench)
    amounts = {line.code: line.amount_cents for line in charged(place)}
    assert amounts == {"kill": 3000, "cut_and_wrap": 6545, "cure_and_smoke": 704}
    side = place.bills.side
    assert side.sums["total"].text() == "$102.49"
    place.bills.issue()
    settle(qtbot, bench)
    assert side.sums["billed"].text() == "$102.49"
    assert side.sums["deposits"].text() == "$50.00"
    assert side.sums["due"].text() == "$52.49"


def test_the_halves_of_the_hog_add_up(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    handed_over(store, signed)
    place = issued(qtbot, bench)
    place.bills.orders.choose(1)
    settle(qtbot, bench)
    place.bills.issue()
    settle(qtbot, bench)
    with store.read() as work:
        totals = [row.total_cents for row in work.bills.list()]
    assert sum(totals) == 6000 + 13283 + 1408


def test_issued_paid_by_keyboard_and_closed(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order = handed_over(store, signed)
    place = opened(qtbot, bench)
    place.bills.close_order()
    assert "not billed" in place.bills.side.said.text()
    place.bills.orders.setFocus()
    QTest.keyClick(place.bills.orders, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    settle(qtbot, bench)
    with store.read() as work:
        (bill,) = work.bills.of_order(order.id)
        paper = work.papers.get(bill.paper_id)
    assert paper is not None
    assert paper.pdf.startswith(b"%PDF")
    said: list[str] = []
    place.said.connect(said.append)
    place.bills.money()
    dialog = place.bills.money_dialog
    dialog.amount.line.selectAll()
    type_into(dialog.amount.line, "60")
    QTest.keyClick(dialog.amount.line, Qt.Key.Key_Return)
    settle(qtbot, bench)
    assert said == ["$52.49 kept. Change: $7.51."]
    assert place.bills.side.sums["due"].text() == "$0.00"
    place.bills.close_order()
    settle(qtbot, bench)
    with store.read() as work:
        found = work.orders.get(order.id)
    assert found is not None
    assert found.closed_at is not None


def test_a_closed_order_whose_bill_was_credited_can_be_billed_again(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order = handed_over(store, signed)
    place = opened(qtbot, bench)
    page = place.bills
    page.issue()
    settle(qtbot, bench)
    page.money()
    page.money_dialog.try_it()
    settle(qtbot, bench)
    page.close_order()
    settle(qtbot, bench)
    page.choose(order.id)
    settle(qtbot, bench)
    assert not page.side.issue.isEnabled()
    assert not page.side.money.isEnabled()
    assert page.billing is not None
    assert isinstance(issuing.credit(bench, page.billing, "wrong card", "", None), IssuedBill)
    page.choose(order.id)
    settle(qtbot, bench)
    assert page.side.money.isEnabled()
    assert page.side.issue.isEnabled()
    page.issue()
    settle(qtbot, bench)
    with store.read() as work:
        assert len(work.bills.of_order(order.id)) == 3
        assert work.payments.balance(order.id).due == 0


def test_money_asked_right_after_issuing_is_about_the_bill(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    handed_over(store, signed)
    place = opened(qtbot, bench)
    control = Qt.KeyboardModifier.ControlModifier
    place.bills.orders.setFocus()
    QTest.keyClick(place.bills.orders, Qt.Key.Key_Return, control)
    QTest.keyClick(place.bills.orders, Qt.Key.Key_F8)
    assert bench.work.busy()
    settle(qtbot, bench)
    dialog = place.bills.money_dialog
    assert dialog.isVisible()
    assert (dialog.kind.value(), dialog.amount.value()) == ("payment", 5249)
    dialog.reject()


def test_too_much_by_check_is_refused_in_place(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order = handed_over(store, signed)
    place = issued(qtbot, bench)
    place.bills.money()
    dialog = place.bills.money_dialog
    dialog.means.set_value("check")
    dialog.amount.set_value(6000)
    dialog.try_it()
    assert dialog.isVisible()
    assert "$52.49 is due; $60.00 is more" in dialog.refusal.text()
    with store.read() as work:
        assert len(work.payments.of_order(order.id)) == 1
    dialog.reject()


def test_a_credit_takes_one_line_back_with_its_reason(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    handed_over(store, signed)
    place = issued(qtbot, bench)
    place.bills.credit()
    dialog = place.bills.credit_dialog
    dialog.line.set_value("cure_and_smoke:0")
    dialog.try_it()
    assert dialog.reason.problem()
    dialog.reason.set_text("Bacon too salty")
    dialog.try_it()
    settle(qtbot, bench)
    assert place.bills.papers.preview is not None
    place.bills.papers.preview.accept()
    assert place.bills.side.sums["credited"].text() == "$7.04"
    assert place.bills.side.sums["due"].text() == "$45.45"


def test_without_a_card_the_page_says_what_to_do(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    handed_over(store, signed, rates=False)
    place = opened(qtbot, bench)
    assert "No rate card" in place.bills.side.said.text()
    assert not place.bills.side.issue.isEnabled()


def test_the_shop_is_kept_and_an_absurd_fore_share_is_not(
    qtbot: QtBot, bench: Bench, store: Store
) -> None:
    place = opened(qtbot, bench)
    place.tabs.setCurrentWidget(place.shop)
    place.shop.name.set_text("Oak Lane Meats")
    place.shop.address.set_value("4 Oak Lane\nOakfield")
    place.shop.fore.set_text("152")
    place.shop.keep()
    assert "between 0 and 100" in place.shop.fore.complaint.text()
    place.shop.fore.set_text("52.5 %")
    place.shop.keep()
    with store.read() as work:
        details = work.shop.details()
    assert (details.name, details.fore_share) == ("Oak Lane Meats", Fraction(21, 40))


def test_balances_list_who_owes(qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn) -> None:
    order: Order = handed_over(store, signed)
    place = issued(qtbot, bench)
    place.tabs.setCurrentWidget(place.balances)
    settle(qtbot, bench)
    (row,) = place.balances.orders.rows.rows()
    assert (row.id, row.due_cents) == (order.id, 5249)
    assert "$52.49" in place.balances.heading.text()
    place.balances.orders.picked.emit(row)
    settle(qtbot, bench)
    assert place.tabs.currentWidget() is place.bills


def test_the_producers_statement_is_shown_and_kept(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order = handed_over(store, signed)
    place = opened(qtbot, bench)
    place.bills.statement()
    place.bills.statement_dialog.rate.set_text("2.10")
    place.bills.statement_dialog.try_it()
    settle(qtbot, bench)
    assert place.bills.papers.preview is not None
    place.bills.papers.preview.accept()
    with store.read() as work:
        (paper,) = [one for one in work.papers.of_order(order.id) if one.kind == "statement"]
    assert paper.lot_id == order.lot_id


def test_everything_has_a_name(qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn) -> None:
    handed_over(store, signed)
    place = opened(qtbot, bench)
    for at in range(place.tabs.count()):
        place.tabs.setCurrentIndex(at)
        settle(qtbot, bench)
        assert unnamed(place) == []


def test_what_falls_to_a_producer_without_a_share_is_his_own_bill(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order = handed_over(store, signed, producer="Dora Lind")
    place = opened(qtbot, bench)
    codes = [line.code for line in charged(place)]
    assert codes == ["cut_and_wrap", "cure_and_smoke"]
    place.bills.side.producers.click()
    assert [line.code for line in charged(place)] == ["kill"]
    assert place.bills.side.sums["total"].text() == "$60.00"
    place.bills.issue()
    settle(qtbot, bench)
    place.bills.money()
    place.bills.money_dialog.try_it()
    settle(qtbot, bench)
    with store.read() as work:
        balance = work.payments.producer_balance(order.lot_id)
        assert (balance.billed, balance.paid, balance.due) == (6000, 6000, 0)
        assert work.bills.of_order(order.id) == ()
    place.bills.side.producers.click()
    assert place.bills.side.sums["billed"].text() == "$0.00"


def test_an_older_bill_is_found_by_its_number(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    handed_over(store, signed)
    place = issued(qtbot, bench)
    place.tabs.setCurrentWidget(place.balances)
    settle(qtbot, bench)
    page = place.balances
    assert [row.number for row in page.bills.rows.rows()] == [1]
    page.wanted.set_text("77")
    page.find_bills()
    settle(qtbot, bench)
    assert page.bills.rows.rowCount() == 0
    page.wanted.set_text("1")
    page.find_bills()
    settle(qtbot, bench)
    assert [row.number for row in page.bills.rows.rows()] == [1]
