"""Which side gives what: the first assignment in order, also where it is hard to find."""

import random
from itertools import product

from shared.cutting.judge import Judge, Left
from shared.cutting.problem import Part, Problem, Units
from shared.cutting.run_packing import Piece
from shared.cutting.search import beside, met, possible, solve
from shared.cutting.strip import Strip

Case = tuple[Problem, list[list[int]]]


def plain(lengths: list[int], rows: list[tuple[int, int]]) -> Problem:
    """Strips of some lengths; rows of (need, size) that may be made on any of them."""
    sizes = sorted({size for _, size in rows})
    packings = [Strip([Piece(1, ((0, length),), size, 0) for size in sizes]) for length in lengths]
    parts = [
        tuple(Part(((place, sizes.index(size)),), (), -1) for place in range(len(lengths)))
        for _, size in rows
    ]
    numbered = [(need, part) for (need, _), part in zip(rows, parts, strict=True)]
    return Problem(packings, [(0, place + 1, 0) for place in range(len(lengths))], [], numbered)


def test_the_first_row_has_most_on_its_first_option() -> None:
    assert solve(plain([10, 10], [(3, 4), (1, 5)])) == ((2, 1), (0, 1))
    assert solve(plain([10, 10], [(3, 4), (2, 5)])) is None


def test_rows_that_are_not_asked_have_no_units() -> None:
    given = plain([10, 10], [(3, 4), (2, 5)])
    assert solve(given, [1]) == ((0, 0), (2, 0))
    assert possible(given, [0])
    assert not possible(given, [0, 1])


def test_the_judge_and_the_dive_agree_with_trying_everything() -> None:
    draw = random.Random(3)
    seen = {True: 0, False: 0}
    for _ in range(250):
        given, spreads = _small(draw)
        first = _first_of_all(given, spreads)
        assert solve(given) == first
        rows = tuple(Left(number, need, 0) for number, (need, _) in enumerate(given.rows))
        witness = Judge(given).meet(given.empty(), rows)
        assert (witness is not None) is (first is not None)
        assert possible(given, range(len(given.rows))) is (first is not None)
        seen[first is not None] += 1
    assert min(seen.values()) > 40


def test_many_lines_that_no_sum_refuses() -> None:
    # Nine pieces of 4 on three sides of 11: two a side, whatever the sums say (36 of 33 + slack).
    given = plain([11, 11, 11], [(1, 4)] * 7 + [(1, 1)] * 5)
    assert solve(given) is None
    assert not possible(given, range(12))
    assert solve(plain([11, 11, 11], [(1, 4)] * 6 + [(1, 1)] * 9)) is not None


def _small(draw: random.Random) -> tuple[Problem, list[list[tuple[int, ...]]]]:
    lengths = [draw.randint(4, 12) for _ in range(draw.randint(2, 3))]
    rows = [(draw.randint(1, 3), draw.randint(1, 5)) for _ in range(draw.randint(2, 4))]
    spreads = [
        [made for made in product(range(need, -1, -1), repeat=len(lengths)) if sum(made) == need]
        for need, _ in rows
    ]
    return plain(lengths, rows), spreads


def _first_of_all(given: Problem, spreads: list[list[tuple[int, ...]]]) -> Units | None:
    for units in product(*spreads):
        if given.layouts(units) is not None:
            return units
    return None


def test_rows_laid_beside_what_lies_there_take_their_first_options_with_room() -> None:
    given = plain([10, 10], [(1, 4), (3, 4)])
    state = given.added(given.empty(), given.rows[0][1][0], 1)
    found = beside(given, state, [1])
    assert found is not None
    assert found[0] == {1: (1, 2)}
    assert found[1] == given.lying({0: (1, 0), 1: (1, 2)})
    assert beside(plain([10, 10], [(1, 4), (4, 4)]), state, [1]) is None


def test_a_witness_tells_rows_without_a_choice_too() -> None:
    given = plain([10, 10], [(2, 4), (1, 4)])
    given.rows[0] = 2, given.rows[0][1][:1]
    assert met(given, [0, 1]) == {0: (2,), 1: (0, 1)}
    assert met(given, [0]) == {0: (2,)}
    given.rows[0] = 3, given.rows[0][1]
    assert met(given, [0]) is None


def test_pieces_of_one_unit_on_one_strip_are_tried_together() -> None:
    # A unit of 3 in and 4 in: 10 in hold two of either, but one of both.
    strip = Strip([Piece(1, ((0, 10),), 3, 0), Piece(1, ((0, 10),), 4, 0)])
    both = Part(((0, 0), (0, 1)), (), -1)
    given = Problem([strip, strip], [(0, 1, 0), (0, 2, 0)], [], [(2, (both,))])
    assert given.room(both, given.empty(), 2) == 1
    assert given.room(Part(((0, 0), (1, 1)), (), -1), given.empty(), 2) == 2
