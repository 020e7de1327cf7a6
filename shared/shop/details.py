"""The shop's own name and ways: what papers say of it and what the planner takes from it."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from shared.billing.storage import StorageDays
from shared.shop.counted import Wrapped

PaperSize = Literal["letter", "a4"]
HangingBasis = Literal["hot", "hot_less_shrink", "chilled"]


@dataclass(frozen=True, slots=True)
class ShopDetails:
    """The plant as its papers name it, and its settings.

    `fore_share` None takes the species file's share; kerfs and own lengths (species, stretch,
    length) are in 1/203,200 in, None or absent keeps the species file's figure.
    `wrapped` "counted": custom-exempt packages may be counted instead of weighed.
    `storage_days` says which days of storage are counted.
    """

    name: str = ""
    address: str = ""
    phone: str = ""
    email: str = ""
    language: str = "en"
    paper: PaperSize = "letter"
    stock: str = "4x3"
    dpi: int = 203
    weight_unit: str = "lb"
    hanging_basis: HangingBasis = "hot"
    fore_share: Fraction | None = None
    kerf_saw: int | None = None
    kerf_slicer: int | None = None
    own_lengths: tuple[tuple[str, str, int], ...] = ()
    wrapped: Wrapped = "weighed"
    storage_days: StorageDays = "every_day"
    version: int = 0
