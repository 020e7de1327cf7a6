"""The store's tables, by subject."""

from db.tables import (
    bills,
    customers,
    ledger,
    lots,
    orders,
    packages,
    papers,
    people,
    rates,
    row,
    weighings,
)

__all__ = [
    "bills",
    "customers",
    "ledger",
    "lots",
    "orders",
    "packages",
    "papers",
    "people",
    "rates",
    "row",
    "weighings",
]
