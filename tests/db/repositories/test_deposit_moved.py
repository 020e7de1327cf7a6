"""A deposit moved to another order: two entries that cancel out, kept on both orders."""

from datetime import date

from beancount import loader

from db.unit_of_work import Work
from shared.billing.journal import journal_lines
from shared.shop.lots import Lot, NewLot
from shared.shop.problems import Refused
from tests.db.examples import booked, lot_of_halves, order_of
from tests.db.repositories.test_ledger import issue, journal, shown, taxed

NOTES = ("to order 3", "from order 1")


def another(work: Work, lot: Lot) -> Lot:
    """The same owners' next animal."""
    shares = tuple(lot.shares)
    return booked(work, NewLot("pork", 1, date(2026, 4, 6), lot.producer_id, shares))


def test_half_a_deposit_goes_to_the_next_animal(work: Work) -> None:
    lot = lot_of_halves(work)
    first, second = order_of(work, lot), order_of(work, another(work, lot))
    work.payments.take(first.id, "deposit", "check", 5_000)
    moved = work.payments.move(first.id, second.id, 2_000, NOTES)
    assert not isinstance(moved, Refused)
    off, on = moved
    assert (off.order_id, off.kind, off.means, off.note) == (
        first.id,
        "refund",
        "moved",
        "to order 3",
    )
    assert (on.order_id, on.kind, on.means, on.cents) == (second.id, "deposit", "moved", 2_000)
    assert work.payments.balance(first.id).due == -3_000
    assert work.payments.balance(second.id).due == -2_000
    assert (work.payments.held(first.id), work.payments.held(second.id)) == (3_000, 2_000)
    assert [shown(one) for one in journal(work)[1:]] == [
        [("moved", -2_000), ("deposits", 2_000)],
        [("moved", 2_000), ("deposits", -2_000)],
    ]
    held = {one.order_number: one.cents for one in work.books.deposits()}
    assert held == {first.number: 3_000, second.number: 2_000}
    day = off.day
    assert [(one.means, one.cents) for one in work.books.takings(day, day)] == [("check", 5_000)]


def test_moved_to_an_order_that_is_billed_it_is_used_at_once(work: Work) -> None:
    lot = lot_of_halves(work)
    first, bert = order_of(work, lot), order_of(work, lot, 2)
    work.payments.take(first.id, "deposit", "check", 5_000)
    issue(work, bert.id, taxed("kill", 4_000))
    assert not isinstance(work.payments.move(first.id, bert.id, 5_000, NOTES), Refused)
    assert work.payments.balance(bert.id).due == -1_000
    assert work.books.balances() == {"money:check": 5_000, "deposits": -1_000, "income": -4_000} | {
        "receivable": 0,
        "moved": 0,
    }
    _entries, errors, _options = loader.load_string("\n".join(journal_lines(journal(work), "x")))
    assert errors == []


def test_what_isnt_held_or_has_nowhere_to_go_isnt_moved(work: Work) -> None:
    lot = lot_of_halves(work)
    first, bert = order_of(work, lot), order_of(work, lot, 2)
    gone = another(work, lot)
    work.lots.cancel(gone.id, "sold", version=gone.version)
    move, book = work.payments.move, order_of(work, gone)
    work.payments.take(first.id, "deposit", "check", 5_000)
    assert move(first.id, bert.id, 5_001, NOTES) == Refused(
        "more_than_owed", {"owed": "5000", "asked": "5001"}
    )
    assert move(first.id, first.id, 1, NOTES) == Refused("same_order")
    assert move(first.id, book.id, 1, NOTES) == Refused("order_closed")
    assert move(first.id, bert.id, 0, NOTES) == Refused("not_positive")
    assert len(journal(work)) == 1


def test_a_deposit_of_a_cancelled_booking_can_be_moved(work: Work) -> None:
    lot = lot_of_halves(work)
    first = order_of(work, lot)
    work.payments.take(first.id, "deposit", "check", 5_000)
    next_one = order_of(work, another(work, lot))
    work.lots.cancel(lot.id, "another day", version=lot.version)
    assert not isinstance(work.payments.move(first.id, next_one.id, 5_000, NOTES), Refused)
    assert work.payments.balance(first.id).due == 0
