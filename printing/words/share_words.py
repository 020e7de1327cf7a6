"""What an owner has of a lot, in a paper's language: whole, half, forequarter."""

from collections.abc import Sequence
from fractions import Fraction

from printing.words import Words
from shared.carcass.carcass import Holding


def share_text(holdings: Sequence[Holding], words: Words) -> str:
    """Say "whole", "half, side 1", "forequarter, side 2"; of several animals also their number.

    As the window says it (`desktop/counter/share_words.py`), where the paper may be in another
    language than the window.
    """
    if not holdings:
        return ""
    first = [one for one in holdings if one.carcass == holdings[0].carcass]
    said = words.say(f"bills.holding_{_kind(first)}", side=first[0].side)
    animals = len({one.carcass for one in holdings})
    if animals > 1:
        said = words.say("bills.holding_of_animals", share=said, count=animals)
    return said


def _kind(held: Sequence[Holding]) -> str:
    if len(held) > 1:
        return "whole"
    one = held[0]
    if one.quarter:
        return one.quarter
    return "half" if one.fraction == Fraction(1) else "split"
