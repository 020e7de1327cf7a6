"""A share cut as another says: its packages are dealt on the sheet and the counts."""

from dataclasses import replace
from fractions import Fraction

from printing.counts import share_counts
from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass, Holding, Share, SideWeights
from shared.cutting.divided import packages_dealt
from shared.cutting.forecast import forecast
from shared.cutting.order import Amount, Choice, Package, Question
from shared.cutting.plan import plan
from shared.units import Weight
from tests.printing.rasterised import pages_of
from tests.printing.sheet_lot import Planned, sheet_of

HALF = Fraction(1, 2)


def led() -> Planned:
    """A side of two halves, the second cut as the first."""
    side = SideWeights(Weight(100, "lb"))
    hog = Carcass("pork", "114", age="under_30", skin="skinned", hot=(side, side))
    shares = (
        Share(1, "Anna Berg", (Holding(0, 1, fraction=HALF),)),
        Share(2, "Bert Iversen", (Holding(0, 1, fraction=HALF),), leader=1),
        Share(3, "Kitty Ó Sé", (Holding(0, 2),)),
    )
    pound = Package(weight=Weight(1, "lb"))
    choices = (
        Choice(1, 1, "bacon", Amount("all"), finishes=("cured_smoked", "sliced"), package=pound),
        Choice(2, 1, "grind_open", Amount("rest")),
        Choice(3, 1, "ground_pork", Amount("rest"), lean=Fraction(4, 5), package=pound),
        Choice(4, 3, "grind_open", Amount("rest")),
        Choice(5, 3, "ground_pork", Amount("rest"), lean=Fraction(4, 5), package=pound),
    )
    question = Question((hog,), shares, choices)
    known = catalogue("pork")
    answer = plan(question, known)
    return Planned(question, answer, known, forecast(question, answer, known))


def test_the_sheet_says_how_a_leaders_packages_are_dealt() -> None:
    lot = led()
    line = lot.forecast.line(1)
    assert line is not None
    dealt = packages_dealt(line.packages.mid, 1, lot.question.shares)
    text = " ".join(" ".join(pages_of(sheet_of(lot))).replace("\u00a0", " ").split())
    assert f"packages dealt: {dealt[1]} Anna Berg, {dealt[2]} Bert Iversen" in text
    both = " ".join(" ".join(pages_of(sheet_of(lot, also="es"))).replace("\u00a0", " ").split())
    assert f"paquetes repartidos: {dealt[1]} Anna Berg" in both
    assert "Kitty" not in text[text.index("packages dealt") :][:60]


def test_the_counts_of_both_add_up_to_the_leaders() -> None:
    lot = led()
    planned: dict[int, list[int]] = {}
    for share in (1, 2):
        found = share_counts(
            lot.question, lot.catalogue, lot.forecast, share, (), order_number=1, hanging=None
        )
        planned[share] = [row.planned.mid for row in found.rows if row.planned]
    whole = [one.packages.mid for one in lot.forecast.of_share(1)]
    assert [sum(pair) for pair in zip(planned[1], planned[2], strict=True)] == whole
    assert planned[1] >= planned[2]


def test_nothing_is_cut_of_a_condemned_carcass() -> None:
    lot = led()
    hog = replace(lot.question.carcasses[0], condemned=True)
    question = replace(lot.question, carcasses=(hog,))
    answer = plan(question, lot.catalogue)
    gone = Planned(question, answer, lot.catalogue, forecast(question, answer, lot.catalogue))
    first, *_ = pages_of(sheet_of(gone))
    assert "CONDEMNED" in first
    assert "Bacon" not in first
