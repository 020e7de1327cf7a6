"""Packages wrapped by count: paper that is stamped or written on, without weighing and labels.

Only custom-exempt goods are wrapped so: their paper must carry NOT FOR SALE (9 CFR 316.16 and
317.16) but no net weight; a label of inspected goods states one (9 CFR 317.2, from memory).
"""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from shared.carcass.carcass import Regime
from shared.units import Weight

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


@dataclass(frozen=True, slots=True)
class CountedWeight:
    """What the counted packages of a line weigh together, `net` after tare, and how many lay there.

    For a charge by the finished pound; no package has a weight of its own from it.
    """

    order_id: int
    share: int
    line: int
    packages: int
    net: Weight
    tare: Weight | None
    at: datetime
    person: str


def weight_together(
    line: int, counted: int, weights: Iterable[CountedWeight]
) -> CountedWeight | None:
    """The weight of a line's counted packages; None where not all of them lay on the scale.

    12 were weighed at 18.4 lb: known while 12 stand, and not once 14 are counted or 2 made void.
    """
    found = next((one for one in weights if one.line == line), None)
    return found if found is not None and counted and found.packages == counted else None


def may_be_counted(wrapped: Wrapped, regime: Regime) -> bool:
    """Whether a package of that regime may go unweighed in a shop that wraps so.

    Counted and custom-exempt: yes. Inspected goods are weighed and labelled in every shop.
    """
    return wrapped == "counted" and regime == "custom"
