"""How full bins can be made: waste is left out of what they hold."""

import random
from itertools import product

from shared.cutting.fills import LONG, Bin, Fills

THREE = [Bin(place, {0: (3,)}, {}) for place in range(3)]


def test_the_worked_number() -> None:
    # 7 pieces of 3 in take 21 in; three bins of 8 in hold 6 in each.
    assert Fills(THREE, {0}, {0: 3}).too_little([8, 8, 8], [(0, 7)])
    assert not Fills(THREE, {0}, {0: 3}).too_little([8, 8, 8], [(0, 6)])
    assert not Fills(THREE, {0}, {0: 3}).too_little([9, 8, 9], [(0, 7)])


def test_what_all_must_take_of_a_bin_is_there_for_them() -> None:
    only = [Bin(0, {0: (3,)}, {0: 3})]
    assert not Fills(only, {0}, {0: 3}).too_little([0], [(0, 2)])


def test_rows_that_may_lie_elsewhere_need_no_bin() -> None:
    assert not Fills(THREE, set(), {}).too_little([8, 8, 8], [(0, 7)])


def test_no_more_units_than_fit_are_counted_on_cells_too() -> None:
    # Pieces of 3 in, or a third of a part: one bin of 8 in and one part hold 2 and 3.
    bins = [Bin(0, {0: (3,)}, {}), Bin(1, {0: (20,)}, {}, is_cell=True)]
    assert Fills(bins, {0}, {}).too_little([8, 60], [(0, 6)])
    assert not Fills(bins, {0}, {}).too_little([8, 60], [(0, 5)])
    # Of two rows the smaller pieces count: 4 in bins of 8 in hold no more than pieces of 3 in.
    both = [Bin(place, {0: (3,), 1: (4,)}, {}) for place in range(2)]
    assert Fills(both, {0, 1}, {}).too_little([8, 8], [(0, 2), (1, 3)])
    assert not Fills(both, {0, 1}, {}).too_little([8, 8], [(0, 2), (1, 2)])


def test_many_sizes_fill_all() -> None:
    # 3 to 7 in are thought to fill 2 in too; 4, 5 and 6 in leave them empty.
    for sizes, told in (((3, 4, 5, 6, 7), False), ((4, 5, 6), True)):
        rows = dict(enumerate(sizes))
        bins = [Bin(at, {row: (size,) for row, size in rows.items()}, {}) for at in range(2)]
        asked = [(row, 1) for row in rows]
        assert Fills(bins, {*rows}, rows).too_little([sum(sizes) - 7, 7], asked) is told


def test_they_tell_nothing_any_more_where_they_long_have_not() -> None:
    fills = Fills(THREE, {0}, {0: 3})
    for _ in range(LONG):
        assert fills.tell
        assert not fills.too_little([8, 8, 8], [(0, 6)])
    assert not fills.tell


def test_what_is_refused_fits_in_no_way() -> None:
    draw, refused, packed = random.Random(6), 0, 0
    for _ in range(400):
        left = [draw.randint(4, 12) for _ in range(draw.randint(2, 3))]
        sizes = draw.sample([2, 3, 4, 5, 7], 2)
        asked = [(row, draw.randint(1, 4)) for row in range(2)]
        bins = [Bin(at, {row: (size,) for row, size in enumerate(sizes)}, {})
                for at in range(len(left))]  # fmt: skip
        can = any(
            sum(a for a, _ in made) == asked[0][1] and sum(b for _, b in made) == asked[1][1]
            for made in product(*[_ways(there, sizes, asked) for there in left])
        )
        packed += can
        if Fills(bins, {0, 1}, dict(enumerate(sizes))).too_little(left, asked):
            refused += 1
            assert not can
    assert refused > 100
    assert packed > 60


def _ways(there: int, sizes: list[int], asked: list[tuple[int, int]]) -> list[tuple[int, int]]:
    return [
        (a, b)
        for a in range(asked[0][1] + 1)
        for b in range(asked[1][1] + 1)
        if a * sizes[0] + b * sizes[1] <= there
    ]
