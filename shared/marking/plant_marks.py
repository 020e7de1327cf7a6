"""The plant's own marks for inspected goods: its number, its approved legend, its product numbers.

Nothing here draws a legend: it is the plant's own artwork as it was approved, or it stands on the
stock already. Labels of inspected goods are approved by the inspector's service, not by this
program (9 CFR part 412, from memory).
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

from shared.marking.gs1 import gtin14
from shared.marking.label import Keep
from shared.marking.problems import MarkingProblem

LegendFrom = Literal["", "stock", "artwork"]
LEGEND_POINTS = 58  # each way, what a label keeps free for the legend
MOST_BYTES = 2_000_000
MOST_ESTABLISHMENT = 12


@dataclass(frozen=True, slots=True)
class Artwork:
    """An image of the approved legend as the plant has it: PNG bytes, and dots each way."""

    name: str
    png: bytes
    wide: int
    high: int


@dataclass(frozen=True, slots=True)
class PlantMarks:
    """What labels of inspected goods need of the plant.

    `legend` says where the inspection legend comes from: "stock", it is printed there already;
    "artwork", it is placed on the label; "" there is none, and no label of inspected goods.
    `gtins` are product numbers by species and cut. `keep` is how packages leave the plant.
    """

    establishment: str = ""
    legend: LegendFrom = ""
    artwork: Artwork | None = None
    gtins: Mapping[tuple[str, str], str] = field(default_factory=dict[tuple[str, str], str])
    keep: Keep = "keep_frozen"
    version: int = 0

    @property
    def has_legend(self) -> bool:
        """Whether the legend will be on the label, printed or placed."""
        return self.legend == "stock" or (self.legend == "artwork" and self.artwork is not None)


def least_dots(dpi: int) -> int:
    """Dots an artwork needs along its longer edge, one for each of the printer's.

    58 points at 203 dots to the inch are 164 dots, at 300 they are 242.
    """
    return -(-LEGEND_POINTS * dpi // 72)


def artwork_problem(artwork: Artwork, dpi: int) -> MarkingProblem | None:
    """Why an artwork can't be placed: "artwork_too_large" in bytes, "artwork_too_coarse".

    An image of 100 × 100 dots is too coarse for a printer of 203 dots to the inch.
    """
    if len(artwork.png) > MOST_BYTES:
        return MarkingProblem("artwork_too_large", {"bytes": str(len(artwork.png))})
    longer, needed = max(artwork.wide, artwork.high), least_dots(dpi)
    if longer < needed:
        data = {"wide": str(artwork.wide), "high": str(artwork.high), "needed": str(needed)}
        return MarkingProblem("artwork_too_coarse", data)
    return None


def establishment_problem(text: str) -> MarkingProblem | None:
    """Why an establishment number can't be taken: letters, digits and - only, at most 12.

    "M1234" and "38-B" may be, "Est. 12/3" may not: the label says "Est." itself.
    """
    bare = text.strip()
    plain = all(one.isascii() and (one.isalnum() or one == "-") for one in bare)
    if len(bare) > MOST_ESTABLISHMENT or not plain:
        return MarkingProblem("establishment", {"number": text})
    return None


def product_number(text: str) -> str | MarkingProblem:
    """A GTIN for a weighed package, as 14 digits that begin with 9; else what is wrong.

    "90614141000015" has the check digit 5 of its first 13 and may be; one that begins with 0 is
    of packages that all weigh the same ("not_variable").
    """
    found = gtin14(text.replace(" ", ""))
    if isinstance(found, MarkingProblem):
        return found
    return found if found.startswith("9") else MarkingProblem("not_variable", {"gtin": found})
