"""Changes of one choice that a remedy may try: less of it, another cut, another way."""

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction

from shared.carcass.catalogue import Catalogue, Cut
from shared.cutting.answer import Conflict
from shared.cutting.asked_weight import Asked
from shared.cutting.demand import Demand, Row, Shop, demand
from shared.cutting.order import Amount, Choice, Package
from shared.cutting.piece_weight import count_of_pounds
from shared.cutting.ways import Ways
from shared.units import NG_PER_LB, Weight


def less(choice: Choice, count: int, cut: Cut) -> Choice:
    """The choice with a smaller count; pounds become the pieces they come to."""
    kind = choice.amount.kind
    if kind not in ("pieces", "slices", "at_least", "up_to"):
        kind = "slices" if "slices" in cut.amounts else "pieces"
    return replace(choice, amount=Amount(kind, count=count), pinned=())


def less_pounds(choice: Choice, there_ng: Fraction) -> Choice | None:
    """The choice with what is there, in whole pounds, in tenths below one pound."""
    pounds = there_ng / NG_PER_LB
    if pounds >= 1:
        weight = Weight(int(pounds), "lb", 0)
    elif pounds >= Fraction(1, 10):
        weight = Weight(int(pounds * 10), "lb", -1)
    else:
        return None
    return replace(choice, amount=replace(choice.amount, weight=weight))


def mended(one: Demand, conflict: Conflict, catalogue: Catalogue) -> Iterator[tuple[str, Choice]]:
    """What sets a line right that was refused on its own: as thick, as fat, or as it can be."""
    choice = one.choice
    if conflict.kind == "thickness":
        yield "thicker", replace(choice, thickness=int(conflict.most))
    elif conflict.kind == "leaner":
        yield "less_lean", replace(choice, lean=catalogue.leanest)
    elif conflict.kind == "batch" and one.cut.batch is not None:
        amount = replace(choice.amount, weight=one.cut.batch.smallest)
        yield "whole_batch", replace(choice, amount=amount)
    elif conflict.kind == "not_whole":
        yield "each_side", replace(choice, amount=replace(choice.amount, of="side"))


def loosened(one: Demand, shop: Shop) -> Iterator[tuple[str, Choice]]:
    """The same cut with its pins or its way let go, or of one side in place of all."""
    choice = one.choice
    if choice.pinned and not choice.made:
        yield "other_side", replace(choice, pinned=())
    if choice.way and len(one.cut.ways) > 1:
        yield "other_side", replace(choice, way="")
    sides = sorted({(option.carcass, option.side) for option in one.options})
    if choice.amount.kind == "all" and "fraction" in one.cut.amounts:
        for some in range(len(sides) - 1, 0, -1):
            amount = Amount("fraction", fraction=Fraction(some, len(sides)), of="animal")
            yield "other_side", replace(choice, amount=amount)
    del shop


def by_the_piece(one: Demand) -> bool:
    """Whether a line asks for a number of pieces or slices."""
    return one.choice.amount.kind in ("pieces", "slices")


def with_count(one: Demand, count: int) -> Demand:
    """A line that asks for a count of one row, asking for another: only the row is another."""
    choice = replace(one.choice, amount=replace(one.choice.amount, count=count))
    rows = [Row(choice.line, count, one.rows[0].options)]
    return replace(one, choice=choice, rows=rows)


def as_cut(one: Demand, code: str, shop: Shop) -> Demand | None:
    """The choice as another cut, one piece of it where it is made by the piece; None for no cut."""
    cut = shop.ways.catalogue.cuts.get(code)
    if cut is None or cut.kind == "pool" or code == one.cut.code:
        return None
    old = one.choice
    amount = old.amount
    if amount.kind not in ("all", "rest", "fraction") or amount.kind not in cut.amounts:
        kind = "slices" if "slices" in cut.amounts else "pieces"
        if kind not in cut.amounts and "rest" not in cut.amounts:
            return None
        amount = Amount(kind, count=1) if kind in cut.amounts else Amount("rest")
    choice = Choice(
        old.line,
        old.share,
        code,
        amount,
        finishes=tuple(finish for finish in old.finishes if finish in cut.finishes),
        note=old.note,
        package=old.package if cut.kind == one.cut.kind else Package(),
    )
    return demand(choice, shop)


def carried_over(one: Demand, single: Demand, asked: Asked) -> Demand:
    """Of another cut as many pieces as weigh what was asked; all, or the rest of it, as it is.

    Worked number: one whole ham of 20 lb becomes 2 half hams of 10 lb.
    """
    if not by_the_piece(single):
        return single
    wanted = asked.ng(one)
    if not wanted:
        return single
    return with_count(single, count_of_pounds(wanted, asked.piece_ng(single.options[0])))


def cuts_of_same_part(one: Demand, conflict: Conflict, ways: Ways) -> list[str]:
    """Other cuts of the primal, or of the part that is fought over, that aren't its neighbours."""
    known = {one.cut.code, *one.cut.neighbours}
    parts, fought = ways.parts_of[one.cut.code], conflict.where.part
    found: list[str] = []
    for code, theirs in ways.parts_of.items():
        if code in known or parts.isdisjoint(theirs) or (fought and fought not in theirs):
            continue
        cut = ways.catalogue.cuts[code]
        if cut.primal == one.cut.primal and cut.kind not in ("pool", "to_trim"):
            found.append(code)
    return found


def to_the_trim(one: Demand, ways: Ways) -> Choice | None:
    """The choice given to the trim instead; None where no cut of the primal does that."""
    parts = ways.parts_of[one.cut.code]
    for code, theirs in ways.parts_of.items():
        cut = ways.catalogue.cuts[code]
        if cut.kind == "to_trim" and not parts.isdisjoint(theirs):
            kind = "rest" if "rest" in cut.amounts else "all"
            return Choice(one.choice.line, one.choice.share, code, Amount(kind))
    return None
