"""Who owns which of a lot: whole animals, sides, quarters, and whether the shares add up."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from shared.carcass.carcass import Holding
from shared.shop.lots import LotShare

QUARTERS: tuple[Literal["fore", "hind"], ...] = ("fore", "hind")


@dataclass(frozen=True, slots=True)
class ShareFault:
    """A place where the shares don't add up; `held` is what is held there in all.

    Codes: "over", "under", "no_such_carcass", "no_such_side", "not_a_fraction", "same_number",
    "leader". `share` is the share's number where one share is at fault.
    """

    code: str
    carcass: int = 0
    side: int = 0
    quarter: str = ""
    held: Fraction = Fraction(0)
    share: int = 0


def whole(carcass: int) -> tuple[Holding, ...]:
    """Both sides of an animal."""
    return (Holding(carcass, 1), Holding(carcass, 2))


def half(carcass: int, side: int) -> tuple[Holding, ...]:
    """One side."""
    return (Holding(carcass, side),)


def quarter(carcass: int, side: int, which: Literal["fore", "hind"]) -> tuple[Holding, ...]:
    """The fore- or hindquarter of one side."""
    return (Holding(carcass, side, which),)


def split_quarter(carcass: int, side: int) -> tuple[Holding, ...]:
    """Half of a side that is cut together and shared."""
    return (Holding(carcass, side, "", Fraction(1, 2)),)


def animal_fraction(share: LotShare, carcass: int) -> Fraction:
    """What the share has of that animal by head: a side 1/2, a quarter 1/4, fore or hind."""
    total = Fraction(0)
    for holding in share.holdings:
        if holding.carcass == carcass:
            part = Fraction(1, 2) if holding.quarter == "" else Fraction(1, 4)
            total += part * holding.fraction
    return total


def check_shares(head: int, shares: Sequence[LotShare]) -> tuple[ShareFault, ...]:
    """All faults of the shares of a lot of so many head; empty when they add up exactly.

    Two halves of one animal: none. A half and a forequarter of the other side: "under" on the
    hindquarter of that side.
    """
    faults = [*_share_faults(head, shares)]
    for carcass in range(head):
        for side in (1, 2):
            for which in QUARTERS:
                held = _held(shares, carcass, side, which)
                if held != 1:
                    code = "over" if held > 1 else "under"
                    faults.append(ShareFault(code, carcass, side, which, held))
    return tuple(faults)


def _held(shares: Sequence[LotShare], carcass: int, side: int, which: str) -> Fraction:
    total = Fraction(0)
    for share in shares:
        for holding in share.holdings:
            if (holding.carcass, holding.side) == (carcass, side) and holding.quarter in (
                "",
                which,
            ):
                total += holding.fraction
    return total


def _share_faults(head: int, shares: Sequence[LotShare]) -> Iterator[ShareFault]:
    numbers = [share.number for share in shares]
    for place, share in enumerate(shares):
        if share.number < 1 or share.number in numbers[:place]:
            yield ShareFault("same_number", share=share.number)
        if share.leader is not None and (
            share.leader == share.number or share.leader not in numbers
        ):
            yield ShareFault("leader", share=share.number)
        for one in share.holdings:
            if not 0 <= one.carcass < head:
                yield ShareFault("no_such_carcass", one.carcass, one.side, share=share.number)
            elif one.side not in (1, 2):
                yield ShareFault("no_such_side", one.carcass, one.side, share=share.number)
            elif not 0 < one.fraction <= 1:
                yield ShareFault(
                    "not_a_fraction",
                    one.carcass,
                    one.side,
                    one.quarter,
                    one.fraction,
                    share.number,
                )
