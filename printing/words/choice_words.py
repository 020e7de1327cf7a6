"""What an owner asks for, in words: amounts, whole choices, and the parts of sentences on them."""

from collections.abc import Sequence
from fractions import Fraction

from printing.words import Words
from shared.carcass.catalogue import Catalogue
from shared.curing.asked import left_open
from shared.cutting.order import Amount, Choice
from shared.units import length_text, weight_text

_GLYPHS = {
    Fraction(1, 4): "¼",
    Fraction(1, 2): "½",
    Fraction(3, 4): "¾",
    Fraction(1, 8): "⅛",
    Fraction(3, 8): "⅜",
    Fraction(5, 8): "⅝",
    Fraction(7, 8): "⅞",
}


def product_words(words: Words, species: str, cut: str, finishes: Sequence[str]) -> str:
    """A product as the label names it: "Bacon, cured and smoked, sliced"."""
    name = words.name(species, f"cut.{cut}")
    done = [words.name(species, f"finish.{one}") for one in finishes if one != "fresh"]
    said = ", ".join([name, *done])
    return said[:1].upper() + said[1:]


def amount_text(choice: Choice, catalogue: Catalogue, words: Words) -> str:
    """How much is asked, without the cut: "6 slices", "the rest", "10 lb", "½ of each side"."""
    del catalogue
    return _said(choice.amount, "amount", "", words)


def asked_text(choice: Choice, catalogue: Catalogue, words: Words) -> str:
    """The choice as it matters to the saw: "6 ham steaks at ¾ in", "the rest as ground pork"."""
    count = counted(choice)
    name = words.name(catalogue.species, f"cut.{choice.cut}", count)
    cut = catalogue.cuts.get(choice.cut)
    one_whole = cut is not None and cut.kind == "whole" and choice.amount == Amount("pieces", 1)
    parts = [name if one_whole else _said(choice.amount, "asked", name, words)]
    thickness = choice.thickness or (cut.thickness if cut is not None else None)
    if thickness is not None:
        parts[0] += "," if "," in name else ""
        parts[0] = words.say("asked.thick", what=parts[0], thickness=length_text(thickness))
    if choice.way and cut is not None and len(cut.ways) > 1:
        parts.append(words.name(catalogue.species, f"way.{choice.way}"))
    if choice.piece_weight is not None:
        parts.append(words.say("asked.each", weight=weight_text(choice.piece_weight)))
    if choice.ribs is not None:
        parts.append(words.say("asked.ribs", choice.ribs))
    if choice.lean is not None:
        parts.append(words.say("asked.lean", percent=percent_text(choice.lean)))
    parts += ground_in(choice, words)
    return ", ".join(parts)


def ground_in(choice: Choice, words: Words) -> list[str]:
    """What is added of inspected stock, and the seasoning: "with 20 % pork fat added"."""
    parts: list[str] = []
    if choice.added is not None:
        stock, share = words.say(f"stock.{choice.added.of}"), choice.added.share
        if share is None:
            parts.append(words.say("asked.added", stock=stock))
        else:
            percent = percent_text(share)
            parts.append(words.say("asked.added_share", stock=stock, percent=percent))
    if choice.seasoning:
        name = choice.seasoning.replace("_", " ")
        parts.append(words.say("asked.seasoning", seasoning=name))
    return parts


def choice_text(choice: Choice, catalogue: Catalogue, words: Words) -> str:
    """The whole choice with finishes and packages, but without its note.

    "the rest as ground pork, 1 lb packages"; "6 ham steaks at ¾ in, smoked, 2 to a package".
    """
    parts = [asked_text(choice, catalogue, words)]
    parts += [words.name(catalogue.species, f"finish.{one}") for one in choice.finishes]
    if choice.package.weight is not None:
        parts.append(words.say("package.weight", weight=weight_text(choice.package.weight)))
    elif choice.package.pieces is not None:
        parts.append(words.say("package.pieces", choice.package.pieces))
    return ", ".join(parts)


def finishes_text(
    cut: str, finishes: Sequence[str], catalogue: Catalogue, words: Words
) -> list[str]:
    """What is done to a cut, each in its words; first what its owner hasn't said.

    A whole ham of a line without a finish, as older orders have them: "fresh or cured: not said".
    """
    open_ = [words.say("asked.fresh_or_cured")] if left_open(catalogue, cut, finishes) else []
    return open_ + [words.name(catalogue.species, f"finish.{one}") for one in finishes]


def counted(choice: Choice) -> int:
    """How many pieces or slices the choice names; 1 for all, the rest, pounds and fractions."""
    kind = choice.amount.kind
    return choice.amount.count if kind in ("pieces", "slices", "up_to", "at_least") else 1


def fraction_text(value: Fraction) -> str:
    """A fraction as people write it: "½", "1½", "1/3", "2"."""
    whole, part = divmod(value, 1)
    if not part:
        return str(whole)
    if part in _GLYPHS:
        return f"{whole or ''}{_GLYPHS[part]}"
    return f"{whole} {part}" if whole else str(part)


def percent_text(value: Fraction) -> str:
    """A fraction in per cent: 4/5 is "80", 17/20 and a half per cent "85.5"."""
    tenths = round(value * 1000)
    return str(tenths // 10) if tenths % 10 == 0 else f"{tenths // 10}.{tenths % 10}"


def _said(amount: Amount, family: str, cut: str, words: Words) -> str:
    if amount.kind == "pounds":
        weight = "" if amount.weight is None else weight_text(amount.weight)
        return words.say(f"{family}.pounds", weight=weight, cut=cut)
    if amount.kind == "fraction":
        part = fraction_text(Fraction(1) if amount.fraction is None else amount.fraction)
        return words.say(f"{family}.fraction_of_{amount.of}", fraction=part, cut=cut)
    return words.say(f"{family}.{amount.kind}", amount.count, cut=cut)
