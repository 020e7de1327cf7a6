"""Seasoned products come by the bag: what a batch still needs, and where it can't be had.

A batch holds one owner's meat, or that of co-owners of one animal. Meat of custom-exempt animals
is mixed with nobody else's (21 USC 623(a)); other short batches are topped up by anyone. Deer and
bison are not under that act: there the owners say, in writing, whether theirs may be batched.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction

from shared.carcass.catalogue import Batch, Catalogue
from shared.cutting.answer import Caution, Conflict, PoolDraw, Where
from shared.cutting.order import Choice, Question

AMENABLE = frozenset({"beef", "veal", "pork", "lamb", "goat"})


@dataclass(frozen=True, slots=True)
class Batches:
    """What is told of short batches, and the lines that can't be made for want of meat."""

    cautions: tuple[Caution, ...] = ()
    conflicts: tuple[Conflict, ...] = ()


def batch_of(pounds_ng: int, batch: Batch) -> int:
    """The batch so much goes into: the least, or as many whole bags as it takes.

    Worked numbers, bags of 25 lb: 18 lb need 25, 25 need 25, 30 need 50.
    """
    bag, least = batch.bag.nanograms, batch.smallest.nanograms
    return max(least, -(-pounds_ng // bag) * bag)


def batches(question: Question, draws: Sequence[PoolDraw], catalogue: Catalogue) -> Batches:
    """Every batch of the lot: lines of an owner and his co-owners seasoned alike are one.

    Worked number: 10 lb and 9 lb of one sausage, bags of 25 lb: 6 lb are missing, told once for
    each owner with his last line. An order covers all an owner's animals of the lot.
    """
    mine = [one for one in draws if catalogue.cuts[one.cut].batch is not None]
    if not mine:
        return Batches()
    choices = {one.line: one for one in question.choices}
    owners, custom = _co_owners(question), _custom(question)
    short: dict[tuple[int, str], Caution] = {}
    conflicts: list[Conflict] = []
    for draw in mine:
        batch, kettle = catalogue.cuts[draw.cut].batch, _goes_into(choices[draw.line])
        assert batch is not None
        together = [
            one
            for one in draws
            if one.share in owners[draw.share] and _goes_into(choices[one.line]) == kettle
        ]
        pounds = sum([one.weight_ng for one in together])
        there, whole = Fraction(pounds), Fraction(batch_of(pounds, batch))
        small = pounds < batch.smallest.nanograms
        if small and draw.share in custom and _all_pounds(together, choices):
            conflicts.append(Conflict((draw.line,), "batch", Where(0, 0), whole, there, there))
        elif there < whole:
            short[draw.share, kettle] = Caution(
                "batch_small", draw.line, None, there, whole, whole - there
            )
    return Batches(tuple(short.values()), tuple(conflicts))


def _goes_into(choice: Choice) -> str:
    """Which batch a line goes into: lines seasoned alike into one, else each cut its own."""
    return f"seasoned {choice.seasoning}" if choice.seasoning else choice.cut


def _all_pounds(draws: Iterable[PoolDraw], choices: dict[int, Choice]) -> bool:
    """Whether all of a batch is asked in pounds; what takes the rest may yet be more."""
    return all(choices[one.line].amount.kind == "pounds" for one in draws)


def _co_owners(question: Question) -> dict[int, set[int]]:
    """By share, the shares that hold something of an animal it holds of, itself too."""
    animals = {share.number: {held.carcass for held in share.holdings} for share in question.shares}
    return {
        number: {other for other, theirs in animals.items() if theirs & mine}
        for number, mine in animals.items()
    }


def _custom(question: Question) -> set[int]:
    """Shares that hold something of a custom-exempt animal."""
    exempt = {
        number
        for number, one in enumerate(question.carcasses)
        if one.regime == "custom" and one.species in AMENABLE
    }
    return {
        share.number
        for share in question.shares
        if any(held.carcass in exempt for held in share.holdings)
    }
