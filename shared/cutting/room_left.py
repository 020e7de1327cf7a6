"""How much room pieces that must lie on a strip leave for more of another kind, by sums alone."""

from collections.abc import Sequence
from typing import NamedTuple

from shared.cutting.lanes import bits_of
from shared.cutting.run_packing import (
    Block,
    Piece,
    carve,
    has_its_place,
    most_alone,
    most_within,
)


class _Lying(NamedTuple):
    """Pieces of one kind that may lie anywhere from `lo` to `hi`, and the length all take."""

    lanes: int
    lo: int
    hi: int
    length: int
    kerf: int


class RoomLeft:
    """One strip with pieces that must lie there: no more of another kind than this fit beside."""

    def __init__(self, kinds: Sequence[Piece], counts: Sequence[int]) -> None:
        """So many pieces of each kind; where they can't lie nothing more can."""
        self._fixed: list[Block] = []
        self._free: list[_Lying] = []
        self._known: dict[Piece, int] = {}
        there = [(kind, count) for kind, count in zip(kinds, counts, strict=True) if count]
        self._cant = not all(kind.allowed for kind, _ in there)
        if self._cant:
            return
        for kind, count in there:
            if kind.size + kind.kerf and has_its_place(kind):
                (lo, hi), length = kind.allowed[0], count * (kind.size + kind.kerf) - kind.kerf
                start = hi - length if kind.anchor > 0 else lo
                self._fixed.append(Block(kind.lanes, start, start + length, kind.kerf, 0, count))
        for kind, count in there:
            step = kind.size + kind.kerf
            if step and not has_its_place(kind):
                free = carve(kind, self._fixed)
                if not free:
                    self._cant = True
                    return
                lying = _Lying(kind.lanes, free[0][0], free[-1][1], count * step, kind.kerf)
                self._free.append(lying)

    def most(self, piece: Piece) -> int:
        """No more of a kind than this fit; whether so many do is not said.

        Worked number: a run of 30 in on which 3 roasts of 5 in lie holds no more than 18 slices of
        3/4 in with 1/16 in kerf: 15 in and the last kerf hold 18 of 13/16 in.
        """
        found = self._known.get(piece)
        if found is None:
            found = self._known[piece] = self._most(piece)
        return found

    def _most(self, piece: Piece) -> int:
        step = piece.size + piece.kerf
        if self._cant:
            return 0
        if not step:
            return most_alone(piece)
        allowed = carve(piece, self._fixed) if self._fixed else piece.allowed
        most = most_within(allowed, piece.size, piece.kerf)
        if most <= 0 or not self._free:
            return max(0, most)
        lo, hi = allowed[0][0], allowed[-1][1]
        for bit in bits_of(piece.lanes):
            beside = [one for one in self._free if one.lanes & bit]
            for start in {lo, *[one.lo for one in beside if one.lo < lo]} if beside else ():
                for end in {hi, *[one.hi for one in beside if one.hi > hi]}:
                    left = self._left(bit, start, end, beside, piece.kerf)
                    most = min(most, left // step)
        return max(0, most)

    def _left(self, bit: int, start: int, end: int, beside: Sequence[_Lying], kerf: int) -> int:
        """What is left of a lane between two places, the last kerf outside, beside what lies there.

        Before what has its place a kerf must fit too, so that only one may lie outside.
        """
        left = end - start
        for one in beside:
            if start <= one.lo and one.hi <= end:
                left -= one.length
                kerf = max(kerf, one.kerf)
        for block in self._fixed:
            if block.lanes & bit:
                left -= max(0, min(end, block.end + block.kerf) - max(start, block.start))
        return left + kerf
