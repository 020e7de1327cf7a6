"""Whether pieces can lie: as laying them says, with the kinds that can't."""

import random

from shared.cutting.can_lie import can_lie, tried
from shared.cutting.run_packing import Piece, lay
from shared.cutting.strip import Strip


def test_kinds_that_can_not_are_told() -> None:
    # 3 pieces of 4 in don't lie between 0 and 10 in; what lies behind 20 in is not to blame.
    kinds = [Piece(1, ((0, 10),), 4, 0), Piece(1, ((20, 30),), 3, 0), Piece(1, ((0, 10),), 2, 0)]
    told = tried(kinds, [3, 2, 1])
    assert not told.lie
    assert told.kinds == {0, 2}
    assert tried(kinds, [2, 3, 1]) == (True, False, frozenset())


def test_what_is_told_can_not_lie() -> None:
    draw, cant, hard = random.Random(13), 0, 0
    for _ in range(1500):
        kinds = [_kind(draw) for _ in range(draw.randint(2, 5))]
        counts = [draw.randint(0, 3) for _ in kinds]
        told, layout = tried(kinds, counts), lay(kinds, counts)
        assert told.lie is (layout is not None) is can_lie(kinds, counts)
        hard += told.hard
        if not told.lie:
            cant += 1
            only = [count if kind in told.kinds else 0 for kind, count in enumerate(counts)]
            assert lay(kinds, only) is None
    assert hard > 5
    assert 300 < cant < 1200


def test_what_no_others_meet_can_not_lie() -> None:
    # 8 pieces of 4 in don't lie on 30 in, whatever lies behind them.
    strip = Strip([Piece(1, ((0, 30),), 4, 0), Piece(1, ((40, 50),), 3, 1)])
    assert strip.too_many((8, 2)) == (8, 0)
    assert strip.cant == [(8, 0)]
    assert not strip.fits((8, 0))
    assert strip.fits((7, 2))


def test_what_can_not_is_among_what_was_asked() -> None:
    draw, fewer = random.Random(14), 0
    for _ in range(600):
        kinds = [_kind(draw) for _ in range(draw.randint(2, 5))]
        counts = tuple([draw.randint(0, 3) for _ in kinds])
        strip = Strip(kinds)
        if strip.plain or strip.fits(counts):
            continue
        few = strip.too_many(counts)
        assert lay(kinds, few) is None
        assert all(a <= b for a, b in zip(few, counts, strict=True))
        fewer += few != counts
    assert fewer > 30


def _kind(draw: random.Random) -> Piece:
    lo, size = draw.randint(0, 8), draw.randint(1, 5)
    hi = lo + size + draw.randint(0, 10)
    return Piece(draw.randint(1, 3), ((lo, hi),), size, draw.choice([0, 0, 1]))
