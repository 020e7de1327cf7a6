"""Sums over all sides at once: lines that are too long for all the places they may lie in."""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence

    from shared.cutting.problem import Part, Problem

Reach = dict[int, tuple[int, int]]


def too_much_together(given: "Problem", which: "Sequence[int]") -> bool:
    """Whether some set of rows needs more length of a lane than all its windows hold.

    For each row's windows: all rows that can only lie within them, lane by lane. Sound, never
    complete: False says nothing.
    """
    for bit in range(_bits(given)):
        mine = [
            (need, reach, step, kerf)
            for need, parts in [given.rows[number] for number in which]
            for reach, step, kerf in [_reach(given, parts, 1 << bit)]
            if reach
        ]
        for _, window, _, _ in mine:
            total = kerfs = 0
            for need, reach, step, kerf in mine:
                if _within(reach, window):
                    total += need * step
                    kerfs = max(kerfs, kerf)
            if total > sum([hi - lo + kerfs for lo, hi in window.values()]):
                return True
    return False


def _bits(given: "Problem") -> int:
    return max(
        [kind.lanes.bit_length() for packing in given.packings for kind in packing.kinds],
        default=0,
    )


def _reach(given: "Problem", parts: "Sequence[Part]", lane: int) -> tuple[Reach, int, int]:
    """Where a row's units may lie in a lane, by packing, and the least length of one there."""
    reach: Reach = {}
    least, kerfs = -1, 0
    for part in parts:
        step = 0
        for packing, kind in part.pieces:
            piece = given.packings[packing].kinds[kind]
            if piece.lanes & lane and piece.allowed:
                lo, hi = piece.allowed[0][0], piece.allowed[-1][1]
                if packing in reach:
                    lo, hi = min(lo, reach[packing][0]), max(hi, reach[packing][1])
                reach[packing] = (lo, hi)
                step, kerfs = step + piece.size + piece.kerf, max(kerfs, piece.kerf)
        if step == 0:
            return {}, 0, 0
        least = step if least < 0 else min(least, step)
    return reach, least, kerfs


def _within(reach: Reach, window: Reach) -> bool:
    return all(
        packing in window and window[packing][0] <= lo and hi <= window[packing][1]
        for packing, (lo, hi) in reach.items()
    )
