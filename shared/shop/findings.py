"""What the block reports back of a carcass, and what the office made of our own mistakes."""

from dataclasses import dataclass, replace
from datetime import datetime
from typing import Literal

from shared.cutting.order import Amount, Choice
from shared.units import Weight

FindingKind = Literal["measured", "lost", "cut_otherwise"]
Answered = Literal["credited", "no_credit"]
SheetWords = Literal["window", "en", "es", "both"]


@dataclass(frozen=True, slots=True)
class Finding:
    """One report. `what` is a stretch measured, a part lost, or the cut of a line.

    `length` is what was measured, or the thickness it was cut at; `count` how many came out on
    that side, 0 where nobody said; `weight` the pounds lost, None for all of it. `ours` says
    that the mistake was the shop's own. side 0 is the animal. `credit` says how it was answered,
    `withdrawn` why it was taken back: it no longer counts.
    """

    animal_id: int
    kind: FindingKind
    side: int
    what: str
    line: int = 0
    count: int = 0
    length: int | None = None
    weight: Weight | None = None
    ours: bool = False
    reason: str = ""
    id: int = 0
    at: datetime | None = None
    person: str = ""
    tag: str = ""
    species: str = ""
    index: int = 0
    order_number: int = 0
    owner: str = ""
    credit: Answered | None = None
    withdrawn: str = ""


@dataclass(frozen=True, slots=True)
class BlockRules:
    """Whether the shop's own figures are used, and which language the block's sheet speaks."""

    own_figures: bool = False
    sheet_words: SheetWords = "window"
    version: int = 0


def as_cut(choice: Choice, found: Finding) -> Choice:
    """The line as the block cut it, to plan what is left; what was asked stays in the order.

    Worked number: 8 T-bones at 1¼ in asked, 4 pinned on each side; "cut at 1 in, 5 came out on
    side 1" plans 9 at 1 in, 5 and 4. A line that takes everything only changes its thickness.
    """
    thickness = found.length or choice.thickness
    sides = {(carcass, side): count for carcass, side, count in choice.pinned}
    here = (found.index, found.side)
    if not found.count or choice.amount.kind not in ("slices", "pieces") or here not in sides:
        return replace(choice, thickness=thickness)
    sides[here] = found.count
    pinned = tuple((carcass, side, count) for (carcass, side), count in sorted(sides.items()))
    amount = Amount(choice.amount.kind, sum(sides.values()))
    return replace(choice, thickness=thickness, amount=amount, pinned=pinned)
