"""An order that is cut as another of its lot says: set, and taken back."""

from collections.abc import Collection

from sqlalchemy import bindparam, select, update
from sqlalchemy.orm import aliased

from db.desk import Desk
from db.repositories.lot_shares import shares_of
from db.tables.counted import Counted
from db.tables.lots import Shares
from db.tables.orders import OrderLines, Orders
from db.tables.packages import Packages
from shared.shop.leading import lead_fault
from shared.shop.orders import Order
from shared.shop.problems import Refused

OPEN_TO_CHANGE = ("open", "settled", "released")
_OWN, _SAYS = aliased(Orders), aliased(Orders)
_HOLDS = (
    select(OrderLines.line)
    .select_from(_OWN)
    .join(Shares, (Shares.lot_id == _OWN.lot_id) & (Shares.number == _OWN.share))
    .join(
        _SAYS,
        (_SAYS.lot_id == _OWN.lot_id)
        & ((_SAYS.share == _OWN.share) | (_SAYS.share == Shares.leader)),
    )
    .join(OrderLines, OrderLines.order_id == _SAYS.id)
    .where(_OWN.id == bindparam("order"), OrderLines.line == bindparam("line"))
    .limit(1)
)


def lead_refused(
    desk: Desk, order: Order, orders: Collection[Order], leader: int | None
) -> Refused | None:
    """Why the order can't be cut as that share says, or on its own; None where it can.

    The codes of `lead_fault`, and "cut_already" once anything of it, of the leader's or of the
    former leader's order is cut or wrapped.
    """
    shares = shares_of(desk.connection, order.lot_id)
    fault = "" if leader is None else lead_fault(shares, order.share, leader)
    if fault:
        return Refused(fault)
    was = next(one.leader for one in shares if one.number == order.share)
    told = [one for one in orders if one.share in (order.share, leader, was)]
    for one in told:
        if one.state not in OPEN_TO_CHANGE or any(line.made for line in one.choices):
            return Refused("cut_already", {"state": one.state})
    ids = [one.id for one in told]
    wrapped = select(Packages.id).where(Packages.order_id.in_(ids), Packages.void == "")
    counted = select(Counted.id).where(Counted.order_id.in_(ids), Counted.void == "")
    for found in (wrapped, counted):
        if desk.connection.execute(found.limit(1)).first() is not None:
            return Refused("cut_already", {"state": order.state})
    return None


def write_leader(desk: Desk, order: Order, leader: int | None) -> None:
    """Keep who leads the share, and that the sheets of those it is about no longer hold."""
    run = desk.connection.execute
    here = (Shares.lot_id == order.lot_id) & (Shares.number == order.share)
    was = run(select(Shares.leader).where(here)).scalar_one()
    run(update(Shares).where(here).values(leader=leader))
    told = [one for one in (order.share, leader, was) if one is not None]
    run(
        update(Orders)
        .where(Orders.lot_id == order.lot_id, Orders.share.in_(told), Orders.sheet > 0)
        .values(sheet_change=Orders.last_change - 1)
    )
    desk.record("order", order.id, "led", leader=leader, was=was, lines=len(order.choices))


def holds_line(desk: Desk, order_id: int, line: int) -> bool:
    """Whether packages of the order may be of that line: its own, or the leader's it is cut by."""
    found = desk.connection.execute(_HOLDS, {"order": order_id, "line": line})
    return found.first() is not None
