"""Sums over a strip, or over all sides, never say less than what can really be laid."""

import random

from shared.cutting.room_left import RoomLeft
from shared.cutting.room_over_sides import RoomOverSides
from shared.cutting.run_packing import Piece, lay
from shared.cutting.take import Take
from tests.shared.cutting.tiny_lot import SAW, inches

RUN = ((0, inches("30")),)


def _on(side: int, piece: Piece, *cells: tuple[str, int, int]) -> Take:
    charged = tuple([((0, side, part, 1, 0), amount, there) for part, amount, there in cells])
    return Take((((0, side, 0), piece),), charged)


def test_roasts_leave_room_for_so_many_slices() -> None:
    roast, slice_ = Piece(1, RUN, inches("5"), SAW), Piece(1, RUN, inches("3/4"), SAW)
    # 30 1/16 in less 3 × 5 1/16 in are 14 7/8 in; a slice takes 13/16 in.
    assert RoomLeft([roast], [3]).most(slice_) == 18
    assert lay([roast, slice_], [3, 18]) is not None
    assert lay([roast, slice_], [3, 19]) is None
    assert RoomLeft([roast._replace(lanes=2)], [3]).most(slice_) == 37


def test_what_has_its_place_is_cut_out_of_the_room() -> None:
    whole = Piece(1, ((inches("10"), inches("16")),), inches("6"), 0)
    slice_ = Piece(1, RUN, inches("5"), SAW)
    # 10 in before it hold one slice with its kerf, the 14 in after it two.
    assert RoomLeft([whole], [1]).most(slice_) == 3
    assert lay([whole, slice_], [1, 3]) is not None


def test_beside_what_cannot_lie_nothing_fits() -> None:
    whole = Piece(1, RUN, inches("30"), 0)
    roast, slice_ = Piece(1, RUN, inches("5"), SAW), Piece(1, RUN, inches("3/4"), SAW)
    assert RoomLeft([whole, roast], [1, 1]).most(slice_) == 0
    assert RoomLeft([roast._replace(allowed=())], [1]).most(slice_) == 0


def test_a_strip_never_holds_more_than_the_sums_say() -> None:
    draw, exact, tried = random.Random(3), 0, 0
    for _ in range(300):
        kinds = [_kind(draw) for _ in range(draw.randint(2, 4))]
        counts = [draw.randint(0, 3) for _ in kinds[:-1]]
        if lay(kinds[:-1], counts) is None:
            continue
        most = RoomLeft(kinds[:-1], counts).most(kinds[-1])
        fits = [n for n in range(1, 9) if lay(kinds, [*counts, n]) is not None]
        assert max(fits, default=0) <= most
        tried += 1
        exact += min(most, 8) == max(fits, default=0)
    assert tried > 150
    assert exact > tried * 8 // 10


def _kind(draw: random.Random) -> Piece:
    lo = draw.randint(0, 10)
    hi = draw.randint(lo + 3, 20)
    window, lanes = ((lo, hi),), draw.choice([1, 1, 2, 3])
    if draw.random() < 0.2:
        return Piece(lanes, window, hi - lo, 0)
    anchor = draw.choice([0, 0, 0, 0, -1, 1])
    return Piece(lanes, window, draw.randint(1, 3), draw.choice([0, 1]), anchor)


def test_steaks_on_two_sides_leave_room_for_so_many() -> None:
    window = ((0, inches("12")),)
    steak, other = (Piece(1, window, inches(size), SAW) for size in ("3/2", "5/4"))
    beside = RoomOverSides([(3, [_on(1, steak), _on(2, steak)])])
    # 24 1/8 in less 3 × 1 9/16 in are 19 7/16 in; a steak takes 1 5/16 in.
    assert beside.most([_on(1, other), _on(2, other)]) == 14
    # On one side alone 12 1/16 in hold 9, and the three may lie on the other.
    assert beside.most([_on(1, other)]) == 9


def test_an_account_pays_for_all_its_owner_asks_on_all_sides() -> None:
    window = ((0, inches("12")),)
    steak, other = (Piece(lane, window, 1, 0) for lane in (1, 2))
    mine, theirs = ("back", 4, 10), ("rump", 4, 10)
    beside = RoomOverSides([(3, [_on(1, steak, mine), _on(2, steak, mine)])])
    # 2 × 10 less 3 × 4 are 8, for two more of 4 each.
    assert beside.most([_on(1, other, mine), _on(2, other, mine)]) == 2
    assert beside.most([_on(1, other, theirs), _on(2, other, theirs)]) == 5


def test_an_account_has_the_room_that_any_line_brings_to_it() -> None:
    window = ((0, inches("12")),)
    steak, other = (Piece(lane, window, 1, 0) for lane in (1, 2))
    mine, roomier, elsewhere = ("back", 4, 10), ("back", 4, 14), ("rump", 4, 10)
    # What takes of the back only on the first side is no sure charge, but brings its room there.
    brings = (1, [_on(1, steak, roomier), _on(1, steak, elsewhere)])
    beside = RoomOverSides([(1, [_on(1, steak, mine), _on(2, steak, mine)]), brings])
    # 14 and 10 less 4 are 20, for five of 4 each.
    assert beside.most([_on(1, other, mine), _on(2, other, mine)]) == 5
