"""The plan of one lot: every choice of every owner together, or what can't stand together.

`plan` is a pure function of the question and the catalogue. `Planner` gives the same answers and
keeps between calls the groups of lines that did not change.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import lcm

from shared.carcass.catalogue import Catalogue
from shared.cutting.answer import (
    VERDICTS,
    Answer,
    Caution,
    Conflict,
    OwnersQuestion,
    PlanLine,
    Verdict,
)
from shared.cutting.capacity import Held, animals, holdings
from shared.cutting.conflict import refused, split_up, told
from shared.cutting.demand import Demand, Shop, demand
from shared.cutting.groups import groups
from shared.cutting.leftovers import open_parts, rest_cautions, take_rest
from shared.cutting.occupied import Occupied
from shared.cutting.order import Question
from shared.cutting.plan_lines import Laid, lines_of
from shared.cutting.standing import lay_out, stand, with_up_to
from shared.cutting.told_beside import age_unknown, dont_split, of_lines, tight, undivided
from shared.cutting.trim import Pools, pools
from shared.cutting.ways import Ways, compile_ways

_COMPILED: dict[int, tuple[Catalogue, Ways]] = {}


def compiled(catalogue: Catalogue) -> Ways:
    """The ways of a catalogue, compiled when first asked for and kept with it."""
    known = _COMPILED.get(id(catalogue))
    if known is None or known[0] is not catalogue:
        known = (catalogue, compile_ways(catalogue))
        _COMPILED[id(catalogue)] = known
    return known[1]


def plan(question: Question, catalogue: Catalogue) -> Answer:
    """Plan a lot from scratch."""
    return Planner(catalogue).answer(question)


@dataclass(slots=True)
class Settled:
    """One group when it is done: how it lies, its verdict, and what was set aside."""

    laid: Laid
    verdict: Verdict
    demands: list[Demand]
    conflicts: list[Conflict]
    questions: list[OwnersQuestion]
    cautions: list[Caution]


class Planner:
    """Plans questions of one species."""

    def __init__(self, catalogue: Catalogue) -> None:
        """A planner with the catalogue's ways compiled."""
        self.ways = compiled(catalogue)

    def answer(self, question: Question) -> Answer:
        """The answer to a question; the same as `plan` gives."""
        shop = shop_of(question, self.ways)
        demands = [
            demand(choice, shop) for choice in sorted(question.choices, key=lambda one: one.line)
        ]
        bound = [one for one in demands if one.refusal is None and (one.rows or one.up_to)]
        settled = [settle(group, self.ways) for group in groups(bound, self.ways)]
        return told_whole(question, shop, demands, settled)


def settle(group: list[Demand], ways: Ways) -> Settled:
    """Decide one group: its plan, or its conflicts and the plan of what stands without them."""
    hard = [one for one in group if one.rows]
    conflicts: list[Conflict] = []
    questions: list[OwnersQuestion] = []
    cautions: list[Caution] = []
    verdicts: list[Verdict] = []
    found = stand(hard, ways)
    if found is None:
        sets, standing = split_up(hard, ways)
        for lines in sets:
            one = told(lines, ways)
            asked = single_twice(one, lines, ways)
            if asked is None:
                conflicts.append(one)
            else:
                questions.append(asked)
        verdicts.append("cant" if conflicts else "asks")
        found = stand(standing, ways)
        assert found is not None, "what is left of a group without its conflicts stands"
    cautions += tight(found, ways)
    found, counts = with_up_to(found, [one for one in group if one.up_to], ways)
    for one, count in counts:
        if count == 0:
            cautions.append(Caution("up_to_none", one.choice.line, asked=Fraction(one.up_to)))
    laid = lay_out(found, ways)
    cautions += dont_split(laid)
    questions += undivided(laid, {one.choice.line: one.choice.share for one in group}, ways)
    verdict = worst([*verdicts, found.verdict, "asks" if questions else "sure"])
    return Settled(laid, verdict, group, conflicts, questions, cautions)


def told_whole(
    question: Question, shop: Shop, demands: list[Demand], settled: list[Settled]
) -> Answer:
    """Everything the groups say, with the rest, the pools and what is open."""
    ways = shop.ways
    split = any(one.split for mine in shop.held.values() for one in mine)
    occupied = Occupied(shop.denominator, split)
    by_line = {one.choice.line: one for one in demands}
    cautions = [caution for one in settled for caution in one.cautions]
    lines: list[PlanLine] = []
    for one in settled:
        lines += lines_of(one.laid, by_line, occupied, ways)
    made = {row.line for one in settled for row in one.laid.rows}
    lines += _rest(demands, made, occupied, cautions, ways)
    lines.sort(key=lambda one: one.line)
    drawn = pools(question, shop, demands, lines)
    conflicts = [refused(one) for one in demands if one.refusal is not None]
    conflicts += [conflict for one in settled for conflict in one.conflicts]
    conflicts += drawn.conflicts
    cautions += of_lines(demands, question)
    cautions += age_unknown(question, demands, shop)
    return Answer(
        worst([*(one.verdict for one in settled), drawn.verdict, "cant" if conflicts else "sure"]),
        tuple(lines),
        drawn.trim,
        open_parts(question.shares, shop.held, shop.herd, occupied, ways),
        tuple(sorted(conflicts, key=lambda one: (max(one.lines), one.lines))),
        tuple(asked for one in settled for asked in one.questions),
        tuple(sorted(set(cautions), key=lambda one: (one.line, one.code, repr(one.where)))),
        tuple(sorted(_by_line(demands, settled, drawn).items())),
        drawn.draws,
    )


def _by_line(demands: list[Demand], settled: list[Settled], drawn: Pools) -> dict[int, Verdict]:
    """Each line's verdict: that of its group."""
    found: dict[int, Verdict] = {one.choice.line: "sure" for one in demands}
    found |= {one.choice.line: "cant" for one in demands if one.refusal is not None}
    for one in settled:
        found |= dict.fromkeys([it.choice.line for it in one.demands], one.verdict)
    found |= dict(drawn.verdicts)
    for conflict in drawn.conflicts:
        found |= dict.fromkeys(conflict.lines, "cant")
    return found


def _rest(
    demands: list[Demand],
    made: set[int],
    occupied: Occupied,
    cautions: list[Caution],
    ways: Ways,
) -> list[PlanLine]:
    """Lines that take what is left, in line order."""
    lines: list[PlanLine] = []
    done: list[Demand] = []
    for one in demands:
        set_aside = bool(one.rows) and one.choice.line not in made
        if not one.rest or one.refusal is not None or set_aside:
            continue
        taken = take_rest(one, occupied, ways)
        if not one.rows:
            cautions += rest_cautions(one, taken, done)
        lines += taken
        done.append(one)
    return lines


def single_twice(found: Conflict, lines: list[Demand], ways: Ways) -> OwnersQuestion | None:
    """What comes one to an animal and is wanted by several owners is theirs to settle."""
    shares = tuple(sorted({one.choice.share for one in lines}))
    if found.kind != "single" or len(shares) < 2:
        return None
    del ways
    return OwnersQuestion("single_wanted_twice", found.lines, shares, found.where)


def shop_of(question: Question, ways: Ways) -> Shop:
    """Compile the carcasses and who holds what."""
    herd = animals(question, ways)
    held = {share.number: holdings(share, question, herd) for share in question.shares}
    return Shop(ways, herd, held, question.settings, _denominator(question, ways, held))


def _denominator(question: Question, ways: Ways, held: dict[int, tuple[Held, ...]]) -> int:
    """A number that makes every fraction of a part in the question a whole number."""
    whole = ways.denominator
    for choice in question.choices:
        if choice.amount.fraction is not None:
            whole = lcm(whole, choice.amount.fraction.denominator)
    parts = [part for mine in held.values() for one in mine for part in one.fractions.values()]
    split = lcm(1, *[part.denominator for part in parts])
    return whole * split if split > 1 else whole


def worst(verdicts: Sequence[Verdict]) -> Verdict:
    """The worst of some verdicts, sure when there are none."""
    return VERDICTS[max([VERDICTS.index(one) for one in verdicts], default=0)]
