"""Block minutes by class of cut, as the shop enters them: what a line takes on each side."""

from collections.abc import Iterable, Mapping
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
