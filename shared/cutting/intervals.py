"""Intervals along a run: joined where they touch, and windows united lane by lane."""

from shared.cutting.capacity import Interval
from shared.cutting.lanes import bits_of

Block = tuple[int, int, Interval, tuple[Interval, ...]]  # run, lanes, reach, allowed


def united(
    blocks: list[Block],
) -> list[Block]:
    """Blocks that overlap in a lane become one in that lane; lanes alike stay one block."""
    by_lane: dict[tuple[int, int], list[tuple[Interval, tuple[Interval, ...]]]] = {}
    for run, lanes, reach, allowed in blocks:
        for bit in bits_of(lanes):
            by_lane.setdefault((run, bit), []).append((reach, allowed))
    alike: dict[tuple[int, Interval, tuple[Interval, ...]], int] = {}
    for (run, bit), spans in by_lane.items():
        for reach, allowed in _joined(sorted(spans)):
            key = (run, reach, allowed)
            alike[key] = alike.get(key, 0) | bit
    return [(run, lanes, reach, allowed) for (run, reach, allowed), lanes in alike.items()]


def _joined(
    spans: list[tuple[Interval, tuple[Interval, ...]]],
) -> list[tuple[Interval, tuple[Interval, ...]]]:
    joined: list[tuple[Interval, tuple[Interval, ...]]] = []
    for (lo, hi), allowed in spans:
        if joined and joined[-1][0][1] > lo:
            (start, end), before = joined[-1]
            joined[-1] = ((start, max(end, hi)), merged((*before, *allowed)))
        else:
            joined.append(((lo, hi), allowed))
    return joined


def merged(intervals: tuple[Interval, ...]) -> tuple[Interval, ...]:
    """Intervals that touch or overlap made one: (0, 3), (2, 5) gives (0, 5)."""
    found: list[Interval] = []
    for lo, hi in sorted(intervals):
        if found and lo <= found[-1][1]:
            found[-1] = (found[-1][0], max(found[-1][1], hi))
        else:
            found.append((lo, hi))
    return tuple(found)
