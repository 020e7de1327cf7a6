"""What batches in cure, smoke and the mixer say of an order: what waits, what was weighed in."""

from collections.abc import Collection, Iterable
from fractions import Fraction

from shared.curing.batch import STATES, Batch, BatchState

_ON_THE_WAY = ("gathering", "curing", "smoking")
OUT = ("done", "packed")


def in_cure(lot: int, batches: Iterable[Batch], packed: Collection[int] = ()) -> frozenset[int]:
    """The lines of a lot of which meat is in a batch and not in a package yet.

    Of a batch that is done a line still waits until the first of it was packed: bacon weighed
    out at 9 lb and in no package can't be billed by the finished pound. `packed` are the lines
    of which something is in a package, weighed or counted.
    """
    return frozenset(
        meat.line
        for one in batches
        for meat in one.standing
        if meat.lot_id == lot
        and (one.state in _ON_THE_WAY or (one.state == "done" and meat.line not in packed))
    )


def on_the_way(order: int, batches: Iterable[Batch]) -> dict[int, BatchState]:
    """How far meat of an order's lines is that isn't out of its batch: a corned brisket in cure.

    Of a line in two batches, one in smoke and one in cure, it is the one that is less far.
    """
    found: dict[int, BatchState] = {}
    going = [one for one in batches if one.state in _ON_THE_WAY]
    for one in sorted(going, key=lambda each: STATES.index(each.state)):
        for meat in one.standing:
            if meat.order_id == order:
                found.setdefault(meat.line, one.state)
    return found


def weighed_in(lot: int, batches: Iterable[Batch]) -> dict[int, Fraction]:
    """The pounds of each line that went in: two slabs of 9.5 and 10 lb are 19.5 lb.

    A line of which a batch is still being put together isn't there: more may go in.
    """
    gathering: set[int] = set()
    found: dict[int, Fraction] = {}
    for one in batches:
        for meat in one.standing:
            if meat.lot_id != lot:
                continue
            if one.state == "gathering":
                gathering.add(meat.line)
            found[meat.line] = found.get(meat.line, Fraction(0)) + meat.weight.pounds
    return {line: pounds for line, pounds in found.items() if line not in gathering}


def came_out(order: int, batches: Iterable[Batch]) -> frozenset[int]:
    """The lines of an order of which meat came out of a batch: bacon weighed out, to be packed."""
    return frozenset(
        meat.line
        for one in batches
        if one.state in OUT
        for meat in one.standing
        if meat.order_id == order
    )
