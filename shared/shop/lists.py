"""Rows as the places list them: only what a list shows, already joined and sorted."""

from dataclasses import dataclass
from datetime import date, datetime
from typing import Literal

from shared.carcass.carcass import Age, Regime
from shared.shop.states import AnimalState, OrderState

FoundKind = Literal["customer", "animal", "order", "lot"]


@dataclass(frozen=True, slots=True)
class CustomerRow:
    """A customer in a list; `open_orders` counts orders that are not closed."""

    id: int
    name: str
    phone: str
    email: str
    town: str
    open_orders: int


@dataclass(frozen=True, slots=True)
class LotRow:
    """A lot in a list; `animals_state` is the least far of its animals' states."""

    id: int
    number: int
    day: date
    species: str
    head: int
    producer: str
    owners: str
    regime: Regime
    animals_state: AnimalState
    orders_open: int
    cancelled: str


@dataclass(frozen=True, slots=True)
class AnimalRow:
    """An animal in a list; weights are the current ones in nanograms, None when not weighed.

    `on_hold`: it waits for something, a test's result, and goes to no block until then.
    """

    id: int
    lot_id: int
    lot_number: int
    index: int
    tag: str
    species: str
    regime: Regime
    age: Age
    state: AnimalState
    day: date
    owners: str
    producer: str
    live_ng: int | None
    hot_ng: int | None
    hung_at: datetime | None
    place: str
    version: int
    on_hold: bool = False


@dataclass(frozen=True, slots=True)
class OrderRow:
    """An order in a list, with what it has billed and what is due in cents.

    `owner` is "" while it is to be named; `producer` is whose animal it is.
    """

    id: int
    number: int
    lot_id: int
    lot_number: int
    share: int
    day: date
    species: str
    owner: str
    customer_id: int | None
    phone: str
    state: OrderState
    tags: str
    lines: int
    packages: int
    sheet: int
    acknowledged: int
    billed_cents: int
    due_cents: int
    closed: bool
    version: int
    producer: str = ""


@dataclass(frozen=True, slots=True)
class BillRow:
    """An issued bill or credit note in a list."""

    id: int
    number: int
    lot_id: int
    order_id: int | None
    order_number: int | None
    customer: str
    issued_at: datetime
    total_cents: int
    credits: int | None
    due_cents: int
    paper_id: int


@dataclass(frozen=True, slots=True)
class Found:
    """One hit of the search: what it is, how to open it, and two short texts to show.

    `near`: it is written nearly as was typed, no more.
    """

    kind: FoundKind
    id: int
    lot_id: int | None
    title: str
    detail: str
    near: bool = False


@dataclass(frozen=True, slots=True)
class Change:
    """Who did what when: one row of the record; `data` is JSON of what was written."""

    id: int
    at: datetime
    person: str
    station: str
    subject: str
    subject_id: int
    what: str
    reason: str
    data: str
