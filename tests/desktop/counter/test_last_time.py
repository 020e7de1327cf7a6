"""An earlier order is planned again on the carcass at hand; what changed and what can't is said."""

from dataclasses import replace

from desktop.counter.last_time import planned_again
from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass, Holding, Share
from shared.cutting.order import Amount, Choice, Question
from shared.cutting.plan import plan

PORK = catalogue("pork")
HALF = Question((Carcass("pork"),), (Share(1, "Anna", (Holding(0, 1),)),), ())


def test_what_fits_stays_as_it_was() -> None:
    earlier = [
        Choice(3, 2, "ham_steak", Amount("slices", 4), pinned=((0, 2, 4),), made=True),
        Choice(9, 2, "bacon", Amount("all"), finishes=("cured_smoked", "sliced")),
    ]
    again = planned_again(HALF, PORK, 1, earlier)
    assert [one.how for one in again] == ["same", "same"]
    assert [(one.now.line, one.now.share) for one in again if one.now] == [(1, 1), (2, 1)]
    assert [(one.now.pinned, one.now.made) for one in again if one.now] == [((), False)] * 2


def test_two_hams_of_a_whole_hog_are_one_of_a_half() -> None:
    """A side has one ham; the way out that changes only this line is taken."""
    (again,) = planned_again(HALF, PORK, 1, [Choice(1, 1, "whole_ham", Amount("pieces", 2))])
    assert again.how == "changed"
    assert again.now is not None
    assert again.now.amount == Amount("pieces", 1)


def test_what_the_owner_asks_now_comes_first() -> None:
    asked = replace(HALF, choices=(Choice(5, 1, "whole_ham", Amount("pieces", 1)),))
    earlier = [Choice(1, 1, "whole_ham", Amount("pieces", 1))]
    (again,) = planned_again(asked, PORK, 1, earlier)
    assert again.now is None
    assert again.how == "conflict"
    assert again.conflict is not None
    assert 6 in again.conflict.lines


def test_what_is_on_the_order_already_is_not_told_as_left_out() -> None:
    asked = replace(HALF, choices=(Choice(5, 1, "whole_ham", Amount("rest")),))
    earlier = [
        Choice(1, 1, "whole_ham", Amount("rest")),
        Choice(2, 1, "whole_ham", Amount("rest"), finishes=("cured_smoked",)),
    ]
    again = planned_again(asked, PORK, 1, earlier)
    assert [(one.how, one.now) for one in again] == [("there", None), ("nothing_left", None)]


def test_a_cut_the_shop_no_longer_knows_is_left_out() -> None:
    (again,) = planned_again(HALF, PORK, 1, [Choice(1, 1, "spider_steak", Amount("all"))])
    assert (again.now, again.how) == (None, "unknown_cut")


def test_what_is_brought_stands_together() -> None:
    earlier = [
        Choice(1, 1, "whole_ham", Amount("pieces", 2)),
        Choice(2, 1, "centre_chop", Amount("slices", 40)),
        Choice(3, 1, "spareribs", Amount("rest")),
        Choice(4, 1, "ground_pork", Amount("rest")),
    ]
    again = planned_again(HALF, PORK, 1, earlier)
    kept = tuple(one.now for one in again if one.now)
    assert len(kept) == 4
    assert plan(replace(HALF, choices=kept), PORK).conflicts == ()
