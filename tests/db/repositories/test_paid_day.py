"""Money that came on another day than it is typed: its own day in all the books."""

from datetime import date

from db.unit_of_work import Work
from shared.shop.money import Payment
from shared.shop.problems import Refused
from shared.shop.records import TABLES
from tests.db.examples import customer, lot_of_halves, order_of
from tests.db.repositories.test_ledger import TODAY, issue, journal, taxed


def test_a_check_of_friday_typed_on_monday_is_in_the_books_on_friday(work: Work) -> None:
    """It came on 27 February, a Friday, and is typed on 2 March."""
    order, friday = order_of(work, lot_of_halves(work)), date(2026, 2, 27)
    work.periods.close(date(2026, 2, 26))
    issue(work, order.id, taxed("kill", 10_000))
    paid = work.payments.take(order.id, "payment", "check", 4_000, "no. 211", day=friday)
    assert isinstance(paid, Payment)
    assert (paid.day, paid.at.astimezone().date()) == (friday, TODAY)
    assert [(one.day, one.cents) for one in work.books.takings(friday, friday)] == [(friday, 4_000)]
    assert work.books.takings(TODAY, TODAY) == ()
    entry = work.ledger.entries(friday, friday)[0]
    assert (entry.kind, entry.number) == ("payment", paid.number)
    assert work.books.receivables()[0].ages == (6_000, 0, 0, 0)
    assert paid.customer_id is not None
    account = work.books.account(paid.customer_id, friday, TODAY)
    assert [(one.move.day, one.move.cents, one.balance) for one in account.lines] == [
        (friday, -4_000, -4_000),
        (TODAY, 10_000, 6_000),
    ]
    csv = list(work.records.rows(next(t for t in TABLES if t.name == "payments"), friday, friday))
    assert csv[0][0][1] == "2026-02-27"


def test_money_is_dated_neither_in_a_closed_period_nor_ahead(work: Work) -> None:
    order, closed = order_of(work, lot_of_halves(work)), date(2026, 2, 27)
    work.periods.close(closed)
    for day, code in ((closed, "period_closed"), (date(2026, 3, 3), "not_yet")):
        for made in (
            work.payments.take(order.id, "deposit", "cash", 1, day=day),
            work.ledger.collect(customer(work).id, "cash", 1, day=day),
        ):
            assert isinstance(made, Refused)
            assert made.code == code
    assert journal(work) == ()
