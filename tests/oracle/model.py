"""The planner's question put to a general solver: OR-tools CP-SAT, one worker, fixed seed.

Every piece is an optional interval; in each lane of a side no two may overlap, kerf included;
fractions of parts add up to no more than the part. The solver that runs out of time is an error,
never agreement.
"""

from collections.abc import Iterable, Mapping, Sequence
from fractions import Fraction
from itertools import pairwise
from math import lcm

from ortools.sat.python import cp_model

from tests.oracle.bundles import Bundle, Cell, Charge, Lane, Stick
from tests.oracle.demands import Demand, Need, demand
from tests.oracle.lot import Lot
from tests.oracle.species_file import LEVELS

SECONDS = 60  # a busy machine is no reason to call a question undecided
VERDICTS = {"sure": "sure", "expected": "likely", "most": "tight"}
NOBODY: frozenset[str] = frozenset()
WORST = ("sure", "likely", "tight", "asks", "cant")


class OutOfTimeError(Exception):
    """The solver did not decide within its time."""


class _Model:
    """One question to the solver: can these demands be met together?

    `owners_settle`: these parts, undivided and one to an animal, may be promised to each owner.
    """

    def __init__(self, demands: Iterable[Demand], owners_settle: frozenset[str] = NOBODY) -> None:
        self.owners_settle = owners_settle
        self.cp = cp_model.CpModel()
        self.lanes: dict[Lane, list[cp_model.IntervalVar]] = {}
        self.room: dict[Lane, list[tuple[Stick, list[cp_model.IntVar]]]] = {}
        self.cells: dict[tuple[int, Cell], list[tuple[Fraction, cp_model.IntVar]]] = {}
        self.accounts: dict[object, list[tuple[Charge, cp_model.IntVar]]] = {}
        self.possible = True
        for one in demands:
            for need in one.needs:
                self._need(need, one.share)
        for intervals in self.lanes.values():
            if len(intervals) > 1:
                self.cp.add_no_overlap(intervals)
        for lane in self.room:
            self._redundant_sum(lane)
        for cell in self.cells.values():
            self._cell(cell)
        for charges in self.accounts.values():
            self._account(charges)

    def feasible(self) -> bool:
        """Whether there is any solution; the solver must decide."""
        if not self.possible:
            return False
        try:
            status = self._solve(presolve=True)
        except IndexError:
            # OR-tools 9.15 loses its way in the presolve of a model in some ten thousand
            status = self._solve(presolve=False)
        if status in (cp_model.OPTIMAL, cp_model.FEASIBLE):
            return True
        if status != cp_model.INFEASIBLE:
            raise OutOfTimeError(status)
        return False

    def _solve(self, presolve: bool) -> cp_model.CpSolverStatus:
        solver = cp_model.CpSolver()
        solver.parameters.num_workers = 1
        solver.parameters.random_seed = 1
        solver.parameters.max_time_in_seconds = SECONDS
        solver.parameters.cp_model_presolve = presolve
        return solver.solve(self.cp)

    def _need(self, need: Need, share: int) -> None:
        counts: list[tuple[Bundle, cp_model.IntVar]] = []
        for bundle in need.bundles:
            most = min(need.total, bundle.at_most())
            if most > 0:
                counts.append((bundle, self._bundle(bundle, most, share)))
        if sum(min(need.total, bundle.at_most()) for bundle in need.bundles) < need.total:
            self.possible = False
            return
        self.cp.add(sum(count for _, count in counts) == need.total)
        for carcass, side, number in need.pinned:
            here = [u for one, u in counts if (one.carcass, one.side) == (carcass, side)]
            if here:
                self.cp.add(sum(here) == number)
            elif number:
                self.possible = False

    def _bundle(self, bundle: Bundle, most: int, owner: int) -> cp_model.IntVar:
        """Units made of a bundle; the first so many of its pieces are there, in order."""
        count = self.cp.new_int_var(0, most, "")
        there = [self.cp.new_bool_var("") for _ in range(most)]
        self.cp.add(sum(there) == count)
        for before, after in pairwise(there):
            self.cp.add_implication(after, before)
        for stick in bundle.sticks:
            self._stick(stick, there)
        for cell, share in bundle.cells:
            settled = cell[1] == 0 and cell[2] in self.owners_settle
            self.cells.setdefault((owner if settled else 0, cell), []).append((share, count))
        for charge in bundle.charges:
            self.accounts.setdefault(charge.account, []).append((charge, count))
        return count

    def _stick(self, stick: Stick, there: Sequence[cp_model.IntVar]) -> None:
        step = stick.size + stick.kerf
        starts = [[lo, hi - stick.size] for lo, hi in stick.open if hi - lo >= stick.size]
        if not starts:
            for one in there:
                self.cp.add(one == 0)
            return
        domain = cp_model.Domain.from_intervals(starts)
        before: cp_model.IntVar | None = None
        for place, one in enumerate(there):
            start = self.cp.new_int_var_from_domain(domain, "")
            if stick.anchor == "head":
                self.cp.add(start == stick.lo + place * step).only_enforce_if(one)
            elif stick.anchor == "tail":
                self.cp.add(start == stick.hi - stick.size - place * step).only_enforce_if(one)
            elif before is not None:
                self.cp.add(start >= before + step).only_enforce_if(one)
            before = start
            if step > 0:
                interval = self.cp.new_optional_fixed_size_interval_var(start, step, one, "")
                for lane in stick.lanes:
                    self.lanes.setdefault(lane, []).append(interval)
        for lane in stick.lanes:
            self.room.setdefault(lane, []).append((stick, list(there)))

    def _redundant_sum(self, lane: Lane) -> None:
        """Implied by no-overlap, and soon seen: all pieces with kerf fit from end to end."""
        sticks = self.room[lane]
        lo = min(stick.open[0][0] for stick, _ in sticks)
        hi = max(stick.open[-1][1] for stick, _ in sticks)
        kerf = max(stick.kerf for stick, _ in sticks)
        total = sum((stick.size + stick.kerf) * sum(there) for stick, there in sticks)
        self.cp.add(total <= hi - lo + kerf)

    def _cell(self, takers: Sequence[tuple[Fraction, cp_model.IntVar]]) -> None:
        whole = lcm(*(share.denominator for share, _ in takers))
        self.cp.add(sum(int(share * whole) * count for share, count in takers) <= whole)

    def _account(self, charges: Sequence[tuple[Charge, cp_model.IntVar]]) -> None:
        """A split share takes no more than its fraction of a lane or part."""
        room = max(charge.room + charge.kerf for charge, _ in charges)
        amounts = [charge.amount for charge, _ in charges]
        whole = lcm(room.denominator, *(amount.denominator for amount in amounts))
        total = sum(int(charge.amount * whole) * count for charge, count in charges)
        self.cp.add(total <= int(room * whole))


def can_stand(lot: Lot, lines: Iterable[int], owners_settle: frozenset[str] = NOBODY) -> str | None:
    """The verdict of some lines of a lot alone: the worst of its groups, None where one can't."""
    chosen = set(lines)
    choices = [one for one in lot.choices if one["line"] in chosen]
    by_level = {level: [demand(lot, one, level) for one in choices] for level in LEVELS}
    if any(one.refused for one in by_level["expected"]):
        return None
    if _Model(by_level["sure"], owners_settle).feasible():
        return "sure"
    worst = "sure"
    for group in groups(by_level):
        verdict = _group_verdict(by_level, group, owners_settle)
        if verdict is None:
            return None
        worst = max(worst, verdict, key=WORST.index)
    return worst


def fits(lot: Lot) -> bool:
    """Whether all lines of a lot fit where every length runs to its most."""
    demands = [demand(lot, one, "most") for one in lot.choices]
    return not any(one.refused for one in demands) and _Model(demands).feasible()


def _group_verdict(
    by_level: Mapping[str, list[Demand]], group: set[int], owners_settle: frozenset[str]
) -> str | None:
    for level in LEVELS:
        mine = [one for one in by_level[level] if one.line in group]
        if _Model(mine, owners_settle).feasible():
            return VERDICTS[level]
    return None


def groups(by_level: Mapping[str, list[Demand]]) -> list[set[int]]:
    """Lines that touch a common lane or part, directly or through others."""
    found: list[tuple[set[int], set[object]]] = []
    touched: dict[int, set[object]] = {}
    for demands in by_level.values():
        for one in demands:
            mine = touched.setdefault(one.line, set())
            for need in one.needs:
                for bundle in need.bundles:
                    mine |= bundle.touches()
    for line, cells in touched.items():
        lines, together = {line}, set(cells)
        apart: list[tuple[set[int], set[object]]] = []
        for other, others in found:
            if others & together:
                lines |= other
                together |= others
            else:
                apart.append((other, others))
        found = [*apart, (lines, together)]
    return [lines for lines, _ in found]


def undivided_singles(lot: Lot) -> frozenset[str]:
    """Tongue and hanger: parts that come one to an animal and aren't shared by the package."""
    return frozenset(
        code
        for code, part in lot.species.parts.items()
        if part.get("per", "side") == "animal" and not part.get("divisible", True)
    )


def verdict(lot: Lot) -> str:
    """The verdict of the whole lot before pools; "asks" where owners want the same single part."""
    lines = [one["line"] for one in lot.choices]
    found = can_stand(lot, lines)
    if found is None and can_stand(lot, lines, undivided_singles(lot)) is not None:
        return "asks"
    return found or "cant"
