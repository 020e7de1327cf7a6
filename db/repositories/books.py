"""What the books say: who owes what, deposits held, takings, tax, income. One query for each."""

from datetime import date
from fractions import Fraction

from sqlalchemy import Select, case, func, select
from sqlalchemy.orm import aliased

from db.columns import Cents
from db.desk import Desk
from db.repositories.account import moves_of
from db.repositories.ledger_posting import shop_day
from db.repositories.order_lists import OrderFilter, order_rows
from db.tables.customers import Customers
from db.tables.ledger import LedgerEntries, LedgerPostings
from db.tables.lots import Shares
from db.tables.orders import Orders
from shared.billing.account import Account, account_of
from shared.billing.ages import Aged, aged
from shared.shop.ledger import HeldDeposit, Income, Owed, Takings, TaxOfRate
from shared.shop.lists import OrderRow

TAKEN = ("deposit", "payment", "refund", "on_account", "collected", "paid_out")
MOST_ORDERS = 5000
OWN, JOINED = aliased(Customers), aliased(Customers)
POSTED = LedgerPostings
CENTS = func.sum(LedgerPostings.cents, type_=Cents())


class Books:
    """`work.books`; reads only."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def receivables(self, today: date | None = None) -> tuple[Owed, ...]:
        """Who owes what and since when, most first; customers the shop owes to come last.

        Payments go to the oldest charges of the order they were for.
        """
        rows = self._desk.connection.execute(_owing())
        people: dict[int, tuple[str, str]] = {}
        moves: dict[int, dict[tuple[int, int], list[tuple[date, int]]]] = {}
        for who, name, phone, order, lot, day, cents in rows:
            people[who] = name, phone
            orders = moves.setdefault(who, {})
            orders.setdefault((order or 0, lot), []).append((day, cents))
        on = today or shop_day(self._desk)
        found = [_owed(who, people[who], orders, on) for who, orders in moves.items()]
        return tuple(sorted(found, key=lambda one: (-one.cents, one.customer)))

    def account(self, customer_id: int, start: date, end: date) -> Account:
        """A customer's account of some days, `end` within."""
        return account_of(moves_of(self._desk, customer_id, end), start, end)

    def open_orders(self, limit: int = MOST_ORDERS) -> tuple[OrderRow, ...]:
        """Orders whose bills less payments don't come to nothing, by number."""
        unbalanced = OrderFilter(unbalanced=True)
        return order_rows(
            self._desk.connection,
            unbalanced,
            sort="number",
            descending=False,
            limit=limit,
            offset=0,
        )

    def deposits(self) -> tuple[HeldDeposit, ...]:
        """Deposits that no bill has used, oldest first."""
        first = func.min(POSTED.day)
        held = (
            select(
                POSTED.order_id,
                func.max(POSTED.customer_id).label("customer_id"),
                CENTS.label("cents"),
                first.label("since"),
            )
            .where(POSTED.account == "deposits")
            .group_by(POSTED.lot_id, POSTED.order_id)
            .having(CENTS != 0)
            .subquery()
        )
        name = func.coalesce(JOINED.name, OWN.name)
        rows = self._desk.connection.execute(
            select(
                func.coalesce(JOINED.id, OWN.id), name, Orders.number, -held.c.cents, held.c.since
            )
            .select_from(held)
            .outerjoin(Orders, Orders.id == held.c.order_id)
            .outerjoin(Shares, (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share))
            .join(OWN, OWN.id == func.coalesce(Shares.customer_id, held.c.customer_id))
            .outerjoin(JOINED, JOINED.id == OWN.joined_into)
            .order_by(held.c.since, name)
        )
        return tuple(HeldDeposit(row[0], row[1], row[2], int(row[3]), row[4]) for row in rows)

    def takings(self, start: date, end: date) -> tuple[Takings, ...]:
        """Money taken less given back, by day and means; `end` is within."""
        rows = self._desk.connection.execute(
            select(POSTED.day, POSTED.account, CENTS)
            .join(LedgerEntries, LedgerEntries.id == POSTED.entry_id)
            .where(
                POSTED.account.like("money:%"),
                POSTED.day >= start,
                POSTED.day <= end,
                LedgerEntries.kind.in_(TAKEN),
            )
            .group_by(POSTED.day, POSTED.account)
            .order_by(POSTED.day, POSTED.account)
        )
        return tuple(Takings(day, means.partition(":")[2], cents) for day, means, cents in rows)

    def tax(self, start: date, end: date) -> tuple[TaxOfRate, ...]:
        """What was sold and the tax on it by rate, credits taken off; `end` is within.

        Opening balances of tax aren't sales and aren't in it.
        """
        net = case((POSTED.account == "income", -POSTED.cents), else_=0)
        tax = case((POSTED.account == "tax", -POSTED.cents), else_=0)
        rows = self._desk.connection.execute(
            select(POSTED.tax_rate, func.sum(net, type_=Cents()), func.sum(tax, type_=Cents()))
            .join(LedgerEntries, LedgerEntries.id == POSTED.entry_id)
            .where(
                POSTED.account.in_(("income", "tax")),
                POSTED.day >= start,
                POSTED.day <= end,
                LedgerEntries.kind.in_(("bill", "credit")),
            )
            .group_by(POSTED.tax_rate)
        )
        found = [TaxOfRate(rate or Fraction(0), net, tax) for rate, net, tax in rows]
        return tuple(sorted(found, key=lambda one: one.rate))

    def income(self, start: date, end: date) -> tuple[Income, ...]:
        """Income by service and species, credits taken off, most first; `end` is within."""
        rows = self._desk.connection.execute(
            select(POSTED.code, POSTED.species, -CENTS)
            .where(POSTED.account == "income", POSTED.day >= start, POSTED.day <= end)
            .group_by(POSTED.code, POSTED.species)
        )
        found = [Income(code, species, int(cents)) for code, species, cents in rows]
        return tuple(sorted(found, key=lambda one: (-one.cents, one.code, one.species)))

    def balances(self, through: date | None = None) -> dict[str, int]:
        """Every account's balance through a day, debit above nothing; they add up to nothing."""
        found = select(POSTED.account, CENTS).group_by(POSTED.account)
        if through is not None:
            found = found.where(POSTED.day <= through)
        rows = self._desk.connection.execute(found.order_by(POSTED.account))
        return {row[0]: row[1] for row in rows}


def _owing() -> Select[int, str, str, int, int, date, int]:
    """Every move on what customers owe, of orders that don't come to nothing.

    Whoever owns the order's share now owes it, whoever was named when it was posted.
    """
    whose = case((POSTED.lot_id.is_(None), POSTED.customer_id))
    left = func.sum(POSTED.cents, type_=Cents()).over(
        partition_by=(POSTED.lot_id, POSTED.order_id, whose)
    )
    moves = (
        select(
            POSTED.customer_id,
            POSTED.order_id,
            POSTED.lot_id,
            POSTED.day,
            POSTED.cents,
            left.label("left"),
        )
        .where(POSTED.account == "receivable")
        .subquery()
    )
    return (
        select(
            func.coalesce(JOINED.id, OWN.id),
            func.coalesce(JOINED.name, OWN.name),
            func.coalesce(JOINED.phone, OWN.phone),
            Orders.number,
            func.coalesce(moves.c.lot_id, 0),
            moves.c.day,
            moves.c.cents,
        )
        .select_from(moves)
        .outerjoin(Orders, Orders.id == moves.c.order_id)
        .outerjoin(Shares, (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share))
        .join(OWN, OWN.id == func.coalesce(Shares.customer_id, moves.c.customer_id))
        .outerjoin(JOINED, JOINED.id == OWN.joined_into)
        .where(moves.c.left != 0)
    )


def _owed(
    who: int,
    named: tuple[str, str],
    orders: dict[tuple[int, int], list[tuple[date, int]]],
    today: date,
) -> Owed:
    each: list[Aged] = [aged(moves, today) for moves in orders.values()]
    first, second, third, fourth = (sum(one.ages[age] for one in each) for age in range(4))
    return Owed(
        customer_id=who,
        customer=named[0],
        phone=named[1],
        cents=sum(one.cents for one in each),
        since=min((one.since for one in each if one.since is not None), default=None),
        ages=(first, second, third, fourth),
        orders=tuple(sorted({number for number, _ in orders if number})),
    )
