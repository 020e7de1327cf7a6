"""Where did the rest go: a share's hanging weight, row by row, adding up to the nanogram.

Rows are codes with weights: what goes into packages, what cure, smoke and the knife lose, and
the lean, fat, bones and skin nobody asked for. Parts that aren't in the hanging weight (liver,
tongue) are told apart, beside the rows, and so is what was taken off before the side was chilled.
"""

from dataclasses import dataclass
from fractions import Fraction

from shared.carcass.carcass import Carcass, Holding, Share
from shared.carcass.catalogue import Catalogue, Part
from shared.carcass.dressing import on_the_scale
from shared.carcass.weights import side_weights
from shared.cutting.answer import Answer, PlanLine
from shared.cutting.forecast import Forecast, kept
from shared.cutting.order import Question

ROWS: tuple[str, ...] = (
    "packages",
    "finish_loss",
    "own_figures",
    "cutting_loss",
    "open",
    "not_kept",
    "lean_left",
    "fat_left",
    "bones_left",
    "skin_left",
    "gone",
    "between_owners",
)


@dataclass(frozen=True, slots=True)
class Account:
    """One share: hanging weight, rows that add up to it, and what comes besides (offal).

    `between_owners` is what parts that come one to an animal move between its owners; it adds
    up to nothing over the animal. It also takes up the odd nanograms of rounding.
    `taken_off_ng` was in the hot weight and is in no row: it was off when the side was chilled.
    """

    share: int
    hanging_ng: int
    rows: tuple[tuple[str, int], ...]
    besides_ng: int
    taken_off_ng: int = 0

    def row(self, code: str) -> int:
        """The weight of one row."""
        return dict(self.rows)[code]

    @property
    def take_home(self) -> Fraction:
        """Packages over hanging weight, as a fraction."""
        return Fraction(self.row("packages"), self.hanging_ng) if self.hanging_ng else Fraction(0)


def accounts(
    question: Question, answer: Answer, found: Forecast, catalogue: Catalogue
) -> tuple[Account, ...]:
    """The account of every share of the lot, in share order."""
    return tuple(
        _account(share, question, answer, found, catalogue)
        for share in sorted(question.shares, key=lambda one: one.number)
    )


def hanging_ng(share: Share, question: Question, catalogue: Catalogue) -> int:
    """A share's part of the hanging weight, by the table where a quarter wasn't weighed apart.

    Worked number: a forequarter of a 400-lb side of beef at a fore share of 55 % is 220 lb.
    """
    return sum(_held(holding, question, catalogue) for holding in share.holdings)


def _held(holding: Holding, question: Question, catalogue: Catalogue) -> int:
    carcass = question.carcasses[holding.carcass]
    whole = side_weights(carcass, catalogue)[holding.side - 1].hanging_ng
    fore = int(whole * catalogue.ranges.fore_share)
    of_side = {"": whole, "fore": fore, "hind": whole - fore}[holding.quarter]
    return int(of_side * holding.fraction)


def _account(
    share: Share, question: Question, answer: Answer, found: Forecast, catalogue: Catalogue
) -> Account:
    rows: dict[str, int] = dict.fromkeys(ROWS, 0)
    besides = _besides(share, question, answer, catalogue)
    into = sum(line.into_finish_ng for line in found.of_share(share.number))
    finished = found.finished(share.number).mid
    rows["packages"] = finished - besides
    by_table = sum(line.by_table_ng for line in found.of_share(share.number))
    rows["finish_loss"] = into - by_table
    rows["own_figures"] = by_table - finished
    _pools(rows, share.number, answer)
    _parts(rows, share, question, answer, catalogue)
    rows["gone"], taken_off = _gone(share, question, catalogue)
    hanging = hanging_ng(share, question, catalogue)
    rows["between_owners"] = hanging - sum(rows.values())
    return Account(share.number, hanging, tuple(rows.items()), besides, taken_off)


def _parts(
    rows: dict[str, int],
    share: Share,
    question: Question,
    answer: Answer,
    catalogue: Catalogue,
) -> None:
    """What is open, what nobody keeps (skin, feet, backbone), and what the saw turned to dust."""
    taken = _taken(share.number, answer)
    opened = {
        (one.carcass, one.side, one.part): one.fraction
        for one in answer.open_parts
        if one.share == share.number
    }
    for holding in share.holdings:
        for part in catalogue.parts.values():
            hung = _hung(part, question.carcasses[holding.carcass])
            if not hung or part.per == "animal" or part.by_nature_trim:
                continue
            if holding.quarter not in ("", part.quarter):
                continue
            place = (holding.carcass, holding.side, part.code)
            whole = _part_ng(part, holding.carcass, holding.side, question, catalogue)
            left = holding.fraction - taken.get(place, 0) - opened.get(place, 0)
            rows["open"] += int(whole * opened.get(place, 0))
            if left > 0 and not _is_gone(part, holding, question):
                lost = part.loss or part.needs_skin or part.srm_from_30_months
                rows["not_kept" if lost else "cutting_loss"] += int(whole * left)


def _taken(share: int, answer: Answer) -> dict[tuple[int, int, str], Fraction]:
    """How much of each part one share's lines take; side 0 is both sides alike."""
    found: dict[tuple[int, int, str], Fraction] = {}
    for made in answer.lines:
        if made.share != share:
            continue
        for one in made.taken:
            for side in (made.side,) if made.side else (1, 2):
                place = (made.carcass, side, one.part)
                found[place] = found.get(place, Fraction(0)) + one.fraction
    return found


def _is_gone(part: Part, holding: Holding, question: Question) -> bool:
    return any(
        gone.part == part.code and gone.side == holding.side
        for gone in question.carcasses[holding.carcass].gone
    )


def _pools(rows: dict[str, int], share: int, answer: Answer) -> None:
    for trim in answer.trim:
        if trim.share == share:
            rows["lean_left"] += trim.lean_ng
            rows["fat_left"] += trim.fat_ng
            rows["bones_left"] += trim.bones_ng
            rows["skin_left"] += trim.skin_ng
            rows["cutting_loss"] += trim.loss_ng
    for draw in answer.draws:
        if draw.share == share:
            rows["lean_left"] -= draw.lean_ng
            rows["fat_left"] -= draw.fat_ng
            rows["bones_left"] -= draw.bones_ng
            rows["skin_left"] -= draw.skin_ng


def _besides(share: Share, question: Question, answer: Answer, catalogue: Catalogue) -> int:
    """What packages hold besides the hanging weight: other parts, and stock that is ground in."""
    total = sum(draw.added_ng for draw in answer.draws if draw.share == share.number)
    for made in answer.lines:
        if made.share == share.number and catalogue.cuts[made.cut].kind != "to_trim":
            total += int(_uncounted(made, question, catalogue) * kept(catalogue.cuts[made.cut]))
    return total


def _uncounted(made: PlanLine, question: Question, catalogue: Catalogue) -> int:
    total = 0
    for taken in made.taken:
        part = catalogue.parts[taken.part]
        if not _hung(part, question.carcasses[made.carcass]):
            whole = _part_ng(part, made.carcass, made.side, question, catalogue)
            total += int(whole * taken.fraction)
    return total


def _hung(part: Part, carcass: Carcass) -> bool:
    """Whether the part was on the carcass when it was weighed."""
    return on_the_scale(part, carcass.skin, carcass.dressing)


def _gone(share: Share, question: Question, catalogue: Catalogue) -> tuple[int, int]:
    """What went of a share's hanging weight, and what went before it, after a hot one.

    Worked number: hot 300 lb, 1 lb trimmed off, chilled 293 lb: nothing of the 293 lb, and 1 lb
    before; 6 lb dried off.
    """
    total = before = 0
    for holding in share.holdings:
        carcass = question.carcasses[holding.carcass]
        for gone in carcass.gone:
            part = catalogue.parts[gone.part]
            if gone.side != holding.side or not _hung(part, carcass):
                continue
            if holding.quarter not in ("", part.quarter):
                continue
            whole = _part_ng(part, holding.carcass, gone.side, question, catalogue)
            weight = gone.weight.nanograms if gone.weight is not None else whole
            held_ng = int(min(weight, whole) * holding.fraction)
            if not gone.off_before(side_weights(carcass, catalogue)[gone.side - 1].basis):
                total += held_ng
            elif gone.before_chilled and _hot_known(carcass, gone.side):
                before += held_ng
    return total, before


def _hot_known(carcass: Carcass, side: int) -> bool:
    return carcass.hot_whole is not None or carcass.hot[side - 1].nanograms is not None


def _part_ng(part: Part, carcass: int, side: int, question: Question, catalogue: Catalogue) -> int:
    sides = side_weights(question.carcasses[carcass], catalogue)
    if part.per == "animal" or side == 0:
        return int((sides[0].nanograms + sides[1].nanograms) * part.share)
    return int(sides[side - 1].nanograms * part.share)
