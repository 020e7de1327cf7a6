"""Limits of a strip: what lies keeps them, and they refuse what doesn't."""

import random
from itertools import product
from operator import mul

from shared.cutting.limits import limits, taken
from shared.cutting.run_packing import Piece
from shared.cutting.strip import Strip

ROAST = Piece(1, ((8, 20),), 12, 0)


def test_the_worked_number() -> None:
    # 7 pieces of 4 in have 30 in, but 8 and 10 in beside a roast that lies between 8 and 20 in.
    kinds = [Piece(1, ((0, 30),), 4, 0), ROAST]
    plainly = [(left, takes) for left, takes in limits(kinds, (0, 0), [7, 1], closely=False)]
    assert plainly == [(30, [4, 12])]
    closely = [(left, takes) for left, takes in limits(kinds, (0, 0), [7, 1], closely=True)]
    assert (28, [4, 10]) in closely
    assert {left for left, _ in limits(kinds, (0, 1), [7, 0], closely=False)} == {18}


def test_what_is_enough_for_all_is_no_limit() -> None:
    assert list(limits([Piece(1, ((0, 30),), 4, 0), ROAST], (0, 0), [4, 1], closely=False)) == []


def test_what_may_lie_partly_outside_takes_the_least_it_can() -> None:
    piece = Piece(1, ((0, 8),), 5, 1)
    assert taken(piece, ((4, 8),)) == 1
    assert taken(piece, ((0, 8),)) == 6
    # 3 in may lie between 0 and 4 or 10 and 14 in: of both together they take it all.
    either = Piece(1, ((0, 4), (10, 14)), 3, 0)
    assert taken(either, ((0, 4),)) == 0
    assert taken(either, ((0, 4), (10, 14))) == 3


def test_what_lies_keeps_every_limit() -> None:
    draw, refused, lying = random.Random(21), 0, 0
    for _ in range(300):
        kinds = [_kind(draw) for _ in range(draw.randint(2, 4))]
        strip, counts = Strip(kinds), tuple([0] * len(kinds))
        if draw.random() < 0.5:
            one = tuple([int(kind == draw.randrange(len(kinds))) for kind in range(len(kinds))])
            counts = one if strip.fits(one) else counts
        asked = [draw.randint(0, 3) for _ in kinds]
        found = [*limits(kinds, counts, asked, closely=draw.random() < 0.5)]
        for more in product(*[range(one + 1) for one in asked]):
            both = tuple([a + b for a, b in zip(counts, more, strict=True)])
            kept = all(sum(map(mul, takes, more)) <= left for left, takes in found)
            if strip.fits(both):
                lying += 1
                assert kept, (kinds, counts, more)
            else:
                refused += not kept
    assert lying > 2000
    assert refused > 2000


def _kind(draw: random.Random) -> Piece:
    lo, size = draw.randint(0, 8), draw.randint(1, 5)
    kerf, lanes = draw.choice([0, 0, 1]), draw.randint(1, 3)
    if draw.random() < 0.3:
        return Piece(lanes, ((lo, lo + size),), size, kerf, draw.choice([0, 0, 1, -1]))
    allowed = ((lo, lo + size + draw.randint(0, 8)),)
    if draw.random() < 0.2:
        start = allowed[0][1] + draw.randint(1, 3)
        allowed = (*allowed, (start, start + draw.randint(1, 6)))
    return Piece(lanes, allowed, size, kerf, draw.choice([0] * 8 + [1, -1]) if len(allowed) == 1
                 else 0)  # fmt: skip
