"""Expected weight of one piece of a cut on a side, and pounds turned into whole pieces."""

from fractions import Fraction

from shared.cutting.capacity import ALL, EXPECTED, Held
from shared.cutting.piece_length import window_ng
from shared.cutting.take import Missing, Option, Take
from shared.cutting.ways import OnRun, Ways


def piece_ng(option: Option, ways: Ways) -> Fraction:
    """Expected weight of one piece, nanograms: its part of the window's weight, and its parts."""
    plan = option.ways[0]
    take = option.take(EXPECTED, ways)
    if isinstance(take, Missing):
        return Fraction(0)
    total = Fraction(0)
    for held in option.held or (None,):
        if held is not None and plan.on_run is not None:
            total += _of_run(held, plan.on_run, take, option.carcass, ways)
        for off in plan.off_run:
            if off.part.per == "side" and held is not None:
                total += held.side.part_ng(off.part) * off.share
            elif off.part.per == "animal" and (held is None or held is option.held[0]):
                room = option.animal.rooms.get((option.wanted.share, off.part.code), ALL)
                total += option.animal.part_ng(off.part) * min(off.share, room)
    return total


def _of_run(held: Held, on_run: OnRun, take: Take, carcass: int, ways: Ways) -> Fraction:
    lo, hi, weight = window_ng(held, on_run, ways)
    if hi <= lo:
        return Fraction(0)
    strip = (carcass, held.side.number, on_run.run)
    size = next(
        piece.size for where, piece in take.pieces if where == strip and piece.lanes == on_run.lanes
    )
    return weight * size / (hi - lo)


def count_of_pounds(pounds_ng: int, one_ng: Fraction) -> int:
    """Pounds over the expected weight of one, rounded half up, at least 1.

    Worked number: 5 lb of chops of 7 oz each are 11.43, so 11 chops.
    """
    if one_ng <= 0:
        return 1
    above = pounds_ng * one_ng.denominator
    return max(1, (2 * above + one_ng.numerator) // (2 * one_ng.numerator))
