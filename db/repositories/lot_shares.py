"""The shares of a lot and what each holds."""

from collections.abc import Collection, Sequence
from typing import TYPE_CHECKING, cast

from sqlalchemy import Connection, bindparam, func, select, update
from sqlalchemy.orm import aliased

from db.desk import Desk
from db.tables.customers import Customers
from db.tables.lots import Holdings, Shares
from db.tables.orders import Orders
from shared.carcass.carcass import Holding
from shared.shop.lots import LotShare

if TYPE_CHECKING:
    from shared.carcass.catalogue import Quarter

_OWN, _JOINED = aliased(Customers), aliased(Customers)
_HELD = (  # built once: building a statement takes ten times as long as running it
    select(Holdings.share, Holdings.carcass, Holdings.side, Holdings.quarter, Holdings.fraction)
    .where(Holdings.lot_id == bindparam("lot"))
    .order_by(Holdings.share, Holdings.carcass, Holdings.side, Holdings.id)
)
_SHARES = (
    select(
        Shares.number,
        Shares.customer_id,
        func.coalesce(_JOINED.name, _OWN.name, ""),
        Shares.leader,
        Shares.deposit_asked,
        Orders.id,
    )
    .join(Orders, (Orders.lot_id == Shares.lot_id) & (Orders.share == Shares.number))
    .outerjoin(_OWN, _OWN.id == Shares.customer_id)
    .outerjoin(_JOINED, _JOINED.id == _OWN.joined_into)
    .where(Shares.lot_id == bindparam("lot"))
    .order_by(Shares.number)
)


def add_share_rows(
    desk: Desk, lot_id: int, shares: Sequence[LotShare], known: Collection[int] = ()
) -> None:
    """Write shares and holdings; those already `known` are written over."""
    for share in shares:
        values: dict[str, object] = {
            "customer_id": share.customer_id,
            "leader": share.leader,
            "deposit_asked": share.deposit_asked,
        }
        if share.number in known:
            desk.connection.execute(
                update(Shares)
                .where(Shares.lot_id == lot_id, Shares.number == share.number)
                .values(values)
            )
        else:
            desk.add_rows(Shares, [{"lot_id": lot_id, "number": share.number, **values}])
    desk.add_rows(
        Holdings,
        [
            {
                "lot_id": lot_id,
                "share": share.number,
                "carcass": holding.carcass,
                "side": holding.side,
                "quarter": holding.quarter,
                "fraction": holding.fraction,
            }
            for share in shares
            for holding in share.holdings
        ],
    )


def shares_of(connection: Connection, lot_id: int) -> tuple[LotShare, ...]:
    """The shares of a lot by number, each with its owner's name today; two queries."""
    held: dict[int, list[Holding]] = {}
    of = {"lot": lot_id}
    for share, carcass, side, quarter, fraction in connection.execute(_HELD, of):
        holding = Holding(carcass, side, cast("Quarter", quarter), fraction)
        held.setdefault(share, []).append(holding)
    rows = connection.execute(_SHARES, of)
    return tuple(
        LotShare(number, customer, owner, tuple(held.get(number, ())), leader, asked, order_id)
        for number, customer, owner, leader, asked, order_id in rows
    )
