"""The table of packages weighed and labelled."""

from datetime import datetime

from sqlalchemy import CheckConstraint, ForeignKey
from sqlalchemy.orm import Mapped, mapped_column

from db.columns import Nanograms
from db.tables.row import Id, Row, nanograms_column


class Packages(Row):
    """A package; after it is made only its void columns may be written, and `labelled_at` once.

    `labelled_at` is when its label was first handed to the printer, None until then; `stroke` is
    the first label number of those that were wrapped with it in one stroke.
    """

    __tablename__ = "packages"
    __table_args__ = (
        CheckConstraint("net_count > 0", name="net_above_nothing"),
        CheckConstraint("net_ng IS NOT NULL", name="known_unit"),
    )

    id: Mapped[Id]
    label_number: Mapped[int] = mapped_column(unique=True)
    stroke: Mapped[int] = mapped_column(server_default="0")
    order_id: Mapped[int] = mapped_column(ForeignKey("orders.id"), index=True)
    line: Mapped[int]
    cut: Mapped[str]
    product: Mapped[str]
    owner: Mapped[str]
    net_count: Mapped[int]
    net_unit: Mapped[str]
    net_exponent: Mapped[int]
    net_ng: Mapped[int] = mapped_column(Nanograms, nanograms_column("net"))
    tare_count: Mapped[int | None]
    tare_unit: Mapped[str | None]
    tare_exponent: Mapped[int | None]
    pieces: Mapped[int]
    finishes: Mapped[str]
    reason: Mapped[str]
    made_at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))
    void: Mapped[str]
    voided_at: Mapped[datetime | None]
    voided_by: Mapped[int | None] = mapped_column(ForeignKey("persons.id"))
    labelled_at: Mapped[datetime | None]
