"""Orders: their states, notes, release to the block, closing, and their lists."""

from collections.abc import Collection, Mapping
from datetime import date
from typing import TYPE_CHECKING, Any, cast

from sqlalchemy import ColumnElement, Select, bindparam, func, select

from db.choice_text import choice_from
from db.desk import Written
from db.repositories.ended_orders import ended_orders
from db.repositories.led_orders import lead_refused, write_leader
from db.repositories.order_lines import OrderLineBook, Pins
from db.repositories.order_lists import (
    JOINED,
    OWN,
    OrderFilter,
    OrderSort,
    billed,
    order_count,
    order_rows,
    paid,
)
from db.repositories.sheets import SheetBook
from db.tables.bills import Bills
from db.tables.lots import Lots, Shares
from db.tables.orders import OrderLines, Orders
from shared.shop.lists import OrderRow
from shared.shop.orders import Order
from shared.shop.problems import MoveRefused, NotClosed, Refused, StaleEdit
from shared.shop.sheets import Sheet
from shared.shop.states import OrderState, close_refusals, order_move

if TYPE_CHECKING:
    from shared.cutting.order import Choice


COLUMNS = (
    Orders.id,
    Orders.number,
    Orders.lot_id,
    Orders.share,
    func.coalesce(JOINED.id, OWN.id).label("customer_id"),
    func.coalesce(JOINED.name, OWN.name, "").label("owner"),
    Orders.state,
    Orders.note,
    Orders.due,
    Orders.sheet,
    Orders.sheet_change,
    Orders.acknowledged,
    Orders.last_change,
    Orders.closed_at,
    Orders.version,
)
Asked = tuple[Select[*tuple[Any, ...]], Select[*tuple[Any, ...]]]  # the lines, the orders


def _asked(where: ColumnElement[bool]) -> Asked:
    """The two statements that read orders. Building them takes ten times as long as running."""
    lines = (
        select(OrderLines.order_id, OrderLines.choice)
        .join(Orders, Orders.id == OrderLines.order_id)
        .where(where)
        .order_by(OrderLines.line)
    )
    orders = (
        select(*COLUMNS)
        .join(Shares, (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share))
        .outerjoin(OWN, OWN.id == Shares.customer_id)
        .outerjoin(JOINED, JOINED.id == OWN.joined_into)
        .where(where)
        .order_by(Orders.share)
    )
    return lines, orders


_ONE = _asked(Orders.id == bindparam("order"))
_OF_LOT = _asked(Orders.lot_id == bindparam("lot"))
_THESE = _asked(Orders.id.in_(bindparam("orders", expanding=True)))


class OrderBook(OrderLineBook):
    """`work.orders`."""

    def get(self, order_id: int) -> Order | None:
        """The order with its lines, or None."""
        found = self._orders(_ONE, {"order": order_id})
        return found[0] if found else None

    def of_lot(self, lot_id: int) -> tuple[Order, ...]:
        """The orders of a lot by share; two queries."""
        return self._orders(_OF_LOT, {"lot": lot_id})

    def earlier(self, order_id: int, limit: int = 12) -> tuple[tuple[OrderRow, Order], ...]:
        """Other orders of the same customer and species that have lines, the newest first.

        Orders of those who were joined into the customer are among them. Three queries.
        """
        here = self._there(order_id)
        if here.customer_id is None:
            return ()
        species = self._desk.connection.execute(
            select(Lots.species).where(Lots.id == here.lot_id)
        ).scalar_one()
        chosen = OrderFilter(customer_id=here.customer_id, species=species, but=order_id)
        rows = order_rows(
            self._desk.connection,
            chosen,
            sort="day",
            descending=True,
            limit=limit,
            offset=0,
        )
        found = self._orders(_THESE, {"orders": [row.id for row in rows]})
        orders = {one.id: one for one in found}
        return tuple((row, orders[row.id]) for row in rows if row.lines)

    def numbered(self, number: int) -> int | None:
        """The id of the order of that number, or None."""
        found = select(Orders.id).where(Orders.number == number)
        return self._desk.connection.execute(found).scalar_one_or_none()

    def phones(self, lot_id: int) -> dict[int, str]:
        """Whom to ring for each order of a lot, by the order's id; "" where nobody is named."""
        rows = self._desk.connection.execute(
            select(Orders.id, func.coalesce(JOINED.phone, OWN.phone, ""))
            .join(Shares, (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share))
            .outerjoin(OWN, OWN.id == Shares.customer_id)
            .outerjoin(JOINED, JOINED.id == OWN.joined_into)
            .where(Orders.lot_id == lot_id)
        )
        return {row[0]: row[1] for row in rows}

    def _there(self, order_id: int) -> Order:
        found = self.get(order_id)
        assert found is not None
        return found

    def _orders(self, asked: Asked, given: Mapping[str, object]) -> tuple[Order, ...]:
        run = self._desk.connection.execute
        lines: dict[int, list[Choice]] = {}
        for order_id, text in run(asked[0], given):
            lines.setdefault(order_id, []).append(choice_from(text))
        rows = run(asked[1], given)
        return tuple(
            Order(
                id=row.id,
                number=row.number,
                lot_id=row.lot_id,
                share=row.share,
                customer_id=row.customer_id,
                owner=row.owner,
                state=cast("OrderState", row.state),
                choices=tuple(lines.get(row.id, ())),
                note=row.note,
                due=row.due,
                sheet=row.sheet,
                acknowledged=row.acknowledged,
                changed_since_sheet=row.sheet > 0 and row.last_change > row.sheet_change,
                last_change=row.last_change,
                closed_at=row.closed_at,
                version=row.version,
            )
            for row in rows
        )

    def save_note(
        self, order_id: int, note: str, due: date | None, *, version: int
    ) -> Order | StaleEdit:
        """Write the note of the order and the day its cut sheet is wanted."""
        before = self._there(order_id)
        told: dict[str, Written] = {"was": before.note, "now": note}
        told |= {"was_due": _day(before.due), "now_due": _day(due)}
        return self._edited(order_id, {"note": note, "due": due}, version, "note", told=told)

    def lead(
        self, order_id: int, leader: int | None, *, version: int
    ) -> Order | StaleEdit | Refused:
        """Have the order cut as another share says, packages divided; None is on its own again.

        Its lines are taken off, each a change that undo brings back. Refused as `lead_refused`
        says.
        """
        order = self._there(order_id)
        refused = lead_refused(self._desk, order, self.of_lot(order.lot_id), leader)
        if refused is not None:
            return refused
        stale = self._desk.edit(Orders, "order", order_id, version, {})
        if stale is not None:
            return stale
        if leader is not None and order.choices:
            steps = [(one, None, None) for one in order.choices]
            self._append_all(order_id, order.lot_id, "remove", steps)
        write_leader(self._desk, order, leader)
        return self._there(order_id)

    def move(
        self, order_id: int, to: OrderState, *, reason: str = "", version: int
    ) -> Order | StaleEdit | MoveRefused:
        """Move an order to another state. Release has its own way: `release`."""
        start = self._there(order_id).state
        if start == "settled" and to == "released":
            return MoveRefused("no_such_move", start, to)
        move = order_move(start, to, reason)
        if isinstance(move, MoveRefused):
            return move
        values: dict[str, object] = {"state": to}
        if move.back:
            values["closed_at"] = None
        return self._edited(order_id, values, version, to, reason)

    def release(
        self,
        lot_id: int,
        order_ids: Collection[int],
        *,
        snapshot: str,
        pdf: bytes,
        pins: Pins | None = None,
    ) -> Sheet | MoveRefused:
        """Release the next sheet of the lot with these orders, settled or released before.

        Asks nothing of the plan: look at `release_refusals` first. The pins fix the sides that
        the sheet was planned with.
        """
        orders = [one for one in self.of_lot(lot_id) if one.id in set(order_ids)]
        for one in orders:
            if one.state not in ("settled", "released"):
                return MoveRefused("no_such_move", one.state, "released")
        if not orders:
            return MoveRefused("no_such_move", "", "released")
        for one in orders:
            self.pin(one.id, pins or {})
        return SheetBook(self._desk).release(lot_id, [one.id for one in orders], snapshot, pdf)

    def sheets(self, lot_id: int) -> tuple[Sheet, ...]:
        """The sheets of a lot, first to last."""
        return SheetBook(self._desk).of_lot(lot_id)

    def acknowledge(self, sheet_id: int) -> Sheet:
        """The block has taken note of a sheet; from now on it is the one that holds."""
        return SheetBook(self._desk).acknowledge(sheet_id)

    def close(self, order_id: int, *, version: int) -> Order | StaleEdit | NotClosed:
        """The order is done: handed over, billed and paid.

        One of which nothing will be cut: billed if it was killed, and nothing owed either way.
        """
        order = self._there(order_id)
        run = self._desk.connection.execute
        owed, had = run(select(billed(), paid()).where(Orders.id == order_id)).one()
        any_bill = run(select(Bills.id).where(Bills.order_id == order_id).limit(1)).first()
        ended = run(ended_orders().where(Orders.id == order_id).limit(1)).first() is not None
        killed = ended_orders(killed=True).where(Orders.id == order_id).limit(1)
        codes = close_refusals(
            order.state,
            any_bill is not None or (ended and run(killed).first() is None),
            owed - had,
            nothing_cut=ended,
        )
        if codes:
            return NotClosed(codes)
        return self._edited(order_id, {"closed_at": self._desk.now}, version, "closed")

    def _edited(
        self,
        order_id: int,
        values: dict[str, object],
        version: int,
        what: str,
        reason: str = "",
        told: Mapping[str, Written] | None = None,
    ) -> Order | StaleEdit:
        stale = self._desk.edit(Orders, "order", order_id, version, values)
        if stale is not None:
            return stale
        self._desk.record("order", order_id, what, reason, **(told or {}))
        return self._there(order_id)

    def list(
        self,
        *,
        states: Collection[OrderState] = (),
        text: str = "",
        start: date | None = None,
        end: date | None = None,
        customer_id: int | None = None,
        closed: bool | None = None,
        only: Collection[int] = (),
        sort: OrderSort = "day",
        descending: bool = False,
        limit: int = 500,
        offset: int = 0,
    ) -> tuple[OrderRow, ...]:
        """Orders of lots that stand, by state, day, customer and text, sorted; or `only` these."""
        return order_rows(
            self._desk.connection,
            OrderFilter(tuple(states), text, start, end, customer_id, closed, only=tuple(only)),
            sort=sort,
            descending=descending,
            limit=limit,
            offset=offset,
        )

    def count(
        self,
        *,
        states: Collection[OrderState] = (),
        text: str = "",
        start: date | None = None,
        end: date | None = None,
        customer_id: int | None = None,
        closed: bool | None = None,
    ) -> int:
        """How many there are in all."""
        chosen = OrderFilter(tuple(states), text, start, end, customer_id, closed)
        return order_count(self._desk.connection, chosen)


def _day(day: date | None) -> str:
    return "" if day is None else day.isoformat()
