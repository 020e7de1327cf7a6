"""What is charged of an animal that ended before it was cut: never work that wasn't done.

By the trade: what was killed owes the kill, whatever the inspector finds after it; what wasn't
killed owes neither kill nor cutting. Getting rid of a carcass is a service of its own, charged
where the card has it (disposal $10-12 a head at 3 of 10 plants, MSU Extension 2013; that it is
charged on an animal that wasn't killed: common practice, no source).
"""

from collections.abc import Iterable
from typing import Final, Literal

from shared.billing.rates import HANGING, MADE, OF_MEAT, Charge

Ended = Literal["", "not_come", "refused", "not_killed", "not_cut"]
ENDINGS: Final[tuple[Ended, ...]] = ("not_come", "refused", "not_killed", "not_cut")

DISPOSAL: Final = "disposal"


def ended(state: str, *, killed: bool) -> Ended:
    """How an animal in that state ended, "" while it goes on.

    Condemned before the kill is "not_killed", after it "not_cut"; "refused" is custom-exempt, at
    the pen; "not_come" was booked and never brought.
    """
    if state == "condemned":
        return "not_cut" if killed else "not_killed"
    if state == "refused":
        return "refused"
    return "not_come" if state == "not_come" else ""


def stands(charge: Charge, how: Ended, *, weighed: bool = False) -> bool:
    """Whether a charge is owed of an animal that ended so.

    Kill $100, disposal $12, cutting $0.70/lb of a steer condemned after the kill: $112; dead in
    the pen: $12; not brought: nothing. Killed by the pound it is owed on the weight there is, and
    never waits for one.
    """
    if not how:
        return True
    if how == "not_come" or charge.basis in MADE:
        return False
    if charge.basis in HANGING and not weighed:
        return False
    if how == "not_cut":
        works = charge.code in ("kill", DISPOSAL) or charge.basis not in HANGING
        return works and charge.code not in OF_MEAT
    return charge.code == DISPOSAL


def all_ended(endings: Iterable[Ended]) -> bool:
    """Whether nothing is left to be cut of the animals of a share; False of none."""
    found = list(endings)
    return bool(found) and all(found)
