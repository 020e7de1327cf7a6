"""What strips hold, lane by lane: so much there, and the least that a piece of each kind takes.

A limit is a lane of one strip from some points to others. What may lie nowhere else takes its
length and its kerf there, what may lie partly elsewhere the least that it can. What has its place
if it is made at all (a whole roast) leaves the others less; those limits hold only where it is
made, and are told so that they say nothing where it isn't. Sound, never complete.
"""

from collections.abc import Iterator, Sequence
from operator import mul
from typing import NamedTuple

from shared.cutting.capacity import Interval
from shared.cutting.lanes import bits_of
from shared.cutting.run_packing import Piece, has_its_place, left_beside

Spans = tuple[Interval, ...]


class Limit(NamedTuple):
    """What is left of a strip's lane, with a last kerf for each span, and what each kind takes."""

    left: int
    takes: list[int]


def limits(
    kinds: Sequence[Piece], counts: Sequence[int], asked: Sequence[int], closely: bool
) -> Iterator[Limit]:
    """Limits of a strip on which some pieces lie, and so many more of each kind are asked.

    Those that are enough for all that is asked are left out. Looked at `closely` there are also
    those beside each kind that has its place, if it is made.

    Worked number: of 30 in on which 7 pieces of 4 in are asked and a roast that lies between 8 and
    20 in, the 4 in have 30 in, but 8 and 10 in if the roast is made.
    """
    there = [number for number, both in enumerate(zip(counts, asked, strict=True)) if any(both)]
    lying = [counts[number] for number in there]
    more = [asked[number] for number in there]
    free = left_beside([kinds[number] for number in there], lying)
    found: dict[tuple[int, ...], int] = {}
    for long, takes in _of_lanes(free):
        if takes not in found or found[takes] > long:
            found[takes] = long
    most = [a + b for a, b in zip(lying, more, strict=True)]
    for kind, one in enumerate(free) if closely else ():
        if more[kind] and not lying[kind] and _once_at_most(one, more[kind]):
            found |= _with(free, kind, most, found)
    for takes, long in found.items():
        left = long - sum(map(mul, takes, lying))
        if sum(map(mul, takes, more)) > left:
            every = [0] * len(kinds)
            for number, take in zip(there, takes, strict=True):
                every[number] = take
            yield Limit(left, every)


def _once_at_most(kind: Piece, asked: int) -> bool:
    """Whether a kind has its place, and no two of it are made."""
    if not kind.allowed or not has_its_place(kind):
        return False
    return asked == 1 or not kind.anchor


def _with(
    kinds: Sequence[Piece],
    kind: int,
    most: Sequence[int],
    known: dict[tuple[int, ...], int],
) -> dict[tuple[int, ...], int]:
    """What holds where one of a kind is made that has its place.

    Where it isn't made there is enough for the most of all others. Worked number: 7 pieces of
    4 in have 18 in beside a roast, so 28 in are there of which the roast takes 10.
    """
    one = [0] * len(kinds)
    one[kind] = 1
    beside = left_beside(kinds, one)
    found: dict[tuple[int, ...], int] = {}
    if all(after is before for after, before in zip(beside, kinds, strict=True)):
        return found
    for there, takes in _of_lanes(beside):
        if known.get(takes, there + 1) <= there:
            continue
        others = sum(map(mul, takes, most)) - takes[kind] * most[kind]
        if others + takes[kind] > there:
            more = max(0, others - there)
            found[(*takes[:kind], takes[kind] + more, *takes[kind + 1 :])] = there + more
    return found


def _of_lanes(kinds: Sequence[Piece]) -> Iterator[tuple[int, tuple[int, ...]]]:
    """What is there of each lane between points that matter, and what each kind takes of it.

    Of lanes that the same kinds take only one is looked at.
    """
    takers: dict[int, list[int]] = {}
    for number, kind in enumerate(kinds):
        if kind.allowed and kind.size + kind.kerf:
            for bit in bits_of(kind.lanes):
                takers.setdefault(bit, []).append(number)
    for mine in {tuple(mine): None for mine in takers.values()}:
        those = [kinds[number] for number in mine]
        for spans in _spans(those):
            there, last, takes = sum([hi - lo for lo, hi in spans]), 0, [0] * len(kinds)
            start, end = spans[0]
            for number, kind in zip(mine, those, strict=True):
                if len(spans) == 1 and start <= kind.allowed[0][0] and kind.allowed[-1][1] <= end:
                    take = kind.size + kind.kerf
                else:
                    take = taken(kind, spans)
                takes[number] = take
                if take == kind.size + kind.kerf and kind.kerf > last:
                    last = kind.kerf
            yield there + last * len(spans), tuple(takes)


def taken(kind: Piece, spans: Spans) -> int:
    """The least that a piece takes of some spans of its lane, with its kerf where it is within.

    Worked number: 5 in between 0 and 8 in take 1 in of 4 to 8 in at least, and 5 of 0 to 8 in.
    """
    least, size = -1, kind.size
    for lo, hi in kind.allowed:
        take = 0
        for start, end in spans:
            if start <= lo and hi <= end:
                take = size + kind.kerf
                break
            if lo < end and start < hi:
                first = min(lo + size, end) - max(lo, start)
                other = min(hi, end) - max(hi - size, start)
                take += max(0, min(first, other))
        if least < 0 or take < least:
            least = take
    return max(0, least)


def _spans(kinds: Sequence[Piece]) -> Iterator[Spans]:
    """From the start of some kinds to the end of some, all within which overlap.

    Also the places of a kind that has several.

    Worked number: of kinds between 0 and 8 in, 4 and 12 in, and 12 and 20 in these are 0 to 8,
    0 to 12, 4 to 12 and 12 to 20 in.
    """
    hulls = sorted({(kind.allowed[0][0], kind.allowed[-1][1]) for kind in kinds})
    for at, (start, end) in enumerate(hulls):
        if at and hulls[at - 1][0] == start:
            continue
        ends = {end}
        for lo, hi in hulls[at + 1 :]:
            ends |= {max(hi, one) for one in ends if lo < one}
            if lo == start:
                ends.add(hi)
        for one in ends:
            yield ((start, one),)
    yield from {kind.allowed: None for kind in kinds if len(kind.allowed) > 1}
