"""A hog of two owners for the papers' tests, ordered so that every kind of row is there."""

from dataclasses import dataclass, replace
from datetime import datetime
from fractions import Fraction

from printing.block_sheet import block_sheet
from printing.words import Words
from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass, Gone, Holding, Share, SideWeights
from shared.carcass.catalogue import Catalogue
from shared.cutting.answer import Answer
from shared.cutting.forecast import Forecast, forecast
from shared.cutting.order import Amount, Choice, Package, Question
from shared.cutting.plan import plan
from shared.shop.details import PaperSize, ShopDetails
from shared.units import LENGTH_UNITS_PER_INCH, Weight

NAME = "Jørgen & Łucja <O'Neil>"
MADE = datetime(2026, 3, 9, 14, 5)
INCH = LENGTH_UNITS_PER_INCH


@dataclass(frozen=True, slots=True)
class Planned:
    """A question with its answer."""

    question: Question
    answer: Answer
    catalogue: Catalogue
    forecast: Forecast


def _choices() -> tuple[Choice, ...]:
    pound = Package(weight=Weight(1, "lb"))
    return (
        Choice(1, 1, "short_shank_ham", Amount("pieces", 1), finishes=("cured_smoked",)),
        Choice(2, 1, "boneless_chop", Amount("slices", 12), thickness=INCH, package=Package(2)),
        Choice(3, 1, "bacon", Amount("all"), finishes=("cured_smoked", "sliced"), package=pound),
        Choice(4, 1, "grind_open", Amount("rest")),
        Choice(5, 1, "ground_pork", Amount("rest"), lean=Fraction(4, 5), package=pound),
        Choice(6, 2, "ham_steak", Amount("slices", 5), thickness=INCH * 3 // 4, note="keep {rind}"),
        Choice(7, 2, "assorted_chop", Amount("rest"), thickness=INCH * 5 // 4),
        Choice(8, 2, "grind_open", Amount("rest")),
        Choice(9, 2, "ground_pork", Amount("rest"), lean=Fraction(4, 5), package=pound),
    )


def planned(*, more: tuple[Choice, ...] = (), gone: tuple[Gone, ...] = ()) -> Planned:
    """The hog planned; `more` are further choices."""
    side = SideWeights(Weight(100, "lb"))
    hog = Carcass("pork", "114", age="under_30", skin="scalded", hot=(side, side), gone=gone)
    shares = (
        Share(1, NAME, (Holding(0, 1),)),
        Share(2, "Odell Prewitt", (Holding(0, 2),)),
    )
    question = Question((hog,), shares, _choices() + more)
    known = catalogue("pork")
    answer = plan(question, known)
    return Planned(question, answer, known, forecast(question, answer, known))


def sheet_of(
    lot: Planned,
    *,
    paper: PaperSize = "letter",
    language: str = "en",
    notes: dict[int, str] | None = None,
    also: str = "",
    allergens: dict[str, tuple[str, ...]] | None = None,
) -> bytes:
    """Its block sheet."""
    return block_sheet(
        lot.question,
        lot.answer,
        lot.catalogue,
        lot.forecast,
        lot_number=12,
        sheet_number=2,
        shop=replace(ShopDetails(name="Two Creeks Meats"), paper=paper),
        made=MADE,
        words=Words(language, strict=True),
        note_by_share=notes,
        also=Words(also, strict=True) if also else None,
        allergens=allergens,
    )
