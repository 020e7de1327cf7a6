"""The drawer is counted with its reason and found in the list; lists and journal are written."""

from datetime import timedelta
from pathlib import Path

from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.language import Language
from desktop.office.place import OfficePlace
from desktop.paths import resources
from printing.words import Words
from shared.shop.people import SignedOn
from tests.desktop.audit import unnamed
from tests.desktop.office.test_place import opened
from tests.desktop.recorded_messages import RecordedMessages


def page(qtbot: QtBot, bench: Bench) -> OfficePlace:
    place: OfficePlace = opened(qtbot, bench)
    place.tabs.setCurrentWidget(place.books)
    settled(qtbot, bench)
    return place


def settled(qtbot: QtBot, bench: Bench) -> None:
    qtbot.waitUntil(lambda: not bench.work.busy())


def test_a_count_that_differs_needs_its_reason_and_is_listed(qtbot: QtBot, bench: Bench) -> None:
    place = page(qtbot, bench)
    books = place.books
    assert unnamed(books) == []
    books.count_drawer()
    books.dialog.counted.set_value(500)
    assert "$5.00" in books.dialog.attempt()
    books.dialog.reason.set_value("change from home")
    books.dialog.try_it()
    settled(qtbot, bench)
    (row,) = books.tables[3].rows.rows()
    assert (row.expected_cents, row.counted_cents, row.difference) == (0, 500, 500)
    books.wanted.set_text("nothing like it")
    books._show()
    assert list(books.tables[3].rows.rows()) == []


def test_how_many_rows_there_are_is_told_in_the_language_the_window_changes_to(
    qtbot: QtBot, bench: Bench, qapp: QApplication
) -> None:
    place = page(qtbot, bench)
    english, before = bench.words, QLocale()
    language = Language(qapp, resources() / "translations")
    try:
        assert place.books.status.text() == "0 rows"
        bench.words = Words("es")
        assert language.use("es")
        qapp.processEvents()
        settled(qtbot, bench)
        assert place.books.status.text() == "0 filas"
    finally:
        bench.words = english
        language.use("en")
        QLocale.setDefault(before)
        settled(qtbot, bench)


def test_who_owes_is_saved_with_formulas_made_safe_and_the_journal_beside_it(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    messages: RecordedMessages,
    signed: SignedOn,
    tmp_path: Path,
) -> None:
    from shared.shop.customers import Customer

    with store.work(signed.person, signed.station) as work:
        customer = work.customers.add(Customer(name="=Berg"))
        assert isinstance(customer, Customer)
        work.ledger.open_with("receivable", 2000, customer_id=customer.id)
        work.commit()
    place = page(qtbot, bench)
    books = place.books
    books.refresh()
    settled(qtbot, bench)
    messages.answers += [tmp_path / "owed.csv", tmp_path / "journal.beancount"]
    books.save_csv()
    settled(qtbot, bench)
    assert "'=Berg" in (tmp_path / "owed.csv").read_text("utf-8")
    books.save_journal(as_csv=False)
    settled(qtbot, bench)
    assert "Assets:Receivable" in (tmp_path / "journal.beancount").read_text("utf-8")


def test_only_a_day_that_is_over_is_closed(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages
) -> None:
    place = page(qtbot, bench)
    books = place.books
    messages.answers.append(True)
    books.close_period()
    assert books.bench.store is bench.store
    with bench.store.read() as work:
        assert work.periods.all() == ()


def three_owe(store: Store, signed: SignedOn) -> None:
    from shared.shop.customers import Customer

    with store.work(signed.person, signed.station) as work:
        for name, cents in (("Berg", 2_000), ("Lind", 3_050), ("Lindahl", 1)):
            customer = work.customers.add(Customer(name=name))
            assert isinstance(customer, Customer)
            work.ledger.open_with("receivable", cents, customer_id=customer.id)
        work.commit()


def test_the_sum_at_the_foot_follows_the_filter_and_goes_on_paper_not_in_the_csv(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    messages: RecordedMessages,
    signed: SignedOn,
    tmp_path: Path,
) -> None:
    three_owe(store, signed)
    place = page(qtbot, bench)
    books = place.books
    books.refresh()
    settled(qtbot, bench)
    assert books.sums.isVisible()
    assert books.sums.cells()[0] == "Sum"
    assert books.sums.cells()[3:5] == ["$50.51", "$50.51"]
    assert "Owed $50.51" in books.sums.accessibleDescription()
    books.wanted.set_text("lind")
    books._show()
    assert books.sums.cells()[3] == "$30.51"
    messages.answers.append(tmp_path / "owed.csv")
    books.save_csv()
    settled(qtbot, bench)
    written = (tmp_path / "owed.csv").read_text("utf-8")
    assert "30.51" not in written
    assert len(written.splitlines()) == 3
    books.show_paper()
    settled(qtbot, bench)
    assert books.progress.preview is not None
    books.progress.preview.accept()
    books.wanted.set_text("nobody")
    books._show()
    assert not books.sums.isVisible()
    books.which.set_value(6)
    books.refresh()
    settled(qtbot, bench)
    assert books.sums.cells() == []


def test_cash_carried_to_the_bank_is_no_shortage(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    """$150.00 in the drawer, $120.00 to the bank yesterday: $30.00 are counted without a reason."""
    with store.work(signed.person, signed.station) as work:
        work.ledger.open_with("money:cash", 15_000, day=bench.today() - timedelta(days=3))
        work.commit()
    place = page(qtbot, bench)
    books = place.books
    said: list[str] = []
    books.said.connect(said.append)
    books.bank.click()
    dialog = books.bank_dialog
    assert unnamed(dialog) == []
    assert "$150.00 in the drawer" in dialog.lead.text()
    dialog.note.set_text("slip 88")
    dialog.amount.set_value(15_001)
    dialog.try_it()
    assert dialog.amount.complaint.text() == "Only $150.00 is there."
    dialog.amount.set_value(12_000)
    dialog.day.set_text("yesterday")
    dialog.try_it()
    settled(qtbot, bench)
    assert said == ["Kept. $30.00 is left in the drawer."]
    books.count_drawer()
    books.dialog.counted.set_value(3_000)
    books.dialog.try_it()
    settled(qtbot, bench)
    yesterday = bench.today() - timedelta(days=1)
    with store.read() as work:
        assert work.books.balances() == {"money:cash": 3_000, "bank": 12_000, "opening": -15_000}
        (entry,) = work.ledger.entries(yesterday, yesterday)
        assert (entry.kind, entry.memo) == ("cash_moved", "slip 88")


def test_change_fetched_from_the_bank_is_in_the_drawer(
    qtbot: QtBot, bench: Bench, store: Store
) -> None:
    place = page(qtbot, bench)
    books = place.books
    books.carry_cash()
    books.bank_dialog.way.set_value("from")
    books.bank_dialog.amount.set_value(10_000)
    books.bank_dialog.note.set_text("change for the week")
    books.bank_dialog.try_it()
    settled(qtbot, bench)
    with store.read() as work:
        assert work.ledger.in_drawer() == 10_000
