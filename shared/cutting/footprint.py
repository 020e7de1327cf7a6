"""Where an option may take anything, as bits: so that what can't touch is known at a glance."""

from shared.cutting.take import Option
from shared.cutting.ways import WayPlan, WayPrint, Ways

Ground = tuple[int, int, int]  # carcass, side (0 the animal), share (0 all, else its account)


class Footprints:
    """Footprints of options: a bit for each lane of each stretch of each run, and for each part.

    Never less than what an option can take at any lengths, with its last kerf, which may fall into
    the next stretch; of an owner of a part of a side also the lanes his account is charged for.

    Worked number: chops of the rib and a roast of the chuck, which lies before it, have the rib's
    first stretch in common (the roast's last kerf); the roast and chops of the loin have nothing.
    """

    def __init__(self, ways: Ways) -> None:
        """Number the bits."""
        self._first: list[int] = []
        self._ways = ways.prints
        self._shift: dict[Ground, int] = {}
        self._wide = 0
        for run in ways.runs:
            self._first.append(self._wide)
            self._wide += len(run.stretches) * len(run.lanes)
        self._runs = ways.runs
        self._parts = {code: self._wide + n for n, code in enumerate(ways.catalogue.parts)}
        self._wide += len(self._parts)

    def of(self, option: Option) -> int:
        """The footprint of an option."""
        found, share = 0, option.wanted.share
        for plan in option.ways:
            known = self._ways.get(id(plan))
            if known is None:
                known = self._ways[id(plan)] = self._of_way(plan)
            _, bits, charged, of_animal = known
            for held in option.held:
                side = held.side.number
                found |= bits << self._at((option.carcass, side, 0))
                if held.split:
                    found |= charged << self._at((option.carcass, side, share))
            if of_animal or not option.held:
                found |= bits << self._at((option.carcass, 0, 0))
        return found

    def _at(self, ground: Ground) -> int:
        shift = self._shift.get(ground)
        if shift is None:
            shift = self._shift[ground] = len(self._shift) * self._wide
        return shift

    def _of_way(self, plan: WayPlan) -> WayPrint:
        bits = charged = 0
        on_run = plan.on_run
        if on_run is not None:
            bits = self._lanes(on_run.run, on_run.first, on_run.last + 1, on_run.lanes)
            charged = self._lanes(on_run.run, 0, 0, on_run.lanes)
        for off in plan.off_run:
            bits |= 1 << self._parts[off.part.code]
            if off.run >= 0:
                bits |= self._lanes(off.run, off.stretch, off.stretch + 1, off.lane)
                charged |= self._lanes(off.run, 0, 0, off.lane)
        return WayPrint(plan, bits, charged, any(off.part.per == "animal" for off in plan.off_run))

    def _lanes(self, run: int, first: int, last: int, lanes: int) -> int:
        """Some lanes of stretches from first to last, as far as the run goes."""
        bits, wide = 0, len(self._runs[run].lanes)
        for stretch in range(first, min(last, len(self._runs[run].stretches) - 1) + 1):
            bits |= lanes << self._first[run] + stretch * wide
        return bits
