"""The plan of one lot: every choice of every owner together, or what can't stand together.

`plan` is a pure function of the question and the catalogue. `Planner` gives the same answers and
keeps between calls what did not change: carcasses, choices, groups of lines, and pools.
"""

from collections.abc import Iterable, Sequence
from dataclasses import replace
from fractions import Fraction
from math import lcm
from operator import is_, itemgetter
from typing import NamedTuple

from shared.carcass.carcass import Share
from shared.carcass.catalogue import Catalogue
from shared.cutting import added_stock
from shared.cutting.answer import Answer, Caution, Conflict, OpenPart, PlanLine, Verdict
from shared.cutting.batches import batches
from shared.cutting.capacity import Held, animals, by_carcass, owners
from shared.cutting.conflict import refused
from shared.cutting.cut_alike import alike_questions
from shared.cutting.demand import Demand, Shop, demand
from shared.cutting.groups import groups
from shared.cutting.leftovers import rest_cautions, take_rest
from shared.cutting.occupied import Occupied
from shared.cutting.open_parts import Opened, open_parts
from shared.cutting.order import Choice, Question
from shared.cutting.remembered import Remembered
from shared.cutting.roles import NOBODY, Roles, roles
from shared.cutting.settled import Settled, settle, worst
from shared.cutting.settled_groups import SettledGroups
from shared.cutting.singles import give_rooms, rooms_of
from shared.cutting.told_beside import age_unknown, of_lines
from shared.cutting.trim import GivenBack, Pools, pools
from shared.cutting.ways import Ways, compile_ways

MANY = 4096  # lines remembered at a time
_COMPILED: dict[int, tuple[Catalogue, Ways]] = {}


def compiled(catalogue: Catalogue) -> Ways:
    """The ways of a catalogue, compiled when first asked for and kept with it."""
    known = _COMPILED.get(id(catalogue))
    if known is None or known[0] is not catalogue:
        known = (catalogue, compile_ways(catalogue))
        _COMPILED[id(catalogue)] = known
    return known[1]


def plan(question: Question, catalogue: Catalogue) -> Answer:
    """Plan a lot from scratch.

    Worked number: of a whole hog with a whole ham and 6 ham steaks, the first line is made on
    side 1 and the second on side 2.
    """
    return Planner(catalogue, remembers=False).answer(question)


class _Drawn(NamedTuple):
    """A share's pools, and the choices and lines they came from."""

    demands: list[Demand]
    lines: list[PlanLine]
    natural: list[PlanLine]
    pools: Pools


class _Asked(NamedTuple):
    """Choices by line, and what was made of each."""

    choices: Sequence[Choice]
    demands: list[Demand]


class Planner:
    """Plans questions of one species, one after another; each answer is as `plan` gives it."""

    def __init__(self, catalogue: Catalogue, remembers: bool = True) -> None:
        """A planner with the catalogue's ways compiled; one asked only once needn't remember."""
        ways = compiled(catalogue)
        self.ways = replace(ways, strips={}) if remembers else ways
        self._asked: Question | None = None
        self._shop: Shop | None = None
        self._demands: dict[int, Demand] = {}
        self._last = _Asked((), [])
        self._roles = NOBODY
        self._groups = SettledGroups(self.ways)
        self._left: Remembered | None = None
        self._pools: dict[int, _Drawn] = {}
        self.gave: GivenBack = {}  # what lines of plans were reckoned to give back to the pools

    def answer(self, question: Question) -> Answer:
        """The answer to a question."""
        shop = self.shop_of(question)
        mine = self._roles_of(question, shop)
        return self._tell(question, shop, mine, self._settle(mine, shop))

    def verdict(self, question: Question) -> Verdict:
        """The verdict `answer` would give, and nothing else."""
        shop = self.shop_of(question)
        mine = self._roles_of(question, shop)
        if mine.refused:
            return "cant"
        settled = self._settle(mine, shop)
        found = worst({one.verdict for one in settled})
        if alike_questions(mine.all, shop):
            found = worst((found, "asks"))
        if found == "cant" or not mine.drawing:
            return found
        lines, _, _ = self._lines(mine, settled, shop)
        drawn = self._draw(question.shares, shop, mine, lines)
        draws = [draw for one in drawn for draw in one.draws]
        if (
            any(one.conflicts for one in drawn)
            or batches(question, draws, self.ways.catalogue).conflicts
        ):
            return "cant"
        return worst((found, worst(one.verdict for one in drawn)))

    def lines(self, question: Question) -> list[PlanLine]:
        """The plan lines `answer` would give, and nothing else."""
        shop = self.shop_of(question)
        mine = self._roles_of(question, shop)
        return self._lines(mine, self._settle(mine, shop), shop)[0]

    def groups_of(self, question: Question, shop: Shop) -> list[list[Demand]]:
        """The groups of the lines that are to be planned."""
        return self._groups.groups_of(self._roles_of(question, shop).bound)

    def _settle(self, mine: Roles, shop: Shop) -> list[Settled]:
        """What is settled of each group; remembered where the planner does."""
        if self._left is None:
            return [settle(group, shop) for group in groups(mine.bound, self.ways)]
        return self._groups.settle(mine.bound, shop)

    def _roles_of(self, question: Question, shop: Shop) -> Roles:
        demands = self._compile(question.choices, shop)
        self._roles = roles(demands, self._roles, self.ways.takes_nature)
        return self._roles

    def _lines(
        self, mine: Roles, settled: list[Settled], shop: Shop
    ) -> tuple[list[PlanLine], list[Caution], Occupied | None]:
        """All plan lines, those that take the rest too, by line; what is taken, if not kept."""
        lines: list[PlanLine] = []
        cautions: list[Caution] = []
        for one in settled:
            lines += one.lines
            if one.cautions:
                cautions += one.cautions
        resting = mine.resting
        if mine.halting:
            made = frozenset[int]().union(*[one.made for one in settled])
            resting = [one for one in resting if not one.rows or one.choice.line in made]
        if self._left is None:
            occupied = Occupied(shop.denominator, shop.split)
            for one in settled:
                occupied.join(one.occupied)
            taken = [take_rest(one, occupied, self.ways) for one in resting]
        else:
            occupied = None
            taken = self._left.rests(settled, resting, self.ways)
        twice = mine.twice if len(resting) == len(mine.resting) else {}
        for place, (one, rest) in enumerate(zip(resting, taken, strict=True)):
            lines += rest
            if not (rest and rest[0].count) and not one.rows:
                cautions += rest_cautions(one, rest, resting[:place], twice)
        lines.sort(key=itemgetter(0))  # by line
        return lines, cautions, occupied

    def shop_of(self, question: Question) -> Shop:
        """Carcasses and holdings, and nothing remembered where they changed."""
        last = self._asked
        self._asked = question
        if last is not None and self._shop is not None:
            same = last.carcasses == question.carcasses and last.shares == question.shares
            divides = self._shop.denominator % _fractions(question.choices) == 0
            if same and divides and last.settings == question.settings:
                rooms = rooms_of(question.choices, self._shop.by_carcass, self.ways)
                if rooms == self._shop.rooms:
                    return self._shop
        self._shop = shop_of(question, self.ways)
        self._demands, self._pools, self.gave = {}, {}, {}
        self._last, self._roles = _Asked((), []), NOBODY
        self._groups = SettledGroups(self.ways)
        if self.ways.strips is not None:
            self.ways.strips.clear()
            self._left = Remembered(self._shop.denominator, self._shop.split)
        return self._shop

    def demands_of(self, question: Question, shop: Shop) -> list[Demand]:
        """The question's choices compiled, by line; those known already as they are known."""
        return self._compile(question.choices, shop)

    def _compile(self, choices: Sequence[Choice], shop: Shop) -> list[Demand]:
        """The choices compiled, by line; of as many choices as last time only those that differ."""
        last, known = self._last
        if len(last) == len(choices):
            other = [place for place, one in enumerate(choices) if one is not last[place]]
            if not other:
                return known
            if all(choices[place].line == last[place].line for place in other):
                known = known.copy()
                for place in other:
                    if choices[place] != last[place]:
                        known[place] = demand(choices[place], shop)
                        self._demands[choices[place].line] = known[place]
                self._last = _Asked(choices, known)
                return known
        found = self._compile_by_line(choices, shop)
        in_order = [one.choice.line for one in found] == [one.line for one in choices]
        self._last = _Asked(choices, found) if in_order else _Asked((), [])
        return found

    def _compile_by_line(self, choices: Sequence[Choice], shop: Shop) -> list[Demand]:
        known, found = self._demands, list[Demand]()
        for choice in sorted(choices, key=lambda one: one.line):
            one = known.get(choice.line)
            if one is None or (one.choice is not choice and one.choice != choice):
                one = demand(choice, shop)
            found.append(one)
        self._demands = {one.choice.line: one for one in found}
        return found

    def _tell(self, question: Question, shop: Shop, mine: Roles, settled: list[Settled]) -> Answer:
        """Everything the groups say, with the rest, the pools and what is open."""
        lines, cautions, occupied = self._lines(mine, settled, shop)
        drawn = self._draw(question.shares, shop, mine, lines)
        conflicts = [refused(one) for one in mine.refused]
        conflicts += [conflict for one in settled for conflict in one.conflicts]
        conflicts += [conflict for one in drawn for conflict in one.conflicts]
        cautions += of_lines(mine.noted, question)
        cautions += age_unknown(question, mine.all, shop)
        draws = sorted([it for one in drawn for it in one.draws], key=lambda one: one.line)
        short = batches(question, draws, self.ways.catalogue)
        conflicts += short.conflicts
        cautions += short.cautions
        cautions += added_stock.told(draws, question.choices)
        asking = sorted([one for one in settled if one.questions], key=_first_line)
        questions = [asked for one in asking for asked in one.questions]
        questions += alike_questions(mine.all, shop)
        verdict = worst(
            (
                *{one.verdict for one in settled},
                *[one.verdict for one in drawn],
                "asks" if questions else "sure",
                "cant" if conflicts else "sure",
            )
        )
        return Answer(
            verdict,
            tuple(lines),
            tuple([one.trim for one in drawn]),
            self._open(question.shares, shop, occupied),
            tuple(sorted(conflicts, key=lambda one: (max(one.lines), one.lines))),
            tuple(questions),
            tuple(sorted(dict.fromkeys(cautions), key=_in_order)),
            tuple(_by_line(mine, settled, drawn, short.conflicts).items()),
            tuple(draws),
        )

    def _open(
        self, shares: Sequence[Share], shop: Shop, occupied: Occupied | None
    ) -> tuple[OpenPart, ...]:
        """What nobody has settled."""
        if occupied is None:
            assert self._left is not None, "what is taken is remembered where it isn't handed on"
            return self._left.open_parts(shares, shop)
        return open_parts(shares, shop.held, shop.herd, occupied, self.ways, Opened())

    def _draw(
        self, shares: Sequence[Share], shop: Shop, of: Roles, lines: list[PlanLine]
    ) -> list[Pools]:
        """The pools of each share; remembered while its lines stay the same."""
        mine: dict[int, list[PlanLine]] = {share.number: [] for share in shares}
        drawing: dict[int, list[Demand]] = {share.number: [] for share in shares}
        add = {number: lines_there.append for number, lines_there in mine.items()}
        for made in lines:
            add[made[1]](made)  # by share
        for one in of.drawing:
            drawing[one.choice.share].append(one)
        nature = self.ways.takes_nature
        natural = [made for made in lines if made.cut in nature] if of.natural else []
        gave = None if self._left is None else self.gave
        if len(self.gave) > MANY:
            self.gave.clear()
        found: list[Pools] = []
        for share in shares:
            number = share.number
            known = self._pools.get(number)
            same = known is not None and known.natural == natural
            if (
                known is None
                or not same
                or known.lines != mine[number]
                or len(known.demands) != len(drawing[number])
                or not all(map(is_, known.demands, drawing[number]))
            ):
                before = (known.pools.trim, known.lines) if known is not None and same else None
                draws, made_of = drawing[number], mine[number]
                found_now = pools(share, shop, draws, made_of, natural, gave, before)
                known = _Drawn(drawing[number], mine[number], natural, found_now)
                self._pools[number] = known
            found.append(known.pools)
        return found


def _first_line(one: Settled) -> int:
    return one.demands[0].choice.line


def _in_order(one: Caution) -> tuple[int, str, str, Fraction]:
    """By line, code, place and what was asked: the same whatever was found first."""
    return one.line, one.code, repr(one.where), one.asked


def _by_line(
    mine: Roles,
    settled: Iterable[Settled],
    drawn: Iterable[Pools],
    short: Iterable[Conflict],
) -> dict[int, Verdict]:
    """Each line's verdict, by line: that of its group."""
    found = mine.verdicts.copy()
    for one in settled:
        if one.verdict != "sure":
            for it in one.demands:
                found[it.choice.line] = one.verdict
    for one in drawn:
        found |= dict(one.verdicts)
        for conflict in one.conflicts:
            for line in conflict.lines:
                found[line] = "cant"
    for conflict in short:
        found |= dict.fromkeys(conflict.lines, "cant")
    return found


def shop_of(question: Question, ways: Ways) -> Shop:
    """Compile the carcasses and who holds what."""
    herd = animals(question, ways)
    held = owners(question, herd)
    carcasses = by_carcass(held)
    rooms = rooms_of(question.choices, carcasses, ways)
    give_rooms(herd, rooms)
    split = bool(rooms) or any(one.split for mine in held.values() for one in mine)
    denominator = ways.denominator * _fractions(question.choices) * _parts_of_sides(held)
    denominator *= lcm(1, *[room.denominator for room in rooms.values()])
    led = frozenset([one.number for one in question.shares if one.leader is not None])
    return Shop(ways, herd, held, question.settings, carcasses, denominator, split, rooms, led)


def _fractions(choices: Iterable[Choice]) -> int:
    """A number that makes every fraction asked for a whole number."""
    whole = 1
    for choice in choices:
        if choice.amount.fraction is not None:
            whole = lcm(whole, choice.amount.fraction.denominator)
    return whole


def _parts_of_sides(held: dict[int, tuple[Held, ...]]) -> int:
    """A number that makes every split share's part a whole number."""
    parts = [part for mine in held.values() for one in mine for part in one.fractions.values()]
    return lcm(1, *[part.denominator for part in parts])
