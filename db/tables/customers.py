"""The table of customers and producers."""

from sqlalchemy import ForeignKey
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Row


class Customers(Row):
    """A customer; `name_key` and `digits` are what the search looks through."""

    __tablename__ = "customers"

    id: Mapped[Id]
    name: Mapped[str]
    name_key: Mapped[str] = mapped_column(index=True)
    phone: Mapped[str]
    digits: Mapped[str] = mapped_column(index=True)
    email: Mapped[str]
    address: Mapped[str]
    notes: Mapped[str]
    rate_group: Mapped[str]
    language: Mapped[str]
    joined_into: Mapped[int | None] = mapped_column(ForeignKey("customers.id"), index=True)
    version: Mapped[int]
