"""How long one piece of a choice is on a side: slices by thickness, roasts by ribs or weight."""

from fractions import Fraction
from typing import NamedTuple

from shared.cutting.capacity import EXPECTED, NOTHING, Held, Window
from shared.cutting.order import Choice
from shared.cutting.ways import OnRun, WayPlan, Ways
from shared.cutting.windows import window
from shared.units import SIXTY_FOURTH


class Wanted(NamedTuple):
    """The figures of a choice that set its pieces.

    `fraction` None makes single pieces, else a block (or parts) of that fraction of all there is.
    """

    share: int
    thickness: int
    piece_ng: int | None
    ribs: int | None
    kerf: int
    denominator: int
    fraction: Fraction | None = None

    def single(self) -> "Wanted":
        """The same figures for single pieces."""
        return self._replace(fraction=None)


def wanted(choice: Choice, plan: WayPlan, kerf: int, denominator: int) -> Wanted:
    """The figures of a choice for one cut."""
    weight = choice.piece_weight
    return Wanted(
        choice.share,
        choice.thickness or plan.cut.thickness or 0,
        None if weight is None else weight.nanograms,
        choice.ribs,
        kerf,
        denominator,
    )


def piece_length(
    held: Held, on_run: OnRun, found: Window, want: Wanted, scenario: int, ways: Ways
) -> int:
    """How long one piece is: by ribs, by weight, by share of the window, else the window.

    Worked numbers: 3 of 7 ribs over 14 in are 6 in; 3 lb of a window of 10 in that weighs 9 lb
    are 3.33 in, rounded to 3 21/64 in.
    """
    length = found.hi - found.lo
    bounds = held.side.bounds[scenario][on_run.run]
    if want.ribs is not None:
        stretches = ways.runs[on_run.run].stretches
        ribbed = [n for n in range(found.first, found.last + 1) if stretches[n].ribs]
        ribs = sum([stretches[n].ribs for n in ribbed])
        if ribs:
            return sum([bounds[n + 1] - bounds[n] for n in ribbed]) * want.ribs // ribs
    if want.piece_ng is not None:
        weight = window_ng(held, on_run, ways)[2]
        if weight > 0:
            above = length * want.piece_ng * weight.denominator
            below = weight.numerator * SIXTY_FOURTH
            sixty_fourths = max(1, (2 * above + below) // (2 * below))
            return min(length, sixty_fourths * SIXTY_FOURTH)
    share = on_run.take.piece_share
    if share is not None:
        return length * share.numerator // share.denominator
    return length


def window_ng(held: Held, on_run: OnRun, ways: Ways) -> tuple[int, int, Fraction]:
    """Ends of a take's window at expected lengths, and the expected weight of its lanes there."""
    known = held.known.weighed
    if on_run.number not in known:
        known[on_run.number] = _window_ng(held, on_run, ways)
    return known[on_run.number]


def _window_ng(held: Held, on_run: OnRun, ways: Ways) -> tuple[int, int, Fraction]:
    there = window(held, on_run, EXPECTED, ways)
    if there is None:
        return 0, 0, NOTHING
    total = NOTHING
    bounds = held.side.bounds[EXPECTED][on_run.run]
    for place in range(there.first, there.last + 1):
        lo, hi = bounds[place], bounds[place + 1]
        inside = min(hi, there.hi) - max(lo, there.lo)
        there_now = ways.at[on_run.run][place]
        weight = sum([held.side.part_ng(part) for bit, part in there_now if bit & on_run.lanes])
        total += weight if inside == hi - lo else Fraction(weight * inside, hi - lo)
    return there.lo, there.hi, total
