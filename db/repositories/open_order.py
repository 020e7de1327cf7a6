"""Whether packages may still be added to an order, read with its row held."""

from sqlalchemy import select

from db.desk import Desk
from db.tables.orders import Orders
from shared.shop.packages import WRAPPED_WHILE
from shared.shop.problems import Refused


def not_open(desk: Desk, order_id: int) -> Refused | None:
    """Refused "not_open" with the order's state, or None where packages may be added.

    The row is held until the unit of work ends, so that nobody moves the order meanwhile; SQLite
    holds the whole file instead.
    """
    desk.must_write()
    found = select(Orders.state).where(Orders.id == order_id).with_for_update()
    state = desk.connection.execute(found).scalar_one()
    return None if state in WRAPPED_WHILE else Refused("not_open", {"state": state})
