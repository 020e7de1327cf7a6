"""The orders the bills page lists, read off the window's thread."""

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from db.store import Store
    from shared.shop.lists import OrderRow
    from shared.shop.states import OrderState

MOST = 500


@dataclass(frozen=True, slots=True)
class ToBill:
    """The first `MOST` orders of `count` in all, those without a bill before the others."""

    rows: "tuple[OrderRow, ...]"
    count: int

    def row(self, order_id: int) -> "OrderRow | None":
        """An order of the list, or None."""
        return next((one for one in self.rows if one.id == order_id), None)


def orders_to_bill(
    store: "Store", states: "tuple[OrderState, ...]", wanted: int = 0, most: int = MOST
) -> ToBill:
    """Open orders in these states; one that is `wanted` is on top where it isn't among them."""
    with store.read() as work:
        ids = work.bills.to_bill(states)
        first = ids[:most]
        rows = work.orders.list(only=first, sort="number", limit=most) if first else ()
        if wanted and wanted not in first:
            rows = (*work.orders.list(only=(wanted,)), *rows)
    return ToBill(rows, len(ids))
