"""Writing an entry into the books, in the transaction of what it is about."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from fractions import Fraction

from sqlalchemy import ColumnElement, func, select

from db.columns import Cents
from db.desk import Desk
from db.problems import StoreBug
from db.tables.ledger import ClosedPeriods, LedgerEntries, LedgerPostings
from db.tables.lots import Lots
from shared.billing.posting import Posting, Standing, adds_up
from shared.shop.ledger import EntryKind
from shared.shop.problems import Refused


@dataclass(frozen=True, slots=True)
class Party:
    """Whose money it is: the customer, and the order or (the producer's own) the lot."""

    customer_id: int | None = None
    order_id: int | None = None
    lot_id: int | None = None


@dataclass(frozen=True, slots=True)
class About:
    """What an entry is about: the bill or payment, its number, and a word on it."""

    number: int = 0
    bill_id: int | None = None
    payment_id: int | None = None
    memo: str = ""


def shop_day(desk: Desk) -> date:
    """The day on the shop's wall, which is the day an entry is dated."""
    return desk.now.astimezone().date()


def closed_through(desk: Desk) -> date | None:
    """The last day that is closed, or None."""
    return desk.connection.execute(select(func.max(ClosedPeriods.through))).scalar_one()


def must_be_open(desk: Desk, day: date) -> Refused | None:
    """Refused "period_closed", with the last closed day, where the day lies in a closed period."""
    through = closed_through(desk)
    if through is not None and day <= through:
        return Refused("period_closed", {"through": through.isoformat(), "day": day.isoformat()})
    return None


def must_be_taken(desk: Desk, day: date) -> Refused | None:
    """As `must_be_open`; "not_yet" where money is said to have come on a day that is to come."""
    if day > shop_day(desk):
        return Refused("not_yet", {"day": day.isoformat()})
    return must_be_open(desk, day)


def post(
    desk: Desk,
    kind: EntryKind,
    postings: Sequence[Posting],
    party: Party,
    about: About,
    day: date | None = None,
) -> int:
    """Write an entry; its number, or 0 where nothing moves. The store seals and checks it."""
    if not postings:
        return 0
    if not adds_up(postings):
        raise StoreBug(f"a {kind} that doesn't add up: {postings}")
    on = day or shop_day(desk)
    entry = desk.next_number("entry")
    desk.add_rows(LedgerPostings, _rows(entry, on, postings, party))
    row: dict[str, object] = {
        "id": entry,
        "kind": kind,
        "day": on,
        "number": about.number,
        "bill_id": about.bill_id,
        "payment_id": about.payment_id,
        "memo": about.memo,
        "at": desk.now,
        **desk.stamp,
    }
    desk.add_rows(LedgerEntries, [row])
    return entry


def _rows(
    entry: int, day: date, postings: Sequence[Posting], party: Party
) -> list[dict[str, object]]:
    return [
        {
            "entry_id": entry,
            "position": position,
            "account": one.account,
            "cents": one.cents,
            "day": day,
            "code": one.code,
            "species": one.species,
            "tax_rate": one.tax_rate,
            "customer_id": party.customer_id,
            "order_id": party.order_id,
            "lot_id": party.lot_id,
        }
        for position, one in enumerate(postings, start=1)
    ]


def party_of(desk: Desk, lot_id: int, order_id: int | None, customer_id: int | None) -> Party:
    """Who owes it; a share without an owner is its producer's."""
    if customer_id is None:
        customer_id = desk.connection.execute(
            select(Lots.producer_id).where(Lots.id == lot_id)
        ).scalar_one()
    return Party(customer_id, order_id, lot_id)


def species_of(desk: Desk, lot_id: int) -> str:
    """The species of a lot."""
    return desk.connection.execute(select(Lots.species).where(Lots.id == lot_id)).scalar_one()


def standing(desk: Desk, party: Party) -> Standing:
    """What the party owes on its order (or the producer on the lot), and has deposited for it."""
    mine: ColumnElement[bool] = LedgerPostings.lot_id == party.lot_id
    if party.order_id is None:
        mine &= LedgerPostings.order_id.is_(None)
    else:
        mine &= LedgerPostings.order_id == party.order_id
    rows = desk.connection.execute(
        select(LedgerPostings.account, func.sum(LedgerPostings.cents, type_=Cents()))
        .where(mine, LedgerPostings.account.in_(("receivable", "deposits")))
        .group_by(LedgerPostings.account)
    )
    found: dict[str, int] = {row[0]: row[1] for row in rows}
    return Standing(found.get("receivable", 0), -found.get("deposits", 0))


def tax_rates(desk: Desk, bill_id: int) -> dict[str, Fraction]:
    """The tax rates a bill was made with, by charge."""
    rows = desk.connection.execute(
        select(LedgerPostings.code, LedgerPostings.tax_rate)
        .join(LedgerEntries, LedgerEntries.id == LedgerPostings.entry_id)
        .where(LedgerEntries.bill_id == bill_id, LedgerPostings.tax_rate.is_not(None))
    )
    return {code: rate for code, rate in rows if rate is not None}
