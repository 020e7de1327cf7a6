"""Released block sheets: what the block cuts from, kept whole and never changed."""

from collections.abc import Sequence

from sqlalchemy import func, select, update
from sqlalchemy.orm import aliased

from db.desk import Desk
from db.repositories.papers import PaperBook
from db.tables.orders import Orders, SheetAcknowledgements, SheetOrders, Sheets
from db.tables.people import Persons
from shared.shop.sheets import Sheet

# Who took note of a sheet.
NOTED_BY = aliased(Persons)
COLUMNS = (
    Sheets.id,
    Sheets.number,
    Sheets.at,
    Persons.name,
    Sheets.paper_id,
    SheetAcknowledgements.at,
    NOTED_BY.name,
)


class SheetBook:
    """The part of `work.orders` that keeps sheets."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def release(self, lot_id: int, order_ids: Sequence[int], snapshot: str, pdf: bytes) -> Sheet:
        """The next sheet of the lot; its orders are released and pinned to it."""
        desk = self._desk
        last = desk.connection.execute(
            select(func.coalesce(func.max(Sheets.number), 0)).where(Sheets.lot_id == lot_id)
        ).scalar_one()
        number = last + 1
        paper = PaperBook(desk).keep(
            "block_sheet", lot_id=lot_id, number=number, snapshot=snapshot, pdf=pdf
        )
        sheet_id = desk.insert(
            Sheets,
            {
                "lot_id": lot_id,
                "number": number,
                "paper_id": paper.id,
                "at": desk.now,
                **desk.stamp,
            },
        )
        desk.add_rows(SheetOrders, [{"sheet_id": sheet_id, "order_id": one} for one in order_ids])
        desk.connection.execute(
            update(Orders)
            .where(Orders.id.in_(order_ids))
            .values(
                state="released",
                sheet=number,
                sheet_change=Orders.last_change,
                version=Orders.version + 1,
            )
        )
        for order_id in order_ids:
            desk.record("order", order_id, "released", sheet=number)
        return next(one for one in self.of_lot(lot_id) if one.id == sheet_id)

    def acknowledge(self, sheet_id: int) -> Sheet:
        """The block has taken note of it; a second time changes nothing."""
        desk = self._desk
        lot_id, number = desk.connection.execute(
            select(Sheets.lot_id, Sheets.number).where(Sheets.id == sheet_id)
        ).one()
        known = desk.connection.execute(
            select(SheetAcknowledgements.sheet_id).where(SheetAcknowledgements.sheet_id == sheet_id)
        ).first()
        if known is None:
            desk.add_rows(
                SheetAcknowledgements, [{"sheet_id": sheet_id, "at": desk.now, **desk.stamp}]
            )
            on_it = select(SheetOrders.order_id).where(SheetOrders.sheet_id == sheet_id)
            desk.connection.execute(
                update(Orders)
                .where(Orders.id.in_(on_it), Orders.acknowledged < number)
                .values(acknowledged=number)
            )
            desk.record("lot", lot_id, "sheet_acknowledged", sheet=number)
        return next(one for one in self.of_lot(lot_id) if one.id == sheet_id)

    def of_lot(self, lot_id: int) -> tuple[Sheet, ...]:
        """The sheets of a lot, first to last; two queries."""
        run = self._desk.connection.execute
        orders: dict[int, list[int]] = {}
        for sheet_id, order_id in run(
            select(SheetOrders.sheet_id, SheetOrders.order_id)
            .join(Sheets, Sheets.id == SheetOrders.sheet_id)
            .where(Sheets.lot_id == lot_id)
            .order_by(SheetOrders.order_id)
        ):
            orders.setdefault(sheet_id, []).append(order_id)
        rows = run(
            select(*COLUMNS)
            .join(Persons, Persons.id == Sheets.person_id)
            .outerjoin(SheetAcknowledgements, SheetAcknowledgements.sheet_id == Sheets.id)
            .outerjoin(NOTED_BY, NOTED_BY.id == SheetAcknowledgements.person_id)
            .where(Sheets.lot_id == lot_id)
            .order_by(Sheets.number)
        )
        return tuple(
            Sheet(
                id=row[0],
                lot_id=lot_id,
                number=row[1],
                order_ids=tuple(orders.get(row[0], ())),
                released_at=row[2],
                person=row[3],
                paper_id=row[4],
                acknowledged_at=row[5],
                acknowledged_by=row[6] or "",
            )
            for row in rows
        )
