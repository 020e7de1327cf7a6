"""Whether a plan can be cut: counts, windows, kerf, parts, owners, weights, checked line by line.

Built from the order file and the species file; it shares no code with the planner and only reads
the lines of its answer. A fault is a sentence for the reader of a failing test.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from shared.cutting.answer import Answer, PlanLine
from tests.oracle import pools
from tests.oracle.alike import unlike
from tests.oracle.bundles import Bundle, Lane, Stick, of_animal, unit_bundles
from tests.oracle.demands import Need, demand
from tests.oracle.lot import Lot
from tests.oracle.species_file import LEVELS, Json
from tests.oracle.whole_amounts import all_of_it

Interval = tuple[int, int]
Side = tuple[int, int]


@dataclass(frozen=True)
class Lying:
    """What one plan line occupies of one lane."""

    made: PlanLine
    lane: Lane
    start: int
    end: int
    kerf: int


def faults(lot: Lot, answer: Answer) -> list[str]:
    """Everything wrong with a plan."""
    return list(_Checker(lot, answer).faults())


class _Checker:
    def __init__(self, lot: Lot, answer: Answer) -> None:
        self.lot = lot
        self.answer = answer
        self.choices = {one["line"]: one for one in lot.choices}
        aside = {max(one.lines) for one in answer.conflicts}
        aside |= {max(one.lines) for one in answer.questions if one.kind == "single_wanted_twice"}
        self.standing = [one for one in lot.choices if one["line"] not in aside]

    def faults(self) -> Iterator[str]:
        for one in self.answer.lines:
            yield from self._known(one)
        for choice in self.standing:
            yield from self._made(choice)
        yield from self._parts()
        yield from self._lanes()
        yield from self._accounts()
        yield from self._alike()
        yield from pools.faults(self.lot, self.answer)

    # -- each line alone ---------------------------------------------------------------------

    def _known(self, one: PlanLine) -> Iterator[str]:
        choice = self.choices.get(one.line)
        if choice is None or (choice["cut"], choice["share"]) != (one.cut, one.share):
            yield f"line {one.line} is not the choice it says"
            return
        if choice not in self.standing:
            yield f"line {one.line} was set aside and is in the plan"
        ways = {way["code"] for way in self.lot.species.ways(choice)}
        if one.way not in ways:
            yield f"line {one.line}: way {one.way} is not one of {ways}"
        for taken in one.taken:
            yield from self._owned(one, taken.part)
            if taken.fraction <= 0:
                yield f"line {one.line} takes {taken.fraction} of {taken.part}"
        if one.side:
            weight = sum(
                (
                    taken.fraction * self.lot.part_weight((one.carcass + 1, one.side), taken.part)
                    for taken in one.taken
                ),
                Fraction(0),
            )
            if abs(weight - one.weight_ng) > 10 * (1 + len(one.taken)):
                yield f"line {one.line} weighs {one.weight_ng}, its parts {float(weight)}"

    def _owned(self, one: PlanLine, code: str) -> Iterator[str]:
        animal = self.lot.species.parts[code].get("per", "side") == "animal"
        for number in (one.side,) if one.side else ((1,) if animal else (1, 2)):
            side = (one.carcass + 1, number)
            if not self.lot.holds_part(one.share, side, code):
                yield f"line {one.line}: share {one.share} does not hold {code} of {side}"
            if self.lot.lost(side, code):
                yield f"line {one.line}: {code} of {side} is {self.lot.lost(side, code)}"

    # -- each choice -------------------------------------------------------------------------

    def _lines(self, choice: Json) -> list[PlanLine]:
        return [one for one in self.answer.lines if one.line == choice["line"]]

    def _made(self, choice: Json) -> Iterator[str]:
        """The plan makes of a choice what it asks."""
        if self.lot.species.cuts[choice["cut"]]["kind"] == "pool":
            return
        mine, amount, line = self._lines(choice), choice["amount"], choice["line"]
        needs = demand(self.lot, choice, "expected").needs
        if isinstance(amount, dict) and "up_to" in amount:
            if sum(one.count for one in mine) > amount["up_to"]:
                yield f"line {line} makes more than {amount}"
        elif isinstance(amount, dict) and "fraction" not in amount:
            made = sum(one.count for one in mine)
            if made != needs[0].total and not ("at_least" in amount and made > needs[0].total):
                yield f"line {line} makes {made}, asked {needs[0].total}"
            yield from self._pinned(choice, needs[0], mine)
            if "at_least" not in amount:
                yield from self._sized(choice, mine)
        elif amount == "all" or (amount != "rest" and amount.get("of", "side") == "side"):
            yield from self._all_made(choice, mine)
        elif amount != "rest":
            yield from self._sides_made(choice, mine)

    def _pinned(self, choice: Json, need: Need, mine: list[PlanLine]) -> Iterator[str]:
        for carcass, side, count in need.pinned:
            here = [one for one in mine if (one.carcass + 1, one.side) == (carcass, side)]
            made = sum(one.count for one in here)
            if made != count and "at_least" not in choice["amount"]:
                yield f"line {choice['line']} is pinned to {count} on {carcass, side}, made {made}"

    def _sized(self, choice: Json, mine: list[PlanLine]) -> Iterator[str]:
        """Single pieces have the size asked, kerf between, and lie in an open place."""
        for one in mine:
            if one.start is None or one.end is None or one.side == 0:
                continue
            if not any(self._lies_right(choice, one, level) for level in LEVELS):
                yield f"line {one.line}: {one.count} of {one.size} at {one.start}..{one.end}"

    def _lies_right(self, choice: Json, one: PlanLine, level: str) -> bool:
        stick = self._stick(choice, one, level)
        if stick is None or one.start is None or one.end is None:
            return False
        length = one.count * (stick.size + stick.kerf) - stick.kerf
        if one.size != stick.size or one.end - one.start != length:
            return False
        return any(lo <= one.start and one.end <= hi for lo, hi in stick.open)

    def _stick(self, choice: Json, one: PlanLine, level: str) -> Stick | None:
        for bundle in unit_bundles(self.lot, choice, level):
            if (bundle.carcass, bundle.side, bundle.way) == (one.carcass + 1, one.side, one.way):
                return bundle.sticks[0] if bundle.sticks else None
        return None

    def _all_made(self, choice: Json, mine: list[PlanLine]) -> Iterator[str]:
        """All, or a fraction: lane by lane the length asked at one of the levels, parts exactly."""
        amount = choice["amount"]
        part = Fraction(1) if amount == "all" else Fraction(amount["fraction"])
        for place, bundle in enumerate(all_of_it(self.lot, choice, "expected", part)):
            here = [one for one in mine if _covers(one, bundle)]
            for cell, share in bundle.cells:
                taken = sum(
                    (each.fraction for one in here for each in one.taken if each.part == cell[2]),
                    Fraction(0),
                )
                both = [each for other, each in bundle.cells if other[2] == cell[2]]
                asked = share if bundle.side else sum(both, Fraction(0)) / len(both)
                if taken != asked:
                    yield f"line {choice['line']} takes {taken} of {cell}, asked {asked}"
            if bundle.side and not any(
                self._long_enough(choice, here, level, place, part) for level in LEVELS
            ):
                yield f"line {choice['line']} on {bundle.carcass, bundle.side}: lengths differ"

    def _sides_made(self, choice: Json, mine: list[PlanLine]) -> Iterator[str]:
        """A fraction of the animal: so many sides wholly, nothing of the others; or pieces."""
        need = demand(self.lot, choice, "expected").needs[0]
        if any(bundle.most > 1 for bundle in need.bundles):
            if sum(one.count for one in mine) != need.total:
                yield f"line {choice['line']} does not make {need.total} pieces"
            return
        whole = 0
        for place, bundle in enumerate(all_of_it(self.lot, choice, "expected", Fraction(1))):
            here = [one for one in mine if _covers(one, bundle)]
            whole += bool(here)
            if (
                bundle.side
                and here
                and not any(
                    self._long_enough(choice, here, level, place, Fraction(1)) for level in LEVELS
                )
            ):
                yield f"line {choice['line']} on {bundle.carcass, bundle.side}: not all of it"
        if whole != need.total:
            yield f"line {choice['line']} takes {whole} sides, asked {need.total}"

    def _long_enough(
        self, choice: Json, here: list[PlanLine], level: str, place: int, part: Fraction
    ) -> bool:
        bundle = all_of_it(self.lot, choice, level, part)[place]
        asked: dict[Lane, int] = {}
        for stick in bundle.sticks:
            for lane in stick.lanes:
                asked[lane] = asked.get(lane, 0) + stick.size
        made = _lane_lengths(self.lot, here, level)
        return {k: v for k, v in made.items() if v} == {k: v for k, v in asked.items() if v}

    # -- all lines together ------------------------------------------------------------------

    def _parts(self) -> Iterator[str]:
        """No part is given out more than once, kerfs left out."""
        given: dict[tuple[int, int, str], Fraction] = {}
        for one in self.answer.lines:
            for taken in one.taken:
                animal = self.lot.species.parts[taken.part].get("per", "side") == "animal"
                for side in (0,) if animal else ((one.side,) if one.side else (1, 2)):
                    key = (one.carcass, side, taken.part)
                    given[key] = given.get(key, Fraction(0)) + taken.fraction
        for key, fraction in given.items():
            if fraction > 1 and not self._of_two_sides(key):
                yield f"{key} is given out {fraction} times"

    def _of_two_sides(self, key: tuple[int, int, str]) -> bool:
        """A pair of sides of different length tells the mean fraction of both."""
        return any(
            one.side == 0 and any(taken.part == key[2] for taken in one.taken)
            for one in self.answer.lines
        )

    def _lanes(self) -> Iterator[str]:
        """In no lane do two lines lie on one another, kerf between them."""
        by_lane: dict[Lane, list[Lying]] = {}
        for one in self.answer.lines:
            for lying in self._lying(one):
                by_lane.setdefault(lying.lane, []).append(lying)
        for lane, mine in by_lane.items():
            mine.sort(key=lambda it: (it.start, it.end))
            for before, after in pairwise(mine):
                if before.end + before.kerf > after.start and not self._rests(
                    before.made, after.made
                ):
                    yield (
                        f"lines {before.made.line} and {after.made.line} meet in {lane}: "
                        f"{before.start}..{before.end} {after.start}..{after.end}"
                    )

    def _rests(self, one: PlanLine, other: PlanLine) -> bool:
        """What takes the rest is told at expected lengths; what lies at others can't be compared.

        That no part is given out twice is checked by its fractions.
        """
        verdicts = dict(self.answer.group_verdicts)
        if not any(takes_rest(self.choices[it.line]) for it in (one, other)):
            return False
        return any(
            verdicts[it.line] not in ("sure", "likely")
            or (it.size is not None and not self._lies_right(self.choices[it.line], it, "expected"))
            for it in (one, other)
        )

    def _lying(self, one: PlanLine) -> Iterator[Lying]:
        """The lanes a line occupies, told by the parts it takes.

        Where a fraction of a part taken beside the run's own lanes lies is not told.
        """
        choice = self.choices[one.line]
        way = next(it for it in self.lot.species.ways(choice) if it["code"] == one.way)
        if one.side == 0 or one.start is None or one.end is None:
            return
        side = (one.carcass + 1, one.side)
        counted = isinstance(choice["amount"], dict) and "fraction" not in choice["amount"]
        whole = way["run"]["size"] == "whole"
        sawn = counted and not whole and "at_least" not in choice["amount"]
        kerf = self.lot.kerf_of(choice) if sawn else 0
        lanes = {
            (*side, way["run"]["run"], self._lane(taken.part))
            for taken in one.taken
            if self._on(side, way["run"]["run"], taken.part, (one.start, one.end))
            and (taken.fraction == 1 or self._lane(taken.part) in way["run"]["lanes"])
        }
        for lane in lanes:
            yield Lying(one, lane, one.start, one.end, kerf)

    def _lane(self, code: str) -> str:
        return self.lot.species.parts[code].get("lane", "")

    def _on(self, side: Side, run: str, code: str, reach: Interval) -> bool:
        """Whether a part lies on a run within a reach, at some level of lengths."""
        part = self.lot.species.parts[code]
        if part.get("run") != run:
            return False
        place = self.lot.species.place(run, part["stretch"])
        for level in LEVELS:
            borders = self.lot.bounds(side, run, level)
            if borders[place] < reach[1] and reach[0] < borders[place + 1]:
                return True
        return False

    def _accounts(self) -> Iterator[str]:
        """What is bigger than a share's account is asked about, and nothing else is.

        Of "at least" a plan line doesn't tell what was counted and what is the rest.
        """
        counted = {one["line"] for one in self.standing if not takes_rest(one)}
        questions = [one for one in self.answer.questions if one.kind == "undivided_piece"]
        asked = {one.lines[0] for one in questions} & counted
        by_level = [
            {one.line for one in self.answer.lines if self.undivided(one, level)} & counted
            for level in LEVELS
        ]
        if not set.intersection(*by_level) <= asked <= set.union(*by_level):
            yield f"undivided pieces: asked about {sorted(asked)}, there are {by_level}"

    def _alike(self) -> Iterator[str]:
        """The owners of a divided side are asked about what they want cut in different ways."""
        told = {frozenset(it.lines) for it in self.answer.questions if it.kind == "cut_alike"}
        asked = unlike(self.lot)
        if told != asked:
            yield f"not alike: asked about {told}, there are {asked}"

    def undivided(self, one: PlanLine, level: str) -> bool:
        """Whether a line makes something bigger than its owner's account at these lengths."""
        choice = self.choices[one.line]
        if choice["amount"] == "rest" or not one.count:
            return False
        needs = demand(self.lot, choice, level).needs
        bundles = [bundle for need in needs for bundle in need.bundles]
        if "up_to" in choice["amount"]:
            bundles = unit_bundles(self.lot, choice, level)
        return any(bundle.undivided and _covers(one, bundle) for bundle in bundles)


def takes_rest(choice: Json) -> bool:
    """Whether a choice takes what is left, after what it counts."""
    amount = choice["amount"]
    return amount == "rest" or (isinstance(amount, dict) and "at_least" in amount)


def _covers(one: PlanLine, bundle: Bundle) -> bool:
    return (one.carcass + 1, one.side) == (bundle.carcass, bundle.side) and bundle.way in (
        "",
        one.way,
    )


def _lane_lengths(lot: Lot, lines: Iterable[PlanLine], level: str) -> dict[Lane, int]:
    """The length of each lane that lines take, from the fractions of its parts."""
    found: dict[Lane, Fraction] = {}
    for one in lines:
        side = (one.carcass + 1, one.side)
        for taken in one.taken:
            part = lot.species.parts[taken.part]
            if part.get("run"):
                lane = (*side, part["run"], part["lane"])
                length = lot.sides[side].lengths[level][part["stretch"]]
                found[lane] = found.get(lane, Fraction(0)) + taken.fraction * length
    return {lane: int(length) for lane, length in found.items()}


__all__ = ["faults", "of_animal"]
