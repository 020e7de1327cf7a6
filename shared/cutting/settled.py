"""One group of lines decided: its plan, or its conflicts and the plan without them."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from fractions import Fraction

from shared.cutting.answer import VERDICTS, Caution, Conflict, OwnersQuestion, PlanLine, Verdict
from shared.cutting.conflict import split_up, told
from shared.cutting.demand import Demand, Shop
from shared.cutting.groups import groups
from shared.cutting.growing import Growing
from shared.cutting.laying import lay_out
from shared.cutting.occupied import Occupied
from shared.cutting.plan_lines import lines_of
from shared.cutting.standing import stand, with_up_to
from shared.cutting.told_beside import dont_split, tight, undivided
from shared.cutting.ways import Ways


@dataclass(slots=True)
class Settled:
    """One group when it is done: its lines, what they take, its verdict and what was set aside.

    `made` are the numbers of the lines that stand; `stood` is the group without the one line that
    was set aside, where that is known.
    """

    demands: list[Demand]
    verdict: Verdict
    lines: list[PlanLine]
    occupied: Occupied
    made: frozenset[int]
    conflicts: list[Conflict]
    questions: list[OwnersQuestion]
    cautions: list[Caution]
    stood: "Settled | None" = None


def settle(group: list[Demand], shop: Shop, before: Iterable[Settled] = ()) -> Settled:
    """Decide one group; others decided `before` may have all lines of it but one."""
    ways = shop.ways
    hard = [one for one in group if one.rows]
    conflicts: list[Conflict] = []
    questions: list[OwnersQuestion] = []
    cautions: list[Caution] = []
    found = stand(hard, ways)
    if found is None:
        growing = Growing(sorted(hard, key=lambda one: one.choice.line), ways)
        as_before = _with_one_more(group, before, growing, ways)
        if as_before is not None:
            return as_before
        standing = _set_aside(hard, growing, ways, conflicts, questions)
        found = stand(standing, ways)
        if found is None:  # parts that stand at lengths of their own, and not all at the same
            lines = {one.choice.line for one in standing}
            rest = [one for one in group if one.up_to or one.choice.line in lines]
            return _apart(group, rest, shop, conflicts, questions)
    cautions += tight(found, ways)
    asked = [one for one in group if one.up_to]
    if asked:
        found, counts = with_up_to(found, asked, ways)
        for one, count in counts:
            if count == 0:
                cautions.append(Caution("up_to_none", one.choice.line, asked=Fraction(one.up_to)))
    laid = lay_out(found, ways)
    if ways.joined:
        cautions += dont_split(laid)
    if shop.split:
        questions += undivided(laid, {one.choice.line: one.choice.share for one in group}, ways)
    occupied = Occupied(shop.denominator, shop.split)
    made = lines_of(laid, {one.choice.line: one for one in group}, occupied, ways)
    standing_lines = frozenset([row.line for row in laid.rows])
    verdict = _in_all([found.verdict], questions, conflicts)
    return Settled(group, verdict, made, occupied, standing_lines, conflicts, questions, cautions)


def _with_one_more(
    group: list[Demand], before: Iterable[Settled], growing: Growing, ways: Ways
) -> Settled | None:
    """A group that can't stand, of which all lines but one stood before: that one is set aside.

    Later lines aren't asked: they stood beside all that stays. None where it isn't so.
    """
    ids = {id(one) for one in group}
    known = [one for one in before if all(id(it) in ids for it in one.demands)]
    if len(known) != 1 or len(known[0].demands) + 1 != len(group):
        return None
    (was,) = known
    there = {id(one) for one in was.demands}
    (new,) = [one for one in group if id(one) not in there]
    hard = sorted([one for one in group if one.rows], key=lambda one: one.choice.line)
    if was.conflicts or any(it.choice.line not in was.made for it in hard if it is not new):
        return None
    earlier = [one for one in hard if one.choice.line < new.choice.line]
    others = growing.beside(earlier, new)
    if others is None:
        return None
    conflicts: list[Conflict] = []
    questions: list[OwnersQuestion] = []
    _tell([*others, new], ways, conflicts, questions)
    questions += was.questions
    verdict = _in_all([was.verdict], questions, conflicts)
    return replace(
        was,
        demands=group,
        verdict=verdict,
        conflicts=conflicts,
        questions=questions,
        stood=was,
    )


def _set_aside(
    hard: list[Demand],
    growing: Growing,
    ways: Ways,
    conflicts: list[Conflict],
    questions: list[OwnersQuestion],
) -> list[Demand]:
    """What is left of a group without the newest lines of its conflicts; those are told."""
    sets, standing = split_up(hard, ways, fallen=True, growing=growing)
    for lines in sets:
        _tell(lines, ways, conflicts, questions)
    return standing


def _tell(
    lines: list[Demand], ways: Ways, conflicts: list[Conflict], questions: list[OwnersQuestion]
) -> None:
    """Lines that can't stand together: a conflict, or what their owners have to settle."""
    one = told(lines, ways)
    twice = _single_twice(one, lines)
    if twice is None:
        conflicts.append(one)
    else:
        questions.append(twice)


def _apart(
    group: list[Demand],
    standing: list[Demand],
    shop: Shop,
    conflicts: list[Conflict],
    questions: list[OwnersQuestion],
) -> Settled:
    """A group that falls apart without the newest lines of its conflicts, part by part."""
    parts = groups(standing, shop.ways)
    assert len(parts) > 1, "what is left of a group without its conflicts stands"
    found = [settle(part, shop) for part in parts]
    occupied = Occupied(shop.denominator, shop.split)
    for one in found:
        occupied.join(one.occupied)
    conflicts += [told for one in found for told in one.conflicts]
    questions += [asked for one in found for asked in one.questions]
    return Settled(
        group,
        _in_all([one.verdict for one in found], questions, conflicts),
        [line for one in found for line in one.lines],
        occupied,
        frozenset[int]().union(*[one.made for one in found]),
        conflicts,
        questions,
        [caution for one in found for caution in one.cautions],
    )


def _in_all(
    verdicts: Iterable[Verdict], questions: list[OwnersQuestion], conflicts: list[Conflict]
) -> Verdict:
    """The verdict of what is made, with what is asked and what can't be."""
    beside: Verdict = "cant" if conflicts else "asks" if questions else "sure"
    return worst([*verdicts, beside])


def worst(verdicts: Iterable[Verdict]) -> Verdict:
    """The worst of some verdicts."""
    return VERDICTS[max([VERDICTS.index(one) for one in verdicts], default=0)]


def _single_twice(found: Conflict, lines: list[Demand]) -> OwnersQuestion | None:
    """What comes one to an animal and is wanted by several owners is theirs to settle."""
    shares = tuple(sorted({one.choice.share for one in lines}))
    if found.kind != "single" or len(shares) < 2:
        return None
    return OwnersQuestion("single_wanted_twice", found.lines, shares, found.where)
