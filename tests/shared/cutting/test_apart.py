"""Rows met place by place: the same as every way of spreading them, tried one by one."""

import random
from itertools import product

import pytest

from shared.cutting.apart import met_apart
from shared.cutting.judge import Left
from shared.cutting.problem import Problem
from tests.shared.cutting.test_search import plain

ENOUGH = 100_000


def lefts(given: Problem) -> tuple[Left, ...]:
    return tuple(Left(number, need, 0) for number, (need, _) in enumerate(given.rows))


def tried(lengths: list[int], rows: list[tuple[int, int]]) -> bool:
    """Whether pieces (how many, how long) lie on sides of so much, by trying every spread."""
    spreads = [
        [one for one in product(range(need + 1), repeat=len(lengths)) if sum(one) == need]
        for need, _ in rows
    ]
    return any(
        all(
            sum(made[side] * long for made, (_, long) in zip(one, rows, strict=True)) <= length
            for side, length in enumerate(lengths)
        )
        for one in product(*spreads)
    )


def test_the_worked_number() -> None:
    # Two sides of 8: 4 roasts of 2 each, or 3 beside a chop of 2, or 2 beside 2.
    for need, there in ((5, False), (4, True)):
        given = plain([8, 8], [(need, 2), (4, 2)])
        found = met_apart(given, given.empty(), lefts(given), ENOUGH)
        assert (found.known, found.witness is not None) == (True, there)


def test_it_says_what_trying_every_spread_says() -> None:
    draw, met = random.Random(33), 0
    for _ in range(300):
        lengths = [draw.randint(5, 12) for _ in range(draw.randint(2, 3))]
        rows = [(draw.randint(1, 4), draw.choice([2, 3, 4, 5])) for _ in range(draw.randint(2, 3))]
        given = plain(lengths, rows)
        found = met_apart(given, given.empty(), lefts(given), ENOUGH)
        assert found.known
        assert (found.witness is not None) == tried(lengths, rows), (lengths, rows)
        if found.witness is not None:
            met += 1
            units = tuple(found.witness[number] for number in range(len(rows)))
            assert [sum(made) for made in units] == [need for need, _ in rows]
            assert given.layouts(units) is not None
    assert 60 < met < 240


def test_what_takes_too_many_steps_is_not_known() -> None:
    given = plain([40, 40, 40], [(9, 2), (9, 3), (9, 4)])
    assert not met_apart(given, given.empty(), lefts(given), 5).known
    assert met_apart(given, given.empty(), lefts(given), ENOUGH).known


@pytest.mark.parametrize("beside", [(), ((1, 2),)])
def test_two_rows_that_cannot_be_met_refuse_the_rest(beside: tuple[tuple[int, int], ...]) -> None:
    given = plain([8, 8], [(5, 2), (4, 2), *beside])
    found = met_apart(given, given.empty(), lefts(given), ENOUGH)
    assert found.known
    assert found.witness is None


def test_where_hardly_anything_is_to_spare_nothing_is_overlooked() -> None:
    # What is asked fills the sides to the last inch or two, or is one too long for them.
    draw, met = random.Random(44), 0
    for _ in range(200):
        rows = [(draw.randint(1, 4), long) for long in draw.sample([2, 3, 4, 5, 7], 3)]
        total = sum(need * long for need, long in rows)
        first = draw.randint(total // 3, total // 2)
        lengths = [first, total - first + draw.randint(-1, 2)]
        given = plain(lengths, rows)
        found = met_apart(given, given.empty(), lefts(given), ENOUGH)
        assert found.known
        assert (found.witness is not None) == tried(lengths, rows), (lengths, rows)
        met += found.witness is not None
    assert 50 < met < 150
