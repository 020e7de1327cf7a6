"""What the dressing percentage says at the rail: usual, worth a note, or a question first."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from PySide6.QtCore import QCoreApplication

from shared.carcass.catalogue import Ranges
from shared.carcass.weights import dressing, usual_dressing
from shared.units import pounds_text

Finding = Literal["usual", "note", "question"]


@dataclass(frozen=True, slots=True)
class Dressed:
    """Hot over live weight, the usual range for its class, and what is made of it.

    A skinned hog of 218 lb from 300 lb is 72.7 %: outside 63 to 71 %, a note and no more. 120 lb
    or 290 lb of 300 lb is outside what is possible and is asked about; neither is refused.
    """

    share: Fraction
    low: Fraction
    high: Fraction
    finding: Finding


def dressed(ranges: Ranges, live_ng: int, hot_ng: int, *classes: str) -> Dressed:
    """The dressing percentage of a carcass of those classes (skin, sex), and what it says."""
    share = dressing(live_ng, hot_ng)
    low, high = usual_dressing(ranges, *classes)
    least, most = ranges.dressing_possible
    if low <= share <= high:
        finding: Finding = "usual"
    else:
        finding = "note" if least <= share <= most else "question"
    return Dressed(share, low, high, finding)


def dressing_words(found: Dressed) -> str:
    """The sentence at the weights."""
    texts = {
        "usual": QCoreApplication.translate(
            "Dressing", "Dresses {share}. Usual here: {low} to {high}."
        ),
        "note": QCoreApplication.translate(
            "Dressing", "Dresses {share}, outside the usual {low} to {high}. Taken as weighed."
        ),
        "question": QCoreApplication.translate(
            "Dressing", "Dresses {share}; {low} to {high} is usual. Read the scale again."
        ),
    }
    return texts[found.finding].format(**_figures(found))


def dressing_question(found: Dressed) -> str:
    """What is asked before such a weight is kept."""
    return QCoreApplication.translate(
        "Dressing",
        "This carcass would dress {share}; {low} to {high} is usual, and this is hardly possible. "
        "Is the weight right?",
    ).format(**_figures(found))


def shrink_words(
    hot_ng: int | None,
    chilled_ng: int | None,
    usual: Fraction,
    taken: tuple[int, bool] = (0, False),
) -> str:
    """What a carcass lost in the cooler, beside the usual: 213.6 of 218 lb is 2 %.

    `taken` is what was taken off between the two weights, and whether something of it has no
    weight: of 218 lb 6.5 lb of an abscess, chilled 207.27 lb, is 2 % of the 211.5 lb that hung.
    """
    if hot_ng is None:
        return QCoreApplication.translate("Dressing", "Without a hot weight there is no shrink.")
    if chilled_ng is None:
        return ""
    taken_ng, unweighed = taken
    hung_ng = hot_ng - taken_ng
    texts = {
        (False, False): QCoreApplication.translate(
            "Dressing", "Lost {share} in the cooler. {usual} is usual here."
        ),
        (True, False): QCoreApplication.translate(
            "Dressing",
            "Lost {share} in the cooler, without the {taken} taken off. {usual} is usual here.",
        ),
        (False, True): QCoreApplication.translate(
            "Dressing",
            "Lost {share} since the hot weight, with what was taken off unweighed; "
            "{usual} is usual in the cooler.",
        ),
        (True, True): QCoreApplication.translate(
            "Dressing",
            "Without the {taken} taken off it lost {share}, with what was taken off "
            "unweighed; {usual} is usual in the cooler.",
        ),
    }
    return texts[taken_ng > 0, unweighed].format(
        share=percent_text(Fraction(hung_ng - chilled_ng, hung_ng)),
        usual=percent_text(usual),
        taken=pounds_text(taken_ng, 2),
    )


def percent_text(share: Fraction) -> str:
    """A fraction in per cent, one decimal: 109/150 is "72.7 %"."""
    tenths = (abs(share) * 1000 + Fraction(1, 2)).__floor__()
    whole, tenth = divmod(tenths, 10)
    sign = "\u2212" if share < 0 and tenths else ""
    return f"{sign}{whole}.{tenth}\u00a0%" if tenth else f"{sign}{whole}\u00a0%"


def _figures(found: Dressed) -> dict[str, str]:
    """A share outside is never rounded to the end of the range it misses: 60.97 % is "60.9 %"."""
    share = percent_text(found.share)
    if found.share < found.low and share == percent_text(found.low):
        share = percent_text(found.low - Fraction(1, 1000))
    elif found.share > found.high and share == percent_text(found.high):
        share = percent_text(found.high + Fraction(1, 1000))
    return {
        "share": share,
        "low": percent_text(found.low),
        "high": percent_text(found.high),
    }
