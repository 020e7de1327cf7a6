"""The steps of animals and orders, walked by hand from the shop's own list of states."""

import itertools
from fractions import Fraction

import pytest

from shared.cutting.answer import Answer, OpenPart, Verdict, Where
from shared.shop.problems import MoveRefused
from shared.shop.states import (
    ANIMAL_MOVES,
    ANIMAL_STATES,
    ORDER_MOVES,
    ORDER_STATES,
    AnimalState,
    Move,
    OrderState,
    ReleaseRefusal,
    animal_move,
    animal_moves,
    close_refusals,
    order_move,
    order_moves,
    release_refusals,
)


def test_a_custom_animal_from_the_pen_to_the_block() -> None:
    walk: tuple[AnimalState, ...] = (
        "booked", "arrived", "weighed", "passed", "hanging", "on_block", "cut",
    )  # fmt: skip
    for start, end in itertools.pairwise(walk):
        assert isinstance(animal_move(start, end, ""), Move), (start, end)


def test_an_order_from_open_to_handed_over() -> None:
    for start, end in itertools.pairwise(ORDER_STATES):
        assert isinstance(order_move(start, end, ""), Move), (start, end)


def test_no_step_is_skipped() -> None:
    for place, start in enumerate(ORDER_STATES):
        for end in ORDER_STATES[place + 2 :]:
            assert order_move(start, end, "in a hurry") == MoveRefused("no_such_move", start, end)
    assert isinstance(animal_move("booked", "weighed", "x"), MoveRefused)
    assert isinstance(animal_move("weighed", "hanging", "x"), MoveRefused)
    assert isinstance(animal_move("hanging", "cut", "x"), MoveRefused)


def test_every_step_back_needs_a_reason() -> None:
    forward = {state: place for place, state in enumerate(ORDER_STATES)}
    for move in ORDER_MOVES:
        goes_back = forward[move.end] < forward[move.start]
        assert move.back == goes_back
        assert move.needs_reason == goes_back
    for move in ANIMAL_MOVES:
        if move.back:
            assert move.needs_reason
    assert order_move("settled", "open", " ") == MoveRefused("reason_missing", "settled", "open")
    assert isinstance(order_move("settled", "open", "he rang again"), Move)


def test_every_state_can_be_left_but_the_last_and_can_be_gone_back_from() -> None:
    for state in ORDER_STATES:
        assert any(not one.back for one in order_moves(state)) == (state != "handed_over")
        assert any(one.back for one in order_moves(state)) == (state != "open")
    starts = {one.start for one in ANIMAL_MOVES}
    assert starts == set(ANIMAL_STATES)


def test_holding_and_condemning_are_the_inspectors() -> None:
    """A custom-exempt animal has no inspector (9 CFR 303.1): accepted, or refused at the pen."""
    custom = {one.end for state in ANIMAL_STATES for one in animal_moves(state, "custom")}
    inspected = {one.end for state in ANIMAL_STATES for one in animal_moves(state, "inspected")}
    assert {"held", "condemned"} & custom == set()
    assert "refused" in custom
    assert "refused" not in inspected
    assert {"held", "condemned"} <= inspected


def test_a_held_carcass_goes_nowhere_until_it_is_released() -> None:
    ends = {one.end for one in animal_moves("held", "inspected")}
    assert ends == {"passed", "weighed", "condemned"}


def test_each_place_moves_its_own() -> None:
    by = {(one.start, one.end): one.place for one in (*ANIMAL_MOVES, *ORDER_MOVES)}
    assert by["passed", "hanging"] == "rail"
    assert by["hanging", "on_block"] == by["on_block", "cut"] == "block"
    assert by["settled", "released"] == by["ready", "handed_over"] == "counter"
    assert by["released", "cut"] == "block"
    assert by["cut", "ready"] == "wrap"


def answer(verdict: Verdict, *open_parts: OpenPart) -> Answer:
    return Answer(verdict, (), (), open_parts)


@pytest.mark.parametrize("verdict", ["sure", "likely", "tight"])
def test_an_order_that_stands_whole_is_released(verdict: Verdict) -> None:
    assert release_refusals(answer(verdict), 1) == ()


@pytest.mark.parametrize("verdict", ["asks", "cant"])
def test_what_asks_or_cannot_be_is_not_released(verdict: Verdict) -> None:
    (refusal,) = release_refusals(answer(verdict), 1)
    assert refusal == ReleaseRefusal(refusal.code)
    assert refusal.code == verdict


def test_an_open_part_of_ones_own_stops_release() -> None:
    mine = OpenPart(1, 0, 2, "belly", Fraction(1))
    theirs = OpenPart(2, 0, 1, "belly", Fraction(1))
    found = release_refusals(answer("sure", mine, theirs), 1)
    assert found == (ReleaseRefusal("open_part", Where(0, 2, part="belly")),)
    assert release_refusals(answer("sure", theirs), 1) == ()


@pytest.mark.parametrize(
    ("state", "billed", "due", "codes"),
    [
        ("handed_over", True, 0, ()),
        ("ready", True, 0, ("not_handed_over",)),
        ("handed_over", False, -5000, ("not_billed", "balance")),
        ("handed_over", True, 1, ("balance",)),
        ("open", False, 0, ("not_handed_over", "not_billed")),
    ],
)
def test_when_an_order_closes(
    state: OrderState, billed: bool, due: int, codes: tuple[str, ...]
) -> None:
    assert close_refusals(state, billed, due) == codes
