"""From the live animal to the packages: each share's weights on the way, and where the rest went.

Live less what stayed on the kill floor is hot; hot less what the cooler took is chilled; chilled
is the rows of the account. Every step adds up to the nanogram.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from shared.carcass.carcass import Holding, Share
from shared.carcass.catalogue import Catalogue
from shared.carcass.weights import SideBasis, side_weights
from shared.cutting.order import Question
from shared.cutting.where_it_went import Account, hanging_ng

OFF_PLAN = "off_plan"
MADE_NONE: Mapping[int, int] = {}


@dataclass(frozen=True, slots=True)
class Journey:
    """One share's weights; `live_ng` None where not every animal of it was weighed alive.

    `estimated` says that nothing is weighed into packages yet. `basis` is the worst the chilled
    weight was made from. `rows` add up to `chilled_ng`.
    """

    share: int
    owner: str
    live_ng: int | None
    hot_ng: int
    chilled_ng: int
    basis: SideBasis
    rows: tuple[tuple[str, int], ...]
    besides_ng: int
    estimated: bool

    @property
    def killed_ng(self) -> int | None:
        """What stayed on the kill floor: head, hide, gut, blood."""
        return None if self.live_ng is None else self.live_ng - self.hot_ng

    @property
    def cooled_ng(self) -> int:
        """What the cooler took."""
        return self.hot_ng - self.chilled_ng


_WORST: tuple[SideBasis, ...] = ("chilled", "hot", "live", "booked", "reference")


def journeys(
    question: Question,
    accounts: tuple[Account, ...],
    catalogue: Catalogue,
    made_ng: Mapping[int, int] = MADE_NONE,
) -> tuple[Journey, ...]:
    """Every share's way, in the accounts' order; `made_ng` is what was packed, by share.

    Worked number: a half of a hog of 250 lb live and 180 lb hot, 2 % shrink: 125 lb live, 35 lb
    on the kill floor, 90 lb hot, 1.8 lb to the cooler, 88.2 lb chilled.
    """
    shares = {one.number: one for one in question.shares}
    return tuple(_journey(shares[one.share], one, question, catalogue, made_ng) for one in accounts)


def _journey(
    share: Share,
    account: Account,
    question: Question,
    catalogue: Catalogue,
    made_ng: Mapping[int, int],
) -> Journey:
    chilled = hanging_ng(share, question, catalogue)
    bases: list[SideBasis] = [
        side_weights(question.carcasses[one.carcass], catalogue)[one.side - 1].basis
        for one in share.holdings
    ]
    rows = account.rows
    made = made_ng.get(share.number)
    if made is not None:
        rows = _as_made(account, made)
    return Journey(
        share=share.number,
        owner=share.owner,
        live_ng=_live(share, question, catalogue),
        hot_ng=sum(_hot(one, question, catalogue) for one in share.holdings),
        chilled_ng=chilled,
        basis=max(bases, key=_WORST.index) if bases else "reference",
        rows=rows,
        besides_ng=account.besides_ng,
        estimated=made is None,
    )


def _as_made(account: Account, made: int) -> tuple[tuple[str, int], ...]:
    """The account with the packages as weighed, and a row for what the plan was out by.

    Worked number: 70 lb planned and 68.5 lb packed leave 1.5 lb in the row.
    """
    rows = dict(account.rows)
    planned = rows["packages"]
    rows["packages"] = made - account.besides_ng
    rows[OFF_PLAN] = planned - rows["packages"]
    return tuple(rows.items())


def _hot(holding: Holding, question: Question, catalogue: Catalogue) -> int:
    """A holding's hot weight: as weighed, else its chilled weight with the shrink put back."""
    carcass = question.carcasses[holding.carcass]
    chilled = side_weights(carcass, catalogue)[holding.side - 1].hanging_ng
    hot = carcass.hot[holding.side - 1].nanograms
    if hot is None and carcass.hot_whole is not None:
        hot = carcass.hot_whole.nanograms // 2
    if hot is None:
        hot = int(chilled / (1 - catalogue.ranges.shrink))
    return int(hot * _part(holding, catalogue))


def _part(holding: Holding, catalogue: Catalogue) -> Fraction:
    """What of its side a holding is by weight: a forequarter is the species' fore share of it."""
    fore = catalogue.ranges.fore_share
    return {"": Fraction(1), "fore": fore, "hind": 1 - fore}[holding.quarter] * holding.fraction


def _live(share: Share, question: Question, catalogue: Catalogue) -> int | None:
    """A share's part of the live animals, as its sides are of their weight."""
    total = 0
    for one in share.holdings:
        carcass = question.carcasses[one.carcass]
        if carcass.live is None:
            return None
        sides = side_weights(carcass, catalogue)
        whole = sides[0].hanging_ng + sides[1].hanging_ng
        of_side = Fraction(sides[one.side - 1].hanging_ng, whole)
        total += int(carcass.live.nanograms * of_side * _part(one, catalogue))
    return total
