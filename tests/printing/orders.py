"""A hog cut in halves, planned: what the papers of an order are printed from."""

from dataclasses import dataclass
from datetime import UTC, datetime
from fractions import Fraction

from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass, Holding, Share, SideWeights
from shared.carcass.catalogue import Catalogue
from shared.cutting.answer import Answer
from shared.cutting.forecast import Forecast, forecast
from shared.cutting.order import Amount, Choice, Package, Question
from shared.cutting.plan import plan
from shared.shop.counted import CountedPackages
from shared.shop.packages import PackageMade
from shared.units import Weight
from tests.printing.pages import NAME


@dataclass(frozen=True, slots=True)
class Planned:
    """A lot as planned."""

    question: Question
    answer: Answer
    catalogue: Catalogue
    forecast: Forecast


def halves() -> Planned:
    """Side 1 is the name with everything in it, side 2 another's; ham, chops and ground."""
    side = SideWeights(Weight.from_pounds("92"))
    hog = Carcass("pork", tag="114", hot=(side, side), skin="scalded")
    shares = (
        Share(1, NAME, (Holding(0, 1),)),
        Share(2, "Bert Iversen", (Holding(0, 2),)),
    )
    choices = (
        Choice(1, 1, "whole_ham", Amount("all"), finishes=("cured_smoked",)),
        Choice(
            2,
            1,
            "centre_chop",
            Amount("slices", 6),
            thickness=203_200 * 3 // 4,
            package=Package(pieces=2),
            note="nice & <thick>",
        ),
        Choice(
            3, 1, "ground_pork", Amount("rest"), package=Package(weight=Weight.from_pounds("1"))
        ),
        Choice(4, 2, "whole_ham", Amount("all")),
    )
    question = Question((hog,), shares, choices)
    pork = catalogue("pork")
    answer = plan(question, pork)
    return Planned(question, answer, pork, forecast(question, answer, pork))


def made(label: int, line: int, cut: str, net: str, share: int = 1, void: str = "") -> PackageMade:
    return PackageMade(
        id=label,
        label_number=label,
        lot_id=1,
        order_id=share,
        share=share,
        line=line,
        cut=cut,
        product="Neck bones" if not line else "",
        owner=NAME,
        net=Weight.from_pounds(net),
        tare=None,
        pieces=0,
        finishes=(),
        reason="" if line else "left over",
        made_at=datetime(2026, 3, 12, 9, tzinfo=UTC),
        person="Test",
        station="Bench",
        void=void,
    )


def by_count(line: int, cut: str, packages: int, share: int = 1, void: str = "") -> CountedPackages:
    """Packages of a line that were counted."""
    at = datetime(2026, 3, 12, 9, tzinfo=UTC)
    return CountedPackages(
        1, 1, share, share, line, cut, "", NAME, packages, (), at, "Test", "Bench", void
    )


HANGING = Fraction(92)
