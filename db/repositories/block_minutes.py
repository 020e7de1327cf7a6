"""Block minutes of what is booked: what the orders' lines take, or else the house's usual."""

from collections import defaultdict
from collections.abc import Collection, Mapping
from datetime import date
from typing import Any, cast

from sqlalchemy import (
    ColumnElement,
    Connection,
    Select,
    case,
    exists,
    func,
    literal,
    or_,
    select,
    text,
)

from db.repositories.listing import contains
from db.tables.lots import Holdings, Lots, Shares
from db.tables.orders import OrderLines, Orders
from shared.carcass import anatomy
from shared.shop.block_minutes import AT_THE_BLOCK, CLASS_OF, CutClass, line_minutes

Minutes = Mapping[str, Mapping[str, int]]
_OWN_SHARE = (Shares.lot_id == Holdings.lot_id) & (Shares.number == Holdings.share)
_SAYS = func.coalesce(Shares.leader, Shares.number)  # the share whose lines hold


def cut_minutes(
    connection: Connection,
    entered: Minutes,
    usual: Mapping[str, int],
    which: Collection[ColumnElement[bool]],
) -> dict[tuple[date, str], int]:
    """Minutes of the lots chosen, by kill day and species; two queries, however many.

    A line counts once for each side its owner, or who is cut as he says, holds something of.
    What is held by who hasn't answered takes the usual, a quarter half of it.
    """
    found: dict[tuple[date, str], int] = defaultdict(int)
    wanted = (*which, Lots.cancelled == "", Lots.species.in_(sorted(entered)))
    for day, species, cut_class, finished, times in connection.execute(_lines(wanted, entered)):
        known = cast("CutClass | None", cut_class or None)
        each = line_minutes(entered[species], known, finished=bool(finished))
        found[day, species] += each * int(times)
    for day, species, halves in connection.execute(_unanswered(wanted)):
        found[day, species] += -(-int(halves) * usual.get(species, 0) // 2)
    return found


def _lines(wanted: tuple[ColumnElement[bool], ...], entered: Minutes) -> Select[*tuple[Any, ...]]:
    """Lines times sides held, by day, species, class and whether something is done to them."""
    held = (
        select(
            Holdings.lot_id,
            _SAYS.label("share"),
            func.count((Holdings.carcass * 2 + Holdings.side).distinct()).label("sides"),
        )
        .join(Lots, Lots.id == Holdings.lot_id)
        .join(Shares, _OWN_SHARE)
        .where(*wanted)
        .group_by(Holdings.lot_id, _SAYS)
        .subquery()
    )
    of_class = _class_of_cut(tuple(entered)).label("class")
    finished = _finished(entered).label("finished")
    return (
        select(Lots.day, Lots.species, of_class, finished, func.sum(held.c.sides))
        .join(Orders, Orders.lot_id == Lots.id)
        .join(OrderLines, OrderLines.order_id == Orders.id)
        .join(held, (held.c.lot_id == Orders.lot_id) & (held.c.share == Orders.share))
        .where(*wanted)
        .group_by(Lots.day, Lots.species, text("3"), text("4"))
    )


def _unanswered(wanted: tuple[ColumnElement[bool], ...]) -> Select[*tuple[Any, ...]]:
    """Half sides, by day and species, held by shares for which nothing is said yet."""
    held = (
        select(Holdings.lot_id, Holdings.carcass, Holdings.side, Holdings.quarter)
        .join(Lots, Lots.id == Holdings.lot_id)
        .join(Shares, _OWN_SHARE)
        .join(Orders, (Orders.lot_id == Holdings.lot_id) & (Orders.share == _SAYS))
        .where(*wanted, ~exists().where(OrderLines.order_id == Orders.id))
        .distinct()
        .subquery()
    )
    halves = func.sum(case((held.c.quarter == "", 2), else_=1))
    return (
        select(Lots.day, Lots.species, halves)
        .join(held, held.c.lot_id == Lots.id)
        .group_by(Lots.day, Lots.species)
    )


def _finished(entered: Minutes) -> ColumnElement[int]:
    """1 where something is done at the block to the line; looked for where it takes minutes."""
    if not any(one.get("finishes") for one in entered.values()):
        return literal(0)
    some = contains(OrderLines.choice, '"finishes":')  # first: most lines have none
    done = or_(*(contains(OrderLines.choice, f'"{one}"') for one in AT_THE_BLOCK))
    return case((some & done, 1), else_=0)


def _class_of_cut(named: tuple[str, ...]) -> ColumnElement[str]:
    """The class of a line's cut; a code is of one class in every species that has it."""
    codes: dict[str, set[str]] = defaultdict(set)
    for species in named:
        for one in anatomy.catalogue(species).cuts.values():
            codes[CLASS_OF.get(one.kind, "")].add(one.code)
    return case(
        *((OrderLines.cut.in_(sorted(codes[of])), of) for of in sorted(codes) if of), else_=""
    )
