"""Who must be told when a part or an animal is lost: planned again, kept for the counter."""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop.rail.fallen import Fallen, fallen
from shared.cutting.order import Question
from shared.cutting.plan import plan
from shared.shop.news import LostLine, News, NewsKind

if TYPE_CHECKING:
    from db.store import Store
    from db.unit_of_work import Work
    from desktop.rail.seen import SeenAnimal
    from shared.carcass.catalogue import Catalogue
    from shared.cutting.answer import Answer


@dataclass(frozen=True, slots=True)
class Lost:
    """What is lost and why: `what` is the key of its name, "" and no `parts` the whole animal."""

    reason: str
    what: str = ""
    parts: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Planned:
    """A question and the plan made of it."""

    question: Question
    answer: "Answer"


def planned(store: "Store", lot_id: int, catalogue: "Catalogue") -> Planned:
    """Plan a lot before anything is lost of it; run it on a worker."""
    with store.read() as work:
        question = work.lots.question(lot_id)
    return Planned(question, plan(question, catalogue))


def tell(
    work: "Work",
    seen: "SeenAnimal",
    before: Question,
    kind: NewsKind,
    lost: "Lost",
    ahead: Planned | None = None,
) -> tuple[Fallen, ...]:
    """Plan the lot again, keep what each owner must hear, and return what falls.

    In the same unit as the loss itself, so that no loss stands without its calls. Of an animal
    lost whole every owner of it is told, of a part those whose choices it touches. `ahead` is
    the plan made ahead of the loss; it is made here where the lot isn't as it was then. What
    would work is reckoned when the counter reads the list to ring, of the order as it is then.
    """
    animal = seen.animal
    after = work.lots.question(animal.lot_id)
    same = ahead is not None and ahead.question == before
    old = ahead.answer if ahead and same else plan(before, seen.catalogue)
    new = plan(after, seen.catalogue)
    touched = fallen(after, old, new, lost.parts)
    lines = {one.line: one.share for one in after.choices}
    whole = {
        share.number
        for share in after.shares
        if any(held.carcass == animal.index for held in share.holdings)
    }
    for order in work.orders.of_lot(animal.lot_id):
        mine = [one for one in touched if lines[one.line] == order.share]
        if not mine and (lost.parts or order.share not in whole):
            continue
        work.news.add(
            News(
                order.id,
                animal.id,
                kind,
                animal.species,
                animal.tag,
                lost.what,
                lost.reason,
                tuple(LostLine(one.line, one.cut, one.how) for one in mine),
            )
        )
    return touched
