"""Lines that take the rest, patch by patch: options that reach a lane or a part in common.

What one option takes is what another one of its patch no longer finds; patches never meet.
"""

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass, field

from shared.cutting.answer import PlanLine
from shared.cutting.capacity import EXPECTED, Interval
from shared.cutting.connected import connected
from shared.cutting.demand import Demand
from shared.cutting.lanes import bits_of
from shared.cutting.leftovers import Block, free_blocks, rest_line, rest_of_option
from shared.cutting.occupied import Account, Occupied, PartPlace, Used
from shared.cutting.take import Lane, Option, Strip
from shared.cutting.takings import Reach, Taking, Takings, taking_of
from shared.cutting.ways import Ways
from shared.cutting.windows import window


@dataclass(slots=True)
class Moved:
    """What is taken otherwise than in the answer before.

    Of lanes the intervals that were taken and are not, or the other way round.
    """

    lanes: dict[Lane, list[Interval]] = field(default_factory=lambda: {})
    parts: set[PartPlace] = field(default_factory=lambda: set())
    accounts: set[Account] = field(default_factory=lambda: set())
    used: set[Used] = field(default_factory=lambda: set())

    def lies_in(self, reach: Reach) -> bool:
        """Whether any of it lies where an option may take, or counts against its share."""
        moved = self.lanes
        if moved:
            for lane, start, end in reach.windows:
                if lane in moved:
                    for lo, hi in moved[lane]:
                        if lo < end and start < hi:
                            return True
        if self.accounts and not self.accounts.isdisjoint(reach.accounts):
            return True
        if self.parts and not self.parts.isdisjoint(reach.parts):
            return True
        if not reach.parts or not self.used:
            return False
        return any((reach.share, place) in self.used for place in reach.parts)

    def note(self, was: Taking, now: Taking) -> None:
        """An option takes otherwise than it took."""
        for lane, interval in {*was.lanes} ^ {*now.lanes}:
            self.lanes.setdefault(lane, []).append(interval)
        self.accounts.update([account for account, _ in was.accounts])
        self.accounts.update([account for account, _ in now.accounts])
        self.used.update([used for used, _ in was.used])
        self.used.update([used for used, _ in now.used])

    def note_lane(self, lane: Lane, was: Iterable[Interval], now: Iterable[Interval]) -> None:
        """A lane is taken otherwise."""
        others = {*was} ^ {*now}
        if others:
            self.lanes.setdefault(lane, []).extend(others)


@dataclass(slots=True)
class Rest:
    """One line that takes the rest: what each of its options reaches, and the lines it makes.

    `flat` are the lines of all options, None where they are to be put together again.
    """

    of: Demand
    reach: list[Reach]
    lines: list[list[PlanLine]]
    flat: list[PlanLine] | None = None

    def all_lines(self) -> list[PlanLine]:
        """The lines of all options."""
        if self.flat is None:
            self.flat = [made for mine in self.lines for made in mine]
        return self.flat


Turn = tuple[Rest, int]  # an option of a line, by its place


@dataclass(slots=True)
class Patch:
    """Options in the order in which they take, and all they reach together.

    `noted` is what their lines take for a share where a side is divided; `fresh`: nothing is
    taken of it yet. `reset` are places of which nobody's rest is noted any more, `takings` what
    each option took, where all lie on runs.
    """

    turns: list[Turn]
    lanes: Collection[Lane]
    parts: Collection[PartPlace]
    accounts: Collection[Account]
    noted: Collection[Used] = ()
    fresh: bool = True
    reset: set[object] = field(default_factory=lambda: set())
    takings: Takings | None = None

    def take(self, occupied: Occupied, moved: Moved, ways: Ways) -> None:
        """Take what is free of it, one option after the other; note what is otherwise now.

        Where nothing moved, an option takes what it took.
        """
        mine: list[PlanLine] = []
        noted: set[Used] = set()
        of, fresh = self.turns[0][0], self.fresh
        for rest, place in self.turns:
            if rest is not of:
                _note(mine, occupied, noted)
                mine, of = [], rest
            before, reach = rest.lines[place], rest.reach[place]
            option = rest.of.options[place]
            if fresh or reach.parts or moved.lies_in(reach):
                lines = rest_of_option(rest.of, option, occupied, ways)
                if lines != before:
                    rest.lines[place], rest.flat = lines, None
                    if not fresh:
                        _moved(option, reach, before, lines, moved)
                    before = lines
            elif before:
                _take_again(option, before, occupied)
            mine += before
        _note(mine, occupied, noted)
        self.noted = noted
        self.fresh = False
        if not self.parts:
            self.takings = self._took(occupied.split)

    def retake(self, base: Occupied, every: Occupied, moved: Moved, ways: Ways) -> None:
        """The same where all lie on runs: only options that find another length free take anew.

        `base` is what the groups take, `every` that and the rests.
        """
        takings, split, other = self.takings, base.split, False
        assert takings is not None, "what lies on runs was noted when it was first taken"
        there = Occupied(base.denominator, split)
        for turn, (rest, place) in enumerate(self.turns):
            reach = rest.reach[place]
            if not moved.lies_in(reach):
                continue
            option, before = rest.of.options[place], rest.lines[place]
            takings.show(there, base, reach, turn)
            blocks = free_blocks(option, there, ways)
            if _lie_there(before, blocks):
                continue
            lines = [rest_line(rest.of, option, block, ways) for block in blocks]
            rest.lines[place], rest.flat, other = lines, None, True
            now = taking_of(option, lines, split)
            was = takings.put(turn, now)
            assert was is not None, "every turn took something or nothing before"
            moved.note(was, now)
        takings.write(base, every, moved.lanes.keys() | moved.accounts | moved.used | self.reset)
        self.reset.clear()
        if other and split:
            self.noted = takings.used()

    def _took(self, split: bool) -> Takings:
        found = Takings()
        for turn, (rest, place) in enumerate(self.turns):
            found.put(turn, taking_of(rest.of.options[place], rest.lines[place], split))
        return found


def _lie_there(lines: Sequence[PlanLine], blocks: Sequence[Block]) -> bool:
    """Whether lines were made of these blocks."""
    if len(lines) != len(blocks):
        return False
    for made, (held, _, start, end) in zip(lines, blocks, strict=True):
        if made.start != start or made.end != end or made.side != held.side.number:
            return False
    return True


def _note(lines: Iterable[PlanLine], occupied: Occupied, noted: set[Used]) -> None:
    """Note one line's pieces for its share; it doesn't see its own before all are there."""
    for made in lines if occupied.split else ():
        occupied.note(made)
        share, carcass, side = made.share, made.carcass, made.side
        noted.update([(share, (carcass, side, one.part)) for one in made.taken])


def _strip(option: Option, made: PlanLine) -> tuple[Strip, int]:
    on_run = option.ways[0].on_run
    assert on_run is not None, "what lies somewhere lies on a run"
    return (made.carcass, made.side, on_run.run), on_run.lanes


def _take_again(option: Option, lines: Iterable[PlanLine], occupied: Occupied) -> None:
    """Take what an option took of its lanes."""
    for made in lines:
        strip, lanes = _strip(option, made)
        assert made.start is not None, "it has no other parts"
        assert made.end is not None, "it has no other parts"
        occupied.add_length(strip, lanes, made.start, made.end)
        held = option.held[0] if option.held[0].side.number == made.side else option.held[1]
        if held.split:
            occupied.charge(made.share, strip, lanes, made.end - made.start)


def _moved(
    option: Option,
    reach: Reach,
    was: Iterable[PlanLine],
    now: Iterable[PlanLine],
    moved: Moved,
) -> None:
    """An option takes otherwise than it took."""
    moved.parts.update(reach.parts)
    moved.accounts.update(reach.accounts)
    before, after = _lengths(option, was), _lengths(option, now)
    for lane in before | after:
        moved.note_lane(lane, before.get(lane, ()), after.get(lane, ()))
    for made in (*was, *now):
        share, carcass, side = made.share, made.carcass, made.side
        moved.used.update([(share, (carcass, side, one.part)) for one in made.taken])


def _lengths(option: Option, lines: Iterable[PlanLine]) -> dict[Lane, list[Interval]]:
    found: dict[Lane, list[Interval]] = {}
    for made in lines:
        if made.start is not None and made.end is not None:
            strip, lanes = _strip(option, made)
            for bit in bits_of(lanes):
                found.setdefault((strip, bit), []).append((made.start, made.end))
    return found


def rest_of(one: Demand, ways: Ways) -> Rest:
    """A line that takes the rest and has taken nothing yet."""
    return Rest(one, [_reach(option, ways) for option in one.options], [[] for _ in one.options])


def _reach(option: Option, ways: Ways) -> Reach:
    """Where an option of a line that takes the rest may take it, at expected lengths."""
    plan, share = option.ways[0], option.wanted.share
    on_run = plan.on_run
    lanes: tuple[Lane, ...] = ()
    windows: tuple[tuple[Lane, int, int], ...] = ()
    accounts: tuple[Account, ...] = ()
    for held in option.held if on_run is not None else ():
        assert on_run is not None, "looked at only where it lies on a run"
        there = window(held, on_run, EXPECTED, ways)
        if there is not None and there.allowed:
            strip = (option.carcass, held.side.number, on_run.run)
            bits = bits_of(on_run.lanes)
            start, end = there.allowed[0][0], there.allowed[-1][1]
            lanes += tuple([(strip, bit) for bit in bits])
            windows += tuple([((strip, bit), start, end) for bit in bits])
            if held.split:
                accounts += tuple([(share, strip, bit) for bit in bits])
    if not plan.off_run:
        return Reach(lanes, lanes, windows, (), accounts, share)
    side = option.held[0].side.number if option.held else 0
    parts = [
        (option.carcass, 0 if off.part.per == "animal" else side, off.part.code)
        for off in plan.off_run
        if off.run < 0
    ]
    return Reach((*lanes, *parts), lanes, windows, tuple(parts), accounts, share)


def patches(turns: Sequence[Turn]) -> list[Patch]:
    """The patches of some options, each option in one of them.

    Worked number: who takes the rest of the ribs and of the loin on one lane of a hog's side, and
    the neck bones, has two patches: ribs and loin, of which the second finds what the first left,
    and the neck bones.
    """
    reaches = [rest.reach[place] for rest, place in turns]
    found: list[Patch] = []
    for numbers in connected([reach.places for reach in reaches]):
        mine = [turns[number] for number in numbers]
        if len(numbers) == 1:
            reach = reaches[numbers[0]]
            found.append(Patch(mine, reach.lanes, reach.parts, reach.accounts))
        else:
            all_of = [reaches[number] for number in numbers]
            lanes = {lane for reach in all_of for lane in reach.lanes}
            parts = {place for reach in all_of for place in reach.parts}
            accounts = {account for reach in all_of for account in reach.accounts}
            found.append(Patch(mine, lanes, parts, accounts))
    return found
