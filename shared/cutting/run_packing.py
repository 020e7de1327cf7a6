"""Whether pieces can lie on one run of one side, exactly, and where they then lie.

A piece takes the same length of each of its lanes, within one of its allowed intervals; after it
the saw takes its kerf in those lanes. Fixed pieces are set first and the windows of the others
carved around them. What is left is accepted by laying it in a few good orders, refused by sums
over intervals, and else decided by `run_search`, which tries every order that matters. Where it
isn't asked where they lie, `can_lie` tells.
"""

from collections.abc import Iterable, Sequence
from typing import NamedTuple

from shared.cutting.capacity import Interval
from shared.cutting.lanes import bits_of
from shared.cutting.run_search import ENDLESS, Free, search


class Piece(NamedTuple):
    """A kind of piece on a run: lanes (bits), where it may lie, its length and the kerf after it.

    `anchor` is -1 where the pieces lie against the head end of the (only) interval, 1 for the
    tail end, 0 for anywhere.
    """

    lanes: int
    allowed: tuple[Interval, ...]
    size: int
    kerf: int
    anchor: int = 0


class Block(NamedTuple):
    """Neighbouring pieces of one kind as they lie: `number` of them between start and end."""

    lanes: int
    start: int
    end: int
    kerf: int
    kind: int
    number: int


Layout = tuple[Block, ...]


def most_alone(piece: Piece) -> int:
    """How many of one kind fit on an empty run; of what has no length as many as anybody asks."""
    if piece.size + piece.kerf == 0:
        return ENDLESS if piece.allowed else 0
    return most_within(piece.allowed, piece.size, piece.kerf)


def most_within(allowed: Iterable[Interval], size: int, kerf: int) -> int:
    """How many pieces of some size fit into intervals, each with a kerf behind it."""
    total, front, step = 0, 0, size + kerf
    for lo, hi in allowed:
        start = lo if lo > front else front
        if hi - start >= size:
            count = (hi - start + kerf) // step
            total += count
            front = start + count * step
    return total


def lay(kinds: Sequence[Piece], counts: Sequence[int]) -> Layout | None:
    """Lay so many pieces of each kind: blocks by lane and start, or None where they can't lie.

    Worked number: 37 slices of 3/4 in with 1/16 in kerf lie on 30 in (37 × 13/16 = 30 1/16), 38
    don't.
    """
    found = set_out(kinds, counts)
    if found is None:
        return None
    layout, free = found
    for together in free:
        blocks = _lay_free(together)
        if blocks is None:
            return None
        layout += blocks
    return tuple(layout)


def set_out(
    kinds: Sequence[Piece], counts: Sequence[int]
) -> tuple[list[Block], list[list[Free]]] | None:
    """What has no choice of place, and the other pieces by lanes; None where that can't be."""
    fixed: list[Block] = []
    free: list[Free] = []
    nothing: list[Block] = []  # what has no length stands in nobody's way
    for kind, count in enumerate(counts):
        if not count:
            continue
        piece = kinds[kind]
        if piece.size + piece.kerf == 0:
            if not piece.allowed:
                return None
            start = piece.allowed[0][0]
            nothing.append(Block(piece.lanes, start, start, 0, kind, count))
        elif has_its_place(piece):
            block = _fixed(piece, kind, count)
            if block is None:
                return None
            for other in fixed:
                if _clash(block, other):
                    return None
            fixed.append(block)
        else:
            free.append(Free(piece.lanes, piece.allowed, piece.size, piece.kerf, kind, count))
    if not free:
        return nothing + fixed, []
    if fixed:
        free = [
            Free(one.lanes, carve(one, fixed), one.size, one.kerf, one.kind, one.number)
            for one in free
        ]
    return nothing + fixed, _by_lanes(free)


def left_beside(kinds: Sequence[Piece], counts: Sequence[int]) -> Sequence[Piece]:
    """The kinds with the places that are left beside those of which some have their place there.

    Worked number: where a roast lies between 4 and 9 in, 5 in that may lie anywhere on 20 in lie
    between 9 and 20 in, and 3 in between 0 and 4 or 9 and 20 in.
    """
    fixed: list[Block] = []
    for kind, (piece, count) in enumerate(zip(kinds, counts, strict=True)):
        if count and piece.size + piece.kerf and has_its_place(piece):
            block = _fixed(piece, kind, count)
            if block is not None:
                fixed.append(block)
    found: list[Piece] = []
    for kind, piece in enumerate(kinds):
        others = [one for one in fixed if one.kind != kind]
        free = Free(piece.lanes, piece.allowed, piece.size, piece.kerf, kind, 1)
        allowed = tuple([(lo, hi) for lo, hi in carve(free, others) if hi - lo >= piece.size])
        found.append(piece if allowed == piece.allowed else piece._replace(allowed=allowed))
    return found


def has_its_place(piece: Piece) -> bool:
    """Whether pieces of a kind can lie in one place only: at an end, or all that is there."""
    if piece.anchor:
        return True
    return len(piece.allowed) == 1 and piece.allowed[0][1] - piece.allowed[0][0] == piece.size


def _fixed(piece: Piece, kind: int, count: int) -> Block | None:
    if not piece.allowed:
        return None
    lo, hi = piece.allowed[0]
    length = count * (piece.size + piece.kerf) - piece.kerf
    if length > hi - lo:
        return None
    start = hi - length if piece.anchor > 0 else lo
    return Block(piece.lanes, start, start + length, piece.kerf, kind, count)


def _clash(one: Block, other: Block) -> bool:
    if not one.lanes & other.lanes:
        return False
    return one.end + one.kerf > other.start and other.end + other.kerf > one.start


def carve(one: Free | Piece, blocks: Iterable[Block]) -> tuple[Interval, ...]:
    """What of the allowed intervals is left beside blocks in the same lanes."""
    left = one.allowed
    for block in blocks:
        if not block.lanes & one.lanes:
            continue
        before, after = block.start - one.kerf, block.end + block.kerf
        carved: list[Interval] = []
        for lo, hi in left:
            if hi <= before or lo >= after:
                carved.append((lo, hi))
                continue
            if before - lo >= one.size:
                carved.append((lo, before))
            if hi - after >= one.size:
                carved.append((after, hi))
        left = tuple(carved)
    return left


def _by_lanes(free: list[Free]) -> list[list[Free]]:
    """Kinds that share a lane, directly or through others, together."""
    common = free[0].lanes
    for one in free:
        common &= one.lanes
    if common:
        return [free]
    sets: list[tuple[int, list[Free]]] = []
    for one in free:
        mask, members = one.lanes, [one]
        apart: list[tuple[int, list[Free]]] = []
        for other, others in sets:
            if other & mask:
                mask |= other
                members = others + members
            else:
                apart.append((other, others))
        sets = [*apart, (mask, members)]
    return [sorted(members, key=lambda one: one.kind) for _, members in sets]


def _lay_free(free: list[Free]) -> list[Block] | None:
    if len(free) == 1:
        return lay_in_order(free)
    blocks = lay_in_order(sorted(free, key=narrowest))
    if blocks is not None:
        return blocks
    if too_much(free) or one_window(free):
        return None
    for order in other_orders(free):
        blocks = lay_in_order(order)
        if blocks is not None:
            return blocks
    return _as_blocks(free, search(free))


def narrowest(one: Free) -> tuple[int, tuple[Interval, ...], int, int]:
    """By the room there is, the least first: laid so, most of what fits lies at once."""
    return _room(one), one.allowed, -one.size, one.kind


def other_orders(free: list[Free]) -> Iterable[list[Free]]:
    """Orders of laying that often work where the narrowest windows first don't."""
    yield sorted(free, key=lambda one: (one.allowed, -one.lanes.bit_count(), one.kind))
    yield sorted(free, key=lambda one: (-one.lanes.bit_count(), _room(one), one.kind))
    yield sorted(free, key=lambda one: (-one.size, _room(one), one.kind))


def _room(one: Free) -> int:
    if len(one.allowed) == 1:
        return one.allowed[0][1] - one.allowed[0][0]
    return sum([hi - lo for lo, hi in one.allowed])


def lay_in_order(order: list[Free]) -> list[Block] | None:
    """Lay kind after kind as far left as what lies there lets it; None where one finds no room."""
    blocks: list[Block] = []
    for one in order:
        allowed = carve(one, blocks) if blocks else one.allowed
        left, front, step = one.number, 0, one.size + one.kerf
        for lo, hi in allowed:
            start = max(lo, front)
            if hi - start < one.size:
                continue
            count = min(left, (hi - start + one.kerf) // step)
            front = start + count * step
            blocks.append(Block(one.lanes, start, front - one.kerf, one.kerf, one.kind, count))
            left -= count
            if not left:
                break
        if left:
            return None
    return blocks


def too_much(free: list[Free]) -> bool:
    """Whether the pieces that must lie within some interval of one lane are too long for it.

    Worked number: 3 pieces of 4 in that lie between 2 and 12 in are 2 in too long.
    """
    if any(not one.allowed for one in free):
        return True
    due = sorted(
        [
            (one.allowed[-1][1], one.allowed[0][0], one.number * (one.size + one.kerf), one)
            for one in free
        ]
    )
    lanes = 0
    for one in free:
        lanes |= one.lanes
    seen: set[tuple[int, ...]] = set()
    for lane in bits_of(lanes):
        mine = [(hi, lo, long, one.kerf) for hi, lo, long, one in due if one.lanes & lane]
        takers = tuple([place for place, (_, _, _, one) in enumerate(due) if one.lanes & lane])
        if takers in seen:
            continue
        seen.add(takers)
        for start in {lo for _, lo, _, _ in mine}:
            total = last = 0
            for end, lo, long, kerf in mine:
                if lo >= start:
                    total += long
                    last = max(last, kerf)
                    if total > end - start + last:
                        return True
    return False


def one_window(free: list[Free]) -> bool:
    """Whether all must lie after one another in one interval, so that the first order decides."""
    common, first = free[0].lanes, free[0]
    for one in free:
        common &= one.lanes
        if one.allowed != first.allowed or one.kerf != first.kerf:
            return False
    return bool(common) and len(first.allowed) == 1


def _as_blocks(free: list[Free], starts: list[tuple[int, int]] | None) -> list[Block] | None:
    """Join neighbouring pieces of one kind: (kind's place, start) pairs in order of start."""
    if starts is None:
        return None
    blocks: list[Block] = []
    open_block: dict[int, int] = {}
    for place, start in starts:
        one = free[place]
        before = open_block.get(place)
        if before is not None and blocks[before].end + one.kerf == start:
            block = blocks[before]
            blocks[before] = block._replace(end=start + one.size, number=block.number + 1)
        else:
            open_block[place] = len(blocks)
            blocks.append(Block(one.lanes, start, start + one.size, one.kerf, one.kind, 1))
    return blocks
