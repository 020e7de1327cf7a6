"""What the age of cattle brings down, the reason said once with every line it holds for."""

from collections.abc import Sequence
from dataclasses import replace

from printing.words import Words
from printing.words.place_words import capital, sides_text
from printing.words.sentences import caution, conflict, joined, named, whom_to_ask
from shared.carcass import thirty_months
from shared.carcass.catalogue import Catalogue
from shared.cutting.answer import Caution, Conflict
from shared.cutting.order import Choice, Question

Place = tuple[int, int]  # carcass, side


def kept_back(
    found: Sequence[Conflict],
    question: Question,
    catalogue: Catalogue,
    words: Words,
    here: Place | None = None,
) -> str:
    """The lines of these conflicts that an age brings down; "" where there are none.

    `here` is one side: only what falls there, said of that side though the plan named the other.
    Left out, all of the lot, each side with its lines. The rule is 9 CFR 310.22. Two lines:
    "Can't be kept. Side 2: 6 T-bone steaks at 1 in; all as neck bone. From 30 months on …".
    """
    down = [one for one in found if one.kind == "srm"]
    choices = {one.line: one for one in question.choices}
    by_line = {line: one for one in down for line in one.lines}
    at: dict[Place, list[Choice]] = {}
    for line, one in sorted(by_line.items()):
        named_at = [(one.where.carcass, one.where.side or 1)]
        for place in _places(choices[line], question) or named_at:
            if here is None or place == here:
                at.setdefault(place, []).append(choices[line])
    told = {one.line for each in at.values() for one in each}
    if len(told) == 1 and len(at) == 1:
        (only,) = told
        ((carcass, side),) = at
        where = replace(by_line[only].where, carcass=carcass, side=side)
        return conflict(replace(by_line[only], where=where), question, catalogue, words)
    if not told:
        return ""
    what = " ".join(_groups(at, question, catalogue, words))
    return capital(words.say(f"conflict.srm_all{whom_to_ask(question)}", what=what))


def age_not_known(
    lines: Sequence[int], question: Question, catalogue: Catalogue, words: Words
) -> str:
    """The lines that fall if the animal is over, said once: an age planned both ways.

    "The age is not known. At 30 months or over these can't be kept: 6 T-bone steaks …".
    """
    told = [one for one in question.choices if one.line in lines]
    if not told:
        return ""
    if len(told) == 1:
        only = Caution("age_unknown", line=told[0].line)
        return caution(only, question, catalogue, words)
    what = joined([named(one, lines, question, catalogue, words) for one in told], words)
    return words.say(f"caution.age_unknown_all{whom_to_ask(question)}", what=what)


def _groups(
    at: dict[Place, list[Choice]], question: Question, catalogue: Catalogue, words: Words
) -> list[str]:
    """Each place with its lines; both sides of a carcass at once where they lose the same."""
    sides: dict[tuple[int, tuple[int, ...]], list[int]] = {}
    for (carcass, side), lost in sorted(at.items()):
        sides.setdefault((carcass, tuple(one.line for one in lost)), []).append(side)
    told: list[str] = []
    for (carcass, lines), which in sides.items():
        lost = [one for one in question.choices if one.line in lines]
        what = joined([named(one, lines, question, catalogue, words) for one in lost], words)
        told.append(f"{sides_text(carcass, which, question, words)}: {what}.")
    return told


def _places(choice: Choice, question: Question) -> list[Place]:
    """The sides a line is asked of whose backbone is kept back."""
    share = next(one for one in question.shares if one.number == choice.share)
    owned = dict.fromkeys((held.carcass, held.side) for held in share.holdings)
    pinned = {(carcass, side) for carcass, side, _ in choice.pinned}
    return [
        place
        for place in owned
        if thirty_months.backbone_kept_back(
            question.carcasses[place[0]].species,
            question.carcasses[place[0]].age,
            question.settings.at_block,
        )
        and (not pinned or place in pinned)
    ]
