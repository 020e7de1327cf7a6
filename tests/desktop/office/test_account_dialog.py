"""A customer's account of a month on the screen."""

from datetime import timedelta
from pathlib import Path

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office.place import OfficePlace
from shared.shop.people import SignedOn
from tests.desktop.audit import unnamed
from tests.desktop.office.ready_orders import handed_over
from tests.desktop.recorded_messages import RecordedMessages
from tests.printing.pages import amounts, text

ONE = timedelta(days=1)


def settle(qtbot: QtBot, bench: Bench) -> None:
    qtbot.waitUntil(lambda: not bench.work.busy())


def billed(qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn) -> OfficePlace:
    """Anna's bill of $102.49, of which $50.00 were deposited."""
    handed_over(store, signed)
    place = OfficePlace(bench)
    qtbot.addWidget(place)
    place.resize(1366, 768)
    place.show()
    place.refresh()
    settle(qtbot, bench)
    place.bills.issue()
    settle(qtbot, bench)
    return place


def test_a_months_account_has_deposit_bill_and_what_is_left(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    place = billed(qtbot, bench, store, signed)
    place.bills.side.account.click()
    settle(qtbot, bench)
    dialog = place.account
    assert unnamed(dialog) == []
    assert dialog.windowTitle() == "Account of Anna Berg"
    rows = dialog.table.rows.rows()
    assert [(one.charged, one.taken_off, one.balance) for one in rows] == [
        (None, None, 0),
        (None, 5000, -5000),
        (10249, None, 5249),
        (10249, 5000, 5249),
    ]
    with store.read() as work:
        (owed,) = work.books.receivables()
    assert owed.cents == rows[-1].balance
    dialog.later.click()
    settle(qtbot, bench)
    assert [one.balance for one in dialog.table.rows.rows()] == [5249, 5249]
    dialog.earlier.click()
    dialog.earlier.click()
    settle(qtbot, bench)
    assert [one.balance for one in dialog.table.rows.rows()] == [0, 0]
    assert dialog.start.value() == (bench.today().replace(day=1) - ONE).replace(day=1)


def test_a_customer_without_a_move_has_an_account_of_nothing(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    place = billed(qtbot, bench, store, signed)
    place.bills.choose(2)
    settle(qtbot, bench)
    place.bills.side.account.click()
    settle(qtbot, bench)
    assert [one.balance for one in place.account.table.rows.rows()] == [0, 0]


def test_it_opens_from_who_owes_what_and_is_saved(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    signed: SignedOn,
    messages: RecordedMessages,
    tmp_path: Path,
) -> None:
    place = billed(qtbot, bench, store, signed)
    place.books.refresh()
    settle(qtbot, bench)
    place.books.open_account(place.books.tables[0].rows.rows()[0])
    settle(qtbot, bench)
    dialog = place.books.account
    path = tmp_path / "account.csv"
    messages.answers.append(path)
    dialog.save_csv()
    settle(qtbot, bench)
    text = path.read_text(encoding="utf-8")
    assert "Bill 1" in text
    assert "Brought forward" in text


def test_ctrl_p_shows_the_account_as_a_paper(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    place = billed(qtbot, bench, store, signed)
    place.bills.side.account.click()
    settle(qtbot, bench)
    dialog = place.account
    qtbot.waitUntil(dialog.isActiveWindow)
    qtbot.keyClick(dialog, Qt.Key.Key_P, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: dialog.preview is not None)
    assert dialog.preview is not None
    said = text(dialog.preview.pdf)
    assert "Anna Berg" in said
    assert amounts(dialog.preview.pdf)[-1] == 5249
    assert "Account of Anna Berg" in dialog.preview.windowTitle()
