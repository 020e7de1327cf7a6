"""What the table foretells of one carcass, line by line: kept to be held against the packages."""

from dataclasses import dataclass

from shared.carcass.catalogue import Catalogue
from shared.carcass.weights import side_weights
from shared.cutting.answer import Answer
from shared.cutting.forecast import forecast
from shared.cutting.order import Question


@dataclass(frozen=True, slots=True)
class Foretold:
    """One line of one owner: finished nanograms by the table, before the shop's own figures."""

    share: int
    line: int
    cut: str
    expected_ng: int
    carcass_ng: int


def foretold(
    question: Question, answer: Answer, catalogue: Catalogue, carcass: int
) -> tuple[Foretold, ...]:
    """The lines of a carcass; a line of two carcasses is divided by what the plan takes of each.

    Worked number: 24 lb of chops foretold, planned 11 of one hog and 13 of the other in weight,
    are 11 lb of the first. What draws on the trim of two carcasses is halved between them.
    """
    taken: dict[int, tuple[int, int]] = {}
    for one in answer.lines:
        here, whole = taken.get(one.line, (0, 0))
        mine = one.weight_ng if one.carcass == carcass else 0
        taken[one.line] = (here + mine, whole + one.weight_ng)
    sides = side_weights(question.carcasses[carcass], catalogue)
    hanging = sum(one.hanging_ng for one in sides)
    found: list[Foretold] = []
    for line in forecast(question, answer, catalogue).lines:
        here, whole = taken.get(line.line, (1, len(question.carcasses)))
        expected = line.by_table_ng * here // whole if whole else 0
        if expected:
            found.append(Foretold(line.share, line.line, line.cut, expected, hanging))
    return tuple(found)
