"""Packages wrapped by count: paper that is stamped or written on, without weighing and labels.

Only custom-exempt goods are wrapped so: their paper must carry NOT FOR SALE (9 CFR 316.16 and
317.16) but no net weight; a label of inspected goods states one (9 CFR 317.2, from memory).
"""

from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from shared.carcass.carcass import Regime

Wrapped = Literal["weighed", "counted"]
MOST_COUNTED = 500
"""Packages that are counted in one stroke at the most."""


@dataclass(frozen=True, slots=True)
class NewCount:
    """So many packages of an order's line; `product` is what a label would have named."""

    order_id: int
    line: int
    cut: str
    product: str
    packages: int
    finishes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class CountedPackages:
    """Packages that were counted at one time. They have no label number and no weight."""

    id: int
    lot_id: int
    order_id: int
    share: int
    line: int
    cut: str
    product: str
    owner: str
    packages: int
    finishes: tuple[str, ...]
    made_at: datetime
    person: str
    station: str
    void: str = ""
    voided_at: datetime | None = None
    voided_by: str = ""


def may_be_counted(wrapped: Wrapped, regime: Regime) -> bool:
    """Whether a package of that regime may go unweighed in a shop that wraps so.

    Counted and custom-exempt: yes. Inspected goods are weighed and labelled in every shop.
    """
    return wrapped == "counted" and regime == "custom"
