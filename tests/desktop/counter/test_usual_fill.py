"""The house's usual closes an order of every species without a conflict."""

from dataclasses import replace

import pytest

from desktop.counter.share_presets import holdings_of
from desktop.counter.usual_fill import usual_choices
from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass, Share
from shared.cutting.order import Amount, Choice, Question
from shared.cutting.plan import Planner


@pytest.mark.parametrize("species", ["pork", "beef", "lamb", "goat"])
def test_nothing_stays_open(species: str) -> None:
    known, planner = catalogue(species), Planner(catalogue(species))
    held = holdings_of("halves", 1)
    shares = (Share(1, "Anna", held[0]), Share(2, "Bert", held[1]))
    question = Question((Carcass(species),), shares, ())
    answer = planner.answer(question)
    found = usual_choices(question, answer, planner, known, 1)
    lines = tuple(replace(one, line=at) for at, one in enumerate(found, start=1))
    then = planner.answer(replace(question, choices=lines))
    assert then.conflicts == ()
    assert [part for part in then.open_parts if part.share == 1] == []
    assert {part.share for part in then.open_parts} == {2}, "the other owner's is left alone"


def test_trim_that_is_promised_is_not_ground_again() -> None:
    known, planner = catalogue("pork"), Planner(catalogue("pork"))
    shares = (Share(1, "Anna", holdings_of("whole", 1)[0]),)
    sausage = Choice(1, 1, "bulk_sausage", Amount("rest"))
    question = Question((Carcass("pork"),), shares, (sausage,))
    found = usual_choices(question, planner.answer(question), planner, known, 1)
    assert found != ()
    assert "ground_pork" not in {one.cut for one in found}


def test_a_tenderloin_left_by_strip_steaks_is_not_ground() -> None:
    """F9 after New York strips: the short loin's tenderloin, 4.2 lb a side, went to the grinder.

    Filets are what a house cuts of it (common practice, no source).
    """
    known, planner = catalogue("beef"), Planner(catalogue("beef"))
    shares = (Share(1, "Anna", holdings_of("whole", 1)[0]),)
    strips = Choice(1, 1, "strip_steak", Amount("all"))
    question = Question((Carcass("beef", age="30_and_over"),), shares, (strips,))
    found = usual_choices(question, planner.answer(question), planner, known, 1)
    assert "filet" in {one.cut for one in found}
    lines = tuple(replace(one, line=at) for at, one in enumerate(found, start=2))
    then = planner.answer(replace(question, choices=(strips, *lines)))
    tender = {"tenderloin_t_bone", "tenderloin_porterhouse"}
    taken = {one.cut for one in then.lines if tender & {each.part for each in one.taken}}
    assert taken == {"filet"}
    assert then.conflicts == ()
    assert then.open_parts == ()


def test_what_is_contested_is_left_to_its_ways_out() -> None:
    """Six saddle chops are two too many; with the usual "all" as loin chops only none would do."""
    known, planner = catalogue("lamb"), Planner(catalogue("lamb"))
    shares = (Share(1, "Anna", holdings_of("whole", 1)[0]),)
    saddle = Choice(1, 1, "saddle_chop", Amount("slices", 6))
    question = Question((Carcass("lamb"),), shares, (saddle,))
    found = usual_choices(question, planner.answer(question), planner, known, 1)
    assert "leg_shank_off" in {one.cut for one in found}
    assert Amount("all") not in {one.amount for one in found if one.cut == "loin_chop"}
    four = replace(saddle, amount=Amount("slices", 4))
    lines = tuple(replace(one, line=at) for at, one in enumerate(found, start=2))
    assert planner.answer(replace(question, choices=(four, *lines))).conflicts == ()


def test_a_beef_over_age_has_the_cuts_next_to_the_usual_that_its_age_leaves() -> None:
    """9 CFR 310.22 takes the backbone; rib and loin went to the grinder with it."""
    known, planner = catalogue("beef"), Planner(catalogue("beef"))
    shares = (Share(1, "Anna", holdings_of("whole", 1)[0]),)
    question = Question((Carcass("beef", age="30_and_over"),), shares, ())
    found = usual_choices(question, planner.answer(question), planner, known, 1)
    cuts = {one.cut for one in found}
    assert {"rib_steak_chine_off", "strip_steak", "filet", "sirloin_steak_backbone_off"} <= cuts
    lines = tuple(replace(one, line=at) for at, one in enumerate(found, start=1))
    then = planner.answer(replace(question, choices=lines))
    assert then.conflicts == ()
    assert then.open_parts == ()
