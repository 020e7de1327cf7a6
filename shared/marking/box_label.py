"""What the label of a box says: whose it is, where it stands, what is in it."""

from dataclasses import dataclass

from shared.marking.stock import Stock


@dataclass(frozen=True, slots=True)
class InBox:
    """One product in a box: so many packages and their nanograms."""

    product: str
    packages: int
    nanograms: int


@dataclass(frozen=True, slots=True)
class BoxLabel:
    """The label of a box; `not_for_sale` where what is in it is custom-exempt (9 CFR 316.16).

    `serial` is its barcode, "" for a box whose name no code holds. It bears no inspection legend:
    boxes that leave inspected into trade are marked as the inspector says.
    """

    order_number: int
    owner: str
    box: str
    place: str
    rows: tuple[InBox, ...]
    not_for_sale: bool
    serial: str
    stock: Stock
    dpi: int

    @property
    def packages(self) -> int:
        """All packages in it."""
        return sum(one.packages for one in self.rows)

    @property
    def nanograms(self) -> int:
        """Their net weight."""
        return sum(one.nanograms for one in self.rows)
