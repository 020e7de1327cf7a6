"""The ways a primal may be cut, as they are offered by number: the house's usual first."""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop.counter.line_dialog import blank_choice, ways_of_cutting
from desktop.counter.side_marks import held_parts, held_primals
from desktop.counter.usual_fill import parts_of, usual_choice
from shared.curing.asked import left_open

if TYPE_CHECKING:
    from desktop.counter.order_desk import OrderDesk
    from shared.cutting.order import Choice

MOST = 9


@dataclass(frozen=True, slots=True)
class Offer:
    """One way of cutting: the lines it puts on the order; `usual` is the house's own."""

    number: int
    choices: "tuple[Choice, ...]"
    usual: bool = False


def to_do(desk: "OrderDesk", primal: str) -> bool:
    """Whether something of a primal is still to be asked: an open part, or trim nobody grinds."""
    if desk.leader is not None:
        return False
    if any(desk.catalogue.parts[one.part].primal == primal for one in desk.open_parts()):
        return True
    if not any(one.primal == primal and _pool(desk, one.cut) for one in desk.catalogue.usual):
        return False
    return not any(_pool(desk, one.cut) for one in desk.order.choices)


def offers(desk: "OrderDesk", primal: str) -> tuple[Offer, ...]:
    """At most nine ways: the usual of the primal, then every cut of it in the block's order.

    While something of the primal is open, only cuts that may take some of it.
    """
    return tuple(
        Offer(number, lines, is_usual)
        for number, (lines, is_usual) in enumerate(_ways(desk, primal)[:MOST], start=1)
    )


def more_than_offered(desk: "OrderDesk", primal: str) -> int:
    """How many more ways there are that have no number."""
    return max(0, len(_ways(desk, primal)) - MOST)


def _ways(desk: "OrderDesk", primal: str) -> "list[tuple[tuple[Choice, ...], bool]]":
    open_now = {
        one.part for one in desk.open_parts() if desk.catalogue.parts[one.part].primal == primal
    }
    species, held = desk.catalogue.species, held_parts(desk)

    def fits(code: str) -> bool:
        if not _can_be_had(desk, code, held):
            return False
        return not open_now or _pool(desk, code) or not open_now.isdisjoint(parts_of(species, code))

    usual = tuple(
        usual_choice(one, desk.share)
        for one in desk.catalogue.usual
        if one.primal == primal and fits(one.cut)
    )
    cuts = [code for code in ways_of_cutting(desk.catalogue, primal) if fits(code)]
    if len(usual) == 1:
        cuts = [code for code in cuts if code != usual[0].cut]
    ways = [(usual, True)] if usual else []
    return ways + [((blank_choice(desk.catalogue, code, desk.share),), False) for code in cuts]


def _can_be_had(desk: "OrderDesk", code: str, held: frozenset[str]) -> bool:
    """Whether a way of the cut has what it takes among the owner's parts.

    Who has a forequarter is offered no uncut hindquarter.
    """
    ways = desk.catalogue.cuts[code].ways
    if not ways or _pool(desk, code):
        return True
    there = not held.isdisjoint(parts_of(desk.catalogue.species, code))
    return there and any(all(one.part in held for one in way.parts) for way in ways)


def next_to_do(desk: "OrderDesk", after: str) -> str:
    """The next primal in cutting order with something to be asked, "" when there is none."""
    primals = desk.catalogue.primals
    at = primals.index(after) if after in primals else -1
    around = (*primals[at + 1 :], *primals[: at + 1])
    return next((one for one in around if to_do(desk, one)), "")


def first_to_see(desk: "OrderDesk") -> str:
    """Where an order is opened: what can't stand or is to be agreed on, else what is open, else "".

    Both in cutting order; who opens an order comes for what stops it.
    """
    cuts, mine = desk.catalogue.cuts, desk.says.choices
    stopped = {line for one in desk.answer.conflicts for line in one.lines}
    stopped |= {line for one in desk.answer.questions for line in one.lines}
    primals = {
        cuts[one.cut].primal
        for one in mine
        if one.line in stopped or left_open(desk.catalogue, one.cut, one.finishes)
    }
    held = held_primals(desk)
    there = (one for one in desk.catalogue.primals if one in primals and one in held)
    return next(there, "") or next_to_do(desk, "")


def _pool(desk: "OrderDesk", cut: str) -> bool:
    return desk.catalogue.cuts[cut].kind == "pool"
