"""Which animal is meant by somebody who comes to the rail from an order."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.rail.state_words import state_words

if TYPE_CHECKING:
    from collections.abc import Sequence

    from desktop.bench import Bench
    from printing.words import Words
    from shared.shop.animals import Animal

HERE = ("arrived", "weighed", "passed", "held")  # at the rail now; then those to come


def meant(bench: "Bench", order_id: int, chosen: int = 0) -> "tuple[Animal, ...]":
    """The animals of an order's share, the one most likely meant first.

    What isn't past the rail comes first: what is here before what is only booked, in the order of
    the lot; but the one `chosen` at the rail stays it as long as it isn't past it either. Where
    all are past it, the newest first.
    """
    with bench.store.read() as work:
        order = work.orders.get(order_id)
        lot = None if order is None else work.lots.get(order.lot_id)
    if order is None or lot is None:
        return ()
    held = {
        one.carcass for share in lot.shares if share.number == order.share for one in share.holdings
    }
    found = [one for one in lot.animals if one.index in held] or list(lot.animals)
    due = [one for one in found if one.state in HERE] + [
        one for one in found if one.state == "booked"
    ]
    due.sort(key=lambda one: one.id != chosen)
    past = [one for one in found if one not in due]
    past.sort(key=lambda one: (one.hung_at is not None, one.hung_at, one.id), reverse=True)
    return (*due, *past)


def meant_words(found: "Sequence[Animal]", words: "Words") -> str:
    """Says: 3 animals are this order's: tag 202 (weighed) is shown; also tag 201 (hanging)."""
    names = [_name(one, words) for one in found]
    return QCoreApplication.translate(
        "RailPlace", "{count} animals are this order's: {shown} is shown; also {others}."
    ).format(count=len(names), shown=names[0], others=", ".join(names[1:]))


def _name(one: "Animal", words: "Words") -> str:
    state = state_words(one.state, one.regime, words)
    if one.tag:
        text = QCoreApplication.translate("RailPlace", "tag {tag} ({state})")
    else:
        text = QCoreApplication.translate("RailPlace", "animal {number} ({state})")
    return text.format(tag=one.tag, number=one.index + 1, state=state)
