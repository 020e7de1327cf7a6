"""Tables of what is also on orders' next bills, and which bill took it off."""

from datetime import datetime

from sqlalchemy import ForeignKey
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Row


class OrderExtras(Row):
    """What somebody said is on an order's next bill; the last row holds. Never changed."""

    __tablename__ = "order_extras"

    id: Mapped[Id]
    order_id: Mapped[int] = mapped_column(ForeignKey("orders.id"), index=True)
    said: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class TakenExtras(Row):
    """A row of the extras that was written because a bill took off what is on it now."""

    __tablename__ = "taken_extras"

    extras_id: Mapped[int] = mapped_column(
        ForeignKey("order_extras.id"), primary_key=True, autoincrement=False
    )
    bill_id: Mapped[int] = mapped_column(ForeignKey("bills.id"), index=True)
