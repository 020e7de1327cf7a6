"""Who must be told when a part or an animal is lost: planned again, kept for the counter."""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop.rail.fallen import Fallen, fallen
from shared.cutting.order import Question
from shared.cutting.plan import plan
from shared.cutting.remedy import remedies
from shared.shop.news import LostLine, News, NewsKind

if TYPE_CHECKING:
    from db.unit_of_work import Work
    from desktop.rail.seen import SeenAnimal
    from printing.words import Words
    from shared.cutting.answer import Answer

MOST_CONFLICTS = 6


@dataclass(frozen=True, slots=True)
class Lost:
    """What is lost and why: `what` is the key of its name, "" and no `parts` the whole animal."""

    reason: str
    what: str = ""
    parts: tuple[str, ...] = ()


def tell(
    work: "Work",
    seen: "SeenAnimal",
    before: Question,
    kind: NewsKind,
    words: "Words",
    lost: "Lost",
) -> tuple[Fallen, ...]:
    """Plan the lot again, keep what each owner must hear, and return what falls.

    In the same unit as the loss itself, so that no loss stands without its calls. Of an animal
    lost whole every owner of it is told, of a part those whose choices it touches.
    """
    animal = seen.animal
    after = work.lots.question(animal.lot_id)
    old, new = plan(before, seen.catalogue), plan(after, seen.catalogue)
    touched = fallen(after, old, new, lost.parts)
    lines = {one.line: one.share for one in after.choices}
    ways = _ways_out(after, new, seen, words, {one.line for one in touched}) if lost.parts else {}
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
                tuple(text for one in mine for text in ways.get(one.line, ())),
            )
        )
    return touched


def _ways_out(
    question: Question,
    answer: "Answer",
    seen: "SeenAnimal",
    words: "Words",
    lines: set[int],
) -> dict[int, tuple[str, ...]]:
    """By line that falls, its remedies in words: each was planned before it is offered."""
    from printing.words import sentences  # read only when something is lost

    if not any(lines & set(one.lines) for one in answer.conflicts[:MOST_CONFLICTS]):
        return {}
    found: dict[int, tuple[str, ...]] = {}
    offered = remedies(question, answer, seen.catalogue)
    for conflict, ways in zip(answer.conflicts, offered, strict=True):
        for line in lines & set(conflict.lines):
            found[line] = tuple(
                sentences.remedy(one, question, seen.catalogue, words) for one in ways
            )
    return found
