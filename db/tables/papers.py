"""Tables of kept papers, and of who did what when."""

from datetime import datetime

from sqlalchemy import ForeignKey, Index
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Row


class Papers(Row):
    """A paper whole: what it was printed from and its bytes; rows are never changed."""

    __tablename__ = "papers"

    id: Mapped[Id]
    kind: Mapped[str]
    lot_id: Mapped[int | None] = mapped_column(ForeignKey("lots.id"), index=True)
    order_id: Mapped[int | None] = mapped_column(ForeignKey("orders.id"), index=True)
    number: Mapped[int]
    snapshot: Mapped[str]
    sha256: Mapped[str]
    made_at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))
    pdf: Mapped[bytes]


class Changes(Row):
    """One thing done, by whom and where; rows are never changed."""

    __tablename__ = "changes"
    __table_args__ = (Index("ix_changes_subject_subject_id_id", "subject", "subject_id", "id"),)

    id: Mapped[Id]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))
    subject: Mapped[str]
    subject_id: Mapped[int]
    what: Mapped[str]
    reason: Mapped[str]
    data: Mapped[str]
