"""Who of a lot may lead whom: owners of one piece of meat, of whom one says how it is cut."""

from collections.abc import Iterable, Sequence
from dataclasses import replace

from shared.carcass.carcass import Holding
from shared.shop.holdings import QUARTERS
from shared.shop.lots import LotShare


def lead_fault(shares: Sequence[LotShare], share: int, leader: int) -> str:
    """Why that share can't be cut as `leader` says; "" where it can.

    Codes: "not_together" where the two don't divide exactly the same sides or quarters (an owner
    of a whole side, of another animal, or of more than is divided), "leader_led" where the leader
    is cut as another says himself, "leads_others" where others are cut as this share says. Of a
    side held by shares 1 and 2 by half, 2 may be cut as 1 says; the owner of the other side can't.
    """
    by = {one.number: one for one in shares}
    if share == leader or share not in by or leader not in by:
        return "not_together"
    mine, theirs = _divided(by[share].holdings), _divided(by[leader].holdings)
    if not mine or mine != theirs:
        return "not_together"
    if by[leader].leader is not None:
        return "leader_led"
    if any(one.leader == share for one in shares):
        return "leads_others"
    return ""


def kept_leaders(
    before: Sequence[LotShare], after: Sequence[LotShare]
) -> tuple[tuple[LotShare, ...], tuple[LotShare, ...]]:
    """Shares shared out anew with who leads whom as before, and the old ones it is lost of.

    It holds where the same owner has that share still, his leader is an owner still, at whatever
    number, and the two divide one piece. Of split quarters with 2 cut as 1 says, halves lose it:
    each has a side of his own then.
    """
    made, lost = list(after), list[LotShare]()
    for one in before:
        if one.leader is None:
            continue
        led = _same(one, [each for each in made if each.number == one.number])
        says = next((each for each in before if each.number == one.leader), None)
        there = None if says is None else _same(says, made)
        if led is None or there is None or lead_fault(made, led.number, there.number):
            lost.append(one)
        else:
            made[made.index(led)] = replace(led, leader=there.number)
    return tuple(made), tuple(lost)


def _same(owner: LotShare, shares: Sequence[LotShare]) -> LotShare | None:
    """The share of the same owner, at the same number if it can be; one to be named by number."""
    his = [one for one in shares if one.customer_id == owner.customer_id]
    if owner.customer_id is None:
        his = [one for one in his if one.number == owner.number]
    return next((one for one in his if one.number == owner.number), next(iter(his), None))


def divides_with(shares: Sequence[LotShare], share: int) -> tuple[int, ...]:
    """The other shares that divide exactly the same sides or quarters, by number."""
    by = {one.number: one for one in shares}
    mine = _divided(by[share].holdings if share in by else ())
    return tuple(
        sorted(
            one.number
            for one in shares
            if mine and one.number != share and _divided(one.holdings) == mine
        )
    )


def _divided(holdings: Iterable[Holding]) -> frozenset[tuple[int, int, str]]:
    """The quarters held by a part each; empty where one is held wholly."""
    held = tuple(holdings)
    if any(one.fraction >= 1 for one in held):
        return frozenset()
    return frozenset(
        (one.carcass, one.side, which)
        for one in held
        for which in ((one.quarter,) if one.quarter else QUARTERS)
    )
