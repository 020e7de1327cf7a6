"""What an owner has of a lot, in words: whole, half, forequarter."""

from fractions import Fraction
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

if TYPE_CHECKING:
    from collections.abc import Sequence

    from shared.carcass.carcass import Holding


def share_words(holdings: "Sequence[Holding]") -> str:
    """What the share has: "whole", "half, side 1", "forequarter, side 2".

    Of several animals what it has of the first, with their number: "half, side 1, of 2 animals".
    """
    if not holdings:
        return ""
    first = [one for one in holdings if one.carcass == holdings[0].carcass]
    animals = len({one.carcass for one in holdings})
    text = _of_one(first)
    if animals > 1:
        text = QCoreApplication.translate("ShareWords", "{share}, of {count} animals").format(
            share=text, count=animals
        )
    return text


def _of_one(held: "Sequence[Holding]") -> str:
    if len(held) > 1:
        return QCoreApplication.translate("ShareWords", "whole")
    one = held[0]
    if one.quarter == "fore":
        text = QCoreApplication.translate("ShareWords", "forequarter, side {side}")
    elif one.quarter == "hind":
        text = QCoreApplication.translate("ShareWords", "hindquarter, side {side}")
    elif one.fraction == Fraction(1):
        text = QCoreApplication.translate("ShareWords", "half, side {side}")
    else:
        text = QCoreApplication.translate("ShareWords", "split quarter, of side {side}")
    return text.format(side=one.side)
