"""What an age brings down of cattle, the reason once, each side's page naming its own side."""

from datetime import datetime
from fractions import Fraction

import pytest

from printing.block_sheet import block_sheet
from printing.words import Words
from printing.words.kept_back import age_not_known, kept_back
from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Age, Carcass, Holding, Share, SideWeights
from shared.cutting.answer import Answer
from shared.cutting.forecast import forecast
from shared.cutting.order import Amount, Choice, Question
from shared.cutting.plan import plan
from shared.shop.details import ShopDetails
from shared.units import LENGTH_UNITS_PER_INCH, Weight
from tests.printing.rasterised import pages_of

INCH = LENGTH_UNITS_PER_INCH
BEEF = catalogue("beef")
ANNA = Share(1, "Anna", (Holding(0, 1), Holding(0, 2)))
HALVES = (Share(1, "Anna", (Holding(0, 1),)), Share(2, "Bert", (Holding(0, 2),)))
REASON = "specified risk material"


def t_bones(line: int, share: int, count: int = 6) -> Choice:
    return Choice(line, share, "t_bone_steak", Amount("slices", count), thickness=INCH)


def neck_bones(line: int, share: int) -> Choice:
    return Choice(line, share, "neck_bones", Amount("all"))


def asked(
    shares: tuple[Share, ...], *choices: Choice, age: Age = "30_and_over", head: int = 1
) -> tuple[Question, Answer]:
    side = SideWeights(Weight(350, "lb"))
    beeves = tuple(
        Carcass("beef", str(241 + n), age=age, skin="skinned", hot=(side, side))
        for n in range(head)
    )
    question = Question(beeves, shares, choices)
    return question, plan(question, BEEF)


def told(
    question: Question, answer: Answer, here: tuple[int, int] | None = None, language: str = "en"
) -> str:
    said = kept_back(answer.conflicts, question, BEEF, Words(language, strict=True), here)
    return said.replace("\u00a0", " ")


def sides(question: Question, answer: Answer) -> tuple[str, str]:
    """What stands on the pages of side 1 and of side 2."""
    pdf = block_sheet(
        question,
        answer,
        BEEF,
        forecast(question, answer, BEEF),
        lot_number=12,
        sheet_number=0,
        shop=ShopDetails(name="Two Creeks Meats"),
        made=datetime(2026, 3, 9, 14, 5),
        words=Words("en", strict=True),
    )
    pages = [" ".join(page.replace("\u00a0", " ").split()) for page in pages_of(pdf)]
    one, two = (" ".join(it for it in pages if it.startswith(f"Side {n}")) for n in (1, 2))
    return one, two


def test_one_owners_line_on_both_sides_is_told_on_each_of_that_side() -> None:
    """The plan names side 1; the page of side 2 said so too."""
    question, answer = asked((ANNA,), t_bones(1, 1, 12))
    assert [one.where.side for one in answer.conflicts] == [1]
    first, second = sides(question, answer)
    assert "Both sides: 12 T-bone steaks at 1 in" in first
    assert "Side 2, loin bone, T-bone end: 12 T-bone steaks at 1 in can't be kept." in second
    assert "Side 1" not in second


def test_of_two_owners_each_page_has_its_own() -> None:
    question, answer = asked(HALVES, t_bones(1, 1, 5), t_bones(2, 2, 7))
    first, second = sides(question, answer)
    assert "Side 1: 5 T-bone steaks at 1 in (Anna). Side 2: 7 T-bone steaks at 1 in" not in first
    assert "Side 1: 5 T-bone steaks at 1 in. Side 2: 7 T-bone steaks at 1 in." in first
    assert "7 T-bone steaks" in second
    assert "5 T-bone steaks" not in second


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_reason_is_said_once_for_all_lines(language: str) -> None:
    question, answer = asked((ANNA,), t_bones(1, 1), neck_bones(2, 1))
    assert len(answer.conflicts) == 2
    said = told(question, answer, (0, 2), language)
    assert said.count({"en": REASON, "es": "material de riesgo especificado"}[language]) == 1
    first, second = sides(question, answer)
    assert first.count(REASON) == second.count(REASON) == 1
    assert "Side 2: 6 T-bone steaks at 1 in and all as neck bone." in second


def test_owners_of_one_side_are_named() -> None:
    half = Fraction(1, 2)
    shares = tuple(
        Share(n, name, (Holding(0, 1, fraction=half),)) for n, name in ((1, "Anna"), (2, "Bert"))
    )
    said = told(*asked(shares, t_bones(1, 1, 2), t_bones(2, 2, 3)), (0, 1))
    assert "2 T-bone steaks at 1 in (Anna) and 3 T-bone steaks at 1 in (Bert)" in said


def test_of_two_beeves_over_age_both_are_named() -> None:
    """The plan names the first one it meets; the other one's pages were silent."""
    shares = (Share(1, "Anna", tuple(Holding(n, side) for n in (0, 1) for side in (1, 2))),)
    question, answer = asked(shares, t_bones(1, 1, 12), head=2)
    said = told(question, answer)
    assert "Carcass 1, tag 241, both sides: 12 T-bone steaks" in said
    assert "Carcass 2, tag 242, both sides: 12 T-bone steaks" in said
    assert "Carcass 2, tag 242, side 1" in told(question, answer, (1, 1))


def test_a_young_one_has_nothing_kept_back() -> None:
    assert told(*asked((ANNA,), t_bones(1, 1), age="under_30")) == ""


def test_of_an_age_not_known_the_reason_is_said_once_too() -> None:
    question, answer = asked((ANNA,), t_bones(1, 1), neck_bones(2, 1), age="unknown")
    assert answer.conflicts == ()
    assert [one.code for one in answer.cautions].count("age_unknown") == 2
    first, second = sides(question, answer)
    for page in (first, second):
        assert page.count("The age is not known.") == 1
        assert "can't be kept: 6 T-bone steaks at 1 in and all as neck bone." in page
    one = age_not_known([1], question, BEEF, Words("en"))
    assert one.startswith("6 T-bone steaks at 1\u00a0in: the age is not known.")
