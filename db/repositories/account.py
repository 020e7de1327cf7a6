"""What the books moved on one customer's account."""

from datetime import date
from typing import TYPE_CHECKING, cast

from sqlalchemy import func, or_, select

from db.columns import Cents
from db.desk import Desk
from db.tables.customers import Customers
from db.tables.ledger import LedgerEntries, LedgerPostings
from db.tables.lots import Shares
from db.tables.orders import Orders
from shared.billing.account import Move

if TYPE_CHECKING:
    from shared.shop.ledger import EntryKind

HIS = ("receivable", "deposits")


def moves_of(desk: Desk, customer_id: int, through: date) -> tuple[Move, ...]:
    """Every entry up to a day that moves what a customer owes or has deposited; one query.

    Whoever owns the order's share now has it on his account, whoever was named when it was
    posted; those joined into a customer are that customer.
    """
    people = (
        select(Customers.id)
        .where(or_(Customers.id == customer_id, Customers.joined_into == customer_id))
        .scalar_subquery()
    )
    share = (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share)
    posted = LedgerPostings
    rows = desk.connection.execute(
        select(
            LedgerEntries.day,
            LedgerEntries.kind,
            LedgerEntries.number,
            func.coalesce(func.max(Orders.number), 0),
            LedgerEntries.memo,
            func.sum(posted.cents, type_=Cents()),
        )
        .join(LedgerEntries, LedgerEntries.id == posted.entry_id)
        .outerjoin(Orders, Orders.id == posted.order_id)
        .outerjoin(Shares, share)
        .where(
            posted.account.in_(HIS),
            posted.day <= through,
            func.coalesce(Shares.customer_id, posted.customer_id).in_(people),
        )
        .group_by(
            LedgerEntries.id,
            LedgerEntries.day,
            LedgerEntries.kind,
            LedgerEntries.number,
            LedgerEntries.memo,
        )
        .order_by(LedgerEntries.id)
    )
    return tuple(
        Move(day, cast("EntryKind", kind), number, order, memo, cents)
        for day, kind, number, order, memo, cents in rows
    )
