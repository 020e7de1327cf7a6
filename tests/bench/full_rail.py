"""A store with the animals of ten years at the rail: most cut, a cooler full, some to come."""

import random
from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING, Any

from sqlalchemy import insert

from db.tables.customers import Customers
from db.tables.lots import Animals, Lots, Shares
from db.tables.orders import Orders
from db.tables.weighings import Weighings
from tests.bench.find import animal, customer, lot, order, share_of

if TYPE_CHECKING:
    from db.store import Store

A_DAY, HANGING, TO_COME, PEOPLE = 16, 220, 480, 4000
NOT_SAID = (
    *("tare_count", "tare_unit", "tare_exponent"),
    *("division_count", "division_unit", "division_exponent", "corrects"),
)
KINDS = ("pork", "beef", "lamb", "goat", "deer")


def fill(store: "Store", animals: int, today: date) -> None:
    """So many animals, one to a lot with two owners: `TO_COME` booked, `HANGING` hang."""
    draw = random.Random(20261125)
    signed = store.sign_on("Bench", "Bench")
    numbers = range(1, animals + 1)
    with store.work(signed.person, signed.station) as work:
        run = work._desk.connection.execute
        run(insert(Customers), [customer(draw, number) for number in range(1, PEOPLE + 1)])
        run(insert(Lots), [lot_of(draw, number, animals, today) for number in numbers])
        run(insert(Animals), [animal_of(number, animals, today) for number in numbers])
        both = [(number, share) for number in numbers for share in (1, 2)]
        run(insert(Shares), [share_of(draw, number, share, PEOPLE) for number, share in both])
        run(insert(Orders), [order(at + 1, *one) for at, one in enumerate(both)])
        weighed = [
            weighing_of(draw, number, kind, (signed.person.id, signed.station.id))
            for number in range(1, animals - TO_COME + 1)
            for kind in (("live", 0), ("hot", 1), ("hot", 2))
        ]
        run(insert(Weighings), weighed)
        work.commit()


def day_of(number: int, animals: int, today: date) -> date:
    """Sixteen a day; the first of those still to come are due today."""
    return today + timedelta(days=(number - (animals - TO_COME) - 1) // A_DAY)


def lot_of(draw: random.Random, number: int, animals: int, today: date) -> dict[str, object]:
    kind = KINDS[number % len(KINDS)]
    row = lot(draw, number, PEOPLE)
    return row | {"species": kind, "day": day_of(number, animals, today)}


def animal_of(number: int, animals: int, today: date) -> dict[str, object]:
    to_come, cut = animals - TO_COME, animals - TO_COME - HANGING
    row = animal(number)
    if number > to_come:
        return row | {"state": "booked", "tag": "", "tag_key": ""}
    day = datetime.combine(day_of(number, animals, today), time(9), UTC)
    state = "cut" if number <= cut else "hanging"
    return row | {"state": state, "hung_at": day, "arrived_at": day, "killed_on": day.date()}


def weighing_of(
    draw: random.Random, number: int, place: tuple[str, int], who: tuple[int, int]
) -> dict[str, object]:
    kind, side = place
    row = dict[str, Any].fromkeys(NOT_SAID)
    return row | {
        "animal_id": number,
        "kind": kind,
        "side": side,
        "quarter": "",
        "weight_count": draw.randrange(2400, 2900) if kind == "live" else draw.randrange(950, 1050),
        "weight_unit": "lb",
        "weight_exponent": -1,
        "scale": "",
        "source": "typed",
        "at": datetime(2026, 1, 1, 9, tzinfo=UTC),
        "person_id": who[0],
        "station_id": who[1],
        "withdrawn": False,
        "reason": "",
    }
