"""What the Office prints for a customer speaks his language; what was issued stays as it was."""

from dataclasses import replace
from fractions import Fraction

from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office import issuing
from desktop.office.account_dialog import account_paper
from desktop.office.bills_page import BillsPage
from desktop.paper_words import words_for
from shared.shop.customers import Customer
from shared.shop.money import IssuedBill
from shared.shop.people import SignedOn
from tests.desktop.office.ready_orders import handed_over
from tests.printing.pages import pages


def speaks(store: Store, signed: SignedOn, customer_id: int | None, language: str) -> int:
    """From now on the customer's papers are in `language`; his id."""
    assert customer_id is not None
    with store.work(signed.person, signed.station) as work:
        found = work.customers.get(customer_id)
        assert found is not None
        assert isinstance(work.customers.save(replace(found, language=language)), Customer)
        work.commit()
    return customer_id


def read_again(qtbot: QtBot, page: BillsPage) -> None:
    page.refresh()
    qtbot.waitUntil(lambda: not page.bench.work.busy())
    assert page.billing is not None


def opened(qtbot: QtBot, bench: Bench) -> BillsPage:
    page = BillsPage(bench)
    qtbot.addWidget(page)
    page.resize(1366, 700)
    page.show()
    read_again(qtbot, page)
    return page


def shown(qtbot: QtBot, page: BillsPage) -> str:
    """What the paper just shown says."""
    qtbot.waitUntil(lambda: not page.bench.work.busy())
    preview = page.papers.preview
    assert preview is not None
    said = "\n".join(pages(preview.pdf))
    preview.accept()
    return said


def kept_paper(store: Store, issued: IssuedBill) -> bytes:
    with store.read() as work:
        paper = work.papers.get(issued.paper_id)
    assert paper is not None
    return paper.pdf


def test_an_owners_papers_speak_his_language_in_an_english_window(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    his = speaks(store, signed, handed_over(store, signed).customer_id, "es")
    page = opened(qtbot, bench)
    for button, said in (
        (page.side.show_bill, "Cuenta, borrador"),
        (page.side.quote, "Cotización"),
        (page.side.ticket, "Boleta de peso"),
    ):
        button.click()
        assert said in shown(qtbot, page)
    page.receipt()
    assert "Recibo" in shown(qtbot, page)
    assert page.billing is not None
    assert page.papers.show_statement(page.billing, "per_lb_hot", Fraction(300), 0) is None
    assert "Estado de cuenta" in shown(qtbot, page)
    with store.read() as work:
        account = work.books.account(his, bench.today(), bench.today())
    assert "Estado de cuenta" in pages(account_paper(bench, his, account))[0]


def test_a_bill_and_its_credit_speak_the_owners_language_and_stay_as_issued(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    his = speaks(store, signed, handed_over(store, signed).customer_id, "es")
    page = opened(qtbot, bench)
    assert page.billing is not None
    bill = issuing.issue(bench, page.billing)
    assert isinstance(bill, IssuedBill)
    first = kept_paper(store, bill)
    assert "Cuenta 1" in pages(first)[0]
    read_again(qtbot, page)
    assert page.billing is not None
    note = issuing.credit(bench, page.billing, "Bolsa rota", "", None)
    assert isinstance(note, IssuedBill)
    assert "Nota de crédito 1" in pages(kept_paper(store, note))[0]
    speaks(store, signed, his, "en")
    assert kept_paper(store, bill) == first


def test_who_has_no_language_kept_gets_papers_in_the_windows(bench: Bench) -> None:
    assert words_for(None, bench.words) is bench.words
    assert words_for(Customer(1, "Anna Borg", language="fr"), bench.words) is bench.words
    assert words_for(Customer(1, "Anna Borg", language="es"), bench.words).language == "es"
