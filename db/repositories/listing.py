"""What all lists share: searching by a part of a text, and the names of a lot's owners."""

from typing import Any

from sqlalchemy import ColumnElement, ScalarSelect, func, select
from sqlalchemy.orm import InstrumentedAttribute, aliased

from db.tables.customers import Customers
from db.tables.lots import Animals, Lots, Shares


def contains(column: InstrumentedAttribute[str], text: str) -> ColumnElement[bool]:
    """The column holds the text; `%` and `_` in it mean themselves."""
    return column.contains(text, autoescape=True)


def owners_of_lot() -> ScalarSelect[Any]:
    """The names of the owners of the lot at hand, joined; those still to be named are left out."""
    own, joined = aliased(Customers), aliased(Customers)
    return (
        select(func.aggregate_strings(func.coalesce(joined.name, own.name), ", "))
        .select_from(Shares)
        .join(own, own.id == Shares.customer_id)
        .outerjoin(joined, joined.id == own.joined_into)
        .where(Shares.lot_id == Lots.id)
        .correlate(Lots)
        .scalar_subquery()
    )


def tags_of_lot() -> ScalarSelect[Any]:
    """The tags of the animals of the lot at hand, joined."""
    return (
        select(func.aggregate_strings(Animals.tag, ", "))
        .where(Animals.lot_id == Lots.id, Animals.tag != "")
        .correlate(Lots)
        .scalar_subquery()
    )
