"""A package that was weighed and labelled, and the count of what an order has so far."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

from shared.shop.states import OrderState
from shared.units import Weight

MOST_EQUAL = 200
"""Packages that are wrapped in one stroke at the most."""

WRAPPED_WHILE: tuple[OrderState, ...] = ("released", "cut")
"""States of an order that takes packages: at the block, and cut; a ready one is taken back first.
"""


@dataclass(frozen=True, slots=True)
class NewPackage:
    """A package on the scale. `product` is the words on the label, `net` is after tare.

    line 0 is a package that stands on no line of the order; it needs a reason.
    """

    order_id: int
    line: int
    cut: str
    product: str
    net: Weight
    tare: Weight | None = None
    pieces: int = 0
    reason: str = ""
    finishes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class PackageMade:
    """A labelled package. Its label number is never used again, also when it is made void.

    `stroke` is the first label number of those that were wrapped with it in one stroke.
    `labelled_at` is when its label was first handed to the printer, None where it never was.
    """

    id: int
    label_number: int
    lot_id: int
    order_id: int
    share: int
    line: int
    cut: str
    product: str
    owner: str
    net: Weight
    tare: Weight | None
    pieces: int
    finishes: tuple[str, ...]
    reason: str
    made_at: datetime
    person: str
    station: str
    void: str = ""
    voided_at: datetime | None = None
    voided_by: str = ""
    stroke: int = 0
    labelled_at: datetime | None = None


def of_one_stroke(package: PackageMade, packages: Iterable[PackageMade]) -> tuple[PackageMade, ...]:
    """The packages that still stand of those wrapped with this one in one stroke, it among them.

    Of 80 tubes of 1 lb of which one is void 79 are found; two strokes of one weight within one
    second stay two.
    """
    return tuple(one for one in packages if not one.void and one.stroke == package.stroke)


def without_label(packages: Iterable[PackageMade]) -> tuple[PackageMade, ...]:
    """The packages that still stand and whose label no printer ever took.

    Of three made while the printer was out of paper, one of them void, two are found.
    """
    return tuple(one for one in packages if not one.void and one.labelled_at is None)


@dataclass(frozen=True, slots=True)
class CountRow:
    """What was made of one line: packages, pieces, nanograms; void ones are not in it."""

    line: int
    cut: str
    product: str
    packages: int
    pieces: int
    nanograms: int
