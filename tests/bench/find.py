"""The search and the order list at 100,000 orders: `python -m tests.bench find [ORDERS]`.

Prints, for each text, the median of what one key costs (search and list) beside the raw query on
the index alone. Nothing here is a person's name: names are syllables drawn by a fixed seed.
"""

import random
import sys
import tempfile
from collections.abc import Callable
from datetime import date, timedelta
from pathlib import Path
from statistics import median
from time import perf_counter

from sqlalchemy import insert, text

from db.store import Store, open_store
from db.tables.customers import Customers
from db.tables.lots import Animals, Lots, Shares
from db.tables.orders import Orders
from shared.shop.customers import name_key, phone_digits

SYLLABLES = (
    "ba",
    "den",
    "hol",
    "ker",
    "lin",
    "mar",
    "nor",
    "pel",
    "quin",
    "ros",
    "sten",
    "tor",
    "zan",
)
TYPED = (
    "b",
    "ba",
    "bad",
    "baden",
    "hol ker",
    "0123",
    "T-4567",
    "4567",
    "zzz",
    "quinzan",
    "badne",
    "hoklre tro",
    "qiunsetn",
    "mrastenn",
)


def main(words: list[str]) -> int:
    """Fill a store, then time each text."""
    orders = int(words[0]) if words else 100_000
    with tempfile.TemporaryDirectory() as folder:
        store = open_store(Path(folder) / "s.db", keep_copies=False)
        fill(store, orders)
        for typed in TYPED:
            sys.stdout.write(told(store, typed) + "\n")
        store.close()
    return 0


def fill(store: Store, orders: int) -> None:
    """So many orders, two to a lot of one animal, of a third as many customers."""
    draw = random.Random(20261125)
    people = max(2, orders // 3)
    signed = store.sign_on("Bench", "Bench")
    with store.work(signed.person, signed.station) as work:
        run = work._desk.connection.execute
        run(insert(Customers), [customer(draw, number) for number in range(1, people + 1)])
        lots = range(1, orders // 2 + 1)
        run(insert(Lots), [lot(draw, number, people) for number in lots])
        run(insert(Animals), [animal(number) for number in lots])
        both = [(number, share) for number in lots for share in (1, 2)]
        run(insert(Shares), [share_of(draw, number, share, people) for number, share in both])
        run(insert(Orders), [order(at + 1, *one) for at, one in enumerate(both)])
        work.commit()


def customer(draw: random.Random, number: int) -> dict[str, object]:
    name = " ".join("".join(draw.choices(SYLLABLES, k=2)).capitalize() for _ in range(2))
    phone = f"(555) 010-{draw.randrange(10_000):04d}"
    row: dict[str, object] = dict.fromkeys(("email", "address", "notes", "rate_group"), "")
    return row | {
        "id": number,
        "name": name,
        "name_key": name_key(name),
        "phone": phone,
        "digits": phone_digits(phone),
        "language": "en",
        "joined_into": None,
        "version": 1,
    }


def lot(draw: random.Random, number: int, people: int) -> dict[str, object]:
    row: dict[str, object] = dict.fromkeys(("keeps", "note", "cancelled"), "")
    booked = dict.fromkeys(("booked_count", "booked_unit", "booked_exponent"))
    day = date(2024, 1, 1) + timedelta(days=number % 1000)
    return (
        row
        | booked
        | {
            "id": number,
            "number": number,
            "species": "pork",
            "head": 1,
            "day": day,
            "producer_id": draw.randrange(1, people + 1),
            "skin": "scalded",
            "regime": "custom",
            "last_line": 0,
            "version": 1,
        }
    )


def animal(number: int) -> dict[str, object]:
    row: dict[str, object] = dict.fromkeys(("sex", "place", "held_for"), "")
    return row | {
        "lot_id": number,
        "place_in_lot": 0,
        "tag": f"T-{number}",
        "tag_key": f"t-{number}",
        "age": "unknown",
        "skin": "scalded",
        "regime": "custom",
        "state": "cut",
        "split": None,
        "arrived_at": None,
        "killed_on": None,
        "hung_at": None,
        "version": 1,
    }


def share_of(draw: random.Random, number: int, share: int, people: int) -> dict[str, object]:
    who = draw.randrange(1, people + 1)
    return {
        "lot_id": number,
        "number": share,
        "customer_id": who,
        "leader": None,
        "deposit_asked": 0,
    }


def order(number: int, lot_id: int, share: int) -> dict[str, object]:
    counts: dict[str, object] = dict.fromkeys(
        ("sheet", "sheet_change", "acknowledged", "last_change"), 0
    )
    return counts | {
        "number": number,
        "lot_id": lot_id,
        "share": share,
        "state": "open",
        "note": "",
        "due": None,
        "closed_at": None,
        "version": 1,
    }


def told(store: Store, typed: str) -> str:
    """One line: the text, how many were found, and the three medians in milliseconds."""
    with store.read() as work:
        found = len(work.search.find(typed, limit=12))
        listed = len(work.orders.list(text=typed, limit=500))
        search = spent(lambda: work.search.find(typed, limit=12))
        orders = spent(lambda: work.orders.list(text=typed, limit=500))
        raw = text("SELECT rowid FROM find_customers WHERE find_customers MATCH :typed LIMIT 12")
        asked = {"typed": f'"{name_key(typed)}"'}
        alone = spent(lambda: work._desk.connection.execute(raw, asked).all())
    return (
        f"{typed:8} {found:3} found {search:6.2f} ms (index {alone:.2f}), {listed:3} {orders:6.2f}"
    )


def spent(what: Callable[[], object], times: int = 9) -> float:
    """The median of some runs, in milliseconds."""
    took: list[float] = []
    for _ in range(times):
        start = perf_counter()
        what()
        took.append(1000 * (perf_counter() - start))
    return median(took)
