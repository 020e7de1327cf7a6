"""Whether rows can be met at all: the witness meets every row, also where rows are alike."""

import random

from shared.cutting.judge import Judge, Left
from tests.shared.cutting.test_search import plain


def test_rows_that_are_alike_get_their_own_units() -> None:
    # 2 + 3 pieces of 4 on sides of 11 and 12: two and three, the first row from the first side.
    given = plain([11, 12], [(2, 4), (3, 4)])
    rows = (Left(0, 2, 0), Left(1, 3, 0))
    assert Judge(given).meet(given.empty(), rows) == {0: (2, 0), 1: (0, 3)}


def test_a_witness_can_be_laid_as_it_stands() -> None:
    draw, met = random.Random(5), 0
    for _ in range(200):
        lengths = [draw.randint(6, 14) for _ in range(3)]
        given = plain(lengths, [(draw.randint(1, 3), draw.choice([2, 3, 4])) for _ in range(5)])
        rows = tuple(Left(number, need, 0) for number, (need, _) in enumerate(given.rows))
        witness = Judge(given).meet(given.empty(), rows)
        if witness is None:
            continue
        met += 1
        units = tuple(witness[number] for number in range(len(given.rows)))
        assert [sum(made) for made in units] == [need for need, _ in given.rows]
        assert given.layouts(units) is not None
    assert 40 < met < 160
