"""Block minutes of what is booked: what the orders' lines take, or else the house's usual."""

from collections import defaultdict
from collections.abc import Collection, Mapping
from datetime import date
from fractions import Fraction
from math import ceil
from typing import Any, cast

from sqlalchemy import (
    ColumnElement,
    Connection,
    Select,
    Subquery,
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
from shared.shop.block_minutes import (
    AT_THE_BLOCK,
    CLASS_OF,
    CutClass,
    line_minutes,
    part_of_side,
)

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

    A line counts for each side its owner, or who is cut as he says, holds something of: as a
    whole line, or of a split side by the part held (see `part_of_side`). What is held by who
    hasn't answered takes that part of the usual, a quarter half of it. Rounded up once a day.

    A side of two halves at steaks 6, usual 21: Anna's two lines and Bert, who hasn't answered,
    take 1/2 * 2 * 6 + 1/2 * 21 = 16 1/2, so 17.
    """
    found: dict[tuple[date, str], Fraction] = defaultdict(Fraction)
    wanted = (*which, Lots.cancelled == "", Lots.species.in_(sorted(entered)))
    for row in connection.execute(_lines(wanted, entered)):
        known = cast("CutClass | None", row.cut_class or None)
        each = line_minutes(entered[row.species], known, finished=bool(row.finished))
        found[row.day, row.species] += each * row.times * part_of_side(row.holders, row.fraction)
    for day, species, quarter, fraction, times in connection.execute(_unanswered(wanted)):
        side = fraction * times if quarter == "" else fraction * times / 2
        found[day, species] += side * usual.get(species, 0)
    return {at: ceil(minutes) for at, minutes in found.items()}


def _lines(wanted: tuple[ColumnElement[bool], ...], entered: Minutes) -> Select[*tuple[Any, ...]]:
    """Lines times sides held, by day, species, class, what is done to them, and the part held."""
    held = _held(wanted)
    of_class = _class_of_cut(tuple(entered)).label("cut_class")
    finished = _finished(entered).label("finished")
    part = (held.c.fraction, held.c.holders)
    return (
        select(Lots.day, Lots.species, of_class, finished, *part, func.count().label("times"))
        .join(Orders, Orders.lot_id == Lots.id)
        .join(OrderLines, OrderLines.order_id == Orders.id)
        .join(held, (held.c.lot_id == Orders.lot_id) & (held.c.share == Orders.share))
        .where(*wanted)
        .group_by(Lots.day, Lots.species, text("3"), text("4"), *part)
    )


def _held(wanted: tuple[ColumnElement[bool], ...]) -> Subquery:
    """Each side somebody's lines hold for, with the fraction of it and how many hold that much.

    Fore- and hindquarter of a side are one side: of the two the more holders count.
    """
    place = (Holdings.lot_id, _SAYS.label("share"), Holdings.carcass, Holdings.side)
    by_quarter = (
        select(*place, Holdings.fraction, func.count().label("holders"))
        .join(Lots, Lots.id == Holdings.lot_id)
        .join(Shares, _OWN_SHARE)
        .where(*wanted)
        .group_by(Holdings.lot_id, _SAYS, Holdings.carcass, Holdings.side, Holdings.quarter)
        .group_by(Holdings.fraction)
        .subquery()
    )
    of = by_quarter.c
    side = (of.lot_id, of.share, of.carcass, of.side, of.fraction)
    return select(*side, func.max(of.holders).label("holders")).group_by(*side).subquery()


def _unanswered(wanted: tuple[ColumnElement[bool], ...]) -> Select[*tuple[Any, ...]]:
    """What shares hold for which nothing is said yet, by day, species, quarter and fraction."""
    place = (Lots.day, Lots.species, Holdings.quarter, Holdings.fraction)
    return (
        select(*place, func.count())
        .join(Holdings, Holdings.lot_id == Lots.id)
        .join(Shares, _OWN_SHARE)
        .join(Orders, (Orders.lot_id == Holdings.lot_id) & (Orders.share == _SAYS))
        .where(*wanted, ~exists().where(OrderLines.order_id == Orders.id))
        .group_by(*place)
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
