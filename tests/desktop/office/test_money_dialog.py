"""Money by several means, with change, by another payer, and what is asked about first."""

from datetime import date

from pytestqt.qtbot import QtBot

from desktop.office.money_dialog import Given, MoneyDialog
from desktop.paid_day import OpenDays
from shared.billing.payment import Tender
from shared.shop.money import Balance, PaymentKind
from tests.desktop.audit import unnamed

MONDAY = date(2026, 3, 23)
DUE = Balance(billed=57_330)
DAYS = OpenDays(lambda: MONDAY, closed=date(2026, 3, 14), counted=date(2026, 3, 20))
PAYERS = ((None, "Anna Berg"), (7, "Dora Lind"))


def opened(
    qtbot: QtBot, kind: PaymentKind = "payment", balance: Balance = DUE
) -> tuple[MoneyDialog, list[Given]]:
    kept: list[Given] = []

    def keep(given: Given) -> str:
        kept.append(given)
        return ""

    dialog = MoneyDialog(kind, balance, PAYERS, keep, DAYS)
    qtbot.addWidget(dialog)
    dialog.show()
    return dialog, kept


def test_part_by_card_and_the_rest_in_cash(qtbot: QtBot) -> None:
    """$573.30 due, $400.00 by card, $200.00 in cash: $26.70 go back."""
    dialog, kept = opened(qtbot)
    assert unnamed(dialog) == []
    dialog.means.set_value("card")
    dialog.amount.set_value(40_000)
    dialog.add_means()
    amount, means, _note = dialog._means[1]
    assert amount.value() == 17_330
    means.set_value("cash")
    amount.set_value(20_000)
    amount.changed.emit()
    assert dialog.sum.text() == "$573.30 is due. Change: $26.70."
    dialog.payer.set_value(7)
    dialog.try_it()
    assert kept == [Given("payment", (Tender("card", 40_000), Tender("cash", 20_000)), 7)]
    assert not dialog.isVisible()


def test_a_payment_much_larger_than_the_bill_is_asked_about(qtbot: QtBot) -> None:
    dialog, kept = opened(qtbot)
    dialog.amount.set_value(573_300)
    dialog.try_it()
    assert dialog.isVisible()
    assert "$5,733.00 is more than the bill: $5,159.70" in dialog.refusal.text()
    assert kept == []
    dialog.try_it()
    assert len(kept) == 1


def test_a_part_says_what_stays_open(qtbot: QtBot) -> None:
    dialog, _kept = opened(qtbot)
    dialog.amount.set_value(10_000)
    dialog.amount.changed.emit()
    assert dialog.sum.text() == "$573.30 is due. $473.30 stays open."


def test_more_than_the_deposit_asked_for_is_asked_about(qtbot: QtBot) -> None:
    dialog, kept = opened(qtbot, "deposit", Balance(deposit_asked=5_000))
    assert dialog.amount.value() == 5_000
    dialog.amount.set_value(50_000)
    dialog.try_it()
    assert "more than the deposit asked for, $50.00" in dialog.refusal.text()
    assert kept == []


def test_a_check_that_came_on_friday_is_kept_with_its_own_day(qtbot: QtBot) -> None:
    dialog, kept = opened(qtbot)
    assert dialog.day.value() == MONDAY
    dialog.means.set_value("check")
    dialog.day.set_text("friday")
    dialog.try_it()
    assert kept == [Given("payment", (Tender("check", 57_330),), None, date(2026, 3, 20))]


def test_cash_of_a_day_the_drawer_was_counted_for_is_asked_about(qtbot: QtBot) -> None:
    dialog, kept = opened(qtbot)
    dialog.day.set_text("fri")
    dialog.try_it()
    assert "counted on Fri Mar 20, 2026: if this cash was in it" in dialog.refusal.text()
    assert kept == []
    dialog.try_it()
    assert kept[0].day == date(2026, 3, 20)


def test_money_is_never_dated_in_a_closed_period_or_ahead(qtbot: QtBot) -> None:
    dialog, kept = opened(qtbot)
    dialog.day.set_text("3/14")
    dialog.try_it()
    assert "closed through Sat Mar 14, 2026; date it later." in dialog.day.complaint.text()
    dialog.day.set_text("+1")
    dialog.try_it()
    assert "Tue Mar 24, 2026 is still to come" in dialog.day.complaint.text()
    assert kept == []
