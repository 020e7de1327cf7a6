"""Closing the books: only days that are over, never opened again, nothing slips in."""

from datetime import date

import pytest
from sqlalchemy import text

from db.unit_of_work import Work
from shared.shop.ledger import ClosedPeriod
from shared.shop.problems import Refused
from tests.db.examples import customer, issued_pdf, lot_of_halves, order_of


def raw(work: Work, sql: str) -> None:
    work._connection.execute(text(sql))


def test_a_period_is_closed_once_and_later_ones_after_it(work: Work) -> None:
    assert work.periods.closed_through() is None
    closed = work.periods.close(date(2026, 1, 31), "January")
    assert isinstance(closed, ClosedPeriod)
    assert work.periods.close(date(2026, 1, 15)) == Refused(
        "closed_already", {"through": "2026-01-31"}
    )
    assert work.periods.close(date(2026, 3, 2)) == Refused("not_over", {"day": "2026-03-02"})
    work.periods.close(date(2026, 2, 28))
    assert work.periods.closed_through() == date(2026, 2, 28)
    assert [(one.through, one.note, one.person) for one in work.periods.all()] == [
        (date(2026, 1, 31), "January", "Test"),
        (date(2026, 2, 28), "", "Test"),
    ]


def test_nothing_is_dated_into_a_closed_period(work: Work) -> None:
    anna = customer(work)
    work.periods.close(date(2026, 2, 28))
    late = work.ledger.open_with("receivable", 100, customer_id=anna.id, day=date(2026, 2, 28))
    assert late == Refused("period_closed", {"through": "2026-02-28", "day": "2026-02-28"})
    assert work.books.balances() == {}


def test_a_clock_that_was_put_back_cant_write_into_it(work: Work) -> None:
    """The day is read from the clock; the store's own guard holds too."""
    order = order_of(work, lot_of_halves(work))
    raw(
        work,
        "INSERT INTO closed_periods (through, note, at, person_id, station_id)"
        " VALUES ('2026-03-05', '', '', 1, 1)",
    )
    refused = Refused("period_closed", {"through": "2026-03-05", "day": "2026-03-02"})
    assert work.payments.take(order.id, "payment", "cash", 1) == refused
    assert work.bills.issue(order.id, total_cents=1, snapshot="", pdf=issued_pdf) == refused
    assert work.ledger.count_drawer(0) == refused
    raw(
        work,
        "INSERT INTO ledger_postings (entry_id, position, account, cents, day, code, species)"
        " VALUES (1, 1, 'bank', 5, '2026-03-02', '', ''),"
        " (1, 2, 'opening', -5, '2026-03-02', '', '')",
    )
    with pytest.raises(Exception, match="the period is closed"):
        raw(
            work,
            "INSERT INTO ledger_entries (id, kind, day, number, memo, at, person_id, station_id)"
            " VALUES (1, 'opening', '2026-03-02', 0, '', '', 1, 1)",
        )
