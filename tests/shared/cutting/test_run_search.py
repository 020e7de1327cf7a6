"""The search over orders on a run, by itself."""

import random

from shared.cutting.run_search import Free, lies, mirrored, search


def test_a_gap_is_filled_that_no_simple_order_fills() -> None:
    # The wide piece must come between the two that are bound to their ends.
    head = Free(1, ((0, 4),), 4, 0, 0, 1)
    tail = Free(1, ((7, 12),), 5, 0, 1, 1)
    wide = Free(1, ((0, 12),), 3, 0, 2, 1)
    assert search([head, tail, wide]) == [(0, 0), (2, 4), (1, 7)]
    assert search([head, tail, wide._replace(size=4)]) is None


def test_two_bins_of_odd_sizes() -> None:
    # 10 and 10 are left on either side of a missing stretch; 6 + 4 and 7 + 3 fill both.
    bins = ((0, 10), (20, 30))
    kinds = [Free(1, bins, size, 0, kind, 1) for kind, size in enumerate((6, 4, 7, 3))]
    assert search(kinds) is not None
    kinds[3] = kinds[3]._replace(size=4)
    assert search(kinds) is None


def test_hundreds_of_slices_need_no_deep_recursion() -> None:
    thin = Free(1, ((0, 2000),), 1, 1, 0, 600)
    other = Free(1, ((0, 2000),), 2, 1, 1, 260)
    found = search([thin, other])
    assert found is not None
    assert len(found) == 860


def test_from_either_end_it_is_the_same() -> None:
    draw, seen = random.Random(2), {True: 0, False: 0}
    for _ in range(400):
        free = [_free(draw, kind) for kind in range(draw.randint(2, 5))]
        can = search(free) is not None
        assert lies(free) is can
        assert lies(mirrored(free)) is can
        seen[can] += 1
    assert min(seen.values()) > 60


def test_the_worked_numbers() -> None:
    # 4 in at the head of 12 in and 5 in at its tail leave room for one of 3 in, not for two.
    ends = [Free(1, ((0, 4),), 4, 0, 0, 1), Free(1, ((7, 12),), 5, 0, 1, 1)]
    assert lies([*ends, Free(1, ((0, 12),), 3, 0, 2, 1)])
    assert not lies([*ends, Free(1, ((0, 12),), 3, 0, 2, 2)])
    assert mirrored([Free(1, ((2, 12),), 3, 1, 0, 1)])[0].allowed == ((0, 10),)


def _free(draw: random.Random, kind: int) -> Free:
    lo, size = draw.randint(0, 6), draw.randint(1, 5)
    allowed = ((lo, lo + size + draw.randint(0, 10)),)
    return Free(draw.randint(1, 7), allowed, size, draw.choice([0, 0, 1]), kind, draw.randint(1, 3))
