"""What stands above an open order: its number, animals, day, share and tags."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.counter.release import owner_names
from desktop.counter.share_words import share_words
from desktop.fields.dates import date_text

if TYPE_CHECKING:
    from desktop.counter.order_desk import OrderDesk
    from printing.words import Words


def heading_words(desk: "OrderDesk", words: "Words") -> str:
    """The heading: "Order 49, 1 hog, Mon Nov 23, 2026, half, side 1, tag 129"."""
    lot, translate = desk.lot, QCoreApplication.translate
    tags = ", ".join(one.tag for one in lot.animals if one.tag)
    species = words.name(lot.species, f"species.{lot.species}", lot.head)
    parts = [
        translate("OrderHeading", "Order {number}").format(number=desk.order.number),
        f"{lot.head} {species}",
        date_text(lot.day, words.language),
        share_words(next(one.holdings for one in lot.shares if one.number == desk.share)),
    ]
    if desk.leader is not None:
        parts.append(translate("OrderHeading", "cut as {owner} says").format(owner=owner_of(desk)))
    if desk.order.changed_since_sheet:
        changed = translate("OrderHeading", "changed since sheet {n}").format(n=desk.order.sheet)
        parts.append(changed)
    if tags:
        parts.append(translate("OrderHeading", "tag {tags}").format(tags=tags))
    return ", ".join(parts)


def owner_of(desk: "OrderDesk") -> str:
    """Who says how the shown order is cut, as he is named in a sentence."""
    return owner_names(desk, (desk.says.share,))
