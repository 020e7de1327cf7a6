"""Who must be told of an animal's age: cattle of 30 months and over keep their backbone back."""

from typing import TYPE_CHECKING

from desktop.rail.fallen import Fallen, fallen
from shared.carcass import thirty_months
from shared.cutting.plan import plan
from shared.shop.news import LostLine, News
from shared.shop.usual import shop_catalogue

if TYPE_CHECKING:
    from collections.abc import Sequence

    from db.unit_of_work import Work
    from shared.cutting.answer import Answer
    from shared.cutting.order import Question
    from shared.shop.animals import Animal


def tell_age(
    work: "Work", animal: "Animal", before: "Question | None" = None
) -> tuple[Fallen, ...]:
    """Plan the lot again by the age said, keep what each owner must hear, return what falls.

    `before` is the lot as the counter planned it until now, an age not known both ways; left out,
    the age is as it was and the animal is killed: not known, it counts as over from now on. Who
    heard of these lines already isn't told twice; whose lines all stand again is told that. In the
    same unit as the age itself, so that no age stands without its calls (9 CFR 310.22).
    """
    if not thirty_months.holds_for(animal.species):
        return ()
    after = work.lots.question(animal.lot_id)
    old = work.lots.question(animal.lot_id, at_block=False) if before is None else before
    if not after.choices or old == after:
        return ()
    known = shop_catalogue(animal.species, work.usual.ways(animal.species))
    bound = [one.code for one in known.parts.values() if one.srm_from_30_months]
    answer = plan(after, known)
    touched = fallen(after, plan(old, known), answer, bound)
    orders = work.orders.of_lot(animal.lot_id)
    heard = work.news.of_orders([one.id for one in orders])
    for order in orders:
        lines = {one.line for one in after.choices if one.share == order.share}
        mine = tuple(LostLine(one.line, one.cut, one.how) for one in touched if one.line in lines)
        if _is_new(heard.get(order.id, ()), animal, mine, answer):
            what = f"age.{animal.age}"
            work.news.add(
                News(order.id, animal.id, "age", animal.species, animal.tag, what, lost=mine)
            )
    return touched


def _is_new(
    heard: "Sequence[News]", animal: "Animal", mine: tuple[LostLine, ...], answer: "Answer"
) -> bool:
    """Whether a line falls that nobody told of, or all that was told to fall stands again."""
    ages = [one for one in heard if one.kind == "age" and one.animal_id == animal.id]
    told = {one.line for one in ages[-1].lost} if ages else set[int]()
    if mine:
        return not told.issuperset(one.line for one in mine)
    return bool(told) and told.isdisjoint(x for one in answer.conflicts for x in one.lines)
