"""Who must be told of an animal's age: cattle of 30 months and over keep their backbone back."""

from dataclasses import replace
from typing import TYPE_CHECKING

from desktop.rail.fallen import Fallen, fallen
from shared.carcass import thirty_months
from shared.cutting.plan import plan
from shared.shop.news import LostLine, News
from shared.shop.usual import shop_catalogue

if TYPE_CHECKING:
    from collections.abc import Sequence

    from db.unit_of_work import Work
    from shared.cutting.order import Question
    from shared.shop.animals import Animal


def tell_age(
    work: "Work", animal: "Animal", before: "Question | None" = None
) -> tuple[Fallen, ...]:
    """Plan the lot again by the age said, keep what each owner must hear, return what falls.

    `before` is the lot as the counter planned it until now, an age not known both ways; left out,
    the age is as it was and the animal is killed: not known, it counts as over from now on, and
    what falls is returned only where somebody hears of it anew. Who heard of these lines already
    isn't told twice; whose lines all stand again is told that. In the same unit as the age itself,
    so that no age stands without its calls (9 CFR 310.22).
    """
    if not thirty_months.holds_for(animal.species):
        return ()
    if before is None and animal.age != "unknown":
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
    ages = {one.id: one.age for one in work.animals.of_lot(animal.lot_id)}
    contested = {line for conflict in answer.conflicts for line in conflict.lines}
    told = before is not None
    for order in orders:
        lines = {one.line for one in after.choices if one.share == order.share}
        mine = tuple(LostLine(one.line, one.cut, one.how) for one in touched if one.line in lines)
        for one in _to_tell(heard.get(order.id, ()), animal, mine, contested):
            work.news.add(replace(one, order_id=order.id, what=f"age.{ages[one.animal_id]}"))
            told = True
    return touched if told else ()


def _to_tell(
    heard: "Sequence[News]", animal: "Animal", mine: tuple[LostLine, ...], contested: set[int]
) -> list[News]:
    """A line that falls and nobody told of by any animal of the lot; or what stands again.

    Where one of two beeves is of no known age and killed, both are cut as over (one block, one
    sheet), so the owners heard of their lines already when the other one's age is said.
    """
    last = {one.animal_id: one for one in heard if one.kind == "age"}
    told = {line.line for one in last.values() for line in one.lost}
    if mine:
        if told.issuperset(one.line for one in mine):
            return []
        return [News(0, animal.id, "age", animal.species, animal.tag, lost=mine)]
    again = [one for one in last.values() if one.lost]
    return [
        News(0, one.animal_id, "age", one.species, one.tag)
        for one in again
        if contested.isdisjoint(line.line for line in one.lost)
    ]
