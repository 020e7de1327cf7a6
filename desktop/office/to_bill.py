"""The orders the bills page lists, read off the window's thread."""

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from db.store import Store
    from shared.shop.lists import OrderRow
    from shared.shop.states import OrderState

MOST = 500
AT_ONCE = 5000


@dataclass(frozen=True, slots=True)
class ToBill:
    """The first orders by number, `MOST` or as many as were asked for, of `count` in all."""

    rows: "tuple[OrderRow, ...]"
    count: int

    @property
    def beyond(self) -> bool:
        """Whether there are more orders than were read."""
        return self.count > len(self.rows)

    def row(self, order_id: int) -> "OrderRow | None":
        """An order of the list, or None."""
        return next((one for one in self.rows if one.id == order_id), None)


def orders_to_bill(
    store: "Store", states: "tuple[OrderState, ...]", wanted: int = 0, most: int = MOST
) -> ToBill:
    """Open orders in these states; one that is `wanted` is on top where it isn't among them."""
    with store.read() as work:
        rows = work.orders.list(states=states, closed=False, sort="number", limit=most)
        count = len(rows)
        if count == most:
            count = work.orders.count(states=states, closed=False)
        if wanted and all(one.id != wanted for one in rows):
            rows = (*work.orders.list(only=(wanted,)), *rows)
    return ToBill(rows, count)
