"""Revision 0009 gives what is kept already the entries it would get today."""

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date
from fractions import Fraction
from pathlib import Path

import pytest

from db import migrate
from db.engine import file_engine
from db.store import Store, open_store
from db.unit_of_work import Work
from shared.billing.bill import make_bill
from shared.billing.credit_note import CreditLine, CreditNote, credit_text
from shared.billing.rates import Charge
from shared.billing.snapshot import snapshot
from shared.shop.ledger import Entry
from shared.shop.money import IssuedBill
from shared.shop.people import SignedOn
from tests.db.examples import issued_pdf, lot_of_halves, order_of
from tests.shared.billing.lots import HALVES, good, hung, lot_of
from tests.store_fixture import Clock

EVER = (date(2000, 1, 1), date(2100, 1, 1))


def bill_of(work: Work, order_id: int, share: int, place: int) -> IssuedBill:
    """The bill of a half, with tax on the cutting; it is credited in part at once."""
    billed = lot_of(
        hung("350", "350"),
        HALVES,
        Charge("kill", "per_head", Fraction(10_000 + place)),
        Charge("cut_and_wrap", "per_lb_hot", Fraction(70), tax_rate=Fraction(3, 50)),
    )
    bill = good(make_bill(billed, share))
    issued = work.bills.issue(
        order_id,
        total_cents=bill.total_cents,
        snapshot=snapshot(bill),
        pdf=issued_pdf,
        lines=bill.lines,
    )
    assert isinstance(issued, IssuedBill)
    return issued


def credit_of(work: Work, issued: IssuedBill) -> None:
    lines = (CreditLine("cut_and_wrap:1", "cut_and_wrap", "", "", 1_000, 60),)
    note = CreditNote(issued.number, "beef", "", 1, "fat left on", lines)
    made = work.bills.credit(
        issued.id,
        total_cents=note.total_cents,
        reason=note.reason,
        snapshot=credit_text(note),
        pdf=issued_pdf,
        lines=lines,
    )
    assert isinstance(made, IssuedBill)


def trade(store: Store, signed: SignedOn, clock: Clock, place: int) -> None:
    """Bills with tax, deposits above and below them, credits, a refund, a write-off, a part."""

    @contextmanager
    def later() -> Iterator[Work]:
        clock.pass_by(hours=7)
        with store.work(signed.person, signed.station) as work:
            yield work
            work.commit()

    with later() as work:
        lot = lot_of_halves(work)
        first, second = order_of(work, lot), order_of(work, lot, 2)
        work.payments.take(first.id, "deposit", "check", 5_000)
        work.payments.take(second.id, "deposit", "cash", 90_000)
    for share, order in ((1, first), (2, second)):
        with later() as work:
            issued = bill_of(work, order.id, share, place)
        with later() as work:
            credit_of(work, issued)
    with later() as work:
        work.payments.take(second.id, "refund", "cash", 60_000, "deposit too high")
        work.payments.take(first.id, "write_off", "other", 40, "cents")
        work.payments.take(first.id, "payment", "card", 10_000)
        work.payments.take(None, "payment", "transfer", 700, lot_id=lot.id)
    with later() as work:
        work.bills.issue(None, lot_id=lot.id, total_cents=900, snapshot="{}", pdf=issued_pdf)


@pytest.mark.parametrize("lots", [1, 3])
def test_what_was_kept_before_gets_the_same_entries(
    store: Store, signed: SignedOn, store_path: Path, clock: Clock, lots: int
) -> None:
    for place in range(lots):
        trade(store, signed, clock, place)
    with store.read() as reading:
        before = reading.ledger.entries(*EVER)
        balances = reading.books.balances()
    store.close()
    engine = file_engine(store_path, foreign_keys=False)
    migrate.downgrade(engine, "0008")
    migrate.upgrade(engine)
    engine.dispose()
    again = open_store(store_path, keep_copies=False, clock=clock)
    with again.read() as reading:
        after = reading.ledger.entries(*EVER)
        assert reading.books.balances() == balances
    with again.work(signed.person, signed.station) as work:
        more = work.ledger.open_with("bank", 1)
        assert isinstance(more, Entry)
        assert more.id == len(after) + 1
    again.close()
    assert len(before) == 11 * lots
    assert by_paper(after) == by_paper(before)


def by_paper(entries: tuple[Entry, ...]) -> dict[tuple[str, int], tuple[object, ...]]:
    """Entries by kind and the number on the paper."""
    return {(one.kind, one.number): (one.day, one.memo, one.person, one.lines) for one in entries}
