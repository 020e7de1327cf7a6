"""A share's hanging weight goes into rows that add up to it exactly."""

from dataclasses import replace
from fractions import Fraction

from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass, Gone, Holding, Share, SideWeights
from shared.carcass.dressing import Dressing
from shared.cutting.answer import Answer
from shared.cutting.forecast import forecast
from shared.cutting.order import Added, Amount, Choice, Question
from shared.cutting.plan import plan
from shared.cutting.where_it_went import Account, accounts, hanging_ng
from shared.units import NG_PER_LB, Weight
from tests.shared.cutting.half_hog import PORK, planned


def told(question: Question, answer: Answer) -> tuple[Account, ...]:
    return accounts(question, answer, forecast(question, answer, PORK), PORK)


def test_rows_add_up_and_little_moves_between_owners() -> None:
    question, answer = planned()
    for account in told(question, answer):
        assert sum(weight for _, weight in account.rows) == account.hanging_ng
        # The tail comes one to an animal: half of it may be on the other owner's side.
        assert abs(account.row("between_owners")) < NG_PER_LB
        assert account.row("open") == 0
        assert Fraction(1, 2) < account.take_home < 1


def test_what_was_condemned_is_a_row() -> None:
    question, _ = planned()
    lost = Gone("jowl", 1, Weight(1, "lb"), "abscess")
    carcass = replace(question.carcasses[0], gone=(lost,))
    question = replace(question, carcasses=(carcass,))
    first, second = told(question, plan(question, PORK))
    assert (first.row("gone"), second.row("gone")) == (NG_PER_LB, 0)


def test_an_order_nobody_gave_leaves_everything_open() -> None:
    question, _ = planned()
    question = replace(question, choices=())
    for account in told(question, plan(question, PORK)):
        assert account.row("packages") == 0
        assert account.row("open") > account.hanging_ng * Fraction(9, 10)


def test_offal_is_told_beside_the_hanging_weight() -> None:
    question, _ = planned()
    liver = Choice(90, 1, "liver", Amount("all"))
    question = replace(question, choices=(*question.choices, liver))
    first, second = told(question, plan(question, PORK))
    assert first.besides_ng > NG_PER_LB
    assert second.besides_ng == 0
    assert sum(weight for _, weight in first.rows) == first.hanging_ng


def test_pork_that_is_ground_in_is_told_beside_the_hanging_weight() -> None:
    """A fifth of 5 lb is 1 lb that never hung there."""
    question, _ = planned()
    added = Added("pork_fat", Fraction(1, 5))
    ground = Choice(91, 1, "ground_pork", Amount("pounds", weight=Weight(5, "lb")), added=added)
    picnic = Choice(90, 1, "grind_picnic", Amount("all"))
    question = replace(question, choices=(picnic, ground))
    first, _ = told(question, plan(question, PORK))
    assert 0 <= first.besides_ng - NG_PER_LB < 2
    assert sum(weight for _, weight in first.rows) == first.hanging_ng
    assert abs(first.row("between_owners")) < NG_PER_LB


def test_a_forequarter_hangs_at_the_tables_share() -> None:
    """Forequarter about 55 % of a side: Purdue Univ. Extension (Lemenager)."""
    beef = catalogue("beef")
    side = SideWeights(whole=Weight(400, "lb"))
    question = Question((Carcass("beef", chilled=(side, side)),), (), ())
    fore = Share(1, "", (Holding(0, 1, "fore"),))
    hind = Share(2, "", (Holding(0, 1, "hind"),))
    assert hanging_ng(fore, question, beef) == 220 * NG_PER_LB
    assert hanging_ng(hind, question, beef) == 180 * NG_PER_LB
    empty = Account(1, 0, (("packages", 0),), 0)
    assert empty.take_home == 0


def test_a_skinned_head_on_hog_still_adds_up_and_loses_no_skin_twice() -> None:
    question, _ = planned()
    side = SideWeights(whole=Weight(95, "lb"))
    carcass = replace(
        question.carcasses[0],
        skin="skinned",
        hot=(SideWeights(), SideWeights()),
        chilled=(side, side),
        dressing=Dressing(head="on"),
    )
    question = replace(question, carcasses=(carcass,), choices=())
    for account in told(question, plan(question, PORK)):
        assert account.hanging_ng == 95 * NG_PER_LB
        # nothing is asked for: the head, nobody's by sides, is all that isn't on the two sides
        head = PORK.parts["head"].share + PORK.parts["tongue"].share + PORK.parts["tail"].share
        hung = 1 - Fraction("14.6") / Fraction("210.9") + head
        assert account.row("between_owners") <= account.hanging_ng * head / hung * 2
        assert account.row("not_kept") < NG_PER_LB * 4
        assert sum(weight for _, weight in account.rows) == account.hanging_ng


def test_what_went_before_the_scale_is_no_row() -> None:
    question, _ = planned()
    lost = Gone("jowl", 1, Weight(1, "lb"), "abscess", before_scale=True)
    carcass = replace(question.carcasses[0], gone=(lost,))
    question = replace(question, carcasses=(carcass,))
    first, _second = told(question, plan(question, PORK))
    assert first.row("gone") == 0
    assert sum(weight for _, weight in first.rows) == first.hanging_ng


def test_what_went_before_the_chilled_weight_is_counted_once() -> None:
    """Hot 300 lb, 1 lb trimmed off, chilled 293 lb: 6 lb dried off, and 293 lb are cut."""
    question, _ = planned()
    hot, first, second = (SideWeights(whole=Weight(one, "lb")) for one in (150, 146, 147))
    lost = Gone("jowl", 1, Weight(1, "lb"), "abscess", before_chilled=True)
    carcass = replace(question.carcasses[0], hot=(hot, hot), chilled=(first, second), gone=(lost,))
    before = replace(question, carcasses=(carcass,))
    one, other = told(before, plan(before, PORK))
    assert (one.hanging_ng, other.hanging_ng) == (146 * NG_PER_LB, 147 * NG_PER_LB)
    assert (one.taken_off_ng, other.taken_off_ng) == (NG_PER_LB, 0)
    assert (one.row("gone"), other.row("gone")) == (0, 0)
    # one of the two owners has the tail, which comes one to an animal
    assert abs(one.row("between_owners") - other.row("between_owners")) < NG_PER_LB // 10
    # as 147 lb would have been cut, less the one pound of the jowl
    bare = replace(question, carcasses=(replace(carcass, chilled=(second, second), gone=()),))
    whole, _ = told(bare, plan(bare, PORK))
    lean, fat = whole.row("packages") - one.row("packages"), one.row("fat_left")
    skin = whole.row("skin_left") - one.row("skin_left")
    assert abs(lean + whole.row("fat_left") - fat + skin - NG_PER_LB) < 100


def test_what_went_after_the_chilled_weight_is_gone_of_it() -> None:
    question, _ = planned()
    side = SideWeights(whole=Weight(147, "lb"))
    lost = Gone("jowl", 1, Weight(1, "lb"), "abscess")
    carcass = replace(question.carcasses[0], chilled=(side, side), gone=(lost,))
    question = replace(question, carcasses=(carcass,))
    first, _ = told(question, plan(question, PORK))
    assert (first.row("gone"), first.taken_off_ng) == (NG_PER_LB, 0)


def test_a_whole_part_that_went_before_the_scale_moves_between_no_owners() -> None:
    """A condemned jowl nobody weighed: the side that hangs is cut as one that had it."""
    question, _ = planned()
    lost = Gone("jowl", 1, None, "abscess", before_scale=True)
    carcass = replace(question.carcasses[0], gone=(lost,))
    question = replace(question, carcasses=(carcass,))
    first, second = told(question, plan(question, PORK))
    assert first.row("gone") == 0
    assert abs(first.row("between_owners") - second.row("between_owners")) < NG_PER_LB // 10
    assert sum(weight for _, weight in first.rows) == first.hanging_ng


def test_a_loss_falls_on_the_quarter_it_was_of() -> None:
    """Who holds a forequarter and half of the hind bears all of what went of the fore."""
    beef = catalogue("beef")
    side = SideWeights(whole=Weight(400, "lb"))
    lost = Gone("chuck_eye", 1, Weight(4, "lb"), "bruise")
    held = (Holding(0, 1, "fore"), Holding(0, 1, "hind", Fraction(1, 2)))
    shares = (Share(1, "", held), Share(2, "", (Holding(0, 1, "hind", Fraction(1, 2)),)))
    question = Question((Carcass("beef", chilled=(side, side), gone=(lost,)),), shares, ())
    answer = plan(question, beef)
    first, second = accounts(question, answer, forecast(question, answer, beef), beef)
    assert (first.row("gone"), second.row("gone")) == (4 * NG_PER_LB, 0)


def test_what_the_shops_own_figures_move_is_a_row() -> None:
    question, answer = planned()
    found = forecast(question, answer, PORK, graded=Fraction(98, 100))
    for account in accounts(question, answer, found, PORK):
        assert account.row("own_figures") > NG_PER_LB
        assert account.row("finish_loss") >= 0
        assert sum(weight for _, weight in account.rows) == account.hanging_ng
    assert all(one.row("own_figures") == 0 for one in told(question, answer))
