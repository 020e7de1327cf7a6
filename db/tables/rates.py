"""Tables of rate cards and their charges."""

from datetime import date, datetime
from fractions import Fraction

from sqlalchemy import CheckConstraint, ForeignKey
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Money, Row


class RateCards(Row):
    """A card and the day from which it holds; `card` is the whole of it as canonical JSON.

    A card that is replaced stays: rows are never changed but for `retired`.
    """

    __tablename__ = "rate_cards"

    id: Mapped[Id]
    code: Mapped[str] = mapped_column(index=True)
    name: Mapped[str]
    holds_from: Mapped[date] = mapped_column(index=True)
    regime: Mapped[str]
    rate_group: Mapped[str]
    card: Mapped[str]
    retired: Mapped[bool]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class Charges(Row):
    """One charge of a card, for reports: its basis, and its rate in exact cents."""

    __tablename__ = "charges"
    __table_args__ = (CheckConstraint("minimum >= 0", name="minimum"),)

    card_id: Mapped[int] = mapped_column(ForeignKey("rate_cards.id"), primary_key=True)
    position: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    code: Mapped[str]
    basis: Mapped[str]
    rate: Mapped[Fraction]
    minimum: Mapped[Money]
    tax_rate: Mapped[Fraction]
    falls_to: Mapped[str]
