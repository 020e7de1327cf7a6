"""Where a run take may lie on a side for one who holds of it, at each set of lengths."""

from shared.cutting.capacity import Held, Interval, Side, Window
from shared.cutting.ways import OnRun, Reach, WayPlan, Ways, spans_of


def window(held: Held, on_run: OnRun, scenario: int, ways: Ways) -> Window | None:
    """The window of a run take on a side, or None where the share doesn't hold it."""
    key = 3 * on_run.number + scenario
    known = held.known.windows
    if key in known:
        return known[key]
    found = known[key] = _window(held, on_run, scenario, ways)
    return found


def _window(held: Held, on_run: OnRun, scenario: int, ways: Ways) -> Window | None:
    if held.whole:
        first, last, spans = on_run.first, on_run.last, on_run.spans
    else:
        key = on_run.number, held.quarters
        if key not in ways.reaches:
            ways.reaches[key] = _reach(held.quarters, on_run, ways)
        reach = ways.reaches[key]
        if reach is None:
            return None
        first, last, spans = reach
    side = held.side
    bounds = side.bounds[scenario][on_run.run]
    lo, hi = bounds[first], bounds[last + 1]
    if on_run.partial:
        lo, hi = _ends(on_run, bounds, first, last)
    blocked = side.blocked.get(on_run.run)
    lost = lost_part = ""
    if blocked:
        lost, lost_part = _why_lost(side, on_run, first, last, ways)
        free = [
            place
            for start, end in spans
            for place in range(start, end + 1)
            if not blocked.get(place, 0) & on_run.lanes
        ]
        spans = spans_of(free)
    if spans == ((first, last),):
        return Window(lo, hi, first, last, ((lo, hi),), lost, lost_part)
    allowed = tuple([(max(lo, bounds[start]), min(hi, bounds[end + 1])) for start, end in spans])
    return Window(lo, hi, first, last, allowed, lost, lost_part)


def _reach(quarters: frozenset[str], on_run: OnRun, ways: Ways) -> Reach | None:
    """The stretches of a run take in some quarters: first, last, and those open to all lanes."""
    first, last, spans = on_run.first, on_run.last, on_run.spans
    stretches = ways.runs[on_run.run].stretches
    mine = [n for n in range(first, last + 1) if stretches[n].quarter in quarters]
    if not mine or (on_run.take.size == "whole" and len(mine) <= last - first):
        return None
    if len(mine) <= last - first:
        spans = _common(spans, mine)
    return mine[0], mine[-1], spans


def owned(cut: str, plans: tuple[WayPlan, ...], held: Held, ways: Ways) -> tuple[WayPlan, ...]:
    """The ways of a cut that can be made of one side where only some quarters of it are held."""
    if held.whole:
        return plans
    key = cut, held.quarters
    if key not in ways.owned:
        ways.owned[key] = tuple([one for one in ways.by_cut[cut] if _is_owned(one, held, ways)])
    mine = ways.owned[key]
    return mine if plans is ways.by_cut[cut] else tuple([one for one in mine if one in plans])


def _is_owned(plan: WayPlan, held: Held, ways: Ways) -> bool:
    if not plan.single:
        return False
    if plan.on_run is not None and _reach(held.quarters, plan.on_run, ways) is None:
        return False
    return all(
        off.part.per == "animal" or off.part.quarter in held.quarters for off in plan.off_run
    )


def _ends(on_run: OnRun, bounds: tuple[int, ...], first: int, last: int) -> Interval:
    take = on_run.take
    lo, hi = bounds[first], bounds[last + 1]
    if first == on_run.first and take.first_share != 1:
        length = bounds[first + 1] - lo
        part = take.first_share
        lo += length - length * part.numerator // part.denominator
    if last == on_run.last and take.last_share != 1:
        length = hi - bounds[last]
        part = take.last_share
        hi = bounds[last] + length * part.numerator // part.denominator
    return lo, hi


def _common(spans: tuple[Interval, ...], mine: list[int]) -> tuple[Interval, ...]:
    return spans_of([place for place in mine if any(start <= place <= end for start, end in spans)])


def _why_lost(side: Side, on_run: OnRun, first: int, last: int, ways: Ways) -> tuple[str, str]:
    for place in range(first, last + 1):
        for bit, part in ways.at[on_run.run][place]:
            if bit & on_run.lanes and part.code in side.lost:
                return side.lost[part.code], part.code
    return "", ""
