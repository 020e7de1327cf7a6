"""Tables of calls about orders, the rules of ringing, and what owners were told theirs weighs."""

from datetime import datetime

from sqlalchemy import CheckConstraint, ForeignKey
from sqlalchemy.orm import Mapped, mapped_column

from db.columns import Nanograms
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
    told_to: Mapped[str] = mapped_column(server_default="")


class CallOffers(Row):
    """A way out told in a call, as it was said; rows are never changed."""

    __tablename__ = "call_offers"

    id: Mapped[Id]
    call_id: Mapped[int] = mapped_column(ForeignKey("calls.id"), index=True)
    offer: Mapped[str]
    cents: Mapped[int | None]


class CallRules(Row):
    """When cut sheets are due, and what happens without an answer; one row."""

    __tablename__ = "call_rules"
    __table_args__ = (
        CheckConstraint("id = 1", name="one_row"),
        CheckConstraint("without_answer IN ('usual', 'hang', 'ring')", name="without"),
        CheckConstraint("counted_from IN ('kill', 'block')", name="counted"),
    )

    id: Mapped[Id] = mapped_column(autoincrement=False)
    due_days: Mapped[int]
    without_answer: Mapped[str]
    version: Mapped[int]
    counted_from: Mapped[str]
    remind_days: Mapped[int]
    most_calls: Mapped[int]


class WeightsTold(Row):
    """What an owner was told his share weighs; None was told as not weighed. Never changed."""

    __tablename__ = "weights_told"
    __table_args__ = (CheckConstraint("how IN ('mail', 'paper', 'spoken')", name="how"),)

    id: Mapped[Id]
    order_id: Mapped[int] = mapped_column(ForeignKey("orders.id"), index=True)
    how: Mapped[str]
    hanging_ng: Mapped[int | None] = mapped_column(Nanograms)
    note: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))
