"""The bills page: extras on a bill, quote, ticket, a written-off rest, another payer's receipt."""

from dataclasses import replace
from datetime import date
from fractions import Fraction

import pytest
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office.bills_page import BillsPage
from desktop.office.extras_dialog import ExtrasDialog
from desktop.office.to_bill import orders_to_bill
from printing.bill import quantity_text
from shared.billing.bill import Bill, BillLine
from shared.billing.extras import Extras
from shared.billing.lot import Asked
from shared.billing.rates import Charge, Step
from shared.billing.storage import StorageDays
from shared.shop.calendar import OtherDay
from shared.shop.orders import Order
from shared.shop.people import SignedOn
from tests.desktop.audit import unnamed
from tests.desktop.office.ready_orders import RATES, handed_over
from tests.store_fixture import Clock

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
    assert page.billing is not None
    assert page.billing.extras.extras == Extras()
    with store.read() as work:
        assert [one.total_cents for one in work.bills.list()] == [14049, 10442]


def test_the_order_chosen_is_named_while_its_bill_is_read(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    handed_over(store, signed)
    page = BillsPage(bench)
    qtbot.addWidget(page)
    page._show_orders(orders_to_bill(store, page.bar.states()))  # pyright: ignore
    row = page.orders.chosen()
    assert row is not None
    assert page.billing is None  # still being read
    assert page.side.heading.text() == f"Order {row.number}, {row.owner}"
    assert page.lines_heading.text() == ""
    settle(qtbot, bench)
    assert page.side.heading.text() == f"Order {row.number}, {row.owner}"


def with_extras(store: Store, signed: SignedOn) -> None:
    """The handed-over hog, on a card with storage and delivery."""
    handed_over(store, signed, rates=False)
    with store.work(signed.person, signed.station) as work:
        work.rates.save(replace(RATES, charges=(*RATES.charges, STORAGE, DELIVERY)))
        work.commit()


def ask_days(qtbot: QtBot, bench: Bench, page: BillsPage, days: int) -> ExtrasDialog:
    page.extras()
    settle(qtbot, bench)
    page.extras_dialog.days.set_value(days)
    page.extras_dialog.try_it()
    settle(qtbot, bench)
    return page.extras_dialog


def test_extras_are_seen_at_another_station_with_who_said_them(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    """And what was said there meanwhile isn't written over."""
    with_extras(store, signed)
    here, there = opened(qtbot, bench), opened(qtbot, bench)
    ask_days(qtbot, bench, here, 8)
    there.extras()
    assert there.extras_dialog.days.value() is None
    there.extras_dialog.delivery.set_value(True)
    there.extras_dialog.try_it()
    assert there.extras_dialog.refusal.text() == f"{signed.person.name} has changed it meanwhile."
    there.extras_dialog.reject()
    there.refresh()
    settle(qtbot, bench)
    there.extras()
    assert there.extras_dialog.days.value() == 8
    assert f"Said by {signed.person.name}" in there.extras_dialog.lead.text()


def test_a_bill_isnt_issued_once_its_extras_were_changed_elsewhere(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    with_extras(store, signed)
    here, there = opened(qtbot, bench), opened(qtbot, bench)
    ask_days(qtbot, bench, there, 8)
    here.issue()
    settle(qtbot, bench)
    assert here.side.said.text().startswith("What is also on this bill was changed meanwhile")
    with store.read() as work:
        assert work.bills.list() == ()


def test_storage_billed_again_charges_the_new_days_only(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    """Five days are free, then $5 a day: 8 days are $15, and 3 days more another $15."""
    with_extras(store, signed)
    page = opened(qtbot, bench)
    assert "Storage: days since ready" in ask_days(qtbot, bench, page, 8).lead.text()
    page.issue()
    settle(qtbot, bench)
    assert page.billing is not None
    assert not page.billing.has_next
    dialog = ask_days(qtbot, bench, page, 3)
    assert "Storage: new days since bill 1" in dialog.lead.text()
    assert dialog.days.complaint.text() == "Bill 1 has the days before; new ones: 0."
    dialog.reject()
    with store.work(signed.person, signed.station) as work:
        said = work.extras.of(page.billing.order.id)
        work.extras.say(page.billing.order.id, Extras((Asked("storage", Fraction(3)),)), said.id)
        work.commit()
    page.refresh()
    settle(qtbot, bench)
    lines = [one for one in page.lines.rows.rows() if isinstance(one, BillLine)]
    assert [(one.key, one.amount_cents) for one in lines] == [("storage:0:2", 1500)]
    page.issue()
    settle(qtbot, bench)
    with store.read() as work:
        assert work.bills.list(sort="number")[-1].total_cents == 1500


def test_credited_whole_what_was_also_on_the_bill_is_billed_again(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    with_extras(store, signed)
    page = opened(qtbot, bench)
    ask_days(qtbot, bench, page, 8)
    page.issue()
    settle(qtbot, bench)
    page.credit()
    page.credit_dialog.reason.set_text("wrong owner")
    page.credit_dialog.try_it()
    settle(qtbot, bench)
    assert page.billing is not None
    assert page.billing.extras.extras == Extras((Asked("storage", Fraction(8)),))
    assert isinstance(page.billing.next_bill, Bill)
    assert page.billing.next_bill.total_cents == 10249 + 1500


def test_where_there_are_more_orders_than_listed_it_is_said(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    handed_over(store, signed)
    page = opened(qtbot, bench)
    assert page.bar.more.isHidden()
    page.bar.show_count(1_203)
    assert page.bar.more.text().startswith("500 of 1,203 orders, those with no bill first")
    found = orders_to_bill(store, ("ready", "handed_over"), most=1)
    assert (len(found.rows), found.count) == (1, 2)


def test_an_order_that_isnt_listed_can_be_chosen(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    """Found with Ctrl+F: not ready yet, or beyond those listed."""
    order = handed_over(store, signed)
    assert orders_to_bill(store, ("open",), order.id).row(order.id) is not None
    page = opened(qtbot, bench)
    page.choose(2)
    settle(qtbot, bench)
    assert page.billing is not None
    assert page.billing.order.id == 2
    page.refresh()
    settle(qtbot, bench)
    assert page.billing.order.id == 2


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

    line = BillLine(
        "kill:1", "kill", "", "charge", "per_head", 1, "114", Fraction(1, 2), "head", None, "", 1
    )
    spanish = BillColumns(replace(bench, words=Words("es", strict=True)), bench.work)
    assert str(spanish._quantity(line)) == "½ cabeza"
    assert str(spanish._quantity(replace(line, quantity=Fraction(3)))) == "3 cabezas"
    english = BillColumns(bench, bench.work)
    weighed = replace(line, unit="lb", quantity=Fraction("29.5698"))
    assert str(english._quantity(weighed)) == "29.5698 lb"
    from shared.billing.bill import make_bill
    from tests.shared.billing.lots import WHOLE, good, hung, lot_of

    lot = lot_of(hung("400", "400"), (WHOLE,), Charge("cut_and_wrap", "per_lb_hot", Fraction(85)))
    english.bill = replace(good(make_bill(lot, 1)), estimate=True)
    hanging = replace(weighed, basis="per_lb_hot")
    assert str(english._quantity(hanging)) == "29.5698 lb"  # the scale has it
    weighed = replace(weighed, basis="per_lb_finished")
    assert str(english._quantity(weighed)) == "30 lb"
    assert str(english._quantity(replace(weighed, quantity=Fraction("9.449")))) == "9.4 lb"


@pytest.mark.parametrize(
    ("which", "days", "unit", "first"),
    [
        ("every_day", 9, "9 days", "Sun Mar 8, 2026"),
        ("weekdays", 6, "6 working days", "Wed Mar 11, 2026"),
    ],
)
def test_storage_counts_the_days_the_shop_says(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    signed: SignedOn,
    clock: Clock,
    which: StorageDays,
    days: int,
    unit: str,
    first: str,
) -> None:
    """Fetched on Monday 2 March's order is looked at on Wednesday 11 March; Friday 6 was closed.

    Working days are 3, 4, 5, 9, 10, 11 March: the sixth is the first that costs.
    """
    with_extras(store, signed)
    with store.work(signed.person, signed.station) as work:
        work.shop.save(replace(work.shop.details(), storage_days=which))
        work.calendar.set_other(OtherDay(date(2026, 3, 6), closed=True))
        order = work.orders.list()[0]
        found = work.orders.move(order.id, "ready", version=order.version, reason="came back")
        assert isinstance(found, Order)
        work.commit()
    clock.pass_by(days=9)
    page = opened(qtbot, bench)
    page.choose(order.id)
    settle(qtbot, bench)
    assert page.billing is not None
    assert page.billing.storing is not None
    assert page.billing.storing.days == days
    dialog = ask_days(qtbot, bench, page, days)
    assert f"charged from {first}" in dialog.lead.text().replace("\u00a0", " ")
    assert ("working days" in dialog.lead.text()) == (which != "every_day")
    assert isinstance(page.billing.next_bill, Bill)
    (line,) = [one for one in page.billing.next_bill.lines if one.code == "storage"]
    assert quantity_text(line, bench.words) == unit
    assert line.amount_cents == (days - 5) * 500


def test_the_rows_of_a_bill_add_up_to_it_with_its_tax_by_rate(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    """The kill and the rest of the card bear two rates: two rows below, 7.25 % first."""
    handed_over(store, signed, rates=False)
    rates = (Fraction(29, 400), Fraction(6, 100))
    charges = tuple(
        replace(one, tax_rate=rates[min(at, 1)]) for at, one in enumerate(RATES.charges)
    )
    assert len(charges) > 1
    with store.work(signed.person, signed.station) as work:
        work.rates.save(replace(RATES, charges=charges))
        work.commit()
    page = opened(qtbot, bench)
    assert page.billing is not None
    bill = page.billing.shown
    assert bill is not None
    model = page.lines.rows
    cells = [
        [str(model.index(at, column).data() or "") for column in range(model.columnCount())]
        for at in range(model.rowCount())
    ]
    taxes = [row for row in cells if row[0] == "Tax"]
    assert [row[3] for row in taxes] == ["7.25 %", "6 %"]
    assert all(row[2].startswith("$") for row in taxes)
    cents = [int(row[4].replace("$", "").replace(",", "").replace(".", "")) for row in cells]
    assert sum(cents) == bill.total_cents
    assert bill.tax_cents > 0
