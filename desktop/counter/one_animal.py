"""One animal of a booking on another day: a lot of its own, with its owners' orders and deposits.

The rest of the booking stays as it is. The animal's place on its first day is free, and stands
there as one that wasn't brought, with where it went.
"""

from dataclasses import replace
from datetime import date
from typing import TYPE_CHECKING

from shared.shop.lots import Lot, LotShare, NewLot
from shared.shop.problems import Refused, StaleEdit

if TYPE_CHECKING:
    from collections.abc import Callable

    from db.unit_of_work import Work
    from shared.shop.animals import Animal


def movable(lot: Lot) -> "tuple[Animal, ...]":
    """Its animals that may go to another day by themselves; none where it is the only one left."""
    coming = [one for one in lot.animals if one.state not in ("not_come", "refused", "condemned")]
    return tuple(one for one in coming if one.state == "booked") if len(coming) > 1 else ()


def owners_of(lot: Lot, index: int) -> tuple[LotShare, ...]:
    """The shares that hold something of that animal."""
    return tuple(one for one in lot.shares if any(held.carcass == index for held in one.holdings))


def to_another_day(
    work: "Work",
    lot: Lot,
    index: int,
    day: date,
    reason: "Callable[[int], str]",
    notes: "Callable[[int, int], tuple[str, str]]",
) -> Lot | Refused:
    """Book the animal anew; `reason` is kept with the old place, from the new lot's number.

    `notes` are kept with a moved deposit, from the numbers of the order it leaves and of its new
    one. An owner of that animal alone takes his cut order and his deposit along; one who has others
    of the booking too keeps both where they are, and begins an order for it. Refused:
    "has_arrived", "stale", "not_shared_out".
    """
    animal = lot.animals[index]
    if animal not in movable(lot):
        return Refused("has_arrived")
    theirs = owners_of(lot, index)
    new = work.lots.book(
        NewLot(
            lot.species,
            1,
            day,
            lot.producer_id,
            _shares(theirs, index),
            lot.skin,
            lot.regime,
            lot.booked,
            lot.keeps,
            lot.note,
        )
    )
    if not isinstance(new, Lot):
        return Refused("not_shared_out")
    moved = work.animals.move(
        animal.id, "not_come", reason=reason(new.number), version=animal.version
    )
    if isinstance(moved, StaleEdit):
        return Refused("stale")
    for old, made in zip(theirs, new.shares, strict=True):
        if _alone(old, index):
            refused = _take_along(work, old.order_id, made, notes)
            if refused is not None:
                return refused
    return new


def _shares(theirs: tuple[LotShare, ...], index: int) -> tuple[LotShare, ...]:
    """What they hold of it, numbered from 1; who is led stays led."""
    numbers = {one.number: at for at, one in enumerate(theirs, start=1)}
    return tuple(
        LotShare(
            numbers[one.number],
            one.customer_id,
            holdings=tuple(replace(h, carcass=0) for h in one.holdings if h.carcass == index),
            leader=numbers.get(one.leader or 0),
            deposit_asked=one.deposit_asked if _alone(one, index) else 0,
        )
        for one in theirs
    )


def _alone(share: LotShare, index: int) -> bool:
    return all(held.carcass == index for held in share.holdings)


def _take_along(
    work: "Work",
    order_id: int,
    made: LotShare,
    notes: "Callable[[int, int], tuple[str, str]]",
) -> Refused | None:
    """Lines, note and deposit of an order to its new one; the old one is closed where it can be."""
    order, new = work.orders.get(order_id), work.orders.get(made.order_id)
    assert order is not None
    assert new is not None
    if order.choices and made.leader is None:
        added = work.orders.add_lines(new.id, [replace(one, pinned=()) for one in order.choices])
        if isinstance(added, Refused):
            return added
    if order.note:
        noted = work.orders.save_note(new.id, order.note, new.due, version=new.version)
        assert not isinstance(noted, StaleEdit)
    held = work.payments.held(order_id)
    if held > 0:
        paid = work.payments.move(order_id, new.id, held, notes(order.number, new.number))
        if isinstance(paid, Refused):
            return paid
    work.orders.close(order_id, version=order.version)  # not while it was billed something
    return None
