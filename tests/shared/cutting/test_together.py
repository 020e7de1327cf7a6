"""Sums over sides and cells: what they refuse can't be met, and they refuse what no room does."""

import random
from itertools import product

from shared.cutting.judge import Left
from shared.cutting.problem import Part, Problem
from shared.cutting.run_packing import Piece
from shared.cutting.strip import Strip
from shared.cutting.together import Sums, takes_of
from tests.shared.cutting.test_search import plain


def lefts(given: Problem) -> tuple[Left, ...]:
    return tuple(Left(number, need, 0) for number, (need, _) in enumerate(given.rows))


def overfull(given: Problem) -> bool:
    return Sums(given).overfull(given.empty(), lefts(given))


def test_the_worked_number() -> None:
    # 5 of 1 in and 4 of 2 in take 13 of the 12 in of two sides.
    assert overfull(plain([6, 6], [(5, 1), (4, 2)]))
    assert not overfull(plain([6, 6], [(4, 1), (4, 2)]))


def test_what_lies_there_already_counts() -> None:
    given = plain([6, 6], [(3, 1), (3, 2)])
    state = given.added(given.empty(), given.rows[1][1][0], 2)
    assert not Sums(given).overfull(given.empty(), lefts(given))
    assert Sums(given).overfull(state, lefts(given))
    assert not Sums(given).overfull(state, (Left(0, 3, 0), Left(1, 2, 0)))


def test_units_with_room_elsewhere_take_nothing() -> None:
    # 5 units, with room for 3 that take nothing, and others that take 2 in each: 4 in of 3 in.
    strip = Strip([Piece(1, ((0, 3),), 2, 0), Piece(1, ((0, 3),), 1, 0)])
    rows = [
        (5, (Part(((0, 0),), (), -1), Part((), ((0, 1),), -1))),
        (1, (Part(((0, 1),), (), -1),)),
    ]
    given = Problem([strip], [(0, 1, 0)], [3], rows)
    asked = (Left(0, 5, 0), Left(1, 1, 0))
    assert Sums(given).overfull(given.empty(), asked, [(5, 3), (1,)])
    assert not Sums(given).overfull(given.empty(), asked, [(5, 4), (1,)])


def test_cells_are_added_up_too() -> None:
    # 24 pieces of a sixth of four parts and 28 more: 312 of 240 sixtieths, though each has room.
    parts = tuple(Part((), ((cell, 6),), -1) for cell in range(4))
    given = Problem([], [], [60] * 4, [(24, parts), (28, parts)])
    assert all(sum(given.room(part, given.empty(), need) for part in parts) >= need
               for need, _ in given.rows)  # fmt: skip
    assert overfull(given)
    assert not overfull(Problem([], [], [60] * 4, [(12, parts), (28, parts)]))


def test_what_may_lie_partly_outside_takes_the_least_it_can() -> None:
    kinds = [Piece(1, ((0, 8),), 5, 0), Piece(1, ((4, 8),), 1, 1), Piece(2, ((4, 8),), 1, 1)]
    assert takes_of(kinds, 1, (4, 8)) == ([1, 2, 0], 1)
    assert takes_of(kinds, 1, (0, 8)) == ([5, 2, 0], 1)


def test_a_piece_that_crosses_the_window_takes_room_there() -> None:
    # 5 in between 0 and 8 leaves at most 3 of the 4 in between 4 and 8, on each of two sides.
    kinds = [Piece(1, ((0, 8),), 5, 0), Piece(1, ((4, 8),), 1, 0)]
    strips = [Strip(kinds), Strip(kinds)]
    rows = [(need, (Part(((0, kind),), (), -1), Part(((1, kind),), (), -1)))
            for kind, need in ((0, 2), (1, 7))]  # fmt: skip
    given = Problem(strips, [(0, 1, 0), (0, 2, 0)], [], rows)
    assert overfull(given)
    fewer = Problem(strips, [(0, 1, 0), (0, 2, 0)], [], [rows[0], (6, rows[1][1])])
    assert not overfull(fewer)


def test_what_it_refuses_cannot_be_met() -> None:
    draw, refused, met = random.Random(11), 0, 0
    for _ in range(400):
        given = _crossed(draw)
        state, rows = given.empty(), lefts(given)
        rooms = [[given.room(part, state, need) for part in parts] for need, parts in given.rows]
        can = any(given.layouts(units) is not None for units in product(*map(_spreads, given.rows)))
        met += can
        for known in (None, rooms):
            if Sums(given).overfull(state, rows, known):
                refused += 1
                assert not can, given.rows
    assert refused > 60
    assert met > 60


def _crossed(draw: random.Random) -> Problem:
    """Two or three sides with kinds that share some lanes, windows and kerfs, two or three rows."""
    kinds: list[Piece] = []
    for _ in range(draw.randint(2, 3)):
        lo = draw.randint(0, 5)
        size = draw.randint(1, 4)
        window = (lo, draw.randint(lo + size, 11))
        kinds.append(Piece(draw.randint(1, 3), (window,), size, draw.choice([0, 0, 1])))
    sides = draw.randint(2, 3)
    rows = [
        (draw.randint(1, 4), tuple(Part(((side, kind),), (), -1) for side in range(sides)))
        for kind in range(len(kinds))
    ]
    where = [(0, side + 1, 0) for side in range(sides)]
    return Problem([Strip(kinds) for _ in range(sides)], where, [], rows)


def _spreads(row: tuple[int, tuple[Part, ...]]) -> list[tuple[int, ...]]:
    need, parts = row
    return [it for it in product(range(need + 1), repeat=len(parts)) if sum(it) == need]
