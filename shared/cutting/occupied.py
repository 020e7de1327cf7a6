"""What is taken so far, at expected lengths: lanes, parts, and split shares' accounts."""

from dataclasses import dataclass, field
from fractions import Fraction

from shared.cutting.answer import PlanLine
from shared.cutting.capacity import NOTHING, Interval
from shared.cutting.lanes import bits_of
from shared.cutting.take import Lane, Strip

PartPlace = tuple[int, int, str]
Place = Lane | PartPlace
Account = tuple[int, Strip, int]  # share, strip, lane
Used = tuple[int, PartPlace]  # what a share has of a part
Fractions = tuple[Fraction, ...]


@dataclass(slots=True)
class Occupied:
    """Intervals by strip and lane, and of parts so many of `denominator`.

    `by_share` are fractions of parts by share, one after another as they were taken, and
    `accounts` lengths by share; both are kept only where a side is split.
    """

    denominator: int
    split: bool
    lanes: dict[tuple[Strip, int], tuple[Interval, ...]] = field(default_factory=lambda: {})
    parts: dict[PartPlace, int] = field(default_factory=lambda: {})
    by_share: dict[Used, Fractions] = field(default_factory=lambda: {})
    accounts: dict[Account, int] = field(default_factory=lambda: {})

    def add_length(self, strip: Strip, lanes: int, start: int, end: int) -> None:
        """Note that lanes are taken from start to end, kerf included."""
        mine, taken = self.lanes, ((start, end),)
        for bit in bits_of(lanes):
            key = (strip, bit)
            mine[key] = mine[key] + taken if key in mine else taken

    def add_part(self, place: PartPlace, amount: int) -> None:
        """Note that so much of a part is taken."""
        self.parts[place] = self.parts.get(place, 0) + amount

    def charge(self, share: int, strip: Strip, lanes: int, length: int) -> None:
        """Note that a split share took a length of lanes, kerf included."""
        for bit in bits_of(lanes):
            key = (share, strip, bit)
            self.accounts[key] = self.accounts.get(key, 0) + length

    def used_by(self, share: int, strip: Strip, lane: int) -> int:
        """Length of a lane a split share has taken."""
        return self.accounts.get((share, strip, lane), 0)

    def used_of(self, share: int, place: PartPlace) -> Fraction:
        """What fraction of a part of a side a share has taken."""
        taken = self.by_share.get((share, place))
        if taken is None:
            return NOTHING
        if len(taken) == 1:
            return taken[0]
        above, below = 0, 1
        for one in taken:
            number, whole = one.numerator, one.denominator
            if whole == below:
                above += number
            else:
                above, below = above * whole + number * below, below * whole
        return Fraction(above, below)

    def note(self, made: PlanLine) -> None:
        """Note what a line takes for its share, where a side is split."""
        if self.split:
            mine, share, carcass, side = self.by_share, made.share, made.carcass, made.side
            for part, fraction in made.taken:
                key = (share, (carcass, side, part))
                before = mine.get(key)
                mine[key] = (fraction,) if before is None else (*before, fraction)

    def join(self, other: "Occupied") -> None:
        """Add what another group of lines takes: it touches other lanes and parts."""
        self.lanes.update(other.lanes)
        self.parts.update(other.parts)
        self.accounts.update(other.accounts)
        for key, fractions in other.by_share.items():
            self.by_share[key] = self.by_share.get(key, ()) + fractions
