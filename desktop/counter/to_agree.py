"""Which owners must agree on something: the lots that wait are planned on a worker."""

from typing import TYPE_CHECKING

from shared.cutting.owners_questions import put_together
from shared.cutting.plan import plan

if TYPE_CHECKING:
    from db.store import Store
    from printing.words import Words
    from shared.shop.lists import OrderRow

MOST_LOTS = 60  # the next to come; a plan takes some milliseconds
STATES = ("open", "settled")


def to_agree(store: "Store", words: "Words") -> dict[int, tuple[str, ...]]:
    """By order, what its owner must agree on with others, in sentences. Run it on a worker."""
    from printing.words import sentences
    from shared.shop.usual import shop_catalogue

    with store.read() as work:
        rows = work.orders.list(closed=False, sort="day")
    lots: dict[int, list[OrderRow]] = {}
    for row in rows:
        if row.lines and row.state in STATES:
            lots.setdefault(row.lot_id, []).append(row)
    shared = [them for them in lots.values() if len(them) > 1][:MOST_LOTS]
    found: dict[int, tuple[str, ...]] = {}
    for them in shared:
        with store.read() as work:  # one unit a lot, so that nobody waits for all of them
            question = work.lots.question(them[0].lot_id)
            ways = work.usual.ways(them[0].species)
        known = shop_catalogue(them[0].species, ways)
        questions = put_together(plan(question, known).questions)
        for row in them:
            said = tuple(
                sentences.owners_question(one, question, known, words)
                for one in questions
                if row.share in one.shares
            )
            if said:
                found[row.id] = said
    return found
