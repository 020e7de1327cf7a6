"""Orders of which nothing is cut: every animal of the share was condemned, refused, not brought.

They never become ready; the Office bills what is owed of them, and they can be closed.
"""

from typing import Any, Final

from sqlalchemy import ScalarSelect, Select, and_, exists, func, select
from sqlalchemy.orm import aliased

from db.tables.lots import Animals, Holdings, Lots
from db.tables.orders import Orders

ENDED: Final = ("condemned", "refused", "not_come")
_OTHER_HOLDING, _OTHER = aliased(Holdings), aliased(Animals)
_MISSING = aliased(Animals)


def ended_orders(*, killed: bool | None = None) -> Select[*tuple[Any, ...]]:
    """Ids of those orders; `killed` those with an animal that had been, False those that came."""
    of_share = and_(Holdings.lot_id == Orders.lot_id, Holdings.share == Orders.share)
    goes_on = (
        exists()
        .where(
            _OTHER_HOLDING.lot_id == Orders.lot_id,
            _OTHER_HOLDING.share == Orders.share,
            _OTHER.lot_id == _OTHER_HOLDING.lot_id,
            _OTHER.place_in_lot == _OTHER_HOLDING.carcass,
            _OTHER.state.not_in(ENDED),
        )
        .correlate(Orders)
    )
    place = and_(Animals.lot_id == Holdings.lot_id, Animals.place_in_lot == Holdings.carcass)
    found = (
        select(Orders.id)
        .join(Holdings, of_share)
        .join(Animals, place)
        .where(Animals.state.in_(ENDED), ~goes_on)
    )
    if killed is None:
        return found
    return found.where(Animals.killed_on.is_not(None) if killed else Animals.state != "not_come")


def not_come() -> ScalarSelect[int]:
    """How many of a lot's animals didn't come."""
    return (
        select(func.count())
        .where(_MISSING.lot_id == Lots.id, _MISSING.state == "not_come")
        .correlate(Lots)
        .scalar_subquery()
    )
