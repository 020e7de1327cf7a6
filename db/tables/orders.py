"""Tables of cut orders: the order, its current lines, every change, and the released sheets."""

from datetime import date, datetime

from sqlalchemy import ForeignKey, ForeignKeyConstraint, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Row


class Orders(Row):
    """One order for each share. `sheet_change` is the last change that is on the last sheet."""

    __tablename__ = "orders"
    __table_args__ = (
        UniqueConstraint("lot_id", "share"),
        ForeignKeyConstraint(["lot_id", "share"], ["shares.lot_id", "shares.number"]),
    )

    id: Mapped[Id]
    number: Mapped[int] = mapped_column(unique=True)
    lot_id: Mapped[int]
    share: Mapped[int]
    state: Mapped[str] = mapped_column(index=True)
    note: Mapped[str]
    due: Mapped[date | None]
    sheet: Mapped[int]
    sheet_change: Mapped[int]
    acknowledged: Mapped[int]
    last_change: Mapped[int]
    closed_at: Mapped[datetime | None]
    version: Mapped[int]


class OrderLines(Row):
    """The lines as they stand: a projection of the changes, written with them."""

    __tablename__ = "order_lines"

    lot_id: Mapped[int] = mapped_column(ForeignKey("lots.id"), primary_key=True)
    line: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    order_id: Mapped[int] = mapped_column(ForeignKey("orders.id"), index=True)
    cut: Mapped[str]
    choice: Mapped[str]


class OrderChanges(Row):
    """One change of one line; rows are never changed. `before` and `after` are the whole line."""

    __tablename__ = "order_changes"

    id: Mapped[Id]
    order_id: Mapped[int] = mapped_column(ForeignKey("orders.id"), index=True)
    line: Mapped[int]
    kind: Mapped[str]
    before: Mapped[str | None]
    after: Mapped[str | None]
    undoes: Mapped[int | None] = mapped_column(ForeignKey("order_changes.id"))
    reason: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class Sheets(Row):
    """A released block sheet; rows are never changed."""

    __tablename__ = "sheets"
    __table_args__ = (UniqueConstraint("lot_id", "number"),)

    id: Mapped[Id]
    lot_id: Mapped[int] = mapped_column(ForeignKey("lots.id"))
    number: Mapped[int]
    paper_id: Mapped[int] = mapped_column(ForeignKey("papers.id"))
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class SheetOrders(Row):
    """An order that is on a sheet."""

    __tablename__ = "sheet_orders"

    sheet_id: Mapped[int] = mapped_column(ForeignKey("sheets.id"), primary_key=True)
    order_id: Mapped[int] = mapped_column(ForeignKey("orders.id"), primary_key=True)


class SheetAcknowledgements(Row):
    """Who at the block took note of a sheet."""

    __tablename__ = "sheet_acknowledgements"

    sheet_id: Mapped[int] = mapped_column(ForeignKey("sheets.id"), primary_key=True)
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))
