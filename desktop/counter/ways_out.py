"""What would work for owners who lost something: planned on a worker, of the orders as they are."""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from shared.cutting.plan import plan
from shared.cutting.remedy import remedies

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from db.store import Store
    from printing.words import Words
    from shared.carcass.catalogue import Catalogue
    from shared.cutting.answer import Remedy
    from shared.cutting.order import Question
    from shared.shop.calls import ToRing
    from shared.shop.news import News

PARTLY = ("part_gone", "block")  # of an animal lost whole nothing is left to cut otherwise


@dataclass(frozen=True, slots=True)
class Ways:
    """The ways out of one news, as values: spoken in the reader's language when they are shown."""

    question: "Question"
    catalogue: "Catalogue"
    remedies: "tuple[Remedy, ...]"


def wanted(rows: "Sequence[ToRing]") -> "dict[int, tuple[News, ...]]":
    """By lot, the news of which ways out are to be planned: lines fall, and no sentence is kept."""
    found: dict[int, tuple[News, ...]] = {}
    for row in rows:
        mine = tuple(
            one
            for one in row.news
            if one.kind in PARTLY and not one.remedies and any(x.how == "falls" for x in one.lost)
        )
        if mine:
            found[row.order.lot_id] = (*found.get(row.order.lot_id, ()), *mine)
    return found


def ways_out(store: "Store", lots: "Mapping[int, tuple[News, ...]]") -> dict[int, Ways | None]:
    """By news, what would work now; None where its lines stand again or nothing works.

    Run it on a worker. Each lot is planned once, with the choices it has now, so that nothing is
    offered for an order that was changed since.
    """
    from shared.shop.usual import shop_catalogue

    found: dict[int, Ways | None] = {}
    for lot_id, news in lots.items():
        with store.read() as work:  # one unit a lot, so that nobody waits for all of them
            at_block = any(one.state == "on_block" for one in work.animals.of_lot(lot_id))
            question = work.lots.question(lot_id, at_block=at_block)
            known = shop_catalogue(news[0].species, work.usual.ways(news[0].species))
        answer = plan(question, known)
        fell = {line.line for one in news for line in one.lost}
        standing = {line for one in answer.conflicts for line in one.lines}
        offered = remedies(question, answer, known) if fell & standing else ()
        of_line = {
            line: ways
            for conflict, ways in zip(answer.conflicts, offered, strict=False)
            for line in conflict.lines
        }
        for one in news:
            mine = (way for line in one.lost for way in of_line.get(line.line, ()))
            ways = tuple(dict.fromkeys(mine))
            found[one.id] = Ways(question, known, ways) if ways else None
    return found


def ways_words(ways: Ways, words: "Words") -> tuple[str, ...]:
    """The ways out in words, a sentence each."""
    from printing.words import sentences  # read only when something is lost

    return tuple(
        sentences.remedy(one, ways.question, ways.catalogue, words) for one in ways.remedies
    )
