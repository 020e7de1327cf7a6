"""A share cut as another says: its packages, dealt in turn from the leader's lines."""

from collections.abc import Iterable, Mapping
from fractions import Fraction

from shared.carcass.carcass import Share
from shared.cutting.capacity import NOTHING, in_turn


def packages_dealt(packages: int, leader: int, shares: Iterable[Share]) -> Mapping[int, int]:
    """How many of a leader's packages go to each owner: one each in turn, the lowest number first.

    By what each holds of the animals. Worked numbers: 7 packages of two halves of a side are 4
    and 3; of a half and two quarters 5 packages are 3, 1 and 1. The odd ones go to the lower
    share numbers.
    """
    owners = parts_of(leader, shares)
    turn = in_turn(list(owners.values()))
    return {number: turn.dealt(packages, at) for at, number in enumerate(owners)}


def parts_of(leader: int, shares: Iterable[Share]) -> Mapping[int, Fraction]:
    """What the leader and each share he leads hold of all they hold; the lowest number first."""
    owners = {
        one.number: _of_animal(one)
        for one in sorted(shares, key=lambda one: one.number)
        if leader in (one.number, one.leader)
    }
    whole = sum(owners.values(), NOTHING)
    return {number: held / whole for number, held in owners.items()}


def _of_animal(share: Share) -> Fraction:
    """What a share holds, in animals: a side is half of one, a quarter a fourth."""
    return sum([held.fraction / (4 if held.quarter else 2) for held in share.holdings], NOTHING)
