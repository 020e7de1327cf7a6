"""How much a share's trim gives ground at each of the usual lean percentages."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from shared.cutting.answer import Answer

USUAL_LEANS = tuple(Fraction(part, 100) for part in (70, 73, 75, 80, 85, 90, 93, 96))


@dataclass(frozen=True, slots=True)
class GrindAt:
    """Ground of one lean: the most of it in nanograms, None where trim can't be made so lean."""

    lean: Fraction
    most_ng: int | None


def grind_at(
    lean_ng: int, fat_ng: int, leanest: Fraction, leans: Sequence[Fraction] = USUAL_LEANS
) -> tuple[GrindAt, ...]:
    """The most ground there is at each lean; the scarcer of lean and fat sets it.

    Worked number: of 80 lb of lean and 20 lb of fat 100 lb at 80 %, 88.9 lb at 90 %, and 66.7 lb
    at 70 %, where the fat runs out. Leaner is fewer pounds, and fatter needs fat added (K-State
    MF3395 says the first).
    """
    found: list[GrindAt] = []
    for lean in leans:
        if lean > leanest:
            found.append(GrindAt(lean, None))
            continue
        most = [lean_ng / lean] if lean else []
        most += [fat_ng / (1 - lean)] if lean < 1 else []
        found.append(GrindAt(lean, int(min(most))))
    return tuple(found)


def grinds_for(
    answer: Answer,
    line: int,
    share: int,
    leanest: Fraction,
    leans: Sequence[Fraction] = USUAL_LEANS,
) -> tuple[GrindAt, ...]:
    """What one line could be ground to: the share's trim less what its other lines draw."""
    lean = sum([one.lean_ng for one in answer.trim if one.share == share])
    fat = sum([one.fat_ng for one in answer.trim if one.share == share])
    for draw in answer.draws:
        if draw.share == share and draw.line != line:
            lean -= draw.lean_ng
            fat -= draw.fat_ng
    return grind_at(max(0, lean), max(0, fat), leanest, leans)
