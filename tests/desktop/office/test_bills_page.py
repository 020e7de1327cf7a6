"""The bills page: extras on a bill, quote, ticket, a written-off rest, another payer's receipt."""

from dataclasses import replace
from fractions import Fraction

from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office.bills_page import BillsPage
from shared.billing.rates import Charge, Step
from shared.shop.people import SignedOn
from tests.desktop.audit import unnamed
from tests.desktop.office.ready_orders import RATES, handed_over

STORAGE = Charge(
    "storage", "per_day", Fraction(0), asked=True, steps=(Step(Fraction(5), Fraction(500)),)
)
DELIVERY = Charge("delivery", "flat", Fraction(2500), asked=True)


def opened(qtbot: QtBot, bench: Bench) -> BillsPage:
    page = BillsPage(bench)
    qtbot.addWidget(page)
    page.resize(1366, 700)
    page.show()
    page.refresh()
    settle(qtbot, bench)
    return page


def settle(qtbot: QtBot, bench: Bench) -> None:
    qtbot.waitUntil(lambda: not bench.work.busy())


def test_storage_and_delivery_come_on_the_bill_asked_for(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    """Eight days, five of them free, at $5 are $15.00; delivery $25.00; $2.00 taken off."""
    handed_over(store, signed, rates=False)
    with store.work(signed.person, signed.station) as work:
        work.rates.save(replace(RATES, charges=(*RATES.charges, STORAGE, DELIVERY)))
        work.commit()
    page = opened(qtbot, bench)
    assert page.side.sums["total"].text() == "$102.49"
    page.extras()
    dialog = page.extras_dialog
    assert unnamed(dialog) == []
    assert not dialog.miles.isEnabled()
    dialog.days.set_value(8)
    dialog.delivery.set_value(True)
    dialog.off.set_value(200)
    dialog.try_it()
    assert dialog.reason.complaint.text()
    dialog.reason.set_text("Waited an hour")
    dialog.try_it()
    settle(qtbot, bench)
    assert page.side.sums["total"].text() == "$140.49"
    page.bar.bill_all()
    settle(qtbot, bench)
    assert [one.total_cents for one in page.bar.dialog.table.rows.rows()] == [14049, 10442]
    page.bar.dialog.issue_all()
    settle(qtbot, bench)
    assert page.bar.extras == {}
    with store.read() as work:
        assert [one.total_cents for one in work.bills.list()] == [14049, 10442]


def test_quote_and_ticket_are_shown(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    handed_over(store, signed)
    page = opened(qtbot, bench)
    for button, title in ((page.side.quote, "Quote, order 1"), (page.side.ticket, "Weight ticket")):
        button.click()
        settle(qtbot, bench)
        preview = page.papers.preview
        assert preview is not None
        assert title in preview.windowTitle()
        preview.accept()


def test_a_rest_is_written_off_with_its_reason(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    handed_over(store, signed)
    page = opened(qtbot, bench)
    page.issue()
    settle(qtbot, bench)
    page.money()
    dialog = page.money_dialog
    dialog.kind.set_value("write_off")
    dialog.amount.set_value(249)
    dialog.try_it()
    assert dialog.refusal.text() == "Say why."
    dialog.note.set_text("Bag torn")
    dialog.try_it()
    settle(qtbot, bench)
    assert page.side.sums["due"].text() == "$50.00"


def test_the_other_owner_may_pay(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order = handed_over(store, signed)
    page = opened(qtbot, bench)
    page.issue()
    settle(qtbot, bench)
    page.money()
    dialog = page.money_dialog
    names = {name: one for one, name in page.billing.payers} if page.billing else {}
    dialog.payer.set_value(names["Bert Iversen"])
    dialog.try_it()
    settle(qtbot, bench)
    with store.read() as work:
        last = work.payments.of_order(order.id)[-1]
        assert last.customer_id == names["Bert Iversen"]
        assert work.payments.balance(order.id).due == 0


def test_quantities_are_told_in_the_windows_language(qtbot: QtBot, bench: Bench) -> None:
    from dataclasses import replace
    from fractions import Fraction

    from desktop.office.bill_columns import BillColumns
    from printing.words import Words
    from shared.billing.bill import BillLine

    line = BillLine(
        "kill:1", "kill", "", "charge", "per_head", 1, "114", Fraction(1, 2), "head", None, "", 1
    )
    spanish = BillColumns(replace(bench, words=Words("es", strict=True)), bench.work)
    assert str(spanish._quantity(line)) == "0.5 cabeza"
    assert str(spanish._quantity(replace(line, quantity=Fraction(3)))) == "3 cabezas"
    assert str(BillColumns(bench, bench.work)._quantity(replace(line, unit="lb"))) == "0.5 lb"
