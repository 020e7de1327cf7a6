"""What the planner answers, as sentences: conflicts, ways out, questions to owners, cautions.

Nothing here draws: shell, window and paper all use these.
"""

from collections.abc import Callable, Sequence
from fractions import Fraction

from printing.words import Words, lengths
from printing.words.choice_words import (
    amount_text,
    asked_text,
    choice_text,
    counted,
    fraction_text,
    percent_text,
)
from printing.words.place_words import capital, place_text, spot_text
from shared.carcass.catalogue import Catalogue
from shared.cutting.answer import Caution, Conflict, Edit, OwnersQuestion, Remedy, Verdict
from shared.cutting.order import Choice, Question
from shared.units import length_text, pounds_text

__all__ = [
    "amount_text",
    "asked_text",
    "caution",
    "choice_text",
    "conflict",
    "joined",
    "named",
    "owners_question",
    "place_text",
    "remedy",
    "spot_text",
    "verdict_text",
    "whom_to_ask",
]

CONFLICT_KINDS = (
    "length", "whole", "share", "single", "trim", "srm", "gone", "skin", "not_owned", "thickness",
    "joined", "amount", "pinned", "leaner", "not_whole",
    "batch", "led",
)  # fmt: skip
REMEDY_KINDS = (
    "less", "rest", "other_side", "neighbour", "other_cut", "leave_out", "two_lines", "ask_other",
    "thicker", "less_lean", "each_side", "whole_batch",
)  # fmt: skip
QUESTION_KINDS = ("single_wanted_twice", "undivided_piece", "cut_alike")
CAUTION_CODES = (
    "likely", "tight", "rest_empty", "rest_under_one_piece", "lost_part", "batch_small",
    "age_unknown", "trimmed", "dont_split", "rest_twice", "unused_piece_weight", "up_to_none",
    "added_from_inspected_stock",
)  # fmt: skip

_SUMMED = ("length", "whole", "share", "single", "trim")


def verdict_text(verdict: Verdict, words: Words) -> str:
    """The verdict in a word or two: "It fits", "Tight"."""
    return words.say(f"verdict.{verdict}")


def conflict(x: Conflict, question: Question, catalogue: Catalogue, words: Words) -> str:
    """What can't be, where, and the numbers.

    "Side 1, ham center: whole ham, shank on, takes all of it; 6 ham steaks at ¾ in need
    4 13/16 in; 4¾ in expected, 5⅛ in at the most."
    """
    choices = _choices(x.lines, question)
    asked = [named(one, x.lines, question, catalogue, words) for one in choices]
    show, there = _figure(x.kind, up=True), _figure(x.kind)
    data = {
        "place": _place(x, question, catalogue, words),
        "spot": spot_text(x.where, catalogue, words),
        "what": joined(asked, words),
        "asked": show(x.asked),
        "expected": there(x.expected),
        "most": there(x.most),
        "together": "",
    }
    together = len(x.rivals) > 1 and all(amount < x.expected for _, amount in x.rivals)
    if together:
        data["together"] = words.say("conflict_together", asked=show(x.asked))
    if x.kind in _SUMMED and x.rivals and x.most:
        needs = _needs(x, show, together)
        rivals = [
            _rival(line, need, x, question, catalogue, words)
            for (line, _), need in zip(x.rivals, needs, strict=True)
        ]
        with_need = {line for line, _ in x.rivals}
        rivals += [
            named(one, x.lines, question, catalogue, words)
            for one in choices
            if one.line not in with_need
        ]
        key = f"conflict.{x.kind}" if x.asked > x.most else "conflict.unexplained"
        return capital(words.say(key, 1, rivals="; ".join(rivals), **data))
    family = "conflict_short" if x.kind in _SUMMED else "conflict"
    there = whom_to_ask(question) if x.kind == "srm" else ""
    return capital(words.say(f"{family}.{x.kind}{there}", 1, **data))


def remedy(x: Remedy, question: Question, catalogue: Catalogue, words: Words) -> str:
    """One way out: what to take in place of what, how many pounds that moves, how sure it is."""
    parts = [_edit(x.kind, one, question, catalogue, words) for one in x.edits]
    key = f"remedy.{x.kind}"
    text = words.say(key, what=joined([part for part in parts if part], words))
    if x.moved_ng:
        text += " " + words.say("remedy_moved", pounds=pounds_text(x.moved_ng))
    if x.verdict in ("tight", "asks"):
        text += " " + words.say(f"remedy_{x.verdict}")
    return capital(text)


def owners_question(
    x: OwnersQuestion, question: Question, catalogue: Catalogue, words: Words
) -> str:
    """What the owners must settle between them."""
    owners = [one.owner for one in question.shares if one.number in x.shares]
    asked = [asked_text(one, catalogue, words) for one in _choices(x.lines, question)]
    data = {
        "owners": joined(owners, words),
        "what": joined(asked, words),
        "place": place_text(x.where, question, catalogue, words),
        "spot": spot_text(x.where, catalogue, words) or joined(asked[:1], words),
    }
    return capital(words.say(f"question.{x.kind}", len(owners), **data))


def caution(x: Caution, question: Question, catalogue: Catalogue, words: Words) -> str:
    """A thing to be told that refuses nothing."""
    what = [asked_text(one, catalogue, words) for one in _choices((x.line,), question)]
    where = x.where
    data = {
        "what": joined(what, words),
        "place": "" if where is None else place_text(where, question, catalogue, words),
        "asked": str(x.asked),
        "expected": "",
        "most": "",
    }
    code = x.code
    if code == "tight" and (where is None or not x.most):
        code = "tight_bare"
    elif code == "tight":
        data.update(_tight(x))
    elif code in ("trimmed", "batch_small", "added_from_inspected_stock"):
        data.update(asked=_pounds(x.asked), expected=_pounds(x.expected), most=_pounds(x.most))
    elif code == "age_unknown":
        code += whom_to_ask(question)
    return capital(words.say(f"caution.{code}", 1, **data))


def _tight(x: Caution) -> dict[str, str]:
    """Asked more than expected and no more than at the most, and so shown."""
    if x.where is None or not x.where.run:
        return {"asked": _share(x.asked), "expected": _share(x.expected), "most": _share(x.most)}
    asked = lengths.up(x.asked)
    most = max(lengths.down(x.most), asked) if x.asked <= x.most else lengths.down(x.most)
    told = {"asked": asked, "expected": lengths.down(x.expected), "most": most}
    return {name: lengths.text(length) for name, length in told.items()}


def whom_to_ask(question: Question) -> str:
    """The ending of a sentence where no inspector stands: 9 CFR 310.22 is kept there too."""
    return "_custom" if all(one.regime == "custom" for one in question.carcasses) else ""


def _place(x: Conflict, question: Question, catalogue: Catalogue, words: Words) -> str:
    """The place; what comes one to an animal is added up over the animals where there are more."""
    if x.kind == "single" and x.expected > 1:
        animals = words.say("place.animals")
        return f"{capital(animals)}, {spot_text(x.where, catalogue, words)}"
    return place_text(x.where, question, catalogue, words)


def _set_off(text: str) -> str:
    """The text with a comma behind it where it has one inside."""
    return f"{text}," if "," in text else text


def _choices(lines: Sequence[int], question: Question) -> list[Choice]:
    return [one for one in question.choices if one.line in lines]


def named(
    choice: Choice,
    lines: Sequence[int],
    question: Question,
    catalogue: Catalogue,
    words: Words,
) -> str:
    """The choice, with its owner where the lines are of several owners."""
    asked = asked_text(choice, catalogue, words)
    if len({one.share for one in _choices(lines, question)}) < 2:
        return asked
    owner = next((one.owner for one in question.shares if one.number == choice.share), "")
    return words.say("asked.owned", what=asked, owner=owner)


def _needs(x: Conflict, show: Callable[[Fraction], str], together: bool) -> list[str]:
    """What each rival needs, "" where it takes all; lengths so that they add up to what all do."""
    amounts = [amount for _, amount in x.rivals]
    if x.kind == "length" and together:
        return [lengths.text(one) for one in lengths.needs(amounts, x.expected)]
    return ["" if amount == x.expected else show(amount) for amount in amounts]


def _rival(
    line: int,
    need: str,
    x: Conflict,
    question: Question,
    catalogue: Catalogue,
    words: Words,
) -> str:
    choice = next(one for one in question.choices if one.line == line)
    name = named(choice, x.lines, question, catalogue, words)
    name = _set_off(name)
    count = counted(choice)
    if not need:
        return words.say("rival.all", count, what=name)
    return words.say("rival.needs", count, what=name, amount=need)


def _edit(kind: str, edit: Edit, question: Question, catalogue: Catalogue, words: Words) -> str:
    old = _choices((edit.line,), question)
    before = joined([asked_text(one, catalogue, words) for one in old], words)
    owner = next((one.owner for one in question.shares if old and one.number == old[0].share), "")
    family = "ask" if kind == "ask_other" else "edit"
    if edit.choice is None:
        return words.say(f"{family}.leave_out", old=before, owner=owner)
    after = _set_off(asked_text(edit.choice, catalogue, words))
    if kind == "other_side" and old and edit.choice.amount == old[0].amount:
        released = "way" if old[0].way and not edit.choice.way else "side"
        return words.say(f"edit.any_{released}", new=after.rstrip(","), owner=owner)
    return words.say(f"{family}.take", old=before, new=after, owner=owner)


def joined(texts: Sequence[str], words: Words) -> str:
    """Things with commas in them are set apart by semicolons: "a; b and c"."""
    if len(texts) < 2:
        return "".join(texts)
    return words.say("list.and", first="; ".join(texts[:-1]), last=texts[-1])


def _figure(kind: str, up: bool = False) -> Callable[[Fraction], str]:
    if kind == "length":
        return _needed_length if up else _length_there
    if kind == "thickness":
        return _length
    if kind in ("trim", "batch"):
        return _pounds
    if kind == "leaner":
        return percent_text
    return _share


def _needed_length(value: Fraction) -> str:
    return lengths.text(lengths.up(value))


def _length_there(value: Fraction) -> str:
    return lengths.text(lengths.down(value))


def _length(value: Fraction) -> str:
    return length_text(int(value))


def _pounds(value: Fraction) -> str:
    return pounds_text(int(value))


def _share(value: Fraction) -> str:
    return fraction_text(value)
