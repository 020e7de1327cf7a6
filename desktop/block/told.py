"""What the counter changed while a carcass is cut, and which of it the block hasn't read yet."""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.counter.choice_words import cut_words, kind_words
from shared.units import weight_text

if TYPE_CHECKING:
    from collections.abc import Sequence

    from db.unit_of_work import Work
    from printing.words import Words
    from shared.carcass.catalogue import Catalogue
    from shared.cutting.order import Choice
    from shared.shop.orders import Order, OrderChange
    from shared.shop.sheets import Sheet

OWN = ("made", "pin")  # what the block and the release write themselves


@dataclass(frozen=True, slots=True)
class Told:
    """The changes of one order that the block must read, first to last."""

    order_id: int
    owner: str
    changes: "tuple[OrderChange, ...]"

    @property
    def last(self) -> int:
        """The change up to which it is read then."""
        return max(one.id for one in self.changes)


def untold(work: "Work", orders: "Sequence[Order]", sheet: "Sheet | None") -> tuple[Told, ...]:
    """Changes after the sheet that the block has not read, by owner."""
    if sheet is None:
        return ()
    read = work.block.read_up_to([one.id for one in orders])
    found: list[Told] = []
    for order in orders:
        if not order.changed_since_sheet:
            continue
        changes = tuple(
            each
            for each in work.orders.changes(order.id, read.get(order.id, 0))
            if each.kind not in OWN
        )
        if changes:
            found.append(Told(order.id, order.owner, changes))
    return tuple(found)


def told_words(told: Told, catalogue: "Catalogue", words: "Words") -> list[str]:
    """Each change in a sentence: what it was, what it is now, who changed it."""
    return [_change(told.owner, one, catalogue, words) for one in told.changes]


def _change(owner: str, change: "OrderChange", catalogue: "Catalogue", words: "Words") -> str:
    was, now = change.before, change.after
    if was is None and now is not None:
        text = QCoreApplication.translate("BlockTold", "{owner} adds: {now} ({who})")
    elif now is None:
        text = QCoreApplication.translate("BlockTold", "{owner} takes off: {was} ({who})")
    else:
        text = QCoreApplication.translate("BlockTold", "{owner}: {was} becomes {now} ({who})")
    return text.format(
        owner=owner,
        was=_choice(was, catalogue, words),
        now=_choice(now, catalogue, words),
        who=change.person,
    )


def _choice(choice: "Choice | None", catalogue: "Catalogue", words: "Words") -> str:
    if choice is None:
        return ""
    count, pounds = choice.amount.count, choice.amount.weight
    amount = str(count) if count else kind_words(choice.amount.kind)
    if pounds is not None:
        amount = weight_text(pounds)
    one, several = (words.name(catalogue.species, f"cut.{choice.cut}", n) for n in (1, count or 2))
    told = [f"{amount} {cut_words(choice, catalogue, words).replace(one, several, 1)}"]
    told += [words.name(catalogue.species, f"finish.{one}") for one in choice.finishes]
    return ", ".join([*told, *([f"“{choice.note}”"] if choice.note else [])])
