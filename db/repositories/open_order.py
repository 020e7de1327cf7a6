"""Whether packages may still be added to an order, read with its row held."""

from sqlalchemy import select

from db.desk import Desk
from db.tables.batches import Batches, BatchMeat
from db.tables.orders import Orders
from shared.curing.waiting import OUT
from shared.shop.packages import WRAPPED_WHILE
from shared.shop.problems import Refused


def not_open(desk: Desk, order_id: int, line: int = 0) -> Refused | None:
    """Refused "not_open" with the order's state, or None where packages may be added.

    On a ready order, of which some may be fetched, a line is packed that came out of a batch.
    The row is held until the unit of work ends, so that nobody moves the order meanwhile; SQLite
    holds the whole file instead.
    """
    desk.must_write()
    found = select(Orders.state).where(Orders.id == order_id).with_for_update()
    state = desk.connection.execute(found).scalar_one()
    if state in WRAPPED_WHILE or (state == "ready" and line and _came_out(desk, order_id, line)):
        return None
    return Refused("not_open", {"state": state})


def _came_out(desk: Desk, order_id: int, line: int) -> bool:
    found = (
        select(BatchMeat.id)
        .join(Batches, Batches.id == BatchMeat.batch_id)
        .where(BatchMeat.order_id == order_id, BatchMeat.line == line, BatchMeat.void == "")
        .where(Batches.state.in_(OUT))
    )
    return desk.connection.execute(found.limit(1)).first() is not None
