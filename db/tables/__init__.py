"""The store's tables, by subject."""

from db.tables import (
    batches,
    bills,
    calendar,
    calls,
    customers,
    ledger,
    lots,
    orders,
    packages,
    papers,
    people,
    rail,
    rates,
    row,
    weighings,
)

__all__ = [
    "batches",
    "bills",
    "calendar",
    "calls",
    "customers",
    "ledger",
    "lots",
    "orders",
    "packages",
    "papers",
    "people",
    "rail",
    "rates",
    "row",
    "weighings",
]
