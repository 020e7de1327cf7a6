"""What the cutter must see first on a side: what could hurt, what is gone, what isn't settled."""

from collections.abc import Iterator

from printing.block_lot import LotSheet
from printing.words.kept_back import age_not_known, kept_back
from printing.words.place_words import capital
from printing.words.sentences import caution, conflict, owners_question
from shared.carcass import thirty_months
from shared.curing.asked import left_open
from shared.cutting.answer import Caution
from shared.cutting.owners_questions import put_together
from shared.units import weight_text

WITH_ALLERGENS = ("seasoned", "marinated", "stuffed")


def cautions(sheet: LotSheet) -> list[str]:
    """Everything to be told before this side is cut, the gravest first, each thing once.

    In two languages each is told in both, one under the other; the owners' notes as written.
    """
    first, second = list(_cautions(sheet)), sheet.second()
    if second is None:
        return list(dict.fromkeys(first))
    both = zip(first, _cautions(second), strict=True)
    return ["\n".join(dict.fromkeys(pair)) for pair in dict.fromkeys(both)]


def _cautions(sheet: LotSheet) -> Iterator[str]:
    words, carcass = sheet.words, sheet.here
    if carcass.condemned:
        yield words.say("block.condemned")
        return
    if thirty_months.backbone_kept_back(carcass.species, carcass.age):
        there = "_custom" if carcass.regime == "custom" else ""  # no inspector stands there
        yield words.say(f"papers.age_{carcass.age}{there}")
    if (sheet.carcass, sheet.side) == (0, 1):
        yield from _unsettled(sheet)
    else:
        yield from _kept_back(sheet)
    for gone in carcass.gone:
        if gone.side in (0, sheet.side):
            part = words.name(carcass.species, f"part.{gone.part}")
            key = "papers.gone" if gone.weight is None else "papers.gone_some"
            weight = "" if gone.weight is None else weight_text(gone.weight)
            yield capital(words.say(key, part=part, weight=weight, reason=gone.reason))
    yield from _allergens(sheet)
    yield from _open_parts(sheet)
    yield from _fresh_or_cured(sheet)
    here = [one for one in sheet.answer.cautions if _told_here(one, sheet)]
    by_age = [one.line for one in here if one.code == "age_unknown"]
    if by_age:
        yield age_not_known(by_age, sheet.question, sheet.catalogue, words)
    for one in here:
        if one.code != "age_unknown":
            yield caution(one, sheet.question, sheet.catalogue, words)
    for share in sheet.shares_here():
        note = sheet.notes.get(share, "").strip()
        if note:
            yield f"{sheet.owners[share]}: {note}"


def _unsettled(sheet: LotSheet) -> Iterator[str]:
    """What can't be cut as asked, and what the owners must settle."""
    question, catalogue, words = sheet.question, sheet.catalogue, sheet.words
    if sheet.answer.conflicts:
        yield words.say("papers.not_all")
    for found in sheet.answer.conflicts:
        if found.kind != "srm":
            yield conflict(found, question, catalogue, words)
    told = kept_back(sheet.answer.conflicts, question, catalogue, words)
    if told:
        yield told
    for asked in put_together(sheet.answer.questions):
        yield owners_question(asked, question, catalogue, words)


def _kept_back(sheet: LotSheet) -> Iterator[str]:
    """What the age brings down of this side, on its own page (9 CFR 310.22)."""
    here = (sheet.carcass, sheet.side)
    told = kept_back(sheet.answer.conflicts, sheet.question, sheet.catalogue, sheet.words, here)
    if told:
        yield told


def _open_parts(sheet: LotSheet) -> Iterator[str]:
    """Parts nobody has said anything of; the block must not guess."""
    for share in sheet.shares_here():
        parts = [
            one.part
            for one in sheet.answer.open_parts
            if (one.share, one.carcass) == (share, sheet.carcass)
            and one.side in ((0, 1) if sheet.side == 1 else (2,))
        ]
        if parts:
            told = sheet.names("part", tuple(dict.fromkeys(parts)), "; ")
            yield sheet.words.say("papers.open", what=told, owner=sheet.owners[share])


def _fresh_or_cured(sheet: LotSheet) -> Iterator[str]:
    """What the order says neither fresh nor cured of: it must not go into a cure unasked."""
    for share in sheet.shares_here():
        lines = {one.line for one in sheet.answer.lines if _lies_here(one.carcass, one.side, sheet)}
        cuts = [
            one.cut
            for one in sheet.question.choices
            if one.share == share
            and one.line in lines
            and left_open(sheet.catalogue, one.cut, one.finishes)
        ]
        if cuts:
            told = sheet.names("cut", tuple(dict.fromkeys(cuts)), "; ")
            owner = sheet.owners[share]
            yield sheet.words.say("papers.fresh_or_cured", what=told, owner=owner)


def _lies_here(carcass: int, side: int, sheet: LotSheet) -> bool:
    return carcass == sheet.carcass and side in (0, sheet.side)


def _allergens(sheet: LotSheet) -> Iterator[str]:
    for choice in sheet.question.choices:
        told = tuple(one for one in choice.finishes if one in WITH_ALLERGENS)
        if not (told or choice.seasoning) or choice.share not in sheet.shares_here():
            continue
        what = sheet.names("cut", (choice.cut,))
        if told:
            what = f"{what}, {sheet.names('finish', told)}"
        if choice.seasoning:
            what = f"{what} ({choice.seasoning.replace('_', ' ')})"
        owner = sheet.owners[choice.share]
        known = dict.fromkeys(it for one in told for it in sheet.allergens.get(one, ()))
        key = "block.contains" if known else "papers.allergens"
        yield capital(sheet.words.say(key, what=what, owner=owner, allergens=", ".join(known)))


def _told_here(one: Caution, sheet: LotSheet) -> bool:
    """A caution of a place is told on its side; of a line, where its owner has meat.

    Trimmed parts are told from the carcass itself, parts the grinder loses too.
    """
    if one.code == "trimmed":
        return False
    choice = next((it for it in sheet.question.choices if it.line == one.line), None)
    kind = sheet.catalogue.cuts[choice.cut].kind if choice is not None else ""
    if one.code in ("lost_part", "rest_under_one_piece", "rest_empty") and kind == "to_trim":
        return False
    if one.where is not None:
        return one.where.carcass == sheet.carcass and one.where.side in (0, sheet.side)
    owned = choice is None or choice.share in sheet.shares_here()
    return (sheet.side == 1 or one.code == "age_unknown") and owned
