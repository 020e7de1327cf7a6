"""Which lots were killed on a day, and what their owners were told their shares weigh."""

from collections.abc import Mapping, Sequence
from datetime import date
from typing import cast

from sqlalchemy import and_, or_, select

from db.desk import Desk
from db.tables.calls import WeightsTold
from db.tables.lots import Animals, Lots
from db.tables.orders import Orders
from db.tables.people import Persons
from shared.shop.problems import Refused
from shared.shop.weights_told import ToldHow, WeightTold


class WeightsToldBook:
    """`work.weights_told`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def lots_of_day(self, day: date) -> tuple[int, ...]:
        """Lots of which an animal was killed that day, or was to be and isn't yet; by number."""
        rows = self._desk.connection.execute(
            select(Lots.id, Lots.number)
            .join(Animals, Animals.lot_id == Lots.id)
            .where(
                Lots.cancelled == "",
                or_(
                    Animals.killed_on == day,
                    and_(Animals.killed_on.is_(None), Lots.day == day),
                ),
            )
            .distinct()
            .order_by(Lots.number)
        )
        return tuple(row[0] for row in rows)

    def tell(
        self, order_id: int, how: ToldHow, hanging_ng: int | None, note: str = ""
    ) -> Refused | None:
        """Keep that an owner was told; who told him and when comes from the unit."""
        desk = self._desk
        known = desk.connection.execute(select(Orders.id).where(Orders.id == order_id))
        if known.first() is None:
            return Refused("no_such_order")
        desk.insert(
            WeightsTold,
            {
                "order_id": order_id,
                "how": how,
                "hanging_ng": hanging_ng,
                "note": note.strip(),
                "at": desk.now,
                **desk.stamp,
            },
        )
        return None

    def last(self, order_ids: Sequence[int]) -> Mapping[int, WeightTold]:
        """The last telling of each order that had one; one query."""
        rows = self._desk.connection.execute(
            select(
                WeightsTold.order_id,
                WeightsTold.how,
                WeightsTold.hanging_ng,
                WeightsTold.at,
                Persons.name,
                WeightsTold.note,
            )
            .join(Persons, Persons.id == WeightsTold.person_id)
            .where(WeightsTold.order_id.in_(order_ids))
            .order_by(WeightsTold.id)
        )
        return {
            row[0]: WeightTold(row[0], cast("ToldHow", row[1]), row[2], row[3], row[4], row[5])
            for row in rows
        }
