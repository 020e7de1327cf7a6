"""Packages in their boxes, and each time some of them left the shop."""

from dataclasses import dataclass
from datetime import datetime


@dataclass(frozen=True, slots=True)
class Boxed:
    """Where a package lies: the name of its box, and the freezer or locker that stands in."""

    box: str = ""
    place: str = ""


@dataclass(frozen=True, slots=True)
class HandOver:
    """One pick-up of an order: who fetched it, which packages, and why it left if it was held.

    `packages` and `counted` are the ids of labelled packages and of counts.
    """

    id: int
    order_id: int
    fetched_by: str
    reason: str
    packages: frozenset[int]
    at: datetime
    person: str
    counted: frozenset[int] = frozenset()
