"""The state of each primal on each side, where the order tells the two sides apart."""

from typing import TYPE_CHECKING

from desktop.look.patterns import Mark

if TYPE_CHECKING:
    from desktop.counter.order_desk import OrderDesk
    from shared.carcass.catalogue import Part


def held_primals(desk: "OrderDesk") -> frozenset[str]:
    """The primals the shown owner has something of; a forequarter has no round."""
    mine = {one.cut for one in desk.says.choices}
    asked = {desk.catalogue.cuts[code].primal for code in mine}
    parts = {desk.catalogue.parts[code].primal for code in held_parts(desk)}
    drawn_from_none = set(desk.catalogue.primals) - {
        part.primal for part in desk.catalogue.parts.values()
    }
    return frozenset(parts | asked | drawn_from_none)


def held_parts(desk: "OrderDesk") -> frozenset[str]:
    """The parts the shown owner has something of, on whichever side."""
    holdings = next(one.holdings for one in desk.question.shares if one.number == desk.share)
    quarters = {one.quarter for one in holdings}

    def had(part: "Part") -> bool:
        whole = "" in quarters or part.quarter in ("", *quarters) or part.per == "animal"
        return bool(quarters) and whole

    return frozenset(code for code, part in desk.catalogue.parts.items() if had(part))


def sides_apart(desk: "OrderDesk") -> bool:
    """Whether the shown owner has both sides of one carcass and they are cut differently."""
    holdings = next(one.holdings for one in desk.question.shares if one.number == desk.share)
    if {(one.carcass, one.side) for one in holdings} != {(0, 1), (0, 2)}:
        return False
    return _made(desk, 1) != _made(desk, 2)


def side_marks(desk: "OrderDesk", side: int) -> dict[str, Mark]:
    """The state of each primal on one side of the first carcass."""
    primal_of = {part.code: part.primal for part in desk.catalogue.parts.values()}
    verdicts = dict(desk.answer.group_verdicts)
    marks: dict[str, Mark] = {}
    for line in desk.answer.lines:
        if line.share == desk.says.share and line.side in (0, side):
            primal = desk.catalogue.cuts[line.cut].primal
            tight = verdicts.get(line.line) in ("tight", "asks")
            marks[primal] = Mark.TIGHT if tight else marks.get(primal, Mark.SETTLED)
    for part in desk.open_parts():
        if part.side in (0, side):
            marks[primal_of[part.part]] = Mark.OPEN
    lines = {one.line: one for one in desk.order.choices}
    for conflict in desk.answer.conflicts:
        if conflict.where.side in (0, side):
            for number in conflict.lines:
                if number in lines:
                    marks[desk.catalogue.cuts[lines[number].cut].primal] = Mark.CONTESTED
    return marks


def _made(desk: "OrderDesk", side: int) -> list[tuple[str, str, int]]:
    """What the plan makes on one side, and what is open there."""
    made = [
        (one.cut, one.way, one.count)
        for one in desk.answer.lines
        if one.share == desk.share and one.side == side
    ]
    still = [("", one.part, 0) for one in desk.open_parts() if one.side == side]
    return sorted(made + still)
