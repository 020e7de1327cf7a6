"""Lines of an order in a shop that counts: weighed all the same, or weighed once together."""

from sqlalchemy import ColumnElement, delete, func, select

from db.desk import Desk
from db.repositories.led_orders import holds_line
from db.tables.counted import Counted, HandedCounts
from db.tables.counted_lines import CountedWeights, WeighedLines
from db.tables.orders import Orders
from db.tables.people import Persons
from db.weights import known_weight, weight_of, weight_values
from shared.shop.counted import CountedWeight
from shared.shop.packages import WRAPPED_WHILE
from shared.shop.problems import Refused
from shared.units import Weight

WEIGHED_WHILE = (*WRAPPED_WHILE, "ready")


class CountedLineBook:
    """`work.counted_lines`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def weighed(self, order_id: int) -> frozenset[int]:
        """The order's lines that are weighed and labelled though the shop counts."""
        rows = self._desk.connection.execute(
            select(WeighedLines.line).where(WeighedLines.order_id == order_id)
        )
        return frozenset(rows.scalars())

    def choose(self, order_id: int, line: int, *, weighed: bool) -> Refused | None:
        """The line is weighed from now on, or counted again; "not_on_order" for another's line."""
        desk = self._desk
        desk.must_write()
        here = (WeighedLines.order_id == order_id) & (WeighedLines.line == line)
        desk.connection.execute(delete(WeighedLines).where(here))
        if weighed:
            if not holds_line(desk, order_id, line):
                return Refused("not_on_order", {"line": str(line)})
            told: dict[str, object] = {
                "order_id": order_id,
                "line": line,
                "at": desk.now,
                **desk.stamp,
            }
            desk.add_rows(WeighedLines, [told])
        desk.record("order", order_id, "line_weighed" if weighed else "line_counted", line=line)
        return None

    def weigh(
        self, order_id: int, line: int, net: Weight, tare: Weight | None = None
    ) -> CountedWeight | Refused:
        """Keep what all counted packages of a line weigh together, after tare.

        Refused: "not_positive", "not_open" where the order is not being wrapped or ready,
        "none_counted", "handed_over" where some of them left already.
        """
        if net.count <= 0:
            return Refused("not_positive")
        run = self._desk.connection.execute
        state = run(select(Orders.state).where(Orders.id == order_id)).scalar_one()
        if state not in WEIGHED_WHILE:
            return Refused("not_open", {"state": state})
        here = (Counted.order_id == order_id) & (Counted.line == line) & (Counted.void == "")
        gone = select(HandedCounts.counted_id).join(Counted).where(here)
        if run(gone).first() is not None:
            return Refused("handed_over")
        packages = int(
            run(select(func.coalesce(func.sum(Counted.packages), 0)).where(here)).scalar_one()
        )
        if not packages:
            return Refused("none_counted")
        new = self._desk.insert(
            CountedWeights,
            {
                "order_id": order_id,
                "line": line,
                "packages": packages,
                **weight_values("net", net),
                **weight_values("tare", tare),
                "at": self._desk.now,
                **self._desk.stamp,
            },
        )
        return self._found(CountedWeights.id == new)[0]

    def weights(self, order_id: int) -> tuple[CountedWeight, ...]:
        """The last weight of each line of an order."""
        return self._found(CountedWeights.order_id == order_id)

    def weights_of_lot(self, lot_id: int) -> tuple[CountedWeight, ...]:
        """The last weight of each line of all orders of a lot."""
        return self._found(Orders.lot_id == lot_id)

    def _found(self, where: ColumnElement[bool]) -> tuple[CountedWeight, ...]:
        rows = self._desk.connection.execute(
            select(*CountedWeights.__table__.columns, Orders.share, Persons.name.label("person"))
            .join(Orders, Orders.id == CountedWeights.order_id)
            .join(Persons, Persons.id == CountedWeights.person_id)
            .where(where)
            .order_by(CountedWeights.id)
        )
        last = {
            (row.order_id, row.line): CountedWeight(
                order_id=row.order_id,
                share=row.share,
                line=row.line,
                packages=row.packages,
                net=known_weight(row.net_count, row.net_unit, row.net_exponent),
                tare=weight_of(row.tare_count, row.tare_unit, row.tare_exponent),
                at=row.at,
                person=row.person,
            )
            for row in rows
        }
        return tuple(last.values())
