"""Tables of lines in a shop that counts: which are weighed, what a line weighs in all."""

from datetime import datetime

from sqlalchemy import CheckConstraint, ForeignKey
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Row


class WeighedLines(Row):
    """Lines of an order wrapped by count that are weighed and labelled all the same."""

    __tablename__ = "weighed_lines"

    order_id: Mapped[int] = mapped_column(
        ForeignKey("orders.id"), primary_key=True, autoincrement=False
    )
    line: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class CountedWeights(Row):
    """What the counted packages of a line weigh together; the last row holds, none is changed.

    `packages` were on the scale: once more are counted the weight is of them no longer.
    """

    __tablename__ = "counted_weights"
    __table_args__ = (CheckConstraint("packages > 0 AND net_count > 0", name="above_nothing"),)

    id: Mapped[Id]
    order_id: Mapped[int] = mapped_column(ForeignKey("orders.id"), index=True)
    line: Mapped[int]
    packages: Mapped[int]
    net_count: Mapped[int]
    net_unit: Mapped[str]
    net_exponent: Mapped[int]
    tare_count: Mapped[int | None]
    tare_unit: Mapped[str | None]
    tare_exponent: Mapped[int | None]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))
