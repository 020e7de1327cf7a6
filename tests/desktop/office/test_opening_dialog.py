"""Balances from before these books, typed in the window, and paid later on the account."""

from datetime import timedelta

from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office.account_dialog import AccountDialog
from desktop.office.opening_dialog import OpeningDialog
from shared.shop.people import SignedOn
from tests.db.examples import customer
from tests.desktop.audit import unnamed


def settled(qtbot: QtBot, bench: Bench) -> None:
    qtbot.waitUntil(lambda: not bench.work.busy())


def opened(qtbot: QtBot, bench: Bench) -> OpeningDialog:
    dialog = OpeningDialog(bench)
    qtbot.addWidget(dialog)
    dialog.show()
    settled(qtbot, bench)
    return dialog


def test_cash_bank_and_tax_from_the_old_books(qtbot: QtBot, bench: Bench, store: Store) -> None:
    for what, cents in (("cash", 15_000), ("bank", 200_000), ("tax", 7_350)):
        dialog = opened(qtbot, bench)
        assert unnamed(dialog) == []
        dialog.what.set_value(what)
        dialog._fit()
        assert not dialog.who.isVisible()
        dialog.amount.set_value(cents)
        dialog.try_it()
        assert not dialog.isVisible()
    with store.read() as work:
        balances = work.books.balances()
    assert balances == {"money:cash": 15_000, "bank": 200_000, "tax": -7_350, "opening": -207_650}


def test_what_a_customer_owed_is_paid_in_parts_on_his_account(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    """$80.00 from before, $30.00 by a check that came yesterday: $50.00 are left."""
    with store.work(signed.person, signed.station) as work:
        anna = customer(work)
        work.commit()
    dialog = opened(qtbot, bench)
    dialog.amount.set_value(8_000)
    dialog.who.set_value(anna.id)
    settled(qtbot, bench)
    dialog.day.set_text("-3")
    dialog.try_it()
    assert not dialog.isVisible(), dialog.refusal.text()
    account = AccountDialog(bench, anna.id, anna.name)
    qtbot.addWidget(account)
    account.show()
    settled(qtbot, bench)
    assert account.money.isVisible()
    account.money.click()
    money = account.money_dialog
    assert unnamed(money) == []
    money.amount.set_value(8_001)
    money.try_it()
    assert money.amount.complaint.text() == "Only $80.00 is owed from before."
    money.amount.set_value(3_000)
    money.means.set_value("check")
    money.day.set_text("yesterday")
    money.try_it()
    settled(qtbot, bench)
    yesterday = bench.today() - timedelta(days=1)
    with store.read() as work:
        assert work.ledger.owed_from_before(anna.id) == 5_000
        assert [one.cents for one in work.books.takings(yesterday, yesterday)] == [3_000]
    assert account.account is not None
    assert account.account.closing == 5_000


def test_whose_debt_it_was_is_asked(qtbot: QtBot, bench: Bench, store: Store) -> None:
    dialog = opened(qtbot, bench)
    dialog.amount.set_value(1_250)
    dialog.try_it()
    assert dialog.isVisible()
    assert dialog.who.complaint.text() == "Fill this in."
    with store.read() as work:
        assert work.books.balances() == {}
