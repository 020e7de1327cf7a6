"""A share led by another: its holdings count with the leader's, its packages are dealt in turn.

The quarter buyers' rule of extension pages: one order, packages divided evenly. By hand.
"""

from dataclasses import replace
from fractions import Fraction

import pytest

from shared.carcass.carcass import Holding, Share
from shared.cutting.divided import packages_dealt
from shared.cutting.order import Amount, Question
from shared.cutting.plan import plan
from tests.shared.cutting.tiny_lot import catalogue, choice, pounds, shared

HALF = Holding(0, 1, "", Fraction(1, 2))


def share(number: int, *held: Holding, leader: int | None = None) -> Share:
    return Share(number, f"Owner {number}", held, leader)


@pytest.mark.parametrize(
    ("packages", "each"),
    [(7, {1: 4, 2: 3}), (8, {1: 4, 2: 4}), (1, {1: 1, 2: 0}), (0, {1: 0, 2: 0})],
)
def test_packages_are_dealt_in_turn(packages: int, each: dict[int, int]) -> None:
    assert packages_dealt(packages, 2, [share(2, HALF), share(1, HALF, leader=2)]) == each


def test_by_what_each_holds_and_only_the_led() -> None:
    shares = [
        share(1, Holding(0, 1)),
        share(2, Holding(0, 2, "fore"), leader=1),
        share(3, Holding(0, 2, "hind"), leader=1),
        share(4, Holding(1, 1)),
    ]
    assert packages_dealt(5, 1, shares) == {1: 3, 2: 1, 3: 1}
    assert packages_dealt(5, 4, shares) == {4: 5}


def led(*lines: int) -> Question:
    """Two owners of a side, the second cut as the first says; chops of these owners."""
    chops = [choice(n, "chops", "slices", 10, share=owner) for n, owner in enumerate(lines, 1)]
    question = shared(*chops, holdings=((HALF,), (HALF,)))
    first, second = question.shares
    return replace(question, shares=(first, replace(second, leader=1)))


def test_the_leader_orders_for_the_whole_side() -> None:
    question = led(1)
    assert plan(question, catalogue()).verdict == "sure"
    all_of_it = replace(question, choices=(choice(1, "chops", "slices", 35),))
    assert plan(all_of_it, catalogue()).verdict == "sure"
    ground = choice(1, "ground", amount=Amount("pounds", weight=pounds(9)))
    assert plan(replace(question, choices=(ground,)), catalogue()).verdict == "sure"


def test_a_line_of_the_led_share_is_sent_to_the_leader() -> None:
    found = plan(led(1, 2), catalogue())
    assert [(one.kind, one.lines) for one in found.conflicts] == [("led", (2,))]
    assert {one.line for one in found.lines} == {1}
