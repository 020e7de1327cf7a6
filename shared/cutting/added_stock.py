"""Fat and pork of inspected stock ground into lean meat: how much, and what must be told of it."""

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from shared.cutting.answer import Caution, PoolDraw
from shared.cutting.order import Choice, Stock

LEAN: dict[Stock, Fraction] = {
    "pork_fat": Fraction(10, 100),
    "pork_trim": Fraction(50, 100),
    "beef_fat": Fraction(10, 100),
}
"""Lean of what is added: fat trimmings as they come, and pork trim half lean (common practice,
no source)."""


def pearson(own: Fraction, stock: Fraction, target: Fraction) -> Fraction:
    """The part of a mix that is added so that it has the lean asked: Pearson's square.

    Parts of stock are own less target, parts of own target less stock. Worked number: lean of
    90 % and fat of 10 % lean mixed to 80 %: 10 parts of fat to 70 of lean, 1/8 of the mix. Nothing
    is added where the meat is no leaner than asked, or the stock isn't fatter.
    """
    if own <= target or stock >= target:
        return Fraction(0)
    return (own - target) / (own - stock)


def told(draws: Iterable[PoolDraw], choices: Sequence[Choice]) -> Iterator[Caution]:
    """Each line with something added: it comes from inspected stock, and the paper says so."""
    adding = {one.line for one in choices if one.added is not None}
    for draw in draws:
        if draw.line in adding and draw.added_ng:
            yield Caution("added_from_inspected_stock", draw.line, asked=Fraction(draw.added_ng))
