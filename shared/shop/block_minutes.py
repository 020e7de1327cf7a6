"""Block minutes by class of cut, as the shop enters them: what a line takes on each side."""

from collections.abc import Iterable, Mapping
from fractions import Fraction
from typing import Literal

from shared.carcass.catalogue import Cut, CutKind, UsualLine

CutClass = Literal["roasts", "steaks", "ground", "finishes"]
CLASSES: tuple[CutClass, ...] = ("roasts", "steaks", "ground", "finishes")

# Kinds that take no minutes of their own (offal, bones, fat) are in those of the side.
CLASS_OF: Mapping[CutKind, CutClass] = {
    "whole": "roasts",
    "roast": "roasts",
    "ribs": "roasts",
    "steaks": "steaks",
    "pool": "ground",
    "to_trim": "ground",
}
# Done by hand or at a machine beside the block; cures, smoke and drying take their own days.
AT_THE_BLOCK = (
    *("butterflied", "cubed", "frenched", "links", "patties", "sliced", "stuffed", "tenderized"),
    "tied",
)


def line_minutes(entered: Mapping[str, int], cut_class: CutClass | None, *, finished: bool) -> int:
    """Minutes one line takes on one side.

    Roasts at 4 minutes and finishes at 3: a tied roast 4 + 3 = 7, a liver 0.
    """
    of_class = 0 if cut_class is None else entered.get(cut_class, 0)
    return of_class + (entered.get("finishes", 0) if finished else 0)


def part_of_side(holders: int, fraction: Fraction) -> Fraction:
    """How much of the work on a side a line is: what those it holds for have of that side.

    Split sides are cut alike, so the work on one is one side's work, however many answer for it.
    Two owners of half a side, each with a line of steaks at 6 minutes: 1/2 * 6 + 1/2 * 6 = 6, as
    for one owner of all of it; both cut as one of them says: 2 * 1/2 = 1. A quarter held whole is
    sawn for its owner alone, and two that are cut as one are still one side: 1.
    """
    return min(Fraction(1), holders * fraction)


def usual_minutes(
    entered: Mapping[str, int], cuts: Mapping[str, Cut], usual: Iterable[UsualLine]
) -> int:
    """Minutes the house's usual takes on one side.

    One roast, two lines of steaks and the ground at 4, 6 and 5 minutes: 4 + 2 * 6 + 5 = 21.
    """
    return sum(
        line_minutes(
            entered,
            CLASS_OF.get(cuts[one.cut].kind),
            finished=any(code in AT_THE_BLOCK for code in one.finishes),
        )
        for one in usual
    )
