"""Ticks of a carcass: a line is made once it is ticked at every place of the lot it is cut at."""

from dataclasses import dataclass, field

from desktop.block.cutting import Cutting, Spot


@dataclass(slots=True)
class Ticks:
    """Which places are ticked, as the store has them; a line is made once all of its are."""

    spots: set[Spot] = field(default_factory=set[Spot])

    def is_made(self, cutting: Cutting, spot: Spot) -> bool:
        """Whether a place is ticked, or its line is made in the store."""
        return spot in self.spots or spot[2] in cutting.made()

    def set(self, cutting: Cutting, spot: Spot, made: bool) -> bool | None:
        """Tick a place or take the tick back; what the line in the store becomes, None: as it is.

        A line cut on both sides is made when both are ticked, and no longer when one isn't.
        """
        places = spots_of(cutting, spot[2])
        if spot[2] in cutting.made():
            self.spots |= places
        if made:
            self.spots.add(spot)
        else:
            self.spots.discard(spot)
        whole = places <= self.spots and _all_here(cutting, spot[2])
        return whole if whole is not (spot[2] in cutting.made()) else None


def spots_of(cutting: Cutting, line: int) -> set[Spot]:
    """The places of a line on this carcass."""
    return {spot for step in cutting.steps for spot, _ in step.lines if spot[2] == line}


def unmade(cutting: Cutting, ticks: Ticks) -> int:
    """How many places of this carcass are not ticked."""
    return sum(not ticks.is_made(cutting, spot) for step in cutting.steps for spot, _ in step.lines)


def _all_here(cutting: Cutting, line: int) -> bool:
    """Whether no other carcass of the lot still waits for the line."""
    others = {one.carcass for one in cutting.answer.lines if one.line == line}
    others.discard(cutting.animal.index)
    waiting = {one.index for one in cutting.lot.animals if one.state not in ("cut", "condemned")}
    return not (others & waiting)
