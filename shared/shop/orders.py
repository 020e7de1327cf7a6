"""An owner's cut order and every change that was made to it."""

from dataclasses import dataclass
from datetime import date, datetime
from typing import Literal

from shared.cutting.order import Choice
from shared.shop.states import OrderState

ChangeKind = Literal["add", "change", "remove", "pin", "made", "undo", "redo"]


@dataclass(frozen=True, slots=True)
class Order:
    """One order for each share of a lot.

    `due` is the day the cut sheet is wanted, `sheet` the number of the last released block sheet
    (0 none), `acknowledged` the last one the block has taken note of. `changed_since_sheet` asks
    for a new sheet. `last_change` is the id of the latest change, kept when opening for undo.
    """

    id: int
    number: int
    lot_id: int
    share: int
    customer_id: int | None
    owner: str
    state: OrderState
    choices: tuple[Choice, ...] = ()
    note: str = ""
    due: date | None = None
    sheet: int = 0
    acknowledged: int = 0
    changed_since_sheet: bool = False
    last_change: int = 0
    closed_at: datetime | None = None
    version: int = 0


@dataclass(frozen=True, slots=True)
class OrderChange:
    """One change of one line, never rewritten; `undoes` is the change an undo or redo reverses."""

    id: int
    order_id: int
    line: int
    kind: ChangeKind
    before: Choice | None
    after: Choice | None
    undoes: int | None
    reason: str
    at: datetime
    person: str
    station: str
