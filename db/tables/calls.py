"""Tables of the calls made about orders, and of the shop's rule for want of an answer."""

from datetime import datetime

from sqlalchemy import CheckConstraint, ForeignKey
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Row


class Calls(Row):
    """One call; rows are never changed."""

    __tablename__ = "calls"
    __table_args__ = (
        CheckConstraint("outcome IN ('no_answer', 'message', 'spoke')", name="outcome"),
    )

    id: Mapped[Id]
    order_id: Mapped[int] = mapped_column(ForeignKey("orders.id"), index=True)
    outcome: Mapped[str]
    note: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class CallRules(Row):
    """When cut sheets are due, and what happens without an answer; one row."""

    __tablename__ = "call_rules"
    __table_args__ = (
        CheckConstraint("id = 1", name="one_row"),
        CheckConstraint("without_answer IN ('usual', 'hang', 'ring')", name="without"),
    )

    id: Mapped[Id] = mapped_column(autoincrement=False)
    due_days: Mapped[int]
    without_answer: Mapped[str]
    version: Mapped[int]
