"""An invented plant with five weeks of work around a day: `python demo/make_demo.py shop.db`."""

import sys
from datetime import UTC, date, datetime, time, timedelta
from itertools import groupby
from operator import itemgetter
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from db.store import Store
    from db.unit_of_work import Work
    from shared.shop.people import SignedOn

ROOM = str(Path(__file__).resolve().parents[1])


class Hands:
    """The clock of the invented shop: it stands where it was last set."""

    def __init__(self, at: datetime) -> None:
        self.at = at

    def __call__(self) -> datetime:
        """The moment."""
        return self.at


def make_demo(store: "Store", today: date) -> None:
    """Fill an empty store with the invented plant, its customers and lots around `today`.

    Everything goes through the store's own door, each thing dated when it would have been done.
    The same day gives the same shop.
    """
    if ROOM not in sys.path:
        sys.path.append(ROOM)
    from db.store import open_store

    hands = Hands(datetime.combine(today - timedelta(days=60), time(13), UTC))
    dated = open_store(store.path or store.url, keep_copies=False, clock=hands)
    try:
        _live(dated, hands, today)
    finally:
        dated.close()


def _live(store: "Store", hands: Hands, today: date) -> None:
    from demo.bookings import BOOKINGS
    from demo.deer import DEER, DeerLife
    from demo.lives import Life
    from demo.names import PERSONS, STATIONS

    crew = [
        store.sign_on(PERSONS[place % len(PERSONS)], name) for place, name in enumerate(STATIONS)
    ]
    people = _founded(store, crew[0], today)
    lives = [Life(booking, place, today, people) for place, booking in enumerate(BOOKINGS)]
    deer = [DeerLife(one, today, people) for one in DEER]
    steps = sorted((step for life in (*lives, *deer) for step in life.steps()), key=itemgetter(0))
    for when, together in groupby(steps, key=itemgetter(0)):
        hands.at = when
        signed = crew[when.hour % len(crew)]
        with store.work(signed.person, signed.station) as work:
            for _, step in together:
                step(work)
            work.commit()


def _founded(store: "Store", signed: "SignedOn", today: date) -> tuple[int, ...]:
    """The shop's details, rate cards and customers; the customers' ids."""
    with store.work(signed.person, signed.station) as work:
        ids = _kept(work, today)
        work.commit()
    return ids


def _kept(work: "Work", today: date) -> tuple[int, ...]:
    from dataclasses import replace

    from demo.names import PLANT, customers
    from demo.rates import cards
    from demo.recipes import RECIPES
    from demo.week import WEEK, extra_day
    from shared.shop.customers import Customer

    work.shop.save(replace(PLANT, version=work.shop.details().version))
    for card in cards(today):
        work.rates.save(card)
    work.calendar.save_plan(WEEK)
    other = extra_day(today)
    if other is not None:
        work.calendar.set_other(other)
    for recipe in RECIPES:
        work.recipes.save(recipe)
    kept = [work.customers.add(customer) for customer in customers()]
    return tuple(customer.id for customer in kept if isinstance(customer, Customer))


def main() -> None:
    """Make the invented plant in a new file."""
    if len(sys.argv) != 2 or Path(sys.argv[1]).exists():
        raise SystemExit("Name a file that isn't there yet: python demo/make_demo.py shop.db")
    sys.path.append(ROOM)
    from db.store import open_store

    store = open_store(Path(sys.argv[1]), keep_copies=False)
    try:
        make_demo(store, datetime.now(UTC).date())
    finally:
        store.close()


if __name__ == "__main__":
    main()
