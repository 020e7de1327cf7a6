"""A file with many bills: years of lots, orders, weights, bills, payments and their entries.

Written in bulk; the store's triggers check every entry all the same. Nothing here is a person's.
"""

import random
from collections.abc import Iterator
from datetime import UTC, date, datetime, time, timedelta
from itertools import islice

from sqlalchemy import insert

from db.store import Store
from db.tables.bills import BillLines, Bills, Payments
from db.tables.customers import Customers
from db.tables.ledger import ClosedPeriods, DrawerCounts, LedgerEntries, LedgerPostings
from db.tables.lots import Animals, Lots, Shares
from db.tables.orders import Orders
from db.tables.packages import Packages
from db.tables.papers import Papers
from db.tables.row import Row
from db.tables.weighings import Weighings
from db.unit_of_work import Work
from tests.bench.find import animal, customer, lot, order, share_of

YEARS = 5
OPEN_EACH = 50
OWING = 1000
UNPAID_EACH = 40
DEPOSIT_EACH = 400
STAMP = {"person_id": 1, "station_id": 1}
AT_ONCE = 20_000
TARE = ("tare_count", "tare_unit", "tare_exponent")
Values = dict[str, object]


def fill(store: Store, bills: int, today: date) -> None:
    """So many bills, one an order, two orders a lot; one in forty is unpaid, one in fifty open.

    One in four hundred has a deposit that no bill used.
    """
    draw = random.Random(20261125)
    people = max(2, bills // 10)
    signed = store.sign_on("Bench", "Bench")
    assert (signed.person.id, signed.station.id) == (1, 1)
    with store.work(signed.person, signed.station) as work:
        lots = range(1, bills // 2 + 1)
        orders = range(1, 2 * len(lots) + 1)
        days = {number: _day(number, len(lots), today) for number in lots}
        add(work, Customers, (customer(draw, number) for number in range(1, people + 1)))
        add(work, Lots, (lot(draw, number, people) | {"day": days[number]} for number in lots))
        add(work, Animals, (_animal(number, days[number]) for number in lots))
        add(work, Weighings, (_weighing(draw, number, days[number]) for number in lots))
        both = [(number, share) for number in lots for share in (1, 2)]
        add(work, Shares, (share_of(draw, number, share, people) for number, share in both))
        add(work, Orders, (_order(at, *both[at - 1], days) for at in orders))
        add(work, Packages, (_package(draw, at, days[(at + 1) // 2]) for at in orders))
        _write_money(work, orders, days, today, people)
        work.commit()


def add(work: Work, table: type[Row], rows: Iterator[Values]) -> None:
    """Write rows in batches."""
    while batch := list(islice(rows, AT_ONCE)):
        work._desk.connection.execute(insert(table), batch)


def _write_money(
    work: Work, orders: range, days: dict[int, date], today: date, people: int
) -> None:
    draw = random.Random(20261126)
    owing = min(OWING, people)
    money = [
        _Money(at, draw.randrange(5_000, 90_000), days[(at + 1) // 2], (at * 7) % owing + 1)
        for at in orders
    ]
    add(work, Papers, (one.paper() for one in money))
    add(work, Bills, (one.bill() for one in money))
    add(work, BillLines, (line for one in money for line in one.lines()))
    add(work, Payments, (one.payment() for one in money if one.paid))
    add(work, LedgerPostings, (row for one in money for row in one.postings()))
    add(work, LedgerEntries, (row for one in money for row in one.entries()))
    held = [_Deposit(at, len(money)) for at in range(DEPOSIT_EACH, len(money), DEPOSIT_EACH)]
    add(work, Payments, (one.payment(money[one.order - 1]) for one in held))
    add(work, LedgerPostings, (row for one in held for row in one.postings(money[one.order - 1])))
    add(work, LedgerEntries, (one.kept(money[one.order - 1]) for one in held))
    long_ago = [today - timedelta(days=365 * YEARS + 30 * at) for at in range(60, 0, -1)]
    add(
        work, DrawerCounts, (_count(day) for day in (*long_ago, *sorted(set(days.values()))[-600:]))
    )
    add(work, ClosedPeriods, ({"through": day, "note": "", **_at(day)} for day in long_ago))


class _Deposit:
    """Money that no bill has used, on every so many orders."""

    def __init__(self, order: int, orders: int) -> None:
        self.order, self.id = order, orders + order // DEPOSIT_EACH
        self.entry = 2 * orders + order // DEPOSIT_EACH

    def payment(self, money: "_Money") -> Values:
        what = {"id": self.id, "number": self.id, "kind": "deposit", "means": "cash"}
        return {**what, "cents": 5_000, **money.whose, "customer_id": None, "note": ""} | _at(
            money.day
        )

    def postings(self, money: "_Money") -> Iterator[Values]:
        for position, (account, cents) in enumerate(
            (("money:cash", 5_000), ("deposits", -5_000)), start=1
        ):
            yield money.posting(self.entry, position, account, cents)

    def kept(self, money: "_Money") -> Values:
        what = {"id": self.entry, "kind": "deposit", "number": self.id, "payment_id": self.id}
        return {**what, "bill_id": None, "day": money.at.date(), "memo": "", **_at(money.day)}


class _Money:
    """One order's bill and what was paid of it."""

    def __init__(self, number: int, cents: int, day: date, payer: int) -> None:
        self.number, self.cents, self.day, self.payer = number, cents, day, payer
        self.paid = number % UNPAID_EACH != 0
        self.at = datetime.combine(day + timedelta(days=3), time(15), UTC)
        self.whose = {"lot_id": (number + 1) // 2, "order_id": number}

    def paper(self) -> Values:
        said = {"kind": "bill", "snapshot": "{}", "sha256": "", "pdf": b"%PDF"}
        return {"id": self.number, **self.whose, "number": self.number, **said} | {
            "made_at": self.at,
            **STAMP,
        }

    def bill(self) -> Values:
        kept = {"credits": None, "reason": "", "issued_at": self.at, "customer_id": None}
        return {
            "id": self.number,
            "kind": "bill",
            "number": self.number,
            "total_cents": self.cents,
            "paper_id": self.number,
            **self.whose,
            **kept,
            **STAMP,
        }

    def lines(self) -> Iterator[Values]:
        for position, (code, cents) in enumerate(self._income(), start=1):
            yield {
                "bill_id": self.number,
                "position": position,
                "key": f"{code}:1",
                "code": code,
                "basis": "per_head",
                "quantity": None,
                "unit": "head",
                "rate": None,
                "amount_cents": cents,
                "tax_cents": 0,
            }

    def payment(self) -> Values:
        kept = {"customer_id": None, "note": "", "at": self.at, **STAMP}
        what = {"kind": "payment", "means": "check", "cents": self.cents}
        return {"id": self.number, "number": self.number, **self.whose, **what, **kept}

    def postings(self) -> Iterator[Values]:
        bill, paid = 2 * self.number - 1, 2 * self.number
        yield self.posting(bill, 1, "receivable", self.cents)
        for position, (code, cents) in enumerate(self._income(), start=2):
            yield self.posting(bill, position, "income", -cents, code)
        if self.paid:
            yield self.posting(paid, 1, "money:check", self.cents)
            yield self.posting(paid, 2, "receivable", -self.cents)

    def entries(self) -> Iterator[Values]:
        for step, kind in enumerate(("bill", "payment") if self.paid else ("bill",)):
            yield {
                "id": 2 * self.number - 1 + step,
                "kind": kind,
                "day": self.at.date(),
                "number": self.number,
                "bill_id": self.number if kind == "bill" else None,
                "payment_id": self.number if kind == "payment" else None,
                "memo": "",
                "at": self.at,
                **STAMP,
            }

    def _income(self) -> tuple[tuple[str, int], tuple[str, int]]:
        return ("kill", self.cents // 3), ("cut_and_wrap", self.cents - self.cents // 3)

    def posting(
        self, entry: int, position: int, account: str, cents: int, code: str = ""
    ) -> Values:
        said = {"species": "pork" if code else "", "code": code, "tax_rate": None}
        return {
            "entry_id": entry,
            "position": position,
            "account": account,
            "cents": cents,
            "day": self.at.date(),
            "customer_id": self.payer,
            **self.whose,
            **said,
        }


def _empty(*names: str) -> Values:
    return {name: None for name in names}  # noqa: C420 - the keys are any text


def _at(day: date) -> Values:
    return {"at": datetime.combine(day, time(17), UTC), **STAMP}


def _count(day: date) -> Values:
    counted = {"expected_cents": 20_000, "counted_cents": 20_000, "reason": ""}
    return {"day": day, **counted, **_at(day)}


def _day(number: int, lots: int, today: date) -> date:
    return today - timedelta(days=10 + 365 * YEARS * (lots - number) // lots)


def _animal(number: int, day: date) -> Values:
    return animal(number) | {"id": number, "killed_on": day}


def _order(at: int, lot_id: int, share: int, days: dict[int, date]) -> Values:
    done = at % OPEN_EACH != 0
    closed = datetime.combine(days[lot_id] + timedelta(days=5), time(16), UTC)
    state = "handed_over" if done else "ready"
    return order(at, lot_id, share) | {"state": state, "closed_at": closed if done else None}


def _weighing(draw: random.Random, number: int, day: date) -> Values:
    division = ("division_count", "division_unit", "division_exponent", "corrects")
    return _empty(*TARE, *division) | {
        "animal_id": number,
        "kind": "hot",
        "side": 0,
        "quarter": "",
        "weight_count": draw.randrange(1700, 2300),
        "weight_unit": "lb",
        "weight_exponent": -1,
        "scale": "",
        "source": "typed",
        "at": datetime.combine(day, time(12), UTC),
        "withdrawn": False,
        "reason": "",
        **STAMP,
    }


def _package(draw: random.Random, at: int, day: date) -> Values:
    return _empty(*TARE, "voided_at", "voided_by") | {
        "label_number": at,
        "order_id": at,
        "line": 1,
        "cut": "ham",
        "product": "ham",
        "owner": "",
        "net_count": draw.randrange(600, 900),
        "net_unit": "lb",
        "net_exponent": -1,
        "pieces": 1,
        "finishes": "[]",
        "reason": "",
        "made_at": datetime.combine(day + timedelta(days=2), time(12), UTC),
        "void": "",
        **STAMP,
    }
