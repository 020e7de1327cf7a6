"""Pieces on one run: the counts everybody can reckon, and every small case tried out."""

import random
from itertools import permutations

import pytest

from shared.cutting.can_lie import can_lie
from shared.cutting.run_packing import Block, Piece, carve, lay, most_alone
from shared.cutting.run_search import Free
from shared.cutting.strip import Strip
from tests.shared.cutting.tiny_lot import SAW, inches

WHOLE = ((0, inches("30")),)


def slices(thickness: str, lanes: int = 1, allowed: tuple[tuple[int, int], ...] = WHOLE) -> Piece:
    return Piece(lanes, allowed, inches(thickness), SAW)


@pytest.mark.parametrize(("count", "fits"), [(37, True), (38, False)])
def test_thirty_inches_give_37_chops_with_the_saw(count: int, fits: bool) -> None:
    # 37 × (3/4 + 1/16) = 30 1/16 = 30 + one kerf, exactly; settled by arithmetic, no source.
    assert (lay([slices("3/4")], [count]) is not None) is fits
    assert Strip([slices("3/4")]).fits((count,)) is fits
    assert most_alone(slices("3/4")) == 37


def test_no_kerf_is_needed_after_the_last_piece() -> None:
    thick = Piece(1, ((0, inches("10")),), inches("5"), 0)
    assert lay([thick], [2]) is not None
    assert lay([thick._replace(kerf=1)], [2]) is None


def test_a_sawn_piece_before_a_block_leaves_its_kerf() -> None:
    block = Piece(1, ((inches("3"), inches("9")),), inches("6"), 0)
    before = Piece(1, ((0, inches("3")),), inches("1"), SAW)
    # 3 × (1 + 1/16) is more than 3 in, so the third slice has no room before the block.
    assert lay([block, before], [1, 2]) is not None
    assert lay([block, before], [1, 3]) is None


def test_a_slice_takes_the_same_inches_of_all_its_lanes() -> None:
    # Lane sums alone would pass it: 3 in of each lane are free, but never the same 3 in.
    left = Piece(1, ((0, 3),), 3, 0)
    right = Piece(2, ((3, 6),), 3, 0)
    both = Piece(3, ((0, 6),), 3, 0)
    assert lay([left, right], [1, 1]) is not None
    assert lay([left, right, both], [1, 1, 1]) is None


def test_anchored_pieces_lie_against_their_end() -> None:
    tail = Piece(1, ((0, 20),), 6, 1, 1)
    layout = lay([tail], [2])
    assert layout is not None
    assert [(one.start, one.end) for one in layout] == [(7, 20)]
    assert lay([tail, tail._replace(size=5)], [1, 1]) is None


def test_carving_leaves_what_is_beside_a_block() -> None:
    free = Free(1, ((0, 30),), 4, 1, 0, 1)
    assert carve(free, [Block(1, 10, 20, 2, 0, 1)]) == ((0, 9), (22, 30))
    assert carve(free, [Block(2, 10, 20, 2, 0, 1)]) == ((0, 30),)
    assert carve(free, [Block(1, 4, 27, 0, 0, 1)]) == ()


def test_room_beside_what_lies_there() -> None:
    strip = Strip([slices("3/4"), slices("1")])
    assert strip.room((0, 0), 0, 99) == 37
    assert strip.room((20, 0), 1, 99) == 13
    crossed = Strip([slices("3/4"), Piece(1, ((0, inches("7")),), inches("1"), 0)])
    assert crossed.room((0, 0), 1, 99) == 7
    assert crossed.room((36, 0), 1, 99) == 0


def test_every_small_case_as_trying_all_orders_says() -> None:
    draw = random.Random(7)
    seen = {True: 0, False: 0}
    for _ in range(1500):
        kinds, counts = _small_case(draw)
        layout = lay(kinds, counts)
        expected = _any_order_fits(kinds, counts)
        assert (layout is not None) is can_lie(kinds, counts) is expected, (kinds, counts)
        if layout is not None:
            _holds(kinds, counts, layout)
        seen[expected] += 1
    assert min(seen.values()) > 300


def _small_case(draw: random.Random) -> tuple[list[Piece], list[int]]:
    kinds: list[Piece] = []
    for _ in range(draw.randint(1, 4)):
        lo = draw.randint(0, 8)
        allowed = ((lo, draw.randint(lo + 2, 18)),)
        if draw.random() < 0.3 and allowed[0][1] < 16:
            start = allowed[0][1] + draw.randint(1, 2)
            allowed = (*allowed, (start, draw.randint(start + 1, 20)))
        kinds.append(
            Piece(draw.randint(1, 7), allowed, draw.randint(1, 5), draw.choice([0, 0, 1, 2]))
        )
    counts = [draw.randint(1, 2) for _ in kinds]
    while sum(counts) > 6:
        counts[counts.index(2)] = 1
    return kinds, counts


def _any_order_fits(kinds: list[Piece], counts: list[int]) -> bool:
    pieces = [kind for kind, count in enumerate(counts) for _ in range(count)]
    return any(_laid_left(kinds, order) for order in set(permutations(pieces)))


def _laid_left(kinds: list[Piece], order: tuple[int, ...]) -> bool:
    fronts = [0, 0, 0]
    for kind in order:
        piece = kinds[kind]
        lanes = [bit for bit in range(3) if piece.lanes >> bit & 1]
        front = max(fronts[bit] for bit in lanes)
        starts = [max(lo, front) for lo, hi in piece.allowed if hi - max(lo, front) >= piece.size]
        if not starts:
            return False
        for bit in lanes:
            fronts[bit] = min(starts) + piece.size + piece.kerf
    return True


def _holds(kinds: list[Piece], counts: list[int], layout: tuple[Block, ...]) -> None:
    laid: list[tuple[int, int, Piece]] = []
    for block in layout:
        piece = kinds[block.kind]
        for number in range(block.number):
            start = block.start + number * (piece.size + piece.kerf)
            assert any(lo <= start and start + piece.size <= hi for lo, hi in piece.allowed)
            laid.append((start, block.kind, piece))
    assert [sum(1 for _, kind, _ in laid if kind == n) for n in range(len(kinds))] == counts
    laid.sort(key=lambda one: one[0])
    for place, (start, _, piece) in enumerate(laid):
        for later, _, other in laid[place + 1 :]:
            if piece.lanes & other.lanes:
                assert later >= start + piece.size + piece.kerf


def test_what_has_no_length_stands_in_nobodys_way() -> None:
    # Half of a stretch measured one unit long is no unit at all; settled by arithmetic, no source.
    nothing = Piece(1, ((0, 1),), 0, 0)
    layout = lay([nothing, Piece(1, ((0, 1),), 1, 0)], [3, 1])
    assert layout == (Block(1, 0, 0, 0, 0, 3), Block(1, 0, 1, 0, 1, 1))
    assert lay([nothing._replace(allowed=())], [1]) is None
    assert most_alone(nothing) >= 3
    assert Strip([nothing]).room((0,), 0, 3) == 3


def test_a_kerf_may_fall_where_another_piece_would_begin() -> None:
    # 3 slices of 3 in with kerfs of 1 in end at 11 in, where the other begins: the kerf hits it.
    for kerf, beside in ((1, 2), (0, 3)):
        strip = Strip([Piece(1, ((0, 11),), 3, kerf), Piece(1, ((11, 13),), 2, 0)])
        assert strip.room((0, 0), 0, 99) == 3
        assert strip.room((0, 1), 0, 99) == beside


def test_what_lies_behind_comes_first_from_the_end() -> None:
    # 3 in anywhere on 10 in, and 4 in behind 6 in that take both lanes: they fill the second lane.
    kinds = [Piece(1, ((0, 10),), 3, 0), Piece(3, ((6, 10),), 4, 0), Piece(2, ((0, 10),), 6, 0)]
    assert can_lie(kinds, [2, 1, 1])
    assert not can_lie(kinds, [3, 1, 1])
    assert not can_lie(kinds, [0, 1, 2])


def test_room_is_what_laying_one_more_after_the_other_says() -> None:
    draw, beside = random.Random(17), 0
    for _ in range(400):
        kinds, _ = _small_case(draw)
        strip, counts = Strip(kinds), [0] * len(kinds)
        for _ in range(5):
            kind = draw.randrange(len(kinds))
            room = strip.room(tuple(counts), kind, 4)
            lying = [0] * 5
            for more in range(5):
                asked = [count + more * (at == kind) for at, count in enumerate(counts)]
                lying[more] = lay(kinds, asked) is not None
            assert lying[0]
            assert room == max(more for more in range(5) if all(lying[: more + 1]))
            beside += room < 4 and sum(counts) > counts[kind]
            counts[kind] += min(room, 1)
    assert beside > 200
