"""Seasoning by the bag: what a batch needs, who may share it, and what can't be made.

"Custom-exempt hog, everything kept, 18 lb of trim, one 25-lb batch: can't; two such hogs of one
owner: fits" is the trade's; the pounds here are worked by hand.
"""

from dataclasses import replace

import pytest

from shared.carcass.carcass import Carcass, Holding, Share
from shared.carcass.catalogue import Batch, Catalogue
from shared.cutting.answer import Answer
from shared.cutting.batches import batch_of
from shared.cutting.order import Amount, Choice, Question
from shared.cutting.plan import Planner, plan
from shared.cutting.remedy import remedies
from shared.units import NG_PER_LB
from tests.shared.cutting.tiny_lot import carcass, catalogue, choice, pounds

BAG = Batch(pounds(25), pounds(25), "invented")


def sausages(least: Batch = BAG) -> Catalogue:
    """The invented species with stew and ground made by the bag."""
    plain = catalogue()
    cuts = dict(plain.cuts)
    for code in ("ground", "stew"):
        cuts[code] = replace(cuts[code], batch=least)
    return replace(plain, cuts=cuts)


SAUSAGES = sausages()


def some(line: int, count: int, share: int = 1, cut: str = "ground", seasoning: str = "") -> Choice:
    amount = Amount("pounds", weight=pounds(count))
    return choice(line, cut, share=share, amount=amount, seasoning=seasoning)


def ham(line: int, share: int = 1) -> Choice:
    """24 lb of ham a side into the trim: with the loose trim 24.8 lb of lean, 6.8 lb of fat."""
    return choice(line, "grind_ham", share=share)


def lot(*choices: Choice, owners: int = 1, regime: str = "custom", animals: int = 1) -> Question:
    """One owner of whole animals, or owners of a side each of one."""
    hogs: tuple[Carcass, ...] = (carcass(regime=regime, species="pork"),) * animals
    sides = [Holding(one, side) for one in range(animals) for side in (1, 2)]
    held = [tuple(sides)] if owners == 1 else [(side,) for side in sides[:owners]]
    shares = tuple(Share(n, f"Owner {n}", one) for n, one in enumerate(held, start=1))
    return Question(hogs, shares, choices)


def answer(question: Question) -> Answer:
    found = plan(question, SAUSAGES)
    assert Planner(SAUSAGES).verdict(question) == found.verdict
    return found


def told(found: Answer) -> list[tuple[str, int, int, int, int]]:
    figures = [(it, it.asked, it.expected, it.most) for it in found.cautions]
    return [
        (it.code, it.line, *(int(figure / NG_PER_LB) for figure in rest))
        for it, *rest in figures
        if it.code == "batch_small"
    ]  # type: ignore[misc]


@pytest.mark.parametrize(
    ("asked", "least", "bag", "whole"),
    [(18, 25, 25, 25), (25, 25, 25, 25), (30, 25, 25, 50), (30, 50, 25, 50), (51, 50, 25, 75)],
)
def test_a_batch_is_a_multiple_of_a_bag(asked: int, least: int, bag: int, whole: int) -> None:
    batch = Batch(pounds(least), pounds(bag), "invented")
    assert batch_of(asked * NG_PER_LB, batch) == whole * NG_PER_LB


def test_an_inspected_hogs_small_batch_is_told_with_what_it_needs() -> None:
    found = answer(lot(ham(1), some(2, 10), regime="inspected"))
    assert (found.verdict, told(found)) == ("sure", [("batch_small", 2, 10, 25, 15)])


def test_a_custom_hogs_small_batch_cant_be_made() -> None:
    question = lot(ham(1), some(2, 18))
    found = answer(question)
    assert found.verdict == "cant"
    assert [(one.kind, one.lines) for one in found.conflicts] == [("batch", (2,))]
    assert dict(found.group_verdicts)[2] == "cant"
    (ways,) = remedies(question, found, SAUSAGES)
    assert ways[0].kind == "whole_batch"
    assert ways[0].edits[0].choice == some(2, 25)


def test_over_the_least_what_the_next_bag_needs_is_only_told() -> None:
    found = answer(lot(ham(1), some(2, 30)))
    assert (found.verdict, told(found)) == ("sure", [("batch_small", 2, 30, 50, 20)])


def test_an_order_covers_every_animal_of_its_owner() -> None:
    """20 lb of loose trim from one hog, 40 from two: a batch of 25 lb."""
    assert answer(lot(some(1, 25))).conflicts[0].kind == "trim"
    assert answer(lot(some(1, 25), animals=2)).verdict == "sure"


def test_co_owners_of_one_animal_share_a_batch_and_lines_seasoned_alike_are_one() -> None:
    mine, theirs = some(3, 13), some(4, 12, share=2)
    assert answer(lot(ham(1), ham(2, 2), mine, theirs, owners=2)).verdict == "sure"
    apart = [some(3, 13), some(4, 12, cut="stew")]
    assert answer(lot(ham(1), *apart)).verdict == "cant"
    alike = [replace(one, seasoning="sage") for one in apart]
    assert answer(lot(ham(1), *alike)).verdict == "sure"
    unlike = [apart[0], replace(apart[1], seasoning="sage")]
    assert len(answer(lot(ham(1), *unlike)).conflicts) == 2


def test_what_takes_the_rest_is_never_refused() -> None:
    found = answer(lot(choice(1, "ground", "rest")))
    assert (found.verdict, told(found)) == ("sure", [("batch_small", 1, 20, 25, 5)])
