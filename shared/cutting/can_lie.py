"""Whether pieces can lie on one run of one side, exactly, where it isn't asked where they lie.

Then more orders are tried before every order that matters, and what can't meet is tried apart.
"""

from collections.abc import Sequence
from typing import NamedTuple

from shared.cutting.run_packing import (
    Block,
    Piece,
    carve,
    lay_in_order,
    narrowest,
    one_window,
    other_orders,
    set_out,
    too_much,
)
from shared.cutting.run_search import ENDLESS, Free, lies


class Told(NamedTuple):
    """Whether pieces can lie, and whether it was hard to tell; else kinds that can't together."""

    lie: bool
    hard: bool
    kinds: frozenset[int] = frozenset()


def can_lie(kinds: Sequence[Piece], counts: Sequence[int]) -> bool:
    """Whether so many pieces of each kind can lie there, as `lay` would find it."""
    return tried(kinds, counts).lie


def tried(kinds: Sequence[Piece], counts: Sequence[int]) -> Told:
    """Whether so many pieces of each kind can lie there, and whether it was hard to tell.

    Where they lie isn't asked, so more orders are tried before every order that matters; only
    where none of them tells it was hard. Where they can't lie the kinds that have their place
    can't beside those told.
    """
    found = set_out(kinds, counts)
    if found is None:
        return Told(False, False, frozenset(range(len(kinds))))
    hard = False
    for free in found[1]:
        if lay_in_order(sorted(free, key=narrowest)) is not None:
            continue
        parts = [free] if len(free) == 1 else _apart(free)
        for one in parts:
            can = _can_lie_free(one, tried_at_once=len(parts) == 1)
            if can is None:
                can, hard = lies(one), True
            if not can:
                mine = {it.kind for it in one} | {block.kind for block in found[0]}
                return Told(False, hard, frozenset(mine))
    return Told(True, hard)


def _apart(free: list[Free]) -> list[list[Free]]:
    """Kinds that may meet in a lane, directly or through others, together.

    Worked number: in one lane 3 in between 0 and 8 in and 2 in between 6 and 12 in may meet, 4 in
    between 12 and 20 in meets neither where no kerf reaches beyond 12 in.
    """
    sets: list[list[Free]] = []
    for one in free:
        members, others = [one], list[list[Free]]()
        for them in sets:
            if any(_may_meet(one, other) for other in them):
                members = them + members
            else:
                others.append(them)
        sets = [*others, members]
    return sets


def _may_meet(one: Free, other: Free) -> bool:
    if not one.lanes & other.lanes or not one.allowed or not other.allowed:
        return False
    return (
        one.allowed[0][0] < other.allowed[-1][1] + other.kerf
        and other.allowed[0][0] < one.allowed[-1][1] + one.kerf
    )


def _can_lie_free(free: list[Free], tried_at_once: bool) -> bool | None:
    """Whether they can lie, None where neither sums nor some good orders tell.

    The first order was `tried_at_once` with all others.
    """
    if not tried_at_once and lay_in_order(sorted(free, key=narrowest)) is not None:
        return True
    if len(free) == 1 or too_much(free) or one_window(free):
        return False
    if any(lay_in_order(order) is not None for order in other_orders(free)):
        return True
    if _lies_from_the_end(sorted(free, key=_latest)):
        return True
    return True if lay_in_order(sorted(free, key=_most_pressing)) is not None else None


def _latest(one: Free) -> tuple[int, int, int]:
    if not one.allowed:
        return 0, 0, 0
    return -one.allowed[0][0], -one.allowed[-1][1], -one.lanes.bit_count()


def _most_pressing(one: Free) -> tuple[int, int, int]:
    return one.allowed[-1][1] if one.allowed else 0, -one.lanes.bit_count(), -one.size


def _lies_from_the_end(order: list[Free]) -> bool:
    """Whether all find room where kind after kind is laid as far right as it can be.

    Of 3 in that may lie anywhere on 10 in and 4 in that lie behind 6 in, the 4 in come first and
    the 3 in end where they begin.
    """
    blocks: list[Block] = []
    for one in order:
        left, step, back = one.number, one.size + one.kerf, ENDLESS
        for lo, hi in reversed(carve(one, blocks) if blocks else one.allowed):
            end = min(hi, back)
            if end - lo < one.size:
                continue
            count = min(left, (end - lo + one.kerf) // step)
            start = end - count * step + one.kerf
            back = start - one.kerf
            blocks.append(Block(one.lanes, start, end, one.kerf, one.kind, count))
            left -= count
            if not left:
                break
        if left:
            return False
    return True
