"""A block sheet as it was released: what the block cuts from until the next one is acknowledged."""

from dataclasses import dataclass
from datetime import datetime


@dataclass(frozen=True, slots=True)
class Sheet:
    """Sheet `number` of a lot, the orders on it, and who at the block took note of it."""

    id: int
    lot_id: int
    number: int
    order_ids: tuple[int, ...]
    released_at: datetime
    person: str
    paper_id: int
    acknowledged_at: datetime | None = None
    acknowledged_by: str = ""
